//! Whole numbers for the search: every length of a job as a multiple of one small unit.

use super::JobError;
use crate::measure::{Length, LengthError};

/// No measure may have more units than this: the areas of thousands of parts are then added without a thought.
const MOST: u64 = 1 << 25;

/// No sheet is longer than this, in millimetres.
const LONGEST: u64 = 30_000;

/// Units to the millimetre where no common one is fine enough: a micrometre.
const FINE: u64 = 1_000;

/// How long a unit is.
///
/// The least common multiple of all denominators, so that every length is whole and nothing is rounded: 1/64 in and
/// millimetres meet at 1/320 mm. Only where that would be too fine, parts are rounded up and sheets down to a micrometre.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Scale {
    per_mm: u64,
}

impl Scale {
    /// The unit for these lengths, none of them below zero.
    pub(super) fn of(lengths: impl Iterator<Item = Length> + Clone) -> Result<Self, JobError> {
        let longest = lengths.clone().max().unwrap_or_default().in_mm();
        let fits = |per_mm: u64| {
            u128::from(longest.numerator()) * u128::from(per_mm) <= u128::from(MOST) * u128::from(longest.denominator())
        };
        let common = lengths.map(|length| length.in_mm().denominator()).try_fold(1_u64, |common, denominator| {
            let multiple = common.checked_mul(denominator / shared_factor(common, denominator))?;
            fits(multiple).then_some(multiple)
        });
        if longest.numerator() / longest.denominator() >= LONGEST {
            return Err(JobError::TooLong);
        }
        Ok(Self { per_mm: common.unwrap_or(FINE) })
    }

    /// Never less than the length: for parts and kerfs.
    pub(super) fn up(self, length: Length) -> i32 {
        let (numerator, denominator) = self.terms(length);
        whole(numerator.div_ceil(denominator))
    }

    /// Never more than the length: for sheets.
    pub(super) fn down(self, length: Length) -> i32 {
        let (numerator, denominator) = self.terms(length);
        whole(numerator / denominator)
    }

    fn terms(self, length: Length) -> (u128, u128) {
        let mm = length.in_mm();
        (u128::from(mm.numerator()) * u128::from(self.per_mm), u128::from(mm.denominator()))
    }

    /// So many units.
    pub(super) fn length(self, units: i32) -> Result<Length, LengthError> {
        Length::mm(units.into(), self.per_mm)
    }
}

/// [`Scale::of`] has seen to it that every length fits.
fn whole(units: u128) -> i32 {
    i32::try_from(units).unwrap_or(i32::MAX)
}

fn shared_factor(mut a: u64, mut b: u64) -> u64 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a.max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inches(n: i64, d: u64) -> Length {
        Length::inches(n, d).unwrap()
    }

    fn mm(n: i64, d: u64) -> Length {
        Length::mm(n, d).unwrap()
    }

    #[test]
    fn both_systems_meet_in_whole_units() {
        // 1/64 in = 127/320 mm; 0.1 mm = 32/320.
        let scale = Scale::of([inches(1, 64), mm(1, 10), mm(2440, 1)].into_iter()).unwrap();
        assert_eq!(scale, Scale { per_mm: 320 });
        assert_eq!((scale.up(inches(1, 64)), scale.up(mm(1, 10)), scale.down(mm(2440, 1))), (127, 32, 780_800));
        assert_eq!(scale.length(127), Ok(inches(1, 64)));
    }

    #[test]
    fn what_has_no_common_unit_is_rounded_to_the_safe_side() {
        let odd = [mm(1000, 999_983), mm(1000, 999_979), mm(2440, 1)];
        let scale = Scale::of(odd.into_iter()).unwrap();
        assert_eq!(scale, Scale { per_mm: FINE });
        assert!(scale.length(scale.up(odd[0])).unwrap() > odd[0]);
        assert!(scale.length(scale.down(odd[0])).unwrap() < odd[0]);
    }

    #[test]
    fn a_hall_is_no_sheet() {
        assert_eq!(Scale::of([mm(30_000, 1)].into_iter()), Err(JobError::TooLong));
        // The longest that is taken still fits where units are finest.
        let scale = Scale::of([mm(1000, 999_983), mm(299_999, 10)].into_iter()).unwrap();
        assert!(u64::try_from(scale.up(mm(299_999, 10))).unwrap() <= MOST);
        assert!(Scale::of(std::iter::empty()).is_ok());
    }
}
