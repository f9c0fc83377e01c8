//! A page over the whole screen, with a title and a way back.

use crate::words::say;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct OverProps {
    /// What stands at its head.
    pub title: AttrValue,
    /// For the style sheet.
    pub class: &'static str,
    /// Closed again.
    pub onclose: Callback<()>,
    /// What is on it.
    pub children: Html,
}

#[component]
pub fn Over(props: &OverProps) -> Html {
    let dialog = use_node_ref();
    {
        let dialog = dialog.clone();
        use_effect_with((), move |()| {
            if let Some(dialog) = dialog.cast::<web_sys::HtmlDialogElement>() {
                // Already open is fine too.
                let _ = dialog.show_modal();
            }
        });
    }
    let close = {
        let onclose = props.onclose.clone();
        Callback::from(move |_: MouseEvent| onclose.emit(()))
    };
    let closed = {
        let onclose = props.onclose.clone();
        Callback::from(move |_: Event| onclose.emit(()))
    };
    html! {
        <dialog ref={dialog} class={classes!("over", props.class)} aria-labelledby="over-title" onclose={closed}>
            <header>
                <h2 id="over-title">{ &props.title }</h2>
                <button type="button" data-action="close" onclick={close}>{ say("close") }</button>
            </header>
            { props.children.clone() }
        </dialog>
    }
}
