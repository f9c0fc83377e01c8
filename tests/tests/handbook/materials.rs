//! Rows M (weights), Q-6 and Q-7 (finish and glue), the table of sheet sizes, and published examples of board measure.

use scantling::cards::materials::{Answer, Coat, Inputs, SolidPer, solve};
use scantling::measure::{Figure, Reading};
use scantling::stock::materials::Choice;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// Nothing but what a check is about.
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

/// One whole sheet.
fn sheet([length, width, thickness]: [&str; 3], material: Choice, density: &str) -> Inputs {
    Inputs {
        sheet_parts: vec![Reading::mm(&format!("{length} × {width}"))],
        sheet_length: Reading::mm(length),
        sheet_width: Reading::mm(width),
        sheet_waste: Figure::default(),
        thickness: Reading::mm(thickness),
        material,
        density: density.into(),
        ..nothing()
    }
}

#[track_caller]
fn near(got: f64, want: f64, within: f64, id: &str) {
    assert!((got - want).abs() <= within, "{id}: {got} is not {want}");
}

#[test]
fn m1_to_m8_weights() {
    for (id, size, density, kg, kg_per_m2) in [
        ("M-1", ["2440", "1220", "18"], "720", 38.579, 12.960),
        ("M-2", ["2800", "2070", "18"], "650", 67.813, 11.700),
        ("M-3", ["2440", "1220", "17.7"], "685", 36.092, 12.124),
        ("M-4", ["1525", "1525", "12"], "695", 19.396, 8.340),
        ("M-5", ["2440", "1220", "3.2"], "1000", 9.526, 3.200),
        ("M-6", ["2500", "1250", "18"], "650", 36.562, 11.700),
        ("M-7", ["914.4", "254", "19.05"], "705.6", 3.122, 13.442),
        ("M-8", ["2440", "1220", "18"], "460", 24.648, 8.280),
    ] {
        let sheets = solved(&sheet(size, Choice::Own, density)).sheets.unwrap();
        assert_eq!(sheets.count, 1, "{id}");
        near(sheets.sheet_kg, kg, 0.000_51, id);
        near(sheets.parts_kg, kg, 0.000_51, id);
        near(sheets.parts_kg / sheets.net_m2, kg_per_m2, 0.000_51, id);
    }
    // Where the table of materials has the same density, it is found by the thickness.
    for (id, size, material, kg) in [
        ("M-1", ["2440", "1220", "18"], "mdf", 38.579),
        ("M-3", ["2440", "1220", "17.7"], "plywood_birch", 36.092),
        ("M-4", ["1525", "1525", "12"], "plywood_birch", 19.396),
    ] {
        let sheets = solved(&sheet(size, Choice::find(material).unwrap(), "")).sheets.unwrap();
        near(sheets.sheet_kg, kg, 0.000_51, id);
    }
}

#[test]
fn sheet_sizes_have_their_areas() {
    for (length, width, m2) in [
        ("2440", "1220", 2.9768),
        ("2500", "1250", 3.1250),
        ("1525", "1525", 2.3256),
        ("96 in", "48 in", 2.9729),
        ("60 in", "60 in", 2.3226),
        ("3050", "1220", 3.7210),
        ("2800", "2070", 5.7960),
    ] {
        let sheets = solved(&sheet([length, width, "18"], Choice::Own, "700")).sheets.unwrap();
        near(sheets.bought_m2, m2, 0.000_051, length);
        near(sheets.net_m2, m2, 0.000_051, length);
    }
}

#[test]
fn q6_and_q7_finish_and_glue() {
    let q6 = Inputs {
        coat: Coat::Listed,
        faces: vec![Reading::mm("3.7 m × 1 m × 2")],
        coats: "3".into(),
        coverage: "11".into(),
        ..nothing()
    };
    near(solved(&q6).finish.unwrap().litres, 2.0182, 0.000_05, "Q-6");
    let q7 = Inputs {
        joints: vec![Reading::mm("1.86 m × 1 m")],
        glue_spread: "180".into(),
        bottle: "1".into(),
        ..nothing()
    };
    near(solved(&q7).glue.unwrap().kg, 0.3348, 1e-12, "Q-7");
}

/// Published: a shop's page on hardwood (144 in³; 3/4 in counts as 1 in), a dealer's page on lumber measure, a US Navy
/// training manual for engineering aids (less than 1 in counts as 1 in).
#[test]
fn board_feet_as_published() {
    for (board, feet, source) in [
        ("96 × 9 × 1", "6.00", "1 × 9 × 96 = 864, / 144 (shop's page)"),
        ("96 × 9 × 1 1/2", "9.00", "1.5 × 9 × 96 = 1296, / 144 (shop's page)"),
        ("96 × 9 × 3/4", "6.00", "3/4 in is taken as a full inch (shop's page, training manual)"),
        ("10 ft × 6 × 1", "5.00", "1 in × 6 in × 10 ft (dealer's page)"),
        ("12 × 12 × 1", "1.00", "the definition (training manual)"),
    ] {
        let inputs = Inputs {
            boards: vec![Reading::inches(board)],
            board_waste: Figure::default(),
            board_per: SolidPer::BoardFoot,
            ..nothing()
        };
        let answer = solved(&inputs);
        assert_eq!(answer.boards.unwrap().gross_board_feet.to_string(), feet, "{board}: {source}");
        assert_eq!(answer.list.items.first().unwrap().quantity.to_string(), feet, "{board}");
    }
}
