//! A row of hooks on a rail under the bottom of a cabinet that hangs.

use super::ask::{answered, reading};
use super::frame::{Frame, Stretch};
use super::handles::{screw_length, screws};
use super::inputs::Inputs;
use super::part::{Axis, Block, Part, Stock, What};
use super::read::{Given, count};
use crate::cards::spacing;
use crate::measure::{Figure, FigureKind, Length, LengthError, Reading};
use crate::problem::{Problem, Problems};
use serde::{Deserialize, Serialize};

/// More hooks than anybody puts under one cabinet.
const MOST: u32 = 40;
/// A lower rail, in millimetres, holds neither hooks nor the screws from above. Common practice.
const LEAST_HEIGHT_MM: i64 = 40;
/// Nearer than this, in millimetres, a screw from above meets the thread of a hook. From memory.
const CLEAR_MM: i64 = 12;
/// A higher rail, in millimetres, is no rail.
const MOST_HEIGHT_MM: i64 = 300;
/// So far, in millimetres, screws go into the rail's upper edge at the most. Common practice.
const DEEP_MM: i64 = 35;

/// What the maker gives for the hooks.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Hooks {
    /// How many; blank for none.
    pub count: Figure,
    /// Height of their rail, which is of the board of the wall cleat.
    pub height: Reading,
    /// What hangs on each, kg.
    pub load: Figure,
}

impl Default for Hooks {
    fn default() -> Self {
        Self { count: Figure::default(), height: Reading::mm("60"), load: "1".into() }
    }
}

/// The rail at its place, and the marks on it and on the bottom.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct HookRail {
    /// The rail's place in the list of parts.
    pub on: usize,
    /// The bottom's.
    pub under: usize,
    /// The hooks, from the rail's left end.
    pub hooks: Vec<Length>,
    /// Their height above its lower edge.
    pub up: Length,
    /// The screws through the bottom, from its left end.
    pub screws: Vec<Length>,
    /// Their line, from the bottom's finished front edge.
    pub from_front: Length,
    /// How long they are.
    pub screw: Length,
}

/// The hooks, read.
pub(super) struct Row {
    count: u32,
    height: Length,
    load_kg: f64,
}

impl Inputs {
    /// None where something is wrong; none within where there are no hooks.
    #[allow(clippy::option_option, reason = "no hooks is an answer, unreadable is none")]
    pub(super) fn row(&self, problems: &mut Problems) -> Option<Option<Row>> {
        if self.hooks.count.is_blank() || !self.stands.is_hung() {
            return Some(None);
        }
        let many = count(problems, "hooks.count", &self.hooks.count, (1, MOST));
        let height = problems.above_zero("hooks.height", &self.hooks.height);
        let load = problems.check("hooks.load", self.hooks.load.value(FigureKind::Mass));
        let least = problems.check("hooks.height", Length::mm(LEAST_HEIGHT_MM, 1))?;
        let most = problems.check("hooks.height", Length::mm(MOST_HEIGHT_MM, 1))?;
        let (many, height, load_kg) = (many?, height?, load?);
        if height < least {
            let why = "less holds neither hooks nor screws";
            problems.add("hooks.height", Problem::TooSmall { least: least.into(), why });
        }
        if height > most {
            let why = "no rail for hooks is higher";
            problems.add("hooks.height", Problem::TooLarge { most: most.into(), why });
        }
        if load_kg < 0.0 {
            problems.add("hooks.load", Problem::BelowZero);
        }
        Some(Some(Row { count: many, height, load_kg }))
    }
}

impl Row {
    /// What hangs on all of them, in kilograms.
    pub(super) fn load_kg(&self) -> f64 {
        f64::from(self.count) * self.load_kg
    }

    /// The rail under the bottom, as long as that is, at the rear.
    pub(super) fn rail(
        &self,
        given: &Given,
        frame: &Frame,
        parts: &mut Vec<Part>,
    ) -> Result<Option<HookRail>, Problems> {
        let Some((under, bottom)) = parts.iter().enumerate().find(|(_, part)| part.what == What::Bottom) else {
            return Ok(None);
        };
        let x = bottom.place.along(Axis::Across);
        let (thick, length) = (given.strip.nominal(), x.1.minus(x.0)?);
        let front = frame.inner.plus(thick)?;
        if front > frame.core {
            let most = frame.core.minus(frame.inner)?;
            let why = "the rail for the hooks lies under the bottom";
            return Err(Problems::one("strip.thickness", Problem::TooLarge { most: most.into(), why }));
        }
        let place = Block::new(x, (frame.inner, front), (self.height.negated(), Length::ZERO));
        let middle = frame.inner.plus(thick.times(1, 2)?)?;
        let deep = self.height.min(Length::mm(DEEP_MM, 1)?);
        let hooks = self.hooks(length)?;
        let uprights = frame.uprights(x.0)?;
        let screws = clear_of(screws(length, Length::ZERO, "width")?, &hooks, &uprights, length)?;
        if meet(&screws, &hooks)? {
            let why = "The hooks leave no room between them for the screws of their rail: take fewer.";
            return Err(Problems::one("hooks.count", Problem::Clash { why }));
        }
        let rail = HookRail {
            on: parts.len(),
            under,
            screws,
            hooks,
            up: self.height.times(1, 2)?,
            from_front: frame.depth.minus(middle)?,
            screw: screw_length(frame.board, deep)?,
        };
        parts.push(Part::new(What::HookRail, Stock::Strip, place, (Axis::Across, Axis::Deep))?);
        Ok(Some(rail))
    }

    /// Each in the middle of its share of the rail.
    fn hooks(&self, length: Length) -> Result<Vec<Length>, Problems> {
        let asked = spacing::Inputs {
            length: reading(length),
            width: reading(Length::ZERO),
            even: spacing::Even::Centres,
            ends: spacing::Ends::Half,
            by: spacing::By::Count,
            count: self.count.to_string().as_str().into(),
            ..spacing::Inputs::default()
        };
        let answer = answered(spacing::solve(&asked), &[("count", "hooks.count"), ("length", "width")])?;
        Ok(answer.pieces.iter().map(|piece| piece.centre).collect())
    }
}

/// Screws from above that would meet a hook, or come down on the end of an upright, move to the nearest place where they
/// do not: hooks and screws both lie in the middle of the rail's thickness.
pub(super) fn clear_of(
    screws: Vec<Length>,
    hooks: &[Length],
    uprights: &[Stretch],
    length: Length,
) -> Result<Vec<Length>, LengthError> {
    let clear = Length::mm(CLEAR_MM, 1)?;
    let end = length.minus(clear)?;
    let free = |at: Length| -> Result<bool, LengthError> {
        for (from, to) in uprights {
            if at > from.minus(clear)? && at < to.plus(clear)? {
                return Ok(false);
            }
        }
        Ok(at >= clear && at <= end && !meet(&[at], hooks)?)
    };
    // The nearest free place is the screw's own, or right beside what it is to be clear of.
    let mut places = Vec::new();
    for (from, to) in hooks.iter().map(|hook| (hook, hook)).chain(uprights.iter().map(|(from, to)| (from, to))) {
        places.extend([from.minus(clear)?, to.plus(clear)?]);
    }
    let mut moved = Vec::new();
    for screw in screws {
        let mut best: Option<(Length, Length)> = None;
        for at in std::iter::once(screw).chain(places.iter().copied()) {
            let far = at.minus(screw)?.abs();
            if best.is_none_or(|(least, _)| far < least) && free(at)? {
                best = Some((far, at));
            }
        }
        moved.push(best.map_or(screw, |(_, at)| at));
    }
    Ok(moved)
}

/// Whether a screw and a hook are nearer than they may be.
fn meet(screws: &[Length], hooks: &[Length]) -> Result<bool, LengthError> {
    let clear = Length::mm(CLEAR_MM, 1)?;
    for screw in screws {
        for hook in hooks {
            if screw.minus(*hook)?.abs() < clear {
                return Ok(true);
            }
        }
    }
    Ok(false)
}
