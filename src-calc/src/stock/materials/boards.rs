//! Plywood, OSB, particleboard, MDF and hardboard.

use super::cited::*;
use super::{Bending, Family, Kind, Row, Rows, Values};
use crate::source::Source;

/// A board that is the same in both directions of its face: stiffness MPa, density kg/m³, strength MPa.
const fn even(
    label: &'static str,
    thickness_mm: Option<(f64, f64)>,
    [stiffness_mpa, density_kg_m3, strength_mpa]: [f64; 3],
    source: Source,
) -> Row {
    let either = Bending { stiffness_mpa, strength_mpa: Some(strength_mpa) };
    Row { label, thickness_mm, along: either, across: Some(either), density_kg_m3, source }
}

/// A board with a grain: (stiffness, strength) along and across, MPa, and density kg/m³.
const fn grained(
    label: &'static str,
    thickness_mm: Option<(f64, f64)>,
    along: (f64, f64),
    across: (f64, f64),
    density_kg_m3: f64,
    source: Source,
) -> Row {
    Row {
        label,
        thickness_mm,
        along: Bending { stiffness_mpa: along.0, strength_mpa: Some(along.1) },
        across: Some(Bending { stiffness_mpa: across.0, strength_mpa: Some(across.1) }),
        density_kg_m3,
        source,
    }
}

/// The same, where no strength across, or nothing across, is published.
const fn along_only(
    label: &'static str,
    thickness_mm: Option<(f64, f64)>,
    along: (f64, f64),
    across_stiffness_mpa: Option<f64>,
    density_kg_m3: f64,
    source: Source,
) -> Row {
    let across = match across_stiffness_mpa {
        Some(stiffness_mpa) => Some(Bending { stiffness_mpa, strength_mpa: None }),
        None => None,
    };
    Row {
        label,
        thickness_mm,
        along: Bending { stiffness_mpa: along.0, strength_mpa: Some(along.1) },
        across,
        density_kg_m3,
        source,
    }
}

const fn family(id: &'static str, name: &'static str, kind: Kind, values: Values, rows: &'static [Row]) -> Family {
    Family { id, name, kind, values, rows: Rows::ByThickness(rows) }
}

const fn one(id: &'static str, name: &'static str, kind: Kind, row: Row) -> Family {
    Family { id, name, kind, values: Values::Mean, rows: Rows::One(row) }
}

const fn mm(least: f64, most: f64) -> Option<(f64, f64)> {
    Some((least, most))
}

const BIRCH: &[Row] = &[
    grained("4 mm, 3 plies", mm(3.5, 4.1), (16_471.0, 65.9), (1_029.0, 10.6), 660.0, BIRCH_PLYWOOD),
    grained("6.5 mm, 5 plies", mm(6.1, 6.9), (12_737.0, 50.9), (4_763.0, 29.0), 670.0, BIRCH_PLYWOOD),
    grained("9 mm, 7 plies", mm(8.8, 9.5), (11_395.0, 45.6), (6_105.0, 32.1), 710.0, BIRCH_PLYWOOD),
    grained("12 mm, 9 plies", mm(11.5, 12.5), (10_719.0, 42.9), (6_781.0, 33.2), 695.0, BIRCH_PLYWOOD),
    grained("15 mm, 11 plies", mm(14.3, 15.3), (10_316.0, 41.3), (7_184.0, 33.8), 690.0, BIRCH_PLYWOOD),
    grained("18 mm, 13 plies", mm(17.1, 18.1), (10_048.0, 40.2), (7_452.0, 34.1), 685.0, BIRCH_PLYWOOD),
    grained("21 mm, 15 plies", mm(20.0, 20.9), (9_858.0, 39.4), (7_642.0, 34.3), 680.0, BIRCH_PLYWOOD),
    grained("24 mm, 17 plies", mm(22.9, 23.7), (9_717.0, 38.9), (7_783.0, 34.4), 680.0, BIRCH_PLYWOOD),
    grained("27 mm, 19 plies", mm(25.8, 26.8), (9_607.0, 38.4), (7_893.0, 34.5), 673.0, BIRCH_PLYWOOD),
    grained("30 mm, 21 plies", mm(28.7, 29.9), (9_519.0, 38.1), (7_981.0, 34.6), 672.0, BIRCH_PLYWOOD),
];

const CONIFER: &[Row] = &[
    grained("6.5 mm, 5 plies", mm(5.8, 6.9), (9_462.0, 29.1), (3_538.0, 16.6), 460.0, CONIFER_PLYWOOD),
    grained("9 mm, 7 plies", mm(8.6, 9.7), (8_465.0, 26.0), (4_535.0, 18.3), 460.0, CONIFER_PLYWOOD),
    grained("12 mm, 9 plies", mm(11.4, 12.5), (7_963.0, 24.5), (5_037.0, 19.0), 460.0, CONIFER_PLYWOOD),
    grained("15 mm, 11 plies", mm(14.2, 15.3), (7_663.0, 23.6), (5_337.0, 19.3), 460.0, CONIFER_PLYWOOD),
    grained("18 mm, 13 plies", mm(17.0, 18.1), (7_464.0, 23.0), (5_536.0, 19.5), 460.0, CONIFER_PLYWOOD),
    grained("21 mm, 15 plies", mm(19.8, 20.9), (7_323.0, 22.5), (5_677.0, 19.6), 460.0, CONIFER_PLYWOOD),
    grained("24 mm, 17 plies", mm(22.6, 23.7), (7_218.0, 22.2), (5_782.0, 19.7), 460.0, CONIFER_PLYWOOD),
];

const GENERAL_BIRCH: &[Row] =
    &[grained("", mm(9.0, 40.0), (6_000.0, 60.0), (3_000.0, 30.0), 670.0, BIRCH_PLYWOOD_GENERAL)];

const OSB_3: &[Row] = &[
    grained("6 to 10 mm", mm(6.0, 10.0), (4_930.0, 18.0), (1_980.0, 9.0), 650.0, OSB),
    grained("over 10 to 18 mm", mm(10.0, 18.0), (4_930.0, 16.4), (1_980.0, 8.2), 650.0, OSB),
    grained("over 18 to 25 mm", mm(18.0, 25.0), (4_930.0, 14.8), (1_980.0, 7.4), 650.0, OSB),
];

const OSB_4: &[Row] = &[
    along_only("6 to 10 mm", mm(6.0, 10.0), (6_780.0, 24.5), Some(2_680.0), 650.0, OSB),
    along_only("over 10 to 18 mm", mm(10.0, 18.0), (6_780.0, 23.0), Some(2_680.0), 650.0, OSB),
    along_only("over 18 to 25 mm", mm(18.0, 25.0), (6_780.0, 21.0), Some(2_680.0), 650.0, OSB),
];

const P2: &[Row] = &[
    even("over 6 to 13 mm", mm(6.0, 13.0), [1_800.0, 690.0, 11.0], PARTICLEBOARD_P2),
    even("over 13 to 20 mm", mm(13.0, 20.0), [1_600.0, 650.0, 11.0], PARTICLEBOARD_P2),
    even("over 20 to 25 mm", mm(20.0, 25.0), [1_500.0, 640.0, 10.5], PARTICLEBOARD_P2),
    even("over 25 to 32 mm", mm(25.0, 32.0), [1_350.0, 615.0, 9.5], PARTICLEBOARD_P2),
];

const P4: &[Row] = &[
    even("over 6 to 13 mm", mm(6.0, 13.0), [3_200.0, 650.0, 14.2], PARTICLEBOARD_DESIGN),
    even("over 13 to 20 mm", mm(13.0, 20.0), [2_900.0, 600.0, 12.5], PARTICLEBOARD_DESIGN),
    even("over 20 to 25 mm", mm(20.0, 25.0), [2_700.0, 550.0, 10.8], PARTICLEBOARD_DESIGN),
];

const P5: &[Row] = &[
    even("over 6 to 13 mm", mm(6.0, 13.0), [3_500.0, 650.0, 15.0], PARTICLEBOARD_DESIGN),
    even("over 13 to 20 mm", mm(13.0, 20.0), [3_300.0, 600.0, 13.3], PARTICLEBOARD_DESIGN),
    even("over 20 to 25 mm", mm(20.0, 25.0), [3_000.0, 550.0, 11.7], PARTICLEBOARD_DESIGN),
];

const FIBREBOARD: &[Row] = &[
    even("2.5 to 6 mm", mm(2.5, 6.0), [2_700.0, 800.0, 23.0], MDF_THIN),
    even("over 6 to 9 mm", mm(6.0, 9.0), [2_700.0, 740.0, 23.0], MDF),
    even("over 9 to 12 mm", mm(9.0, 12.0), [2_500.0, 740.0, 22.0], MDF),
    even("over 12 to 19 mm", mm(12.0, 19.0), [2_200.0, 720.0, 20.0], MDF),
    even("over 19 to 30 mm", mm(19.0, 30.0), [2_100.0, 700.0, 18.0], MDF),
    even("over 30 to 45 mm", mm(30.0, 45.0), [1_900.0, 680.0, 17.0], MDF),
];

const FIBREBOARD_LA: &[Row] = &[
    even("1.8 to 12 mm", mm(1.8, 12.0), [3_700.0, 650.0, 21.0], MDF_LOAD_BEARING),
    even("over 12 to 19 mm", mm(12.0, 19.0), [3_000.0, 600.0, 21.0], MDF_LOAD_BEARING),
    even("over 19 to 30 mm", mm(19.0, 30.0), [2_900.0, 550.0, 21.0], MDF_LOAD_BEARING),
];

const HLA2: &[Row] = &[
    even("to 3.5 mm", mm(1.5, 3.5), [5_000.0, 900.0, 37.0], HARDBOARD_DESIGN),
    even("over 3.5 to 5.5 mm", mm(3.5, 5.5), [4_800.0, 850.0, 35.0], HARDBOARD_DESIGN),
    even("over 5.5 mm", mm(5.5, 8.0), [4_600.0, 800.0, 32.0], HARDBOARD_DESIGN),
];

const STANDARD_HARDBOARD: &[Row] = &[even("", mm(2.1, 9.5), [3_100.0, 950.0, 31.0], US_HARDBOARD_CLASSES)];
const TEMPERED_HARDBOARD: &[Row] = &[even("", mm(2.1, 9.5), [4_300.0, 1_000.0, 41.4], US_HARDBOARD_CLASSES)];

pub(super) const FAMILIES: &[Family] = &[
    family("plywood_birch", "Birch plywood", Kind::Plywood, Values::Design, BIRCH),
    family(
        "plywood_birch_general",
        "Birch plywood of unknown origin, least values",
        Kind::Plywood,
        Values::Minimum,
        GENERAL_BIRCH,
    ),
    family("plywood_conifer", "Conifer plywood, thin veneers", Kind::Plywood, Values::Design, CONIFER),
    one(
        "plywood_softwood_us_low",
        "US softwood plywood, low end",
        Kind::Plywood,
        along_only("", None, (6_960.0, 33.7), None, 560.0, US_PLYWOOD),
    ),
    one(
        "plywood_softwood_us_high",
        "US softwood plywood, high end",
        Kind::Plywood,
        along_only("", None, (8_550.0, 42.6), None, 560.0, US_PLYWOOD),
    ),
    family("osb_3", "OSB/3", Kind::Osb, Values::Design, OSB_3),
    family("osb_4", "OSB/4", Kind::Osb, Values::Design, OSB_4),
    one(
        "osb_us_low",
        "North American OSB, low end",
        Kind::Osb,
        along_only("", None, (4_410.0, 21.8), Some(1_920.0), 672.0, US_OSB),
    ),
    family("particleboard_p2", "Furniture particleboard P2", Kind::Particleboard, Values::Minimum, P2),
    family("particleboard_p4", "Load-bearing particleboard P4", Kind::Particleboard, Values::Design, P4),
    family("particleboard_p5", "Load-bearing particleboard P5, humid", Kind::Particleboard, Values::Design, P5),
    one(
        "particleboard_us_low",
        "North American particleboard, low end",
        Kind::Particleboard,
        even("", None, [2_760.0, 728.0, 15.2], US_PARTICLEBOARD),
    ),
    family("mdf", "MDF", Kind::Mdf, Values::Minimum, FIBREBOARD),
    family("mdf_la", "Load-bearing MDF.LA", Kind::Mdf, Values::Design, FIBREBOARD_LA),
    one("mdf_us", "North American MDF, average", Kind::Mdf, even("", None, [3_590.0, 800.0, 35.8], US_MDF)),
    one("hardboard_low", "Hardboard, low end", Kind::Hardboard, even("", None, [3_100.0, 1_000.0, 31.0], US_HARDBOARD)),
    one(
        "hardboard_high",
        "Hardboard, high end",
        Kind::Hardboard,
        even("", None, [5_520.0, 1_050.0, 56.5], US_HARDBOARD),
    ),
    family("hardboard_hla2", "Heavy-duty hardboard HB.HLA2", Kind::Hardboard, Values::Design, HLA2),
    family("hardboard_standard", "Standard hardboard", Kind::Hardboard, Values::Mean, STANDARD_HARDBOARD),
    family("hardboard_tempered", "Tempered hardboard", Kind::Hardboard, Values::Mean, TEMPERED_HARDBOARD),
];
