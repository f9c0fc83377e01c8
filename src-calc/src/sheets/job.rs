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

impl Job {
    /// Every length of it.
    pub(super) fn lengths(&self) -> impl Iterator<Item = Length> + Clone {
        let parts = self.parts.iter().flat_map(|part| [part.length, part.width]);
        let stock = self.stock.iter().flat_map(|stock| [stock.length, stock.width]);
        let saw = [self.saw.kerf, self.saw.trim, self.saw.least_offcut];
        parts.chain(stock).chain(saw).chain(self.saw.longest_rip)
    }

    /// That everything is a size, and that there are not too many pieces.
    pub(super) fn check(&self, most_pieces: u32) -> Result<(), JobError> {
        if let Some(at) = self.parts.iter().position(|part| !(part.length.is_positive() && part.width.is_positive())) {
            return Err(JobError::Part { at });
        }
        if let Some(at) = self.stock.iter().position(|stock| !(stock.length.is_positive() && stock.width.is_positive()))
        {
            return Err(JobError::Stock { at });
        }
        let saw = [self.saw.kerf, self.saw.trim, self.saw.least_offcut];
        if saw.into_iter().chain(self.saw.longest_rip).any(Length::is_negative)
            || self.stock.iter().any(|stock| stock.price.is_some_and(Ratio::is_negative))
        {
            return Err(JobError::BelowZero);
        }
        let pieces = self.parts.iter().fold(0_u32, |sum, part| sum.saturating_add(part.quantity));
        if pieces > most_pieces { Err(JobError::TooMany { most: most_pieces }) } else { Ok(()) }
    }
}

/// Why a job cannot be laid out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, thiserror::Error)]
pub enum JobError {
    /// A part without a size.
    #[error("Length and width of a part have to be more than zero.")]
    Part {
        /// Which part.
        at: usize,
    },
    /// A sheet without a size.
    #[error("Length and width of a sheet have to be more than zero.")]
    Stock {
        /// Which stock.
        at: usize,
    },
    /// A kerf, trim, rip, offcut or price below zero.
    #[error("Kerf, trim, longest rip, smallest offcut and prices cannot be less than zero.")]
    BelowZero,
    /// Too many pieces.
    #[error("At most {most} pieces are laid out at once. Take the list in parts.")]
    TooMany {
        /// The most that are accepted.
        most: u32,
    },
    /// Too long to be held in whole units.
    #[error("Every length has to be less than 30 m.")]
    TooLong,
}
