//! The working of rows of holes.

use super::inputs::{Doors, First, Inputs, Rear};
use super::read::Read;
use super::{Grid, Plate, Row};
use crate::measure::{LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::stock::line_boring;
use crate::working::Working;

const TYPED: Source = Source::practice("your own figure");
const LEVEL: Source =
    Source::practice("both sides are drilled from the same end and with the same stop, so that shelves lie level");
const RAIL: Source = Source::practice("the rail lies on the face of the side, away from the edge next to the row");

/// The lines, in the order in which a person would do it.
pub(super) fn working(
    inputs: &Inputs,
    read: &Read,
    grid: &Grid,
    front: &Row,
    plates: &[Plate],
) -> Result<Working, LengthError> {
    let mut steps = Working::default();
    along(&mut steps, inputs, read, grid);
    across(&mut steps, inputs, read, front)?;
    if let Some(plate) = plates.first() {
        let length = Quantity::Length;
        let given = [("h", length(plate.near_hole)), ("p", length(read.pitch))];
        steps.step("Middle of the first plate", "q = h + p / 2", given, plate.middle, line_boring::PLATE);
        let given = [("q", length(plate.middle)), ("d", length(read.door_end))];
        steps.step("Its cup, from the end of the door", "u = q − d", given, plate.on_door, GEOMETRY);
    }
    let given = [("T", Quantity::Length(read.thickness)), ("k", Quantity::Length(read.hole_depth))];
    let behind = read.thickness.minus(read.hole_depth)?;
    steps.step("Left behind the holes", "b = T − k", given, behind, line_boring::DEPTH);
    Ok(steps)
}

fn along(steps: &mut Working, inputs: &Inputs, read: &Read, grid: &Grid) {
    let length = Quantity::Length;
    let (h, m, p) = (("H", length(read.height)), ("m", length(read.end_distance)), ("p", length(read.pitch)));
    let count = Quantity::count(read.count.unsigned_abs());
    let n = ("n", count);
    let formula = "n = the whole part of (H − 2 · m) / p, and one more";
    steps.step("Holes in a full row", formula, [h, m, p], count, line_boring::SYSTEM);
    match inputs.first {
        First::Balanced => {
            let formula = "e = (H − (n − 1) · p) / 2";
            steps.step("First hole from either end", formula, [h, n, p], grid.first, line_boring::SYSTEM);
        }
        First::Given => {
            steps.step("First hole from the datum end", "e = m", [m], grid.first, TYPED);
            let formula = "z = H − m − (n − 1) · p";
            steps.step("Last hole from the other end", formula, [h, m, n, p], grid.last_from_end, GEOMETRY);
        }
    }
    let formula = "r = H − 2 · m − (n − 1) · p";
    steps.step("Over whole steps", formula, [h, m, n, p], grid.over, line_boring::SYSTEM);
    steps.step("End stop of the rail, to its first index hole", "e", [], grid.first, LEVEL);
}

fn across(steps: &mut Working, inputs: &Inputs, read: &Read, row: &Row) -> Result<(), LengthError> {
    let length = Quantity::Length;
    let (s, x) = (("s", length(read.front_setback)), ("x", length(read.front)));
    match inputs.doors {
        Doors::InFront => steps.step("Front row behind the front edge", "x = s", [s], read.front, line_boring::SYSTEM),
        Doors::Inset => {
            let given = [s, ("t", length(read.door_thickness))];
            steps.step("Front row behind the front edge", "x = s + t", given, read.front, line_boring::SYSTEM);
        }
    }
    let o = ("o", length(read.rail_offset));
    let formula = if row.rail_edge < row.from_front { "g = x − o" } else { "g = x + o" };
    steps.step("Rail's edge from the front edge", formula, [x, o], row.rail_edge, RAIL);
    let Some(rear) = read.rear else { return Ok(()) };
    let d = ("D", length(read.depth));
    let what = "Rear row behind the front edge";
    match inputs.rear {
        Rear::Balanced => steps.step(what, "y = D − x", [d, x], rear, line_boring::SYSTEM),
        Rear::Steps => {
            let given = [x, ("p", length(read.pitch)), d];
            let formula = "y = x + p · the whole part of (D − 2 · x) / p";
            steps.step(what, formula, given, rear, line_boring::BRIDGE);
        }
        Rear::Own | Rear::None => {
            let given = [d, ("w", length(read.depth.minus(rear)?))];
            steps.step(what, "y = D − w", given, rear, TYPED);
        }
    }
    let given = [("y", length(rear)), x];
    steps.step("From row to row", "a = y − x", given, rear.minus(read.front)?, line_boring::BRIDGE);
    Ok(())
}
