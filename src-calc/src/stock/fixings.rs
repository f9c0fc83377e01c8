//! What holds a cabinet on a wall: wood screws in studs by published formulas, and what the packet says for the rest.

use crate::source::Source;
use serde::{Deserialize, Serialize};

/// A pound per square inch in N/mm².
const MPA_PER_PSI: f64 = 0.006_894_757_293_168;

/// Allowed pull out of side grain, per length of thread.
pub const WITHDRAWAL: Source = Source::published(
    "civil engineering formula handbook, eq. 6.37, and AWC National Design Specification: 2850·G²·D pounds per inch of thread in side grain (19.65·G²·D N/mm); none in end grain",
);
/// The pull at which a screw comes out.
pub const ULTIMATE: Source =
    Source::memory("Wood Handbook, FPL-GTR-190, chapter 8: 15 700·G²·D·L pounds, 5.5 times the allowed pull");
/// Allowed load across the screw.
pub const LATERAL: Source = Source::published(
    "civil engineering formula handbook, eq. 6.38: C·D² pounds, C = 4800, 3960, 3240 or 2520 from the hardest group of woods to the softest; superseded by yield equations",
);
/// Which group a wood belongs to, and how deep the screw must go for the full load.
pub const GROUPS: Source = Source::memory(
    "older National Design Specification: groups by specific gravity, here at or below its bounds; full lateral load from 7 diameters in the stud, in proportion down to 4",
);
/// Loads that stay.
pub const PERMANENT: Source = Source::memory("National Design Specification: 0.9 on both for loads that stay");
/// How much of a wood screw is thread.
pub const THREAD: Source = Source::practice("two thirds of a wood screw's length is thread");
/// Ratings of plugs and anchors.
pub const PACKET: Source = Source::practice(
    "the maker's rating for that wall, from the packet; where only the load at which it fails is printed, a quarter of it",
);
/// Shank diameters of the gauges.
pub const GAUGES: Source = Source::memory("ASME B18.6.1: diameter of the shank");

/// The specific gravity of common studs, oven-dry.
pub const STUDS: Source = Source::published(
    "AWC National Design Specification, table 12.3.3A (as transcribed): oven-dry specific gravity of framing lumber",
);

/// On loads that stay for years.
pub const PERMANENT_FACTOR: f64 = 0.9;
/// Of a screw's length.
pub const THREAD_SHARE: f64 = 2.0 / 3.0;
/// Wood on wood, for the wedge of a bevel.
pub const FRICTION: f64 = 0.3;

/// A wood screw by its gauge.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Screw {
    /// No. 6, 3.5 mm.
    No6,
    /// No. 8, 4.2 mm.
    No8,
    /// No. 10, 4.8 mm.
    #[default]
    No10,
    /// No. 12, 5.5 mm.
    No12,
    /// No. 14, 6.1 mm.
    No14,
    /// A diameter of one's own.
    Own,
}

impl Screw {
    /// Thin to thick, one's own last.
    pub const ALL: &'static [Self] = &[Self::No6, Self::No8, Self::No10, Self::No12, Self::No14, Self::Own];

    /// Diameter of the shank, in millimetres; none for one's own.
    pub const fn diameter_mm(self) -> Option<f64> {
        match self {
            Self::No6 => Some(0.138 * 25.4),
            Self::No8 => Some(0.164 * 25.4),
            Self::No10 => Some(0.190 * 25.4),
            Self::No12 => Some(0.216 * 25.4),
            Self::No14 => Some(0.242 * 25.4),
            Self::Own => None,
        }
    }
}

/// What the studs are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Stud {
    /// Spruce-pine-fir from the south.
    SprucePineFirSouth,
    /// Spruce-pine-fir.
    #[default]
    SprucePineFir,
    /// Hem-fir.
    HemFir,
    /// Douglas fir-larch.
    DouglasFir,
    /// Southern pine.
    SouthernPine,
    /// A specific gravity of one's own.
    Own,
}

impl Stud {
    /// Soft to hard, one's own last.
    pub const ALL: &'static [Self] =
        &[Self::SprucePineFirSouth, Self::SprucePineFir, Self::HemFir, Self::DouglasFir, Self::SouthernPine, Self::Own];

    /// Oven-dry specific gravity; none for one's own.
    pub const fn gravity(self) -> Option<f64> {
        match self {
            Self::SprucePineFirSouth => Some(0.36),
            Self::SprucePineFir => Some(0.42),
            Self::HemFir => Some(0.43),
            Self::DouglasFir => Some(0.50),
            Self::SouthernPine => Some(0.55),
            Self::Own => None,
        }
    }
}

/// Allowed pull out of side grain in N, before the factor for loads that stay: `2850·G²·D` lb per inch of thread.
pub fn withdrawal_n(gravity: f64, diameter_mm: f64, thread_mm: f64) -> f64 {
    2850.0 * MPA_PER_PSI * gravity * gravity * diameter_mm * thread_mm
}

/// The pull at which a screw comes out, in N: `15 700·G²·D·L` lb.
pub fn ultimate_withdrawal_n(gravity: f64, diameter_mm: f64, thread_mm: f64) -> f64 {
    15_700.0 * MPA_PER_PSI * gravity * gravity * diameter_mm * thread_mm
}

/// The C of `C·D²`, in N/mm².
pub fn lateral_constant(gravity: f64) -> f64 {
    let psi = match gravity {
        dense if dense >= 0.62 => 4800.0,
        dense if dense >= 0.55 => 3960.0,
        dense if dense >= 0.43 => 3240.0,
        _ => 2520.0,
    };
    psi * MPA_PER_PSI
}

/// The share of the lateral load that a screw so deep in the stud may carry: all from 7 diameters, none below 4.
pub fn depth_share(in_stud_mm: f64, diameter_mm: f64) -> f64 {
    let diameters = in_stud_mm / diameter_mm;
    if diameters < 4.0 { 0.0 } else { (diameters / 7.0).min(1.0) }
}

/// Allowed load across a screw in N, before the factor for loads that stay: `C·D²` lb, less where it is not deep enough.
pub fn lateral_n(gravity: f64, diameter_mm: f64, in_stud_mm: f64) -> f64 {
    lateral_constant(gravity) * diameter_mm * diameter_mm * depth_share(in_stud_mm, diameter_mm)
}
