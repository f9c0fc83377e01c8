//! Angles, built up again in space: the faces of a frame are planes of `nalgebra`, their corners the points in which
//! three planes meet, and the angles are those between vectors. No formula of the card is used.

use nalgebra::{Matrix3, Rotation2, Vector2, Vector3};
use proptest::prelude::*;
use scantling::cards::angles::{Answer, Edges, Inputs, Job, Outcome, Sides, Stand, solve};
use scantling::measure::{AngleReading, Figure, Reading};
use std::f64::consts::TAU;

const NEAR_DEGREES: f64 = 1e-7;
const NEAR_MM: f64 = 1e-6;

/// To a millionth of a micrometre: a reading with more digits than that is refused as too fine.
fn mm(length: f64) -> Reading {
    Reading::mm(&format!("{length:.9}"))
}

/// A face that rises outwards: its outward normal, its level direction and its steepest one.
struct Face {
    normal: Vector3<f64>,
    up: Vector3<f64>,
    /// Where its long edge is nearest to the axis.
    foot: Vector3<f64>,
}

impl Face {
    /// Turned about the axis, with its long edge at the height of nought and `from_axis` away from the axis.
    fn new(turn: f64, lean: f64, from_axis: f64) -> Self {
        let out = Vector3::new(turn.cos(), turn.sin(), 0.0);
        let level = Vector3::new(-turn.sin(), turn.cos(), 0.0);
        let up = out * lean.sin() + Vector3::z() * lean.cos();
        Self { normal: level.cross(&up), up, foot: out * from_axis }
    }

    /// The corner with another face at a height.
    fn corner(&self, other: &Self, height: f64) -> Vector3<f64> {
        let planes = Matrix3::from_rows(&[self.normal.transpose(), other.normal.transpose(), Vector3::z().transpose()]);
        let at = Vector3::new(self.normal.dot(&self.foot), other.normal.dot(&other.foot), height);
        planes.lu().solve(&at).unwrap()
    }
}

fn degrees_between(one: &Vector3<f64>, other: &Vector3<f64>) -> f64 {
    one.cross(other).norm().atan2(one.dot(other)).to_degrees()
}

/// Between a cut and a square one, the cut being a plane of that normal through a board's face.
fn off_square(cut: &Vector3<f64>, face: &Vector3<f64>) -> f64 {
    (90.0 - degrees_between(cut, face)).abs()
}

fn sides(count: u32, stand: Stand, lean: f64, side: f64, width: f64) -> Result<(Answer, Sides), TestCaseError> {
    let inputs = Inputs {
        job: Job::Sides,
        sides: Figure::new(count.to_string()),
        stand,
        lean: AngleReading::from(lean.to_string().as_str()),
        side: mm(side),
        board_width: mm(width),
        ..Inputs::default()
    };
    let Ok(answer) = solve(&inputs) else { return Err(TestCaseError::reject("a side that comes to a point")) };
    let Outcome::Sides(sides) = answer.outcome.clone() else { return Err(TestCaseError::fail("not the job")) };
    Ok((answer, sides))
}

macro_rules! near {
    ($got:expr, $want:expr, $within:expr) => {
        let (got, want) = ($got, $want);
        prop_assert!((got - want).abs() < $within, "{}: {got}, built up {want}", stringify!($got));
    };
}

fn check_box(count: u32, stand: Stand, lean_degrees: f64, side: f64, width: f64) -> Result<(), TestCaseError> {
    let (answer, sides) = sides(count, stand, lean_degrees, side, width)?;
    let lean = if stand == Stand::Upright { 0.0 } else { lean_degrees.to_radians() };
    let turn = TAU / f64::from(count);
    // How far out the long edge must lie for its length: by building one at the distance of 1.
    let pieces = |from_axis: f64| [-1.0, 0.0, 1.0].map(|place| Face::new(place * turn, lean, from_axis));
    let edge = |[before, face, after]: &[Face; 3], height: f64| {
        (face.corner(after, height) - face.corner(before, height)).norm()
    };
    let from_axis = side / edge(&pieces(1.0), 0.0);
    let built = pieces(from_axis);
    let [_, face, next] = &built;

    let height = width * lean.cos();
    near!(edge(&built, 0.0), side, NEAR_MM);
    near!(sides.short_mm, edge(&built, -height), NEAR_MM);
    near!(sides.height_mm, height, NEAR_MM);
    near!(sides.across_mm, 2.0 * from_axis, NEAR_MM);
    near!(sides.corner_degrees, 180.0 - turn.to_degrees(), NEAR_DEGREES);

    // The corner runs along the line in which the two faces meet; a square cut would run straight up the face.
    let corner = face.corner(next, 0.0) - face.corner(next, -1.0);
    near!(sides.gauge_degrees, degrees_between(&corner, &face.up), NEAR_DEGREES);
    near!(sides.dihedral_degrees, 180.0 - degrees_between(&face.normal, &next.normal), NEAR_DEGREES);
    // The mitre's plane lies between the faces and keeps the corner in it.
    let mitre = face.normal - next.normal;
    prop_assert!(mitre.dot(&corner).abs() < 1e-9);
    near!(sides.tilt_degrees, off_square(&mitre, &face.normal), NEAR_DEGREES);
    // A butted end lies on the face of the next side.
    near!(sides.butt_tilt_degrees.unwrap(), off_square(&next.normal, &face.normal), NEAR_DEGREES);
    let scales = answer.scales.unwrap();
    near!(scales.tilt_degrees, sides.tilt_degrees, NEAR_DEGREES);
    near!(scales.gauge_degrees + scales.gauge_from_90_degrees, 90.0, NEAR_DEGREES);
    Ok(())
}

/// A flat frame: an outer polygon, and an inner one that stands a board's width further in.
fn check_flat(count: u32, side: f64, width: f64) -> Result<(), TestCaseError> {
    let (_, sides) = sides(count, Stand::Flat, 0.0, side, width)?;
    let half = TAU / f64::from(count) / 2.0;
    // A corner on a circle of radius 1, and the same turned to the next corner.
    let corner = Rotation2::new(half) * Vector2::new(1.0, 0.0);
    let unit = (corner - Rotation2::new(-2.0 * half) * corner).norm();
    let outer = corner * (side / unit);
    let inner = outer * ((outer.x - width) / outer.x);
    let cut = outer - inner;
    near!(sides.gauge_degrees, cut.y.atan2(cut.x).to_degrees(), NEAR_DEGREES);
    near!(sides.short_mm, 2.0 * inner.y, NEAR_MM);
    near!(sides.across_mm, 2.0 * outer.x, NEAR_MM);
    prop_assert_eq!((sides.tilt_degrees, sides.height_mm), (0.0, 0.0));
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { max_global_rejects: 20_000, ..ProptestConfig::default() })]

    #[test]
    fn boxes_are_built_up(
        count in 3..=24_u32,
        lean in (0..=800_u32).prop_map(|tenths| f64::from(tenths) / 10.0),
        upright in any::<bool>(),
        side in (500..9000_u32).prop_map(|tenths| f64::from(tenths) / 10.0),
        width in (100..2000_u32).prop_map(|tenths| f64::from(tenths) / 10.0),
    ) {
        check_box(count, if upright { Stand::Upright } else { Stand::Leaning }, lean, side, width)?;
        check_flat(count, side, width)?;
    }

    /// A frame that leans by a known angle: its diagonals are measured on it, and the card must tell the angle.
    #[test]
    fn a_leaning_frame_is_found_out(
        width in 100..2000_u32,
        height in 100..2000_u32,
        lean in (-250..=250_i32).prop_map(|tenths| f64::from(tenths) / 10.0),
    ) {
        let across = Vector2::new(f64::from(width), 0.0);
        let upright = Vector2::new(0.0, f64::from(height));
        let up = Rotation2::new(-lean.to_radians()) * upright;
        let inputs = Inputs {
            job: Job::RightAngle,
            width: mm(across.norm()),
            height: mm(upright.norm()),
            first_diagonal: mm((across + up).norm()),
            second_diagonal: mm((across - up).norm()),
            ..Inputs::default()
        };
        let Ok(Outcome::RightAngle(right)) = solve(&inputs).map(|answer| answer.outcome) else { panic!("{inputs:?}") };
        let out = right.out.unwrap();
        near!(out.degrees, lean, 1e-5);
        near!(out.over_height_mm, up.x, 1e-3);
        near!(out.even_mm, (across + upright).norm(), 1e-5);
        near!(out.misfit_mm, 0.0, 1e-5);
        for marks in [right.metric, right.inches].into_iter().flatten() {
            let [three, four, five] = [marks.three, marks.four, marks.five].map(|mark| mark.as_mm());
            near!(Vector2::new(three, four).norm(), five, NEAR_MM);
            prop_assert!(three <= width.min(height).into() && four <= width.max(height).into());
            // With one part more they would run past a side. The parts are 5 mm or half an inch at the most.
            let part = three / 3.0;
            let longer = three + 3.0 * 12.7 > width.min(height).into() || four + 4.0 * 12.7 > width.max(height).into();
            prop_assert!(longer, "{part} is not the longest part");
        }
    }

    /// A tapered piece, drawn: what the jig has to do is the angle between its edges.
    #[test]
    fn a_taper_is_drawn(length in 100..1500_u32, wide in 20..120_u32, narrow in 0..19_u32, arm in 100..600_u32, both in any::<bool>()) {
        let edges = if both { Edges::Both } else { Edges::One };
        let [length, wide, narrow, arm] = [length, wide, narrow, arm].map(f64::from);
        let inputs = Inputs {
            job: Job::Taper,
            taper_length: mm(length),
            wide: mm(wide),
            narrow: mm(narrow),
            jig_arm: mm(arm),
            edges,
            ..Inputs::default()
        };
        let Outcome::Taper(taper) = solve(&inputs).unwrap().outcome else { panic!("{inputs:?}") };
        let low = if both { (wide - narrow) / 2.0 } else { 0.0 };
        let upper = Vector2::new(length, low + narrow) - Vector2::new(0.0, wide);
        let lower = Vector2::new(length, low);
        let along = Vector2::new(length, 0.0);
        let between = |one: Vector2<f64>, other: Vector2<f64>| one.angle(&other).to_degrees();
        near!(taper.degrees, between(along, upper), 1e-5);
        near!(taper.edge_mm, upper.norm(), NEAR_MM);
        near!(taper.offset.as_mm(), -upper.y, NEAR_MM);
        // The arms of the jig, the one along the fence and the one along the piece.
        let opened = |degrees: f64| {
            let fixed = Vector2::new(arm, 0.0);
            (Rotation2::new(degrees.to_radians()) * fixed - fixed).norm()
        };
        near!(taper.opening_mm, opened(taper.degrees), NEAR_MM);
        prop_assert_eq!(taper.second_degrees.is_some(), both);
        if let (Some(second), Some(opening)) = (taper.second_degrees, taper.second_opening_mm) {
            near!(second, between(lower, upper), 1e-5);
            near!(opening, opened(second), NEAR_MM);
        }
    }

    #[test]
    fn a_slope_is_drawn(rise in 1..3000_u32, run in 1..3000_u32) {
        let inputs = Inputs { job: Job::Slope, rise: mm(rise.into()), run: mm(run.into()), ..Inputs::default() };
        let Outcome::Slope(slope) = solve(&inputs).unwrap().outcome else { panic!("{inputs:?}") };
        let drawn = Vector3::new(run.into(), rise.into(), 0.0);
        near!(slope.degrees, degrees_between(&drawn, &Vector3::x()), NEAR_DEGREES);
        near!(slope.level_cut_degrees, degrees_between(&drawn, &Vector3::y()), NEAR_DEGREES);
        near!(slope.along_mm, drawn.norm(), NEAR_MM);
        // A hundred along the level, and as much up as the card says, is the same direction.
        near!(degrees_between(&Vector3::new(100.0, slope.percent, 0.0), &drawn), 0.0, 1e-5);
    }
}
