//! Sheet thicknesses: what a metric sheet is called where sheets are named in inches.
//!
//! The trade name is not the size, and not even the rounded size: 18 mm is sold as 3/4, which is 19.05 mm.

use crate::measure::{Length, LengthError};
use crate::source::Source;
use serde::Serialize;

/// A metric thickness and its trade names.
struct Thickness {
    mm: i64,
    /// The usual name, in inches.
    name: (i64, u64),
    /// Other names that it is sold under.
    also: &'static [(i64, u64)],
}

const fn thickness(mm: i64, name: (i64, u64), also: &'static [(i64, u64)]) -> Thickness {
    Thickness { mm, name, also }
}

const NAMES: &[Thickness] = &[
    thickness(3, (1, 8), &[]),
    thickness(4, (5, 32), &[(1, 8), (3, 16)]),
    thickness(6, (1, 4), &[]),
    thickness(9, (3, 8), &[(11, 32)]),
    thickness(12, (1, 2), &[(15, 32)]),
    thickness(15, (5, 8), &[(19, 32)]),
    thickness(16, (5, 8), &[]),
    thickness(18, (3, 4), &[(23, 32)]),
    thickness(19, (3, 4), &[]),
    thickness(22, (7, 8), &[]),
    thickness(25, (1, 1), &[]),
];

/// Who says what a thickness is called.
pub const NAMES_SOURCE: Source = Source::practice("names that metric sheets are sold under where inches are used");

/// Who says how far a sheet may be off its thickness and still go by its name.
pub const OFF_SOURCE: Source = Source::published(
    "US Voluntary Product Standard PS 1-19, sanded panels below 3/4 in: ±1/64 in (as reproduced by APA)",
);

/// What a thickness is sold as.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SoldAs {
    /// The metric sheet that this is, or measures like.
    pub sheet: Length,
    /// Its usual trade name, read as a length.
    pub name: Length,
    /// Other names that it is sold under.
    pub also: Vec<Length>,
    /// This thickness less the name, exactly: below zero when the sheet is thinner than it is called.
    pub difference: Length,
    /// Who says so.
    pub source: Source,
}

/// What a sheet of that thickness is sold as, if it is a usual one.
///
/// A thickness within 1/64 in (0.4 mm) of a metric sheet counts as that sheet ([`OFF_SOURCE`]), so that what a caliper
/// says of a real sheet is recognised too. The thicknesses stand at least twice that apart, so there is at most one.
///
/// # Errors
/// [`LengthError`] when the difference cannot be held.
///
/// # Example
/// ```
/// # use scantling::{measure::{Length, LengthError}, stock::sheets::sold_as};
/// let sold = sold_as(Length::mm(15, 1)?)?.expect("15 mm is a usual thickness");
/// assert_eq!(sold.name, Length::inches(5, 8)?);
/// assert_eq!(sold.difference, Length::mm(-875, 1000)?);
/// # Ok::<(), LengthError>(())
/// ```
pub fn sold_as(thickness: Length) -> Result<Option<SoldAs>, LengthError> {
    // Saves the search for all that is plainly no sheet.
    if thickness > Length::mm(26, 1)? || !thickness.is_positive() {
        return Ok(None);
    }
    let off = Length::inches(1, 64)?;
    for entry in NAMES {
        let sheet = Length::mm(entry.mm, 1)?;
        if thickness.minus(sheet)?.abs() <= off {
            let name = Length::inches(entry.name.0, entry.name.1)?;
            let also = entry.also.iter().map(|(n, d)| Length::inches(*n, *d)).collect::<Result<_, _>>()?;
            let difference = thickness.minus(name)?;
            return Ok(Some(SoldAs { sheet, name, also, difference, source: NAMES_SOURCE }));
        }
    }
    Ok(None)
}

#[cfg(test)]
mod tests {
    use super::{NAMES, sold_as};
    use crate::measure::{Length, Reading};

    #[test]
    fn names_sheets_and_measured_sheets() {
        for (reading, sheet, name, difference, source) in [
            ("15", "15 mm", "15.875 mm", "-0.875 mm", "5/8 in = 15.875 mm; 15 − 15.875"),
            ("18", "18 mm", "19.05 mm", "-1.05 mm", "3/4 in = 19.05 mm"),
            ("17.7", "18 mm", "19.05 mm", "-1.35 mm", "a birch sheet's mean; 17.7 − 19.05"),
            ("3/4 in", "19 mm", "19.05 mm", "0 mm", "0.05 mm from 19 mm"),
            ("5/8 in", "16 mm", "15.875 mm", "0 mm", "0.125 mm from 16 mm"),
            ("16", "16 mm", "15.875 mm", "0.125 mm", "16 − 15.875"),
            ("25", "25 mm", "25.4 mm", "-0.4 mm", "1 in = 25.4 mm"),
            ("4", "4 mm", "3.96875 mm", "0.03125 mm", "5/32 in = 3.96875 mm"),
        ] {
            let sold = sold_as(Reading::mm(reading).length().unwrap()).unwrap().unwrap();
            let got = [sold.sheet, sold.name, sold.difference].map(|length| length.to_string());
            assert_eq!(got, [sheet, name, difference], "{reading}; source: {source}");
        }
        for none in ["0", "-15", "1", "2", "10", "14.5", "20.5", "26", "600", "14 mm"] {
            assert_eq!(sold_as(Reading::mm(none).length().unwrap()), Ok(None), "{none}");
        }
    }

    #[test]
    fn thicknesses_stand_far_enough_apart() {
        for pair in NAMES.windows(2) {
            let apart = Length::mm(pair[1].mm - pair[0].mm, 1).unwrap();
            assert!(apart > Length::inches(2, 64).unwrap());
        }
    }
}
