//! A quantity in the working of an answer: an exact length, or an estimate with its unit.

use super::{Angle, Graduation, Length, Rounding, Style};
use serde::{Serialize, Serializer};
use std::fmt;

/// The unit of an estimate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
pub enum Measure {
    /// Millimetres.
    #[serde(rename = "mm")]
    Mm,
    /// Kilograms.
    #[serde(rename = "kg")]
    Kg,
    /// Kilograms per metre.
    #[serde(rename = "kg/m")]
    KgPerM,
    /// Kilograms per cubic metre.
    #[serde(rename = "kg/m³")]
    KgPerM3,
    /// Square metres.
    #[serde(rename = "m²")]
    M2,
    /// Cubic metres.
    #[serde(rename = "m³")]
    M3,
    /// Litres.
    #[serde(rename = "l")]
    Litres,
    /// Board feet, of 144 cubic inches.
    #[serde(rename = "bd ft")]
    BoardFeet,
    /// Newtons.
    #[serde(rename = "N")]
    N,
    /// Newtons per millimetre.
    #[serde(rename = "N/mm")]
    NPerMm,
    /// Newton millimetres.
    #[serde(rename = "N·mm")]
    NMm,
    /// Megapascals, which are newtons per square millimetre.
    #[serde(rename = "MPa")]
    Mpa,
    /// Millimetres to the third power, as of a section modulus.
    #[serde(rename = "mm³")]
    Mm3,
    /// Millimetres to the fourth power, as of a second moment of area.
    #[serde(rename = "mm⁴")]
    Mm4,
    /// Newton square millimetres, as of a beam's stiffness.
    #[serde(rename = "N·mm²")]
    NMm2,
    /// Degrees of arc.
    #[serde(rename = "°")]
    Degrees,
    /// Per cent.
    #[serde(rename = "%")]
    Percent,
    /// A plain number.
    #[serde(rename = "")]
    Number,
    /// A whole number of things.
    #[serde(rename = "count")]
    Count,
}

impl Measure {
    /// What is written behind the number, with the space that goes before it.
    pub const fn suffix(self) -> &'static str {
        match self {
            Self::Mm => " mm",
            Self::Kg => " kg",
            Self::KgPerM => " kg/m",
            Self::KgPerM3 => " kg/m³",
            Self::M2 => " m²",
            Self::M3 => " m³",
            Self::Litres => " l",
            Self::BoardFeet => " bd ft",
            Self::N => " N",
            Self::NPerMm => " N/mm",
            Self::NMm => " N·mm",
            Self::Mpa => " MPa",
            Self::Mm3 => " mm³",
            Self::Mm4 => " mm⁴",
            Self::NMm2 => " N·mm²",
            Self::Degrees => "°",
            Self::Percent => " %",
            Self::Number | Self::Count => "",
        }
    }
}

/// A quantity in the working of an answer.
///
/// `Display` gives a length in both units, `18 mm (≈ 45/64 in)`, where `≈` marks the one that is rounded for show;
/// an estimate to three significant figures, with its unit. serde: a length as its exact text, an estimate as
/// `{ "value": 2.34, "unit": "mm" }`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Quantity {
    /// An exact length.
    Length(Length),
    /// Anything that is only estimated, or is no length.
    Estimate {
        /// How many of the unit.
        value: f64,
        /// The unit.
        unit: Measure,
    },
}

macro_rules! estimates {
    ($($(#[$doc:meta])* $name:ident: $unit:ident;)*) => {
        impl Quantity {
            $($(#[$doc])* pub const fn $name(value: f64) -> Self {
                Self::Estimate { value, unit: Measure::$unit }
            })*
        }
    };
}

estimates! {
    /// An estimate in millimetres.
    mm: Mm;
    /// A mass in kilograms.
    kg: Kg;
    /// A mass per length, in kilograms per metre.
    kg_per_m: KgPerM;
    /// A density, in kilograms per cubic metre.
    kg_per_m3: KgPerM3;
    /// An area in square metres.
    m2: M2;
    /// A volume in cubic metres.
    m3: M3;
    /// A volume in litres.
    litres: Litres;
    /// Board measure, in board feet.
    board_feet: BoardFeet;
    /// A force in newtons.
    newtons: N;
    /// A force per length, in newtons per millimetre.
    n_per_mm: NPerMm;
    /// A moment in newton millimetres.
    n_mm: NMm;
    /// A stress or modulus in megapascals.
    mpa: Mpa;
    /// A section modulus in mm³.
    mm3: Mm3;
    /// A second moment of area in mm⁴.
    mm4: Mm4;
    /// A beam's stiffness, E·I, in N·mm².
    n_mm2: NMm2;
    /// An angle in degrees.
    degrees: Degrees;
    /// A share in per cent.
    percent: Percent;
    /// A plain number.
    number: Number;
}

impl Quantity {
    /// A whole number of things.
    #[expect(clippy::cast_precision_loss, reason = "nobody counts past 2⁵³")]
    pub const fn count(value: u64) -> Self {
        Self::Estimate { value: value as f64, unit: Measure::Count }
    }
}

impl From<Length> for Quantity {
    fn from(length: Length) -> Self {
        Self::Length(length)
    }
}

impl From<Angle> for Quantity {
    fn from(angle: Angle) -> Self {
        Self::degrees(angle.degrees())
    }
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Length(length) => {
                let (mm, inches) = (shown_mm(length), shown_inches(length));
                write!(f, "{mm} ({inches})")
            }
            Self::Estimate { value, .. } if !value.is_finite() => f.write_str("no number"),
            Self::Estimate { value, unit: Measure::Count } => write!(f, "{value:.0}"),
            Self::Estimate { value, unit } => {
                write_three_figures(f, value)?;
                f.write_str(unit.suffix())
            }
        }
    }
}

/// Millimetres to three decimals, marked when that is not exact.
fn shown_mm(length: Length) -> String {
    let exact = length.show(Style::Mm);
    let thousandth = Length::mm(1, 1000).unwrap_or_default();
    let Ok(times) = length.ratio(thousandth) else { return exact };
    if times.denominator() == 1 {
        return exact;
    }
    let rounded = times.nearest().and_then(|thousandths| Length::mm(thousandths, 1000));
    rounded.map_or(exact, |rounded| format!("≈ {}", rounded.show(Style::Mm)))
}

/// Inches to the nearest 1/64, marked when that is not exact.
fn shown_inches(length: Length) -> String {
    match Graduation::SixtyFourth.round(length, Rounding::Nearest) {
        Ok(rounded) if rounded.is_exact() => rounded.value.show(Style::Inches),
        Ok(rounded) => format!("≈ {}", rounded.value.show(Style::Inches)),
        Err(_) => length.show(Style::Inches),
    }
}

/// Three significant figures, without an exponent and without closing zeros behind the point.
#[expect(
    clippy::float_arithmetic,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the exponent of a finite number is a small whole number"
)]
fn write_three_figures(f: &mut fmt::Formatter<'_>, value: f64) -> fmt::Result {
    if value == 0.0 {
        return f.write_str("0");
    }
    let exponent = value.abs().log10().floor() as i32;
    if exponent >= 2 {
        let step = 10_f64.powi(exponent - 2);
        let rounded = (value / step).round() * step;
        // The very largest would round up past all floats.
        return write!(f, "{:.0}", if rounded.is_finite() { rounded } else { value });
    }
    let places = (2 - exponent).clamp(0, 12) as usize;
    let text = format!("{value:.places$}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    f.write_str(if matches!(text, "-0" | "") { "0" } else { text })
}

impl Serialize for Quantity {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Estimate {
            value: f64,
            unit: Measure,
        }
        match *self {
            Self::Length(length) => length.serialize(serializer),
            Self::Estimate { value, unit } => Estimate { value, unit }.serialize(serializer),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Quantity;
    use crate::measure::{Angle, Length, Reading};

    #[test]
    fn shows_lengths_in_both_units() {
        for (typed, want) in [
            ("18 mm", "18 mm (≈ 45/64 in)"),
            ("3/4 in", "19.05 mm (3/4 in)"),
            ("1/64 in", "≈ 0.397 mm (1/64 in)"),
            ("1/3 mm", "≈ 0.333 mm (≈ 1/64 in)"),
            ("-18 mm", "-18 mm (≈ -45/64 in)"),
            ("0", "0 mm (0 in)"),
            ("2440", "2440 mm (≈ 96 1/16 in)"),
        ] {
            let length = Reading::mm(typed).length().unwrap();
            assert_eq!(Quantity::from(length).to_string(), want);
        }
    }

    #[test]
    fn shows_estimates_to_three_figures() {
        for (quantity, want) in [
            (Quantity::mm(2.340_864), "2.34 mm"),
            (Quantity::mm(0.005_416_09), "0.00542 mm"),
            (Quantity::n_per_mm(0.291_878), "0.292 N/mm"),
            (Quantity::mpa(6_894.757), "6890 MPa"),
            (Quantity::mpa(0.999_9), "1 MPa"),
            (Quantity::mpa(999.9), "1000 MPa"),
            (Quantity::kg(38.579), "38.6 kg"),
            (Quantity::newtons(-833.57), "-834 N"),
            (Quantity::number(0.0), "0"),
            (Quantity::number(-0.0), "0"),
            (Quantity::number(f64::NAN), "no number"),
            (Quantity::number(1e-300), "0"),
            (Quantity::count(1511), "1511"),
            (Quantity::percent(12.0), "12 %"),
            (Angle::new(45, 2).unwrap().into(), "22.5°"),
        ] {
            assert_eq!(quantity.to_string(), want);
        }
        assert_eq!(Quantity::number(f64::MAX).to_string().len(), 309, "1.8 × 10³⁰⁸ in full");
    }

    #[test]
    fn crosses_as_text_or_as_number_with_unit() {
        let json = |quantity| serde_json::to_string(&quantity).unwrap();
        assert_eq!(json(Quantity::from(Length::mm(1, 3).unwrap())), "\"1/3 mm\"");
        assert_eq!(json(Quantity::n_per_mm(0.5)), "{\"value\":0.5,\"unit\":\"N/mm\"}");
    }
}
