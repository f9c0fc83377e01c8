//! The cross-section of a shelf: the board, and an edge strip glued to it, worked out as one.
//!
//! Each part counts by its own stiffness (the transformed section of mechanics textbooks). A strip on one edge only
//! makes the answer the average of a stiff front and a softer back.

use serde::{Deserialize, Serialize};

/// Where a stiffening strip is glued on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Strip {
    /// No strip.
    #[default]
    None,
    /// One strip in front of the board, tops flush.
    Front,
    /// The same in front and behind.
    FrontAndBack,
    /// One strip flat under the board.
    Under,
}

impl Strip {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::None, Self::Front, Self::FrontAndBack, Self::Under];

    /// How many strips that is.
    pub(super) const fn pieces(self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::Front | Self::Under => 1.0,
            Self::FrontAndBack => 2.0,
        }
    }
}

/// A rectangle of one material. Widths from front to back, heights upright; mm, MPa.
#[derive(Clone, Copy, Debug)]
pub(super) struct Part {
    pub(super) stiffness: f64,
    pub(super) width: f64,
    pub(super) height: f64,
}

/// The board and its strips as one bar.
#[derive(Clone, Copy, Debug)]
pub(super) struct Section {
    board: Part,
    board_bottom: f64,
    strip: Option<(Part, f64)>,
    /// Height of the neutral axis above the lowest fibre, mm.
    pub(super) axis: f64,
    /// E·I, N·mm².
    pub(super) stiffness: f64,
}

impl Section {
    /// `strip.width` is that of one strip.
    pub(super) fn new(board: Part, kind: Strip, strip: Part) -> Self {
        let strip = Part { width: strip.width * kind.pieces(), ..strip };
        let (board_bottom, strip_bottom) = match kind {
            Strip::None => (0.0, None),
            Strip::Under => (strip.height, Some(0.0)),
            Strip::Front | Strip::FrontAndBack => {
                let top = board.height.max(strip.height);
                (top - board.height, Some(top - strip.height))
            }
        };
        let strip = strip_bottom.map(|bottom| (strip, bottom));
        let parts = || std::iter::once((board, board_bottom)).chain(strip);
        let force = |part: &Part| part.stiffness * part.width * part.height;
        let middle = |part: &Part, bottom: f64| bottom + part.height / 2.0;
        let (moment, total) = parts().fold((0.0, 0.0), |(moment, total), (part, bottom)| {
            (moment + force(&part) * middle(&part, bottom), total + force(&part))
        });
        let axis = moment / total;
        let stiffness = parts()
            .map(|(part, bottom)| {
                let off = middle(&part, bottom) - axis;
                force(&part) * (part.height * part.height / 12.0 + off * off)
            })
            .sum();
        Self { board, board_bottom, strip, axis, stiffness }
    }

    /// Height of the board's middle above the lowest fibre, mm.
    pub(super) fn board_middle_mm(&self) -> f64 {
        self.board_bottom + self.board.height / 2.0
    }

    /// The same of the strip, if there is one.
    pub(super) fn strip_middle_mm(&self) -> Option<f64> {
        self.strip.map(|(part, bottom)| bottom + part.height / 2.0)
    }

    fn stress(&self, part: Part, bottom: f64, moment: f64) -> f64 {
        let furthest = (bottom - self.axis).abs().max((bottom + part.height - self.axis).abs());
        part.stiffness * moment * furthest / self.stiffness
    }

    /// The largest bending stress in the board, MPa, under a moment in N·mm.
    pub(super) fn board_stress(&self, moment: f64) -> f64 {
        self.stress(self.board, self.board_bottom, moment)
    }

    /// The same in the strip, if there is one.
    pub(super) fn strip_stress(&self, moment: f64) -> Option<f64> {
        self.strip.map(|(part, bottom)| self.stress(part, bottom, moment))
    }
}
