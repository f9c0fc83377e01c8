//! What a person should know about this rail's answer.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// The hangers are wider than the cabinet is deep.
    HangersDoNotFit,
    /// The hangers go in, with less room around them than wanted.
    ClothesTouch,
    /// The clothes reach lower than wanted.
    TooLong,
    /// There is little room to lift a hook off.
    HooksCatch,
    /// The rail lies flat.
    LiesFlat,
    /// With the clothes in some bays only it sags more.
    Uneven,
    /// The load is less than what rails are tested with.
    BelowTestLoad,
    /// The sag is more than the formula can tell.
    PastFormula,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::HangersDoNotFit => {
                "The hangers are wider than the cabinet is deep. Hang the clothes facing forward, on a short rail from back to front."
            }
            Self::ClothesTouch => "The hangers fit, but sleeves will rub on the back and on the doors.",
            Self::TooLong => "There is less room under the hems than wanted, or none.",
            Self::HooksCatch => "Under 50 mm between the rail and what is above it, hooks are hard to lift off.",
            Self::LiesFlat => "Hung with the greater size upright, this rail would sag less.",
            Self::Uneven => "With the clothes pushed together in some bays only it sags more; that sag is given too.",
            Self::BelowTestLoad => {
                "Rails are commonly tested with 40 kg a metre, which is more than this load (EN 14749, from memory)."
            }
            Self::PastFormula => "The sag is more than a fiftieth of the span, which is past what the formula can tell.",
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
