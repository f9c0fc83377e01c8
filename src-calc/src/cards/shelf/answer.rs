//! What a shelf's answer holds.

use super::holds::WouldHold;
use super::inputs::Limit;
use super::notes::Note;
use crate::caution::Caution;
use crate::measure::Length;
use crate::source::Source;
use crate::stock::materials::Values;
use crate::working::Working;
use serde::Serialize;

/// A table's line, as used.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Used {
    /// The material in words; empty for one's own figures.
    pub name: &'static str,
    /// The line of its table, where it has several.
    pub label: &'static str,
    /// Which kind of values they are; none for one's own.
    pub values: Option<Values>,
    /// Modulus of elasticity, MPa.
    pub stiffness_mpa: f64,
    /// kg/m³.
    pub density_kg_m3: f64,
    /// The share by which the sag grows in the long run.
    pub creep: f64,
    /// Who says so; none for one's own.
    pub source: Option<Source>,
}

/// Which part a stress is in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PartOf {
    /// The board.
    Board,
    /// The strip.
    Strip,
}

/// A bending stress against what may stay for years.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Strength {
    /// Which part.
    pub part: PartOf,
    /// The largest stress, MPa.
    pub stress_mpa: f64,
    /// The strength, MPa, if one is published, of the kind that [`Used::values`] says.
    pub strength_mpa: Option<f64>,
    /// The safety factor on it.
    pub divisor: f64,
    /// Strength over safety factor, MPa.
    pub allowed_mpa: Option<f64>,
    /// How much of that is used, percent.
    pub used_percent: Option<f64>,
    /// Whether the stress stays within.
    pub holds: Option<bool>,
}

/// A limit, and whether the sag keeps it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Verdict {
    /// Which limit.
    pub limit: Limit,
    /// The sag that it allows, mm.
    pub allowed_mm: f64,
    /// Whether the sag on the first day keeps it.
    pub instant: bool,
    /// Whether the sag after years does.
    pub long_term: bool,
    /// Whether this is the limit that decides.
    pub chosen: bool,
}

/// A place on the shelf's deflected line.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Place {
    /// From the left support, mm.
    pub along_mm: f64,
    /// Sag on the first day, mm, down positive.
    pub instant_mm: f64,
    /// Sag after years, mm.
    pub long_term_mm: f64,
}

/// What one support carries on the first day, over the whole depth of the shelf.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Carried {
    /// From the left support, mm.
    pub along_mm: f64,
    /// Force, N; negative where the shelf would lift off.
    pub force_n: f64,
    /// The same as the mass that weighs so much, kg.
    pub mass_kg: f64,
}

/// How far it sags, whether it holds, and what would hold.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Clear span, as read.
    pub span: Length,
    /// One bay, support to support.
    pub bay: Length,
    /// Thickness, as read.
    pub thickness: Length,
    /// Depth, as read.
    pub depth: Length,
    /// Largest sag on the first day, mm. An estimate.
    pub instant_mm: f64,
    /// Largest sag after years, mm. An estimate.
    pub long_term_mm: f64,
    /// The bay over the sag on the first day: the n of L/n. Infinite where nothing weighs on it.
    pub instant_ratio: f64,
    /// The same after years.
    pub long_term_ratio: f64,
    /// Where it sags most after years, from the left support, mm.
    pub deepest_at_mm: f64,
    /// The sag on the first day with every other bay empty, mm, where there are several bays under an even load.
    pub uneven_mm: Option<f64>,
    /// The shelf's own weight with its strips, kg.
    pub own_weight_kg: f64,
    /// What stands on it, kg.
    pub load_kg: f64,
    /// The board's figures, as used.
    pub board: Used,
    /// The strip's.
    pub strip: Option<Used>,
    /// Stress against strength: the board, then the strip.
    pub strength: Vec<Strength>,
    /// Every limit, strict to lax, one's own last if it is given.
    pub verdicts: Vec<Verdict>,
    /// Whether the shelf keeps the limit that decides, and is strong enough.
    pub holds: bool,
    /// What would hold.
    pub would_hold: WouldHold,
    /// What the supports carry, left to right.
    pub supports: Vec<Carried>,
    /// The deflected line from support to support, for the picture.
    pub line: Vec<Place>,
    /// What to know about this answer.
    pub notes: Vec<Note>,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}
