//! What can be done with an answer: see it at the saw, hold a value of it, copy it, share it, undo, put back to the demo.

use crate::browser::{Later, call, find, settle};
use crate::words::say;
use wasm_bindgen::JsCast;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct ActionsProps {
    /// The title of what is shared.
    pub title: AttrValue,
    /// The answer as text; asked for only when it is needed.
    pub text: Callback<(), String>,
    /// Whether there is something to undo.
    pub can_undo: bool,
    /// Undo was pressed.
    pub onundo: Callback<()>,
    /// Back to the demo.
    pub ondemo: Callback<()>,
    /// The numbers full screen.
    pub onsaw: Callback<()>,
    /// Values to put on the tape.
    pub onhold: Callback<()>,
}

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

#[component]
pub fn Actions(props: &ActionsProps) -> Html {
    let said = use_state_eq(|| None::<AttrValue>);
    {
        let said = said.clone();
        use_effect_with(said.is_some(), move |shown| {
            let later = shown.then(|| Later::after(SAID_MS, move || said.set(None)));
            move || drop(later)
        });
    }
    let on_copy = {
        let (text, said) = (props.text.clone(), said.clone());
        Callback::from(move |_: MouseEvent| {
            let (text, said) = (text.emit(()), said.clone());
            wasm_bindgen_futures::spawn_local(async move {
                said.set(Some(say(if copy(text).await { "copied" } else { "not-copied" })));
            });
        })
    };
    let on_share = {
        let (text, title) = (props.text.clone(), props.title.clone());
        Callback::from(move |_: MouseEvent| {
            let data = js_sys::Object::new();
            // Setting a property of a fresh object cannot fail.
            let _ = js_sys::Reflect::set(&data, &"title".into(), &title.as_str().into());
            let _ = js_sys::Reflect::set(&data, &"text".into(), &text.emit(()).into());
            let shared = call("navigator", "share", &[data.into()]);
            // A share that the maker closes again is no failure.
            wasm_bindgen_futures::spawn_local(async move {
                settle(shared).await;
            });
        })
    };
    let pressed = |callback: &Callback<()>| {
        let callback = callback.clone();
        Callback::from(move |_: MouseEvent| callback.emit(()))
    };
    html! {
        <div class="actions">
            <button type="button" class="strong" data-action="saw" onclick={pressed(&props.onsaw)}>{ say("at-saw") }</button>
            <button type="button" data-action="hold" onclick={pressed(&props.onhold)}>{ say("hold") }</button>
            <button type="button" data-action="copy" onclick={on_copy}>{ say("copy") }</button>
            if find("navigator.share").is_some() {
                <button type="button" data-action="share" onclick={on_share}>{ say("share") }</button>
            }
            <button type="button" data-action="undo" disabled={!props.can_undo} onclick={pressed(&props.onundo)}>{ say("undo") }</button>
            <button type="button" data-action="demo" onclick={pressed(&props.ondemo)}>{ say("demo") }</button>
            <span role="status" class="said">{ (*said).clone().unwrap_or_default() }</span>
        </div>
    }
}
