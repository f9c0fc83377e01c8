use super::{Answer, Biscuit, Inputs, Kind, Meeting, Note, Spread, Stays, solve};
use crate::measure::{Length, Reading};
use proptest::prelude::*;
use proptest::sample::select;

mod limits;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

/// A shelf of 18 mm between sides of 18 mm.
fn eighteen(kind: Kind) -> Inputs {
    Inputs {
        kind,
        edge_thickness: Reading::mm("18"),
        face_thickness: Reading::mm("18"),
        end_distance: Reading::default(),
        spacing: Reading::default(),
        ..Inputs::default()
    }
}

#[test]
fn the_demo_stays_inside() {
    let answer = solved(&Inputs::default());
    // 330 − 90 = 240 over at most 128: two gaps of 120.
    assert_eq!(answer.marks, ["45", "165", "285"].map(mm));
    assert_eq!(answer.spacing, Some(mm("120")));
    // Two thirds of 14.6 in the face, the rest of 30 + 2 in the edge.
    assert_eq!(answer.fixing.in_other, mm("14.6").times(2, 3).unwrap());
    assert_eq!(answer.fixing.in_edge, mm("32").minus(answer.fixing.in_other).unwrap());
    assert_eq!((answer.left.outer, answer.left.inner), (mm("4.3"), mm("4.3")));
    assert_eq!(answer.left.least, mm("4.3"));
    assert_eq!(answer.stays, Stays::Inside);
    assert_eq!(answer.notes, []);
}

#[test]
fn marks_of_the_mate_are_mirrored() {
    let inputs = Inputs { end_distance: Reading::mm("50"), other_end: Reading::mm("80"), ..Inputs::default() };
    let answer = solved(&inputs);
    assert_eq!(answer.marks, ["50", "150", "250"].map(mm));
    assert_eq!(answer.mirrored, ["80", "180", "280"].map(mm));
}

#[test]
fn steps_of_32_start_from_the_first() {
    let inputs = Inputs { spread: Spread::Steps, spacing: Reading::mm("100"), ..Inputs::default() };
    // 240 of room: two steps of 96, the last 93 from the end.
    assert_eq!(solved(&inputs).marks, ["45", "141", "237"].map(mm));
    let closer = Inputs { spacing: Reading::mm("10"), ..inputs.clone() };
    assert_eq!(solved(&closer).spacing, Some(mm("32")));
    let two = Inputs { count: "2".into(), ..inputs.clone() };
    assert_eq!(solved(&two).marks, ["45", "141"].map(mm));
    let four = Inputs { count: "4".into(), ..inputs };
    assert!(solve(&four).unwrap_err().of("count").is_some());
}

#[test]
fn a_count_is_spread_from_end_to_end_and_one_sits_in_the_middle() {
    let with = |count: &str| solved(&Inputs { count: count.into(), ..Inputs::default() }).marks;
    assert_eq!(with("2"), ["45", "285"].map(mm));
    assert_eq!(with("5"), ["45", "105", "165", "225", "285"].map(mm));
    assert_eq!(with("1"), ["165"].map(mm));
    let tight = Inputs { length: Reading::mm("90"), ..Inputs::default() };
    assert_eq!(solved(&tight).marks, ["45"].map(mm));
}

#[test]
fn a_connecting_screw_goes_through_the_face_part() {
    let answer = solved(&eighteen(Kind::ConnectingScrew));
    let screw = answer.screw.unwrap();
    assert_eq!((screw.length, screw.reach), (mm("50"), mm("32")));
    assert_eq!((answer.fixing.in_edge, answer.fixing.in_other), (mm("34"), mm("18")));
    assert_eq!((answer.fixing.across, answer.fixing.across_other), (mm("5"), mm("7")));
    assert!(answer.fixing.through && answer.left.behind.is_none());
    assert_eq!(answer.left.to_end, Some(mm("5.5")));
    let thick = Inputs { face_thickness: Reading::mm("45"), ..eighteen(Kind::ConnectingScrew) };
    assert_eq!(solved(&thick).screw.unwrap().length, mm("70"), "the longest sold");
    assert!(solved(&thick).notes.contains(&Note::ShortReach));
}

#[test]
fn a_pocket_screw_is_as_long_as_the_board_asks_for() {
    for (thickness, want) in [("12.5", "25"), ("18", "32"), ("20.6", "38"), ("60", "64"), ("11.5", "19")] {
        let inputs = Inputs { edge_thickness: Reading::mm(thickness), ..eighteen(Kind::PocketScrew) };
        let inputs = Inputs { shoulder: Reading::mm("10"), ..inputs };
        assert_eq!(solved(&inputs).screw.unwrap().length, mm(want), "{thickness}");
    }
    let answer = solved(&eighteen(Kind::PocketScrew));
    assert_eq!(answer.screw.unwrap().reach, mm("12.8"), "two fifths of 32");
    assert_eq!(answer.fixing.in_edge, mm("19.2"));
    let set = Inputs { shoulder: Reading::mm("18"), ..eighteen(Kind::PocketScrew) };
    let answer = solved(&set);
    let screw = answer.screw.unwrap();
    assert_eq!(screw.reach, mm("14"), "32 less the shoulder, 18 from the end");
    // (18 − 3) / cos 15° + 18 = 33.529.
    assert!((screw.longest.unwrap().as_mm() - 33.529).abs() < 0.001);
    assert_eq!(answer.stays, Stays::Inside);
    let long = solved(&Inputs { screw_length: Reading::mm("35"), ..set.clone() });
    assert_eq!(long.stays, Stays::Thin);
    assert!(long.notes.contains(&Note::ScrewTooLong));
    let out = solved(&Inputs { screw_length: Reading::mm("38"), ..set.clone() });
    assert_eq!(out.stays, Stays::BreaksOut);
    let edge = solved(&Inputs { meeting: Meeting::Edge, ..set });
    assert_eq!(edge.screw.unwrap().longest, None);
}

#[test]
fn two_edges_share_evenly() {
    for kind in [Kind::Dowel, Kind::LooseTenon, Kind::Biscuit] {
        let answer = solved(&Inputs { meeting: Meeting::Edge, ..eighteen(kind) });
        assert_eq!(answer.fixing.in_edge, answer.fixing.in_other, "{kind:?}");
        assert_eq!((answer.left.behind, answer.left.to_end, answer.line_on_face), (None, None, None));
    }
}

#[test]
fn a_depth_of_ones_own_leaves_the_rest_to_the_edge() {
    let inputs = Inputs { face_depth: Reading::mm("12.5"), ..eighteen(Kind::Dowel) };
    let answer = solved(&inputs);
    assert_eq!((answer.fixing.in_other, answer.fixing.in_edge), (mm("12.5"), mm("19.5")));
    assert_eq!(answer.left.behind, Some(mm("5.5")));
    let through = Inputs { face_depth: Reading::mm("18"), ..inputs.clone() };
    assert_eq!(solved(&through).stays, Stays::BreaksOut);
    let thin = Inputs { face_depth: Reading::mm("15.5"), ..inputs };
    assert_eq!(solved(&thin).stays, Stays::Thin);
}

#[test]
fn a_line_off_the_middle_is_thinner_on_one_side() {
    let inputs = Inputs { line: Reading::mm("7"), from_end: Reading::mm("1"), ..eighteen(Kind::Dowel) };
    let answer = solved(&inputs);
    assert_eq!((answer.left.outer, answer.left.inner), (mm("4"), mm("8")));
    assert_eq!((answer.line_on_face, answer.left.to_end), (Some(mm("8")), Some(mm("5"))));
    let pocket = Inputs { kind: Kind::PocketScrew, ..inputs };
    assert_eq!(solved(&pocket).line, mm("9"), "pockets come out in the middle");
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let bad = Inputs {
        length: Reading::mm("x"),
        edge_thickness: Reading::mm("0"),
        from_end: Reading::mm("-1"),
        line: Reading::mm("-1"),
        end_distance: Reading::mm("0"),
        count: "101".into(),
        skin: Reading::mm("-1"),
        face_depth: Reading::mm("0"),
        dowel_length: Reading::mm(""),
        ..Inputs::default()
    };
    let problems = solve(&bad).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    let want = ["length", "edge_thickness", "from_end", "line", "end_distance", "count", "skin", "face_depth"];
    assert_eq!(fields[..8], want);
    assert_eq!(fields[8..], ["dowel_length"]);
}

#[test]
fn what_cannot_be_made_is_refused() {
    let refused = |inputs: &Inputs, field: &str, words: &str| {
        let problems = solve(inputs).unwrap_err();
        let problem = problems.of(field).unwrap_or_else(|| panic!("{field} in {problems:?}"));
        assert!(problem.to_string().contains(words), "{problem}");
    };
    let reading = Reading::mm;
    let of = |kind| eighteen(kind);
    refused(&Inputs { meeting: Meeting::Edge, ..of(Kind::ConnectingScrew) }, "meeting", "face part");
    refused(&Inputs { end_distance: reading("166"), ..of(Kind::Dowel) }, "end_distance", "pass each other");
    refused(&Inputs { count: "0".into(), ..of(Kind::Dowel) }, "count", "more than zero");
    refused(&Inputs { spacing: reading("1"), ..of(Kind::Dowel) }, "spacing", "100");
    refused(&Inputs { spacing: reading("6"), ..of(Kind::Dowel) }, "spacing", "run into each other");
    refused(&Inputs { count: "60".into(), ..of(Kind::Dowel) }, "count", "run into each other");
    refused(&Inputs { skin: reading("18"), ..of(Kind::Dowel) }, "skin", "18 mm");
    refused(&Inputs { face_depth: reading("32"), ..of(Kind::Dowel) }, "face_depth", "32 mm");
    refused(&Inputs { tenon_width: reading("4"), ..of(Kind::LooseTenon) }, "tenon_width", "flat");
    refused(&Inputs { cutter: reading("24"), ..of(Kind::Biscuit) }, "cutter", "25 mm");
    refused(&Inputs { shank: reading("4"), ..of(Kind::ConnectingScrew) }, "shank", "as wide");
    refused(&Inputs { screw_length: reading("18"), ..of(Kind::ConnectingScrew) }, "screw_length", "18 mm");
    refused(&Inputs { face_thickness: reading("70"), ..of(Kind::ConnectingScrew) }, "face_thickness", "70 mm");
    refused(
        &Inputs { shoulder: reading("18"), screw_length: reading("18"), ..of(Kind::PocketScrew) },
        "screw_length",
        "18 mm",
    );
}

#[test]
fn notes_name_what_is_wrong() {
    let reading = Reading::mm;
    for (inputs, note) in [
        (Inputs { dowel_diameter: reading("9.1"), ..eighteen(Kind::Dowel) }, Note::Thick),
        (Inputs { dowel_diameter: reading("5.9"), ..eighteen(Kind::Dowel) }, Note::Slight),
        (Inputs { end_distance: reading("31.9"), ..eighteen(Kind::Dowel) }, Note::NearTheEnd),
        (Inputs { other_end: reading("50.1"), ..eighteen(Kind::Dowel) }, Note::FarFromTheEnd),
        (Inputs { count: "2".into(), ..eighteen(Kind::Dowel) }, Note::FarApart),
        (Inputs { count: "1".into(), ..eighteen(Kind::Dowel) }, Note::Single),
        (Inputs { tenon_length: reading("27"), ..eighteen(Kind::LooseTenon) }, Note::TenonDepth),
        (Inputs { tenon_width: reading("19.9"), ..eighteen(Kind::LooseTenon) }, Note::TenonWidth),
        (Inputs { tenon_width: reading("50.1"), ..eighteen(Kind::LooseTenon) }, Note::TenonWidth),
        (Inputs { edge_thickness: reading("15.9"), ..eighteen(Kind::ConnectingScrew) }, Note::ThinForScrew),
        (Inputs { screw_length: reading("47.9"), ..eighteen(Kind::ConnectingScrew) }, Note::ShortReach),
        (
            Inputs { shoulder: reading("18"), screw_length: reading("34"), ..eighteen(Kind::PocketScrew) },
            Note::ScrewTooLong,
        ),
    ] {
        assert!(!solved(&Inputs { tenon_length: reading("30"), ..eighteen(inputs.kind) }).notes.contains(&note));
        assert!(solved(&inputs).notes.contains(&note), "{note:?} in {:?}", solved(&inputs).notes);
    }
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for kind in Kind::ALL {
        for spread in Spread::ALL {
            for meeting in Meeting::ALL {
                let inputs = Inputs { spread: *spread, meeting: *meeting, ..eighteen(*kind) };
                let Ok(answer) = solve(&inputs) else {
                    assert_eq!((*kind, *meeting), (Kind::ConnectingScrew, Meeting::Edge));
                    continue;
                };
                for step in answer.working.0 {
                    for (symbol, _) in &step.given {
                        assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
                    }
                }
            }
        }
    }
}

proptest! {
    #[test]
    fn no_gap_is_greater_than_allowed_and_one_fewer_would_not_do(
        kind in select(Kind::ALL),
        tenths in (1500_i64..30_000, 300_i64..700, 700_i64..3000),
    ) {
        let tenth = |tenths: i64| Reading::mm(&format!("{tenths}/10"));
        let (length, end, every) = tenths;
        let inputs = Inputs {
            length: tenth(length),
            end_distance: tenth(end),
            spacing: tenth(every),
            ..eighteen(kind)
        };
        let answer = match solve(&inputs) {
            Ok(answer) => answer,
            Err(problems) => {
                // Refused only where one hole or slot would reach the next: the edge is too short for two of them.
                prop_assert!(problems.of("spacing").is_some(), "{:?}", problems);
                let roomy = Inputs { length: Reading::mm("3000"), spacing: Reading::mm("300"), ..inputs };
                let gaps = ((length - 2 * end) + every - 1) / every;
                let between = tenth(length - 2 * end).length().unwrap();
                prop_assert!(between <= solved(&roomy).fixing.along.times(gaps, 1).unwrap(), "{:?}", problems);
                return Ok(());
            }
        };
        let every = tenth(every).length().unwrap();
        let between = tenth(length - 2 * end).length().unwrap();
        match answer.spacing {
            Some(spacing) => {
                prop_assert!(spacing <= every);
                let fewer = i64::try_from(answer.marks.len()).unwrap() - 2;
                prop_assert!(every.times(fewer, 1).unwrap() < between);
            }
            None => prop_assert!(between.is_zero()),
        }
    }

    #[test]
    fn inches_change_nothing(kind in select(Kind::ALL), spread in select(Spread::ALL), sixteenths in (300_i64..900, 10_i64..20)) {
        let (length, thick) = sixteenths;
        let with = |length: Reading, thick: Reading| {
            solve(&Inputs { spread, length, edge_thickness: thick.clone(), face_thickness: thick, ..eighteen(kind) })
        };
        let inches = |n: i64| Reading::inches(&format!("{n}/16"));
        let metric = |n: i64| Reading::mm(&format!("{n} * 25.4 / 16"));
        prop_assert_eq!(with(inches(length), inches(thick)), with(metric(length), metric(thick)));
    }

    #[test]
    fn no_text_panics(kind in select(Kind::ALL), typed in "\\PC*", other in "\\PC*") {
        let reading = Reading::mm(&typed);
        let _ = solve(&Inputs {
            kind,
            length: reading.clone(),
            spacing: reading,
            face_depth: Reading::mm(&other),
            count: other.as_str().into(),
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(
        kind in select(Kind::ALL),
        biscuit in select(Biscuit::ALL),
        meeting in select(Meeting::ALL),
        spread in select(Spread::ALL),
        big in any::<i64>(),
        small in 1_u64..u64::MAX,
    ) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        for inputs in [
            Inputs { length: reading.clone(), end_distance: reading.clone(), ..Inputs::default() },
            Inputs { spacing: reading.clone(), skin: reading.clone(), ..Inputs::default() },
            Inputs { edge_thickness: reading.clone(), face_thickness: reading.clone(), ..Inputs::default() },
            Inputs { screw_length: reading.clone(), shoulder: Reading::mm("1"), ..Inputs::default() },
            Inputs { cutter: reading.clone(), glue: reading.clone(), line: reading.clone(), ..Inputs::default() },
            Inputs { dowel_diameter: reading.clone(), tenon_length: reading.clone(), ..Inputs::default() },
        ] {
            let _ = solve(&Inputs { kind, biscuit, meeting, spread, ..inputs });
        }
    }
}
