//! What the answer for rows of holes holds. Every length is exact; along the side from the datum end, across it from
//! the front edge.

use super::notes::Note;
use crate::caution::Caution;
use crate::measure::Length;
use crate::working::Working;
use serde::Serialize;

/// One hole of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Hole {
    /// Its place in the full row, from one: the index hole of the rail.
    pub number: u64,
    /// Its middle, from the datum end.
    pub at: Length,
    /// Whether a hinge plate is screwed to it.
    pub plate: bool,
}

/// A row of holes along the side.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// From the front edge.
    pub from_front: Length,
    /// The edge of the rail that the drill runs along, from the front edge.
    pub rail_edge: Length,
    /// The holes that are drilled, from the datum end.
    pub holes: Vec<Hole>,
}

/// By how much a size would have to change to fit whole steps; both are zero where it fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Change {
    /// So much less would do.
    pub less: Length,
    /// So much more would do.
    pub more: Length,
}

impl Change {
    /// Whether nothing has to change.
    pub fn fits(&self) -> bool {
        self.less.is_zero()
    }
}

/// A hinge plate on the front row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Plate {
    /// Its middle, from the datum end: halfway between two holes.
    pub middle: Length,
    /// Its hole nearer to the datum end.
    pub near_hole: Length,
    /// Its other hole.
    pub far_hole: Length,
    /// How far it lies from where it was wished; less than zero towards the datum end.
    pub moved: Length,
    /// The middle of the cup, from the end of the door next to the datum.
    pub on_door: Length,
}

/// Which side of the cabinet, seen from in front.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The left one.
    Left,
    /// The right one.
    Right,
}

/// A side as it lies on the bench, its inner face up and its datum end to the left.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Hand {
    /// Which one.
    pub side: Side,
    /// Whether its front edge is the one next to the person; else it lies away.
    pub front_near: bool,
    /// The front row, from the edge next to the person.
    pub front: Length,
    /// The rear row, from the edge next to the person.
    pub rear: Option<Length>,
}

/// How the rows divide the side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Balance {
    /// The holes lie alike from both ends: turned end for end, a left side is a right side.
    Alike,
    /// Full rows would lie alike from both ends; what is left out, or a hinge, does not.
    RowsOnly,
    /// The last hole is not as far from its end as the first.
    Uneven,
}

/// Rows, hands, hinges.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Length of the side.
    pub height: Length,
    /// Depth of the side.
    pub depth: Length,
    /// Diameter of the holes.
    pub hole: Length,
    /// Holes in a full row.
    pub count: u64,
    /// The first hole of a full row, from the datum end: where the rail's end stop is set from its first index hole.
    pub first: Length,
    /// The last hole of a full row, from the other end.
    pub last_from_end: Length,
    /// How the rows divide the side.
    pub balance: Balance,
    /// The change of the side's length at which both ends keep just the given distance.
    pub height_change: Change,
    /// The front row.
    pub front: Row,
    /// The rear row.
    pub rear: Option<Row>,
    /// From row to row.
    pub apart: Option<Length>,
    /// The change of the side's depth at which balanced rows are whole steps apart.
    pub depth_change: Change,
    /// The left side, then the right one.
    pub hands: [Hand; 2],
    /// The hinge plates, in the order in which they were given.
    pub plates: Vec<Plate>,
    /// What is left of the side behind a hole.
    pub left_behind: Length,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}
