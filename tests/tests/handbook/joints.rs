//! The habits of section 9 for joints along an edge, all common practice but for biscuits, which are from memory.

use scantling::cards::joints::{Answer, Inputs, Kind, Note, Stays, solve};
use scantling::measure::{Length, Reading};

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// A shelf between sides of the same board, set out as is usual.
fn usual(kind: Kind, board: &str, length: &str) -> Inputs {
    Inputs {
        kind,
        length: Reading::mm(length),
        edge_thickness: Reading::mm(board),
        face_thickness: Reading::mm(board),
        end_distance: Reading::default(),
        spacing: Reading::default(),
        ..Inputs::default()
    }
}

/// First from the ends, and the greatest distance from middle to middle. Common practice; biscuits from memory.
#[test]
fn joints_lie_where_the_trade_puts_them() {
    for (kind, ends, spacing) in [
        (Kind::Dowel, 32.0..=50.0, 96.0..=150.0),
        (Kind::LooseTenon, 50.0..=75.0, 150.0..=200.0),
        (Kind::ConnectingScrew, 40.0..=60.0, 100.0..=150.0),
        (Kind::PocketScrew, 45.0..=55.0, 150.0..=200.0),
        (Kind::Biscuit, 50.0..=75.0, 150.0..=200.0),
    ] {
        for length in 600..1300 {
            let answer = solved(&usual(kind, "18", &length.to_string()));
            let first = answer.marks[0].as_mm();
            let last = answer.length.as_mm() - answer.marks.last().unwrap().as_mm();
            assert!(ends.contains(&first) && ends.contains(&last), "{kind:?} on {length}: {first} and {last}");
            // Evened out they may lie a little closer than usual on a short edge, never farther apart.
            let apart = answer.spacing.unwrap().as_mm();
            assert!(apart <= *spacing.end() && apart >= 0.7 * spacing.start(), "{kind:?} on {length}: {apart}");
        }
    }
}

/// Dowels: 2/3 into the face board, 12 to 13 mm in 19; the rest in the edge, 2 mm for glue in all. Common practice.
#[test]
fn dowels_go_two_thirds_into_the_face() {
    let answer = solved(&Inputs { dowel_diameter: Reading::mm("8"), ..usual(Kind::Dowel, "19", "560") });
    let in_face = answer.fixing.in_other;
    assert!(in_face >= mm("12") && in_face <= mm("13"), "{in_face}");
    assert_eq!(in_face.times(3, 2).unwrap(), mm("19"));
    assert_eq!(in_face.plus(answer.fixing.in_edge).unwrap(), mm("32"), "30 mm of dowel and 2 of glue");
    assert_eq!(answer.stays, Stays::Inside);
}

/// A third to a half of the board: 8 mm in 16 to 19, 6 mm in 12. Common practice.
#[test]
fn dowels_are_a_third_to_a_half_of_the_board() {
    for (board, diameter, notes) in [
        ("16", "8", vec![]),
        ("19", "8", vec![]),
        ("12", "6", vec![]),
        ("12", "8", vec![Note::Thick]),
        ("19", "6", vec![Note::Slight]),
    ] {
        let inputs = Inputs {
            dowel_diameter: Reading::mm(diameter),
            skin: Reading::mm("2"),
            ..usual(Kind::Dowel, board, "560")
        };
        assert_eq!(solved(&inputs).notes, notes, "{diameter} in {board}");
    }
}

/// Tenons: a third of the board thick, 20 to 50 wide, 15 to 25 deep in each part. Common practice.
#[test]
fn tenons_of_the_usual_size_bring_no_remark() {
    for (board, thickness, width, length) in [("18", "6", "20", "28"), ("25", "8", "50", "48"), ("19", "6", "35", "30")]
    {
        let inputs = Inputs {
            tenon_thickness: Reading::mm(thickness),
            tenon_width: Reading::mm(width),
            tenon_length: Reading::mm(length),
            skin: Reading::mm("0"),
            ..usual(Kind::LooseTenon, board, "600")
        };
        let answer = solved(&inputs);
        assert_eq!(answer.notes, [], "{board}");
        for deep in [answer.fixing.in_edge, answer.fixing.in_other] {
            assert!(deep >= mm("15") && deep <= mm("25"), "{board}: {deep}");
        }
    }
}

/// 7 × 50 mm, 5 mm hole in the edge, 7 mm through the face board, 16 mm board and thicker. Common practice.
#[test]
fn connecting_screws_are_50_long_in_the_usual_boards() {
    for board in ["16", "18", "19"] {
        let answer = solved(&usual(Kind::ConnectingScrew, board, "560"));
        assert_eq!(answer.screw.unwrap().length, mm("50"), "{board}");
        assert_eq!((answer.fixing.across, answer.fixing.across_other), (mm("5"), mm("7")), "{board}");
        assert!(answer.fixing.through && answer.notes.is_empty(), "{board}");
    }
    let thin = solved(&usual(Kind::ConnectingScrew, "15", "560"));
    assert_eq!(thin.notes, [Note::ThinForScrew]);
}

/// 32 mm (1 1/4 in) in 18 to 19 mm, 25 mm in 12 to 13 mm. Common practice.
#[test]
fn pocket_screws_are_as_long_as_the_board_asks_for() {
    for (board, want) in [("18", "32"), ("19", "32"), ("12", "25"), ("13", "25")] {
        let answer = solved(&usual(Kind::PocketScrew, board, "560"));
        assert_eq!(answer.screw.unwrap().length, mm(want), "{board}");
        assert_ne!(answer.stays, Stays::BreaksOut, "{board}");
    }
}

/// The chord that a disc of 100 mm cuts 12.5 mm deep is 2 · √(12.5 · 87.5) = 66.144 mm, by the formula of G-5. G-5
/// itself is no biscuit's: none is so shallow.
#[test]
fn a_slot_is_as_long_as_the_disc_cuts() {
    let answer = solved(&Inputs { skin: Reading::mm("2"), ..usual(Kind::Biscuit, "18", "600") });
    assert_eq!((answer.fixing.in_edge, answer.fixing.in_other), (mm("12.5"), mm("12.5")), "23 mm and 2 for glue");
    assert!((answer.fixing.along.as_mm() - 66.144).abs() < 0.000_5, "{}", answer.fixing.along);
}
