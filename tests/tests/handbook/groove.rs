//! Grooves and rabbets: rows G of the project's handbook, section 9, worked there by script from `n = ceil(G / k)` and
//! `(G − k) / (n − 1)` (common practice, plane geometry), and the shares of its section 9 by hand.

use scantling::cards::groove::{Against, Answer, Cut, Deep, Inputs, Verdict, solve};
use scantling::measure::{Length, Reading};

#[track_caller]
fn answer(id: &str, change: impl FnOnce(&mut Inputs)) -> Answer {
    let mut inputs = Inputs { fit: Reading::mm("0"), part_width: Reading::default(), ..Inputs::default() };
    change(&mut inputs);
    solve(&inputs).unwrap_or_else(|problems| panic!("{id}: {problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// Width, kerf, passes, shift; and the last pass at `s + G − k` for a wall at 12 mm, by hand.
#[test]
fn rows_g_with_their_passes() {
    for (id, width, kerf, passes, shift, last) in [
        ("G-1", "6.0", "3.2", 2, Some("2.8"), "14.8"),
        ("G-2", "18.3", "3.2", 6, Some("3.02"), "27.1"),
        ("G-3", "12.7", "3.175", 4, Some("3.175"), "21.525"),
        ("G-4", "3.2", "3.2", 1, None, "12"),
    ] {
        let answer = answer(id, |inputs| (inputs.panel, inputs.kerf) = (Reading::mm(width), Reading::mm(kerf)));
        assert_eq!(answer.passes.len(), passes, "{id}");
        assert_eq!(answer.shift, shift.map(mm), "{id}");
        assert_eq!(answer.passes.last().map(|pass| pass.near), Some(mm(last)), "{id}");
    }
}

/// G-3 in inches: a half inch with a blade of an eighth is four kerfs side by side, exactly.
#[test]
fn row_g_3_in_inches() {
    let answer = answer("G-3", |inputs| (inputs.panel, inputs.kerf) = (Reading::inches("1/2"), Reading::inches("1/8")));
    assert_eq!((answer.passes.len(), answer.shift), (4, Some(Length::inches(1, 8).unwrap())));
    assert_eq!(answer.overlap, Some(Length::ZERO), "nothing overlaps: a ridge may be left");
}

/// Section 9: a third in sides of 18 mm is 6 mm; at most half; the rabbet of a back takes half to two thirds.
#[test]
fn shares_of_the_thickness() {
    for (cut, deep, depth, verdict) in [
        (Cut::Groove, Deep::Third, "6", Verdict::Good),
        (Cut::Groove, Deep::Half, "9", Verdict::Good),
        (Cut::Groove, Deep::TwoThirds, "12", Verdict::TooDeep),
        (Cut::Rabbet, Deep::Half, "9", Verdict::Good),
        (Cut::Rabbet, Deep::TwoThirds, "12", Verdict::Good),
    ] {
        let id = format!("{cut:?} {deep:?}");
        let answer = answer(&id, |inputs| {
            (inputs.cut, inputs.deep, inputs.thickness) = (cut, deep, Reading::mm("18"));
        });
        assert_eq!((answer.depth, answer.verdict), (mm(depth), verdict), "{id}");
    }
}

/// Section 9: a groove centred in the thickness of an edge has its near wall at (Te − G) / 2, and then both ways of
/// running it along the fence give the same passes. By hand for 18 and 6: 6 mm.
#[test]
fn a_centred_groove_is_the_same_from_both_edges() {
    let from = |against| {
        let answer = answer("centred", |inputs| {
            (inputs.panel, inputs.distance) = (Reading::mm("6"), Reading::mm("(18 - 6) / 2"));
            (inputs.against, inputs.part_width) = (against, Reading::mm("18"));
        });
        answer.passes.iter().map(|pass| pass.near).collect::<Vec<_>>()
    };
    assert_eq!(from(Against::NearEdge), [mm("6"), mm("8.8")]);
    assert_eq!(from(Against::FarEdge), from(Against::NearEdge));
}

/// Section 5: the groove of a back is the measured panel and 0.1 to 0.3 mm; and the back of the cupboard then slides in
/// past a bottom cut back to the groove's front wall. By hand: 330 − 12 − 4.2 = 313.8.
#[test]
fn a_back_that_slides_in() {
    let answer = answer("back", |inputs| {
        (inputs.panel, inputs.fit, inputs.part_width) = (Reading::mm("3.9"), Reading::mm("0.3"), Reading::mm("330"));
    });
    assert_eq!((answer.width, answer.ripped.unwrap().width), (mm("4.2"), mm("313.8")));
}
