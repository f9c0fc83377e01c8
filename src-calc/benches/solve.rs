//! How long one keystroke's work takes: `solve` of every card on its demo, and the reading of a length.
//!
//! The bars: `solve` under 10 µs, a reading under 1 µs.

use criterion::{Criterion, criterion_group, criterion_main};
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

criterion_group!(benches, cards, readings, lengths);
criterion_main!(benches);
