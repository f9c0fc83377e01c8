//! What a maker wants cut, from what, and with what saw.

use crate::measure::{Length, Ratio};
use serde::{Deserialize, Serialize};

/// How the grain of a part has to run.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grain {
    /// Along the part's first measure, its length.
    #[default]
    Along,
    /// Across it: along its second measure.
    Across,
    /// Whichever way it comes; the part may be turned.
    Free,
}

impl Grain {
    /// All, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Along, Self::Across, Self::Free];
}

/// How the grain of a sheet runs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SheetGrain {
    /// Along its first measure, its length.
    #[default]
    Along,
    /// Across it.
    Across,
    /// It has none: every part may be turned.
    Plain,
}

impl SheetGrain {
    /// All, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Along, Self::Across, Self::Plain];
}

/// A part, and how often it is wanted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// What the maker calls it.
    pub name: String,
    /// Its first measure.
    pub length: Length,
    /// Its second measure.
    pub width: Length,
    /// How often it is wanted.
    pub quantity: u32,
    /// The name of the stock it is cut from.
    pub stock: String,
    /// How its grain runs.
    pub grain: Grain,
}

/// Sheets of one size that parts can be cut from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stock {
    /// What it is; a part is cut from stock of its name, whole sheets or offcuts.
    pub name: String,
    /// Its first measure; a rip runs along it.
    pub length: Length,
    /// Its second measure.
    pub width: Length,
    /// How many there are; `None` for as many as are wanted.
    pub quantity: Option<u32>,
    /// What one costs. Where it is left out an offcut costs nothing, and a sheet counts by its area at the dearest price
    /// per area of those that have one.
    pub price: Option<Ratio>,
    /// How its grain runs.
    pub grain: SheetGrain,
    /// Whether it was left over from other work.
    pub offcut: bool,
}

/// In what order cuts may come.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cuts {
    /// Any cut from edge to edge, in any order.
    #[default]
    Any,
    /// Rips, then crosscuts that give the finished parts.
    Two,
    /// Rips, crosscuts, and rips again.
    Three,
}

impl Cuts {
    /// All, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Any, Self::Two, Self::Three];

    /// The greatest number of stages; `None` where there is no limit.
    pub const fn stages(self) -> Option<u8> {
        match self {
            Self::Any => None,
            Self::Two => Some(2),
            Self::Three => Some(3),
        }
    }
}

/// The saw, and what is worth keeping.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Saw {
    /// What a cut takes away.
    pub kerf: Length,
    /// What is cut off each edge of a whole sheet first, the kerf included. Offcuts are not trimmed.
    pub trim: Length,
    /// In what order cuts may come.
    pub cuts: Cuts,
    /// The longest rip there is room for at the saw; `None` for any.
    pub longest_rip: Option<Length>,
    /// An offcut is kept when its shorter side has at least this.
    pub least_offcut: Length,
}

/// What is to be laid out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Job {
    /// The parts.
    pub parts: Vec<Part>,
    /// What they may be cut from.
    pub stock: Vec<Stock>,
    /// With what.
    pub saw: Saw,
}
