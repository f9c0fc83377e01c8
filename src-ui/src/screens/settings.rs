//! Settings: units, the tool in hand, the look, and the shop's own measurements.

use crate::settings::{Keys, Settings, SettingsChange, SettingsHandle, System, Theme, retype, step};
use crate::show::Show;
use crate::widgets::choice::Choice;
use crate::widgets::fields::echo;
use crate::widgets::text_field::{Note, Takes, TextField};
use crate::words::say;
use scantling::measure::{Graduation, Reading, Rounding, Unit};
use std::rc::Rc;
use yew::prelude::*;

fn choice<T: Copy + PartialEq + 'static>(
    handle: &SettingsHandle,
    id: &'static str,
    now: T,
    options: Vec<(T, AttrValue)>,
    set: fn(&mut Settings, T),
) -> Html {
    let chosen = options.iter().position(|(value, _)| *value == now).unwrap_or(0);
    let (values, words): (Vec<T>, Vec<AttrValue>) = options.into_iter().unzip();
    let dispatcher = handle.dispatcher();
    let onchoose = Callback::from(move |index: usize| {
        if let Some(value) = values.get(index).copied() {
            dispatcher.dispatch(SettingsChange::new(move |settings| set(settings, value)));
        }
    });
    html! { <Choice {id} label={say(id)} options={words} {chosen} {onchoose} /> }
}

/// What stands in the field of a shop's measurement, readable or not.
#[derive(PartialEq)]
struct Draft(Reading);

enum Typing {
    Text(String, System),
    Step(i64, Rc<Settings>),
}

impl Reducible for Draft {
    type Action = Typing;

    fn reduce(self: Rc<Self>, typing: Typing) -> Rc<Self> {
        match typing {
            Typing::Text(typed, system) => Rc::new(Self(retype(&self.0, typed, system))),
            Typing::Step(marks, settings) => step(&self.0, marks, &settings).map_or(self, |next| Rc::new(Self(next))),
        }
    }
}

#[derive(PartialEq, Properties)]
struct ShopLengthProps {
    id: &'static str,
    reading: Reading,
    onset: Callback<Reading>,
    pad: bool,
}

/// A measurement of the shop. Taken over only while it reads as a length above zero, so that no card loses its footing.
#[component]
fn ShopLength(props: &ShopLengthProps) -> Html {
    let Some(settings) = use_context::<SettingsHandle>() else { return Html::default() };
    let draft = {
        let reading = props.reading.clone();
        use_reducer_eq(move || Draft(reading))
    };
    let length = draft.0.length();
    {
        let onset = props.onset.clone();
        use_effect_with(draft.0.clone(), move |reading| {
            if reading.length().is_ok_and(|length| length.is_positive()) {
                onset.emit(reading.clone());
            }
        });
    }
    let note = match &length {
        Ok(length) if length.is_positive() => {
            let other = if draft.0.bare() == Unit::In { System::Metric } else { System::Imperial };
            Note::Says(echo((*length).into(), Show::of(&settings.in_system(other))))
        }
        Ok(_) => Note::Problem(say("settings-above-zero"), None),
        Err(error) => Note::Problem(error.to_string().into(), Some(error.at())),
    };
    // The settings are read when a key comes, not when the field was drawn: the field is drawn only when it changes.
    let now = use_mut_ref(|| Rc::new(Settings::default()));
    now.replace(Rc::new((*settings).clone()));
    let ontype = {
        let (draft, now) = (draft.dispatcher(), now.clone());
        Callback::from(move |typed: String| draft.dispatch(Typing::Text(typed, now.borrow().system)))
    };
    let onstep = {
        let draft = draft.dispatcher();
        Callback::from(move |marks: i64| draft.dispatch(Typing::Step(marks, now.borrow().clone())))
    };
    let unit = if draft.0.typed().contains(char::is_alphabetic) { "" } else { draft.0.bare().sign() };
    html! {
        <TextField id={props.id} label={say(props.id)} typed={draft.0.typed().to_owned()} {unit} takes={Takes::Length} {note}
            {ontype} onstep={Some(onstep)} pad={props.pad} />
    }
}

/// The settings screen.
pub fn settings_screen(handle: &SettingsHandle, pad: bool) -> Html {
    let inch = |graduation: Graduation, words: &'static str| (graduation, AttrValue::from(words));
    let set = |apply: fn(&mut Settings, Reading)| {
        let dispatcher = handle.dispatcher();
        Callback::from(move |reading: Reading| {
            dispatcher.dispatch(SettingsChange::new(move |settings| apply(settings, reading)));
        })
    };
    html! {
        <form class="fields settings" aria-label={say("settings-title")} onsubmit={|event: SubmitEvent| event.prevent_default()}>
            { choice(handle, "settings-system", handle.system, vec![
                (System::Metric, say("settings-system-metric")),
                (System::Imperial, say("settings-system-imperial")),
            ], |settings, system| settings.system = system) }
            { choice(handle, "settings-inch-graduation", handle.inch_graduation, vec![
                inch(Graduation::Half, "1/2 in"),
                inch(Graduation::Quarter, "1/4 in"),
                inch(Graduation::Eighth, "1/8 in"),
                inch(Graduation::Sixteenth, "1/16 in"),
                inch(Graduation::ThirtySecond, "1/32 in"),
                inch(Graduation::SixtyFourth, "1/64 in"),
            ], |settings, graduation| settings.inch_graduation = graduation) }
            { choice(handle, "settings-mm-graduation", handle.mm_graduation, vec![
                inch(Graduation::Mm, "1 mm"),
                inch(Graduation::HalfMm, "0.5 mm"),
                inch(Graduation::TenthMm, "0.1 mm"),
            ], |settings, graduation| settings.mm_graduation = graduation) }
            { choice(handle, "settings-rounding", handle.rounding, vec![
                (Rounding::Nearest, say("rounding-nearest")),
                (Rounding::NotOver, say("rounding-not-over")),
                (Rounding::NotUnder, say("rounding-not-under")),
            ], |settings, rounding| settings.rounding = rounding) }
            <ShopLength id="settings-kerf" reading={handle.kerf.clone()} {pad}
                onset={set(|settings, reading| settings.kerf = reading)} />
            <ShopLength id="settings-sheet" reading={handle.sheet.clone()} {pad}
                onset={set(|settings, reading| settings.sheet = reading)} />
            { choice(handle, "settings-theme", handle.theme, vec![
                (Theme::Device, say("settings-theme-device")),
                (Theme::Paper, say("settings-theme-paper")),
                (Theme::Slate, say("settings-theme-slate")),
            ], |settings, theme| settings.theme = theme) }
            { choice(handle, "settings-keys", handle.keys, vec![
                (Keys::Device, say("settings-keys-device")),
                (Keys::Pad, say("settings-keys-pad")),
                (Keys::Keyboard, say("settings-keys-keyboard")),
            ], |settings, keys| settings.keys = keys) }
            <p class="about">{ say("settings-about") }</p>
        </form>
    }
}
