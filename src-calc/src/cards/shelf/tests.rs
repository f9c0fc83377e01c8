use super::{Answer, Found, Grain, Inputs, Judged, Limit, Load, Note, Strip, Support, solve};
use crate::measure::{Graduation, Length, Reading};
use crate::stock::materials::Choice;
use proptest::prelude::*;
use proptest::sample::select;

mod limits;
mod statics;

/// A weightless shelf of our own material: E 8000 MPa, strength so high that only the sag decides.
fn bare() -> Inputs {
    Inputs {
        material: Choice::Own,
        own_stiffness: "8000".into(),
        own_density: "0".into(),
        own_strength: "5000".into(),
        load: Load::PerMetre,
        ..Inputs::default()
    }
}

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn close(got: f64, want: f64, relative: f64, what: &str) {
    assert!((got - want).abs() <= relative * want.abs(), "{what}: got {got}, want {want}");
}

fn problem(inputs: &Inputs, field: &str) -> String {
    solve(inputs).unwrap_err().of(field).map(ToString::to_string).unwrap_or_default()
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let inputs = Inputs {
        thickness: Reading::mm("0"),
        depth: Reading::mm("-330"),
        span: Reading::mm("900 m"),
        load: Load::PerMetre,
        per_metre: "-1".into(),
        share: "101".into(),
        limit: Limit::Own,
        ..Inputs::default()
    };
    let problems = solve(&inputs).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    assert_eq!(fields, ["thickness", "depth", "span", "per_metre", "share", "own_limit"]);
}

#[test]
fn fields_that_the_choices_do_not_call_for_are_left_alone() {
    let inputs = Inputs {
        per_metre: "?".into(),
        middle: "?".into(),
        strip_width: Reading::mm("?"),
        own_stiffness: "?".into(),
        ..Inputs::default()
    };
    let answer = solved(&inputs);
    assert_eq!(answer.would_hold.least_strip_height, None);
    assert!(problem(&Inputs { strip: Strip::Front, ..inputs.clone() }, "strip_width").len() > 10);
    assert!(problem(&Inputs { material: Choice::Own, ..inputs }, "own_stiffness").len() > 10);
}

#[test]
fn solid_wood_across_the_grain_is_refused_and_plywood_is_not() {
    let oak = Choice::find("oak_european").unwrap();
    let across = Inputs { material: oak, grain: Grain::Across, ..Inputs::default() };
    assert!(problem(&across, "grain").contains("along the span"));
    let plywood = solved(&Inputs { grain: Grain::Across, ..Inputs::default() });
    assert!(plywood.instant_mm > solved(&Inputs::default()).instant_mm);
}

#[test]
fn the_measured_thickness_picks_the_line_of_the_table() {
    for (thickness, label, off) in [
        ("14.6", "15 mm, 11 plies", false),
        ("17.1", "18 mm, 13 plies", false),
        ("16", "15 mm, 11 plies", true),
        ("16.5", "18 mm, 13 plies", true),
        ("60", "30 mm, 21 plies", true),
    ] {
        let answer = solved(&Inputs { thickness: Reading::mm(thickness), ..Inputs::default() });
        assert_eq!(answer.board.label, label, "{thickness}");
        assert_eq!(answer.notes.iter().any(|note| matches!(note, Note::OffTable { .. })), off, "{thickness}");
    }
}

#[test]
fn a_load_in_one_bay_lifts_the_far_end() {
    let inputs = Inputs { load: Load::Middle, support: Support::OneDivider, ..bare() };
    let answer = solved(&inputs);
    // Statics of two spans, P in the middle of the first: 13/32, 22/32 and −3/32 of it.
    for (carried, want) in answer.supports.iter().zip([13.0, 22.0, -3.0]) {
        close(carried.mass_kg, 12.0 * want / 32.0, 1e-12, "reaction");
    }
    assert!(answer.notes.contains(&Note::LiftsOff));
}

#[test]
fn filling_every_other_bay_sags_more_than_filling_all() {
    for support in [Support::OneDivider, Support::TwoDividers] {
        let answer = solved(&Inputs { support, ..bare() });
        let uneven = answer.uneven_mm.unwrap();
        assert!(uneven > answer.instant_mm * 1.3, "{support:?}");
        assert!(uneven < solved(&Inputs { span: Reading::mm("400"), ..bare() }).instant_mm * 1.01);
    }
    assert_eq!(solved(&bare()).uneven_mm, None);
}

#[test]
fn half_the_time_creeps_half_as_much() {
    // Handbook row X-6: d_inst 2 mm of MDF, there half the time, is 4.25 mm in the long run.
    let answer = solved(&Inputs { own_creep: "2.25".into(), share: "50".into(), ..bare() });
    close(answer.long_term_mm, answer.instant_mm * 4.25 / 2.0, 1e-12, "long term");
}

#[test]
fn the_working_ends_in_the_answer_s_numbers() {
    for inputs in [
        Inputs::default(),
        Inputs { strip: Strip::Front, share: "40".into(), ..Inputs::default() },
        Inputs { load: Load::Middle, support: Support::TwoDividers, share: "40".into(), ..Inputs::default() },
    ] {
        let answer = solved(&inputs);
        let line = |what: &str| answer.working.0.iter().find(|step| step.what == what).unwrap().gives;
        assert_eq!(line("Sag on the first day"), crate::measure::Quantity::mm(answer.instant_mm));
        assert_eq!(line("Sag after years"), crate::measure::Quantity::mm(answer.long_term_mm));
    }
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for support in Support::ALL {
        for load in Load::ALL {
            for strip in Strip::ALL {
                let inputs = Inputs { support: *support, load: *load, strip: *strip, ..Inputs::default() };
                for step in solved(&inputs).working.0 {
                    for (symbol, _) in &step.given {
                        assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
                    }
                }
            }
        }
    }
}

fn support() -> impl Strategy<Value = Support> {
    select(Support::ALL)
}

/// Any shelf that could stand in a shop.
fn shelves() -> impl Strategy<Value = Inputs> {
    let choices = (
        select(Choice::ALL),
        support(),
        select(Load::ALL),
        select(Limit::ALL),
        select(Judged::ALL),
        select(Graduation::ALL),
    );
    let sizes = (30_u32..400, 1000_u32..6000, 2000_u32..30_000, 0_u32..600, 0_u32..=100);
    (choices, sizes).prop_map(|((material, support, load, limit, judged, graduation), sizes)| {
        let (thickness, depth, span, mass, share) = sizes;
        let tenths = |tenths: u32| Reading::mm(&format!("{tenths}/10"));
        Inputs {
            material,
            support,
            load,
            limit,
            judged,
            graduation,
            thickness: tenths(thickness),
            depth: tenths(depth),
            span: tenths(span),
            per_metre: mass.to_string().as_str().into(),
            middle: mass.to_string().as_str().into(),
            share: share.to_string().as_str().into(),
            own_limit: Reading::mm("3"),
            ..Inputs::default()
        }
    })
}

fn shown(length: Length) -> Reading {
    Reading::mm(&length.to_string())
}

proptest! {
    #[test]
    fn twice_the_span_sags_sixteen_times_as_much(support in support(), span in 200_u32..2000) {
        let with = |mm: u32| solved(&Inputs { support, span: Reading::mm(&mm.to_string()), ..bare() }).instant_mm;
        close(with(2 * span), 16.0 * with(span), 1e-9, "sag");
    }

    #[test]
    fn inches_and_pounds_change_nothing(inputs in shelves()) {
        let Ok(metric) = solve(&inputs) else { return Ok(()) };
        let inch = |reading: &Reading| {
            let over = reading.length().unwrap().ratio(Length::inches(1, 1).unwrap()).unwrap();
            Reading::inches(&format!("{}/{}", over.numerator(), over.denominator()))
        };
        let imperial = solved(&Inputs {
            thickness: inch(&inputs.thickness),
            depth: inch(&inputs.depth),
            span: inch(&inputs.span),
            ..inputs.clone()
        });
        prop_assert_eq!(metric, imperial);
    }

    #[test]
    fn what_would_hold_holds_and_one_mark_less_does_not(inputs in shelves()) {
        let Ok(answer) = solve(&inputs) else { return Ok(()) };
        let step = inputs.graduation.step();
        let weaker = [
            (answer.would_hold.longest_span, 1, 0),
            (answer.would_hold.least_thickness, -1, 1),
            (answer.would_hold.least_strip_height.unwrap_or(Found::None(step)), -1, 2),
        ];
        for (found, one_more, what) in weaker {
            let with = |length: Length| {
                let mut inputs = inputs.clone();
                match what {
                    0 => inputs.span = shown(length),
                    1 => inputs.thickness = shown(length),
                    _ if length.is_zero() => {}
                    _ => (inputs.strip, inputs.strip_height) = (Strip::Front, shown(length)),
                }
                solve(&inputs).is_ok_and(|answer| answer.holds)
            };
            match found {
                Found::At(mark) => {
                    prop_assert!(with(mark), "{what}: {mark} should hold");
                    let next = mark.plus(step.times(one_more, 1).unwrap()).unwrap();
                    if next.is_positive() {
                        prop_assert!(!with(next), "{what}: {next} should not hold");
                    }
                }
                Found::All(mark) => prop_assert!(with(mark)),
                Found::None(mark) => prop_assert!(!with(mark)),
            }
        }
    }

    #[test]
    fn the_line_s_deepest_place_is_the_sag(inputs in shelves()) {
        let Ok(answer) = solve(&inputs) else { return Ok(()) };
        let deepest = answer.line.iter().map(|place| place.long_term_mm).fold(0.0, f64::max);
        prop_assert!(deepest <= answer.long_term_mm * (1.0 + 1e-9));
        prop_assert!(deepest >= answer.long_term_mm * 0.98);
        let carried: f64 = answer.supports.iter().map(|support| support.mass_kg).sum();
        prop_assert!((carried - answer.own_weight_kg - answer.load_kg).abs() <= 1e-9 * carried.abs().max(1.0));
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*") {
        let reading = Reading::mm(&typed);
        let _ = solve(&Inputs {
            thickness: reading.clone(),
            span: Reading::mm(&other),
            strip: Strip::Under,
            strip_height: reading,
            load: Load::PerMetre,
            per_metre: other.as_str().into(),
            own_stiffness: typed.as_str().into(),
            material: Choice::Own,
            ..Inputs::default()
        });
    }
}
