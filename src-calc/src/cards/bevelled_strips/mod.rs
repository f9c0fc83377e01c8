//! Bevelled strips: how many a board gives, and how each cut's fence is set.

mod passes;
mod rip;
mod solved;
#[cfg(test)]
mod tests;
mod working;

pub use passes::{Cut, Face, Pass, Touching, Turn};
pub use rip::{Corner, Quad};
pub use solved::solve;

use super::Card;
use crate::caution::Caution;
use crate::measure::{AngleReading, Figure, Length, Reading};
use crate::working::Working;
use serde::{Deserialize, Serialize};

/// What comes off the board.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Shape {
    /// Both edges lean the same way: the board is never turned between strips.
    #[default]
    Parallelogram,
    /// Both edges lean inwards: the board is turned between strips, so that neighbours nest and share a kerf.
    Trapezoid,
    /// One rip parts the board into two equal cleats, each with one square edge. The strip width, the first edge, and
    /// the number wanted do not matter.
    CleatPair,
}

impl Shape {
    /// Every shape, in the order of a list.
    pub const ALL: &[Self] = &[Self::Parallelogram, Self::Trapezoid, Self::CleatPair];
}

/// Where the strip's width is measured. The same everywhere on a parallelogram.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MeasuredAt {
    /// Over the wider face.
    #[default]
    WideFace,
    /// Over the narrower face.
    NarrowFace,
    /// Half way through the thickness.
    MidThickness,
}

impl MeasuredAt {
    /// Every place, in the order of a list.
    pub const ALL: &[Self] = &[Self::WideFace, Self::NarrowFace, Self::MidThickness];
}

/// The board's first edge.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FirstEdge {
    /// Square: a first pass bevels it.
    #[default]
    Square,
    /// Already bevelled at this angle. The board's width is then measured over its wider face.
    Bevelled,
}

impl FirstEdge {
    /// Both, in the order of a list.
    pub const ALL: &[Self] = &[Self::Square, Self::Bevelled];
}

/// What the maker gives. `Default` is the louvres in the door of a potting-shed cupboard.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Width of the board, over its wider face. Its second edge is square.
    pub board_width: Reading,
    /// Thickness of the board.
    pub thickness: Reading,
    /// How far the blade leans from upright: 0 to 50°.
    pub bevel: AngleReading,
    /// Width of a finished strip.
    pub strip_width: Reading,
    /// Where that width is measured.
    pub measured_at: MeasuredAt,
    /// What comes off the board.
    pub shape: Shape,
    /// Whether the first edge is bevelled already.
    pub first_edge: FirstEdge,
    /// What the blade takes, measured square to it.
    pub kerf: Reading,
    /// What is left on each sawn edge to be planed off, measured square to that edge. A strip has two sawn edges, a
    /// cleat of a pair one.
    pub planing: Reading,
    /// How far the topmost tooth stands above the board.
    pub tooth_above: Reading,
    /// How many strips are wanted; blank for as many as the board gives.
    pub wanted: Figure,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            board_width: Reading::mm("220"),
            thickness: Reading::mm("18"),
            bevel: AngleReading::from("30"),
            strip_width: Reading::mm("45"),
            measured_at: MeasuredAt::WideFace,
            shape: Shape::Parallelogram,
            first_edge: FirstEdge::Square,
            kerf: Reading::mm("3.2"),
            planing: Reading::mm("0"),
            tooth_above: Reading::mm("5"),
            wanted: Figure::default(),
        }
    }
}

/// The width of a strip at its three places, in millimetres.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Widths {
    /// Over the wider face.
    pub wide_mm: f64,
    /// Half way through.
    pub mid_mm: f64,
    /// Over the narrower face.
    pub narrow_mm: f64,
}

impl Widths {
    /// A width less what planing takes, or more what it needs.
    fn grown(self, by_mm: f64) -> Self {
        Self { wide_mm: self.wide_mm + by_mm, mid_mm: self.mid_mm + by_mm, narrow_mm: self.narrow_mm + by_mm }
    }
}

/// The board's cross-section, lying on its marked face: `x` from its first edge, `y` up, in millimetres.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Section {
    /// Width of the board.
    pub width: Length,
    /// Thickness of the board.
    pub thickness: Length,
    /// The strips as sawn, from the first edge.
    pub strips: Vec<Quad>,
    /// Where the blade went, the trim of the first edge included. A kerf may run off the board.
    pub kerfs: Vec<Quad>,
    /// What is left: four corners, three where the last kerf runs off the board, or none.
    pub offcut: Vec<Corner>,
}

/// How many strips, and how each is cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// As many strips as the board gives.
    pub fits: u32,
    /// As many as are cut: those wanted, or all that fit.
    pub count: u32,
    /// How many of those wanted the board does not give.
    pub missing: u32,
    /// How many such boards give all that are wanted; one when no number was given.
    pub boards: u32,
    /// The bevel, in degrees.
    pub bevel_degrees: f64,
    /// How far a cut walks sideways from face to face, in millimetres.
    pub slope_mm: f64,
    /// The kerf along a face, in millimetres.
    pub kerf_on_face_mm: f64,
    /// A finished strip.
    pub finished: Widths,
    /// A strip as sawn, with the planing allowance on it.
    pub sawn: Widths,
    /// Square from bevel to bevel of a finished strip, in millimetres; a strip whose edges are not parallel has none.
    pub square_to_bevel_mm: Option<f64>,
    /// Width of the finished bevel, from corner to corner, in millimetres.
    pub bevel_width_mm: f64,
    /// From the fence to the near side of the blade, at the table, for every strip, in millimetres.
    pub fence_mm: f64,
    /// The same for the pass that bevels the first edge; nothing when there is none.
    pub trim_fence_mm: Option<f64>,
    /// Length of blade above the table, along the blade, in millimetres.
    pub blade_above_table_mm: f64,
    /// Width of board that the strips cut take up, over the wider face, in millimetres.
    pub used_mm: f64,
    /// Width of board beyond that, the last kerf still in it, in millimetres.
    pub left_mm: f64,
    /// The offcut over its wider face, in millimetres; zero when nothing is left.
    pub offcut_wide_mm: f64,
    /// The offcut over its narrower face, in millimetres; zero when it comes to a point.
    pub offcut_narrow_mm: f64,
    /// Least width of board that would give all that are wanted, in millimetres.
    pub board_for_wanted_mm: f64,
    /// Every pass, in order.
    pub passes: Vec<Pass>,
    /// The cross-section.
    pub section: Section,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// This card for the registry.
pub const CARD: Card =
    Card { slug: "bevelled-strips", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
