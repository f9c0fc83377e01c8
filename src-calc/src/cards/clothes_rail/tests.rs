use super::{Answer, Brackets, Hung, Inputs, Load, Material, Note, Shape, solve};
use crate::cards::shelf::{Found, Judged, Limit};
use crate::measure::{Graduation, Length, Quantity, Reading};
use crate::stock::clothes::Garments;
use crate::stock::materials::Choice;
use proptest::prelude::*;
use proptest::sample::select;

mod limits;

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn mm(typed: &str) -> Length {
    Reading::mm(typed).length().unwrap()
}

fn close(got: f64, want: f64, relative: f64, what: &str) {
    assert!((got - want).abs() <= relative * want.abs(), "{what}: got {got}, want {want}");
}

fn problem(inputs: &Inputs, field: &str) -> String {
    solve(inputs).unwrap_err().of(field).map(ToString::to_string).unwrap_or_default()
}

#[test]
fn every_bad_field_has_its_own_problem() {
    let inputs = Inputs {
        shape: Shape::OvalTube,
        height: Reading::mm("0"),
        width: Reading::mm("300"),
        wall: Reading::mm("?"),
        span: Reading::mm("-1"),
        load: Load::PerMetre,
        per_metre: "-1".into(),
        limit: Limit::Own,
        hung: Hung::Top,
        bracket_drop: Reading::mm("0"),
        sheet: Reading::mm(""),
        hook: Reading::mm("-1"),
        drop: Reading::mm("0"),
        below: Reading::mm("x"),
        hanger: Reading::mm("0"),
        bulk: Reading::mm("-5"),
        inside_depth: Reading::mm(""),
        inside_height: Reading::mm("100 m"),
        ..Inputs::default()
    };
    let problems = solve(&inputs).unwrap_err();
    let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
    let want = "height width wall span per_metre own_limit bracket_drop sheet hook drop below hanger bulk \
                inside_depth inside_height";
    assert_eq!(fields, want.split_whitespace().collect::<Vec<_>>());
}

#[test]
fn walls_that_meet_and_boards_are_refused() {
    assert!(problem(&Inputs { wall: Reading::mm("12.6"), ..Inputs::default() }, "wall").contains("12.5 mm"));
    let meet = solved(&Inputs { wall: Reading::mm("12.5"), ..Inputs::default() });
    let bar = solved(&Inputs { shape: Shape::RoundBar, ..Inputs::default() });
    assert_eq!(meet.section.second_moment_mm4, bar.section.second_moment_mm4);
    for wood in [Choice::Own, Choice::find("mdf").unwrap()] {
        let inputs = Inputs { material: Material::Wood, wood, ..Inputs::default() };
        assert!(problem(&inputs, "wood").contains("solid wood"));
    }
    let low = Inputs { hung: Hung::Top, bracket_drop: Reading::mm("12"), ..Inputs::default() };
    assert!(problem(&low, "bracket_drop").contains("12.5 mm"));
}

#[test]
fn blocks_are_whole_layers_that_clear_the_hooks() {
    // Wanted 60 + 12.5 = 72.5 mm down; the bracket reaches 32 mm: 40.5 mm missing, three layers of 14.6 are 43.8.
    let top = Inputs { hung: Hung::Top, brackets: Brackets::Middle, ..Inputs::default() };
    let room = solved(&top).room;
    let blocks = room.blocks.unwrap();
    assert_eq!((blocks.least, blocks.layers, blocks.thickness), (mm("40.5"), 3, mm("43.8")));
    assert_eq!((blocks.count, room.middle_down, room.hook), (3, mm("75.8"), mm("63.3")));
    // Two layers of 20.25 mm are just enough.
    let just = solved(&Inputs { sheet: Reading::mm("20.25"), ..top.clone() }).room;
    assert_eq!((just.blocks.unwrap().layers, just.hook), (2, mm("60")));
    // A bracket that reaches down far enough needs no block, and the rail hangs where it puts it.
    let long = solved(&Inputs { bracket_drop: Reading::mm("80"), ..top }).room;
    assert_eq!((long.blocks.unwrap().layers, long.hook), (0, mm("67.5")));
}

#[test]
fn room_adds_up() {
    let room = solved(&Inputs::default()).room;
    // 60 + 25/2; 60 + 1450 + 50; 450 + 2·75.
    assert_eq!((room.middle_down, room.height, room.depth), (mm("72.5"), mm("1560"), mm("600")));
    assert_eq!((room.height_spare, room.depth_spare, room.from_back), (mm("40"), mm("10"), mm("300")));
    let own = solved(&Inputs { drop: Reading::mm("900"), ..Inputs::default() }).room;
    assert_eq!(own.height, mm("1010"));
    let shallow = solved(&Inputs { inside_depth: Reading::mm("500"), ..Inputs::default() }).room;
    assert_eq!((shallow.depth_spare, shallow.from_back), (mm("-100"), mm("250")));
}

#[test]
fn notes_name_what_is_wrong() {
    let demo = Inputs::default;
    for (inputs, note) in [
        (Inputs { inside_depth: Reading::mm("330"), ..demo() }, Note::HangersDoNotFit),
        (Inputs { inside_depth: Reading::mm("500"), ..demo() }, Note::ClothesTouch),
        (Inputs { inside_height: Reading::mm("1559"), ..demo() }, Note::TooLong),
        (Inputs { hook: Reading::mm("49"), ..demo() }, Note::HooksCatch),
        (
            Inputs { shape: Shape::FlatBar, width: Reading::mm("40"), height: Reading::mm("39"), ..demo() },
            Note::LiesFlat,
        ),
        (Inputs { brackets: Brackets::Middle, ..demo() }, Note::Uneven),
        (Inputs { garments: Garments::Shirts, ..demo() }, Note::BelowTestLoad),
        (Inputs { span: Reading::mm("5000"), ..demo() }, Note::PastFormula),
    ] {
        assert!(!solved(&demo()).notes.contains(&note), "{note:?}");
        assert!(solved(&inputs).notes.contains(&note), "{note:?} in {:?}", solved(&inputs).notes);
    }
}

#[test]
fn the_fewest_brackets_are_those_of_the_list() {
    let long = Inputs { span: Reading::mm("1800"), ..Inputs::default() };
    let answer = solved(&long);
    assert!(!answer.holds && answer.fewest == Some(Brackets::Middle), "{:?}", answer.with_brackets);
    for with in &answer.with_brackets {
        let alone = solved(&Inputs { brackets: with.brackets, ..long.clone() });
        assert_eq!((alone.holds, alone.long_term_mm), (with.holds, with.sag_mm));
    }
    assert_eq!(solved(&Inputs { span: Reading::mm("9000"), ..long }).fewest, None);
}

#[test]
fn an_empty_weightless_rail_hangs_straight() {
    let inputs = Inputs {
        material: Material::Own,
        own_density: "0".into(),
        load: Load::Total,
        total: "0".into(),
        ..Inputs::default()
    };
    let answer = solved(&inputs);
    assert!(answer.holds && answer.line.iter().all(|place| place.long_term_mm == 0.0));
    assert!(matches!(answer.with_brackets[0].longest_span, Found::All(_)));
}

#[test]
fn the_working_ends_in_the_answer_s_numbers() {
    for shape in Shape::ALL {
        for (brackets, hung) in [(Brackets::None, Hung::Sides), (Brackets::Middle, Hung::Top)] {
            for material in Material::ALL {
                let inputs = Inputs {
                    shape: *shape,
                    brackets,
                    hung,
                    material: *material,
                    load: Load::Total,
                    ..Inputs::default()
                };
                let answer = solved(&inputs);
                let gives = |what: &str| answer.working.0.iter().find(|step| step.what == what).unwrap().gives;
                assert_eq!(gives("Sag on the first day"), Quantity::mm(answer.instant_mm));
                assert_eq!(gives("Sag after years"), Quantity::mm(answer.long_term_mm));
                assert_eq!(gives("Bending stress"), Quantity::mpa(answer.stress.unwrap().stress_mpa));
                assert_eq!(gives("Height for the clothes"), answer.room.height.into());
                for step in &answer.working.0 {
                    for (symbol, _) in &step.given {
                        assert!(step.formula.contains(symbol), "{symbol} is not in {}", step.formula);
                    }
                }
            }
        }
    }
}

/// Any rail that could hang in a cabinet.
fn rails() -> impl Strategy<Value = Inputs> {
    let choices = (
        select(Shape::ALL),
        select(Material::ALL),
        select(Brackets::ALL),
        select(Load::ALL),
        select(Limit::ALL),
        select(Judged::ALL),
        select(Graduation::ALL),
    );
    let sizes = (100_u32..500, 100_u32..500, 5_u32..40, 2000_u32..30_000, 0_u32..80);
    (choices, sizes).prop_map(|((shape, material, brackets, load, limit, judged, graduation), sizes)| {
        let (height, width, wall, span, mass) = sizes;
        let tenths = |tenths: u32| Reading::mm(&format!("{tenths}/10"));
        Inputs {
            shape,
            material,
            brackets,
            load,
            limit,
            judged,
            graduation,
            diameter: tenths(height),
            height: tenths(height),
            width: tenths(width),
            wall: tenths(wall),
            span: tenths(span),
            per_metre: mass.to_string().as_str().into(),
            total: mass.to_string().as_str().into(),
            own_limit: Reading::mm("3"),
            ..Inputs::default()
        }
    })
}

proptest! {
    #[test]
    fn the_longest_span_holds_and_one_mark_more_does_not(inputs in rails()) {
        let answer = solved(&inputs);
        for with in &answer.with_brackets {
            let holds = |span: Length| {
                let span = Reading::mm(&span.to_string());
                solved(&Inputs { span, brackets: with.brackets, ..inputs.clone() }).holds
            };
            match with.longest_span {
                Found::At(mark) => {
                    prop_assert!(holds(mark), "{mark} should hold");
                    let next = mark.plus(inputs.graduation.step()).unwrap();
                    prop_assert!(!holds(next), "{next} should not hold");
                }
                Found::All(mark) => prop_assert!(holds(mark)),
                Found::None(mark) => prop_assert!(!holds(mark)),
            }
        }
    }

    #[test]
    fn inches_change_nothing(inputs in rails()) {
        let inch = |reading: &Reading| {
            let over = reading.length().unwrap().ratio(Length::inches(1, 1).unwrap()).unwrap();
            Reading::inches(&format!("{}/{}", over.numerator(), over.denominator()))
        };
        let imperial = Inputs {
            diameter: inch(&inputs.diameter),
            height: inch(&inputs.height),
            width: inch(&inputs.width),
            wall: inch(&inputs.wall),
            span: inch(&inputs.span),
            hook: inch(&inputs.hook),
            ..inputs.clone()
        };
        prop_assert_eq!(solved(&inputs), solved(&imperial));
    }

    #[test]
    fn the_line_s_deepest_place_is_the_sag_and_supports_carry_all(inputs in rails()) {
        let answer = solved(&inputs);
        let deepest = answer.line.iter().map(|place| place.long_term_mm).fold(0.0, f64::max);
        prop_assert!(deepest <= answer.long_term_mm * (1.0 + 1e-9) && deepest >= answer.long_term_mm * 0.98);
        let carried: f64 = answer.supports.iter().map(|support| support.mass_kg).sum();
        close(carried, answer.own_weight_kg + answer.load_kg, 1e-9, "carried");
    }

    #[test]
    fn no_text_panics(typed in "\\PC*", other in "\\PC*", hung in select(Hung::ALL), shape in select(Shape::ALL)) {
        let (reading, second) = (Reading::mm(&typed), Reading::mm(&other));
        let _ = solve(&Inputs {
            shape,
            hung,
            diameter: reading.clone(),
            height: second.clone(),
            wall: reading.clone(),
            span: second,
            drop: reading.clone(),
            sheet: reading,
            material: Material::Own,
            own_stiffness: typed.as_str().into(),
            load: Load::Total,
            total: other.as_str().into(),
            ..Inputs::default()
        });
    }

    #[test]
    fn no_size_panics(big in any::<i64>(), small in 1_u64..u64::MAX, shape in select(Shape::ALL)) {
        let reading = Reading::mm(&format!("{big}/{small}"));
        let _ = solve(&Inputs {
            shape,
            hung: Hung::Top,
            diameter: reading.clone(),
            height: reading.clone(),
            width: reading.clone(),
            wall: reading.clone(),
            span: reading.clone(),
            bracket_drop: reading.clone(),
            sheet: reading.clone(),
            hook: reading,
            ..Inputs::default()
        });
    }
}
