//! Weight and hanging: what a cabinet weighs, who lifts it, and whether its fixings hold it on the wall.
//!
//! Seen from the side, `out` runs from the wall into the room and `up` from the cabinet's bottom. All of it is an
//! estimate: forces in newtons, masses in kilograms, lengths in millimetres.

mod hold;
mod inputs;
mod lift;
mod notes;
mod pull;
mod read;
mod read_fixings;
mod steps;
#[cfg(test)]
mod tests;
mod weigh;

pub use hold::{Allowed, Each, Holds, Mark, Would};
pub use inputs::{Doors, Fixing, Grip, Hung, Inputs, Load, Rating, Weight};
pub use lift::{Crew, Lift, Tilt, TiltsUp};
pub use notes::Note;
pub use pull::Pull;
pub use weigh::{Centre, Part, Weighed, What};

use super::Card;
use crate::caution::Caution;
use crate::measure::Length;
use crate::problem::Problems;
use crate::working::Working;
use serde::Serialize;

/// Gravity, m/s².
const GRAVITY: f64 = 9.806_65;

/// What it weighs, how it is lifted, and whether it holds.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Outer height of the cabinet.
    pub height: Length,
    /// Its depth without doors.
    pub depth: Length,
    /// How far its rear edges stand off the wall.
    pub stands_off: Length,
    /// Masses and centres.
    pub weighed: Weighed,
    /// Tilting it up.
    pub tilt: Tilt,
    /// Lifting it by hand.
    pub lift: Lift,
    /// What pulls at the wall, with the doors where they pull most.
    pub pull: Pull,
    /// What one fixing may carry.
    pub allowed: Allowed,
    /// What each fixing carries.
    pub each: Each,
    /// How many fixings there are.
    pub count: u32,
    /// Whether they hold.
    pub holds: Holds,
    /// What would make it hold.
    pub would: Would,
    /// Where the fixings go, from the left end of the strip.
    pub marks: Vec<Mark>,
    /// What to know.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// What a cabinet weighs, who lifts it, and whether its fixings hold it.
///
/// # Errors
/// A [`crate::problem::Problem`] for each input that cannot be used.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = inputs.read()?;
    let weighed = weigh::weighed(&read);
    let lift = lift::lifted(&read, &weighed);
    let tilt = lift::tilted(&read);
    let pull = pull::pulled(&read, &weighed);
    let held = hold::held(&read, &pull)?;
    let working = steps::working(&read, &weighed, (&lift, &tilt), &pull, &held);
    Ok(Answer {
        height: read.height,
        depth: read.depth,
        stands_off: read.stands_off,
        tilt,
        lift,
        pull,
        notes: notes::notes(&read, &weighed, &held.allowed),
        weighed,
        allowed: held.allowed,
        each: held.each,
        count: read.count,
        holds: held.holds,
        would: held.would,
        marks: held.marks,
        working,
        cautions: vec![
            Caution::InTheWall,
            Caution::HungOnTheWall,
            Caution::HeavyLift,
            Caution::TipsOver,
            Caution::Estimate,
        ],
    })
}

/// This card for the registry.
pub const CARD: Card = Card { slug: "hanging", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
