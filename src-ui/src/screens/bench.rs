//! The bench: every card with its picture in small and its last answer.

use crate::cards::{CARDS, CardEntry};
use crate::route::Route;
use crate::settings::SettingsHandle;
use crate::show::{Show, draw, draw_other};
use crate::store::Kept;
use crate::words::say;
use yew::prelude::*;

fn row(card: &CardEntry, kept: &Kept, settings: &SettingsHandle, open: Option<&str>) -> Html {
    let held = (card.open)(kept.get(&Kept::inputs_of(card.slug)).as_deref(), settings);
    let drawn = held.draw(Show::of(settings));
    let current = open.is_some_and(|slug| slug == card.slug).then_some("page");
    html! {
        <li>
            <a class="bench-row" href={Route::to_card(card.slug)} aria-current={current} data-card={card.slug}>
                <span class="bench-picture" aria-hidden="true">{ for drawn.as_ref().map(|drawn| drawn.picture.clone()) }</span>
                <span class="bench-words">
                    <strong class="bench-title">{ (card.title)() }</strong>
                    if let Some(drawn) = &drawn {
                        <span class="bench-given">{ &drawn.given }</span>
                        { for drawn.reply.glance.as_ref().or(drawn.reply.main.first().map(|line| &line.shown)).map(|shown| html! {
                            <span class="bench-answer">
                                <span class="bench-main">{ draw(&shown.main) }</span>
                                if !shown.other.is_empty() {
                                    <span class="bench-other">{ draw_other(shown) }</span>
                                }
                            </span>
                        }) }
                        { for drawn.reply.verdict.as_ref().map(|verdict| html! {
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
            <ul>{ for CARDS.iter().map(|card| row(card, kept, settings, open)) }</ul>
        </nav>
    }
}
