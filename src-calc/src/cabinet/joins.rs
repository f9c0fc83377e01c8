//! Where the parts of the carcass are joined, and the marks on both parts of every joint.

use super::ask::{Asked, answered, reading};
use super::inputs::{Corners, Inputs};
use super::part::{Axis, Hand, Part, What};
use crate::cards::joints;
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use serde::Serialize;

/// Joints that are alike: marked by the same measurements on both parts.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Join {
    /// The parts whose ends are joined, and those whose faces they meet, by their places in the list of parts.
    pub pairs: Vec<(usize, usize)>,
    /// The ends begin so far behind the front edge of the faces: so much is added to every mark there.
    pub front_gap: Length,
    /// The line on each of the faces, pair by pair, from its lower or its left end.
    pub lines: Vec<Length>,
    /// How many, where, how deep.
    pub marks: joints::Answer,
}

const NAMES: &[(&str, &str)] = &[
    ("edge_thickness", "carcass.thickness"),
    ("face_thickness", "carcass.thickness"),
    ("dowel_diameter", "joint_sizes.dowel_diameter"),
    ("dowel_length", "joint_sizes.dowel_length"),
    ("tenon_thickness", "joint_sizes.tenon_thickness"),
    ("tenon_width", "joint_sizes.tenon_width"),
    ("tenon_length", "joint_sizes.tenon_length"),
    ("screw_length", "joint_sizes.screw_length"),
    ("core", "joint_sizes.core"),
    ("shank", "joint_sizes.shank"),
    ("spacing", "joint_sizes.spacing"),
    ("length", "depth"),
    ("end_distance", "depth"),
];

/// The front of a part, its edging included.
fn front(parts: &[Part], on: usize) -> Option<Length> {
    let own = parts.get(on)?.place.along(Axis::Deep).1;
    let edging = parts.iter().find(|part| part.what == What::Edging { on } && part.thick == Axis::Deep);
    Some(edging.map_or(own, |edging| edging.place.along(Axis::Deep).1))
}

/// The parts whose faces a part's two ends meet.
fn met(what: What, bays: u32, corners: Corners) -> Option<[What; 2]> {
    let sides = [What::Side(Hand::Left), What::Side(Hand::Right)];
    Some(match what {
        What::Top | What::Bottom if corners == Corners::Between => sides,
        What::Side(_) if corners == Corners::Over => [What::Bottom, What::Top],
        What::Upright { .. } => [What::Bottom, What::Top],
        What::FixedShelf { bay, .. } => [
            if bay == 1 { sides[0] } else { What::Upright { after: bay - 1 } },
            if bay == bays { sides[1] } else { What::Upright { after: bay } },
        ],
        _ => return None,
    })
}

/// Every joint of the carcass, those that are alike together.
pub(super) fn joins(inputs: &Inputs, bays: u32, parts: &[Part], asked: &mut Asked) -> Result<Vec<Join>, Problems> {
    let mut joins: Vec<(joints::Inputs, Join)> = Vec::new();
    for (edge, part) in parts.iter().enumerate() {
        let Some(faces) = met(part.what, bays, inputs.corners) else { continue };
        for face in faces {
            let Some(on) = parts.iter().position(|part| part.what == face) else { continue };
            join(inputs, parts, (edge, on), &mut joins)?;
        }
    }
    asked.joints = joins.first().map(|(asked, _)| asked.clone());
    Ok(joins.into_iter().map(|(_, join)| join).collect())
}

fn join(
    inputs: &Inputs,
    parts: &[Part],
    (edge, on): (usize, usize),
    joins: &mut Vec<(joints::Inputs, Join)>,
) -> Result<(), Problems> {
    let (Some(part), Some(face)) = (parts.get(edge), parts.get(on)) else { return Ok(()) };
    let (Some(part_front), Some(face_front)) = (front(parts, edge), front(parts, on)) else { return Ok(()) };
    let (rear, _) = part.place.along(Axis::Deep);
    // Along the length of the face part.
    let (datum, end) = face.place.along(face.grain);
    let (near, far) = part.place.along(face.grain);
    let from_end = near.minus(datum)?.min(end.minus(far)?);
    let asked = joints::Inputs {
        length: reading(part_front.minus(rear)?),
        edge_thickness: reading(part.thickness),
        face_thickness: reading(face.thickness),
        from_end: reading(from_end),
        ..inputs.joint_sizes.asked(inputs.joint)
    };
    let front_gap = face_front.minus(part_front)?;
    let line = middle(near, far)?.minus(datum)?;
    // How far from the end does not change the marks along it.
    let alike = |(other, join): &&mut (joints::Inputs, Join)| {
        join.front_gap == front_gap
            && (&other.length, &other.edge_thickness, &other.face_thickness)
                == (&asked.length, &asked.edge_thickness, &asked.face_thickness)
    };
    if let Some((_, join)) = joins.iter_mut().find(alike) {
        join.pairs.push((edge, on));
        join.lines.push(line);
        return Ok(());
    }
    let marks = answered(joints::solve(&asked), NAMES)?;
    joins.push((asked, Join { pairs: vec![(edge, on)], front_gap, lines: vec![line], marks }));
    Ok(())
}

fn middle(near: Length, far: Length) -> Result<Length, LengthError> {
    near.plus(far)?.times(1, 2)
}
