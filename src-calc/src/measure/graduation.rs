//! Rounding to the marks of the tool in hand.

use super::{Length, LengthError, Ratio, Unit};
use serde::{Deserialize, Serialize};

#[cfg(test)]
mod tests;

/// The finest mark of the tool in hand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Graduation {
    /// 1/2 in
    Half,
    /// 1/4 in
    Quarter,
    /// 1/8 in
    Eighth,
    /// 1/16 in
    #[default]
    Sixteenth,
    /// 1/32 in
    ThirtySecond,
    /// 1/64 in
    SixtyFourth,
    /// 1 mm
    Mm,
    /// 0.5 mm
    HalfMm,
    /// 0.1 mm
    TenthMm,
}

/// Which mark to take.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Rounding {
    /// The nearest mark. Halfway between two it takes the one farther from zero, so a positive tie goes up.
    #[default]
    Nearest,
    /// The last mark that is not more: the part fits inside.
    NotOver,
    /// The first mark that is not less: the part covers.
    NotUnder,
}

impl Rounding {
    /// Every way.
    pub const ALL: &[Self] = &[Self::Nearest, Self::NotOver, Self::NotUnder];
}

/// A length put on a mark, and what that cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Rounded {
    /// The mark.
    pub value: Length,
    /// `value − exact`: positive when the mark is over.
    pub error: Length,
    /// Whether the length lay halfway between two marks and the nearest was asked for.
    pub tie: bool,
    /// Whose mark it is.
    pub graduation: Graduation,
}

impl Rounded {
    /// Whether the length lies on the mark.
    pub fn is_exact(&self) -> bool {
        self.error.is_zero()
    }
}

impl Graduation {
    /// Every graduation, inches first, coarse to fine.
    pub const ALL: &[Self] = &[
        Self::Half,
        Self::Quarter,
        Self::Eighth,
        Self::Sixteenth,
        Self::ThirtySecond,
        Self::SixtyFourth,
        Self::Mm,
        Self::HalfMm,
        Self::TenthMm,
    ];

    /// The unit that the marks divide.
    pub const fn unit(self) -> Unit {
        match self {
            Self::Mm | Self::HalfMm | Self::TenthMm => Unit::Mm,
            _ => Unit::In,
        }
    }

    /// Marks in one unit.
    pub const fn marks(self) -> u64 {
        match self {
            Self::Mm => 1,
            Self::Half | Self::HalfMm => 2,
            Self::Quarter => 4,
            Self::Eighth => 8,
            Self::TenthMm => 10,
            Self::Sixteenth => 16,
            Self::ThirtySecond => 32,
            Self::SixtyFourth => 64,
        }
    }

    /// From one mark to the next.
    pub fn step(self) -> Length {
        // Cannot fail: every graduation's terms are small. Zero would show at once in any test.
        Ratio::new(1, self.marks()).and_then(|part| Length::of(part, self.unit())).unwrap_or_default()
    }

    /// The length put on a mark.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] or [`LengthError::TooFine`] when the mark or the error cannot be held.
    ///
    /// # Example
    /// ```
    /// # use scantling::measure::{Graduation, Length, LengthError, Rounding, Style};
    /// let rounded = Graduation::Sixteenth.round(Length::mm(15, 1)?, Rounding::Nearest)?;
    /// assert_eq!(rounded.value.show(Style::Inches), "9/16 in");
    /// assert_eq!(rounded.error, Length::mm(-7125, 10_000)?);
    /// # Ok::<(), LengthError>(())
    /// ```
    pub fn round(self, length: Length, mode: Rounding) -> Result<Rounded, LengthError> {
        let step = self.step();
        let steps = length.ratio(step)?;
        let (below, exact) = steps.floor()?;
        let above = below.checked_add(1).ok_or(LengthError::TooLong)?;
        let twice = steps.minus(Ratio::new(below, 1)?)?.times(Ratio::whole(2))?;
        let tie = mode == Rounding::Nearest && twice == Ratio::ONE;
        let up = !exact
            && match mode {
                Rounding::NotOver => false,
                Rounding::NotUnder => true,
                Rounding::Nearest if tie => !length.is_negative(),
                Rounding::Nearest => twice > Ratio::ONE,
            };
        let value = step.times(if up { above } else { below }, 1)?;
        Ok(Rounded { value, error: value.minus(length)?, tie, graduation: self })
    }
}
