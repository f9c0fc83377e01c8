//! What is just still accepted, what begins beyond a value, and where the corners of the picture lie.

use super::solve_with;
use crate::cards::bevelled_strips::{Answer, Corner, FirstEdge, Inputs, MeasuredAt, Shape, Widths};
use crate::caution::Caution;
use crate::measure::{Figure, Quantity, Reading};
use crate::problem::{Problem, Problems};

fn solved(change: impl FnOnce(&mut Inputs)) -> Answer {
    solve_with(change).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn close(got: f64, want: f64, what: &str) {
    assert!((got - want).abs() < 1e-6, "{what}: got {got}, by hand {want}");
}

fn same(got: &[Corner], want: &[Corner], what: &str) {
    assert_eq!(got.len(), want.len(), "{what}: {got:?}");
    for (got, want) in got.iter().flatten().zip(want.iter().flatten()) {
        close(*got, *want, what);
    }
}

/// A board 18 thick under a blade at 45°: a cut walks 18 sideways. The kerf is 6 · cos 45° = 4.2426407, so 6 along a
/// face. Strips are 40 half way up, so that they follow each other at 46, the first from 9.
fn at_45(shape: Shape, board: &str) -> Inputs {
    Inputs {
        board_width: Reading::mm(board),
        bevel: "45".into(),
        strip_width: Reading::mm("40"),
        measured_at: MeasuredAt::MidThickness,
        shape,
        kerf: Reading::mm("4.2426407"),
        ..Inputs::default()
    }
}

/// The same with an upright blade: a kerf of 3.2, strips of 40.
fn upright(board: &str) -> Inputs {
    let default = Inputs::default();
    Inputs { bevel: "0".into(), kerf: default.kerf, ..at_45(Shape::Parallelogram, board) }
}

fn answer(inputs: &Inputs) -> Answer {
    solved(|other| *other = inputs.clone())
}

/// The value itself is accepted; the next one is not.
#[test]
fn the_most_itself_is_accepted() {
    type Change = fn(&mut Inputs, &str);
    // Upright without a kerf, strips of 1 mm: as many as the board has millimetres.
    let narrow: Change = |inputs, board| {
        *inputs = Inputs { strip_width: Reading::mm("1"), kerf: Reading::mm("0"), ..upright(board) };
    };
    let one: Change = |inputs, board| *inputs = upright(board);
    for (field, accepted, beyond, change) in [
        ("bevel", "50", "50.1", (|inputs, typed| inputs.bevel = typed.into()) as Change),
        ("bevel", "0", "-0.1", |inputs, typed| inputs.bevel = typed.into()),
        ("wanted", "1", "0", |inputs, typed| inputs.wanted = Figure::new(typed)),
        ("wanted", "100000", "100001", |inputs, typed| inputs.wanted = Figure::new(typed)),
        ("strip_width", "500", "501", narrow),
        ("board_width", "40", "39.9", one),
    ] {
        assert!(solve_with(|inputs| change(inputs, accepted)).is_ok(), "{field} {accepted}");
        let problems = solve_with(|inputs| change(inputs, beyond)).unwrap_err();
        assert!(problems.of(field).is_some(), "{field} {beyond}: {problems:?}");
    }
    assert_eq!(solved(|inputs| narrow(inputs, "500")).fits, 500);
    assert_eq!(solved(|inputs| one(inputs, "40")).fits, 1);
}

/// The least that is named where something is too small.
fn least(result: Result<Answer, Problems>, field: &str) -> f64 {
    let problems = result.unwrap_err();
    match problems.of(field) {
        Some(Problem::TooSmall { least: Quantity::Estimate { value, .. }, .. }) => *value,
        other => panic!("{field}: {other:?}"),
    }
}

/// At 45° in 18 mm a strip with two leaning edges comes to a point at 36 over its wider face and 18 half way up.
#[test]
fn a_strip_that_comes_to_a_point_is_told_how_wide_it_must_be() {
    let strip = |measured_at, width: &str| {
        solve_with(|inputs| {
            *inputs = Inputs { measured_at, strip_width: Reading::mm(width), ..at_45(Shape::Trapezoid, "220") };
        })
    };
    for (measured_at, point, beyond, want) in
        [(MeasuredAt::WideFace, "36", "36.1", 36.0), (MeasuredAt::MidThickness, "18", "18.1", 18.0)]
    {
        close(least(strip(measured_at, point), "strip_width"), want, point);
        assert!(strip(measured_at, beyond).is_ok(), "{measured_at:?} {beyond}");
    }
    assert!(strip(MeasuredAt::NarrowFace, "0.1").is_ok());
}

/// One strip of a row takes its 40 and the slope, 58. Two cleats come to a point where the board is no wider than the
/// slope, the kerf and both allowances of 3 · cos 45° = 2.1213203, so 3 along a face: 18 + 6 + 6.
#[test]
fn a_board_that_is_too_narrow_is_told_how_wide_it_must_be() {
    let row = |board: &str| solve_with(|inputs| *inputs = at_45(Shape::Parallelogram, board));
    close(least(row("57.9"), "board_width"), 58.0, "a row");
    assert_eq!(row("58").unwrap().fits, 1);
    let pair = |board: &str| {
        solve_with(|inputs| {
            *inputs = Inputs { planing: Reading::mm("2.1213203"), ..at_45(Shape::CleatPair, board) };
        })
    };
    close(least(pair("29.9"), "board_width"), 30.0, "a pair");
    assert!(pair("30.1").is_ok());
}

/// 50 half way up, as sawn, is no thin strip; a tenth less is. What leans is cut with the blade tilted, and only a row
/// brings a bevelled edge to the fence.
#[test]
fn cautions_follow_the_tilt_and_the_strip() {
    let (tilted, turned, thin, dust) =
        (Caution::BevelRip, Caution::TurnedBoard, Caution::ThinStrip, Caution::DustAndNoise);
    for (shape, bevel, strip, want) in [
        (Shape::Parallelogram, "0", "50", vec![dust]),
        (Shape::Parallelogram, "0", "49.9", vec![thin, dust]),
        (Shape::Parallelogram, "0.1", "50", vec![tilted, turned, dust]),
        (Shape::Trapezoid, "30", "60", vec![tilted, turned, dust]),
        (Shape::Trapezoid, "30", "49.9", vec![tilted, turned, thin, dust]),
        (Shape::CleatPair, "0", "1", vec![dust]),
        (Shape::CleatPair, "45", "1", vec![tilted, dust]),
    ] {
        let inputs = Inputs { bevel: bevel.into(), strip_width: Reading::mm(strip), ..at_45(shape, "220") };
        assert_eq!(answer(&inputs).cautions, want, "{shape:?} {strip} at {bevel}°");
    }
    // 2 · (50 + 9) + 6 − 18 = 106 gives a pair of 50 half way up, as (106 + 18 − 6) / 2 − 9.
    let pair = |board: &str| answer(&at_45(Shape::CleatPair, board)).cautions.contains(&thin);
    assert_eq!(["106.1", "105.9"].map(pair), [false, true]);
}

/// Four strips take 4 · 40 + 3 · 6 + 18 = 196 of 220 and leave 24, of which 6 fall to the kerf: 18 over the narrower
/// face, and a slope more, 36, over the wider one.
#[test]
fn a_row_in_numbers() {
    let row = at_45(Shape::Parallelogram, "220");
    let got = answer(&row);
    assert_eq!((got.fits, got.count, got.missing, got.boards), (4, 4, 0, 1));
    for (got, want, what) in [
        (got.slope_mm, 18.0, "slope"),
        (got.kerf_on_face_mm, 6.0, "kerf"),
        (got.used_mm, 196.0, "used"),
        (got.left_mm, 24.0, "left"),
        (got.offcut_wide_mm, 36.0, "offcut, wide"),
        (got.offcut_narrow_mm, 18.0, "offcut, narrow"),
        (got.fence_mm, 40.0, "fence"),
        // The blade comes out at the corner of the first edge, a slope in from the far one.
        (got.trim_fence_mm.unwrap(), 202.0, "fence for the first edge"),
        // √½ of 40, and √2 times 18 and 18 + 5.
        (got.square_to_bevel_mm.unwrap(), 28.284_271, "square to the bevel"),
        (got.bevel_width_mm, 25.455_844, "bevel"),
        (got.blade_above_table_mm, 32.526_912, "blade"),
        (got.board_for_wanted_mm, 196.0, "board"),
    ] {
        close(got, want, what);
    }
    // Ten want 400 + 54 + 18, and three boards of four.
    let ten = answer(&Inputs { wanted: Figure::new("10"), ..row.clone() });
    assert_eq!((ten.fits, ten.count, ten.missing, ten.boards), (4, 4, 6, 3));
    close(ten.board_for_wanted_mm, 472.0, "board for ten");
    let two = answer(&Inputs { wanted: Figure::new("2"), ..row });
    assert_eq!((two.fits, two.count, two.missing, two.boards, two.passes.len()), (4, 2, 0, 1, 3));
    close(two.left_mm, 220.0 - 104.0, "left by two");
}

/// Edges that lean towards each other have no one width square between them, unless they stand upright.
#[test]
fn only_parallel_edges_have_a_width_square_to_them() {
    assert_eq!(answer(&at_45(Shape::Trapezoid, "220")).square_to_bevel_mm, None);
    let plain = Inputs { shape: Shape::Trapezoid, ..upright("220") };
    close(answer(&plain).square_to_bevel_mm.unwrap(), 40.0, "upright");
    assert_eq!(answer(&at_45(Shape::CleatPair, "220")).square_to_bevel_mm, None);
}

/// Planing takes as much at every height of an edge: 1.4142136 / cos 45° = 2 from each of the two.
#[test]
fn planing_takes_the_same_at_every_height() {
    let planed = |shape| answer(&Inputs { planing: Reading::mm("1.4142136"), ..at_45(shape, "220") });
    let check = |got: Widths, want: [f64; 3], what: &str| {
        for (got, want) in [got.wide_mm, got.mid_mm, got.narrow_mm].into_iter().zip(want) {
            close(got, want, what);
        }
    };
    let strip = planed(Shape::Trapezoid);
    check(strip.finished, [58.0, 40.0, 22.0], "strip");
    check(strip.sawn, [62.0, 44.0, 26.0], "strip as sawn");
    // A cleat has one sawn edge. (220 + 18 − 6) / 2 = 116.
    let cleat = planed(Shape::CleatPair);
    check(cleat.sawn, [116.0, 107.0, 98.0], "cleat as sawn");
    check(cleat.finished, [114.0, 105.0, 96.0], "cleat");
    close(cleat.fence_mm, 98.0, "fence");
    close(cleat.bevel_width_mm, 25.455_844, "bevel");
    close(cleat.blade_above_table_mm, 32.526_912, "blade");
}

/// Drawn on paper: the cuts lean to the right by 18 from the marked face to the other.
#[test]
fn corners_of_strips_that_lean_alike() {
    let section = answer(&at_45(Shape::Parallelogram, "220")).section;
    let [first, second, ..] = &section.strips[..] else { panic!("{section:?}") };
    same(first, &[[0.0, 0.0], [40.0, 0.0], [58.0, 18.0], [18.0, 18.0]], "first strip");
    same(second, &[[46.0, 0.0], [86.0, 0.0], [104.0, 18.0], [64.0, 18.0]], "second strip");
    assert_eq!((section.strips.len(), section.kerfs.len()), (4, 5));
    let [trim, kerf, .., last] = &section.kerfs[..] else { panic!("{section:?}") };
    same(trim, &[[-6.0, 0.0], [0.0, 0.0], [18.0, 18.0], [12.0, 18.0]], "trim");
    same(kerf, &[[40.0, 0.0], [46.0, 0.0], [64.0, 18.0], [58.0, 18.0]], "first kerf");
    same(last, &[[178.0, 0.0], [184.0, 0.0], [202.0, 18.0], [196.0, 18.0]], "last kerf");
    same(&section.offcut, &[[184.0, 0.0], [220.0, 0.0], [220.0, 18.0], [202.0, 18.0]], "offcut");
    // Of a board of 200 the last kerf leaves a wedge: it meets the edge 16 to the right and so 16 up.
    let narrow = answer(&at_45(Shape::Parallelogram, "200"));
    same(&narrow.section.offcut, &[[184.0, 0.0], [200.0, 0.0], [200.0, 16.0]], "wedge");
    close(narrow.offcut_wide_mm, 16.0, "wedge, wide");
    close(narrow.offcut_narrow_mm, 0.0, "wedge, narrow");
    // A bevelled first edge wants no trim.
    let bevelled = Inputs { first_edge: FirstEdge::Bevelled, ..at_45(Shape::Parallelogram, "220") };
    let bevelled = answer(&bevelled);
    assert_eq!((bevelled.section.kerfs.len(), bevelled.trim_fence_mm), (4, None));
}

/// Every second cut leans to the left: 58 on one face, 22 on the other, 40 half way up.
#[test]
fn corners_of_strips_that_nest() {
    let section = answer(&at_45(Shape::Trapezoid, "220")).section;
    let [first, second, third, _] = &section.strips[..] else { panic!("{section:?}") };
    same(first, &[[0.0, 0.0], [58.0, 0.0], [40.0, 18.0], [18.0, 18.0]], "first strip");
    same(second, &[[64.0, 0.0], [86.0, 0.0], [104.0, 18.0], [46.0, 18.0]], "second strip");
    same(third, &[[92.0, 0.0], [150.0, 0.0], [132.0, 18.0], [110.0, 18.0]], "third strip");
    let [trim, kerf, ..] = &section.kerfs[..] else { panic!("{section:?}") };
    same(trim, &[[-6.0, 0.0], [0.0, 0.0], [18.0, 18.0], [12.0, 18.0]], "trim");
    same(kerf, &[[58.0, 0.0], [64.0, 0.0], [46.0, 18.0], [40.0, 18.0]], "first kerf");
    // After three strips the last cut leans to the left: it ends at 156 on the marked face and at 138 on the other.
    let three = |board| answer(&Inputs { wanted: Figure::new("3"), ..at_45(Shape::Trapezoid, board) }).section.offcut;
    same(&three("220"), &[[156.0, 0.0], [220.0, 0.0], [220.0, 18.0], [138.0, 18.0]], "offcut");
    // Of 154 it leaves a wedge above: 2 of 18 to the right, and so 2 up.
    same(&three("154"), &[[154.0, 2.0], [154.0, 18.0], [138.0, 18.0]], "wedge");
}

/// Upright, three of 40 and two kerfs of 3.2 are 126.4: the third needs no cut. A third cut of its own ends at 129.6.
#[test]
fn a_kerf_that_reaches_the_far_edge_leaves_nothing() {
    for (board, cuts, corners) in [("126.4", 2, 0), ("126.5", 3, 0), ("129.6", 3, 0), ("129.7", 3, 4)] {
        let got = answer(&upright(board));
        assert_eq!((got.fits, got.section.kerfs.len(), got.passes.len()), (3, cuts, cuts), "{board}");
        assert_eq!(got.section.offcut.len(), corners, "{board}: {:?}", got.section.offcut);
    }
    same(&answer(&upright("220")).section.kerfs[0], &[[40.0, 0.0], [43.2, 0.0], [43.2, 18.0], [40.0, 18.0]], "kerf");
}

/// One cut through the middle: both cleats are 116 over one face and 98 over the other.
#[test]
fn corners_of_a_pair_of_cleats() {
    let section = answer(&at_45(Shape::CleatPair, "220")).section;
    let [left, right] = &section.strips[..] else { panic!("{section:?}") };
    same(left, &[[0.0, 0.0], [98.0, 0.0], [116.0, 18.0], [0.0, 18.0]], "left");
    same(right, &[[104.0, 0.0], [220.0, 0.0], [220.0, 18.0], [122.0, 18.0]], "right");
    let [kerf] = &section.kerfs[..] else { panic!("{section:?}") };
    same(kerf, &[[98.0, 0.0], [104.0, 0.0], [122.0, 18.0], [116.0, 18.0]], "kerf");
    assert!(section.offcut.is_empty());
}

/// One line for each number, with the formula that holds for the place where the width was measured.
#[test]
fn the_working_has_a_line_for_each_number() {
    const STRIP: &str = "Fence for each strip, its middle width as sawn";
    const FIRST: &str = "Fence to bevel the first edge";
    let line = |answer: &Answer, what: &str| answer.working.0.iter().find(|step| step.what == what).cloned();
    for (shape, measured_at, formula) in [
        (Shape::Trapezoid, MeasuredAt::WideFace, "f = w − s + 2 × u"),
        (Shape::Trapezoid, MeasuredAt::NarrowFace, "f = w + s + 2 × u"),
        (Shape::Trapezoid, MeasuredAt::MidThickness, "f = w + 2 × u"),
        (Shape::Parallelogram, MeasuredAt::WideFace, "f = w + 2 × u"),
    ] {
        let got = answer(&Inputs { measured_at, ..at_45(shape, "220") });
        assert_eq!(line(&got, STRIP).unwrap().formula, formula, "{shape:?} {measured_at:?}");
        assert_eq!(line(&got, FIRST).unwrap().gives, Quantity::mm(got.trim_fence_mm.unwrap()));
        assert_eq!(line(&got, "Left over, the last kerf still in it").unwrap().gives, Quantity::mm(got.left_mm));
        // Slope, kerf, strip, how many, taken up, left over, first edge, blade.
        assert_eq!(got.working.0.len(), 8);
    }
    let bevelled = Inputs { first_edge: FirstEdge::Bevelled, ..at_45(Shape::Parallelogram, "220") };
    for (inputs, lines) in [(upright("220"), 7), (bevelled, 7), (at_45(Shape::CleatPair, "220"), 5)] {
        let got = answer(&inputs);
        assert_eq!((line(&got, FIRST), got.working.0.len()), (None, lines), "{inputs:?}");
        let planed = answer(&Inputs { planing: Reading::mm("1"), ..inputs.clone() });
        // A pair shows what is left of the face as well.
        let more = if inputs.shape == Shape::CleatPair { 2 } else { 1 };
        assert_eq!(planed.working.0.len(), lines + more, "{inputs:?}");
    }
}
