//! A button that takes a file of text, which is read here and goes nowhere.

use crate::browser::settle;
use crate::words::say;
use wasm_bindgen::{JsCast, JsValue};
use yew::prelude::*;

/// A file as it was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileRead {
    /// Its text.
    pub text: String,
}

#[derive(Properties)]
pub struct FileFieldProps {
    /// Id of the input, and key of its label.
    pub id: AttrValue,
    /// The label.
    pub label: AttrValue,
    /// Which kinds of file are offered.
    pub accept: &'static str,
    /// A larger one is not read.
    #[prop_or(MOST_BYTES)]
    pub most_bytes: usize,
    /// Whether it may have letters that no list of parts has.
    #[prop_or_default]
    pub any_letters: bool,
    /// What is said of a file that was read, and of one that was not, with its name before it.
    #[prop_or_else(|| say("file-read"))]
    pub read: AttrValue,
    /// See there.
    #[prop_or_else(|| say("file-not-read"))]
    pub refused: AttrValue,
    /// A file was read.
    pub onread: Callback<FileRead>,
}

/// The callback is made anew at every draw, but holds nothing that ages.
impl PartialEq for FileFieldProps {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id && self.label == other.label && self.accept == other.accept
    }
}

/// A list of parts is far shorter.
const MOST_BYTES: usize = 300_000;

/// The text of a file; nothing where it cannot be read, or is no text.
async fn text_of(file: &web_sys::File, any_letters: bool) -> Option<String> {
    let method: js_sys::Function = js_sys::Reflect::get(file, &JsValue::from_str("text")).ok()?.dyn_into().ok()?;
    let text = settle(method.call0(file).ok()).await?.as_string()?;
    // What is not text in UTF-8 has marks in it that no list of parts has.
    (any_letters || !text.contains(['\0', '\u{FFFD}'])).then_some(text)
}

#[component]
pub fn FileField(props: &FileFieldProps) -> Html {
    let said = use_state_eq(AttrValue::default);
    let onchange = {
        let (onread, said) = (props.onread.clone(), said.clone());
        let (most_bytes, any_letters) = (props.most_bytes, props.any_letters);
        let words = [props.read.clone(), props.refused.clone()];
        Callback::from(move |event: Event| {
            let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() else { return };
            let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
            let (onread, said, [read, refused]) = (onread.clone(), said.clone(), words.clone());
            wasm_bindgen_futures::spawn_local(async move {
                let name = file.name();
                let size = js_sys::Reflect::get(&file, &"size".into()).ok().and_then(|size| size.as_f64());
                #[expect(clippy::cast_precision_loss, reason = "some megabytes")]
                let small = size.is_some_and(|size| size <= most_bytes as f64);
                let text = if small { text_of(&file, any_letters).await } else { None };
                let words = if text.is_some() { read } else { refused };
                said.set(format!("{name} {words}").into());
                if let Some(text) = text {
                    onread.emit(FileRead { text });
                }
                // So that the same file can be taken again.
                input.set_value("");
            });
        })
    };
    let note_id = format!("{}-note", props.id);
    html! {
        <div class="file-field">
            <label for={props.id.clone()}>{ &props.label }</label>
            <input id={props.id.clone()} type="file" accept={props.accept} aria-describedby={note_id.clone()} {onchange} />
            <p class="note" id={note_id} role="status">
                { if said.is_empty() { say("file-stays-here") } else { (*said).clone() } }
            </p>
        </div>
    }
}
