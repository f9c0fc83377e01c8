//! Rows N-1 to N-5, rows of holes: 32 mm from centre to centre, which even centres between two end distances have to give.
//! And fences by the largest gap, counted up one piece at a time in sixteenths of an inch.

use scantling::cards::spacing::{By, Ends, Even, Inputs, solve};
use scantling::measure::{Length, Reading};

#[test]
fn n1_to_n5_rows_of_holes() {
    for (id, panel, end, holes) in [
        ("N-1", "720", "24", 22_u32),
        ("N-2", "720", "40", 21),
        ("N-3", "2000", "40", 61),
        ("N-4", "762", "45", 22),
        ("N-5", "722", "9", 23),
    ] {
        let inputs = Inputs {
            length: Reading::mm(panel),
            width: Reading::mm("5"),
            even: Even::Centres,
            ends: Ends::Own,
            end: Reading::mm(end),
            count: holes.to_string().as_str().into(),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        assert_eq!(answer.spread.pitch, Some(Length::mm(32, 1).unwrap()), "{id}");
        let centres: Vec<Length> = answer.pieces.iter().map(|piece| piece.centre).collect();
        let first = inputs.end.length().unwrap();
        let want: Vec<Length> =
            (0..i64::from(holes)).map(|at| first.plus(Length::mm(32 * at, 1).unwrap()).unwrap()).collect();
        assert_eq!(centres, want, "{id}");
    }
}

/// Common practice: a guard is filled with the fewest balusters that keep every opening to the largest allowed.
#[test]
fn fences_by_counting_up() {
    // Length, width, largest gap, all in sixteenths of an inch, and the balusters found by trying 1, 2, 3 …
    for (length, width, largest) in [(1152, 24, 64), (1536, 20, 56), (1000, 12, 63), (777, 16, 61)] {
        let tried = (1_u32..).find(|n| i64::from(*n) * width + (i64::from(*n) + 1) * largest >= length).unwrap();
        let sixteenths = |count: i64| Reading::inches(&format!("{count}/16"));
        let answer = solve(&Inputs {
            length: sixteenths(length),
            width: sixteenths(width),
            by: By::LargestGap,
            largest_gap: sixteenths(largest),
            ..Inputs::default()
        })
        .unwrap();
        assert_eq!(answer.spread.count, tried, "{length}/16 with {width}/16");
    }
}
