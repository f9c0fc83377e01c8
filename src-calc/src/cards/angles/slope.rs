//! A slope from its rise and its run.

use super::Inputs;
use crate::measure::{Length, Quantity};
use crate::problem::Problems;
use crate::source::{GEOMETRY, Source};
use crate::working::Working;
use serde::Serialize;

const CUTS: Source = Source::practice(
    "plane geometry: across the piece, the plumb cut is off square by the slope and the level cut by what is left to 90°",
);

/// A slope, and the cuts at the ends of a piece that lies in it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Slope {
    /// How far it rises.
    pub rise: Length,
    /// Over which level distance.
    pub run: Length,
    /// From level, in degrees. Also the gauge, from square, for an end that is to stand plumb.
    pub degrees: f64,
    /// The gauge, from square, for an end that is to lie level, in degrees.
    pub level_cut_degrees: f64,
    /// Rise for a hundred of run.
    pub percent: f64,
    /// Along the slope, in millimetres.
    pub along_mm: f64,
}

impl Slope {
    pub(super) fn solve(inputs: &Inputs, working: &mut Working) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let rise = problems.above_zero("rise", &inputs.rise);
        let run = problems.above_zero("run", &inputs.run);
        let (Some(rise), Some(run)) = (rise, run) else { return Err(problems) };
        let (rise_mm, run_mm) = (rise.as_mm(), run.as_mm());
        let slope = Self {
            rise,
            run,
            degrees: rise_mm.atan2(run_mm).to_degrees(),
            level_cut_degrees: run_mm.atan2(rise_mm).to_degrees(),
            percent: rise_mm / run_mm * 100.0,
            along_mm: rise_mm.hypot(run_mm),
        };
        let given = [("r", Quantity::from(rise)), ("u", Quantity::from(run))];
        let angle = Quantity::degrees(slope.degrees);
        working.step("Slope, from level", "α = arctan(r / u)", given, angle, GEOMETRY);
        working.step("Rise for a hundred of run", "g = 100 × r / u", given, Quantity::percent(slope.percent), GEOMETRY);
        working.step("Along the slope", "l = √(r² + u²)", given, Quantity::mm(slope.along_mm), GEOMETRY);
        let level = Quantity::degrees(slope.level_cut_degrees);
        working.step("Gauge for the level cut", "β = 90° − α", [("α", angle)], level, CUTS);
        Ok(slope)
    }
}
