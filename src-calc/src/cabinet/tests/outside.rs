//! A shelf outside of a cabinet, against sums done by hand.

use super::*;
use crate::drawing::{Layer, Shape};

fn shelved(at: Beside) -> Inputs {
    let mut inputs = Inputs::default();
    inputs.outside.at = at;
    inputs
}

fn all(typed: &[&str]) -> Result<Vec<Length>, crate::measure::ReadError> {
    typed.iter().map(|typed| mm(typed)).collect()
}

fn outside(cabinet: &Cabinet) -> Result<&OutsideShelf, &'static str> {
    cabinet.outside.as_ref().ok_or("no shelf outside")
}

/// On the left side of the demo, which is 350 deep; the door's 17.6 turn past that side.
#[test]
fn a_shelf_beside_it_agrees_with_the_sum_done_by_hand() -> Checked {
    let cabinet = solved(&shelved(Beside::Left))?;
    let shelf = outside(&cabinet)?;
    let board = &cabinet.parts[shelf.on];
    // 350 − 17.6 long, 200 deep, its upper face at 700.
    assert_eq!((board.what, sizes(board)), (What::OutsideShelf, ["332.4 mm", "200 mm", "14.6 mm"].map(str::to_owned)));
    assert_eq!((board.stock, board.grain), (Stock::Shelf, Axis::Deep));
    assert_eq!(
        [Axis::Across, Axis::Deep, Axis::Up].map(|axis| along(board, axis)),
        [[-200.0, 0.0], [0.0, 332.4], [685.4, 700.0]]
    );
    // 50 from either end; on the side 350 − 332.4 = 17.6 more.
    assert_eq!((&shelf.brackets, &shelf.on_holder), (&all(&["50", "282.4"])?, &all(&["67.6", "300"])?));
    assert_eq!(cabinet.parts[shelf.held_by].what, What::Side(Hand::Left));
    // The leg goes from 685.4 down to 565.4, its screws a quarter of 120 from its ends.
    assert_eq!((&shelf.screws, shelf.screw), (&all(&["595.4", "655.4"])?, mm("10")?));
    // A quarter of the arm of 150 from its ends. Neither screw comes out of 14.6: 11.6 is left.
    assert_eq!((&shelf.shelf_screws, shelf.shelf_screw), (&all(&["37.5", "112.5"])?, mm("10")?));
    let count = |what| cabinet.fittings.iter().find(|line| line.what == what).map(|line| line.count);
    let bracket = Fitting::Bracket { arm: mm("150")?, leg: mm("120")? };
    assert_eq!((count(bracket), count(Fitting::Screw { length: mm("10")? })), (Some(2), Some(8)));
    assert!(cabinet.clashes.is_empty(), "{:?}", cabinet.clashes);
    Ok(())
}

/// Between two brackets 232.4 apart it is a beam on two supports: 5·w·L⁴ / (384·E·I), of the load of 9 kg/m and its own
/// weight. What it weighs is 0.3324 · 0.2 · 0.0146 m³ of its board.
#[test]
fn it_sags_between_its_brackets_and_hangs_on_the_wall() -> Checked {
    let cabinet = solved(&shelved(Beside::Left))?;
    let shelf = outside(&cabinet)?;
    let material = Inputs::default().shelf.material;
    let (row, _) = material.family().and_then(|family| family.row(14.6)).ok_or("no row")?;
    let own_kg_per_m = 0.2 * 0.0146 * row.density_kg_m3;
    let n_per_mm = (9.0 + own_kg_per_m) * 9.806_65 / 1000.0;
    let stiffness = shelf.answer.board.stiffness_mpa * 200.0 * 14.6_f64.powi(3) / 12.0;
    let sag = 5.0 * n_per_mm * 232.4_f64.powi(4) / (384.0 * stiffness);
    assert!((shelf.answer.instant_mm / sag - 1.0).abs() < 1e-9, "{} and {sag}", shelf.answer.instant_mm);
    // Half of what lies between the two, and what stands past one of them.
    let each = (9.0 + own_kg_per_m) * (0.2324 / 2.0 + 0.05);
    assert!((shelf.bracket_kg - each).abs() < 1e-9, "{} and {each}", shelf.bracket_kg);
    assert!((shelf.load_kg - 9.0 * 0.3324).abs() < 1e-9);
    let without = solved(&Inputs::default())?;
    let total = |cabinet: &Cabinet| cabinet.hang.as_ref().map(|hang| hang.weighed.total_kg);
    let (with_kg, without_kg) = (total(&cabinet).ok_or("no wall")?, total(&without).ok_or("no wall")?);
    let more = own_kg_per_m * 0.3324 + 9.0 * 0.3324;
    // The wall is told to ten grams.
    assert!((with_kg - without_kg - more).abs() < 0.0101, "{with_kg} − {without_kg} and {more}");
    Ok(())
}

/// Under the bottom of 800.8, whose rear edge is at 21.1, with four brackets and its seen edges banded by 1.
#[test]
fn a_shelf_under_it_agrees_with_the_sum_done_by_hand() -> Checked {
    let mut inputs = Inputs { edging: Edging::Band, ..shelved(Beside::Under) };
    inputs.outside.brackets = "4".into();
    inputs.outside.length = Reading::mm("700");
    let cabinet = solved(&inputs)?;
    let shelf = outside(&cabinet)?;
    let on = shelf.on;
    // In the middle: (800.8 − 700) / 2 = 50.4 from the bottom's left end, which is at 14.6.
    let board = &cabinet.parts[on];
    assert_eq!(sizes(board), ["698 mm", "199 mm", "14.6 mm"]);
    assert_eq!(board.grain, Axis::Across);
    let place = [Axis::Across, Axis::Deep, Axis::Up].map(|axis| along(board, axis));
    assert_eq!(place, [[66.0, 764.0], [21.1, 220.1], [-134.6, -120.0]]);
    // In front, and at both ends.
    let edges: Vec<_> = cabinet.parts.iter().filter(|part| part.what == What::Edging { on }).map(sizes).collect();
    assert_eq!(edges, [["700 mm", "14.6 mm", "1 mm"], ["199 mm", "14.6 mm", "1 mm"], ["199 mm", "14.6 mm", "1 mm"]]);
    // 600 in three; on the bottom 50.4 farther on.
    assert_eq!(shelf.brackets, all(&["50", "250", "450", "650"])?);
    assert_eq!(shelf.on_holder, all(&["100.4", "300.4", "500.4", "700.4"])?);
    // The arm goes from 21.1 to 171.1, which is 178.9 behind the front; its screws are 37.5 from its ends.
    assert_eq!(shelf.screws, all(&["216.4", "291.4"])?);
    // Three bays of 200.
    assert_eq!((shelf.answer.bay, shelf.answer.span), (mm("200")?, mm("600")?));
    Ok(())
}

#[test]
fn more_than_four_brackets_are_judged_as_three_bays() -> Checked {
    let mut inputs = shelved(Beside::Under);
    inputs.outside.brackets = "6".into();
    let cabinet = solved(&inputs)?;
    let shelf = outside(&cabinet)?;
    // (800.8 − 100) / 5.
    assert_eq!((shelf.answer.bay, shelf.answer.span), (mm("140.16")?, mm("420.48")?));
    assert_eq!(shelf.brackets.len(), 6);
    Ok(())
}

/// The room begins at the bottom, and 3 are left free beside the carcass.
#[test]
fn what_reaches_past_the_room_on_the_wall_is_named() -> Checked {
    let room = |inputs: Inputs| Inputs { size_from: SizeFrom::Opening, free: Reading::mm("3"), ..inputs };
    let mut hooked = room(Inputs::default());
    assert_eq!(solved(&hooked)?.clashes, []);
    hooked.hooks.count = "4".into();
    assert_eq!(solved(&hooked)?.clashes, [Clash::PastRoom { by: mm("60")? }]);
    assert_eq!(solved(&Inputs { size_from: SizeFrom::Outside, ..hooked })?.clashes, []);
    // A shelf of 200 goes 197 past it.
    for at in [Beside::Left, Beside::Right] {
        assert_eq!(solved(&room(shelved(at)))?.clashes, [Clash::PastRoom { by: mm("197")? }]);
    }
    Ok(())
}

#[test]
fn what_is_in_its_way_is_named() -> Checked {
    // A shelf as long as the side is deep: the door's hinge edge turns into it.
    let mut inputs = shelved(Beside::Right);
    inputs.outside.length = Reading::mm("350");
    assert_eq!(solved(&inputs)?.clashes, [Clash::OutsideInDoorsWay { bay: 1 }]);
    inputs.outside.length = Reading::mm("332.4");
    assert_eq!(solved(&inputs)?.clashes, []);
    // A door that is hinged on the other side does not come there, nor one between the sides.
    inputs.outside.length = Reading::mm("350");
    assert_eq!(solved(&Inputs { doors: Doors::Left, ..inputs.clone() })?.clashes, []);
    assert_eq!(solved(&Inputs { lie: Lie::Inset, ..inputs })?.clashes, []);

    // Without a cleat the rear row lies 295 from the front, the rear bracket 300, its screws 595.4 and 655.4 up. Holes are
    // 32 apart, two of them 593 and 657 up: √(5² + 1.6²) and √(5² + 2.4²) are less than 6. Half a step on both are clear.
    let mut on_legs = Inputs { stands: Stands::Legs, ..shelved(Beside::Left) };
    let holes = &solved(&on_legs)?.rows[0].rows.rear.as_ref().ok_or("no rear row")?.holes.clone();
    for up in ["593", "657"] {
        assert!(holes.iter().any(|hole| Ok(hole.at) == mm(up)), "{holes:?}");
    }
    assert_eq!(solved(&on_legs)?.clashes, [Clash::BracketMeetsHole]);
    on_legs.outside.up = Reading::mm("716");
    assert_eq!(solved(&on_legs)?.clashes, []);

    let mut hooked = shelved(Beside::Under);
    hooked.hooks.count = "4".into();
    assert_eq!(solved(&hooked)?.clashes, [Clash::BracketsMeetHooks]);

    let standing = Inputs { stands: Stands::Legs, ..shelved(Beside::Under) };
    let cabinet = solved(&standing)?;
    assert_eq!(cabinet.clashes, [Clash::NothingUnder]);
    assert!(cabinet.outside.is_none());
    Ok(())
}

#[test]
fn it_comes_on_last_and_is_drawn() -> Checked {
    for at in [Beside::Left, Beside::Right, Beside::Under] {
        let cabinet = solved(&shelved(at))?;
        let shelf = outside(&cabinet)?;
        let marks = |wanted: bool| {
            let step = |step: &&Step| matches!(step.setup, Setup::Brackets { shelf, .. } if shelf == wanted);
            cabinet.work.iter().find(step).map(|step| step.parts.clone())
        };
        assert_eq!([marks(false), marks(true)], [Some(vec![shelf.held_by]), Some(vec![shelf.on])]);
        assert_eq!(cabinet.work.last().map(|step| &step.setup), Some(&Setup::FixOutside));
        let mut more = shelved(at);
        more.outside.brackets = "3".into();
        assert_ne!(cabinet.work_mark, solved(&more)?.work_mark);
        assert_eq!(cabinet.cautions.first(), Some(&Caution::BracketLoad));

        // Four marks on the shelf's lower face, and on the outer face of what holds it: grooves and joints are not there.
        let drawn = drawings(&cabinet)?;
        for (on, face) in [(shelf.on, Face::Lower), (shelf.held_by, outer(at))] {
            let view = View::Part { on, face };
            let drawing = &drawn.iter().find(|drawn| drawn.view == view).ok_or(format!("no {view:?}"))?.drawing;
            let count = |wanted: fn(&Shape) -> bool| drawing.shapes.iter().filter(|shape| wanted(shape)).count();
            assert_eq!(count(|shape| matches!(shape, Shape::Circle { layer: Layer::Mark, .. })), 4, "{view:?}");
            assert_eq!(drawing.shapes.len(), 6, "{view:?}: an outline, four marks and the datum");
        }
        assert!(
            drawn
                .iter()
                .any(|drawn| drawn.view == View::Front && drawn.drawing.owned.iter().any(|(_, on)| *on == shelf.on))
        );
    }
    Ok(())
}

const fn outer(at: Beside) -> Face {
    match at {
        Beside::Left => Face::Left,
        Beside::Right => Face::Right,
        Beside::Under | Beside::None => Face::Lower,
    }
}

#[test]
fn a_bracket_has_its_price() -> Checked {
    let mut inputs = shelved(Beside::Left);
    inputs.prices.bracket = "4.50".into();
    let costs = costs(&inputs, &solved(&inputs)?).map_err(|problems| format!("{problems:?}"))?;
    let line = costs.lines.iter().find(|line| line.what == Priced::Bracket).ok_or("no brackets")?;
    assert_eq!(line.sum.map(|sum| sum.to_string()), Some("9.00".to_owned()));
    Ok(())
}

#[test]
fn what_makes_no_shelf_outside_is_refused_at_its_field() {
    let wrong = |at: Beside, change: fn(&mut Inputs), field: &str| {
        let mut inputs = shelved(at);
        change(&mut inputs);
        let refused = solve(&inputs).err().is_some_and(|problems| problems.iter().all(|(name, _)| name == field));
        assert!(refused, "{field}: {:?}", solve(&inputs).err());
    };
    let left = Beside::Left;
    wrong(left, |inputs| inputs.outside.brackets = "1".into(), "outside.brackets");
    wrong(left, |inputs| inputs.outside.brackets = "13".into(), "outside.brackets");
    // 232.4 / 7 is less than a bracket and its neighbour take.
    wrong(left, |inputs| inputs.outside.brackets = "8".into(), "outside.brackets");
    wrong(left, |inputs| inputs.outside.arm = Reading::mm("39"), "outside.arm");
    wrong(left, |inputs| inputs.outside.arm = Reading::mm("99"), "outside.arm");
    wrong(left, |inputs| inputs.outside.arm = Reading::mm("201"), "outside.arm");
    wrong(left, |inputs| inputs.outside.leg = Reading::mm("39"), "outside.leg");
    // 700 − 14.6 is all that the side has below it.
    wrong(left, |inputs| inputs.outside.leg = Reading::mm("686"), "outside.leg");
    wrong(left, |inputs| inputs.outside.up = Reading::mm("50"), "outside.up");
    wrong(left, |inputs| inputs.outside.up = Reading::mm("1171"), "outside.up");
    wrong(left, |inputs| inputs.outside.length = Reading::mm("351"), "outside.length");
    wrong(left, |inputs| inputs.outside.length = Reading::mm("99"), "outside.length");
    wrong(left, |inputs| inputs.outside.load = "-1".into(), "outside.load");
    wrong(left, |inputs| inputs.shelf.thickness = Reading::mm("12.9"), "shelf.thickness");
    let under = Beside::Under;
    wrong(under, |inputs| inputs.outside.length = Reading::mm("801"), "outside.length");
    wrong(
        under,
        |inputs| (inputs.outside.depth, inputs.outside.arm) = (Reading::mm("340"), Reading::mm("200")),
        "outside.depth",
    );
    // The rail for the hooks is 60 high.
    wrong(under, |inputs| (inputs.hooks.count, inputs.outside.leg) = ("3".into(), Reading::mm("59")), "outside.leg");
    // Where there is none nothing of it is read.
    let mut without = shelved(Beside::None);
    without.outside.depth = Reading::mm("deep");
    assert!(solve(&without).is_ok_and(|cabinet| cabinet.outside.is_none()));
}
