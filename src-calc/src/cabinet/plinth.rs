//! The plinth: how its own parts are screwed together, and how it is screwed under the bottom.

use super::frame::Frame;
use super::handles::{screw_length, screws};
use super::hooks::clear_of;
use super::part::{Axis, Part, What};
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use serde::Serialize;

/// So far, in millimetres, screws go into an edge or an end of the plinth at the most. Common practice.
const DEEP_MM: i64 = 35;
/// Screws through front and rear into every end of a cross. Common practice.
const EACH_END: usize = 2;

/// How a plinth is put together and put on.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Plinth {
    /// The bottom's place in the list of parts.
    pub under: usize,
    /// The lines of holes through the bottom, from its finished front edge: over the front, and over the rear.
    pub lines: [Length; 2],
    /// The holes in each, from the bottom's left end.
    pub screws: Vec<Length>,
    /// How long those screws are.
    pub screw: Length,
    /// How many screws hold the crosses.
    pub cross_screws: usize,
    /// How long those are.
    pub cross_screw: Length,
}

/// The screws of a plinth; none where there is none.
pub(super) fn plinth(frame: &Frame, parts: &[Part]) -> Result<Option<Plinth>, Problems> {
    let of = |what: What| parts.iter().find(|part| part.what == what);
    let bottom = parts.iter().enumerate().find(|(_, part)| part.what == What::Bottom);
    let (Some((under, bottom)), Some(front), Some(rear)) = (bottom, of(What::PlinthFront), of(What::PlinthRear)) else {
        return Ok(None);
    };
    let (left, right) = bottom.place.along(Axis::Across);
    let length = right.minus(left)?;
    let line = |part: &Part| -> Result<Length, LengthError> {
        let (from, to) = part.place.along(Axis::Deep);
        frame.depth.minus(from.plus(to)?.times(1, 2)?)
    };
    let deep = |room: Length| Ok::<_, LengthError>(room.min(Length::mm(DEEP_MM, 1)?));
    let crosses: Vec<&Part> = parts.iter().filter(|part| matches!(part.what, What::PlinthCross { .. })).collect();
    let cross = crosses.first().map_or(Ok(Length::ZERO), |part| part.place.extent(Axis::Deep))?;
    Ok(Some(Plinth {
        under,
        lines: [line(front)?, line(rear)?],
        screws: clear_of(screws(length, Length::ZERO, "width")?, &[], &frame.uprights(left)?, length)?,
        screw: screw_length(frame.board, deep(front.place.extent(Axis::Up)?)?)?,
        cross_screws: crosses.len().saturating_mul(2 * EACH_END),
        cross_screw: screw_length(frame.board, deep(cross)?)?,
    }))
}
