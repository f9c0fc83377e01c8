//! What a person gives for joints along an edge.

use crate::measure::{Figure, Reading};
use serde::{Deserialize, Serialize};

/// What holds the parts together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Dowels.
    #[default]
    Dowel,
    /// Loose tenons in mortises of both parts.
    LooseTenon,
    /// Biscuits in slots of both parts.
    Biscuit,
    /// One-piece connecting screws through the face part into the edge.
    ConnectingScrew,
    /// Screws out of sloping pockets of the edge part.
    PocketScrew,
}

impl Kind {
    /// Every kind, in the order of a list.
    pub const ALL: &'static [Self] =
        &[Self::Dowel, Self::LooseTenon, Self::Biscuit, Self::ConnectingScrew, Self::PocketScrew];

    /// Whether it is a screw.
    pub const fn is_screw(self) -> bool {
        matches!(self, Self::ConnectingScrew | Self::PocketScrew)
    }
}

/// What the edge part meets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Meeting {
    /// The face of the other part, as a shelf meets a side.
    #[default]
    Face,
    /// Another edge, as in a board glued up from two.
    Edge,
}

impl Meeting {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Face, Self::Edge];
}

/// How the joints are spread between the two outer ones.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Spread {
    /// Evenly, from end to end.
    #[default]
    Even,
    /// In steps of 32 mm from the first; the last is as far from its end as it comes out.
    Steps,
}

impl Spread {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Even, Self::Steps];
}

/// The size of a biscuit, by its number.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Biscuit {
    /// 47 × 15 mm.
    No0,
    /// 53 × 19 mm.
    No10,
    /// 56 × 23 mm.
    #[default]
    No20,
}

impl Biscuit {
    /// Every size.
    pub const ALL: &'static [Self] = &[Self::No0, Self::No10, Self::No20];

    /// Length and width, mm.
    pub const fn size_mm(self) -> (i64, i64) {
        match self {
            Self::No0 => (47, 15),
            Self::No10 => (53, 19),
            Self::No20 => (56, 23),
        }
    }
}

/// What the maker gives. Along the joint everything is measured from one end, the front.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What holds the parts together.
    pub kind: Kind,
    /// What the edge part meets.
    pub meeting: Meeting,
    /// Length of the joint.
    pub length: Reading,
    /// Thickness of the edge part.
    pub edge_thickness: Reading,
    /// Thickness of the face part; only read for [`Meeting::Face`].
    pub face_thickness: Reading,
    /// From the end of the face part to the outer face of the edge part; only read for [`Meeting::Face`].
    pub from_end: Reading,
    /// From the outer face of the edge part to the middle of the joint; blank for the middle of its thickness. Pockets
    /// always come out in the middle.
    pub line: Reading,
    /// The first from the front end; blank for the usual.
    pub end_distance: Reading,
    /// The last from the back end; blank for the same.
    pub other_end: Reading,
    /// The greatest distance from middle to middle; blank for the usual.
    pub spacing: Reading,
    /// How they are spread.
    pub spread: Spread,
    /// How many, whatever the greatest distance; blank for as many as it asks for.
    pub count: Figure,
    /// The least that is left all round.
    pub skin: Reading,
    /// Depth in the face part, or in the second edge; blank for the usual. Not read for screws.
    pub face_depth: Reading,
    /// Room for glue at the bottoms, both together; for connecting screws the hole's depth beyond the point.
    pub glue: Reading,
    /// Diameter of the dowel.
    pub dowel_diameter: Reading,
    /// Length of the dowel.
    pub dowel_length: Reading,
    /// Thickness of the tenon.
    pub tenon_thickness: Reading,
    /// Width of the tenon, along the joint.
    pub tenon_width: Reading,
    /// Length of the tenon, from part to part.
    pub tenon_length: Reading,
    /// The biscuit.
    pub biscuit: Biscuit,
    /// Diameter of the disc that cuts its slot.
    pub cutter: Reading,
    /// Length of the screw; blank for the usual.
    pub screw_length: Reading,
    /// Hole for the thread of a connecting screw, in the edge.
    pub core: Reading,
    /// Hole for its shank, through the face part.
    pub shank: Reading,
    /// Pocket screws: from the end of the edge part to the shoulder on which the head sits, along the screw; blank for
    /// three fifths of it.
    pub shoulder: Reading,
}

/// The bottom of a potting-shed cupboard between its sides.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            kind: Kind::Dowel,
            meeting: Meeting::Face,
            length: Reading::mm("330"),
            edge_thickness: Reading::mm("14.6"),
            face_thickness: Reading::mm("14.6"),
            from_end: Reading::mm("0"),
            line: Reading::default(),
            end_distance: Reading::mm("45"),
            other_end: Reading::default(),
            spacing: Reading::mm("128"),
            spread: Spread::Even,
            count: Figure::default(),
            skin: Reading::mm("3"),
            face_depth: Reading::default(),
            glue: Reading::mm("2"),
            dowel_diameter: Reading::mm("6"),
            dowel_length: Reading::mm("30"),
            tenon_thickness: Reading::mm("5"),
            tenon_width: Reading::mm("30"),
            tenon_length: Reading::mm("30"),
            biscuit: Biscuit::No20,
            cutter: Reading::mm("100"),
            screw_length: Reading::default(),
            core: Reading::mm("5"),
            shank: Reading::mm("7"),
            shoulder: Reading::default(),
        }
    }
}
