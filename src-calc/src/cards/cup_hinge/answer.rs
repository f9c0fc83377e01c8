//! What the answer for a door on cup hinges holds. Every length is exact.

use super::notes::Note;
use crate::caution::Caution;
use crate::measure::{Length, Range};
use crate::source::Source;
use crate::working::Working;
use serde::Serialize;

/// A plate that can be had, and what it does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Plate {
    /// Its height.
    pub height: Length,
    /// The overlay that it gives.
    pub overlay: Length,
    /// The gap that is seen then, as [`Answer::gap`].
    pub gap: Length,
    /// Whether no other plate comes nearer to the height that is needed.
    pub nearest: bool,
}

/// One hinge, from the lower end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Hinge {
    /// Middle of the cup, from the lower end of the door.
    pub on_door: Length,
    /// Middle of the plate, from the datum on the side.
    pub on_side: Length,
    /// The plate's lower hole, from the datum on the side.
    pub lower_hole: Length,
    /// The plate's upper hole, from the datum on the side.
    pub upper_hole: Length,
}

/// Whether the door has the room beside it that it needs to open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Opens {
    /// It opens, with so much to spare.
    Freely(Length),
    /// It strikes: so much is missing.
    Strikes(Length),
    /// The maker's figure is not given. It cannot be had from geometry: the arms of such a hinge move the door out
    /// while it turns, differently in each model, so there is no pivot to swing a corner about.
    Unknown,
}

/// The room beside the door, for opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Room {
    /// What each door has: the reveal, half of the gap on a partition, or the gap of an inset door.
    pub has: Length,
    /// What the maker's table asks for, if it is given.
    pub needs: Option<Length>,
    /// The verdict.
    pub opens: Opens,
    /// A maker's published figures as an example.
    pub example: Source,
}

/// A rectangle of the plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Rect {
    /// Its left edge.
    pub left: Length,
    /// Its edge towards the room.
    pub front: Length,
    /// Its extent to the right.
    pub width: Length,
    /// Its extent into the cabinet.
    pub depth: Length,
}

/// A plan section through a hinge, to scale, with the hinge on the left. From the outer face of the side to the right
/// (from the far face of a partition), and from the front edge of the carcass into the cabinet; in front of it is
/// less than zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Plan {
    /// The side or the partition, its front part.
    pub side: Rect,
    /// The whole door.
    pub door: Rect,
    /// The cup hole in it.
    pub cup: Rect,
    /// The plate as high as it is, drawn 32 mm long, around the line of its holes.
    pub plate: Rect,
    /// The line of the plate's holes, from the front edge.
    pub plate_line: Length,
    /// The next door's edge on a partition: the width of what of it lies over the partition.
    pub neighbour: Option<Rect>,
}

/// Door, cups, plates.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// How far the door covers the side on the hinge side; less than zero for an inset door.
    pub overlay: Length,
    /// Height of the plate.
    pub plate_height: Length,
    /// From the door's edge to the cup's.
    pub cup_edge: Length,
    /// The arm's constant.
    pub constant: Length,
    /// The gap that is seen: the reveal, the gap between two doors on the partition, or the gap of an inset door.
    pub gap: Length,
    /// The plates that can be had, low to high, and what each does.
    pub plates: Vec<Plate>,
    /// Width of each door.
    pub door_width: Range,
    /// Height of each door.
    pub door_height: Range,
    /// Weight of each door, kg. An estimate, unless it was given.
    pub door_weight_kg: f64,
    /// From the door's edge to the middle of the cup.
    pub cup_centre: Length,
    /// From the door's edge to the far edge of the cup.
    pub cup_far_edge: Length,
    /// What is left of the door behind the cup.
    pub left_behind: Length,
    /// The hinges of one door, from its lower end.
    pub hinges: Vec<Hinge>,
    /// From the carcass' front edge to the line of the plate's holes.
    pub plate_line: Length,
    /// Whether it opens.
    pub room: Room,
    /// The picture.
    pub plan: Plan,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}
