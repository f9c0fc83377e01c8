//! A field for a typed value: label, input, the unit a bare number takes, and one note for hint, echo and problem.

use crate::words::{say, say_with};
use yew::prelude::*;

/// What the field takes, which decides the pad's keys and the arrow keys.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// A length.
    Length,
    /// A length that may carry a `±`.
    Range,
    /// Any other figure.
    Figure,
    /// A few words: the pad has none.
    Words,
}

/// The note under the field.
#[derive(Clone, Debug, PartialEq)]
pub enum Note {
    /// Nothing to say.
    None,
    /// The value in the other system, or a hint.
    Says(AttrValue),
    /// What is wrong, and the place in the text, counted in characters.
    Problem(AttrValue, Option<usize>),
}

#[derive(Properties)]
pub struct TextFieldProps {
    /// Id of the input, and key of its label.
    pub id: AttrValue,
    /// The label.
    pub label: AttrValue,
    /// As typed.
    pub typed: AttrValue,
    /// The unit a bare number takes, shown beside the field.
    #[prop_or_default]
    pub unit: AttrValue,
    /// What stands in while the field is blank.
    #[prop_or_default]
    pub standing: Option<AttrValue>,
    /// What the field takes.
    pub takes: Takes,
    /// The note.
    pub note: Note,
    /// Something was typed.
    pub ontype: Callback<String>,
    /// An arrow key asked for so many marks more or less; nothing for fields without marks.
    #[prop_or_default]
    pub onstep: Option<Callback<i64>>,
    /// The tape was asked for; nothing for fields that take no length from it.
    #[prop_or_default]
    pub ontape: Option<Callback<()>>,
    /// Our pad is used here: the system's own keyboard stays away.
    #[prop_or_default]
    pub pad: bool,
}

/// Fields that look the same are the same: callbacks are made anew at every draw, but hold nothing that ages.
impl PartialEq for TextFieldProps {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
            && self.typed == other.typed
            && self.note == other.note
            && self.unit == other.unit
            && self.standing == other.standing
            && self.label == other.label
            && self.takes == other.takes
            && self.onstep.is_some() == other.onstep.is_some()
            && self.ontape.is_some() == other.ontape.is_some()
            && self.pad == other.pad
    }
}

/// The typed text with the place of the problem marked.
fn pointed(typed: &str, at: usize) -> Html {
    let before: String = typed.chars().take(at).collect();
    let here: String = typed.chars().skip(at).take(1).collect();
    let after: String = typed.chars().skip(at + 1).collect();
    let here = if here.trim().is_empty() { "␣".to_owned() } else { here };
    html! { <span class="pointed" aria-hidden="true">{ before }<mark>{ here }</mark>{ after }</span> }
}

/// The unit, which opens the tape. The keyboard does so from the field itself, so that one press of Tab leads on.
fn tape_button(props: &TextFieldProps, ontape: Callback<()>) -> Html {
    // A press must not take the focus from the field that the value goes into.
    let stay = |event: MouseEvent| event.prevent_default();
    let name = say_with("tape-for", [("field", props.label.as_str().into())]);
    // What is drawn comes first in the name, so that who says what they see is understood.
    let name = if props.unit.is_empty() { name.to_string() } else { format!("{}, {name}", props.unit) };
    html! {
        <button type="button" class="text-field-tape" data-action="tape" tabindex="-1" aria-haspopup="dialog"
            aria-label={name} onmousedown={stay} onclick={move |_: MouseEvent| ontape.emit(())}>
            { if props.unit.is_empty() { "≡".into() } else { props.unit.clone() } }
        </button>
    }
}

#[component]
pub fn TextField(props: &TextFieldProps) -> Html {
    let note_id = format!("{}-note", props.id);
    let ontype = {
        let ontype = props.ontype.clone();
        let keeps_unit = matches!(props.takes, Takes::Length | Takes::Range) && !props.typed.is_empty();
        Callback::from(move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                let value = input.value();
                if keeps_unit && event.data().as_ref() == Some(&value) {
                    // Typed over all that stood there: nothing of it is left, nor the unit that it had.
                    ontype.emit(String::new());
                }
                ontype.emit(value);
            }
        })
    };
    let onkey = {
        let (onstep, ontape) = (props.onstep.clone(), props.ontape.clone());
        Callback::from(move |event: KeyboardEvent| {
            if let (true, "ArrowDown", Some(ontape)) = (event.alt_key(), event.key().as_str(), &ontape) {
                event.prevent_default();
                ontape.emit(());
                return;
            }
            let marks = match event.key().as_str() {
                "ArrowUp" => 1,
                "ArrowDown" => -1,
                _ => return,
            };
            if let Some(onstep) = &onstep {
                event.prevent_default();
                onstep.emit(if event.shift_key() { 10 * marks } else { marks });
            }
        })
    };
    let select = Callback::from(|event: FocusEvent| {
        if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
            input.select();
        }
    });
    let invalid = matches!(props.note, Note::Problem(..));
    let takes = match props.takes {
        Takes::Length => "length",
        Takes::Range => "range",
        Takes::Figure => "figure",
        Takes::Words => "words",
    };
    html! {
        <div class="text-field">
            <label for={props.id.clone()}>{ &props.label }</label>
            <span class="text-field-box">
                <input id={props.id.clone()} type="text" value={props.typed.clone()} data-takes={takes}
                    placeholder={props.standing.clone()} autocomplete="off" autocapitalize="off" spellcheck="false"
                    inputmode={if props.pad { "none" } else { "text" }} enterkeyhint="next"
                    aria-invalid={invalid.to_string()} aria-describedby={note_id.clone()}
                    aria-keyshortcuts={props.ontape.as_ref().map(|_| "Alt+ArrowDown")}
                    oninput={ontype} onkeydown={onkey} onfocus={select} />
                if let Some(ontape) = &props.ontape {
                    { tape_button(props, ontape.clone()) }
                } else if !props.unit.is_empty() {
                    <span class="text-field-unit" aria-hidden="true">{ &props.unit }</span>
                }
            </span>
            <p class="note" id={note_id}>
                { match &props.note {
                    Note::None => Html::default(),
                    Note::Says(text) => html! { <>{ text }</> },
                    Note::Problem(text, at) => html! {
                        <>
                            if let Some(at) = at { { pointed(&props.typed, *at) } }
                            <span class="problem"><span aria-hidden="true">{ "✕ " }</span>{ text }</span>
                        </>
                    },
                } }
                if let (Note::None, Some(_)) = (&props.note, &props.standing) {
                    { say("field-from-settings") }
                }
            </p>
        </div>
    }
}
