//! Bevelled strips: rows R of the project's handbook, worked there by script from plane geometry (common practice) and
//! checked there against polygons cut in another library. A row matches to half a unit of its last digit.

use scantling::cards::bevelled_strips::{Answer, Inputs, MeasuredAt, Shape, solve};
use scantling::measure::{AngleReading, Figure, Reading};

/// Half a unit of the last printed digit.
const HALF_DIGIT_MM: f64 = 0.000_05;

fn inputs(shape: Shape, [board, thickness, bevel, kerf, strip]: [&str; 5]) -> Inputs {
    Inputs {
        board_width: Reading::mm(board),
        thickness: Reading::mm(thickness),
        bevel: AngleReading::from(bevel),
        strip_width: Reading::mm(strip),
        measured_at: MeasuredAt::WideFace,
        shape,
        kerf: Reading::mm(kerf),
        planing: Reading::mm("0"),
        wanted: Figure::default(),
        ..Inputs::default()
    }
}

#[track_caller]
fn answer(id: &str, inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"))
}

#[track_caller]
fn near(id: &str, what: &str, got: f64, want: f64) {
    assert!((got - want).abs() <= HALF_DIGIT_MM, "{id}: {what} {got}, handbook {want}");
}

#[test]
fn rows_r_1_to_5_parallelograms() {
    // Board, thickness, bevel, kerf, strip; then kerf on the face, slope, count, used, left over, square to the bevel.
    for (id, given, [kerf, slope, used, left, square], count) in [
        ("R-1", ["300", "18", "45", "3.2", "40"], [4.5255, 18.0, 280.6274, 19.3726, 28.2843], 6),
        ("R-2", ["600", "19", "30", "2.4", "50"], [2.7713, 10.9697, 588.6825, 11.3175, 43.3013], 11),
        ("R-3", ["250", "12", "22.5", "2.2", "30"], [2.3813, 4.9706, 229.2581, 20.7419, 27.7164], 7),
        ("R-4", ["304.8", "19.05", "15", "3.175", "25.4"], [3.2870, 5.1044, 288.6874, 16.1126, 24.5345], 10),
        (
            "R-4 in inches",
            ["12 in", "3/4 in", "15", "1/8 in", "1 in"],
            [3.2870, 5.1044, 288.6874, 16.1126, 24.5345],
            10,
        ),
        ("R-5", ["300", "18", "0", "3.2", "40"], [3.2, 0.0, 299.2, 0.8, 40.0], 7),
    ] {
        let answer = answer(id, &inputs(Shape::Parallelogram, given));
        assert_eq!((answer.fits, answer.count, answer.section.strips.len()), (count, count, count as usize), "{id}");
        near(id, "kerf on the face", answer.kerf_on_face_mm, kerf);
        near(id, "slope", answer.slope_mm, slope);
        near(id, "used", answer.used_mm, used);
        near(id, "left over", answer.left_mm, left);
        near(id, "square to the bevel", answer.square_to_bevel_mm.unwrap(), square);
    }
}

#[test]
fn rows_r_6_to_9_nested_trapezoids() {
    for (id, given, [kerf, slope, middle, narrow, used, left], count) in [
        ("R-6", ["300", "18", "45", "3.2", "60"], [4.5255, 18.0, 42.0, 24.0, 292.6274, 7.3726], 6),
        ("R-7", ["300", "18", "45", "3.2", "40"], [4.5255, 18.0, 22.0, 4.0, 278.7294, 21.2706], 10),
        ("R-8", ["600", "19", "30", "2.4", "50"], [2.7713, 10.9697, 39.0303, 28.0607, 593.4211, 6.5789], 14),
        ("R-9", ["250", "12", "22.5", "2.2", "30"], [2.3813, 4.9706, 25.0294, 20.0589, 249.2856, 0.7144], 9),
    ] {
        let answer = answer(id, &inputs(Shape::Trapezoid, given));
        assert_eq!(answer.fits, count, "{id}");
        near(id, "kerf on the face", answer.kerf_on_face_mm, kerf);
        near(id, "slope", answer.slope_mm, slope);
        near(id, "middle width", answer.finished.mid_mm, middle);
        near(id, "narrow face", answer.finished.narrow_mm, narrow);
        near(id, "used", answer.used_mm, used);
        near(id, "left over", answer.left_mm, left);
        // Section 6.4 (b): the fence stands at the middle width. And 6.3: one pass more than strips, the trim.
        near(id, "fence", answer.fence_mm, middle);
        assert_eq!(answer.passes.len(), count as usize + 1, "{id}");
    }
}

#[test]
fn rows_r_10_to_13_cleat_pairs() {
    for (id, [board, thickness, kerf, bevel], [wide, narrow], area) in [
        ("R-10", ["150", "18", "3.2", "45"], [81.7373, 63.7373], 1309.271),
        ("R-11", ["120", "19", "2.4", "45"], [67.8029, 48.8029], 1107.756),
        ("R-12", ["152.4", "19.05", "3.175", "45"], [83.4799, 64.4299], 1408.842),
        ("R-13", ["100", "15", "2.2", "30"], [53.0600, 44.3997], 730.947),
    ] {
        let answer = answer(id, &inputs(Shape::CleatPair, [board, thickness, bevel, kerf, ""]));
        near(id, "wide face", answer.finished.wide_mm, wide);
        near(id, "narrow face", answer.finished.narrow_mm, narrow);
        for strip in &answer.section.strips {
            let got = shoelace_mm2(strip);
            assert!((got - area).abs() <= 0.000_5, "{id}: area {got}, handbook {area}");
        }
    }
}

/// a wide face of 30 at 45° in 18 would leave a narrow face of −6; the least is twice the slope, 36.
#[test]
fn row_r_14_comes_to_a_point() {
    let problems = solve(&inputs(Shape::Trapezoid, ["300", "18", "45", "3.2", "30"])).unwrap_err();
    let problem = problems.of("strip_width").expect("the strip is the trouble").to_string();
    assert!(problem.contains("36"), "{problem}");
}

/// at 45° the kerf on the face is √2 of the kerf.
#[test]
fn row_r_15_kerf_at_45_degrees() {
    for (kerf, want) in [("3.2", 4.5255), ("2.4", 3.3941)] {
        let answer = answer("R-15", &inputs(Shape::Parallelogram, ["300", "18", "45", kerf, "40"]));
        near("R-15", "kerf on the face", answer.kerf_on_face_mm, want);
    }
}

/// Section 13, rows: at 0° the card rips plain parts, `n = floor((S + k) / (p + k))`.
#[test]
fn rows_q_upright_blade() {
    for (id, board, strip, count, left) in [("Q-1", "2440", "300", 8, 17.6), ("Q-4", "1220", "400", 3, 13.6)] {
        for shape in [Shape::Parallelogram, Shape::Trapezoid] {
            let answer = answer(id, &inputs(shape, [board, "18", "0", "3.2", strip]));
            assert_eq!(answer.fits, count, "{id}");
            near(id, "left over", answer.left_mm, left);
            assert_eq!(answer.trim_fence_mm, None, "{id}: both edges are straight already");
        }
    }
}

/// Section 6.4: with the blade 45° over and a tooth 3 mm above 18 mm, 21·√2 of blade stands above the table.
#[test]
fn blade_above_the_table() {
    let given = inputs(Shape::Parallelogram, ["300", "18", "45", "3.2", "40"]);
    let answer = answer("6.4", &Inputs { tooth_above: Reading::mm("3"), ..given });
    near("6.4", "blade", answer.blade_above_table_mm, 29.6985);
    near("6.4", "fence", answer.fence_mm, 40.0);
}

/// Area of a polygon by the shoelace rule, to compare with the handbook's areas.
fn shoelace_mm2(corners: &[[f64; 2]]) -> f64 {
    let next = corners.iter().cycle().skip(1);
    corners.iter().zip(next).map(|([x, y], [u, v])| x * v - u * y).sum::<f64>().abs() / 2.0
}
