//! Lifting the cabinet by hand, and tilting it up below a ceiling.

use super::inputs::Grip;
use super::read::{Handled, Read};
use super::weigh::Weighed;
use serde::Serialize;

/// What one person may lift under the best conditions, in kilograms.
pub(super) const LOAD_CONSTANT_KG: f64 = 23.0;
/// Of the sum of what so many people could lift each alone.
const SHARES: [f64; 3] = [1.0, 2.0 / 3.0, 0.5];

/// So many people together.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Crew {
    /// How many.
    pub people: u32,
    /// What they may lift together, in kilograms.
    pub limit_kg: f64,
    /// The carcass alone over that; above 1 the risk is raised, above 3 it is high.
    pub bare_index: f64,
    /// The whole cabinet, empty, over that.
    pub whole_index: f64,
}

/// Lifting by hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lift {
    /// What one person may lift, judged at the start of the lift, in kilograms.
    pub start_kg: f64,
    /// The same, judged at its end.
    pub end_kg: f64,
    /// The lesser of both.
    pub limit_kg: f64,
    /// One, two and three people.
    pub crews: Vec<Crew>,
    /// How many people lift the carcass alone; none where three are too few.
    pub people_bare: Option<u32>,
    /// How many lift the whole cabinet, empty.
    pub people_whole: Option<u32>,
}

/// Whether it comes up below the ceiling.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum TiltsUp {
    /// It does; so many millimetres are to spare, beyond what must stay free.
    Clears(f64),
    /// It does not; so many millimetres are missing.
    Strikes(f64),
    /// No ceiling was given.
    Unknown,
}

/// Tilting it up about a lower edge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tilt {
    /// The diagonal of its side, in millimetres.
    pub diagonal_mm: f64,
    /// How far it still leans when the diagonal stands upright, in degrees.
    pub degrees: f64,
    /// Whether it comes up.
    pub tilts_up: TiltsUp,
    /// The highest cabinet of this depth that does, in millimetres; none without a ceiling, or where none does.
    pub highest_mm: Option<f64>,
}

/// `HM = 25 / H`, H in centimetres.
pub(super) fn reach_factor(handled: &Handled) -> f64 {
    let cm = handled.hands_out_mm / 10.0;
    if cm > 63.0 { 0.0 } else { (25.0 / cm).min(1.0) }
}

/// `VM = 1 − 0.003·|V − 75|`, V in centimetres.
pub(super) fn height_factor(hands_mm: f64) -> f64 {
    let cm = hands_mm / 10.0;
    if cm > 175.0 { 0.0 } else { 1.0 - 0.003 * (cm - 75.0).abs() }
}

/// `DM = 0.82 + 4.5 / D`, D in centimetres.
pub(super) fn travel_factor(handled: &Handled) -> f64 {
    let cm = (handled.to_mm - handled.from_mm).abs() / 10.0;
    match cm {
        far if far > 175.0 => 0.0,
        near if near <= 25.0 => 1.0,
        cm => 0.82 + 4.5 / cm,
    }
}

/// `AM = 1 − 0.0032·A`, A in degrees.
pub(super) fn twist_factor(handled: &Handled) -> f64 {
    if handled.twist_degrees > 135.0 { 0.0 } else { 1.0 - 0.0032 * handled.twist_degrees }
}

/// CM: a fair grip is as good as a good one from knuckle height up.
pub(super) fn grip_factor(grip: Grip, hands_mm: f64) -> f64 {
    match grip {
        Grip::Good => 1.0,
        Grip::Fair if hands_mm >= 750.0 => 1.0,
        Grip::Fair => 0.95,
        Grip::Poor => 0.90,
    }
}

/// What one person may lift with the hands so high, in kilograms: `23·HM·VM·DM·AM·FM·CM` with FM 1, for a lift that is
/// not made again and again.
fn limit_kg(handled: &Handled, hands_mm: f64) -> f64 {
    LOAD_CONSTANT_KG
        * reach_factor(handled)
        * height_factor(hands_mm)
        * travel_factor(handled)
        * twist_factor(handled)
        * grip_factor(handled.grip, hands_mm)
}

/// Lifting it by hand.
pub(super) fn lifted(read: &Read, weighed: &Weighed) -> Lift {
    let handled = &read.handled;
    let (start_kg, end_kg) = (limit_kg(handled, handled.from_mm), limit_kg(handled, handled.to_mm));
    let one_kg = start_kg.min(end_kg);
    let crew = |(people, share): (u32, f64)| {
        let limit_kg = f64::from(people) * share * one_kg;
        Crew { people, limit_kg, bare_index: weighed.bare_kg / limit_kg, whole_index: weighed.cabinet_kg / limit_kg }
    };
    let crews: Vec<Crew> = (1..).zip(SHARES).map(crew).collect();
    let enough = |index: fn(&Crew) -> f64| crews.iter().find(|crew| index(crew) <= 1.0).map(|crew| crew.people);
    Lift {
        start_kg,
        end_kg,
        limit_kg: one_kg,
        people_bare: enough(|crew| crew.bare_index),
        people_whole: enough(|crew| crew.whole_index),
        crews,
    }
}

/// Tilting it up: the diagonal of its side passes below the ceiling.
pub(super) fn tilted(read: &Read) -> Tilt {
    let (height, depth) = (read.height.as_mm(), read.depth.as_mm());
    let diagonal_mm = height.hypot(depth);
    let room_mm = read.ceiling.map(|ceiling| ceiling.as_mm() - read.clearance.as_mm());
    let tilts_up = match room_mm.map(|room| room - diagonal_mm) {
        Some(spare) if spare >= 0.0 => TiltsUp::Clears(spare),
        Some(spare) => TiltsUp::Strikes(-spare),
        None => TiltsUp::Unknown,
    };
    let highest_mm = room_mm.filter(|room| *room > depth).map(|room| (room * room - depth * depth).sqrt());
    Tilt { diagonal_mm, degrees: depth.atan2(height).to_degrees(), tilts_up, highest_mm }
}
