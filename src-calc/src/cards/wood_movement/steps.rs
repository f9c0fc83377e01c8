//! The working of a part that moves.

use super::allow::Allow;
use super::inputs::{Held, Inputs};
use super::read::{Moisture, Read};
use crate::measure::Quantity as Q;
use crate::source::{GEOMETRY, Source};
use crate::stock::movement::air::{Air, EQUILIBRIUM};
use crate::working::Working;

const METER: Source = Source::practice("your own reading of the meter");
const CHANGE: Source = Source::published(
    "Wood Handbook FPL-GTR-190 (2010), chapter 13: the change goes with the moisture, from 6 to 14 %",
);
const ROOM: Source = Source::practice(
    "each side of a captured panel has half of the dampest day's growth and a millimetre free, and still bears on the driest",
);

/// The lines, in the order in which a person would do it.
pub(super) fn working(inputs: &Inputs, read: &Read, moved: (f64, f64, f64), allow: &Allow) -> Working {
    let mut steps = Working::default();
    moisture(&mut steps, ["Air as made: K · h", "Air as made: K₁", "Air as made: K₂", "Moisture as made"], read.made);
    let dry = ["Driest air: K · h", "Driest air: K₁", "Driest air: K₂", "Moisture at the driest"];
    moisture(&mut steps, dry, read.dry);
    let damp = ["Dampest air: K · h", "Dampest air: K₁", "Dampest air: K₂", "Moisture at the dampest"];
    moisture(&mut steps, damp, read.damp);
    change(&mut steps, read, moved);
    room(&mut steps, inputs, read, moved, allow);
    steps
}

fn moisture(steps: &mut Working, [k, k1, k2, what]: [&'static str; 4], of: Moisture) {
    let gives = Q::percent(of.percent);
    let Some((humidity, celsius)) = of.air else { return steps.step(what, "M", [], gives, METER) };
    let air = Air::at(celsius);
    let t = ("T", Q::number(celsius));
    let x = air.k * humidity / 100.0;
    let formula = "x = (0.805 + 0.000736 · T − 0.00000273 · T²) · h / 100";
    steps.step(k, formula, [t, ("h", Q::percent(humidity))], Q::number(x), EQUILIBRIUM);
    steps.step(k1, "K₁ = 6.27 − 0.00938 · T − 0.000303 · T²", [t], Q::number(air.k1), EQUILIBRIUM);
    steps.step(k2, "K₂ = 1.91 + 0.0407 · T − 0.000293 · T²", [t], Q::number(air.k2), EQUILIBRIUM);
    let given = [("T", Q::number(celsius)), ("x", Q::number(x)), ("K₁", Q::number(air.k1)), ("K₂", Q::number(air.k2))];
    let formula = "M = 1800 / (349 + 1.29 · T + 0.0135 · T²) · (x / (1 − x) + (K₁ · x + 2 · K₁ · K₂ · x²) / (1 + K₁ · x + K₁ · K₂ · x²))";
    steps.step(what, formula, given, gives, EQUILIBRIUM);
}

fn change(steps: &mut Working, read: &Read, (grows_mm, shrinks_mm, swing_mm): (f64, f64, f64)) {
    let c = Q::number(read.rate.share);
    steps.step("Change for each per cent of moisture", "C", [], c, read.rate.source);
    let (made, dry, damp) = (("M", read.made), ("M₁", read.dry), ("M₂", read.damp));
    let mut line = |what, formula, from: (&'static str, Moisture), to: (&'static str, Moisture), mm: f64| {
        let given = [
            ("W", read.width.into()),
            ("C", c),
            (to.0, Q::percent(to.1.percent)),
            (from.0, Q::percent(from.1.percent)),
        ];
        steps.step(what, formula, given, Q::mm(mm), CHANGE);
    };
    line("Grows, from as made to the dampest", "g = W · C · (M₂ − M), or nothing", made, damp, grows_mm);
    line("Shrinks, from as made to the driest", "s = W · C · (M − M₁), or nothing", dry, made, shrinks_mm);
    line("From the driest to the dampest", "v = W · C · (M₂ − M₁)", dry, damp, swing_mm);
}

fn room(steps: &mut Working, inputs: &Inputs, read: &Read, (grow, shrink, _): (f64, f64, f64), allow: &Allow) {
    let edges = Q::count(u64::from(inputs.held.edges()));
    let (g, s, n) = (("g", Q::mm(grow)), ("s", Q::mm(shrink)), ("n", edges));
    let (e, z) = (("e", read.bearing.into()), ("z", read.spare.into()));
    match *allow {
        Allow::Groove { depth, tongue, opening, .. } => {
            steps.step("Panel in the groove, as made", "t = e + s / n", [e, s, n], tongue, ROOM);
            let given = [("t", tongue.into()), g, n, z];
            steps.step("Depth of the groove", "D = t + g / n + z", given, depth, ROOM);
            let (w, t) = (("W", read.width.into()), ("t", tongue.into()));
            if inputs.held == Held::Middle {
                steps.step("Opening between the grooves", "O = W − 2 · t", [w, t], opening, GEOMETRY);
            } else {
                steps.step("Opening between the grooves", "O = W − t − e", [w, t, e], opening, GEOMETRY);
            }
        }
        Allow::Gap { made, widest, .. } => {
            steps.step("Gap as made", "G = g / n + z", [g, n, z], made, ROOM);
            let given = [("G", made.into()), s, n];
            steps.step("Gap at the driest", "B = G + s / n", given, widest, GEOMETRY);
        }
        Allow::Slot { length, screw_at, from_held } => {
            let (w, x) = (("W", read.width.into()), ("x", from_held.into()));
            let d = ("d", read.screw.into());
            let formula = "l = (g + s) · x / W + d";
            steps.step("Length of the slot", formula, [g, s, x, w, d], length, GEOMETRY);
            let formula = "p = g · x / W + d / 2";
            steps.step("Middle of the screw from the slot's inner end", formula, [g, x, w, d], screw_at, GEOMETRY);
        }
    }
}
