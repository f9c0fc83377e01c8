//! The working of a back panel, line by line.

use super::read::Growth;
use super::{Across, Inputs, Pieces, Squareness};
use crate::measure::Quantity;
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const ROOM: Source = Source::practice(
    "plane geometry: on the wettest day the panel must not be longer than from stop to stop in the smallest opening",
);
const BEARING: Source = Source::practice(
    "plane geometry: on the driest day, pushed hard against the other stop in the largest opening, what still bears",
);
const SEAM: Source = Source::practice("a seam wants a batten, a divider or a fixed shelf behind it");
const PARALLELOGRAM: Source = Source::practice("law of cosines in a parallelogram with the sides as measured");
const GIVEN: Source = Source::practice("as given by the maker of the sheet, or by you");

/// The names of the lines of one direction.
struct Names {
    size: &'static str,
    wet: &'static str,
    room: &'static str,
    dry: &'static str,
    first: &'static str,
    second: &'static str,
}

const WIDTH: Names = Names {
    size: "Panel width",
    wet: "Width on the wettest day",
    room: "Room for the width, at the least",
    dry: "Width on the driest day",
    first: "Least engagement on the left",
    second: "Least engagement on the right",
};

const HEIGHT: Names = Names {
    size: "Panel height",
    wet: "Height on the wettest day",
    room: "Room for the height, at the least",
    dry: "Height on the driest day",
    first: "Least engagement at the bottom",
    second: "Least engagement at the top",
};

/// Every line, in the order in which a person would do it.
pub(super) fn show(
    inputs: &Inputs,
    width: &Across,
    height: &Across,
    growth: Growth,
    pieces: &Pieces,
    squareness: &Squareness,
) -> Working {
    let mut working = Working::default();
    match (inputs.sheet.movement(), growth.swing) {
        (Some(movement), Some(swing)) => working.step(
            "Movement with humidity",
            "e = r × S / h",
            [
                ("r", Quantity::percent(movement.percent)),
                ("S", Quantity::percent(swing)),
                ("h", Quantity::percent(movement.per_humidity)),
            ],
            Quantity::percent(growth.percent),
            movement.source,
        ),
        _ => working.step("Movement with humidity", "e", [], Quantity::percent(growth.percent), GIVEN),
    }
    direction(&mut working, &WIDTH, width, growth.percent);
    direction(&mut working, &HEIGHT, height, growth.percent);
    if let Some(last) = pieces.seams_at.last() {
        let from_last = pieces.list.last().map(|piece| piece.width).unwrap_or_default();
        working.step("Last seam", "s = T − p", [("T", pieces.total.into()), ("p", from_last.into())], *last, SEAM);
    }
    square(&mut working, width, height, squareness);
    working
}

fn direction(working: &mut Working, names: &Names, across: &Across, strain_percent: f64) {
    let reaches = [("a", across.first.reach.nominal().into()), ("b", across.second.reach.nominal().into())];
    let [a, b] = reaches;
    working.step(
        names.size,
        "W = O + a + b − c",
        [("O", across.opening.nominal().into()), a, b, ("c", across.clearance.into())],
        across.size.nominal(),
        GEOMETRY,
    );
    let (size, strain) = (Quantity::from(across.size.nominal()), Quantity::percent(strain_percent));
    if let Some(room) = across.room {
        working.step(
            names.wet,
            "w = W × (1 + e / 100)",
            [("W", size), ("e", strain)],
            Quantity::mm(across.wet_mm),
            ROOM,
        );
        working.step(
            names.room,
            "R = O + a + b",
            [
                ("O", across.opening.low().into()),
                ("a", across.first.stop().low().into()),
                ("b", across.second.stop().low().into()),
            ],
            room.low(),
            ROOM,
        );
    }
    working.step(
        names.dry,
        "d = W × (1 − e / 100)",
        [("W", size), ("e", strain)],
        Quantity::mm(across.dry_mm),
        BEARING,
    );
    for (name, edge, other) in
        [(names.first, &across.first, &across.second), (names.second, &across.second, &across.first)]
    {
        let Some(engagement_mm) = edge.engagement_mm else { continue };
        working.step(
            name,
            "m = min(d − O − b, a)",
            [
                ("d", Quantity::mm(across.dry_mm)),
                ("O", across.opening.high().into()),
                ("b", other.reach.high().into()),
                ("a", edge.reach.low().into()),
            ],
            Quantity::mm(engagement_mm),
            BEARING,
        );
    }
}

fn square(working: &mut Working, width: &Across, height: &Across, squareness: &Squareness) {
    let (across, up) = (width.opening.nominal(), height.opening.nominal());
    working.step(
        "Diagonal of the opening when square",
        "D = √(O² + P²)",
        [("O", across.into()), ("P", up.into())],
        Quantity::mm(squareness.diagonal_mm),
        GEOMETRY,
    );
    if let Some(lean) = squareness.lean {
        working.step(
            "Lean over the height",
            "v = P × sin(δ)",
            [("P", up.into()), ("δ", Quantity::degrees(lean.degrees))],
            Quantity::mm(lean.over_height_mm),
            PARALLELOGRAM,
        );
    }
}
