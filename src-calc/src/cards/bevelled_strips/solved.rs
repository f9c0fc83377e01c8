//! From what the maker gives to the strips.

use super::passes::Plan;
use super::rip::{Lean, NANOMETRE_MM, Quad, Rip};
use super::{Answer, Inputs, MeasuredAt, Section, Shape, Widths, working};
use crate::caution::Caution;
use crate::measure::{Angle, AngleReading, FigureKind, Length, Quantity};
use crate::problem::{Problem, Problems};

/// No saw tilts further, in degrees.
const MOST_BEVEL: f64 = 50.0;
/// More strips than anybody rips from one board: the width is then a slip of the finger.
const MOST_STRIPS: f64 = 500.0;
/// More than anybody wants.
const MOST_WANTED: f64 = 100_000.0;
/// Narrower than this at the middle, a strip between fence and blade is thin.
const THIN_MM: f64 = 50.0;

/// What was read, and what follows from the tilt.
pub(super) struct Given {
    pub(super) board: Length,
    pub(super) thickness: Length,
    pub(super) kerf: Length,
    pub(super) planing: Length,
    pub(super) tooth_above: Length,
    pub(super) bevel: Angle,
    /// `t·tan β`.
    pub(super) slope_mm: f64,
    /// `k / cos β`.
    pub(super) kerf_mm: f64,
    /// `p / cos β`.
    pub(super) planing_mm: f64,
}

/// How many strips, and how each is cut.
///
/// # Errors
/// A [`Problem`] for each input that cannot be used: unreadable, at or below zero, an angle that no saw tilts to, a
/// strip that comes to a point, a board too narrow for one strip.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let mut problems = Problems::default();
    let given = given(&mut problems, inputs);
    let strip_width = match inputs.shape {
        Shape::CleatPair => Some(Length::ZERO),
        Shape::Parallelogram | Shape::Trapezoid => problems.above_zero("strip_width", &inputs.strip_width),
    };
    let wanted = wanted(&mut problems, inputs);
    let (Some(given), Some(strip_width), Some(wanted)) = (given, strip_width, wanted) else { return Err(problems) };
    if inputs.shape == Shape::CleatPair { cleat_pair(inputs, &given) } else { row(inputs, &given, strip_width, wanted) }
}

fn given(problems: &mut Problems, inputs: &Inputs) -> Option<Given> {
    let board = problems.above_zero("board_width", &inputs.board_width);
    let thickness = problems.above_zero("thickness", &inputs.thickness);
    let bevel = bevel(problems, &inputs.bevel);
    let kerf = problems.zero_or_more("kerf", &inputs.kerf);
    let planing = problems.zero_or_more("planing", &inputs.planing);
    let tooth_above = problems.zero_or_more("tooth_above", &inputs.tooth_above);
    let (bevel, thickness, kerf, planing) = (bevel?, thickness?, kerf?, planing?);
    Some(Given {
        board: board?,
        thickness,
        kerf,
        planing,
        tooth_above: tooth_above?,
        slope_mm: thickness.as_mm() * bevel.tan(),
        kerf_mm: kerf.as_mm() / bevel.cos(),
        planing_mm: planing.as_mm() / bevel.cos(),
        bevel,
    })
}

fn bevel(problems: &mut Problems, reading: &AngleReading) -> Option<Angle> {
    let angle = problems.check("bevel", reading.angle())?;
    if angle.degrees() < 0.0 {
        problems.add("bevel", Problem::BelowZero);
    } else if angle.degrees() > MOST_BEVEL {
        let why = "a table saw tilts no further";
        problems.add("bevel", Problem::TooLarge { most: Quantity::degrees(MOST_BEVEL), why });
    } else {
        return Some(angle);
    }
    None
}

/// How many are wanted; nought for as many as there are.
fn wanted(problems: &mut Problems, inputs: &Inputs) -> Option<u32> {
    if inputs.shape == Shape::CleatPair || inputs.wanted.is_blank() {
        return Some(0);
    }
    let wanted = problems.check("wanted", inputs.wanted.value(FigureKind::Count))?;
    if wanted < 1.0 {
        problems.add("wanted", Problem::NotAboveZero);
    } else if wanted > MOST_WANTED {
        let most = Quantity::number(MOST_WANTED);
        problems.add("wanted", Problem::TooLarge { most, why: "that is a mill's work" });
    } else {
        return Some(whole(wanted));
    }
    None
}

/// A whole number between nought and [`MOST_WANTED`], as such.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "bounds were checked; a cast saturates")]
fn whole(count: f64) -> u32 {
    count as u32
}

/// The strip's three widths from the one that was given.
fn widths(inputs: &Inputs, width_mm: f64, slope_mm: f64) -> Widths {
    if inputs.shape == Shape::Parallelogram {
        return Widths { wide_mm: width_mm, mid_mm: width_mm, narrow_mm: width_mm };
    }
    let mid_mm = match inputs.measured_at {
        MeasuredAt::WideFace => width_mm - slope_mm,
        MeasuredAt::NarrowFace => width_mm + slope_mm,
        MeasuredAt::MidThickness => width_mm,
    };
    Widths { wide_mm: mid_mm + slope_mm, mid_mm, narrow_mm: mid_mm - slope_mm }
}

/// Strips side by side, as many as the board gives.
fn row(inputs: &Inputs, given: &Given, strip_width: Length, wanted: u32) -> Result<Answer, Problems> {
    let slope_mm = given.slope_mm;
    let finished = widths(inputs, strip_width.as_mm(), slope_mm);
    if finished.narrow_mm <= NANOMETRE_MM {
        let least = match inputs.measured_at {
            MeasuredAt::WideFace => 2.0 * slope_mm,
            MeasuredAt::MidThickness => slope_mm,
            MeasuredAt::NarrowFace => 0.0,
        };
        let why = "a strip as narrow as that comes to a point before the far face, so it must be wider";
        return Err(Problems::one("strip_width", Problem::TooSmall { least: Quantity::mm(least), why }));
    }
    let sawn = finished.grown(2.0 * given.planing_mm);
    let lean = if inputs.shape == Shape::Trapezoid { Lean::Alternate } else { Lean::Alike };
    let rip = Rip {
        board_mm: given.board.as_mm(),
        thickness_mm: given.thickness.as_mm(),
        slope_mm,
        kerf_mm: given.kerf_mm,
        sawn_mm: sawn.mid_mm,
        lean,
    };
    let most = rip.most();
    if most < 1.0 {
        let least = Quantity::mm(rip.used_mm(1.0));
        let why = "one strip takes that much of the board";
        return Err(Problems::one("board_width", Problem::TooSmall { least, why }));
    }
    if most > MOST_STRIPS {
        let why = "That is more than 500 strips from one board. Check its width and theirs.";
        return Err(Problems::one("strip_width", Problem::Clash { why }));
    }
    let fits = whole(most);
    let count = if wanted == 0 { fits } else { wanted.min(fits) };
    let used_mm = rip.used_mm(f64::from(count));
    let left_mm = (rip.board_mm - used_mm).max(0.0);
    let upright = given.bevel.degrees() == 0.0;
    let last_is_rest = upright && left_mm <= NANOMETRE_MM;
    let trim_fence_mm = rip.board_mm - slope_mm;
    let plan = Plan {
        shape: inputs.shape,
        first_edge: inputs.first_edge,
        upright,
        count,
        last_is_rest,
        fence_mm: sawn.mid_mm,
        trim_fence_mm,
    };
    let numbers = 0..usize::try_from(count).unwrap_or_default();
    let cuts =
        numbers.clone().map(|index| index + 1).take(if last_is_rest { numbers.len() - 1 } else { numbers.len() });
    let trim = plan.trims().then(|| rip.kerf_after(0));
    let section = Section {
        width: given.board,
        thickness: given.thickness,
        strips: numbers.clone().map(|index| rip.strip(index)).collect(),
        kerfs: trim.into_iter().chain(cuts.map(|count| rip.kerf_after(count))).collect(),
        offcut: if last_is_rest { Vec::new() } else { rip.offcut(numbers.len()) },
    };
    let all = if wanted == 0 { count } else { wanted };
    Ok(Answer {
        fits,
        count,
        missing: all - count,
        boards: all.div_ceil(fits),
        bevel_degrees: given.bevel.degrees(),
        slope_mm,
        kerf_on_face_mm: given.kerf_mm,
        finished,
        sawn,
        square_to_bevel_mm: (lean == Lean::Alike || upright).then(|| finished.mid_mm * given.bevel.cos()),
        bevel_width_mm: rip.thickness_mm / given.bevel.cos(),
        fence_mm: sawn.mid_mm,
        trim_fence_mm: plan.trims().then_some(trim_fence_mm),
        blade_above_table_mm: blade_mm(given),
        used_mm,
        left_mm,
        offcut_wide_mm: (left_mm - given.kerf_mm + slope_mm).max(0.0),
        offcut_narrow_mm: (left_mm - given.kerf_mm).max(0.0),
        board_for_wanted_mm: rip.used_mm(f64::from(all)),
        passes: plan.passes(),
        section,
        working: working::of_row(inputs, given, strip_width, &rip, count),
        cautions: cautions(given, inputs.shape, sawn.mid_mm),
    })
}

/// One rip, two equal cleats: `2·l = B + s − q` over the wider face of each.
fn cleat_pair(inputs: &Inputs, given: &Given) -> Result<Answer, Problems> {
    let (board_mm, thickness_mm) = (given.board.as_mm(), given.thickness.as_mm());
    let (slope_mm, kerf_mm) = (given.slope_mm, given.kerf_mm);
    let wide_mm = (board_mm + slope_mm - kerf_mm) / 2.0;
    let sawn = Widths { wide_mm, mid_mm: wide_mm - slope_mm / 2.0, narrow_mm: wide_mm - slope_mm };
    let finished = sawn.grown(-given.planing_mm);
    if finished.narrow_mm <= NANOMETRE_MM {
        let least = Quantity::mm(slope_mm + kerf_mm + 2.0 * given.planing_mm);
        let why = "at that width both cleats come to a point, so it must be wider";
        return Err(Problems::one("board_width", Problem::TooSmall { least, why }));
    }
    let [near, far] = [[sawn.narrow_mm, wide_mm], [sawn.narrow_mm + kerf_mm, wide_mm + kerf_mm]];
    let quad = |[left, left_top]: [f64; 2], [right, right_top]: [f64; 2]| -> Quad {
        [[left, 0.0], [right, 0.0], [right_top, thickness_mm], [left_top, thickness_mm]]
    };
    let plan = Plan {
        shape: inputs.shape,
        first_edge: inputs.first_edge,
        upright: given.bevel.degrees() == 0.0,
        count: 1,
        last_is_rest: false,
        fence_mm: sawn.narrow_mm,
        trim_fence_mm: 0.0,
    };
    Ok(Answer {
        fits: 2,
        count: 2,
        missing: 0,
        boards: 1,
        bevel_degrees: given.bevel.degrees(),
        slope_mm,
        kerf_on_face_mm: kerf_mm,
        finished,
        sawn,
        square_to_bevel_mm: None,
        bevel_width_mm: thickness_mm / given.bevel.cos(),
        fence_mm: sawn.narrow_mm,
        trim_fence_mm: None,
        blade_above_table_mm: blade_mm(given),
        used_mm: board_mm,
        left_mm: 0.0,
        offcut_wide_mm: 0.0,
        offcut_narrow_mm: 0.0,
        board_for_wanted_mm: board_mm,
        passes: plan.passes(),
        section: Section {
            width: given.board,
            thickness: given.thickness,
            strips: vec![quad([0.0, 0.0], near), quad(far, [board_mm, board_mm])],
            kerfs: vec![quad(near, far)],
            offcut: Vec::new(),
        },
        working: working::of_cleats(given, &sawn, &finished),
        cautions: cautions(given, inputs.shape, sawn.mid_mm),
    })
}

/// Along the blade, from the table to the topmost tooth: `(t + a) / cos β`.
pub(super) fn blade_mm(given: &Given) -> f64 {
    (given.thickness.as_mm() + given.tooth_above.as_mm()) / given.bevel.cos()
}

fn cautions(given: &Given, shape: Shape, strip_mm: f64) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if given.bevel.degrees() > 0.0 {
        cautions.push(Caution::BevelRip);
        if shape != Shape::CleatPair {
            cautions.push(Caution::TurnedBoard);
        }
    }
    if strip_mm < THIN_MM {
        cautions.push(Caution::ThinStrip);
    }
    cautions.push(Caution::DustAndNoise);
    cautions
}
