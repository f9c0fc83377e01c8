use super::{Graduation, Rounding};
use crate::measure::{Length, LengthError, Reading, Style};

/// One line of the table of millimetres to the nearest fraction: mark and error in millimetres to four decimals.
type Row = (&'static str, &'static str, [(&'static str, &'static str); 4]);

/// Source of every row: nearest N in `5·x·d / 127`, error `25.4·N/d − x`, worked by script in exact fractions,
/// halves away from zero (common practice).
const ROWS: &[Row] = &[
    ("U-1", "3", [("1/8", "+0.1750"), ("1/8", "+0.1750"), ("1/8", "+0.1750"), ("1/8", "+0.1750")]),
    ("U-2", "4", [("1/8", "-0.8250"), ("3/16", "+0.7625"), ("5/32", "-0.0312"), ("5/32", "-0.0312")]),
    ("U-3", "6", [("1/4", "+0.3500"), ("1/4", "+0.3500"), ("1/4", "+0.3500"), ("15/64", "-0.0469")]),
    ("U-4", "9", [("3/8", "+0.5250"), ("3/8", "+0.5250"), ("11/32", "-0.2687"), ("23/64", "+0.1281")]),
    ("U-5", "12", [("1/2", "+0.7000"), ("1/2", "+0.7000"), ("15/32", "-0.0938"), ("15/32", "-0.0938")]),
    ("U-6", "15", [("5/8", "+0.8750"), ("9/16", "-0.7125"), ("19/32", "+0.0813"), ("19/32", "+0.0813")]),
    ("U-7", "16", [("5/8", "-0.1250"), ("5/8", "-0.1250"), ("5/8", "-0.1250"), ("5/8", "-0.1250")]),
    ("U-8", "18", [("3/4", "+1.0500"), ("11/16", "-0.5375"), ("23/32", "+0.2562"), ("45/64", "-0.1406")]),
    ("U-9", "19", [("3/4", "+0.0500"), ("3/4", "+0.0500"), ("3/4", "+0.0500"), ("3/4", "+0.0500")]),
    ("U-10", "22", [("7/8", "+0.2250"), ("7/8", "+0.2250"), ("7/8", "+0.2250"), ("55/64", "-0.1719")]),
    ("U-11", "25", [("1", "+0.4000"), ("1", "+0.4000"), ("31/32", "-0.3937"), ("63/64", "+0.0031")]),
    ("U-12", "37", [("1 1/2", "+1.1000"), ("1 7/16", "-0.4875"), ("1 15/32", "+0.3063"), ("1 29/64", "-0.0906")]),
    ("U-13", "100", [("3 7/8", "-1.5750"), ("3 15/16", "+0.0125"), ("3 15/16", "+0.0125"), ("3 15/16", "+0.0125")]),
    ("U-14", "333.3", [("13 1/8", "+0.0750"), ("13 1/8", "+0.0750"), ("13 1/8", "+0.0750"), ("13 1/8", "+0.0750")]),
    ("U-15", "720", [("28 3/8", "+0.7250"), ("28 3/8", "+0.7250"), ("28 11/32", "-0.0688"), ("28 11/32", "-0.0688")]),
    ("U-16", "1220", [("48", "-0.8000"), ("48 1/16", "+0.7875"), ("48 1/32", "-0.0063"), ("48 1/32", "-0.0063")]),
    ("U-17", "1525", [("60", "-1.0000"), ("60 1/16", "+0.5875"), ("60 1/32", "-0.2062"), ("60 3/64", "+0.1906")]),
    ("U-18", "2440", [("96 1/8", "+1.5750"), ("96 1/16", "-0.0125"), ("96 1/16", "-0.0125"), ("96 1/16", "-0.0125")]),
    ("U-19", "2500", [("98 3/8", "-1.2750"), ("98 7/16", "+0.3125"), ("98 7/16", "+0.3125"), ("98 27/64", "-0.0844")]),
];

const INCHES: [Graduation; 4] =
    [Graduation::Eighth, Graduation::Sixteenth, Graduation::ThirtySecond, Graduation::SixtyFourth];

/// Exactly, with half a unit of the fourth decimal allowed for the table's own rounding.
fn agrees(error: Length, printed: &str) -> bool {
    let printed = Reading::mm(printed).length().unwrap();
    error.minus(printed).unwrap().abs() <= Length::mm(1, 20_000).unwrap()
}

#[test]
fn rounds_as_the_table_of_fractions() {
    for (id, mm, row) in ROWS {
        let length = Reading::mm(mm).length().unwrap();
        for (graduation, (mark, error)) in INCHES.into_iter().zip(row) {
            for (length, sign) in [(length, ""), (length.negated(), "-")] {
                let rounded = graduation.round(length, Rounding::Nearest).unwrap();
                assert_eq!(rounded.value.show(Style::Inches), format!("{sign}{mark} in"), "{id} {graduation:?}");
                let error_up = if sign.is_empty() { rounded.error } else { rounded.error.negated() };
                assert!(agrees(error_up, error), "{id} {graduation:?}: {} against {error}", rounded.error);
                assert!(!rounded.tie, "{id}: three decimals or fewer never tie");
            }
        }
    }
}

#[test]
fn ties_go_away_from_zero_and_say_so() {
    for (id, mm, graduation, mark) in [
        ("U-T1", "3.96875", Graduation::Sixteenth, "3/16"),
        ("U-T2", "2.38125", Graduation::Sixteenth, "1/8"),
        ("U-T3", "5.55625", Graduation::Sixteenth, "1/4"),
        ("U-T4", "0.396875", Graduation::ThirtySecond, "1/32"),
        ("U-T5", "1.190625", Graduation::ThirtySecond, "1/16"),
        ("U-T6", "1.5875", Graduation::Eighth, "1/8"),
        ("U-T7", "0.1984375", Graduation::SixtyFourth, "1/64"),
    ] {
        let length = Reading::mm(mm).length().unwrap();
        let rounded = graduation.round(length, Rounding::Nearest).unwrap();
        assert_eq!(rounded.value.show(Style::Inches), format!("{mark} in"), "{id}");
        assert!(rounded.tie && rounded.error.is_positive(), "{id}");
        let mirrored = graduation.round(length.negated(), Rounding::Nearest).unwrap();
        assert_eq!(mirrored.value, rounded.value.negated(), "{id}");
        assert!(mirrored.tie, "{id}");
        let below = graduation.round(length, Rounding::NotOver).unwrap();
        assert!(!below.tie && below.value < length, "{id}: a tie is nothing to say when the side was asked for");
    }
}

#[test]
fn rounds_feet_and_metres() {
    // Handbook 1.2, worked by hand: 96 1/16 in = 8 ft 0 1/16 in; 78 1/2 in = 6 ft 6 1/2 in.
    for (mm, want) in [(2440, "8' 0 1/16\""), (1994, "6' 6 1/2\""), (0, "0\"")] {
        let rounded = Graduation::Sixteenth.round(Length::mm(mm, 1).unwrap(), Rounding::Nearest).unwrap();
        assert_eq!(rounded.value.show(Style::FeetInches), want);
    }
}

#[test]
fn keeps_to_the_side_that_was_asked_for() {
    // 18 mm lies between 11/16 in (17.4625 mm) and 3/4 in (19.05 mm); −18 mm between their mirrors.
    let rows = [
        (18, Rounding::NotOver, "11/16 in"),
        (18, Rounding::NotUnder, "3/4 in"),
        (18, Rounding::Nearest, "11/16 in"),
        (-18, Rounding::NotOver, "-3/4 in"),
        (-18, Rounding::NotUnder, "-11/16 in"),
        (-18, Rounding::Nearest, "-11/16 in"),
    ];
    for (mm, mode, want) in rows {
        let rounded = Graduation::Sixteenth.round(Length::mm(mm, 1).unwrap(), mode).unwrap();
        assert_eq!(rounded.value.show(Style::Inches), want, "{mm} {mode:?}");
    }
    for mode in Rounding::ALL {
        let rounded = Graduation::Half.round(Length::inches(5, 2).unwrap(), *mode).unwrap();
        assert!(rounded.is_exact() && !rounded.tie, "63.5 mm is 2 1/2 in exactly");
    }
}

#[test]
fn steps_are_those_of_the_tool() {
    let steps = [(1, 2), (1, 4), (1, 8), (1, 16), (1, 32), (1, 64)].map(|(n, d)| Length::inches(n, d).unwrap());
    let metric = [(1, 1), (1, 2), (1, 10)].map(|(n, d)| Length::mm(n, d).unwrap());
    let all: Vec<_> = Graduation::ALL.iter().map(|graduation| graduation.step()).collect();
    assert_eq!(all, [steps.as_slice(), metric.as_slice()].concat());
}

#[test]
fn refuses_what_cannot_be_held() {
    let longest = Length::mm(1 << 54, 1).unwrap();
    assert_eq!(longest.plus(Length::mm(1, 1).unwrap()), Err(LengthError::TooLong));
    for graduation in Graduation::ALL {
        for mode in Rounding::ALL {
            for length in [longest, longest.negated(), Length::mm(1, 1 << 54).unwrap()] {
                // A value or an error, and no panic; a value keeps within one step.
                if let Ok(rounded) = graduation.round(length, *mode) {
                    assert!(rounded.error.abs() < graduation.step(), "{graduation:?} {mode:?}");
                }
            }
        }
    }
}
