//! What a person gives for pieces on a length.

use crate::measure::{Figure, Reading};
use serde::{Deserialize, Serialize};

/// What is made even. With half a gap or a piece at each end both come to the same.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Even {
    /// The gaps, from edge to edge.
    #[default]
    Gaps,
    /// The centres, and the ends of the length count as centres.
    Centres,
}

impl Even {
    /// Both, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Gaps, Self::Centres];
}

/// What is at each end of the length.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Ends {
    /// A gap like the others: even gaps all through, or as far to the first centre as from centre to centre.
    #[default]
    Gap,
    /// Half a gap: every piece stands in the middle of an equal share of the length.
    Half,
    /// A piece, flush with the end.
    Piece,
    /// A distance of one's own: to the edge of the outer piece for even gaps, to its centre for even centres.
    Own,
}

impl Ends {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Gap, Self::Half, Self::Piece, Self::Own];

    /// The fewest pieces that this takes: both ends want one where the ends are fixed.
    pub(super) const fn fewest(self) -> u32 {
        match self {
            Self::Gap | Self::Half => 1,
            Self::Piece | Self::Own => 2,
        }
    }
}

/// What decides how many pieces there are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum By {
    /// Their number is given.
    #[default]
    Count,
    /// No gap may be larger than one that is given; the fewest pieces that do it are taken.
    LargestGap,
}

impl By {
    /// Both, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Count, Self::LargestGap];
}

/// What the maker gives. `Default` is a shelf of slats in a potting-shed cupboard, for wet pots.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// The length that the pieces stand on.
    pub length: Reading,
    /// Width of a piece along it; zero for bare marks such as screws.
    pub width: Reading,
    /// What is made even.
    pub even: Even,
    /// What is at each end.
    pub ends: Ends,
    /// The distance for [`Ends::Own`].
    pub end: Reading,
    /// What decides how many.
    pub by: By,
    /// How many pieces, for [`By::Count`].
    pub count: Figure,
    /// The largest gap, for [`By::LargestGap`]; gaps at the ends keep to it too, unless they are given.
    pub largest_gap: Reading,
    /// From where the tape is hooked to where the length begins.
    pub datum: Reading,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            length: Reading::mm("800"),
            width: Reading::mm("45"),
            even: Even::Gaps,
            ends: Ends::Gap,
            end: Reading::mm("50"),
            by: By::Count,
            count: "7".into(),
            largest_gap: Reading::mm("20"),
            datum: Reading::mm("0"),
        }
    }
}
