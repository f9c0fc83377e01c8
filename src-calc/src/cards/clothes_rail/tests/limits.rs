//! Where a note begins, what is just still accepted, and the short formulas by hand.

use super::{close, mm, solved};
use crate::cards::clothes_rail::{Answer, Brackets, Hung, Inputs, Load, Material, Note, Shape, solve};
use crate::cards::shelf::Limit;
use crate::caution::Caution;
use crate::measure::Reading;
use crate::stock::clothes::Garments;

/// The fields that are refused; none where it is accepted.
fn refused(inputs: &Inputs) -> Vec<String> {
    solve(inputs).err().iter().flat_map(|problems| problems.iter()).map(|(field, _)| field.to_owned()).collect()
}

/// A bar of 12 by 10 in a material that weighs nothing, 1 m long, with 10 kg on it.
fn bar() -> Inputs {
    Inputs {
        shape: Shape::FlatBar,
        width: Reading::mm("12"),
        height: Reading::mm("10"),
        material: Material::Own,
        own_density: "0".into(),
        span: Reading::mm("1000"),
        load: Load::Total,
        total: "10".into(),
        ..Inputs::default()
    }
}

/// A usual value itself is usual; a tenth beyond it is not.
#[test]
fn notes_begin_beyond_the_usual() {
    let at = |inputs: &Inputs, change: fn(&mut Inputs, &str), typed: [&str; 2], note: Note| {
        let [usual, beyond] = typed.map(|typed| {
            let mut changed = inputs.clone();
            change(&mut changed, typed);
            solved(&changed).notes.contains(&note)
        });
        assert!(!usual && beyond, "{note:?}: {typed:?} gave {usual} {beyond}");
    };
    let demo = Inputs::default();
    assert_eq!(solved(&demo).notes, []);
    let deep = |inputs: &mut Inputs, typed: &str| inputs.inside_depth = Reading::mm(typed);
    at(&demo, deep, ["450", "449.9"], Note::HangersDoNotFit);
    // 450 and 75 before and behind it.
    at(&demo, deep, ["600", "599.9"], Note::ClothesTouch);
    let narrow = solved(&Inputs { inside_depth: Reading::mm("449.9"), ..demo.clone() }).notes;
    assert_eq!(narrow, [Note::HangersDoNotFit], "what does not go in does not rub");
    // 60 for the hook, 1450 of coat and 50 below.
    at(&demo, |inputs, typed| inputs.inside_height = Reading::mm(typed), ["1560", "1559.9"], Note::TooLong);
    at(&demo, |inputs, typed| inputs.hook = Reading::mm(typed), ["50", "49.9"], Note::HooksCatch);
    at(&bar(), |inputs, typed| inputs.width = Reading::mm(typed), ["10", "10.1"], Note::LiesFlat);

    let thirds = Inputs { brackets: Brackets::Thirds, ..bar() };
    at(&thirds, |inputs, typed| inputs.total = typed.into(), ["0", "0.1"], Note::Uneven);
    assert!(!solved(&bar()).notes.contains(&Note::Uneven));

    let metre = Inputs { load: Load::PerMetre, ..demo.clone() };
    at(&metre, |inputs, typed| inputs.per_metre = typed.into(), ["40", "39.9"], Note::BelowTestLoad);
    // 34.56 kg on 864 mm are 40 a metre, as are 28 on 700 and 12 on 300.
    for (total, span) in [("34.56", "864"), ("28", "700"), ("12", "300"), ("36.04", "901")] {
        let whole = Inputs { load: Load::Total, total: total.into(), span: Reading::mm(span), ..demo.clone() };
        assert!(!solved(&whole).notes.contains(&Note::BelowTestLoad), "{total} kg on {span} mm");
    }

    // 5 · 98.0665 N · 1 m³ over 384 · E · 1000 mm⁴ is 20 mm, a fiftieth, where E is 63 845.
    let soft = |inputs: &mut Inputs, typed: &str| inputs.own_stiffness = typed.into();
    at(&bar(), soft, ["63850", "63840"], Note::PastFormula);
    // What creeps by as much again may sag by half of it on the first day.
    at(&Inputs { own_creep: "1".into(), ..bar() }, soft, ["127700", "127680"], Note::PastFormula);
    // A bay counts, not the whole: 0.00541612 · 98.0665 N · 500³ over E · 1000 mm⁴, 10 mm where E is 6639.
    let halves = Inputs { brackets: Brackets::Middle, total: "20".into(), ..bar() };
    at(&halves, soft, ["6645", "6633"], Note::PastFormula);
}

#[test]
fn notes_are_sentences() {
    for (note, says) in [
        (Note::HangersDoNotFit, "wider than the cabinet is deep"),
        (Note::ClothesTouch, "sleeves"),
        (Note::TooLong, "under the hems"),
        (Note::HooksCatch, "Under 50 mm"),
        (Note::LiesFlat, "upright"),
        (Note::Uneven, "some bays only"),
        (Note::BelowTestLoad, "40 kg a metre"),
        (Note::PastFormula, "a fiftieth of the span"),
    ] {
        let sentence = note.to_string();
        assert!(sentence.contains(says) && sentence.ends_with('.'), "{note:?}: {sentence}");
    }
    assert_eq!(solved(&Inputs::default()).cautions, [Caution::RailLoad, Caution::Estimate]);
}

/// The limit itself is accepted, and a tenth beyond it is not.
#[test]
fn limits_are_where_they_are_said_to_be() {
    type Typed = fn(&mut Inputs, &str);
    type Row<'a> = (&'a Inputs, &'static str, Typed, [&'static str; 2], [&'static str; 2]);
    let demo = Inputs::default();
    let flat = bar();
    let metre = Inputs { load: Load::PerMetre, ..Inputs::default() };
    let own = Inputs { limit: Limit::Own, ..Inputs::default() };
    let top = Inputs { hung: Hung::Top, ..Inputs::default() };
    let typed: [Row; 17] = [
        (&demo, "diameter", |i, typed| i.diameter = Reading::mm(typed), ["3", "200"], ["0", "200.1"]),
        (&demo, "wall", |i, typed| i.wall = Reading::mm(typed), ["0.1", "12.5"], ["0", "12.6"]),
        (&demo, "span", |i, typed| i.span = Reading::mm(typed), ["0.1", "20000"], ["0", "20000.1"]),
        (&demo, "hook", |i, typed| i.hook = Reading::mm(typed), ["0", "1000"], ["-0.1", "1000.1"]),
        (&demo, "drop", |i, typed| i.drop = Reading::mm(typed), ["0.1", "5000"], ["0", "5000.1"]),
        (&demo, "below", |i, typed| i.below = Reading::mm(typed), ["0", "5000"], ["-0.1", "5000.1"]),
        (&demo, "hanger", |i, typed| i.hanger = Reading::mm(typed), ["0.1", "2000"], ["0", "2000.1"]),
        (&demo, "bulk", |i, typed| i.bulk = Reading::mm(typed), ["0", "1000"], ["-0.1", "1000.1"]),
        (&demo, "inside_depth", |i, typed| i.inside_depth = Reading::mm(typed), ["0.1", "5000"], ["0", "5000.1"]),
        (&demo, "inside_height", |i, typed| i.inside_height = Reading::mm(typed), ["0.1", "10000"], ["0", "10000.1"]),
        (&flat, "height", |i, typed| i.height = Reading::mm(typed), ["0.1", "200"], ["0", "200.1"]),
        (&flat, "width", |i, typed| i.width = Reading::mm(typed), ["0.1", "200"], ["0", "200.1"]),
        (&flat, "total", |i, typed| i.total = typed.into(), ["0", "1000"], ["-0.1", "1000.1"]),
        (&metre, "per_metre", |i, typed| i.per_metre = typed.into(), ["0", "1000"], ["-0.1", "1000.1"]),
        (&own, "own_limit", |i, typed| i.own_limit = Reading::mm(typed), ["0.1", "1000"], ["0", "1000.1"]),
        // Half of the rail's 25 has to fit under the foot.
        (&top, "bracket_drop", |i, typed| i.bracket_drop = Reading::mm(typed), ["12.5", "1000"], ["12.4", "1000.1"]),
        (&top, "sheet", |i, typed| i.sheet = Reading::mm(typed), ["1", "300"], ["0.9", "300.1"]),
    ];
    for (inputs, field, change, accepted, beyond) in typed {
        let with = |typed: &str| {
            let mut changed = inputs.clone();
            change(&mut changed, typed);
            refused(&changed)
        };
        for typed in accepted {
            assert_eq!(with(typed), Vec::<String>::new(), "{field} of {typed}");
        }
        for typed in beyond {
            assert_eq!(with(typed), [field], "{field} of {typed}");
        }
    }
}

/// What the choices do not call for may hold anything.
#[test]
fn only_what_matters_is_read() {
    let junk = || Reading::mm("?");
    let demo = Inputs { width: junk(), height: junk(), bracket_drop: junk(), sheet: junk(), ..Inputs::default() };
    let demo = Inputs { per_metre: "?".into(), total: "?".into(), own_stiffness: "?".into(), ..demo };
    assert_eq!(refused(&demo), Vec::<String>::new());
    assert_eq!(refused(&Inputs { diameter: junk(), wall: junk(), ..bar() }), Vec::<String>::new());
    assert_eq!(refused(&Inputs { shape: Shape::RoundBar, wall: junk(), ..demo.clone() }), Vec::<String>::new());
    // One's own limit is needed where it decides, and is read where it is given.
    assert_eq!(refused(&Inputs { limit: Limit::Own, ..demo.clone() }), ["own_limit"]);
    assert_eq!(refused(&Inputs { own_limit: junk(), ..demo.clone() }), ["own_limit"]);
    let given = solved(&Inputs { own_limit: Reading::mm("2"), ..demo.clone() });
    assert_eq!(given.verdicts.len(), solved(&demo).verdicts.len() + 1);
}

/// A bar of 12 by 10 has 120 mm², 12 · 10³ / 12 is 1000 mm⁴ and 1000 over 5 is 200 mm³.
#[test]
fn a_bar_bends_by_the_book() {
    let answer = solved(&Inputs { own_density: "1000".into(), own_stiffness: "100000".into(), ..bar() });
    close(answer.section.area_mm2, 120.0, 1e-12, "area");
    close(answer.section.second_moment_mm4, 1000.0, 1e-12, "second moment");
    close(answer.section.modulus_mm3, 200.0, 1e-12, "modulus");
    // 120 mm² · 1 m at 1000 kg/m³ are 0.12 kg.
    close(answer.own_weight_kg, 0.12, 1e-12, "own weight");
    close(answer.load_kg, 10.0, 1e-12, "load");

    let rail = Inputs { own_stiffness: "100000".into(), own_strength: "150".into(), own_divisor: "2".into(), ..bar() };
    let answer = solved(&Inputs { own_creep: "0.5".into(), ..rail.clone() });
    // 98.0665 N: 5 · F · L³ / (384 · E · I), and half as much again after years.
    let sag = 5.0 * 98.0665 * 1e9 / (384.0 * 1e8);
    close(answer.instant_mm, sag, 1e-9, "sag");
    close(answer.long_term_mm, 1.5 * sag, 1e-9, "late sag");
    close(answer.instant_ratio, 1000.0 / sag, 1e-9, "ratio");
    close(answer.long_term_ratio, 1000.0 / sag / 1.5, 1e-9, "late ratio");
    close(answer.deepest_at_mm, 500.0, 1e-9, "deepest");
    // F · L / 8 over 200 mm³, of 150 / 2.
    let stress = answer.stress.unwrap();
    close(stress.stress_mpa, 98.0665 * 1000.0 / 8.0 / 200.0, 1e-9, "stress");
    close(stress.used_percent, 98.0665 * 1000.0 / 8.0 / 200.0 / 75.0 * 100.0, 1e-9, "used");
    assert!(stress.holds);
    let weak = solved(&Inputs { own_strength: "122".into(), ..rail.clone() }).stress.unwrap();
    assert!(!weak.holds && weak.used_percent > 100.0, "{weak:?}");
    // Each place of the line in the same proportion; its ends lie on their supports, 25 mm apart each.
    let along: Vec<f64> = answer.line.iter().map(|place| place.along_mm).collect();
    assert_eq!((along.len(), along[1], along[40]), (41, 25.0, 1000.0));
    close(answer.line[20].long_term_mm, 1.5 * sag, 1e-9, "middle");
    close(answer.line[20].instant_mm, sag, 1e-9, "middle on the first day");
}

#[test]
fn a_strength_as_great_as_the_stress_is_enough() {
    let soft = Inputs { limit: Limit::Own, own_limit: Reading::mm("1000"), own_divisor: "1".into(), ..bar() };
    let stress = solved(&soft).stress.unwrap().stress_mpa;
    let holds = |strength: f64| {
        let answer = solved(&Inputs { own_strength: strength.to_string().as_str().into(), ..soft.clone() });
        (answer.holds, answer.stress.unwrap().holds)
    };
    assert_eq!((holds(stress), holds(stress * (1.0 - 1e-9))), ((true, true), (false, false)));
}

/// As in tables of continuous beams: over two bays 0.00915 · w · L⁴ / (E · I) with one of them laden, over three 0.0099
/// with both outer ones.
#[test]
fn clothes_in_some_bays_only_sag_as_in_the_tables() {
    let with = |brackets: Brackets, total: &str| {
        solved(&Inputs { own_stiffness: "100000".into(), brackets, total: total.into(), ..bar() })
    };
    // 0.0980665 N/mm, E · I of 10⁸ N·mm².
    for (brackets, bay, factor) in [(Brackets::Middle, 500.0, 0.009_15), (Brackets::Thirds, 1000.0 / 3.0, 0.0099)] {
        let answer = with(brackets, "10");
        let want = factor * 0.098_066_5 * f64::powi(bay, 4) / 1e8;
        close(answer.uneven_mm.unwrap(), want, 6e-3, "uneven");
        close(answer.instant_ratio, bay / answer.instant_mm, 1e-12, "a bay's ratio");
        assert_eq!(with(brackets, "0").uneven_mm, None);
    }
    assert_eq!(with(Brackets::None, "10").uneven_mm, None);
}

/// A flat oval of 30 by 15 whose walls meet is a square of 15 between two half circles of 7.5.
#[test]
fn an_oval_is_a_rectangle_and_two_half_circles() {
    use std::f64::consts::PI;
    let oval = |shape: Shape, width: &str, height: &str, wall: &str| {
        let [width, height, wall] = [width, height, wall].map(Reading::mm);
        solved(&Inputs { shape, width, height, wall, ..Inputs::default() }).section
    };
    let fourth = f64::powi(15.0, 4);
    let upright = oval(Shape::OvalTube, "15", "30", "7.5");
    let flat = oval(Shape::OvalTube, "30", "15", "7.5");
    for section in [upright, flat] {
        close(section.area_mm2, 225.0 + PI * 225.0 / 4.0, 1e-12, "area");
        assert_eq!(section.hollow_mm4, 0.0);
    }
    // Lying, 15⁴ / 12 and a whole circle, π · 15⁴ / 64.
    close(flat.second_moment_mm4, fourth * (1.0 / 12.0 + PI / 64.0), 1e-12, "lying");
    // Upright the half circles' own middles lie 7.5 and 4 · 7.5 / (3 · π) from the axis: Steiner, for both
    // π · 7.5² · (7.5² + 2 · 7.5 · c) + the circle, c = 4 · 7.5 / (3 · π).
    let c = 4.0 * 7.5 / (3.0 * PI);
    let moved = PI * 7.5 * 7.5 * (7.5 * 7.5 + 2.0 * 7.5 * c);
    close(upright.second_moment_mm4, fourth / 12.0 + moved + PI * fourth / 64.0, 1e-12, "upright");
    close(upright.modulus_mm3, upright.second_moment_mm4 / 15.0, 1e-12, "modulus");
    // With a wall of 1.5 the hollow is an oval of 27 by 12.
    let tube = oval(Shape::OvalTube, "15", "30", "1.5");
    let hollow = oval(Shape::OvalTube, "12", "27", "6");
    close(tube.hollow_mm4, hollow.second_moment_mm4, 1e-12, "hollow");
    close(tube.area_mm2, upright.area_mm2 - hollow.area_mm2, 1e-12, "tube");
    // An oval as high as wide is round, and so is an ellipse: π · (25⁴ − 22⁴) / 64, π · (25² − 22²) / 4.
    for shape in [Shape::OvalTube, Shape::EllipseTube, Shape::RoundTube] {
        let round = oval(shape, "25", "25", "1.5");
        close(round.second_moment_mm4, PI * (390_625.0 - 234_256.0) / 64.0, 1e-12, "round");
        close(round.area_mm2, PI * (625.0 - 484.0) / 4.0, 1e-12, "round area");
    }
    // An ellipse of 20 by 40: π · 20 · 40³ / 64.
    let ellipse = oval(Shape::EllipseTube, "20", "40", "10");
    close(ellipse.second_moment_mm4, PI * 20_000.0, 1e-12, "ellipse");
}

/// Wanted are 60 and half of 25, 72.5 down.
#[test]
fn a_bracket_that_reaches_just_far_enough_needs_no_block() {
    let blocks = |drop: &str, brackets: Brackets| {
        let top = Inputs { hung: Hung::Top, bracket_drop: Reading::mm(drop), brackets, ..Inputs::default() };
        let blocks = solved(&top).room.blocks.unwrap();
        (blocks.count, blocks.least, blocks.layers, blocks.thickness)
    };
    assert_eq!(blocks("72.5", Brackets::None), (2, mm("0"), 0, mm("0")));
    assert_eq!(blocks("80", Brackets::None), (2, mm("0"), 0, mm("0")), "nor one that reaches farther");
    assert_eq!(blocks("72.4", Brackets::Thirds), (4, mm("0.1"), 1, mm("14.6")));
    // One layer of 14.6 is just enough.
    assert_eq!(blocks("57.9", Brackets::Middle), (3, mm("14.6"), 1, mm("14.6")));
    let just = solved(&Inputs { inside_depth: Reading::mm("600"), ..Inputs::default() }).room;
    assert_eq!((just.depth_spare, just.from_back), (mm("0"), mm("300")));
}

#[test]
fn a_load_is_what_was_given() {
    let kg = |load: Load, garments: Garments| {
        let answer: Answer = solved(&Inputs { load, garments, span: Reading::mm("500"), ..Inputs::default() });
        answer.load_kg
    };
    // Coats at 40 kg a metre, shirts at 25; 30 a metre; 25 in all.
    close(kg(Load::Garments, Garments::Coats), 20.0, 1e-12, "coats");
    close(kg(Load::Garments, Garments::Shirts), 12.5, 1e-12, "shirts");
    close(kg(Load::PerMetre, Garments::Shirts), 15.0, 1e-12, "per metre");
    close(kg(Load::Total, Garments::Shirts), 25.0, 1e-12, "in all");
}

/// Ash is 12 800 MPa stiff and weighs 720 kg/m³; solid wood creeps by 0.6.
#[test]
fn the_material_is_named_with_its_figures() {
    let used = |material: Material| solved(&Inputs { material, ..Inputs::default() }).material;
    let ash = used(Material::Wood);
    assert_eq!((ash.name, ash.stiffness_mpa, ash.density_kg_m3, ash.creep), ("European ash", 12_800.0, 720.0, 0.6));
    assert!(ash.values.is_some() && ash.source.is_some());
    let steel = used(Material::Steel);
    assert_eq!((steel.name, steel.stiffness_mpa, steel.density_kg_m3, steel.creep), ("Steel", 210_000.0, 7850.0, 0.0));
    assert!(steel.values.is_none() && steel.source.is_some());
    let own = used(Material::Own);
    assert_eq!((own.name, own.values.is_none(), own.source.is_none()), ("", true, true));
}
