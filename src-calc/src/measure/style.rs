//! Lengths as exact text.

use super::{Length, Ratio};
use fraction::Integer;
use serde::{Deserialize, Serialize};

/// How a length is written. Every style is exact and reads back to the same length.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Style {
    /// `2' 3 1/2"`
    FeetInches,
    /// `23 5/8 in`
    Inches,
    /// `23.625 in`
    DecimalInches,
    /// `600.075 mm`
    #[default]
    Mm,
    /// `60.0075 cm`
    Cm,
    /// `0.600075 m`
    M,
}

impl Style {
    /// Every style.
    pub const ALL: &[Self] = &[Self::FeetInches, Self::Inches, Self::DecimalInches, Self::Mm, Self::Cm, Self::M];
}

/// A length in inches, split for print: sign, whole inches, and a fraction below one in lowest terms.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct InchParts {
    /// Whether the length is below zero.
    pub negative: bool,
    /// Whole inches.
    pub whole: u64,
    /// The fraction's numerator; zero when there is none.
    pub numerator: u64,
    /// The fraction's denominator; one when there is no fraction.
    pub denominator: u64,
}

/// More decimals than this are written as a fraction.
const PLACES: u32 = 12;

impl Length {
    /// The length in inches, split for print.
    pub fn inch_parts(self) -> InchParts {
        let (whole, numerator, denominator) = self.split(5, 127);
        InchParts { negative: self.is_negative(), whole, numerator, denominator }
    }

    /// The length as exact text that reads back to the same length.
    ///
    /// What has no end as a decimal is written as a fraction: `1/3 mm`, `75/127 in`.
    ///
    /// # Example
    /// ```
    /// # use scantling::measure::{Length, LengthError, Style};
    /// let length = Length::inches(55, 2)?;
    /// assert_eq!(length.show(Style::FeetInches), "2' 3 1/2\"");
    /// assert_eq!(length.show(Style::Mm), "698.5 mm");
    /// assert_eq!(Length::mm(-1, 3)?.show(Style::Mm), "-1/3 mm");
    /// # Ok::<(), LengthError>(())
    /// ```
    pub fn show(self, style: Style) -> String {
        let minus = if self.is_negative() { "-" } else { "" };
        let (inch, m) = ((5, 127), (1, 1000));
        match style {
            Style::FeetInches => {
                let (whole, numerator, denominator) = self.split(inch.0, inch.1);
                let (feet, inches) = (whole / 12, whole % 12);
                match (feet, inches) {
                    (0, _) => format!("{minus}{}\"", mixed(inches, numerator, denominator)),
                    // A whole number of inches stands behind feet even when it is zero: 8' 0 1/16".
                    (_, 0) if numerator != 0 => format!("{minus}{feet}' 0 {numerator}/{denominator}\""),
                    _ => format!("{minus}{feet}' {}\"", mixed(inches, numerator, denominator)),
                }
            }
            Style::Inches => {
                let (whole, numerator, denominator) = self.split(inch.0, inch.1);
                format!("{minus}{} in", mixed(whole, numerator, denominator))
            }
            Style::DecimalInches => format!("{minus}{} in", decimal(self.split(inch.0, inch.1))),
            Style::Mm => format!("{minus}{} mm", decimal(self.split(1, 1))),
            Style::Cm => format!("{minus}{} cm", decimal(self.split(1, 10))),
            Style::M => format!("{minus}{} m", decimal(self.split(m.0, m.1))),
        }
    }

    /// Whole part, numerator and denominator (lowest terms) of this many millimetres times `up / down`, unsigned.
    ///
    /// Nothing is lost: a length's terms are below 2⁵⁴, so times 1000 they still fit.
    fn split(self, up: u128, down: u128) -> (u64, u64, u64) {
        let numerator = u128::from(self.in_mm().numerator()) * up;
        let denominator = u128::from(self.in_mm().denominator()) * down;
        let rest = numerator % denominator;
        let shared = rest.gcd(&denominator);
        let fits = |value| u64::try_from(value).unwrap_or(u64::MAX);
        (fits(numerator / denominator), fits(rest / shared), fits(denominator / shared))
    }
}

/// An unsigned number as exact text.
pub(super) fn decimal_of(number: Ratio) -> String {
    let (numerator, denominator) = (number.numerator(), number.denominator());
    // A ratio's denominator is never zero.
    decimal((numerator / denominator, numerator % denominator, denominator))
}

fn mixed(whole: u64, numerator: u64, denominator: u64) -> String {
    match (whole, numerator) {
        (whole, 0) => whole.to_string(),
        (0, _) => format!("{numerator}/{denominator}"),
        _ => format!("{whole} {numerator}/{denominator}"),
    }
}

/// A decimal where it ends soon enough and is short enough to be read back, else a fraction.
fn decimal((whole, numerator, denominator): (u64, u64, u64)) -> String {
    if numerator == 0 {
        return whole.to_string();
    }
    let mut ten = 1_u64;
    for places in 1..=PLACES {
        ten *= 10;
        if ten.is_multiple_of(denominator) {
            // Below `ten`, because the numerator is below the denominator.
            let digits = numerator * (ten / denominator);
            return match whole.checked_mul(ten).and_then(|shifted| shifted.checked_add(digits)) {
                Some(_) => format!("{whole}.{digits:0width$}", width = places as usize),
                None => mixed(whole, numerator, denominator),
            };
        }
    }
    mixed(whole, numerator, denominator)
}

#[cfg(test)]
mod tests {
    use super::{InchParts, Style};
    use crate::measure::{Length, Reading};

    #[test]
    fn writes_every_style() {
        // Each row by hand from 1 in = 25.4 mm.
        for (typed, want) in [
            ("27 1/2 in", ["2' 3 1/2\"", "27 1/2 in", "27.5 in", "698.5 mm", "69.85 cm", "0.6985 m"]),
            ("15 mm", ["75/127\"", "75/127 in", "75/127 in", "15 mm", "1.5 cm", "0.015 m"]),
            ("1 ft", ["1' 0\"", "12 in", "12 in", "304.8 mm", "30.48 cm", "0.3048 m"]),
            ("-1/3 in", ["-1/3\"", "-1/3 in", "-1/3 in", "-8 7/15 mm", "-127/150 cm", "-127/15000 m"]),
            ("96 1/16 in", ["8' 0 1/16\"", "96 1/16 in", "96.0625 in", "2439.9875 mm", "243.99875 cm", "2.4399875 m"]),
            ("0", ["0\"", "0 in", "0 in", "0 mm", "0 cm", "0 m"]),
        ] {
            let length = Reading::mm(typed).length().unwrap();
            let got: Vec<_> = Style::ALL.iter().map(|style| length.show(*style)).collect();
            assert_eq!(got, want, "{typed}");
        }
    }

    #[test]
    fn splits_inches_for_print() {
        let parts = |n, d| Length::inches(n, d).unwrap().inch_parts();
        let want = InchParts { negative: true, whole: 23, numerator: 5, denominator: 8 };
        assert_eq!(parts(-189, 8), want);
        assert_eq!(parts(3, 1), InchParts { negative: false, whole: 3, numerator: 0, denominator: 1 });
    }
}
