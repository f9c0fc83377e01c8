//! Wood movement: how far a solid part grows and shrinks across its grain, and what to allow for it.
//!
//! The change of width goes in proportion to the change of moisture, by a coefficient of the species; the moisture
//! follows the air. All of it is an estimate: boards of one species differ, and a finish only slows it down.

mod allow;
mod inputs;
mod notes;
mod read;
mod steps;

pub use allow::Allow;
pub use inputs::{By, Climate, Grain, Held, Inputs, Set};
pub use notes::Note;

use super::Card;
use crate::caution::Caution;
use crate::measure::Length;
use crate::problem::{Problem, Problems};
use crate::source::Source;
use crate::stock::movement::solid::RANGE_PERCENT;
use crate::working::Working;
use read::Read;
use serde::Serialize;

/// How far it moves, and what to allow.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Width as made, as read.
    pub width: Length,
    /// The wood in words; empty for one's own.
    pub species: &'static str,
    /// Change of width for each per cent of moisture, per cent of the width.
    pub rate_percent: f64,
    /// Who says so.
    pub rate_source: Source,
    /// Moisture as made, per cent of the dry weight.
    pub made_percent: f64,
    /// The same in the driest air.
    pub dry_percent: f64,
    /// The same in the dampest.
    pub damp_percent: f64,
    /// Growth of the whole width from as made to the dampest, mm; never less than nothing. An estimate.
    pub grows_mm: f64,
    /// Shrinkage of the whole width from as made to the driest, mm; never less than nothing. An estimate.
    pub shrinks_mm: f64,
    /// From the driest to the dampest, mm. An estimate.
    pub swing_mm: f64,
    /// How far the sheet beside it moves over the same width, from the driest to the dampest, mm; none where the air is not
    /// known. An estimate.
    pub sheet_mm: Option<f64>,
    /// What to allow at each edge that moves.
    pub allow: Allow,
    /// Whether all moistures lie where the coefficients hold.
    pub in_range: bool,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// Works out how far a part moves.
///
/// # Errors
/// A problem for each field that cannot be used: a wood that is not in the table, moisture beyond 30 %, a damp day that
/// is drier than the dry one, a panel that is all groove.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let change = |from: f64, to: f64| read.width.as_mm() * read.rate.share * (to - from);
    let (made, dry, damp) = (read.made.percent, read.dry.percent, read.damp.percent);
    let (grows_mm, shrinks_mm) = (change(made, damp).max(0.0), change(dry, made).max(0.0));
    let swing_mm = change(dry, damp);
    let allow = Allow::new(inputs, &read, grows_mm, shrinks_mm)?;
    if !allow.leaves_an_opening() {
        let why = "Nothing of the panel is left between its grooves: let it bear by less.";
        return Err(Problems::one("bearing", Problem::Clash { why }));
    }
    let in_range = in_range(&read);
    let working = steps::working(inputs, &read, (grows_mm, shrinks_mm, swing_mm), &allow);
    Ok(Answer {
        width: read.width,
        species: inputs.species.family().map_or("", |family| family.name),
        rate_percent: read.rate.share * 100.0,
        rate_source: read.rate.source,
        made_percent: made,
        dry_percent: dry,
        damp_percent: damp,
        grows_mm,
        shrinks_mm,
        swing_mm,
        sheet_mm: read.sheet_percent.map(|percent| read.width.as_mm() * percent / 100.0),
        allow,
        in_range,
        notes: notes(inputs, &read, in_range),
        working,
        cautions: cautions(inputs),
    })
}

fn in_range(read: &Read) -> bool {
    let (least, most) = RANGE_PERCENT;
    [read.made, read.dry, read.damp].iter().all(|moisture| (least..=most).contains(&moisture.percent))
}

fn notes(inputs: &Inputs, read: &Read, in_range: bool) -> Vec<Note> {
    let along = inputs.grain == Grain::Along;
    let made = read.made.percent;
    let outside = made > read.damp.percent || made < read.dry.percent;
    // Wider than about 150 mm, a flat-sawn board is the one that cups.
    let wide = inputs.grain == Grain::FlatSawn && read.width.as_mm() > 150.0 && inputs.species.family().is_some();
    let mut notes = Vec::new();
    for (applies, note) in [
        (!in_range && !along, Note::OutOfRange),
        (along, Note::Along),
        (outside && !along, Note::MadeOutside),
        (inputs.held == Held::Middle && !along, Note::PinTheMiddle),
        (wide, Note::WideFlatSawn),
    ] {
        if applies {
            notes.push(note);
        }
    }
    notes
}

fn cautions(inputs: &Inputs) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if inputs.set == Set::Grooves {
        cautions.push(Caution::BlindCut);
    }
    cautions.extend([Caution::DustAndNoise, Caution::Estimate]);
    cautions
}

/// The wood-movement card.
pub const CARD: Card =
    Card { slug: "wood-movement", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
