//! What is just still accepted, where a note begins, and what is shown of a shelf that can be worked out by hand.

use super::{bare, close, problem, solved};
use crate::cards::shelf::{Found, Grain, Inputs, Judged, Limit, Load, Note, PartOf, Place, Strip, Support, solve};
use crate::caution::Caution;
use crate::measure::{Length, Reading};
use crate::stock::materials::{Choice, Values};

fn mm(millimetres: i64) -> Length {
    Length::mm(millimetres, 1).unwrap()
}

fn found(id: &str) -> Choice {
    Choice::find(id).unwrap()
}

/// Weightless, 300 by 20 of 8000 MPa: I = 300 · 20³ / 12 = 200 000 mm⁴, EI = 1.6 · 10⁹ N·mm², W = 20 000 mm³. On a
/// span of 1000 lies 1000 / 9.80665 kg a metre, which is 1 N/mm, so that it sags by 5 · 10¹² / (384 EI) = 8.138 020 8 at
/// once and bends with 1000² / 8 = 125 000 N·mm, which is 6.25 MPa.
fn plain() -> Inputs {
    Inputs {
        depth: Reading::mm("300"),
        thickness: Reading::mm("20"),
        span: Reading::mm("1000"),
        per_metre: "101.9716212978".into(),
        own_creep: "0.6".into(),
        ..bare()
    }
}

const SAG_MM: f64 = 5e12 / (384.0 * 1.6e9);
const NEAR: f64 = 1e-9;

/// The value itself is accepted; the next one is not.
#[test]
fn the_most_and_the_least_themselves_are_accepted() {
    type Change = fn(&mut Inputs, &str);
    for (field, accepted, beyond, change) in [
        ("thickness", "300", "300.1", (|inputs, typed| inputs.thickness = Reading::mm(typed)) as Change),
        ("depth", "3000", "3000.1", |inputs, typed| inputs.depth = Reading::mm(typed)),
        ("span", "20000", "20000.1", |inputs, typed| inputs.span = Reading::mm(typed)),
        ("strip_width", "500", "500.1", |inputs, typed| {
            (inputs.strip, inputs.strip_width) = (Strip::Front, Reading::mm(typed));
        }),
        ("strip_height", "1000", "1000.1", |inputs, typed| {
            (inputs.strip, inputs.strip_height) = (Strip::Front, Reading::mm(typed));
        }),
        // One's own limit is looked at wherever there is one.
        ("own_limit", "1000", "1000.1", |inputs, typed| inputs.own_limit = Reading::mm(typed)),
        ("own_limit", "0.1", "0", |inputs, typed| inputs.own_limit = Reading::mm(typed)),
        ("own_stiffness", "1000000", "1000001", |inputs, typed| inputs.own_stiffness = typed.into()),
        ("own_stiffness", "1", "0.9", |inputs, typed| inputs.own_stiffness = typed.into()),
        ("own_strength", "10000", "10001", |inputs, typed| inputs.own_strength = typed.into()),
        ("own_strength", "0.1", "0.09", |inputs, typed| inputs.own_strength = typed.into()),
        ("own_density", "25000", "25001", |inputs, typed| inputs.own_density = typed.into()),
        ("own_density", "0", "-0.1", |inputs, typed| inputs.own_density = typed.into()),
        ("own_creep", "10", "10.1", |inputs, typed| inputs.own_creep = typed.into()),
        ("own_creep", "0", "-0.1", |inputs, typed| inputs.own_creep = typed.into()),
        ("own_divisor", "100", "100.1", |inputs, typed| inputs.own_divisor = typed.into()),
        ("own_divisor", "1", "0.9", |inputs, typed| inputs.own_divisor = typed.into()),
        ("per_metre", "5000", "5000.1", |inputs, typed| inputs.per_metre = typed.into()),
        ("per_metre", "0", "-0.1", |inputs, typed| inputs.per_metre = typed.into()),
        ("middle", "5000", "5000.1", |inputs, typed| (inputs.load, inputs.middle) = (Load::Middle, typed.into())),
        ("middle", "0", "-0.1", |inputs, typed| (inputs.load, inputs.middle) = (Load::Middle, typed.into())),
        ("share", "100", "100.1", |inputs, typed| inputs.share = typed.into()),
        ("share", "0", "-0.1", |inputs, typed| inputs.share = typed.into()),
    ] {
        let with = |typed: &str| {
            let mut inputs = plain();
            change(&mut inputs, typed);
            inputs
        };
        assert!(solve(&with(accepted)).is_ok(), "{field} {accepted}");
        assert!(!problem(&with(beyond), field).is_empty(), "{field} {beyond}");
    }
}

/// One's own figures matter for the board or for a strip that is there, and for nothing else.
#[test]
fn own_figures_are_read_where_something_is_made_of_them() {
    let strip = |strip| Inputs { strip, strip_material: Choice::Own, own_creep: "?".into(), ..Inputs::default() };
    assert_eq!(solved(&strip(Strip::None)).would_hold.least_strip_height, None);
    assert!(!problem(&strip(Strip::Under), "own_creep").is_empty());
    let pine = Inputs { strip_material: found("pine_scots"), ..strip(Strip::Under) };
    assert!(solve(&pine).is_ok());
}

/// The usual value itself is usual; a tenth beyond is not.
#[test]
fn notes_begin_beyond_a_value() {
    type Change = fn(&mut Inputs, &str);
    let told = |inputs: &Inputs, note: Note| solved(inputs).notes.contains(&note);
    for (note, usual, beyond, change) in [
        // Twenty thicknesses of 20, by the bay.
        (Note::Stocky, "400", "399.9", (|inputs, typed| inputs.span = Reading::mm(typed)) as Change),
        (Note::Stocky, "800", "799.9", |inputs, typed| {
            (inputs.support, inputs.span) = (Support::OneDivider, Reading::mm(typed));
        }),
        // A fiftieth of 1000 is 20: 20 / 8.138 020 8 · 101.971 621 is 250.605 kg a metre without creep …
        (Note::PastFormula, "250.5", "250.7", |inputs, typed| {
            (inputs.per_metre, inputs.own_creep) = (typed.into(), "0".into());
        }),
        // … and 156.628 where it grows by 0.6.
        (Note::PastFormula, "156.6", "156.7", |inputs, typed| inputs.per_metre = typed.into()),
        (Note::OneStripOnDeepShelf, "400", "400.1", |inputs, typed| {
            (inputs.strip, inputs.depth) = (Strip::Front, Reading::mm(typed));
        }),
    ] {
        let with = |typed: &str| {
            let mut inputs = plain();
            change(&mut inputs, typed);
            told(&inputs, note)
        };
        assert!(!with(usual) && with(beyond), "{note:?}: {usual} and {beyond}");
    }
    for strip in [Strip::None, Strip::FrontAndBack, Strip::Under] {
        assert!(!told(&Inputs { strip, depth: Reading::mm("900"), ..plain() }, Note::OneStripOnDeepShelf), "{strip:?}");
    }
}

/// Each note goes with what it speaks of.
#[test]
fn notes_follow_the_choices() {
    let told = |inputs: &Inputs, note: Note| solved(inputs).notes.contains(&note);
    // Tables of boards are for boards that lie flat; a strip of solid wood is sawn either way.
    for (strip, material, on_edge) in [
        (Strip::Front, "plywood_birch", true),
        (Strip::FrontAndBack, "mdf", true),
        (Strip::Under, "plywood_birch", false),
        (Strip::None, "plywood_birch", false),
        (Strip::Front, "pine_scots", false),
        (Strip::Under, "pine_scots", false),
        (Strip::Front, "own", false),
    ] {
        let inputs = Inputs { strip, strip_material: found(material), ..plain() };
        assert_eq!(told(&inputs, Note::StripOnEdge), on_edge, "{strip:?} of {material}");
    }
    for (material, values) in
        [("mdf", Values::Minimum), ("plywood_birch", Values::Design), ("mdf_us", Values::Mean), ("own", Values::Mean)]
    {
        let inputs = Inputs { material: found(material), ..plain() };
        assert_eq!(told(&inputs, Note::LeastValues), values == Values::Minimum, "{material}");
    }
    for (support, held) in [
        (Support::Loose, false),
        (Support::FixedBothEnds, true),
        (Support::FixedOneEnd, true),
        (Support::OneDivider, false),
        (Support::TwoDividers, false),
    ] {
        let answer = solved(&Inputs { support, ..plain() });
        assert_eq!(answer.notes.contains(&Note::HeldEnds), held, "{support:?}");
        assert_eq!(answer.notes.contains(&Note::Uneven), support.bays() > 1, "{support:?}");
        // Evenly filled, every support bears; with nothing on it none does, but none is pulled either.
        assert!(!answer.notes.contains(&Note::LiftsOff), "{support:?}");
        let empty = solved(&Inputs { support, per_metre: "0".into(), ..plain() });
        assert!(!empty.notes.contains(&Note::LiftsOff) && !empty.notes.contains(&Note::Uneven), "{support:?}");
        assert_eq!(empty.uneven_mm, None);
    }
    assert_eq!(solved(&plain()).notes, []);
    assert_eq!(solved(&plain()).cautions, [Caution::ShelfLoad, Caution::Estimate]);
}

#[test]
fn notes_are_whole_sentences() {
    let off = Note::OffTable { label: "15 mm, 11 plies" }.to_string();
    assert!(off.contains("the nearest is used: 15 mm, 11 plies."), "{off}");
    let nameless = Note::OffTable { label: "" }.to_string();
    assert!(!nameless.contains("nearest") && nameless.ends_with("all the same."), "{nameless}");
    for (note, word) in [
        (Note::LeastValues, "at least"),
        (Note::StrengthUnknown, "No strength"),
        (Note::StripOnEdge, "on edge"),
        (Note::OneStripOnDeepShelf, "one strip"),
        (Note::Stocky, "twenty thicknesses"),
        (Note::PastFormula, "fiftieth"),
        (Note::LiftsOff, "lifts off"),
        (Note::Uneven, "every other bay"),
        (Note::HeldEnds, "Held ends"),
    ] {
        let sentence = note.to_string();
        assert!(sentence.contains(word) && sentence.ends_with('.'), "{sentence}");
    }
}

#[test]
fn a_shelf_in_numbers() {
    let answer = solved(&plain());
    for (got, want, what) in [
        (answer.instant_mm, SAG_MM, "at once"),
        (answer.long_term_mm, SAG_MM * 1.6, "after years"),
        // 384 · 1.6 · 10⁹ · 1000 / (5 · 10¹²), and that by 1.6.
        (answer.instant_ratio, 122.88, "ratio"),
        (answer.long_term_ratio, 76.8, "ratio after years"),
        (answer.deepest_at_mm, 500.0, "the middle"),
        (answer.load_kg, 101.971_621_297_8, "load"),
    ] {
        close(got, want, NEAR, what);
    }
    assert_eq!((answer.own_weight_kg, answer.uneven_mm), (0.0, None));
    assert_eq!((answer.span, answer.bay, answer.thickness, answer.depth), (mm(1000), mm(1000), mm(20), mm(300)));
    // 600 kg/m³ · 0.3 · 0.02 · 1 m³, and two strips of 0.02 · 0.04 in front and behind.
    let heavy = Inputs {
        own_density: "600".into(),
        strip_material: Choice::Own,
        strip_width: Reading::mm("20"),
        strip_height: Reading::mm("40"),
        load: Load::Middle,
        ..plain()
    };
    close(solved(&heavy).own_weight_kg, 3.6, NEAR, "own weight");
    close(solved(&heavy).load_kg, 12.0, NEAR, "load in the middle");
    for (strip, kg) in [(Strip::Front, 0.48), (Strip::Under, 0.48), (Strip::FrontAndBack, 0.96)] {
        close(solved(&Inputs { strip, ..heavy.clone() }).own_weight_kg, 3.6 + kg, NEAR, "with strips");
    }
    let oak = solved(&Inputs { material: found("oak_european"), ..plain() }).board;
    assert_eq!((oak.name, oak.label, oak.source.is_some()), ("European oak", "", true));
    let own = solved(&plain()).board;
    assert_eq!((own.name, own.label, own.source, own.values), ("", "", None, None));
}

/// 6.25 MPa against a quarter of the strength.
#[test]
fn strength_is_held_against_the_stress() {
    for (strength, holds) in [("25.01", true), ("24.99", false)] {
        let own_limit = Reading::mm("100");
        let answer = solved(&Inputs { own_strength: strength.into(), limit: Limit::Own, own_limit, ..plain() });
        let [board] = &answer.strength[..] else { panic!("{:?}", answer.strength) };
        let allowed: f64 = strength.parse::<f64>().unwrap() / 4.0;
        assert_eq!((board.part, board.divisor, board.holds), (PartOf::Board, 4.0, Some(holds)));
        close(board.stress_mpa, 6.25, NEAR, "stress");
        close(board.allowed_mpa.unwrap(), allowed, NEAR, "allowed");
        close(board.used_percent.unwrap(), 625.0 / allowed, NEAR, "used");
        assert_eq!(answer.holds, holds, "{strength}");
    }
    // Across the strands of OSB/4 nobody has published one: only the sag is judged.
    let light = Inputs { per_metre: "1".into(), limit: Limit::Span200, ..plain() };
    let osb = Inputs { material: found("osb_4"), grain: Grain::Across, ..light };
    let answer = solved(&osb);
    let [board] = &answer.strength[..] else { panic!("{:?}", answer.strength) };
    assert_eq!((board.strength_mpa, board.allowed_mpa, board.used_percent, board.holds), (None, None, None, None));
    assert!(answer.holds && answer.notes.contains(&Note::StrengthUnknown));
    let along = Inputs { grain: Grain::Along, ..osb };
    assert!(!solved(&along).notes.contains(&Note::StrengthUnknown));
}

/// 31.325 682 kg a metre are 0.3072 N/mm: 2.5 at once, 4 after years. A 600th of 1000 is 1.667, a 360th 2.778, a 300th
/// 3.333, a 200th 5.
#[test]
fn every_limit_is_judged_on_both_days() {
    let shelf = Inputs { per_metre: "31.325682".into(), own_limit: Reading::mm("2.6"), ..plain() };
    let (yes, no) = (true, false);
    let want = [
        (Limit::Visible, 1000.0 / 600.0, no, no),
        (Limit::Span360, 1000.0 / 360.0, yes, no),
        (Limit::Span300, 1000.0 / 300.0, yes, no),
        (Limit::Span200, 5.0, yes, yes),
        (Limit::Own, 2.6, yes, no),
    ];
    for (chosen, _, instant, long_term) in want {
        for (judged, holds) in [(Judged::Instant, instant), (Judged::LongTerm, long_term)] {
            let answer = solved(&Inputs { limit: chosen, judged, ..shelf.clone() });
            assert_eq!(answer.holds, holds, "{chosen:?} {judged:?}");
            for (got, want) in answer.verdicts.iter().zip(want) {
                assert_eq!((got.limit, got.instant, got.long_term), (want.0, want.2, want.3));
                assert_eq!(got.chosen, got.limit == chosen);
                close(got.allowed_mm, want.1, NEAR, "allowed");
            }
            assert_eq!(answer.verdicts.len(), want.len());
        }
    }
    assert_eq!(solved(&plain()).verdicts.len(), 4);
    // One's own limit is by the millimetre, to the last hundredth.
    let own = |limit: &str| {
        solved(&Inputs { limit: Limit::Own, own_limit: Reading::mm(limit), judged: Judged::Instant, ..plain() }).holds
    };
    assert_eq!(["8.13", "8.14"].map(own), [false, true]);
}

/// Held to a 200th at once. The span: 5 L³ · 200 ≤ 384 EI, so L ≤ ³√614 400 000, between 850 and 851. The thickness on
/// 1000: t³ ≥ 5 · 10¹² · 12 / (384 · 8000 · 300 · 5) = 13 020.8, between 23 and 24.
#[test]
fn what_would_hold_is_the_last_mark_that_does() {
    let shelf = Inputs { limit: Limit::Span200, judged: Judged::Instant, strip_material: Choice::Own, ..plain() };
    let would = solved(&shelf).would_hold;
    assert_eq!((would.longest_span, would.least_thickness), (Found::At(mm(850)), Found::At(mm(24))));
    assert!(matches!(would.least_strip_height, Some(Found::At(height)) if height > mm(20)), "{would:?}");
    // Next to nothing on it: any span up to 5 m, the first mark of thickness, and no strip.
    let light = solved(&Inputs { per_metre: "0".into(), ..shelf.clone() }).would_hold;
    assert_eq!((light.longest_span, light.least_thickness), (Found::All(mm(5000)), Found::At(mm(1))));
    assert_eq!(light.least_strip_height, Some(Found::At(Length::ZERO)));
    // Five tonnes a metre on 1 MPa and 0.1 MPa: nothing does.
    let weak = Inputs {
        per_metre: "5000".into(),
        own_stiffness: "1".into(),
        own_strength: "0.1".into(),
        own_divisor: "100".into(),
        depth: Reading::mm("1"),
        thickness: Reading::mm("1"),
        ..shelf
    };
    let none = solved(&weak).would_hold;
    assert_eq!((none.longest_span, none.least_thickness), (Found::None(mm(1)), Found::None(mm(100))));
    assert_eq!(none.least_strip_height, Some(Found::None(mm(250))));
}

/// The line of an even load: w x (L³ − 2 L x² + x³) / 24 EI, at forty steps of 25.
#[test]
fn the_picture_s_line_is_the_curve() {
    let line = solved(&plain()).line;
    assert_eq!(line.len(), 41);
    for (at, x) in [(0, 0.0), (1, 25.0), (10, 250.0), (20, 500.0), (30, 750.0), (40, 1000.0)] {
        let Place { along_mm, instant_mm, long_term_mm } = line[at];
        let want = x * (1e9 - 2000.0 * x * x + x * x * x) / (24.0 * 1.6e9);
        for (got, want, what) in
            [(along_mm, x, "along"), (instant_mm, want, "at once"), (long_term_mm, want * 1.6, "after years")]
        {
            assert!((got - want).abs() < 1e-8, "{what} at {x}: got {got}, by hand {want}");
        }
    }
}
