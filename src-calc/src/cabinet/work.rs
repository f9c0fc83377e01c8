//! The order of work: every setting of a machine once, with all the parts that share it.

use super::Cabinet;
use super::outside::Beside;
use super::part::{Part, Stock, What};
use crate::cards::joints::Kind;
use crate::cards::{groove, wall_cleat};
use crate::mark::mark;
use crate::measure::{Length, LengthError};
use serde::Serialize;
use std::hash::{Hash, Hasher};

/// How a machine is set.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Setup {
    /// Ripped to width: the fence from the blade.
    Rip {
        /// From which board.
        stock: Stock,
        /// Fence to the near side of the blade.
        fence: Length,
    },
    /// Crosscut to length: the stop from the blade.
    Crosscut {
        /// From which board.
        stock: Stock,
        /// Stop to the near side of the blade.
        stop: Length,
    },
    /// The groove or rabbet for the back, with the rear edge at the fence.
    Groove {
        /// Height of the blade.
        height: Length,
        /// Every pass.
        passes: Vec<groove::Pass>,
    },
    /// The bevels of the wall cleat.
    Bevel {
        /// Every pass, the blade leaning away from the fence.
        passes: Vec<wall_cleat::Pass>,
    },
    /// The bevels of strips for handles, two from one board.
    HandleBevel {
        /// How far the blade leans, in degrees.
        lean_degrees: f64,
        /// From the fence to the near side of the blade, at the table, in millimetres.
        fence_mm: f64,
    },
    /// Edges glued on and trimmed flush.
    Edge,
    /// A row of holes along a rail.
    Row {
        /// The row, from the front edge.
        from_front: Length,
        /// The first hole that is drilled, from the lower end.
        first: Length,
        /// Their diameter.
        hole: Length,
        /// How deep; none where it goes right through.
        deep: Option<Length>,
    },
    /// A socket of the clothes rail, screwed on.
    Socket {
        /// Its middle, from the board's front edge.
        from_front: Length,
        /// From its lower end.
        up: Length,
    },
    /// Cups of hinges, drilled against a fence.
    Cups {
        /// From the door's edge to their middles.
        from_edge: Length,
        /// Their middles from its lower end.
        at: Vec<Length>,
        /// Their diameter.
        cup: Length,
        /// How deep.
        deep: Length,
    },
    /// Holes through a door for the screws of its handle.
    HandleHoles {
        /// From the door's free edge.
        from_edge: Length,
        /// From its lower end.
        at: Vec<Length>,
    },
    /// Holes through the bottom for the screws of the rail with hooks.
    HookRailHoles {
        /// From the bottom's front edge.
        from_front: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Hooks on their rail.
    Hooks {
        /// From the rail's lower edge.
        up: Length,
        /// From its left end.
        at: Vec<Length>,
    },
    /// Marks for the screws of brackets, each with as many.
    Brackets {
        /// Where the shelf outside is.
        at: Beside,
        /// Whether they are on the shelf itself; else on what holds it.
        shelf: bool,
        /// The brackets, one by one, from where [`super::OutsideShelf`] has them.
        along: Vec<Length>,
        /// The screws of each, across that.
        across: Vec<Length>,
    },
    /// Joints in the ends of parts.
    Join {
        /// What joins it.
        kind: Kind,
        /// Marks from the front edge of the part whose end is joined.
        marks: Vec<Length>,
        /// From its outer face to their middles.
        line: Length,
    },
    /// Joints in the faces that such ends meet.
    JoinFace {
        /// What joins it.
        kind: Kind,
        /// Marks from the front edge of the part whose face it is.
        marks: Vec<Length>,
        /// The line that they are on, from its lower or left end.
        line: Length,
    },
    /// The carcass glued or screwed together.
    Assemble,
    /// The rail with hooks screwed on from above.
    FixHooks,
    /// The clothes rail cut to length and put into its sockets.
    Rail {
        /// How long it is cut.
        length: Length,
    },
    /// The back slid or nailed in.
    PutIn,
    /// Strips for handles screwed on from behind.
    FixHandles,
    /// Doors hung, and set by their gaps.
    HangDoors,
    /// Strips screwed to the wall, and the cabinet hooked on.
    HangUp {
        /// The spacer is packed out from the wall by so much.
        packing: Length,
    },
    /// Brackets screwed on, and the shelf outside on them.
    FixOutside,
}

/// A step of the work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// How the machine is set, or what is done.
    pub setup: Setup,
    /// The parts, by their places in the list of parts.
    pub parts: Vec<usize>,
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
            None => self.0.push(Step { setup, parts: vec![part] }),
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
    for (at, part) in &by_width {
        // Both strips of a cleat, and two bevelled handles, come from one board.
        let pair = match (part.stock, &cabinet.handle_rip) {
            (Stock::Handle, Some(rip)) => Some(rip.section.width),
            _ => cabinet.cleat.as_ref().filter(|_| part.section.is_some()).map(|cleat| cleat.board),
        };
        steps.add(Setup::Rip { stock: part.stock, fence: pair.unwrap_or(part.width) }, *at);
    }
    let mut by_length = by_width;
    by_length.sort_by(|(_, a), (_, b)| (a.stock, b.length).cmp(&(b.stock, a.length)));
    for (at, part) in &by_length {
        steps.add(Setup::Crosscut { stock: part.stock, stop: part.length }, *at);
    }
    if let Some(groove) = &cabinet.groove {
        let setup = Setup::Groove { height: groove.depth, passes: groove.passes.clone() };
        for (at, _) in sawn(&cabinet.parts).filter(|(_, part)| !part.grooves.is_empty()) {
            steps.add(setup.clone(), at);
        }
    }
    if let Some(cleat) = &cabinet.cleat {
        for (at, _) in sawn(&cabinet.parts).filter(|(_, part)| part.section.is_some()) {
            steps.add(Setup::Bevel { passes: cleat.passes.clone() }, at);
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
    drilled(cabinet, &mut steps)?;
    put_together(cabinet, &mut steps)?;
    Ok(steps.0)
}

fn drilled(cabinet: &Cabinet, steps: &mut Steps) -> Result<(), LengthError> {
    for rows in &cabinet.rows {
        let deep = (!rows.through).then_some(rows.deep);
        for row in std::iter::once(&rows.rows.front).chain(&rows.rows.rear) {
            if let Some(first) = row.holes.first() {
                let (first, hole) = (first.at, rows.rows.hole);
                steps.add(Setup::Row { from_front: row.from_front, first, hole, deep }, rows.on);
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
        steps.add(Setup::Socket { from_front: socket.from_front, up: socket.up }, socket.on);
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
    for join in &cabinet.joins {
        let marks = &join.marks;
        let setup = Setup::Join { kind: marks.kind, marks: marks.marks.clone(), line: marks.line };
        for (edge, _) in &join.pairs {
            steps.add(setup.clone(), *edge);
        }
    }
    for join in &cabinet.joins {
        let marks = join.marks.marks.iter().map(|mark| mark.plus(join.front_gap)).collect::<Result<Vec<_>, _>>()?;
        for ((_, face), line) in join.pairs.iter().zip(&join.lines) {
            steps.add(Setup::JoinFace { kind: join.marks.kind, marks: marks.clone(), line: *line }, *face);
        }
    }
    Ok(())
}

fn put_together(cabinet: &Cabinet, steps: &mut Steps) -> Result<(), LengthError> {
    for (edge, face) in cabinet.joins.iter().flat_map(|join| &join.pairs) {
        for part in [*edge, *face] {
            steps.add(Setup::Assemble, part);
        }
    }
    if let Some(rail) = &cabinet.hooks {
        steps.add(Setup::FixHooks, rail.on);
    }
    for (at, part) in cabinet.parts.iter().enumerate().filter(|(_, part)| part.what == What::Rail) {
        steps.add(Setup::Rail { length: part.length }, at);
    }
    for (at, _) in sawn(&cabinet.parts).filter(|(_, part)| part.stock == Stock::Handle) {
        steps.add(Setup::FixHandles, at);
    }
    let packing = match &cabinet.cleat {
        Some(cleat) => cleat.spacer_thickness.minus(cleat.thickness)?,
        None => Length::ZERO,
    };
    for (at, part) in sawn(&cabinet.parts) {
        match part.what {
            What::Back => steps.add(Setup::PutIn, at),
            What::Door { .. } => steps.add(Setup::HangDoors, at),
            What::CabinetStrip | What::WallStrip | What::Spacer | What::HangingRail { .. } => {
                steps.add(Setup::HangUp { packing }, at);
            }
            What::PlinthFront | What::PlinthRear | What::PlinthCross { .. } => steps.add(Setup::Assemble, at),
            _ => {}
        }
    }
    // Last, so that the cabinet is lighter to lift.
    if let Some(shelf) = &cabinet.outside {
        steps.add(Setup::FixOutside, shelf.on);
    }
    Ok(())
}

/// The mark of a cabinet's work: of every part, its place, and every hole and joint.
pub(super) fn work_mark(cabinet: &Cabinet) -> String {
    mark(|hasher| {
        for part in &cabinet.parts {
            (part.place.from, part.place.to).hash(hasher);
            hasher.write(part.what.name().as_bytes());
        }
        for rows in &cabinet.rows {
            for hole in &rows.rows.front.holes {
                (hole.at, hole.plate).hash(hasher);
            }
            rows.rows.front.from_front.hash(hasher);
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
            (&join.lines, &join.marks.marks, join.marks.line, join.front_gap).hash(hasher);
        }
    })
}
