//! The working of every card: each formula is worked out again from its text and the numbers beside it, and must give
//! what the step says.

#![allow(clippy::unwrap_used, clippy::panic, reason = "the way in which a check fails")]

mod asked;
mod evaluator;
mod exceptions;
mod lines;

use asked::{combinations, rounds};
use evaluator::{is_stated, work_out};
use exceptions::WORDS;
use lines::LINES;
use scantling::cards::{CARDS, Card, Refusal};
use scantling::measure::Length;
use serde_json::{Map, Value};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::LazyLock;

/// Relative to what the step gives, and in its unit where that is less than one: half a unit of the sixth figure, to
/// which the constants in formulas are printed.
const TOLERANCE: f64 = 5e-6;

/// One step as it crosses in JSON.
struct Step<'a> {
    card: &'static str,
    what: &'a str,
    formula: &'a str,
    given: Vec<(&'a str, &'a Value)>,
    gives: &'a Value,
}

impl Step<'_> {
    /// The step's entry among those that are words.
    fn excuse(&self) -> Option<(&'static str, &'static str)> {
        WORDS.iter().map(|(card, what, _)| (*card, *what)).find(|name| *name == (self.card, self.what))
    }

    /// Whether only lengths, angles, shares and plain numbers meet: a screen may then write all lengths in inches.
    fn may_be_in_inches(&self) -> bool {
        let plain = |quantity: &Value| {
            quantity.is_string() || ["mm", "°", "%", "", "count"].iter().any(|unit| quantity["unit"] == *unit)
        };
        self.given.iter().all(|(_, quantity)| plain(quantity)) && plain(self.gives)
    }
}

/// What every card answers, worked out once for all tests.
static ANSWERS: LazyLock<BTreeMap<&str, Vec<(Value, Value)>>> =
    LazyLock::new(|| CARDS.iter().map(|card| (card.slug, answers(card))).collect());

/// The answers of a card to its demo and to all its rounds, with what was asked. Inputs that it refuses give none.
fn answers(card: &'static Card) -> Vec<(Value, Value)> {
    let demo = (card.demo)();
    let mut asked = vec![Map::new()];
    for round in rounds(card.slug) {
        for field in round.as_object().unwrap().keys() {
            assert!(demo.get(field).is_some(), "{} has no input {field}", card.slug);
        }
        asked.extend(combinations(&round));
    }
    let answer = |inputs: Map<String, Value>| {
        let inputs = Value::Object(inputs);
        match (card.ask)(&inputs) {
            Ok(answer) => Some((inputs, answer)),
            Err(Refusal::Problems(_)) => None,
            Err(Refusal::Shape(error)) => panic!("{} was asked {inputs}: {error}", card.slug),
        }
    };
    asked.into_iter().filter_map(answer).collect()
}

fn steps<'a>(card: &'static Card, answer: &'a Value) -> Vec<Step<'a>> {
    let text = |value: &'a Value| value.as_str().unwrap();
    let steps = answer["working"].as_array().unwrap().iter();
    steps
        .map(|step| Step {
            card: card.slug,
            what: text(&step["what"]),
            formula: text(&step["formula"]),
            given: step["given"].as_array().unwrap().iter().map(|pair| (text(&pair[0]), &pair[1])).collect(),
            gives: &step["gives"],
        })
        .collect()
}

/// As it is printed: a per cent as 12, not as 0.12. Lengths are counted in units of so many millimetres.
fn number(quantity: &Value, unit_mm: f64) -> f64 {
    if let Value::String(_) = quantity {
        return serde_json::from_value::<Length>(quantity.clone()).unwrap().as_mm() / unit_mm;
    }
    let value = quantity["value"].as_f64().unwrap_or(f64::NAN);
    if quantity["unit"] == "mm" { value / unit_mm } else { value }
}

/// Works a step out again from the numbers as a screen prints them, in millimetres and, where that may be, in inches.
///
/// # Errors
/// What is wrong with it.
fn check(step: &Step, excused: &mut BTreeSet<(&'static str, &'static str)>) -> Result<(), String> {
    if !number(step.gives, 1.0).is_finite() {
        return Err("gives no number".to_owned());
    }
    if is_stated(step.formula) && step.given.is_empty() {
        return Ok(());
    }
    let inches = step.may_be_in_inches().then_some(25.4);
    for unit_mm in [Some(1.0), inches].into_iter().flatten() {
        let given = step.given.iter().map(|(symbol, of)| ((*symbol).to_owned(), number(of, unit_mm)));
        let worked = match (work_out(step.formula, &given.collect()), step.excuse()) {
            (Ok(worked), _) => worked,
            (Err(_), Some(name)) => {
                excused.insert(name);
                return Ok(());
            }
            (Err(unread), None) => return Err(unread.0),
        };
        let gives = number(step.gives, unit_mm);
        let near = (worked.value - gives).abs() <= TOLERANCE * gives.abs().max(1.0);
        if !near {
            return Err(format!("{} and not {gives}, in units of {unit_mm} mm", worked.value));
        }
        let symbols: BTreeSet<_> = step.given.iter().map(|(symbol, _)| (*symbol).to_owned()).collect();
        if symbols.len() < step.given.len() || worked.named != symbols {
            return Err(format!("{symbols:?} stand beside it, {:?} in it", worked.named));
        }
    }
    Ok(())
}

#[test]
fn every_formula_gives_what_its_step_says() {
    let mut excused = BTreeSet::new();
    // One of each: all that is wrong in one look, but not a thousand times.
    let mut faults = BTreeMap::new();
    for card in CARDS {
        for (inputs, answer) in &ANSWERS[card.slug] {
            let steps = steps(card, answer);
            assert!(!steps.is_empty(), "{} asked {inputs} shows no working", card.slug);
            for step in steps {
                if let Err(fault) = check(&step, &mut excused) {
                    let at = format!("{}: {}: {}", step.card, step.what, step.formula);
                    faults.entry(at).or_insert_with(|| format!("{fault}; given {:?}; asked {inputs}", step.given));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
    let words = WORDS.iter().map(|(card, what, _)| (*card, *what)).collect();
    assert_eq!(excused, words, "steps that are words, and the list of them");
}

#[test]
fn every_card_shows_its_lines() {
    assert_eq!(
        LINES.iter().map(|lines| lines.card).collect::<Vec<_>>(),
        CARDS.iter().map(|card| card.slug).collect::<Vec<_>>()
    );
    for (card, lines) in CARDS.iter().zip(LINES) {
        let answers = &ANSWERS[card.slug];
        let named = |answer| steps(card, answer).into_iter().map(|step| step.what.to_owned()).collect::<Vec<_>>();
        let demo: Vec<String> = lines.demo.split("; ").map(str::to_owned).collect();
        assert_eq!(named(&answers[0].1), demo, "the demo of {}", card.slug);
        let elsewhere = lines.elsewhere.split("; ").filter(|name| !name.is_empty()).map(str::to_owned);
        let shown: BTreeSet<String> = answers.iter().flat_map(|(_, answer)| named(answer)).collect();
        assert_eq!(shown, demo.iter().cloned().chain(elsewhere).collect(), "all of {}", card.slug);
    }
}

/// Were a formula never asked for, nothing would be known of it.
#[test]
fn every_formula_that_is_written_is_reached() {
    let mut missed = Vec::new();
    for card in CARDS {
        let mut reached = BTreeSet::new();
        for (_, answer) in &ANSWERS[card.slug] {
            reached.extend(steps(card, answer).into_iter().map(|step| step.formula.to_owned()));
        }
        let name = card.slug.replace('-', "_");
        let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        let mut files = vec![source.join("cards").join(format!("{name}.rs"))];
        // A whole cabinet has a room of its own.
        let folder = if name == "cabinet" { source.join(&name) } else { source.join("cards").join(&name) };
        files.extend(std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()));
        for file in files.iter().filter(|file| file.is_file() && !file.ends_with("tests.rs")) {
            let source = std::fs::read_to_string(file).unwrap();
            let never = written(&source).filter(|formula| !reached.contains(*formula));
            missed.extend(never.map(|formula| format!("{}: {formula}", card.slug)));
        }
    }
    assert_eq!(missed, Vec::<String>::new(), "formulas that no answer shows");
}

/// The texts in a source that are formulas: a symbol, an equals sign, and what it is.
fn written(source: &str) -> impl Iterator<Item = &str> {
    source
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .flat_map(|line| line.split('"').skip(1).step_by(2))
        .filter(|text| text.split_once(" = ").is_some_and(|(symbol, _)| is_stated(symbol)))
}
