//! The passes over the saw: where the fence stands for each, and which wall of the groove it makes.

use super::{Against, Cut};
use crate::measure::{Length, LengthError, Quantity};
use crate::problem::{Problem, Problems};
use serde::Serialize;

/// More passes than anybody makes: that is work for another cutter.
const MOST_PASSES: i64 = 40;

/// Which wall of the groove a pass makes, and so which side of the kerf its fence must be right to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Wall {
    /// The wall nearer to the fence, with the near side of the blade.
    Near,
    /// The wall farther from the fence, with the far side of the blade.
    Far,
    /// Both: the groove is as wide as the kerf.
    Both,
    /// None: it clears the wood between.
    Neither,
}

/// One pass over the saw.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Pass {
    /// From the fence to the near side of the blade. Below zero the blade stands in the scrap face.
    pub near: Length,
    /// From the fence to the far side of the blade.
    pub far: Length,
    /// The wall it makes.
    pub wall: Wall,
}

/// Where the groove lies on the saw.
pub(super) struct Setting {
    pub(super) cut: Cut,
    pub(super) against: Against,
    /// From the fence to the wall nearer to it.
    pub(super) first: Length,
    pub(super) width: Length,
    pub(super) kerf: Length,
}

/// Every pass, and what the fence moves between them.
pub(super) struct Passes {
    pub(super) list: Vec<Pass>,
    pub(super) shift: Option<Length>,
    pub(super) overlap: Option<Length>,
}

impl Setting {
    /// `n = ceil(G / k)` passes, `(G − k) / (n − 1)` apart, so that the outer sides of the first and of the last kerf are
    /// the walls.
    ///
    /// # Errors
    /// A problem of the kerf: wider than the groove, or so thin that the passes are past counting.
    pub(super) fn passes(&self) -> Result<Passes, Problems> {
        let (whole, exactly) = self.width.ratio(self.kerf)?.floor()?;
        if whole > MOST_PASSES {
            let least = self.width.times(1, MOST_PASSES.unsigned_abs())?.into();
            let why = "a thinner blade would need more than 40 passes";
            return Err(Problems::one("kerf", Problem::TooSmall { least, why }));
        }
        if whole == 0 && self.cut == Cut::Groove {
            let why = "the blade takes more than the groove is wide";
            return Err(Problems::one("kerf", Problem::TooLarge { most: Quantity::from(self.width), why }));
        }
        let last = whole + i64::from(!exactly) - 1;
        let spare = self.width.minus(self.kerf)?;
        if last < 1 {
            return Ok(Passes { list: vec![self.only(spare)?], shift: None, overlap: None });
        }
        let shift = spare.times(1, last.unsigned_abs())?;
        let pass = |number: i64| {
            let wall = match number {
                0 => Wall::Near,
                _ if number == last => Wall::Far,
                _ => Wall::Neither,
            };
            self.pass(self.first.plus(shift.times(number, 1)?)?, wall)
        };
        let list = (0..=last).map(pass).collect::<Result<_, _>>()?;
        Ok(Passes { list, shift: Some(shift), overlap: Some(self.kerf.minus(shift)?) })
    }

    /// The only pass. What the blade takes beyond the width of a rabbet lies off the edge.
    fn only(&self, spare: Length) -> Result<Pass, LengthError> {
        match self.against {
            Against::NearEdge => self.pass(self.first.plus(spare)?, Wall::Both),
            Against::FarEdge => self.pass(self.first, Wall::Both),
        }
    }

    fn pass(&self, near: Length, wall: Wall) -> Result<Pass, LengthError> {
        // The edge of the part has no wall: a rabbet has only the other one.
        let wall = match (self.cut, self.against, wall) {
            (Cut::Rabbet, Against::NearEdge, Wall::Near) | (Cut::Rabbet, Against::FarEdge, Wall::Far) => Wall::Neither,
            (Cut::Rabbet, Against::NearEdge, Wall::Both) => Wall::Far,
            (Cut::Rabbet, Against::FarEdge, Wall::Both) => Wall::Near,
            (_, _, wall) => wall,
        };
        Ok(Pass { near, far: near.plus(self.kerf)?, wall })
    }
}
