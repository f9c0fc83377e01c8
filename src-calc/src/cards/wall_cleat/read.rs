//! From what was typed to lengths, with every problem named.

use super::inputs::{Back, Inputs};
use crate::measure::{Angle, AngleReading, Length, LengthError, Quantity};
use crate::problem::{Problem, Problems};

/// So much, in millimetres, the bottom clears a spacer by when the cabinet is lifted on. From memory.
const SPARE_MM: i64 = 2;

/// Flatter than this a strip lets go too easily, in degrees.
const LEAST_BEVEL: f64 = 30.0;
/// Steeper than this its point is too thin, in degrees.
const MOST_BEVEL: f64 = 60.0;

/// The inputs, read, and what follows from the bevel.
pub(super) struct Read {
    pub(super) thickness: Length,
    pub(super) wide: Length,
    pub(super) bevel: Angle,
    pub(super) kerf: Length,
    /// Zero where the back is flush.
    pub(super) slack: Length,
    /// `t + e`: from the wall to the back.
    pub(super) behind: Length,
    pub(super) cabinet_height: Length,
    /// What is between the sides, or the whole width where the back is flush.
    pub(super) room: Length,
    pub(super) below_top: Length,
    pub(super) top_at: Length,
    pub(super) ceiling: Option<Length>,
    pub(super) end_gap: Length,
    /// What the bevel takes of the height: `t·tan β`, to a nanometre.
    pub(super) slope: Length,
    /// `l − t·tan β`.
    pub(super) narrow: Length,
    /// `(t − e)·tan β`, to a nanometre.
    pub(super) lift: Length,
    /// How far above the bottom the spacer is, for the cabinet is lifted with the bottom under it.
    pub(super) over_bottom: Length,
}

fn bevel(problems: &mut Problems, reading: &AngleReading) -> Option<Angle> {
    let angle = problems.check("bevel", reading.angle())?;
    if angle.degrees() < LEAST_BEVEL {
        let why = "a flatter bevel lets the cabinet slip off";
        problems.add("bevel", Problem::TooSmall { least: Quantity::degrees(LEAST_BEVEL), why });
    } else if angle.degrees() > MOST_BEVEL {
        let why = "a steeper bevel ends in a point that breaks off";
        problems.add("bevel", Problem::TooLarge { most: Quantity::degrees(MOST_BEVEL), why });
    } else {
        return Some(angle);
    }
    None
}

/// A quarter of the thickness: with more slack the strips hang on their points.
fn slack(problems: &mut Problems, inputs: &Inputs, thickness: Option<Length>) -> Option<Length> {
    if inputs.back == Back::Flush {
        return Some(Length::ZERO);
    }
    let slack = problems.zero_or_more("slack", &inputs.slack)?;
    let most = problems.check("slack", thickness?.times(1, 4))?;
    if slack > most {
        let why = "with more, the strips hang on their points; this is a quarter of their thickness";
        problems.add("slack", Problem::TooLarge { most: most.into(), why });
        return None;
    }
    Some(slack)
}

/// The length that the cabinet's strip can have.
fn room(problems: &mut Problems, inputs: &Inputs) -> Option<Length> {
    let width = problems.above_zero("cabinet_width", &inputs.cabinet_width);
    if inputs.back == Back::Flush {
        return width;
    }
    let side = problems.above_zero("side", &inputs.side)?;
    let both = problems.check("side", side.times(2, 1))?;
    let width = width?;
    if width <= both {
        let why = "both sides together are that wide";
        problems.add("cabinet_width", Problem::TooSmall { least: both.into(), why });
        return None;
    }
    problems.check("cabinet_width", width.minus(both))
}

impl Inputs {
    /// Reads every field that the choice of the back calls for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let thickness = problems.above_zero("thickness", &self.thickness);
        let wide = problems.above_zero("strip_height", &self.strip_height);
        let bevel = bevel(&mut problems, &self.bevel);
        let kerf = problems.zero_or_more("kerf", &self.kerf);
        let slack = slack(&mut problems, self, thickness);
        let cabinet_height = problems.above_zero("cabinet_height", &self.cabinet_height);
        let room = room(&mut problems, self);
        let below_top = problems.zero_or_more("below_top", &self.below_top);
        let top_at = problems.above_zero("top_at", &self.top_at);
        let ceiling =
            if self.ceiling.is_blank() { Some(None) } else { problems.above_zero("ceiling", &self.ceiling).map(Some) };
        let end_gap = problems.zero_or_more("end_gap", &self.end_gap);
        let (Some(thickness), Some(wide), Some(bevel), Some(slack)) = (thickness, wide, bevel, slack) else {
            return Err(problems);
        };
        let slope = Length::from_estimate_mm(thickness.as_mm() * bevel.tan())?;
        let lift = Length::from_estimate_mm(thickness.minus(slack)?.as_mm() * bevel.tan())?;
        let over_bottom = match self.back {
            Back::Inset => lift.plus(Length::mm(SPARE_MM, 1)?)?,
            Back::Flush => Length::ZERO,
        };
        let narrow = wide.minus(slope)?;
        let behind = thickness.plus(slack)?;
        let read = || {
            Some(Read {
                thickness,
                wide,
                bevel,
                kerf: kerf?,
                slack,
                behind,
                cabinet_height: cabinet_height?,
                room: room?,
                below_top: below_top?,
                top_at: top_at?,
                ceiling: ceiling?,
                end_gap: end_gap?,
                slope,
                narrow,
                lift,
                over_bottom,
            })
        };
        let Some(read) = read() else { return Err(problems) };
        read.check_together(&mut problems)?;
        if problems.is_empty() { Ok(read) } else { Err(problems) }
    }
}

impl Read {
    /// Notes where sizes that are good by themselves do not go together.
    fn check_together(&self, problems: &mut Problems) -> Result<(), LengthError> {
        if !self.narrow.is_positive() {
            let why = "the bevel takes that much, and the strip would come to a point";
            problems.add("strip_height", Problem::TooSmall { least: self.slope.into(), why });
        }
        let stack =
            self.below_top.times(2, 1)?.plus(self.wide.times(3, 1)?)?.minus(self.lift)?.plus(self.over_bottom)?;
        if self.cabinet_height < stack {
            let why = "both strips and the spacer stand one below the other behind it";
            problems.add("cabinet_height", Problem::TooSmall { least: stack.into(), why });
        }
        if self.top_at < self.cabinet_height {
            let why = "the cabinet's own height; it would reach below the floor";
            problems.add("top_at", Problem::TooSmall { least: self.cabinet_height.into(), why });
        }
        let most = self.room.times(1, 2)?;
        if self.end_gap >= most {
            let why = "nothing would be left of the wall strip";
            problems.add("end_gap", Problem::TooLarge { most: most.into(), why });
        }
        Ok(())
    }
}
