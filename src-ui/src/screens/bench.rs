//! The bench: every card with its picture in small and its last answer.

use crate::cards::{CARDS, CardEntry};
use crate::route::Route;
use crate::settings::SettingsHandle;
use crate::show::draw;
use crate::store::Kept;
use crate::words::say;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct BenchProps {
    /// What is kept.
    pub kept: Kept,
    /// Counts up whenever something was kept, so that the rows are read again.
    pub revision: u32,
    /// The card that is open, if any.
    #[prop_or_default]
    pub open: Option<AttrValue>,
}

fn row(card: &CardEntry, kept: &Kept, settings: &SettingsHandle, open: Option<&AttrValue>) -> Html {
    let glance = (card.glance)(kept, settings);
    let current = open.is_some_and(|slug| slug == card.slug).then_some("page");
    html! {
        <li>
            <a class="bench-row" href={Route::to_card(card.slug)} aria-current={current} data-card={card.slug}>
                <span class="bench-picture" aria-hidden="true">{ glance.picture }</span>
                <span class="bench-words">
                    <strong class="bench-title">{ (card.title)() }</strong>
                    <span class="bench-given">{ glance.given }</span>
                    if let Some(reply) = &glance.reply {
                        if let Some(line) = reply.main.first() {
                            <span class="bench-answer">
                                <span class="bench-main">{ draw(&line.shown.main) }</span>
                                if !line.shown.other.is_empty() {
                                    <span class="bench-other">{ draw(&line.shown.other) }</span>
                                }
                            </span>
                        }
                        if let Some(verdict) = &reply.verdict {
                            <span class="bench-verdict" data-tone={verdict.tone.name()}>
                                { verdict.tone.mark() }{ &verdict.words }
                            </span>
                        }
                    }
                </span>
            </a>
        </li>
    }
}

#[component]
pub fn Bench(props: &BenchProps) -> Html {
    let Some(settings) = use_context::<SettingsHandle>() else { return Html::default() };
    html! {
        <nav class="bench" aria-label={say("bench-title")}>
            <ul>{ for CARDS.iter().map(|card| row(card, &props.kept, &settings, props.open.as_ref())) }</ul>
        </nav>
    }
}
