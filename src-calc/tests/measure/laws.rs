//! Arithmetic and rounding against `num-rational` over integers without bounds, which shares no code with ours.

use crate::generators::{any_length, graduation, rounding, shop_length};
use num_bigint::BigInt;
use num_rational::BigRational;
use proptest::prelude::*;
use scantling::measure::{Graduation, Length, LengthError, Range, Rounding};

/// The same number, without bounds.
fn big(length: Length) -> BigRational {
    let mm = length.in_mm();
    let magnitude = BigRational::new(BigInt::from(mm.numerator()), BigInt::from(mm.denominator()));
    if mm.is_negative() { -magnitude } else { magnitude }
}

fn whole(value: i64) -> BigRational {
    BigRational::from_integer(BigInt::from(value))
}

/// The greatest numerator and denominator of a length.
fn limit() -> BigInt {
    BigInt::from(1_u64 << 54)
}

/// Right, or refused for the one good reason: the true result cannot be held.
fn held(got: Result<Length, LengthError>, want: &BigRational) -> Result<(), TestCaseError> {
    match got {
        Ok(length) => prop_assert_eq!(&big(length), want),
        Err(_) => prop_assert!(
            want.numer().magnitude() > limit().magnitude() || want.denom() > &limit(),
            "{} could have been held",
            want
        ),
    }
    Ok(())
}

fn step(graduation: Graduation) -> BigRational {
    let (mm, marks) = match graduation {
        Graduation::Half => (254, 20),
        Graduation::Quarter => (254, 40),
        Graduation::Eighth => (254, 80),
        Graduation::Sixteenth => (254, 160),
        Graduation::ThirtySecond => (254, 320),
        Graduation::SixtyFourth => (254, 640),
        Graduation::Mm => (1, 1),
        Graduation::HalfMm => (1, 2),
        Graduation::TenthMm => (1, 10),
    };
    BigRational::new(BigInt::from(mm), BigInt::from(marks))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(5_000))]

    #[test]
    fn sums_and_differences_are_exact(a in any_length(), b in any_length()) {
        held(a.plus(b), &(big(a) + big(b)))?;
        held(a.minus(b), &(big(a) - big(b)))?;
        prop_assert_eq!(a.plus(b), b.plus(a));
        prop_assert_eq!(a.minus(a), Ok(Length::ZERO));
        prop_assert_eq!(a.cmp(&b), big(a).cmp(&big(b)));
    }

    #[test]
    fn multiples_are_exact(a in any_length(), n in any::<i64>(), d in any::<u64>(), n_bits in 0_u32..64, d_bits in 0_u32..64) {
        let (n, d) = (n >> n_bits.min(63), d >> d_bits);
        if d == 0 {
            prop_assert_eq!(a.times(n, d), Err(LengthError::DividedByZero));
        } else {
            held(a.times(n, d), &(big(a) * BigRational::new(BigInt::from(n), BigInt::from(d))))?;
        }
    }

    #[test]
    fn quotients_are_exact(a in shop_length(), b in shop_length()) {
        if b.is_zero() {
            prop_assert_eq!(a.ratio(b), Err(LengthError::DividedByZero));
            prop_assert_eq!(a.floor_div(b), Err(LengthError::DividedByZero));
        } else {
            let want = big(a) / big(b);
            let got = a.ratio(b).unwrap();
            let magnitude = BigRational::new(BigInt::from(got.numerator()), BigInt::from(got.denominator()));
            prop_assert_eq!(if got.is_negative() { -magnitude } else { magnitude }, want.clone());
            prop_assert_eq!(whole(a.floor_div(b).unwrap()), want.floor());
            prop_assert_eq!(whole(got.nearest().unwrap()), want.round());
        }
    }

    #[test]
    fn sums_associate(a in shop_length(), b in shop_length(), c in shop_length()) {
        prop_assert_eq!(a.plus(b).and_then(|sum| sum.plus(c)), b.plus(c).and_then(|sum| a.plus(sum)));
    }

    #[test]
    fn rounds_to_the_right_mark(length in any_length(), graduation in graduation(), mode in rounding()) {
        let step = step(graduation);
        let steps = big(length) / &step;
        // `round` of num-rational takes halves away from zero, as ours.
        let want = &step * match mode {
            Rounding::Nearest => steps.round(),
            Rounding::NotOver => steps.floor(),
            Rounding::NotUnder => steps.ceil(),
        };
        match graduation.round(length, mode) {
            Ok(rounded) => {
                prop_assert_eq!(big(rounded.value), want.clone());
                prop_assert_eq!(big(rounded.error), want - big(length));
                let half = (&steps + &steps).is_integer() && !steps.is_integer();
                prop_assert_eq!(rounded.tie, half && mode == Rounding::Nearest);
            }
            Err(_) => {
                let error = &want - big(length);
                let too_much = |value: &BigRational| {
                    value.numer().magnitude() > limit().magnitude() || value.denom() > &limit()
                };
                // A mark is found through the count of steps, which has 64 bits at most.
                let past = |value: &BigRational| value.numer().bits() > 62 || value.denom().bits() > 62;
                prop_assert!(too_much(&want) || too_much(&error) || past(&steps), "{} could have been held", want);
            }
        }
    }

    #[test]
    fn inch_parts_are_exact(length in any_length()) {
        let parts = length.inch_parts();
        prop_assert!(parts.numerator < parts.denominator);
        let fraction = BigRational::new(BigInt::from(parts.numerator), BigInt::from(parts.denominator));
        prop_assert_eq!(fraction.denom(), &BigInt::from(parts.denominator), "lowest terms");
        let inches = BigRational::from_integer(BigInt::from(parts.whole)) + fraction;
        let inches = if parts.negative { -inches } else { inches };
        prop_assert_eq!(inches * BigRational::new(BigInt::from(127), BigInt::from(5)), big(length));
    }

    #[test]
    fn estimates_come_in_to_a_nanometre(mm in prop_oneof![-1e7..1e7_f64, any::<f64>()]) {
        match Length::from_estimate_mm(mm) {
            // Half a nanometre, and the last bit of the float.
            Ok(length) => prop_assert!((length.as_mm() - mm).abs() <= 0.500_001e-6 + mm.abs() * 4.0 * f64::EPSILON),
            Err(error) => prop_assert!(mm.is_nan() || mm.abs() >= 9.0e9, "{mm}: {error}"),
        }
    }

    /// Whatever the true lengths within their ranges, the result lies within the result's range, and its ends are reached.
    #[test]
    fn ranges_hold_every_combination(
        (a, ta) in (shop_length(), shop_length()),
        (b, tb) in (shop_length(), shop_length()),
        (n, d) in (-1000_i64..1000, 1_u64..100),
    ) {
        let (x, y) = (Range::new(a, ta).unwrap(), Range::new(b, tb).unwrap());
        prop_assert!(x.low() <= x.nominal() && x.nominal() <= x.high());
        let ends = |range: Range| [range.low(), range.nominal(), range.high()].map(big);
        let results = [
            (x.plus(y).unwrap(), combined(&ends(x), &ends(y), |p, q| p + q)),
            (x.minus(y).unwrap(), combined(&ends(x), &ends(y), |p, q| p - q)),
            (
                x.times(n, d).unwrap(),
                combined(&ends(x), &[BigRational::new(BigInt::from(n), BigInt::from(d))], |p, q| p * q),
            ),
        ];
        for (range, all) in results {
            prop_assert_eq!(Some(&big(range.low())), all.iter().min());
            prop_assert_eq!(Some(&big(range.high())), all.iter().max());
            prop_assert!(all.contains(&big(range.nominal())));
        }
    }
}

fn combined(
    left: &[BigRational],
    right: &[BigRational],
    with: impl Fn(&BigRational, &BigRational) -> BigRational,
) -> Vec<BigRational> {
    left.iter().flat_map(|p| right.iter().map(|q| with(p, q)).collect::<Vec<_>>()).collect()
}
