//! Angles.

use super::reading::{Kind, Parser, Token};
use super::{LengthError, Ratio, ReadError, Unit};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;

/// An exact angle in degrees.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Angle(Ratio);

impl Angle {
    /// `numerator / denominator` degrees.
    ///
    /// # Errors
    /// [`LengthError::DividedByZero`].
    pub fn new(numerator: i64, denominator: u64) -> Result<Self, LengthError> {
        Ok(Self(Ratio::new(numerator, denominator)?))
    }

    /// Reads `22.5`, `22 1/2`, `45°`, `22°30'`, `22° 30' 15"`, `-5`; `deg` and `degrees` are read for the sign.
    ///
    /// # Errors
    /// A [`ReadError`] that points into the text.
    ///
    /// # Example
    /// ```
    /// # use scantling::measure::{Angle, ReadError};
    /// assert_eq!(Angle::read("22°30'")?, Angle::read("22 1/2")?);
    /// # Ok::<(), ReadError>(())
    /// ```
    pub fn read(typed: &str) -> Result<Self, ReadError> {
        let mut parser = Parser::new(typed, Unit::Mm)?;
        if parser.peek().kind == Kind::End {
            return Err(ReadError::EmptyAngle);
        }
        let negative = parser.sign()?;
        let mut total = Ratio::ZERO;
        let mut next_unit = 0;
        loop {
            let Token { at, .. } = parser.peek();
            let exact = |error| ReadError::Exact { error, at };
            let Some((value, whole)) = parser.number()? else { return Err(misplaced(&parser)) };
            let unit = match parser.peek().kind {
                Kind::Degree => 0,
                Kind::Word(word) if ["deg", "degree", "degrees"].iter().any(|name| word.eq_ignore_ascii_case(name)) => {
                    0
                }
                Kind::Stroke => 1,
                Kind::Strokes => 2,
                Kind::End if next_unit == 0 => 0,
                Kind::End => return Err(ReadError::AngleParts { at }),
                _ => return Err(misplaced(&parser)),
            };
            if unit < next_unit || (unit > 0 && value >= Ratio::whole(60)) {
                return Err(ReadError::AngleParts { at });
            }
            let per_degree = [1, 60, 3600].get(unit).copied().unwrap_or(1);
            total = value.over(Ratio::whole(per_degree)).and_then(|part| total.plus(part)).map_err(exact)?;
            next_unit = unit + 1;
            if parser.peek().kind != Kind::End {
                parser.advance()?;
            }
            if parser.peek().kind == Kind::End {
                return Ok(Self(if negative { total.negated() } else { total }));
            }
            if !whole {
                return Err(ReadError::AngleParts { at });
            }
        }
    }

    /// Degrees as a float.
    pub fn degrees(self) -> f64 {
        self.0.as_f64()
    }

    /// Degrees, exactly.
    pub const fn in_degrees(self) -> Ratio {
        self.0
    }

    /// The sine.
    pub fn sin(self) -> f64 {
        self.degrees().to_radians().sin()
    }

    /// The cosine.
    pub fn cos(self) -> f64 {
        self.degrees().to_radians().cos()
    }

    /// The tangent.
    pub fn tan(self) -> f64 {
        self.degrees().to_radians().tan()
    }
}

/// What is wrong with a token that belongs in no angle.
fn misplaced(parser: &Parser<'_>) -> ReadError {
    let Token { kind, at, .. } = parser.peek();
    match kind {
        Kind::Word(word) => ReadError::NotInAngle { word: word.to_owned(), at },
        Kind::Stray(found) => ReadError::NotInAngle { word: found.to_string(), at },
        Kind::End | Kind::Stroke | Kind::Strokes | Kind::Degree | Kind::Minus { .. } | Kind::Plus => {
            parser.number_missing()
        }
        _ => parser.out_of_place(),
    }
}

/// Exact text that reads back: `22.5°`.
impl fmt::Display for Angle {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let minus = if self.0.is_negative() { "-" } else { "" };
        write!(f, "{minus}{}°", super::style::decimal_of(self.0))
    }
}

/// As exact text, `22.5°`.
impl Serialize for Angle {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// An angle as typed. serde: the text.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct AngleReading(String);

impl AngleReading {
    /// An angle as typed.
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

    /// The angle.
    ///
    /// # Errors
    /// As [`Angle::read`].
    pub fn angle(&self) -> Result<Angle, ReadError> {
        Angle::read(&self.0)
    }
}

impl From<&str> for AngleReading {
    fn from(typed: &str) -> Self {
        Self::new(typed)
    }
}

#[cfg(test)]
mod tests {
    use super::{Angle, AngleReading};

    #[test]
    fn reads_angles_as_people_write_them() {
        for (typed, want, source) in [
            ("22.5", "22.5°", "as typed"),
            ("22,5", "22.5°", "comma"),
            ("22 1/2", "22.5°", "1/2 = 0.5"),
            ("22½°", "22.5°", "1/2 = 0.5"),
            ("45°", "45°", "as typed"),
            ("45 deg", "45°", "a word for the sign"),
            ("22°30'", "22.5°", "30/60"),
            ("22° 30′", "22.5°", "30/60"),
            ("22° 30' 36\"", "22.51°", "30/60 + 36/3600"),
            ("0° 20'", "1/3°", "20/60 has no end as a decimal"),
            ("-7.5°", "-7.5°", "sign"),
            ("-22°30'", "-22.5°", "the sign is that of the whole"),
            ("30'", "0.5°", "minutes alone"),
            ("", "0: Give an angle in degrees, such as 22.5 or 22°30'.", "our wording"),
            (
                "22°75'",
                "3: Write an angle as 22.5, 22 1/2 or 22°30': whole degrees first, then minutes and seconds below 60.",
                "",
            ),
            (
                "22.5°30'",
                "0: Write an angle as 22.5, 22 1/2 or 22°30': whole degrees first, then minutes and seconds below 60.",
                "",
            ),
            (
                "22°30",
                "3: Write an angle as 22.5, 22 1/2 or 22°30': whole degrees first, then minutes and seconds below 60.",
                "",
            ),
            (
                "30'22°",
                "3: Write an angle as 22.5, 22 1/2 or 22°30': whole degrees first, then minutes and seconds below 60.",
                "",
            ),
            ("22°-", "3: A number is missing before “-”.", ""),
            ("°", "0: A number is missing before “°”.", ""),
            ("45 $", "3: “$” does not belong in an angle. Write it in degrees, such as 22.5 or 22°30'.", ""),
            ("five", "0: “five” does not belong in an angle. Write it in degrees, such as 22.5 or 22°30'.", ""),
            ("45 mm", "3: “mm” does not belong in an angle. Write it in degrees, such as 22.5 or 22°30'.", ""),
        ] {
            let got = match AngleReading::from(typed).angle() {
                Ok(angle) => angle.to_string(),
                Err(error) => format!("{}: {error}", error.at()),
            };
            assert_eq!(got, want, "typed {typed:?}; source: {source}");
        }
    }

    #[test]
    fn sines_are_those_of_degrees() {
        // The sides of the half square and of the half triangle.
        let near = |got: f64, want: f64| (got - want).abs() < 1e-12;
        let [right, third] = [45, 30].map(|degrees| Angle::new(degrees, 1).unwrap());
        assert!(near(right.tan(), 1.0) && near(right.sin(), 0.5_f64.sqrt()) && near(third.sin(), 0.5));
        assert!(near(third.cos(), 0.75_f64.sqrt()));
    }
}
