//! What a person should know about these rows.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// Little is left behind the holes.
    ThinBehindHole,
    /// Shallower or deeper than usual.
    DepthUnusual,
    /// The rows are not whole steps apart.
    RowsOffSteps,
    /// Hinge plates on a row that is not where most of them want it.
    PlateLineUnusual,
    /// Hinge plates on another pitch than theirs.
    PlatePitch,
    /// A plate had to move by more than half a step.
    PlateMovedFar,
    /// Two plates want the same hole.
    PlatesShare,
    /// Nothing is left of the rows.
    NothingLeft,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::ThinBehindHole => "Under 3 mm is left behind the holes: try the depth stop on a scrap of this board.",
            Self::DepthUnusual => "Holes for pins and screws are usually 10 to 13 mm deep.",
            Self::RowsOffSteps => {
                "The rows are no whole number of steps apart: shelves do not mind, but fittings that reach over both rows will not fit."
            }
            Self::PlateLineUnusual => {
                "Most hinge plates want their holes 37 mm behind the front edge, or behind an inset door: see the maker's sheet."
            }
            Self::PlatePitch => "Hinge plates have their holes 32 mm apart: on another pitch they do not fit the row.",
            Self::PlateMovedFar => "A plate was wished beyond the row: it sits on the last two holes.",
            Self::PlatesShare => "Two plates want the same hole: move a hinge.",
            Self::NothingLeft => "The stretches left out leave no hole for a shelf.",
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
