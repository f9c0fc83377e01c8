//! Even spacing: pieces of a width on a length, marked from one end.
//!
//! Every mark is worked out from the end by itself, exactly, and rounded once when it is shown. Stepping off one rounded
//! gap after another adds the rounding up.

mod inputs;
mod plan;
mod read;
mod steps;

pub use inputs::{By, Ends, Even, Inputs};

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use crate::working::Working;
use plan::Plan;
use read::Read;
use serde::Serialize;

/// One piece, measured from where the tape is hooked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Piece {
    /// Its edge towards the tape's end.
    pub near: Length,
    /// Its middle.
    pub centre: Length,
    /// Its other edge.
    pub far: Length,
}

/// So many pieces, and what they leave between them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Spread {
    /// How many pieces.
    pub count: u32,
    /// The gap between two neighbours; nothing where there is one piece.
    pub gap: Option<Length>,
    /// From centre to centre; nothing where there is one piece.
    pub pitch: Option<Length>,
    /// From each end of the length to the nearest edge.
    pub end_gap: Length,
}

/// How the gaps stand to the largest that is allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Within {
    /// No gap is larger; the largest has so much to spare.
    Spare(Length),
    /// Between the pieces it holds, but the end distance that was given leaves so much too much.
    EndsOver(Length),
}

/// Where every piece goes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// The length that is shared out.
    pub length: Length,
    /// The width of a piece.
    pub width: Length,
    /// From where the tape is hooked to where the length begins.
    pub datum: Length,
    /// The pieces and gaps.
    pub spread: Spread,
    /// With one piece fewer, where that is a spread at all.
    pub fewer: Option<Spread>,
    /// With one piece more, where it fits.
    pub more: Option<Spread>,
    /// How it stands to the largest gap, where one was given.
    pub within: Option<Within>,
    /// Every piece, from the tape's end.
    pub pieces: Vec<Piece>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// Shares a length out.
///
/// # Errors
/// A problem for each field that cannot be used: pieces that do not fit, a gap that no number of pieces keeps to, one
/// piece where both ends want one.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let plan = Plan::new(inputs.even, inputs.ends, &read)?;
    let count = plan.count(inputs, &read)?;
    let spread = plan.spread(count)?;
    let beside = |count: Option<u32>| match count {
        Some(count) if plan.fits(count)? => plan.spread(count).map(Some),
        _ => Ok(None),
    };
    Ok(Answer {
        length: read.length,
        width: read.width,
        datum: read.datum,
        fewer: beside(count.checked_sub(1))?,
        more: beside(count.checked_add(1))?,
        within: within(&read, &spread)?,
        pieces: pieces(&read, &spread)?,
        working: steps::working(inputs, &read, &spread)?,
        cautions: vec![Caution::Railing],
        spread,
    })
}

fn within(read: &Read, spread: &Spread) -> Result<Option<Within>, LengthError> {
    let Some(limit) = read.largest_gap else { return Ok(None) };
    let over = spread.end_gap.minus(limit)?;
    if over.is_positive() {
        return Ok(Some(Within::EndsOver(over)));
    }
    let largest = spread.gap.map_or(spread.end_gap, |gap| gap.max(spread.end_gap));
    Ok(Some(Within::Spare(limit.minus(largest)?)))
}

/// Each from the end by itself: no piece depends on the one before it.
fn pieces(read: &Read, spread: &Spread) -> Result<Vec<Piece>, LengthError> {
    let first = read.datum.plus(spread.end_gap)?;
    let half = read.width.times(1, 2)?;
    (0..spread.count)
        .map(|at| {
            let near = first.plus(spread.pitch.unwrap_or_default().times(at.into(), 1)?)?;
            Ok(Piece { near, centre: near.plus(half)?, far: near.plus(read.width)? })
        })
        .collect()
}

/// The even spacing card.
pub const CARD: Card = Card { slug: "spacing", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
