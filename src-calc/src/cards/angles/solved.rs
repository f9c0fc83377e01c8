//! From what the maker gives to the job's own file, and what all jobs share.

use super::{Answer, Inputs, Job, Outcome, Reach, RightAngle, Scales, Sides, Slope, Taper};
use crate::caution::Caution;
use crate::measure::Length;
use crate::problem::Problems;
use crate::working::Working;

/// Most saws lean no further, in degrees.
const MOST_TILT: f64 = 45.0;
/// Most gauges swing no further, in degrees.
const MOST_GAUGE: f64 = 60.0;
/// A millionth of a degree: 45° worked out by way of a sine is still 45°.
const ROUNDING_DEGREES: f64 = 1e-6;
/// A part shorter than this is held by something else than a hand, in millimetres.
const SMALL_MM: f64 = 300.0;

/// The angles, and how the saw is set.
///
/// # Errors
/// A problem for each input of the job that cannot be used: unreadable, at or below zero, fewer than three sides, a
/// side that comes to a point, diagonals that no such frame has, a taper that grows wider.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let mut working = Working::default();
    let (outcome, scales) = match inputs.job {
        Job::RightAngle => (Outcome::RightAngle(RightAngle::solve(inputs, &mut working)?), None),
        Job::Slope => {
            let slope = Slope::solve(inputs, &mut working)?;
            (Outcome::Slope(slope), Some(Scales::new(0.0, slope.degrees)))
        }
        Job::Sides => {
            let sides = Sides::solve(inputs, &mut working)?;
            (Outcome::Sides(sides), Some(Scales::new(sides.tilt_degrees, sides.gauge_degrees)))
        }
        Job::Taper => (Outcome::Taper(Taper::solve(inputs, &mut working)?), None),
    };
    let reach = match scales {
        Some(scales) if scales.tilt_degrees > MOST_TILT + ROUNDING_DEGREES => Reach::TiltBeyond,
        Some(scales) if scales.gauge_degrees > MOST_GAUGE + ROUNDING_DEGREES => Reach::GaugeBeyond,
        _ => Reach::Within,
    };
    let cautions = cautions(&outcome);
    Ok(Answer { scales, reach, outcome, working, cautions })
}

fn cautions(outcome: &Outcome) -> Vec<Caution> {
    let small = |length: Length| length.as_mm() < SMALL_MM;
    let (tilted, angled, tapered, small) = match outcome {
        Outcome::RightAngle(_) => return Vec::new(),
        Outcome::Slope(_) => (false, true, false, false),
        Outcome::Sides(sides) => (sides.tilt_degrees > 0.0, true, false, small(sides.long)),
        Outcome::Taper(taper) => (false, false, true, small(taper.length)),
    };
    let applies = [
        (angled, Caution::AngledCut),
        (tilted, Caution::BevelRip),
        (tapered, Caution::TaperCut),
        (small, Caution::SmallPartAtSaw),
        (true, Caution::DustAndNoise),
    ];
    applies.into_iter().filter_map(|(applies, caution)| applies.then_some(caution)).collect()
}
