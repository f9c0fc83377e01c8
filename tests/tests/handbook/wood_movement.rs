//! Rows V and E: change of width, and the moisture that air gives. Each value must be met to within half of its last
//! digit.

use crate::shelf::prints;
use scantling::cards::wood_movement::{Allow, Answer, By, Climate, Grain, Inputs, Set, solve};
use scantling::measure::Reading;
use scantling::stock::materials::Choice;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// The change of width between two moistures, growth above nothing.
fn change(species: &str, grain: Grain, width: Reading, [from, to]: [&str; 2]) -> f64 {
    let (low, high) = if from.parse::<f64>().unwrap() < to.parse().unwrap() { (from, to) } else { (to, from) };
    let answer = solved(&Inputs {
        species: Choice::find(species).unwrap(),
        grain,
        width,
        by: By::Meter,
        made_moisture: from.into(),
        dry_moisture: low.into(),
        damp_moisture: high.into(),
        ..Inputs::default()
    });
    assert!(answer.in_range && (answer.grows_mm == 0.0 || answer.shrinks_mm == 0.0));
    answer.grows_mm - answer.shrinks_mm
}

#[test]
fn v1_to_v6_change_of_width() {
    for (id, species, grain, mm, moisture, want) in [
        ("V-1", "oak_northern_red", Grain::FlatSawn, "300", ["6", "12"], "6.6420"),
        ("V-2", "oak_northern_red", Grain::QuarterSawn, "300", ["6", "12"], "2.8440"),
        ("V-3", "maple_sugar", Grain::FlatSawn, "600", ["7", "11"], "8.4720"),
        ("V-4", "cherry_black", Grain::FlatSawn, "450", ["11", "7"], "-4.4640"),
        ("V-5", "pine_eastern_white", Grain::FlatSawn, "240", ["8", "13"], "2.5440"),
    ] {
        prints(id, change(species, grain, Reading::mm(mm), moisture), want);
    }
    let twelve = Reading::inches("12");
    prints("V-6", change("oak_northern_red", Grain::FlatSawn, twelve, ["6", "9"]) / 25.4, "0.13284");
}

#[test]
fn along_the_grain_nothing() {
    assert_eq!(change("oak_northern_red", Grain::Along, Reading::mm("300"), ["6", "12"]), 0.0);
}

/// The moisture that wood comes to in air.
fn in_air(temperature: &str, humidity: &str) -> f64 {
    let air = Climate::new(humidity, temperature);
    solved(&Inputs { made: air.clone(), dry: air.clone(), damp: air, ..Inputs::default() }).made_percent
}

#[test]
fn e1_to_e7_equilibrium_moisture() {
    for (id, temperature, humidity, want) in [
        ("E-1", "20", "30", "6.1882"),
        ("E-2", "20", "50", "9.2711"),
        ("E-3", "20", "65", "11.9963"),
        ("E-4", "20", "80", "16.0371"),
        ("E-5", "21.1", "65", "11.9585"),
        ("E-6", "25", "40", "7.6082"),
        ("E-7", "10", "70", "13.4257"),
        ("E-6 in °F", "77 °F", "40", "7.6082"),
        ("E-7 in °F", "50 °F", "70", "13.4257"),
    ] {
        prints(id, in_air(temperature, humidity), want);
    }
}

#[test]
fn e8_air_and_change_together() {
    let e8 = Inputs {
        species: Choice::find("oak_northern_red").unwrap(),
        width: Reading::mm("300"),
        made: Climate::new("30", "20"),
        dry: Climate::new("30", "20"),
        damp: Climate::new("65", "20"),
        spare: Reading::mm("1"),
        bearing: Reading::mm("0"),
        ..Inputs::default()
    };
    let answer = solved(&e8);
    prints("E-8 moisture", answer.damp_percent - answer.made_percent, "5.8081");
    prints("E-8 change", answer.grows_mm, "6.4295");
    // Each side of a captured panel half of the dampest day's growth plus 1 mm.
    let Allow::Groove { depth, free, .. } = answer.allow else { panic!("{:?}", answer.allow) };
    prints("E-8 free in the groove", free.as_mm(), "4.2148");
    assert_eq!(depth, free, "as made it is at its driest, and nothing was asked to bear");
    let gap = solved(&Inputs { set: Set::Gap, ..e8 });
    let Allow::Gap { made, widest, .. } = gap.allow else { panic!("{:?}", gap.allow) };
    assert_eq!(made, widest, "it only grows");
    prints("E-8 gap", made.as_mm(), "4.2148");
}

#[test]
fn values_seen_elsewhere() {
    // A flooring chart, for each per cent of moisture: Douglas-fir 0.00267, heart pine 0.00263, teak 0.00185.
    for (species, want, within) in
        [("douglas_fir_coast", 0.267, 1e-9), ("pine_longleaf", 0.263, 1e-9), ("teak", 0.185, 0.001_1)]
    {
        let species = Choice::find(species).unwrap();
        let got = solved(&Inputs { species, ..Inputs::default() }).rate_percent;
        assert!((got - want).abs() <= within, "{species:?}: {got}");
    }
}
