//! The working of a wall cleat, line by line.

use super::Method;
use super::inputs::Back;
use super::read::Read;
use super::solved::Heights;
use crate::measure::{Length, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const OVER_BOTTOM: Source =
    Source::practice("the bottom comes up with the cabinet: the spacer clears it by the lift and 2 mm, from memory");
const HOOKED: Source = Source::practice(
    "plane geometry: hooked in, the lower point of the cabinet's strip has sunk behind the wall strip's",
);
const INSET: Source = Source::practice(
    "common practice: the back is set in by the strip and a trace more, so that the bevel draws the rear edges to the wall",
);
const FENCE: Source = Source::practice(
    "plane geometry, with the blade leaning away from the fence: measured at the table, to the near side of the blade",
);
const ON_EDGE: Source = Source::practice(
    "plane geometry: standing on edge, the blade leans by what is left to a right angle and starts at the wide face",
);
const SCREWS: Source = Source::practice(
    "statics: the higher the screws, the less the strip is levered off; two thirds up stays clear of the thin edge",
);
const PLAY: Source = Source::practice("a shorter wall strip lets the cabinet be moved sideways");

/// The lines, in the order in which a person would do it.
pub(super) fn working(
    back: Back,
    read: &Read,
    at: &Heights,
    (method, board): (Method, Length),
    wall_strip_length: Length,
) -> Working {
    let mut steps = Working::default();
    strips(&mut steps, read, method, board);
    behind(&mut steps, back, read);
    places(&mut steps, read, at);
    let given = [("w", read.room.into()), ("g", read.end_gap.into())];
    steps.step("Length of the wall strip", "L = w − 2 · g", given, wall_strip_length, PLAY);
    steps
}

fn strips(steps: &mut Working, read: &Read, method: Method, board: Length) {
    let (t, b) = (("t", Quantity::from(read.thickness)), ("β", Quantity::from(read.bevel)));
    let (l, k) = (("l", Quantity::from(read.wide)), ("k", Quantity::from(read.kerf)));
    let s = ("s", Quantity::from(read.slope));
    steps.step("What the bevel takes of the height", "s = t · tan(β)", [t, b], read.slope, GEOMETRY);
    steps.step("Narrow face of each strip", "n = l − s", [l, s], read.narrow, GEOMETRY);
    match method {
        Method::OneRip => {
            let given = [l, s, k, b];
            steps.step("Board for the pair", "B = 2 · l − s + k / cos(β)", given, board, GEOMETRY);
            steps.step("Fence: the narrow face", "d = l − s", [l, s], read.narrow, FENCE);
        }
        Method::OnEdge => {
            steps.step("Board for the pair", "B = 2 · l + k", [l, k], board, GEOMETRY);
            steps.step("Fence to part the board", "d = l", [l], read.wide, FENCE);
            let lean = Quantity::degrees(90.0 - read.bevel.degrees());
            steps.step("Blade leans, strip on edge", "γ = 90 − β", [b], lean, ON_EDGE);
        }
    }
}

fn behind(steps: &mut Working, back: Back, read: &Read) {
    let (t, e) = (("t", Quantity::from(read.thickness)), ("e", Quantity::from(read.slack)));
    match back {
        Back::Inset => {
            steps.step("The back is set in by", "i = t + e", [t, e], read.behind, INSET);
        }
        Back::Flush => {
            steps.step("The cabinet stands off the wall by", "i = t", [t], read.thickness, GEOMETRY);
        }
    }
    let given = [t, e, ("β", read.bevel.into())];
    steps.step("Lift to hook in, free above", "u = (t − e) · tan(β)", given, read.lift, HOOKED);
}

fn places(steps: &mut Working, read: &Read, at: &Heights) {
    let (l, a) = (("l", Quantity::from(read.wide)), ("a", Quantity::from(read.below_top)));
    let (top, point, lower) = (("T", read.top_at.into()), ("P", at.point.into()), ("y", at.lower.into()));
    let given = [top, a, l, ("u", read.lift.into())];
    steps.step("Point of the wall strip above the floor", "P = T − a − l + u", given, at.point, HOOKED);
    steps.step("Lower edge of the wall strip above the floor", "y = P − l", [point, l], at.lower, GEOMETRY);
    let given = [lower, l, ("s", read.slope.into())];
    steps.step("Screws above the floor", "v = y + (l − s) · 2 / 3", given, at.screws, SCREWS);
    let given = [top, ("h", read.cabinet_height.into()), a, ("o", read.over_bottom.into())];
    steps.step("Lower edge of the spacer above the floor", "z = T − h + a + o", given, at.spacer, OVER_BOTTOM);
}
