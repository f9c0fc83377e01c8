//! The working of a ripping job, line by line.

use super::rip::Rip;
use super::solved::{Given, blade_mm};
use super::{FirstEdge, Inputs, MeasuredAt, Shape, Widths};
use crate::measure::{Length, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const ROW: Source = Source::practice(
    "plane geometry: each strip costs its middle width and a kerf, the last one no kerf, the leaning ends one slope together",
);
const FENCE: Source = Source::practice(
    "plane geometry, with the blade leaning away from the fence: measured at the table, to the near side of the blade",
);

fn tilt(working: &mut Working, given: &Given) {
    let bevel = Quantity::from(given.bevel);
    working.step(
        "How far the cut walks from face to face",
        "s = t × tan(β)",
        [("t", given.thickness.into()), ("β", bevel)],
        Quantity::mm(given.slope_mm),
        GEOMETRY,
    );
    working.step(
        "Kerf along a face",
        "q = k / cos(β)",
        [("k", given.kerf.into()), ("β", bevel)],
        Quantity::mm(given.kerf_mm),
        GEOMETRY,
    );
    if given.planing.is_positive() {
        working.step(
            "Planing allowance along a face",
            "u = p / cos(β)",
            [("p", given.planing.into()), ("β", bevel)],
            Quantity::mm(given.planing_mm),
            GEOMETRY,
        );
    }
}

fn blade(working: &mut Working, given: &Given) {
    working.step(
        "Blade above the table, along the blade",
        "h = (t + a) / cos(β)",
        [("t", given.thickness.into()), ("a", given.tooth_above.into()), ("β", given.bevel.into())],
        Quantity::mm(blade_mm(given)),
        GEOMETRY,
    );
}

/// A row of strips.
pub(super) fn of_row(inputs: &Inputs, given: &Given, strip_width: Length, rip: &Rip, count: u32) -> Working {
    let mut working = Working::default();
    tilt(&mut working, given);
    let (slope, kerf, sawn) = (Quantity::mm(rip.slope_mm), Quantity::mm(rip.kerf_mm), Quantity::mm(rip.sawn_mm));
    let allowance = ("u", Quantity::mm(given.planing_mm));
    let width = ("w", Quantity::from(strip_width));
    let formula = match (inputs.shape, inputs.measured_at) {
        (Shape::Trapezoid, MeasuredAt::WideFace) => "f = w − s + 2 × u",
        (Shape::Trapezoid, MeasuredAt::NarrowFace) => "f = w + s + 2 × u",
        _ => "f = w + 2 × u",
    };
    let given_width = if formula.contains('s') { vec![width, ("s", slope), allowance] } else { vec![width, allowance] };
    working.step("Fence for each strip, its middle width as sawn", formula, given_width, sawn, FENCE);
    let board = || ("W", Quantity::from(given.board));
    let fits = rip.most();
    working.step(
        "Strips that fit",
        "n = floor((W − s + q) / (f + q))",
        [board(), ("s", slope), ("q", kerf), ("f", sawn)],
        Quantity::number(fits),
        ROW,
    );
    let used_mm = rip.used_mm(f64::from(count));
    working.step(
        "Board taken up",
        "U = n × f + (n − 1) × q + s",
        [("n", Quantity::count(count.into())), ("f", sawn), ("q", kerf), ("s", slope)],
        Quantity::mm(used_mm),
        ROW,
    );
    working.step(
        "Left over, the last kerf still in it",
        "L = W − U",
        [board(), ("U", Quantity::mm(used_mm))],
        Quantity::mm((rip.board_mm - used_mm).max(0.0)),
        GEOMETRY,
    );
    if inputs.first_edge == FirstEdge::Square && given.bevel.degrees() > 0.0 {
        working.step(
            "Fence to bevel the first edge",
            "d = W − s",
            [board(), ("s", slope)],
            Quantity::mm(rip.board_mm - rip.slope_mm),
            FENCE,
        );
    }
    blade(&mut working, given);
    working
}

/// A pair of cleats.
pub(super) fn of_cleats(given: &Given, sawn: &Widths, finished: &Widths) -> Working {
    let mut working = Working::default();
    tilt(&mut working, given);
    let slope = Quantity::mm(given.slope_mm);
    working.step(
        "Wide face of each cleat, as sawn",
        "l = (W + s − q) / 2",
        [("W", given.board.into()), ("s", slope), ("q", Quantity::mm(given.kerf_mm))],
        Quantity::mm(sawn.wide_mm),
        GEOMETRY,
    );
    working.step(
        "Fence: the narrow face, as sawn",
        "d = l − s",
        [("l", Quantity::mm(sawn.wide_mm)), ("s", slope)],
        Quantity::mm(sawn.narrow_mm),
        FENCE,
    );
    if given.planing.is_positive() {
        working.step(
            "Wide face when planed",
            "w = l − u",
            [("l", Quantity::mm(sawn.wide_mm)), ("u", Quantity::mm(given.planing_mm))],
            Quantity::mm(finished.wide_mm),
            GEOMETRY,
        );
    }
    blade(&mut working, given);
    working
}
