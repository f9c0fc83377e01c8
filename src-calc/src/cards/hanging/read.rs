//! From what was typed to numbers, with every problem named: the cabinet, its contents, the lift.

use super::inputs::{Grip, Hung, Inputs, Load, MOST_SHELVES, Weight};
use super::read_fixings::Holding;
use crate::measure::{Angle, AngleReading, Figure, FigureKind, Length, LengthError, Quantity, Reading};
use crate::problem::{Problem, Problems};
use crate::source::Source;
use crate::stock::materials::Choice;

/// Kilograms, or kilograms a metre.
const MOST_LOAD: f64 = 5000.0;
/// kg/m³; more is no material.
const MOST_DENSITY: f64 = 25_000.0;

/// A material at a thickness; no source for one of one's own.
#[derive(Clone, Copy)]
pub(super) struct Board {
    pub(super) thickness_mm: f64,
    pub(super) density_kg_m3: f64,
    pub(super) source: Option<Source>,
}

impl Board {
    /// The mass of a panel: `ρ·a·b·t`, in kilograms.
    pub(super) fn kg(self, a_mm: f64, b_mm: f64) -> f64 {
        self.density_kg_m3 * a_mm * b_mm * self.thickness_mm * 1e-9
    }
}

/// The panels of the carcass.
pub(super) struct Panels {
    pub(super) board: Board,
    pub(super) back: Board,
    pub(super) inset_mm: f64,
}

/// What the body does.
pub(super) struct Handled {
    pub(super) hands_out_mm: f64,
    pub(super) from_mm: f64,
    pub(super) to_mm: f64,
    pub(super) twist_degrees: f64,
    pub(super) grip: Grip,
}

/// The inputs, read.
pub(super) struct Read {
    pub(super) width: Length,
    pub(super) height: Length,
    pub(super) depth: Length,
    /// None where the weight is known.
    pub(super) panels: Option<Panels>,
    pub(super) known_kg: f64,
    pub(super) shelves: u32,
    /// How many, and of what.
    pub(super) doors: Option<(u32, Board)>,
    /// From the bottom up.
    pub(super) levels_kg: Vec<f64>,
    pub(super) handled: Handled,
    pub(super) ceiling: Option<Length>,
    pub(super) clearance: Length,
    pub(super) hung: Hung,
    /// Zero where it does not hang by a bevel.
    pub(super) bevel_degrees: f64,
    /// From the bottom up to where the bevel bears or the fixings sit.
    pub(super) bears_up: Length,
    pub(super) stands_off: Length,
    pub(super) strip: Length,
    pub(super) strip_height: Length,
    pub(super) fixings_up: Length,
    pub(super) strip_length: Length,
    pub(super) first_at: Length,
    pub(super) count: u32,
    pub(super) holding: Holding,
}

/// A figure above zero, or a problem.
pub(super) fn positive(problems: &mut Problems, field: &'static str, figure: &Figure, kind: FigureKind) -> Option<f64> {
    let value = problems.check(field, figure.value(kind))?;
    if value > 0.0 {
        return Some(value);
    }
    problems.add(field, Problem::NotAboveZero);
    None
}

/// A mass, or a mass per metre, that a cabinet may have, or a problem.
fn load(
    problems: &mut Problems,
    field: &str,
    figure: &Figure,
    kind: FigureKind,
    unit: fn(f64) -> Quantity,
) -> Option<f64> {
    let value = problems.check(field, figure.value(kind))?;
    if value < 0.0 {
        problems.add(field, Problem::BelowZero);
    } else if value > MOST_LOAD {
        problems.add(field, Problem::TooLarge { most: unit(MOST_LOAD), why: "more hangs on no wall" });
    } else {
        return Some(value);
    }
    None
}

/// A whole number from `least` to `most`, or a problem.
fn count(
    problems: &mut Problems,
    field: &'static str,
    figure: &Figure,
    (least, most): (u32, u32),
    why: &'static str,
) -> Option<u32> {
    let value = problems.check(field, figure.value(FigureKind::Count))?;
    if value < f64::from(least) {
        problems.add(field, Problem::TooSmall { least: Quantity::count(least.into()), why });
    } else if value > f64::from(most) {
        problems.add(field, Problem::TooLarge { most: Quantity::count(most.into()), why });
    } else {
        return (least..=most).find(|whole| f64::from(*whole) >= value);
    }
    None
}

/// An angle from `least` to `most` degrees, or a problem.
fn angle(
    problems: &mut Problems,
    field: &'static str,
    reading: &AngleReading,
    (least, most): (f64, f64),
    why: &'static str,
) -> Option<f64> {
    let degrees = problems.check(field, reading.angle().map(Angle::degrees))?;
    if degrees < least {
        problems.add(field, Problem::TooSmall { least: Quantity::degrees(least), why });
    } else if degrees > most {
        problems.add(field, Problem::TooLarge { most: Quantity::degrees(most), why });
    } else {
        return Some(degrees);
    }
    None
}

/// A length that is less than another one, or a problem.
pub(super) fn below(
    problems: &mut Problems,
    field: &'static str,
    (length, most): (Option<Length>, Option<Length>),
    why: &'static str,
) -> Option<Length> {
    let (length, most) = (length?, most?);
    if length < most {
        return Some(length);
    }
    problems.add(field, Problem::TooLarge { most: most.into(), why });
    None
}

/// A length above zero, in millimetres, or a problem.
fn size_mm(problems: &mut Problems, field: &'static str, reading: &Reading) -> Option<f64> {
    problems.above_zero(field, reading).map(Length::as_mm)
}

/// What is missing where the same field was found wanting before is not said twice.
fn own_density(problems: &mut Problems, figure: &Figure) -> Option<f64> {
    if problems.of("own_density").is_some() {
        return None;
    }
    let density = positive(problems, "own_density", figure, FigureKind::Density)?;
    if density > MOST_DENSITY {
        let most = Quantity::kg_per_m3(MOST_DENSITY);
        problems.add("own_density", Problem::TooLarge { most, why: "wood and boards have 300 to 1100 kg/m³" });
    }
    Some(density)
}

impl Inputs {
    fn board(&self, problems: &mut Problems, field: &'static str, reading: &Reading, choice: Choice) -> Option<Board> {
        let thickness_mm = size_mm(problems, field, reading);
        let (density_kg_m3, source) = match choice {
            Choice::Own => (own_density(problems, &self.own_density)?, None),
            Choice::Table(family) => {
                let (row, _) = family.row(thickness_mm?)?;
                (row.density_kg_m3, Some(row.source))
            }
        };
        Some(Board { thickness_mm: thickness_mm?, density_kg_m3, source })
    }

    fn panels(&self, problems: &mut Problems, shelves: Option<u32>, outer: [Option<Length>; 3]) -> Option<Panels> {
        let board = self.board(problems, "thickness", &self.thickness, self.material);
        let back = self.board(problems, "back_thickness", &self.back_thickness, self.back_material);
        let inset = problems.zero_or_more("back_inset", &self.back_inset);
        let (board, back, inset_mm) = (board?, back?, inset?.as_mm());
        let [width, height, depth] = outer;
        let boards = f64::from(shelves.unwrap_or(0)) + 2.0;
        for (field, size, least_mm, why) in [
            ("width", width, 2.0 * board.thickness_mm, "both sides together are that wide"),
            ("height", height, boards * board.thickness_mm, "top, bottom and shelves together are that high"),
            ("depth", depth, inset_mm + back.thickness_mm, "the back takes that much of it"),
        ] {
            if size.is_some_and(|size| size.as_mm() <= least_mm) {
                problems.add(field, Problem::TooSmall { least: Quantity::mm(least_mm), why });
            }
        }
        Some(Panels { board, back, inset_mm })
    }

    /// The masses on the bottom and the shelves.
    fn levels(&self, problems: &mut Problems, shelves: u32, inner_width_mm: f64) -> Option<Vec<f64>> {
        let levels = usize::try_from(shelves).unwrap_or_default() + 1;
        if self.load == Load::PerMetre {
            let kind = FigureKind::MassPerLength;
            let per_metre = load(problems, "per_metre", &self.per_metre, kind, Quantity::kg_per_m)?;
            return Some(vec![per_metre * inner_width_mm / 1000.0; levels]);
        }
        let one = |(at, figure): (usize, &Figure)| {
            if figure.is_blank() {
                return Some(0.0);
            }
            load(problems, &format!("levels.{at}"), figure, FigureKind::Mass, Quantity::kg)
        };
        // Every level is read, so that each one that cannot be is named.
        let read: Vec<Option<f64>> = self.levels.iter().take(levels).enumerate().map(one).collect();
        read.into_iter().collect()
    }

    fn handled(&self, problems: &mut Problems) -> Option<Handled> {
        let hands_out_mm = size_mm(problems, "hands_out", &self.hands_out);
        let from = problems.zero_or_more("lift_from", &self.lift_from);
        let to = problems.zero_or_more("lift_to", &self.lift_to);
        let twist_degrees = angle(problems, "twist", &self.twist, (0.0, 180.0), "the body twists no further");
        Some(Handled {
            hands_out_mm: hands_out_mm?,
            from_mm: from?.as_mm(),
            to_mm: to?.as_mm(),
            twist_degrees: twist_degrees?,
            grip: self.grip,
        })
    }

    fn bevel(&self, problems: &mut Problems) -> Option<f64> {
        match self.hung {
            Hung::Rail => Some(0.0),
            Hung::Cleat => angle(problems, "bevel", &self.bevel, (30.0, 60.0), "a wall cleat has 30 to 60°"),
        }
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let read = self.read_all(&mut problems);
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            // Each length is good by itself, but not what is left between two of them.
            None if problems.is_empty() => Err(LengthError::TooFine.into()),
            _ => Err(problems),
        }
    }

    fn read_all(&self, problems: &mut Problems) -> Option<Read> {
        let known_kg = match self.weight {
            Weight::Parts => Some(0.0),
            Weight::Known => load(problems, "known_weight", &self.known_weight, FigureKind::Mass, Quantity::kg),
        };
        let width = problems.above_zero("width", &self.width);
        let height = problems.above_zero("height", &self.height);
        let depth = problems.above_zero("depth", &self.depth);
        let shelves = count(problems, "shelves", &self.shelves, (0, MOST_SHELVES), "more is two cabinets");
        let panels = match self.weight {
            Weight::Parts => self.panels(problems, shelves, [width, height, depth]).map(Some),
            Weight::Known => Some(None),
        };
        let doors = match self.doors.count() {
            0 => Some(None),
            leaves => {
                let board = self.board(problems, "door_thickness", &self.door_thickness, self.door_material);
                board.map(|board| Some((leaves, board)))
            }
        };
        if let (Weight::Known, Some(known), Some(width), Some(height)) = (self.weight, known_kg, width, height) {
            let doors_kg =
                doors.iter().flatten().map(|(_, board)| board.kg(width.as_mm(), height.as_mm())).sum::<f64>();
            if known <= 0.0 {
                problems.add("known_weight", Problem::NotAboveZero);
            } else if known <= doors_kg {
                let why = "its doors alone weigh that";
                problems.add("known_weight", Problem::TooSmall { least: Quantity::kg(doors_kg), why });
            }
        }
        let sides_mm = panels.iter().flatten().map(|panels| 2.0 * panels.board.thickness_mm).sum::<f64>();
        let inner_mm = width.map_or(0.0, |width| width.as_mm() - sides_mm);
        let levels_kg = self.levels(problems, shelves.unwrap_or(0), inner_mm);
        let handled = self.handled(problems);
        let ceiling =
            if self.ceiling.is_blank() { Some(None) } else { problems.above_zero("ceiling", &self.ceiling).map(Some) };
        // Without a ceiling nothing is asked about it.
        let clearance = match ceiling {
            Some(None) => Some(Length::ZERO),
            _ => problems.zero_or_more("clearance", &self.clearance),
        };
        let bevel_degrees = self.bevel(problems);
        let down = problems.above_zero("bevel_down", &self.bevel_down);
        let down = below(problems, "bevel_down", (down, height), "the cabinet is only that high");
        let stands_off = problems.zero_or_more("stands_off", &self.stands_off);
        let strip = problems.zero_or_more("strip", &self.strip);
        let (strip_height, fixings_up) = self.strip_fixings(problems);
        let strip_length = problems.above_zero("strip_length", &self.strip_length);
        let first_at = problems.zero_or_more("first_at", &self.first_at);
        let first_at = below(problems, "first_at", (first_at, strip_length), "the strip is only that long");
        let number = count(problems, "count", &self.count, (1, 100), "a strip has 1 to 100 fixings");
        let holding = self.holding(problems, strip_length, first_at);
        Some(Read {
            width: width?,
            height: height?,
            depth: depth?,
            panels: panels?,
            known_kg: known_kg?,
            shelves: shelves?,
            doors: doors?,
            levels_kg: levels_kg?,
            handled: handled?,
            ceiling: ceiling?,
            clearance: clearance?,
            hung: self.hung,
            bevel_degrees: bevel_degrees?,
            bears_up: height?.minus(down?).ok()?,
            stands_off: stands_off?,
            strip: strip?,
            strip_height: strip_height?,
            fixings_up: fixings_up?,
            strip_length: strip_length?,
            first_at: first_at?,
            count: number?,
            holding: holding?,
        })
    }
}
