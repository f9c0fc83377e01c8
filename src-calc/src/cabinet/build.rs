//! The parts of a cabinet at their places, from its frame.

use super::frame::{Frame, Stretch};
use super::inputs::{Back, Corners, Inputs, Stands};
use super::part::{Axis, Block, Hand, Part, Stock, What};
use super::read::Given;
use crate::measure::{Length, LengthError};

/// What a list of parts is added to.
pub(super) struct Built<'a> {
    inputs: &'a Inputs,
    given: &'a Given,
    frame: &'a Frame,
    /// The parts so far.
    pub(super) parts: Vec<Part>,
}

/// A count as it stands in a [`What`].
pub(super) fn number(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX).saturating_add(1)
}

impl<'a> Built<'a> {
    /// Everything but doors and what the heights of loose shelves are needed for.
    pub(super) fn carcass(inputs: &'a Inputs, given: &'a Given, frame: &'a Frame) -> Result<Self, LengthError> {
        let mut built = Self { inputs, given, frame, parts: Vec::new() };
        built.box_of_boards()?;
        built.uprights()?;
        built.fixed_shelves()?;
        built.back()?;
        match inputs.stands {
            Stands::Cleat => built.cleat()?,
            Stands::Rail => built.hanging_rail()?,
            Stands::Plinth => built.plinth()?,
            Stands::Legs => {}
        }
        Ok(built)
    }

    /// Adds a part, and the edging in front of it.
    fn edged(&mut self, part: Part) -> Result<(), LengthError> {
        let on = self.parts.len();
        let (_, front) = part.place.along(Axis::Deep);
        let mut place = part.place;
        self.parts.push(part);
        if self.given.edging.is_zero() {
            return Ok(());
        }
        place.from[1] = front;
        place.to[1] = front.plus(self.given.edging)?;
        let long = self.parts.get(on).map_or(Axis::Across, |part| part.grain);
        self.parts.push(Part::new(What::Edging { on }, Stock::Edging, place, (long, Axis::Deep))?);
        Ok(())
    }

    /// A length of wood that lies across, as thick as it is high.
    fn board_across(&mut self, what: What, stock: Stock, place: Block) -> Result<(), LengthError> {
        let part = Part::new(what, stock, place, (Axis::Across, Axis::Up))?;
        self.edged(part)
    }

    fn box_of_boards(&mut self) -> Result<(), LengthError> {
        let Frame { width, height, board, core, inner, .. } = *self.frame;
        let (right, under_top) = (width.minus(board)?, height.minus(board)?);
        let over = self.inputs.corners == Corners::Over;
        let (up, across) =
            if over { ((board, under_top), (Length::ZERO, width)) } else { ((Length::ZERO, height), (board, right)) };
        let cut = self.frame.groove.as_ref().map(|groove| ((groove.starts_at, groove.ends_at), groove.depth));
        for (hand, x) in [(Hand::Left, (Length::ZERO, board)), (Hand::Right, (right, width))] {
            let place = Block::new(x, (Length::ZERO, core), up);
            let mut side = Part::new(What::Side(hand), Stock::Carcass, place, (Axis::Up, Axis::Across))?;
            if let Some((y, deep)) = cut {
                let x = match hand {
                    Hand::Left => (board.minus(deep)?, board),
                    Hand::Right => (right, right.plus(deep)?),
                };
                side.grooves.push(Block::new(x, y, up));
            }
            self.edged(side)?;
        }
        let place = Block::new(across, (Length::ZERO, core), (under_top, height));
        let mut top = Part::new(What::Top, Stock::Carcass, place, (Axis::Across, Axis::Up))?;
        // Over the sides a groove stops where the back does, so that its end is not seen.
        let groove_across =
            |deep: Length| Ok::<_, LengthError>(if over { (board.minus(deep)?, right.plus(deep)?) } else { across });
        if let Some((y, deep)) = cut {
            top.grooves.push(Block::new(groove_across(deep)?, y, (under_top, under_top.plus(deep)?)));
        }
        self.edged(top)?;
        let past = self.inputs.past_bottom && cut.is_some();
        // Ripped back to the front of the groove, so that the back slides in past it.
        let from = if past { inner } else { Length::ZERO };
        let place = Block::new(across, (from, core), (Length::ZERO, board));
        let mut bottom = Part::new(What::Bottom, Stock::Carcass, place, (Axis::Across, Axis::Up))?;
        if let (Some((y, deep)), false) = (cut, past) {
            bottom.grooves.push(Block::new(groove_across(deep)?, y, (board.minus(deep)?, board)));
        }
        self.edged(bottom)
    }

    fn uprights(&mut self) -> Result<(), LengthError> {
        let up = self.frame.opening()?;
        for (at, (bay, next)) in self.frame.bays.iter().zip(self.frame.bays.iter().skip(1)).enumerate() {
            let place = Block::new((bay.1, next.0), (self.frame.inner, self.frame.core), up);
            let what = What::Upright { after: number(at) };
            self.edged(Part::new(what, Stock::Carcass, place, (Axis::Up, Axis::Across))?)?;
        }
        Ok(())
    }

    /// Whether a bay has shelves at all.
    pub(super) fn has_shelves(&self, bay: u32) -> bool {
        self.given.rail_bay != Some(bay)
    }

    /// From the back to where the board of a shelf ends.
    fn shelf_depth(&self) -> Result<Stretch, LengthError> {
        Ok((self.frame.inner, self.frame.shelf_front.minus(self.given.edging)?))
    }

    fn fixed_shelves(&mut self) -> Result<(), LengthError> {
        let y = self.shelf_depth()?;
        for (bay, x) in self.frame.bays.iter().enumerate() {
            if !self.has_shelves(number(bay)) {
                continue;
            }
            for (at, z) in self.frame.fixed.iter().enumerate() {
                let what = What::FixedShelf { bay: number(bay), number: number(at) };
                self.board_across(what, Stock::Shelf, Block::new(*x, y, *z))?;
            }
        }
        Ok(())
    }

    /// A shelf on pins, its lower face at that height.
    pub(super) fn loose_shelf(&mut self, bay: u32, shelf: u32, at: Length) -> Result<(), LengthError> {
        let Some((from, to)) = usize::try_from(bay).ok().and_then(|bay| self.frame.bays.get(bay.wrapping_sub(1)))
        else {
            return Ok(());
        };
        let play = self.given.shelf_play.times(1, 2)?;
        let x = (from.plus(play)?, to.minus(play)?);
        let place = Block::new(x, self.shelf_depth()?, (at, at.plus(self.given.shelf.nominal())?));
        self.board_across(What::LooseShelf { bay, number: shelf }, Stock::Shelf, place)
    }

    fn back(&mut self) -> Result<(), LengthError> {
        let Frame { board, set, .. } = *self.frame;
        let back = &self.frame.back;
        let (x, z) = (board.plus(back.width.starts_at)?, board.plus(back.height.starts_at)?);
        let y = (set, set.plus(self.given.back.nominal())?);
        let place = Block::new((x, x.plus(back.width.size.nominal())?), y, (z, z.plus(back.height.size.nominal())?));
        self.parts.push(Part::new(What::Back, Stock::Back, place, (Axis::Up, Axis::Deep))?);
        Ok(())
    }

    /// Both strips and the spacer, as they hang.
    fn cleat(&mut self) -> Result<(), LengthError> {
        let Some(cleat) = &self.frame.cleat else { return Ok(()) };
        let bottom = cleat.top_at.minus(self.frame.height)?;
        // Planted on, the back lies between the rear edges and the strips.
        let planted = self.inputs.back == Back::Planted;
        let off = if planted { self.frame.set } else { Length::ZERO };
        let wall = off.minus(cleat.stands_off)?;
        let middle = self.frame.width.times(1, 2)?;
        let across = |length: Length| {
            let half = length.times(1, 2)?;
            Ok::<_, LengthError>((middle.minus(half)?, middle.plus(half)?))
        };
        let at = |height: Length| {
            let from = height.minus(bottom)?;
            Ok::<_, LengthError>((from, from.plus(cleat.wide)?))
        };
        let on_wall = (wall, wall.plus(cleat.thickness)?);
        // The cabinet's strip lies on the back, and the spacer is packed out to it.
        let on_back = (wall.plus(cleat.spacer_thickness)?.minus(cleat.thickness)?, wall.plus(cleat.spacer_thickness)?);
        let hook = self.frame.height.minus(self.frame.below_top)?.minus(cleat.wide)?;
        let places = [
            (
                What::CabinetStrip,
                Block::new(across(cleat.cabinet_strip_length)?, on_back, (hook, hook.plus(cleat.wide)?)),
            ),
            (What::WallStrip, Block::new(across(cleat.wall_strip_length)?, on_wall, at(cleat.wall_strip_at)?)),
            (What::Spacer, Block::new(across(cleat.wall_strip_length)?, on_back, at(cleat.spacer_at)?)),
        ];
        let section = &cleat.section;
        let shifted = |quad: [[f64; 2]; 4]| quad.map(|[x, y]| [x + wall.as_mm(), y - bottom.as_mm()]);
        for (what, place) in places {
            let mut part = Part::new(what, Stock::Strip, place, (Axis::Across, Axis::Deep))?;
            part.section = match what {
                What::CabinetStrip => Some(shifted(section.cabinet_strip)),
                What::WallStrip => Some(shifted(section.wall_strip)),
                _ => None,
            };
            self.parts.push(part);
        }
        Ok(())
    }

    /// Under the top, in front of the back, from upright to upright.
    fn hanging_rail(&mut self) -> Result<(), LengthError> {
        let (_, under_top) = self.frame.opening()?;
        let z = (under_top.minus(self.given.strip_height)?, under_top);
        let y = (self.frame.inner, self.frame.inner.plus(self.given.strip.nominal())?);
        for (at, x) in self.frame.bays.iter().enumerate() {
            let what = What::HangingRail { bay: number(at) };
            self.parts.push(Part::new(what, Stock::Strip, Block::new(*x, y, z), (Axis::Across, Axis::Deep))?);
        }
        Ok(())
    }

    /// Front and rear from side to side, and a cross under each side and upright.
    fn plinth(&mut self) -> Result<(), LengthError> {
        let Frame { width, board, depth, .. } = *self.frame;
        let z = (self.given.base.negated(), Length::ZERO);
        let front = depth.minus(self.given.toe)?;
        let rear = self.frame.plinth_rear();
        let (behind_front, before_rear) = (front.minus(board)?, rear.plus(board)?);
        let across = (Length::ZERO, width);
        for (what, y) in [(What::PlinthFront, (behind_front, front)), (What::PlinthRear, (rear, before_rear))] {
            let place = Block::new(across, y, z);
            self.parts.push(Part::new(what, Stock::Carcass, place, (Axis::Across, Axis::Deep))?);
        }
        let between = self.frame.bays.iter().zip(self.frame.bays.iter().skip(1)).map(|(bay, next)| (bay.1, next.0));
        let crosses = std::iter::once((Length::ZERO, board)).chain(between).chain([(width.minus(board)?, width)]);
        for (at, x) in crosses.enumerate() {
            let place = Block::new(x, (before_rear, behind_front), z);
            let what = What::PlinthCross { number: number(at) };
            self.parts.push(Part::new(what, Stock::Carcass, place, (Axis::Deep, Axis::Across))?);
        }
        Ok(())
    }
}
