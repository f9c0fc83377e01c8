//! Where a note begins, and what is just still accepted.

use super::{mm, solved};
use crate::cards::cup_hinge::{Doors, Find, Inputs, Mounting, Note, Wish, solve};
use crate::caution::Caution;
use crate::measure::Reading;

/// A usual value itself is usual; a tenth of a millimetre beyond it is not.
#[test]
fn notes_begin_beyond_the_usual() {
    let told = |inputs: &Inputs, note: Note| solved(inputs).notes.contains(&note);
    let at = |inputs: &Inputs, change: fn(&mut Inputs, Reading), typed: [&str; 2], note: Note| {
        let [usual, beyond] = typed.map(|typed| {
            let mut changed = inputs.clone();
            change(&mut changed, Reading::mm(typed));
            told(&changed, note)
        });
        assert!(!usual && beyond, "{note:?}: {typed:?} gave {usual} {beyond}");
    };
    let pair = Inputs::default();
    at(&pair, |inputs, typed| inputs.cup_edge = typed, ["3", "2.9"], Note::CupEdgeUnusual);
    at(&pair, |inputs, typed| inputs.cup_edge = typed, ["7", "7.1"], Note::CupEdgeUnusual);
    at(&pair, |inputs, typed| inputs.end_distance = typed, ["80", "79.9"], Note::NearTheEnds);
    // 17.6 − 14.6 leaves 3 behind the cup.
    at(&pair, |inputs, typed| inputs.cup_depth = typed, ["14.6", "14.7"], Note::ThinBehindCup);
    // 11 + 4 − 15 is a plate of 0, which is in the list.
    let overlay = Inputs { wish: Wish::Overlay, ..pair.clone() };
    at(&overlay, |inputs, typed| inputs.overlay = typed, ["15", "15.1"], Note::PlateBelowZero);
    at(&overlay, |inputs, typed| inputs.overlay = typed, ["15", "14.9"], Note::PlateNotSold);
    // Below nothing it is not also missing from the list.
    assert!(!told(&Inputs { overlay: Reading::mm("15.1"), ..overlay }, Note::PlateNotSold));

    // Flush with the side, a door on the outside neither stands out nor touches anything.
    at(&pair, |inputs, typed| inputs.reveal = typed, ["0", "-0.1"], Note::PastTheSide);
    assert_eq!(solved(&Inputs { reveal: Reading::mm("0"), constant: Reading::mm("12.6"), ..pair.clone() }).notes, []);
    let half = Inputs { mounting: Mounting::Half, ..pair.clone() };
    at(&half, |inputs, typed| inputs.gap = typed, ["0.1", "0"], Note::DoorsTouch);
    let inset = Inputs { mounting: Mounting::Inset, ..pair.clone() };
    at(&inset, |inputs, typed| inputs.gap = typed, ["0.1", "0"], Note::InsetTouches);
    // Which of the two touches is told, and that alone.
    let closed = |inputs: &Inputs| solved(&Inputs { gap: Reading::mm("0"), ..inputs.clone() }).notes;
    assert!(closed(&half).contains(&Note::DoorsTouch) && !closed(&half).contains(&Note::InsetTouches));
    assert!(closed(&inset).contains(&Note::InsetTouches) && !closed(&inset).contains(&Note::DoorsTouch));

    // A door of 411.5 with its hinges 100 from its ends: as wide as they are apart at 611.5, 12 + 12 over the opening.
    at(&pair, |inputs, typed| inputs.opening_height = typed, ["587.5", "587.4"], Note::WiderThanHinges);
    // One door covers 13 on both sides: 650 wide. Its greatest width counts.
    let single = Inputs { doors: Doors::One, ..pair };
    at(&single, |inputs, typed| inputs.opening_width = typed, ["624", "624.1"], Note::TooWide);
    at(&single, |inputs, typed| inputs.opening_width = typed, ["623.9 ± 0.1", "624 ± 0.1"], Note::TooWide);
}

/// The lower hole lies 16 below the middle of the plate. Where the door is flush with the bottom, that is in the opening
/// from 16 on; where it hangs 12 below, from 28 on; above likewise.
#[test]
fn a_plate_s_hole_on_the_edge_of_the_opening_is_in_it() {
    for (bottom, top) in [("0", "12"), ("12", "0"), ("12", "12")] {
        let outside = |end_distance: &str| {
            let inputs = Inputs {
                bottom_overlay: Reading::mm(bottom),
                top_overlay: Reading::mm(top),
                end_distance: Reading::mm(end_distance),
                ..Inputs::default()
            };
            solved(&inputs).notes.contains(&Note::PlateOutside)
        };
        assert!(!outside("28") && outside("27.9"), "{bottom} below and {top} above");
    }
}

/// Two to 900 mm and 6 kg, three to 1600 and 12, four to 2000 and 17, five to 2400 and 22; six beyond, and a note.
#[test]
fn hinges_are_counted_by_height_weight_and_width() {
    let count = |width: &str, height: &str, weight: &str| {
        let answer = solved(&Inputs {
            doors: Doors::One,
            opening_width: Reading::mm(&format!("{width} - 26")),
            opening_height: Reading::mm(&format!("{height} - 24")),
            door_weight: weight.into(),
            ..Inputs::default()
        });
        (answer.hinges.len(), answer.notes.contains(&Note::BeyondTable))
    };
    for (at, height, weight) in [(2, 900.0, 6.0), (3, 1600.0, 12.0), (4, 2000.0, 17.0), (5, 2400.0, 22.0)] {
        let more = (at + 1, at == 5);
        assert_eq!(count("600", &height.to_string(), "1"), (at, false), "{height} mm");
        assert_eq!(count("600", &(height + 0.1).to_string(), "1"), more, "over {height} mm");
        assert_eq!(count("600", "900", &weight.to_string()), (at, false), "{weight} kg");
        assert_eq!(count("600", "900", &(weight + 0.1).to_string()), more, "over {weight} kg");
        // Wider than 600, one more.
        assert_eq!(count("600.1", &height.to_string(), "1"), (at + 1, false), "{height} mm and wide");
    }
}

#[test]
fn fewer_hinges_than_the_table_asks_for_are_told() {
    let few = |hinges: &str| {
        let answer = solved(&Inputs { hinges: hinges.into(), ..Inputs::default() });
        (answer.hinges.len(), answer.notes.contains(&Note::FewHinges))
    };
    // The demo's 1164 mm ask for three.
    assert_eq!([few("2"), few("3"), few("4")], [(2, true), (3, false), (4, false)]);
}

/// 0.5 m by 1 m of 17.6 mm birch plywood, which weighs 685 kg/m³ by its data sheet, are 6.028 kg; an opening that is
/// wider by its `±` counts in the middle.
#[test]
fn a_door_weighs_density_times_size() {
    let single = Inputs {
        doors: Doors::One,
        opening_width: Reading::mm("474 ± 1"),
        opening_height: Reading::mm("976 ± 1"),
        ..Inputs::default()
    };
    let weight = solved(&single).door_weight_kg;
    assert!((weight - 685.0 * 0.5 * 1.0 * 0.0176).abs() < 1e-9, "{weight}");
    let typed = solved(&Inputs { door_weight: "7.5".into(), ..single }).door_weight_kg;
    assert!((typed - 7.5).abs() < 1e-12);
}

/// Of the plates 0, 2, 3 and 4 one is nearest, or two are as near.
#[test]
fn the_nearest_plates_are_marked() {
    let nearest = |constant: &str| {
        let answer = solved(&Inputs { constant: Reading::mm(constant), ..Inputs::default() });
        answer.plates.iter().filter(|plate| plate.nearest).map(|plate| plate.height).collect::<Vec<_>>()
    };
    // The height is A + 4 − 13.
    assert_eq!(nearest("11"), [mm("2")]);
    assert_eq!(nearest("11.5"), [mm("2"), mm("3")]);
    assert_eq!(nearest("20"), [mm("4")]);
    // Each gives the overlay 11 + 4 − H on a side of 14.6.
    let plates = solved(&Inputs::default()).plates;
    let gives: Vec<_> = plates.iter().map(|plate| (plate.height, plate.overlay, plate.gap)).collect();
    assert_eq!(gives[0], (mm("0"), mm("15"), mm("-0.4")));
    assert_eq!(gives[3], (mm("4"), mm("11"), mm("3.6")));
}

#[test]
fn just_as_many_as_are_looked_at_are_accepted() {
    let plates = |count: usize| Inputs { plates: vec![Reading::mm("2"); count], ..Inputs::default() };
    assert!(solve(&plates(30)).is_ok());
    assert_eq!(fields(&plates(31)), ["plates"]);
    let hinges = |count: &str| Inputs { hinges: count.into(), ..Inputs::default() };
    assert_eq!(solved(&hinges("12")).hinges.len(), 12);
    assert_eq!(fields(&hinges("13")), ["hinges"]);
    assert_eq!(solved(&hinges("2")).hinges.len(), 2);
    assert_eq!(fields(&hinges("1")), ["hinges"]);
}

fn fields(inputs: &Inputs) -> Vec<String> {
    solve(inputs).unwrap_err().iter().map(|(field, _)| field.to_owned()).collect()
}

/// One problem by itself is enough to refuse it.
#[test]
fn a_single_bad_field_is_refused() {
    let demo = Inputs::default;
    for (inputs, field) in [
        (Inputs { door_weight: "0".into(), ..demo() }, "door_weight"),
        (Inputs { cup_depth: Reading::mm("17.6"), ..demo() }, "cup_depth"),
        (Inputs { plates: vec![Reading::mm("-0.1")], ..demo() }, "plates.0"),
        (Inputs { least_reveal: Reading::mm("-0.1"), ..demo() }, "least_reveal"),
        // Nothing is left of the door: 1 − 13 + 12, and 4 + 2 · 13 − 30.
        (Inputs { opening_height: Reading::mm("1"), top_overlay: Reading::mm("-13"), ..demo() }, "opening_height"),
        (Inputs { opening_width: Reading::mm("4"), gap: Reading::mm("30"), ..demo() }, "opening_width"),
    ] {
        assert_eq!(fields(&inputs), [field]);
    }
    assert!(solve(&Inputs { cup_depth: Reading::mm("17.5"), ..demo() }).is_ok());
    assert!(solve(&Inputs { door_weight: "0.1".into(), ..demo() }).is_ok());
}

/// A gap matters to an inset door, to a pair, and to doors on a partition whose overlay is to come from it.
#[test]
fn the_gap_is_asked_for_where_it_matters() {
    for mounting in Mounting::ALL {
        for doors in Doors::ALL {
            for wish in Wish::ALL {
                for find in Find::ALL {
                    let inputs = Inputs {
                        mounting: *mounting,
                        doors: *doors,
                        wish: *wish,
                        find: *find,
                        gap: Reading::mm("?"),
                        ..Inputs::default()
                    };
                    let asked = match (mounting, doors) {
                        (Mounting::Inset, _) | (_, Doors::Two) => true,
                        (Mounting::Full, Doors::One) => false,
                        (Mounting::Half, Doors::One) => *wish == Wish::Gap && *find != Find::Overlay,
                    };
                    let refused = solve(&inputs).err().map(|problems| problems.of("gap").is_some());
                    assert_eq!(refused, asked.then_some(true), "{mounting:?} {doors:?} {wish:?} {find:?}");
                }
            }
        }
    }
}

/// 800 wide and 13 over on the hinge side.
#[test]
fn the_side_without_hinges_is_its_own() {
    let width = |inputs: Inputs| solved(&inputs).door_width.nominal();
    let one = |other: &str| Inputs { doors: Doors::One, other_overlay: Reading::mm(other), ..Inputs::default() };
    assert_eq!(width(one("")), mm("826"), "the same as the hinge side");
    assert_eq!(width(one("5")), mm("818"));
    assert_eq!(fields(&one("?")), ["other_overlay"]);
    // A pair has hinges on both sides: 800 + 26 − 3, halved.
    assert_eq!(width(Inputs { doors: Doors::Two, ..one("?") }), mm("411.5"));
    // An inset door that ends up 2 from the side keeps the gap of 3 on the other, whatever else is typed there:
    // −4 + 4 − 2 is an overlay of −2.
    for other in ["", "5", "?"] {
        let inset = Inputs {
            mounting: Mounting::Inset,
            find: Find::Overlay,
            constant: Reading::mm("-4"),
            plate_height: Reading::mm("2"),
            ..one(other)
        };
        assert_eq!(width(inset), mm("795"), "{other:?}");
    }
}

/// Each line of the working stands where it is needed, and only there.
#[test]
fn the_working_has_the_lines_that_apply() {
    let has = |inputs: Inputs, what: &str| solved(&inputs).working.0.iter().any(|step| step.what == what);
    let demo = Inputs::default;
    let full = |find: Find, wish: Wish| Inputs { find, wish, ..demo() };
    let what = "Overlay from the reveal";
    assert!(has(full(Find::PlateHeight, Wish::Gap), what));
    assert!(!has(full(Find::PlateHeight, Wish::Overlay), what));
    assert!(!has(full(Find::Overlay, Wish::Gap), what));

    let inset = |find: Find| Inputs { find, mounting: Mounting::Inset, ..demo() };
    let what = "Overlay of an inset door";
    assert!(has(inset(Find::PlateHeight), what));
    assert!(!has(inset(Find::Overlay), what) && !has(demo(), what));

    let what = "The arm's constant";
    assert!(has(demo(), what) && !has(full(Find::Constant, Wish::Gap), what));

    let weight = |inputs: &Inputs| {
        let working = solved(inputs).working.0;
        working.into_iter().find(|step| step.what == "Weight of the door").unwrap().formula
    };
    assert_eq!(weight(&demo()), "m = ρ · D · h · t / 10⁹");
    assert_eq!(weight(&Inputs { door_weight: "5".into(), ..demo() }), "m");

    // 574 + 26 is 600 wide.
    let wide = |width: &str, weight: &str| Inputs {
        doors: Doors::One,
        opening_width: Reading::mm(width),
        door_weight: weight.into(),
        ..demo()
    };
    let what = "One of them is for the width";
    assert!(has(wide("574.1", "5"), what) && has(wide("620", "5"), what));
    assert!(!has(wide("574", "5"), what) && !has(wide("500", "5"), what));
    assert!(!has(wide("620", "23"), what), "beyond the table there is no such line");

    let what = "Room for each door to open";
    assert!(has(Inputs { mounting: Mounting::Half, ..demo() }, what) && !has(demo(), what));
    assert!(!has(inset(Find::PlateHeight), what));
}

/// Each sentence says what its note is about, with the number at which it begins.
#[test]
fn notes_are_sentences() {
    for (note, says) in [
        (Note::PlateBelowZero, "lower than 0"),
        (Note::PlateNotSold, "this height"),
        (Note::CupEdgeUnusual, "3 to 7 mm"),
        (Note::PastTheSide, "past the outer face"),
        (Note::DoorsTouch, "partition"),
        (Note::InsetTouches, "inset"),
        (Note::ThinBehindCup, "Under 3 mm"),
        (Note::NearTheEnds, "at least 80 mm"),
        (Note::WiderThanHinges, "wider than its outer hinges are apart"),
        (Note::TooWide, "over 650 mm"),
        (Note::BeyondTable, "2400 mm, 22 kg"),
        (Note::FewHinges, "more hinges"),
        (Note::PlateOutside, "above or below the opening"),
    ] {
        let sentence = note.to_string();
        assert!(sentence.contains(says) && sentence.ends_with('.'), "{note:?}: {sentence}");
    }
}

#[test]
fn a_cup_hinge_has_its_cautions() {
    let wanted = [Caution::CupDrilling, Caution::DustAndNoise, Caution::Estimate];
    for mounting in Mounting::ALL {
        assert_eq!(solved(&Inputs { mounting: *mounting, ..Inputs::default() }).cautions, wanted);
    }
}
