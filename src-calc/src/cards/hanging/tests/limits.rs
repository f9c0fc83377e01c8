//! Where a note begins, and what is just still accepted.

use super::{near, solve_with};
use crate::cards::hanging::{Answer, Doors, Fixing, Grip, Holds, Hung, Inputs, Note, Rating, TiltsUp, Weight, What};
use crate::caution::Caution;
use crate::measure::Reading;
use crate::stock::fixings::{Screw, Stud};
use crate::stock::materials::Choice;

pub(super) fn solved(change: impl FnOnce(&mut Inputs)) -> Answer {
    solve_with(change).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// The fields that are refused; none where it is accepted.
fn refused(change: impl FnOnce(&mut Inputs)) -> Vec<String> {
    solve_with(change).err().iter().flat_map(|problems| problems.iter()).map(|(field, _)| field.to_owned()).collect()
}

pub(super) fn same(got: f64, want: f64) -> bool {
    (got - want).abs() <= 1e-9
}

/// A known cabinet without doors, 1000 high and 400 deep, with nothing in it, on a rail 200 below its top.
pub(super) fn bare(inputs: &mut Inputs, kg: &str) {
    (inputs.weight, inputs.known_weight, inputs.doors) = (Weight::Known, kg.into(), Doors::None);
    (inputs.height, inputs.depth, inputs.per_metre) = (Reading::mm("1000"), Reading::mm("400"), "0".into());
    (inputs.hung, inputs.bevel_down) = (Hung::Rail, Reading::mm("200"));
}

/// A screw of 5 mm in wood half as heavy as water, behind 15 mm of strip and 10 of lining.
pub(super) fn screw(inputs: &mut Inputs, length: &str) {
    (inputs.screw, inputs.own_diameter) = (Screw::Own, Reading::mm("5"));
    (inputs.stud, inputs.own_gravity) = (Stud::Own, "0.5".into());
    (inputs.strip, inputs.lining, inputs.screw_length) = (Reading::mm("15"), Reading::mm("10"), Reading::mm(length));
}

/// 23 kg for one; two thirds of 46 and half of 69, which are 30.67 and 34.5, for two and three.
#[test]
fn just_what_people_may_lift_they_may_lift() {
    let lift = |kg: &str, to: &str| {
        let change = |inputs: &mut Inputs| {
            bare(inputs, kg);
            (inputs.hands_out, inputs.grip) = (Reading::mm("250"), Grip::Good);
            (inputs.lift_from, inputs.lift_to) = (Reading::mm("750"), Reading::mm(to));
        };
        solved(change).lift
    };
    let people = [("23", Some(1)), ("23.1", Some(2)), ("30.6", Some(2)), ("30.7", Some(3)), ("34.5", Some(3))];
    for (kg, want) in people.into_iter().chain([("34.6", None)]) {
        let lift = lift(kg, "750");
        assert_eq!((lift.people_bare, lift.people_whole), (want, want), "{kg} kg");
    }
    let lift = lift("11.5", "1000");
    // 25 cm higher VM is 0.925; the lesser of start and end counts.
    assert!(same(lift.start_kg, 23.0) && same(lift.end_kg, 21.275) && same(lift.limit_kg, 21.275));
    for (crew, (people, limit)) in lift.crews.iter().zip([(1, 21.275), (2, 21.275 * 4.0 / 3.0), (3, 21.275 * 1.5)]) {
        assert!(crew.people == people && same(crew.limit_kg, limit), "{crew:?}");
        assert!(same(crew.bare_index, 11.5 / limit) && same(crew.whole_index, 11.5 / limit), "{crew:?}");
    }
    assert_eq!(lift.crews.len(), 3);
}

/// 7, 24 and 25 make a right angle: a side of 350 by 1200 has a diagonal of 1250.
#[test]
fn a_diagonal_as_long_as_the_room_is_high_clears() {
    let tilt = |ceiling: &str, clearance: &str| {
        let change = |inputs: &mut Inputs| {
            (inputs.height, inputs.depth) = (Reading::mm("1200"), Reading::mm("350"));
            (inputs.ceiling, inputs.clearance) = (Reading::mm(ceiling), Reading::mm(clearance));
        };
        solved(change).tilt
    };
    let just = tilt("1260", "10");
    assert!(same(just.diagonal_mm, 1250.0) && same(just.degrees, (7.0_f64 / 24.0).atan().to_degrees()));
    assert_eq!(just.tilts_up, TiltsUp::Clears(0.0));
    assert!(same(just.highest_mm.unwrap(), 1200.0));
    assert!(matches!(tilt("1262", "10").tilts_up, TiltsUp::Clears(spare) if same(spare, 2.0)));
    assert!(matches!(tilt("1260", "13").tilts_up, TiltsUp::Strikes(missing) if same(missing, 3.0)));
    // In a room as high as it is deep not even a board comes up; 0.1 higher one of √(0.1 · 700.1) does.
    assert_eq!(tilt("360", "10").highest_mm, None);
    assert!(near(tilt("360.1", "10").highest_mm.unwrap(), 70.01_f64.sqrt()));
    let unknown = tilt("", "10");
    assert_eq!((unknown.tilts_up, unknown.highest_mm), (TiltsUp::Unknown, None));
}

/// What holds already would hold just as long, up to the next 5 mm, and one gauge thicker.
#[test]
fn what_would_hold_begins_with_what_is_there() {
    let would = |length: &str| {
        let answer = solved(|inputs| inputs.screw_length = Reading::mm(length));
        assert_eq!(answer.holds, Holds::Yes);
        answer.would
    };
    assert_eq!((would("80").length_mm, would("80").screw), (Some(80.0), Some(Screw::No12)));
    assert_eq!((would("81").length_mm, would("200").length_mm), (Some(85.0), Some(200.0)));
    assert_eq!(would("201").length_mm, None, "none longer than 200 is tried");
    // Screws that do not reach the stud hold as little when they are thicker.
    assert_eq!(solved(|inputs| inputs.screw_length = Reading::mm("27")).would.screw, None);
}

#[test]
fn fixings_are_dealt_out_evenly() {
    let marks = |change: fn(&mut Inputs)| {
        solved(change).marks.iter().map(|mark| (mark.at.to_string(), mark.fixings)).collect::<Vec<_>>()
    };
    let at = |places: &[(&str, u32)]| places.iter().map(|(at, n)| ((*at).to_owned(), *n)).collect::<Vec<_>>();
    assert_eq!(marks(|inputs| inputs.count = "4".into()), at(&[("90 mm", 2), ("690 mm", 2)]));
    // Three studs 300 apart.
    let three = |inputs: &mut Inputs| (inputs.stud_pitch, inputs.count) = (Reading::mm("300"), "5".into());
    assert_eq!(marks(three), at(&[("90 mm", 2), ("390 mm", 2), ("690 mm", 1)]));
    // A single anchor sits in the middle of 780.
    let anchor = |inputs: &mut Inputs| (inputs.fixing, inputs.count) = (Fixing::Anchor, "1".into());
    assert_eq!(marks(anchor), at(&[("390 mm", 1)]));
}

/// 780 less 90 less the 20 mm at the end leave 670: two studs 670 apart, one where they are farther apart. A stud takes
/// two screws.
#[test]
fn studs_are_counted_to_the_end_of_the_strip() {
    let with = |pitch: &str, first: &str, count: &str| {
        let change = |inputs: &mut Inputs| {
            inputs.per_metre = "0".into();
            (inputs.stud_pitch, inputs.first_at) = (Reading::mm(pitch), Reading::mm(first));
            inputs.count = count.into();
        };
        solved(change).holds
    };
    assert_eq!([with("670", "90", "4"), with("670", "90", "5")], [Holds::Yes, Holds::TooFewStuds(2)]);
    assert_eq!(with("670.1", "90", "4"), Holds::TooFewStuds(1));
    assert_eq!([with("600", "760", "4"), with("600", "760.1", "4")], [Holds::TooFewStuds(1), Holds::TooFewStuds(0)]);
    // 49 steps of 13.6 are 666.4, and so 50 studs; 50 of 13.4 are 670, and so 51.
    let pitch = |pitch: &str| refused(|inputs| inputs.stud_pitch = Reading::mm(pitch));
    assert!(pitch("13.6").is_empty());
    assert_eq!(pitch("13.4"), ["stud_pitch"]);
}

#[test]
fn notes_begin_beyond_the_usual() {
    let told = |note: Note, change: &dyn Fn(&mut Inputs)| solved(change).notes.contains(&note);
    // 7 diameters of 5 are 35; behind 25 of strip and lining a screw of 60 goes in so far.
    let shallow = |length: &str| told(Note::Shallow, &|inputs| screw(inputs, length));
    assert_eq!(["60", "59.9", "25.1", "25"].map(shallow), [false, true, true, false]);
    let lined = |lining: &str| told(Note::LinedStud, &|inputs| inputs.lining = Reading::mm(lining));
    assert_eq!(["0", "0.1"].map(lined), [false, true]);

    assert_eq!(solved(|_| ()).notes, [Note::SmallPartsLeftOut, Note::LinedStud, Note::TiltWithoutDoors]);
    let anchor = solved(|inputs| inputs.fixing = Fixing::Anchor).notes;
    assert_eq!(anchor, [Note::SmallPartsLeftOut, Note::PacketWall, Note::TiltWithoutDoors]);
    let open = solved(|inputs| inputs.doors = Doors::None).notes;
    assert_eq!(open, [Note::SmallPartsLeftOut, Note::LinedStud]);
    let outside = solved(|inputs| inputs.ceiling = Reading::default()).notes;
    assert_eq!(outside, [Note::SmallPartsLeftOut, Note::LinedStud]);
    assert_eq!(solved(|inputs| inputs.weight = Weight::Known).notes, [Note::LinedStud, Note::TiltWithoutDoors]);
}

#[test]
fn notes_are_sentences() {
    for (note, says) in [
        (Note::SmallPartsLeftOut, "are not weighed"),
        (Note::Shallow, "less than 7 diameters"),
        (Note::LinedStud, "wood on wood"),
        (Note::PacketWall, "packet"),
        (Note::TiltWithoutDoors, "without its doors"),
    ] {
        let sentence = note.to_string();
        assert!(sentence.contains(says) && sentence.ends_with('.'), "{note:?}: {sentence}");
    }
    let cautions =
        [Caution::InTheWall, Caution::HungOnTheWall, Caution::HeavyLift, Caution::TipsOver, Caution::Estimate];
    assert_eq!(solved(|_| ()).cautions, cautions);
}

/// The limit itself is accepted, and a tenth beyond it is not; or the other way round where the limit is what there is.
#[test]
fn limits_are_where_they_are_said_to_be() {
    type Typed = fn(&mut Inputs, &str);
    let anchored = |inputs: &mut Inputs| (inputs.fixing, inputs.rating) = (Fixing::Anchor, Rating::Failure);
    for (field, typed, accepted, beyond) in [
        ("per_metre", (|inputs, typed| inputs.per_metre = typed.into()) as Typed, ["0", "5000"], ["-0.1", "5000.1"]),
        ("shelves", |inputs, typed| inputs.shelves = typed.into(), ["0", "7"], ["-1", "8"]),
        ("count", |inputs, typed| inputs.count = typed.into(), ["1", "100"], ["0", "101"]),
        ("twist", |inputs, typed| inputs.twist = typed.into(), ["0", "180"], ["-0.1", "180.1"]),
        ("bevel", |inputs, typed| inputs.bevel = typed.into(), ["30", "60"], ["29.9", "60.1"]),
        // The cabinet is 1169.2 high, the strip 70 high and 780 long.
        ("bevel_down", |inputs, typed| inputs.bevel_down = Reading::mm(typed), ["0.1", "1169.1"], ["0", "1169.2"]),
        ("fixings_up", |inputs, typed| inputs.fixings_up = Reading::mm(typed), ["0.1", "70"], ["0", "70.1"]),
        ("first_at", |inputs, typed| inputs.first_at = Reading::mm(typed), ["0", "779.9"], ["-0.1", "780"]),
        ("clearance", |inputs, typed| inputs.clearance = Reading::mm(typed), ["0", "0.1"], ["-0.1", "-1"]),
    ] {
        assert_eq!(accepted.map(|value| refused(|inputs| typed(inputs, value))), [const { Vec::<String>::new() }; 2]);
        for value in beyond {
            assert_eq!(refused(|inputs| typed(inputs, value)), [field], "{value}");
        }
    }
    let density = |typed: &str| {
        refused(|inputs| {
            (inputs.material, inputs.back_material, inputs.own_density) = (Choice::Own, Choice::Own, typed.into())
        })
    };
    assert!(density("25000").is_empty() && density("0.1").is_empty());
    assert_eq!((density("25000.1"), density("0")), (vec!["own_density".to_owned()], vec!["own_density".to_owned()]));
    let gravity = |typed: &str| refused(|inputs| (inputs.stud, inputs.own_gravity) = (Stud::Own, typed.into()));
    assert!(gravity("1.2").is_empty() && gravity("0.1").is_empty());
    assert_eq!((gravity("1.3"), gravity("0")), (vec!["own_gravity".to_owned()], vec!["own_gravity".to_owned()]));
    // Anchors stand as far from one end as from the other, and so less than half of 780.
    let first = |typed: &str| refused(|inputs| (inputs.fixing, inputs.first_at) = (Fixing::Anchor, Reading::mm(typed)));
    assert!(first("389.9").is_empty());
    assert_eq!(first("390"), ["first_at"]);
    let factor = |typed: &str| {
        refused(|inputs| {
            anchored(inputs);
            inputs.factor = typed.into();
        })
    };
    assert!(factor("1").is_empty());
    assert_eq!(factor("0.9"), ["factor"]);
}

/// Two sides of 14.6; top, bottom and three shelves of 14.6; a back of 6.5, set in by 15.
#[test]
fn something_must_be_left_between_the_boards() {
    let with = |width: &str, height: &str, depth: &str| {
        refused(|inputs| {
            (inputs.width, inputs.height) = (Reading::mm(width), Reading::mm(height));
            (inputs.depth, inputs.bevel_down) = (Reading::mm(depth), Reading::mm("1"));
            inputs.shelves = "3".into();
        })
    };
    assert!(with("29.3", "73.1", "21.6").is_empty());
    assert_eq!(with("29.2", "73.1", "21.6"), ["width"]);
    assert_eq!(with("29.3", "73", "21.6"), ["height"]);
    assert_eq!(with("29.3", "73.1", "21.5"), ["depth"]);
}

/// Two lengths can be fine and what is left between them too fine to be written down; that is said, not passed over.
#[test]
fn what_is_too_fine_is_a_problem() {
    let fine = |inputs: &mut Inputs| {
        (inputs.height, inputs.bevel_down) = (Reading::mm("1000 + 1/999999937"), Reading::mm("80 + 1/999999929"));
    };
    assert_eq!(refused(fine), [""]);
}

/// A door of 1 m by 1 m by 10 mm at 1000 kg/m³ weighs 10 kg.
#[test]
fn a_cabinet_weighs_more_than_its_doors() {
    let known = |kg: &'static str, doors: Doors| {
        move |inputs: &mut Inputs| {
            bare(inputs, kg);
            (inputs.doors, inputs.width, inputs.door_thickness) = (doors, Reading::mm("1000"), Reading::mm("10"));
            (inputs.door_material, inputs.own_density) = (Choice::Own, "1000".into());
        }
    };
    assert_eq!(refused(known("9.99", Doors::One)), ["known_weight"]);
    let answer = solved(known("12", Doors::One));
    let parts: Vec<What> = answer.weighed.parts.iter().map(|part| part.what).collect();
    assert_eq!(parts, [What::Cabinet, What::Doors]);
    assert!(near(answer.weighed.bare_kg, 2.0) && near(answer.weighed.cabinet_kg, 12.0), "{:?}", answer.weighed);
    // Shut, 2 kg at 200 and 10 kg at 405; open, the 10 kg at 400 + 500, or of a pair at 400 + 250.
    assert!(near(answer.weighed.shut.out_mm, (400.0 + 4050.0) / 12.0), "{:?}", answer.weighed);
    assert!(near(answer.weighed.open.unwrap().out_mm, (400.0 + 9000.0) / 12.0), "{:?}", answer.weighed);
    assert!(near(answer.pull.out_mm, (400.0 + 9000.0) / 12.0), "{:?}", answer.pull);
    let pair = solved(known("12", Doors::Two)).weighed.open.unwrap();
    assert!(near(pair.out_mm, (400.0 + 6500.0) / 12.0), "{pair:?}");
    assert_eq!(refused(known("0", Doors::None)), ["known_weight"]);
    assert!(refused(known("0.1", Doors::None)).is_empty());
}
