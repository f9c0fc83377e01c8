use super::{Answer, Doors, Find, Inputs, Mounting, Note, Opens, Spread, Wish, solve};
use crate::measure::{Length, Reading};
use proptest::prelude::*;
use proptest::sample::select;

mod limits;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

fn shown(length: Length) -> Reading {
    Reading::mm(&length.to_string())
}

#[test]
fn the_demo_door_closes_its_opening() {
    let answer = solved(&Inputs::default());
    // 800 + 2 × 13 − 3 = 823, halved.
    assert_eq!(answer.door_width.nominal(), mm("411.5"));
    assert_eq!(answer.door_height.nominal(), mm("1164"));
    assert_eq!(answer.plate_height, mm("2"));
    assert_eq!(answer.notes, []);
    assert_eq!(answer.room.opens, Opens::Freely(mm("0.6")));
    assert_eq!(answer.hinges.len(), 3);
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let inputs = Inputs {
        side: Reading::mm("0"),
        reveal: Reading::mm("?"),
        cup_edge: Reading::mm(""),
        plates: vec![Reading::mm("0"), Reading::mm("-2")],
        opening_width: Reading::mm("1 ± 2"),
        door_thickness: Reading::mm("12"),
        hinges: "1".into(),
        door_weight: "0".into(),
        ..Inputs::default()
    };
    let problems = solve(&inputs).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(
        fields,
        ["side", "cup_edge", "reveal", "plates.1", "opening_width", "cup_depth", "hinges", "door_weight"]
    );
}

#[test]
fn outer_hinges_that_pass_each_other_are_refused() {
    let inputs = Inputs { end_distance: Reading::mm("582"), ..Inputs::default() };
    assert!(solve(&inputs).unwrap_err().of("end_distance").unwrap().to_string().contains("582 mm"));
}

#[test]
fn marks_run_up_from_the_datum() {
    // The door hangs 12 mm below the opening, whose lower edge is 14.6 mm above the end of the side.
    let answer = solved(&Inputs::default());
    let first = answer.hinges.first().unwrap();
    assert_eq!((first.on_door, first.on_side), (mm("100"), mm("102.6")));
    assert_eq!((first.lower_hole, first.upper_hole), (mm("86.6"), mm("118.6")));
    let last = answer.hinges.last().unwrap();
    assert_eq!(last.on_door, mm("1064"));
    assert_eq!(answer.hinges.get(1).unwrap().on_door, mm("582"));
}

#[test]
fn on_the_pitch_plates_are_whole_steps_apart() {
    let answer = solved(&Inputs { spread: Spread::Pitch, ..Inputs::default() });
    let at: Vec<Length> = answer.hinges.iter().map(|hinge| hinge.on_door).collect();
    // (1164 − 200) / 32 = 30.1 steps: 15 and 30.
    assert_eq!(at, [mm("100"), mm("580"), mm("1060")]);
}

#[test]
fn notes_name_what_is_wrong() {
    let demo = Inputs::default;
    for (inputs, note) in [
        (Inputs { constant: Reading::mm("8"), ..demo() }, Note::PlateBelowZero),
        (Inputs { constant: Reading::mm("11.5"), ..demo() }, Note::PlateNotSold),
        (Inputs { cup_edge: Reading::mm("8"), ..demo() }, Note::CupEdgeUnusual),
        (Inputs { reveal: Reading::mm("-1"), ..demo() }, Note::PastTheSide),
        (
            Inputs { mounting: Mounting::Half, wish: Wish::Overlay, overlay: Reading::mm("7.3"), ..demo() },
            Note::DoorsTouch,
        ),
        (Inputs { mounting: Mounting::Inset, gap: Reading::mm("0"), ..demo() }, Note::InsetTouches),
        (Inputs { cup_depth: Reading::mm("15"), ..demo() }, Note::ThinBehindCup),
        (Inputs { end_distance: Reading::mm("79"), ..demo() }, Note::NearTheEnds),
        (Inputs { opening_height: Reading::mm("500"), ..demo() }, Note::WiderThanHinges),
        (Inputs { doors: Doors::One, ..demo() }, Note::TooWide),
        (Inputs { door_weight: "23".into(), ..demo() }, Note::BeyondTable),
        (Inputs { hinges: "2".into(), ..demo() }, Note::FewHinges),
        (Inputs { end_distance: Reading::mm("20"), ..demo() }, Note::PlateOutside),
    ] {
        assert!(!solved(&demo()).notes.contains(&note));
        assert!(solved(&inputs).notes.contains(&note), "{note:?} in {:?}", solved(&inputs).notes);
    }
}

#[test]
fn a_shared_gap_is_halved_for_opening() {
    let half = Inputs {
        mounting: Mounting::Half,
        gap: Reading::mm("3"),
        least_reveal: Reading::mm("2"),
        constant: Reading::mm("5.5"),
        ..Inputs::default()
    };
    assert_eq!(solved(&half).room.opens, Opens::Strikes(mm("0.5")));
    assert_eq!(solved(&Inputs { least_reveal: Reading::default(), ..half }).room.opens, Opens::Unknown);
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for find in Find::ALL {
        for mounting in Mounting::ALL {
            for doors in Doors::ALL {
                let inputs = Inputs { find: *find, mounting: *mounting, doors: *doors, ..Inputs::default() };
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
    fn each_of_the_four_is_found_again(
        mounting in select(Mounting::ALL),
        tenths in (20_i64..80, 0_i64..60, -40_i64..180),
    ) {
        let (edge, height, constant) = tenths;
        let tenth = |tenths: i64| Length::mm(tenths, 10).unwrap();
        let inputs = Inputs {
            find: Find::Overlay,
            mounting,
            cup_edge: shown(tenth(edge)),
            plate_height: shown(tenth(height)),
            constant: shown(tenth(constant)),
            ..Inputs::default()
        };
        let first = solved(&inputs);
        prop_assert_eq!(first.overlay, tenth(constant + edge - height));
        // An inset door is asked for by its gap, which cannot be less than zero.
        if mounting == Mounting::Inset && first.gap.is_negative() {
            return Ok(());
        }
        for find in [Find::PlateHeight, Find::CupEdge, Find::Constant] {
            let mut again = Inputs { find, wish: Wish::Overlay, overlay: shown(first.overlay), ..inputs.clone() };
            if mounting == Mounting::Inset {
                again.gap = shown(first.gap);
            }
            match find {
                Find::PlateHeight => again.plate_height = Reading::mm("99"),
                Find::CupEdge => again.cup_edge = Reading::mm("99"),
                _ => again.constant = Reading::mm("99"),
            }
            let second = solved(&again);
            prop_assert_eq!(
                (second.overlay, second.plate_height, second.cup_edge, second.constant),
                (first.overlay, first.plate_height, first.cup_edge, first.constant)
            );
        }
    }

    #[test]
    fn inches_change_nothing(mounting in select(Mounting::ALL), sixteenths in (200_i64..800, 400_i64..1600)) {
        let (width, height) = sixteenths;
        let with = |width: Reading, height: Reading| {
            solve(&Inputs { mounting, opening_width: width, opening_height: height, ..Inputs::default() })
        };
        let inches = |n: i64| Reading::inches(&format!("{n}/16"));
        let metric = |n: i64| Reading::mm(&format!("{} * 25.4 / 16", n));
        prop_assert_eq!(with(inches(width), inches(height)), with(metric(width), metric(height)));
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*") {
        let reading = Reading::mm(&typed);
        let _ = solve(&Inputs {
            constant: reading.clone(),
            opening_width: reading.clone(),
            plates: vec![reading],
            opening_height: Reading::mm(&other),
            hinges: typed.as_str().into(),
            door_weight: other.as_str().into(),
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(big in any::<i64>(), small in 1_u64..u64::MAX, spread in select(Spread::ALL)) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        let _ = solve(&Inputs {
            spread,
            opening_width: reading.clone(),
            opening_height: reading.clone(),
            side: reading.clone(),
            end_distance: reading,
            ..Inputs::default()
        });
    }
}
