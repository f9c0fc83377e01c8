//! Joints along an edge: dowels, loose tenons, biscuits, connecting screws, pocket screws; how many, where, how deep.

mod answer;
mod fixing;
mod inputs;
mod notes;
mod read;
mod steps;

pub use answer::{Answer, Fixing, Left, Screw, Stays};
pub use inputs::{Biscuit, Inputs, Kind, Meeting, Spread};
pub use notes::Note;

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, LengthError};
use crate::problem::{Problem, Problems};
use crate::stock::joints;
use read::{MOST, Made, Read};

/// Works out the joints along an edge.
///
/// # Errors
/// A problem for each field that cannot be used: ends that pass each other, joints that run into each other, a screw
/// that does not come through. A hole that breaks out is an answer, [`Stays::BreaksOut`].
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let (fixing, screw) = fixing::fixing(&read)?;
    let marks = marks(inputs.spread, &read)?;
    let spacing = match marks.as_slice() {
        [first, second, ..] => Some(second.minus(*first)?),
        _ => None,
    };
    if spacing.is_some_and(|spacing| spacing <= fixing.along) {
        let why = "They would run into each other: set them farther apart, or take fewer.";
        let field = if read.count.is_some() { "count" } else { "spacing" };
        return Err(Problems::one(field, Problem::Clash { why }));
    }
    let left = fixing::left(&read, &fixing, &marks)?;
    let stays = if !left.least.is_positive() {
        Stays::BreaksOut
    } else if left.least < read.skin {
        Stays::Thin
    } else {
        Stays::Inside
    };
    let mirrored = marks.iter().rev().map(|mark| read.length.minus(*mark)).collect::<Result<_, _>>()?;
    Ok(Answer {
        kind: inputs.kind,
        length: read.length,
        edge_thickness: read.edge,
        face_thickness: read.face,
        line: read.line,
        line_on_face: if read.face.is_some() { Some(read.from_end.plus(read.line)?) } else { None },
        notes: notes(&read, &fixing, screw.as_ref(), &marks, spacing)?,
        working: steps::working(inputs, &read, &fixing, screw.as_ref(), &marks, &left)?,
        cautions: cautions(inputs.kind),
        marks,
        mirrored,
        spacing,
        fixing,
        screw,
        left,
        stays,
    })
}

/// The middles from the front end.
fn marks(spread: Spread, read: &Read) -> Result<Vec<Length>, Problems> {
    let between = read.length.minus(read.first)?.minus(read.other_end)?;
    let too_many = || {
        let why = "More than 100 would be needed: check the length and the greatest distance.";
        Problems::one("spacing", Problem::Clash { why })
    };
    let place = |at: i64, step: Length| read.first.plus(step.times(at, 1)?);
    match spread {
        Spread::Even => {
            // So many gaps that none is greater than allowed: rounded up.
            let gaps = match read.count {
                Some(count) => count - 1,
                None => between.negated().floor_div(read.every)?.saturating_neg(),
            };
            if gaps >= MOST {
                return Err(too_many());
            }
            if gaps == 0 {
                // A single one sits in the middle of what the ends leave.
                return Ok(vec![read.first.plus(between.times(1, 2)?)?]);
            }
            let step = between.times(1, gaps.unsigned_abs())?;
            Ok((0..=gaps).map(|at| place(at, step)).collect::<Result<_, LengthError>>()?)
        }
        Spread::Steps => {
            let pitch = Length::mm(32, 1)?;
            let step = pitch.times(read.every.floor_div(pitch)?.max(1), 1)?;
            let room = between.floor_div(step)?;
            let gaps = match read.count {
                Some(count) if count - 1 > room => {
                    let why = "So many do not fit in steps of 32 mm: set them closer, or spread them evenly.";
                    return Err(Problems::one("count", Problem::Clash { why }));
                }
                Some(count) => count - 1,
                None => room,
            };
            if gaps >= MOST {
                return Err(too_many());
            }
            Ok((0..=gaps).map(|at| place(at, step)).collect::<Result<_, LengthError>>()?)
        }
    }
}

fn notes(
    read: &Read,
    fixing: &Fixing,
    screw: Option<&Screw>,
    marks: &[Length],
    spacing: Option<Length>,
) -> Result<Vec<Note>, LengthError> {
    let mm = |whole: i64| Length::mm(whole, 1);
    let usual = read.usual;
    let (near, far) = (mm(usual.ends_mm.0)?, mm(usual.ends_mm.1)?);
    let mut ends = [read.first, read.other_end];
    if let (Some(first), Some(last)) = (marks.first(), marks.last()) {
        ends = [*first, read.length.minus(*last)?];
    }
    let outside =
        |depth: Length, (least, most): (i64, i64)| Ok::<_, LengthError>(depth < mm(least)? || depth > mm(most)?);
    let doweled = matches!(read.made, Made::Dowel { .. });
    let tenon = matches!(read.made, Made::Tenon { .. });
    let connecting = matches!(read.made, Made::Connecting { .. });
    let deep = outside(fixing.in_other, joints::TENON_DEPTH_MM)? || outside(fixing.in_edge, joints::TENON_DEPTH_MM)?;
    let reaches = screw.map_or(Length::ZERO, |screw| screw.reach);
    let too_long = screw.is_some_and(|screw| screw.longest.is_some_and(|longest| screw.length > longest));
    let applies = [
        ((doweled || tenon) && fixing.across > read.edge.times(1, 2)?, Note::Thick),
        (doweled && fixing.across < read.edge.times(1, 3)?, Note::Slight),
        (ends.iter().any(|end| *end < near), Note::NearTheEnd),
        (marks.len() > 1 && ends.iter().any(|end| *end > far), Note::FarFromTheEnd),
        (spacing > Some(mm(usual.spacing_mm.1)?), Note::FarApart),
        (marks.len() == 1, Note::Single),
        (tenon && deep, Note::TenonDepth),
        (tenon && outside(fixing.along, joints::TENON_WIDTH_MM)?, Note::TenonWidth),
        (connecting && read.edge < mm(joints::CONNECTING_BOARD_MM)?, Note::ThinForScrew),
        (connecting && reaches < mm(joints::CONNECTING_REACH_MM)?, Note::ShortReach),
        (too_long, Note::ScrewTooLong),
    ];
    Ok(applies.into_iter().filter_map(|(applies, note)| applies.then_some(note)).collect())
}

fn cautions(kind: Kind) -> Vec<Caution> {
    let mut cautions = match kind {
        Kind::Dowel | Kind::ConnectingScrew | Kind::PocketScrew => vec![Caution::BlindHoles],
        Kind::LooseTenon | Kind::Biscuit => vec![Caution::RoutedSlot],
    };
    if kind.is_screw() {
        cautions.push(Caution::DrivenScrew);
    }
    cautions.extend([Caution::SmallPartAtCutter, Caution::DustAndNoise]);
    cautions
}

/// The joints card.
pub const CARD: Card = Card { slug: "joints", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
