//! A right angle: marks by 3-4-5, the diagonal that makes it square, and how far it is out by its two diagonals.

use super::Inputs;
use crate::measure::{Length, LengthError, Quantity};
use crate::problem::{Problem, Problems};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;
use serde::Serialize;

/// Nobody pulls a frame straight that is further out than this, in degrees: one of the readings is wrong.
const MOST_OUT: f64 = 30.0;
/// Out by less than a tape can tell is square, in millimetres.
const SQUARE_MM: f64 = 0.5;

const TRIPLE: Source = Source::practice("plane geometry: 3² + 4² = 5², the longest such marks that fit on both sides");
const PARALLELOGRAM: Source = Source::practice(
    "law of cosines in a parallelogram with the sides as measured: opposite sides are taken to be equal",
);

/// Marks for a right angle: three and four parts along the sides, five parts across.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Triple {
    /// Along the shorter side.
    pub three: Length,
    /// Along the longer side.
    pub four: Length,
    /// From mark to mark.
    pub five: Length,
}

/// How far a frame is out of square, by its diagonals.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Out {
    /// The corner at the bottom left is less than 90° by this, in degrees; more where it is below zero.
    pub degrees: f64,
    /// How far the top stands to one side over the height, in millimetres: to the right of the bottom where it is above
    /// zero.
    pub over_height_mm: f64,
    /// Whether that is less than a tape can tell.
    pub square: bool,
    /// Both diagonals once the frame is pulled square, by the readings of the diagonals, in millimetres.
    pub even_mm: f64,
    /// That, less the diagonal by the readings of the sides, in millimetres: far from zero, a reading is wrong.
    pub misfit_mm: f64,
}

/// A right angle.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RightAngle {
    /// The first side.
    pub width: Length,
    /// The second one.
    pub height: Length,
    /// The diagonal when square, in millimetres.
    pub diagonal_mm: f64,
    /// Marks in parts of whole 5 mm; nothing where the sides are too short.
    pub metric: Option<Triple>,
    /// Marks in parts of whole half inches; nothing where the sides are too short.
    pub inches: Option<Triple>,
    /// How far it is out; nothing where the diagonals were not measured.
    pub out: Option<Out>,
}

impl RightAngle {
    pub(super) fn solve(inputs: &Inputs, working: &mut Working) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let width = problems.above_zero("width", &inputs.width);
        let height = problems.above_zero("height", &inputs.height);
        let (first, second) = (&inputs.first_diagonal, &inputs.second_diagonal);
        let diagonals = match (first.is_blank(), second.is_blank()) {
            (true, true) => None,
            (false, false) => {
                problems.above_zero("first_diagonal", first).zip(problems.above_zero("second_diagonal", second))
            }
            (blank, _) => {
                let field = if blank { "first_diagonal" } else { "second_diagonal" };
                problems.add(field, Problem::Clash { why: "Give both diagonals, or neither." });
                None
            }
        };
        let (Some(width), Some(height)) = (width, height) else { return Err(problems) };
        if !problems.is_empty() {
            return Err(problems);
        }
        let diagonal_mm = width.as_mm().hypot(height.as_mm());
        let out = match diagonals {
            None => None,
            Some((first, second)) => match Out::new([width, height], [first, second], diagonal_mm) {
                Some(out) => Some(out),
                None => {
                    let why = "No frame of this width and height has two diagonals so far apart. Measure them again.";
                    return Err(Problems::one("second_diagonal", Problem::Clash { why }));
                }
            },
        };
        let right_angle = Self {
            width,
            height,
            diagonal_mm,
            metric: triple(width, height, Length::mm(5, 1)?)?,
            inches: triple(width, height, Length::inches(1, 2)?)?,
            out,
        };
        right_angle.show(working, diagonals);
        Ok(right_angle)
    }

    fn show(&self, working: &mut Working, diagonals: Option<(Length, Length)>) {
        let sides = [("w", Quantity::from(self.width)), ("h", Quantity::from(self.height))];
        let diagonal = Quantity::mm(self.diagonal_mm);
        working.step("Diagonal when square", "d = √(w² + h²)", sides, diagonal, GEOMETRY);
        for (what, triple) in [("Mark to mark, in millimetres", self.metric), ("Mark to mark, in inches", self.inches)]
        {
            let Some(Triple { three, four, five }) = triple else { continue };
            working.step(what, "c = √(a² + b²)", [("a", three.into()), ("b", four.into())], five, TRIPLE);
        }
        let (Some(out), Some((first, second))) = (self.out, diagonals) else { return };
        let both = [("p", Quantity::from(first)), ("q", Quantity::from(second))];
        working.step(
            "Out of square",
            "δ = arcsin((p² − q²) / (4 × w × h))",
            [both, sides].concat(),
            Quantity::degrees(out.degrees),
            PARALLELOGRAM,
        );
        let over = [("h", Quantity::from(self.height)), ("δ", Quantity::degrees(out.degrees))];
        working.step("Out over the height", "v = h × sin(δ)", over, Quantity::mm(out.over_height_mm), GEOMETRY);
        let even = Quantity::mm(out.even_mm);
        working.step("Both diagonals once square", "m = √((p² + q²) / 2)", both, even, PARALLELOGRAM);
    }
}

impl Out {
    /// `sin δ = (p² − q²) / (4·w·h)`; nothing where no such frame can be pulled square.
    fn new(sides: [Length; 2], diagonals: [Length; 2], diagonal_mm: f64) -> Option<Self> {
        let [width_mm, height_mm] = sides.map(Length::as_mm);
        let [first_mm, second_mm] = diagonals.map(Length::as_mm);
        let sine = (first_mm - second_mm) * (first_mm + second_mm) / (4.0 * width_mm * height_mm);
        let degrees = sine.asin().to_degrees();
        // Not a number where the sine is past one.
        if degrees.is_nan() || degrees.abs() > MOST_OUT {
            return None;
        }
        let over_height_mm = height_mm * sine;
        let even_mm = first_mm.hypot(second_mm) / std::f64::consts::SQRT_2;
        let square = over_height_mm.abs() <= SQUARE_MM;
        Some(Self { degrees, over_height_mm, square, even_mm, misfit_mm: even_mm - diagonal_mm })
    }
}

/// The longest marks in whole parts: `part` goes so many times into a third of the shorter side and a quarter of the
/// longer one.
fn triple(width: Length, height: Length, part: Length) -> Result<Option<Triple>, LengthError> {
    let (shorter, longer) = (width.min(height), width.max(height));
    let parts = shorter.times(1, 3)?.floor_div(part)?.min(longer.times(1, 4)?.floor_div(part)?);
    if parts < 1 {
        return Ok(None);
    }
    let of = |times: i64| part.times(parts, 1)?.times(times, 1);
    Ok(Some(Triple { three: of(3)?, four: of(4)?, five: of(5)? }))
}
