//! The working of a shelf. Everything is in mm, N and MPa, so the numbers can be put into the formulas as they are.

use super::beam::{Beam, Support};
use super::case::{Case, GRAVITY, Outcome};
use super::inputs::{Inputs, Load};
use crate::measure::Quantity as Q;
use crate::source::Source;
use crate::stock::materials::Choice;
use crate::working::Working;

pub(in crate::cards) const TYPED: Source = Source::practice("your own figure");
pub(in crate::cards) const GRAVITY_SOURCE: Source = Source::published("standard gravity, 9.80665 m/s² by definition");
pub(in crate::cards) const STATICS: Source = Source::practice("statics of a beam, from the three-moment equation");
const TRANSFORMED: Source = Source::practice("transformed section, as in textbooks of mechanics");
const RECTANGLE: Source = Source::practice("second moment of area of a rectangle");
pub(in crate::cards) const TABLE_9_1: Source = Source::published("Wood Handbook FPL-GTR-190 (2010), table 9-1");
const PROPPED: Source =
    Source::memory("beam tables, one end fixed: w·L⁴/184.6 EI at 0.5785 L; checked by finite elements");
pub(in crate::cards) const TWO_BAYS: Source =
    Source::published("Civil Engineering Reference Manual, two equal spans: 0.00541 w·L⁴/EI at 0.4215 L");
pub(in crate::cards) const THREE_BAYS: Source =
    Source::memory("beam tables, three equal spans: 0.0069 w·L⁴/EI; checked by finite elements");
pub(in crate::cards) const LONG_TERM: Source =
    Source::memory("EN 1995-1-1, 2.2.3 and 7.2: the lasting part of the load creeps by kdef");
const PARTS_CREEP: Source =
    Source::memory("EN 1995-1-1, 2.3.2.2: each part's stiffness divided by 1 + kdef, since parts creep differently");

/// The lines, in the order in which a person would do it.
pub(super) fn working(inputs: &Inputs, case: &Case, outcome: &Outcome) -> Working {
    let mut steps = Working::default();
    materials(&mut steps, inputs, case, outcome);
    loads(&mut steps, inputs, case, outcome);
    section(&mut steps, case, outcome);
    sag(&mut steps, case, outcome);
    late(&mut steps, inputs, outcome);
    stress(&mut steps, inputs, case, outcome);
    steps
}

fn materials(steps: &mut Working, inputs: &Inputs, case: &Case, outcome: &Outcome) {
    let source = |choice: Choice, thickness_mm: f64| {
        choice.family().and_then(|family| family.row(thickness_mm)).map_or(TYPED, |(row, _)| row.source)
    };
    let from = source(inputs.material, case.thickness_mm);
    steps.step("Stiffness of the board", "E", [], Q::mpa(outcome.board.stiffness_mpa), from);
    if let Some((strip, figures)) = outcome.strip {
        let from = source(inputs.strip_material, strip.thickness_mm());
        steps.step("Stiffness of the strip", "E₂", [], Q::mpa(figures.stiffness_mpa), from);
    }
}

fn loads(steps: &mut Working, inputs: &Inputs, case: &Case, outcome: &Outcome) {
    let own = Q::n_per_mm(outcome.own_n_per_mm);
    let board = [
        ("ρ", Q::kg_per_m3(outcome.board.density_kg_m3)),
        ("b", Q::mm(case.depth_mm)),
        ("t", Q::mm(case.thickness_mm)),
    ];
    let gravity = ("g", Q::number(GRAVITY));
    match outcome.strip {
        None => {
            let given = board.into_iter().chain([gravity]).collect::<Vec<_>>();
            steps.step("The shelf's own weight", "w₀ = ρ · b · t · g / 10⁹", given, own, GRAVITY_SOURCE);
        }
        Some((strip, figures)) => {
            let given = board.into_iter().chain([
                gravity,
                ("ρ₂", Q::kg_per_m3(figures.density_kg_m3)),
                ("b₂", Q::mm(strip.width_mm * strip.kind.pieces())),
                ("h", Q::mm(strip.height_mm)),
            ]);
            let formula = "w₀ = (ρ · b · t + ρ₂ · b₂ · h) · g / 10⁹";
            steps.step("Own weight of board and strip", formula, given.collect::<Vec<_>>(), own, GRAVITY_SOURCE);
        }
    }
    let [even, ..] = case.load.even;
    let mass = Q::kg_per_m(even * 1000.0 / GRAVITY);
    let source = if inputs.load == Load::Contents { inputs.contents.source() } else { TYPED };
    if inputs.load == Load::Middle {
        let given = [("m", Q::kg(case.load.point / GRAVITY)), gravity];
        steps.step("Load in the middle", "P = m · g", given, Q::newtons(case.load.point), source);
    } else {
        steps.step("Even load", "q = m · g / 1000", [("m", mass), gravity], Q::n_per_mm(even), source);
    }
    let [all, ..] = outcome.loads.even;
    if inputs.load != Load::Middle {
        steps.step("All together", "w = w₀ + q", [("w₀", own), ("q", Q::n_per_mm(even))], Q::n_per_mm(all), STATICS);
    }
}

fn section(steps: &mut Working, case: &Case, outcome: &Outcome) {
    let (b, t) = (("b", Q::mm(case.depth_mm)), ("t", Q::mm(case.thickness_mm)));
    let stiffness = Q::n_mm2(outcome.section.stiffness);
    let Some((strip, figures)) = outcome.strip else {
        let i = case.depth_mm * case.thickness_mm.powi(3) / 12.0;
        steps.step("Second moment of area", "I = b · t³ / 12", [b, t], Q::mm4(i), RECTANGLE);
        let given = [("E", Q::mpa(outcome.board.stiffness_mpa)), ("I", Q::mm4(i))];
        return steps.step("Stiffness", "EI = E · I", given, stiffness, STATICS);
    };
    let given = [
        ("E", Q::mpa(outcome.board.stiffness_mpa)),
        b,
        t,
        ("E₂", Q::mpa(figures.stiffness_mpa)),
        ("b₂", Q::mm(strip.width_mm * strip.kind.pieces())),
        ("h", Q::mm(strip.height_mm)),
        ("y", Q::mm(outcome.section.board_middle_mm())),
        ("y₂", Q::mm(strip_middle(outcome))),
    ];
    let axis = Q::mm(outcome.section.axis);
    let formula = "c = (E · b · t · y + E₂ · b₂ · h · y₂) / (E · b · t + E₂ · b₂ · h)";
    steps.step("Neutral axis above the lowest fibre", formula, given, axis, TRANSFORMED);
    let given = given.into_iter().chain([("c", axis)]).collect::<Vec<_>>();
    let formula = "EI = E · b · t · (t² / 12 + (y − c)²) + E₂ · b₂ · h · (h² / 12 + (y₂ − c)²)";
    steps.step("Stiffness of board and strip", formula, given, stiffness, TRANSFORMED);
}

fn strip_middle(outcome: &Outcome) -> f64 {
    outcome.section.strip_middle_mm().unwrap_or_default()
}

/// `w L⁴ / n EI` and `P L³ / m EI` as the books print them; with a load in the middle of one of several bays, or of a bay
/// that is held at one end only, the curve itself at its deepest place.
fn sag(steps: &mut Working, case: &Case, outcome: &Outcome) {
    let [even, ..] = outcome.loads.even;
    let given =
        vec![("w", Q::n_per_mm(even)), ("L", Q::mm(outcome.bay_mm)), ("EI", Q::n_mm2(outcome.section.stiffness))];
    let with_point = |mut given: Vec<(&'static str, Q)>| {
        given.push(("P", Q::newtons(outcome.loads.point)));
        given
    };
    let point = outcome.loads.point > 0.0;
    let (formula, given, source) = match (case.support, point) {
        (Support::Loose, false) => ("d = 5 · w · L⁴ / (384 · EI)", given, TABLE_9_1),
        (Support::Loose, true) => ("d = 5 · w · L⁴ / (384 · EI) + P · L³ / (48 · EI)", with_point(given), TABLE_9_1),
        (Support::FixedBothEnds, false) => ("d = w · L⁴ / (384 · EI)", given, TABLE_9_1),
        (Support::FixedBothEnds, true) => {
            ("d = w · L⁴ / (384 · EI) + P · L³ / (192 · EI)", with_point(given), TABLE_9_1)
        }
        (Support::FixedOneEnd, false) => ("d = 0.00541612 · w · L⁴ / EI", given, PROPPED),
        (Support::OneDivider, false) => ("d = 0.00541612 · w · L⁴ / EI", given, TWO_BAYS),
        (Support::TwoDividers, false) => ("d = 0.00688421 · w · L⁴ / EI", given, THREE_BAYS),
        (Support::FixedOneEnd | Support::OneDivider | Support::TwoDividers, true) => {
            let x = outcome.instant_at_mm;
            let near = x.min(outcome.bay_mm - x);
            let (left, right) = outcome.beam.first_moments();
            let mut given = with_point(given);
            given.extend([("x", Q::mm(x)), ("z", Q::mm(near)), ("M₁", Q::n_mm(left)), ("M₂", Q::n_mm(right))]);
            let formula = "d = (w · x · (L − x) · (L² + x · (L − x)) / 24 + P · z · (3 · L² − 4 · z²) / 48 + x · (L − x) · (M₁ · (2 · L − x) + M₂ · (L + x)) / (6 · L)) / EI";
            (formula, given, STATICS)
        }
    };
    steps.step("Sag on the first day", formula, given, Q::mm(outcome.instant_mm), source);
    let given = [("L", Q::mm(outcome.bay_mm)), ("d", Q::mm(outcome.instant_mm))];
    let ratio = outcome.bay_mm / outcome.instant_mm;
    steps.step("As a part of the bay", "n = L / d", given, Q::number(ratio), STATICS);
}

fn late(steps: &mut Working, inputs: &Inputs, outcome: &Outcome) {
    let at = outcome.late_at_mm;
    let first_day = outcome.beam.deflection(at) / outcome.section.stiffness;
    let lasting = Beam::new(inputs.support, outcome.bay_mm, outcome.lasting).deflection(at);
    let creep_source = |choice: Choice| choice.family().map_or(TYPED, |family| family.kind.creep_source());
    let kdef = ("kdef", Q::number(outcome.board.creep));
    steps.step("Creep of the board", "kdef", [], Q::number(outcome.board.creep), creep_source(inputs.material));
    let gives = Q::mm(outcome.late_mm);
    let d = ("d", Q::mm(first_day));
    let all_stays = outcome.lasting == outcome.loads;
    let Some((_, strip)) = outcome.strip else {
        let (formula, given) = if all_stays {
            ("D = d · (1 + kdef)", vec![d, kdef])
        } else {
            ("D = d + kdef · l", vec![d, kdef, ("l", Q::mm(lasting / outcome.section.stiffness))])
        };
        return steps.step("Sag after years", formula, given, gives, LONG_TERM);
    };
    let source = creep_source(inputs.strip_material);
    steps.step("Creep of the strip", "kdef₂", [], Q::number(strip.creep), source);
    let crept = Q::n_mm2(outcome.crept.stiffness);
    let given = [
        ("E", Q::mpa(outcome.board.stiffness_mpa)),
        kdef,
        ("E₂", Q::mpa(strip.stiffness_mpa)),
        ("kdef₂", Q::number(strip.creep)),
    ];
    let formula = "EI′ with E / (1 + kdef) and E₂ / (1 + kdef₂)";
    steps.step("Stiffness after years", formula, given, crept, PARTS_CREEP);
    let (formula, given) = if all_stays {
        ("D = d · EI / EI′", vec![d, ("EI", Q::n_mm2(outcome.section.stiffness)), ("EI′", crept)])
    } else {
        let before = ("l", Q::mm(lasting / outcome.section.stiffness));
        ("D = d − l + l′", vec![d, before, ("l′", Q::mm(lasting / outcome.crept.stiffness))])
    };
    steps.step("Sag after years", formula, given, gives, LONG_TERM);
}

fn stress(steps: &mut Working, inputs: &Inputs, case: &Case, outcome: &Outcome) {
    let [even, ..] = outcome.loads.even;
    let (w, l) = (("w", Q::n_per_mm(even)), ("L", Q::mm(outcome.bay_mm)));
    let p = ("P", Q::newtons(outcome.loads.point));
    let point = outcome.loads.point > 0.0;
    let moment = Q::n_mm(outcome.moment);
    let (formula, given) = match (case.support, point) {
        (Support::Loose, false) | (Support::FixedOneEnd | Support::OneDivider, false) => ("M = w · L² / 8", vec![w, l]),
        (Support::FixedBothEnds, false) => ("M = w · L² / 12", vec![w, l]),
        (Support::TwoDividers, false) => ("M = w · L² / 10", vec![w, l]),
        (Support::Loose, true) => ("M = w · L² / 8 + P · L / 4", vec![w, l, p]),
        (Support::FixedBothEnds, true) => ("M = w · L² / 12 + P · L / 8", vec![w, l, p]),
        (Support::FixedOneEnd, true) => ("M = w · L² / 8 + 3 · P · L / 16", vec![w, l, p]),
        (Support::OneDivider | Support::TwoDividers, true) => {
            let (low, high) = (("M₁", outcome.beam.sagging_moment()), ("M₂", outcome.beam.support_moment()));
            (
                "M = the larger of M₁ in the bay and M₂ over a support",
                vec![(low.0, Q::n_mm(low.1)), (high.0, Q::n_mm(high.1))],
            )
        }
    };
    steps.step("Largest bending moment", formula, given, moment, STATICS);
    let allowed = |choice: Choice| choice.family().map_or(TYPED, |family| family.kind.divisor_source(family.values));
    let stress = outcome.board_stress();
    if outcome.strip.is_none() {
        let given = [("M", moment), ("b", Q::mm(case.depth_mm)), ("t", Q::mm(case.thickness_mm))];
        steps.step("Stress in the board", "σ = 6 · M / (b · t²)", given, Q::mpa(stress), STATICS);
    } else {
        let formula = "σ = E · M · e / EI, on the first day or after years, at the outermost fibre";
        steps.step("Stress in the board", formula, [("M", moment)], Q::mpa(stress), TRANSFORMED);
    }
    let mut compare = |what, figures: &super::case::Figures, choice| {
        if let Some(strength) = figures.strength_mpa {
            let given = [("f", Q::mpa(strength)), ("s", Q::number(figures.divisor))];
            steps.step(what, "σ₀ = f / s", given, Q::mpa(strength / figures.divisor), allowed(choice));
        }
    };
    compare("Stress that may stay in the board", &outcome.board, inputs.material);
    if let Some(((_, figures), stress)) = outcome.strip.zip(outcome.strip_stress()) {
        compare("Stress that may stay in the strip", &figures, inputs.strip_material);
        let formula = "σ₂ = E₂ · M · e / EI, on the first day or after years, at the outermost fibre";
        steps.step("Stress in the strip", formula, [("M", moment)], Q::mpa(stress), TRANSFORMED);
    }
}
