//! Short tables; the handbook's rows and the ripping of polygons are in the tests crate.

use super::*;
use crate::problem::Problems;
use proptest::prelude::*;

mod limits;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn turns(shape: Shape, first_edge: FirstEdge, bevel: &str) -> Vec<(Cut, Turn, Face, Touching)> {
    let answer = solve_with(|inputs| {
        inputs.shape = shape;
        inputs.first_edge = first_edge;
        inputs.bevel = bevel.into();
        inputs.wanted = Figure::new("3");
    });
    answer.unwrap().passes.iter().map(|pass| (pass.cut, pass.turn, pass.up, pass.touching)).collect()
}

/// By drawing the board on the saw, the blade leaning away from the fence.
#[test]
fn turns_the_board_as_a_drawing_says() {
    let trim = (Cut::Trim, Turn::Start, Face::Marked, Touching::Square);
    let kept = |turn| (Cut::Strip, turn, Face::Other, Touching::Lower);
    let nested = |turn, up| (Cut::Strip, turn, up, Touching::Upper);
    let plain = |turn| (Cut::Strip, turn, Face::Other, Touching::Square);
    for (shape, first_edge, bevel, want) in [
        (
            Shape::Parallelogram,
            FirstEdge::Square,
            "30",
            vec![trim, kept(Turn::Roll), kept(Turn::Keep), kept(Turn::Keep)],
        ),
        (Shape::Parallelogram, FirstEdge::Bevelled, "30", vec![kept(Turn::Start), kept(Turn::Keep), kept(Turn::Keep)]),
        (
            Shape::Trapezoid,
            FirstEdge::Square,
            "30",
            vec![
                trim,
                nested(Turn::Spin, Face::Marked),
                nested(Turn::EndOverEnd, Face::Other),
                nested(Turn::EndOverEnd, Face::Marked),
            ],
        ),
        (
            Shape::Trapezoid,
            FirstEdge::Bevelled,
            "30",
            vec![
                nested(Turn::Start, Face::Marked),
                nested(Turn::EndOverEnd, Face::Other),
                nested(Turn::EndOverEnd, Face::Marked),
            ],
        ),
        (Shape::Trapezoid, FirstEdge::Square, "0", vec![plain(Turn::Start), plain(Turn::Keep), plain(Turn::Keep)]),
        (Shape::CleatPair, FirstEdge::Square, "45", vec![plain(Turn::Start)]),
    ] {
        assert_eq!(turns(shape, first_edge, bevel), want, "{shape:?} {first_edge:?} at {bevel}°");
    }
}

/// By hand: at 45° the allowance of 1 mm is √2 along the face; 40 + 2·√2 = 42.8284 as sawn, the fence as far.
#[test]
fn planing_widens_the_strip_as_sawn() {
    let answer = solve_with(|inputs| {
        inputs.bevel = "45".into();
        inputs.strip_width = Reading::mm("40");
        inputs.planing = Reading::mm("1");
    })
    .unwrap();
    assert!((answer.fence_mm - 42.828_427).abs() < 1e-6, "{}", answer.fence_mm);
    assert!((answer.sawn.wide_mm - 42.828_427).abs() < 1e-6 && (answer.finished.wide_mm - 40.0).abs() < 1e-9);
}

/// By hand at 45° in 18 mm: the slope is 18, so wide 60, middle 42 and narrow 24 are one strip.
#[test]
fn one_strip_named_at_any_place() {
    for (measured_at, width) in
        [(MeasuredAt::WideFace, "60"), (MeasuredAt::MidThickness, "42"), (MeasuredAt::NarrowFace, "24")]
    {
        let answer = solve_with(|inputs| {
            inputs.shape = Shape::Trapezoid;
            inputs.bevel = "45".into();
            inputs.measured_at = measured_at;
            inputs.strip_width = Reading::mm(width);
        })
        .unwrap();
        let Widths { wide_mm, mid_mm, narrow_mm } = answer.finished;
        for (got, want) in [(wide_mm, 60.0), (mid_mm, 42.0), (narrow_mm, 24.0), (answer.fence_mm, 42.0)] {
            assert!((got - want).abs() < 1e-9, "{measured_at:?}: {got}, by hand {want}");
        }
    }
}

/// By hand: at 0°, 126.4 = 3 × 40 + 2 × 3.2, so the last strip is what two cuts leave; four want a board of 169.6.
#[test]
fn wanted_more_than_the_board_gives() {
    let answer = solve_with(|inputs| {
        inputs.bevel = "0".into();
        inputs.board_width = Reading::mm("126.4");
        inputs.strip_width = Reading::mm("40");
        inputs.wanted = Figure::new("4");
    })
    .unwrap();
    assert_eq!((answer.fits, answer.count, answer.missing, answer.boards, answer.passes.len()), (3, 3, 1, 2, 2));
    assert!((answer.board_for_wanted_mm - 169.6).abs() < 1e-9 && answer.left_mm.abs() < 1e-9);
    assert!(answer.section.offcut.is_empty());
}

#[test]
fn says_what_is_wrong_and_where() {
    let problems = solve_with(|inputs| {
        inputs.board_width = Reading::mm("0");
        inputs.thickness = Reading::mm("thick");
        inputs.bevel = "51".into();
        inputs.kerf = Reading::mm("-1");
        inputs.wanted = Figure::new("0");
    })
    .unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(fields, ["board_width", "thickness", "bevel", "kerf", "wanted"]);
    for (board, shape, field) in [("40", Shape::Parallelogram, "board_width"), ("5", Shape::CleatPair, "board_width")] {
        let problems = solve_with(|inputs| {
            inputs.board_width = Reading::mm(board);
            inputs.shape = shape;
        })
        .unwrap_err();
        assert!(problems.of(field).is_some(), "{shape:?} out of {board} mm: {problems:?}");
    }
    let too_many = solve_with(|inputs| {
        inputs.board_width = Reading::mm("100 m");
        inputs.strip_width = Reading::mm("0.01");
        inputs.kerf = Reading::mm("0");
    });
    assert!(too_many.unwrap_err().of("strip_width").is_some());
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform6(prop::sample::select(vec![
            "", "0", "-1", "1e9", "0.000001", "1/3", "18", "300", "99999999999", "12 in", "1 km", "1/999983",
        ])),
        bevel in prop::sample::select(vec!["0", "-1", "50", "50.0001", "45", "1/3", "89", "", "90"]),
        wanted in prop::sample::select(vec!["", "0", "1", "3", "99999", "100001", "1e30", "-2"]),
        shape in prop::sample::select(Shape::ALL),
        measured_at in prop::sample::select(MeasuredAt::ALL),
    ) {
        let [board_width, thickness, strip_width, kerf, planing, tooth_above] = lengths.map(Reading::mm);
        let bevel = bevel.into();
        let wanted = Figure::new(wanted);
        let first_edge = FirstEdge::Square;
        let inputs = Inputs {
            board_width, thickness, bevel, strip_width, measured_at, shape, first_edge, kerf, planing, tooth_above, wanted,
        };
        if let Ok(answer) = solve(&inputs) {
            let finite = [answer.used_mm, answer.left_mm, answer.fence_mm, answer.sawn.wide_mm, answer.blade_above_table_mm];
            prop_assert!(finite.iter().all(|value| value.is_finite() && *value >= 0.0), "{answer:?}");
        }
    }

    /// The same job given in inches gives the same strips.
    #[test]
    fn inches_change_nothing(board in 64..800_i32, strip in 8..64_i32, degrees in 0..=50_i32) {
        let job = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            board_width: length(board),
            thickness: length(12),
            strip_width: length(strip),
            kerf: length(2),
            planing: length(1),
            tooth_above: length(3),
            bevel: degrees.to_string().as_str().into(),
            shape: Shape::Trapezoid,
            ..Inputs::default()
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = job(&|sixteenths| Reading::inches(&format!("{sixteenths}/16")));
        let metric = job(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert_eq!(inches, metric);
    }
}
