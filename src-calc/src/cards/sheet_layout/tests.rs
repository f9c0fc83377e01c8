use super::{Answer, Further, Inputs, List, solve};
use crate::measure::{Reading, Unit};
use crate::sheets::Grain;
use proptest::prelude::*;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn lines<const N: usize>(typed: [&str; N]) -> Vec<Reading> {
    typed.map(Reading::mm).to_vec()
}

/// What a line of the parts is read as: `name: length × width × number, stock, grain`; or its problem.
fn read(typed: &str, bare: Unit) -> String {
    let inputs = Inputs { parts: vec![Reading::new(typed, bare)], ..Inputs::default() };
    match solve(&inputs) {
        Ok(answer) => answer.job.parts.iter().map(said).collect(),
        Err(problems) => problems.iter().map(|(field, problem)| format!("{field}: {problem}")).collect(),
    }
}

fn said(part: &crate::sheets::Part) -> String {
    let grain = match part.grain {
        Grain::Along => "",
        Grain::Across => ", across",
        Grain::Free => ", free",
    };
    let stock = if part.stock.is_empty() { String::new() } else { format!(", {}", part.stock) };
    format!("{}: {} × {} × {}{stock}{grain}", part.name, part.length, part.width, part.quantity)
}

#[test]
fn parts_are_read_as_people_write_them() {
    for (typed, want) in [
        ("Side 600 x 400 x3", "Side: 600 mm × 400 mm × 3"),
        ("Side 600×400", "Side: 600 mm × 400 mm × 1"),
        ("600 x 400 x 2", "Part 1: 600 mm × 400 mm × 2"),
        ("600mmx400mmx2", "Part 1: 600 mm × 400 mm × 2"),
        ("Box back 600 X 400 X 2 off", "Box back: 600 mm × 400 mm × 2"),
        ("Box 2 long, 600 x 400 x 2", "Box 2 long: 600 mm × 400 mm × 2"),
        ("Shelf 2, 800 x 330 x 4", "Shelf 2: 800 mm × 330 mm × 4"),
        ("Shelf no. 2 1164 x 411,5", "Shelf no. 2: 1164 mm × 411.5 mm × 1"),
        ("Door - 1164 x 411.5 x 2", "Door: 1164 mm × 411.5 mm × 2"),
        ("Back 600 - 2*15 x 400", "Back: 570 mm × 400 mm × 1"),
        ("Back 600 * 400 * 2", "Back: 600 mm × 400 mm × 2"),
        ("Rail 23 5/8 in x 3 1/2\" x 2", "Rail: 600.075 mm × 88.9 mm × 2"),
        ("Rail 2' 3 1/2\" x 12\" x 2 birch", "Rail: 698.5 mm × 304.8 mm × 2, birch"),
        ("Shelf 800 x 330 x 4 across", "Shelf: 800 mm × 330 mm × 4, across"),
        ("Shelf 800 x 330 x 4 Birch ply free", "Shelf: 800 mm × 330 mm × 4, birch ply, free"),
        ("Shelf 800 x 330 mm birch", "Shelf: 800 mm × 330 mm × 1, birch"),
        ("Shelf 800 x 330 x 4, birch, across", "Shelf: 800 mm × 330 mm × 4, birch, across"),
    ] {
        assert_eq!(read(typed, Unit::Mm), want, "{typed}");
    }
    assert_eq!(read("Rail 23 5/8 x 3 1/2 x 2", Unit::In), "Rail: 600.075 mm × 88.9 mm × 2");
}

#[test]
fn tables_are_read_as_programs_write_them() {
    for (typed, want) in [
        ("Side\t600\t400\t3", "Side: 600 mm × 400 mm × 3"),
        ("Side\t600\t400\t3\tbirch\tacross", "Side: 600 mm × 400 mm × 3, birch, across"),
        ("Side\t600\t400\t", "Side: 600 mm × 400 mm × 1"),
        ("Side\t600 x 400\t3", "Side: 600 mm × 400 mm × 3"),
        ("2x4 stud\t600\t400\t3", "2x4 stud: 600 mm × 400 mm × 3"),
        ("600\t400\t3", "Part 1: 600 mm × 400 mm × 3"),
        ("7\t600\t400\t3", "7: 600 mm × 400 mm × 3"),
        ("Side;411,5;400;3;;free", "Side: 411.5 mm × 400 mm × 3, free"),
        ("\"Side; left\";600;400;3", "Side; left: 600 mm × 400 mm × 3"),
        ("\"Side, left\",600,400,3", "Side, left: 600 mm × 400 mm × 3"),
        ("\"the \"\"good\"\" one\",600,400,3", "the \"good\" one: 600 mm × 400 mm × 3"),
        ("Side,\"411,5\",400,3", "Side: 411.5 mm × 400 mm × 3"),
        ("Side, 411,5, 400, 3", "Side: 411.5 mm × 400 mm × 3"),
        ("Rail,\"23 5/8\"\"\",\"3 1/2\"\"\",2", "Rail: 600.075 mm × 88.9 mm × 2"),
        ("Rail, 23 5/8\", 3 1/2\", 2", "Rail: 600.075 mm × 88.9 mm × 2"),
        ("\u{FEFF}Side,600,400", "Side: 600 mm × 400 mm × 1"),
    ] {
        assert_eq!(read(typed, Unit::Mm), want, "{typed:?}");
    }
}

#[test]
fn a_heading_says_what_the_columns_are() {
    let inputs = Inputs {
        parts: lines(["", "Qty;Width;Length;Description;Material", "3;400;600;Side;birch", "Shelf 800 x 330 x 4"]),
        ..Inputs::default()
    };
    let answer = solved(&inputs);
    let said: Vec<String> = answer.job.parts.iter().map(said).collect();
    assert_eq!(said, ["Side: 600 mm × 400 mm × 3, birch", "Shelf: 800 mm × 330 mm × 4, birch"]);
    assert_eq!((answer.parts[0].line, answer.parts[1].line, answer.marks.len()), (2, 3, 0));
}

/// Whatever unit a bare number has elsewhere.
#[test]
fn a_heading_says_what_its_numbers_are_in() {
    let list = ["Part,Length (mm),Width (in),Number", "Side,600,12,3", "Top,24 in,300 mm,1"];
    let inputs = Inputs { parts: list.map(Reading::inches).to_vec(), ..Inputs::default() };
    let said: Vec<String> = solved(&inputs).job.parts.iter().map(said).collect();
    assert_eq!(said, ["Side: 600 mm × 304.8 mm × 3", "Top: 609.6 mm × 300 mm × 1"]);
}

#[test]
fn what_cannot_be_told_is_asked() {
    for (typed, want) in [
        ("Side", "parts.0: Write a name, length × width"),
        ("Side 600", "parts.0: Write a name, length × width"),
        ("Side;600", "parts.0: Write a name, length × width"),
        ("1 x 2 x 3 x 4", "parts.0: Write a name, length × width"),
        ("Side 1,200 x 400", "parts.0: Is 1,200 a decimal comma or a thousand?"),
        ("Side 2 800 x 330 x 4", "parts.0: Does the space part thousands"),
        ("1 200 x 400 x 2", "parts.0: Does the space part thousands"),
        ("2 x 600 x 400", "parts.0: Does this begin with how many?"),
        ("Side,1164,411,5,2", "parts.0: There is a number too many."),
        ("Side 0 x 400 x 3", "parts.0: This has to be more than zero."),
        ("Side -600 x 400 x 3", "parts.0: This has to be more than zero."),
        ("Side 600 x 400 x 0", "parts.0: This has to be more than zero."),
        ("Side 600 x 400 x -1", "parts.0: A whole number is wanted here"),
        ("Side 600 x 400 x 1.5", "parts.0: A whole number is wanted here"),
        ("Side 600 x 400 x 1000", "parts.0: At most 999 is accepted"),
        ("Side 600 kg x 400", "parts.0: “kg” is not a unit of length known here."),
        ("Side;600;four;3", "parts.0: “four” is not a unit"),
        ("Side;600;400;3;birch;upwards", "parts.0: Behind the number stand the stock and the grain"),
        ("Side 600 x 400 x 3, a, b, c", "parts.0: Behind the number stand the stock and the grain"),
        ("   ", "parts: List the parts, one a line"),
    ] {
        let got = read(typed, Unit::Mm);
        assert!(got.starts_with(want), "{typed:?}: {got}");
    }
    let long = format!("Side {} 600 x 400", "very ".repeat(100));
    assert!(read(&long, Unit::Mm).contains("too long for a line"));
    assert!(read("Side 1e9 x 400", Unit::Mm).starts_with("parts.0: "));
}

#[test]
fn a_line_that_cannot_be_read_is_marked_and_the_rest_is_laid_out() {
    let inputs =
        Inputs { parts: lines(["Side 600 x 400 x3", "", "Top 6oo x 400", "Shelf 500 x 300"]), ..Inputs::default() };
    let answer = solved(&inputs);
    assert_eq!(answer.parts.len(), 2);
    assert_eq!(answer.figures.pieces, 4);
    let [mark] = answer.marks.as_slice() else { panic!("{:?}", answer.marks) };
    assert_eq!((mark.list, mark.line, mark.typed.as_str()), (List::Parts, 2, "Top 6oo x 400"));
    let stock = Inputs { sheets: lines(["mdf 2440"]), offcuts: lines(["900 x 600", "900 x six"]), ..Inputs::default() };
    let marks = solved(&stock).marks;
    assert_eq!(
        marks.iter().map(|mark| (mark.list, mark.line)).collect::<Vec<_>>(),
        [(List::Sheets, 0), (List::Offcuts, 1)]
    );
}

#[test]
fn too_many_lines_and_pieces_are_marked_once() {
    let many = Inputs { parts: vec![Reading::mm("40 x 30"); 450], ..Inputs::default() };
    let answer = solved(&many);
    assert_eq!((answer.parts.len(), answer.marks.len(), answer.marks[0].line), (400, 1, 400));
    let heaps = Inputs {
        parts: lines(["a 40 x 30 x 999", "b 40 x 30 x 999", "c 40 x 30 x 3", "d 40 x 30 x 2"]),
        ..Inputs::default()
    };
    let answer = solved(&heaps);
    assert_eq!((answer.figures.pieces, answer.marks.len(), answer.marks[0].line), (2000, 1, 2));
}

#[test]
fn stock_is_read_with_price_and_grain() {
    let with = |sheets: &str, offcuts: &str| {
        let inputs = Inputs { sheets: lines([sheets]), offcuts: lines([offcuts]), ..Inputs::default() };
        let answer = solved(&inputs);
        let said = answer.job.stock.iter().map(|stock| {
            let price = stock.price.map_or_else(String::new, |price| format!(" at {}", price.as_f64()));
            let quantity = stock.quantity.map_or_else(|| "any".to_owned(), |count| count.to_string());
            let offcut = if stock.offcut { " offcut" } else { "" };
            format!("{} {} × {} × {quantity}{price} {:?}{offcut}", stock.name, stock.length, stock.width, stock.grain)
        });
        (said.collect::<Vec<_>>(), answer.marks)
    };
    let (said, marks) = with("MDF 18, 2800 x 2070 x 2, 72,50 plain", "900 x 600");
    assert!(marks.is_empty(), "{marks:?}");
    assert_eq!(
        said,
        [
            " 900 mm × 600 mm × 1 Along offcut",
            " 2440 mm × 1220 mm × any at 64.5 Along",
            "mdf 18 2800 mm × 2070 mm × 2 at 72.5 Plain",
        ]
    );
    let (said, marks) = with("birch;1525;1525;;41.20;across", "birch 700 x 500 x 3 across");
    assert!(marks.is_empty(), "{marks:?}");
    assert_eq!(said[0], "birch 700 mm × 500 mm × 3 Across offcut");
    assert_eq!(said[2], "birch 1525 mm × 1525 mm × any at 41.2 Across");
    let (_, marks) = with("1525 x 1525, dear", "700 x 500 x 0");
    assert_eq!(marks.len(), 2, "{marks:?}");
}

#[test]
fn the_one_name_that_parts_ask_for_is_the_main_sheets() {
    let parts = lines(["a 600 x 400 x 2 Birch  ply", "b 500 x 300 x 2"]);
    let one = solved(&Inputs { parts: parts.clone(), ..Inputs::default() });
    assert!(one.left_out.is_empty() && one.figures.pieces == 4, "{:?}", one.left_out);
    let two = solved(&Inputs { parts: lines(["a 600 x 400 birch", "b 500 x 300 mdf"]), ..Inputs::default() });
    assert_eq!(two.left_out.len(), 2, "{:?}", two.left_out);
    let named = Inputs { parts, sheet_name: "mdf".into(), ..Inputs::default() };
    let left = solved(&named).left_out;
    assert_eq!(left.len(), 1);
    assert!(left[0].name == "a" && left[0].count == 2 && left[0].why.contains("no stock of this name"), "{left:?}");
}

#[test]
fn what_does_not_fit_is_named_with_the_reason() {
    let inputs = Inputs {
        parts: lines(["long 3000 x 100", "wide 1300 x 1500", "Side 600 x 400 x 30"]),
        sheet_count: "1".into(),
        ..Inputs::default()
    };
    let left = solved(&inputs).left_out;
    let why = |name: &str| left.iter().find(|left| left.name == name).map(|left| left.why.clone()).unwrap_or_default();
    assert!(why("long").contains("larger than every") && why("Side").contains("used up"), "{left:?}");
    assert!(!why("wide").is_empty(), "{left:?}");
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let bad = Inputs {
        sheet_length: Reading::mm("x"),
        sheet_width: Reading::mm("0"),
        sheet_count: "1.5".into(),
        sheet_price: "-1".into(),
        kerf: Reading::mm("21"),
        trim: Reading::mm("-1"),
        longest_rip: Reading::mm("0"),
        least_offcut: Reading::mm("-5"),
        ..Inputs::default()
    };
    let problems = solve(&bad).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    let want =
        ["sheet_length", "sheet_width", "sheet_count", "sheet_price", "kerf", "trim", "longest_rip", "least_offcut"];
    assert_eq!(fields, want);
    let trim = solve(&Inputs { trim: Reading::mm("610"), ..Inputs::default() }).unwrap_err();
    assert!(trim.of("trim").is_some(), "{trim:?}");
}

#[test]
fn the_demo_adds_up() {
    let answer = solved(&Inputs::default());
    // 2·1.17·0.33 + 4·0.8·0.33 + 2·1.164·0.4115 + 2·0.8·0.095 + 3·0.8·0.07 + 2·0.62·0.18
    // + 1.2·0.42 + 8·0.4·0.14 + 4·0.39·0.16, by hand.
    assert!((answer.figures.parts_m2 - 4.530_972).abs() < 1e-9, "{}", answer.figures.parts_m2);
    assert_eq!((answer.sheets(), answer.bound, answer.figures.pieces), ((2, 0), 2, 28));
    assert!((answer.figures.yield_percent - 100.0 * 4.530_972 / 5.9536).abs() < 1e-9);
    assert_eq!(answer.figures.cost.map(|cost| cost.to_string()).as_deref(), Some("129.00"));
    assert!(answer.marks.is_empty() && answer.left_out.is_empty());
    for step in answer.working.0 {
        for (symbol, _) in &step.given {
            assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
        }
    }
}

#[test]
fn an_offcut_waits_for_the_next_list_and_is_used_first() {
    let inputs = Inputs { parts: lines(["Side 600 x 400 x 3"]), ..Inputs::default() };
    let answer = solved(&inputs);
    let kept = answer.offcuts();
    assert!(!kept.is_empty());
    let put_by = Inputs { kept: kept.clone(), ..inputs };
    let same = solved(&put_by);
    assert_eq!((same.waiting, same.layout_mark.as_str()), (kept.len(), answer.layout_mark.as_str()));
    let next = solved(&Inputs { parts: lines(["Shelf 500 x 300"]), ..put_by });
    assert_eq!((next.waiting, next.sheets()), (0, (0, 1)));
    assert_eq!(next.figures.cost, None);
}

#[test]
fn what_was_found_is_there_again() {
    let inputs = Inputs::default();
    let answer = solved(&inputs);
    let Some(mut further) = Further::of(&answer) else { return };
    let (mut best, mut asked) = (answer, inputs);
    while !further.progress().done {
        further.step(500);
        if let Some((inputs, answer)) = further.better(&asked, &best) {
            (asked, best) = (inputs, answer);
        }
    }
    assert!(best.done);
    let text = serde_json::to_string(&asked).unwrap();
    let again: Inputs = serde_json::from_str(&text).unwrap();
    assert!(again == asked);
    let reopened = solved(&again);
    assert_eq!((reopened.layout_mark, reopened.done), (best.layout_mark, true));
    // Another job is laid out anew, and a damaged layout takes nothing of what was typed with it.
    let other = solved(&Inputs { trim: Reading::mm("5"), ..again.clone() });
    assert_ne!(other.job_mark, best.job_mark);
    let damaged = text.replace("\"settings\"", "\"lost\"");
    let kept: Inputs = serde_json::from_str(&damaged).unwrap();
    assert!(kept.found.is_none() && kept.parts == again.parts);
}

/// A board just over half a sheet both ways has a sheet to itself, which the area does not show.
#[test]
fn what_is_learned_of_a_long_list_is_told() {
    let inputs = Inputs { parts: lines(["Top 1300 × 650 × 120"]), ..Inputs::default() };
    let before = solved(&inputs);
    assert_eq!(before.layout.sheets.len(), 120);
    assert!(!before.done && before.bound < 60, "{}", before.bound);
    let mut further = Further::of(&before).unwrap();
    further.step(40);
    let (_, after) = further.better(&inputs, &before).unwrap();
    assert_eq!((after.bound, after.layout), (120, before.layout));
}

proptest! {
    #[test]
    fn no_text_panics(typed in "\\PC*", other in "[0-9 ×x.,;\t\"'/a-z-]{0,40}") {
        let list = vec![Reading::mm(&typed), Reading::mm(&other), Reading::inches(&other)];
        let lists = Inputs { parts: list.clone(), sheets: list.clone(), offcuts: list, ..Inputs::default() };
        let _ = solve(&lists);
        let stock = Inputs { parts: lines(["Side 60 x 40"]), ..lists };
        let _ = solve(&stock);
        let _ = solve(&Inputs {
            sheet_length: Reading::mm(&typed),
            sheet_width: Reading::mm(&other),
            sheet_count: other.as_str().into(),
            sheet_price: typed.as_str().into(),
            kerf: Reading::mm(&other),
            longest_rip: Reading::mm(&other),
            ..Inputs::default()
        });
    }

    #[test]
    fn however_a_line_is_written_it_is_the_same_part(length in 20_u32..2400, width in 20_u32..1200, count in 1_u32..9) {
        let want = format!("Side: {length} mm × {width} mm × {count}");
        for line in [
            format!("Side {length} x {width} x {count}"),
            format!("Side, {length}×{width}×{count}"),
            format!("Side\t{length}\t{width}\t{count}"),
            format!("Side;{length};{width};{count}"),
            format!("Side,{length},{width},{count}"),
            format!("Side, {length}, {width}, {count}"),
        ] {
            prop_assert_eq!(read(&line, Unit::Mm), want.clone(), "{}", line);
        }
    }
}

#[test]
fn one_absurd_size_marks_its_line_and_spoils_nothing_else() {
    let parts = ["Side 600 × 400 × 2", "Slip 99999999 × 3", "Mast 30000 × 20", "Pole 20 × 29999"].map(Reading::mm);
    let answer = solve(&Inputs { parts: parts.to_vec(), ..Inputs::default() }).unwrap();
    assert_eq!(answer.marks.iter().map(|mark| mark.line).collect::<Vec<_>>(), [1, 2]);
    assert_eq!(answer.parts.len(), 2);
}
