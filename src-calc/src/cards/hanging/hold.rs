//! Whether the fixings hold, and what would.

use super::pull::Pull;
use super::read::Read;
use super::read_fixings::{Holding, Screwed};
use crate::measure::{Length, LengthError};
use crate::stock::fixings::{PERMANENT_FACTOR, Screw, THREAD_SHARE, lateral_n, ultimate_withdrawal_n, withdrawal_n};
use serde::Serialize;

/// The longest screw that is tried, and the steps to it, in millimetres.
const LONGEST_MM: f64 = 200.0;
const STEP_MM: f64 = 5.0;
/// Two screws one above the other are all that a stud takes behind a strip.
const MOST_PER_STUD: u32 = 2;
/// More fixings than anybody drives.
const MOST_FIXINGS: u32 = 1000;

/// What one fixing may carry for years.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Allowed {
    /// Pulled out of the wall, in N.
    pub pull_n: f64,
    /// Along the wall, in N.
    pub shear_n: f64,
    /// The pull at which a wood screw comes out, in N; none for what goes by its packet.
    pub comes_out_n: Option<f64>,
    /// How deep a wood screw goes into the stud, in millimetres.
    pub in_stud_mm: Option<f64>,
    /// How much of its thread holds there, in millimetres.
    pub thread_mm: Option<f64>,
}

/// What each fixing carries.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Each {
    /// Pulled out of the wall, in N.
    pub pull_n: f64,
    /// Along the wall, in N.
    pub shear_n: f64,
    /// Pull over allowed pull and shear over allowed shear, added: 1 is all that it may carry. None where it holds
    /// nothing.
    pub used: Option<f64>,
    /// The same with both squared before they are added, as a European code allows for screws; it does not decide.
    pub used_squared: Option<f64>,
}

/// Whether they hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Holds {
    /// They do.
    Yes,
    /// They carry more than they may.
    TooMuch,
    /// They would, but so few studs lie behind the strip that they do not all find one.
    TooFewStuds(u32),
    /// The screw does not reach far enough into the stud.
    NoGrip,
}

/// What would make it hold, each by itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Would {
    /// So many of the same fixings.
    pub count: Option<u32>,
    /// As many wood screws, so long, in millimetres.
    pub length_mm: Option<f64>,
    /// As many wood screws of the same length, so thick.
    pub screw: Option<Screw>,
}

/// A place along the strip.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Mark {
    /// From the left end of the strip.
    pub at: Length,
    /// How many fixings go there, one above the other.
    pub fixings: u32,
}

/// All that is known of the fixings.
pub(super) struct Held {
    pub(super) allowed: Allowed,
    pub(super) each: Each,
    pub(super) holds: Holds,
    pub(super) would: Would,
    pub(super) marks: Vec<Mark>,
}

fn screw_allows(screw: &Screwed, strip_mm: f64) -> Allowed {
    let in_stud_mm = (screw.length_mm - strip_mm - screw.lining_mm).max(0.0);
    let thread_mm = in_stud_mm.min(screw.length_mm * THREAD_SHARE);
    let (gravity, diameter) = (screw.gravity, screw.diameter_mm);
    Allowed {
        pull_n: PERMANENT_FACTOR * withdrawal_n(gravity, diameter, thread_mm),
        shear_n: PERMANENT_FACTOR * lateral_n(gravity, diameter, in_stud_mm),
        comes_out_n: Some(ultimate_withdrawal_n(gravity, diameter, thread_mm)),
        in_stud_mm: Some(in_stud_mm),
        thread_mm: Some(thread_mm),
    }
}

fn allows(holding: &Holding, strip_mm: f64) -> Allowed {
    match *holding {
        Holding::Screws(screw) => screw_allows(&screw, strip_mm),
        Holding::Packet { pull_n, shear_n } => {
            Allowed { pull_n, shear_n, comes_out_n: None, in_stud_mm: None, thread_mm: None }
        }
    }
}

fn each(pull: &Pull, count: u32, allowed: &Allowed) -> Each {
    let pull_n = pull.pull_n * pull.prying / f64::from(count);
    let shear_n = pull.weight_n / f64::from(count);
    let holds = allowed.pull_n > 0.0 && allowed.shear_n > 0.0;
    let (out, along) = (pull_n / allowed.pull_n, shear_n / allowed.shear_n);
    Each {
        pull_n,
        shear_n,
        used: holds.then_some(out + along),
        used_squared: holds.then_some(out * out + along * along),
    }
}

fn enough(pull: &Pull, count: u32, allowed: &Allowed) -> bool {
    each(pull, count, allowed).used.is_some_and(|used| used <= 1.0)
}

fn would(read: &Read, pull: &Pull, allowed: &Allowed) -> Would {
    let strip_mm = read.strip.as_mm();
    let mut would = Would {
        // Twice as many fixings carry half as much each: so many as one of them is overloaded.
        count: each(pull, 1, allowed).used.and_then(|used| (1..=MOST_FIXINGS).find(|count| used <= f64::from(*count))),
        ..Would::default()
    };
    if let Holding::Screws(screw) = read.holding {
        let holds = |other: &Screwed| enough(pull, read.count, &screw_allows(other, strip_mm));
        let first = (screw.length_mm / STEP_MM).ceil();
        let lengths = (0..=40_u32).map(|step| (first + f64::from(step)) * STEP_MM);
        would.length_mm = lengths
            .take_while(|length| *length <= LONGEST_MM)
            .find(|length| holds(&Screwed { length_mm: *length, ..screw }));
        would.screw = Screw::ALL.iter().copied().find(|gauge| {
            gauge
                .diameter_mm()
                .is_some_and(|diameter_mm| diameter_mm > screw.diameter_mm && holds(&Screwed { diameter_mm, ..screw }))
        });
    }
    would
}

/// Screws are dealt out to the studs from the left; anchors stand evenly between the first and the last place.
fn marks(read: &Read) -> Result<Vec<Mark>, LengthError> {
    let count = read.count;
    match read.holding {
        Holding::Screws(screw) => {
            let studs = screw.studs.min(count);
            (0..studs)
                .map(|stud| {
                    let at = read.first_at.plus(screw.pitch.times(stud.into(), 1)?)?;
                    let fixings = count / studs + u32::from(stud < count % studs);
                    Ok(Mark { at, fixings })
                })
                .collect()
        }
        Holding::Packet { .. } if count == 1 => Ok(vec![Mark { at: read.strip_length.times(1, 2)?, fixings: 1 }]),
        Holding::Packet { .. } => {
            let between = read.strip_length.minus(read.first_at.times(2, 1)?)?;
            let gaps = u64::from(count.saturating_sub(1));
            (0..count)
                .map(|number| Ok(Mark { at: read.first_at.plus(between.times(number.into(), gaps)?)?, fixings: 1 }))
                .collect()
        }
    }
}

/// Whether the fixings hold.
pub(super) fn held(read: &Read, pull: &Pull) -> Result<Held, LengthError> {
    let allowed = allows(&read.holding, read.strip.as_mm());
    let each = each(pull, read.count, &allowed);
    let studs = match read.holding {
        Holding::Screws(screw) => Some(screw.studs),
        Holding::Packet { .. } => None,
    };
    let holds = match (each.used, studs) {
        (None, _) => Holds::NoGrip,
        (Some(used), Some(studs)) if used <= 1.0 && read.count > studs.saturating_mul(MOST_PER_STUD) => {
            Holds::TooFewStuds(studs)
        }
        (Some(used), _) if used <= 1.0 => Holds::Yes,
        (Some(_), _) => Holds::TooMuch,
    };
    Ok(Held { allowed, each, holds, would: would(read, pull, &allowed), marks: marks(read)? })
}
