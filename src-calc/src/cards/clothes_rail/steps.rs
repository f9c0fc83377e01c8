//! The working of a clothes rail: first the statics in mm, N and MPa, then the room, exact.

use super::answer::Room;
use super::case::{Hanging, Outcome};
use super::inputs::{Brackets, Inputs, Load, Material};
use super::read::Read;
use super::section::Shape;
use crate::cards::shelf::case::GRAVITY;
use crate::cards::shelf::steps::{GRAVITY_SOURCE, LONG_TERM, STATICS, TABLE_9_1, THREE_BAYS, TWO_BAYS, TYPED};
use crate::measure::Quantity as Q;
use crate::source::{GEOMETRY, Source};
use crate::stock::{clothes, metals};
use crate::working::Working;

const ROUND: Source = Source::practice("second moment of area of a circle or an ellipse, as in textbooks of mechanics");
const SQUARE: Source = Source::practice("second moment of area of a rectangle");
const OVAL: Source =
    Source::practice("second moments of a rectangle and two half circles about the common axis, worked out afresh");

/// The lines, in the order in which a person would do it.
pub(super) fn working(inputs: &Inputs, read: &Read, outcome: &Outcome, room: &Room) -> Working {
    let mut steps = Working::default();
    material(&mut steps, inputs, read);
    section(&mut steps, inputs, read);
    loads(&mut steps, inputs, read, outcome);
    sag(&mut steps, inputs, read, outcome);
    stress(&mut steps, inputs, read, outcome);
    space(&mut steps, inputs, read, room);
    steps
}

fn material(steps: &mut Working, inputs: &Inputs, read: &Read) {
    let row = inputs.wood.family().filter(|_| inputs.material == Material::Wood).and_then(|f| f.rows().first());
    let source = row.map(|row| row.source).or(inputs.material.metal().map(|metal| metal.source)).unwrap_or(TYPED);
    steps.step("Stiffness of the material", "E", [], Q::mpa(read.case.figures.stiffness_mpa), source);
}

fn section(steps: &mut Working, inputs: &Inputs, read: &Read) {
    let values = read.case.section;
    let (b, h, t) = (read.width.as_mm(), read.sizes.rail_height.as_mm(), read.wall.as_mm());
    let given = |b: f64, h: f64| match inputs.shape {
        Shape::RoundTube | Shape::RoundBar => vec![("d", Q::mm(h))],
        Shape::EllipseTube | Shape::FlatBar => vec![("b", Q::mm(b)), ("h", Q::mm(h))],
        Shape::OvalTube if h > b => vec![("b", Q::mm(b)), ("f", Q::mm(h - b))],
        Shape::OvalTube => vec![("h", Q::mm(h)), ("f", Q::mm(b - h))],
    };
    let (formula, source) = match inputs.shape {
        Shape::RoundTube | Shape::RoundBar => ("I = π · d⁴ / 64", ROUND),
        Shape::EllipseTube => ("I = π · b · h³ / 64", ROUND),
        Shape::FlatBar => ("I = b · h³ / 12", SQUARE),
        Shape::OvalTube if h > b => ("I = b · f³ / 12 + π · b² · f² / 16 + f · b³ / 6 + π · b⁴ / 64", OVAL),
        Shape::OvalTube => ("I = f · h³ / 12 + π · h⁴ / 64", OVAL),
    };
    if !inputs.shape.is_tube() {
        return steps.step("Second moment of area", formula, given(b, h), Q::mm4(values.second_moment_mm4), source);
    }
    steps.step("Second moment of the outline", formula, given(b, h), Q::mm4(values.outline_mm4), source);
    let inside = given(b - 2.0 * t, h - 2.0 * t);
    steps.step("Second moment of the hollow", formula, inside, Q::mm4(values.hollow_mm4), source);
    let given = [("I₁", Q::mm4(values.outline_mm4)), ("I₂", Q::mm4(values.hollow_mm4))];
    steps.step("Second moment of area", "I = I₁ − I₂", given, Q::mm4(values.second_moment_mm4), GEOMETRY);
}

fn loads(steps: &mut Working, inputs: &Inputs, read: &Read, outcome: &Outcome) {
    let gravity = ("g", Q::number(GRAVITY));
    let own = Q::n_per_mm(outcome.own);
    let given =
        [("ρ", Q::kg_per_m3(read.case.figures.density_kg_m3)), ("A", Q::number(read.case.section.area_mm2)), gravity];
    steps.step("The rail's own weight, A in mm²", "w₀ = ρ · A · g / 10⁹", given, own, GRAVITY_SOURCE);
    let load = Q::n_per_mm(outcome.load);
    let source = if inputs.load == Load::Garments { clothes::LOAD_SOURCE } else { TYPED };
    match read.case.hanging {
        Hanging::PerMm(load_n_per_mm) => {
            let given = [("m", Q::kg_per_m(load_n_per_mm * 1000.0 / GRAVITY)), gravity];
            steps.step("Load", "q = m · g / 1000", given, load, source);
        }
        Hanging::InAll(force) => {
            let given = [("m", Q::kg(force / GRAVITY)), gravity, ("S", Q::mm(read.case.span_mm))];
            steps.step("Load", "q = m · g / S", given, load, source);
        }
    }
    let given = [("w₀", own), ("q", load)];
    steps.step("All together", "w = w₀ + q", given, Q::n_per_mm(outcome.own + outcome.load), STATICS);
}

fn sag(steps: &mut Working, inputs: &Inputs, read: &Read, outcome: &Outcome) {
    let given = [
        ("E", Q::mpa(read.case.figures.stiffness_mpa)),
        ("I", Q::mm4(read.case.section.second_moment_mm4)),
        ("w", Q::n_per_mm(outcome.own + outcome.load)),
        ("L", Q::mm(outcome.bay_mm)),
    ];
    let (formula, source) = match inputs.brackets {
        Brackets::None => ("d = 5 · w · L⁴ / (384 · E · I)", TABLE_9_1),
        Brackets::Middle => ("d = 0.00541612 · w · L⁴ / (E · I)", TWO_BAYS),
        Brackets::Thirds => ("d = 0.00688421 · w · L⁴ / (E · I)", THREE_BAYS),
    };
    let d = Q::mm(outcome.instant_mm);
    steps.step("Sag on the first day", formula, given, d, source);
    let creep = Q::number(read.case.figures.creep);
    let source = match (inputs.material, inputs.wood.family()) {
        (Material::Wood, Some(family)) => family.kind.creep_source(),
        (Material::Own, _) => TYPED,
        _ => Source::practice("metals do not creep in a house"),
    };
    steps.step("Creep", "kdef", [], creep, source);
    let given = [("d", d), ("kdef", creep)];
    steps.step("Sag after years", "D = d · (1 + kdef)", given, Q::mm(outcome.late_mm), LONG_TERM);
}

fn stress(steps: &mut Working, inputs: &Inputs, read: &Read, outcome: &Outcome) {
    let formula = match inputs.brackets {
        Brackets::None | Brackets::Middle => "M = w · L² / 8",
        Brackets::Thirds => "M = w · L² / 10",
    };
    let moment = Q::n_mm(outcome.moment);
    let given = [("w", Q::n_per_mm(outcome.own + outcome.load)), ("L", Q::mm(outcome.bay_mm))];
    steps.step("Largest bending moment", formula, given, moment, STATICS);
    let given =
        [("M", moment), ("h", read.sizes.rail_height.into()), ("I", Q::mm4(read.case.section.second_moment_mm4))];
    steps.step("Bending stress", "σ = M · h / (2 · I)", given, Q::mpa(outcome.stress_mpa), STATICS);
    if let Some(strength) = read.case.figures.strength_mpa {
        let source = match (inputs.material, inputs.wood.family()) {
            (Material::Wood, Some(family)) => family.kind.divisor_source(family.values),
            (Material::Own, _) => TYPED,
            _ => metals::DIVISOR_SOURCE,
        };
        let divisor = read.case.figures.divisor;
        let given = [("f", Q::mpa(strength)), ("s", Q::number(divisor))];
        steps.step("Stress that may stay", "σ₀ = f / s", given, Q::mpa(strength / divisor), source);
    }
}

fn space(steps: &mut Working, inputs: &Inputs, read: &Read, room: &Room) {
    let sizes = &read.sizes;
    let (k, h) = (("k", sizes.hook.into()), ("h", sizes.rail_height.into()));
    match (sizes.under_top, room.blocks) {
        (Some((bracket, sheet)), Some(blocks)) => {
            let given = [k, h, ("e", bracket.into())];
            let formula = "u = k + h / 2 − e, or nothing";
            steps.step("Least thickness of the blocks", formula, given, blocks.least, clothes::HOOK_SOURCE);
            let layers = Q::number(blocks.thickness.as_mm() / sheet.as_mm());
            let given = [("u", blocks.least.into()), ("t", sheet.into())];
            steps.step("Layers of the sheet", "n = u / t, rounded up", given, layers, GEOMETRY);
            let given = [("e", bracket.into()), ("n", layers), ("t", sheet.into())];
            steps.step("Middle of the rail, down from the top", "y = e + n · t", given, room.middle_down, GEOMETRY);
        }
        _ => {
            let what = "Middle of the rail, down from the top";
            steps.step(what, "y = k + h / 2", [k, h], room.middle_down, clothes::HOOK_SOURCE);
        }
    }
    let source = if inputs.drop.is_blank() { clothes::DROP_SOURCE } else { TYPED };
    steps.step("From the top of the rail to the hem", "l", [], room.drop, source);
    let given = [("y", room.middle_down.into()), ("h", sizes.rail_height.into()), ("l", room.drop.into())];
    let given = given.into_iter().chain([("z", sizes.below.into())]).collect::<Vec<_>>();
    steps.step("Height for the clothes", "H = y − h / 2 + l + z", given, room.height, GEOMETRY);
    let given = [("a", sizes.hanger.into()), ("c", sizes.bulk.into())];
    steps.step("Depth for the hangers", "T = a + 2 · c", given, room.depth, clothes::DEPTH_SOURCE);
    let across = if room.depth_spare.is_negative() { sizes.inside_depth } else { room.depth };
    let given = [("T", across.into())];
    steps.step("Middle of the rail, from the back", "x = T / 2", given, room.from_back, GEOMETRY);
}
