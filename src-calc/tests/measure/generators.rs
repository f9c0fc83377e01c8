//! Lengths and texts of every kind, the near-equal and the extreme among them.

use proptest::prelude::*;
use scantling::measure::{Graduation, Length, Rounding, Style, Unit};

/// As a tape, a rule or a drawing gives it.
pub(crate) fn shop_length() -> impl Strategy<Value = Length> {
    let inches = (-40_000_i64..40_000, prop::sample::select(&[1_u64, 2, 4, 8, 16, 32, 64, 3, 10, 100, 1000]))
        .prop_map(|(n, d)| Length::inches(n, d));
    let mm = (-400_000_i64..400_000, prop::sample::select(&[1_u64, 2, 10, 20, 100, 1000, 3, 7, 64]))
        .prop_map(|(n, d)| Length::mm(n, d));
    prop_oneof![inches, mm].prop_filter_map("shop lengths are held", Result::ok)
}

/// Anything that can be held, up to the last length and the finest fraction.
pub(crate) fn any_length() -> impl Strategy<Value = Length> {
    let extreme = (any::<i64>(), any::<u64>(), 0_u32..63, 0_u32..64)
        .prop_filter_map("can be held", |(n, d, n_bits, d_bits)| Length::mm(n >> n_bits, d >> d_bits).ok());
    let near = (shop_length(), 1_u64..1_000_000_000)
        .prop_filter_map("can be held", |(length, d)| length.plus(Length::mm(1, d).ok()?).ok());
    prop_oneof![4 => shop_length(), 2 => near, 2 => extreme]
}

pub(crate) fn graduation() -> impl Strategy<Value = Graduation> {
    prop::sample::select(Graduation::ALL)
}

pub(crate) fn rounding() -> impl Strategy<Value = Rounding> {
    prop::sample::select(Rounding::ALL)
}

pub(crate) fn style() -> impl Strategy<Value = Style> {
    prop::sample::select(Style::ALL)
}

pub(crate) fn unit() -> impl Strategy<Value = Unit> {
    prop::sample::select(Unit::ALL)
}

/// Texts made of what readings are made of, so that most get deep into the parser.
pub(crate) fn near_reading() -> impl Strategy<Value = String> {
    const BITS: &[&str] = &[
        "0",
        "1",
        "2",
        "5",
        "8",
        "12",
        "20",
        "23",
        "64",
        "128",
        "200",
        "600",
        "1200",
        "99999999999999999999",
        ".5",
        "12.5",
        "12,5",
        "1,200",
        "1.000.000",
        "5/8",
        "1/3",
        "15/8",
        "5/0",
        "⅝",
        "½",
        "⅓",
        "⁵⁄₈",
        "⅟₆₄",
        "23 5/8",
        "23-5/8",
        "mm",
        "cm",
        "m",
        "in",
        "ft",
        "inches",
        "yd",
        "x",
        "\"",
        "''",
        "'",
        "″",
        "’",
        "°",
        "+",
        "-",
        "−",
        "–",
        "*",
        "×",
        "·",
        "/",
        "÷",
        "⁄",
        "±",
        "+/-",
        "(",
        ")",
        " ",
        " ",
        " ",
        "\u{a0}",
        "\u{2009}",
        "\u{200b}",
        ",",
        ".",
        "=",
        "é",
        "0.0000000000000001",
    ];
    prop::collection::vec(prop::sample::select(BITS), 0..24).prop_map(|bits| bits.concat())
}
