use super::{Answer, Balance, Datum, Doors, First, Inputs, Note, Rear, solve};
use crate::measure::{Length, Reading};
use proptest::prelude::*;
use proptest::sample::select;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

fn list(typed: &[&str]) -> Vec<Reading> {
    typed.iter().map(|typed| Reading::mm(typed)).collect()
}

fn at(answer: &Answer) -> Vec<Length> {
    answer.front.holes.iter().map(|hole| hole.at).collect()
}

/// A short side, so that all of its holes can be written down: 40, 72, 104, 136, 168, 200.
fn short() -> Inputs {
    Inputs {
        height: Reading::mm("240"),
        shelves_from: Reading::default(),
        shelves_to: Reading::default(),
        skip_from: vec![],
        skip_to: vec![],
        hinges: vec![],
        ..Inputs::default()
    }
}

#[test]
fn the_demo_is_balanced_and_bridged() {
    let answer = solved(&Inputs::default());
    // (1169.2 − 80) / 32 = 34.04: 35 holes, 34 · 32 = 1088 apart, (1169.2 − 1088) / 2.
    assert_eq!((answer.count, answer.first, answer.last_from_end), (35, mm("40.6"), mm("40.6")));
    assert_eq!(answer.rear.as_ref().unwrap().from_front, mm("293"));
    assert!(answer.depth_change.fits());
    assert_eq!((answer.height_change.less, answer.height_change.more), (mm("1.2"), mm("30.8")));
    // The middle hinge cannot sit on the middle hole.
    assert_eq!(answer.balance, Balance::RowsOnly);
    let middles: Vec<Length> = answer.plates.iter().map(|plate| plate.middle).collect();
    assert_eq!(middles, [mm("88.6"), mm("600.6"), mm("1080.6")]);
    assert_eq!(answer.plates[0].on_door, mm("86"));
    assert_eq!(answer.plates[0].moved, mm("-14"));
    assert_eq!(answer.notes, []);
}

#[test]
fn stretches_without_holes_are_left_out_but_plates_keep_theirs() {
    assert_eq!(at(&solved(&short())), ["40", "72", "104", "136", "168", "200"].map(mm));
    let inputs = Inputs { skip_from: list(&["", "190"]), skip_to: list(&["72", ""]), hinges: list(&["60"]), ..short() };
    let answer = solved(&inputs);
    assert_eq!(at(&answer), ["40", "72", "104", "136", "168"].map(mm));
    let plates: Vec<bool> = answer.front.holes.iter().map(|hole| hole.plate).collect();
    assert_eq!(plates, [true, true, false, false, false]);
    let rear: Vec<u64> = answer.rear.unwrap().holes.iter().map(|hole| hole.number).collect();
    assert_eq!(rear, [3, 4, 5], "plates need no holes in the rear row");
    let inputs = Inputs { shelves_from: Reading::mm("104"), shelves_to: Reading::mm("136"), ..short() };
    assert_eq!(at(&solved(&inputs)), ["104", "136"].map(mm), "the ends given are holes too");
}

#[test]
fn the_rail_lies_between_the_rows() {
    let answer = solved(&short());
    assert_eq!((answer.front.rail_edge, answer.rear.unwrap().rail_edge), (mm("53"), mm("277")));
    // A front row behind the middle has the rail in front of it.
    let inputs = Inputs { front_setback: Reading::mm("200"), rear: Rear::None, ..short() };
    assert_eq!(solved(&inputs).front.rail_edge, mm("184"));
    let inputs = Inputs { front_setback: Reading::mm("165"), rear: Rear::None, ..short() };
    assert_eq!(solved(&inputs).front.rail_edge, mm("181"));
}

#[test]
fn a_left_side_has_its_front_edge_away_when_its_lower_end_is_to_the_left() {
    let hands = |datum| solved(&Inputs { datum, ..short() }).hands;
    let [left, right] = hands(Datum::Bottom);
    assert_eq!((left.front_near, left.front, left.rear), (false, mm("293"), Some(mm("37"))));
    assert_eq!((right.front_near, right.front, right.rear), (true, mm("37"), Some(mm("293"))));
    assert_eq!(hands(Datum::Top).map(|hand| hand.front_near), [true, false]);
}

#[test]
fn a_side_is_alike_when_all_that_is_drilled_lies_alike() {
    let balance = |inputs: &Inputs| solved(inputs).balance;
    assert_eq!(balance(&short()), Balance::Alike);
    assert_eq!(balance(&Inputs { hinges: list(&["40", "200"]), ..short() }), Balance::Alike);
    let one_end = Inputs { skip_from: list(&["40"]), skip_to: list(&["50"]), ..short() };
    assert_eq!(balance(&one_end), Balance::RowsOnly);
    let given = Inputs { first: First::Given, end_distance: Reading::mm("41"), ..short() };
    assert_eq!(balance(&given), Balance::Uneven);
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let inputs = Inputs {
        height: Reading::mm("5001"),
        depth: Reading::mm("?"),
        thickness: Reading::mm("10"),
        end_distance: Reading::mm("0"),
        pitch: Reading::mm("5"),
        front_setback: Reading::mm("-1"),
        skip_from: list(&["100", "x"]),
        skip_to: list(&["90"]),
        shelves_to: Reading::mm("199"),
        hinges: list(&["-3"]),
        rail_offset: Reading::mm("-1"),
        ..Inputs::default()
    };
    let problems = solve(&inputs).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(
        fields,
        [
            "height",
            "depth",
            "end_distance",
            "front_setback",
            "shelves_to",
            "skip_to.0",
            "skip_from.1",
            "hinges.0",
            "hole_depth",
            "rail_offset",
            "pitch"
        ]
    );
}

#[test]
fn holes_that_break_out_or_meet_are_refused() {
    let refused = |inputs: &Inputs, field: &str, words: &str| {
        let problems = solve(inputs).unwrap_err();
        let problem = problems.of(field).unwrap_or_else(|| panic!("{field} in {problems:?}"));
        assert!(problem.to_string().contains(words), "{problem}");
    };
    let reading = Reading::mm;
    refused(&Inputs { end_distance: reading("2.5"), ..short() }, "end_distance", "break out");
    refused(&Inputs { end_distance: reading("121"), ..short() }, "end_distance", "120 mm");
    refused(&Inputs { pitch: reading("5"), ..short() }, "pitch", "run into each other");
    refused(&Inputs { pitch: reading("0.1"), hole: reading("0.01"), ..short() }, "pitch", "200 holes");
    refused(&Inputs { front_setback: reading("2.5"), ..short() }, "front_setback", "break out");
    refused(&Inputs { front_setback: reading("327.5"), rear: Rear::None, ..short() }, "front_setback", "break out");
    refused(&Inputs { depth: reading("79"), ..short() }, "depth", "too shallow");
    refused(&Inputs { rear: Rear::Own, rear_setback: reading("290"), ..short() }, "rear_setback", "run into");
    refused(&Inputs { rear: Rear::Own, rear_setback: reading("2"), ..short() }, "rear_setback", "run into");
    refused(&Inputs { hole_depth: reading("14.6"), ..short() }, "hole_depth", "outer face");
    refused(&Inputs { hinges: list(&["", "241"]), ..short() }, "hinges.1", "240 mm");
    refused(&Inputs { hinges: list(&["120"]), end_distance: reading("120"), ..short() }, "hinges", "only one");
    refused(&Inputs { hinges: list(&["50"; 21]), ..short() }, "hinges", "20");
    refused(&Inputs { skip_from: list(&["50"; 21]), ..short() }, "skip_from", "20");
    assert_eq!(solved(&Inputs { end_distance: reading("120"), ..short() }).count, 1);
    assert_eq!(solved(&Inputs { end_distance: reading("2.6"), ..short() }).count, 8);
}

/// At a limit itself it is still good.
#[test]
fn limits_are_met_exactly() {
    let reading = Reading::mm;
    for (what, inputs) in [
        ("the longest side", Inputs { height: reading("5000"), ..short() }),
        ("the deepest side", Inputs { depth: reading("5000"), ..short() }),
        ("a row a hair inside", Inputs { front_setback: reading("2.6"), rear: Rear::None, ..short() }),
        ("holes a hair apart", Inputs { pitch: reading("5.1"), ..short() }),
        ("rows a hair apart", Inputs { depth: reading("79.1"), ..short() }),
        ("own rows a hair apart", Inputs { rear: Rear::Own, rear_setback: reading("287.9"), ..short() }),
        ("an own row a hair inside", Inputs { rear: Rear::Own, rear_setback: reading("2.6"), ..short() }),
        ("twenty hinges", Inputs { hinges: list(&["50"; 20]), ..short() }),
        ("twenty stretches", Inputs { skip_from: list(&["50"; 20]), skip_to: list(&["60"; 20]), ..short() }),
    ] {
        assert!(solve(&inputs).is_ok(), "{what}: {:?}", solve(&inputs));
    }
    for (field, inputs) in [
        ("height", Inputs { height: reading("5000.1"), ..short() }),
        ("depth", Inputs { depth: reading("5000.1"), ..short() }),
        ("rear_setback", Inputs { rear: Rear::Own, rear_setback: reading("288"), ..short() }),
        ("rear_setback", Inputs { rear: Rear::Own, rear_setback: reading("2.5"), ..short() }),
    ] {
        assert!(solve(&inputs).unwrap_err().of(field).is_some(), "{field}");
    }
    // 199 steps of 10 between 40 at either end are 200 holes.
    let tens = |height: &str| solve(&Inputs { height: reading(height), pitch: reading("10"), ..short() });
    assert_eq!(tens("2070").map(|answer| answer.count), Ok(200));
    assert!(tens("2080").unwrap_err().of("pitch").is_some());
    // A stretch from a hole to itself leaves out that hole; shelves from a hole to itself have that hole.
    let one = Inputs { skip_from: list(&["72"]), skip_to: list(&["72"]), ..short() };
    assert_eq!(at(&solved(&one)), ["40", "104", "136", "168", "200"].map(mm));
    let one = Inputs { shelves_from: reading("104"), shelves_to: reading("104"), ..short() };
    assert_eq!(at(&solved(&one)), [mm("104")]);
    // A hinge at the very end of the side takes the last two holes, 168 and 200; a row of two has room for one hinge.
    assert_eq!(solved(&Inputs { hinges: list(&["240"]), ..short() }).plates[0].middle, mm("184"));
    let two = solved(&Inputs { hinges: list(&["100"]), end_distance: reading("90"), ..short() });
    assert_eq!((two.count, two.plates[0].middle), (2, mm("120")));
}

/// A note is a sentence for the person at the bench.
#[test]
fn notes_are_told() {
    let inputs = Inputs { hole_depth: Reading::mm("9"), ..Inputs::default() };
    let told = serde_json::to_value(solved(&inputs).notes).unwrap();
    assert_eq!(told, serde_json::json!(["Holes for pins and screws are usually 10 to 13 mm deep."]));
}

#[test]
fn notes_begin_beyond_their_limits() {
    let demo = Inputs::default;
    for (what, inputs) in [
        ("14.6 − 11.6 are 3 left behind", Inputs { hole_depth: Reading::mm("11.6"), ..demo() }),
        ("13 deep", Inputs { hole_depth: Reading::mm("13"), thickness: Reading::mm("18"), ..demo() }),
        ("40.6 + 16 is half a step from 40.6", Inputs { hinges: list(&["40.6"]), ..demo() }),
        ("no plate, no line of plates", Inputs { front_setback: Reading::mm("53"), hinges: vec![], ..demo() }),
        ("no plate, no pitch of plates", Inputs { pitch: Reading::mm("16"), hinges: vec![], ..demo() }),
    ] {
        assert_eq!(solved(&inputs).notes, [], "{what}");
    }
}

#[test]
fn notes_name_what_is_wrong() {
    let demo = Inputs::default;
    for (inputs, note) in [
        (Inputs { hole_depth: Reading::mm("11.7"), ..demo() }, Note::ThinBehindHole),
        (Inputs { hole_depth: Reading::mm("9"), ..demo() }, Note::DepthUnusual),
        (Inputs { hole_depth: Reading::mm("13.1"), ..demo() }, Note::DepthUnusual),
        (Inputs { depth: Reading::mm("331"), ..demo() }, Note::RowsOffSteps),
        (Inputs { front_setback: Reading::mm("38"), ..demo() }, Note::PlateLineUnusual),
        (Inputs { pitch: Reading::mm("25"), ..demo() }, Note::PlatePitch),
        (Inputs { hinges: list(&["20"]), ..demo() }, Note::PlateMovedFar),
        (Inputs { hinges: list(&["100", "130"]), ..demo() }, Note::PlatesShare),
        (Inputs { skip_from: list(&[""]), skip_to: list(&["1100"]), ..demo() }, Note::NothingLeft),
    ] {
        assert!(!solved(&demo()).notes.contains(&note));
        assert!(solved(&inputs).notes.contains(&note), "{note:?} in {:?}", solved(&inputs).notes);
    }
    let apart = Inputs { hinges: list(&["100", "160"]), ..demo() };
    assert_eq!(solved(&apart).notes, [], "two steps apart they lie end to end");
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for first in First::ALL {
        for doors in Doors::ALL {
            for rear in Rear::ALL {
                let inputs = Inputs { first: *first, doors: *doors, rear: *rear, ..Inputs::default() };
                for step in solved(&inputs).working.0 {
                    for (symbol, _) in &step.given {
                        assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
                    }
                }
            }
        }
    }
}

proptest! {
    #[test]
    fn a_row_is_as_long_as_it_can_be(first in select(First::ALL), tenths in (100_i64..30_000, 30_i64..500)) {
        let (height, least) = tenths;
        let tenth = |tenths: i64| Reading::mm(&format!("{tenths}/10"));
        let inputs = Inputs { first, height: tenth(height), end_distance: tenth(least), hinges: vec![], ..short() };
        if height < 2 * least {
            return Ok(());
        }
        let answer = solved(&inputs);
        let (pitch, least) = (mm("32"), tenth(least).length().unwrap());
        prop_assert!(answer.first >= least && answer.last_from_end >= least);
        // One hole more would not keep the distance from both ends.
        let ends = answer.first.plus(answer.last_from_end).unwrap();
        prop_assert!(ends.minus(pitch).unwrap() < least.plus(least).unwrap());
        // A side longer or shorter by the change is balanced at just that distance.
        for side in [
            answer.height.minus(answer.height_change.less).unwrap(),
            answer.height.plus(answer.height_change.more).unwrap(),
        ] {
            let inputs = Inputs { height: Reading::mm(&side.to_string()), first: First::Given, ..inputs.clone() };
            let changed = solved(&inputs);
            prop_assert_eq!(changed.balance, Balance::Alike);
            prop_assert_eq!(changed.first, least);
            prop_assert!(changed.height_change.fits());
        }
    }

    #[test]
    fn a_plate_takes_the_nearest_two_holes(tenths in 400_i64..11_292) {
        let wish = Length::mm(tenths, 10).unwrap();
        let inputs = Inputs { hinges: vec![Reading::mm(&wish.to_string())], ..Inputs::default() };
        let answer = solved(&inputs);
        let plate = answer.plates[0];
        prop_assert_eq!(plate.middle.minus(wish).unwrap(), plate.moved);
        prop_assert!(plate.moved.abs() <= mm("16.6"), "within half a step, or half a step off the row's end");
        for hole in [plate.near_hole, plate.far_hole] {
            prop_assert!(answer.front.holes.iter().any(|one| one.at == hole && one.plate));
        }
    }

    #[test]
    fn inches_change_nothing(first in select(First::ALL), rear in select(Rear::ALL), sixteenths in (800_i64..1600, 150_i64..500)) {
        let (height, depth) = sixteenths;
        let with = |height: Reading, depth: Reading| {
            solve(&Inputs { first, rear, height, depth, ..Inputs::default() })
        };
        let inches = |n: i64| Reading::inches(&format!("{n}/16"));
        let metric = |n: i64| Reading::mm(&format!("{n} * 25.4 / 16"));
        prop_assert_eq!(with(inches(height), inches(depth)), with(metric(height), metric(depth)));
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*") {
        let reading = Reading::mm(&typed);
        let _ = solve(&Inputs {
            height: reading.clone(),
            pitch: reading.clone(),
            skip_from: vec![reading.clone()],
            hinges: vec![reading],
            depth: Reading::mm(&other),
            end_distance: Reading::mm(&other),
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(big in any::<i64>(), small in 1_u64..u64::MAX, rear in select(Rear::ALL), first in select(First::ALL)) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        for inputs in [
            Inputs { height: reading.clone(), end_distance: reading.clone(), ..Inputs::default() },
            Inputs { pitch: reading.clone(), hole: Reading::mm("0.01"), ..Inputs::default() },
            Inputs { front_setback: reading.clone(), rear_setback: reading.clone(), ..Inputs::default() },
            Inputs { skip_to: vec![reading.clone()], hinges: vec![reading.clone()], ..Inputs::default() },
            Inputs { door_end: reading.clone(), rail_offset: reading.clone(), ..Inputs::default() },
        ] {
            let _ = solve(&Inputs { rear, first, ..inputs });
        }
    }
}
