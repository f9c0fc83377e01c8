//! The shelf outside put together: its place, its board and edging, its brackets and its sag.

use super::{Beside, LEAST_BRACKET_MM, Ledge, OutsideShelf, Site, past_side, too_small};
use crate::cabinet::ask::{answered, reading};
use crate::cabinet::frame::Stretch;
use crate::cabinet::handles::{screw_length, screws};
use crate::cabinet::part::{Axis, Block, Part, Stock, What};
use crate::cabinet::read::Given;
use crate::cards::{shelf, spacing};
use crate::measure::{Length, LengthError};
use crate::problem::{Problem, Problems};

/// A thinner board, in millimetres, holds no screws of a bracket. From memory.
const LEAST_BOARD_MM: i64 = 13;
/// A shorter shelf, in millimetres, needs no brackets. Common practice.
const SHORTEST_MM: i64 = 100;
/// From an end of the shelf to the first bracket, in millimetres, or a quarter of a short shelf. Common practice.
const END_MM: i64 = 50;
/// Brackets that lie nearer, in millimetres, stand in one another. From memory: they are 15 to 30 wide.
const LEAST_PITCH_MM: i64 = 40;

/// Where it lies, and from where its brackets are measured on what holds it.
struct Placed {
    place: Block,
    /// From the datum of what holds it to the shelf's own end.
    datum: Length,
    screws: Vec<Length>,
}

fn too_large(field: &str, length: Length, most: Length, why: &'static str) -> Result<(), Problems> {
    if length > most { Err(Problems::one(field, Problem::TooLarge { most: most.into(), why })) } else { Ok(()) }
}

impl Ledge {
    /// The shelf beside or under the cabinet, the last of the parts with its edging.
    pub(in crate::cabinet) fn shelf(
        &self,
        site: &Site,
        parts: &mut Vec<Part>,
    ) -> Result<Option<OutsideShelf>, Problems> {
        let holder = self.at.holder();
        let found = parts.iter().enumerate().find(|(_, part)| Some(part.what) == holder);
        let Some((held_by, board)) = found else { return Ok(None) };
        self.boards_hold(site.given)?;
        let placed = match self.at {
            Beside::Under => self.under(site, board, parts)?,
            _ => self.beside(site, board, parts)?,
        };
        let along = if self.at == Beside::Under { Axis::Across } else { Axis::Deep };
        let length = placed.place.extent(along)?;
        let end = Length::mm(END_MM, 1)?.min(length.times(1, 4)?);
        let (brackets, pitch) = self.spread(length, end, Length::ZERO)?;
        let (on_holder, _) = self.spread(length, end, placed.datum)?;
        let on = parts.len();
        self.add(site, &placed.place, (along, on), parts)?;
        let width = parts.get(on).map_or(self.depth, |part| part.width);
        let answer = self.sag(site, width, pitch)?;
        let most = answer.supports.iter().map(|support| support.mass_kg).fold(0.0, f64::max);
        // What stands past the outer brackets comes on top; that an inner one may carry the most makes it only safer.
        let past = (answer.own_weight_kg + answer.load_kg) * end.as_mm() / answer.span.as_mm();
        Ok(Some(OutsideShelf {
            on,
            held_by,
            at: self.at,
            place: placed.place,
            arm: self.arm,
            leg: self.leg,
            end,
            brackets,
            on_holder,
            screws: placed.screws,
            screw: screw_length(Length::ZERO, site.frame.board)?,
            shelf_screws: screws(self.arm, Length::ZERO, "outside.arm")?,
            shelf_screw: screw_length(Length::ZERO, site.given.shelf.nominal())?,
            load_kg: self.load * length.as_mm() / 1000.0,
            bracket_kg: most + past,
            answer,
        }))
    }

    fn boards_hold(&self, given: &Given) -> Result<(), Problems> {
        let least = Length::mm(LEAST_BOARD_MM, 1)?;
        let mut problems = Problems::default();
        let why = "thinner boards hold no screws of a bracket";
        too_small(&mut problems, "carcass.thickness", given.carcass.nominal(), least, why);
        too_small(&mut problems, "shelf.thickness", given.shelf.nominal(), least, why);
        if !problems.is_empty() {
            return Err(problems);
        }
        too_large("outside.arm", self.arm, self.depth.minus(given.edging)?, "the board of the shelf is no deeper")
    }

    /// Its length, where it may have so much; a blank one is as long as there is room for.
    fn length(&self, given: &Given, most: Length, blank: Length) -> Result<Length, Problems> {
        let length = self.length.unwrap_or(blank);
        too_large("outside.length", length, most, "what holds it is no longer")?;
        let mut problems = Problems::default();
        let least = Length::mm(SHORTEST_MM, 1)?.max(given.edging.times(4, 1)?);
        too_small(&mut problems, "outside.length", length, least, "a shorter one is none");
        if problems.is_empty() { Ok(length) } else { Err(problems) }
    }

    /// On the outer face of a side, its rear end at the rear edges.
    fn beside(&self, site: &Site, side: &Part, parts: &[Part]) -> Result<Placed, Problems> {
        let Site { given, frame, .. } = site;
        let (low, high) = side.place.along(Axis::Up);
        too_large("outside.up", self.up, high, "the side ends there")?;
        let z = (self.up.minus(given.shelf.nominal())?, self.up);
        let below = z.0.minus(low)?;
        if below < Length::mm(LEAST_BRACKET_MM, 1)? {
            let least = self.up.minus(below)?.plus(self.leg)?;
            let why = "its brackets need that much of the side below it";
            return Err(Problems::one("outside.up", Problem::TooSmall { least: least.into(), why }));
        }
        too_large("outside.leg", self.leg, below, "the side goes no further down")?;
        let door = past_side(self.at, frame, site.doors, parts, z);
        let clear = door.map_or(Ok(frame.depth), |door| frame.depth.minus(door.place.extent(Axis::Deep)?))?;
        let length = self.length(given, frame.depth, clear)?;
        let x = match self.at {
            Beside::Left => (self.depth.negated(), Length::ZERO),
            _ => (frame.width, frame.width.plus(self.depth)?),
        };
        let screws = screws(self.leg, below.minus(self.leg)?, "outside.leg")?;
        let place = Block::new(x, (Length::ZERO, length), z);
        Ok(Placed { place, datum: frame.depth.minus(length)?, screws })
    }

    /// Under the bottom, its rear edge under the bottom's, in the middle.
    fn under(&self, site: &Site, bottom: &Part, parts: &[Part]) -> Result<Placed, Problems> {
        let Site { given, frame, .. } = site;
        let (x, (rear, _)) = (bottom.place.along(Axis::Across), bottom.place.along(Axis::Deep));
        let most = x.1.minus(x.0)?;
        let length = self.length(given, most, most)?;
        too_large("outside.depth", self.depth, frame.depth.minus(rear)?, "the cabinet is no deeper")?;
        if let Some(rail) = site.rail.and_then(|rail| parts.get(rail.on)) {
            let mut problems = Problems::default();
            let why = "the rail for the hooks comes down so far";
            too_small(&mut problems, "outside.leg", self.leg, rail.place.extent(Axis::Up)?, why);
            if !problems.is_empty() {
                return Err(problems);
            }
        }
        let datum = most.minus(length)?.times(1, 2)?;
        let from = x.0.plus(datum)?;
        let high = self.leg.negated();
        let z = (high.minus(given.shelf.nominal())?, high);
        let place = Block::new((from, from.plus(length)?), (rear, rear.plus(self.depth)?), z);
        let screws = screws(self.arm, frame.depth.minus(rear.plus(self.arm)?)?, "outside.arm")?;
        Ok(Placed { place, datum, screws })
    }

    /// The middles of the brackets on a length that begins so far off, and from one to the next.
    fn spread(&self, length: Length, end: Length, datum: Length) -> Result<(Vec<Length>, Length), Problems> {
        let asked = spacing::Inputs {
            length: reading(length),
            width: reading(Length::ZERO),
            even: spacing::Even::Gaps,
            ends: spacing::Ends::Own,
            end: reading(end),
            by: spacing::By::Count,
            count: self.brackets.to_string().as_str().into(),
            datum: reading(datum),
            ..spacing::Inputs::default()
        };
        let names = [("count", "outside.brackets"), ("length", "outside.length"), ("end", "outside.length")];
        let answer = answered(spacing::solve(&asked), &names)?;
        let pitch = answer.spread.pitch.unwrap_or(length);
        if pitch < Length::mm(LEAST_PITCH_MM, 1)? {
            let why = "The brackets stand in one another: take fewer, or a longer shelf.";
            return Err(Problems::one("outside.brackets", Problem::Clash { why }));
        }
        Ok((answer.pieces.iter().map(|piece| piece.centre).collect(), pitch))
    }

    /// The board, and the edging on the edges that are seen: not on the one at the cabinet, nor on those at the wall.
    fn add(
        &self,
        site: &Site,
        place: &Block,
        (along, on): (Axis, usize),
        parts: &mut Vec<Part>,
    ) -> Result<(), LengthError> {
        let e = site.given.edging;
        let [x, y, z] = [Axis::Across, Axis::Deep, Axis::Up].map(|axis| place.along(axis));
        let front = (y.0, y.1.minus(e)?);
        let (left, right) = (self.at != Beside::Right, self.at != Beside::Left);
        let core_x = (if left { x.0.plus(e)? } else { x.0 }, if right { x.1.minus(e)? } else { x.1 });
        let board = Block::new(core_x, front, z);
        parts.push(Part::new(What::OutsideShelf, Stock::Shelf, board, (along, Axis::Up))?);
        if e.is_zero() {
            return Ok(());
        }
        // The long piece runs through; the others stand against it.
        let through = self.at == Beside::Under;
        let (front_x, end_y): (Stretch, Stretch) = if through { (x, front) } else { (core_x, y) };
        let mut edge = |place: Block, ways: (Axis, Axis)| {
            parts.push(Part::new(What::Edging { on }, Stock::Edging, place, ways)?);
            Ok::<_, LengthError>(())
        };
        edge(Block::new(front_x, (front.1, y.1), z), (Axis::Across, Axis::Deep))?;
        if left {
            edge(Block::new((x.0, core_x.0), end_y, z), (Axis::Deep, Axis::Across))?;
        }
        if right {
            edge(Block::new((core_x.1, x.1), end_y, z), (Axis::Deep, Axis::Across))?;
        }
        Ok(())
    }

    /// Its sag between the brackets, as its card has it; from middle to middle, which is more than the clear span.
    fn sag(&self, site: &Site, width: Length, pitch: Length) -> Result<shelf::Answer, Problems> {
        let support = match self.brackets {
            0..=2 => shelf::Support::Loose,
            3 => shelf::Support::OneDivider,
            _ => shelf::Support::TwoDividers,
        };
        let inputs = site.inputs;
        let asked = shelf::Inputs {
            material: inputs.shelf.material,
            thickness: reading(site.given.shelf.nominal()),
            depth: reading(width),
            span: reading(pitch.times(support.bays().into(), 1)?),
            support,
            load: shelf::Load::PerMetre,
            per_metre: inputs.outside.load.clone(),
            own_density: inputs.own_density.clone(),
            ..shelf::Inputs::default()
        };
        let names = [
            ("thickness", "shelf.thickness"),
            ("span", "outside.length"),
            ("depth", "outside.depth"),
            ("per_metre", "outside.load"),
            ("own_density", "own_density"),
        ];
        answered(shelf::solve(&asked), &names)
    }
}
