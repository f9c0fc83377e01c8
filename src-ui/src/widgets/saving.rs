//! Saving a text as a file of the maker's, and saying where it went.

use crate::store::here;
use crate::words::say_with;
use yew::prelude::*;

/// A file to be saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ToFile {
    /// Its name.
    pub name: String,
    /// What kind of text it is, as the internet calls it.
    pub kind: &'static str,
    /// All of it.
    pub text: String,
}

/// What is said of the last file, and what saves one.
#[hook]
pub fn use_saving() -> (AttrValue, Callback<ToFile>) {
    let said = use_state_eq(AttrValue::default);
    let save = {
        let said = said.clone();
        Callback::from(move |ToFile { name, kind, text }: ToFile| {
            let (said, saved) = (said.clone(), here().save_file(&name, kind, &text));
            wasm_bindgen_futures::spawn_local(async move {
                said.set(match saved.await {
                    Ok(place) => say_with("file-saved", [("place", place.unwrap_or(name).into())]),
                    Err(error) => say_with("file-not-saved", [("why", error.to_string().into())]),
                });
            });
        })
    };
    ((*said).clone(), save)
}

#[derive(PartialEq, Properties)]
pub struct SaveProps {
    /// The button's name in the page.
    pub action: &'static str,
    /// What the button says.
    pub words: AttrValue,
    /// The name of the file.
    pub file: &'static str,
    /// What kind of text it is.
    pub kind: &'static str,
    /// The text.
    pub text: AttrValue,
}

/// A button that saves a text.
#[component]
pub fn Save(props: &SaveProps) -> Html {
    let (said, save) = use_saving();
    let SaveProps { action, words, file, kind, text } = props;
    let onclick = {
        let (text, file, kind) = (text.clone(), *file, *kind);
        move |_: MouseEvent| save.emit(ToFile { name: file.to_owned(), kind, text: text.to_string() })
    };
    html! {
        <>
            <button type="button" data-action={*action} {onclick}>{ words }</button>
            <span role="status" class="said">{ said }</span>
        </>
    }
}
