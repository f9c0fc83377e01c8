//! The rows of holes in the boards that bound each bay, and the shelves that lie on them.

use super::Cabinet;
use super::ask::{Asked, answered, reading};
use super::build::Built;
use super::doors::Door;
use super::frame::{Frame, Stretch};
use super::inputs::{Corners, Inputs, Lie};
use super::part::{Axis, Hand, What};
use super::read::Given;
use crate::cards::hole_rows::{self, Hole, Row};
use crate::cards::spacing;
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use crate::stock::line_boring::{FRONT_MM, PITCH_MM};
use serde::Serialize;

/// What a hinge plate takes beside its two holes, above and below.
/// From memory: plates are some 50 mm long.
const PLATE_PAST_MM: i64 = 10;

/// The holes in one face of a board.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Rows {
    /// The board's place in the list of parts.
    pub on: usize,
    /// Which of its faces, seen from in front.
    pub face: Hand,
    /// The bay that it looks into.
    pub bay: u32,
    /// Height of the datum, the board's lower end.
    pub datum: Length,
    /// The rows, measured from there and from the front edge.
    pub rows: hole_rows::Answer,
    /// How deep the holes are.
    pub deep: Length,
    /// Whether the front row, and the rear one, go right through, since every hole of it meets one of the other face.
    pub through: [bool; 2],
}

impl Cabinet {
    /// The holes of the front row and of the rear one that are bored from this face: not those that a row of the other face
    /// makes, which goes right through. Of two such rows the one in the face that looks left is bored.
    pub fn bored<'a>(&'a self, rows: &'a Rows) -> [Vec<&'a Hole>; 2] {
        let other = self.rows.iter().find(|other| other.on == rows.on && other.face != rows.face);
        let made = |row: &Row, through: bool, hole: &Hole| {
            let other = other.filter(|_| rows.face == Hand::Right || !through);
            other.is_some_and(|other| {
                let both = [Some(&other.rows.front), other.rows.rear.as_ref()].into_iter().zip(other.through);
                both.filter(|(_, through)| *through).filter_map(|(row, _)| row).any(|theirs| {
                    theirs.from_front == row.from_front && theirs.holes.iter().any(|their| their.at == hole.at)
                })
            })
        };
        let of = |row: Option<&'a Row>, through: bool| {
            let holes = row.into_iter().flat_map(|row| row.holes.iter().map(move |hole| (row, hole)));
            holes.filter(|(row, hole)| !made(row, through, hole)).map(|(_, hole)| hole).collect()
        };
        let [front, rear] = rows.through;
        [of(Some(&rows.rows.front), front), of(rows.rows.rear.as_ref(), rear)]
    }
}

/// A shelf that found no hole, or a board and a plate that are in each other's way.
pub(super) struct Tight {
    pub(super) bay: u32,
    pub(super) shelf: u32,
}

/// A board beside a bay.
struct Beside {
    on: usize,
    face: Hand,
    z: Stretch,
    /// From its rear edge to its finished front edge.
    deep: Length,
    /// From its rear edge to where the room inside begins.
    behind: Length,
}

const NAMES: &[(&str, &str)] = &[
    ("height", "height"),
    ("depth", "depth"),
    ("thickness", "carcass.thickness"),
    ("end_distance", "height"),
    ("front_setback", "depth"),
    ("rear_setback", "depth"),
    ("door_thickness", "door.thickness"),
    ("hole", "holes.pin"),
    ("pitch", "holes.pin"),
    ("hole_depth", "holes.pin_depth"),
    ("shelves_from", "least_gap"),
    ("shelves_to", "least_gap"),
    ("hinges", "height"),
    ("skip_from", "fixed_shelves"),
    ("skip_to", "fixed_shelves"),
];

/// The boards on the left and on the right of a bay.
fn beside(built: &Built<'_>, frame: &Frame, bay: u32) -> Result<[Option<Beside>; 2], LengthError> {
    let left = if bay == 1 { What::Side(Hand::Left) } else { What::Upright { after: bay - 1 } };
    let last = frame.bays.len() == usize::try_from(bay).unwrap_or(usize::MAX);
    let right = if last { What::Side(Hand::Right) } else { What::Upright { after: bay } };
    let board = |what: What, face: Hand| {
        let found = built.parts.iter().enumerate().find(|(_, part)| part.what == what);
        let Some((on, part)) = found else { return Ok(None) };
        let (rear, _) = part.place.along(Axis::Deep);
        let (deep, behind) = (frame.depth.minus(rear)?, frame.inner.minus(rear)?);
        Ok(Some(Beside { on, face, z: part.place.along(Axis::Up), deep, behind }))
    };
    Ok([board(left, Hand::Right)?, board(right, Hand::Left)?])
}

/// The holes of every bay, and the loose shelves put on them.
pub(super) fn rows(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    doors: &[Door],
    (built, asked_first): (&mut Built<'_>, &mut Asked),
) -> Result<(Vec<Rows>, Vec<Tight>), Problems> {
    let mut all: Vec<Rows> = Vec::new();
    let mut tight = Vec::new();
    let compartments = compartments(frame, frame.free_to(inputs, given)?)?;
    for bay in (1..).take(frame.bays.len()) {
        let shelves = given.loose_shelves > 0 && built.has_shelves(bay);
        let mut own = Vec::new();
        for beside in beside(built, frame, bay)?.into_iter().flatten() {
            // The face on the bay's left looks right, and the door hinged on it is the left one.
            let hinged = if beside.face == Hand::Right { Hand::Left } else { Hand::Right };
            let hung: Vec<&Door> = doors.iter().filter(|door| door.bay == bay && door.hinged == hinged).collect();
            if !shelves && hung.is_empty() {
                continue;
            }
            let asked = asked(inputs, given, frame, &beside, &hung, shelves)?;
            let rows = answered(hole_rows::solve(&asked), NAMES)?;
            asked_first.hole_rows.get_or_insert(asked);
            let deep = given.carcass.nominal().minus(rows.left_behind)?;
            own.push(Rows {
                on: beside.on,
                face: beside.face,
                bay,
                datum: beside.z.0,
                rows,
                deep,
                through: [false; 2],
            });
        }
        if shelves {
            tight.extend(place((given, &compartments), bay, &own, built)?);
        }
        all.extend(own);
    }
    meet(given, &mut all)?;
    Ok((all, tight))
}

/// A row whose every hole would meet one from the other face is bored right through.
fn meet(given: &Given, all: &mut [Rows]) -> Result<(), LengthError> {
    let mut through = Vec::new();
    for rows in all.iter() {
        let other = all.iter().find(|other| other.on == rows.on && other.face != rows.face);
        let Some(other) = other.filter(|_| !rows.rows.front.holes.is_empty()) else {
            through.push([false; 2]);
            continue;
        };
        let deep = rows.deep.plus(other.deep)? >= given.carcass.low();
        through.push(
            [Some(&rows.rows.front), rows.rows.rear.as_ref()]
                .map(|row| row.is_some_and(|row| deep && !row.holes.is_empty() && is_met(row, &other.rows))),
        );
    }
    for (rows, through) in all.iter_mut().zip(through) {
        rows.through = through;
    }
    Ok(())
}

/// Whether the other face has a hole behind every one of a row. Both count from the same end and the same front edge.
fn is_met(row: &hole_rows::Row, other: &hole_rows::Answer) -> bool {
    let theirs =
        || std::iter::once(&other.front).chain(&other.rear).filter(|theirs| theirs.from_front == row.from_front);
    row.holes.iter().all(|hole| theirs().any(|theirs| theirs.holes.iter().any(|their| their.at == hole.at)))
}

fn asked(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    beside: &Beside,
    hung: &[&Door],
    shelves: bool,
) -> Result<hole_rows::Inputs, Problems> {
    let from = beside.z.0;
    let down = |height: Length| height.minus(from);
    let opening = frame.opening()?;
    let (first, end) = first(inputs, given, frame, beside)?;
    let mut skip_from = Vec::new();
    let mut skip_to = Vec::new();
    for fixed in &frame.fixed {
        skip_from.push(reading(above_zero(down(fixed.0.minus(given.least_gap)?)?)));
        skip_to.push(reading(down(fixed.1.plus(given.least_gap)?)?));
    }
    if !shelves {
        skip_from.push(reading(Length::ZERO));
        skip_to.push(reading(down(beside.z.1)?));
    }
    let hinges = hung.iter().flat_map(|door| &door.answer.hinges).map(|hinge| {
        // The card counts from the opening's lower end.
        Ok(reading(down(opening.0.plus(hinge.on_side)?)?))
    });
    let door_end = hung.first().map_or(Ok(Length::ZERO), |door| down(door.from))?;
    let (low, high) =
        (down(opening.0.plus(given.least_gap)?)?, down(frame.free_to(inputs, given)?.minus(given.least_gap)?)?);
    Ok(hole_rows::Inputs {
        height: reading(down(beside.z.1)?),
        depth: reading(beside.deep),
        thickness: reading(given.carcass.nominal()),
        first,
        end_distance: reading(end),
        doors: if inputs.has_doors() && inputs.lie == Lie::Inset {
            hole_rows::Doors::Inset
        } else {
            hole_rows::Doors::InFront
        },
        door_thickness: reading(given.door.nominal()),
        rear: if shelves { hole_rows::Rear::Own } else { hole_rows::Rear::None },
        rear_setback: reading(beside.behind.plus(Length::mm(FRONT_MM, 1)?)?),
        shelves_from: reading(low),
        shelves_to: reading(if high < low { low } else { high }),
        skip_from,
        skip_to,
        hinges: hinges.collect::<Result<_, LengthError>>()?,
        door_end: reading(door_end),
        hole: inputs.holes.pin.clone(),
        hole_depth: inputs.holes.pin_depth.clone(),
        ..hole_rows::Inputs::default()
    })
}

fn above_zero(length: Length) -> Length {
    if length.is_negative() { Length::ZERO } else { length }
}

/// Where the first hole of a board lies: balanced on the sides, and level with theirs on uprights.
fn first(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    beside: &Beside,
) -> Result<(hole_rows::First, Length), Problems> {
    let least = hole_rows::Inputs::default().end_distance.length().unwrap_or_default();
    let is_side = beside.z.0.is_zero() || inputs.corners == Corners::Over;
    if is_side {
        return Ok((hole_rows::First::Balanced, least));
    }
    let side = hole_rows::Inputs {
        height: reading(frame.height),
        depth: reading(frame.depth),
        thickness: reading(given.carcass.nominal()),
        rear: hole_rows::Rear::None,
        ..hole_rows::Inputs::default()
    };
    let side = hole_rows::Inputs { hinges: Vec::new(), skip_from: Vec::new(), skip_to: Vec::new(), ..side };
    let level = answered(hole_rows::solve(&side), NAMES)?.first.minus(beside.z.0)?;
    // Not so near to the end that it breaks out.
    let pitch = Length::mm(PITCH_MM, 1)?;
    let level = if level < Length::mm(10, 1)? { level.plus(pitch)? } else { level };
    Ok((hole_rows::First::Given, level))
}

/// A bay's stretches for loose shelves, the last one up to there.
fn compartments(frame: &Frame, free_to: Length) -> Result<Vec<Stretch>, LengthError> {
    let (low, _) = frame.opening()?;
    let begins = std::iter::once(low).chain(frame.fixed.iter().map(|shelf| shelf.1));
    let ends = frame.fixed.iter().map(|shelf| shelf.0).chain([free_to]);
    Ok(begins.zip(ends).collect())
}

/// Puts the loose shelves of a bay on the holes nearest to even heights, past the plates.
fn place(
    (given, compartments): (&Given, &[Stretch]),
    bay: u32,
    own: &[Rows],
    built: &mut Built<'_>,
) -> Result<Vec<Tight>, Problems> {
    let many = u32::try_from(compartments.len()).unwrap_or(u32::MAX);
    let mut tight = Vec::new();
    let mut shelf = 0;
    for (at, stretch) in (0..).zip(compartments) {
        let here = given.loose_shelves / many + u32::from(at < given.loose_shelves % many);
        let mut above = stretch.0;
        for wish in wishes(given, *stretch, here)? {
            shelf += 1;
            match hole(given, own, wish, (above, stretch.1))? {
                Some(lower) => {
                    above = lower.plus(given.shelf.nominal())?;
                    built.loose_shelf(bay, shelf, lower)?;
                }
                None => tight.push(Tight { bay, shelf }),
            }
        }
    }
    Ok(tight)
}

/// The lower faces of so many shelves, evenly spread.
fn wishes(given: &Given, stretch: Stretch, count: u32) -> Result<Vec<Length>, Problems> {
    if count == 0 {
        return Ok(Vec::new());
    }
    let asked = spacing::Inputs {
        length: reading(stretch.1.minus(stretch.0)?),
        width: reading(given.shelf.nominal()),
        even: spacing::Even::Gaps,
        ends: spacing::Ends::Gap,
        by: spacing::By::Count,
        count: count.to_string().as_str().into(),
        datum: reading(stretch.0),
        ..spacing::Inputs::default()
    };
    let names = [("count", "loose_shelves"), ("width", "shelf.thickness"), ("length", "height")];
    let answer = answered(spacing::solve(&asked), &names)?;
    Ok(answer.pieces.iter().map(|piece| piece.near).collect())
}

/// The lower face of a shelf on the hole nearest to where it is wished, within a stretch and clear of every plate.
fn hole(given: &Given, own: &[Rows], wish: Length, within: Stretch) -> Result<Option<Length>, LengthError> {
    let Some(rows) = own.first() else { return Ok(None) };
    let radius = rows.rows.hole.times(1, 2)?;
    let thick = given.shelf.nominal();
    let mut best: Option<(Length, Length)> = None;
    for hole in rows.rows.front.holes.iter().filter(|hole| !hole.plate) {
        // The pin lies in the hole; the shelf lies on the pin.
        let lower = rows.datum.plus(hole.at)?.plus(radius)?;
        let upper = lower.plus(thick)?;
        if lower < within.0 || upper > within.1 || meets_plate(own, (lower.minus(rows.rows.hole)?, upper))? {
            continue;
        }
        let off = lower.minus(wish)?.abs();
        if best.is_none_or(|(least, _)| off < least) {
            best = Some((off, lower));
        }
    }
    Ok(best.map(|(_, lower)| lower))
}

/// Whether a hinge plate of the bay lies at some of those heights.
pub(super) fn meets_plate(own: &[Rows], (from, to): Stretch) -> Result<bool, LengthError> {
    let past = Length::mm(PLATE_PAST_MM, 1)?;
    for rows in own {
        for plate in &rows.rows.plates {
            let low = rows.datum.plus(plate.near_hole)?.minus(past)?;
            let high = rows.datum.plus(plate.far_hole)?.plus(past)?;
            if low < to && from < high {
                return Ok(true);
            }
        }
    }
    Ok(false)
}
