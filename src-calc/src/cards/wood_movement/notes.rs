//! What a person should know about this part's movement.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// Some moisture lies outside of 6 to 14 %.
    OutOfRange,
    /// Along the grain.
    Along,
    /// The part is made damper than it will ever be, or drier.
    MadeOutside,
    /// A panel held in its middle.
    PinTheMiddle,
    /// Flat-sawn and wide.
    WideFlatSawn,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutOfRange => {
                "Outside of 6 to 14 % of moisture the coefficients do not hold: take this as a rough figure."
            }
            Self::Along => "Along the grain wood moves by 0.1 to 0.2 % from green to dry: next to nothing indoors.",
            Self::MadeOutside => {
                "As made, the wood is damper or drier than it will ever be again, so it moves one way only. Let it settle where it will stand, and make it then."
            }
            Self::PinTheMiddle => {
                "Fix the part in its middle only, with a pin or a dab of glue, so that it moves both ways alike."
            }
            Self::WideFlatSawn => "Quarter-sawn, this wood moves about half as far, and it stays flatter.",
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
