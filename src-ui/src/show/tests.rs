use super::*;
use scantling::measure::Reading;

#[test]
fn figures_are_no_more_than_asked_for() {
    for (value, significant, want) in [
        (3.1234, 3, "3.12"),
        (1_496_209.0, 3, "1500000"),
        (10_316.0, 3, "10300"),
        (-0.0004, 3, "−0.0004"),
        (800.0, 3, "800"),
        (0.0, 3, "0"),
        (f64::INFINITY, 3, "–"),
    ] {
        assert_eq!(figures(value, significant), want, "{value}");
    }
}

#[test]
fn a_length_shows_both_systems_and_what_rounding_cost() {
    let show = Show::of(&Settings::default());
    let length = |typed| Reading::mm(typed).length().unwrap();
    // 600/25.4 · 16 = 377.95 marks; 378/16 in = 23 5/8 in = 600.075 mm.
    assert_eq!(show.length(length("600")).plain(), "600 mm (≈ 23 5/8 in)");
    assert_eq!(show.length(length("600")).cost, Some(say("exact")));
    let inches = Show::of(&Settings::default().in_system(System::Imperial));
    assert_eq!(inches.length(length("600")).plain(), "23 5/8 in (600 mm)");
    assert_eq!(inches.length(length("600")).cost.as_deref(), Some("0.075 mm over"));
    assert_eq!(inches.length(length("-0.5 in")).plain(), "−1/2 in (≈ −12.5 mm)", "12.7 mm to half millimetres");
}

#[test]
fn a_unit_stands_once_behind_several_lengths() {
    let show = Show::of(&Settings::default());
    let [width, height] = ["578", "726"].map(|typed| show.length(Reading::mm(typed).length().unwrap()));
    assert_eq!(Shown::joined([width, height], " × ").plain(), "578 × 726 mm (≈ 22 3/4 × 28 9/16 in)");
}
