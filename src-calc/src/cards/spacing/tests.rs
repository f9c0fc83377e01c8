use super::{Answer, By, Ends, Even, Inputs, Spread, Within, solve};
use crate::measure::{Length, Reading};
use proptest::prelude::*;
use proptest::sample::select;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

fn sixteenths(count: i64) -> Reading {
    Reading::inches(&format!("{count}/16"))
}

/// Seven pieces of 60 on 1000, which leave 580 to share out.
fn seven(even: Even, ends: Ends) -> Inputs {
    Inputs {
        length: Reading::mm("1000"),
        width: Reading::mm("60"),
        end: Reading::mm("80"),
        even,
        ends,
        ..Inputs::default()
    }
}

#[test]
fn every_way_of_spacing_by_hand() {
    for (even, ends, gap, end_gap) in [
        (Even::Gaps, Ends::Gap, "580/8", "580/8"),
        (Even::Centres, Ends::Gap, "1000/8 - 60", "1000/8 - 30"),
        (Even::Gaps, Ends::Half, "580/7", "290/7"),
        (Even::Centres, Ends::Half, "580/7", "290/7"),
        (Even::Gaps, Ends::Piece, "580/6", "0"),
        (Even::Centres, Ends::Piece, "580/6", "0"),
        (Even::Gaps, Ends::Own, "(580 - 160)/6", "80"),
        (Even::Centres, Ends::Own, "840/6 - 60", "50"),
    ] {
        let got = solved(&seven(even, ends)).spread;
        assert_eq!((got.gap, got.end_gap), (Some(mm(gap)), mm(end_gap)), "{even:?} {ends:?}");
    }
}

#[test]
fn marks_run_from_where_the_tape_is_hooked() {
    let answer = solved(&Inputs { datum: Reading::mm("18"), ..seven(Even::Gaps, Ends::Own) });
    let (first, last) = (answer.pieces.first().unwrap(), answer.pieces.last().unwrap());
    assert_eq!((first.near, first.centre, first.far), (mm("98"), mm("128"), mm("158")));
    assert_eq!((last.near, last.centre, last.far), (mm("878"), mm("908"), mm("938")));
    assert_eq!(answer.pieces.get(3).unwrap().centre, mm("518"), "the middle one of seven");
}

#[test]
fn one_fewer_and_one_more_stand_beside_it() {
    let answer = solved(&seven(Even::Gaps, Ends::Gap));
    let spread = |count, gap, pitch| Spread { count, gap: Some(mm(gap)), pitch: Some(mm(pitch)), end_gap: mm(gap) };
    assert_eq!(answer.fewer, Some(spread(6, "640/7", "640/7 + 60")));
    assert_eq!(answer.more, Some(spread(8, "520/9", "520/9 + 60")));
    let two = Inputs { count: "2".into(), ..seven(Even::Gaps, Ends::Piece) };
    assert_eq!(solved(&two).fewer, None, "a piece at each end is two pieces");
    let full = Inputs { count: "16".into(), ..seven(Even::Gaps, Ends::Gap) };
    assert_eq!(solved(&full).more, None, "17 × 60 is more than 1000");
    assert_eq!(solved(&Inputs { count: "1".into(), ..seven(Even::Gaps, Ends::Gap) }).spread.gap, None);
}

#[test]
fn the_largest_gap_may_be_met_exactly() {
    // 580/8 = 72.5 with seven, 640/7 = 91.4 with six.
    let by = |gap: &str| Inputs { by: By::LargestGap, largest_gap: Reading::mm(gap), ..seven(Even::Gaps, Ends::Gap) };
    let met = solved(&by("72.5"));
    assert_eq!((met.spread.count, met.within), (7, Some(Within::Spare(Length::ZERO))));
    assert_eq!(solved(&by("72.4")).spread.count, 8);
    assert_eq!(solved(&by("91")).spread.count, 7);
    // One piece in the middle leaves (1000 − 60) / 2 at each end; two would leave 440 between them.
    let middle = |gap: &str| solved(&Inputs { ends: Ends::Half, ..by(gap) }).spread.count;
    assert_eq!([middle("470"), middle("469")], [1, 2]);
    let own = Inputs { ends: Ends::Own, ..by("70") };
    assert_eq!(solved(&own).within, Some(Within::EndsOver(mm("10"))));
    assert_eq!(solved(&Inputs { by: By::Count, ..by("5") }).within, None);
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let bad = |inputs: Inputs| -> Vec<String> {
        solve(&inputs).unwrap_err().iter().map(|(field, problem)| format!("{field}: {problem}")).collect()
    };
    let all = bad(Inputs {
        length: Reading::mm("0"),
        width: Reading::mm("-1"),
        count: "2.5".into(),
        datum: Reading::mm("?"),
        ..Inputs::default()
    });
    let fields: Vec<&str> = all.iter().filter_map(|text| text.split(':').next()).collect();
    assert_eq!(fields, ["length", "width", "count", "datum"]);
    for (inputs, want) in [
        (
            Inputs { count: "17".into(), ..seven(Even::Gaps, Ends::Gap) },
            "count: At most 16 is accepted: more do not fit on the length.",
        ),
        (Inputs { count: "101".into(), ..Inputs::default() }, "count: At most 100 is accepted: a longer list"),
        (
            Inputs { count: "0".into(), ..Inputs::default() },
            "count: At least 1 is needed: there has to be something to space.",
        ),
        (
            Inputs { count: "1".into(), ..seven(Even::Gaps, Ends::Piece) },
            "count: At least 2 is needed: both ends want a piece.",
        ),
        (Inputs { width: Reading::mm("1001"), ..seven(Even::Gaps, Ends::Gap) }, "width: One piece does not fit"),
        (Inputs { width: Reading::mm("501"), ..seven(Even::Gaps, Ends::Piece) }, "width: Two pieces do not fit"),
        (Inputs { end: Reading::mm("500"), ..seven(Even::Gaps, Ends::Own) }, "end: At most 500 mm"),
        (Inputs { end: Reading::mm("29"), ..seven(Even::Centres, Ends::Own) }, "end: At least 30 mm"),
        (
            Inputs { by: By::LargestGap, largest_gap: Reading::mm("2"), ..seven(Even::Gaps, Ends::Gap) },
            "largest_gap: At least ≈ 2.353 mm", // (1000 − 16 · 60) / 17
        ),
        (
            Inputs {
                by: By::LargestGap,
                end: Reading::mm("90"),
                largest_gap: Reading::mm("2"),
                ..seven(Even::Gaps, Ends::Own)
            },
            "largest_gap: At least ≈ 3.333 mm", // (820 − 13 · 60) / 12: the 90 at the ends were given
        ),
        (
            Inputs {
                by: By::LargestGap,
                width: Reading::mm("0"),
                largest_gap: Reading::mm("1"),
                ..seven(Even::Gaps, Ends::Gap)
            },
            "largest_gap: That takes more than 100 pieces",
        ),
    ] {
        let got = bad(inputs);
        assert!(got.len() == 1 && got[0].starts_with(want), "{got:?} is not {want}");
    }
}

/// At a limit itself the pieces still stand.
#[test]
fn limits_are_met_exactly() {
    // A hundred marks on 1010 mm, 10 mm apart; a hundred and one are a longer list than is marked.
    let marks = |count: &str| {
        let (length, width) = (Reading::mm("1010"), Reading::mm("0"));
        solve(&Inputs { length, width, count: count.into(), ..Inputs::default() })
    };
    let hundred = marks("100").unwrap();
    assert_eq!((hundred.spread.pitch, hundred.pieces.len(), hundred.more), (Some(mm("10")), 100, None));
    assert_eq!(marks("99").unwrap().more.map(|more| more.count), Some(100));
    assert!(marks("101").is_err());
    // Outer centres half a piece from the ends: the pieces are flush with them.
    let flush = solved(&Inputs { end: Reading::mm("30"), ..seven(Even::Centres, Ends::Own) });
    assert_eq!((flush.spread.end_gap, flush.spread.gap), (Length::ZERO, Some(mm("940/6 - 60"))));
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for even in Even::ALL {
        for ends in Ends::ALL {
            for by in By::ALL {
                let inputs = Inputs { by: *by, largest_gap: Reading::mm("70"), ..seven(*even, *ends) };
                let answer = solved(&inputs);
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
    fn the_fewest_pieces_are_taken(
        even in select(Even::ALL),
        ends in select(Ends::ALL),
        sizes in (200_i64..3000, 0_i64..60, 1_i64..400, 0_i64..90),
    ) {
        let (length, width, largest, end) = sizes;
        let inputs = Inputs {
            length: sixteenths(length),
            width: sixteenths(width),
            end: sixteenths(end),
            largest_gap: sixteenths(largest),
            even,
            ends,
            by: By::LargestGap,
            ..Inputs::default()
        };
        let Ok(answer) = solve(&inputs) else { return Ok(()) };
        let limit = inputs.largest_gap.length().unwrap();
        let keeps = |spread: &Spread| {
            let at_ends = ends == Ends::Own || spread.end_gap <= limit;
            at_ends && spread.gap.is_none_or(|gap| gap <= limit)
        };
        prop_assert!(keeps(&answer.spread), "{:?}", answer.spread);
        prop_assert!(answer.fewer.is_none_or(|fewer| !keeps(&fewer)), "{:?} does it too", answer.fewer);
    }

    #[test]
    fn inches_change_nothing(even in select(Even::ALL), ends in select(Ends::ALL), by in select(By::ALL), length in 300_i64..3000) {
        let with = |length: Reading| solve(&Inputs { length, even, ends, by, ..Inputs::default() });
        prop_assert_eq!(with(sixteenths(length)), with(Reading::mm(&format!("{length} * 25.4 / 16"))));
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*", by in select(By::ALL), ends in select(Ends::ALL)) {
        let reading = Reading::mm(&typed);
        let _ = solve(&Inputs {
            length: Reading::mm(&other),
            width: reading.clone(),
            end: reading.clone(),
            largest_gap: reading.clone(),
            datum: reading,
            count: typed.as_str().into(),
            by,
            ends,
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(
        big in any::<i64>(),
        small in 1_u64..u64::MAX,
        count in any::<u32>(),
        even in select(Even::ALL),
        ends in select(Ends::ALL),
        by in select(By::ALL),
    ) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        let _ = solve(&Inputs {
            length: reading.clone(),
            width: Reading::mm(&format!("{big}/{small}/{}", count.max(1))),
            largest_gap: reading.clone(),
            datum: reading,
            count: count.to_string().as_str().into(),
            even,
            ends,
            by,
            ..Inputs::default()
        });
    }
}
