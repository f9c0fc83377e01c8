//! Short tables; the handbook's rows and the sawing of polygons are in the tests crate.

use super::*;
use crate::problem::Problems;
use proptest::prelude::*;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn mm(numerator: i64, denominator: u64) -> Length {
    Length::mm(numerator, denominator).unwrap()
}

fn nears(answer: &Answer) -> Vec<Length> {
    answer.passes.iter().map(|pass| pass.near).collect()
}

fn walls(answer: &Answer) -> Vec<Wall> {
    answer.passes.iter().map(|pass| pass.wall).collect()
}

/// The demo, by hand: 5.7 + 0.3 = 6, two passes 2.8 apart; 14.6 / 3 deep; 330 − 12 − 6 = 312.
#[test]
fn the_demo() {
    let answer = solve(&Inputs::default()).unwrap();
    assert_eq!((answer.width, answer.starts_at, answer.ends_at), (mm(6, 1), mm(12, 1), mm(18, 1)));
    assert_eq!((answer.depth, answer.left), (mm(146, 30), mm(292, 30)));
    assert_eq!(nears(&answer), [mm(12, 1), mm(148, 10)]);
    assert_eq!(walls(&answer), [Wall::Near, Wall::Far]);
    assert_eq!((answer.shift, answer.overlap), (Some(mm(28, 10)), Some(mm(4, 10))));
    assert_eq!(answer.ripped, Some(Ripped { width: mm(312, 1), off: mm(18, 1) }));
    assert_eq!(answer.verdict, Verdict::Good);
    assert_eq!(answer.cautions, [Caution::BlindCut, Caution::ThinStrip, Caution::DustAndNoise]);
}

/// By hand, from a drawing of the saw from its front: a part of 100, the cut 6 wide, a kerf of 3.2 or of 8.
#[test]
fn each_edge_at_the_fence() {
    use Wall::{Both, Far, Near, Neither};
    let tenth = |tenths| mm(tenths, 10);
    for (cut, against, kerf, want, makes) in [
        (Cut::Groove, Against::NearEdge, "3.2", vec![120, 148], vec![Near, Far]),
        (Cut::Groove, Against::FarEdge, "3.2", vec![820, 848], vec![Near, Far]),
        (Cut::Groove, Against::FarEdge, "6", vec![820], vec![Both]),
        (Cut::Groove, Against::NearEdge, "2", vec![120, 140, 160], vec![Near, Neither, Far]),
        (Cut::Rabbet, Against::NearEdge, "3.2", vec![0, 28], vec![Neither, Far]),
        (Cut::Rabbet, Against::FarEdge, "3.2", vec![940, 968], vec![Near, Neither]),
        (Cut::Rabbet, Against::NearEdge, "8", vec![-20], vec![Far]),
        (Cut::Rabbet, Against::FarEdge, "8", vec![940], vec![Near]),
    ] {
        let answer = solve_with(|inputs| {
            inputs.part_width = Reading::mm("100");
            (inputs.cut, inputs.against, inputs.kerf) = (cut, against, Reading::mm(kerf));
        })
        .unwrap();
        let want: Vec<Length> = want.into_iter().map(tenth).collect();
        assert_eq!((nears(&answer), walls(&answer)), (want, makes), "{cut:?} {against:?} {kerf}");
        let close = cut == Cut::Rabbet && against == Against::NearEdge;
        assert_eq!(answer.scrap_face, close, "{cut:?} {against:?} {kerf}");
        assert_eq!(answer.cautions.contains(&Caution::BladeAtFence), close);
    }
}

/// Half of 18 is the end for a groove, two thirds for a rabbet; at the limit itself it is still good.
#[test]
fn warns_of_too_little_wood() {
    for (cut, depth, want) in [
        (Cut::Groove, "9", Verdict::Good),
        (Cut::Groove, "9.001", Verdict::TooDeep),
        (Cut::Rabbet, "12", Verdict::Good),
        (Cut::Rabbet, "12.001", Verdict::TooDeep),
    ] {
        let answer = solve_with(|inputs| {
            inputs.thickness = Reading::mm("18");
            (inputs.cut, inputs.deep, inputs.depth) = (cut, Deep::Own, Reading::mm(depth));
        });
        assert_eq!(answer.unwrap().verdict, want, "{cut:?} {depth} deep");
    }
    for (deep, depth) in [(Deep::Third, 6), (Deep::Half, 9), (Deep::TwoThirds, 12)] {
        let answer = solve_with(|inputs| (inputs.thickness, inputs.deep) = (Reading::mm("18"), deep)).unwrap();
        assert_eq!((answer.depth, answer.left), (mm(depth, 1), mm(18 - depth, 1)), "{deep:?}");
    }
}

/// A doubt of 0.3 just uses up the allowance of 0.3; more of it does not.
#[test]
fn a_panel_that_may_be_too_thick() {
    for (panel, low, high, want) in
        [("5.7 ± 0.3", 0, 6, Verdict::Good), ("5.7 ± 0.4", -1, 7, Verdict::TooTight), ("5.7", 3, 3, Verdict::Good)]
    {
        let answer = solve_with(|inputs| inputs.panel = Reading::mm(panel)).unwrap();
        assert_eq!((answer.play.low(), answer.play.high()), (mm(low, 10), mm(high, 10)), "{panel}");
        assert_eq!((answer.verdict, answer.width), (want, mm(6, 1)), "{panel}");
    }
}

/// Less than 3 mm from the fence the blade is close, less than 50 mm that come off are thin: neither is, at just that.
#[test]
fn close_and_thin_begin_below_their_limits() {
    for (distance, close) in [("2.99", true), ("3", false)] {
        let answer = solve_with(|inputs| inputs.distance = Reading::mm(distance)).unwrap();
        assert_eq!(answer.scrap_face, close, "{distance} from the fence");
        assert_eq!(answer.cautions.contains(&Caution::BladeAtFence), close, "{distance} from the fence");
    }
    // The groove is 5.7 + 0.3 wide.
    for (distance, thin) in [("43.99", true), ("44", false)] {
        let answer = solve_with(|inputs| inputs.distance = Reading::mm(distance)).unwrap();
        assert_eq!(answer.cautions.contains(&Caution::ThinStrip), thin, "{distance} and 6 come off");
    }
}

#[test]
fn the_width_of_the_part_may_be_left_out() {
    let answer = solve_with(|inputs| inputs.part_width = Reading::mm(" ")).unwrap();
    assert_eq!(answer.ripped, None);
    let wide = solve_with(|inputs| inputs.distance = Reading::mm("60")).unwrap();
    assert!(!wide.cautions.contains(&Caution::ThinStrip), "66 mm come off: no thin strip");
}

#[test]
fn says_what_is_wrong_and_where() {
    let problems = solve_with(|inputs| {
        inputs.thickness = Reading::mm("0");
        inputs.panel = Reading::mm("0.5 ± 0.5");
        inputs.fit = Reading::mm("-0.1");
        inputs.distance = Reading::mm("0");
        (inputs.deep, inputs.depth) = (Deep::Own, Reading::mm("deep"));
        inputs.kerf = Reading::mm("");
        (inputs.against, inputs.part_width) = (Against::FarEdge, Reading::mm(""));
    })
    .unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(fields, ["thickness", "panel", "fit", "distance", "depth", "kerf", "part_width"]);

    let refused = |change: fn(&mut Inputs)| {
        let problems = solve_with(change).unwrap_err();
        problems.iter().map(|(field, problem)| format!("{field}: {problem}")).collect::<Vec<_>>().join("; ")
    };
    for (change, want) in [
        (
            (|inputs| (inputs.deep, inputs.depth) = (Deep::Own, Reading::mm("14.6"))) as fn(&mut Inputs),
            "depth: The blade would come through: make it less deep than the part is thick.",
        ),
        (
            |inputs| inputs.kerf = Reading::mm("6.1"),
            "kerf: At most 6 mm (≈ 15/64 in) is accepted: the blade takes more than the groove is wide.",
        ),
        (
            |inputs| inputs.part_width = Reading::mm("18"),
            "part_width: At least 18 mm (≈ 45/64 in) is needed: a part of that width ends before the far wall, so it must be wider.",
        ),
        (
            |inputs| inputs.kerf = Reading::mm("0.1"),
            "kerf: At least 0.15 mm (≈ 0 in) is needed: a thinner blade would need more than 40 passes.",
        ),
    ] {
        assert_eq!(refused(change), want);
    }
    assert_eq!(solve_with(|inputs| inputs.kerf = Reading::mm("0.15")).unwrap().passes.len(), 40);
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform7(prop::sample::select(vec![
            "", "0", "-1", "1e9", "0.000001", "1/3", "18", "5.7 ± 0.3", "1/999983 ± 1/999979", "99999999999", "12 in",
        ])),
        cut in prop::sample::select(Cut::ALL),
        deep in prop::sample::select(Deep::ALL),
        against in prop::sample::select(Against::ALL),
    ) {
        let [thickness, panel, fit, distance, depth, kerf, part_width] = lengths.map(Reading::mm);
        let inputs = Inputs { cut, thickness, panel, fit, distance, deep, depth, kerf, against, part_width };
        if let Ok(answer) = solve(&inputs) {
            prop_assert!((1..=41).contains(&answer.passes.len()), "{answer:?}");
            prop_assert!(answer.left.is_positive() && answer.overlap.is_none_or(|overlap| !overlap.is_negative()));
        }
    }

    /// The same groove given in inches is the same groove.
    #[test]
    fn inches_change_nothing(thickness in 8..64_i32, panel in 2..12_i32, kerf in 1..3_i32, against in prop::sample::select(Against::ALL)) {
        let job = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            thickness: length(thickness),
            panel: length(panel),
            fit: length(1),
            distance: length(8),
            kerf: length(kerf),
            part_width: length(200),
            against,
            ..Inputs::default()
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = job(&|sixteenths| Reading::inches(&format!("{sixteenths}/16")));
        let metric = job(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert_eq!(inches, metric);
    }
}
