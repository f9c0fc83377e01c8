//! What the answer for joints along an edge holds. Lengths are exact but for a slot's length and what slopes.

use super::inputs::Kind;
use super::notes::Note;
use crate::caution::Caution;
use crate::measure::Length;
use crate::working::Working;
use serde::Serialize;

/// One mortise, hole or slot, and its fellow in the other part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Fixing {
    /// Its extent across the edge part's thickness.
    pub across: Length,
    /// The same in the other part, wider where a shank goes through.
    pub across_other: Length,
    /// Its extent along the joint at the surface; rounded to a nanometre for a slot.
    pub along: Length,
    /// Depth in the edge part; for a pocket from the end to the shoulder, along the screw.
    pub in_edge: Length,
    /// Depth in the other part, square to its face; rounded to a nanometre for what slopes.
    pub in_other: Length,
    /// Whether it goes right through the other part, as it should.
    pub through: bool,
}

/// The screw of a screwed joint.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Screw {
    /// Its length.
    pub length: Length,
    /// How far it reaches into the part that its point is in, along the screw.
    pub reach: Length,
    /// The longest that leaves the wanted skin, if the other part's thickness is a limit.
    pub longest: Option<Length>,
}

/// What is left of both parts round a mortise, hole or slot; less than zero where it breaks out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Left {
    /// Of the edge part, on its outer face.
    pub outer: Length,
    /// Of the edge part, on its inner face.
    pub inner: Length,
    /// Of the other part behind the bottom; none where it goes through on purpose or meets an edge.
    pub behind: Option<Length>,
    /// Of the other part, to its end; none where it meets an edge.
    pub to_end: Option<Length>,
    /// Along the joint, to the nearer end.
    pub ends: Length,
    /// The least of them.
    pub least: Length,
}

/// Whether all stays inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Stays {
    /// The wanted skin is left everywhere.
    Inside,
    /// Less than the wanted skin is left somewhere.
    Thin,
    /// It breaks out somewhere.
    BreaksOut,
}

/// How many, where, how deep.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// What holds the parts together.
    pub kind: Kind,
    /// Length of the joint.
    pub length: Length,
    /// Thickness of the edge part.
    pub edge_thickness: Length,
    /// Thickness of the face part; none where the edge part meets an edge.
    pub face_thickness: Option<Length>,
    /// Their middles, from the front end.
    pub marks: Vec<Length>,
    /// The same for the mating part when both lie side by side, measured from the same hand: from the back end.
    pub mirrored: Vec<Length>,
    /// From middle to middle; none for a single one.
    pub spacing: Option<Length>,
    /// From the outer face of the edge part to their middles.
    pub line: Length,
    /// From the end of the face part to their middles; none where the edge part meets an edge.
    pub line_on_face: Option<Length>,
    /// One of them.
    pub fixing: Fixing,
    /// The screw, for those.
    pub screw: Option<Screw>,
    /// What is left round it.
    pub left: Left,
    /// Whether all stays inside.
    pub stays: Stays,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}
