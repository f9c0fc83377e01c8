//! An exact number.

use super::LengthError;
use fraction::{GenericFraction, Sign};
use std::cmp::Ordering;
use std::hash::{Hash, Hasher};
use std::num::NonZeroU64;

/// An exact, signed, plain number: how many times one length goes into another, or the number before a unit.
///
/// Invariant: in lowest terms, never minus zero. Its terms are held by themselves and not in a `fraction`, which can
/// also be infinite or "not a number": what is copied at every step stays plain. Arithmetic is checked: what cannot be
/// held is an error, in release builds too.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ratio {
    negative: bool,
    numerator: u64,
    denominator: NonZeroU64,
}

impl Ratio {
    /// Nothing.
    pub const ZERO: Self = Self::whole(0);
    /// One.
    pub const ONE: Self = Self::whole(1);

    /// A whole number.
    pub const fn whole(value: u64) -> Self {
        Self::raw(false, value, 1)
    }

    /// The number `numerator / denominator`.
    ///
    /// # Errors
    /// [`LengthError::DividedByZero`] for a denominator of zero.
    pub fn new(numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Self::lowest(numerator < 0, numerator.unsigned_abs(), denominator)
    }

    /// The same from a sign and a magnitude.
    pub(super) fn lowest(negative: bool, numerator: u64, denominator: u64) -> Result<Self, LengthError> {
        if denominator == 0 {
            return Err(LengthError::DividedByZero);
        }
        let shared = shared_factor(numerator, denominator);
        Ok(Self::raw(negative, numerator / shared, denominator / shared))
    }

    /// Takes terms that are lowest already; a zero loses its sign.
    pub(super) const fn raw(negative: bool, numerator: u64, denominator: u64) -> Self {
        Self { negative: negative && numerator != 0, numerator, denominator: not_zero(denominator) }
    }

    fn fraction(self) -> GenericFraction<u64> {
        let sign = if self.negative { Sign::Minus } else { Sign::Plus };
        GenericFraction::new_raw_signed(sign, self.numerator, self.denominator.get())
    }

    /// The numerator in lowest terms, without its sign.
    pub const fn numerator(self) -> u64 {
        self.numerator
    }

    /// The denominator in lowest terms; never zero.
    pub const fn denominator(self) -> u64 {
        self.denominator.get()
    }

    /// Whether it is less than zero.
    pub const fn is_negative(self) -> bool {
        self.negative
    }

    /// Whether it is zero.
    pub fn is_zero(self) -> bool {
        self.numerator() == 0
    }

    /// The same with the other sign.
    #[must_use]
    pub fn negated(self) -> Self {
        Self::raw(!self.is_negative(), self.numerator(), self.denominator())
    }

    /// Without its sign.
    #[must_use]
    pub fn abs(self) -> Self {
        Self::raw(false, self.numerator(), self.denominator())
    }

    /// The sum.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] or [`LengthError::TooFine`] when it cannot be held.
    pub fn plus(self, other: Self) -> Result<Self, LengthError> {
        let (d1, d2) = (self.denominator(), other.denominator());
        let shared = shared_factor(d1, d2);
        let (scale1, scale2) = (d2 / shared, d1 / shared);
        let a = u128::from(self.numerator()) * u128::from(scale1);
        let b = u128::from(other.numerator()) * u128::from(scale2);
        let (negative, sum) = if self.is_negative() == other.is_negative() {
            (self.is_negative(), a.checked_add(b).ok_or(LengthError::TooLong)?)
        } else if a >= b {
            (self.is_negative(), a - b)
        } else {
            (other.is_negative(), b - a)
        };
        if sum == 0 {
            return Ok(Self::ZERO);
        }
        // What the sum still has in common with its denominator can only come from what the denominators shared.
        let left = if shared == 1 { 1 } else { shared_factor(remainder(sum, shared), shared) };
        let denominator = scale2.checked_mul(d2 / left).ok_or(LengthError::TooFine)?;
        let sum = match u64::try_from(sum) {
            Ok(small) => small / left,
            Err(_) => u64::try_from(sum / u128::from(left)).map_err(|_| LengthError::TooLong)?,
        };
        Ok(Self::raw(negative, sum, denominator))
    }

    /// The difference.
    ///
    /// # Errors
    /// As [`Ratio::plus`].
    pub fn minus(self, other: Self) -> Result<Self, LengthError> {
        self.plus(other.negated())
    }

    /// The product.
    ///
    /// # Errors
    /// As [`Ratio::plus`].
    pub fn times(self, other: Self) -> Result<Self, LengthError> {
        if self.is_zero() || other.is_zero() {
            return Ok(Self::ZERO);
        }
        let (n1, d1, n2, d2) = (self.numerator(), self.denominator(), other.numerator(), other.denominator());
        let (g1, g2) = (shared_factor(n1, d2), shared_factor(n2, d1));
        let numerator = (n1 / g1).checked_mul(n2 / g2);
        let denominator = (d1 / g2).checked_mul(d2 / g1);
        Ok(Self::raw(
            self.is_negative() != other.is_negative(),
            numerator.ok_or(LengthError::TooLong)?,
            denominator.ok_or(LengthError::TooFine)?,
        ))
    }

    /// The quotient.
    ///
    /// # Errors
    /// As [`Ratio::plus`], and [`LengthError::DividedByZero`].
    pub fn over(self, other: Self) -> Result<Self, LengthError> {
        if other.is_zero() {
            return Err(LengthError::DividedByZero);
        }
        self.times(Self::raw(other.is_negative(), other.denominator(), other.numerator()))
    }

    /// The greatest whole number that is not more than this, and whether it is this exactly.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] past the 64-bit whole numbers.
    pub fn floor(self) -> Result<(i64, bool), LengthError> {
        let (n, d) = (self.numerator(), self.denominator());
        let exact = n % d == 0;
        let whole = i64::try_from(n / d).map_err(|_| LengthError::TooLong)?;
        // No overflow: `whole` is zero or more, so its negative less one is still in range.
        let signed = if self.is_negative() { -whole - i64::from(!exact) } else { whole };
        Ok((signed, exact))
    }

    /// The nearest whole number; halfway between two, the one farther from zero.
    ///
    /// # Errors
    /// As [`Ratio::floor`].
    pub fn nearest(self) -> Result<i64, LengthError> {
        let (n, d) = (self.numerator(), self.denominator());
        let up = u64::from(n % d >= d.div_ceil(2));
        let magnitude = (n / d).checked_add(up).and_then(|whole| i64::try_from(whole).ok());
        let magnitude = magnitude.ok_or(LengthError::TooLong)?;
        Ok(if self.is_negative() { -magnitude } else { magnitude })
    }

    /// As a float, for estimates.
    #[expect(clippy::float_arithmetic, clippy::cast_precision_loss, reason = "the way out of the exact world")]
    pub fn as_f64(self) -> f64 {
        let magnitude = self.numerator() as f64 / self.denominator() as f64;
        if self.is_negative() { -magnitude } else { magnitude }
    }
}

impl PartialOrd for Ratio {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Ratio {
    fn cmp(&self, other: &Self) -> Ordering {
        self.fraction().cmp(&other.fraction())
    }
}

impl Hash for Ratio {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.fraction().hash(state);
    }
}

/// A denominator, which is never zero.
pub(super) const fn not_zero(denominator: u64) -> NonZeroU64 {
    match NonZeroU64::new(denominator) {
        Some(denominator) => denominator,
        None => NonZeroU64::MIN,
    }
}

/// The greatest common factor, by Euclid: one of the two is nearly always small, and most often one.
pub(super) const fn shared_factor(mut a: u64, mut b: u64) -> u64 {
    if a == 1 || b == 1 {
        return 1;
    }
    while b != 0 {
        (a, b) = (b, a % b);
    }
    if a == 0 { 1 } else { a }
}

/// `value % by`, without the slow division of 128 bits where 64 do; `by` is not zero.
fn remainder(value: u128, by: u64) -> u64 {
    match u64::try_from(value) {
        Ok(small) => small % by,
        // Below `by`, so it fits.
        Err(_) => u64::try_from(value % u128::from(by)).unwrap_or(0),
    }
}
