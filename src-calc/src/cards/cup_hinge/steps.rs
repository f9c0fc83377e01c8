//! The working of a door on cup hinges.

use super::Door;
use super::inputs::{Doors, Find, Inputs, Mounting, Wish};
use super::read::Read;
use crate::measure::{LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::stock::hardware;
use crate::working::Working;

const TYPED: Source = Source::practice("your own figure");
const SHARED_GAP: Source = Source::practice("two doors on a partition share its gap, and each opens in its own half");

/// The lines, in the order in which a person would do it.
pub(super) fn working(inputs: &Inputs, read: &Read, door: &Door) -> Result<Working, LengthError> {
    let mut steps = Working::default();
    hinge(&mut steps, inputs, read, door);
    size(&mut steps, inputs, read, door);
    places(&mut steps, inputs, read, door)?;
    Ok(steps)
}

fn hinge(steps: &mut Working, inputs: &Inputs, read: &Read, door: &Door) {
    let length = Quantity::Length;
    let (o, a) = (("O", length(read.overlay)), ("A", length(read.constant)));
    let (b, h) = (("B", length(read.cup_edge)), ("H", length(read.plate_height)));
    let (t, g) = (("T", length(read.side)), ("g", length(door.gap)));
    if inputs.find != Find::Overlay && inputs.wish == Wish::Gap {
        match inputs.mounting {
            Mounting::Full => steps.step("Overlay from the reveal", "O = T − g", [t, g], read.overlay, GEOMETRY),
            Mounting::Half => steps.step("Overlay of each door", "O = (T − g) / 2", [t, g], read.overlay, GEOMETRY),
            Mounting::Inset => {}
        }
    }
    if inputs.find != Find::Overlay && inputs.mounting == Mounting::Inset {
        steps.step("Overlay of an inset door", "O = 0 − g", [g], read.overlay, hardware::OVERLAY);
    }
    if inputs.find != Find::Constant {
        steps.step("The arm's constant", "A", [], read.constant, hardware::CONSTANT);
    }
    let source = hardware::OVERLAY;
    match inputs.find {
        Find::Overlay => steps.step("Overlay", "O = A + B − H", [a, b, h], read.overlay, source),
        Find::PlateHeight => steps.step("Height of the plate", "H = A + B − O", [a, b, o], read.plate_height, source),
        Find::CupEdge => steps.step("Edge to cup", "B = O + H − A", [o, h, a], read.cup_edge, source),
        Find::Constant => steps.step("Constant of the arm", "A = O + H − B", [o, h, b], read.constant, source),
    }
    match inputs.mounting {
        Mounting::Full => steps.step("Reveal", "g = T − O", [t, o], door.gap, GEOMETRY),
        Mounting::Half => steps.step("Gap between the doors", "g = T − 2 · O", [t, o], door.gap, SHARED_GAP),
        Mounting::Inset => steps.step("Gap", "g = 0 − O", [o], door.gap, GEOMETRY),
    }
}

fn size(steps: &mut Working, inputs: &Inputs, read: &Read, door: &Door) {
    let length = Quantity::Length;
    let width = ("W", length(read.opening_width.nominal()));
    let overlay = ("O", length(read.overlay));
    let gives = door.width.nominal();
    match inputs.doors {
        Doors::One => {
            let given = [width, overlay, ("O₂", length(read.other_overlay))];
            steps.step("Width of the door", "D = W + O + O₂", given, gives, GEOMETRY);
        }
        Doors::Two => {
            let given = [width, overlay, ("g", length(read.gap))];
            steps.step("Width of each door", "D = (W + 2 · O − g) / 2", given, gives, GEOMETRY);
        }
    }
    let given = [
        ("V", length(read.opening_height.nominal())),
        ("u", length(read.top_overlay)),
        ("l", length(read.bottom_overlay)),
    ];
    steps.step("Height of the door", "h = V + u + l", given, door.height.nominal(), GEOMETRY);
    let row = inputs.material.family().and_then(|family| family.row(read.door_thickness.as_mm()));
    match (read.door_weight_kg, row) {
        (None, Some((row, _))) => {
            let mm = |length: crate::measure::Length| Quantity::mm(length.as_mm());
            let given = [
                ("ρ", Quantity::kg_per_m3(row.density_kg_m3)),
                ("D", mm(door.width.nominal())),
                ("h", mm(door.height.nominal())),
                ("t", mm(read.door_thickness)),
            ];
            let formula = "m = ρ · D · h · t / 10⁹";
            steps.step("Weight of the door", formula, given, Quantity::kg(door.weight_kg), row.source);
        }
        _ => steps.step("Weight of the door", "m", [], Quantity::kg(door.weight_kg), TYPED),
    }
    let given = [("h", length(door.height.high())), ("m", Quantity::kg(door.weight_kg))];
    let count = Quantity::count(door.count);
    if read.hinges.is_some() {
        steps.step("Number of hinges", "n", [], count, TYPED);
    } else {
        let formula = "n = the larger of the number for h and the number for m";
        steps.step("Number of hinges", formula, given, count, hardware::HINGE_COUNT);
        if door.width.high().as_mm() > 600.0 && door.by_table.is_some() {
            let given = [("D", length(door.width.high()))];
            steps.step("One of them is for the width", "D > 600 mm", given, Quantity::count(1), hardware::HINGE_WIDTH);
        }
    }
}

fn places(steps: &mut Working, inputs: &Inputs, read: &Read, door: &Door) -> Result<(), LengthError> {
    let length = Quantity::Length;
    let half = read.cup_diameter.times(1, 2)?;
    let given = [("B", length(read.cup_edge)), ("c", length(read.cup_diameter))];
    let centre = read.cup_edge.plus(half)?;
    steps.step("Middle of the cup from the door's edge", "x = B + c / 2", given, centre, hardware::CUP_EDGE);
    let given = [("t", length(read.door_thickness)), ("k", length(read.cup_depth))];
    steps.step("Left behind the cup", "r = t − k", given, door.left_behind, hardware::CUP);
    let source = hardware::PLATE_LINE;
    let setback = ("s", length(read.plate_setback));
    match inputs.mounting {
        Mounting::Inset => {
            let given = [setback, ("t", length(read.door_thickness))];
            steps.step("Plate's hole line from the front", "z = s + t", given, door.plate_line, source);
        }
        Mounting::Full | Mounting::Half => {
            steps.step("Plate's hole line from the front", "z = s", [setback], door.plate_line, source);
        }
    }
    let given = [("e", length(read.end_distance)), ("l", length(read.bottom_overlay)), ("d", length(read.datum))];
    let first = read.end_distance.minus(read.bottom_overlay)?.plus(read.datum)?;
    steps.step("Lowest plate, up from the datum on the side", "p = e − l + d", given, first, hardware::END_DISTANCE);
    if inputs.mounting == Mounting::Half {
        let given = [("g", length(door.gap))];
        steps.step("Room for each door to open", "v = g / 2", given, door.gap.times(1, 2)?, SHARED_GAP);
    }
    Ok(())
}
