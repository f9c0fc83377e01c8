//! What can be done with an answer: see it at the saw, hold a value of it, copy it, share it, undo, put back to the demo.

use super::copying::use_copying;
use crate::browser::{call, find, settle};
use crate::words::say;
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

#[component]
pub fn Actions(props: &ActionsProps) -> Html {
    let (said, copy) = use_copying();
    let on_copy = {
        let text = props.text.clone();
        Callback::from(move |_: MouseEvent| copy.emit(text.emit(())))
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
            <span role="status" class="said">{ said }</span>
        </div>
    }
}
