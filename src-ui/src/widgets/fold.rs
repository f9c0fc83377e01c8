//! Something folded under its heading until it is asked for; only then is it drawn.

use yew::prelude::*;

/// Whether a `<details>` is unfolded, and what it tells when it is toggled.
#[hook]
pub fn use_unfolded() -> (bool, Callback<Event>) {
    let open = use_state_eq(|| false);
    let toggle = {
        let open = open.clone();
        Callback::from(move |event: Event| {
            if let Some(details) = event.target_dyn_into::<web_sys::HtmlDetailsElement>() {
                open.set(details.open());
            }
        })
    };
    (*open, toggle)
}

#[derive(PartialEq, Properties)]
pub struct FoldProps {
    /// For the style sheet.
    pub name: &'static str,
    /// The heading.
    pub title: AttrValue,
    /// What is folded.
    pub children: Html,
}

#[component]
pub fn Fold(props: &FoldProps) -> Html {
    let (open, toggle) = use_unfolded();
    html! {
        <details class="folded" data-fold={props.name} ontoggle={toggle}>
            <summary>{ &props.title }</summary>
            if open { { props.children.clone() } }
        </details>
    }
}
