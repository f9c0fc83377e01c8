//! From centre to centre: what is shared out, into how many shares, and how many pieces that lets stand.

use super::Spread;
use super::inputs::{Ends, Even, Inputs};
use super::read::{MOST, Read};
use crate::measure::{Length, LengthError, Quantity};
use crate::problem::{Problem, Problems};

/// Every way of spacing shares a length out into equal steps from centre to centre: `pitch = shared / (n + extra)`.
pub(super) struct Plan {
    shared: Length,
    extra: i64,
    width: Length,
    end: Length,
    even: Even,
    ends: Ends,
}

impl Plan {
    /// # Errors
    /// [`LengthError`] when a length cannot be held exactly.
    pub(super) fn new(even: Even, ends: Ends, read: &Read) -> Result<Self, LengthError> {
        let &Read { length, width, end, .. } = read;
        let (shared, extra) = match (ends, even) {
            // n pieces have n + 1 gaps; with one more width there is a piece to every gap.
            (Ends::Gap, Even::Gaps) => (length.plus(width)?, 1),
            (Ends::Gap, Even::Centres) => (length, 1),
            (Ends::Half, _) => (length, 0),
            (Ends::Piece, _) => (length.minus(width)?, -1),
            (Ends::Own, Even::Gaps) => (length.minus(end.times(2, 1)?)?.minus(width)?, -1),
            (Ends::Own, Even::Centres) => (length.minus(end.times(2, 1)?)?, -1),
        };
        Ok(Self { shared, extra, width, end, even, ends })
    }

    /// From centre to centre with so many pieces; with one piece, where there is an end gap that follows from it, the
    /// step that gives that.
    fn pitch(&self, count: u32) -> Result<Length, LengthError> {
        let shares = u64::try_from(i64::from(count) + self.extra).unwrap_or(0);
        self.shared.times(1, shares)
    }

    /// # Errors
    /// [`LengthError`] when a length cannot be held exactly.
    pub(super) fn spread(&self, count: u32) -> Result<Spread, LengthError> {
        let pitch = self.pitch(count)?;
        let gap = pitch.minus(self.width)?;
        let half = self.width.times(1, 2)?;
        let end_gap = match (self.ends, self.even) {
            (Ends::Gap, Even::Gaps) => gap,
            (Ends::Gap, Even::Centres) => pitch.minus(half)?,
            (Ends::Half, _) => gap.times(1, 2)?,
            (Ends::Piece, _) => Length::ZERO,
            (Ends::Own, Even::Gaps) => self.end,
            (Ends::Own, Even::Centres) => self.end.minus(half)?,
        };
        let several = count > 1;
        Ok(Spread { count, gap: several.then_some(gap), pitch: several.then_some(pitch), end_gap })
    }

    /// Whether so many stand on the length without overlap and without standing past its ends.
    ///
    /// # Errors
    /// [`LengthError`] when a length cannot be held exactly.
    pub(super) fn fits(&self, count: u32) -> Result<bool, LengthError> {
        if count < self.ends.fewest() || count > MOST {
            return Ok(false);
        }
        let spread = self.spread(count)?;
        Ok(!spread.end_gap.is_negative() && !spread.gap.is_some_and(Length::is_negative))
    }

    /// The fewest pieces that leave no gap larger than `limit`.
    fn fewest_within(&self, limit: Length) -> Result<i64, LengthError> {
        // One piece has no gap beside it but those at the ends, which may be half of what they would be between two.
        if self.ends.fewest() == 1 && self.spread(1)?.end_gap <= limit {
            return Ok(1);
        }
        // The step at which the largest gap is just the limit. With even centres the gap at an end is the larger one.
        let reach = match (self.ends, self.even) {
            (Ends::Gap, Even::Centres) => limit.plus(self.width.times(1, 2)?)?,
            _ => limit.plus(self.width)?,
        };
        // Rounded up: −⌊−x⌋.
        let shares = self.shared.negated().floor_div(reach)?.saturating_neg();
        Ok(shares.saturating_sub(self.extra))
    }

    /// How many pieces, as given or by the largest gap.
    ///
    /// # Errors
    /// A problem where they do not fit, or where no number keeps to the gap.
    pub(super) fn count(&self, inputs: &Inputs, read: &Read) -> Result<u32, Problems> {
        let fewest = self.ends.fewest();
        if !self.fits(fewest)? {
            let why = if fewest > 1 {
                "Two pieces do not fit: make them narrower, or the length longer."
            } else {
                "One piece does not fit: make it narrower, or the length longer."
            };
            return Err(Problems::one("width", Problem::Clash { why }));
        }
        if let Some(count) = read.count {
            if self.fits(count)? {
                return Ok(count);
            }
            let most = Quantity::count(self.most(count)?.into());
            return Err(Problems::one("count", Problem::TooLarge { most, why: "more do not fit on the length" }));
        }
        let limit = read.largest_gap.unwrap_or_default();
        let wanted = self.fewest_within(limit)?.max(fewest.into());
        match u32::try_from(wanted) {
            Ok(count) if count <= MOST => {
                if self.fits(count)? {
                    return Ok(count);
                }
                let closest = self.spread(self.most(count)?)?;
                let least = match inputs.ends {
                    Ends::Own => closest.gap.unwrap_or_default(),
                    _ => closest.gap.map_or(closest.end_gap, |gap| gap.max(closest.end_gap)),
                };
                let why = "with a smaller one, one piece more would be needed, and that does not fit";
                Err(Problems::one("largest_gap", Problem::TooSmall { least: least.into(), why }))
            }
            _ => {
                let why =
                    "That takes more than 100 pieces: allow a larger gap, or take a part of the length at a time.";
                Err(Problems::one("largest_gap", Problem::Clash { why }))
            }
        }
    }

    /// The most pieces below `count` that fit; the fewest fit, as has been seen.
    fn most(&self, count: u32) -> Result<u32, LengthError> {
        let (mut fit, mut over) = (self.ends.fewest(), count);
        while over.saturating_sub(fit) > 1 {
            let middle = u32::midpoint(fit, over);
            if self.fits(middle)? { fit = middle } else { over = middle }
        }
        Ok(fit)
    }
}
