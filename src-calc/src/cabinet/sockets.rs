//! Where the sockets of the clothes rail are screwed on.

use super::frame::Frame;
use super::part::{Axis, Hand, Part, What};
use super::read::Given;
use crate::cards::clothes_rail;
use crate::measure::{Length, LengthError};
use serde::Serialize;

/// A socket in a board beside the rail's bay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Socket {
    /// The board's place in the list of parts.
    pub on: usize,
    /// Which of its faces, seen from in front.
    pub face: Hand,
    /// Its middle, from the board's lower end.
    pub up: Length,
    /// The same from the board's finished front edge.
    pub from_front: Length,
}

/// Both sockets, the left one first; none without a rail. The rail's card says how far below the top and before the back
/// its middle is.
pub(super) fn sockets(
    given: &Given,
    frame: &Frame,
    rail: Option<&clothes_rail::Answer>,
    parts: &[Part],
) -> Result<Vec<Socket>, LengthError> {
    let (Some(bay), Some(rail)) = (given.rail_bay, rail) else { return Ok(Vec::new()) };
    let left = if bay == 1 { What::Side(Hand::Left) } else { What::Upright { after: bay - 1 } };
    let right = if bay == given.bays { What::Side(Hand::Right) } else { What::Upright { after: bay } };
    let (_, under_top) = frame.opening()?;
    let middle = under_top.minus(rail.room.middle_down)?;
    let from_front = frame.depth.minus(frame.inner.plus(rail.room.from_back)?)?;
    let one = |(what, face): (What, Hand)| {
        let (on, part) = parts.iter().enumerate().find(|(_, part)| part.what == what)?;
        let (low, _) = part.place.along(Axis::Up);
        Some(middle.minus(low).map(|up| Socket { on, face, up, from_front }))
    };
    [(left, Hand::Right), (right, Hand::Left)].into_iter().filter_map(one).collect()
}
