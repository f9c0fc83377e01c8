use super::{Inputs, Line, LineOutcome, MOST_READINGS, solve};
use crate::measure::{Graduation, Length, Reading, Rounding, Style};

fn one(typed: &str, graduation: Graduation, rounding: Rounding) -> Line {
    let inputs = Inputs { readings: vec![Reading::mm(typed)], graduation, rounding };
    solve(&inputs).unwrap().lines[0].line().unwrap().clone()
}

fn nearest(typed: &str) -> Line {
    one(typed, Graduation::Sixteenth, Rounding::Nearest)
}

#[test]
fn climbs_the_ladder() {
    // Handbook U-6: 15 mm is 5/8 (+0.8750), 9/16 (−0.7125), 19/32 (+0.0813), 19/32 (+0.0813).
    let line = nearest("15 mm");
    let inches: Vec<_> = line.ladder[3..].iter().map(|mark| mark.value.show(Style::Inches)).collect();
    assert_eq!(inches, ["5/8 in", "9/16 in", "19/32 in", "19/32 in"]);
    let errors: Vec<_> = line.ladder[3..].iter().map(|mark| mark.error.to_string()).collect();
    assert_eq!(errors, ["0.875 mm", "-0.7125 mm", "0.08125 mm", "0.08125 mm"]);
    assert!(line.ladder[..3].iter().all(|mark| mark.is_exact()));
    // 23 5/8 in = 600.075 mm: by hand.
    let line = nearest("23 5/8 in");
    let metric: Vec<_> = line.ladder[..3].iter().map(|mark| mark.value.to_string()).collect();
    assert_eq!(metric, ["600 mm", "600 mm", "600.1 mm"]);
    assert!(line.ladder[3..].iter().all(|mark| mark.is_exact()));
}

#[test]
fn gives_decimal_inches_and_feet() {
    // Decimal inches of the sheet thicknesses: handbook 1.3.
    for (mm, inches, exact) in [
        ("3", "0.1181", false),
        ("4", "0.1575", false),
        ("6", "0.2362", false),
        ("9", "0.3543", false),
        ("12", "0.4724", false),
        ("15", "0.5906", false),
        ("16", "0.6299", false),
        ("18", "0.7087", false),
        ("19", "0.7480", false),
        ("22", "0.8661", false),
        ("25", "0.9843", false),
        ("-15", "-0.5906", false),
        ("23 5/8 in", "23.6250", true),
        ("0", "0.0000", true),
    ] {
        let decimal = nearest(mm).decimal_inches;
        assert_eq!((decimal.text.as_str(), decimal.exact), (inches, exact), "{mm}");
    }
    // Handbook 1.2: 2440 mm to 1/16 is 8 ft 0 1/16 in.
    assert_eq!(nearest("2440").feet_inches.value.show(Style::FeetInches), "8' 0 1/16\"");
    // On a metric tool: 2440 mm to 1/64 is 96 1/16 in too (U-18).
    let metric = one("2440", Graduation::Mm, Rounding::Nearest);
    assert_eq!(metric.feet_inches.value.show(Style::FeetInches), "8' 0 1/16\"");
}

#[test]
fn takes_the_mark_that_was_asked_for() {
    for (rounding, want) in
        [(Rounding::Nearest, "9/16 in"), (Rounding::NotOver, "9/16 in"), (Rounding::NotUnder, "5/8 in")]
    {
        // 15 mm = 0.5906 in lies between 9/16 = 0.5625 and 5/8 = 0.625.
        let line = one("15", Graduation::Sixteenth, rounding);
        assert_eq!(line.chosen.value.show(Style::Inches), want);
        assert_eq!([line.below, line.above].map(|mark| mark.show(Style::Inches)), ["9/16 in", "5/8 in"]);
    }
    // On a mark the neighbours are one step away on either side.
    let line = nearest("1 in");
    assert_eq!([line.below, line.above].map(|mark| mark.show(Style::Inches)), ["15/16 in", "1 1/16 in"]);
    let line = nearest("-15");
    assert_eq!([line.below, line.above].map(|mark| mark.show(Style::Inches)), ["-5/8 in", "-9/16 in"]);
}

#[test]
fn says_what_a_sheet_is_sold_as() {
    let sold = nearest("15 mm").sold_as.unwrap();
    assert_eq!(sold.name, Length::inches(5, 8).unwrap());
    assert_eq!(sold.difference.to_string(), "-0.875 mm", "0.88 mm under");
    assert_eq!(nearest("600").sold_as, None);
    let inputs = Inputs { readings: vec![Reading::mm("15"), Reading::mm("18")], ..Inputs::default() };
    let working = solve(&inputs).unwrap().working;
    assert_eq!(working.0.len(), 3, "rounding, its cost, the name");
    assert_eq!(working.0[2].gives.to_string(), "-0.875 mm (≈ -1/32 in)");
}

#[test]
fn a_bad_line_does_not_hide_the_good_ones() {
    let readings = ["600", "", "1,200", "  ", "5/8 in"].map(Reading::mm).to_vec();
    let answer = solve(&Inputs { readings, ..Inputs::default() }).unwrap();
    let shown: Vec<_> = answer
        .lines
        .iter()
        .map(|outcome| match outcome {
            LineOutcome::Read(line) => format!("{} {}", line.index, line.length),
            LineOutcome::Refused { index, problem } => format!("{index} {problem}"),
        })
        .collect();
    assert_eq!(shown, ["0 600 mm", "2 Is 1,200 a decimal comma or a thousand? Write 1.2 or 1200.", "4 15.875 mm"]);
    let places: Vec<_> = answer.lines.iter().map(LineOutcome::index).collect();
    assert_eq!(places, [0, 2, 4], "blank lines keep their place");
    let json = serde_json::to_value(&answer).unwrap();
    assert_eq!(json["lines"][1]["refused"]["index"], 2);
    assert_eq!(json["lines"][2]["read"]["length"], "15.875 mm");
}

#[test]
fn refuses_only_when_nothing_can_be_read() {
    let problems = |readings: &[&str]| {
        let readings = readings.iter().map(|typed| Reading::mm(typed)).collect();
        solve(&Inputs { readings, ..Inputs::default() }).unwrap_err()
    };
    assert!(problems(&[]).of("readings").is_some());
    assert!(problems(&["", " "]).of("readings").is_some());
    let both = problems(&["five", "", "5 in * 5 in"]);
    assert!(both.of("readings.0").is_some() && both.of("readings.2").is_some());
    assert!(both.of("readings").is_none() && both.of("readings.1").is_none());
    let huge = problems(&["18014398509481984"]);
    assert!(huge.of("readings.0").is_some(), "a length that is held, but no mark above it");
}

#[test]
fn keeps_long_lists_within_bounds() {
    let list = |count| Inputs { readings: vec![Reading::mm("600"); count], ..Inputs::default() };
    assert_eq!(solve(&list(MOST_READINGS)).unwrap().lines.len(), MOST_READINGS);
    let problems = solve(&list(MOST_READINGS + 1)).unwrap_err();
    let problem = problems.of("readings").unwrap().to_string();
    assert_eq!(problem, "At most 200 is accepted: paste a longer list in parts.");
}

#[test]
fn the_unit_of_a_reading_changes_nothing() {
    let pairs = [("600", "600/25.4"), ("23 5/8 in", "600.075/25.4"), ("15 mm", "15/25.4")];
    for (mm, inches) in pairs {
        let metric = Inputs { readings: vec![Reading::mm(mm)], ..Inputs::default() };
        let imperial = Inputs { readings: vec![Reading::inches(inches)], ..Inputs::default() };
        assert_eq!(solve(&metric).unwrap(), solve(&imperial).unwrap());
    }
}
