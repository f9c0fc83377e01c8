//! The worst that the measured sizes can do to what has to fit, and which of them to measure again.

use super::frame::Frame;
use super::inputs::{Corners, Doors, Inputs, Lie, SizeFrom};
use super::read::Given;
use crate::measure::{Length, LengthError};
use serde::Serialize;

/// What has to fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fitted {
    /// The cabinet in the room on the wall: what is free beside it.
    InRoomAcross,
    /// The same above it.
    InRoomUp,
    /// The back's thickness in its groove or rabbet: what is to spare.
    BackInGroove,
    /// The back's width between the bottoms of its grooves: what is to spare.
    BackAcross,
    /// The same upwards.
    BackUp,
    /// Loose shelves between the boards beside them: what is to spare.
    Shelves,
    /// The gap beside or between doors.
    DoorGaps,
}

/// How it fits at its worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Fit {
    /// What has to fit.
    pub what: Fitted,
    /// The least room that it may have; below zero it does not fit.
    pub least: Length,
    /// The most room.
    pub most: Length,
    /// Whether it fits whatever the sizes are.
    pub fits: bool,
    /// The input whose doubt weighs most; none where there is no doubt.
    pub again: Option<&'static str>,
}

/// Doubts, by the inputs that they come from.
struct Doubts<'a> {
    of: &'a [(&'static str, Length)],
}

impl Doubts<'_> {
    fn sum(&self) -> Result<Length, LengthError> {
        self.of.iter().try_fold(Length::ZERO, |sum, (_, doubt)| sum.plus(*doubt))
    }

    fn greatest(&self) -> Option<&'static str> {
        let greatest = self.of.iter().max_by(|a, b| a.1.cmp(&b.1))?;
        greatest.1.is_positive().then_some(greatest.0)
    }

    fn fit(&self, what: Fitted, room: Length, fits: Option<bool>) -> Result<Fit, LengthError> {
        let doubt = self.sum()?;
        let least = room.minus(doubt)?;
        let fits = fits.unwrap_or(!least.is_negative());
        Ok(Fit { what, least, most: room.plus(doubt)?, fits, again: self.greatest() })
    }
}

/// Every fit.
pub(super) fn fits(inputs: &Inputs, given: &Given, frame: &Frame, loose: bool) -> Result<Vec<Fit>, LengthError> {
    let board = given.carcass.tolerance();
    let two = board.times(2, 1)?;
    let over = inputs.corners == Corners::Over;
    let boards = |counts: bool| if counts { two } else { Length::ZERO };
    let across = [("width", given.own_doubt(inputs, given.width)), ("carcass.thickness", boards(over))];
    let up = [("height", given.own_doubt(inputs, given.height)), ("carcass.thickness", boards(!over))];
    let mut fits = Vec::new();
    if inputs.size_from == SizeFrom::Opening {
        let beside = given.free.times(2, 1)?;
        for (what, room, field, typed) in [
            (Fitted::InRoomAcross, beside, "width", given.width),
            (Fitted::InRoomUp, given.free, "height", given.height),
        ] {
            fits.push(Doubts { of: &[(field, typed.tolerance())] }.fit(what, room, None)?);
        }
    }
    if let Some(groove) = &frame.groove {
        let doubts = [("back_board.thickness", groove.play.tolerance())];
        fits.push(Doubts { of: &doubts }.fit(Fitted::BackInGroove, groove.play.nominal(), None)?);
    }
    // That it still bears when it has shrunk is the back's own verdict.
    for (what, way, doubts) in
        [(Fitted::BackAcross, &frame.back.width, across), (Fitted::BackUp, &frame.back.height, up)]
    {
        if let Some(room) = way.room {
            let spare = room.nominal().minus(way.size.nominal())?;
            fits.push(Doubts { of: &doubts }.fit(what, spare, None)?);
        }
    }
    // Uprights are marked from one end: what is wrong with the width falls into the last bay, and the board that a bay is
    // beside takes what it is thicker.
    let beside = if given.bays > 1 { board } else { Length::ZERO };
    let bay = [across[0], ("carcass.thickness", across[1].1.plus(beside)?)];
    if loose {
        fits.push(Doubts { of: &bay }.fit(Fitted::Shelves, given.shelf_play, None)?);
    }
    if inputs.has_doors() {
        fits.push(door_gaps(inputs, given, [across, up])?);
    }
    Ok(fits)
}

/// The gap of the doors that may close most. Their hinges hold them by the inner faces of the boards: a thicker board
/// widens a reveal, or a gap before an upright, and a wider cabinet the gap between a pair.
fn door_gaps(
    inputs: &Inputs,
    given: &Given,
    [across, up]: [[(&'static str, Length); 2]; 2],
) -> Result<Fit, LengthError> {
    let thickness = [("carcass.thickness", given.carcass.tolerance())];
    let mut gaps: Vec<(Length, &[(&'static str, Length)])> = Vec::new();
    match inputs.lie {
        Lie::Inset => gaps.extend([(given.gap, across.as_slice()), (given.gap, up.as_slice())]),
        Lie::Full => gaps.push((given.reveal, &thickness)),
        Lie::Half => gaps.push((given.gap, &thickness)),
    }
    if inputs.lie != Lie::Inset && given.bays > 1 {
        gaps.push((given.gap, &thickness));
    }
    if inputs.lie != Lie::Inset && inputs.doors == Doors::Pair {
        gaps.push((given.gap, &across));
    }
    let mut worst: Option<Fit> = None;
    for (gap, of) in gaps {
        let doubts = Doubts { of };
        // Without any gap they touch.
        let opens = gap > doubts.sum()?;
        let fit = doubts.fit(Fitted::DoorGaps, gap, Some(opens))?;
        if worst.is_none_or(|worst| fit.least < worst.least) {
            worst = Some(fit);
        }
    }
    Ok(worst.unwrap_or(Fit {
        what: Fitted::DoorGaps,
        least: given.gap,
        most: given.gap,
        fits: given.gap.is_positive(),
        again: None,
    }))
}
