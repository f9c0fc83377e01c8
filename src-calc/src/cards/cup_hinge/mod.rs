//! Cup hinge: door size, cup holes, mounting plates, and which plate, cup edge or arm goes with an overlay.

mod answer;
mod inputs;
mod notes;
mod plan;
mod read;
mod steps;

pub use answer::{Answer, Hinge, Opens, Plan, Plate, Rect, Room};
pub use inputs::{Doors, Find, Inputs, Mounting, Spread, Wish};
pub use notes::Note;

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, LengthError, Range};
use crate::problem::{Problem, Problems};
use crate::stock::hardware;
use read::Read;

/// What the steps and notes need beside the inputs.
struct Door {
    width: Range,
    height: Range,
    weight_kg: f64,
    gap: Length,
    /// How many hinges the table asks for; none where the door is beyond it.
    by_table: Option<u64>,
    count: u64,
    plate_line: Length,
    left_behind: Length,
}

/// Works out a door on cup hinges.
///
/// # Errors
/// A problem for each field that cannot be used: a cup deeper than the door, outer hinges that pass each other, an
/// opening that the gaps leave nothing of.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let width = door_width(inputs, &read)?;
    let height = read.opening_height.plus(read.top_overlay.into())?.plus(read.bottom_overlay.into())?;
    for (field, size) in [("opening_width", width), ("opening_height", height)] {
        if !size.low().is_positive() {
            let why = "The gaps leave nothing of the door: check the opening, the overlays and the gaps.";
            return Err(Problems::one(field, Problem::Clash { why }));
        }
    }
    let between = height.nominal().minus(read.end_distance.times(2, 1)?)?;
    if !between.is_positive() {
        let most = height.nominal().times(1, 2)?.into();
        let why = "the outer hinges would pass each other";
        return Err(Problems::one("end_distance", Problem::TooLarge { most, why }));
    }
    let weight_kg = read.door_weight_kg.unwrap_or_else(|| weight_kg(inputs, &read, width, height));
    let by_table = hinge_count(width.high(), height.high(), weight_kg);
    let most_in_table = hardware::HINGE_CLASSES.last().map_or(2, |class| class.hinges);
    let door = Door {
        width,
        height,
        weight_kg,
        gap: seen_gap(inputs.mounting, read.side, read.overlay)?,
        by_table,
        count: read.hinges.or(by_table).unwrap_or(most_in_table + 1),
        plate_line: match inputs.mounting {
            Mounting::Inset => read.plate_setback.plus(read.door_thickness)?,
            Mounting::Full | Mounting::Half => read.plate_setback,
        },
        left_behind: read.door_thickness.minus(read.cup_depth)?,
    };
    let plates = plates(inputs.mounting, &read)?;
    let hinges = hinges(inputs.spread, &read, &door, between)?;
    let cup_far_edge = read.cup_edge.plus(read.cup_diameter)?;
    Ok(Answer {
        overlay: read.overlay,
        plate_height: read.plate_height,
        cup_edge: read.cup_edge,
        constant: read.constant,
        gap: door.gap,
        door_width: width,
        door_height: height,
        door_weight_kg: weight_kg,
        cup_centre: read.cup_edge.plus(read.cup_diameter.times(1, 2)?)?,
        cup_far_edge,
        left_behind: door.left_behind,
        plate_line: door.plate_line,
        room: room(inputs.mounting, &read, door.gap)?,
        plan: plan::plan(inputs.mounting, &read, &door)?,
        notes: notes(inputs, &read, &door, &plates, &hinges)?,
        working: steps::working(inputs, &read, &door)?,
        cautions: vec![Caution::CupDrilling, Caution::DustAndNoise, Caution::Estimate],
        plates,
        hinges,
    })
}

fn door_width(inputs: &Inputs, read: &Read) -> Result<Range, LengthError> {
    match inputs.doors {
        Doors::One => read.opening_width.plus(read.overlay.into())?.plus(read.other_overlay.into()),
        Doors::Two => read.opening_width.plus(read.overlay.times(2, 1)?.minus(read.gap)?.into())?.times(1, 2),
    }
}

/// The reveal of a full overlay, the gap between two doors on a partition, the gap of an inset door.
fn seen_gap(mounting: Mounting, side: Length, overlay: Length) -> Result<Length, LengthError> {
    match mounting {
        Mounting::Full => side.minus(overlay),
        Mounting::Half => side.minus(overlay.times(2, 1)?),
        Mounting::Inset => Ok(overlay.negated()),
    }
}

/// A table's density times the door's size; `read` has asked for the weight where there is no table.
fn weight_kg(inputs: &Inputs, read: &Read, width: Range, height: Range) -> f64 {
    let thickness_mm = read.door_thickness.as_mm();
    let row = inputs.material.family().and_then(|family| family.row(thickness_mm));
    let density = row.map_or(0.0, |(row, _)| row.density_kg_m3);
    density * width.nominal().as_mm() * height.nominal().as_mm() * thickness_mm * 1e-9
}

/// How many hinges carry a door of that size and weight: by height, by weight, the larger, and one more over 600 mm of
/// width. None where the table ends. See [`hardware::HINGE_COUNT`] and [`hardware::HINGE_WIDTH`].
fn hinge_count(width: Length, height: Length, weight_kg: f64) -> Option<u64> {
    let enough = |class: &&hardware::HingeClass| height.as_mm() <= class.height_mm && weight_kg <= class.weight_kg;
    let class = hardware::HINGE_CLASSES.iter().find(enough)?;
    Some(class.hinges + u64::from(width.as_mm() > 600.0))
}

fn plates(mounting: Mounting, read: &Read) -> Result<Vec<Plate>, LengthError> {
    let off = |height: Length| height.minus(read.plate_height).map(Length::abs);
    let mut least = None;
    for &height in &read.plates {
        let off = off(height)?;
        least = Some(least.map_or(off, |least: Length| least.min(off)));
    }
    let plate = |&height: &Length| {
        let overlay = read.constant.plus(read.cup_edge)?.minus(height)?;
        let gap = seen_gap(mounting, read.side, overlay)?;
        Ok(Plate { height, overlay, gap, nearest: Some(off(height)?) == least })
    };
    read.plates.iter().map(plate).collect()
}

fn hinges(spread: Spread, read: &Read, door: &Door, between: Length) -> Result<Vec<Hinge>, LengthError> {
    let pitch = Length::mm(32, 1)?;
    let half_pitch = Length::mm(16, 1)?;
    let steps = between.floor_div(pitch)?;
    let to_side = read.datum.minus(read.bottom_overlay)?;
    let gaps = door.count.saturating_sub(1).max(1);
    (0..=gaps)
        .map(|at| {
            let along = match spread {
                Spread::Even => between.times(i64::try_from(at).unwrap_or(i64::MAX), gaps)?,
                Spread::Pitch => {
                    // The nearest whole step; between two the upper one, as for rows of holes.
                    let (steps, at, gaps) = (i128::from(steps), i128::from(at), i128::from(gaps));
                    let part = (2 * steps * at + gaps) / (2 * gaps);
                    pitch.times(i64::try_from(part).unwrap_or(i64::MAX), 1)?
                }
            };
            let on_door = read.end_distance.plus(along)?;
            let on_side = on_door.plus(to_side)?;
            Ok(Hinge {
                on_door,
                on_side,
                lower_hole: on_side.minus(half_pitch)?,
                upper_hole: on_side.plus(half_pitch)?,
            })
        })
        .collect()
}

fn room(mounting: Mounting, read: &Read, gap: Length) -> Result<Room, LengthError> {
    let has = if mounting == Mounting::Half { gap.times(1, 2)? } else { gap };
    let opens = match read.least_reveal {
        None => Opens::Unknown,
        Some(needs) if has >= needs => Opens::Freely(has.minus(needs)?),
        Some(needs) => Opens::Strikes(needs.minus(has)?),
    };
    Ok(Room { has, needs: read.least_reveal, opens, example: hardware::LEAST_REVEAL })
}

fn notes(
    inputs: &Inputs,
    read: &Read,
    door: &Door,
    plates: &[Plate],
    hinges: &[Hinge],
) -> Result<Vec<Note>, LengthError> {
    let mm = |whole: i64| Length::mm(whole, 1);
    let opening_top = read.datum.plus(read.opening_height.nominal())?;
    let outside = |hinge: &Hinge| hinge.lower_hole < read.datum || hinge.upper_hole > opening_top;
    let apart = match (hinges.first(), hinges.last()) {
        (Some(first), Some(last)) => last.on_door.minus(first.on_door)?,
        _ => Length::ZERO,
    };
    let in_list = plates.iter().any(|plate| plate.height == read.plate_height);
    let closed = !door.gap.is_positive();
    let applies = [
        (read.plate_height.is_negative(), Note::PlateBelowZero),
        (!in_list && !read.plate_height.is_negative(), Note::PlateNotSold),
        (read.cup_edge < mm(3)? || read.cup_edge > mm(7)?, Note::CupEdgeUnusual),
        (inputs.mounting == Mounting::Full && door.gap.is_negative(), Note::PastTheSide),
        (inputs.mounting == Mounting::Half && closed, Note::DoorsTouch),
        (inputs.mounting == Mounting::Inset && closed, Note::InsetTouches),
        (door.left_behind < mm(3)?, Note::ThinBehindCup),
        (read.end_distance < mm(80)?, Note::NearTheEnds),
        (door.width.nominal() > apart, Note::WiderThanHinges),
        (door.width.high() > mm(650)?, Note::TooWide),
        (door.by_table.is_none(), Note::BeyondTable),
        (door.by_table.is_some_and(|table| door.count < table), Note::FewHinges),
        (hinges.iter().any(outside), Note::PlateOutside),
    ];
    Ok(applies.into_iter().filter_map(|(applies, note)| applies.then_some(note)).collect())
}

/// The cup hinge card.
pub const CARD: Card = Card { slug: "cup-hinge", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
