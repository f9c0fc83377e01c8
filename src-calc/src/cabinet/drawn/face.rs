//! A face of a part as it lies on the bench: its lower or left end to the left, holes, grooves and marks on it, the
//! corner that everything is measured from marked.

use super::along;
use crate::cabinet::part::{Axis, Block, Hand, Part, What};
use crate::cabinet::{Beside, Cabinet, Door, Join, Socket};
use crate::drawing::{Dimension, Drawing, Layer, Point, Shape};
use crate::measure::{Length, LengthError};
use serde::Serialize;

/// Which face of a part is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Face {
    /// The one that looks right in the cabinet, as a left side's inner face.
    Right,
    /// The one that looks left.
    Left,
    /// The upper one.
    Upper,
    /// The lower one.
    Lower,
    /// The one that looks to the wall, as a door's inner face.
    Rear,
}

/// A beginning of every edge.
const CORNER: f64 = 0.04;
/// A hole for a wood screw to go through, in millimetres. Common practice.
const SCREW_HOLE_MM: f64 = 4.5;

impl Face {
    /// The faces of a part that something is done to; one of them where nothing is.
    pub(super) fn of(cabinet: &Cabinet, on: usize, part: &Part) -> Vec<Self> {
        let holds_outside = cabinet.outside.as_ref().is_some_and(|shelf| shelf.held_by == on);
        let side = |hand: Hand| if hand == Hand::Right { Self::Right } else { Self::Left };
        match (part.thick, part.what) {
            (_, What::Side(hand)) => {
                let inner = if hand == Hand::Left { Self::Right } else { Self::Left };
                let outer = if hand == Hand::Left { Self::Left } else { Self::Right };
                if holds_outside { vec![inner, outer] } else { vec![inner] }
            }
            (Axis::Across, _) => {
                let mut faces: Vec<Self> = Vec::new();
                let rows = cabinet.rows.iter().filter(|rows| rows.on == on).map(|rows| side(rows.face));
                let joined = cabinet.joins.iter().flat_map(|join| &join.pairs).filter(|(_, face)| *face == on);
                let joined = joined.filter_map(|(edge, _)| {
                    let from = cabinet.parts.get(*edge)?.place.from[0];
                    Some(if from < part.place.from[0] { Self::Left } else { Self::Right })
                });
                let sockets = cabinet.sockets.iter().filter(|socket| socket.on == on).map(|socket| side(socket.face));
                for face in rows.chain(joined).chain(sockets) {
                    if !faces.contains(&face) {
                        faces.push(face);
                    }
                }
                if faces.is_empty() { vec![Self::Right] } else { faces }
            }
            (Axis::Up, What::Top | What::OutsideShelf) => vec![Self::Lower],
            (Axis::Up, What::Bottom) if holds_outside => vec![Self::Upper, Self::Lower],
            (Axis::Up, _) => vec![Self::Upper],
            (Axis::Deep, _) => vec![Self::Rear],
        }
    }

    /// The axis along the drawing, the one up it, and whether that one is turned round.
    const fn axes(self, part: &Part) -> (Axis, Axis, bool) {
        match self {
            // A cross of the plinth lies on its edge.
            Self::Right | Self::Left if matches!(part.grain, Axis::Deep) => (Axis::Deep, Axis::Up, false),
            // Seen from inside with its lower end to the left, a left side has its front edge at the top.
            Self::Right => (Axis::Up, Axis::Deep, false),
            Self::Left => (Axis::Up, Axis::Deep, true),
            // A shelf beside the cabinet lies along its side: seen from below with its rear end to the left.
            Self::Lower if matches!(part.grain, Axis::Deep) => (Axis::Deep, Axis::Across, true),
            Self::Lower => (Axis::Across, Axis::Deep, false),
            Self::Upper => (Axis::Across, Axis::Deep, true),
            Self::Rear => match part.grain {
                Axis::Up => (Axis::Up, Axis::Across, false),
                _ => (Axis::Across, Axis::Up, false),
            },
        }
    }
}

/// From places in the cabinet to places on the face.
struct Map {
    along: Axis,
    up: Axis,
    turned: bool,
    from: [f64; 2],
    size: Point,
}

impl Map {
    fn new(part: &Part, face: Face) -> Self {
        let (along_axis, up, turned) = face.axes(part);
        let ((left, right), (low, high)) = (along(part, along_axis), along(part, up));
        Self {
            along: along_axis,
            up,
            turned,
            from: [left, if turned { high } else { low }],
            size: [right - left, high - low].map(|mm| (mm * 1e6).round() / 1e6),
        }
    }

    fn point(&self, place: [f64; 3]) -> Point {
        let of = |axis: Axis| match axis {
            Axis::Across => place[0],
            Axis::Deep => place[1],
            Axis::Up => place[2],
        };
        let up = of(self.up) - self.from[1];
        // To a nanometre, so that parts that are alike look alike wherever they lie.
        [of(self.along) - self.from[0], if self.turned { -up } else { up }].map(|mm| (mm * 1e6).round() / 1e6)
    }

    fn length(&self, place: [Length; 3]) -> Point {
        self.point(place.map(Length::as_mm))
    }
}

/// Circles of a row, their rail's line and the holes of plates marked.
fn rows(cabinet: &Cabinet, on: usize, face: Face, map: &Map, drawing: &mut Drawing) {
    for rows in cabinet.rows.iter().filter(|rows| rows.on == on) {
        let own = if rows.face == Hand::Right { Face::Right } else { Face::Left };
        let both = [Some(&rows.rows.front), rows.rows.rear.as_ref()].into_iter().zip(rows.through);
        for ((row, _), bored) in both.zip(cabinet.bored(rows)).filter(|((_, through), _)| own == face || *through) {
            let Some(row) = row else { continue };
            for hole in bored {
                let place = [0.0, cabinet.depth.as_mm() - row.from_front.as_mm(), rows.datum.as_mm() + hole.at.as_mm()];
                let radius = rows.rows.hole.as_mm() / 2.0;
                drawing.shapes.push(Shape::Circle { layer: Layer::Hole, centre: map.point(place), radius });
            }
        }
    }
}

/// The middle of a socket of the clothes rail.
fn sockets(cabinet: &Cabinet, (on, part): (usize, &Part), face: Face, map: &Map, drawing: &mut Drawing) {
    let looks = |socket: &&Socket| (socket.face == Hand::Right) == (face == Face::Right);
    for socket in cabinet.sockets.iter().filter(|socket| socket.on == on).filter(looks) {
        let y = cabinet.depth.as_mm() - socket.from_front.as_mm();
        let centre = map.point([0.0, y, part.place.from[2].as_mm() + socket.up.as_mm()]);
        drawing.shapes.push(Shape::Circle { layer: Layer::Mark, centre, radius: SCREW_HOLE_MM / 2.0 });
    }
}

fn cups(door: &Door, map: &Map, drawing: &mut Drawing, hinged: Hand) {
    let [from, to] = [door.place.from, door.place.to];
    let centre = door.answer.cup_centre.as_mm();
    let x = if hinged == Hand::Left { from[0].as_mm() + centre } else { to[0].as_mm() - centre };
    // The cup is as wide as from its near edge to its far one.
    let radius = (door.answer.cup_far_edge.as_mm() - door.answer.cup_edge.as_mm()) / 2.0;
    for cup in &door.cups {
        let centre = map.point([x, 0.0, from[2].as_mm() + cup.as_mm()]);
        drawing.shapes.push(Shape::Circle { layer: Layer::Hole, centre, radius });
    }
}

/// Where the screws of a handle go through its door.
fn handle_screws(door: &Door, map: &Map, drawing: &mut Drawing, hinged: Hand) {
    let Some(handle) = &door.handle else { return };
    let ([left, _, low], [right, ..]) = (door.place.from, door.place.to);
    let in_by = handle.from_edge.as_mm();
    let x = if hinged == Hand::Left { right.as_mm() - in_by } else { left.as_mm() + in_by };
    for screw in &handle.screws {
        let centre = map.point([x, 0.0, low.as_mm() + screw.as_mm()]);
        drawing.shapes.push(Shape::Circle { layer: Layer::Hole, centre, radius: SCREW_HOLE_MM / 2.0 });
    }
}

/// Hooks on their rail, and its screws through the bottom.
fn hooks(cabinet: &Cabinet, on: usize, map: &Map, drawing: &mut Drawing) {
    let Some(rail) = &cabinet.hooks else { return };
    let Some(part) = cabinet.parts.get(on) else { return };
    let left = part.place.from[0].as_mm();
    let mut circle = |layer: Layer, place: [f64; 3]| {
        drawing.shapes.push(Shape::Circle { layer, centre: map.point(place), radius: SCREW_HOLE_MM / 2.0 });
    };
    if on == rail.on {
        let up = part.place.from[2].as_mm() + rail.up.as_mm();
        rail.hooks.iter().for_each(|hook| circle(Layer::Mark, [left + hook.as_mm(), 0.0, up]));
    }
    if on == rail.under {
        let y = cabinet.depth.as_mm() - rail.from_front.as_mm();
        rail.screws.iter().for_each(|screw| circle(Layer::Hole, [left + screw.as_mm(), y, 0.0]));
    }
}

/// Holes for the screws of the plinth through the bottom, and for those of a cleat's strip.
fn screw_holes(cabinet: &Cabinet, (on, part): (usize, &Part), map: &Map, drawing: &mut Drawing) {
    let (left, top) = (part.place.from[0].as_mm(), part.place.to[2].as_mm());
    let mut circle = |place: [f64; 3]| {
        let (layer, radius) = (Layer::Hole, SCREW_HOLE_MM / 2.0);
        drawing.shapes.push(Shape::Circle { layer, centre: map.point(place), radius });
    };
    if let Some(plinth) = cabinet.plinth.as_ref().filter(|plinth| plinth.under == on) {
        for y in plinth.lines.map(|line| cabinet.depth.as_mm() - line.as_mm()) {
            plinth.screws.iter().for_each(|screw| circle([left + screw.as_mm(), y, 0.0]));
        }
    }
    if let Some(strip) = cabinet.strip_screws.as_ref().filter(|strip| strip.on == on) {
        for (down, at) in [&strip.into_top, &strip.into_sides] {
            at.iter().for_each(|screw| circle([left + screw.as_mm(), 0.0, top - down.as_mm()]));
        }
    }
}

/// The screws of the brackets of a shelf outside, in what holds it and in the shelf.
fn brackets(cabinet: &Cabinet, (on, part): (usize, &Part), face: Face, map: &Map, drawing: &mut Drawing) {
    let Some(shelf) = &cabinet.outside else { return };
    let ([left, rear, low], [right, ..]) = (part.place.from.map(Length::as_mm), shelf.place.to.map(Length::as_mm));
    let depth = cabinet.depth.as_mm();
    let (along, across) = match on {
        on if on == shelf.on => (&shelf.brackets, &shelf.shelf_screws),
        // On the other face nothing is screwed on.
        on if on == shelf.held_by && outer(shelf.at) == face => (&shelf.on_holder, &shelf.screws),
        _ => return,
    };
    for (a, b) in along.iter().flat_map(|a| across.iter().map(|b| (a.as_mm(), b.as_mm()))) {
        let place = match (on == shelf.on, shelf.at) {
            (true, Beside::Under) => [shelf.place.from[0].as_mm() + a, rear + b, low],
            (true, Beside::Left) => [right - b, a, low],
            (true, _) => [left + b, a, low],
            (false, Beside::Under) => [left + a, depth - b, low],
            (false, _) => [left, depth - a, low + b],
        };
        let centre = map.point(place);
        drawing.shapes.push(Shape::Circle { layer: Layer::Mark, centre, radius: SCREW_HOLE_MM / 2.0 });
    }
}

/// The face of what holds a shelf outside that it is on.
const fn outer(at: Beside) -> Face {
    match at {
        Beside::Left => Face::Left,
        Beside::Right => Face::Right,
        Beside::Under | Beside::None => Face::Lower,
    }
}

/// Whether a groove is open towards that face.
fn opens_to(face: Face, part: &Part, groove: &Block) -> bool {
    match face {
        Face::Right => groove.to[0] == part.place.to[0],
        Face::Left => groove.from[0] == part.place.from[0],
        Face::Upper => groove.to[2] == part.place.to[2],
        Face::Lower => groove.from[2] == part.place.from[2],
        Face::Rear => true,
    }
}

/// The line of a joint on a face, and its marks across it.
fn joined(cabinet: &Cabinet, join: &Join, on: usize, face: Face, map: &Map, drawing: &mut Drawing) {
    let Some(part) = cabinet.parts.get(on) else { return };
    for ((edge, other), line) in join.pairs.iter().zip(&join.lines) {
        if *other != on {
            continue;
        }
        let Some(end) = cabinet.parts.get(*edge) else { continue };
        let looks_left = end.place.from[0] < part.place.from[0];
        if part.thick == Axis::Across && (face == Face::Left) != looks_left {
            continue;
        }
        let looks_down = end.place.from[2] < part.place.from[2];
        if part.thick == Axis::Up && (face == Face::Lower) != looks_down {
            continue;
        }
        let (datum, _) = along(part, part.grain);
        let (gap, line, depth) = (join.gap.as_mm(), line.as_mm(), cabinet.depth.as_mm());
        let [left, _, _] = part.place.from.map(Length::as_mm);
        let [_, _, upper] = part.place.to.map(Length::as_mm);
        let place = |mark: f64| match (join.along, part.grain) {
            (Axis::Deep, Axis::Up) => [0.0, depth - gap - mark, datum + line],
            (Axis::Deep, _) => [datum + line, depth - gap - mark, 0.0],
            (Axis::Up, _) => [0.0, depth - line, upper - gap - mark],
            (Axis::Across, _) => [left + gap + mark, depth - line, 0.0],
        };
        let length = join.marks.length.as_mm();
        drawing.shapes.push(Shape::line(Layer::Mark, map.point(place(0.0)), map.point(place(length))));
        for mark in &join.marks.marks {
            let radius = join.marks.fixing.across_other.as_mm() / 2.0;
            let centre = map.point(place(mark.as_mm()));
            drawing.shapes.push(Shape::Circle { layer: Layer::Mark, centre, radius });
        }
    }
}

/// The lower or left end at the front, or at the hinges.
fn datum(part: &Part, map: &Map) -> Point {
    let front = match part.what {
        What::Door { hinged: Hand::Right, .. } => part.place.to,
        What::Door { .. } => part.place.from,
        // Its brackets begin at the rear, or at the side that it is on.
        What::OutsideShelf if part.grain == Axis::Across || !part.place.from[0].is_negative() => part.place.from,
        What::OutsideShelf => [part.place.to[0], part.place.from[1], part.place.from[2]],
        _ => [part.place.from[0], part.place.to[1], part.place.from[2]],
    };
    let at = map.length([front[0], front[1], part.place.from[2]]);
    [0.0, at[1]]
}

pub(super) fn face(cabinet: &Cabinet, on: usize, part: &Part, face: Face) -> Result<Drawing, LengthError> {
    let map = Map::new(part, face);
    let [long, wide] = map.size;
    let mut drawing = Drawing { shapes: vec![Shape::rect(Layer::Outline, [0.0; 2], map.size)], ..Drawing::default() };
    for groove in part.grooves.iter().filter(|groove| opens_to(face, part, groove)) {
        drawing.shapes.push(Shape::rect(Layer::Groove, map.length(groove.from), map.length(groove.to)));
    }
    rows(cabinet, on, face, &map, &mut drawing);
    sockets(cabinet, (on, part), face, &map, &mut drawing);
    if let (What::Door { hinged, .. }, Some(door)) = (part.what, cabinet.doors.iter().find(|door| door.on == on)) {
        cups(door, &map, &mut drawing, hinged);
        handle_screws(door, &map, &mut drawing, hinged);
    }
    hooks(cabinet, on, &map, &mut drawing);
    screw_holes(cabinet, (on, part), &map, &mut drawing);
    brackets(cabinet, (on, part), face, &map, &mut drawing);
    for join in &cabinet.joins {
        joined(cabinet, join, on, face, &map, &mut drawing);
    }
    let [x, y] = datum(part, &map);
    let tip = CORNER * long.max(wide);
    let inward = if y > wide / 2.0 { -tip } else { tip };
    let points = vec![[x, y], [x + tip, y], [x, y + inward]];
    drawing.shapes.push(Shape::Line { layer: Layer::Datum, points, closed: true });
    let beside = -0.06 * long.max(wide);
    let (length, width) = (part.place.extent(map.along)?, part.place.extent(map.up)?);
    drawing.dimensions.push(Dimension::new([0.0, 0.0], [long, 0.0], beside, length));
    drawing.dimensions.push(Dimension::new([0.0, 0.0], [0.0, wide], beside, width));
    Ok(drawing)
}
