//! One direction of the back: how long the panel is cut, whether it binds when wet, whether it holds when dry.

use super::{Bounds, Way};
use crate::measure::{Length, LengthError, Range};
use serde::Serialize;

/// A nanometre: what is short by less is rounding of the estimates, not wood.
const NANOMETRE_MM: f64 = 1e-6;

/// Whether the panel has room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fit {
    /// It has room, wet or dry.
    Free,
    /// Both edges run past the opening: nothing to bind against.
    NothingToBind,
    /// It goes in as cut, but grows past its room on the wettest day.
    Binds,
    /// It does not go in at all where the opening is smallest.
    DoesNotGoIn,
}

/// Whether the panel still bears, pushed hard to one side on the driest day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Hold {
    /// At least the engagement wanted, at both edges that carry.
    Bears,
    /// Both edges are held short: neither carries in this direction.
    NothingToBear,
    /// It still bears, but by less than wanted.
    Short,
    /// An edge comes out.
    FallsOut,
}

/// One edge, as the picture draws it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Side {
    /// What the edge does.
    pub way: Way,
    /// How far past the face of the opening the panel may reach (groove, rabbet) or lies (run past); below zero
    /// where it is held short.
    pub reach: Range,
    /// The least that still bears on this edge, in millimetres; below zero it has come out. Nothing where held short.
    pub engagement_mm: Option<f64>,
}

impl Side {
    /// Where a growing panel is stopped, measured out from the face of the opening. An edge held short stops at the
    /// face itself; one that is nailed stays where it was nailed.
    pub(super) fn stop(&self) -> Range {
        if self.way == Way::HeldShort { Range::exact(Length::ZERO) } else { self.reach }
    }

    fn carries(&self) -> bool {
        self.way != Way::HeldShort
    }
}

/// One direction of the back. `first` is the left or the bottom edge, `second` the right or the top one.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Across {
    /// The opening, as read.
    pub opening: Range,
    /// What is taken off for clearance: all of it in this direction, nothing where neither edge sits in a groove or rabbet.
    pub clearance: Length,
    /// The panel. Cut the nominal; low and high say what it would be were the opening known exactly.
    pub size: Range,
    /// Where the panel's first edge lies, measured from the first face of the opening; below zero it is past the face.
    /// Two housed edges share the clearance; otherwise it is all at the housed one.
    pub starts_at: Length,
    /// From stop to stop; nothing where both edges run past.
    pub room: Option<Range>,
    /// The largest panel that still goes in, dry, where the opening is smallest.
    pub largest: Option<Length>,
    /// Length on the wettest day, in millimetres.
    pub wet_mm: f64,
    /// Length on the driest day, in millimetres.
    pub dry_mm: f64,
    /// Room left on the wettest day in the smallest opening, in millimetres; below zero it binds.
    pub wet_spare_mm: Option<f64>,
    /// Whether it has room.
    pub fit: Fit,
    /// Whether it bears.
    pub hold: Hold,
    /// Left or bottom edge.
    pub first: Side,
    /// Right or top edge.
    pub second: Side,
    /// The sizes that neither bind nor come short, in millimetres; nothing where there is no such size.
    pub works_mm: Option<Window>,
    /// Where no size works between two grooves or rabbets: the least depth, the same for both, at which one does.
    pub depth_wanted_mm: Option<f64>,
}

/// From the smallest to the largest size that works.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Window {
    /// Any smaller and an edge may come short on the driest day, in millimetres.
    pub from_mm: f64,
    /// Any larger and it may bind on the wettest day, in millimetres; nothing where it cannot bind.
    pub to_mm: Option<f64>,
}

impl Across {
    /// `W = O + a + b − c`, then growth and shrinkage by `strain` (a fraction of the size) against the worst opening.
    ///
    /// # Errors
    /// [`LengthError`] when a length grows past what can be held exactly.
    pub(super) fn new(
        opening: Range,
        [first, second]: [(Way, Range); 2],
        bounds: &Bounds,
    ) -> Result<Self, LengthError> {
        let [mut first, mut second] = [first, second].map(|(way, reach)| Side { way, reach, engagement_mm: None });
        let housed = first.way.is_housed() || second.way.is_housed();
        let clearance = if housed { bounds.clearance } else { Length::ZERO };
        let size = opening.plus(first.reach)?.plus(second.reach)?.minus(Range::exact(clearance))?;
        let cut_mm = size.nominal().as_mm();
        let wet_mm = cut_mm * (1.0 + bounds.strain);
        let dry_mm = cut_mm * (1.0 - bounds.strain);

        let nothing_stops = first.way == Way::PastEdge && second.way == Way::PastEdge;
        let room = if nothing_stops { None } else { Some(opening.plus(first.stop())?.plus(second.stop())?) };
        let least_room = room.map(|room| room.low());
        let wet_spare_mm = least_room.map(|room| room.as_mm() - wet_mm);
        let fit = match (least_room, wet_spare_mm) {
            (Some(room), _) if size.nominal() > room => Fit::DoesNotGoIn,
            (_, Some(spare)) if spare < -NANOMETRE_MM => Fit::Binds,
            (Some(_), _) => Fit::Free,
            (None, _) => Fit::NothingToBind,
        };

        // Pushed hard against the other edge's stop, which is furthest away in the largest opening.
        let engagement = |edge: &Side, other: &Side| -> Result<Option<f64>, LengthError> {
            let lost = opening.high().plus(other.reach.high())?.as_mm();
            Ok(edge.carries().then(|| (dry_mm - lost).min(edge.reach.low().as_mm())))
        };
        let engagements = [engagement(&first, &second)?, engagement(&second, &first)?];
        [first.engagement_mm, second.engagement_mm] = engagements;
        let wanted_mm = bounds.least_engagement.as_mm();
        let hold = match engagements.into_iter().flatten().reduce(f64::min) {
            None => Hold::NothingToBear,
            Some(least) if least <= NANOMETRE_MM => Hold::FallsOut,
            Some(least) if least < wanted_mm - NANOMETRE_MM => Hold::Short,
            Some(_) => Hold::Bears,
        };

        let to_mm = least_room.map(|room| room.as_mm() / (1.0 + bounds.strain));
        let works_mm = smallest_that_bears(opening, &first, &second, bounds)?
            .filter(|from_mm| to_mm.is_none_or(|to_mm| *from_mm <= to_mm + NANOMETRE_MM))
            .map(|from_mm| Window { from_mm, to_mm });
        let both_housed = first.way.is_housed() && second.way.is_housed();
        let depth_wanted_mm = (works_mm.is_none() && both_housed).then(|| depth_wanted_mm(opening, bounds));

        let starts_at = match (first.way.is_housed(), second.way.is_housed()) {
            (true, true) => clearance.times(1, 2)?.minus(first.reach.nominal())?,
            (true, false) => clearance.minus(first.reach.nominal())?,
            (false, _) => Length::ZERO.minus(first.reach.nominal())?,
        };
        Ok(Self {
            opening,
            clearance,
            size,
            starts_at,
            room,
            largest: least_room,
            wet_mm,
            dry_mm,
            wet_spare_mm,
            fit,
            hold,
            first,
            second,
            works_mm,
            depth_wanted_mm,
        })
    }

    /// The lesser of the two engagements, in millimetres.
    pub fn least_engagement_mm(&self) -> Option<f64> {
        [self.first.engagement_mm, self.second.engagement_mm].into_iter().flatten().reduce(f64::min)
    }
}

/// The smallest size that bears as wanted at every edge that carries, zero where none does; nothing where an edge is
/// too shallow for what is wanted.
fn smallest_that_bears(
    opening: Range,
    first: &Side,
    second: &Side,
    bounds: &Bounds,
) -> Result<Option<f64>, LengthError> {
    let mut smallest_mm = 0.0_f64;
    for (edge, other) in [(first, second), (second, first)] {
        if !edge.carries() {
            continue;
        }
        if edge.reach.low() < bounds.least_engagement {
            return Ok(None);
        }
        let dry = opening.high().plus(other.reach.high())?.plus(bounds.least_engagement)?;
        smallest_mm = smallest_mm.max(dry.as_mm() / (1.0 - bounds.strain));
    }
    Ok(Some(smallest_mm))
}

/// The depth `g` of two equal grooves at which the largest panel that does not bind just bears:
/// `(L + 2 g) / (1 + e) = (H + g + m) / (1 − e)` with the smallest opening `L` and the largest `H`.
fn depth_wanted_mm(opening: Range, bounds: &Bounds) -> f64 {
    let (low_mm, high_mm) = (opening.low().as_mm(), opening.high().as_mm());
    let wanted_mm = bounds.least_engagement.as_mm();
    let (grown, shrunk) = (1.0 + bounds.strain, 1.0 - bounds.strain);
    let depth_mm = ((high_mm + wanted_mm) * grown - low_mm * shrunk) / (2.0 * shrunk - grown);
    depth_mm.max(wanted_mm)
}
