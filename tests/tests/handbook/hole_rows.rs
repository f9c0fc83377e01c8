//! Rows N: balanced rows, rear rows, changes to whole steps, all exact.
//!
//! Not met by this card, because it makes no doors: N-9 (door height for whole steps).

use scantling::cards::hole_rows::{Answer, Balance, Doors, First, Inputs, Rear, solve};
use scantling::measure::{Length, Reading};

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// A side with full rows and nothing else.
fn side(height: &str, least: &str) -> Inputs {
    Inputs {
        height: Reading::mm(height),
        end_distance: Reading::mm(least),
        thickness: Reading::mm("18"),
        shelves_from: Reading::default(),
        shelves_to: Reading::default(),
        skip_from: vec![],
        skip_to: vec![],
        hinges: vec![],
        ..Inputs::default()
    }
}

/// Published: three explanations of the 32 mm system; the arithmetic by hand.
#[test]
fn n1_to_n4_balanced_rows() {
    for (id, height, least, count, first) in [
        ("N-1", "720", "20", 22, "24"),
        ("N-2", "720", "37", 21, "40"),
        ("N-3", "2000", "37", 61, "40"),
        ("N-4", "762", "40", 22, "45"),
    ] {
        let answer = solved(&side(height, least));
        assert_eq!((answer.count, answer.first, answer.last_from_end), (count, mm(first), mm(first)), "{id}");
        assert_eq!(answer.balance, Balance::Alike, "{id}");
        let holes = &answer.front.holes;
        assert_eq!(u64::try_from(holes.len()).unwrap(), count, "{id}");
        assert_eq!(holes.first().map(|hole| hole.at), Some(mm(first)), "{id}");
    }
}

/// Published, as above: dowels in the line of the holes, so that the first hole lies in the middle of top and bottom.
#[test]
fn n5_and_n6_a_side_that_is_no_multiple_says_by_how_much_to_change_it() {
    let given = |height| solved(&Inputs { first: First::Given, ..side(height, "9") });
    let n5 = given("722");
    assert_eq!((n5.count, n5.balance), (23, Balance::Alike), "N-5");
    assert!(n5.height_change.fits(), "N-5");
    let n6 = given("720");
    assert_eq!((n6.count, n6.balance), (22, Balance::Uneven), "N-6");
    assert_eq!(n6.height_change.less, mm("30"), "N-6: 690 with 22 holes");
    assert_eq!(n6.height_change.more, mm("2"), "N-6: 722 with 23 holes");
    assert_eq!((given("690").count, given("690").balance), (22, Balance::Alike), "N-6");
}

/// Published, as above.
#[test]
fn n7_and_n8_rear_rows() {
    let rear = |depth: &str, rear| solved(&Inputs { depth: Reading::mm(depth), rear, ..side("720", "37") });
    let place = |answer: &Answer| answer.rear.as_ref().map(|row| row.from_front);
    let n7 = rear("560", Rear::Balanced);
    assert_eq!((place(&n7), n7.apart), (Some(mm("523")), Some(mm("486"))), "N-7");
    assert_eq!(n7.depth_change.less, mm("6"), "N-7: 486 = 15 · 32 + 6");
    let steps = rear("560", Rear::Steps);
    assert_eq!((place(&steps), steps.apart), (Some(mm("517")), Some(mm("480"))), "N-7, in whole steps");
    let n8 = rear("330", Rear::Balanced);
    assert_eq!((place(&n8), n8.apart), (Some(mm("293")), Some(mm("256"))), "N-8");
    assert!(n8.depth_change.fits(), "N-8");
    assert_eq!(place(&rear("330", Rear::Steps)), Some(mm("293")), "N-8, both ways");
}

/// Published, as above: 37 mm, and the door's thickness more behind an inset door. H-9: plates on the 37 mm line.
#[test]
fn the_front_row_lies_behind_an_inset_door() {
    let inset = Inputs { doors: Doors::Inset, door_thickness: Reading::mm("19"), ..side("720", "37") };
    assert_eq!(solved(&inset).front.from_front, mm("56"));
    assert_eq!(solved(&side("720", "37")).front.from_front, mm("37"), "H-9");
}
