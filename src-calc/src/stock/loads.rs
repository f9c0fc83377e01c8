//! What things weigh on a shelf, per metre of its length.

use crate::source::Source;
use serde::{Deserialize, Serialize};

/// What stands on the shelf.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Contents {
    /// One row of shoes.
    Shoes,
    /// One row of work boots or rubber boots.
    #[default]
    Boots,
    /// Folded clothes, towels, linen.
    FoldedClothes,
    /// Books of mixed sizes.
    Books,
    /// Large books, atlases.
    LargeBooks,
    /// Records or magazines, packed.
    Records,
    /// China and crockery.
    Crockery,
    /// Filled preserving jars, three rows deep.
    Jars,
    /// Tinned food, four rows deep and two high.
    Tins,
    /// One row of paint cans.
    Paint,
    /// Hand tools, boxes of fixings.
    Tools,
}

impl Contents {
    /// Light to heavy, as a list to choose from.
    pub const ALL: &'static [Self] = &[
        Self::Shoes,
        Self::Boots,
        Self::FoldedClothes,
        Self::Paint,
        Self::Crockery,
        Self::Books,
        Self::Jars,
        Self::Tins,
        Self::LargeBooks,
        Self::Records,
        Self::Tools,
    ];

    /// The usual range, kg per metre of shelf. A shelf is worked out for the upper end.
    pub const fn kg_per_m(self) -> (f64, f64) {
        match self {
            Self::Shoes => (4.0, 6.0),
            Self::Boots => (6.0, 9.0),
            Self::FoldedClothes => (15.0, 25.0),
            Self::Books | Self::Crockery => (30.0, 45.0),
            Self::LargeBooks => (45.0, 60.0),
            Self::Records => (55.0, 70.0),
            Self::Jars => (35.0, 50.0),
            Self::Tins => (50.0, 60.0),
            Self::Paint => (30.0, 30.0),
            Self::Tools => (40.0, 80.0),
        }
    }

    /// How that was come by.
    pub const fn source(self) -> Source {
        Source::practice(match self {
            Self::Shoes => "about 4 pairs of 1 to 1.3 kg a metre, one row",
            Self::Boots => "about 3 to 4 pairs of 2 to 2.3 kg a metre, one row, wet",
            Self::FoldedClothes => "stacks of folded cotton and wool, weighed by the metre",
            Self::Books => "9 to 18 kg a foot is quoted for heavy shelves; mixed books run lower",
            Self::LargeBooks => "large format and encyclopaedias",
            Self::Records => "tightly packed",
            Self::Crockery => "stacked plates and bowls",
            Self::Jars => "1-litre jars of 100 mm at 1.2 to 1.6 kg, three rows of ten a metre",
            Self::Tins => "400 g tins, four rows deep, two high",
            Self::Paint => "one row of US gallon cans, about 5.2 kg each and 0.17 m across",
            Self::Tools => "hand tools and boxed fixings",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::Contents;

    #[test]
    fn every_preset_is_listed_once_with_a_range_that_is_one() {
        for contents in Contents::ALL {
            let (low, high) = contents.kg_per_m();
            assert!(0.0 < low && low <= high && high <= 80.0, "{contents:?}");
            assert_eq!(Contents::ALL.iter().filter(|other| *other == contents).count(), 1);
        }
    }

    #[test]
    fn presets_worked_out_from_pieces_agree_with_their_pieces() {
        for (contents, low, high, pieces) in [
            (Contents::Shoes, 4.0 * 1.0, 4.0 * 1.3, "pairs of shoes"),
            (Contents::Boots, 3.0 * 2.0, 4.0 * 2.3, "pairs of boots"),
            (Contents::Jars, 30.0 * 1.2, 30.0 * 1.6, "jars"),
            (Contents::Paint, 5.2 / 0.17, 5.2 / 0.17, "cans"),
        ] {
            let (least, most) = contents.kg_per_m();
            assert!((low - least).abs() <= 0.06 * most.max(low) + 1.0, "{pieces}: {low} against {least}");
            assert!((high - most).abs() <= 0.06 * most.max(high) + 1.0, "{pieces}: {high} against {most}");
        }
    }
}
