//! What a person gives for a part that moves.

use crate::measure::{Figure, Reading};
use crate::stock::materials::Choice;
use crate::stock::movement::Sheet;
use serde::{Deserialize, Serialize};

/// How the part was cut, and along which of its sides it is measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grain {
    /// The width of a flat-sawn board: along the rings.
    #[default]
    FlatSawn,
    /// The width of a quarter-sawn board: across the rings.
    QuarterSawn,
    /// The length, along the grain.
    Along,
}

impl Grain {
    /// From the most movement to the least.
    pub const ALL: &'static [Self] = &[Self::FlatSawn, Self::QuarterSawn, Self::Along];
}

/// How the moisture is given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum By {
    /// By the air that the wood has settled in.
    #[default]
    Air,
    /// By a moisture meter.
    Meter,
}

impl By {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Air, Self::Meter];
}

/// Air that wood settles in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Climate {
    /// Relative humidity, per cent.
    pub humidity: Figure,
    /// Temperature, °C unless °F is written.
    pub temperature: Figure,
}

impl Climate {
    /// Humidity and temperature as typed.
    pub fn new(humidity: &str, temperature: &str) -> Self {
        Self { humidity: humidity.into(), temperature: temperature.into() }
    }
}

/// How the part is set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Set {
    /// A panel whose edges stand in grooves.
    #[default]
    Grooves,
    /// A part with a gap beside it, such as an inset front.
    Gap,
    /// A part screwed on through slots, such as a solid top on a carcass of sheet.
    Slots,
}

impl Set {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Grooves, Self::Gap, Self::Slots];
}

/// Where the part is held fast.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Held {
    /// In its middle: it moves both ways alike.
    #[default]
    Middle,
    /// At one edge: the other edge moves all the way.
    OneEdge,
}

impl Held {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Middle, Self::OneEdge];

    /// How many edges share the movement.
    pub(super) const fn edges(self) -> u32 {
        match self {
            Self::Middle => 2,
            Self::OneEdge => 1,
        }
    }
}

/// What the maker gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// The wood.
    pub species: Choice,
    /// One's own wood: change of width for each per cent of moisture, per cent of the width.
    pub own_rate: Figure,
    /// How it was cut.
    pub grain: Grain,
    /// Its width as it is made (or its length, for [`Grain::Along`]).
    pub width: Reading,
    /// How the moisture is given.
    pub by: By,
    /// The air in which it is made.
    pub made: Climate,
    /// The driest air that it will settle in.
    pub dry: Climate,
    /// The dampest.
    pub damp: Climate,
    /// Moisture as it is made, per cent of the dry weight.
    pub made_moisture: Figure,
    /// The least later.
    pub dry_moisture: Figure,
    /// The most later.
    pub damp_moisture: Figure,
    /// The sheet that it stands beside.
    pub beside: Sheet,
    /// Growth of a sheet of one's own, per cent from the driest to the dampest day; only read for that.
    pub own_sheet: Figure,
    /// How it is set.
    pub set: Set,
    /// Where it is held fast.
    pub held: Held,
    /// What must still stand in a groove on the driest day.
    pub bearing: Reading,
    /// What must still be free on the dampest day, at each edge that moves.
    pub spare: Reading,
    /// Diameter of a screw's shank, for [`Set::Slots`].
    pub screw: Reading,
    /// From where the part is held to the screw, for [`Set::Slots`]; blank for its farthest edge.
    pub to_screw: Reading,
}

/// The oak panel of a potting-shed door, made in a heated shop.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            species: Choice::find("oak_white").unwrap_or_default(),
            own_rate: "0.3".into(),
            grain: Grain::FlatSawn,
            width: Reading::mm("300"),
            by: By::Air,
            made: Climate::new("50", "20"),
            dry: Climate::new("40", "25"),
            damp: Climate::new("70", "10"),
            made_moisture: "9".into(),
            dry_moisture: "7".into(),
            damp_moisture: "13".into(),
            beside: Sheet::Plywood,
            own_sheet: "0.1".into(),
            set: Set::Grooves,
            held: Held::Middle,
            bearing: Reading::mm("5"),
            spare: Reading::mm("1"),
            screw: Reading::mm("5"),
            to_screw: Reading::default(),
        }
    }
}

impl Default for Climate {
    fn default() -> Self {
        Self::new("50", "20")
    }
}
