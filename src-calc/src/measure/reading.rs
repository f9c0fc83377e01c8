//! What a person types for a length, arithmetic included.
//!
//! # How a reading is read
//!
//! **Numbers.** `600`, `12.5`, `12,5`, `.5`; fractions `5/8`, `⅝`, `5⁄8`, `⁵⁄₈`; mixed numbers `23 5/8`, `23⅝`, `23-5/8`.
//! A comma before exactly three digits is asked about (`1,200`), except after a zero; so is any mark between thousands.
//!
//! **The slash.** Two whole numbers with a slash and no spaces are one fraction, which binds tighter than anything:
//! `12 / 5/8` is 12 divided by five eighths. Every other slash divides.
//!
//! **The hyphen.** `23-5/8`, without spaces, is the mixed number 23 5/8, whatever the field's unit: the fraction must be
//! below one and its denominator 2, 4, 8, 16, 32, 64 or 128. With a space on either side it subtracts: `23 - 5/8`,
//! and so does a true minus sign. A fraction of one or more is subtracted (`600-15/8`). Where one cannot tell
//! (`7-1/3`, `2*15-1/2`, `23-5/8+3`), the reading asks.
//!
//! **Units.** mm, cm, m, in, inch, inches, `"`, `''`, `″`, ft, foot, feet, `'`, `′`, in any case, behind a number or a
//! bracket: `(600 - 2*15) mm`. Together: `2' 3 1/2"`, `2'-3 1/2"`, `1 m 20 cm`, `1 m 20 cm 5 mm`, `12 cm 5 mm`.
//! The last unit may be left out in two cases: behind feet, a number below 12 is inches (`5' 6`); behind metres,
//! exactly two digits are centimetres (`1 m 20`, as said aloud). Anything else asks for the unit.
//!
//! **Bare numbers.** A bare number is a plain number as long as it can be: it takes the field's unit when it is added
//! to a length or is the result. `600 - 2*15` in a field of millimetres is 570 mm; `23 5/8 in + 15` adds 15 mm.
//! A length times a length is refused, and so is a number divided by a length, and a result that is a plain
//! number because a length was divided by a length.
//!
//! **Order.** Units and compounds, then a sign, then `* × · / ÷`, then `+ -`, each from the left. Then one `±` (also
//! `+/-` or `+-`) with a tolerance; a bare tolerance takes the unit written last before it: `23 5/8 in ± 1/16`.

mod lexer;
mod literal;
mod parser;
#[cfg(test)]
mod tests;

pub(super) use lexer::{Kind, Token};
pub(super) use parser::Parser;

use super::{Length, Range, ReadError, Unit};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};
use std::fmt;

/// A length as typed, and the unit that a bare number takes.
///
/// serde: a plain string when bare numbers are millimetres, else `{"typed": "23 5/8", "bare": "in"}`; both forms are
/// read, and so is a plain number, as millimetres.
///
/// # Example
/// ```
/// # use scantling::measure::{Length, Reading, ReadError};
/// let gap = Reading::mm("600 - 2*15").length()?;
/// assert_eq!(gap.to_string(), "570 mm");
/// let door = Reading::inches("23 5/8 ± 1/32").range()?;
/// assert_eq!(door.high().to_string(), "600.86875 mm");
/// # Ok::<(), ReadError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Reading {
    typed: String,
    bare: Unit,
}

impl Reading {
    /// A reading whose bare numbers are in that unit.
    pub fn new(typed: impl Into<String>, bare: Unit) -> Self {
        Self { typed: typed.into(), bare }
    }

    /// A reading whose bare numbers are millimetres.
    pub fn mm(typed: &str) -> Self {
        Self::new(typed, Unit::Mm)
    }

    /// A reading whose bare numbers are inches.
    pub fn inches(typed: &str) -> Self {
        Self::new(typed, Unit::In)
    }

    /// The text as typed.
    pub fn typed(&self) -> &str {
        &self.typed
    }

    /// The unit that a bare number takes.
    pub const fn bare(&self) -> Unit {
        self.bare
    }

    /// Whether nothing but spaces was typed.
    pub fn is_blank(&self) -> bool {
        is_blank(&self.typed)
    }

    /// The length; `±` is refused.
    ///
    /// # Errors
    /// A [`ReadError`] that points into the text.
    pub fn length(&self) -> Result<Length, ReadError> {
        let (length, tolerance) = Parser::new(&self.typed, self.bare)?.reading()?;
        match tolerance {
            None => Ok(length),
            Some((_, at)) => Err(ReadError::ToleranceNotWanted { at }),
        }
    }

    /// The length with its tolerance; without `±` it is exact.
    ///
    /// # Errors
    /// A [`ReadError`] that points into the text.
    pub fn range(&self) -> Result<Range, ReadError> {
        let (length, tolerance) = Parser::new(&self.typed, self.bare)?.reading()?;
        match tolerance {
            None => Ok(Range::exact(length)),
            Some((tolerance, at)) => Range::new(length, tolerance).map_err(|error| ReadError::Exact { error, at }),
        }
    }
}

/// Whether a text has nothing in it that can be seen.
pub(super) fn is_blank(typed: &str) -> bool {
    typed.chars().all(lexer::is_space)
}

impl Serialize for Reading {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct WithUnit<'a> {
            typed: &'a str,
            bare: Unit,
        }
        match self.bare {
            Unit::Mm => serializer.serialize_str(&self.typed),
            bare => WithUnit { typed: &self.typed, bare }.serialize(serializer),
        }
    }
}

impl<'de> Deserialize<'de> for Reading {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Shape)
    }
}

struct Shape;

impl<'de> de::Visitor<'de> for Shape {
    type Value = Reading;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a reading: \"600 mm\", or {\"typed\": \"23 5/8\", \"bare\": \"in\"}")
    }

    fn visit_str<E: de::Error>(self, typed: &str) -> Result<Reading, E> {
        Ok(Reading::mm(typed))
    }

    fn visit_i64<E: de::Error>(self, number: i64) -> Result<Reading, E> {
        Ok(Reading::new(number.to_string(), Unit::Mm))
    }

    fn visit_u64<E: de::Error>(self, number: u64) -> Result<Reading, E> {
        Ok(Reading::new(number.to_string(), Unit::Mm))
    }

    fn visit_f64<E: de::Error>(self, number: f64) -> Result<Reading, E> {
        Ok(Reading::new(number.to_string(), Unit::Mm))
    }

    fn visit_map<A: de::MapAccess<'de>>(self, map: A) -> Result<Reading, A::Error> {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct WithUnit {
            typed: String,
            #[serde(default)]
            bare: Unit,
        }
        let WithUnit { typed, bare } = WithUnit::deserialize(de::value::MapAccessDeserializer::new(map))?;
        Ok(Reading { typed, bare })
    }
}
