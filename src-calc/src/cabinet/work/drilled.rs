//! Holes and joints, every setting with the parts that share it.

use super::{Bore, Setup, Steps};
use crate::cabinet::part::{Hand, What};
use crate::cabinet::{Cabinet, Join};
use crate::cards::joints::Kind;
use crate::measure::LengthError;

pub(super) fn drilled(cabinet: &Cabinet, steps: &mut Steps) -> Result<(), LengthError> {
    for rows in &cabinet.rows {
        let both = [Some(&rows.rows.front), rows.rows.rear.as_ref()];
        for ((row, through), bored) in both.into_iter().zip(rows.through).zip(cabinet.bored(rows)) {
            let deep = (!through).then_some(rows.deep);
            if let Some((row, first)) = row.and_then(|row| Some((row, bored.first()?))) {
                let (first, hole) = (first.at, rows.rows.hole);
                let setup = Setup::Row { from_front: row.from_front, first, hole, deep };
                steps.add_on(cabinet, setup, (rows.on, rows.face));
            }
        }
    }
    for door in &cabinet.doors {
        if let Some(handle) = &door.handle {
            let setup = Setup::HandleHoles { from_edge: handle.from_edge, at: handle.screws.clone() };
            steps.add(setup, door.on);
        }
        let (cup, deep) = (door.answer.plan.cup.width, door.answer.plan.cup.depth);
        let setup = Setup::Cups { from_edge: door.answer.cup_centre, at: door.cups.clone(), cup, deep };
        steps.add(setup, door.on);
    }
    for socket in &cabinet.sockets {
        let setup = Setup::Socket { from_front: socket.from_front, up: socket.up };
        steps.add_on(cabinet, setup, (socket.on, socket.face));
    }
    if let Some(rail) = &cabinet.hooks {
        steps.add(Setup::HookRailHoles { from_front: rail.from_front, at: rail.screws.clone() }, rail.under);
        steps.add(Setup::Hooks { up: rail.up, at: rail.hooks.clone() }, rail.on);
    }
    if let Some(shelf) = &cabinet.outside {
        let at = shelf.at;
        let (along, across) = (shelf.on_holder.clone(), shelf.screws.clone());
        steps.add(Setup::Brackets { at, shelf: false, along, across }, shelf.held_by);
        let (along, across) = (shelf.brackets.clone(), shelf.shelf_screws.clone());
        steps.add(Setup::Brackets { at, shelf: true, along, across }, shelf.on);
    }
    if let Some(plinth) = &cabinet.plinth {
        for from_front in plinth.lines {
            steps.add(Setup::PlinthHoles { from_front, at: plinth.screws.clone() }, plinth.under);
        }
    }
    if let Some(strip) = &cabinet.strip_screws {
        for (down, at) in [&strip.into_top, &strip.into_sides] {
            steps.add(Setup::StripHoles { down: *down, at: at.clone() }, strip.on);
        }
    }
    for join in &cabinet.joins {
        joined(cabinet, join, steps);
    }
    for join in cabinet.joins.iter().filter(|join| join.marks.kind != Kind::PocketScrew) {
        on_faces(cabinet, join, steps)?;
    }
    Ok(())
}

/// What is done to the ends of parts. Where a shelf beside an upright has other marks in its two ends, it is said which.
fn joined(cabinet: &Cabinet, join: &Join, steps: &mut Steps) {
    let Join { along, marks, .. } = join;
    let (along, fixing, at) = (*along, &marks.fixing, marks.marks.clone());
    let setup = match &marks.screw {
        Some(screw) if marks.kind == Kind::PocketScrew => {
            Setup::Pockets { along, marks: at, shoulder: fixing.in_edge, screw: screw.length }
        }
        _ => {
            let bore = Bore { across: fixing.across, along: fixing.along, deep: Some(fixing.in_edge) };
            Setup::Join { kind: marks.kind, along, marks: at, line: marks.line, bore }
        }
    };
    for (edge, face) in &join.pairs {
        let shelf = cabinet.parts.get(*edge).is_some_and(|part| matches!(part.what, What::FixedShelf { .. }));
        if shelf {
            // Its right end meets the left face of what is on its right.
            steps.add_end(setup.clone(), (*edge, beside(cabinet, *face, *edge)));
        } else {
            steps.add(setup.clone(), *edge);
        }
    }
}

/// On which side of one part another lies.
fn beside(cabinet: &Cabinet, of: usize, from: usize) -> Hand {
    let [of, from] = [of, from].map(|at| cabinet.parts.get(at).map(|part| part.place.from[0]));
    if of < from { Hand::Left } else { Hand::Right }
}

fn on_faces(cabinet: &Cabinet, join: &Join, steps: &mut Steps) -> Result<(), LengthError> {
    let marks = join.marks.marks.iter().map(|mark| mark.plus(join.gap)).collect::<Result<Vec<_>, _>>()?;
    let (kind, along, fixing) = (join.marks.kind, join.along, &join.marks.fixing);
    let deep = (!fixing.through).then_some(fixing.in_other);
    let bore = Bore { across: fixing.across_other, along: fixing.along, deep };
    for ((edge, face), line) in join.pairs.iter().zip(&join.lines) {
        let setup = Setup::JoinFace { kind, along, marks: marks.clone(), line: *line, bore };
        steps.add_on(cabinet, setup, (*face, beside(cabinet, *edge, *face)));
    }
    Ok(())
}
