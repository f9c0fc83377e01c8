//! The wall cleat: how far below the top its strip lies, and what is above it.

use super::ask::{Asked, answered, reading};
use super::inputs::{Back, Inputs, SizeFrom, Stands};
use super::read::Given;
use crate::cards::wall_cleat;
use crate::measure::{Length, LengthError, Reading};
use crate::problem::Problems;

/// Behind a back that is planted on, the cleat's strip is screwed to the rear edge of the top too; else it lies under it,
/// in the rabbet where the back has one.
pub(super) fn below_top(inputs: &Inputs, given: &Given) -> Result<Length, LengthError> {
    match inputs.back {
        Back::Planted => Ok(Length::ZERO),
        Back::Rabbet => given.carcass.nominal().minus(given.groove_depth),
        Back::Groove => Ok(given.carcass.nominal()),
    }
}

/// What is above the cabinet: the ceiling, or the end of the room on the wall where that is nearer.
fn above(inputs: &Inputs, given: &Given) -> Result<Reading, LengthError> {
    let (SizeFrom::Opening, Ok(top)) = (inputs.size_from, inputs.top_at.length()) else {
        return Ok(inputs.ceiling.clone());
    };
    let room = top.plus(given.free)?;
    match inputs.ceiling.length() {
        Ok(ceiling) if ceiling <= room => Ok(inputs.ceiling.clone()),
        Err(_) if !inputs.ceiling.is_blank() => Ok(inputs.ceiling.clone()),
        _ => Ok(reading(room)),
    }
}

/// The strips of the cleat; none for what does not hang by one.
pub(super) fn cleat(
    inputs: &Inputs,
    given: &Given,
    (width, height): (Length, Length),
    (below_top, asked_first): (Length, &mut Asked),
) -> Result<Option<wall_cleat::Answer>, Problems> {
    if inputs.stands != Stands::Cleat {
        return Ok(None);
    }
    let back = if inputs.back == Back::Planted { wall_cleat::Back::Flush } else { wall_cleat::Back::Inset };
    let board = given.carcass.nominal();
    let asked = wall_cleat::Inputs {
        thickness: reading(given.strip.nominal()),
        strip_height: inputs.strip_height.clone(),
        bevel: inputs.bevel.clone(),
        kerf: inputs.kerf.clone(),
        back,
        slack: inputs.slack.clone(),
        cabinet_width: reading(width),
        cabinet_height: reading(height),
        side: reading(if inputs.back == Back::Planted { board } else { below_top }),
        below_top: reading(below_top),
        top_at: inputs.top_at.clone(),
        ceiling: above(inputs, given)?,
        ..wall_cleat::Inputs::default()
    };
    let names = [
        ("thickness", "strip.thickness"),
        ("strip_height", "strip_height"),
        ("bevel", "bevel"),
        ("kerf", "kerf"),
        ("slack", "slack"),
        ("cabinet_width", "width"),
        ("end_gap", "width"),
        ("cabinet_height", "height"),
        ("top_at", "top_at"),
        ("ceiling", "ceiling"),
    ];
    let answer = answered(wall_cleat::solve(&asked), &names)?;
    asked_first.wall_cleat = Some(asked);
    Ok(Some(answer))
}
