//! Short tables; the handbook's rows and the placing of polygons are in the tests crate.

use super::*;
use crate::measure::Unit;
use proptest::prelude::*;

mod limits;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn mm(numerator: i64, denominator: u64) -> Length {
    Length::mm(numerator, denominator).unwrap()
}

/// The demo, by hand: 564 + 8 + 8 − 2 wide, 702 + 18 + 8 − 2 high; plywood moves 0.06 %.
#[test]
fn the_demo() {
    let answer = solve(&Inputs::default()).unwrap();
    assert_eq!(answer.width.size.nominal(), mm(578, 1));
    assert_eq!(answer.height.size.nominal(), mm(726, 1));
    assert_eq!(answer.verdict, Verdict::Good);
    // 580 − 0.5 of doubt − 578 × 1.0006, and 578 × 0.9994 − 564.5 − 8.
    assert!((answer.width.wet_spare_mm.unwrap() - 1.1532).abs() < 1e-9);
    assert!((answer.width.least_engagement_mm().unwrap() - 5.1532).abs() < 1e-9);
    assert!((answer.strain_percent - 0.06).abs() < 1e-12);
}

/// Each way of an edge, left, with a groove of 8 on the right of 500 and 2 of clearance; by hand.
#[test]
fn each_edge_by_itself() {
    for (way, depth, width, starts_at, room) in [
        (Way::Groove, "8", 514, -7, 516),
        (Way::Rabbet, "10", 516, -9, 518),
        (Way::PastEdge, "18", 524, -18, 526),
        (Way::HeldShort, "30", 476, 30, 508),
    ] {
        let answer = solve_with(|inputs| {
            inputs.opening_width = Reading::mm("500");
            inputs.left = Edge::new(way, depth);
        })
        .unwrap();
        let across = answer.width;
        assert_eq!(across.size.nominal(), mm(width, 1), "{way:?}");
        assert_eq!(across.starts_at, mm(starts_at, 1), "{way:?}");
        assert_eq!(across.room.unwrap().nominal(), mm(room, 1), "{way:?}");
    }
}

/// Nothing to clear where neither edge is housed; nothing to bind where both run past.
#[test]
fn edges_that_need_no_clearance() {
    let both = |way: Way| {
        solve_with(|inputs| {
            inputs.opening_width = Reading::mm("500");
            inputs.left = Edge::new(way, "10");
            inputs.right = Edge::new(way, "10");
        })
        .unwrap()
        .width
    };
    let past = both(Way::PastEdge);
    assert_eq!((past.size.nominal(), past.fit, past.hold), (mm(520, 1), Fit::NothingToBind, Hold::Bears));
    let short = both(Way::HeldShort);
    assert_eq!((short.size.nominal(), short.fit, short.hold), (mm(480, 1), Fit::Free, Hold::NothingToBear));
}

/// A board that does not move, with exactly the engagement wanted: 500.1 + 8 + 8 − 1.3 − 500.1 − 8 = 6.7. It bears.
#[test]
fn exactly_the_engagement_wanted() {
    let answer = solve_with(|inputs| {
        inputs.opening_width = Reading::mm("500.1");
        inputs.clearance = Reading::mm("1.3");
        inputs.least_engagement = Reading::mm("6.7");
        inputs.swing = Figure::new("0");
    })
    .unwrap();
    assert_eq!(answer.width.hold, Hold::Bears, "{:?}", answer.width.first);
}

/// A doubt of 3 mm under 2 mm of clearance: the panel may not go in at all.
#[test]
fn doubt_larger_than_clearance() {
    let answer = solve_with(|inputs| inputs.opening_width = Reading::mm("564 ± 3")).unwrap();
    assert_eq!(answer.verdict, Verdict::DoesNotGoIn);
    assert_eq!(answer.width.largest, Some(mm(577, 1)));
    assert_eq!((answer.width.size.low(), answer.width.size.high()), (mm(575, 1), mm(581, 1)));
}

#[test]
fn pieces_and_seams() {
    let equal = solve_with(|inputs| {
        inputs.division = Division::Equal;
        inputs.count = Figure::new("3");
    })
    .unwrap()
    .pieces;
    assert_eq!(equal.seams_at, [mm(578, 3), mm(1156, 3)]);

    // The panel is 578 wide. Scraps, then the widths taken from them in their order, what is missing and whether a
    // sliver is left.
    for (scraps, want, missing, sliver) in [
        (&["600", "300"][..], &[578][..], 0, false),
        (&["310", "400", "290"], &[400, 178], 0, false),
        (&["560", "200"], &[518, 60], 0, false),
        (&["560", "20"], &[558, 20], 0, true),
        (&["200", "100"], &[200, 100], 278, false),
        (&["578"], &[578], 0, false),
    ] {
        let pieces = solve_with(|inputs| {
            inputs.division = Division::Scraps;
            inputs.scraps = scraps.iter().map(|typed| Reading::mm(typed)).collect();
        })
        .unwrap()
        .pieces;
        let widths: Vec<Length> = pieces.list.iter().map(|piece| piece.width).collect();
        let want: Vec<Length> = want.iter().map(|&width| mm(width, 1)).collect();
        assert_eq!((widths, pieces.missing, pieces.sliver), (want, mm(missing, 1), sliver), "{scraps:?}");
    }
}

/// A 3-4-5 opening: 300 by 400 has a diagonal of 500. Diagonals of 502 and 498 differ by 4, so by (252004 − 248004) / 1200
/// the top stands 3.3333 over, more than a clearance of 2 takes.
#[test]
fn out_of_square() {
    let leaning = |clearance: &str| {
        let answer = solve_with(|inputs| {
            inputs.opening_width = Reading::mm("300");
            inputs.opening_height = Reading::mm("400");
            inputs.bottom = Edge::default();
            inputs.clearance = Reading::mm(clearance);
            inputs.first_diagonal = Reading::mm("502");
            inputs.second_diagonal = Reading::mm("498");
        });
        answer.unwrap().squareness
    };
    let tight = leaning("1");
    assert!((tight.diagonal_mm - 500.0).abs() < 1e-9);
    assert!((tight.lean.unwrap().over_height_mm - 10.0 / 3.0).abs() < 1e-9);
    assert!(!tight.lean.unwrap().goes_in && leaning("4").lean.unwrap().goes_in);
}

#[test]
fn says_what_is_wrong_and_where() {
    let problems = solve_with(|inputs| {
        inputs.opening_width = Reading::mm("0.5 ± 0.5");
        inputs.left.depth = Reading::mm("0");
        inputs.top.depth = Reading::mm("deep");
        inputs.clearance = Reading::mm("-1");
        inputs.swing = Figure::new("101");
        inputs.division = Division::Scraps;
        inputs.scraps = vec![Reading::mm("300"), Reading::mm("-4")];
        inputs.first_diagonal = Reading::mm("900");
    })
    .unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(
        fields,
        ["opening_width", "left.depth", "top.depth", "clearance", "swing", "scraps.1", "second_diagonal"]
    );
    let nothing_left = solve_with(|inputs| inputs.left = Edge::new(Way::HeldShort, "600"));
    assert!(nothing_left.unwrap_err().of("opening_width").is_some());
    let crooked = solve_with(|inputs| {
        inputs.first_diagonal = Reading::mm("1500");
        inputs.second_diagonal = Reading::mm("300");
    });
    assert!(crooked.unwrap_err().of("second_diagonal").is_some());
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform9(prop::sample::select(vec![
            "", "0", "-1", "500", "564 ± 0.5", "1/3", "1/999983 ± 1/999979", "99999999999", "0.000001", "12 in", "8",
        ])),
        ways in prop::array::uniform4(prop::sample::select(Way::ALL)),
        figures in prop::array::uniform3(prop::sample::select(vec!["", "0", "0.2", "3", "51", "1e300", "-1"])),
        (sheet, division) in (prop::sample::select(Sheet::ALL), prop::sample::select(Division::ALL)),
    ) {
        let [w, h, d1, d2, d3, c, m, first, second] = lengths;
        let [strain, swing, count] = figures.map(Figure::new);
        let [left, right, top, bottom] = ways;
        let inputs = Inputs {
            opening_width: Reading::mm(w),
            opening_height: Reading::mm(h),
            left: Edge::new(left, d1),
            right: Edge::new(right, d2),
            top: Edge::new(top, d3),
            bottom: Edge::new(bottom, d1),
            clearance: Reading::mm(c),
            least_engagement: Reading::mm(m),
            scraps: vec![Reading::mm(d1), Reading::mm(d2), Reading::mm(w)],
            least_piece: Reading::mm(c),
            first_diagonal: Reading::mm(first),
            second_diagonal: Reading::mm(second),
            seams: Seams::Horizontal,
            sheet, division, strain, swing, count,
        };
        if let Ok(answer) = solve(&inputs) {
            prop_assert!(answer.width.wet_mm.is_finite() && answer.squareness.diagonal_mm.is_finite());
        }
    }

    /// The same back given in inches is the same back.
    #[test]
    fn inches_change_nothing(opening in 128..640_i32, groove in 2..8_i32, clearance in 0..4_i32) {
        let job = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            opening_width: length(opening),
            opening_height: length(opening + 3),
            left: Edge { way: Way::Groove, depth: length(groove) },
            right: Edge { way: Way::Rabbet, depth: length(groove + 1) },
            clearance: length(clearance),
            division: Division::Equal,
            ..Inputs::default()
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = job(&|sixteenths| Reading::new(format!("{sixteenths}/16"), Unit::In));
        let metric = job(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert_eq!(inches, metric);
    }
}
