//! The metals that rails are made of: stiffness, least strength, weight.

use crate::source::Source;

/// A metal's figures. Metals do not creep in a house.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Metal {
    /// The name in words.
    pub name: &'static str,
    /// Modulus of elasticity, MPa.
    pub stiffness_mpa: f64,
    /// Stress at which it begins to stay bent, the least of the usual grades, MPa.
    pub yield_mpa: f64,
    /// kg/m³.
    pub density_kg_m3: f64,
    /// Who says so.
    pub source: Source,
}

/// What [`Metal::yield_mpa`] is divided by to get the stress that may stay.
pub const DIVISOR: f64 = 1.5;

/// Who says so.
pub const DIVISOR_SOURCE: Source =
    Source::practice("two thirds of the stress at which the metal begins to stay bent, as for steelwork");

/// Plain or plated steel tube and bar.
pub const STEEL: Metal = Metal {
    name: "Steel",
    stiffness_mpa: 210_000.0,
    yield_mpa: 190.0,
    density_kg_m3: 7850.0,
    source: Source::memory(
        "EN 10305-3, the softest usual grade of welded tube (E190) yields at 190 MPa; modulus and density of steel published, EN 1993-1-1",
    ),
};

/// Stainless steel of the 18/10 kind.
pub const STAINLESS: Metal = Metal {
    name: "Stainless steel",
    stiffness_mpa: 200_000.0,
    yield_mpa: 210.0,
    density_kg_m3: 7900.0,
    source: Source::memory("EN 1993-1-4 and EN 10088, grade 1.4301"),
};

/// Extruded aluminium.
pub const ALUMINIUM: Metal = Metal {
    name: "Aluminium",
    stiffness_mpa: 69_500.0,
    yield_mpa: 120.0,
    density_kg_m3: 2700.0,
    source: Source::published("EN 755-2, alloy 6060 T5 extrusions, as quoted on two stockists' data sheets"),
};

/// Brass tube and bar.
pub const BRASS: Metal = Metal {
    name: "Brass",
    stiffness_mpa: 100_000.0,
    yield_mpa: 120.0,
    density_kg_m3: 8400.0,
    source: Source::memory("brass of 63 parts copper and 37 zinc, annealed; drawn tube is stronger"),
};
