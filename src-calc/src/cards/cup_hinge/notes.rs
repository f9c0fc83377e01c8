//! What a person should know about this door's answer.

use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// The plate would be lower than none.
    PlateBelowZero,
    /// No plate of that height can be had.
    PlateNotSold,
    /// The cup would come nearer to the edge than 3 mm, or farther than 7.
    CupEdgeUnusual,
    /// The door stands out past the side.
    PastTheSide,
    /// The two doors on the partition touch.
    DoorsTouch,
    /// The inset door touches the side.
    InsetTouches,
    /// Little is left behind the cup.
    ThinBehindCup,
    /// The outer hinges sit close to the ends of the door.
    NearTheEnds,
    /// The door is wider than its outer hinges are apart.
    WiderThanHinges,
    /// The door is wider than makers allow.
    TooWide,
    /// The door is higher or heavier than the table of hinges goes.
    BeyondTable,
    /// Fewer hinges than the table says.
    FewHinges,
    /// A plate's hole lies above or below the opening.
    PlateOutside,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::PlateBelowZero => {
                "No plate is lower than 0: move the cup farther in, take an arm with a larger constant, or cover less."
            }
            Self::PlateNotSold => {
                "No plate in your list has this height: take the nearest and see what overlay it gives, or turn the side screw."
            }
            Self::CupEdgeUnusual => {
                "Most hinges want 3 to 7 mm from the door's edge to the cup: see the maker's sheet before drilling."
            }
            Self::PastTheSide => "The door would stand out past the outer face of the side.",
            Self::DoorsTouch => "The two doors on the partition would touch.",
            Self::InsetTouches => "The door would touch the side: an inset door needs a gap.",
            Self::ThinBehindCup => "Under 3 mm is left behind the cup: try the depth stop on a scrap.",
            Self::NearTheEnds => "Makers want the outer hinges at least 80 mm from the ends of the door.",
            Self::WiderThanHinges => {
                "The door is wider than its outer hinges are apart: it will hang out of level. Move them outwards or make two doors."
            }
            Self::TooWide => "The door is over 650 mm wide, more than makers allow on such hinges.",
            Self::BeyondTable => {
                "The door is higher or heavier than the table goes (2400 mm, 22 kg): ask the hinge's maker, or make it in two."
            }
            Self::FewHinges => "The table asks for more hinges for a door of this size and weight.",
            Self::PlateOutside => "A plate would lie above or below the opening: move that hinge.",
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
