//! The calculation knows nothing of what stands to its right, and never gives up on an input.

use crate::room::{files, root, text, texts};
use crate::rust::Source;
use scantling::cards::CARDS;
use serde_json::Value;
use std::collections::BTreeSet;
use std::process::Command;

/// All that trade knowledge needs: exact fractions, chance by a seed, and a shape in which to come and go.
const ALLOWED: &[&str] = &["fastrand", "fraction", "serde", "serde_json", "thiserror"];

#[test]
fn the_calculation_needs_only_these_crates() {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let told = Command::new(cargo)
        .args(["metadata", "--no-deps", "--offline", "--format-version", "1"])
        .current_dir(root())
        .output()
        .unwrap();
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    let told: Value = serde_json::from_slice(&told.stdout).unwrap();
    let calc = told["packages"].as_array().unwrap().iter().find(|package| package["name"] == "scantling").unwrap();
    let needs: BTreeSet<&str> = calc["dependencies"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|need| need["kind"].is_null())
        .map(|need| need["name"].as_str().unwrap())
        .collect();
    assert_eq!(needs, ALLOWED.iter().copied().collect::<BTreeSet<_>>());
}

#[test]
fn the_pages_meet_the_window_in_one_folder_only() {
    let mut met = 0;
    for (path, text) in texts("src-ui/src", ".rs") {
        let inside = path.starts_with("src-ui/src/store/");
        let known = Source::read(&text);
        let named = known.program.to_lowercase().contains("tauri")
            || known.quoted.iter().any(|quoted| quoted.text.to_lowercase().contains("tauri"));
        assert!(inside || !named, "{path} knows of the window; only `store/` may");
        met += usize::from(named);
    }
    assert!(met > 0, "the store for the window is gone, or has another name: this rule finds nothing");
}

#[test]
fn a_card_is_listed_in_both_registries_with_its_twin_and_its_words() {
    let calc = entries("src-calc/src/cards");
    let ui = entries("src-ui/src/cards");
    assert_eq!(calc, ui, "the cards of the calculation and those on the screen");
    let slugs: BTreeSet<String> = CARDS.iter().map(|card| card.slug.replace('-', "_")).collect();
    assert_eq!(slugs, calc, "the registry and the files");
    assert_eq!(slugs.len(), CARDS.len(), "a slug stands twice");

    let registry = Source::read(&text("src-ui/src/cards/mod.rs")).program;
    let (_, registry) = registry.split_once("CARDS:").expect("the registry on the screen");
    let dense: String = registry.chars().filter(|letter| !letter.is_whitespace()).collect();
    let listed = dense.split_once("=&[").and_then(|(_, list)| list.split_once("];")).expect("its list").0;
    let places: Vec<usize> = CARDS
        .iter()
        .map(|card| {
            let name = format!("{}::", card.slug.replace('-', "_"));
            listed.find(&name).unwrap_or_else(|| panic!("{} is not listed on the screen: {listed}", card.slug))
        })
        .collect();
    assert!(places.is_sorted(), "both registries have the order of the bench: {listed}");
    for card in CARDS {
        let file = format!("src-ui/locales/en/{}.ftl", card.slug);
        assert!(!text(&file).trim().is_empty(), "{file} has no words");
        for shell in ["tests/tests/browser/shared.rs", "tests/tests/window/main.rs"] {
            let played = text(shell).contains(&format!("card(\"{}\")", card.slug));
            assert!(played, "{shell} never types into {}", card.slug);
        }
    }
}

/// The cards in a folder: its files and folders, but the registry.
fn entries(folder: &str) -> BTreeSet<String> {
    let names = files(folder).into_iter().filter_map(|file| {
        let rest = file.path.strip_prefix(folder)?.strip_prefix('/')?.to_owned();
        let name = rest.split_once('/').map_or(rest.strip_suffix(".rs"), |(name, _)| Some(name))?;
        Some(name.to_owned())
    });
    names.filter(|name| name != "mod").collect()
}

#[test]
fn every_card_answers_its_own_demo() {
    for card in CARDS {
        let demo = (card.demo)();
        assert!(demo.as_object().is_some_and(|inputs| !inputs.is_empty()), "{}: {demo}", card.slug);
        if let Err(refusal) = (card.ask)(&demo) {
            panic!("{}: {refusal} {refusal:?}", card.slug);
        }
    }
    assert!(!CARDS.is_empty());
}

#[test]
fn the_calculation_never_gives_up() {
    const HAZARDS: &[&str] =
        &[".unwrap()", ".expect(", "panic!(", "todo!(", "unimplemented!(", "unreachable!(", "assert!(", "assert_eq!("];
    for (path, text) in texts("src-calc/src", ".rs") {
        if path.ends_with("/tests.rs") || path.contains("/tests/") {
            continue;
        }
        let source = Source::read(&text);
        for (number, line) in source.without_tests().lines().enumerate() {
            let dense: String = line.chars().filter(|letter| !letter.is_whitespace()).collect();
            for hazard in HAZARDS {
                assert!(!dense.contains(hazard), "{path}:{}: {hazard} in {line:?}", number + 1);
            }
        }
    }
}
