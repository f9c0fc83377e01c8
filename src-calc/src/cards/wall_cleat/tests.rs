//! Short tables; the handbook's rows and the hanging of polygons are in the tests crate.

use super::*;
use crate::measure::{AngleReading, Reading};
use crate::problem::Problems;
use proptest::prelude::*;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// The demo by hand: at 45° the bevel takes the thickness, 14.6; the lift is 14.6 − 0.5. The cabinet's strip ends
/// 2100 − 14.6 − 70 = 2015.4 above the floor, the wall strip's point 14.1 higher.
#[test]
fn the_demo() {
    let answer = solve(&Inputs::default()).unwrap();
    let got = [answer.inset, answer.lift, answer.narrow, answer.wall_strip_top, answer.wall_strip_at];
    assert_eq!(got, ["15.1", "14.1", "55.4", "2029.5", "1959.5"].map(mm));
    // 1959.5 + 55.4 · 2/3; 2100 − 1169.2 + 14.6, and the lift of 14.1 and 2 to clear the bottom; 829.2 − 2 · 14.6, and twice 10 less.
    assert_eq!([answer.screws_at, answer.spacer_at], ["1959.5 + 110.8/3", "961.5"].map(mm));
    assert_eq!([answer.cabinet_strip_length, answer.wall_strip_length], ["800", "780"].map(mm));
    assert_eq!(answer.lifts, Lifts::On(mm("185.9")), "2300 − 2100 − 14.1");
}

/// By hand: a flush back leaves the cabinet off the wall by the strip, and both ways of cutting by the bevel.
#[test]
fn flush_back_and_steep_bevel() {
    let flush = solve_with(|inputs| inputs.back = Back::Flush).unwrap();
    assert_eq!([flush.inset, flush.stands_off, flush.spacer_thickness], ["0", "14.6", "14.6"].map(mm));
    assert_eq!([flush.cabinet_strip_length, flush.lift], ["829.2", "14.6"].map(mm));
    assert_eq!(flush.passes, [Pass { cut: Cut::Pair, lean_degrees: 45.0, fence: mm("55.4") }]);

    let steep = solve_with(|inputs| inputs.bevel = "60".into()).unwrap();
    assert_eq!((steep.method, steep.board), (Method::OnEdge, mm("143.2")), "2 · 70 + 3.2");
    let edge = Pass { cut: Cut::Edge, lean_degrees: 30.0, fence: Length::ZERO };
    assert_eq!(steep.passes, [Pass { cut: Cut::Part, lean_degrees: 0.0, fence: mm("70") }, edge]);
    assert!(steep.cautions.contains(&Caution::StripOnEdge));
}

/// By hand at 60°, whose tangent is √3: of strips 10 thick and 70 high the bevel takes 17.320508, and 9.5·√3 are
/// 16.454483 to lift. At 30° it is 10/√3 = 5.773503, and the blade takes 3.2·2/√3 = 3.695042 of the board's face.
#[test]
fn other_bevels() {
    let at = |bevel: &str| {
        solve_with(|inputs| (inputs.bevel, inputs.thickness) = (bevel.into(), Reading::mm("10"))).unwrap()
    };
    let near = |got: f64, want: f64| assert!((got - want).abs() < 2e-6, "{got}, by hand {want}");
    let steep = at("60");
    near(steep.narrow.as_mm(), 52.679_492);
    near(steep.lift.as_mm(), 16.454_483);
    near(steep.bevel_width_mm, 20.0);
    let flat = at("30");
    near(flat.narrow.as_mm(), 64.226_497);
    near(flat.lift.as_mm(), 5.484_828);
    near(flat.bevel_width_mm, 11.547_005);
    assert_eq!(flat.method, Method::OneRip);
    near(flat.board.as_mm(), 70.0 + 64.226_497 + 3.695_042);
}

/// The demo's section, from its numbers: strips 14.6 thick, 70 high with a shorter face of 55.4, half a millimetre apart.
#[test]
fn the_section() {
    let near = |what: &str, got: [[f64; 2]; 4], want: [[f64; 2]; 4]| {
        for (got, want) in got.as_flattened().iter().zip(want.as_flattened()) {
            assert!((got - want).abs() < 1e-9, "{what}: {got}, by hand {want}");
        }
    };
    let section = solve(&Inputs::default()).unwrap().section;
    near("wall strip", section.wall_strip, [[0.0, 1959.5], [14.6, 1959.5], [14.6, 2029.5], [0.0, 2014.9]]);
    near("cabinet strip", section.cabinet_strip, [[0.5, 2015.4], [15.1, 2030.0], [15.1, 2085.4], [0.5, 2085.4]]);
    near("spacer", section.spacer, [[0.0, 961.5], [15.1, 961.5], [15.1, 1031.5], [0.0, 1031.5]]);
    assert_eq!((section.rear_mm, section.back_mm), (0.0, 15.1), "the sides reach the wall, the back is set in");
    let flush = solve_with(|inputs| inputs.back = Back::Flush).unwrap().section;
    assert_eq!((flush.rear_mm, flush.back_mm), (14.6, 14.6), "nothing reaches past the strip");
}

/// At a limit itself the strips are still good.
#[test]
fn limits_are_met_exactly() {
    // 2 · 14.6 + 3 · 70 and 2: the strips and the spacer fill the cabinet, with the lift above the bottom.
    let high = |height: &str| solve_with(|inputs| inputs.cabinet_height = Reading::mm(height));
    assert!(high("241.2").is_ok() && high("241.1").is_err());
    // It stands on the floor.
    let top = |top: &str| solve_with(|inputs| inputs.top_at = Reading::mm(top));
    assert!(top("1169.2").is_ok() && top("1169.1").is_err());
    // At 45° a strip of 64.6 is 50 on its narrow face, which is not thin yet.
    for (high, thin) in [("64.5", true), ("64.6", false)] {
        let answer = solve_with(|inputs| inputs.strip_height = Reading::mm(high)).unwrap();
        assert_eq!(answer.cautions.contains(&Caution::ThinStrip), thin, "{high}");
    }
}

#[test]
fn room_above() {
    let lifts = |ceiling: &str| solve_with(|inputs| inputs.ceiling = Reading::mm(ceiling)).unwrap().lifts;
    assert_eq!(lifts("2114.1"), Lifts::On(Length::ZERO), "exactly the lift");
    assert_eq!(lifts("2110"), Lifts::Not(mm("4.1")));
    assert_eq!(lifts(""), Lifts::Unknown);
}

#[test]
fn says_what_is_wrong_and_where() {
    let fields = |change: fn(&mut Inputs)| {
        let problems = solve_with(change).unwrap_err();
        problems.iter().map(|(field, _)| field.to_owned()).collect::<Vec<_>>()
    };
    let unreadable = fields(|inputs| {
        inputs.thickness = Reading::mm("0");
        inputs.strip_height = Reading::mm("high");
        inputs.bevel = "29.9".into();
        inputs.kerf = Reading::mm("-1");
        inputs.cabinet_width = Reading::mm("29.2");
        inputs.ceiling = Reading::mm("0");
    });
    assert_eq!(unreadable, ["thickness", "strip_height", "bevel", "kerf", "cabinet_width", "ceiling"]);
    let together = fields(|inputs| {
        inputs.strip_height = Reading::mm("14.6");
        inputs.cabinet_height = Reading::mm("50");
        inputs.top_at = Reading::mm("40");
        inputs.end_gap = Reading::mm("400");
    });
    assert_eq!(together, ["strip_height", "cabinet_height", "top_at", "end_gap"]);
    assert_eq!(fields(|inputs| inputs.bevel = "60.1".into()), ["bevel"]);
    assert_eq!(fields(|inputs| inputs.slack = Reading::mm("3.66")), ["slack"], "a quarter of 14.6 is 3.65");
    assert!(solve_with(|inputs| inputs.slack = Reading::mm("3.65")).is_ok());
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform10(prop::sample::select(vec![
            "", "0", "-1", "1e9", "0.000001", "1/3", "18", "300", "2400", "99999999999", "12 in", "1 km", "1/999983",
        ])),
        bevel in prop::sample::select(vec!["", "30", "45", "60", "59 59/61", "29", "1e9", "-45"]),
        back in prop::sample::select(Back::ALL),
    ) {
        let [thickness, strip_height, kerf, slack, cabinet_width, cabinet_height, side, below_top, top_at, ceiling] =
            lengths.map(Reading::mm);
        let (bevel, end_gap) = (AngleReading::from(bevel), slack.clone());
        let inputs = Inputs {
            thickness, strip_height, bevel, kerf, back, slack, cabinet_width, cabinet_height, side, below_top, top_at,
            ceiling, end_gap,
        };
        if let Ok(answer) = solve(&inputs) {
            prop_assert!(answer.narrow.is_positive() && answer.lift.is_positive(), "{answer:?}");
        }
    }

    /// The same cabinet given in inches hangs in the same place.
    #[test]
    fn inches_change_nothing(thickness in 8..16_i32, high in 60..90_i32, degrees in 30..=60_i32, back in prop::sample::select(Back::ALL)) {
        let job = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            thickness: length(thickness),
            strip_height: length(high),
            bevel: degrees.to_string().as_str().into(),
            kerf: length(2),
            back,
            slack: length(1),
            cabinet_width: length(480),
            cabinet_height: length(640),
            side: length(11),
            below_top: length(12),
            top_at: length(1320),
            ceiling: length(1536),
            end_gap: length(6),
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = job(&|sixteenths| Reading::inches(&format!("{sixteenths}/16")));
        let metric = job(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert!(inches.is_ok());
        prop_assert_eq!(inches, metric);
    }
}
