//! One mortise, hole or slot with its fellow: how wide, how deep, and what is left round it.

use super::answer::{Fixing, Left, Screw};
use super::read::{Made, Read};
use crate::measure::{Length, LengthError};
use crate::problem::{Problem, Problems};
use crate::stock::joints;

/// Depths of what is in both parts: so long, with room for glue at the bottoms.
struct Depths {
    in_edge: Length,
    in_other: Length,
}

/// The slope of a pocket: the part of a way along the screw that goes square to the face.
pub(super) fn square_to_face() -> f64 {
    joints::POCKET_DEGREES.to_radians().cos()
}

/// Splits a length between both parts: as asked for, or `share` of the face part's thickness but no more than half of
/// the length, and never nearer to the outer face than the skin.
fn split(read: &Read, length: Length, share: Option<(i64, u64)>) -> Result<Depths, Problems> {
    let all = length.plus(read.glue)?;
    let in_other = match (read.face_depth, read.face) {
        (Some(depth), _) => depth,
        (None, None) => all.times(1, 2)?,
        (None, Some(face)) => {
            let most = face.minus(read.skin)?;
            if !most.is_positive() {
                let why = "the face part is no thicker";
                return Err(Problems::one("skin", Problem::TooLarge { most: face.into(), why }));
            }
            let half = all.times(1, 2)?;
            let wish = match share {
                Some((numerator, denominator)) => face.times(numerator, denominator)?.min(half),
                None => half,
            };
            wish.min(most)
        }
    };
    let in_edge = all.minus(in_other)?;
    if !in_edge.is_positive() {
        let why = "nothing would be left for the edge part";
        return Err(Problems::one("face_depth", Problem::TooLarge { most: all.into(), why }));
    }
    Ok(Depths { in_edge, in_other })
}

/// The first length of a list that is long enough, else the last.
fn long_enough(lengths_mm: &[i64], least: Length) -> Result<Length, LengthError> {
    let mut found = Length::ZERO;
    for &mm in lengths_mm {
        found = Length::mm(mm, 1)?;
        if found >= least {
            break;
        }
    }
    Ok(found)
}

fn connecting(
    read: &Read,
    length: Option<Length>,
    core: Length,
    shank: Length,
) -> Result<(Fixing, Option<Screw>), Problems> {
    // `read` has refused a joint of two edges.
    let face = read.face.unwrap_or_default();
    let length = match length {
        Some(length) if length <= face => {
            let why = "it would not come through the face part";
            return Err(Problems::one("screw_length", Problem::TooSmall { least: face.into(), why }));
        }
        Some(length) => length,
        None => long_enough(&joints::CONNECTING_LENGTHS_MM, face.plus(Length::mm(joints::CONNECTING_REACH_MM, 1)?)?)?,
    };
    let reach = length.minus(face)?;
    if !reach.is_positive() {
        let why = "the longest screw sold would not come through";
        return Err(Problems::one("face_thickness", Problem::TooLarge { most: length.into(), why }));
    }
    let in_edge = reach.plus(read.glue)?;
    let fixing = Fixing { across: core, across_other: shank, along: shank, in_edge, in_other: face, through: true };
    Ok((fixing, Some(Screw { length, reach, longest: None })))
}

fn pocket(read: &Read, length: Option<Length>, shoulder: Option<Length>) -> Result<(Fixing, Option<Screw>), Problems> {
    let length = match length {
        Some(length) => length,
        None => {
            let mut usual = Length::ZERO;
            for (tenths, mm) in joints::POCKET_LENGTHS {
                usual = Length::mm(mm, 1)?;
                if read.edge <= Length::mm(tenths, 10)? {
                    break;
                }
            }
            usual
        }
    };
    let shoulder = match shoulder {
        Some(shoulder) => shoulder,
        None => length.times(joints::POCKET_SHARE.0, joints::POCKET_SHARE.1)?,
    };
    let reach = length.minus(shoulder)?;
    if !reach.is_positive() {
        let why = "it would not come out of the edge part";
        return Err(Problems::one("screw_length", Problem::TooSmall { least: shoulder.into(), why }));
    }
    let square = square_to_face();
    let longest = match read.face {
        Some(face) => {
            let along = Length::from_estimate_mm(face.minus(read.skin)?.as_mm() / square)?;
            Some(along.plus(shoulder)?)
        }
        None => None,
    };
    let across = Length::mm(joints::POCKET_SHANK_MM, 1)?;
    let in_other = Length::from_estimate_mm(reach.as_mm() * square)?;
    let fixing = Fixing { across, across_other: across, along: across, in_edge: shoulder, in_other, through: false };
    Ok((fixing, Some(Screw { length, reach, longest })))
}

/// The length of a slot at the surface, cut by a disc to that depth.
fn slot(cutter: Length, depth: Length) -> Result<Length, LengthError> {
    let (diameter, deep) = (cutter.as_mm(), depth.as_mm());
    Length::from_estimate_mm(2.0 * (deep * (diameter - deep)).max(0.0).sqrt())
}

/// One of them, by what it is made with.
pub(super) fn fixing(read: &Read) -> Result<(Fixing, Option<Screw>), Problems> {
    let both = |across: Length, along: Length, depths: Depths| Fixing {
        across,
        across_other: across,
        along,
        in_edge: depths.in_edge,
        in_other: depths.in_other,
        through: false,
    };
    Ok(match read.made {
        Made::Dowel { diameter, length } => (both(diameter, diameter, split(read, length, Some((2, 3)))?), None),
        Made::Tenon { thickness, width, length } => (both(thickness, width, split(read, length, None)?), None),
        Made::Biscuit { size, cutter } => {
            let depths = split(read, Length::mm(size.size_mm().1, 1)?, None)?;
            let deep = depths.in_edge.max(depths.in_other);
            if deep.times(2, 1)? > cutter {
                let least = deep.times(2, 1)?.into();
                let why = "the disc is at least twice as wide as the slot is deep";
                return Err(Problems::one("cutter", Problem::TooSmall { least, why }));
            }
            let along = slot(cutter, deep)?;
            (both(Length::mm(joints::BISCUIT_SLOT_MM, 1)?, along, depths), None)
        }
        Made::Connecting { length, core, shank } => connecting(read, length, core, shank)?,
        Made::Pocket { length, shoulder } => pocket(read, length, shoulder)?,
    })
}

/// What is left of both parts round one of them, the outermost ones included.
pub(super) fn left(read: &Read, fixing: &Fixing, marks: &[Length]) -> Result<Left, LengthError> {
    let half = fixing.across.times(1, 2)?;
    let outer = read.line.minus(half)?;
    let inner = read.edge.minus(read.line)?.minus(half)?;
    let behind = match read.face {
        Some(face) if !fixing.through => Some(face.minus(fixing.in_other)?),
        _ => None,
    };
    let to_end = match read.face {
        Some(_) => Some(read.from_end.plus(read.line)?.minus(fixing.across_other.times(1, 2)?)?),
        None => None,
    };
    let mut ends = read.length;
    if let (Some(first), Some(last)) = (marks.first(), marks.last()) {
        ends = (*first).min(read.length.minus(*last)?).minus(fixing.along.times(1, 2)?)?;
    }
    let least = [Some(outer), Some(inner), behind, to_end, Some(ends)].into_iter().flatten().min().unwrap_or(ends);
    Ok(Left { outer, inner, behind, to_end, ends, least })
}
