//! The doors of a cabinet, and where their hinges are wished.

use super::ask::{answered, reading};
use super::build::number;
use super::checks::kilograms;
use super::frame::{Frame, Stretch};
use super::inputs::{Doors, Inputs, Lie};
use super::part::{Axis, Block, Hand, Part, Stock, What};
use super::read::Given;
use crate::cards::cup_hinge;
use crate::measure::{FigureKind, Length, LengthError};
use crate::problem::Problems;

/// A door, and what its hinges need.
pub(super) struct Door {
    /// In front of which bay, from one.
    pub(super) bay: u32,
    /// On which side it is hinged.
    pub(super) hinged: Hand,
    /// How it meets the board that it is hinged on.
    pub(super) mounting: cup_hinge::Mounting,
    /// Over all, its edging included.
    pub(super) place: Block,
    /// Its lower edge.
    pub(super) from: Length,
    /// How far it reaches past the opening on the left and on the right; less than zero where it stops short.
    pub(super) overlays: [Length; 2],
    /// What the card was asked.
    pub(super) asked: cup_hinge::Inputs,
    /// What it says.
    pub(super) answer: cup_hinge::Answer,
}

/// How a door meets the board that it is hinged on.
fn mounting(inputs: &Inputs, on_upright: bool) -> cup_hinge::Mounting {
    match inputs.lie {
        Lie::Inset => cup_hinge::Mounting::Inset,
        Lie::Half => cup_hinge::Mounting::Half,
        Lie::Full if on_upright => cup_hinge::Mounting::Half,
        Lie::Full => cup_hinge::Mounting::Full,
    }
}

/// The card's problems with the cabinet's own names; the constant has one for each way that a door lies.
fn told<T>(result: Result<T, Problems>, mounting: cup_hinge::Mounting) -> Result<T, Problems> {
    let arm = match mounting {
        cup_hinge::Mounting::Full => "arm",
        cup_hinge::Mounting::Half => "half_arm",
        cup_hinge::Mounting::Inset => "inset_arm",
    };
    answered(result, &[NAMES, &[("constant", arm)]].concat())
}

/// One opening, and what stands on either side of it.
struct Opening {
    bay: u32,
    x: Stretch,
    z: Stretch,
    /// Whether the board on the left, and on the right, is an upright.
    uprights: [bool; 2],
}

/// A door's own part of it: its hinge side, the width that it closes, what it covers on the other side.
struct Leaf {
    hinged: Hand,
    doors: cup_hinge::Doors,
    width: Length,
    other: Length,
}

const NAMES: &[(&str, &str)] = &[
    ("reveal", "reveal"),
    ("gap", "gap"),
    ("cup_edge", "cup_edge"),
    ("side", "carcass.thickness"),
    ("partition", "carcass.thickness"),
    ("opening_width", "width"),
    ("opening_height", "height"),
    ("end_distance", "height"),
    ("door_thickness", "door.thickness"),
    ("cup_diameter", "holes.cup"),
    ("cup_depth", "holes.cup_depth"),
    ("door_weight", "own_density"),
];

impl Opening {
    fn on_upright(&self, hinged: Hand) -> bool {
        self.uprights[usize::from(hinged == Hand::Right)]
    }

    fn asked(&self, inputs: &Inputs, given: &Given, leaf: &Leaf) -> Result<cup_hinge::Inputs, Problems> {
        let mounting = mounting(inputs, self.on_upright(leaf.hinged));
        let board = given.carcass.nominal();
        let covers = reading(board.minus(given.reveal)?);
        Ok(cup_hinge::Inputs {
            find: cup_hinge::Find::PlateHeight,
            mounting,
            wish: cup_hinge::Wish::Gap,
            reveal: inputs.reveal.clone(),
            gap: inputs.gap.clone(),
            constant: match mounting {
                cup_hinge::Mounting::Full => inputs.arm.clone(),
                cup_hinge::Mounting::Half => inputs.half_arm.clone(),
                cup_hinge::Mounting::Inset => inputs.inset_arm.clone(),
            },
            cup_edge: inputs.cup_edge.clone(),
            side: reading(board),
            partition: reading(board),
            doors: leaf.doors,
            opening_width: reading(leaf.width),
            opening_height: reading(self.z.1.minus(self.z.0)?),
            other_overlay: reading(leaf.other),
            top_overlay: covers.clone(),
            bottom_overlay: covers,
            door_thickness: reading(given.door.nominal()),
            material: inputs.door.material,
            datum: reading(Length::ZERO),
            cup_diameter: inputs.holes.cup.clone(),
            cup_depth: inputs.holes.cup_depth.clone(),
            ..cup_hinge::Inputs::default()
        })
    }

    fn door(&self, inputs: &Inputs, given: &Given, frame: &Frame, leaf: &Leaf) -> Result<Door, Problems> {
        let mut asked = self.asked(inputs, given, leaf)?;
        if inputs.door.material.family().is_none() {
            weigh(inputs, given, &mut asked)?;
        }
        let mut answer = told(cup_hinge::solve(&asked), asked.mounting)?;
        if let Some(strip) = &given.handle {
            // The hinges carry the strip too.
            let kg = answer.door_weight_kg + strip.kg(inputs, answer.door_height.nominal())?;
            asked.door_weight = kilograms(kg);
            answer = told(cup_hinge::solve(&asked), asked.mounting)?;
        }
        let (width, height) = (answer.door_width.nominal(), answer.door_height.nominal());
        let hinge = answer.overlay;
        let x = match leaf.hinged {
            Hand::Left => {
                let from = self.x.0.minus(hinge)?;
                (from, from.plus(width)?)
            }
            Hand::Right => {
                let to = self.x.1.plus(hinge)?;
                (to.minus(width)?, to)
            }
        };
        let inset = inputs.lie == Lie::Inset;
        let thick = given.door.nominal();
        let y = if inset { (frame.depth.minus(thick)?, frame.depth) } else { (frame.depth, frame.depth.plus(thick)?) };
        let below = if inset { given.gap.negated() } else { given.carcass.nominal().minus(given.reveal)? };
        let from = self.z.0.minus(below)?;
        let place = Block::new(x, y, (from, from.plus(height)?));
        let overlays = [self.x.0.minus(x.0)?, x.1.minus(self.x.1)?];
        let mounting = mounting(inputs, self.on_upright(leaf.hinged));
        Ok(Door { bay: self.bay, hinged: leaf.hinged, mounting, place, from, overlays, asked, answer })
    }
}

/// A door of one's own material weighs what its density says.
fn weigh(inputs: &Inputs, given: &Given, asked: &mut cup_hinge::Inputs) -> Result<(), Problems> {
    let mut problems = Problems::default();
    let Some(density) = problems.check("own_density", inputs.own_density.value(FigureKind::Density)) else {
        return Err(problems);
    };
    asked.door_weight = "1".into();
    let sized = told(cup_hinge::solve(asked), asked.mounting)?;
    let area = sized.door_width.nominal().as_mm() * sized.door_height.nominal().as_mm();
    asked.door_weight = kilograms(area * given.door.nominal().as_mm() * density * 1e-9);
    Ok(())
}

/// Every door, from left to right.
pub(super) fn doors(inputs: &Inputs, given: &Given, frame: &Frame) -> Result<Vec<Door>, Problems> {
    let mut doors = Vec::new();
    let z = frame.opening()?;
    let last = frame.bays.len();
    for (at, x) in frame.bays.iter().enumerate() {
        let opening = Opening { bay: number(at), x: *x, z, uprights: [at > 0, at + 1 < last] };
        for leaf in leaves(inputs, given, &opening)? {
            doors.push(opening.door(inputs, given, frame, &leaf)?);
        }
    }
    Ok(doors)
}

/// The door as it hangs by the holes in its board, whose lower end lies so far below the opening: what its card is asked,
/// and says. Where the card would put the hinges elsewhere, as it was asked first.
pub(super) fn on_rows(
    door: &Door,
    cups: &[Length],
    datum: Length,
) -> Result<(cup_hinge::Inputs, cup_hinge::Answer), Problems> {
    let at = |end_distance: Length, spread| cup_hinge::Inputs {
        datum: reading(datum),
        end_distance: reading(end_distance),
        hinges: cups.len().to_string().as_str().into(),
        spread,
        ..door.asked.clone()
    };
    if let Some(first) = cups.first() {
        for spread in [cup_hinge::Spread::Pitch, cup_hinge::Spread::Even] {
            let asked = at(*first, spread);
            if let Ok(answer) = cup_hinge::solve(&asked)
                && answer.hinges.iter().map(|hinge| hinge.on_door).eq(cups.iter().copied())
            {
                return Ok((asked, answer));
            }
        }
    }
    let asked = cup_hinge::Inputs { datum: reading(datum), ..door.asked.clone() };
    let answer = told(cup_hinge::solve(&asked), asked.mounting)?;
    Ok((asked, answer))
}

/// How far a door goes over the board on that side of its opening, as if it were hinged there.
fn overlay(inputs: &Inputs, given: &Given, opening: &Opening, hinged: Hand) -> Result<Length, Problems> {
    let width = opening.x.1.minus(opening.x.0)?;
    let leaf = Leaf { hinged, doors: cup_hinge::Doors::One, width, other: Length::ZERO };
    let mut asked = opening.asked(inputs, given, &leaf)?;
    asked.door_weight = "1".into();
    Ok(told(cup_hinge::solve(&asked), asked.mounting)?.overlay)
}

fn leaves(inputs: &Inputs, given: &Given, opening: &Opening) -> Result<Vec<Leaf>, Problems> {
    let width = opening.x.1.minus(opening.x.0)?;
    let over = |hand| overlay(inputs, given, opening, hand);
    let one = |hinged, width, other| Leaf { hinged, doors: cup_hinge::Doors::One, width, other };
    Ok(match inputs.doors {
        Doors::None => Vec::new(),
        Doors::Left => vec![one(Hand::Left, width, over(Hand::Right)?)],
        Doors::Right => vec![one(Hand::Right, width, over(Hand::Left)?)],
        Doors::Pair if inputs.lie == Lie::Inset => {
            let leaf = |hinged| Leaf { hinged, doors: cup_hinge::Doors::Two, width, other: Length::ZERO };
            vec![leaf(Hand::Left), leaf(Hand::Right)]
        }
        Doors::Pair => {
            // Both doors are alike: they meet in the middle of the front, not of the opening.
            let left = width.plus(over(Hand::Right)?)?.minus(over(Hand::Left)?)?.times(1, 2)?;
            let short = given.gap.times(1, 2)?.negated();
            vec![one(Hand::Left, left, short), one(Hand::Right, width.minus(left)?, short)]
        }
    })
}

/// The parts of a door: the board, and the edging all round it.
pub(super) fn parts(door: &Door, given: &Given, parts: &mut Vec<Part>) -> Result<(), LengthError> {
    let edging = given.edging;
    let within = |(from, to): Stretch| Ok::<_, LengthError>((from.plus(edging)?, to.minus(edging)?));
    let [x, y, z] = [Axis::Across, Axis::Deep, Axis::Up].map(|axis| door.place.along(axis));
    let (core_x, core_z) = (within(x)?, within(z)?);
    let on = parts.len();
    let what = What::Door { bay: door.bay, hinged: door.hinged };
    parts.push(Part::new(what, Stock::Door, Block::new(core_x, y, core_z), (Axis::Up, Axis::Deep))?);
    if edging.is_zero() {
        return Ok(());
    }
    // Upright pieces run through; the others stand between them.
    let edges = [
        (Block::new((x.0, core_x.0), y, z), (Axis::Up, Axis::Across)),
        (Block::new((core_x.1, x.1), y, z), (Axis::Up, Axis::Across)),
        (Block::new(core_x, y, (z.0, core_z.0)), (Axis::Across, Axis::Up)),
        (Block::new(core_x, y, (core_z.1, z.1)), (Axis::Across, Axis::Up)),
    ];
    for (place, ways) in edges {
        parts.push(Part::new(What::Edging { on }, Stock::Edging, place, ways)?);
    }
    Ok(())
}
