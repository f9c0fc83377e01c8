//! Solid wood: averages of clear wood by species, and graded construction timber.

use super::cited::*;
use super::{Bending, Family, Kind, Row, Rows, Values};
use crate::source::Source;

/// A species: stiffness MPa, density kg/m³, strength MPa, along the grain. Across the grain wood has
/// 5 to 15 % of that stiffness and the tables give none, so a shelf cannot be worked out that way.
const fn solid(
    id: &'static str,
    name: &'static str,
    [stiffness_mpa, density_kg_m3, strength_mpa]: [f64; 3],
    source: Source,
) -> Family {
    let along = Bending { stiffness_mpa, strength_mpa: Some(strength_mpa) };
    let row = Row { label: "", thickness_mm: None, along, across: None, density_kg_m3, source };
    Family { id, name, kind: Kind::Solid, values: Values::Mean, rows: Rows::One(row) }
}

/// A strength class: mean stiffness along and across, mean density, 5 % strength along.
const fn graded(
    id: &'static str,
    name: &'static str,
    [along_mpa, across_mpa, density_kg_m3, strength_mpa]: [f64; 4],
    source: Source,
) -> Family {
    let row = Row {
        label: "",
        thickness_mm: None,
        along: Bending { stiffness_mpa: along_mpa, strength_mpa: Some(strength_mpa) },
        across: Some(Bending { stiffness_mpa: across_mpa, strength_mpa: None }),
        density_kg_m3,
        source,
    };
    Family { id, name, kind: Kind::Solid, values: Values::Design, rows: Rows::One(row) }
}

pub(super) const FAMILIES: &[Family] = &[
    solid("alder_red", "Red alder", [9_510.0, 459.0, 67.6], SPECIES),
    solid("ash_white", "White ash", [12_000.0, 672.0, 106.2], SPECIES),
    solid("ash_black", "Black ash", [11_030.0, 549.0, 86.9], SPECIES),
    solid("aspen_quaking", "Quaking aspen", [8_140.0, 426.0, 57.9], SPECIES),
    solid("basswood", "American basswood", [10_070.0, 414.0, 60.0], SPECIES),
    solid("beech_american", "American beech", [11_860.0, 717.0, 102.7], SPECIES),
    solid("birch_paper", "Paper birch", [10_960.0, 616.0, 84.8], SPECIES),
    solid("birch_yellow", "Yellow birch", [13_860.0, 694.0, 114.5], SPECIES),
    solid("butternut", "Butternut", [8_140.0, 426.0, 55.8], SPECIES),
    solid("cherry_black", "Black cherry", [10_270.0, 560.0, 84.8], SPECIES),
    solid("chestnut_american", "American chestnut", [8_480.0, 482.0, 59.3], SPECIES),
    solid("elm_american", "American elm", [9_240.0, 560.0, 81.4], SPECIES),
    solid("hickory_pecan", "Pecan hickory", [11_930.0, 739.0, 94.5], SPECIES),
    solid("maple_red", "Red (soft) maple", [11_310.0, 605.0, 92.4], SPECIES),
    solid("maple_silver", "Silver (soft) maple", [7_860.0, 526.0, 61.4], SPECIES),
    solid("maple_sugar", "Sugar (hard) maple", [12_620.0, 706.0, 108.9], SPECIES),
    solid("oak_northern_red", "Northern red oak", [12_550.0, 706.0, 98.6], SPECIES),
    solid("oak_southern_red", "Southern red oak", [10_270.0, 661.0, 75.2], SPECIES),
    solid("oak_white", "White oak", [12_270.0, 762.0, 104.8], SPECIES),
    solid("sweetgum", "Sweetgum", [11_310.0, 582.0, 86.2], SPECIES),
    solid("sycamore_american", "American sycamore", [9_790.0, 549.0, 68.9], SPECIES),
    solid("walnut_black", "Black walnut", [11_580.0, 616.0, 100.7], SPECIES),
    solid("yellow_poplar", "Yellow-poplar (tulipwood)", [10_890.0, 470.0, 69.6], SPECIES),
    solid("baldcypress", "Baldcypress", [9_930.0, 515.0, 73.1], SPECIES),
    solid("cedar_eastern_red", "Eastern redcedar", [6_070.0, 526.0, 60.7], SPECIES),
    solid("cedar_incense", "Incense cedar", [7_170.0, 414.0, 55.2], SPECIES),
    solid("cedar_northern_white", "Northern white-cedar", [5_520.0, 347.0, 44.8], SPECIES),
    solid("cedar_western_red", "Western redcedar", [7_650.0, 358.0, 51.7], SPECIES),
    solid("douglas_fir_coast", "Douglas-fir (coast)", [13_440.0, 538.0, 85.5], SPECIES),
    solid("douglas_fir_interior_north", "Douglas-fir (interior north)", [12_340.0, 538.0, 90.3], SPECIES),
    solid("fir_balsam", "Balsam fir", [10_000.0, 392.0, 63.4], SPECIES),
    solid("fir_white", "White fir", [10_340.0, 437.0, 67.6], SPECIES),
    solid("hemlock_western", "Western hemlock", [11_240.0, 504.0, 77.9], SPECIES),
    solid("hemlock_eastern", "Eastern hemlock", [8_270.0, 448.0, 61.4], SPECIES),
    solid("larch_western", "Western larch", [12_890.0, 582.0, 89.6], SPECIES),
    solid("pine_eastern_white", "Eastern white pine", [8_550.0, 392.0, 59.3], SPECIES),
    solid("pine_loblolly", "Loblolly (southern yellow) pine", [12_340.0, 571.0, 88.3], SPECIES),
    solid("pine_lodgepole", "Lodgepole pine", [9_240.0, 459.0, 64.8], SPECIES),
    solid("pine_longleaf", "Longleaf (southern yellow) pine", [13_650.0, 661.0, 100.0], SPECIES),
    solid("pine_ponderosa", "Ponderosa pine", [8_890.0, 448.0, 64.8], SPECIES),
    solid("pine_red", "Red pine", [11_240.0, 515.0, 75.8], SPECIES),
    solid("pine_shortleaf", "Shortleaf (southern yellow) pine", [12_070.0, 571.0, 90.3], SPECIES),
    solid("pine_sugar", "Sugar pine", [8_200.0, 403.0, 56.5], SPECIES),
    solid("pine_western_white", "Western white pine", [10_070.0, 426.0, 66.9], SPECIES),
    solid("redwood_old", "Redwood (old growth)", [9_240.0, 448.0, 68.9], SPECIES),
    solid("redwood_young", "Redwood (young growth)", [7_580.0, 392.0, 54.5], SPECIES),
    solid("spruce_black", "Black spruce", [11_100.0, 470.0, 74.5], SPECIES),
    solid("spruce_engelmann", "Engelmann spruce", [8_960.0, 392.0, 64.1], SPECIES),
    solid("spruce_red", "Red spruce", [11_450.0, 448.0, 74.5], SPECIES),
    solid("spruce_sitka", "Sitka spruce", [10_820.0, 448.0, 70.3], SPECIES),
    solid("spruce_white", "White spruce", [9_860.0, 403.0, 64.8], SPECIES),
    solid("mahogany_true", "Mahogany, true (Swietenia)", [10_340.0, 543.0, 79.3], IMPORTED),
    solid("mahogany_african", "Mahogany, African (Khaya)", [9_650.0, 504.0, 73.8], IMPORTED),
    solid("limba", "Limba", [6_960.0, 453.0, 60.7], IMPORTED),
    solid("teak", "Teak", [10_690.0, 675.0, 100.7], IMPORTED_2010),
    solid("meranti_dark_red", "Dark red meranti", [12_200.0, 556.0, 87.6], IMPORTED_2010),
    solid("meranti_light_red", "Light red meranti", [8_480.0, 403.0, 65.5], IMPORTED_2010),
    solid("spanish_cedar", "Spanish-cedar (Cedrela)", [9_930.0, 491.0, 79.3], IMPORTED_2010),
    solid("pine_scots", "Scots pine (European redwood)", [10_080.0, 550.0, 83.3], SCOTS_PINE),
    solid("beech_european", "European beech", [14_700.0, 730.0, 118.0], EUROPEAN_BEECH),
    solid("oak_european", "European oak", [12_500.0, 760.0, 106.0], EUROPEAN_OAK),
    solid("ash_european", "European ash", [12_800.0, 720.0, 106.0], EUROPEAN_ASH),
    solid("spruce_norway", "Norway spruce (European whitewood)", [9_700.0, 405.0, 63.0], NORWAY_SPRUCE),
    graded("c24_graded", "Graded softwood C24", [11_000.0, 370.0, 420.0, 24.0], EN_338),
    graded("c16_graded", "Graded softwood C16", [8_000.0, 270.0, 370.0, 16.0], EN_338),
    graded("d30_graded", "Graded hardwood D30", [10_000.0, 640.0, 640.0, 30.0], EN_338_EARLIER),
];
