//! Wall cleat: rows of the project's handbook the other way round (a pair of that height comes from that
//! board, plane geometry checked there against polygons: common practice), and the bevel's geometry at 45° by hand.

use scantling::cards::wall_cleat::{Answer, Back, Inputs, Method, solve};
use scantling::measure::{AngleReading, Reading};

fn answer(id: &str, [thickness, wide, bevel, kerf]: [&str; 4]) -> Answer {
    let inputs = Inputs {
        thickness: Reading::mm(thickness),
        strip_height: Reading::mm(wide),
        bevel: AngleReading::from(bevel),
        kerf: Reading::mm(kerf),
        ..Inputs::default()
    };
    solve(&inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"))
}

/// The rows print the wide face to four decimals; the board is twice that, so twice half a digit off at most.
#[test]
fn rows_r_10_to_13_one_rip_makes_a_pair() {
    for (id, given, board, narrow) in [
        ("R-10", ["18", "81.7373", "45", "3.2"], 150.0, 63.7373),
        ("R-11", ["19", "67.8029", "45", "2.4"], 120.0, 48.8029),
        ("R-12", ["19.05", "83.4799", "45", "3.175"], 152.4, 64.4299),
        ("R-12 in inches", ["3/4 in", "83.4799", "45", "1/8 in"], 152.4, 64.4299),
        ("R-13", ["15", "53.0600", "30", "2.2"], 100.0, 44.3997),
    ] {
        let answer = answer(id, given);
        assert_eq!(answer.method, Method::OneRip, "{id}");
        assert!((answer.board.as_mm() - board).abs() <= 0.000_2, "{id}: board {}", answer.board);
        assert!((answer.narrow.as_mm() - narrow).abs() <= 0.000_11, "{id}: narrow face {}", answer.narrow);
        // Section 6.4: the narrow face is what lies between fence and blade at the table.
        assert_eq!(answer.passes.first().map(|pass| pass.fence), Some(answer.narrow), "{id}");
    }
}

/// Section 6.1: a bevel of 30, 45 and 60° walks t/√3, t and t·√3; that much a cabinet with a flush back is lifted.
#[test]
fn the_lift_is_what_the_bevel_walks() {
    for (bevel, walks) in [("30", 18.0 / 3.0_f64.sqrt()), ("45", 18.0), ("60", 18.0 * 3.0_f64.sqrt())] {
        let inputs = Inputs {
            thickness: Reading::mm("18"),
            strip_height: Reading::mm("80"),
            bevel: bevel.into(),
            back: Back::Flush,
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        assert!((answer.lift.as_mm() - walks).abs() < 1e-6, "{bevel}°: {}", answer.lift);
        let by_the_strip = answer.wall_strip_top.minus(answer.wall_strip_at).unwrap();
        assert_eq!(by_the_strip, answer.wide, "the wall strip keeps its wide face to the room");
    }
}
