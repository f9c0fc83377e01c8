//! The cabinet's own arithmetic; what a card worked out stands in that card's working.

use super::frame::Frame;
use super::inputs::{Inputs, Lie, SizeFrom};
use super::read::Given;
use super::{Axis, Beside, Cabinet, What};
use crate::measure::{Length, LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const WEIGHT: Source = Source::practice("volume times density, part by part; what stays on the wall is not counted");
const PLAIN: Source = Source::practice("what a carcass leaves inside: its outer size less two boards");

/// What both directions of the front have.
struct Way {
    over_all: &'static str,
    inside: &'static str,
    typed: Length,
    /// How often what stays free is taken off.
    frees: u64,
    base: Length,
    outer: Length,
    between: Length,
}

fn way(working: &mut Working, inputs: &Inputs, given: &Given, way: &Way, board: Length) {
    let (typed, base, t) = (way.typed.into(), way.base.into(), board.into());
    let with_base = !way.base.is_zero();
    match inputs.size_from {
        SizeFrom::Outside if with_base => {
            working.step(way.over_all, "S = H − p", [("H", typed), ("p", base)], way.outer, PLAIN);
        }
        SizeFrom::Outside => {}
        SizeFrom::Opening => {
            let n = Quantity::count(way.frees);
            let given = [("R", typed), ("n", n), ("f", given.free.into()), ("p", base)];
            working.step(way.over_all, "S = R − n · f − p", given, way.outer, PLAIN);
        }
        SizeFrom::Inside => {
            working.step(way.over_all, "S = w + 2 · t", [("w", typed), ("t", t)], way.outer, PLAIN);
            return;
        }
    }
    working.step(way.inside, "w = S − 2 · t", [("S", way.outer.into()), ("t", t)], way.between, PLAIN);
}

/// The steps, in the order in which a person would do them.
pub(super) fn working(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    cabinet: &Cabinet,
) -> Result<Working, LengthError> {
    let mut working = Working::default();
    let across = Way {
        over_all: "Width of the carcass",
        inside: "Width inside",
        typed: given.width.nominal(),
        frees: 2,
        base: Length::ZERO,
        outer: frame.width,
        between: frame.inside_width.nominal(),
    };
    let up = Way {
        over_all: "Height of the carcass",
        inside: "Height inside",
        typed: given.height.nominal(),
        frees: 1,
        base: given.base,
        outer: frame.height,
        between: frame.inside_height.nominal(),
    };
    way(&mut working, inputs, given, &across, frame.board);
    way(&mut working, inputs, given, &up, frame.board);
    let doors = if inputs.has_doors() && inputs.lie == Lie::Inset { given.door.nominal() } else { Length::ZERO };
    working.step(
        "From the back to the front of the shelves",
        "d = D − y − i − b",
        [("D", frame.depth.into()), ("y", frame.inner.into()), ("i", doors.into()), ("b", given.shelf_back.into())],
        cabinet.inside_depth,
        GEOMETRY,
    );
    let loose = cabinet.parts.iter().find(|part| matches!(part.what, What::LooseShelf { .. }));
    if let (Some(loose), Some(bay)) = (loose, frame.bays.first()) {
        let bay = bay.1.minus(bay.0)?;
        working.step(
            "Length of a loose shelf",
            "l = B − c",
            [("B", bay.into()), ("c", given.shelf_play.into())],
            loose.length,
            GEOMETRY,
        );
    }
    if let Some(strip) = &given.handle {
        let [set_in, width, slope] = strip.across();
        working.step(
            "From a door's free edge to the screws of its handle",
            "e = i + (w − s) / 2",
            [("i", set_in.into()), ("w", width.into()), ("s", slope.into())],
            strip.screw_line()?,
            GEOMETRY,
        );
    }
    if let Some(shelf) = &cabinet.outside {
        let along = if shelf.at == Beside::Under { Axis::Across } else { Axis::Deep };
        let (l, n) = (shelf.place.extent(along)?, Quantity::count(u64::try_from(shelf.brackets.len()).unwrap_or(0)));
        let given = [("l", l.into()), ("e", shelf.end.into()), ("n", n)];
        working.step("Bracket to bracket", "p = (l − 2 · e) / (n − 1)", given, shelf.answer.bay, GEOMETRY);
    }
    working.step("Weight, empty", "sum of ρ · a · b · t", [], Quantity::kg(cabinet.weight_kg), WEIGHT);
    Ok(working)
}
