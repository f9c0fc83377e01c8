//! Where the parts of the carcass are joined, and the marks on both parts of every joint.

use super::ask::{Asked, answered, reading};
use super::frame::Frame;
use super::inputs::{Back, Corners, Inputs};
use super::part::{Axis, Block, Hand, Part, What};
use crate::cards::joints::{self, Kind, Stays};
use crate::measure::{Length, LengthError};
use crate::problem::Problems;
use serde::Serialize;

/// Joints that are alike: marked by the same measurements on both parts.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Join {
    /// The parts whose ends are joined, and those whose faces they meet, by their places in the list of parts.
    pub pairs: Vec<(usize, usize)>,
    /// Which way the marks run: from the finished front edge to the rear, from the upper edge down, or from the left end.
    pub along: Axis,
    /// The ends begin so far from where the marks on the faces begin: so much is added to every mark there.
    pub gap: Length,
    /// The line on each of the faces, pair by pair: from its lower or left end, or from its finished front edge where the
    /// marks run down or across.
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
    ("count", "joint_sizes.spacing"),
    ("skin", "groove_depth"),
];

/// The front of a part, its edging included.
fn front(parts: &[Part], on: usize) -> Option<Length> {
    let own = parts.get(on)?.place.along(Axis::Deep).1;
    let edging = parts.iter().find(|part| part.what == What::Edging { on } && part.thick == Axis::Deep);
    Some(edging.map_or(own, |edging| edging.place.along(Axis::Deep).1))
}

/// The parts whose faces a part meets, and which way each joint runs.
fn met(what: What, bays: u32, inputs: &Inputs) -> Vec<(What, Axis)> {
    let sides = [What::Side(Hand::Left), What::Side(Hand::Right)];
    let beside = |bay: u32| {
        [
            if bay == 1 { sides[0] } else { What::Upright { after: bay - 1 } },
            if bay == bays { sides[1] } else { What::Upright { after: bay } },
        ]
    };
    let ends = |faces: [What; 2], along: Axis| faces.map(|face| (face, along)).to_vec();
    // What a cabinet hangs by is held by the top as well.
    let hung = |faces: [What; 2]| [ends(faces, Axis::Up), vec![(What::Top, Axis::Across)]].concat();
    match what {
        What::Top | What::Bottom if inputs.corners == Corners::Between => ends(sides, Axis::Deep),
        What::Side(_) if inputs.corners == Corners::Over => ends([What::Bottom, What::Top], Axis::Deep),
        What::Upright { .. } => ends([What::Bottom, What::Top], Axis::Deep),
        What::FixedShelf { bay, .. } => ends(beside(bay), Axis::Deep),
        What::HangingRail { bay } => hung(beside(bay)),
        // On a back that is planted on it is screwed through that.
        What::CabinetStrip if inputs.back != Back::Planted => hung(sides),
        _ => Vec::new(),
    }
}

/// Every joint of the carcass, those that are alike together.
pub(super) fn joins(inputs: &Inputs, frame: &Frame, parts: &[Part], asked: &mut Asked) -> Result<Vec<Join>, Problems> {
    let bays = u32::try_from(frame.bays.len()).unwrap_or(u32::MAX);
    let mut joins: Vec<(joints::Inputs, Join)> = Vec::new();
    for (edge, part) in parts.iter().enumerate() {
        // How far what is in the ends of this part comes along it, which what is in its edge has to keep clear of.
        let mut ends = Length::ZERO;
        for (face, along) in met(part.what, bays, inputs) {
            let Some(on) = parts.iter().position(|part| part.what == face) else { continue };
            let Some(meeting) = Meeting::of(frame, parts, (edge, on), along)? else { continue };
            ends = meeting.join(inputs, (edge, on), ends, &mut joins)?.max(ends);
        }
    }
    asked.joints = joins.first().map(|(asked, _)| asked.clone());
    Ok(joins.into_iter().map(|(_, join)| join).collect())
}

/// Where an end of one part meets a face of another.
struct Meeting {
    along: Axis,
    /// How long the joint is.
    length: Length,
    /// So much of that, at the far end, is taken by the back and what it lies in.
    taken: Length,
    /// So much of it, at its beginning and at its end, lies past the face.
    past: [Length; 2],
    /// From where marks on the face begin to where those on the end do.
    gap: Length,
    /// The middle of the end on the face.
    line: Length,
    /// From the end of the face to the end that meets it.
    from_end: Length,
    thickness: [Length; 2],
    /// Another part may meet the other face of the same board at the same place, on its left: this one is on the right.
    second: bool,
}

impl Meeting {
    fn of(frame: &Frame, parts: &[Part], (edge, on): (usize, usize), along: Axis) -> Result<Option<Self>, LengthError> {
        let (Some(part), Some(face)) = (parts.get(edge), parts.get(on)) else { return Ok(None) };
        let (Some(part_front), Some(face_front)) = (front(parts, edge), front(parts, on)) else { return Ok(None) };
        let at = |part: &Part, axis: Axis| part.place.along(axis);
        // Across the joint on the face, from its lower or left end.
        let across = face.grain;
        let (datum, end) = at(face, across);
        let (near, far) = at(part, across);
        let from_end = near.minus(datum)?.min(end.minus(far)?);
        let over = |by: Length| if by.is_positive() { by } else { Length::ZERO };
        let (length, gap, line, taken, past) = match along {
            Axis::Deep => {
                // Only as far back as both go.
                let rear = at(part, Axis::Deep).0.max(at(face, Axis::Deep).0);
                let housed = !part.grooves.is_empty() || !face.grooves.is_empty();
                let taken = if housed && frame.inner > rear { frame.inner.minus(rear)? } else { Length::ZERO };
                let line = middle(near, far)?.minus(datum)?;
                (part_front.minus(rear)?, face_front.minus(part_front)?, line, taken, [Length::ZERO; 2])
            }
            _ => {
                let ((from, to), (low, high)) = (at(part, along), at(face, along));
                let line = face_front.minus(middle(at(part, Axis::Deep).0, at(part, Axis::Deep).1)?)?;
                // In a rabbet a strip is longer and higher than what is between the boards.
                let (below, above) = (over(low.minus(from)?), over(to.minus(high)?));
                let (gap, past) = if along == Axis::Up {
                    (high.minus(to)?, [above, below])
                } else {
                    (from.minus(low)?, [below, above])
                };
                (to.minus(from)?, gap, line, Length::ZERO, past)
            }
        };
        let second = matches!(face.what, What::Upright { .. })
            && face.thick == Axis::Across
            && at(part, Axis::Across).0 >= at(face, Axis::Across).1;
        let thickness = [part.thickness, left_of(face, part)?];
        // Rails and strips are joined along the middle of their own thickness, far from any end of the face.
        let from_end = if along == Axis::Deep { from_end } else { face.thickness };
        Ok(Some(Self { along, length, taken, past, gap, line, from_end, thickness, second }))
    }

    /// The card's problems with the cabinet's own names.
    fn told<T>(&self, result: Result<T, Problems>) -> Result<T, Problems> {
        let long = match self.along {
            Axis::Deep => "depth",
            Axis::Up => "strip_height",
            Axis::Across => "width",
        };
        answered(result, &[NAMES, &[("length", long), ("end_distance", long), ("other_end", long)]].concat())
    }

    fn asked(&self, inputs: &Inputs, ends: Length) -> Result<joints::Inputs, LengthError> {
        let [edge, face] = self.thickness;
        let asked = joints::Inputs {
            length: reading(self.length),
            edge_thickness: reading(edge),
            face_thickness: reading(face),
            from_end: reading(self.from_end),
            ..inputs.joint_sizes.asked(inputs.joint)
        };
        let usual = asked.end_distance.length().unwrap_or_default();
        let [before, behind] = self.past;
        let clear = self.length.minus(before)?.minus(behind)?;
        let low = self.along != Axis::Deep && usual.max(ends).times(4, 1)? > clear;
        let end = if low { clear.times(1, 4)? } else { usual.max(ends) };
        let (end_distance, other_end) = (reading(before.plus(end)?), reading(behind.plus(end)?));
        let count = match inputs.joint {
            _ if !low => asked.count.clone(),
            // The end of a rail is low: two, or one of what is wide along the joint.
            Kind::LooseTenon | Kind::Biscuit => "1".into(),
            _ => "2".into(),
        };
        Ok(joints::Inputs { end_distance, other_end, count, ..asked })
    }

    /// What the card is asked, and what it says: clear of the back, of what is in the ends, and of what meets the other face
    /// of an upright.
    fn solved(&self, inputs: &Inputs, ends: Length) -> Result<(joints::Inputs, joints::Answer), Problems> {
        let mut asked = self.asked(inputs, ends)?;
        let mut answer = self.told(joints::solve(&asked))?;
        let skin = asked.skin.length().unwrap_or_default();
        let half = answer.fixing.along.times(1, 2)?;
        if self.taken.is_positive() {
            let last = answer.marks.last().copied().unwrap_or_default();
            if last.plus(half)?.plus(skin)? > self.length.minus(self.taken)? {
                asked.length = reading(self.length.minus(self.taken)?);
                answer = self.told(joints::solve(&asked))?;
            }
        }
        // A screw that goes through comes out under what is on the other face wherever it is.
        if self.second && !answer.fixing.through {
            // Whatever keeps them apart; where nothing does they are the same, and that they meet is told.
            let apart = answer.fixing.along.plus(skin.times(2, 1)?)?;
            for other in others(&asked, &answer, apart, half.plus(skin)?)? {
                if let Ok(moved) = joints::solve(&other)
                    && [answer.stays, Stays::Inside].contains(&moved.stays)
                {
                    return Ok((other, moved));
                }
            }
        }
        Ok((asked, answer))
    }

    fn join(
        &self,
        inputs: &Inputs,
        pair: (usize, usize),
        ends: Length,
        joins: &mut Vec<(joints::Inputs, Join)>,
    ) -> Result<Length, Problems> {
        let (asked, marks) = self.solved(inputs, ends)?;
        let reach = if self.along == Axis::Up {
            let skin = asked.skin.length().unwrap_or_default();
            marks.fixing.in_edge.plus(marks.fixing.along)?.plus(skin)?
        } else {
            Length::ZERO
        };
        // How far from the end does not change the marks along it.
        let alike = |(other, join): &&mut (joints::Inputs, Join)| {
            (join.along, join.gap) == (self.along, self.gap)
                && join.marks.marks == marks.marks
                && (&other.length, &other.edge_thickness, &other.face_thickness)
                    == (&asked.length, &asked.edge_thickness, &asked.face_thickness)
        };
        if let Some((_, join)) = joins.iter_mut().find(alike) {
            join.pairs.push(pair);
            join.lines.push(self.line);
            return Ok(reach);
        }
        let join = Join { pairs: vec![pair], along: self.along, gap: self.gap, lines: vec![self.line], marks };
        joins.push((asked, join));
        Ok(reach)
    }
}

/// Other places for as many joints, or for fewer, at least so far from those of an answer: all of them farther back, or
/// between the others, or at the thirds, or one in the middle. `near` is as near to an end as one of them may come.
fn others(
    asked: &joints::Inputs,
    answer: &joints::Answer,
    apart: Length,
    near: Length,
) -> Result<Vec<joints::Inputs>, LengthError> {
    let (Some(first), Some(last), Some(spacing)) = (answer.marks.first(), answer.marks.last(), answer.spacing) else {
        return Ok(Vec::new());
    };
    let (end, many) = (answer.length.minus(*last)?, answer.marks.len());
    let at = |before: Length, behind: Length, count: usize| joints::Inputs {
        end_distance: reading(before),
        other_end: reading(behind),
        count: count.to_string().as_str().into(),
        ..asked.clone()
    };
    let mut all = Vec::new();
    if end.minus(apart)? >= near && spacing >= apart.times(2, 1)? {
        all.push(at(first.plus(apart)?, end.minus(apart)?, many));
    }
    let (half, third) = (spacing.times(1, 2)?, spacing.times(1, 3)?);
    if many > 2 && half >= apart {
        all.push(at(first.plus(half)?, end.plus(half)?, many - 1));
    }
    if many == 2 && third >= apart {
        all.push(at(first.plus(third)?, end.plus(third)?, 2));
    }
    if many == 2 && half >= apart {
        all.push(at(first.plus(half)?, end.plus(half)?, 1));
    }
    Ok(all)
}

/// How thick a board is where an end meets it: a rabbet for the back has taken its share behind the back.
fn left_of(face: &Part, part: &Part) -> Result<Length, LengthError> {
    let (rear, front) = part.place.along(Axis::Deep);
    let over = |groove: &&Block| groove.from[1] < front && rear < groove.to[1] && front <= groove.to[1];
    match face.grooves.iter().find(over) {
        Some(groove) => face.thickness.minus(groove.extent(face.thick)?),
        None => Ok(face.thickness),
    }
}

fn middle(near: Length, far: Length) -> Result<Length, LengthError> {
    near.plus(far)?.times(1, 2)
}
