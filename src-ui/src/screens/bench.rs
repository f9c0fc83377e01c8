//! The bench: every card with its picture in small and its last answer.

use crate::cards::{CARDS, CardEntry, Stage};
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

/// Whether every word of what is looked for begins a word of the card's name or of what else it is called.
fn is_called(card: &CardEntry, wanted: &str) -> bool {
    let names = format!("{} {}", (card.title)(), (card.also_called)()).to_lowercase();
    let begins = |wanted: &str| names.split([' ', ',', '-']).any(|word| word.starts_with(wanted));
    wanted.to_lowercase().split_whitespace().all(begins)
}

#[derive(PartialEq, Properties)]
pub struct BenchProps {
    /// The inputs of every card as they are kept, in the order of the bench.
    pub inputs: Vec<Option<String>>,
    /// The settings in use.
    pub settings: SettingsHandle,
    /// The slug of the card on the screen beside it.
    pub open: Option<AttrValue>,
}

/// All cards in the order of the job, or those that are looked for.
#[component]
pub fn Bench(props: &BenchProps) -> Html {
    let wanted = use_state_eq(String::new);
    let found: Vec<_> = CARDS.iter().zip(&props.inputs).filter(|(card, _)| is_called(card, &wanted)).collect();
    let ontype = {
        let wanted = wanted.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                wanted.set(input.value());
            }
        })
    };
    let row = |(card, inputs): &(&CardEntry, &Option<String>)| {
        let current = props.open.as_deref() == Some(card.slug);
        html! { <Row key={card.slug} card={**card} inputs={(*inputs).clone()} settings={props.settings.clone()} {current} /> }
    };
    let stage = |stage: &Stage| {
        let rows: Vec<Html> = found.iter().filter(|(card, _)| card.stage == *stage).map(row).collect();
        (!rows.is_empty()).then(|| {
            html! {
                <section key={stage.name().to_string()} class="bench-stage">
                    <h2>{ stage.name() }</h2>
                    <ul>{ rows }</ul>
                </section>
            }
        })
    };
    html! {
        <nav class="bench" aria-label={say("bench-title")}>
            <label class="bench-search">
                <span>{ say("search") }</span>
                <input type="search" value={(*wanted).clone()} autocomplete="off" autocapitalize="off"
                    spellcheck="false" enterkeyhint="search" oninput={ontype} />
            </label>
            <p role="status" class="bench-none">{ if found.is_empty() { say("search-none") } else { "".into() } }</p>
            { for Stage::ALL.iter().filter_map(stage) }
        </nav>
    }
}

/// The bench; `open` is the slug of the card on the screen beside it.
pub fn bench(kept: &Kept, settings: &SettingsHandle, open: Option<&'static str>) -> Html {
    let inputs: Vec<_> = CARDS.iter().map(|card| kept.get(&Kept::inputs_of(card.slug))).collect();
    html! { <Bench {inputs} settings={settings.clone()} open={open.map(AttrValue::Static)} /> }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cards_are_found_by_the_words_of_either_side_of_the_sea() {
        for (wanted, slug) in [
            ("rebate", "back-panel"),
            ("Rabbet", "back-panel"),
            ("louver", "bevelled-strips"),
            ("louvre", "bevelled-strips"),
            ("beveled strip", "bevelled-strips"),
            ("millimeter", "convert"),
            ("deflection", "shelf"),
            ("cup", "cup-hinge"),
            ("rebate", "groove"),
            ("dado", "groove"),
            ("miter", "angles"),
            ("mitre", "angles"),
            ("carcass", "back-panel"),
            ("case", "back-panel"),
            ("sheet", "materials"),
            ("board", "materials"),
            ("timber", "materials"),
            ("lumber", "materials"),
            ("closet rod", "clothes-rail"),
            ("wardrobe rail", "clothes-rail"),
            ("baluster", "spacing"),
            ("32 mm", "hole-rows"),
            ("dowel", "joints"),
        ] {
            let found: Vec<_> = CARDS.iter().filter(|card| is_called(card, wanted)).map(|card| card.slug).collect();
            assert!(found.contains(&slug), "{wanted}: {found:?}");
        }
        assert!(CARDS.iter().all(|card| is_called(card, "  ")));
        assert!(!CARDS.iter().any(|card| is_called(card, "xylophone")));
    }

    #[test]
    fn the_registry_is_in_the_order_of_the_job() {
        let place = |card: &CardEntry| Stage::ALL.iter().position(|stage| *stage == card.stage);
        assert!(CARDS.is_sorted_by_key(place));
    }
}
