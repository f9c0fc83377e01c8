//! Putting together, in an order in which everything can still be reached.

use super::{OnWall, Setup, Steps};
use crate::cabinet::Cabinet;
use crate::cabinet::part::What;
use crate::measure::{Length, LengthError};

pub(super) fn put_together(cabinet: &Cabinet, steps: &mut Steps) -> Result<(), LengthError> {
    let mut each = |setup: Setup, wanted: fn(What) -> bool| {
        for (at, _) in cabinet.parts.iter().enumerate().filter(|(_, part)| wanted(part.what)) {
            steps.add(setup.clone(), at);
        }
    };
    let about_back = cabinet.back_first;
    if about_back {
        each(Setup::Assemble { about_back }, |what| what == What::Back);
    }
    let joined: Vec<usize> =
        cabinet.joins.iter().flat_map(|join| &join.pairs).flat_map(|pair| [pair.0, pair.1]).collect();
    for part in joined {
        steps.add(Setup::Assemble { about_back }, part);
    }
    if let Some(rail) = &cabinet.hooks {
        steps.add(Setup::FixHooks, rail.on);
    }
    for (at, part) in cabinet.parts.iter().enumerate().filter(|(_, part)| part.what == What::Rail) {
        steps.add(Setup::Rail { length: part.length }, at);
    }
    let packing = match &cabinet.cleat {
        Some(cleat) => cleat.spacer_thickness.minus(cleat.thickness)?,
        None => Length::ZERO,
    };
    let mut each = |setup: Setup, wanted: fn(What) -> bool| {
        for (at, _) in cabinet.parts.iter().enumerate().filter(|(_, part)| wanted(part.what)) {
            steps.add(setup.clone(), at);
        }
    };
    // While the inside is still reached from behind.
    let of_plinth = |what| matches!(what, What::PlinthFront | What::PlinthRear | What::PlinthCross { .. });
    each(Setup::PlinthTogether, of_plinth);
    each(Setup::FixPlinth, of_plinth);
    if !about_back {
        let pitch = cabinet.back_screws.map(|screws| screws.pitch);
        each(Setup::PutIn { pitch }, |what| what == What::Back);
    }
    if cabinet.strip_screws.is_some() {
        each(Setup::FixStrip, |what| what == What::CabinetStrip);
    }
    each(Setup::FixHandles, |what| matches!(what, What::Handle { .. }));
    each(Setup::HangDoors, |what| matches!(what, What::Door { .. }));
    let hung = |what| matches!(what, What::CabinetStrip | What::WallStrip | What::Spacer | What::HangingRail { .. });
    if cabinet.legs {
        each(Setup::Legs, |what| what == What::Bottom);
    }
    let strip = cabinet.cleat.as_ref().map(|cleat| OnWall {
        point: cleat.wall_strip_top,
        screws: cleat.screws_at,
        spacer: cleat.spacer_at,
    });
    let marks = cabinet.hang.iter().flat_map(|hang| &hang.marks);
    let screws = marks.map(|mark| (mark.at, mark.fixings)).collect();
    each(Setup::HangUp { packing, strip, screws }, hung);
    // Last, so that the cabinet is lighter to lift.
    if let Some(shelf) = &cabinet.outside {
        steps.add(Setup::FixOutside, shelf.on);
    }
    Ok(())
}
