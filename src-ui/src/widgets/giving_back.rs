//! On a card that was opened from the cabinet: gives what was changed here back to it.

use super::card_screen::Host;
use super::card_state::Held;
use super::handing_over::keep;
use super::settled::Now;
use crate::jobs::OpenJob;
use crate::route::Route;
use crate::store::Kept;
use crate::words::{say, say_with};
use scantling::as_text;
use scantling::cabinet::{Inputs, given_back};
use scantling::job::CARD;
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, Properties)]
pub struct GivingBackProps {
    /// The card's slug.
    pub slug: &'static str,
    /// The card as it was drawn.
    pub held: Rc<dyn Held>,
    /// The card as it is.
    pub now: Now,
    /// The app around it.
    pub host: Host,
}

impl PartialEq for GivingBackProps {
    fn eq(&self, other: &Self) -> bool {
        self.slug == other.slug && Rc::ptr_eq(&self.held, &other.held) && self.host == other.host
    }
}

/// The cabinet's inputs with what was changed, and how many that are.
fn given(props: &GivingBackProps, held: &dyn Held) -> Option<(Inputs, u32)> {
    let kept = &props.host.kept;
    let handed = kept.get(&Kept::handed_to(props.slug)).filter(|text| !text.is_empty())?;
    // What cannot be used here is of no use there.
    if !held.problems().is_empty() {
        return None;
    }
    let cabinet = kept.get(&Kept::inputs_of(CARD))?;
    given_back(props.slug, &as_text::read(&handed)?, &as_text::read(&held.text()?)?, &as_text::read(&cabinet)?)
}

#[component]
pub fn GivingBack(props: &GivingBackProps) -> Html {
    let again = use_force_update();
    let Some((_, count)) = given(props, &*props.held) else { return Html::default() };
    let handed = (Kept::handed_to(props.slug), String::new());
    let give = {
        let (props, handed) = (props.clone(), handed.clone());
        move |_: MouseEvent| {
            let Some((cabinet, _)) = given(&props, &**props.now.borrow()) else { return };
            let Some(inputs) = as_text::write(&cabinet) else { return };
            let Host { kept, ontrouble, .. } = &props.host;
            let mut texts = OpenJob::of(kept).texts_with(inputs).to_vec();
            texts.extend(kept.get(&Kept::inputs_of(CARD)).map(|before| (Kept::before_of(CARD), before)));
            texts.push(handed.clone());
            keep(kept, texts, ontrouble.clone());
            if let Some(window) = web_sys::window() {
                // Refused only for a malformed address.
                let _ = window.location().set_hash(&Route::to_card(CARD));
            }
        }
    };
    let leave = {
        let Host { kept, ontrouble, .. } = props.host.clone();
        move |_: MouseEvent| {
            keep(&kept, vec![handed.clone()], ontrouble.clone());
            again.force_update();
        }
    };
    html! {
        <section class="gives-back" aria-label={say("gives-back-do")}>
            <p role="status">{ say_with("gives-back", [("count", count.into())]) }</p>
            <div class="job-buttons">
                <button type="button" class="strong" data-action="give-back" onclick={give}>{ say("gives-back-do") }</button>
                <button type="button" data-action="leave" onclick={leave}>{ say("gives-back-not") }</button>
            </div>
        </section>
    }
}
