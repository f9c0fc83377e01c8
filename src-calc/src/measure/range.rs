//! A length that is known only within limits.

use super::{Length, LengthError};
use serde::Serialize;

/// A length with its `± tolerance`, carried exactly by interval arithmetic.
///
/// Every length between [`Range::low`] and [`Range::high`] is possible; the sum, difference or multiple of two ranges
/// holds every sum, difference or multiple of their lengths, and no more.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Range {
    nominal: Length,
    low: Length,
    high: Length,
    #[serde(skip)]
    tolerance: Length,
}

impl Range {
    /// A length without doubt.
    pub const fn exact(length: Length) -> Self {
        Self { nominal: length, low: length, high: length, tolerance: Length::ZERO }
    }

    /// `nominal ± tolerance`; a tolerance's sign does not matter.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] or [`LengthError::TooFine`] when an end cannot be held.
    pub fn new(nominal: Length, tolerance: Length) -> Result<Self, LengthError> {
        let tolerance = tolerance.abs();
        Ok(Self { nominal, low: nominal.minus(tolerance)?, high: nominal.plus(tolerance)?, tolerance })
    }

    /// The length that was read or meant.
    pub const fn nominal(self) -> Length {
        self.nominal
    }

    /// The least that it can be.
    pub const fn low(self) -> Length {
        self.low
    }

    /// The most that it can be.
    pub const fn high(self) -> Length {
        self.high
    }

    /// How far it can be off either way; zero or more.
    pub const fn tolerance(self) -> Length {
        self.tolerance
    }

    /// Whether there is no doubt.
    pub fn is_exact(self) -> bool {
        self.tolerance.is_zero()
    }

    /// The sum: tolerances add.
    ///
    /// # Errors
    /// As [`Range::new`].
    pub fn plus(self, other: Self) -> Result<Self, LengthError> {
        Self::new(self.nominal.plus(other.nominal)?, self.tolerance.plus(other.tolerance)?)
    }

    /// The difference: tolerances add here too.
    ///
    /// # Errors
    /// As [`Range::new`].
    pub fn minus(self, other: Self) -> Result<Self, LengthError> {
        Self::new(self.nominal.minus(other.nominal)?, self.tolerance.plus(other.tolerance)?)
    }

    /// `numerator / denominator` times this.
    ///
    /// # Errors
    /// As [`Range::new`], and [`LengthError::DividedByZero`].
    pub fn times(self, numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Self::new(self.nominal.times(numerator, denominator)?, self.tolerance.times(numerator, denominator)?)
    }
}

impl From<Length> for Range {
    fn from(length: Length) -> Self {
        Self::exact(length)
    }
}
