//! Short tables; the handbook's rows and the equilibrium of rigid bodies are in the tests crate.

use super::*;
use crate::measure::{AngleReading, Figure, Reading};
use crate::stock::fixings::{Screw, Stud};
use crate::stock::materials::Choice;
use proptest::prelude::*;

mod by_hand;
mod limits;

fn solve_with(change: impl FnOnce(&mut Inputs)) -> Result<Answer, Problems> {
    let mut inputs = Inputs::default();
    change(&mut inputs);
    solve(&inputs)
}

fn near(got: f64, want: f64) -> bool {
    (got - want).abs() <= want.abs() * 5e-4
}

/// The demo by hand, kg: sides 2·1169.2·350·14.6 at 690; top and bottom 2·800·350·14.6 at 690; back 800·1140·6.5 at 670;
/// shelves 2·800·328.5·14.6 at 690; doors 829.2·1169.2·17.6 at 685; contents 3·0.8·9.
#[test]
fn the_demo_weighs() {
    let weighed = solve(&Inputs::default()).unwrap().weighed;
    let got: Vec<(What, f64)> = weighed.parts.iter().map(|part| (part.what, part.kg)).collect();
    let want = [
        (What::Sides, 8.2450),
        (What::TopAndBottom, 5.6414),
        (What::Back, 3.9718),
        (What::Shelves, 5.2949),
        (What::Doors, 11.688),
        (What::Contents, 21.6),
    ];
    assert_eq!(got.len(), want.len());
    for ((what, kg), (wanted, want)) in got.into_iter().zip(want) {
        assert!(what == wanted && near(kg, want), "{what:?} {kg}, by hand {wanted:?} {want}");
    }
    // Open, each door's centre lies 350 + 829.2/4 from the wall.
    let moved = weighed.open.unwrap().out_mm - weighed.shut.out_mm;
    assert!(near(moved, 11.688 * (829.2 / 4.0 - 8.8) / weighed.total_kg), "{moved}");
}

/// By hand: two levels of a known cabinet of 1000 by 400, 3 kg below and 1 kg above: 3·250 + 1·750 over 4 is 375 up.
#[test]
fn contents_by_level() {
    let answer = solve_with(|inputs| {
        inputs.weight = Weight::Known;
        inputs.known_weight = "4".into();
        inputs.height = Reading::mm("1000");
        inputs.depth = Reading::mm("400");
        inputs.doors = Doors::None;
        inputs.shelves = "1".into();
        inputs.load = Load::Each;
        inputs.levels[0] = "3".into();
        inputs.levels[1] = "1 kg".into();
    })
    .unwrap();
    let contents = answer.weighed.parts.last().copied().unwrap();
    assert_eq!((contents.what, contents.kg), (What::Contents, 4.0));
    assert!(near(contents.centre.up_mm, 375.0) && near(contents.centre.out_mm, 200.0), "{contents:?}");
    // 4 kg at 500 and 4 kg at 375.
    assert!(near(answer.weighed.shut.up_mm, 437.5) && answer.weighed.open.is_none());
}

/// Screws in studs 600 apart from 90 on: one at 90, one at 690; an odd one goes to the first.
#[test]
fn places_of_the_fixings() {
    let marks = |change: fn(&mut Inputs)| {
        let answer = solve_with(change).unwrap();
        answer.marks.iter().map(|mark| (mark.at.to_string(), mark.fixings)).collect::<Vec<_>>()
    };
    let at = |places: &[(&str, u32)]| places.iter().map(|(at, n)| ((*at).to_owned(), *n)).collect::<Vec<_>>();
    assert_eq!(marks(|inputs| inputs.count = "3".into()), at(&[("90 mm", 2), ("690 mm", 1)]));
    let anchors = |inputs: &mut Inputs| {
        inputs.fixing = Fixing::Anchor;
        inputs.count = "4".into();
    };
    assert_eq!(marks(anchors), at(&[("90 mm", 1), ("290 mm", 1), ("490 mm", 1), ("690 mm", 1)]));
    let few = solve_with(|inputs| inputs.count = "40".into()).unwrap();
    assert_eq!(few.holds, Holds::TooFewStuds(2));
}

/// What would make it hold does: so many fixings and not one less, so long a screw and not 5 mm less.
#[test]
fn what_would_hold_holds() {
    let with = |count: u32, length: f64, screw: Screw| {
        let change = |inputs: &mut Inputs| {
            inputs.per_metre = "30".into();
            inputs.stud_pitch = Reading::mm("100");
            (inputs.count, inputs.screw) = (Figure::new(count.to_string()), screw);
            inputs.screw_length = Reading::mm(&length.to_string());
        };
        solve_with(change).unwrap()
    };
    let answer = with(4, 60.0, Screw::No8);
    assert_eq!(answer.holds, Holds::TooMuch, "{:?}", answer.each);
    let count = answer.would.count.unwrap();
    assert_eq!(with(count, 60.0, Screw::No8).holds, Holds::Yes);
    assert_eq!(with(count - 1, 60.0, Screw::No8).holds, Holds::TooMuch);
    let nearly = with(count - 1, 60.0, Screw::No8);
    let length = nearly.would.length_mm.unwrap();
    assert_eq!(with(count - 1, length, Screw::No8).holds, Holds::Yes);
    assert_eq!(with(count - 1, length - 5.0, Screw::No8).holds, Holds::TooMuch);
    let screw = nearly.would.screw.unwrap();
    assert_eq!(with(count - 1, 60.0, screw).holds, Holds::Yes);
    assert_eq!(with(4, 30.0, Screw::No8).holds, Holds::NoGrip, "14.6 + 12.5 leave 2.9 mm");
}

/// A packet that prints the load at which it fails: a quarter of it, or by the factor given.
#[test]
fn ratings_from_the_packet() {
    let allowed = |factor: &str, rating: Rating| {
        let answer = solve_with(|inputs| {
            inputs.fixing = Fixing::Anchor;
            inputs.pull_rating = "1.2 kN".into();
            inputs.shear_rating = "2000".into();
            (inputs.factor, inputs.rating) = (factor.into(), rating);
        });
        answer.map(|answer| (answer.allowed.pull_n, answer.allowed.shear_n))
    };
    assert_eq!(allowed("4", Rating::Failure).unwrap(), (300.0, 500.0));
    assert_eq!(allowed("nothing", Rating::Allowed).unwrap(), (1200.0, 2000.0), "the factor does not matter then");
    assert!(allowed("0.5", Rating::Failure).unwrap_err().of("factor").is_some());
}

#[test]
fn says_what_is_wrong_and_where() {
    let fields = |change: fn(&mut Inputs)| {
        let problems = solve_with(change).unwrap_err();
        problems.iter().map(|(field, _)| field.to_owned()).collect::<Vec<_>>()
    };
    let parts = fields(|inputs| {
        inputs.width = Reading::mm("29.2");
        inputs.depth = Reading::mm("20");
        (inputs.material, inputs.door_material, inputs.own_density) = (Choice::Own, Choice::Own, "0".into());
        inputs.shelves = "8".into();
        inputs.twist = "-1".into();
    });
    assert_eq!(parts, ["shelves", "own_density", "twist"], "sizes wait for the boards");
    let sizes = fields(|inputs| {
        inputs.width = Reading::mm("29.2");
        inputs.height = Reading::mm("58.4");
        inputs.depth = Reading::mm("21.5");
        inputs.per_metre = "-1".into();
        inputs.bevel = "61".into();
        inputs.bevel_down = Reading::mm("58.4");
        inputs.fixings_up = Reading::mm("71");
        inputs.first_at = Reading::mm("780");
        inputs.count = "0".into();
        inputs.stud_pitch = Reading::mm("0");
    });
    let want = ["width", "height", "depth", "per_metre", "bevel", "bevel_down", "fixings_up", "first_at", "count"];
    assert_eq!(sizes[..9], want);
    assert_eq!(sizes[9..], ["stud_pitch"]);
    let known = fields(|inputs| {
        (inputs.weight, inputs.known_weight, inputs.load) = (Weight::Known, "5".into(), Load::Each);
        inputs.levels[2] = "heavy".into();
        (inputs.stud, inputs.own_gravity) = (Stud::Own, "2".into());
    });
    assert_eq!(known, ["known_weight", "levels.2", "own_gravity"], "the doors weigh 11.7 kg");
    assert_eq!(fields(|inputs| inputs.stud_pitch = Reading::mm("1")), ["stud_pitch"]);
    let nothing = fields(|inputs| {
        (inputs.weight, inputs.known_weight, inputs.doors) = (Weight::Known, "0".into(), Doors::None);
        inputs.clearance = Reading::mm("-1");
    });
    assert_eq!(nothing, ["known_weight", "clearance"]);
    let no_ceiling = solve_with(|inputs| (inputs.ceiling, inputs.clearance) = (Reading::mm(" "), Reading::mm("-1")));
    assert_eq!(no_ceiling.unwrap().tilt.tilts_up, TiltsUp::Unknown);
}

proptest! {
    #[test]
    fn nothing_panics(
        lengths in prop::array::uniform12(prop::sample::select(vec![
            "", "0", "-1", "1e9", "0.000001", "1/3", "18", "350", "829.2", "99999999999", "12 in", "1 km", "1/999983",
        ])),
        figures in prop::array::uniform6(prop::sample::select(vec!["", "0", "1", "4", "9", "1e300", "-1", "5000", "0.3"])),
        angle in prop::sample::select(vec!["", "0", "30", "45", "60", "1e9", "-45"]),
        (weight, load, fixing) in (
            prop::sample::select(Weight::ALL), prop::sample::select(Load::ALL), prop::sample::select(Fixing::ALL),
        ),
        (doors, hung, screw, stud) in (
            prop::sample::select(Doors::ALL), prop::sample::select(Hung::ALL), prop::sample::select(Screw::ALL),
            prop::sample::select(Stud::ALL),
        ),
    ) {
        let [width, height, depth, thickness, inset, hands, from, down, strip, pitch, first, long] =
            lengths.map(Reading::mm);
        let [kg, per_metre, count, shelves, rating, gravity] = figures.map(Figure::new);
        let inputs = Inputs {
            width, height, depth, thickness, weight, load, fixing, doors, hung, screw, stud, per_metre, count, shelves,
            back_inset: inset, hands_out: hands, lift_from: from, bevel_down: down, strip, stud_pitch: pitch,
            first_at: first, strip_length: long.clone(), screw_length: long, known_weight: kg.clone(),
            bevel: AngleReading::from(angle), twist: AngleReading::from(angle), pull_rating: rating.clone(),
            shear_rating: rating, own_gravity: gravity, levels: std::array::from_fn(|_| kg.clone()),
            ..Inputs::default()
        };
        if let Ok(answer) = solve(&inputs) {
            let finite = [answer.weighed.total_kg, answer.weighed.shut.out_mm, answer.pull.pull_n, answer.pull.prying];
            prop_assert!(finite.iter().all(|value| value.is_finite() && *value > 0.0), "{answer:?}");
            prop_assert!(answer.holds != Holds::Yes || answer.each.used.is_some_and(|used| used <= 1.0));
        }
    }

    /// The same cabinet given in inches weighs, pulls and holds the same.
    #[test]
    fn inches_change_nothing(wide in 320..640_i32, high in 400..800_i32, doors in prop::sample::select(Doors::ALL)) {
        let job = |length: &dyn Fn(i32) -> Reading| solve(&Inputs {
            width: length(wide),
            height: length(high),
            depth: length(224),
            thickness: length(11),
            back_inset: length(10),
            bevel_down: length(48),
            hands_out: length(192),
            lift_to: length(900),
            stud_pitch: length(256),
            strip_length: length(300),
            screw_length: length(48),
            doors,
            ..Inputs::default()
        });
        // Sixteenths of an inch, and the same in tenths of a micrometre.
        let inches = job(&|sixteenths| Reading::inches(&format!("{sixteenths}/16")));
        let metric = job(&|sixteenths| Reading::mm(&format!("{}/10000", sixteenths * 15_875)));
        prop_assert!(inches.is_ok());
        prop_assert_eq!(inches, metric);
    }
}
