//! What a person should know about these joints.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// Thicker than half of the board.
    Thick,
    /// Thinner than a third of the board, as far as makers go.
    Slight,
    /// An outer one closer to the end than usual.
    NearTheEnd,
    /// An outer one farther from the end than usual.
    FarFromTheEnd,
    /// Farther apart than usual.
    FarApart,
    /// Only one.
    Single,
    /// A tenon's mortise shallower or deeper than usual.
    TenonDepth,
    /// A tenon narrower or wider than usual.
    TenonWidth,
    /// A board thinner than connecting screws are made for.
    ThinForScrew,
    /// A screw that reaches less far than usual.
    ShortReach,
    /// A pocket screw longer than leaves the skin.
    ScrewTooLong,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Thick => "It is thicker than half of the board: the cheeks beside it are weak. Take a thinner one.",
            Self::Slight => "It is thinner than a third of the board: a thicker one would hold more.",
            Self::NearTheEnd => "Closer to an end than usual: the wood may split there.",
            Self::FarFromTheEnd => "Farther from an end than usual: the joint may gape there.",
            Self::FarApart => "Farther apart than usual: add one.",
            Self::Single => "A single one lets the part turn: glue it, or add another.",
            Self::TenonDepth => "Mortises for loose tenons are usually 15 to 25 mm deep in each part.",
            Self::TenonWidth => "Loose tenons are usually 20 to 50 mm wide.",
            Self::ThinForScrew => {
                "One-piece connecting screws are made for boards of 16 mm and more: a thinner edge may burst."
            }
            Self::ShortReach => "The screw reaches less than 30 mm into the edge: take a longer one.",
            Self::ScrewTooLong => {
                "This screw leaves less than the wanted skin: take a shorter one, or set the shoulder farther back."
            }
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
