//! What hangs on a clothes rail: how heavy a metre of it is, and how far it hangs down.

use crate::source::Source;
use serde::{Deserialize, Serialize};

/// What hangs there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Garments {
    /// Shirts and blouses.
    Shirts,
    /// Trousers hung by the cuff.
    Trousers,
    /// Jackets and suits, trousers folded over the bar of the hanger.
    Suits,
    /// Dresses and gowns.
    Dresses,
    /// Coats.
    #[default]
    Coats,
}

/// Loads of a metre of rail.
pub const LOAD_SOURCE: Source = Source::practice(
    "shirts and dresses 15 to 25 kg a metre, coats and suits 30 to 40; a winter coat weighs up to 2 kg (published, an encyclopaedia)",
);

/// Lengths of garments on their hangers.
pub const DROP_SOURCE: Source = Source::published(
    "a shelving maker's planning page: 40 in for shirts and jackets, 48 to 54 in for trousers by the cuff, 66 to 68 in from the floor to the shelf over long gowns; measure your own",
);

/// Room in front of and behind the hangers.
pub const DEPTH_SOURCE: Source = Source::published(
    "pages on planning for clothes: hangers of 17 to 20 in, 24 in deep as a rule, 22 in at the least, 26 to 28 in for jackets and 30 in for bulky coats",
);

/// Room for the hooks above the rail.
pub const HOOK_SOURCE: Source =
    Source::published("a page on closets: at least 2 in between the rail and the shelf above it, better 3 to 4 in");

/// The load that rails are tested with, kg per metre.
pub const TEST_KG_PER_M: f64 = 40.0;

impl Garments {
    /// Short to long.
    pub const ALL: &'static [Self] = &[Self::Shirts, Self::Suits, Self::Trousers, Self::Dresses, Self::Coats];

    /// The usual range, kg per metre of rail. A rail is worked out for the upper end.
    pub const fn kg_per_m(self) -> (f64, f64) {
        match self {
            Self::Shirts | Self::Trousers | Self::Dresses => (15.0, 25.0),
            Self::Suits | Self::Coats => (30.0, 40.0),
        }
    }

    /// From the top of the rail to the hem, mm: the longest that is usual.
    pub const fn drop_mm(self) -> i64 {
        match self {
            Self::Shirts => 1000,
            Self::Suits => 1050,
            Self::Trousers => 1350,
            Self::Coats => 1450,
            Self::Dresses => 1600,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Garments;

    #[test]
    fn garments_hang_as_published() {
        for (garments, inches, within, source) in [
            (Garments::Shirts, 40.0, 1.0, "40 in plus or minus"),
            (Garments::Trousers, 54.0, 1.0, "48 to 54 in"),
            (Garments::Dresses, 63.0, 1.0, "66 to 68 in to the shelf, less 3 to 4 in above the rail"),
        ] {
            #[expect(clippy::cast_precision_loss, reason = "a garment is a few thousand millimetres")]
            let drop = garments.drop_mm() as f64 / 25.4;
            assert!((drop - inches).abs() <= within, "{garments:?}: {drop} in; source: {source}");
        }
    }

    #[test]
    fn every_preset_is_listed_once_with_a_range_that_is_one() {
        for garments in Garments::ALL {
            let (low, high) = garments.kg_per_m();
            assert!(0.0 < low && low <= high && high <= super::TEST_KG_PER_M, "{garments:?}");
            assert_eq!(Garments::ALL.iter().filter(|other| *other == garments).count(), 1);
        }
    }
}
