//! The sizes of what is bought: joints, pins, cups.

use crate::cards::joints::{self, Biscuit};
use crate::cards::{cup_hinge, hole_rows};
use crate::measure::Reading;
use serde::{Deserialize, Serialize};

/// What joins the carcass; only the sizes of the joint that is chosen are read. `Default` is what the joints card has.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct JointSizes {
    /// Diameter of a dowel.
    pub dowel_diameter: Reading,
    /// Its length.
    pub dowel_length: Reading,
    /// Thickness of a loose tenon.
    pub tenon_thickness: Reading,
    /// Its width, along the joint.
    pub tenon_width: Reading,
    /// Its length, from part to part.
    pub tenon_length: Reading,
    /// A biscuit, by its number.
    pub biscuit: Biscuit,
    /// Length of a screw; blank for the usual.
    pub screw_length: Reading,
    /// Hole for the thread of a connecting screw.
    pub core: Reading,
    /// Hole for its shank.
    pub shank: Reading,
    /// The greatest distance from joint to joint; blank for the usual.
    pub spacing: Reading,
}

impl Default for JointSizes {
    fn default() -> Self {
        let usual = joints::Inputs::default();
        Self {
            dowel_diameter: usual.dowel_diameter,
            dowel_length: usual.dowel_length,
            tenon_thickness: usual.tenon_thickness,
            tenon_width: usual.tenon_width,
            tenon_length: usual.tenon_length,
            biscuit: usual.biscuit,
            screw_length: usual.screw_length,
            core: usual.core,
            shank: usual.shank,
            spacing: usual.spacing,
        }
    }
}

impl JointSizes {
    /// What the joints card is asked, with the rest as it has it.
    pub(super) fn asked(&self, kind: joints::Kind) -> joints::Inputs {
        let Self { biscuit, .. } = *self;
        let of = Reading::clone;
        joints::Inputs {
            kind,
            dowel_diameter: of(&self.dowel_diameter),
            dowel_length: of(&self.dowel_length),
            tenon_thickness: of(&self.tenon_thickness),
            tenon_width: of(&self.tenon_width),
            tenon_length: of(&self.tenon_length),
            biscuit,
            screw_length: of(&self.screw_length),
            core: of(&self.core),
            shank: of(&self.shank),
            spacing: of(&self.spacing),
            ..joints::Inputs::default()
        }
    }
}

/// Bits. `Default` is what the cards have.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Holes {
    /// Diameter of the holes in a row, for shelf pins and the screws of hinge plates.
    pub pin: Reading,
    /// How deep they are.
    pub pin_depth: Reading,
    /// Diameter of a hinge's cup.
    pub cup: Reading,
    /// How deep it is.
    pub cup_depth: Reading,
}

impl Default for Holes {
    fn default() -> Self {
        let (rows, hinge) = (hole_rows::Inputs::default(), cup_hinge::Inputs::default());
        Self { pin: rows.hole, pin_depth: rows.hole_depth, cup: hinge.cup_diameter, cup_depth: hinge.cup_depth }
    }
}
