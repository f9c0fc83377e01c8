use super::{Answer, Coat, Decimal, Inputs, SolidPer, What, solve};
use crate::caution::Caution;
use crate::measure::{Figure, Ratio, Reading};
use crate::stock::materials::Choice;
use proptest::prelude::*;
use proptest::sample::select;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn lines<const N: usize>(typed: [&str; N]) -> Vec<Reading> {
    typed.map(Reading::mm).to_vec()
}

/// Nothing is bought.
fn nothing() -> Inputs {
    Inputs {
        sheet_parts: Vec::new(),
        boards: Vec::new(),
        edges: Vec::new(),
        joints: Vec::new(),
        coat: Coat::Nothing,
        screws: Vec::new(),
        pins: Vec::new(),
        others: Vec::new(),
        ..Inputs::default()
    }
}

fn amounts(answer: &Answer) -> Vec<String> {
    answer.list.items.iter().map(|item| item.amount.map_or_else(|| "–".into(), |amount| amount.to_string())).collect()
}

#[test]
fn the_demo_by_hand() {
    let answer = solved(&Inputs::default());
    // 2 · 1.17 · 0.33 + 4 · 0.8 · 0.33 + 2 · 1.164 · 0.4115 = 2.786 m², with 15 % 3.204: two sheets of 2.9768.
    // 2 · 0.9 · 0.095 · 0.022 = 0.003762 m³, with 25 % 0.0047025. Band 11.842 m and 14 · 0.04: two rolls.
    // 2 · 2.786172 · 3 / 11 = 1.5198 l: three cans of 0.75.
    assert_eq!(amounts(&answer), ["129.00", "6.72", "17.80", "4.20", "44.85", "5.40", "2.10", "14.10"]);
    assert_eq!(answer.list.total.unwrap().to_string(), "224.17");
    let [sheets, boards] = [0, 1].map(|at| answer.list.items.get(at).unwrap().quantity.to_string());
    assert_eq!((sheets.as_str(), boards.as_str()), ("2", "0.0048"));
    let screws = answer.screws.unwrap();
    assert_eq!((screws.count, screws.gross, screws.boxes), (24, 27, 1));
    assert_eq!(answer.pins.unwrap().gross, 18);
    assert_eq!(answer.working.0.len(), 18);
}

#[test]
fn money_is_exact() {
    // As floats three of 0.1 are 0.30000000000000004, and 1.005 is a little less than it says.
    let answer = solved(&Inputs { others: lines(["3 × 0.1", "1.005"]), ..nothing() });
    assert_eq!(amounts(&answer), ["0.30", "1.01"]);
    assert_eq!(answer.list.total.unwrap().to_string(), "1.31");
}

#[test]
fn a_list_adds_up_as_it_stands() {
    // Three lines of 1.005 are 1.01 each on a list, and so 3.03; their exact sum would be 3.02.
    let answer = solved(&Inputs { others: lines(["1.005 a", "1.005 b", "1.005 c"]), ..nothing() });
    assert_eq!((amounts(&answer), answer.list.total.unwrap().to_string()), (vec!["1.01".into(); 3], "3.03".into()));
}

#[test]
fn whole_packs_are_met_exactly() {
    // 7.4 · 3 / 11.1 are two litres, and as floats a little more, which would be a third can.
    let faces = Inputs {
        coat: Coat::Listed,
        faces: lines(["3.7 m × 1 m × 2"]),
        coverage: "11.1".into(),
        can: "1".into(),
        ..nothing()
    };
    assert_eq!(solved(&faces).finish.unwrap().cans, 2);
    let sheets =
        |waste: &str| Inputs { sheet_parts: lines(["1220 × 1220 × 4"]), sheet_waste: waste.into(), ..nothing() };
    assert_eq!(solved(&sheets("")).sheets.unwrap().count, 2);
    assert_eq!(solved(&sheets("0.1")).sheets.unwrap().count, 3);
    let roll = |length: &str| Inputs { edges: lines(["9960 × 2"]), roll: Reading::mm(length), ..nothing() };
    assert_eq!(solved(&roll("10 m")).band.unwrap().rolls, 2);
    assert_eq!(solved(&roll("9.999 m")).band.unwrap().rolls, 3);
}

#[test]
fn the_makers_own_list_has_names() {
    let typed = ["6 × 2.35 hinges", "4x1,5 legs", "12.50 hex bolts", "3", "2 * 0.5", ""];
    let answer = solved(&Inputs { others: lines(typed), ..nothing() });
    let got: Vec<String> = answer
        .list
        .items
        .iter()
        .map(|item| match &item.what {
            What::Other(name) => format!("{} {name}: {}", item.quantity, item.amount.unwrap()),
            other => format!("{other:?}"),
        })
        .collect();
    assert_eq!(got, ["6 hinges: 14.10", "4 legs: 6.00", "1 hex bolts: 12.50", "1 : 3.00", "2 : 1.00"]);
}

#[test]
fn what_has_no_price_is_counted() {
    let answer = solved(&Inputs { sheet_price: Figure::default(), pin_price: " ".into(), ..Inputs::default() });
    assert_eq!((answer.list.unpriced, answer.list.total.unwrap().to_string().as_str()), (2, "93.07"));
    let none = solved(&Inputs { boards: lines(["900 × 95 × 22"]), board_price: Figure::default(), ..nothing() });
    assert_eq!((none.list.total, none.list.unpriced), (None, 1));
}

#[test]
fn board_feet_count_thin_stock_as_an_inch() {
    let boards = |line: &str| {
        let boards = vec![Reading::inches(line)];
        solved(&Inputs { boards, board_waste: Figure::default(), board_per: SolidPer::BoardFoot, ..nothing() })
    };
    for (line, feet, volume) in [("12 × 12 × 3/4", "1.00", "0.0018"), ("12 × 12 × 5/4 × 2", "2.50", "0.0059")] {
        let answer = boards(line);
        let solid = answer.boards.unwrap();
        assert_eq!((solid.gross_board_feet.to_string(), solid.gross_m3.to_string()), (feet.into(), volume.into()));
        assert_eq!(answer.list.items.first().unwrap().quantity, solid.gross_board_feet);
    }
}

#[test]
fn decimals_are_rounded_as_said() {
    let of = |n, d| Ratio::new(n, d).unwrap();
    assert_eq!(Decimal::nearest(of(5, 1000), 2).unwrap().to_string(), "0.01");
    assert_eq!(Decimal::nearest(of(4, 1000), 2).unwrap().to_string(), "0.00");
    assert_eq!(Decimal::not_under(of(1, 3), 4).unwrap().to_string(), "0.3334");
    assert_eq!(Decimal::not_under(of(2, 1), 0).unwrap(), Decimal::whole(2));
    assert_eq!(Decimal::not_under(of(1, 8), 3).unwrap().exactly().unwrap(), of(1, 8));
    assert!(Decimal::nearest(of(-1, 1), 2).is_err());
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let bad = |inputs: Inputs| -> Vec<String> {
        solve(&inputs).unwrap_err().iter().map(|(field, problem)| format!("{field}: {problem}")).collect()
    };
    let all = bad(Inputs {
        sheet_parts: lines(["600 × 300 × 2", "", "600", "600 × 0", "1 × 2 × 3 × 4", "1 × 2 × 1.5"]),
        sheet_price: "-1".into(),
        boards: lines(["900 × 95"]),
        board_waste: "101".into(),
        edges: lines(["5 kg"]),
        roll: Reading::mm("0"),
        joints: lines(["330 × 14.6 × 0"]),
        bottle: "0".into(),
        coats: "21".into(),
        coverage: "x".into(),
        screws: lines(["8 × 3 × 2"]),
        screw_box: "2.5".into(),
        spare: "-1".into(),
        others: lines(["hinges"]),
        ..Inputs::default()
    });
    let fields: Vec<&str> = all.iter().filter_map(|text| text.split(':').next()).collect();
    assert_eq!(
        fields,
        [
            "sheet_parts.2",
            "sheet_parts.3",
            "sheet_parts.4",
            "sheet_parts.5",
            "sheet_price",
            "boards.0",
            "board_waste",
            "edges.0",
            "roll",
            "joints.0",
            "bottle",
            "coats",
            "coverage",
            "spare",
            "screws.0",
            "screw_box",
            "others.0",
        ],
        "{all:#?}"
    );
    for (inputs, want) in [
        (nothing(), "sheet_parts: Give something to buy"),
        (Inputs { sheet_parts: lines(["1221 × 1221"]), ..nothing() }, "sheet_parts: One of these is larger"),
        (Inputs { coat: Coat::OneFace, ..nothing() }, "coat: There are no sheet parts"),
        (Inputs { coat: Coat::Listed, ..nothing() }, "faces: List the faces"),
        (
            Inputs { sheet_parts: lines(["1220 × 1220 × 3"]), sheets: "1".into(), ..nothing() },
            "sheets: At least 2 is needed",
        ),
        (Inputs { sheet_parts: lines(["9 × 9"]), material: Choice::Own, ..nothing() }, "density: Give a figure"),
        (Inputs { pins: lines(["1"; 61]), ..nothing() }, "pins: At most 60"),
        (Inputs { pins: lines(["100001"]), ..nothing() }, "pins.0: At most 100000"),
    ] {
        let got = bad(inputs);
        assert!(got.len() == 1 && got[0].starts_with(want), "{got:?} is not {want}");
    }
}

/// At a limit itself it is still good.
#[test]
fn limits_are_met_exactly() {
    let sheets = |parts: &str| Inputs { sheet_parts: lines([parts]), sheet_waste: Figure::default(), ..nothing() };
    for (what, inputs) in [
        ("sixty lines", Inputs { pins: lines(["1"; 60]), ..nothing() }),
        ("a hundred thousand", Inputs { pins: lines(["100000"]), ..nothing() }),
        ("boxes of a hundred thousand", Inputs { pins: lines(["1"]), pin_box: "100000".into(), ..nothing() }),
        ("a price of nothing", Inputs { pins: lines(["1"]), pin_price: "0".into(), ..nothing() }),
        ("a gift", Inputs { others: lines(["2 × 0 hinges"]), ..nothing() }),
        ("twenty coats", Inputs { coats: "20".into(), ..Inputs::default() }),
        ("twice as much", Inputs { sheet_waste: "100".into(), ..Inputs::default() }),
        ("a whole sheet", sheets("2440 × 1220")),
        ("a whole sheet, turned", sheets("1220 × 2440")),
        // 1.5 sheets of area are two.
        ("as few as there can be", Inputs { sheets: "2".into(), ..sheets("1220 × 1220 × 3") }),
    ] {
        assert!(solve(&inputs).is_ok(), "{what}: {:?}", solve(&inputs));
    }
    for (field, inputs) in [
        ("sheet_parts", sheets("2441 × 100")),
        ("sheet_parts", sheets("100 × 2441")),
        ("others.0", Inputs { others: lines(["-1 hinges"]), ..nothing() }),
        ("others.0", Inputs { others: lines(["0 × 3 hinges"]), ..nothing() }),
        ("pin_box", Inputs { pins: lines(["1"]), pin_box: "100001".into(), ..nothing() }),
        ("density", Inputs { material: Choice::Own, density: "0".into(), ..sheets("9 × 9") }),
    ] {
        assert!(solve(&inputs).unwrap_err().of(field).is_some(), "{field}");
    }
}

/// By hand, at 700 kg/m³: a sheet of 2440 × 1220 × 18 has 2.9768 m², two parts of 1000 × 500 have 1 m².
#[test]
fn sheets_by_hand() {
    let inputs = Inputs {
        sheet_parts: lines(["1000 × 500 × 2"]),
        material: Choice::Own,
        density: "700".into(),
        thickness: Reading::mm("18"),
        sheets: "2".into(),
        sheet_waste: "10".into(),
        ..nothing()
    };
    let near = |got: f64, want: f64| assert!((got - want).abs() < 1e-9, "{got}, by hand {want}");
    let sheets = solved(&inputs).sheets.unwrap();
    assert_eq!((sheets.parts, sheets.count, sheets.by_area), (2, 2, false));
    near(sheets.net_m2, 1.0);
    near(sheets.gross_m2, 1.1);
    near(sheets.bought_m2, 5.9536);
    near(sheets.sheet_kg, 37.507_68); // 2.9768 · 12.6
    near(sheets.parts_kg, 12.6);
    // One face of them in two coats at 10 m² a litre.
    for (coat, litres) in [(Coat::OneFace, 0.2), (Coat::BothFaces, 0.4)] {
        let inputs = Inputs { coat, coats: "2".into(), coverage: "10".into(), ..inputs.clone() };
        near(solved(&inputs).finish.unwrap().litres, litres);
    }
}

#[test]
fn cautions_go_with_what_is_bought() {
    use Caution::{DustAndNoise, Estimate, GluesAndFinishes, SheetHandling};
    for (inputs, want) in [
        (Inputs { sheet_parts: lines(["9 × 9"]), ..nothing() }, &[SheetHandling, DustAndNoise, Estimate][..]),
        (Inputs { boards: lines(["9 × 9 × 9"]), ..nothing() }, &[DustAndNoise]),
        (Inputs { joints: lines(["9 × 9"]), ..nothing() }, &[GluesAndFinishes]),
        (Inputs { coat: Coat::Listed, faces: lines(["9 × 9"]), ..nothing() }, &[GluesAndFinishes]),
        (Inputs { pins: lines(["9"]), ..nothing() }, &[]),
    ] {
        assert_eq!(solved(&inputs).cautions, want);
    }
}

#[test]
fn symbols_in_a_formula_are_those_given() {
    for sheets in ["", "3"] {
        for step in solved(&Inputs { sheets: sheets.into(), ..Inputs::default() }).working.0 {
            for (symbol, _) in &step.given {
                assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
            }
        }
    }
}

proptest! {
    #[test]
    fn inches_change_nothing(sizes in (16_i64..600, 16_i64..600, 4_i64..40), count in 1_u32..9, coat in select(Coat::ALL)) {
        let (long, wide, thick) = sizes;
        let with = |size: &dyn Fn(i64) -> String, bare: fn(&str) -> Reading| {
            let (long, wide, thick) = (size(long), size(wide), size(thick));
            solve(&Inputs {
                sheet_parts: vec![bare(&format!("{long} × {wide} × {count}"))],
                boards: vec![bare(&format!("{long} x {wide} x {thick} x {count}"))],
                edges: vec![bare(&format!("{long} × {count}"))],
                faces: vec![bare(&format!("{wide} × {thick} × {count}"))],
                joints: vec![bare(&format!("{long} × {thick} × {count}"))],
                coat,
                ..Inputs::default()
            })
        };
        // A sixteenth is 1.5875 mm.
        let metric = |sixteenths: i64| format!("{}.{:04}", sixteenths * 15_875 / 10_000, sixteenths * 15_875 % 10_000);
        prop_assert_eq!(with(&|n| format!("{n}/16"), Reading::inches), with(&metric, Reading::mm));
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "[0-9 ×x.,/a-z-]{0,20}", coat in select(Coat::ALL)) {
        let list = vec![Reading::mm(&typed), Reading::mm(&other)];
        let figure = || Figure::new(typed.as_str());
        let _ = solve(&Inputs {
            sheet_parts: list.clone(),
            boards: list.clone(),
            edges: list.clone(),
            joints: list.clone(),
            faces: list.clone(),
            screws: list.clone(),
            others: list.clone(),
            pins: list,
            sheet_waste: figure(),
            sheet_price: figure(),
            coverage: Figure::new(other.as_str()),
            coat,
            ..Inputs::default()
        });
        let _ = solve(&Inputs { others: vec![Reading::mm(&other)], ..nothing() });
    }

    #[test]
    fn no_size_panics(big in any::<i64>(), small in 1_u64..u64::MAX, count in any::<u32>(), places in any::<u64>()) {
        let size = format!("{big}/{small}");
        let list = |sizes: usize| vec![Reading::mm(&format!("{}{count}", format!("{size} × ").repeat(sizes)))];
        let _ = solve(&Inputs {
            sheet_parts: list(2),
            boards: list(3),
            edges: list(1),
            joints: list(2),
            screws: vec![Reading::mm(&format!("{count} × {places}"))],
            others: vec![Reading::mm(&format!("{count} × {size}"))],
            sheet_length: Reading::mm(&size),
            sheet_price: size.as_str().into(),
            coverage: size.as_str().into(),
            roll: Reading::mm(&size),
            ..Inputs::default()
        });
        let _ = solve(&Inputs { boards: list(3), board_price: size.as_str().into(), ..nothing() });
        let _ = solve(&Inputs { others: vec![Reading::mm(&format!("{count} × {size}"))], ..nothing() });
    }
}
