//! Clothes rail: how far it sags, whether it holds, what would hold, and the room that the clothes take.
//!
//! A rail is a straight bar of even section that lies freely in its ends and on any brackets between them, in one
//! length: bending only, small sag, as for a shelf. Sag and stress are estimates; the room is exact.

mod answer;
mod case;
mod inputs;
mod notes;
mod read;
mod room;
mod section;
mod steps;

pub use answer::{Answer, Blocks, Room, Stress, WithBrackets};
pub use inputs::{Brackets, Hung, Inputs, Load, Material};
pub use notes::Note;
pub use section::{Section, Shape};

use super::Card;
use super::shelf::case::GRAVITY;
use super::shelf::holds::longest_span;
use super::shelf::judging::supports;
use super::shelf::{Place, Used};
use crate::caution::Caution;
use crate::measure::Length;
use crate::problem::Problems;
use crate::stock::clothes::TEST_KG_PER_M;
use case::{Case, Outcome};
use read::Read;

/// How many places the deflected line has.
const PLACES: u32 = 41;

/// Works a rail and the room under it out.
///
/// # Errors
/// A problem for each field that cannot be used: sizes beyond a rail's or a cabinet's, figures beyond a material's, a
/// wall that leaves no tube, a wood that is no solid wood, a bracket that the rail does not fit under.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let case = &read.case;
    let outcome = case.outcome();
    let room = read.sizes.room(inputs.brackets)?;
    let with_brackets: Vec<WithBrackets> =
        Brackets::ALL.iter().map(|brackets| with_brackets(case, *brackets, inputs)).collect();
    Ok(Answer {
        span: read.span,
        bay: read.bay,
        height: read.sizes.rail_height,
        width: read.width,
        section: case.section,
        material: used(inputs, case),
        instant_mm: outcome.instant_mm,
        long_term_mm: outcome.late_mm,
        instant_ratio: outcome.bay_mm / outcome.instant_mm,
        long_term_ratio: outcome.bay_mm / outcome.late_mm,
        deepest_at_mm: outcome.deepest_at_mm,
        uneven_mm: case.uneven_mm(&outcome),
        own_weight_kg: outcome.own * case.span_mm / GRAVITY,
        load_kg: outcome.load * case.span_mm / GRAVITY,
        stress: stress(case, &outcome),
        verdicts: case.bar.verdicts(outcome.sag()),
        holds: case.passes(&outcome),
        fewest: with_brackets.iter().find(|with| with.holds).map(|with| with.brackets),
        with_brackets,
        supports: supports(&outcome.beam, outcome.bay_mm),
        line: line(case, &outcome),
        room,
        notes: notes(inputs, &read, &outcome, &room),
        working: steps::working(inputs, &read, &outcome, &room),
        cautions: vec![Caution::RailLoad, Caution::Estimate],
    })
}

fn with_brackets(case: &Case, brackets: Brackets, inputs: &Inputs) -> WithBrackets {
    let case = Case { brackets, ..*case };
    let outcome = case.outcome();
    let holds = |span_mm: f64| case.holds_at(span_mm, &outcome);
    WithBrackets {
        brackets,
        sag_mm: case.bar.counts_mm(outcome.sag()),
        holds: case.passes(&outcome),
        longest_span: longest_span(inputs.graduation, &holds),
    }
}

fn used(inputs: &Inputs, case: &Case) -> Used {
    let family = inputs.wood.family().filter(|_| inputs.material == Material::Wood);
    let row = family.and_then(|family| family.rows().first());
    Used {
        name: inputs.material_name(),
        label: "",
        values: family.map(|family| family.values),
        stiffness_mpa: case.figures.stiffness_mpa,
        density_kg_m3: case.figures.density_kg_m3,
        creep: case.figures.creep,
        source: row.map(|row| row.source).or(inputs.material.metal().map(|metal| metal.source)),
    }
}

fn stress(case: &Case, outcome: &Outcome) -> Option<Stress> {
    let strength_mpa = case.figures.strength_mpa?;
    let allowed = strength_mpa / case.figures.divisor;
    Some(Stress {
        stress_mpa: outcome.stress_mpa,
        strength_mpa,
        divisor: case.figures.divisor,
        used_percent: outcome.stress_mpa / allowed * 100.0,
        holds: outcome.stress_mpa <= allowed,
    })
}

fn line(case: &Case, outcome: &Outcome) -> Vec<Place> {
    let late = outcome.late_mm / outcome.instant_mm;
    (0..PLACES)
        .map(|at| {
            let along_mm = case.span_mm * f64::from(at) / f64::from(PLACES - 1);
            let instant_mm = outcome.beam.deflection(along_mm) / outcome.stiffness;
            // Nothing weighs on a weightless rail without clothes, and nothing over nothing is no number.
            Place { along_mm, instant_mm, long_term_mm: if late.is_finite() { instant_mm * late } else { 0.0 } }
        })
        .collect()
}

fn notes(inputs: &Inputs, read: &Read, outcome: &Outcome, room: &Room) -> Vec<Note> {
    let hangers_fit = read.sizes.hanger <= read.sizes.inside_depth;
    let few = Length::mm(50, 1).is_ok_and(|few| room.hook < few);
    let per_metre = outcome.load * 1000.0 / GRAVITY;
    let mut notes = Vec::new();
    for (applies, note) in [
        (!hangers_fit, Note::HangersDoNotFit),
        (hangers_fit && room.depth_spare.is_negative(), Note::ClothesTouch),
        (room.height_spare.is_negative(), Note::TooLong),
        (few, Note::HooksCatch),
        (read.width > read.sizes.rail_height, Note::LiesFlat),
        (inputs.brackets != Brackets::None && outcome.load > 0.0, Note::Uneven),
        // A hair for the float: 40 kg a metre, there and back, is not less than itself.
        (per_metre < TEST_KG_PER_M * (1.0 - 1e-9), Note::BelowTestLoad),
        (outcome.late_mm > outcome.bay_mm / 50.0, Note::PastFormula),
    ] {
        if applies {
            notes.push(note);
        }
    }
    notes
}

/// The clothes-rail card.
pub const CARD: Card =
    Card { slug: "clothes-rail", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
