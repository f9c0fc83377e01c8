//! A whole cabinet answers the rows of the project's handbook as the cards do: P (back in grooves, common practice) and
//! H (cup hinges, published by two hinge makers). What a carcass leaves inside is its outer size less two boards
//! (common practice).

use scantling::cabinet::{Cabinet, Corners, Inputs, SizeFrom, solve};
use scantling::measure::{Length, Reading};

#[track_caller]
fn solved(id: &str, inputs: &Inputs) -> Cabinet {
    solve(inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"))
}

fn mm(whole: i64) -> Length {
    Length::mm(whole, 1).unwrap()
}

/// As wide inside as the row's opening, of boards of 18 mm.
fn inside(width: &str) -> Inputs {
    let mut inputs = Inputs { size_from: SizeFrom::Inside, width: Reading::mm(width), ..Inputs::default() };
    inputs.carcass.thickness = Reading::mm("18");
    inputs
}

#[test]
fn backs_are_those_of_rows_p() {
    // P-1: 564 + 8 + 8 − 2. P-2: 864 + 6 + 6 − 3.
    for (id, opening, depth, clearance, width) in [("P-1", "564", "8", "2", 578), ("P-2", "864", "6", "3", 873)] {
        let inputs = Inputs { groove_depth: Reading::mm(depth), clearance: Reading::mm(clearance), ..inside(opening) };
        let cabinet = solved(id, &inputs);
        assert_eq!(cabinet.back.width.size.nominal(), mm(width), "{id}");
    }
}

#[test]
fn plates_are_those_of_rows_h() {
    // H-2: a side of 18 and a reveal of 1.5 give an overlay of 16.5; 15 + 4 − 16.5 = 2.5.
    let inputs =
        Inputs { reveal: Reading::mm("1.5"), arm: Reading::mm("15"), cup_edge: Reading::mm("4"), ..inside("564") };
    let cabinet = solved("H-2", &inputs);
    for door in &cabinet.doors {
        assert_eq!(door.answer.overlay, Length::mm(33, 2).unwrap());
        assert_eq!(door.answer.plate_height, Length::mm(5, 2).unwrap());
    }
    assert_eq!(cabinet.doors.len(), 2);
}

/// Whichever boards run through, the outside less two boards is left; only the boards' lengths change places.
#[test]
fn what_is_left_inside_does_not_hang_on_the_corners() {
    for corners in Corners::ALL {
        let mut inputs =
            Inputs { corners: *corners, width: Reading::mm("600"), height: Reading::mm("720"), ..Inputs::default() };
        inputs.carcass.thickness = Reading::mm("18");
        let cabinet = solved("corners", &inputs);
        assert_eq!((cabinet.inside_width.nominal(), cabinet.inside_height.nominal()), (mm(564), mm(684)));
        let (side, top) = (&cabinet.parts[0], &cabinet.parts[2]);
        let wanted = if *corners == Corners::Between { (720, 564) } else { (684, 600) };
        assert_eq!((side.length, top.length), (mm(wanted.0), mm(wanted.1)));
    }
}
