//! Every joint and every screw as a box in its part, and which of them run into each other.
//!
//! Places are estimates in millimetres, as for a drawing: what is asked is only whether two of them meet.

use super::joins::Join;
use super::outside::{Beside, OutsideShelf};
use super::part::{Axis, Block, Part};
use crate::cards::joints::Kind;

/// Less wood than this between two of them, in millimetres, breaks. From memory.
const WALL_MM: f64 = 1.0;
/// A wood screw, in millimetres.
const SCREW_MM: f64 = 4.5;

/// A hole, a mortise, a slot or a screw in a part.
struct Bored {
    part: usize,
    /// Those of one joint never meet one another.
    of: usize,
    low: [f64; 3],
    high: [f64; 3],
}

const fn index(axis: Axis) -> usize {
    match axis {
        Axis::Across => 0,
        Axis::Deep => 1,
        Axis::Up => 2,
    }
}

fn along(block: &Block, axis: Axis) -> (f64, f64) {
    let (from, to) = block.along(axis);
    (from.as_mm(), to.as_mm())
}

/// The axis that is neither of two.
const fn third(one: Axis, other: Axis) -> Axis {
    match (one, other) {
        (Axis::Across, Axis::Deep) | (Axis::Deep, Axis::Across) => Axis::Up,
        (Axis::Across, _) | (_, Axis::Across) => Axis::Deep,
        _ => Axis::Across,
    }
}

/// A box: its middle and half its size along two axes, and from where to where it goes along the last.
fn boxed(middles: [(Axis, f64, f64); 2], (axis, from, to): (Axis, f64, f64)) -> ([f64; 3], [f64; 3]) {
    let (mut low, mut high) = ([0.0; 3], [0.0; 3]);
    for (axis, middle, half) in middles {
        (low[index(axis)], high[index(axis)]) = (middle - half, middle + half);
    }
    (low[index(axis)], high[index(axis)]) = (from.min(to), from.max(to));
    (low, high)
}

fn joined(joins: &[Join], parts: &[Part], depth: f64) -> Vec<Bored> {
    let mut all = Vec::new();
    let mut of = 0;
    // A pocket slopes: it lies too far from where it begins for a box to say where it goes.
    for join in joins.iter().filter(|join| join.marks.kind != Kind::PocketScrew) {
        let fixing = &join.marks.fixing;
        let [wide, across, across_other, in_edge, in_other] =
            [fixing.along, fixing.across, fixing.across_other, fixing.in_edge, fixing.in_other].map(|one| one.as_mm());
        for (edge, face) in &join.pairs {
            of += 1;
            let (Some(end), Some(board)) = (parts.get(*edge), parts.get(*face)) else { continue };
            let through = third(board.thick, join.along);
            let (near, far) = along(&end.place, board.thick);
            let (low, high) = along(&board.place, board.thick);
            // Into the end one way, into the face the other.
            let (plane, into) = if near + far < low + high { (far, 1.0) } else { (near, -1.0) };
            let middle = {
                let (from, to) = along(&end.place, through);
                f64::midpoint(from, to)
            };
            for mark in &join.marks.marks {
                let mark = mark.as_mm() + join.gap.as_mm();
                let at = match join.along {
                    Axis::Deep => depth - mark,
                    Axis::Up => along(&board.place, Axis::Up).1 - mark,
                    Axis::Across => along(&board.place, Axis::Across).0 + mark,
                };
                for (part, half, to) in
                    [(*edge, across / 2.0, -into * in_edge), (*face, across_other / 2.0, into * in_other)]
                {
                    let middles = [(join.along, at, wide / 2.0), (through, middle, half)];
                    let (low, high) = boxed(middles, (board.thick, plane, plane + to));
                    all.push(Bored { part, of, low, high });
                }
            }
        }
    }
    all
}

/// The screws of brackets in the outer face of a side.
fn brackets(shelf: &OutsideShelf, parts: &[Part], depth: f64) -> Vec<Bored> {
    let Some(side) = parts.get(shelf.held_by) else { return Vec::new() };
    let (left, right) = along(&side.place, Axis::Across);
    let (low_end, _) = along(&side.place, Axis::Up);
    let screw = shelf.screw.as_mm();
    let (from, to) = match shelf.at {
        Beside::Left => (left, left + screw),
        Beside::Right => (right, right - screw),
        Beside::Under | Beside::None => return Vec::new(),
    };
    let each = shelf.on_holder.iter().flat_map(|y| shelf.screws.iter().map(move |z| (y.as_mm(), z.as_mm())));
    let bored = |(y, z): (f64, f64)| {
        let middles = [(Axis::Deep, depth - y, SCREW_MM / 2.0), (Axis::Up, low_end + z, SCREW_MM / 2.0)];
        let (low, high) = boxed(middles, (Axis::Across, from, to));
        Bored { part: shelf.held_by, of: 0, low, high }
    };
    each.map(bored).collect()
}

/// The parts in which joints, or a joint and a screw, come nearer to each other than wood bears.
pub(super) fn that_meet(parts: &[Part], joins: &[Join], shelf: Option<&OutsideShelf>, depth: f64) -> Vec<usize> {
    let mut all = joined(joins, parts, depth);
    all.extend(shelf.into_iter().flat_map(|shelf| brackets(shelf, parts, depth)));
    all.sort_by_key(|one| one.part);
    let mut boards = Vec::new();
    for own in all.chunk_by(|one, other| one.part == other.part) {
        let near = |one: &Bored, other: &Bored| {
            one.of != other.of
                && (0..3).all(|axis| {
                    one.low[axis] < other.high[axis] + WALL_MM && other.low[axis] < one.high[axis] + WALL_MM
                })
        };
        let meets = own.iter().enumerate().any(|(at, one)| own.iter().skip(at + 1).any(|other| near(one, other)));
        boards.extend(own.first().filter(|_| meets).map(|one| one.part));
    }
    boards
}
