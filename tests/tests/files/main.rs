//! Files of jobs against their JSON Schema, by a validator that knows nothing else of them.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test that cannot go on has failed")]

use jsonschema::Validator;
use scantling::cabinet::Inputs;
use scantling::job::{Job, read_file, write_file};
use scantling::measure::{Reading, Unit};
use serde_json::{Map, Value, json};
use std::collections::BTreeSet;

const SCHEMA: &str = include_str!("../../../src-calc/schema/jobs.schema.json");

fn schema() -> Value {
    serde_json::from_str(SCHEMA).unwrap()
}

fn validator() -> Validator {
    jsonschema::draft202012::new(&schema()).unwrap()
}

fn file(cabinet: &Value) -> Value {
    json!({ "scantling": 1, "jobs": [{ "name": "Shed", "cards": { "cabinet": cabinet } }] })
}

/// Whether the schema and the reader agree that it is a file of jobs.
fn is_file(file: &Value) -> bool {
    let (valid, read) = (validator().is_valid(file), read_file(&file.to_string()).is_ok());
    assert_eq!(valid, read, "the schema says {valid}, the reader {read}: {file}");
    valid
}

fn keys(object: &Value) -> BTreeSet<String> {
    object.as_object().unwrap().keys().cloned().collect()
}

#[test]
fn the_schema_is_one() {
    assert!(jsonschema::meta::is_valid(&schema()));
}

#[test]
fn what_is_written_is_valid() {
    let inches = Inputs { width: Reading::new("31 1/2", Unit::In), ..Inputs::default() };
    for jobs in
        [vec![], vec![Job::new("Shed", &Inputs::default())], vec![Job::new("", &inches), Job::new("x", &inches)]]
    {
        let text: Value = serde_json::from_str(&write_file(&jobs)).unwrap();
        assert!(is_file(&text));
    }
}

/// Every field of the inputs is described, and nothing else.
#[test]
fn every_field_is_described() {
    let (schema, inputs) = (schema(), serde_json::to_value(Inputs::default()).unwrap());
    let described = &schema["$defs"]["cabinet"]["properties"];
    assert_eq!(keys(described), keys(&inputs));
    let same = ["handle", "hooks", "outside", "prices", "joint_sizes", "holes", "rail"].map(|part| (part, part));
    for (part, of) in [("board", "carcass")].into_iter().chain(same) {
        assert_eq!(keys(&schema["$defs"][part]["properties"]), keys(&inputs[of]), "{part}");
    }
    for (name, field) in described.as_object().unwrap() {
        assert!(field["description"].as_str().is_some_and(|text| !text.is_empty()), "{name} is not described");
    }
}

/// Each word that the schema allows is understood, and no other.
#[test]
fn every_choice_is_read() {
    let schema = schema();
    let mut choices = 0;
    for (name, field) in schema["$defs"]["cabinet"]["properties"].as_object().unwrap() {
        let Some(words) = field["enum"].as_array() else { continue };
        for word in words {
            assert!(is_file(&file(&json!({ name.as_str(): word }))), "{name}: {word}");
            choices += 1;
        }
        assert!(!is_file(&file(&json!({ name.as_str(): "no such word" }))), "{name}");
    }
    assert!(choices > 30, "{choices} choices");
    for (part, choice) in [
        ("handle", "pull"),
        ("handle", "at"),
        ("outside", "at"),
        ("joint_sizes", "biscuit"),
        ("rail", "shape"),
        ("rail", "material"),
        ("rail", "garments"),
    ] {
        for word in schema["$defs"][part]["properties"][choice]["enum"].as_array().unwrap() {
            assert!(is_file(&file(&json!({ part: { choice: word } }))), "{part}.{choice}: {word}");
        }
        assert!(!is_file(&file(&json!({ part: { choice: "no such word" } }))), "{part}.{choice}");
    }
}

#[test]
fn every_form_of_a_reading_is_read() {
    for reading in [json!("600"), json!("23 5/8 in"), json!(600), json!(12.5), json!({ "typed": "23 5/8" })] {
        assert!(is_file(&file(&json!({ "width": reading }))), "{reading}");
    }
    for unit in Unit::ALL {
        assert!(is_file(&file(&json!({ "width": { "typed": "2", "bare": unit } }))), "{unit:?}");
    }
    for wrong in [json!(null), json!(true), json!([]), json!({}), json!({ "typed": "2", "bare": "furlong" })] {
        assert!(!is_file(&file(&json!({ "width": wrong }))), "{wrong}");
    }
}

/// Whatever of another kind stands in any field is refused by both.
#[test]
fn what_is_of_the_wrong_kind_is_refused() {
    for name in keys(&schema()["$defs"]["cabinet"]["properties"]) {
        assert!(!is_file(&file(&json!({ name.as_str(): null }))), "{name}");
        assert!(!is_file(&file(&json!({ name.as_str(): [[]] }))), "{name}");
    }
    for (pointer, wrong) in [
        ("/scantling", json!("1")),
        ("/jobs", json!({})),
        ("/jobs/0", json!(7)),
        ("/jobs/0/name", json!(7)),
        ("/jobs/0/cards", json!([])),
        ("/jobs/0/cards/cabinet", json!([])),
        ("/jobs/0/cards/cabinet/carcass", json!("plywood")),
    ] {
        let mut broken: Value = serde_json::from_str(&write_file(&[Job::new("Shed", &Inputs::default())])).unwrap();
        assert!(is_file(&broken));
        *broken.pointer_mut(pointer).unwrap() = wrong;
        assert!(!is_file(&broken), "{pointer}");
    }
}

#[test]
fn fields_of_a_newer_program_are_valid() {
    let mut more: Map<String, Value> = serde_json::from_value(file(&json!({ "drawers": { "count": 3 } }))).unwrap();
    more["jobs"][0]["colour"] = json!(["green"]);
    assert!(is_file(&Value::Object(more)));
}
