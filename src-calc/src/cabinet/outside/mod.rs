//! One shelf outside of the cabinet, on brackets: beside it, or under the bottom of one that hangs.

mod placed;

use super::Door;
use super::checks::Clash;
use super::frame::{Frame, Stretch};
use super::hooks::HookRail;
use super::inputs::Inputs;
use super::part::{Axis, Block, Hand, Part, What};
use super::read::{Given, count};
use super::rows::Rows;
use crate::cards::hole_rows::Hole;
use crate::cards::shelf;
use crate::measure::{Figure, FigureKind, Length, LengthError, Reading};
use crate::problem::{Problem, Problems};
use serde::{Deserialize, Serialize};

/// More brackets than anybody puts under one such shelf.
const MOST: u32 = 12;
/// A shorter arm or leg, in millimetres, has no room for two screws. From memory.
const LEAST_BRACKET_MM: i64 = 40;

/// Screws and holes whose middles are nearer, in millimetres, break into each other. From memory: a hole of 5 and a
/// screw of 5 leave a millimetre between them.
const CLEAR_MM: f64 = 6.0;

/// Where the shelf is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Beside {
    /// There is none.
    #[default]
    None,
    /// On the left side.
    Left,
    /// On the right side.
    Right,
    /// Under the bottom.
    Under,
}

impl Beside {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::None, Self::Left, Self::Right, Self::Under];

    /// What it is screwed to.
    const fn holder(self) -> Option<What> {
        match self {
            Self::None => None,
            Self::Left => Some(What::Side(Hand::Left)),
            Self::Right => Some(What::Side(Hand::Right)),
            Self::Under => Some(What::Bottom),
        }
    }
}

/// What the maker gives for the shelf, which is cut from the board of the others.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Outside {
    /// Where it is.
    pub at: Beside,
    /// How high its upper face lies above the lower end of the carcass, beside it.
    pub up: Reading,
    /// Its length along the cabinet; blank for as long as what holds it, clear of a door that opens past it.
    pub length: Reading,
    /// How far it stands out from the side, or from the rear to the front under the bottom.
    pub depth: Reading,
    /// How many brackets.
    pub brackets: Figure,
    /// How far each goes along under the shelf.
    pub arm: Reading,
    /// How far each goes down the side, or from the bottom down to the shelf.
    pub leg: Reading,
    /// What stands on it, kg for each metre.
    pub load: Figure,
}

impl Default for Outside {
    fn default() -> Self {
        Self {
            at: Beside::None,
            up: Reading::mm("700"),
            length: Reading::default(),
            depth: Reading::mm("200"),
            brackets: "2".into(),
            arm: Reading::mm("150"),
            leg: Reading::mm("120"),
            load: "9".into(),
        }
    }
}

/// The shelf at its place, and the marks of its brackets.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct OutsideShelf {
    /// The shelf's place in the list of parts.
    pub on: usize,
    /// That of what holds it.
    pub held_by: usize,
    /// Where it is.
    pub at: Beside,
    /// Where it lies, its edging included.
    pub place: Block,
    /// How far each bracket goes along under it.
    pub arm: Length,
    /// How far each goes down.
    pub leg: Length,
    /// From either end of the shelf to the middle of the first bracket.
    pub end: Length,
    /// Middles of the brackets along the shelf, from its rear or left end.
    pub brackets: Vec<Length>,
    /// The same on what holds it: from the side's finished front edge, or the bottom's left end.
    pub on_holder: Vec<Length>,
    /// The screws of each on what holds it: from the side's lower end, or the bottom's finished front edge.
    pub screws: Vec<Length>,
    /// How long they are.
    pub screw: Length,
    /// The screws of each into the shelf: from its edge at the side, or its rear edge.
    pub shelf_screws: Vec<Length>,
    /// How long they are.
    pub shelf_screw: Length,
    /// What stands on it, in kilograms.
    pub load_kg: f64,
    /// What the bracket with the most to carry carries at the most, in kilograms. An estimate.
    pub bracket_kg: f64,
    /// What the shelf card says of it. Where there are more than four brackets, of three bays: the end bay of a longer
    /// row sags a little less.
    pub answer: shelf::Answer,
}

impl OutsideShelf {
    /// The brackets from in front, each as a line through its corners `[across, up]`, in millimetres: beside the cabinet
    /// as one angle with a brace, for they lie behind one another; under it down to the shelf. What they really look like
    /// is their maker's affair.
    pub fn brackets_in_front(&self) -> Vec<Vec<[f64; 2]>> {
        let ([left, _, low], [right, _, high]) = (self.place.from.map(Length::as_mm), self.place.to.map(Length::as_mm));
        let (arm, leg) = (self.arm.as_mm(), self.leg.as_mm());
        let angle = |face: f64, end: f64| vec![vec![[face, low - leg], [face, low], [end, low], [face, low - leg]]];
        match self.at {
            Beside::Left => angle(right, right - arm),
            Beside::Right => angle(left, left + arm),
            Beside::Under | Beside::None => {
                let at = self.brackets.iter().map(|at| left + at.as_mm());
                at.map(|x| vec![[x, high], [x, high + leg]]).collect()
            }
        }
    }
}

/// The shelf, read.
pub(super) struct Ledge {
    at: Beside,
    up: Length,
    /// None for as long as what holds it.
    length: Option<Length>,
    depth: Length,
    brackets: u32,
    arm: Length,
    leg: Length,
    /// kg for each metre.
    load: f64,
}

/// What it is put on.
pub(super) struct Site<'a> {
    pub(super) inputs: &'a Inputs,
    pub(super) given: &'a Given,
    pub(super) frame: &'a Frame,
    pub(super) doors: &'a [Door],
    pub(super) rail: Option<&'a HookRail>,
    pub(super) rows: &'a [Rows],
}

fn too_small(problems: &mut Problems, field: &str, length: Length, least: Length, why: &'static str) {
    if length < least {
        problems.add(field, Problem::TooSmall { least: least.into(), why });
    }
}

impl Inputs {
    /// Whether there is such a shelf: under what stands on the floor there is room for none.
    pub(super) fn has_outside(&self) -> bool {
        match self.outside.at {
            Beside::None => false,
            Beside::Left | Beside::Right => true,
            Beside::Under => self.stands.is_hung(),
        }
    }

    /// None where something is wrong; none within where there is no such shelf.
    #[allow(clippy::option_option, reason = "no shelf is an answer, unreadable is none")]
    pub(super) fn ledge(&self, problems: &mut Problems) -> Option<Option<Ledge>> {
        let Outside { at, up, length, depth, brackets, arm, leg, load } = &self.outside;
        if !self.has_outside() {
            return Some(None);
        }
        let at = *at;
        let up = if at == Beside::Under { Some(Length::ZERO) } else { problems.above_zero("outside.up", up) };
        let length =
            if length.is_blank() { Some(None) } else { problems.above_zero("outside.length", length).map(Some) };
        let depth = problems.above_zero("outside.depth", depth);
        let brackets = count(problems, "outside.brackets", brackets, (2, MOST));
        let arm = problems.above_zero("outside.arm", arm);
        let leg = problems.above_zero("outside.leg", leg);
        let load = problems.check("outside.load", load.value(FigureKind::MassPerLength));
        let (depth, arm, leg) = (depth?, arm?, leg?);
        let least = problems.check("outside.arm", Length::mm(LEAST_BRACKET_MM, 1))?;
        too_small(problems, "outside.arm", arm, least, "less has no room for its screws");
        too_small(problems, "outside.leg", leg, least, "less has no room for its screws");
        let half = problems.check("outside.depth", depth.times(1, 2))?;
        too_small(problems, "outside.arm", arm, half, "less leaves half of the shelf's depth unheld");
        if load.is_some_and(|load| load < 0.0) {
            problems.add("outside.load", Problem::BelowZero);
        }
        Some(Some(Ledge { at, up: up?, length: length?, depth, brackets: brackets?, arm, leg, load: load? }))
    }
}

/// The door that comes past the outer face of that side, at a height between those, when it opens further than square:
/// as if it turned about the rear corner of its hinge edge, it then lies behind the front edges by its thickness at the
/// most. A hinge that draws it out first makes it better. An estimate.
fn past_side<'a>(at: Beside, frame: &Frame, doors: &'a [Door], parts: &[Part], z: Stretch) -> Option<&'a Door> {
    let (door, hand) = match at {
        Beside::Left => (doors.first(), Hand::Left),
        Beside::Right => (doors.last(), Hand::Right),
        Beside::None | Beside::Under => return None,
    };
    let door = door?;
    let hinged =
        parts.get(door.on).is_some_and(|part| matches!(part.what, What::Door { hinged, .. } if hinged == hand));
    let (y, up) = (door.place.along(Axis::Deep), door.place.along(Axis::Up));
    (hinged && y.0 >= frame.depth && up.0 < z.1 && z.0 < up.1).then_some(door)
}

/// Whether a screw of a bracket comes so deep into the side that it meets a hole of the inner face.
fn meets_hole(site: &Site, side: &Part, shelf: &OutsideShelf) -> Result<bool, LengthError> {
    for rows in site.rows.iter().filter(|rows| rows.on == shelf.held_by) {
        if rows.deep.plus(shelf.screw)? <= side.thickness {
            continue;
        }
        for row in [Some(&rows.rows.front), rows.rows.rear.as_ref()].into_iter().flatten() {
            for bracket in &shelf.on_holder {
                let across = bracket.minus(row.from_front)?.as_mm();
                let is_near = |hole: &Hole, screw: &Length| {
                    let up = hole.at.minus(*screw)?.as_mm();
                    Ok::<_, LengthError>(across.hypot(up) < CLEAR_MM)
                };
                for (hole, screw) in
                    row.holes.iter().flat_map(|hole| shelf.screws.iter().map(move |screw| (hole, screw)))
                {
                    if is_near(hole, screw)? {
                        return Ok(true);
                    }
                }
            }
        }
    }
    Ok(false)
}

/// What the shelf is in the way of, or in whose way it is.
pub(super) fn clashes(site: &Site, parts: &[Part], shelf: Option<&OutsideShelf>) -> Result<Vec<Clash>, LengthError> {
    let mut clashes = Vec::new();
    let Some(shelf) = shelf else {
        if site.inputs.outside.at == Beside::Under {
            clashes.push(Clash::NothingUnder);
        }
        return Ok(clashes);
    };
    let (y, z) = (shelf.place.along(Axis::Deep), shelf.place.along(Axis::Up));
    if let Some(door) = past_side(shelf.at, site.frame, site.doors, parts, z)
        && y.1 > site.frame.depth.minus(door.place.extent(Axis::Deep)?)?
        && let Some(What::Door { bay, .. }) = parts.get(door.on).map(|part| part.what)
    {
        clashes.push(Clash::OutsideInDoorsWay { bay });
    }
    if let Some(rail) = site.rail.and_then(|rail| parts.get(rail.on)).filter(|_| shelf.at == Beside::Under) {
        let rail = rail.place.along(Axis::Deep);
        if y.0 < rail.1 && rail.0 < y.0.plus(shelf.arm)? {
            clashes.push(Clash::BracketsMeetHooks);
        }
    }
    if let Some(side) = parts.get(shelf.held_by).filter(|_| shelf.at != Beside::Under)
        && meets_hole(site, side, shelf)?
    {
        clashes.push(Clash::BracketMeetsHole);
    }
    Ok(clashes)
}
