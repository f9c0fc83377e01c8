//! The worst that the measured sizes can do to what has to fit, and which of them to measure again.

use super::frame::Frame;
use super::inputs::{Corners, Inputs, Lie};
use super::read::Given;
use crate::cards::back_panel::Verdict;
use crate::measure::{Length, LengthError};
use serde::Serialize;

/// What has to fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fitted {
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
    let across = [("width", given.width.tolerance()), ("carcass.thickness", boards(over))];
    let up = [("height", given.height.tolerance()), ("carcass.thickness", boards(!over))];
    let mut fits = Vec::new();
    if let Some(groove) = &frame.groove {
        let doubts = [("back_board.thickness", groove.play.tolerance())];
        fits.push(Doubts { of: &doubts }.fit(Fitted::BackInGroove, groove.play.nominal(), None)?);
    }
    for (what, way, doubts) in
        [(Fitted::BackAcross, &frame.back.width, across), (Fitted::BackUp, &frame.back.height, up)]
    {
        if let Some(room) = way.room {
            let spare = room.nominal().minus(way.size.nominal())?;
            let good = frame.back.verdict == Verdict::Good;
            fits.push(Doubts { of: &doubts }.fit(
                what,
                spare,
                Some(good && !spare.minus(room.tolerance())?.is_negative()),
            )?);
        }
    }
    let bays = i64::from(given.bays);
    let share = |doubt: Length| doubt.times(1, u64::from(given.bays).max(1));
    // The uprights' own thickness is shared out between the bays too.
    let uprights = board.times(bays - 1, 1)?;
    let bay = [("width", share(across[0].1)?), ("carcass.thickness", share(across[1].1.plus(uprights)?)?)];
    if loose {
        fits.push(Doubts { of: &bay }.fit(Fitted::Shelves, given.shelf_play, None)?);
    }
    if inputs.has_doors() {
        let least = if inputs.lie == Lie::Full && given.reveal < given.gap { given.reveal } else { given.gap };
        let upwards = inputs.lie == Lie::Inset && Doubts { of: &up }.sum()? > Doubts { of: &bay }.sum()?;
        let doubts = Doubts { of: if upwards { &up } else { &bay } };
        // Without any gap they touch.
        let opens = least > doubts.sum()?;
        fits.push(doubts.fit(Fitted::DoorGaps, least, Some(opens))?);
    }
    Ok(fits)
}
