//! What the app itself has to say, above every screen.

use crate::store::StoreError;
use crate::words::{say, say_with};
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub(super) struct NoticesProps {
    /// Why what is kept could not be read at the start, and what tries again.
    pub unread: Option<StoreError>,
    /// See there.
    pub onread: Callback<()>,
    /// Why something could not be kept.
    pub trouble: Option<StoreError>,
    /// A sentence for the maker.
    pub notice: Option<AttrValue>,
    /// It was read.
    pub onnoticed: Callback<()>,
    /// Whether a newer version waits to take over.
    pub new_version: bool,
}

#[component]
pub(super) fn Notices(props: &NoticesProps) -> Html {
    let press = |told: &Callback<()>| {
        let told = told.clone();
        move |_: MouseEvent| told.emit(())
    };
    html! {
        <>
            // While nothing is kept at all, what in particular was not kept is nothing new.
            if let Some(error) = &props.unread {
                <p class="notice" role="alert">
                    { say_with("unread", [("why", error.to_string().into())]) }
                    <button type="button" data-action="read-again" onclick={press(&props.onread)}>
                        { say("unread-again") }
                    </button>
                </p>
            } else if let Some(error) = &props.trouble {
                <p class="notice" role="alert">{ error.to_string() }{ " " }{ say("not-kept") }</p>
            }
            if let Some(text) = &props.notice {
                <p class="notice" role="alert">
                    { text }
                    <button type="button" data-action="noticed" onclick={press(&props.onnoticed)}>{ say("close") }</button>
                </p>
            }
            if props.new_version {
                <p class="notice" role="status">
                    { say("new-version") }
                    <button type="button" data-action="take-over" onclick={take_over}>{ say("take-over") }</button>
                </p>
            }
        </>
    }
}

/// Lets the waiting version in; the start script hears of it and loads the page anew.
fn take_over(_: MouseEvent) {
    if let (Some(window), Ok(event)) = (web_sys::window(), web_sys::Event::new("scantling-take-over")) {
        // Refused only when nobody listens.
        let _ = window.dispatch_event(&event);
    }
}
