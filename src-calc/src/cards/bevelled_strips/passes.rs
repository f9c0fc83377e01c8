//! The passes over the saw: what is turned before each, which face is up, and where the fence stands.
//!
//! The blade leans away from the fence. The piece between the fence and the blade is the strip, except in the trim of
//! the first edge, where it is the board. A cut made so leaves that piece longer on its upper face, and the rest longer
//! on its lower one: so a freshly cut board that is pushed up again as it lies touches the fence with its lower corner,
//! and with its upper corner once it has been turned end over end.

use super::{FirstEdge, Shape};
use serde::Serialize;

/// What a pass is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Cut {
    /// Bevels the first edge; what falls off is waste.
    Trim,
    /// Cuts a strip.
    Strip,
}

/// A face of the board. The marked one is that on which the trimmed board is wider: the face below in the picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Face {
    /// The marked face.
    Marked,
    /// The other face.
    Other,
}

/// What is done with the board before the pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Turn {
    /// Laid down: before the first pass.
    Start,
    /// Pushed up to the fence as it lies.
    Keep,
    /// Rolled over about its length: the other face up, the other edge to the fence.
    Roll,
    /// Turned end for end on the table: the same face up, the other edge to the fence.
    Spin,
    /// Turned end over end: the other face up, the same edge to the fence.
    EndOverEnd,
}

/// What of the board touches the fence.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Touching {
    /// A square edge, with its whole height.
    Square,
    /// The lower corner of a bevelled edge: it can creep under the fence.
    Lower,
    /// The upper corner of a bevelled edge.
    Upper,
}

/// One pass over the saw.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// What it is for.
    pub cut: Cut,
    /// What is done with the board first.
    pub turn: Turn,
    /// The face that is up.
    pub up: Face,
    /// What touches the fence.
    pub touching: Touching,
    /// From the fence to the near side of the blade, at the table, in millimetres.
    pub fence_mm: f64,
}

/// How a board is cut.
pub(super) struct Plan {
    pub(super) shape: Shape,
    pub(super) first_edge: FirstEdge,
    /// Whether the blade stands upright.
    pub(super) upright: bool,
    /// Strips to cut.
    pub(super) count: u32,
    /// Whether the last strip is what is left over, so that no pass is needed for it.
    pub(super) last_is_rest: bool,
    pub(super) fence_mm: f64,
    pub(super) trim_fence_mm: f64,
}

impl Plan {
    /// Every pass, in order.
    pub(super) fn passes(&self) -> Vec<Pass> {
        let mut passes = Vec::new();
        if self.shape == Shape::CleatPair {
            return vec![self.strip(Turn::Start, Face::Other, Touching::Square)];
        }
        if self.trims() {
            passes.push(Pass {
                cut: Cut::Trim,
                turn: Turn::Start,
                up: Face::Marked,
                touching: Touching::Square,
                fence_mm: self.trim_fence_mm,
            });
        }
        for index in 0..self.count - u32::from(self.last_is_rest).min(self.count) {
            passes.push(if self.upright { self.square_strip(index) } else { self.bevelled_strip(index) });
        }
        passes
    }

    /// Whether the first edge must be bevelled before the first strip.
    pub(super) fn trims(&self) -> bool {
        self.shape != Shape::CleatPair && self.first_edge == FirstEdge::Square && !self.upright
    }

    fn square_strip(&self, index: u32) -> Pass {
        self.strip(if index == 0 { Turn::Start } else { Turn::Keep }, Face::Other, Touching::Square)
    }

    fn bevelled_strip(&self, index: u32) -> Pass {
        let trapezoid = self.shape == Shape::Trapezoid;
        let turn = match (index, trapezoid) {
            (0, _) if !self.trims() => Turn::Start,
            (0, true) => Turn::Spin,
            (0, false) => Turn::Roll,
            (_, true) => Turn::EndOverEnd,
            (_, false) => Turn::Keep,
        };
        // The wider face is up under a nested strip, and lies down under one that keeps the board as it is.
        let up = if trapezoid && index.is_multiple_of(2) { Face::Marked } else { Face::Other };
        self.strip(turn, up, if trapezoid { Touching::Upper } else { Touching::Lower })
    }

    fn strip(&self, turn: Turn, up: Face, touching: Touching) -> Pass {
        Pass { cut: Cut::Strip, turn, up, touching, fence_mm: self.fence_mm }
    }
}
