//! From what was typed to lengths, with every problem named.

use super::inputs::{Doors, Find, Inputs, Mounting, Wish};
use crate::measure::{FigureKind, Length, LengthError, Quantity, Range, Reading};
use crate::problem::{Problem, Problems};

/// Cups have 26, 35 or 40 mm; more than this is none. From memory.
const LARGEST_CUP_MM: i64 = 60;

/// The most plates that are looked at.
const MOST_PLATES: usize = 30;
/// The most hinges on a door.
const MOST_HINGES: f64 = 12.0;

/// The inputs, read. Every length is what its field says.
pub(super) struct Read {
    pub(super) side: Length,
    pub(super) overlay: Length,
    pub(super) plate_height: Length,
    pub(super) cup_edge: Length,
    pub(super) constant: Length,
    /// Of a pair in the middle, and all round an inset door.
    pub(super) gap: Length,
    pub(super) plates: Vec<Length>,
    pub(super) opening_width: Range,
    pub(super) opening_height: Range,
    pub(super) other_overlay: Length,
    pub(super) top_overlay: Length,
    pub(super) bottom_overlay: Length,
    pub(super) door_thickness: Length,
    pub(super) cup_diameter: Length,
    pub(super) cup_depth: Length,
    pub(super) end_distance: Length,
    pub(super) plate_setback: Length,
    pub(super) datum: Length,
    pub(super) least_reveal: Option<Length>,
    pub(super) hinges: Option<u64>,
    pub(super) door_weight_kg: Option<f64>,
}

/// An opening: its least possible size must be more than nothing.
fn opening(reading: &Reading) -> Result<Range, Problem> {
    let range = reading.range()?;
    if range.low().is_positive() { Ok(range) } else { Err(Problem::NotAboveZero) }
}

impl Inputs {
    /// The side that the door covers: on a partition two doors share it.
    pub(super) const fn board(&self) -> (&'static str, &Reading) {
        match self.mounting {
            Mounting::Full | Mounting::Inset => ("side", &self.side),
            Mounting::Half => ("partition", &self.partition),
        }
    }

    /// The overlay that is wished for.
    fn wished(&self, side: Option<Length>, gap: Option<Length>, problems: &mut Problems) -> Option<Length> {
        let exact = match (self.mounting, self.wish) {
            (Mounting::Inset, _) => return Some(gap?.negated()),
            (_, Wish::Overlay) => {
                let length = self.overlay.length();
                return problems.check("overlay", length);
            }
            (Mounting::Full, Wish::Gap) => {
                let reveal = problems.check("reveal", self.reveal.length())?;
                side?.minus(reveal)
            }
            (Mounting::Half, Wish::Gap) => side?.minus(gap?).and_then(|both| both.times(1, 2)),
        };
        problems.check("", exact)
    }

    /// The four of the formula, the one that is looked for worked out from the others: overlay = A + B − H.
    fn four(
        &self,
        side: Option<Length>,
        gap: Option<Length>,
        problems: &mut Problems,
    ) -> Option<(Length, Length, Length, Length)> {
        let mut given = |field: &'static str, reading: &Reading, unless: Find| {
            if self.find == unless { None } else { problems.check(field, reading.length()) }
        };
        let height = given("plate_height", &self.plate_height, Find::PlateHeight);
        let edge = given("cup_edge", &self.cup_edge, Find::CupEdge);
        let constant = given("constant", &self.constant, Find::Constant);
        let overlay = if self.find == Find::Overlay { None } else { self.wished(side, gap, problems) };
        let exact: Result<_, LengthError> = match self.find {
            Find::Overlay => {
                let (a, b, h) = (constant?, edge?, height?);
                a.plus(b).and_then(|sum| sum.minus(h)).map(|overlay| (overlay, h, b, a))
            }
            Find::PlateHeight => {
                let (a, b, o) = (constant?, edge?, overlay?);
                a.plus(b).and_then(|sum| sum.minus(o)).map(|height| (o, height, b, a))
            }
            Find::CupEdge => {
                let (a, h, o) = (constant?, height?, overlay?);
                o.plus(h).and_then(|sum| sum.minus(a)).map(|edge| (o, h, edge, a))
            }
            Find::Constant => {
                let (b, h, o) = (edge?, height?, overlay?);
                o.plus(h).and_then(|sum| sum.minus(b)).map(|constant| (o, h, b, constant))
            }
        };
        problems.check("", exact)
    }

    fn plates(&self, problems: &mut Problems) -> Vec<Length> {
        if self.plates.len() > MOST_PLATES {
            let most = Quantity::number(30.0);
            problems.add("plates", Problem::TooLarge { most, why: "no maker sells more heights of plates" });
        }
        let read = |(at, reading)| problems.zero_or_more(format!("plates.{at}"), reading);
        let mut plates: Vec<Length> = self.plates.iter().take(MOST_PLATES).enumerate().filter_map(read).collect();
        plates.sort_unstable();
        plates.dedup();
        plates
    }

    fn hinge_count(&self, problems: &mut Problems) -> Option<u64> {
        if self.hinges.is_blank() {
            return None;
        }
        let count = problems.check("hinges", self.hinges.value(FigureKind::Count))?;
        let why = "a door hangs on two hinges or more, and on a dozen at most";
        if count < 2.0 {
            problems.add("hinges", Problem::TooSmall { least: Quantity::number(2.0), why });
        } else if count > MOST_HINGES {
            problems.add("hinges", Problem::TooLarge { most: Quantity::number(MOST_HINGES), why });
        }
        (2..=12_u32).find(|whole| f64::from(*whole) >= count).map(u64::from)
    }

    fn weight(&self, problems: &mut Problems) -> Option<f64> {
        if self.door_weight.is_blank() && self.material.family().is_some() {
            return None;
        }
        let weight = problems.check("door_weight", self.door_weight.value(FigureKind::Mass))?;
        if weight <= 0.0 {
            problems.add("door_weight", Problem::NotAboveZero);
        }
        Some(weight)
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let inset = self.mounting == Mounting::Inset;
        let (field, board) = self.board();
        let side = problems.above_zero(field, board);
        let with_gap = inset
            || self.doors == Doors::Two
            || (self.mounting == Mounting::Half && self.wish == Wish::Gap && self.find != Find::Overlay);
        let gap = if with_gap { problems.zero_or_more("gap", &self.gap) } else { Some(Length::ZERO) };
        let four = self.four(side, gap, &mut problems);
        let plates = self.plates(&mut problems);
        let opening_width = problems.check("opening_width", opening(&self.opening_width));
        let opening_height = problems.check("opening_height", opening(&self.opening_height));
        let mut edge = |field: &'static str, reading: &Reading| {
            if inset { gap.map(Length::negated) } else { problems.check(field, reading.length()) }
        };
        let same = self.doors == Doors::Two || (!inset && self.other_overlay.is_blank());
        let other_overlay = if same { four.map(|four| four.0) } else { edge("other_overlay", &self.other_overlay) };
        let top_overlay = edge("top_overlay", &self.top_overlay);
        let bottom_overlay = edge("bottom_overlay", &self.bottom_overlay);
        let door_thickness = problems.above_zero("door_thickness", &self.door_thickness);
        let cup_diameter = problems.above_zero("cup_diameter", &self.cup_diameter);
        if let (Some(cup), Ok(most)) = (cup_diameter, Length::mm(LARGEST_CUP_MM, 1))
            && cup > most
        {
            problems.add("cup_diameter", Problem::TooLarge { most: most.into(), why: "no hinge has a larger cup" });
        }
        let cup_depth = problems.above_zero("cup_depth", &self.cup_depth);
        if door_thickness.zip(cup_depth).is_some_and(|(thickness, depth)| depth >= thickness) {
            let why =
                "The cup would come out at the face of the door: take a thicker door or a hinge with a shallow cup.";
            problems.add("cup_depth", Problem::Clash { why });
        }
        let end_distance = problems.above_zero("end_distance", &self.end_distance);
        let plate_setback = problems.above_zero("plate_setback", &self.plate_setback);
        let datum = problems.zero_or_more("datum", &self.datum);
        let least_reveal =
            if self.least_reveal.is_blank() { None } else { problems.zero_or_more("least_reveal", &self.least_reveal) };
        let hinges = self.hinge_count(&mut problems);
        let door_weight_kg = self.weight(&mut problems);
        let read = (|| {
            let (overlay, plate_height, cup_edge, constant) = four?;
            Some(Read {
                side: side?,
                overlay,
                plate_height,
                cup_edge,
                constant,
                gap: gap?,
                plates,
                opening_width: opening_width?,
                opening_height: opening_height?,
                other_overlay: other_overlay?,
                top_overlay: top_overlay?,
                bottom_overlay: bottom_overlay?,
                door_thickness: door_thickness?,
                cup_diameter: cup_diameter?,
                cup_depth: cup_depth?,
                end_distance: end_distance?,
                plate_setback: plate_setback?,
                datum: datum?,
                least_reveal,
                hinges,
                door_weight_kg,
            })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }
}
