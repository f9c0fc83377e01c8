//! Whether the opening is square: its diagonal, and what two unequal diagonals mean for the panel.

use super::Across;
use crate::measure::Length;
use serde::Serialize;

/// The opening's diagonal, and its lean where both diagonals were measured.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Squareness {
    /// What both diagonals measure when the opening is square, in millimetres.
    pub diagonal_mm: f64,
    /// The same for the smallest opening that the readings allow.
    pub diagonal_low_mm: f64,
    /// The same for the largest.
    pub diagonal_high_mm: f64,
    /// How far it leans, where both diagonals were measured.
    pub lean: Option<Lean>,
}

/// How far the opening leans, taken as a parallelogram with sides as measured.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Lean {
    /// How far the top stands to the right of the bottom, in millimetres; to the left when below zero.
    pub over_height_mm: f64,
    /// How far one end of the bottom would be up, were the sides plumb, in millimetres.
    pub over_width_mm: f64,
    /// Out of square, in degrees.
    pub degrees: f64,
    /// By how much the measured diagonals are longer than the width and height allow, in millimetres. More than the
    /// tape's doubt: one of the four readings is wrong, or the opening is no parallelogram.
    pub misfit_mm: f64,
    /// Whether a square-cut panel still goes in, turned a little if need be.
    pub goes_in: bool,
}

impl Squareness {
    /// `D = √(O² + P²)`.
    pub(super) fn new(width: &Across, height: &Across) -> Self {
        let diagonal = |width: Length, height: Length| width.as_mm().hypot(height.as_mm());
        Self {
            diagonal_mm: diagonal(width.opening.nominal(), height.opening.nominal()),
            diagonal_low_mm: diagonal(width.opening.low(), height.opening.low()),
            diagonal_high_mm: diagonal(width.opening.high(), height.opening.high()),
            lean: None,
        }
    }
}

impl Lean {
    /// In a parallelogram with sides `O` and `P` the squares of the diagonals differ by `4·O·P·sin δ`, so the top
    /// stands `P·sin δ = (D₁² − D₂²) / (4·O)` over. Nothing when no parallelogram has such diagonals.
    ///
    /// `first_mm` runs from the bottom left to the top right, `second_mm` from the bottom right to the top left.
    pub(super) fn new(first_mm: f64, second_mm: f64, width: &Across, height: &Across) -> Option<Self> {
        let (across_mm, up_mm) = (width.opening.nominal().as_mm(), height.opening.nominal().as_mm());
        let squares = (first_mm - second_mm) * (first_mm + second_mm);
        let over_height_mm = squares / (4.0 * across_mm);
        let over_width_mm = squares / (4.0 * up_mm);
        let lean = over_height_mm / up_mm;
        if lean.is_nan() || lean.abs() >= 1.0 {
            return None;
        }
        let radians = lean.asin();
        let misfit_mm = first_mm.hypot(second_mm) / std::f64::consts::SQRT_2 - across_mm.hypot(up_mm);
        Some(Self {
            over_height_mm,
            over_width_mm,
            degrees: radians.to_degrees(),
            misfit_mm,
            goes_in: goes_in(radians.abs(), width, height),
        })
    }
}

/// Whether the panel, a rectangle, goes into the room, a parallelogram out of square by `lean` radians.
///
/// A convex shape goes into a parallelogram when it is no wider than each pair of parallel sides, looked at square to
/// that pair. Turning the panel by part of the lean shares it between both pairs: each bears a turn of its own at most.
fn goes_in(lean: f64, width: &Across, height: &Across) -> bool {
    let (panel_mm, tall_mm) = (width.size.nominal().as_mm(), height.size.nominal().as_mm());
    match (turn_room(panel_mm, tall_mm, slab_mm(width, lean)), turn_room(tall_mm, panel_mm, slab_mm(height, lean))) {
        (Some(sides), Some(ends)) => sides + ends >= lean,
        _ => false,
    }
}

/// Between the two stops of a direction, square to them, in the smallest opening. The depth of a groove is square
/// to its face already, whatever the lean. Nothing where nothing stops it.
fn slab_mm(across: &Across, lean: f64) -> Option<f64> {
    let room = across.largest?.as_mm();
    let opening = across.opening.low().as_mm();
    Some(opening * lean.cos() + (room - opening))
}

/// By how many radians a rectangle `along` by `over` can turn and still be no wider than `slab`:
/// `along·cos φ + over·sin φ ≤ slab`. Nothing when it is too wide unturned.
fn turn_room(along: f64, over: f64, slab: Option<f64>) -> Option<f64> {
    let Some(slab) = slab else { return Some(std::f64::consts::FRAC_PI_2) };
    if along > slab {
        return None;
    }
    let reach = along.hypot(over);
    Some(if slab >= reach { std::f64::consts::FRAC_PI_2 } else { (over.atan2(along) - (slab / reach).acos()).max(0.0) })
}
