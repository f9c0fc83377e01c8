//! Angles: squaring up, a slope, the corners of a many-sided frame or box, a taper; and the saw's two scales for each.
//!
//! **The scales.** Both are counted from the square cut: the tilt is 0° with the blade upright, the gauge is 0° with its
//! fence square to the blade.

mod right_angle;
mod sides;
mod slope;
mod solved;
mod taper;
#[cfg(test)]
mod tests;

pub use right_angle::{Out, RightAngle, Triple};
pub use sides::Sides;
pub use slope::Slope;
pub use solved::solve;
pub use taper::Taper;

use super::Card;
use crate::caution::Caution;
use crate::measure::{AngleReading, Figure, Reading};
use crate::working::Working;
use serde::{Deserialize, Serialize};

/// What is to be set out or cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Job {
    /// A right angle, by 3-4-5 and by diagonals.
    RightAngle,
    /// A slope, from its rise and its run.
    Slope,
    /// The corners of a frame or a box of so many equal sides.
    #[default]
    Sides,
    /// A taper along a piece.
    Taper,
}

impl Job {
    /// Every job, in the order of a list.
    pub const ALL: &[Self] = &[Self::RightAngle, Self::Slope, Self::Sides, Self::Taper];
}

/// How the sides stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Stand {
    /// They lie flat, as those of a picture frame: a mitre.
    Flat,
    /// They stand upright, as those of a box or the staves of a tub: a bevel.
    Upright,
    /// They lean, as those of a tray or a hopper: a compound cut.
    #[default]
    Leaning,
}

impl Stand {
    /// Every way, in the order of a list.
    pub const ALL: &[Self] = &[Self::Flat, Self::Upright, Self::Leaning];
}

/// Which edges are tapered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Edges {
    /// One edge; the other stays as it is.
    #[default]
    One,
    /// Both, alike.
    Both,
}

impl Edges {
    /// Both ways, in the order of a list.
    pub const ALL: &[Self] = &[Self::One, Self::Both];
}

/// What the maker gives; each job reads only its own. `Default` is the seed tray of a potting shed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What is to be set out or cut.
    pub job: Job,
    /// How many equal sides: 3 to 100.
    pub sides: Figure,
    /// How the sides stand.
    pub stand: Stand,
    /// How far a leaning side leans from upright: 0 to 89°.
    pub lean: AngleReading,
    /// Length of a piece over its long edge, on its outer face.
    pub side: Reading,
    /// Width of the boards, from edge to edge.
    pub board_width: Reading,
    /// The first side of the right angle, such as the width of a carcass.
    pub width: Reading,
    /// The second one, such as its height.
    pub height: Reading,
    /// The diagonal from the bottom left to the top right; blank when not measured.
    pub first_diagonal: Reading,
    /// The diagonal from the bottom right to the top left; blank when not measured.
    pub second_diagonal: Reading,
    /// How far the slope rises.
    pub rise: Reading,
    /// Over which level distance.
    pub run: Reading,
    /// Length of the taper along the piece.
    pub taper_length: Reading,
    /// Width of the piece where the taper begins.
    pub wide: Reading,
    /// Its width where the taper ends.
    pub narrow: Reading,
    /// Which edges are tapered.
    pub edges: Edges,
    /// On a hinged jig: from the hinge to where its opening is measured.
    pub jig_arm: Reading,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            job: Job::Sides,
            sides: Figure::new("4"),
            stand: Stand::Leaning,
            lean: AngleReading::from("15"),
            side: Reading::mm("360"),
            board_width: Reading::mm("120"),
            width: Reading::mm("864"),
            height: Reading::mm("712"),
            first_diagonal: Reading::default(),
            second_diagonal: Reading::default(),
            rise: Reading::mm("150"),
            run: Reading::mm("600"),
            taper_length: Reading::mm("550"),
            wide: Reading::mm("45"),
            narrow: Reading::mm("28"),
            edges: Edges::One,
            jig_arm: Reading::mm("300"),
        }
    }
}

/// The saw's two scales, in degrees from the square cut.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Scales {
    /// How far the blade leans from upright.
    pub tilt_degrees: f64,
    /// How far the gauge is swung from square.
    pub gauge_degrees: f64,
    /// The same on a gauge that reads 90° at the square cut.
    pub gauge_from_90_degrees: f64,
}

impl Scales {
    /// Both scales.
    pub(super) fn new(tilt_degrees: f64, gauge_degrees: f64) -> Self {
        Self { tilt_degrees, gauge_degrees, gauge_from_90_degrees: 90.0 - gauge_degrees }
    }
}

/// Whether a saw can be set so, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Reach {
    /// The blade would lean more than 45°, where most saws stop.
    TiltBeyond,
    /// The gauge would swing more than 60°, where most gauges stop.
    GaugeBeyond,
    /// Within both scales.
    Within,
}

/// What the job comes to.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// A right angle.
    RightAngle(RightAngle),
    /// A slope.
    Slope(Slope),
    /// The corners of a frame or a box.
    Sides(Sides),
    /// A taper.
    Taper(Taper),
}

/// The angles, and how the saw is set.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// The saw's two scales; nothing where nothing is cut, or not along the gauge.
    pub scales: Option<Scales>,
    /// Whether a saw can be set so.
    pub reach: Reach,
    /// What the job comes to.
    pub outcome: Outcome,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// This card for the registry.
pub const CARD: Card = Card { slug: "angles", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
