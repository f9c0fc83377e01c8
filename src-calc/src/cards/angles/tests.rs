//! Short tables; the regular solids and the vectors are in the tests crate.

use super::*;
use crate::measure::Length;
use crate::problem::Problems;
use proptest::prelude::*;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn right_angle(change: impl FnOnce(&mut Inputs)) -> RightAngle {
    let answer = solve_with(|inputs| {
        inputs.job = Job::RightAngle;
        change(inputs);
    });
    match answer.unwrap().outcome {
        Outcome::RightAngle(right_angle) => right_angle,
        other => panic!("{other:?}"),
    }
}

fn sides(change: impl FnOnce(&mut Inputs)) -> (Sides, Answer) {
    let answer = solve_with(change).unwrap();
    match answer.outcome {
        Outcome::Sides(sides) => (sides, answer),
        other => panic!("{other:?}"),
    }
}

#[track_caller]
fn near(what: &str, got: f64, want: f64) {
    assert!((got - want).abs() < 5e-4, "{what}: {got}, by hand {want}");
}

/// The demo, by hand: tan M = tan 45°·sin 15° = 0.258819, sin B = sin 45°·cos 15° = 0.683013.
#[test]
fn the_demo() {
    let (tray, answer) = sides(|_| {});
    near("gauge", tray.gauge_degrees, 14.5109);
    near("tilt", tray.tilt_degrees, 43.0795);
    near("dihedral", tray.dihedral_degrees, 93.8410);
    near("butted", tray.butt_tilt_degrees.unwrap(), 3.8410);
    near("short edge", tray.short_mm, 360.0 - 240.0 * 0.258_819);
    near("height", tray.height_mm, 115.9111);
    near("across", tray.across_mm, 360.0);
    assert_eq!((answer.reach, tray.corner_degrees), (Reach::Within, 90.0));
    assert_eq!(answer.cautions, [Caution::AngledCut, Caution::BevelRip, Caution::DustAndNoise]);
    let scales = answer.scales.unwrap();
    near("the other scale", scales.gauge_from_90_degrees, 75.4891);
}

/// Flat: 180°/n on the gauge and nothing else. Upright: 180°/n on the tilt and nothing else.
#[test]
fn flat_frames_and_upright_boxes() {
    for (count, half, reach_flat, reach_upright) in [
        ("3", 60.0, Reach::Within, Reach::TiltBeyond),
        ("4", 45.0, Reach::Within, Reach::Within),
        ("5", 36.0, Reach::Within, Reach::Within),
        ("6", 30.0, Reach::Within, Reach::Within),
        ("8", 22.5, Reach::Within, Reach::Within),
        ("12", 15.0, Reach::Within, Reach::Within),
    ] {
        let with = |stand| {
            sides(|inputs| {
                (inputs.sides, inputs.stand) = (Figure::new(count), stand);
                inputs.side = Reading::mm("600");
            })
        };
        let (flat, answer) = with(Stand::Flat);
        near(count, flat.gauge_degrees, half);
        assert_eq!((flat.tilt_degrees, flat.height_mm, flat.butt_tilt_degrees), (0.0, 0.0, None), "{count}");
        assert_eq!(answer.reach, reach_flat, "{count}");
        assert!(!answer.cautions.contains(&Caution::BevelRip));
        let (upright, answer) = with(Stand::Upright);
        near(count, upright.tilt_degrees, half);
        near(count, upright.dihedral_degrees, 180.0 - 2.0 * half);
        assert_eq!((upright.gauge_degrees, upright.short_mm, upright.height_mm), (0.0, 600.0, 120.0), "{count}");
        assert_eq!(answer.reach, reach_upright, "{count}");
    }
}

/// Three sides that lean by 89° are off the gauge of a saw; a part below 300 mm is a small one.
#[test]
fn beyond_the_scales_and_small() {
    let (_, answer) = sides(|inputs| {
        (inputs.sides, inputs.lean, inputs.side) = (Figure::new("3"), "89".into(), Reading::mm("600"));
    });
    assert_eq!(answer.reach, Reach::Within, "arctan(√3·sin 89°) is a little less than 60°");
    let slope = solve_with(|inputs| {
        (inputs.job, inputs.rise, inputs.run) = (Job::Slope, Reading::mm("1000"), Reading::mm("500"));
    });
    assert_eq!(slope.unwrap().reach, Reach::GaugeBeyond, "arctan 2 = 63.4°");
    for (side, small) in [("299.9", true), ("300", false)] {
        let (_, answer) = sides(|inputs| inputs.side = Reading::mm(side));
        assert_eq!(answer.cautions.contains(&Caution::SmallPartAtSaw), small, "{side}");
    }
}

/// At a limit itself the frame is still made: 100 sides, upright as a box or leaning by nothing.
#[test]
fn limits_are_met_exactly() {
    let (hundred, _) = sides(|inputs| (inputs.sides, inputs.stand) = (Figure::new("100"), Stand::Upright));
    assert_eq!(hundred.count, 100);
    near("half of a hundredth of a turn", hundred.tilt_degrees, 1.8);
    let (upright, _) = sides(|inputs| inputs.lean = "0".into());
    assert_eq!((upright.lean_degrees, upright.gauge_degrees), (0.0, 0.0));
    near("mitre of a box", upright.tilt_degrees, 45.0);
    // A hexagon is √3 of its side across its flats.
    let (hexagon, _) = sides(|inputs| (inputs.sides, inputs.stand) = (Figure::new("6"), Stand::Flat));
    near("across the flats", hexagon.across_mm, 360.0 * 1.732_051);
    // 512.25² − 511.75² = 512, and 512 / (4 · 256) is half a millimetre out over the height: a tape cannot tell.
    let frame = right_angle(|inputs| {
        (inputs.width, inputs.height) = (Reading::mm("256"), Reading::mm("512"));
        (inputs.first_diagonal, inputs.second_diagonal) = (Reading::mm("512.25"), Reading::mm("511.75"));
    });
    assert_eq!(frame.out.map(|out| (out.over_height_mm, out.square)), Some((0.5, true)));
}

/// By hand: a third of 712 is 237.3 and a quarter of 864 is 216, so 43 parts of 5 mm; 216 mm is 17.0 half inches.
#[test]
fn marks_by_three_four_five() {
    let marks = right_angle(|_| {});
    let mm = |whole| Length::mm(whole, 1).unwrap();
    let inches = |whole| Length::inches(whole, 2).unwrap();
    assert_eq!(marks.metric, Some(Triple { three: mm(645), four: mm(860), five: mm(1075) }));
    assert_eq!(marks.inches, Some(Triple { three: inches(51), four: inches(68), five: inches(85) }));
    near("diagonal", marks.diagonal_mm, 1_119.571_4);
    let short = right_angle(|inputs| (inputs.width, inputs.height) = (Reading::mm("14.9"), Reading::mm("800")));
    assert_eq!((short.metric, short.inches), (None, None));
    let just = right_angle(|inputs| (inputs.width, inputs.height) = (Reading::mm("15"), Reading::mm("20")));
    assert_eq!(just.metric, Some(Triple { three: mm(15), four: mm(20), five: mm(25) }));
}

/// A 3-4-5 frame: diagonals of 502 and 498 differ by (252004 − 248004) / (4·300·400) = 1/120, so 400/120 over the height.
#[test]
fn out_of_square() {
    let with = |first: &str, second: &str| {
        let frame = right_angle(|inputs| {
            (inputs.width, inputs.height) = (Reading::mm("300"), Reading::mm("400"));
            (inputs.first_diagonal, inputs.second_diagonal) = (Reading::mm(first), Reading::mm(second));
        });
        frame.out.unwrap()
    };
    let out = with("502", "498");
    near("over the height", out.over_height_mm, 10.0 / 3.0);
    near("degrees", out.degrees, 0.477_47);
    near("even", out.even_mm, 500.004);
    near("misfit", out.misfit_mm, 0.004);
    assert!(!out.square && with("500.29", "499.71").square && !with("500.31", "499.69").square);
    near("the other way", with("498", "502").over_height_mm, -10.0 / 3.0);
    near("a wrong reading", with("510", "510").misfit_mm, 10.0);
}

/// By hand: 150 on 600 is 25 % and arctan 0.25.
#[test]
fn a_slope() {
    let answer = solve_with(|inputs| inputs.job = Job::Slope).unwrap();
    let Outcome::Slope(slope) = answer.outcome else { panic!("{:?}", answer.outcome) };
    near("degrees", slope.degrees, 14.0362);
    near("level cut", slope.level_cut_degrees, 75.9638);
    near("percent", slope.percent, 25.0);
    near("along", slope.along_mm, 618.4658);
    let scales = answer.scales.unwrap();
    assert_eq!((scales.tilt_degrees, scales.gauge_degrees), (0.0, slope.degrees));
    assert_eq!(answer.cautions, [Caution::AngledCut, Caution::DustAndNoise]);
}

/// By hand: 17 in 550 on one edge, 8.5 on each of both; the jig's chord at 300 mm.
#[test]
fn a_taper() {
    for (edges, offset, degrees, opening, second, second_opening) in [
        (Edges::One, (17, 1), 1.7704, 9.2694, None, None),
        (Edges::Both, (17, 2), 0.8854, 4.6359, Some(1.7708), Some(9.2716)),
    ] {
        let answer = solve_with(|inputs| (inputs.job, inputs.edges) = (Job::Taper, edges)).unwrap();
        let Outcome::Taper(taper) = answer.outcome else { panic!("{:?}", answer.outcome) };
        assert_eq!(taper.offset, Length::mm(offset.0, offset.1).unwrap());
        near("degrees", taper.degrees, degrees);
        near("opening", taper.opening_mm, opening);
        for (got, want) in [(taper.second_degrees, second), (taper.second_opening_mm, second_opening)] {
            assert_eq!(got.is_some(), want.is_some(), "{edges:?}");
            near("second", got.unwrap_or_default(), want.unwrap_or_default());
        }
        assert_eq!(answer.cautions, [Caution::TaperCut, Caution::DustAndNoise]);
        assert_eq!(answer.scales, None);
    }
}

#[test]
fn says_what_is_wrong_and_where() {
    let refused = |change: fn(&mut Inputs)| {
        let problems = solve_with(change).unwrap_err();
        problems.iter().map(|(field, problem)| format!("{field}: {problem}")).collect::<Vec<_>>().join("; ")
    };
    for (change, want) in [
        (
            (|inputs| (inputs.sides, inputs.lean) = (Figure::new("2"), "-1".into())) as fn(&mut Inputs),
            "sides: At least 3 is needed: fewer sides enclose nothing.; lean: This cannot be less than zero.",
        ),
        (
            |inputs| (inputs.sides, inputs.lean) = (Figure::new("101"), "89.1".into()),
            "sides: At most 100 is accepted: more sides are turned on a lathe.; lean: At most 89° is accepted: a side that leans further lies flat.",
        ),
        (
            |inputs| (inputs.side, inputs.board_width) = (Reading::mm("0"), Reading::mm("-1")),
            "side: This has to be more than zero.; board_width: This has to be more than zero.",
        ),
        (
            |inputs| (inputs.stand, inputs.side) = (Stand::Flat, Reading::mm("240")),
            "side: At least 240 mm is needed: a piece as short as that comes to a point before its other edge, so it must be longer.",
        ),
        (
            |inputs| (inputs.job, inputs.narrow) = (Job::Taper, Reading::mm("45")),
            "narrow: The narrow end has to be narrower than the wide one.",
        ),
        (
            |inputs| (inputs.job, inputs.first_diagonal) = (Job::RightAngle, Reading::mm("1119")),
            "second_diagonal: Give both diagonals, or neither.",
        ),
        (
            |inputs| {
                inputs.job = Job::RightAngle;
                (inputs.first_diagonal, inputs.second_diagonal) = (Reading::mm("1500"), Reading::mm("300"));
            },
            "second_diagonal: No frame of this width and height has two diagonals so far apart. Measure them again.",
        ),
    ] {
        assert_eq!(refused(change), want);
    }
    let slope =
        solve_with(|inputs| (inputs.job, inputs.rise, inputs.run) = (Job::Slope, Reading::mm(""), Reading::mm("")));
    let fields: Vec<String> = slope.unwrap_err().iter().map(|(field, _)| field.to_owned()).collect();
    assert_eq!(fields, ["rise", "run"]);
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform6(prop::sample::select(vec![
            "", "0", "-1", "1e9", "0.000001", "1/3", "300", "864", "1/999983", "99999999999", "12 in", "1 km",
        ])),
        sides in prop::sample::select(vec!["", "2", "3", "4", "7", "100", "101", "1e300", "-3"]),
        lean in prop::sample::select(vec!["", "0", "15", "89", "90", "-1", "1/3", "1e300"]),
        (job, stand, edges) in
            (prop::sample::select(Job::ALL), prop::sample::select(Stand::ALL), prop::sample::select(Edges::ALL)),
    ) {
        let [a, b, c, d, e, f] = lengths.map(Reading::mm);
        let inputs = Inputs {
            sides: Figure::new(sides),
            lean: lean.into(),
            side: a.clone(),
            board_width: b.clone(),
            width: a.clone(),
            height: b.clone(),
            first_diagonal: c.clone(),
            second_diagonal: d.clone(),
            rise: a.clone(),
            run: b.clone(),
            taper_length: a,
            wide: b,
            narrow: e,
            jig_arm: f,
            job, stand, edges,
        };
        if let Ok(answer) = solve(&inputs) {
            let told = format!("{:?} {:?}", answer.scales, answer.outcome);
            prop_assert!(!told.contains("NaN") && !told.contains("inf"), "{told}");
        }
    }

    /// The same job given in inches is the same job.
    #[test]
    fn inches_change_nothing(
        long in 200..800_i32, short in 8..60_i32, job in prop::sample::select(Job::ALL), stand in prop::sample::select(Stand::ALL),
    ) {
        let solved = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            side: length(long),
            board_width: length(short),
            width: length(long),
            height: length(long + 40),
            rise: length(short),
            run: length(long),
            taper_length: length(long),
            wide: length(short),
            narrow: length(short - 5),
            jig_arm: length(192),
            job, stand,
            ..Inputs::default()
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = solved(&|sixteenths| Reading::inches(&format!("{sixteenths}/16")));
        let metric = solved(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert_eq!(inches, metric);
    }
}
