//! What is written reads back, and no text of any kind panics, hangs or points outside itself.

use crate::generators::{any_length, near_reading, style, unit};
use proptest::prelude::*;
use scantling::measure::{Angle, Figure, FigureKind, Length, Quantity, ReadError, Reading, Unit};

const KINDS: [FigureKind; 9] = [
    FigureKind::Mass,
    FigureKind::MassPerLength,
    FigureKind::PricePerMetre,
    FigureKind::Stress,
    FigureKind::Force,
    FigureKind::Density,
    FigureKind::Percent,
    FigureKind::Number,
    FigureKind::Count,
];

/// An error points into the text or just behind it, and says something.
fn points_into(typed: &str, error: &ReadError) -> Result<(), TestCaseError> {
    prop_assert!(error.at() <= typed.chars().count(), "{typed:?}: {error:?}");
    prop_assert!(error.to_string().ends_with(['.', '?']), "{typed:?}: {error}");
    Ok(())
}

/// Every reader of the crate, on one text.
fn read_all(typed: &str) -> Result<(), TestCaseError> {
    for bare in [Unit::Mm, Unit::In, Unit::M] {
        let reading = Reading::new(typed, bare);
        match (reading.length(), reading.range()) {
            (Ok(length), Ok(range)) => prop_assert_eq!((length, length), (range.low(), range.high())),
            (Ok(length), Err(error)) => prop_assert!(false, "{length} is no range: {error}"),
            (Err(error), Ok(_)) => {
                let refused = matches!(error, ReadError::ToleranceNotWanted { .. });
                prop_assert!(refused, "{typed:?}: {error}");
            }
            (Err(error), Err(other)) => {
                points_into(typed, &error)?;
                points_into(typed, &other)?;
            }
        }
    }
    if let Err(error) = Angle::read(typed) {
        points_into(typed, &error)?;
    }
    for kind in KINDS {
        match Figure::new(typed).value(kind) {
            Ok(value) => prop_assert!(value.is_finite()),
            Err(error) => points_into(typed, &error)?,
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100_000))]

    /// 100,000 lengths, each in one of the six styles and read in a field of any unit.
    #[test]
    fn what_is_written_reads_back(length in any_length(), style in style(), bare in unit()) {
        let text = length.show(style);
        prop_assert_eq!(Reading::new(text.as_str(), bare).length(), Ok(length), "{} in {:?}", text, style);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4_000))]

    #[test]
    fn json_reads_back(length in any_length()) {
        let json = serde_json::to_string(&length).unwrap();
        prop_assert_eq!(serde_json::from_str::<Length>(&json).unwrap(), length);
    }

    #[test]
    fn readings_read_back(typed in ".{0,40}", bare in unit()) {
        let reading = Reading::new(typed, bare);
        let json = serde_json::to_string(&reading).unwrap();
        prop_assert_eq!(serde_json::from_str::<Reading>(&json).unwrap(), reading);
    }

    #[test]
    fn angles_read_back(n in any::<i64>(), d in 1_u64..1_000_000, n_bits in 0_u32..60) {
        let angle = Angle::new(n >> n_bits, d).unwrap();
        prop_assert_eq!(Angle::read(&angle.to_string()), Ok(angle));
    }

    #[test]
    fn any_unicode_is_read_or_refused(typed in any::<String>()) {
        read_all(&typed)?;
    }

    #[test]
    fn anything_like_a_reading_is_read_or_refused(typed in near_reading()) {
        read_all(&typed)?;
    }

    /// A sum of two readings is the sum of what each reads as, whatever their units.
    #[test]
    fn a_written_sum_is_the_sum(a in any_length(), b in any_length(), (sa, sb) in (style(), style())) {
        let typed = format!("{} + {}", a.show(sa), b.show(sb));
        match (Reading::mm(&typed).length(), a.plus(b)) {
            (Ok(got), Ok(want)) => prop_assert_eq!(got, want),
            (Ok(got), Err(_)) => prop_assert!(false, "{typed}: {got} cannot be held"),
            (Err(error), want) => prop_assert!(want.is_err() || matches!(error, ReadError::Exact { .. }), "{typed}: {error}"),
        }
    }

    #[test]
    fn quantities_have_words(length in any_length(), value in any::<f64>()) {
        let text = Quantity::from(length).to_string();
        prop_assert!(text.contains(" mm (") && text.ends_with(" in)"), "{text}");
        prop_assert!(!Quantity::mpa(value).to_string().is_empty());
    }
}
