//! Wall cleat: two bevelled strips that hook into each other hang a cabinet, and where each of them goes.
//!
//! Seen from the side, `x` runs from the wall into the room and `y` up from the floor. The wall strip keeps its wide
//! face to the room, the cabinet's strip turns it to the wall; the bevel between them falls towards the wall. What a
//! tangent gives is taken to a nanometre and is exact from there on.

mod inputs;
mod read;
mod solved;
mod steps;
#[cfg(test)]
mod tests;

pub use inputs::{Back, Inputs};
pub use solved::solve;

use super::Card;
use crate::caution::Caution;
use crate::measure::Length;
use crate::working::Working;
use serde::Serialize;

/// Four corners in millimetres, counter-clockwise: `[x, y]`.
pub type Quad = [[f64; 2]; 4];

/// How the two strips are cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Method {
    /// One rip with the blade leaning by the bevel parts a board into both strips, lying flat on the table.
    OneRip,
    /// No saw leans that far: both strips are parted square, then bevelled standing on edge, the blade leaning by what
    /// is left to a right angle.
    OnEdge,
}

/// What a pass over the saw is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Cut {
    /// Parts the board into the pair, with the bevel on both.
    Pair,
    /// Parts the board square into two strips.
    Part,
    /// Bevels a strip that stands on edge with its wide face to the fence; done twice.
    Edge,
}

/// One setting of the saw. The blade leans away from the fence.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// What it is for.
    pub cut: Cut,
    /// How far the blade leans from upright, in degrees.
    pub lean_degrees: f64,
    /// From the fence to the near side of the blade, at the table.
    pub fence: Length,
}

/// Whether the cabinet can be lifted onto its strip.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lifts {
    /// It can; so much is to spare.
    On(Length),
    /// It cannot; so much is missing above it.
    Not(Length),
    /// No ceiling was given.
    Unknown,
}

/// The side view, in millimetres from the wall and from the floor.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Section {
    /// The wall strip.
    pub wall_strip: Quad,
    /// The cabinet's strip, hooked in.
    pub cabinet_strip: Quad,
    /// The lower spacer.
    pub spacer: Quad,
    /// The plane of the cabinet's rear edges.
    pub rear_mm: f64,
    /// The rear face of the cabinet's back.
    pub back_mm: f64,
    /// The cabinet's top.
    pub top_mm: f64,
    /// The cabinet's bottom.
    pub bottom_mm: f64,
}

/// The strips, and where they go.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Thickness of both strips.
    pub thickness: Length,
    /// Height of both strips over the wide face.
    pub wide: Length,
    /// Height of both strips over the narrow face.
    pub narrow: Length,
    /// The bevel from corner to corner, in millimetres.
    pub bevel_width_mm: f64,
    /// The bevel, from square, in degrees.
    pub bevel_degrees: f64,
    /// How far the back's rear face lies in front of the cabinet's rear edges; zero where it is flush with them.
    pub inset: Length,
    /// How far the cabinet's rear edges stand off the wall; zero where they lie on it.
    pub stands_off: Length,
    /// Thickness of the lower spacer, behind the back.
    pub spacer_thickness: Length,
    /// Length of the cabinet's strip.
    pub cabinet_strip_length: Length,
    /// Length of the wall strip and of the spacer, shorter so that the cabinet can be moved sideways.
    pub wall_strip_length: Length,
    /// The cabinet's top above the floor.
    pub top_at: Length,
    /// Lower edge of the wall strip above the floor.
    pub wall_strip_at: Length,
    /// Upper edge of the wall strip, at its point, above the floor.
    pub wall_strip_top: Length,
    /// The line of the wall strip's screws above the floor.
    pub screws_at: Length,
    /// Lower edge of the spacer above the floor.
    pub spacer_at: Length,
    /// How far the cabinet must be lifted to come off or on: so much has to be free above it.
    pub lift: Length,
    /// Whether there is room for that.
    pub lifts: Lifts,
    /// The highest that the cabinet's top can hang and still be lifted on below the ceiling; none without a ceiling.
    pub highest_top: Option<Length>,
    /// How the strips are cut.
    pub method: Method,
    /// Width of the board that gives both.
    pub board: Length,
    /// The settings of the saw.
    pub passes: Vec<Pass>,
    /// The side view.
    pub section: Section,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// This card for the registry.
pub const CARD: Card =
    Card { slug: "wall-cleat", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
