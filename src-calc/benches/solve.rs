//! How long one keystroke's work takes: `solve` of every card on its demo, whole cabinets, and the reading of a length.
//!
//! The bars: `solve` under 10 µs, a cabinet of forty parts under 1 ms and one of two hundred under 50 ms, a reading
//! under 1 µs.

use criterion::{Criterion, criterion_group, criterion_main};
use scantling::cabinet as whole;
use scantling::cards::{
    CARDS, angles, back_panel, bevelled_strips, cabinet, clothes_rail, convert, cup_hinge, groove, hanging, hole_rows,
    joints, materials, sheet_layout, shelf, spacing, wall_cleat, wood_movement,
};
use scantling::measure::{Graduation, Length, Reading, Rounding, Style};
use std::hint::black_box;

const READINGS: &[(&str, &str)] = &[
    ("whole", "600"),
    ("decimal", "12,5 mm"),
    ("fraction", "23 5/8\""),
    ("vulgar", "23⅝ in"),
    ("compound", "2' 3-1/2\""),
    ("metres", "1 m 20"),
    ("mixed_units", "23 5/8in + 15 mm"),
    ("arithmetic", "(764-3)/2 - 2*15"),
    ("tolerance", "764 mm ± 1/64 in"),
    ("refused", "1,200"),
];

fn cards(bench: &mut Criterion) {
    let mut group = bench.benchmark_group("solve");
    let mut solved = Vec::new();
    macro_rules! solve {
        ($($card:ident),*) => {$(
            solved.push($card::CARD.slug);
            let inputs = $card::Inputs::default();
            group.bench_function($card::CARD.slug, |bench| bench.iter(|| $card::solve(black_box(&inputs))));
        )*};
    }
    solve!(
        convert,
        cabinet,
        back_panel,
        shelf,
        clothes_rail,
        spacing,
        wood_movement,
        sheet_layout,
        bevelled_strips,
        angles,
        groove,
        hole_rows,
        cup_hinge,
        joints,
        wall_cleat,
        hanging,
        materials
    );
    let all: Vec<_> = CARDS.iter().map(|card| card.slug).collect();
    assert_eq!(solved, all, "every card is measured, in the order of the bench");
}

/// So many bays, so many loose shelves in each, and at least so many parts.
const CABINETS: &[(&str, &str, &str, &str, usize)] =
    &[("forty", "4", "6", "2400", 40), ("two_hundred", "8", "24", "4000", 200)];

fn cabinets(bench: &mut Criterion) {
    let mut group = bench.benchmark_group("cabinet");
    for (name, bays, shelves, width, parts) in CABINETS {
        let inputs = whole::Inputs {
            bays: (*bays).into(),
            loose_shelves: (*shelves).into(),
            width: Reading::mm(width),
            height: Reading::mm("2000"),
            stands: whole::Stands::Plinth,
            least_gap: Reading::mm("50"),
            ..whole::Inputs::default()
        };
        let cabinet = whole::solve(&inputs);
        assert!(cabinet.as_ref().is_ok_and(|cabinet| cabinet.parts.len() >= *parts), "{name}: too few parts");
        let Ok(cabinet) = cabinet else { continue };
        group.bench_function(*name, |bench| bench.iter(|| whole::solve(black_box(&inputs))));
        group.bench_function(format!("{name}_drawn"), |bench| bench.iter(|| whole::drawings(black_box(&cabinet))));
    }
}

fn readings(bench: &mut Criterion) {
    let mut group = bench.benchmark_group("read");
    for (name, typed) in READINGS {
        let reading = Reading::mm(typed);
        group.bench_function(*name, |bench| bench.iter(|| black_box(&reading).range()));
    }
}

fn lengths(bench: &mut Criterion) {
    let mut group = bench.benchmark_group("length");
    let lengths = [Length::mm(6001, 10), Length::inches(189, 8)];
    let [Ok(metric), Ok(imperial)] = lengths else { return };
    group.bench_function("plus", |bench| bench.iter(|| black_box(metric).plus(black_box(imperial))));
    let sixteenths = Graduation::Sixteenth;
    group.bench_function("round", |bench| bench.iter(|| sixteenths.round(black_box(metric), Rounding::Nearest)));
    group.bench_function("show", |bench| bench.iter(|| black_box(imperial).show(Style::FeetInches)));
}

criterion_group!(benches, cards, cabinets, readings, lengths);
criterion_main!(benches);
