//! The geometry of ripping with a tilted blade, in millimetres: estimates, since tangents and cosines are no fractions.
//!
//! The board is seen from its end, lying on its marked face: `x` from its first edge, `y` up from the marked face.
//! A cut leans: it walks sideways by [`Rip::slope_mm`] between the faces. A line is known by its `x` half way up.

/// A corner of the cross-section: `[x, y]` in millimetres.
pub type Corner = [f64; 2];
/// Four corners, counter-clockwise from the left end on the marked face.
pub type Quad = [Corner; 4];

/// A nanometre. What fits but for less than this fits: it is rounding, not wood.
pub(super) const NANOMETRE_MM: f64 = 1e-6;

/// Which way the cuts lean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lean {
    /// All the same way.
    Alike,
    /// Every second one the other way.
    Alternate,
}

/// A row of strips, each `pitch` wide half way up, out of one board.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rip {
    /// Width of the board, over its wider face.
    pub(super) board_mm: f64,
    /// Thickness.
    pub(super) thickness_mm: f64,
    /// How far a cut walks sideways from one face to the other: `t·tan β`.
    pub(super) slope_mm: f64,
    /// The kerf along a face: `k / cos β`.
    pub(super) kerf_mm: f64,
    /// Width of a strip as sawn, half way up.
    pub(super) sawn_mm: f64,
    /// Which way the cuts lean.
    pub(super) lean: Lean,
}

impl Rip {
    /// How many strips the board gives, as a number that may be too large to count.
    ///
    /// Each strip costs its middle width and a kerf, the last one no kerf, and the leaning ends of the row stick out by
    /// half a slope each: `n·f + (n − 1)·q + s ≤ W`.
    pub(super) fn most(&self) -> f64 {
        let row = self.board_mm - self.slope_mm + self.kerf_mm + NANOMETRE_MM;
        (row / (self.sawn_mm + self.kerf_mm)).floor().max(0.0)
    }

    /// The width of board that `count` strips take up, over the wider face.
    pub(super) fn used_mm(&self, count: f64) -> f64 {
        count * self.sawn_mm + (count - 1.0) * self.kerf_mm + self.slope_mm
    }

    /// Strip number `index`, counted from nought.
    pub(super) fn strip(&self, index: usize) -> Quad {
        let left = self.left_of(index);
        self.between((left, index), (left + self.sawn_mm, index + 1))
    }

    /// The kerf on the right of so many strips; that of none is the trim of the first edge. Not clipped to the board.
    pub(super) fn kerf_after(&self, count: usize) -> Quad {
        let right = self.left_of(count);
        self.between((right - self.kerf_mm, count), (right, count))
    }

    /// What is left of the board on the right of the kerf after so many strips: four corners, three, or none.
    pub(super) fn offcut(&self, count: usize) -> Vec<Corner> {
        let [bottom, top] = self.line(self.left_of(count), count);
        let (edge, thickness) = (self.board_mm, self.thickness_mm);
        // Where the kerf runs off the board, the right edge is met part of the way up.
        let met = thickness * (edge - bottom) / (top - bottom);
        match (bottom < edge - NANOMETRE_MM, top < edge - NANOMETRE_MM) {
            (true, true) => vec![[bottom, 0.0], [edge, 0.0], [edge, thickness], [top, thickness]],
            (true, false) => vec![[bottom, 0.0], [edge, 0.0], [edge, met]],
            (false, true) => vec![[edge, met], [edge, thickness], [top, thickness]],
            (false, false) => Vec::new(),
        }
    }

    /// What lies between two cuts, each given half way up and by its number.
    fn between(&self, (left, left_cut): (f64, usize), (right, right_cut): (f64, usize)) -> Quad {
        let ([left, left_top], [right, right_top]) = (self.line(left, left_cut), self.line(right, right_cut));
        [[left, 0.0], [right, 0.0], [right_top, self.thickness_mm], [left_top, self.thickness_mm]]
    }

    /// Half way up, the left side of a strip.
    #[allow(clippy::cast_precision_loss, reason = "a board gives a few hundred strips at most")]
    fn left_of(&self, index: usize) -> f64 {
        self.slope_mm / 2.0 + index as f64 * (self.sawn_mm + self.kerf_mm)
    }

    /// Where cut number `cut` through `middle` meets the marked face and the other one.
    fn line(&self, middle: f64, cut: usize) -> [f64; 2] {
        let half = self.slope_mm / 2.0;
        let half = if self.lean == Lean::Alternate && cut % 2 == 1 { -half } else { half };
        [middle - half, middle + half]
    }
}
