use super::{Allow, Answer, By, Climate, Grain, Held, Inputs, Note, Set, solve};
use crate::caution::Caution;
use crate::measure::{Length, Quantity, Reading};
use crate::stock::materials::Choice;
use crate::stock::movement::Sheet;
use proptest::prelude::*;
use proptest::sample::select;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

fn close(got: f64, want: f64, within: f64, what: &str) {
    assert!((got - want).abs() <= within, "{what}: got {got}, want {want}");
}

/// A part of one's own wood by the meter: 0.5 % of 400 mm for each per cent, so 2 mm.
fn plain() -> Inputs {
    Inputs {
        species: Choice::Own,
        own_rate: "0.5".into(),
        width: Reading::mm("400"),
        by: By::Meter,
        made_moisture: "9".into(),
        dry_moisture: "7".into(),
        damp_moisture: "12".into(),
        bearing: Reading::mm("5"),
        spare: Reading::mm("1"),
        ..Inputs::default()
    }
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let air = Inputs {
        species: Choice::find("mdf").unwrap(),
        width: Reading::mm("0"),
        made: Climate::new("101", "?"),
        dry: Climate::new("-1", "90"),
        damp: Climate::new("", "-40 °F"),
        beside: Sheet::Own,
        own_sheet: "9".into(),
        bearing: Reading::mm("-1"),
        spare: Reading::mm("x"),
        ..Inputs::default()
    };
    let fields = |inputs: &Inputs| {
        let problems = solve(inputs).unwrap_err();
        problems.iter().map(|(field, _)| field.to_owned()).collect::<Vec<_>>().join(" ")
    };
    assert_eq!(
        fields(&air),
        "species width made.humidity made.temperature dry.humidity dry.temperature damp.humidity damp.temperature \
         own_sheet bearing spare"
    );
    let meter = Inputs {
        own_rate: "3".into(),
        made_moisture: "31".into(),
        dry_moisture: "-1".into(),
        damp_moisture: "wet".into(),
        set: Set::Slots,
        screw: Reading::mm("0"),
        to_screw: Reading::mm("201"),
        ..plain()
    };
    assert_eq!(fields(&meter), "own_rate made_moisture dry_moisture damp_moisture screw to_screw");
    assert_eq!(fields(&Inputs { damp_moisture: "6.9".into(), ..plain() }), "damp_moisture");
    assert_eq!(fields(&Inputs { damp: Climate::new("30", "20"), ..Inputs::default() }), "damp.humidity");
    assert_eq!(fields(&Inputs { bearing: Reading::mm("198"), ..plain() }), "bearing");
}

/// What is read from and to, both ends included.
#[test]
fn limits_are_met_exactly() {
    for inputs in [
        Inputs { made: Climate::new("0", "-5"), ..Inputs::default() },
        Inputs { made: Climate::new("100", "60"), ..Inputs::default() },
        Inputs { made_moisture: "0".into(), ..plain() },
        Inputs { made_moisture: "30".into(), ..plain() },
        Inputs { own_rate: "0".into(), ..plain() },
        Inputs { own_rate: "2".into(), ..plain() },
        Inputs { beside: Sheet::Own, own_sheet: "0".into(), ..plain() },
        Inputs { beside: Sheet::Own, own_sheet: "5".into(), ..plain() },
        Inputs { width: Reading::mm("20 m"), ..plain() },
        Inputs { damp_moisture: "7".into(), ..plain() },
        Inputs { set: Set::Slots, to_screw: Reading::mm("200"), ..plain() },
        Inputs { set: Set::Slots, held: Held::OneEdge, to_screw: Reading::mm("400"), ..plain() },
        // 400 − 2 · (197.9 + 2): a fifth of a millimetre shows.
        Inputs { bearing: Reading::mm("197.9"), ..plain() },
    ] {
        assert!(solve(&inputs).is_ok(), "{:?}", solve(&inputs));
    }
    let bad = |inputs: Inputs| -> Vec<String> {
        solve(&inputs).unwrap_err().iter().map(|(field, problem)| format!("{field}: {problem}")).collect()
    };
    let air =
        bad(Inputs { made: Climate::new("100.1", "60.1"), dry: Climate::new("-0.1", "-5.1"), ..Inputs::default() });
    let starts = [
        "made.humidity: At most 100 % is accepted: ",
        "made.temperature: At most 60 is accepted: in °C, ",
        "dry.humidity: At least 0 % is needed: ",
        "dry.temperature: At least -5 is needed: in °C, ",
    ];
    assert_eq!(air.len(), starts.len(), "{air:?}");
    for (got, want) in air.iter().zip(starts) {
        assert!(got.starts_with(want), "{got} is not {want}");
    }
    for (inputs, want) in [
        (Inputs { width: Reading::mm("20000.1"), ..plain() }, "width: At most 20000 mm"),
        (
            Inputs { set: Set::Slots, held: Held::OneEdge, to_screw: Reading::mm("400.1"), ..plain() },
            "to_screw: At most 400 mm",
        ),
    ] {
        let got = bad(inputs);
        assert!(got.len() == 1 && got[0].starts_with(want), "{got:?} is not {want}");
    }
}

#[test]
fn grooves_have_room_for_the_dampest_day_and_hold_on_the_driest() {
    // Grows 6, shrinks 4 mm: 3 and 2 at each edge.
    let answer = solved(&plain());
    close(answer.grows_mm, 6.0, 1e-9, "grows");
    close(answer.shrinks_mm, 4.0, 1e-9, "shrinks");
    let Allow::Groove { depth, tongue, free, opening } = answer.allow else { panic!("{:?}", answer.allow) };
    assert_eq!((depth, tongue, free, opening), (mm("11"), mm("7"), mm("4"), mm("386")));
    let one = solved(&Inputs { held: Held::OneEdge, ..plain() }).allow;
    let want = Allow::Groove { depth: mm("16"), tongue: mm("9"), free: mm("7"), opening: mm("386") };
    assert_eq!(one, want, "400 − 9 − 5");
}

#[test]
fn gaps_and_slots_follow_the_movement() {
    let gap = solved(&Inputs { set: Set::Gap, held: Held::OneEdge, ..plain() }).allow;
    assert_eq!(gap, Allow::Gap { made: mm("7"), widest: mm("11"), least: mm("1") });
    // Half of the part is 200 mm from its middle: half of the movement, and the screw's 5 mm.
    let slot = |to_screw: &str, held| {
        solved(&Inputs { set: Set::Slots, held, to_screw: Reading::mm(to_screw), ..plain() }).allow
    };
    assert_eq!(slot("", Held::Middle), Allow::Slot { length: mm("10"), screw_at: mm("5.5"), from_held: mm("200") });
    assert_eq!(
        slot("100", Held::OneEdge),
        Allow::Slot { length: mm("7.5"), screw_at: mm("4"), from_held: mm("100") },
        "a quarter of 10 and of 6"
    );
}

#[test]
fn the_sheet_beside_it_moves_less() {
    let answer = solved(&Inputs::default());
    // Plywood 0.02 % for each 10 % of humidity, from 40 to 70 %: 0.06 % of 300 mm.
    close(answer.sheet_mm.unwrap(), 0.18, 1e-9, "plywood");
    assert!(answer.swing_mm > 10.0 * answer.sheet_mm.unwrap());
    assert_eq!(solved(&plain()).sheet_mm, None, "the meter knows no air");
    let own = solved(&Inputs { beside: Sheet::Own, ..plain() });
    close(own.sheet_mm.unwrap(), 0.4, 1e-9, "0.1 % of 400 mm");
}

#[test]
fn notes_name_what_is_special() {
    let has = |inputs: &Inputs, note| solved(inputs).notes.contains(&note);
    assert!(!has(&plain(), Note::OutOfRange) && solved(&plain()).in_range);
    for (inputs, note) in [
        (Inputs { damp_moisture: "14.1".into(), ..plain() }, Note::OutOfRange),
        (Inputs { dry_moisture: "5.9".into(), ..plain() }, Note::OutOfRange),
        (Inputs { grain: Grain::Along, ..plain() }, Note::Along),
        (Inputs { made_moisture: "13".into(), ..plain() }, Note::MadeOutside),
        (Inputs { made_moisture: "6.5".into(), ..plain() }, Note::MadeOutside),
    ] {
        assert!(!has(&plain(), note) && has(&inputs, note), "{note:?}");
    }
    assert!(has(&plain(), Note::PinTheMiddle) && !has(&Inputs { held: Held::OneEdge, ..plain() }, Note::PinTheMiddle));
    assert!(has(&Inputs::default(), Note::WideFlatSawn));
    assert!(!has(&Inputs { width: Reading::mm("150"), ..Inputs::default() }, Note::WideFlatSawn));
    assert!(!has(&Inputs { grain: Grain::QuarterSawn, ..Inputs::default() }, Note::WideFlatSawn));
    assert!(!has(&plain(), Note::WideFlatSawn), "of one's own wood nothing else is known");
    // As damp as on the dampest day, as dry as on the driest: it will be so again.
    assert!(!has(&Inputs { made_moisture: "12".into(), ..plain() }, Note::MadeOutside));
    assert!(!has(&Inputs { made_moisture: "7".into(), ..plain() }, Note::MadeOutside));
    // Along the grain it is the same whatever the moisture, and wherever it is held.
    let along = Inputs { grain: Grain::Along, made_moisture: "20".into(), damp_moisture: "16".into(), ..plain() };
    assert_eq!(solved(&along).notes, [Note::Along]);
}

/// A note is a sentence for the person at the bench.
#[test]
fn notes_are_told() {
    let told = |inputs: &Inputs| serde_json::to_value(solved(inputs).notes).unwrap();
    let along = Inputs { grain: Grain::Along, ..plain() };
    let want = "Along the grain wood moves by 0.1 to 0.2 % from green to dry: next to nothing indoors.";
    assert_eq!(told(&along), serde_json::json!([want]));
}

/// One's own rate as typed; white oak by the Wood Handbook, table 13-5: 0.00365 flat-sawn, 0.00180 quarter-sawn.
#[test]
fn rates_are_of_the_wood_and_its_grain() {
    let rate = |inputs: Inputs| solved(&inputs).rate_percent;
    close(rate(plain()), 0.5, 1e-9, "own");
    close(rate(Inputs::default()), 0.365, 1e-9, "flat-sawn");
    close(rate(Inputs { grain: Grain::QuarterSawn, ..Inputs::default() }), 0.180, 1e-9, "quarter-sawn");
}

#[test]
fn only_a_groove_is_cut_blind() {
    let cautions = |set| solved(&Inputs { set, ..plain() }).cautions;
    assert_eq!(cautions(Set::Grooves), [Caution::BlindCut, Caution::DustAndNoise, Caution::Estimate]);
    assert_eq!(cautions(Set::Gap), [Caution::DustAndNoise, Caution::Estimate]);
    assert_eq!(cautions(Set::Slots), [Caution::DustAndNoise, Caution::Estimate]);
}

#[test]
fn a_part_made_outside_moves_one_way_only() {
    let damp = solved(&Inputs { made_moisture: "13".into(), ..plain() });
    assert_eq!(damp.grows_mm, 0.0);
    close(damp.shrinks_mm, 12.0, 1e-9, "6 per cent of moisture at 2 mm");
    let along = solved(&Inputs { grain: Grain::Along, ..plain() });
    assert_eq!((along.grows_mm, along.shrinks_mm, along.swing_mm), (0.0, 0.0, 0.0));
}

#[test]
fn the_working_ends_in_the_answer_s_numbers() {
    for by in By::ALL {
        for set in Set::ALL {
            for held in Held::ALL {
                let answer = solved(&Inputs { by: *by, set: *set, held: *held, ..Inputs::default() });
                let gives = |what: &str| answer.working.0.iter().find(|step| step.what == what).map(|step| step.gives);
                assert_eq!(gives("From the driest to the dampest"), Some(Quantity::mm(answer.swing_mm)));
                assert_eq!(gives("Moisture as made"), Some(Quantity::percent(answer.made_percent)));
                let (what, length) = match answer.allow {
                    Allow::Groove { depth, .. } => ("Depth of the groove", depth),
                    Allow::Gap { made, .. } => ("Gap as made", made),
                    Allow::Slot { length, .. } => ("Length of the slot", length),
                };
                assert_eq!(gives(what), Some(length.into()));
                for step in &answer.working.0 {
                    for (symbol, _) in &step.given {
                        assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
                    }
                }
            }
        }
    }
}

fn woods() -> impl Strategy<Value = Choice> {
    let known = |choice: &Choice| crate::stock::movement::solid::coefficients(*choice).is_some();
    select(Choice::ALL.iter().copied().filter(known).collect::<Vec<_>>())
}

proptest! {
    #[test]
    fn twice_as_wide_moves_twice_as_far(species in woods(), width in 10_u32..2000, damp in 40_u32..100) {
        let with = |width: u32| {
            let damp = Climate::new(&damp.to_string(), "20");
            let width = Reading::mm(&width.to_string());
            solved(&Inputs { species, width, damp, set: Set::Gap, ..Inputs::default() }).swing_mm
        };
        close(with(2 * width), 2.0 * with(width), 1e-9 * with(width), "swing");
    }

    #[test]
    fn growing_and_shrinking_add_up_to_the_swing(made in 7_u32..=12, species in woods(), grain in select(Grain::ALL)) {
        let made_moisture = made.to_string().as_str().into();
        let answer = solved(&Inputs { species, grain, made_moisture, ..plain() });
        close(answer.grows_mm + answer.shrinks_mm, answer.swing_mm, 1e-9, "swing");
    }

    #[test]
    fn inches_and_fahrenheit_change_nothing(eighths in 8_u32..800, celsius in 0_i32..40, set in select(Set::ALL)) {
        let with = |width: Reading, celsius: &str| {
            let damp = Climate::new("70", celsius);
            solve(&Inputs { width, damp, set, bearing: Reading::mm("0"), ..Inputs::default() }).map_err(|_| ())
        };
        let inches = with(Reading::inches(&format!("{eighths}/8")), &format!("{celsius}"));
        let metric = with(Reading::mm(&format!("{eighths} * 25.4 / 8")), &format!("{celsius}"));
        prop_assert_eq!(&inches, &metric);
        let fahrenheit = with(Reading::inches(&format!("{eighths}/8")), &format!("{}/5 °F", celsius * 9 + 160));
        if let (Ok(one), Ok(other)) = (metric, fahrenheit) {
            close(one.swing_mm, other.swing_mm, 1e-9 * one.swing_mm.abs().max(1.0), "swing");
        }
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*", by in select(By::ALL), set in select(Set::ALL)) {
        let (reading, second) = (Reading::mm(&typed), Reading::mm(&other));
        let _ = solve(&Inputs {
            by,
            set,
            species: Choice::Own,
            own_rate: typed.as_str().into(),
            width: reading.clone(),
            made: Climate::new(&typed, &other),
            made_moisture: other.as_str().into(),
            bearing: second.clone(),
            spare: reading.clone(),
            screw: second,
            to_screw: reading,
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(big in any::<i64>(), small in 1_u64..u64::MAX, set in select(Set::ALL)) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        let _ = solve(&Inputs {
            set,
            width: reading.clone(),
            bearing: reading.clone(),
            spare: reading.clone(),
            screw: reading.clone(),
            to_screw: reading,
            ..Inputs::default()
        });
    }
}
