use super::*;
use crate::cards::{cabinet, hanging, materials, sheet_layout, shelf, spacing, wood_movement};
use crate::measure::{Figure, Length, Reading, Unit};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fmt::Debug;

/// The other reader, of the crate that wrote the format down, says what is right.
#[track_caller]
fn check<T: Serialize + DeserializeOwned + PartialEq + Debug>(what: &T) {
    let text = write(what).unwrap();
    assert_eq!(read::<T>(&text).as_ref(), Some(what), "{text}");
    assert_eq!(&serde_json::from_str::<T>(&text).unwrap(), what, "{text}");
    assert_eq!(serde_json::from_str::<Value>(&text).unwrap(), serde_json::to_value(what).unwrap());
}

#[test]
fn what_is_written_reads_back() {
    check(&cabinet::Inputs::default());
    check(&hanging::Inputs::default());
    check(&materials::Inputs::default());
    check(&spacing::Inputs::default());
    check(&wood_movement::Inputs::default());
    check(&shelf::Inputs { span: Reading::new("31 1/2", Unit::In), ..shelf::Inputs::default() });
    check(&vec![Some(Length::inches(1, 3).unwrap()), None]);
    check(&(true, -3_i64, 2.5_f64, "“ü”\n".to_owned()));
}

#[test]
fn a_layout_that_was_found_reads_back() {
    let inputs = sheet_layout::Inputs::default();
    let answer = sheet_layout::solve(&inputs).unwrap();
    let found = sheet_layout::Found { job: "a".to_owned(), layout: answer.layout, bound: 1, done: false };
    check(&sheet_layout::Inputs { found: Some(found), done: vec![1, 3], ..inputs });
}

#[derive(Debug, PartialEq, Serialize, Deserialize)]
enum Shape {
    Unit,
    New(u8),
    Pair(u8, i8),
    Fields { a: f32 },
}

#[test]
fn every_shape_of_a_choice_reads_back() {
    check(&[Shape::Unit, Shape::New(1), Shape::Pair(2, -3), Shape::Fields { a: 0.5 }]);
    check(&BTreeMap::from([("a".to_owned(), Shape::Unit)]));
}

#[test]
fn figures_may_be_numbers() {
    for (text, want) in [("12", "12"), ("-1.5", "-1.5"), ("\"3/4\"", "3/4")] {
        assert_eq!(read::<Figure>(text), Some(Figure::from(want)), "{text}");
    }
}

#[test]
fn what_does_not_fit_is_refused() {
    #[track_caller]
    fn refuse<T: DeserializeOwned + PartialEq + Debug>(texts: &[&str]) {
        for text in texts {
            assert_eq!(read::<T>(text), None, "{text}");
            assert!(serde_json::from_str::<T>(text).is_err(), "the other reader takes {text}");
        }
    }
    refuse::<shelf::Inputs>(&[
        "",
        "[1]",
        "3",
        "null",
        "{\"span\": null}",
        "{\"load\": \"lots\"}",
        "{\"span\": \"9\"",
        "\"\"",
    ]);
    refuse::<[u8; 2]>(&["[1]", "[1, 2, 3]", "[1, -2]", "[1, 300]", "[1, 0.5]", "[1, \"2\"]"]);
    refuse::<Vec<Shape>>(&[
        "[{}]",
        "[\"New\"]",
        "[{\"Unit\": 1}]",
        "[{\"New\": 1, \"Unit\": 1}]",
        "[{\"Pair\": [1]}]",
        "[1]",
    ]);
    refuse::<bool>(&["1", "\"true\""]);
    refuse::<String>(&["1", "true"]);
    refuse::<Length>(&["\"long\""]);
}

#[test]
fn what_nobody_asks_for_is_passed_over() {
    let text = "{\"depth\": \"300\", \"of_a_newer_version\": {\"a\": [1, {\"b\": null}]}}";
    let want = shelf::Inputs { depth: Reading::mm("300"), ..shelf::Inputs::default() };
    assert_eq!(read::<shelf::Inputs>(text), Some(want));
}
