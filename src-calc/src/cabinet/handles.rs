//! Wooden strips along the free edges of doors, by which they are opened.

use super::ask::{Asked, answered, ranged, reading};
use super::checks::density;
use super::doors::Door;
use super::inputs::Inputs;
use super::part::{Axis, Block, Hand, Part, Stock, What};
use super::read::measured;
use crate::cards::{bevelled_strips, spacing};
use crate::measure::{AngleReading, Length, LengthError, Quantity, Range, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// Thinner strips, in millimetres, hold neither screws nor fingers. From memory.
const LEAST_THICK_MM: i64 = 15;
/// What must be left of a strip's rear for its screws, in millimetres. From memory.
const LEAST_REAR_MM: i64 = 12;
/// The shortest strip that takes two screws, in millimetres. Common practice.
const SHORTEST_MM: i64 = 60;
/// Flatter bevels give fingers nothing to hold, in degrees. From memory.
const LEAST_BEVEL: f64 = 15.0;
/// From each end to the first screw, and the farthest from screw to screw, in millimetres. Common practice.
const END_MM: i64 = 50;
const PITCH_MM: i64 = 300;
/// What stays in front of a screw's point, and the steps in which screws are sold, in millimetres. Common practice.
const SKIN_MM: i64 = 3;
const STEP_MM: i64 = 5;

/// What a door is opened by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Pull {
    /// Nothing that the cabinet knows of, such as a knob.
    #[default]
    None,
    /// A strip of wood.
    Strip,
}

impl Pull {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::None, Self::Strip];
}

/// Where a strip lies that is shorter than its door.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum At {
    /// At the end that is in reach: the lower one of what hangs, the upper one of what stands. Common practice.
    #[default]
    InReach,
    /// In the middle.
    Middle,
}

impl At {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::InReach, Self::Middle];
}

/// What the maker gives for the strips.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Handle {
    /// Whether there are any.
    pub pull: Pull,
    /// What they are.
    pub material: Choice,
    /// Their measured thickness; `±` allowed.
    pub thickness: Reading,
    /// Width of their front.
    pub width: Reading,
    /// Their length; blank for the whole door's height.
    pub length: Reading,
    /// Where a shorter one lies.
    pub at: At,
    /// From the door's free edge to the strip.
    pub set_in: Reading,
    /// How far the edge towards the door's middle leans in behind, for fingers; blank for a square one.
    pub bevel: AngleReading,
}

impl Default for Handle {
    fn default() -> Self {
        Self {
            pull: Pull::None,
            material: Choice::find("oak_european").unwrap_or_default(),
            thickness: Reading::mm("20"),
            width: Reading::mm("40"),
            length: Reading::default(),
            at: At::InReach,
            set_in: Reading::mm("0"),
            bevel: AngleReading::from("30"),
        }
    }
}

/// A strip on its door.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StripHandle {
    /// The part's place in the list of parts.
    pub on: usize,
    /// From the door's free edge to the line of its screws.
    pub from_edge: Length,
    /// The screws along it, from the door's lower end; they are driven from behind.
    pub screws: Vec<Length>,
    /// How long they are.
    pub screw: Length,
}

/// The strips, read.
pub(super) struct Strip {
    thickness: Range,
    width: Length,
    /// None for the whole door.
    length: Option<Length>,
    set_in: Length,
    /// What the bevel takes of the rear.
    slope: Length,
    /// How two are ripped from one board, where they are bevelled.
    bevelled: Option<(bevelled_strips::Inputs, bevelled_strips::Answer)>,
}

fn at_least(problems: &mut Problems, field: &str, length: Length, least: Length, why: &'static str) {
    if length < least {
        problems.add(field, Problem::TooSmall { least: least.into(), why });
    }
}

impl Inputs {
    /// None where something is wrong; none within where doors have no strips.
    #[allow(clippy::option_option, reason = "no strip is an answer, unreadable is none")]
    pub(super) fn strip(&self, problems: &mut Problems) -> Option<Option<Strip>> {
        if self.handle.pull == Pull::None || !self.has_doors() {
            return Some(None);
        }
        let Handle { thickness, width, length, set_in, bevel, .. } = &self.handle;
        let thickness = measured(problems, "handle.thickness", thickness);
        let width = problems.above_zero("handle.width", width);
        let length =
            if length.is_blank() { Some(None) } else { problems.above_zero("handle.length", length).map(Some) };
        let set_in = problems.zero_or_more("handle.set_in", set_in);
        let (thickness, width, length, set_in) = (thickness?, width?, length?, set_in?);
        let [least_thick, least_rear, shortest] =
            [LEAST_THICK_MM, LEAST_REAR_MM, SHORTEST_MM].map(|mm| Length::mm(mm, 1).unwrap_or_default());
        let why = "less holds neither screws nor fingers";
        at_least(problems, "handle.thickness", thickness.nominal(), least_thick, why);
        at_least(problems, "handle.width", width, least_rear, "its screws need that much wood");
        at_least(problems, "handle.length", length.unwrap_or(shortest), shortest, "it has two screws");
        if !problems.is_empty() {
            return None;
        }
        let mut strip = Strip { thickness, width, length, set_in, slope: Length::ZERO, bevelled: None };
        if !bevel.typed().trim().is_empty() {
            let (asked, answer) = self.bevelled(problems, &strip)?;
            strip.slope = problems.check("handle.bevel", Length::from_estimate_mm(answer.slope_mm))?;
            let least = problems.check("handle.width", strip.slope.plus(least_rear))?;
            at_least(problems, "handle.width", width, least, "the bevel takes its share, and screws need the rest");
            strip.bevelled = Some((asked, answer));
        }
        Some(Some(strip))
    }

    /// Two strips from one board with a bevelled rip between them, as the card of bevelled strips has it.
    fn bevelled(
        &self,
        problems: &mut Problems,
        strip: &Strip,
    ) -> Option<(bevelled_strips::Inputs, bevelled_strips::Answer)> {
        let angle = problems.check("handle.bevel", self.handle.bevel.angle())?;
        if angle.degrees() < LEAST_BEVEL {
            let why = "a flatter bevel gives fingers nothing to hold";
            problems.add("handle.bevel", Problem::TooSmall { least: Quantity::degrees(LEAST_BEVEL), why });
            return None;
        }
        let asked = |board_width: Length| bevelled_strips::Inputs {
            board_width: reading(board_width),
            thickness: reading(strip.thickness.nominal()),
            bevel: self.handle.bevel.clone(),
            shape: bevelled_strips::Shape::CleatPair,
            kerf: self.kerf.clone(),
            ..bevelled_strips::Inputs::default()
        };
        let names = [
            ("board_width", "handle.width"),
            ("thickness", "handle.thickness"),
            ("bevel", "handle.bevel"),
            ("kerf", "kerf"),
        ];
        let solved = |board: Result<Length, LengthError>| -> Result<_, Problems> {
            let asked = asked(board?);
            let answer = answered(bevelled_strips::solve(&asked), &names)?;
            Ok((asked, answer))
        };
        let both = || -> Result<_, Problems> {
            let twice = strip.width.times(2, 1)?;
            let (_, tried) = solved(Ok(twice))?;
            // Each millimetre of board is half a one of either strip.
            let missing = Length::from_estimate_mm(2.0 * (strip.width.as_mm() - tried.finished.wide_mm))?;
            solved(twice.plus(missing))
        };
        match both() {
            Ok(both) => Some(both),
            Err(theirs) => {
                for (field, problem) in theirs.iter() {
                    problems.add(field, problem.clone());
                }
                None
            }
        }
    }
}

impl Strip {
    /// How a board that gives two is ripped, and its width.
    pub(super) fn ripped(&self) -> Option<&bevelled_strips::Answer> {
        self.bevelled.as_ref().map(|(_, answer)| answer)
    }

    /// What the card was asked.
    pub(super) fn tell(&self, asked: &mut Asked) {
        asked.bevelled_strips = self.bevelled.as_ref().map(|(asked, _)| asked.clone());
    }

    /// What it weighs on a door of that height, in kilograms; the bevel is not taken off.
    pub(super) fn kg(&self, inputs: &Inputs, door_height: Length) -> Result<f64, Problems> {
        let (length, thick) = (self.length.unwrap_or(door_height), self.thickness.nominal());
        let density = density(inputs, inputs.handle.material, thick)?;
        Ok(density * length.as_mm() * self.width.as_mm() * thick.as_mm() * 1e-9)
    }

    /// From the door's free edge to the middle of what lies on it.
    pub(super) fn screw_line(&self) -> Result<Length, LengthError> {
        self.set_in.plus(self.width.minus(self.slope)?.times(1, 2)?)
    }

    /// For the working: what it is set in, its width and what the bevel takes of that.
    pub(super) fn across(&self) -> [Length; 3] {
        [self.set_in, self.width, self.slope]
    }

    /// The strip in front of a door, to be the next of the parts, and its screws.
    pub(super) fn on_door(
        &self,
        inputs: &Inputs,
        door: &Door,
        (on_door, on): (usize, usize),
    ) -> Result<(Part, StripHandle), Problems> {
        let ((left, right), (_, front), (low, high)) =
            (door.place.along(Axis::Across), door.place.along(Axis::Deep), door.place.along(Axis::Up));
        let (wide, tall) = (right.minus(left)?, high.minus(low)?);
        let half = wide.times(1, 2)?.minus(self.set_in)?;
        if self.width > half {
            let why = "the other half of the door is left to the hinges";
            return Err(Problems::one("handle.width", Problem::TooLarge { most: half.into(), why }));
        }
        let length = self.length.unwrap_or(tall);
        if length > tall {
            let why = "the door is no higher";
            return Err(Problems::one("handle.length", Problem::TooLarge { most: tall.into(), why }));
        }
        let spare = tall.minus(length)?;
        let up = match inputs.handle.at {
            At::Middle => spare.times(1, 2)?,
            At::InReach if inputs.stands.is_hung() => Length::ZERO,
            At::InReach => spare,
        };
        let from = low.plus(up)?;
        let x = match door.hinged {
            Hand::Left => {
                let free = right.minus(self.set_in)?;
                (free.minus(self.width)?, free)
            }
            Hand::Right => {
                let free = left.plus(self.set_in)?;
                (free, free.plus(self.width)?)
            }
        };
        let thick = self.thickness.nominal();
        let place = Block::new(x, (front, front.plus(thick)?), (from, from.plus(length)?));
        let part = Part::new(What::Handle { on: on_door }, Stock::Handle, place, (Axis::Up, Axis::Deep))?;
        let through = front.minus(door.place.from[1])?;
        let screws = screws(length, up, "handle.length")?;
        let handle = StripHandle { on, from_edge: self.screw_line()?, screws, screw: screw_length(through, thick)? };
        Ok((part, handle))
    }
}

/// The longest screw that is sold and goes through one board without coming out of the next.
pub(super) fn screw_length(through: Length, into: Length) -> Result<Length, LengthError> {
    let step = Length::mm(STEP_MM, 1)?;
    let steps = through.plus(into)?.minus(Length::mm(SKIN_MM, 1)?)?.floor_div(step)?;
    step.times(steps, 1)
}

/// Evenly along a strip, from where its own end lies so far off. What cannot be is wrong with the field named.
pub(super) fn screws(length: Length, up: Length, field: &str) -> Result<Vec<Length>, Problems> {
    let end = Length::mm(END_MM, 1)?.min(length.times(1, 4)?);
    let asked = spacing::Inputs {
        length: reading(length),
        width: reading(Length::ZERO),
        even: spacing::Even::Gaps,
        ends: spacing::Ends::Own,
        end: reading(end),
        by: spacing::By::LargestGap,
        largest_gap: ranged(Length::mm(PITCH_MM, 1)?.into()),
        datum: reading(up),
        ..spacing::Inputs::default()
    };
    let names = [("length", field), ("end", field), ("largest_gap", field)];
    let answer = answered(spacing::solve(&asked), &names)?;
    Ok(answer.pieces.iter().map(|piece| piece.centre).collect())
}
