//! What the cabinet weighs, what its shelves have to stand, and what gets into each other's way.

use super::ask::{Asked, answered, reading};
use super::doors::Door;
use super::frame::Frame;
use super::inputs::{Inputs, SizeFrom};
use super::part::{Axis, Hand, Part, Stock, What};
use super::read::Given;
use super::rows::{Rows, Tight, meets_plate};
use crate::cards::{clothes_rail, shelf};
use crate::measure::{Figure, FigureKind, Length, LengthError};
use crate::problem::Problems;
use crate::stock::materials::Choice;
use serde::Serialize;

/// A shelf, as its card judges it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Shelf {
    /// Those that are alike, by their places in the list of parts.
    pub parts: Vec<usize>,
    /// What the card says.
    pub answer: shelf::Answer,
}

/// What is in another thing's way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Clash {
    /// A hinge plate lies where a fixed shelf meets the side.
    PlateOnShelf {
        /// In which bay.
        bay: u32,
        /// Which shelf, from below.
        shelf: u32,
    },
    /// There is no hole for a loose shelf that is clear of boards and plates.
    NoHole {
        /// In which bay.
        bay: u32,
        /// Which shelf, from below.
        shelf: u32,
    },
    /// The plates of two doors lie back to back on an upright, and their screws meet.
    PlatesBackToBack {
        /// The bay to the left of the upright.
        after: u32,
    },
    /// What hangs on the rail needs more depth than there is behind the door.
    RailInDoorsWay {
        /// In which bay.
        bay: u32,
        /// So much is missing.
        missing: Length,
    },
    /// What hangs on the rail reaches the board below it, or the rail itself does.
    RailTooLow {
        /// In which bay.
        bay: u32,
        /// So much is missing.
        missing: Length,
    },
    /// Joints run into each other in a part, or come through under what is joined on its other face, or meet a screw.
    JointsMeet {
        /// The board's place in the list of parts.
        board: usize,
    },
    /// A screw into the wall comes where an upright stands, and the rail under the top is not.
    WallScrewOnUpright {
        /// From the left end of what the screws go through.
        at: Length,
    },
    /// A part is larger than a whole sheet.
    LargerThanSheet {
        /// The part's place in the list of parts.
        part: usize,
    },
    /// A door strikes what is beside it when it opens.
    DoorStrikes {
        /// In front of which bay.
        bay: u32,
        /// So much room is missing.
        missing: Length,
    },
    /// The shelf outside reaches so far forward that a door which opens past the side strikes it.
    OutsideInDoorsWay {
        /// In front of which bay.
        bay: u32,
    },
    /// The brackets under the bottom lie where the rail for the hooks is.
    BracketsMeetHooks,
    /// A screw of a bracket meets a hole in the inner face of the side that it is screwed to.
    BracketMeetsHole,
    /// A shelf under the bottom of what stands on the floor: there is no room for it, and it is left out.
    NothingUnder,
    /// Hooks or a shelf outside reach past the room on the wall that the sizes are of.
    PastRoom {
        /// So far at the most.
        by: Length,
    },
}

/// Everything that is in something's way.
pub(super) fn clashes(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    doors: &[Door],
    rows: &[Rows],
    (tight, rail): (&[Tight], Option<&clothes_rail::Answer>),
) -> Result<Vec<Clash>, LengthError> {
    let mut clashes = Vec::new();
    for bay in (1..).take(frame.bays.len()) {
        if given.rail_bay == Some(bay) {
            continue;
        }
        let own: Vec<Rows> = rows.iter().filter(|rows| rows.bay == bay).cloned().collect();
        for (shelf, level) in (1..).zip(&frame.fixed) {
            if meets_plate(&own, *level)? {
                clashes.push(Clash::PlateOnShelf { bay, shelf });
            }
        }
    }
    clashes.extend(tight.iter().map(|tight| Clash::NoHole { bay: tight.bay, shelf: tight.shelf }));
    for pair in rows.iter().filter(|rows| rows.face == Hand::Left) {
        let Some(other) = rows.iter().find(|other| other.on == pair.on && other.face == Hand::Right) else { continue };
        let same = |plate: &crate::cards::hole_rows::Plate| {
            other.rows.plates.iter().any(|theirs| theirs.middle == plate.middle)
        };
        // Their screws meet only where both are deeper together than the board is thick.
        let deep = pair.deep.plus(other.deep)? >= given.carcass.low();
        if deep && pair.rows.plates.iter().any(same) {
            clashes.push(Clash::PlatesBackToBack { after: pair.bay });
        }
    }
    if let (Some(bay), Some(rail)) = (given.rail_bay, rail)
        && inputs.has_doors()
        && rail.room.depth_spare.is_negative()
    {
        clashes.push(Clash::RailInDoorsWay { bay, missing: rail.room.depth_spare.negated() });
    }
    if let (Some(bay), Some(rail)) = (given.rail_bay, rail)
        && rail.room.height_spare.is_negative()
    {
        clashes.push(Clash::RailTooLow { bay, missing: rail.room.height_spare.negated() });
    }
    for door in doors {
        if let crate::cards::cup_hinge::Opens::Strikes(missing) = door.answer.room.opens {
            clashes.push(Clash::DoorStrikes { bay: door.bay, missing });
        }
    }
    Ok(clashes)
}

/// How far what hangs on the outside reaches past the room on the wall, if that is what the sizes are of. The bottom
/// lies where the room begins, and the room goes on beside and above the carcass for what is left free there.
pub(super) fn past_room(
    inputs: &Inputs,
    given: &Given,
    frame: &Frame,
    parts: &[Part],
) -> Result<Option<Clash>, LengthError> {
    if inputs.size_from != SizeFrom::Opening {
        return Ok(None);
    }
    let mut most = Length::ZERO;
    for part in parts.iter().filter(|part| matches!(part.what, What::HookRail | What::OutsideShelf)) {
        let (x, z) = (part.place.along(Axis::Across), part.place.along(Axis::Up));
        let left = x.0.negated().minus(given.free)?;
        let right = x.1.minus(frame.width.plus(given.free)?)?;
        most = most.max(left).max(right).max(z.0.negated());
    }
    Ok((most > Length::ZERO).then_some(Clash::PastRoom { by: most }))
}

/// Every shelf by its card, those that are alike once.
pub(super) fn shelves(inputs: &Inputs, parts: &[Part], asked_first: &mut Asked) -> Result<Vec<Shelf>, Problems> {
    let mut shelves: Vec<(bool, Shelf)> = Vec::new();
    for (at, part) in parts.iter().enumerate() {
        let fixed = match part.what {
            What::FixedShelf { .. } => true,
            What::LooseShelf { .. } => false,
            _ => continue,
        };
        let alike = |(other, shelf): &&mut (bool, Shelf)| {
            *other == fixed && (shelf.answer.span, shelf.answer.depth) == (part.length, part.width)
        };
        if let Some((_, shelf)) = shelves.iter_mut().find(alike) {
            shelf.parts.push(at);
            continue;
        }
        let asked = shelf::Inputs {
            material: inputs.shelf.material,
            thickness: reading(part.thickness),
            depth: reading(part.width),
            span: reading(part.length),
            load: shelf::Load::PerMetre,
            per_metre: inputs.load.clone(),
            own_density: inputs.own_density.clone(),
            ..shelf::Inputs::default()
        };
        let names = [
            ("thickness", "shelf.thickness"),
            ("span", "width"),
            ("depth", "depth"),
            ("per_metre", "load"),
            ("own_density", "own_density"),
        ];
        let answer = answered(shelf::solve(&asked), &names)?;
        asked_first.shelf.get_or_insert(asked);
        shelves.push((fixed, Shelf { parts: vec![at], answer }));
    }
    Ok(shelves.into_iter().map(|(_, shelf)| shelf).collect())
}

/// What a part weighs, in kilograms; edging as the board that it is on, and nothing for the rail, whose card knows.
fn kg(inputs: &Inputs, parts: &[Part], part: &Part) -> Result<f64, Problems> {
    let of = match part.what {
        What::Edging { on } => parts.get(on).unwrap_or(part),
        _ => part,
    };
    let material = match of.stock {
        Stock::Handle => inputs.handle.material,
        stock => match inputs.board(stock) {
            Some(board) => board.material,
            None => return Ok(0.0),
        },
    };
    Ok(density(inputs, material, of.thickness)? * volume_m3(part))
}

fn volume_m3(part: &Part) -> f64 {
    part.length.as_mm() * part.width.as_mm() * part.thickness.as_mm() * 1e-9
}

/// kg/m³.
pub(super) fn density(inputs: &Inputs, material: Choice, thickness: Length) -> Result<f64, Problems> {
    if let Some((row, _)) = material.family().and_then(|family| family.row(thickness.as_mm())) {
        return Ok(row.density_kg_m3);
    }
    inputs.own_density.value(FigureKind::Density).map_err(|error| Problems::one("own_density", error))
}

/// What the cabinet weighs, empty and without what stays on the wall, in kilograms.
pub(super) fn weight_kg(inputs: &Inputs, parts: &[Part]) -> Result<f64, Problems> {
    let on_the_wall = |part: &&Part| !matches!(part.what, What::WallStrip | What::Spacer);
    let mut sum = 0.0;
    for part in parts.iter().filter(on_the_wall) {
        sum += kg(inputs, parts, part)?;
    }
    Ok(sum)
}

/// As somebody would type it: to ten grams, which no estimate of a weight is better than.
pub(super) fn kilograms(kg: f64) -> Figure {
    Figure::new(format!("{:.2}", kg.max(0.01)))
}
