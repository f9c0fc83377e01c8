//! Opens another card with this one's measurements. What stood there before is one step of undo away.

use super::card_screen::Host;
use super::card_state::Held;
use super::fold::Fold;
use super::settled::Now;
use crate::cards::card;
use crate::jobs::OpenJob;
use crate::route::Route;
use crate::store::{Kept, Soon, StoreError};
use crate::words::say;
use serde_json::{Map, Value};
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, Properties)]
pub struct HandingOverProps {
    /// The card that hands over, as it was drawn.
    pub held: Rc<dyn Held>,
    /// The same as it is.
    pub now: Now,
    /// The app around it.
    pub host: Host,
}

impl PartialEq for HandingOverProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.held, &other.held) && self.host == other.host
    }
}

/// What a card takes over, put into what it has.
fn merged(before: Option<&str>, handed: Value) -> Value {
    let before: Option<Map<String, Value>> = before.and_then(|text| serde_json::from_str(text).ok());
    match (before, handed) {
        (Some(mut before), Value::Object(handed)) => {
            before.extend(handed);
            Value::Object(before)
        }
        (_, handed) => handed,
    }
}

pub(super) fn keep(kept: &Kept, texts: Vec<(String, String)>, ontrouble: Callback<StoreError>) {
    keep_in(kept.keep_all(texts), &ontrouble);
}

/// Waits in the background until something is kept, and says if it is not.
pub(super) fn keep_in(soon: Soon<()>, ontrouble: &Callback<StoreError>) {
    let ontrouble = ontrouble.clone();
    wasm_bindgen_futures::spawn_local(async move {
        if let Err(error) = soon.await {
            ontrouble.emit(error);
        }
    });
}

/// A card's inputs as they were before it was handed others; asked for once.
pub fn take_before(kept: &Kept, slug: &str) -> Option<String> {
    let key = Kept::before_of(slug);
    let before = kept.get(&key).filter(|text| !text.is_empty())?;
    keep(kept, vec![(key, String::new())], Callback::noop());
    Some(before)
}

fn hand(props: &HandingOverProps, slug: &'static str) {
    let (Host { kept, ontrouble, .. }, now) = (&props.host, props.now.borrow().clone());
    let Some((_, handed)) = now.hands_over().into_iter().find(|(to, _)| *to == slug) else { return };
    let key = Kept::inputs_of(slug);
    let before = kept.get(&key);
    let inputs = merged(before.as_deref(), handed);
    let mut texts = vec![(Kept::handed_to(slug), inputs.to_string()), (key, inputs.to_string())];
    texts.extend(before.map(|before| (Kept::before_of(slug), before)));
    // What is given back later goes into these.
    texts.extend(now.text().map(|own| OpenJob::of(kept).texts_with(own)).into_iter().flatten());
    keep(kept, texts, ontrouble.clone());
    if let Some(window) = web_sys::window() {
        // Refused only for a malformed address.
        let _ = window.location().set_hash(&Route::to_card(slug));
        // The next card is read from its head, however far down this one was.
        window.scroll_to_with_x_and_y(0.0, 0.0);
    }
}

#[component]
fn Cards(props: &HandingOverProps) -> Html {
    let row = |(slug, _): (&'static str, Value)| {
        let entry = card(slug)?;
        let props = props.clone();
        let onclick = move |_: MouseEvent| hand(&props, slug);
        Some(html! {
            <li><button type="button" data-hands={slug} {onclick}>
                { (entry.title)() }
            </button></li>
        })
    };
    html! { <ul class="hands">{ for props.held.hands_over().into_iter().filter_map(row) }</ul> }
}

#[component]
pub fn HandingOver(props: &HandingOverProps) -> Html {
    if !props.held.can_hand_over() {
        return Html::default();
    }
    let own = props.clone();
    html! { <Fold name="hands" title={say("hands-title")}><Cards ..own /></Fold> }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn what_is_not_handed_over_stays() {
        let before = r#"{"kept": ["an offcut"], "kerf": "3"}"#;
        assert_eq!(merged(Some(before), json!({ "kerf": "2" })), json!({ "kept": ["an offcut"], "kerf": "2" }));
        assert_eq!(merged(None, json!({ "kerf": "2" })), json!({ "kerf": "2" }));
        assert_eq!(merged(Some("damaged"), json!({ "kerf": "2" })), json!({ "kerf": "2" }));
    }
}
