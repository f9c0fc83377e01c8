//! From what was typed to numbers: the strip's fixings and what they hold in.

use super::inputs::{Fixing, Hung, Inputs, Rating};
use super::read::{below, positive};
use crate::measure::{FigureKind, Length, LengthError, Quantity};
use crate::problem::{Problem, Problems};
use crate::stock::fixings::{Screw, Stud};

/// More studs behind one strip than this: the distance between them is a slip of the finger.
const MOST_STUDS: i64 = 50;
/// A stud nearer to the end of the strip than this is not counted: a screw there splits it.
const END_MM: i64 = 20;

/// Wood screws in studs.
#[derive(Clone, Copy)]
pub(super) struct Screwed {
    pub(super) gravity: f64,
    pub(super) diameter_mm: f64,
    pub(super) length_mm: f64,
    /// What lies on the stud.
    pub(super) lining_mm: f64,
    pub(super) pitch: Length,
    /// How many studs lie behind the strip.
    pub(super) studs: u32,
}

/// What holds on the wall.
#[derive(Clone, Copy)]
pub(super) enum Holding {
    /// Wood screws in studs.
    Screws(Screwed),
    /// The packet's ratings, in N, already divided.
    Packet { pull_n: f64, shear_n: f64 },
}

impl Inputs {
    /// The height of the strip and of its fixings; neither matters to a rail.
    pub(super) fn strip_fixings(&self, problems: &mut Problems) -> (Option<Length>, Option<Length>) {
        if self.hung == Hung::Rail {
            return (Some(Length::ZERO), Some(Length::ZERO));
        }
        let height = problems.above_zero("strip_height", &self.strip_height);
        let up = problems.above_zero("fixings_up", &self.fixings_up);
        if let (Some(height), Some(up)) = (height, up)
            && up > height
        {
            let why = "the strip is only that high";
            problems.add("fixings_up", Problem::TooLarge { most: height.into(), why });
        }
        (height, up)
    }

    /// What holds on the wall.
    pub(super) fn holding(
        &self,
        problems: &mut Problems,
        strip_length: Option<Length>,
        first_at: Option<Length>,
    ) -> Option<Holding> {
        match self.fixing {
            Fixing::WoodScrew => self.screwed(problems, strip_length, first_at).map(Holding::Screws),
            Fixing::Anchor => {
                let half = strip_length.and_then(|length| length.times(1, 2).ok());
                below(problems, "first_at", (first_at, half), "the last one sits as far from the other end");
                let pull = positive(problems, "pull_rating", &self.pull_rating, FigureKind::Force);
                let shear = positive(problems, "shear_rating", &self.shear_rating, FigureKind::Force);
                let factor = match self.rating {
                    Rating::Allowed => Some(1.0),
                    Rating::Failure => self.factor(problems),
                };
                Some(Holding::Packet { pull_n: pull? / factor?, shear_n: shear? / factor? })
            }
        }
    }

    fn factor(&self, problems: &mut Problems) -> Option<f64> {
        let factor = problems.check("factor", self.factor.value(FigureKind::Number))?;
        if factor < 1.0 {
            let why = "a load at which it fails must be divided; 4 is usual";
            problems.add("factor", Problem::TooSmall { least: Quantity::number(1.0), why });
        }
        Some(factor)
    }

    fn gravity(&self, problems: &mut Problems) -> Option<f64> {
        if self.stud != Stud::Own {
            return self.stud.gravity();
        }
        let gravity = positive(problems, "own_gravity", &self.own_gravity, FigureKind::Number)?;
        if gravity > 1.2 {
            let why = "woods have 0.3 to 0.9 of the weight of water";
            problems.add("own_gravity", Problem::TooLarge { most: Quantity::number(1.2), why });
        }
        Some(gravity)
    }

    fn screwed(
        &self,
        problems: &mut Problems,
        strip_length: Option<Length>,
        first_at: Option<Length>,
    ) -> Option<Screwed> {
        let pitch = problems.above_zero("stud_pitch", &self.stud_pitch);
        let gravity = self.gravity(problems);
        let lining = problems.zero_or_more("lining", &self.lining);
        let diameter_mm = match self.screw {
            Screw::Own => problems.above_zero("own_diameter", &self.own_diameter).map(Length::as_mm),
            screw => screw.diameter_mm(),
        };
        let length = problems.above_zero("screw_length", &self.screw_length);
        let pitch = pitch?;
        let studs = problems.check("stud_pitch", studs(strip_length?, first_at?, pitch))?;
        if studs > MOST_STUDS {
            let why = "That is more than 50 studs behind one strip. Check the distance between them.";
            problems.add("stud_pitch", Problem::Clash { why });
        }
        Some(Screwed {
            gravity: gravity?,
            diameter_mm: diameter_mm?,
            length_mm: length?.as_mm(),
            lining_mm: lining?.as_mm(),
            pitch,
            studs: u32::try_from(studs).unwrap_or_default(),
        })
    }
}

/// How many studs lie behind the strip from the first one on.
fn studs(strip_length: Length, first_at: Length, pitch: Length) -> Result<i64, LengthError> {
    let room = strip_length.minus(first_at)?.minus(Length::mm(END_MM, 1)?)?;
    if room.is_negative() { Ok(0) } else { Ok(room.floor_div(pitch)?.saturating_add(1)) }
}
