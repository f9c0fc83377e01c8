//! The room for the clothes: how far down the rail, how high and how deep the cabinet, and blocks under its top. Exact.

use super::answer::{Blocks, Room};
use super::inputs::Brackets;
use crate::measure::{Length, LengthError};

/// What the room is worked out from, read.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sizes {
    pub(super) rail_height: Length,
    pub(super) hook: Length,
    pub(super) drop: Length,
    pub(super) below: Length,
    pub(super) hanger: Length,
    pub(super) bulk: Length,
    pub(super) inside_depth: Length,
    pub(super) inside_height: Length,
    /// From a bracket's foot to the middle of the rail, and the sheet for blocks, for a rail under the top.
    pub(super) under_top: Option<(Length, Length)>,
}

impl Sizes {
    /// Works the room out; the brackets are counted for their blocks.
    pub(super) fn room(&self, brackets: Brackets) -> Result<Room, LengthError> {
        let half = self.rail_height.times(1, 2)?;
        let wanted = self.hook.plus(half)?;
        let (middle_down, blocks) = match self.under_top {
            None => (wanted, None),
            Some((bracket_drop, sheet)) => {
                let missing = wanted.minus(bracket_drop)?;
                let least = if missing.is_positive() { missing } else { Length::ZERO };
                // Rounded up: minus the last whole number not above minus the quotient.
                let layers = least.negated().floor_div(sheet)?.checked_neg().ok_or(LengthError::TooLong)?;
                let thickness = sheet.times(layers, 1)?;
                let count = u64::from(brackets.support().bays()).saturating_add(1);
                (bracket_drop.plus(thickness)?, Some(Blocks { count, least, layers, thickness }))
            }
        };
        let hook = middle_down.minus(half)?;
        let height = hook.plus(self.drop)?.plus(self.below)?;
        let depth = self.hanger.plus(self.bulk.times(2, 1)?)?;
        let depth_spare = self.inside_depth.minus(depth)?;
        let across = if depth_spare.is_negative() { self.inside_depth } else { depth };
        Ok(Room {
            hook,
            middle_down,
            drop: self.drop,
            height,
            height_spare: self.inside_height.minus(height)?,
            depth,
            depth_spare,
            from_back: across.times(1, 2)?,
            blocks,
        })
    }
}
