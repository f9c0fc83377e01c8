//! What a person gives for a cabinet on a wall cleat.

use crate::measure::{AngleReading, Reading};
use serde::{Deserialize, Serialize};

/// Where the cabinet's back lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Back {
    /// In front of the rear edges of sides, top and bottom: the strips hide behind it and the cabinet lies on the wall.
    #[default]
    Inset,
    /// Flush with the rear edges: the strips hold the cabinet off the wall by their thickness.
    Flush,
}

impl Back {
    /// Both, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Inset, Self::Flush];
}

/// What the maker gives. `Default` hangs the potting-shed cupboard.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Thickness of both strips.
    pub thickness: Reading,
    /// Height of both strips, over the wide face.
    pub strip_height: Reading,
    /// The bevel, from square: 30 to 60°.
    pub bevel: AngleReading,
    /// What the blade takes, measured square to it.
    pub kerf: Reading,
    /// Where the cabinet's back lies.
    pub back: Back,
    /// How much farther than the strip's thickness the back is set in, so that the bevel draws the cabinet to the wall;
    /// for [`Back::Inset`].
    pub slack: Reading,
    /// Outer width of the cabinet.
    pub cabinet_width: Reading,
    /// Outer height of the cabinet.
    pub cabinet_height: Reading,
    /// Thickness of its sides.
    pub side: Reading,
    /// From the cabinet's top down to the upper edge of its strip; the spacer keeps the same from its bottom.
    pub below_top: Reading,
    /// How high above the floor the cabinet's top is to be.
    pub top_at: Reading,
    /// How high the ceiling is; blank if nothing is above.
    pub ceiling: Reading,
    /// How much shorter than the room for it the wall strip is at each end.
    pub end_gap: Reading,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            thickness: Reading::mm("14.6"),
            strip_height: Reading::mm("70"),
            bevel: AngleReading::from("45"),
            kerf: Reading::mm("3.2"),
            back: Back::Inset,
            slack: Reading::mm("0.5"),
            cabinet_width: Reading::mm("829.2"),
            cabinet_height: Reading::mm("1169.2"),
            side: Reading::mm("14.6"),
            below_top: Reading::mm("14.6"),
            top_at: Reading::mm("2100"),
            ceiling: Reading::mm("2300"),
            end_gap: Reading::mm("10"),
        }
    }
}
