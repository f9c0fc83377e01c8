//! The plan section through a hinge.

use super::Door;
use super::answer::{Plan, Rect};
use super::inputs::Mounting;
use super::read::Read;
use crate::measure::{Length, LengthError};

/// How far the side is drawn behind the line of the plate's holes, and how long a plate, mm.
const BEHIND_MM: i64 = 60;
const PLATE_MM: i64 = 32;

pub(super) fn plan(mounting: Mounting, read: &Read, door: &Door) -> Result<Plan, LengthError> {
    let line = door.plate_line;
    let edge = read.side.minus(read.overlay)?;
    let front = match mounting {
        Mounting::Full | Mounting::Half => read.door_thickness.negated(),
        Mounting::Inset => Length::ZERO,
    };
    let board = |left, width| Rect { left, front, width, depth: read.door_thickness };
    let neighbour = match mounting {
        Mounting::Half => Some(board(Length::ZERO, read.overlay)),
        Mounting::Full | Mounting::Inset => None,
    };
    let plate_height = if read.plate_height.is_negative() { Length::ZERO } else { read.plate_height };
    Ok(Plan {
        side: Rect {
            left: Length::ZERO,
            front: Length::ZERO,
            width: read.side,
            depth: line.plus(Length::mm(BEHIND_MM, 1)?)?,
        },
        door: board(edge, door.width.nominal()),
        cup: Rect {
            left: edge.plus(read.cup_edge)?,
            front: front.plus(door.left_behind)?,
            width: read.cup_diameter,
            depth: read.cup_depth,
        },
        plate: Rect {
            left: read.side,
            front: line.minus(Length::mm(PLATE_MM, 2)?)?,
            width: plate_height,
            depth: Length::mm(PLATE_MM, 1)?,
        },
        plate_line: line,
        neighbour,
    })
}
