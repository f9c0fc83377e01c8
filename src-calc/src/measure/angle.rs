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
            let Some((value, whole)) = parser.number()? else { return Err(parser.number_missing()) };
            let unit = match parser.peek().kind {
                Kind::Degree => 0,
                Kind::Word(word) if ["deg", "degree", "degrees"].iter().any(|name| word.eq_ignore_ascii_case(name)) => {
                    0
                }
                Kind::Stroke => 1,
                Kind::Strokes => 2,
                Kind::End if next_unit == 0 => 0,
                Kind::End => return Err(ReadError::AngleParts { at }),
                _ => return Err(parser.out_of_place()),
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
