//! What a clothes rail's answer holds.

use super::inputs::Brackets;
use super::notes::Note;
use super::section::Section;
use crate::cards::shelf::{Carried, Found, Place, Used, Verdict};
use crate::caution::Caution;
use crate::measure::Length;
use crate::working::Working;
use serde::Serialize;

/// The bending stress against what may stay for years.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Stress {
    /// The largest stress, MPa.
    pub stress_mpa: f64,
    /// The strength of wood, or the stress at which a metal begins to stay bent, MPa.
    pub strength_mpa: f64,
    /// The safety factor on it.
    pub divisor: f64,
    /// How much of what may stay is used, percent.
    pub used_percent: f64,
    /// Whether the stress stays within.
    pub holds: bool,
}

/// The same rail with so many brackets.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct WithBrackets {
    /// Which brackets.
    pub brackets: Brackets,
    /// Largest sag of the kind that is judged, mm. An estimate.
    pub sag_mm: f64,
    /// Whether it keeps the limit and is strong enough.
    pub holds: bool,
    /// The longest clear span from end to end, rounded down to a mark.
    pub longest_span: Found,
}

/// Blocks under the top for the brackets' feet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Blocks {
    /// How many: one for each bracket and each end.
    pub count: u64,
    /// The least thickness that gives the hooks their room; zero if the brackets reach down by themselves.
    pub least: Length,
    /// How many layers of the sheet that takes.
    pub layers: i64,
    /// Those layers together.
    pub thickness: Length,
}

/// The room that the clothes take, and what the cabinet has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Room {
    /// Between the top of the rail and what is above it.
    pub hook: Length,
    /// From the cabinet's top down to the middle of the rail.
    pub middle_down: Length,
    /// From the top of the rail to the hem.
    pub drop: Length,
    /// From the cabinet's top to the hem, with the room wanted under it.
    pub height: Length,
    /// How much higher the cabinet is; below zero where that is missing.
    pub height_spare: Length,
    /// Depth for the hangers across the rail, with room in front and behind.
    pub depth: Length,
    /// How much deeper the cabinet is; below zero where that is missing.
    pub depth_spare: Length,
    /// From the back to the middle of the rail.
    pub from_back: Length,
    /// Blocks, for a rail under the top.
    pub blocks: Option<Blocks>,
}

/// How far it sags, whether it holds, what would hold, and the room for the clothes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Clear span, as read.
    pub span: Length,
    /// One bay, support to support.
    pub bay: Length,
    /// Height of the rail, as it is hung.
    pub height: Length,
    /// Its width, front to back.
    pub width: Length,
    /// Its cross-section.
    pub section: Section,
    /// The material's figures, as used.
    pub material: Used,
    /// Largest sag on the first day, mm. An estimate.
    pub instant_mm: f64,
    /// Largest sag after years, mm. An estimate.
    pub long_term_mm: f64,
    /// The bay over the sag on the first day: the n of L/n. Infinite where nothing weighs on it.
    pub instant_ratio: f64,
    /// The same after years.
    pub long_term_ratio: f64,
    /// Where it sags most, from the left end, mm.
    pub deepest_at_mm: f64,
    /// The sag on the first day with all the clothes in every other bay, mm, where there are brackets.
    pub uneven_mm: Option<f64>,
    /// The rail's own weight, kg.
    pub own_weight_kg: f64,
    /// What hangs on it, kg.
    pub load_kg: f64,
    /// Stress against strength; none if no strength is published.
    pub stress: Option<Stress>,
    /// Every limit, strict to lax, one's own last if it is given.
    pub verdicts: Vec<Verdict>,
    /// Whether the rail keeps the limit that decides, and is strong enough.
    pub holds: bool,
    /// The same rail with no bracket, one and two.
    pub with_brackets: Vec<WithBrackets>,
    /// The fewest brackets that hold; none if two do not either.
    pub fewest: Option<Brackets>,
    /// What ends and brackets carry, left to right.
    pub supports: Vec<Carried>,
    /// The deflected line from end to end, for the picture.
    pub line: Vec<Place>,
    /// The room for the clothes.
    pub room: Room,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}
