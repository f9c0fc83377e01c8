//! What the user set: units, the tool in hand, the look, and the shop's own measurements.

use scantling::measure::{Graduation, Length, Reading, Rounding, Unit};
use serde::{Deserialize, Serialize};
use std::rc::Rc;
use yew::prelude::*;

/// Which system is shown large and taken for bare numbers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum System {
    /// Millimetres.
    #[default]
    Metric,
    /// Inches and fractions.
    Imperial,
}

impl System {
    /// The unit of a bare number.
    pub fn unit(self) -> Unit {
        match self {
            Self::Metric => Unit::Mm,
            Self::Imperial => Unit::In,
        }
    }
}

/// Light, dark, or as the device says.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the device is set.
    #[default]
    Device,
    /// Light.
    Paper,
    /// Dark.
    Slate,
}

/// What a touch on a length field brings up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Keys {
    /// Our pad where fingers are the pointer, the keyboard elsewhere.
    #[default]
    Device,
    /// Always our pad.
    Pad,
    /// Always the system's own keyboard.
    Keyboard,
}

/// Everything on the settings screen. Unknown or missing entries fall back, so an older copy still reads.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// Shown large, and taken for bare numbers.
    pub system: System,
    /// The finest mark of the inch tape in hand.
    pub inch_graduation: Graduation,
    /// The finest mark of the metric rule in hand.
    pub mm_graduation: Graduation,
    /// Which way a length that lies between two marks goes.
    pub rounding: Rounding,
    /// Light or dark.
    pub theme: Theme,
    /// Pad or keyboard.
    pub keys: Keys,
    /// The measured kerf of the saw's blade.
    pub kerf: Reading,
    /// The measured thickness of the sheet in the shop.
    pub sheet: Reading,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            system: System::Metric,
            inch_graduation: Graduation::Sixteenth,
            mm_graduation: Graduation::HalfMm,
            rounding: Rounding::Nearest,
            theme: Theme::Device,
            keys: Keys::Device,
            kerf: Reading::mm("3.2"),
            sheet: Reading::mm("14.6"),
        }
    }
}

impl Settings {
    /// The graduation of the system in use.
    pub fn graduation(&self) -> Graduation {
        match self.system {
            System::Metric => self.mm_graduation,
            System::Imperial => self.inch_graduation,
        }
    }

    /// The other system, with everything else as it is.
    pub fn in_system(&self, system: System) -> Self {
        Self { system, ..self.clone() }
    }
}

/// A change of the settings, applied to whatever they are by then.
pub struct SettingsChange(Box<dyn FnOnce(&mut Settings)>);

impl SettingsChange {
    /// Changes the settings so.
    pub fn new(apply: impl FnOnce(&mut Settings) + 'static) -> Self {
        Self(Box::new(apply))
    }
}

impl Reducible for Settings {
    type Action = SettingsChange;

    fn reduce(self: Rc<Self>, change: SettingsChange) -> Rc<Self> {
        let mut next = (*self).clone();
        (change.0)(&mut next);
        if *self == next { self } else { Rc::new(next) }
    }
}

/// How every screen reaches the settings, from context.
pub type SettingsHandle = UseReducerHandle<Settings>;

/// What a typed text becomes: a reading in the unit that the field shows beside it.
///
/// A field keeps the unit in which its number was typed, so that switching the system never turns 800 mm into 800 in.
/// Only a text typed afresh (into an empty field, or over what stood there) takes the system in use.
pub fn retype(old: &Reading, typed: String, system: System) -> Reading {
    let shared = old.typed().chars().zip(typed.chars()).take_while(|(a, b)| a == b).count();
    let afresh = shared == 0 && typed.chars().count() <= 1 || old.is_blank();
    let bare = if afresh { system.unit() } else { old.bare() };
    Reading::new(typed, bare)
}

/// The reading one or more marks of the tool further on, written in the field's own unit.
///
/// Goes to the next mark first, so that stepping always lands on the tool's marks.
pub fn step(reading: &Reading, marks: i64, settings: &Settings) -> Option<Reading> {
    let length = if reading.is_blank() { Length::ZERO } else { reading.length().ok()? };
    let imperial = matches!(reading.bare(), Unit::In | Unit::Ft);
    let graduation = if imperial { settings.inch_graduation } else { settings.mm_graduation };
    let towards = if marks > 0 { Rounding::NotOver } else { Rounding::NotUnder };
    let mark = graduation.round(length, towards).ok()?.value;
    let next = mark.plus(graduation.step().times(marks, 1).ok()?).ok()?;
    let (style, suffix) =
        if imperial { (scantling::measure::Style::Inches, " in") } else { (scantling::measure::Style::Mm, " mm") };
    let text = next.show(style);
    let bare = if imperial { Unit::In } else { Unit::Mm };
    Some(Reading::new(text.strip_suffix(suffix).unwrap_or(&text), bare))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_keeps_the_unit_its_number_was_typed_in() {
        let wide = Reading::mm("800");
        assert_eq!(retype(&wide, "801".into(), System::Imperial).bare(), Unit::Mm);
        assert_eq!(retype(&wide, "3".into(), System::Imperial).bare(), Unit::In, "typed over");
        assert_eq!(retype(&wide, String::new(), System::Imperial).bare(), Unit::In, "emptied");
    }

    #[test]
    fn steps_land_on_the_marks() {
        let settings = Settings::default();
        for (typed, marks, want) in [("14.6", 1, "15"), ("14.6", -1, "14.5"), ("15", 1, "15.5"), ("15", -1, "14.5")] {
            let got = step(&Reading::mm(typed), marks, &settings);
            assert_eq!(got.as_ref().map(Reading::typed), Some(want), "{typed} by {marks}");
        }
        let inch = step(&Reading::inches("23 5/8"), 1, &settings);
        assert_eq!(inch.as_ref().map(Reading::typed), Some("23 11/16"));
        assert_eq!(step(&Reading::mm("x"), 1, &settings), None);
    }
}
