//! The cautions that go with an answer, always unfolded: they are short, and they matter.

use super::working::source;
use crate::words::say;
use scantling::caution::Caution;
use yew::prelude::*;

/// The cautions of a card.
pub fn cautions(list: &[Caution]) -> Html {
    if list.is_empty() {
        return Html::default();
    }
    html! {
        <section class="cautions">
            <h3>{ say("cautions-title") }</h3>
            { for list.iter().map(|caution| html! {
                <p><strong>{ caution.hazard() }{ ". " }</strong>{ caution.advice() }</p>
            }) }
            if let Some(first) = list.first() {
                { source(&first.source()) }
            }
        </section>
    }
}
