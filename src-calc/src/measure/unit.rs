//! Units of length.

use super::{LengthError, Ratio};
use serde::{Deserialize, Serialize};

/// A unit of length.
///
/// An inch is 25.4 mm exactly, a foot is twelve of them (international yard and pound agreement of 1959).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Unit {
    /// Millimetre.
    #[default]
    Mm,
    /// Centimetre.
    Cm,
    /// Metre.
    M,
    /// Inch.
    In,
    /// Foot.
    Ft,
}

impl Unit {
    /// Every unit, metric first.
    pub const ALL: &[Self] = &[Self::Mm, Self::Cm, Self::M, Self::In, Self::Ft];

    /// The sign written behind a number: `mm`, `in`.
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Mm => "mm",
            Self::Cm => "cm",
            Self::M => "m",
            Self::In => "in",
            Self::Ft => "ft",
        }
    }

    /// Millimetres in one of this unit, as numerator and denominator in lowest terms.
    pub(super) const fn mm(self) -> (u64, u64) {
        match self {
            Self::Mm => (1, 1),
            Self::Cm => (10, 1),
            Self::M => (1000, 1),
            Self::In => (127, 5),
            Self::Ft => (1524, 5),
        }
    }

    /// That many of this unit, in millimetres.
    pub(super) fn to_mm(self, count: Ratio) -> Result<Ratio, LengthError> {
        if self == Self::Mm {
            return Ok(count);
        }
        let (numerator, denominator) = self.mm();
        count.times(Ratio::raw(false, numerator, denominator))
    }

    /// The unit of a written word, in any case.
    pub(super) fn of_word(word: &str) -> Option<Self> {
        const WORDS: &[(&str, Unit)] = &[
            ("mm", Unit::Mm),
            ("cm", Unit::Cm),
            ("m", Unit::M),
            ("in", Unit::In),
            ("ft", Unit::Ft),
            ("inch", Unit::In),
            ("inches", Unit::In),
            ("ins", Unit::In),
            ("foot", Unit::Ft),
            ("feet", Unit::Ft),
            ("millimetre", Unit::Mm),
            ("millimetres", Unit::Mm),
            ("millimeter", Unit::Mm),
            ("millimeters", Unit::Mm),
            ("centimetre", Unit::Cm),
            ("centimetres", Unit::Cm),
            ("centimeter", Unit::Cm),
            ("centimeters", Unit::Cm),
            ("metre", Unit::M),
            ("metres", Unit::M),
            ("meter", Unit::M),
            ("meters", Unit::M),
        ];
        WORDS.iter().find(|(name, _)| word.eq_ignore_ascii_case(name)).map(|(_, unit)| *unit)
    }
}
