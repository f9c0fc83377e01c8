//! Shelf: how far it sags, whether it holds, and what would hold.
//!
//! A shelf is a straight bar of even section, worked out as in any book of mechanics: bending only, small sag.
//! Everything but the sizes themselves is an estimate, since boards differ from their tables by a quarter or more.

mod answer;
pub(super) mod beam;
pub(super) mod case;
pub(super) mod holds;
mod inputs;
pub(super) mod judging;
mod notes;
pub(super) mod read;
mod section;
pub(super) mod steps;

pub use answer::{Answer, Carried, PartOf, Place, Strength, Used, Verdict};
pub use beam::Support;
pub use holds::{Found, WouldHold};
pub use inputs::{Grain, Inputs, Judged, Limit, Load};
pub use notes::Note;
pub use section::Strip;

use super::Card;
use crate::caution::Caution;
use crate::problem::Problems;
use crate::stock::materials::{Choice, Kind, Values};
use case::{Case, Figures, GRAVITY, Outcome};

/// How many places the deflected line has.
const PLACES: u32 = 41;

/// Works a shelf out.
///
/// # Errors
/// A problem for each field that cannot be used: sizes beyond a shelf's, figures beyond a material's, a material
/// without published values across the grain.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let case = &read.case;
    // `read` has seen that the table has values for the board, and a strip runs along the grain, where every table has.
    let Some(outcome) = case.outcome() else { return Err(Problems::default()) };
    let board = used(inputs.material, read.case.thickness_mm, &outcome.board);
    let strip = outcome.strip.map(|(of, figures)| used(inputs.strip_material, of.thickness_mm(), &figures));
    let strength = strength(&outcome);
    let notes = notes(inputs, case, &outcome, &strength);
    let bay_mm = outcome.bay_mm;
    let [even, ..] = case.load.even;
    Ok(Answer {
        span: read.span,
        bay: read.bay,
        thickness: read.thickness,
        depth: read.depth,
        instant_mm: outcome.instant_mm,
        long_term_mm: outcome.late_mm,
        instant_ratio: bay_mm / outcome.instant_mm,
        long_term_ratio: bay_mm / outcome.late_mm,
        deepest_at_mm: outcome.late_at_mm,
        uneven_mm: case.uneven_mm(&outcome),
        own_weight_kg: outcome.own_n_per_mm * case.span_mm / GRAVITY,
        load_kg: (even * case.span_mm + case.load.point) / GRAVITY,
        board,
        strip,
        strength,
        verdicts: case.bar.verdicts(outcome.sag()),
        holds: case.passes(&outcome),
        would_hold: WouldHold::find(case, read.trial_strip, inputs.graduation),
        supports: judging::supports(&outcome.beam, outcome.bay_mm),
        line: line(case, &outcome),
        notes,
        working: steps::working(inputs, case, &outcome),
        cautions: vec![Caution::ShelfLoad, Caution::Estimate],
    })
}

fn used(choice: Choice, thickness_mm: f64, figures: &Figures) -> Used {
    let row = choice.family().and_then(|family| family.row(thickness_mm));
    Used {
        name: choice.family().map_or("", |family| family.name),
        label: row.map_or("", |(row, _)| row.label),
        values: choice.family().map(|family| family.values),
        stiffness_mpa: figures.stiffness_mpa,
        density_kg_m3: figures.density_kg_m3,
        creep: figures.creep,
        source: row.map(|(row, _)| row.source),
    }
}

fn strength(outcome: &Outcome) -> Vec<Strength> {
    let of = |part, stress_mpa: f64, figures: &Figures| {
        let allowed_mpa = figures.strength_mpa.map(|strength| strength / figures.divisor);
        Strength {
            part,
            stress_mpa,
            strength_mpa: figures.strength_mpa,
            divisor: figures.divisor,
            allowed_mpa,
            used_percent: allowed_mpa.map(|allowed| stress_mpa / allowed * 100.0),
            holds: allowed_mpa.map(|allowed| stress_mpa <= allowed),
        }
    };
    let strip = outcome.strip.zip(outcome.strip_stress());
    std::iter::once(of(PartOf::Board, outcome.board_stress(), &outcome.board))
        .chain(strip.map(|((_, figures), stress)| of(PartOf::Strip, stress, &figures)))
        .collect()
}

fn line(case: &Case, outcome: &Outcome) -> Vec<Place> {
    (0..PLACES)
        .map(|at| {
            let along_mm = case.span_mm * f64::from(at) / f64::from(PLACES - 1);
            Place {
                along_mm,
                instant_mm: outcome.beam.deflection(along_mm) / outcome.section.stiffness,
                long_term_mm: outcome.late.deflection(along_mm),
            }
        })
        .collect()
}

fn notes(inputs: &Inputs, case: &Case, outcome: &Outcome, strength: &[Strength]) -> Vec<Note> {
    let mut notes = Vec::new();
    let family = inputs.material.family();
    let strip_family = outcome.strip.and_then(|(strip, _)| Some((strip, inputs.strip_material.family()?)));
    let off_table = family.and_then(|family| family.row(case.thickness_mm)).filter(|(_, inside)| !inside);
    notes.extend(off_table.map(|(row, _)| Note::OffTable { label: row.label }));
    let sag = outcome.late_mm.max(outcome.instant_mm);
    let on_edge = strip_family.is_some_and(|(strip, family)| strip.kind != Strip::Under && family.kind != Kind::Solid);
    let one_strip = case.strip.is_some_and(|strip| strip.kind == Strip::Front) && case.depth_mm > 400.0;
    let held = matches!(case.support, Support::FixedBothEnds | Support::FixedOneEnd);
    for (applies, note) in [
        (family.is_some_and(|family| family.values == Values::Minimum), Note::LeastValues),
        (strength.iter().any(|part| part.strength_mpa.is_none()), Note::StrengthUnknown),
        (on_edge, Note::StripOnEdge),
        (one_strip, Note::OneStripOnDeepShelf),
        (outcome.bay_mm < 20.0 * case.thickness_mm, Note::Stocky),
        (sag > outcome.bay_mm / 50.0, Note::PastFormula),
        (outcome.beam.reactions().iter().any(|&force| force < 0.0), Note::LiftsOff),
        (case.uneven_mm(outcome).is_some(), Note::Uneven),
        (held, Note::HeldEnds),
    ] {
        if applies {
            notes.push(note);
        }
    }
    notes
}

/// The shelf card.
pub const CARD: Card = Card { slug: "shelf", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
