//! The clothes rail of the bay that has one: what it is, what it has to stand, where it and its sockets go.

use super::ask::{Asked, answered, reading};
use super::frame::Frame;
use super::inputs::{Inputs, Lie};
use super::part::{Axis, Block, Hand, Part, Stock, What};
use super::read::Given;
use crate::cards::clothes_rail::{self, Material, Shape};
use crate::measure::{Length, LengthError, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::clothes::Garments;
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// Sockets thicker than this, in millimetres, both together, are none.
const MOST_PLAY_MM: i64 = 50;

/// What the maker gives for the rail. `Default` is what its card has, and a usual pair of sockets.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Rail {
    /// What it looks like when it is cut through.
    pub shape: Shape,
    /// Outer diameter of a round one.
    pub diameter: Reading,
    /// Height of any other.
    pub height: Reading,
    /// Width of any other.
    pub width: Reading,
    /// Thickness of a tube's wall.
    pub wall: Reading,
    /// What it is made of.
    pub material: Material,
    /// The species of a wooden one.
    pub wood: Choice,
    /// What it is shorter than its bay, for the bottoms of both sockets.
    /// From memory: those of usual ones are one to two millimetres thick.
    pub play: Reading,
    /// What hangs on it.
    pub garments: Garments,
    /// Width of the hangers.
    pub hanger: Reading,
}

impl Default for Rail {
    fn default() -> Self {
        let usual = clothes_rail::Inputs::default();
        Self {
            shape: usual.shape,
            diameter: usual.diameter,
            height: usual.height,
            width: usual.width,
            wall: usual.wall,
            material: usual.material,
            wood: usual.wood,
            play: Reading::mm("3"),
            garments: usual.garments,
            hanger: usual.hanger,
        }
    }
}

/// The rail of the bay that has one, by its card. Over the whole bay, which is more than it spans between its sockets.
pub(super) fn rail(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    asked_first: &mut Asked,
) -> Result<Option<clothes_rail::Answer>, Problems> {
    let Some(x) = frame.rail_bay(given) else { return Ok(None) };
    let (low, under_top) = frame.opening()?;
    let inset = inputs.has_doors() && inputs.lie == Lie::Inset;
    let front = if inset { frame.depth.minus(given.door.nominal())? } else { frame.depth };
    let of = Reading::clone;
    let rail = &inputs.rail;
    let asked = clothes_rail::Inputs {
        shape: rail.shape,
        diameter: of(&rail.diameter),
        height: of(&rail.height),
        width: of(&rail.width),
        wall: of(&rail.wall),
        material: rail.material,
        wood: rail.wood,
        garments: rail.garments,
        hanger: of(&rail.hanger),
        own_density: inputs.own_density.clone(),
        span: reading(x.1.minus(x.0)?),
        inside_depth: reading(front.minus(frame.inner)?),
        inside_height: reading(under_top.minus(low)?),
        ..clothes_rail::Inputs::default()
    };
    let names = [
        ("diameter", "rail.diameter"),
        ("height", "rail.height"),
        ("width", "rail.width"),
        ("wall", "rail.wall"),
        ("wood", "rail.wood"),
        ("hanger", "rail.hanger"),
        ("own_density", "own_density"),
        ("span", "width"),
        ("inside_depth", "depth"),
        ("inside_height", "height"),
    ];
    let answer = answered(clothes_rail::solve(&asked), &names)?;
    asked_first.clothes_rail = Some(asked);
    Ok(Some(answer))
}

/// Reads what the rail is shorter than its bay.
pub(super) fn play(inputs: &Inputs, problems: &mut Problems) -> Option<Length> {
    let play = problems.zero_or_more("rail.play", &inputs.rail.play)?;
    let most = problems.check("rail.play", Length::mm(MOST_PLAY_MM, 1))?;
    if play > most {
        problems.add("rail.play", Problem::TooLarge { most: most.into(), why: "no two sockets take more" });
    }
    Some(play)
}

/// Puts the rail at its place, where there is room for it; where there is none, its card says what is missing.
pub(super) fn hung(
    given: &Given,
    frame: &Frame,
    rail: Option<&clothes_rail::Answer>,
    parts: &mut Vec<Part>,
) -> Result<(), LengthError> {
    let (Some((left, right)), Some(rail)) = (frame.rail_bay(given), rail) else { return Ok(()) };
    let play = given.rail_play.times(1, 2)?;
    let (low, under_top) = frame.opening()?;
    let round = |middle: Length, size: Length| {
        let half = size.times(1, 2)?;
        Ok::<_, LengthError>((middle.minus(half)?, middle.plus(half)?))
    };
    let z = round(under_top.minus(rail.room.middle_down)?, rail.height)?;
    let y = round(frame.inner.plus(rail.room.from_back)?, rail.width)?;
    let x = (left.plus(play)?, right.minus(play)?);
    if z.0 < low || y.0 < frame.inner || y.1 > frame.shelf_front || x.0 >= x.1 {
        return Ok(());
    }
    parts.push(Part::new(What::Rail, Stock::Rail, Block::new(x, y, z), (Axis::Across, Axis::Up))?);
    Ok(())
}

/// A socket in a board beside the rail's bay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Socket {
    /// The board's place in the list of parts.
    pub on: usize,
    /// Which of its faces, seen from in front.
    pub face: Hand,
    /// Its middle, from the board's lower end.
    pub up: Length,
    /// The same from the board's finished front edge.
    pub from_front: Length,
}

/// Both sockets, the left one first; none without a rail. The rail's card says how far below the top and before the back
/// its middle is.
pub(super) fn sockets(
    given: &Given,
    frame: &Frame,
    rail: Option<&clothes_rail::Answer>,
    parts: &[Part],
) -> Result<Vec<Socket>, LengthError> {
    let (Some(bay), Some(rail)) = (given.rail_bay, rail) else { return Ok(Vec::new()) };
    let left = if bay == 1 { What::Side(Hand::Left) } else { What::Upright { after: bay - 1 } };
    let right = if bay == given.bays { What::Side(Hand::Right) } else { What::Upright { after: bay } };
    let (_, under_top) = frame.opening()?;
    let middle = under_top.minus(rail.room.middle_down)?;
    let from_front = frame.depth.minus(frame.inner.plus(rail.room.from_back)?)?;
    let one = |(what, face): (What, Hand)| {
        let (on, part) = parts.iter().enumerate().find(|(_, part)| part.what == what)?;
        let (low, _) = part.place.along(Axis::Up);
        Some(middle.minus(low).map(|up| Socket { on, face, up, from_front }))
    };
    [(left, Hand::Right), (right, Hand::Left)].into_iter().filter_map(one).collect()
}
