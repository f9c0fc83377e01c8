//! Figures that are no lengths: a mass, a stress, a percentage.

use super::reading::{Kind, Parser, Token};
use super::unit::Unit;
use super::{Ratio, ReadError};
use serde::{Deserialize, Deserializer, Serialize, de};
use std::fmt;

/// What a figure measures, and so in which unit its value is given and which units are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FigureKind {
    /// Kilograms; g, lb and oz are read.
    Mass,
    /// Kilograms per metre; lb/ft is read.
    MassPerLength,
    /// Megapascals (N/mm²); GPa, psi and million psi are read.
    Stress,
    /// Newtons; kN is read, and so are kg and lb, as the weight of such a mass.
    Force,
    /// Kilograms per cubic metre; lb/ft³ is read.
    Density,
    /// Litres; ml, US and imperial gallons, US quarts are read.
    Volume,
    /// Square metres a litre covers; ft²/US gal is read.
    Coverage,
    /// Grams spread on a square metre; lb/1000 ft² is read.
    Spread,
    /// Money for a metre; for a foot is read.
    PricePerMetre,
    /// Per cent.
    Percent,
    /// Degrees Celsius; °F is read.
    Temperature,
    /// A plain number.
    Number,
    /// A whole number, zero or more.
    Count,
}

impl FigureKind {
    /// The unit of the value, as written behind it; nothing for plain numbers.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Mass => "kg",
            Self::MassPerLength => "kg/m",
            Self::Stress => "MPa",
            Self::Force => "N",
            Self::Density => "kg/m³",
            Self::Volume => "l",
            Self::Coverage => "m²/l",
            Self::Spread => "g/m²",
            Self::PricePerMetre => "/m",
            Self::Percent => "%",
            Self::Temperature => "°C",
            Self::Number | Self::Count => "",
        }
    }

    /// Every unit that is read, without spaces and in lower case, and how many of the value's unit it is, exactly.
    ///
    /// From the pound of 0.453 592 37 kg, the inch of 25.4 mm (agreement of 1959) and gravity of 9.806 65 m/s²; the US
    /// gallon is 231 in³, the imperial one 4.546 09 l.
    const fn units(self) -> &'static [(&'static str, u64, u64)] {
        match self {
            Self::Mass => &[
                ("kg", 1, 1),
                ("g", 1, 1000),
                ("lb", 45_359_237, 100_000_000),
                ("lbs", 45_359_237, 100_000_000),
                ("oz", 45_359_237, 1_600_000_000),
            ],
            Self::MassPerLength => &[("kg/m", 1, 1), ("lb/ft", 45_359_237, 30_480_000)],
            Self::Stress => &[
                ("mpa", 1, 1),
                ("n/mm2", 1, 1),
                ("n/mm²", 1, 1),
                ("gpa", 1000, 1),
                ("psi", 8_896_443_230_521, 1_290_320_000_000_000),
                ("ksi", 8_896_443_230_521, 1_290_320_000_000),
                ("mpsi", 8_896_443_230_521, 1_290_320_000),
            ],
            Self::Force => &[
                ("n", 1, 1),
                ("kn", 1000, 1),
                ("kg", 980_665, 100_000),
                ("kgf", 980_665, 100_000),
                ("lb", 8_896_443_230_521, 2_000_000_000_000),
                ("lbs", 8_896_443_230_521, 2_000_000_000_000),
                ("lbf", 8_896_443_230_521, 2_000_000_000_000),
            ],
            Self::Density => &[
                ("kg/m3", 1, 1),
                ("kg/m³", 1, 1),
                ("lb/ft3", 28_349_523_125, 1_769_802_912),
                ("lb/ft³", 28_349_523_125, 1_769_802_912),
                ("g/cm3", 1000, 1),
                ("g/cm³", 1000, 1),
            ],
            Self::Volume => &[
                ("l", 1, 1),
                ("ml", 1, 1000),
                ("usgal", 473_176_473, 125_000_000),
                ("usqt", 473_176_473, 500_000_000),
                ("impgal", 454_609, 100_000),
            ],
            Self::Coverage => &[
                ("m2/l", 1, 1),
                ("m²/l", 1, 1),
                ("ft2/usgal", 92_903_040, 3_785_411_784),
                ("ft²/usgal", 92_903_040, 3_785_411_784),
            ],
            Self::Spread => &[
                ("g/m2", 1, 1),
                ("g/m²", 1, 1),
                ("lb/1000ft2", 45_359_237, 9_290_304),
                ("lb/1000ft²", 45_359_237, 9_290_304),
            ],
            Self::PricePerMetre => &[("/m", 1, 1), ("/ft", 10_000, 3_048)],
            Self::Percent => &[("%", 1, 1)],
            Self::Temperature => &[("°c", 1, 1), ("c", 1, 1), ("°f", 5, 9), ("f", 5, 9)],
            Self::Number | Self::Count => &[],
        }
    }

    /// A sentence: which units are read.
    const fn accepted(self) -> &'static str {
        match self {
            Self::Mass => "kg, g, lb and oz are.",
            Self::MassPerLength => "kg/m and lb/ft are.",
            Self::Stress => "MPa, N/mm², GPa, psi, ksi and Mpsi are.",
            Self::Force => "N, kN, kg and lb are.",
            Self::Density => "kg/m³, g/cm³ and lb/ft³ are.",
            Self::Volume => "l, ml, US gal, US qt and imp gal are.",
            Self::Coverage => "m²/l and ft²/US gal are.",
            Self::Spread => "g/m² and lb/1000 ft² are.",
            Self::PricePerMetre => "/m and /ft are.",
            Self::Percent => "% is.",
            Self::Temperature => "°C and °F are.",
            Self::Number | Self::Count => "This is a plain number.",
        }
    }
}

/// A figure as typed. serde: the text; a plain JSON number is read too.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(transparent)]
pub struct Figure(String);

impl Figure {
    /// A figure as typed.
    pub fn new(typed: impl Into<String>) -> Self {
        Self(typed.into())
    }

    /// The text as typed.
    pub fn typed(&self) -> &str {
        &self.0
    }

    /// Whether nothing but spaces was typed.
    pub fn is_blank(&self) -> bool {
        super::reading::is_blank(&self.0)
    }

    /// The value, in the unit of the kind; always finite. A bare number is in that unit, a written unit wins.
    ///
    /// Reads one number as a length's is read (decimals with point or comma, fractions, a sign), then a unit.
    ///
    /// # Errors
    /// A [`ReadError`] that points into the text.
    ///
    /// # Example
    /// ```
    /// # use scantling::measure::{Figure, FigureKind, ReadError};
    /// assert_eq!(Figure::new("12,5").value(FigureKind::Mass)?, 12.5);
    /// assert_eq!(Figure::new("10 lb").value(FigureKind::Mass)?, 4.535_923_7);
    /// # Ok::<(), ReadError>(())
    /// ```
    #[expect(clippy::float_arithmetic, reason = "a figure is an estimate's input")]
    pub fn value(&self, kind: FigureKind) -> Result<f64, ReadError> {
        let Parts { negative, number, scale, .. } = self.parts(kind)?;
        // Exactly, so that there is one rounding; figures with very many digits are rounded twice.
        let value = number.times(scale).map_or_else(|_| number.as_f64() * scale.as_f64(), Ratio::as_f64);
        let value = if negative && value != 0.0 { -value } else { value };
        Ok(if is_fahrenheit(kind, scale) { value - 160.0 / 9.0 } else { value })
    }

    /// The same value, exactly, as for prices and whole packs: three of 0.1 are 0.3.
    ///
    /// # Errors
    /// A [`ReadError`] that points into the text, also for a figure with too many digits to be held.
    pub fn exact(&self, kind: FigureKind) -> Result<Ratio, ReadError> {
        let Parts { negative, number, scale, at } = self.parts(kind)?;
        let value = number.times(scale).map(|value| if negative { value.negated() } else { value });
        let freezing = if is_fahrenheit(kind, scale) { Ratio::new(160, 9) } else { Ok(Ratio::ZERO) };
        let value = value.and_then(|value| value.minus(freezing?));
        value.map_err(|error| ReadError::Exact { error, at })
    }

    /// The figure taken apart.
    fn parts(&self, kind: FigureKind) -> Result<Parts, ReadError> {
        // The field's unit of length plays no part: the number is read without a unit.
        let mut parser = Parser::new(&self.0, Unit::Mm)?;
        if parser.peek().kind == Kind::End {
            return Err(ReadError::EmptyFigure);
        }
        let start = parser.peek().at;
        let negative = parser.sign()?;
        let Some((number, _)) = parser.number()? else {
            let Token { kind, at, .. } = parser.peek();
            return Err(match kind {
                Kind::Word(word) => ReadError::NotInFigure { word: word.to_owned(), at },
                Kind::Stray(found) => ReadError::NotInFigure { word: found.to_string(), at },
                _ => parser.number_missing(),
            });
        };
        let (rest, at) = parser.rest();
        let unit = rest.split_whitespace().collect::<String>();
        let scale = if unit.is_empty() {
            Ratio::ONE
        } else {
            let lower = unit.to_ascii_lowercase();
            let found = kind.units().iter().find(|(name, ..)| *name == lower);
            let (_, numerator, denominator) = found.ok_or_else(|| ReadError::UnknownFigureUnit {
                word: rest.trim_end().to_owned(),
                accepted: kind.accepted(),
                at,
            })?;
            Ratio::lowest(false, *numerator, *denominator).map_err(|error| ReadError::Exact { error, at })?
        };
        if kind == FigureKind::Count && (number.denominator() != 1 || negative && !number.is_zero()) {
            return Err(ReadError::NotWhole { at: start });
        }
        Ok(Parts { negative, number, scale, at: start })
    }
}

/// Of all units only this one has its nought elsewhere: 32 °F is 0 °C.
fn is_fahrenheit(kind: FigureKind, scale: Ratio) -> bool {
    kind == FigureKind::Temperature && scale != Ratio::ONE
}

/// A sign, a number, and how many of the value's unit each is; `at` is where the number begins.
struct Parts {
    negative: bool,
    number: Ratio,
    scale: Ratio,
    at: usize,
}

impl From<&str> for Figure {
    fn from(typed: &str) -> Self {
        Self::new(typed)
    }
}

impl<'de> Deserialize<'de> for Figure {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Shape)
    }
}

struct Shape;

impl de::Visitor<'_> for Shape {
    type Value = Figure;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a figure: \"12.5\" or 12.5")
    }

    fn visit_str<E: de::Error>(self, typed: &str) -> Result<Figure, E> {
        Ok(Figure::new(typed))
    }

    fn visit_i64<E: de::Error>(self, number: i64) -> Result<Figure, E> {
        Ok(Figure::new(number.to_string()))
    }

    fn visit_u64<E: de::Error>(self, number: u64) -> Result<Figure, E> {
        Ok(Figure::new(number.to_string()))
    }

    fn visit_f64<E: de::Error>(self, number: f64) -> Result<Figure, E> {
        Ok(Figure::new(number.to_string()))
    }
}

#[cfg(test)]
mod tests {
    use super::{Figure, FigureKind};

    /// To the last bit or two: the units are exact, so only the way to the float is left.
    #[expect(clippy::float_arithmetic, reason = "figures are floats once they are read")]
    fn agrees(got: f64, want: f64) -> bool {
        (got - want).abs() <= want.abs() * 2.0 * f64::EPSILON
    }

    #[test]
    fn reads_figures_in_their_units() {
        for (kind, typed, want, source) in [
            (FigureKind::Mass, "10", 10.0, "bare is kg"),
            (FigureKind::Mass, "12,5 kg", 12.5, "comma"),
            (FigureKind::Mass, "250 g", 0.25, ""),
            (FigureKind::Mass, "1 lb", 0.453_592_37, "agreement of 1959"),
            (FigureKind::Mass, "8 oz", 0.226_796_185, "half a pound"),
            (FigureKind::Mass, "1 1/2 LB", 0.680_388_555, "1.5 × 0.453 592 37"),
            (FigureKind::MassPerLength, "20 lb/ft", 29.763_278_871_391_077, "20 × 0.453 592 37 / 0.3048"),
            (FigureKind::MassPerLength, "25 kg / m", 25.0, "spaces"),
            (FigureKind::Stress, "2200", 2200.0, "bare is MPa"),
            (FigureKind::Stress, "10.1 GPa", 10_100.0, ""),
            (FigureKind::Stress, "1000000 psi", 6_894.757_293_168_361, "4.448 221 615 260 5 N over 645.16 mm²"),
            (FigureKind::Stress, "1 Mpsi", 6_894.757_293_168_361, "the same"),
            (FigureKind::Force, "573.6", 573.6, "bare is N"),
            (FigureKind::Force, "0.5 kN", 500.0, ""),
            (FigureKind::Force, "10 kg", 98.0665, "gravity of 9.806 65 m/s²"),
            (FigureKind::Force, "1 lb", 4.448_221_615_260_5, "0.453 592 37 · 9.806 65"),
            (FigureKind::Density, "1 lb/ft3", 16.018_463_373_960_14, "0.453 592 37 / 0.3048³"),
            (FigureKind::Density, "0,72 g/cm³", 720.0, ""),
            (FigureKind::Volume, "750 ml", 0.75, ""),
            (FigureKind::Volume, "1 US gal", 3.785_411_784, "231 × 25.4³ / 10⁶"),
            (FigureKind::Volume, "1 US qt", 0.946_352_946, "a quarter of it"),
            (FigureKind::Coverage, "400 ft2/US gal", 9.816_954_698_844_463, "400 × 0.3048² / 3.785 411 784"),
            (FigureKind::Spread, "40 lb/1000 ft2", 195.297_105_455_322, "40 × 453.592 37 / 92.903 04"),
            (FigureKind::PricePerMetre, "1.20", 1.2, "bare is for a metre"),
            (FigureKind::PricePerMetre, "1.524 / ft", 5.0, "1.524 / 0.3048"),
            (FigureKind::PricePerMetre, "1 1/2 /ft", 4.921_259_842_519_685, "1.5 / 0.3048"),
            (FigureKind::Percent, "8 %", 8.0, ""),
            (FigureKind::Temperature, "21,5", 21.5, "bare is °C"),
            (FigureKind::Temperature, "-10 °C", -10.0, ""),
            (FigureKind::Temperature, "68 °F", 20.0, "(68 − 32) · 5/9"),
            (FigureKind::Temperature, "-40F", -40.0, "where both scales meet"),
            (FigureKind::Number, "-1/4", -0.25, ""),
            (FigureKind::Count, "3", 3.0, ""),
            (FigureKind::Count, "6/2", 3.0, "whole all the same"),
        ] {
            let got = Figure::from(typed).value(kind).unwrap();
            assert!(agrees(got, want), "{kind:?} {typed:?}: {got} is not {want}; source: {source}");
        }
    }

    #[test]
    fn says_what_is_wrong_and_where() {
        for (kind, typed, want) in [
            (FigureKind::Mass, " ", "0: Give a figure, such as 12.5."),
            (FigureKind::Mass, "10 stone", "3: “stone” is not a unit for this. kg, g, lb and oz are."),
            (FigureKind::Number, "10 kg", "3: “kg” is not a unit for this. This is a plain number."),
            (FigureKind::Mass, "2 * 3", "2: “* 3” is not a unit for this. kg, g, lb and oz are."),
            (FigureKind::Mass, "kg", "0: “kg” does not belong before the number. Write a figure, such as 12.5."),
            (FigureKind::Mass, "1,200", "0: Is 1,200 a decimal comma or a thousand? Write 1.2 or 1200."),
            (FigureKind::Count, "2.5", "0: A whole number is wanted here, zero or more."),
            (FigureKind::Count, "-2", "0: A whole number is wanted here, zero or more."),
        ] {
            let error = Figure::from(typed).value(kind).unwrap_err();
            assert_eq!(format!("{}: {error}", error.at()), want, "{kind:?} {typed:?}");
        }
    }

    #[test]
    fn exact_figures_add_up() {
        let tenth = Figure::from("0.1").exact(FigureKind::Number).unwrap();
        let three = tenth.plus(tenth).and_then(|two| two.plus(tenth)).unwrap();
        assert_eq!(three, Figure::from("-0,3").exact(FigureKind::Number).unwrap().negated());
        assert_eq!(
            Figure::from("-40 °F").exact(FigureKind::Temperature),
            Figure::from("-40").exact(FigureKind::Number)
        );
        let error = Figure::from("1/18446744073709551615 lb").exact(FigureKind::Mass).unwrap_err();
        assert_eq!(error.at(), 0);
    }

    #[test]
    fn reads_json_numbers_too() {
        for (json, typed) in [("\"12,5\"", "12,5"), ("12.5", "12.5"), ("-3", "-3"), ("3", "3")] {
            assert_eq!(serde_json::from_str::<Figure>(json).unwrap(), Figure::from(typed));
        }
        assert!(serde_json::from_str::<Figure>("null").is_err());
    }
}
