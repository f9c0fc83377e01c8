//! The bench: every card with its picture in small and its last answer.

use crate::cards::{CARDS, CardEntry};
use crate::route::Route;
use crate::settings::SettingsHandle;
use crate::show::{Show, draw, draw_other};
use crate::store::Kept;
use crate::words::say;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
struct RowProps {
    card: CardEntry,
    /// Its inputs as they are kept.
    inputs: Option<String>,
    settings: SettingsHandle,
    /// Whether it is the one on the screen.
    current: bool,
}

/// A card in small. Solved and drawn only when its inputs or the settings change.
#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { card, inputs, settings, current } = props;
    let show = Show::of(settings);
    let held = (card.open)(inputs.as_deref(), settings);
    let current = current.then_some("page");
    html! {
        <li>
            <a class="bench-row" href={Route::to_card(card.slug)} aria-current={current} data-card={card.slug}>
                <span class="bench-picture" aria-hidden="true">{ held.picture(show).unwrap_or_default() }</span>
                <span class="bench-words">
                    <strong class="bench-title">{ (card.title)() }</strong>
                    if let Some(reply) = held.reply(show) {
                        <span class="bench-given">{ held.given(show).unwrap_or_default() }</span>
                        { for reply.glance.as_ref().or(reply.main.first().map(|line| &line.shown)).map(|shown| html! {
                            <span class="bench-answer">
                                <span class="bench-main">{ draw(&shown.main) }</span>
                                if !shown.other.is_empty() {
                                    <span class="bench-other">{ draw_other(shown) }</span>
                                }
                            </span>
                        }) }
                        { for reply.verdict.as_ref().map(|verdict| html! {
                            <span class="bench-verdict" data-tone={verdict.tone.name()}>
                                { verdict.tone.mark() }{ &verdict.words }
                            </span>
                        }) }
                    } else {
                        <span class="bench-given">{ say("glance-unfinished") }</span>
                    }
                </span>
            </a>
        </li>
    }
}

/// All cards; `open` is the slug of the one on the screen beside it.
pub fn bench(kept: &Kept, settings: &SettingsHandle, open: Option<&str>) -> Html {
    html! {
        <nav class="bench" aria-label={say("bench-title")}>
            <ul>{ for CARDS.iter().map(|card| html! {
                <Row key={card.slug} card={*card} inputs={kept.get(&Kept::inputs_of(card.slug))}
                    settings={settings.clone()} current={open.is_some_and(|slug| slug == card.slug)} />
            }) }</ul>
        </nav>
    }
}
