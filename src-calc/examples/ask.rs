//! Asks one card: a JSON request on standard input, the answer as JSON on standard output.
//!
//! ```text
//! echo '{"card": "convert", "inputs": {"readings": ["15 mm", "2'\'' 3 1/2\""]}}' | cargo run -p scantling --example ask
//! ```
//!
//! | request | response | exit code |
//! |---|---|---|
//! | `{"card": "?"}` | `{"cards": [{"card": …, "inputs": …}, …]}`, each with its demo inputs | 0 |
//! | `{"card": …, "inputs": {…}}` | `{"answer": …}` | 0 |
//! | the same with inputs that cannot be used | `{"problems": {field: sentence, …}}` | 0 |
//! | anything else | `{"error": sentence}` | 2 |
//!
//! Inputs left out are those of the demo; inputs that the card does not have are refused. A reading is what a person
//! types: `"23 5/8 in"`, or `"600"` for millimetres, or `{"typed": "23 5/8", "bare": "in"}`; a JSON number is read as
//! millimetres. Lengths in answers are exact texts that read back.

use scantling::cards::{CARDS, Card, Refusal, card};
use serde_json::{Map, Value, json};
use std::io::{Read, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut request = String::new();
    let response = match std::io::stdin().read_to_string(&mut request) {
        Ok(_) => respond(&request),
        Err(error) => Err(format!("Standard input could not be read: {error}.")),
    };
    let (shown, code) = match response {
        Ok(response) => (response, ExitCode::SUCCESS),
        Err(error) => (json!({ "error": error }), ExitCode::from(2)),
    };
    // The reader may have gone away; there is nobody left to tell.
    let _ = writeln!(std::io::stdout(), "{shown:#}");
    code
}

/// The response, or a sentence on what is wrong with the request itself.
fn respond(request: &str) -> Result<Value, String> {
    let request: Value = serde_json::from_str(request).map_err(|error| format!("The request is no JSON: {error}."))?;
    let Value::Object(request) = request else {
        return Err("The request has to be an object: {\"card\": …, \"inputs\": {…}}.".to_owned());
    };
    only(&request, "request", &["card".to_owned(), "inputs".to_owned()])?;
    let slug = match request.get("card") {
        Some(Value::String(slug)) => slug.as_str(),
        _ => return Err(format!("“card” has to be one of {}, or ? for all of them.", slugs())),
    };
    if slug == "?" {
        return Ok(json!({ "cards": CARDS.iter().map(described).collect::<Vec<_>>() }));
    }
    let card = card(slug).ok_or_else(|| format!("There is no card “{slug}”. There are {}.", slugs()))?;
    let inputs = match request.get("inputs") {
        None => Map::new(),
        Some(Value::Object(inputs)) => inputs.clone(),
        Some(_) => return Err("“inputs” has to be an object from names to inputs.".to_owned()),
    };
    let known: Vec<_> = (card.demo)().as_object().map(|demo| demo.keys().cloned().collect()).unwrap_or_default();
    only(&inputs, slug, &known)?;
    match (card.ask)(&Value::Object(inputs)) {
        Ok(answer) => Ok(json!({ "answer": answer })),
        Err(Refusal::Problems(problems)) => Ok(json!({ "problems": problems })),
        Err(refusal @ Refusal::Shape(_)) => Err(refusal.to_string()),
    }
}

fn described(card: &Card) -> Value {
    json!({ "card": card.slug, "inputs": (card.demo)() })
}

fn slugs() -> String {
    CARDS.iter().map(|card| card.slug).collect::<Vec<_>>().join(", ")
}

/// Refuses names that are not known, so that a misspelt one does not quietly leave the demo's value in place.
fn only(given: &Map<String, Value>, whose: &str, known: &[String]) -> Result<(), String> {
    match given.keys().find(|name| !known.contains(name)) {
        None => Ok(()),
        Some(name) => Err(format!("“{name}” is not known to {whose}. Known are {}.", known.join(", "))),
    }
}
