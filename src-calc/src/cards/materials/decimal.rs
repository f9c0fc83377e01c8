//! A number with a fixed count of decimals: money, and quantities as they stand on a list.

use crate::measure::{LengthError, Ratio};
use serde::{Serialize, Serializer};
use std::fmt;

/// So many units of the last decimal place. `Display` and serde give `12.50`.
///
/// A list adds up when each of its amounts is rounded by itself and the total is the sum of what stands there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Decimal {
    units: u64,
    places: u32,
}

impl Decimal {
    fn scaled(value: Ratio, places: u32) -> Result<Ratio, LengthError> {
        value.times(Ratio::whole(ten_to(places)?))
    }

    fn of(units: i64, places: u32) -> Result<Self, LengthError> {
        Ok(Self { units: u64::try_from(units).map_err(|_| LengthError::NoNumber)?, places })
    }

    /// A whole number of things.
    pub const fn whole(units: u64) -> Self {
        Self { units, places: 0 }
    }

    /// To the nearest last place, halves up, as money is.
    ///
    /// # Errors
    /// [`LengthError`] when it cannot be held, and for less than zero.
    pub fn nearest(value: Ratio, places: u32) -> Result<Self, LengthError> {
        Self::of(Self::scaled(value, places)?.nearest()?, places)
    }

    /// To the next last place that is not less, as what is bought has to be.
    ///
    /// # Errors
    /// As [`Decimal::nearest`].
    pub fn not_under(value: Ratio, places: u32) -> Result<Self, LengthError> {
        let (floor, exact) = Self::scaled(value, places)?.floor()?;
        Self::of(floor.saturating_add(i64::from(!exact)), places)
    }

    /// Exactly.
    ///
    /// # Errors
    /// [`LengthError`] when it cannot be held.
    pub fn exactly(self) -> Result<Ratio, LengthError> {
        Ratio::whole(self.units).over(Ratio::whole(ten_to(self.places)?))
    }

    /// The sum of two amounts with as many decimals each.
    ///
    /// # Errors
    /// [`LengthError::TooLong`] when it cannot be held.
    pub fn plus(self, other: Self) -> Result<Self, LengthError> {
        let units = self.units.checked_add(other.units).ok_or(LengthError::TooLong)?;
        Ok(Self { units, places: self.places.max(other.places) })
    }

    /// The units of the last place.
    pub const fn units(self) -> u64 {
        self.units
    }
}

fn ten_to(places: u32) -> Result<u64, LengthError> {
    10_u64.checked_pow(places).ok_or(LengthError::TooFine)
}

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let one = ten_to(self.places).unwrap_or(1);
        let (whole, rest) = (self.units / one, self.units % one);
        let places = usize::try_from(self.places).unwrap_or(0);
        if places == 0 { write!(f, "{whole}") } else { write!(f, "{whole}.{rest:0places$}") }
    }
}

impl Serialize for Decimal {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
