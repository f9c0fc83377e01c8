//! How far solid wood moves across its grain with its moisture.

use crate::source::Source;
use crate::stock::materials::Choice;
use serde::Serialize;

const TABLE: Source = Source::published("Wood Handbook FPL-GTR-190 (2010), table 13-5, for 6 to 14 % moisture");
const RECALLED: Source = Source::memory("Wood Handbook FPL-GTR-190 (2010), table 13-5, for 6 to 14 % moisture");

/// The moisture between which the coefficients hold, per cent.
pub const RANGE_PERCENT: (f64, f64) = (6.0, 14.0);

/// Who says that along the grain wood hardly moves.
pub const ALONG_SOURCE: Source =
    Source::memory("Wood Handbook, chapter 4: along the grain 0.1 to 0.2 % from green to dry; taken as nothing");

/// Change of width for each per cent of moisture, as a share of the width.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Coefficients {
    /// Across the rings: the width of a quarter-sawn board.
    pub radial: f64,
    /// Along the rings: the width of a flat-sawn board.
    pub tangential: f64,
    /// Who says so.
    pub source: Source,
}

/// A species by the name of its family among the materials.
type Species = (&'static str, Coefficients);

const fn of(id: &'static str, radial: f64, tangential: f64, source: Source) -> Species {
    (id, Coefficients { radial, tangential, source })
}

const SPECIES: &[Species] = &[
    of("alder_red", 0.001_51, 0.002_56, TABLE),
    of("ash_white", 0.001_69, 0.002_74, TABLE),
    of("ash_black", 0.001_72, 0.002_74, TABLE),
    of("aspen_quaking", 0.001_19, 0.002_34, TABLE),
    of("basswood", 0.002_30, 0.003_30, TABLE),
    of("beech_american", 0.001_90, 0.004_31, TABLE),
    of("birch_paper", 0.002_19, 0.003_04, TABLE),
    of("birch_yellow", 0.002_56, 0.003_38, TABLE),
    of("butternut", 0.001_16, 0.002_23, TABLE),
    of("cherry_black", 0.001_26, 0.002_48, TABLE),
    of("chestnut_american", 0.001_16, 0.002_34, TABLE),
    of("elm_american", 0.001_44, 0.003_38, TABLE),
    of("hickory_pecan", 0.001_69, 0.003_15, TABLE),
    of("maple_red", 0.001_37, 0.002_89, TABLE),
    of("maple_silver", 0.001_02, 0.002_52, TABLE),
    of("maple_sugar", 0.001_65, 0.003_53, TABLE),
    // The table has one line for all red oak that is sold, and one for white.
    of("oak_northern_red", 0.001_58, 0.003_69, TABLE),
    of("oak_southern_red", 0.001_58, 0.003_69, TABLE),
    of("oak_white", 0.001_80, 0.003_65, TABLE),
    of("sweetgum", 0.001_83, 0.003_65, TABLE),
    of("sycamore_american", 0.001_72, 0.002_96, TABLE),
    of("walnut_black", 0.001_90, 0.002_74, TABLE),
    of("yellow_poplar", 0.001_58, 0.002_89, RECALLED),
    of("baldcypress", 0.001_30, 0.002_16, RECALLED),
    of("douglas_fir_coast", 0.001_65, 0.002_67, RECALLED),
    of("pine_eastern_white", 0.000_71, 0.002_12, RECALLED),
    of("pine_ponderosa", 0.001_33, 0.002_16, RECALLED),
    of("pine_red", 0.001_30, 0.002_52, RECALLED),
    of("pine_loblolly", 0.001_65, 0.002_59, RECALLED),
    of("pine_longleaf", 0.001_76, 0.002_63, RECALLED),
    of("pine_sugar", 0.000_99, 0.001_94, RECALLED),
    of("pine_western_white", 0.001_41, 0.002_59, RECALLED),
    of("spruce_engelmann", 0.001_30, 0.002_48, RECALLED),
    of("spruce_sitka", 0.001_48, 0.002_63, RECALLED),
    of("cedar_western_red", 0.001_11, 0.002_34, RECALLED),
    of("mahogany_true", 0.001_72, 0.002_38, RECALLED),
    of("mahogany_african", 0.001_41, 0.002_01, RECALLED),
    of("teak", 0.001_01, 0.001_86, RECALLED),
    of("spanish_cedar", 0.001_41, 0.002_19, RECALLED),
];

/// The coefficients of a species; none for boards, for one's own wood, and where none are at hand.
pub fn coefficients(species: Choice) -> Option<&'static Coefficients> {
    SPECIES.iter().find(|(id, _)| *id == species.id()).map(|(_, coefficients)| coefficients)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::stock::materials::Kind;

    #[test]
    fn every_species_is_one_of_the_materials_and_stands_once() {
        for (id, coefficients) in SPECIES {
            let family = Choice::find(id).and_then(Choice::family).unwrap_or_else(|| panic!("no {id}"));
            assert_eq!(family.kind, Kind::Solid, "{id}");
            assert!(coefficients.radial < coefficients.tangential && coefficients.tangential < 0.005, "{id}");
            assert_eq!(SPECIES.iter().filter(|(other, _)| other == id).count(), 1, "{id}");
        }
        assert_eq!(coefficients(Choice::Own), None);
    }

    /// The coefficients follow from another table, the shrinkage from green to oven-dry: `C = 1 / (3000 / S − 20)`, with
    /// fibre saturation at 30 % and the middle of the range at 10 % (both from the Wood Handbook, recalled).
    #[test]
    fn coefficients_follow_from_shrinkage() {
        for (id, radial, tangential) in [
            ("alder_red", 4.4, 7.3),
            ("ash_white", 4.9, 7.8),
            ("aspen_quaking", 3.5, 6.7),
            ("basswood", 6.6, 9.3),
            ("beech_american", 5.5, 11.9),
            ("cherry_black", 3.7, 7.1),
            ("maple_sugar", 4.8, 9.9),
            ("walnut_black", 5.5, 7.8),
            ("yellow_poplar", 4.6, 8.2),
            ("baldcypress", 3.8, 6.2),
            ("douglas_fir_coast", 4.8, 7.6),
            ("pine_eastern_white", 2.1, 6.1),
            ("pine_ponderosa", 3.9, 6.2),
            ("pine_red", 3.8, 7.2),
            ("pine_loblolly", 4.8, 7.4),
            ("pine_longleaf", 5.1, 7.5),
            ("pine_sugar", 2.9, 5.6),
            ("pine_western_white", 4.1, 7.4),
            ("spruce_engelmann", 3.8, 7.1),
            ("spruce_sitka", 4.3, 7.5),
        ] {
            let of = |shrinkage: f64| 1.0 / (3000.0 / shrinkage - 20.0);
            let got = coefficients(Choice::find(id).unwrap()).unwrap();
            for (got, want) in [(got.radial, of(radial)), (got.tangential, of(tangential))] {
                assert!((got - want).abs() <= 0.000_005_5, "{id}: {got} against {want}");
            }
        }
    }
}
