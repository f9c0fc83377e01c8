//! Holes and joints, every setting with the parts that share it.

use super::{Setup, Steps};
use crate::cabinet::Cabinet;
use crate::cabinet::part::Hand;
use crate::measure::LengthError;

pub(super) fn drilled(cabinet: &Cabinet, steps: &mut Steps) -> Result<(), LengthError> {
    for rows in &cabinet.rows {
        let both = [Some(&rows.rows.front), rows.rows.rear.as_ref()];
        for (row, through) in both.into_iter().zip(rows.through) {
            let deep = (!through).then_some(rows.deep);
            if let Some((row, first)) = row.and_then(|row| Some((row, row.holes.first()?))) {
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
        let marks = &join.marks;
        let (kind, along) = (marks.kind, join.along);
        let setup = Setup::Join { kind, along, marks: marks.marks.clone(), line: marks.line };
        for (edge, _) in &join.pairs {
            steps.add(setup.clone(), *edge);
        }
    }
    for join in &cabinet.joins {
        let marks = join.marks.marks.iter().map(|mark| mark.plus(join.gap)).collect::<Result<Vec<_>, _>>()?;
        for ((edge, face), line) in join.pairs.iter().zip(&join.lines) {
            let (kind, along) = (join.marks.kind, join.along);
            let setup = Setup::JoinFace { kind, along, marks: marks.clone(), line: *line };
            let [end, board] = [edge, face].map(|at| cabinet.parts.get(*at).map(|part| part.place.from[0]));
            steps.add_on(cabinet, setup, (*face, if end < board { Hand::Left } else { Hand::Right }));
        }
    }
    Ok(())
}
