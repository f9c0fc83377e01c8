//! The order of work: every setting of a machine once, with all the parts that share it.

mod drilled;
mod setup;
mod together;

pub use setup::{Bore, OnWall, Setup};

use super::Cabinet;
use super::part::{Axis, Hand, Part, Stock, What};
use crate::mark::mark;
use crate::measure::{Length, LengthError};
use serde::Serialize;
use std::hash::{Hash, Hasher};

/// A step of the work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// How the machine is set, or what is done.
    pub setup: Setup,
    /// The parts, by their places in the list of parts.
    pub parts: Vec<usize>,
    /// Of uprights, which have something in both faces, and of fixed shelves, which have it in both ends: the part, and
    /// where this is done to it.
    pub faces: Vec<(usize, Hand)>,
}

/// Steps as they are gathered.
#[derive(Default)]
struct Steps(Vec<Step>);

impl Steps {
    /// A part shares the setting with those that have the same.
    fn add(&mut self, setup: Setup, part: usize) {
        match self.0.iter_mut().find(|step| step.setup == setup) {
            Some(step) if step.parts.contains(&part) => {}
            Some(step) => step.parts.push(part),
            None => self.0.push(Step { setup, parts: vec![part], faces: Vec::new() }),
        }
    }

    /// The same on a face of a part; it is told which where that part has something in both.
    fn add_on(&mut self, cabinet: &Cabinet, setup: Setup, (part, face): (usize, Hand)) {
        if cabinet.parts.get(part).is_some_and(|part| matches!(part.what, What::Upright { .. })) {
            self.add_end(setup, (part, face));
        } else {
            self.add(setup, part);
        }
    }

    /// The same on one end or face of a part, which is told.
    fn add_end(&mut self, setup: Setup, (part, end): (usize, Hand)) {
        self.add(setup.clone(), part);
        let step = self.0.iter_mut().find(|step| step.setup == setup);
        if let Some(step) = step.filter(|step| !step.faces.contains(&(part, end))) {
            step.faces.push((part, end));
        }
    }
}

/// What is cut from boards on the saw; edging and clothes rail come as they are.
fn sawn(parts: &[Part]) -> impl Iterator<Item = (usize, &Part)> {
    parts.iter().enumerate().filter(|(_, part)| !matches!(part.stock, Stock::Edging | Stock::Rail))
}

/// Every step, in the order of the work: wide rips before narrow ones, long parts before short ones.
pub(super) fn steps(cabinet: &Cabinet) -> Result<Vec<Step>, LengthError> {
    let mut steps = Steps::default();
    let mut by_width: Vec<(usize, &Part)> = sawn(&cabinet.parts).collect();
    by_width.sort_by(|(_, a), (_, b)| (a.stock, b.width).cmp(&(b.stock, a.width)));
    // Both strips of a cleat are parted from one board by a bevel, and are cut apart as long as that.
    let of_cleat = |part: &Part| cabinet.cleat.as_ref().filter(|_| part.section.is_some());
    for (at, part) in &by_width {
        let fence = match (part.stock, &cabinet.handle_rip, of_cleat(part)) {
            // Two bevelled handles come from one board.
            (Stock::Handle, Some(rip), _) => rip.section.width,
            (_, _, None) => part.width,
            (_, _, Some(cleat)) => {
                if part.what == What::CabinetStrip {
                    steps.add(Setup::CleatBoard { fence: cleat.board, stop: part.length }, *at);
                }
                continue;
            }
        };
        steps.add(Setup::Rip { stock: part.stock, fence }, *at);
    }
    let mut by_length = by_width;
    by_length.sort_by(|(_, a), (_, b)| (a.stock, b.length).cmp(&(b.stock, a.length)));
    for (at, part) in by_length.iter().filter(|(_, part)| of_cleat(part).is_none()) {
        steps.add(Setup::Crosscut { stock: part.stock, stop: part.length }, *at);
    }
    if let Some(groove) = &cabinet.groove {
        for (at, part) in sawn(&cabinet.parts).filter(|(_, part)| !part.grooves.is_empty()) {
            let setup = match stopped(part)? {
                Some(ends) => {
                    Setup::StoppedGroove { depth: groove.depth, walls: [groove.starts_at, groove.ends_at], ends }
                }
                None => Setup::Groove {
                    height: groove.depth,
                    rabbet: groove.starts_at.is_zero(),
                    passes: groove.passes.clone(),
                },
            };
            steps.add(setup, at);
        }
    }
    if let Some(cleat) = &cabinet.cleat {
        for (at, _) in sawn(&cabinet.parts).filter(|(_, part)| part.section.is_some()) {
            steps.add(Setup::Bevel { passes: cleat.passes.clone() }, at);
        }
        for (at, part) in sawn(&cabinet.parts).filter(|(_, part)| part.what == What::WallStrip) {
            steps.add(Setup::CleatCut { stop: part.length }, at);
        }
    }
    if let Some(rip) = &cabinet.handle_rip {
        for (at, _) in sawn(&cabinet.parts).filter(|(_, part)| part.stock == Stock::Handle) {
            for pass in &rip.passes {
                steps.add(Setup::HandleBevel { lean_degrees: rip.bevel_degrees, fence_mm: pass.fence_mm }, at);
            }
        }
    }
    for part in &cabinet.parts {
        if let What::Edging { on } = part.what {
            steps.add(Setup::Edge, on);
        }
    }
    drilled::drilled(cabinet, &mut steps)?;
    together::put_together(cabinet, &mut steps)?;
    Ok(steps.0)
}

/// From where to where a groove goes in a part that it does not run through, from its left end.
fn stopped(part: &Part) -> Result<Option<[Length; 2]>, LengthError> {
    let (left, _) = part.place.along(Axis::Across);
    let Some(groove) = part.grooves.first().filter(|groove| part.grain == Axis::Across && groove.from[0] > left) else {
        return Ok(None);
    };
    Ok(Some([groove.from[0].minus(left)?, groove.to[0].minus(left)?]))
}

/// The mark of a cabinet's work: of every part, its place, and every hole and joint.
pub(super) fn work_mark(cabinet: &Cabinet) -> String {
    mark(|hasher| {
        for part in &cabinet.parts {
            (part.place.from, part.place.to).hash(hasher);
            hasher.write(part.what.name().as_bytes());
        }
        for rows in &cabinet.rows {
            for row in std::iter::once(&rows.rows.front).chain(&rows.rows.rear) {
                for hole in &row.holes {
                    (hole.at, hole.plate).hash(hasher);
                }
                row.from_front.hash(hasher);
            }
            (rows.rows.hole, rows.deep, rows.through).hash(hasher);
        }
        for door in &cabinet.doors {
            let cup = &door.answer.plan.cup;
            (&door.cups, door.answer.cup_centre, cup.width, cup.depth).hash(hasher);
        }
        if let Some(groove) = &cabinet.groove {
            (groove.starts_at, groove.ends_at, groove.depth, groove.kerf).hash(hasher);
        }
        if let Some(cleat) = &cabinet.cleat {
            (cleat.board, cleat.wall_strip_at, cleat.spacer_at).hash(hasher);
            cleat.passes.iter().for_each(|pass| pass.fence.hash(hasher));
        }
        if let Some(plinth) = &cabinet.plinth {
            (plinth.lines, &plinth.screws).hash(hasher);
        }
        if let Some(strip) = &cabinet.strip_screws {
            (&strip.into_top, &strip.into_sides).hash(hasher);
        }
        for handle in cabinet.doors.iter().filter_map(|door| door.handle.as_ref()) {
            (handle.from_edge, &handle.screws, handle.screw).hash(hasher);
        }
        if let Some(rail) = &cabinet.hooks {
            (&rail.hooks, &rail.screws, rail.from_front, rail.screw).hash(hasher);
        }
        if let Some(shelf) = &cabinet.outside {
            (&shelf.on_holder, &shelf.screws, shelf.screw).hash(hasher);
            (&shelf.brackets, &shelf.shelf_screws, shelf.shelf_screw).hash(hasher);
        }
        for socket in &cabinet.sockets {
            (socket.up, socket.from_front).hash(hasher);
        }
        for join in &cabinet.joins {
            (&join.lines, &join.marks.marks, join.marks.line, join.gap).hash(hasher);
            let fixing = &join.marks.fixing;
            (fixing.across, fixing.across_other, fixing.along, fixing.in_edge, fixing.in_other).hash(hasher);
            hasher.write(&[join.marks.kind as u8]);
        }
    })
}
