//! A length, exact.

use super::ratio::not_zero;
use super::{LengthError, Ratio, Reading, Style, Unit};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de::Error as _};
use std::cmp::Ordering;
use std::fmt;
use std::hash::{Hash, Hasher};
use std::num::NonZeroU64;

/// The greatest numerator and denominator of a length in millimetres, in lowest terms: 2⁵⁴.
///
/// Wide enough for any sheet in any graduation, and narrow enough that the same length in inches (denominator × 127)
/// or metres (× 1000) still has terms that can be written and read back exactly.
const LIMIT: u64 = 1 << 54;

/// A signed, exact length.
///
/// Held as a fraction of a millimetre, in lowest terms. An inch is exactly 127/5 mm, so both systems mix without drift,
/// and three thirds of an inch make an inch. The one way in from a float is [`Length::from_estimate_mm`].
///
/// Nothing is copied more often, so it takes two words and no more, as does an `Option` of it: the page is a twentieth
/// smaller than with a `fraction`, which can be infinite or "not a number" besides.
///
/// `Display` is exact text in millimetres that reads back to the same length; serde uses the same text.
///
/// # Example
/// ```
/// # use scantling::measure::{Length, LengthError};
/// let third = Length::inches(1, 3)?;
/// assert_eq!(third.plus(third)?.plus(third)?, Length::mm(254, 10)?);
/// assert_eq!(Length::inches(5, 8)?.to_string(), "15.875 mm");
/// # Ok::<(), LengthError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Length {
    numerator: i64,
    denominator: NonZeroU64,
}

impl Length {
    /// No length.
    pub const ZERO: Self = Self::small_mm(0, 1);

    /// `numerator / denominator` millimetres.
    ///
    /// # Errors
    /// [`LengthError::DividedByZero`]; [`LengthError::TooLong`] or [`LengthError::TooFine`] when it cannot be held.
    pub fn mm(numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Self::of(Ratio::new(numerator, denominator)?, Unit::Mm)
    }

    /// `numerator / denominator` inches.
    ///
    /// # Errors
    /// As [`Length::mm`].
    pub fn inches(numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Self::of(Ratio::new(numerator, denominator)?, Unit::In)
    }

    /// That many of a unit.
    ///
    /// # Errors
    /// As [`Length::mm`].
    pub fn of(count: Ratio, unit: Unit) -> Result<Self, LengthError> {
        Self::from_mm(unit.to_mm(count)?)
    }

    /// That many millimetres.
    pub(super) fn from_mm(mm: Ratio) -> Result<Self, LengthError> {
        if mm.denominator() > LIMIT {
            Err(LengthError::TooFine)
        } else if mm.numerator() > LIMIT {
            Err(LengthError::TooLong)
        } else {
            let length = Self::small_mm(mm.numerator(), mm.denominator());
            Ok(if mm.is_negative() { length.negated() } else { length })
        }
    }

    /// So many millimetres, in lowest terms within the limit.
    pub(super) const fn small_mm(numerator: u64, denominator: u64) -> Self {
        Self { numerator: numerator.cast_signed(), denominator: not_zero(denominator) }
    }

    /// The one door from an estimate in millimetres into lengths: rounded to a nanometre.
    ///
    /// # Errors
    /// [`LengthError::NoNumber`] for what is not a number, [`LengthError::TooLong`] past some nine kilometres.
    #[expect(clippy::float_arithmetic, clippy::cast_possible_truncation, reason = "whole and within ±2⁵³ when cast")]
    pub fn from_estimate_mm(mm: f64) -> Result<Self, LengthError> {
        const NM_PER_MM: f64 = 1_000_000.0;
        const WHOLE: f64 = 9_007_199_254_740_992.0;
        if mm.is_nan() {
            return Err(LengthError::NoNumber);
        }
        let nanometres = (mm * NM_PER_MM).round();
        if nanometres.abs() > WHOLE {
            return Err(LengthError::TooLong);
        }
        Self::mm(nanometres as i64, 1_000_000)
    }

    /// The sum.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] or [`LengthError::TooFine`] when it cannot be held.
    pub fn plus(self, other: Self) -> Result<Self, LengthError> {
        Self::from_mm(self.in_mm().plus(other.in_mm())?)
    }

    /// The difference.
    ///
    /// # Errors
    /// As [`Length::plus`].
    pub fn minus(self, other: Self) -> Result<Self, LengthError> {
        Self::from_mm(self.in_mm().minus(other.in_mm())?)
    }

    /// `numerator / denominator` times this.
    ///
    /// # Errors
    /// As [`Length::plus`], and [`LengthError::DividedByZero`].
    pub fn times(self, numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Self::from_mm(self.in_mm().times(Ratio::new(numerator, denominator)?)?)
    }

    /// How many times the other goes into this, exactly.
    ///
    /// # Errors
    /// As [`Length::plus`], and [`LengthError::DividedByZero`].
    pub fn ratio(self, other: Self) -> Result<Ratio, LengthError> {
        self.in_mm().over(other.in_mm())
    }

    /// How many whole times the other goes into this; rounded down, also below zero.
    ///
    /// # Errors
    /// As [`Length::ratio`].
    pub fn floor_div(self, other: Self) -> Result<i64, LengthError> {
        let (whole, _) = self.ratio(other)?.floor()?;
        Ok(whole)
    }

    /// Millimetres, exactly.
    pub const fn in_mm(self) -> Ratio {
        Ratio::raw(self.numerator < 0, self.numerator.unsigned_abs(), self.denominator.get())
    }

    /// Millimetres as a float, for estimates and pictures.
    pub fn as_mm(self) -> f64 {
        self.in_mm().as_f64()
    }

    /// Inches as a float, for estimates and pictures.
    #[expect(clippy::float_arithmetic, reason = "the way out of the exact world")]
    pub fn as_inches(self) -> f64 {
        self.in_mm().as_f64() / 25.4
    }

    /// Whether it is more than zero.
    pub fn is_positive(self) -> bool {
        self.numerator > 0
    }

    /// Whether it is less than zero.
    pub fn is_negative(self) -> bool {
        self.numerator < 0
    }

    /// Whether it is zero.
    pub fn is_zero(self) -> bool {
        self.numerator == 0
    }

    /// Without its sign.
    #[must_use]
    pub fn abs(self) -> Self {
        Self { numerator: self.numerator.abs(), ..self }
    }

    /// The same with the other sign.
    #[must_use]
    pub fn negated(self) -> Self {
        Self { numerator: -self.numerator, ..self }
    }
}

impl PartialOrd for Length {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Length {
    fn cmp(&self, other: &Self) -> Ordering {
        self.in_mm().cmp(&other.in_mm())
    }
}

impl Hash for Length {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.in_mm().hash(state);
    }
}

impl Default for Length {
    fn default() -> Self {
        Self::ZERO
    }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.show(Style::Mm))
    }
}

/// As exact text, `15.875 mm`.
impl Serialize for Length {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// From any text that reads as a length; a bare number is in millimetres.
impl<'de> Deserialize<'de> for Length {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let typed = String::deserialize(deserializer)?;
        Reading::mm(&typed).length().map_err(D::Error::custom)
    }
}
