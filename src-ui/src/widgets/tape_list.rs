//! The tape on the screen: by itself, or over a card to take a value from it or put one on it.

use crate::cards::card;
use crate::show::{Show, Shown, draw, draw_other};
use crate::store::{Kept, StoreError};
use crate::tape::{Entry, Tape};
use crate::words::{say, say_with};
use scantling::measure::Length;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct TapeListProps {
    /// What is kept.
    pub kept: Kept,
    /// Something could not be kept.
    pub ontrouble: Callback<StoreError>,
    /// How values look.
    pub show: Show,
    /// A value was taken; nothing where none is asked for.
    #[prop_or_default]
    pub onpick: Option<Callback<Length>>,
}

/// A value with its other system, as in a list of figures.
fn value(shown: &Shown) -> Html {
    html! {
        <>
            <span class="line-main">{ draw(&shown.main) }</span>
            if !shown.other.is_empty() {
                <span class="line-other">{ draw_other(shown) }</span>
            }
        </>
    }
}

fn origin(entry: &Entry) -> String {
    let title = card(&entry.card).map_or_else(|| entry.card.clone().into(), |card| (card.title)());
    format!("{title} · {}", entry.line)
}

/// The last answers, each with the card it came from and a name if it was given one.
#[component]
pub fn TapeList(props: &TapeListProps) -> Html {
    let again = use_force_update();
    let tape = Tape::of(&props.kept);
    if tape.0.is_empty() {
        return html! { <p class="about">{ say("tape-empty") }</p> };
    }
    let change = |change: fn(&mut Tape, usize, String), index: usize| {
        let (kept, ontrouble, again) = (props.kept.clone(), props.ontrouble.clone(), again.clone());
        Callback::from(move |text: String| {
            let mut tape = Tape::of(&kept);
            change(&mut tape, index, text);
            tape.keep(&kept, &ontrouble);
            again.force_update();
        })
    };
    let row = |(index, entry): (usize, &Entry)| {
        let shown = props.show.length(entry.value);
        let plain = shown.plain();
        let rename = change(|tape, index, name| tape.rename(index, name), index);
        let drop = change(|tape, index, _| tape.drop_at(index), index);
        let oninput = Callback::from(move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                rename.emit(input.value());
            }
        });
        html! {
            <li class="tape-row">
                if let Some(onpick) = &props.onpick {
                    <button type="button" class="tape-value" data-action="pick" onclick={{
                        let (onpick, length) = (onpick.clone(), entry.value);
                        move |_: MouseEvent| onpick.emit(length)
                    }}>{ value(&shown) }</button>
                } else {
                    <span class="tape-value">{ value(&shown) }</span>
                }
                <button type="button" class="tape-drop" data-action="drop" aria-label={say_with("tape-drop", [("value", plain.as_str().into())])}
                    onclick={move |_: MouseEvent| drop.emit(String::new())}>{ "✕" }</button>
                <a class="tape-origin" href={crate::route::Route::to_card(&entry.card)}>{ origin(entry) }</a>
                <input class="tape-name" type="text" value={entry.name.clone()} placeholder={say("tape-name")}
                    aria-label={say_with("tape-name-of", [("value", plain.as_str().into())])} autocomplete="off" {oninput} />
            </li>
        }
    };
    html! { <ul class="tape">{ for tape.0.iter().enumerate().map(row) }</ul> }
}

/// What the page over a card is for.
#[derive(Clone, PartialEq)]
pub enum TapeUse {
    /// A value for the field of this label.
    Paste(AttrValue, Callback<String>),
    /// Values of this card's answer to put on the tape.
    Hold(&'static str, Vec<(AttrValue, Length)>),
}

#[derive(PartialEq, Properties)]
pub struct TapePageProps {
    /// What it is for.
    pub purpose: TapeUse,
    /// What is kept.
    pub kept: Kept,
    /// Something could not be kept.
    pub ontrouble: Callback<StoreError>,
    /// How values look.
    pub show: Show,
    /// Closed again.
    pub onclose: Callback<()>,
}

/// The page over a card.
#[component]
pub fn TapePage(props: &TapePageProps) -> Html {
    let TapePageProps { purpose, kept, ontrouble, show, onclose } = props;
    let held = use_state_eq(String::new);
    let (title, body) = match purpose {
        TapeUse::Paste(label, onpaste) => {
            let (onpaste, onclose, show) = (onpaste.clone(), onclose.clone(), *show);
            let onpick = Callback::from(move |length: Length| {
                onpaste.emit(show.typed(length));
                onclose.emit(());
            });
            (
                say_with("tape-for", [("field", label.as_str().into())]),
                html! { <TapeList kept={kept.clone()} ontrouble={ontrouble.clone()} show={props.show} onpick={Some(onpick)} /> },
            )
        }
        TapeUse::Hold(slug, lines) => (say("hold-title"), hold_lines(props, slug, lines, &held)),
    };
    html! {
        <super::over::Over {title} class="tape-page" onclose={onclose.clone()}>
            { body }
            <p role="status" class="about">{ (*held).clone() }</p>
        </super::over::Over>
    }
}

fn hold_lines(
    props: &TapePageProps,
    slug: &'static str,
    lines: &[(AttrValue, Length)],
    held: &UseStateHandle<String>,
) -> Html {
    let row = |(label, length): &(AttrValue, Length)| {
        let shown = props.show.length(*length);
        let (kept, ontrouble, held) = (props.kept.clone(), props.ontrouble.clone(), held.clone());
        let (line, length, plain) = (label.to_string(), *length, shown.plain());
        let onclick = move |_: MouseEvent| {
            let mut tape = Tape::of(&kept);
            tape.record(slug, vec![(line.clone(), length)]);
            tape.keep(&kept, &ontrouble);
            held.set(say_with("held", [("value", plain.as_str().into())]).to_string());
        };
        html! {
            <li class="tape-row">
                <button type="button" class="tape-value" data-action="pick" {onclick}>{ value(&shown) }</button>
                <span class="tape-origin">{ label }</span>
            </li>
        }
    };
    html! { <ul class="tape">{ for lines.iter().map(row) }</ul> }
}
