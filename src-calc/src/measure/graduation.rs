//! Rounding to the marks of the tool in hand.

use super::{Length, LengthError, Ratio, Unit};
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;

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

    /// Millimetres from one mark to the next, in lowest terms: an inch is 127/5 of one.
    const fn step_mm(self) -> (u64, u64) {
        match self {
            Self::Half => (127, 10),
            Self::Quarter => (127, 20),
            Self::Eighth => (127, 40),
            Self::Sixteenth => (127, 80),
            Self::ThirtySecond => (127, 160),
            Self::SixtyFourth => (127, 320),
            Self::Mm => (1, 1),
            Self::HalfMm => (1, 2),
            Self::TenthMm => (1, 10),
        }
    }

    /// From one mark to the next.
    pub const fn step(self) -> Length {
        let (numerator, denominator) = self.step_mm();
        Length::small_mm(numerator, denominator)
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
        let (up, down) = self.step_mm();
        let exact = length.in_mm();
        // The length over the step is `marks + rest / below`, all without the sign.
        let above = exact.numerator().checked_mul(down).ok_or(LengthError::TooLong)?;
        let below = exact.denominator().checked_mul(up).ok_or(LengthError::TooFine)?;
        let (marks, rest) = (above / below, above % below);
        // `below − rest` cannot fall under zero, and `2 · rest` against `below` is asked without doubling.
        let half = rest.cmp(&(below - rest));
        let tie = mode == Rounding::Nearest && half == Ordering::Equal;
        let farther = match mode {
            Rounding::Nearest => half != Ordering::Less,
            Rounding::NotOver => length.is_negative() && rest != 0,
            Rounding::NotUnder => !length.is_negative() && rest != 0,
        };
        let marks = marks.checked_add(u64::from(farther)).ok_or(LengthError::TooLong)?;
        let mark = marks.checked_mul(up).ok_or(LengthError::TooLong)?;
        let value = Length::from_mm(Ratio::lowest(length.is_negative(), mark, down)?)?;
        Ok(Rounded { value, error: value.minus(length)?, tie, graduation: self })
    }
}
