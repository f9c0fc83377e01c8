//! The cross-section of a rail: its area and its second moment of area about the level axis through its middle.

use serde::{Deserialize, Serialize};
use std::f64::consts::PI;

/// What the rail looks like when it is cut through.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Shape {
    /// A round tube.
    #[default]
    RoundTube,
    /// A tube of two half circles and two flats.
    OvalTube,
    /// A tube whose outline is an ellipse, and so its hollow.
    EllipseTube,
    /// A solid round bar, such as a dowel.
    RoundBar,
    /// A solid bar with square edges.
    FlatBar,
}

impl Shape {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] =
        &[Self::RoundTube, Self::OvalTube, Self::EllipseTube, Self::RoundBar, Self::FlatBar];

    /// Whether one size says how wide and how high it is.
    pub const fn is_round(self) -> bool {
        matches!(self, Self::RoundTube | Self::RoundBar)
    }

    /// Whether it is hollow.
    pub const fn is_tube(self) -> bool {
        matches!(self, Self::RoundTube | Self::OvalTube | Self::EllipseTube)
    }

    /// Area, mm², and second moment of area, mm⁴, of the outline filled.
    fn filled(self, width: f64, height: f64) -> (f64, f64) {
        match self {
            Self::RoundTube | Self::EllipseTube | Self::RoundBar => {
                (PI * width * height / 4.0, PI * width * height.powi(3) / 64.0)
            }
            Self::FlatBar => (width * height, width * height.powi(3) / 12.0),
            Self::OvalTube => {
                let across = width.min(height);
                let flat = width.max(height) - across;
                let area = flat * across + PI * across * across / 4.0;
                let round = PI * across.powi(4) / 64.0;
                let second = if height > width {
                    // Half circles of radius r, their flats f/2 above and below the axis: with π r² f²/4, 4 f r³/3 and
                    // π r⁴/4 for both, and the rectangle between them.
                    across * flat.powi(3) / 12.0
                        + PI * across * across * flat * flat / 16.0
                        + flat * across.powi(3) / 6.0
                        + round
                } else {
                    flat * across.powi(3) / 12.0 + round
                };
                (area, second)
            }
        }
    }
}

/// A cross-section's figures, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Section {
    /// Area of the material, mm².
    pub area_mm2: f64,
    /// Second moment of the outline filled, mm⁴.
    pub outline_mm4: f64,
    /// Second moment of the hollow, mm⁴; zero for a bar.
    pub hollow_mm4: f64,
    /// Second moment of area about the level axis, mm⁴.
    pub second_moment_mm4: f64,
    /// Section modulus, mm³.
    pub modulus_mm3: f64,
}

impl Section {
    /// `wall` is left alone for a bar. A wall of half the smaller size leaves no hollow.
    pub(super) fn new(shape: Shape, width: f64, height: f64, wall: f64) -> Self {
        let (mut area_mm2, outline_mm4) = shape.filled(width, height);
        let mut hollow_mm4 = 0.0;
        let (inner_width, inner_height) = (width - 2.0 * wall, height - 2.0 * wall);
        if shape.is_tube() && inner_width > 0.0 && inner_height > 0.0 {
            let (area, second) = shape.filled(inner_width, inner_height);
            area_mm2 -= area;
            hollow_mm4 = second;
        }
        let second_moment_mm4 = outline_mm4 - hollow_mm4;
        Self { area_mm2, outline_mm4, hollow_mm4, second_moment_mm4, modulus_mm3: second_moment_mm4 / (height / 2.0) }
    }
}
