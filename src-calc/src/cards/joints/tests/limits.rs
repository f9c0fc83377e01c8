//! Where a note begins, and what is just still accepted.

use super::{eighteen, mm, solved};
use crate::cards::joints::{Inputs, Kind, Note, Spread, Stays, solve};
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
    let dowel = Inputs { count: "2".into(), ..eighteen(Kind::Dowel) };
    at(&dowel, |inputs, typed| inputs.dowel_diameter = typed, ["9", "9.1"], Note::Thick);
    at(&dowel, |inputs, typed| inputs.dowel_diameter = typed, ["6", "5.9"], Note::Slight);
    at(&dowel, |inputs, typed| inputs.end_distance = typed, ["32", "31.9"], Note::NearTheEnd);
    at(&dowel, |inputs, typed| inputs.end_distance = typed, ["50", "50.1"], Note::FarFromTheEnd);
    at(&dowel, |inputs, typed| inputs.length = typed, ["230", "230.1"], Note::FarApart);
    let single = Inputs { count: "1".into(), ..dowel };
    assert!(told(&single, Note::Single) && !told(&single, Note::FarFromTheEnd));

    let tenon =
        Inputs { edge_thickness: Reading::mm("60"), face_thickness: Reading::mm("60"), ..eighteen(Kind::LooseTenon) };
    let deep = |inputs: &mut Inputs, typed| (inputs.tenon_length, inputs.glue) = (typed, Reading::mm("0"));
    at(&tenon, deep, ["30", "29.9"], Note::TenonDepth);
    at(&tenon, deep, ["50", "50.1"], Note::TenonDepth);
    // One part alone is enough for it.
    let uneven = |inputs: &mut Inputs, typed| {
        (inputs.tenon_length, inputs.glue, inputs.face_depth) = (Reading::mm("40"), Reading::mm("0"), typed)
    };
    at(&tenon, uneven, ["15", "14.9"], Note::TenonDepth);
    at(&tenon, |inputs, typed| inputs.tenon_width = typed, ["20", "19.9"], Note::TenonWidth);
    at(&tenon, |inputs, typed| inputs.tenon_width = typed, ["50", "50.1"], Note::TenonWidth);
    // As wide as it is thick it still lies flat.
    assert!(solve(&Inputs { tenon_width: Reading::mm("5"), ..tenon }).is_ok());

    let screw = eighteen(Kind::ConnectingScrew);
    at(&screw, |inputs, typed| inputs.edge_thickness = typed, ["16", "15.9"], Note::ThinForScrew);
    at(&screw, |inputs, typed| inputs.screw_length = typed, ["48", "47.9"], Note::ShortReach);
    assert!(solve(&Inputs { shank: Reading::mm("5"), ..screw }).is_ok());

    let pocket = Inputs { shoulder: Reading::mm("18"), ..eighteen(Kind::PocketScrew) };
    let longest = solved(&pocket).screw.and_then(|screw| screw.longest).unwrap();
    // 15 mm of the face part are left of the skin, along a screw at 15°.
    assert!((longest.as_mm() - 18.0 - 15.0 / 15_f64.to_radians().cos()).abs() < 1e-5, "{longest}");
    let long = |by: &str| Inputs { screw_length: Reading::mm(&format!("{longest} {by}")), ..pocket.clone() };
    assert!(!told(&long(""), Note::ScrewTooLong) && told(&long("+ 0.1"), Note::ScrewTooLong));
}

#[test]
fn the_wanted_skin_itself_is_enough() {
    // A dowel of 6 in the middle of 14.6 leaves 4.3.
    let skin = |skin: &str| solved(&Inputs { skin: Reading::mm(skin), ..Inputs::default() }).stays;
    assert_eq!((skin("4.3"), skin("4.31")), (Stays::Inside, Stays::Thin));
}

#[test]
fn as_many_as_fit_in_steps_are_accepted() {
    // 240 between the ends: two steps of 96 and so three of them.
    let three = Inputs { spread: Spread::Steps, spacing: Reading::mm("100"), count: "3".into(), ..Inputs::default() };
    assert_eq!(solved(&three).marks, ["45", "141", "237"].map(mm));
}

/// A disc of 100 mm that goes 10 in cuts 60 long: the chord of a circle, 2·√(10·90).
#[test]
fn a_slot_is_a_chord_of_its_disc() {
    let twice = Inputs { glue: Reading::mm("0"), ..eighteen(Kind::Biscuit) };
    let deep = Inputs { face_depth: Reading::mm("10"), cutter: Reading::mm("100"), ..twice };
    let answer = solved(&deep);
    let deepest = answer.fixing.in_edge.max(answer.fixing.in_other).as_mm();
    assert!((answer.fixing.along.as_mm() - 2.0 * (deepest * (100.0 - deepest)).sqrt()).abs() < 1e-5);
    // A disc just twice as wide as the slot is deep reaches that far.
    let disc = |cutter: f64| Inputs { cutter: Reading::mm(&cutter.to_string()), ..deep.clone() };
    assert!(solve(&disc(2.0 * deepest)).is_ok() && solve(&disc(2.0 * deepest - 0.1)).is_err());
}

#[test]
fn every_kind_has_its_cautions() {
    use crate::caution::Caution;
    for (kind, wanted) in [
        (Kind::Dowel, vec![Caution::BlindHoles]),
        (Kind::LooseTenon, vec![Caution::RoutedSlot]),
        (Kind::Biscuit, vec![Caution::RoutedSlot]),
        (Kind::ConnectingScrew, vec![Caution::BlindHoles, Caution::DrivenScrew]),
        (Kind::PocketScrew, vec![Caution::BlindHoles, Caution::DrivenScrew]),
    ] {
        let all = [wanted, vec![Caution::SmallPartAtCutter, Caution::DustAndNoise]].concat();
        assert_eq!(solved(&eighteen(kind)).cautions, all, "{kind:?}");
    }
}
