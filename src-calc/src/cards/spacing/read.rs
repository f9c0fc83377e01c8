//! From what was typed to lengths, with every problem named.

use super::inputs::{By, Ends, Even, Inputs};
use crate::measure::{FigureKind, Length, Quantity};
use crate::problem::{Problem, Problems};

/// The most pieces that are marked: a longer list is no help at the bench.
pub(super) const MOST: u32 = 100;

/// The inputs, read. What the choices do not call for is zero or none.
pub(super) struct Read {
    pub(super) length: Length,
    pub(super) width: Length,
    pub(super) end: Length,
    pub(super) count: Option<u32>,
    pub(super) largest_gap: Option<Length>,
    pub(super) datum: Length,
}

impl Inputs {
    /// The end distance: two outer pieces have to fit between the ends, and none may stand past them.
    fn read_end(&self, problems: &mut Problems, length: Option<Length>, width: Option<Length>) -> Option<Length> {
        if self.ends != Ends::Own {
            return Some(Length::ZERO);
        }
        let end = problems.zero_or_more("end", &self.end)?;
        let half = |whole: Option<Length>| whole.and_then(|whole| whole.times(1, 2).ok());
        if let Some(most) = half(length).filter(|most| end >= *most) {
            let why = "the outer pieces would pass each other";
            problems.add("end", Problem::TooLarge { most: most.into(), why });
        } else if let Some(least) = half(width).filter(|least| self.even == Even::Centres && end < *least) {
            let why = "the outer pieces would stand past the ends";
            problems.add("end", Problem::TooSmall { least: least.into(), why });
        }
        Some(end)
    }

    fn read_count(&self, problems: &mut Problems) -> Option<u32> {
        let count = problems.check("count", self.count.value(FigureKind::Count))?;
        let fewest = self.ends.fewest();
        if count < f64::from(fewest) {
            let why = if fewest > 1 { "both ends want a piece" } else { "there has to be something to space" };
            problems.add("count", Problem::TooSmall { least: Quantity::count(fewest.into()), why });
        } else if count > f64::from(MOST) {
            let why = "a longer list of marks is no help at the bench";
            problems.add("count", Problem::TooLarge { most: Quantity::count(MOST.into()), why });
        }
        (fewest..=MOST).find(|whole| f64::from(*whole) >= count)
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let length = problems.above_zero("length", &self.length);
        let width = problems.zero_or_more("width", &self.width);
        let end = self.read_end(&mut problems, length, width);
        let (count, largest_gap) = match self.by {
            By::Count => (self.read_count(&mut problems), None),
            By::LargestGap => (None, problems.above_zero("largest_gap", &self.largest_gap)),
        };
        let datum = problems.zero_or_more("datum", &self.datum);
        match (length, width, end, datum) {
            (Some(length), Some(width), Some(end), Some(datum)) if problems.is_empty() => {
                Ok(Read { length, width, end, count, largest_gap, datum })
            }
            _ => Err(problems),
        }
    }
}
