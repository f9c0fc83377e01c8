//! Our pad for fingers: units, digits, denominators, operations, steps. It types into whatever field has the focus.

use crate::browser::{focus_next_field, focused};
use crate::words::say;
use wasm_bindgen::JsCast;
use web_sys::{
    HtmlInputElement, InputEvent as DomInputEvent, InputEventInit, KeyboardEvent as DomKeyboardEvent, KeyboardEventInit,
};
use yew::prelude::*;

/// What a key does.
#[derive(Clone, Copy)]
enum Key {
    /// Types a text.
    Type(&'static str),
    /// Takes back the last character.
    Back,
    /// One mark of the tool up or down.
    Step(&'static str),
    /// On to the next field.
    Next,
}

/// Rows of six, so that every key is 48 px wide on the narrowest phone. What is drawn, what it does, and its name where
/// the drawing does not say it.
const ROWS: [&[(&str, Key, Option<&str>)]; 5] = [
    &[
        ("mm", Key::Type(" mm"), None),
        ("cm", Key::Type(" cm"), None),
        ("m", Key::Type(" m"), None),
        ("in", Key::Type(" in"), None),
        ("ft", Key::Type(" ft"), None),
        ("±", Key::Type(" ± "), Some("pad-tolerance")),
    ],
    &[
        ("1", Key::Type("1"), None),
        ("2", Key::Type("2"), None),
        ("3", Key::Type("3"), None),
        ("4", Key::Type("4"), None),
        ("5", Key::Type("5"), None),
        ("⌫", Key::Back, Some("pad-back")),
    ],
    &[
        ("6", Key::Type("6"), None),
        ("7", Key::Type("7"), None),
        ("8", Key::Type("8"), None),
        ("9", Key::Type("9"), None),
        ("0", Key::Type("0"), None),
        (".", Key::Type("."), Some("pad-point")),
    ],
    &[
        ("/2", Key::Type("/2"), None),
        ("/4", Key::Type("/4"), None),
        ("/8", Key::Type("/8"), None),
        ("/16", Key::Type("/16"), None),
        ("/32", Key::Type("/32"), None),
        ("/64", Key::Type("/64"), None),
    ],
    &[
        ("+", Key::Type(" + "), Some("pad-plus")),
        ("−", Key::Type(" − "), Some("pad-minus")),
        ("×", Key::Type(" × "), Some("pad-times")),
        ("÷", Key::Type(" ÷ "), Some("pad-divide")),
        ("(", Key::Type("("), Some("pad-open")),
        (")", Key::Type(")"), Some("pad-close")),
    ],
];

const LAST: [(&str, Key, &str, &str); 4] = [
    ("▾", Key::Step("ArrowDown"), "pad-step-down", "one"),
    ("▴", Key::Step("ArrowUp"), "pad-step-up", "one"),
    ("␣", Key::Type(" "), "pad-space", "one"),
    ("", Key::Next, "pad-next", "three"),
];

/// Puts a text where the cursor is, and lets the field hear of it as if it had been typed.
fn type_into(input: &HtmlInputElement, text: Option<&str>) -> Option<()> {
    let length = u32::try_from(input.value().encode_utf16().count()).ok()?;
    let start = input.selection_start().ok().flatten().unwrap_or(length);
    let end = input.selection_end().ok().flatten().unwrap_or(length);
    let (text, start) = match text {
        Some(text) => (text, start),
        None if start == end => ("", start.checked_sub(1)?),
        None => ("", start),
    };
    input.set_range_text_with_start_and_end_and_selection_mode(text, start, end, web_sys::SelectionMode::End).ok()?;
    let init = InputEventInit::new();
    init.set_data(Some(text));
    init.set_bubbles(true);
    let event = DomInputEvent::new_with_event_init_dict("input", &init).ok()?;
    input.dispatch_event(&event).ok()?;
    Some(())
}

fn press(key: Key) {
    let Some(element) = focused() else { return };
    if matches!(key, Key::Next) {
        // A list has no use for the pad, which would go: what is typed into comes next.
        focus_next_field(&element, false);
        return;
    }
    let Some(input) = element.dyn_ref::<HtmlInputElement>() else { return };
    match key {
        Key::Type(text) => {
            type_into(input, Some(text));
        }
        Key::Back => {
            type_into(input, None);
        }
        Key::Step(name) => {
            let init = KeyboardEventInit::new();
            init.set_key(name);
            init.set_bubbles(true);
            init.set_cancelable(true);
            if let Ok(event) = DomKeyboardEvent::new_with_keyboard_event_init_dict("keydown", &init) {
                // Refused only when nobody listens.
                let _ = input.dispatch_event(&event);
            }
        }
        Key::Next => {}
    }
}

fn button(drawn: AttrValue, key: Key, name: Option<AttrValue>, class: &'static str) -> Html {
    html! {
        <button type="button" {class} tabindex="-1" aria-label={name} onclick={move |_| press(key)}>{ drawn }</button>
    }
}

/// The pad, under whatever field has the focus.
pub fn number_pad() -> Html {
    // A press must not take the focus from the field it types into.
    let stay = |event: PointerEvent| event.prevent_default();
    let stay_mouse = |event: MouseEvent| event.prevent_default();
    html! {
        <div class="number-pad" role="group" aria-label={say("pad-title")} onpointerdown={stay} onmousedown={stay_mouse}>
            { for ROWS.iter().enumerate().map(|(row, keys)| {
                let class = match row {
                    1 | 2 => "digit",
                    _ => "sign",
                };
                keys.iter()
                    .map(|(drawn, key, name)| button((*drawn).into(), *key, name.map(say), class))
                    .collect::<Html>()
            }) }
            { for LAST.iter().map(|(drawn, key, name, size)| {
                if matches!(key, Key::Next) {
                    button(say(name), *key, None, "next")
                } else {
                    button((*drawn).into(), *key, Some(say(name)), if *size == "one" { "sign" } else { "next" })
                }
            }) }
        </div>
    }
}
