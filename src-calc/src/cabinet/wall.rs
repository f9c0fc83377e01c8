//! Whether the wall holds the cabinet, with all that is in it.

use super::ask::{Asked, answered, reading};
use super::checks::{Clash, kilograms};
use super::frame::Frame;
use super::handles::{screw_length, screws};
use super::hooks::Row;
use super::inputs::{Back, Doors, Inputs, Stands};
use super::part::{Axis, Part, What};
use super::read::Given;
use crate::cards::{clothes_rail, hanging};
use crate::measure::{Figure, FigureKind, Length, LengthError};
use crate::problem::Problems;
use serde::Serialize;

/// The hanging card knows so many shelves.
const MOST_SHELVES: u32 = 7;
/// So far, in millimetres, screws go into the rear edges of top and sides at the most. Common practice.
const DEEP_MM: i64 = 35;
/// No wall screw comes nearer than this, in millimetres, to the end of a rail. From memory.
const CLEAR_MM: i64 = 12;

/// How the contents are told to the hanging card: by the metre where every bay has the same few shelves and no clothes
/// hang there, else as the mass of every level, the bottom first. What is on more shelves than the card knows is put on
/// those that it does.
fn contents(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    clothes: Option<&clothes_rail::Answer>,
) -> Result<(hanging::Load, u32, [Figure; 8]), Problems> {
    let all = given.fixed_shelves.saturating_add(given.loose_shelves);
    let shelves = all.min(MOST_SHELVES);
    let mut levels: [Figure; 8] = Default::default();
    if clothes.is_none() && shelves == all {
        return Ok((hanging::Load::PerMetre, shelves, levels));
    }
    let kind = FigureKind::MassPerLength;
    let per_metre = inputs.load.value(kind).map_err(|problem| Problems::one("load", problem))?;
    let metres = |length: Length| length.as_mm() / 1000.0;
    let taken = frame.rail_bay(given).map_or(Ok(Length::ZERO), |(from, to)| to.minus(from))?;
    let on_shelves = f64::from(all) * per_metre * (metres(frame.inside_width.nominal()) - metres(taken));
    let bottom = per_metre * metres(frame.inside_width.nominal()) + clothes.map_or(0.0, |rail| rail.load_kg);
    for (at, level) in (0..).zip(&mut levels) {
        let kg = match at {
            0 => bottom,
            at if at <= shelves => on_shelves / f64::from(shelves),
            _ => continue,
        };
        if kg > 0.0 {
            *level = kilograms(kg);
        }
    }
    Ok((hanging::Load::Each, shelves, levels))
}

/// Whether the wall holds it; none for what stands on the floor.
pub(super) fn hang(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    (weight_kg, clothes, asked_first): (f64, Option<&clothes_rail::Answer>, &mut Asked),
) -> Result<Option<hanging::Answer>, Problems> {
    let (cleat, rail) = match (&frame.cleat, inputs.stands) {
        (Some(cleat), _) => (Some(cleat), false),
        (None, Stands::Rail) => (None, true),
        (None, _) => return Ok(None),
    };
    let planted = if inputs.back == Back::Planted { given.back.nominal() } else { Length::ZERO };
    let (load, shelves, levels) = contents(inputs, given, frame, clothes)?;
    let half = given.strip_height.times(1, 2)?;
    let asked = hanging::Inputs {
        weight: hanging::Weight::Known,
        // What hangs on hooks hangs on the wall all the same.
        known_weight: kilograms(weight_kg + given.hooks.as_ref().map_or(0.0, Row::load_kg)),
        width: reading(frame.width),
        height: reading(frame.height),
        depth: reading(frame.depth.plus(planted)?),
        thickness: reading(frame.board),
        material: inputs.carcass.material,
        back_thickness: reading(given.back.nominal()),
        back_material: inputs.back_board.material,
        shelves: shelves.to_string().as_str().into(),
        doors: match inputs.doors {
            Doors::None => hanging::Doors::None,
            Doors::Left | Doors::Right => hanging::Doors::One,
            Doors::Pair => hanging::Doors::Two,
        },
        door_thickness: reading(given.door.nominal()),
        door_material: inputs.door.material,
        own_density: inputs.own_density.clone(),
        load,
        per_metre: inputs.load.clone(),
        levels,
        ceiling: inputs.ceiling.clone(),
        hung: if rail { hanging::Hung::Rail } else { hanging::Hung::Cleat },
        bevel: inputs.bevel.clone(),
        bevel_down: match cleat {
            Some(cleat) => reading(frame.below_top.plus(cleat.wide)?),
            None => reading(frame.board.plus(half)?),
        },
        stands_off: reading(cleat.map_or(Length::ZERO, |cleat| cleat.stands_off)),
        strip: reading(given.strip.nominal()),
        strip_height: reading(given.strip_height),
        fixings_up: match cleat {
            Some(cleat) => reading(cleat.screws_at.minus(cleat.wall_strip_at)?),
            None => reading(half),
        },
        strip_length: match cleat {
            Some(cleat) => reading(cleat.wall_strip_length),
            None => reading(frame.inside_width.nominal()),
        },
        count: inputs.screws.clone(),
        stud_pitch: inputs.stud_pitch.clone(),
        stud: inputs.stud,
        screw: inputs.screw,
        screw_length: inputs.screw_length.clone(),
        ..hanging::Inputs::default()
    };
    let names = [
        ("known_weight", "own_density"),
        ("width", "width"),
        ("height", "height"),
        ("depth", "depth"),
        ("per_metre", "load"),
        ("levels", "load"),
        ("ceiling", "ceiling"),
        ("bevel", "bevel"),
        ("strip", "strip.thickness"),
        ("strip_height", "strip_height"),
        ("strip_length", "width"),
        ("first_at", "width"),
        ("count", "screws"),
        ("stud_pitch", "stud_pitch"),
        ("screw_length", "screw_length"),
        ("door_thickness", "door.thickness"),
        ("own_density", "own_density"),
    ];
    let answer = answered(hanging::solve(&asked), &names)?;
    asked_first.hanging = Some(asked);
    Ok(Some(answer))
}

/// The wall screws of a rail that come where an upright parts it.
pub(super) fn on_uprights(
    inputs: &Inputs,
    frame: &Frame,
    hang: Option<&hanging::Answer>,
) -> Result<Vec<Clash>, LengthError> {
    let Some(hang) = hang.filter(|_| inputs.stands == Stands::Rail) else { return Ok(Vec::new()) };
    let clear = Length::mm(CLEAR_MM, 1)?;
    let mut clashes = Vec::new();
    for (from, to) in frame.uprights(frame.board)? {
        let met = |at: Length| Ok::<_, LengthError>(at > from.minus(clear)? && at < to.plus(clear)?);
        for mark in &hang.marks {
            if met(mark.at)? {
                clashes.push(Clash::WallScrewOnUpright { at: mark.at });
            }
        }
    }
    Ok(clashes)
}

/// How the strip of a cleat is screwed through a back that is planted on.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StripScrews {
    /// The strip's place in the list of parts.
    pub on: usize,
    /// The holes into the rear edge of the top: from the strip's upper edge, and from its left end.
    pub into_top: (Length, Vec<Length>),
    /// The holes into the rear edges of the sides, in the same way.
    pub into_sides: (Length, Vec<Length>),
    /// How long the screws are.
    pub screw: Length,
}

/// The screws of such a strip; none where it lies between the sides, where it is joined to them.
pub(super) fn strip_screws(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    parts: &[Part],
) -> Result<Option<StripScrews>, Problems> {
    let strip = parts.iter().enumerate().find(|(_, part)| part.what == What::CabinetStrip);
    let Some((on, strip)) = strip.filter(|_| inputs.back == Back::Planted) else { return Ok(None) };
    let half = frame.board.times(1, 2)?;
    let (left, right) = strip.place.along(Axis::Across);
    let length = right.minus(left)?;
    // The middles of the sides' edges, as far as the strip goes over them.
    let sides = [half.minus(left)?, frame.width.minus(half)?.minus(left)?];
    let through = given.strip.nominal().plus(given.back.nominal())?;
    Ok(Some(StripScrews {
        on,
        into_top: (half, screws(length, Length::ZERO, "width")?),
        into_sides: (
            strip.width.times(1, 2)?,
            sides.into_iter().filter(|at| at.is_positive() && *at < length).collect(),
        ),
        screw: screw_length(through, Length::mm(DEEP_MM, 1)?)?,
    }))
}
