//! The working of joints along an edge.

use super::answer::{Fixing, Left, Screw};
use super::fixing::square_to_face;
use super::inputs::{Inputs, Kind, Spread};
use super::read::{Made, Read};
use crate::measure::{Length, LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::stock::joints;
use crate::working::Working;

const TYPED: Source = Source::practice("your own figure");
const STEPS: Source = Source::practice("in steps of 32 mm, as rows of holes are bored");

/// The lines, in the order in which a person would do it.
pub(super) fn working(
    inputs: &Inputs,
    read: &Read,
    fixing: &Fixing,
    screw: Option<&Screw>,
    marks: &[Length],
    left: &Left,
) -> Result<Working, LengthError> {
    let mut steps = Working::default();
    spread(&mut steps, inputs, read, marks)?;
    depths(&mut steps, inputs, read, fixing);
    if let Some(screw) = screw {
        screws(&mut steps, inputs, read, fixing, screw);
    }
    let length = Quantity::Length;
    let given = [("m", length(read.line)), ("w", length(fixing.across))];
    let source = if read.made.is_round_or_tenon() { joints::THIRD_TO_HALF } else { GEOMETRY };
    steps.step("Left of the edge part, outer face", "o = m − w / 2", given, left.outer, source);
    let given = [("t", length(read.edge)), ("m", length(read.line)), ("w", length(fixing.across))];
    steps.step("Left of the edge part, inner face", "i = t − m − w / 2", given, left.inner, source);
    if let (Some(face), Some(behind)) = (read.face, left.behind) {
        let given = [("T", length(face)), ("f", length(fixing.in_other))];
        steps.step("Left behind it in the face part", "b = T − f", given, behind, GEOMETRY);
    }
    if let Some(to_end) = left.to_end {
        let given = [("s", length(read.from_end)), ("m", length(read.line)), ("v", length(fixing.across_other))];
        steps.step("Left to the end of the face part", "z = s + m − v / 2", given, to_end, GEOMETRY);
    }
    Ok(steps)
}

fn spread(steps: &mut Working, inputs: &Inputs, read: &Read, marks: &[Length]) -> Result<(), LengthError> {
    let length = Quantity::Length;
    let between = read.length.minus(read.first)?.minus(read.other_end)?;
    let given = [("L", length(read.length)), ("a", length(read.first)), ("z", length(read.other_end))];
    steps.step("Between the outer ones", "l = L − a − z", given, between, read.usual.source);
    let count = Quantity::count(u64::try_from(marks.len()).unwrap_or(u64::MAX));
    let l = ("l", length(between));
    let p = ("p", length(read.every));
    match (read.count, inputs.spread) {
        (Some(_), _) => steps.step("How many", "n", [], count, TYPED),
        (None, Spread::Even) => {
            let formula = "n = l / p rounded up, and one more";
            steps.step("How many", formula, [l, p], count, read.usual.source);
        }
        (None, Spread::Steps) => {
            let formula = "n = the whole part of l / p in steps of 32 mm, and one more";
            steps.step("How many", formula, [l, p], count, STEPS);
        }
    }
    if let [first, second, ..] = marks {
        let apart = second.minus(*first)?;
        match inputs.spread {
            Spread::Even => {
                let given = [l, ("n", count)];
                steps.step("From middle to middle", "d = l / (n − 1)", given, apart, GEOMETRY);
            }
            Spread::Steps => {
                let formula = "d = the steps of 32 mm in p";
                steps.step("From middle to middle", formula, [p], apart, STEPS);
            }
        }
    }
    Ok(())
}

fn depths(steps: &mut Working, inputs: &Inputs, read: &Read, fixing: &Fixing) {
    let length = Quantity::Length;
    let whole = match read.made {
        Made::Dowel { length, .. } | Made::Tenon { length, .. } => Some(length),
        Made::Biscuit { size, .. } => Length::mm(size.size_mm().1, 1).ok(),
        Made::Connecting { .. } | Made::Pocket { .. } => None,
    };
    let Some(whole) = whole else { return };
    let (all, glue) = (("h", length(whole)), ("g", length(read.glue)));
    let what = "Depth in the face part";
    match (read.face_depth, read.face) {
        (Some(_), _) => steps.step("Depth in the other part", "f", [], fixing.in_other, TYPED),
        (None, None) => {
            steps.step("Depth in each edge", "f = (h + g) / 2", [all, glue], fixing.in_other, joints::HALF_EACH);
        }
        (None, Some(face)) => {
            let given = [("T", length(face)), ("k", length(read.skin)), all, glue];
            if inputs.kind == Kind::Dowel {
                let formula = "f = the least of 2 · T / 3 and (h + g) / 2 and T − k";
                steps.step(what, formula, given, fixing.in_other, joints::DOWEL_DEPTH);
            } else {
                let formula = "f = the lesser of (h + g) / 2 and T − k";
                steps.step(what, formula, given, fixing.in_other, joints::HALF_EACH);
            }
        }
    }
    let given = [all, glue, ("f", length(fixing.in_other))];
    steps.step("Depth in the edge part", "e = h + g − f", given, fixing.in_edge, joints::HALF_EACH);
    if let Made::Biscuit { cutter, .. } = read.made {
        let deep = fixing.in_edge.max(fixing.in_other);
        let given = [("q", Quantity::mm(deep.as_mm())), ("D", Quantity::mm(cutter.as_mm()))];
        let gives = Quantity::mm(fixing.along.as_mm());
        steps.step("Slot at the surface", "c = 2 · √(q · (D − q))", given, gives, joints::BISCUIT_SIZE);
    }
}

fn screws(steps: &mut Working, inputs: &Inputs, read: &Read, fixing: &Fixing, screw: &Screw) {
    let length = Quantity::Length;
    let typed = !inputs.screw_length.is_blank();
    let s = ("S", length(screw.length));
    let face = read.face.unwrap_or_default();
    if let Made::Connecting { .. } = read.made {
        let source = if typed { TYPED } else { joints::CONNECTING_LENGTH };
        steps.step("Length of the screw", "S", [], screw.length, source);
        let given = [s, ("T", length(face))];
        steps.step("Reach into the edge", "r = S − T", given, screw.reach, joints::CONNECTING_HOLES);
        let given = [("r", length(screw.reach)), ("g", length(read.glue))];
        steps.step("Depth of the hole in the edge", "e = r + g", given, fixing.in_edge, joints::CONNECTING_HOLES);
        return;
    }
    let source = if typed { TYPED } else { joints::POCKET_LENGTH };
    steps.step("Length of the screw", "S", [], screw.length, source);
    let p = ("p", length(fixing.in_edge));
    let what = "Shoulder to the end, along the screw";
    if inputs.shoulder.is_blank() {
        steps.step(what, "p = 3 · S / 5", [s], fixing.in_edge, joints::POCKET_SLOPE);
    } else {
        steps.step(what, "p", [], fixing.in_edge, TYPED);
    }
    steps.step("Reach along the screw", "r = S − p", [s, p], screw.reach, GEOMETRY);
    let slope = ("c", Quantity::number(square_to_face()));
    let given = [("r", Quantity::mm(screw.reach.as_mm())), slope];
    let gives = Quantity::mm(fixing.in_other.as_mm());
    steps.step("Depth of the point, c the cosine of 15°", "f = r · c", given, gives, joints::POCKET_SLOPE);
    if let Some(longest) = screw.longest {
        let given = [
            ("T", Quantity::mm(face.as_mm())),
            ("k", Quantity::mm(read.skin.as_mm())),
            slope,
            ("p", Quantity::mm(fixing.in_edge.as_mm())),
        ];
        let gives = Quantity::mm(longest.as_mm());
        steps.step("Longest screw", "M = (T − k) / c + p", given, gives, GEOMETRY);
    }
}
