//! The corners of a frame or a box of `n` equal sides: mitre, bevel, and both at once where the sides lean.

use super::{Inputs, Stand};
use crate::measure::{FigureKind, Length, Quantity};
use crate::problem::{Problem, Problems};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;
use serde::Serialize;

/// Fewer sides enclose nothing.
const LEAST_SIDES: u32 = 3;
/// More sides than anybody cuts.
const MOST_SIDES: u32 = 100;
/// What is shorter than this is rounding of the estimates, not wood.
const NANOMETRE_MM: f64 = 1e-6;
/// A side that leans further lies flat, in degrees.
const MOST_LEAN: f64 = 89.0;

const CORNER: Source = Source::practice("plane geometry: the sides turn through a whole turn in so many equal corners");
const COMPOUND: Source = Source::practice(
    "solid geometry: the corner is the line in which two leaning faces meet, and the cut halves the angle between them; both scales are 0 at the square cut",
);

/// A corner of such a frame, and a piece of it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Sides {
    /// How many.
    pub count: u32,
    /// How far each side leans from upright, in degrees: 90 where it lies flat.
    pub lean_degrees: f64,
    /// How far the blade leans from upright, in degrees.
    pub tilt_degrees: f64,
    /// How far the gauge is swung from square, in degrees.
    pub gauge_degrees: f64,
    /// Tilt where one side is butted against the face of the next instead, in degrees; the gauge stays. Nothing for a
    /// flat frame.
    pub butt_tilt_degrees: Option<f64>,
    /// Between two neighbours seen from above, in degrees.
    pub corner_degrees: f64,
    /// Between the faces of two neighbours, measured inside and square to the corner, in degrees.
    pub dihedral_degrees: f64,
    /// The long edge of a piece, on its outer face.
    pub long: Length,
    /// The short edge of the same face, in millimetres.
    pub short_mm: f64,
    /// Width of the board.
    pub board_width: Length,
    /// How high a side stands, in millimetres; zero where it lies flat.
    pub height_mm: f64,
    /// The circle that the long edges touch from outside, its diameter in millimetres: across the flats where the
    /// number of sides is even.
    pub across_mm: f64,
}

impl Sides {
    /// `tan M = tan(180° / n)·sin L` and `sin B = sin(180° / n)·cos L` for sides that lean by `L` from upright.
    pub(super) fn solve(inputs: &Inputs, working: &mut Working) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let count = count(&mut problems, inputs);
        let lean_degrees = lean(&mut problems, inputs);
        let long = problems.above_zero("side", &inputs.side);
        let board_width = problems.above_zero("board_width", &inputs.board_width);
        let (Some(count), Some(lean_degrees), Some(long), Some(board_width)) = (count, lean_degrees, long, board_width)
        else {
            return Err(problems);
        };
        let half = std::f64::consts::PI / f64::from(count);
        // A flat frame has no tilt at all, not one of a rounded cosine.
        let (over, up) = match inputs.stand {
            Stand::Flat => (1.0, 0.0),
            Stand::Upright => (0.0, 1.0),
            Stand::Leaning => lean_degrees.to_radians().sin_cos(),
        };
        let (gauge, tilt) = ((half.tan() * over).atan(), (half.sin() * up).asin());
        let width_mm = board_width.as_mm();
        let lost_mm = 2.0 * width_mm * gauge.tan();
        let short_mm = long.as_mm() - lost_mm;
        if short_mm <= NANOMETRE_MM {
            let why = "a piece as short as that comes to a point before its other edge, so it must be longer";
            return Err(Problems::one("side", Problem::TooSmall { least: Quantity::mm(lost_mm), why }));
        }
        let dihedral_degrees = 180.0 - 2.0 * tilt.to_degrees();
        let sides = Self {
            count,
            lean_degrees,
            tilt_degrees: tilt.to_degrees(),
            gauge_degrees: gauge.to_degrees(),
            butt_tilt_degrees: (inputs.stand != Stand::Flat).then(|| (90.0 - dihedral_degrees).abs()),
            corner_degrees: 180.0 - 2.0 * half.to_degrees(),
            dihedral_degrees,
            long,
            short_mm,
            board_width,
            height_mm: width_mm * up,
            across_mm: long.as_mm() / half.tan(),
        };
        sides.show(working);
        Ok(sides)
    }

    fn show(&self, working: &mut Working) {
        let degrees = Quantity::degrees;
        let count = ("n", Quantity::count(self.count.into()));
        let half = ("h", degrees(180.0 / f64::from(self.count)));
        let lean = ("L", degrees(self.lean_degrees));
        working.step("Half of a corner's turn", "h = 180° / n", [count], half.1, CORNER);
        let gauge = ("M", degrees(self.gauge_degrees));
        working.step("Gauge, from square", "M = arctan(tan(h) × sin(L))", [half, lean], gauge.1, COMPOUND);
        let tilt = ("B", degrees(self.tilt_degrees));
        working.step("Tilt of the blade, from upright", "B = arcsin(sin(h) × cos(L))", [half, lean], tilt.1, COMPOUND);
        let dihedral = ("D", degrees(self.dihedral_degrees));
        working.step("Between the faces", "D = 180° − 2 × B", [tilt], dihedral.1, COMPOUND);
        if let Some(butt) = self.butt_tilt_degrees {
            working.step("Tilt for a butted corner", "T = abs(90° − D)", [dihedral], degrees(butt), COMPOUND);
        }
        working.step(
            "Short edge of a piece",
            "e = E − 2 × w × tan(M)",
            [("E", self.long.into()), ("w", self.board_width.into()), gauge],
            Quantity::mm(self.short_mm),
            GEOMETRY,
        );
        working.step(
            "Circle that the long edges touch",
            "c = E / tan(h)",
            [("E", self.long.into()), half],
            Quantity::mm(self.across_mm),
            GEOMETRY,
        );
    }
}

fn count(problems: &mut Problems, inputs: &Inputs) -> Option<u32> {
    let count = problems.check("sides", inputs.sides.value(FigureKind::Count))?;
    if count < f64::from(LEAST_SIDES) {
        let least = Quantity::count(LEAST_SIDES.into());
        problems.add("sides", Problem::TooSmall { least, why: "fewer sides enclose nothing" });
        return None;
    }
    // Found rather than cast.
    let found = (LEAST_SIDES..=MOST_SIDES).find(|whole| f64::from(*whole) >= count);
    if found.is_none() {
        let most = Quantity::count(MOST_SIDES.into());
        problems.add("sides", Problem::TooLarge { most, why: "more sides are turned on a lathe" });
    }
    found
}

fn lean(problems: &mut Problems, inputs: &Inputs) -> Option<f64> {
    match inputs.stand {
        Stand::Flat => return Some(90.0),
        Stand::Upright => return Some(0.0),
        Stand::Leaning => {}
    }
    let lean = problems.check("lean", inputs.lean.angle())?.degrees();
    if lean < 0.0 {
        problems.add("lean", Problem::BelowZero);
    } else if lean > MOST_LEAN {
        let why = "a side that leans further lies flat";
        problems.add("lean", Problem::TooLarge { most: Quantity::degrees(MOST_LEAN), why });
    } else {
        return Some(lean);
    }
    None
}
