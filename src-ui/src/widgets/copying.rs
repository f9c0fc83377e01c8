//! Copying a text, and saying for a moment whether it was copied.

use super::rows::button;
use super::saving::Save;
use crate::browser::{Later, call, find, settle};
use crate::words::say;
use wasm_bindgen::JsCast;
use yew::prelude::*;

const SAID_MS: i32 = 2500;

/// Copies a text; through a hidden field where the clipboard has no door of its own.
async fn copy(text: String) -> bool {
    if find("navigator.clipboard").is_some()
        && settle(call("navigator.clipboard", "writeText", &[text.as_str().into()])).await.is_some()
    {
        return true;
    }
    copy_through_a_field(&text).unwrap_or(false)
}

fn copy_through_a_field(text: &str) -> Option<bool> {
    let document = web_sys::window()?.document()?;
    let area: web_sys::HtmlTextAreaElement = document.create_element("textarea").ok()?.dyn_into().ok()?;
    area.set_value(text);
    area.set_class_name("unseen");
    document.body()?.append_child(&area).ok()?;
    area.select();
    let done = call("document", "execCommand", &["copy".into()]).and_then(|done| done.as_bool());
    area.remove();
    done
}

/// What is said of the last text that was copied, for as long as it takes to read it; and what copies one.
#[hook]
pub fn use_copying() -> (AttrValue, Callback<String>) {
    let said = use_state_eq(|| None::<AttrValue>);
    {
        let said = said.clone();
        use_effect_with(said.is_some(), move |shown| {
            let later = shown.then(|| Later::after(SAID_MS, move || said.set(None)));
            move || drop(later)
        });
    }
    let copied = {
        let said = said.clone();
        Callback::from(move |text: String| {
            let said = said.clone();
            wasm_bindgen_futures::spawn_local(async move {
                said.set(Some(say(if copy(text).await { "copied" } else { "not-copied" })));
            });
        })
    };
    ((*said).clone().unwrap_or_default(), copied)
}

#[derive(PartialEq, Properties)]
pub struct PlainTextProps {
    /// The text.
    pub text: AttrValue,
    /// The name of its file.
    pub file: &'static str,
    /// What the button says that copies it.
    pub copy: AttrValue,
    /// What the button says that saves it.
    pub save: AttrValue,
}

/// A text to take along: copied, or as a file.
#[component]
pub fn PlainText(props: &PlainTextProps) -> Html {
    let (said, copied) = use_copying();
    let copy = {
        let text = props.text.clone();
        Callback::from(move |()| copied.emit(text.to_string()))
    };
    html! {
        <>
            { button("copy-text", props.copy.clone(), &copy) }
            <span role="status" class="said">{ said }</span>
            <Save action="save-text" words={props.save.clone()} file={props.file} kind="text/plain" text={props.text.clone()} />
        </>
    }
}
