//! Rows: parts in a row on a sheet. Each row is laid out, not only worked out: so many parts lie on one sheet,
//! and one more takes a second.

use scantling::cards::sheet_layout::{Answer, Inputs, solve};
use scantling::measure::{Figure, Reading};

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// Parts of this length, as wide as the sheet, on a sheet of this usable length.
fn in_a_row(usable: &str, part: &str, kerf: &str, count: u32) -> Inputs {
    Inputs {
        parts: vec![Reading::mm(&format!("strip {part} × 600 × {count}"))],
        sheet_length: Reading::mm(usable),
        sheet_width: Reading::mm("600"),
        sheet_price: Figure::default(),
        kerf: Reading::mm(kerf),
        trim: Reading::mm("0"),
        least_offcut: Reading::mm("1"),
        ..Inputs::default()
    }
}

#[test]
fn q1_to_q5_parts_in_a_row() {
    for (id, usable, part, kerf, count, left) in [
        ("Q-1", "2440", "300", "3.2", 8, "17.6 mm"),
        ("Q-2", "2420", "300", "3.2", 7, "300.8 mm"),
        ("Q-3", "2440", "402.6", "2.4", 6, "12.4 mm"),
        ("Q-4", "1220", "400", "3.2", 3, "13.6 mm"),
        ("Q-5", "96 in", "11 7/8 in", "1/8 in", 8, "3.175 mm"),
    ] {
        let answer = solved(&in_a_row(usable, part, kerf, count));
        assert_eq!(answer.sheets(), (1, 0), "{id}");
        let row = answer.figures.in_a_row.unwrap();
        assert_eq!((row.count, row.left.to_string().as_str()), (count, left), "{id}");
        assert_eq!(solved(&in_a_row(usable, part, kerf, count + 1)).sheets(), (2, 0), "{id}, and one more");
    }
}

/// With a cut behind the last part, too, as much less is left over as the kerf.
#[test]
fn q1_to_q4_with_a_cut_behind_the_last() {
    for (id, usable, part, kerf, count, left) in [
        ("Q-1", "2440", "300", "3.2", 8, "14.4 mm"),
        ("Q-2", "2420", "300", "3.2", 7, "297.6 mm"),
        ("Q-3", "2440", "402.6", "2.4", 6, "10 mm"),
        ("Q-4", "1220", "400", "3.2", 3, "10.4 mm"),
    ] {
        let answer = solved(&in_a_row(usable, part, kerf, count));
        let left_over: Vec<String> = answer
            .layout
            .sheets
            .iter()
            .flat_map(|sheet| &sheet.left)
            .map(|left| left.area.length.to_string())
            .collect();
        assert_eq!(left_over, [left], "{id}");
    }
}

/// Q-1 against Q-2: trimming 10 mm off each end loses one whole part.
#[test]
fn a_trim_can_lose_a_part() {
    let trimmed = |trim: &str| Inputs {
        parts: vec![Reading::mm("strip 300 × 500 × 8")],
        trim: Reading::mm(trim),
        ..in_a_row("2440", "300", "3.2", 8)
    };
    assert_eq!(solved(&trimmed("0")).sheets(), (1, 0));
    assert_eq!(solved(&trimmed("10")).sheets(), (2, 0));
}
