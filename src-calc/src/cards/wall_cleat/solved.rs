//! From what the maker gives to the strips and their places.

use super::inputs::{Back, Inputs};
use super::read::Read;
use super::{Answer, Cut, Lifts, Method, Pass, Section, steps};
use crate::caution::Caution;
use crate::measure::{Length, LengthError};
use crate::problem::Problems;

/// Every saw leans as far as this, and few lean much farther, in degrees.
const MOST_LEAN: f64 = 45.0;
/// A strip narrower than this beside the fence is thin.
const THIN_MM: f64 = 50.0;

/// Heights above the floor.
pub(super) struct Heights {
    /// The lower point of the cabinet's strip, hooked in.
    pub(super) hook: Length,
    /// The point of the wall strip.
    pub(super) point: Length,
    /// Its lower edge.
    pub(super) lower: Length,
    /// Its screws.
    pub(super) screws: Length,
    /// The lower edge of the spacer.
    pub(super) spacer: Length,
    /// The cabinet's bottom.
    pub(super) bottom: Length,
}

/// The strips of a wall cleat, how they are cut, and where each goes.
///
/// With the bevel β, thickness t, height l of a strip and slack e: hooked in, the cabinet's strip has sunk behind the
/// wall strip's point by `(t − e)·tan β`, which is also how far it must be lifted to come free.
///
/// # Errors
/// A [`crate::problem::Problem`] for each input that cannot be used: unreadable, at or below zero, a bevel outside of 30
/// to 60°, strips that come to a point or do not fit behind the cabinet.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    Ok(answer(inputs.back, &read)?)
}

fn heights(read: &Read) -> Result<Heights, LengthError> {
    let hook = read.top_at.minus(read.below_top)?.minus(read.wide)?;
    let point = hook.plus(read.lift)?;
    let lower = point.minus(read.wide)?;
    let bottom = read.top_at.minus(read.cabinet_height)?;
    Ok(Heights {
        hook,
        point,
        lower,
        screws: lower.plus(read.narrow.times(2, 3)?)?,
        spacer: bottom.plus(read.below_top)?.plus(read.over_bottom)?,
        bottom,
    })
}

fn section(back: Back, read: &Read, at: &Heights) -> Section {
    let (t, l, s) = (read.thickness.as_mm(), read.wide.as_mm(), read.slope.as_mm());
    let (lower, point, hook, spacer) = (at.lower.as_mm(), at.point.as_mm(), at.hook.as_mm(), at.spacer.as_mm());
    let (behind, front) = (read.slack.as_mm(), read.behind.as_mm());
    Section {
        wall_strip: [[0.0, lower], [t, lower], [t, point], [0.0, point - s]],
        cabinet_strip: [[behind, hook], [front, hook + s], [front, hook + l], [behind, hook + l]],
        spacer: [[0.0, spacer], [front, spacer], [front, spacer + l], [0.0, spacer + l]],
        rear_mm: if back == Back::Flush { t } else { 0.0 },
        back_mm: front,
        top_mm: read.top_at.as_mm(),
        bottom_mm: at.bottom.as_mm(),
    }
}

fn passes(method: Method, read: &Read) -> Vec<Pass> {
    let degrees = read.bevel.degrees();
    match method {
        Method::OneRip => vec![Pass { cut: Cut::Pair, lean_degrees: degrees, fence: read.narrow }],
        Method::OnEdge => vec![
            Pass { cut: Cut::Part, lean_degrees: 0.0, fence: read.wide },
            Pass { cut: Cut::Edge, lean_degrees: 90.0 - degrees, fence: Length::ZERO },
        ],
    }
}

/// The board that gives both strips and what the blade takes between them.
fn board(method: Method, read: &Read) -> Result<Length, LengthError> {
    match method {
        Method::OneRip => {
            let kerf_on_face = Length::from_estimate_mm(read.kerf.as_mm() / read.bevel.cos())?;
            read.wide.plus(read.narrow)?.plus(kerf_on_face)
        }
        Method::OnEdge => read.wide.times(2, 1)?.plus(read.kerf),
    }
}

fn answer(back: Back, read: &Read) -> Result<Answer, LengthError> {
    let at = heights(read)?;
    let method = if read.bevel.degrees() <= MOST_LEAN { Method::OneRip } else { Method::OnEdge };
    let board = board(method, read)?;
    let (inset, stands_off) = match back {
        Back::Inset => (read.behind, Length::ZERO),
        Back::Flush => (Length::ZERO, read.thickness),
    };
    let highest_top = read.ceiling.map(|ceiling| ceiling.minus(read.lift)).transpose()?;
    let lifts = match highest_top {
        Some(highest) if read.top_at <= highest => Lifts::On(highest.minus(read.top_at)?),
        Some(highest) => Lifts::Not(read.top_at.minus(highest)?),
        None => Lifts::Unknown,
    };
    let wall_strip_length = read.room.minus(read.end_gap.times(2, 1)?)?;
    Ok(Answer {
        thickness: read.thickness,
        wide: read.wide,
        narrow: read.narrow,
        bevel_width_mm: read.thickness.as_mm() / read.bevel.cos(),
        bevel_degrees: read.bevel.degrees(),
        inset,
        stands_off,
        spacer_thickness: read.behind,
        cabinet_strip_length: read.room,
        wall_strip_length,
        top_at: read.top_at,
        wall_strip_at: at.lower,
        wall_strip_top: at.point,
        screws_at: at.screws,
        spacer_at: at.spacer,
        lift: read.lift,
        lifts,
        highest_top,
        method,
        board,
        passes: passes(method, read),
        section: section(back, read, &at),
        working: steps::working(back, read, &at, (method, board), wall_strip_length),
        cautions: cautions(method, read.narrow),
    })
}

fn cautions(method: Method, narrow: Length) -> Vec<Caution> {
    let mut cautions = vec![Caution::InTheWall, Caution::HungOnTheWall, Caution::BevelRip];
    if method == Method::OnEdge {
        cautions.push(Caution::StripOnEdge);
    }
    if narrow.as_mm() < THIN_MM {
        cautions.push(Caution::ThinStrip);
    }
    cautions.push(Caution::DustAndNoise);
    cautions
}
