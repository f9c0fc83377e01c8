//! What to allow for the movement: depth of a groove, a gap, a slot.

use super::inputs::{Held, Inputs, Set};
use super::read::Read;
use crate::measure::{Length, LengthError};
use serde::Serialize;

/// What to allow, at each edge that moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Allow {
    /// A groove for each edge that moves.
    Groove {
        /// The least depth.
        depth: Length,
        /// How far the panel stands in it as made.
        tongue: Length,
        /// What is free at its bottom as made.
        free: Length,
        /// The opening between the grooves' mouths. Where one edge is held fast, its tongue is the bearing.
        opening: Length,
    },
    /// A gap beside each edge that moves.
    Gap {
        /// As made.
        made: Length,
        /// On the driest day.
        widest: Length,
        /// On the dampest day.
        least: Length,
    },
    /// A slot for a screw, its length across the grain.
    Slot {
        /// The least length.
        length: Length,
        /// From the end of the slot nearer to where the part is held, to the middle of the screw as made.
        screw_at: Length,
        /// From where the part is held to the screw.
        from_held: Length,
    },
}

/// An estimate as a length, to a nanometre: allowances are then added up exactly.
fn length(mm: f64) -> Result<Length, LengthError> {
    Length::from_estimate_mm(mm)
}

impl Allow {
    /// `grow` and `shrink` are of the whole part, mm, from as made.
    pub(super) fn new(inputs: &Inputs, read: &Read, grow_mm: f64, shrink_mm: f64) -> Result<Self, LengthError> {
        let edges = f64::from(inputs.held.edges());
        let (grow, shrink) = (length(grow_mm / edges)?, length(shrink_mm / edges)?);
        Ok(match inputs.set {
            Set::Grooves => {
                let tongue = read.bearing.plus(shrink)?;
                let free = grow.plus(read.spare)?;
                let other = if inputs.held == Held::Middle { tongue } else { read.bearing };
                let opening = read.width.minus(tongue)?.minus(other)?;
                Self::Groove { depth: tongue.plus(free)?, tongue, free, opening }
            }
            Set::Gap => {
                let made = grow.plus(read.spare)?;
                Self::Gap { made, widest: made.plus(shrink)?, least: read.spare }
            }
            Set::Slots => {
                let whole = read.width.times(1, u64::from(inputs.held.edges()))?;
                let from_held = read.to_screw.unwrap_or(whole);
                let share = from_held.as_mm() / read.width.as_mm();
                let (grow, shrink) = (length(grow_mm * share)?, length(shrink_mm * share)?);
                // The slot is in the part: when the part shrinks, the slot moves towards where it is held, and the screw
                // comes to stand at the slot's far end.
                let screw_at = grow.plus(read.screw.times(1, 2)?)?;
                Self::Slot { length: grow.plus(shrink)?.plus(read.screw)?, screw_at, from_held }
            }
        })
    }

    /// Whether a panel has any opening left between its grooves.
    pub(super) fn leaves_an_opening(&self) -> bool {
        match self {
            Self::Groove { opening, .. } => opening.is_positive(),
            Self::Gap { .. } | Self::Slot { .. } => true,
        }
    }
}
