//! Any text, on everything that reads text: nothing panics or hangs, an error points into the text, and what was
//! read can be written in every style and reads back the same.
//!
//! From `src-calc`, with `cargo install cargo-fuzz` done once:
//!
//! ```text
//! cargo +nightly fuzz run reading -- -dict=fuzz/reading.dict -max_len=256 -max_total_time=60
//! ```
//!
//! Without a nightly compiler, `RUSTC_BOOTSTRAP=1 cargo fuzz run reading …` does.
//! A text that fails becomes a row of the reading's tests; the corpus itself is not kept.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling::measure::{Angle, Figure, FigureKind, Quantity, Reading, Style, Unit};

const KINDS: &[FigureKind] = &[
    FigureKind::Mass,
    FigureKind::MassPerLength,
    FigureKind::Stress,
    FigureKind::Force,
    FigureKind::Density,
    FigureKind::Percent,
    FigureKind::Temperature,
    FigureKind::Number,
    FigureKind::Count,
    FigureKind::PricePerMetre,
];

fuzz_target!(|typed: &str| {
    let characters = typed.chars().count();
    for bare in Unit::ALL {
        let reading = Reading::new(typed, *bare);
        match reading.range() {
            Ok(range) => {
                assert!(range.low() <= range.nominal() && range.nominal() <= range.high());
                for style in Style::ALL {
                    let written = range.nominal().show(*style);
                    assert_eq!(Reading::new(written.as_str(), *bare).length(), Ok(range.nominal()), "{written}");
                }
                assert!(!Quantity::from(range.high()).to_string().is_empty());
            }
            Err(error) => assert!(error.at() <= characters, "{error:?}"),
        }
        if let Err(error) = reading.length() {
            assert!(error.at() <= characters, "{error:?}");
        }
    }
    match Angle::read(typed) {
        Ok(angle) => assert_eq!(Angle::read(&angle.to_string()), Ok(angle)),
        Err(error) => assert!(error.at() <= characters, "{error:?}"),
    }
    for kind in KINDS {
        match Figure::new(typed).value(*kind) {
            Ok(value) => assert!(value.is_finite()),
            Err(error) => assert!(error.at() <= characters, "{error:?}"),
        }
    }
});
