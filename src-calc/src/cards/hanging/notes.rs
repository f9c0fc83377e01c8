//! What a person should know about this cabinet on its wall.

use super::hold::Allowed;
use super::read::Read;
use super::read_fixings::Holding;
use super::weigh::{Weighed, What};
use serde::{Serialize, Serializer};
use std::fmt;

/// A remark on the answer. `Display` is the sentence; serde uses the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Note {
    /// Hinges, screws and the strip were not weighed.
    SmallPartsLeftOut,
    /// The screw is not deep enough in the stud for its full load along the wall.
    Shallow,
    /// Plasterboard or the like lies between the strip and the stud.
    LinedStud,
    /// The rating on the packet is for one kind of wall.
    PacketWall,
    /// The tilt is that of the carcass alone.
    TiltWithoutDoors,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::SmallPartsLeftOut => "Hinges, handles, screws and the cabinet's strip are not weighed: add a kilogram or two to the contents.",
            Self::Shallow => "The screw goes less than 7 diameters into the stud, so it may carry less along the wall.",
            Self::LinedStud => "The formula is for wood on wood; across a board that lies between, a screw bends sooner. Leave something over.",
            Self::PacketWall => "A packet's rating is for the wall it names, sound and dry, and for its distance from edges and from the next one.",
            Self::TiltWithoutDoors => "It is tilted up without its doors.",
        })
    }
}

/// As its sentence.
impl Serialize for Note {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// What applies.
pub(super) fn notes(read: &Read, weighed: &Weighed, allowed: &Allowed) -> Vec<Note> {
    let (shallow, lined) = match read.holding {
        Holding::Screws(screw) => {
            let deep = 7.0 * screw.diameter_mm;
            (allowed.in_stud_mm.is_some_and(|mm| mm > 0.0 && mm < deep), screw.lining_mm > 0.0)
        }
        Holding::Packet { .. } => (false, false),
    };
    let packet = matches!(read.holding, Holding::Packet { .. });
    let doors = weighed.parts.iter().any(|part| part.what == What::Doors);
    let applies = [
        (read.panels.is_some(), Note::SmallPartsLeftOut),
        (shallow, Note::Shallow),
        (lined, Note::LinedStud),
        (packet, Note::PacketWall),
        (doors && read.ceiling.is_some(), Note::TiltWithoutDoors),
    ];
    applies.into_iter().filter_map(|(applies, note)| applies.then_some(note)).collect()
}
