//! What a person should know about this shelf's answer.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// The measured thickness lies outside of every line of the table.
    OffTable {
        /// The line that was taken.
        label: &'static str,
    },
    /// The table gives what a board must reach at least.
    LeastValues,
    /// No strength is published for this direction of the board.
    StrengthUnknown,
    /// The strip stands on edge, and the table is for boards lying flat.
    StripOnEdge,
    /// One strip on a deep shelf.
    OneStripOnDeepShelf,
    /// Short and thick.
    Stocky,
    /// The sag is more than the formula can tell.
    PastFormula,
    /// Some support would have to hold the shelf down.
    LiftsOff,
    /// With things in some bays only it sags more.
    Uneven,
    /// Held ends count on sides that do not give.
    HeldEnds,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OffTable { label: "" } => "This thickness is outside of the table's range; its values are used all the same.",
            Self::OffTable { label } => {
                return write!(f, "The table has no line for this thickness; the nearest is used: {label}.");
            }
            Self::LeastValues => {
                "Stiffness and strength are what such a board must reach at least; most boards are stiffer."
            }
            Self::StrengthUnknown => "No strength is published for this direction, so only the sag is judged.",
            Self::StripOnEdge => "The strip's figures are for a board lying flat; on edge they differ a little.",
            Self::OneStripOnDeepShelf => {
                "On a shelf this deep one strip stiffens its own edge only: the other edge sags more than shown. Put one on both edges."
            }
            Self::Stocky => "Under twenty thicknesses long, a shelf sags a little more than bending alone says.",
            Self::PastFormula => "The sag is more than a fiftieth of the span, which is past what the formula can tell.",
            Self::LiftsOff => "A support would have to hold the shelf down: loose, it lifts off there and sags more.",
            Self::Uneven => "With every other bay empty the full ones sag more; that sag is given too.",
            Self::HeldEnds => {
                "Held ends count on joints and sides that do not give at all. Most give: the truth lies between this and loose ends."
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
