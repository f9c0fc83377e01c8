//! Hole rows: the holes for shelf pins and hinge plates in both sides of a cabinet, and where the drill guide is set.

mod answer;
mod inputs;
mod notes;
mod read;
mod steps;

pub use answer::{Answer, Balance, Change, Hand, Hole, Plate, Row, Side};
pub use inputs::{Datum, Doors, First, Inputs, Rear};
pub use notes::Note;

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use crate::stock::line_boring;
use read::Read;
use std::ops::RangeInclusive;

/// The full row before anything is left out.
struct Grid {
    /// From the datum end.
    first: Length,
    /// From the other end.
    last_from_end: Length,
    /// What is over after whole steps between the given distances.
    over: Length,
    /// From the datum end, in order.
    places: Vec<Length>,
}

/// Works out the rows of a pair of sides.
///
/// # Errors
/// A problem for each field that cannot be used: holes that would run into each other, out of an edge or out of the
/// outer face, a stretch that ends before it begins, a hinge beyond the side.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let grid = grid(inputs.first, &read)?;
    let plates = plates(&read, &grid)?;
    let shelves = shelves(&read, &grid)?;
    let front = row(&read, &grid, read.front, &shelves, &plates)?;
    let rear = read.rear.map(|from_front| row(&read, &grid, from_front, &shelves, &[])).transpose()?;
    let apart = read.rear.map(|rear| rear.minus(read.front)).transpose()?;
    let depth_change = change(read.depth.minus(read.front.times(2, 1)?)?, read.pitch)?;
    let left_behind = read.thickness.minus(read.hole_depth)?;
    let notes = notes(&read, &front, &plates, apart, left_behind)?;
    let working = steps::working(inputs, &read, &grid, &front, &plates)?;
    Ok(Answer {
        height: read.height,
        depth: read.depth,
        hole: read.hole,
        count: read.count.unsigned_abs(),
        first: grid.first,
        last_from_end: grid.last_from_end,
        balance: balance(&grid, &front, rear.as_ref()),
        height_change: Change {
            less: grid.over,
            more: if grid.over.is_zero() { Length::ZERO } else { read.pitch.minus(grid.over)? },
        },
        front,
        rear,
        apart,
        depth_change,
        hands: [hand(inputs.datum, Side::Left, &read)?, hand(inputs.datum, Side::Right, &read)?],
        plates,
        left_behind,
        notes,
        working,
        cautions: vec![Caution::BlindHoles, Caution::DustAndNoise],
    })
}

/// What a length has over whole steps, and what it lacks to the next.
fn change(length: Length, pitch: Length) -> Result<Change, LengthError> {
    let less = length.minus(pitch.times(length.floor_div(pitch)?, 1)?)?;
    let more = if less.is_zero() { Length::ZERO } else { pitch.minus(less)? };
    Ok(Change { less, more })
}

fn grid(first: First, read: &Read) -> Result<Grid, LengthError> {
    let steps = read.pitch.times(read.count - 1, 1)?;
    let over = read.height.minus(read.end_distance.times(2, 1)?)?.minus(steps)?;
    let first = match first {
        First::Balanced => read.height.minus(steps)?.times(1, 2)?,
        First::Given => read.end_distance,
    };
    let mut at = first;
    let mut places = vec![at];
    for _ in 1..read.count {
        at = at.plus(read.pitch)?;
        places.push(at);
    }
    Ok(Grid { first, last_from_end: read.height.minus(first)?.minus(steps)?, over, places })
}

/// Each plate on the two holes of the row that lie nearest to where it was wished; halfway between two pairs it takes
/// the one farther from the datum.
fn plates(read: &Read, grid: &Grid) -> Result<Vec<Plate>, LengthError> {
    let half = read.pitch.times(1, 2)?;
    let lowest = grid.first.plus(half)?;
    let plate = |&wish: &Length| {
        let step = wish.minus(lowest)?.ratio(read.pitch)?.nearest()?.clamp(0, (read.count - 2).max(0));
        let middle = lowest.plus(read.pitch.times(step, 1)?)?;
        Ok(Plate {
            middle,
            near_hole: middle.minus(half)?,
            far_hole: middle.plus(half)?,
            moved: middle.minus(wish)?,
            on_door: middle.minus(read.door_end)?,
        })
    };
    read.hinges.iter().map(plate).collect()
}

/// The steps from the first hole that lie on a stretch, both of its ends included. Counted once, so that no length is
/// compared for every hole.
fn steps_on(read: &Read, grid: &Grid, (from, to): (Length, Length)) -> Result<RangeInclusive<i64>, LengthError> {
    let steps = |way: Length| way.floor_div(read.pitch);
    let last = steps(to.min(read.height).minus(grid.first)?)?;
    // Rounded up.
    let first = steps(grid.first.minus(from.min(read.height))?)?.saturating_neg();
    Ok(first..=last)
}

/// For every place of the full row, whether a shelf may sit there.
fn shelves(read: &Read, grid: &Grid) -> Result<Vec<bool>, LengthError> {
    let within = steps_on(read, grid, read.shelves)?;
    let skips = read.skips.iter().map(|skip| steps_on(read, grid, *skip)).collect::<Result<Vec<_>, _>>()?;
    let is_shelf = |step: i64| within.contains(&step) && !skips.iter().any(|skip| skip.contains(&step));
    Ok((0..read.count).map(is_shelf).collect())
}

fn row(read: &Read, grid: &Grid, from_front: Length, shelves: &[bool], plates: &[Plate]) -> Result<Row, LengthError> {
    let mut screwed = Vec::new();
    for plate in plates {
        let step = plate.near_hole.minus(grid.first)?.floor_div(read.pitch)?;
        screwed.extend([step, step.saturating_add(1)]);
    }
    let places = (0..).zip(&grid.places).zip(shelves);
    let holes = (1..).zip(places).filter_map(|(number, ((step, &at), &shelf))| {
        let plate = screwed.contains(&step);
        (plate || shelf).then_some(Hole { number, at, plate })
    });
    // The rail lies on the side of the row that is farther from an edge.
    let behind = from_front <= read.depth.minus(from_front)?;
    let rail_edge = if behind { from_front.plus(read.rail_offset)? } else { from_front.minus(read.rail_offset)? };
    Ok(Row { from_front, rail_edge, holes: holes.collect() })
}

/// Whether turning the side end for end puts every hole on a hole: in a balanced row the places are counted from both
/// ends.
fn balance(grid: &Grid, front: &Row, rear: Option<&Row>) -> Balance {
    if grid.first != grid.last_from_end {
        return Balance::Uneven;
    }
    let ends = u64::try_from(grid.places.len()).unwrap_or(u64::MAX).saturating_add(1);
    let turned = |row: &Row| {
        let pairs = row.holes.iter().zip(row.holes.iter().rev());
        pairs.into_iter().all(|(hole, turned)| hole.number.saturating_add(turned.number) == ends)
    };
    if turned(front) && rear.is_none_or(turned) { Balance::Alike } else { Balance::RowsOnly }
}

/// Seen with the inner face up and the lower end to the left, the front edge of a left side lies away from the person,
/// that of a right side next to them; with the upper end to the left it is the other way round.
fn hand(datum: Datum, side: Side, read: &Read) -> Result<Hand, LengthError> {
    let front_near = (side == Side::Right) == (datum == Datum::Bottom);
    let from_near = |row: Length| if front_near { Ok(row) } else { read.depth.minus(row) };
    Ok(Hand { side, front_near, front: from_near(read.front)?, rear: read.rear.map(from_near).transpose()? })
}

fn notes(
    read: &Read,
    front: &Row,
    plates: &[Plate],
    apart: Option<Length>,
    left_behind: Length,
) -> Result<Vec<Note>, LengthError> {
    let mm = |whole: i64| Length::mm(whole, 1);
    let half = read.pitch.times(1, 2)?;
    let (shallow, deep) = line_boring::DEPTH_MM;
    let off_steps = match apart {
        Some(apart) => !change(apart, read.pitch)?.fits(),
        None => false,
    };
    let mut middles: Vec<Length> = plates.iter().map(|plate| plate.middle).collect();
    middles.sort_unstable();
    let mut share = false;
    for (near, far) in middles.iter().zip(middles.iter().skip(1)) {
        share |= far.minus(*near)? <= read.pitch;
    }
    let hung = !plates.is_empty();
    let applies = [
        (left_behind < mm(3)?, Note::ThinBehindHole),
        (read.hole_depth < mm(shallow)? || read.hole_depth > mm(deep)?, Note::DepthUnusual),
        (off_steps, Note::RowsOffSteps),
        (hung && read.front_setback != mm(line_boring::FRONT_MM)?, Note::PlateLineUnusual),
        (hung && read.pitch != mm(line_boring::PITCH_MM)?, Note::PlatePitch),
        (plates.iter().any(|plate| plate.moved.abs() > half), Note::PlateMovedFar),
        (share, Note::PlatesShare),
        (front.holes.iter().all(|hole| hole.plate), Note::NothingLeft),
    ];
    Ok(applies.into_iter().filter_map(|(applies, note)| applies.then_some(note)).collect())
}

/// The hole rows card.
pub const CARD: Card = Card { slug: "hole-rows", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
