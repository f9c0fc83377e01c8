//! A stale path in the developers' guide is worse than silence.

use crate::room::{root, text};

/// Whether a text in backquotes is a path of the repository: it has a slash or a known ending, and nothing else in it.
fn is_path(text: &str) -> bool {
    let clean =
        !text.is_empty() && text.chars().all(|letter| letter.is_ascii_alphanumeric() || "._-/".contains(letter));
    let ending = [".rs", ".toml", ".md", ".ftl", ".css", ".html", ".js", ".svg", ".json", ".csv"];
    let system =
        text.starts_with('/') || text.starts_with("./") || text.starts_with("dist/") || text.starts_with("target/");
    let named = text.starts_with(|letter: char| letter.is_ascii_alphabetic() || letter == '.');
    clean && named && !system && (text.contains('/') || ending.iter().any(|ending| text.ends_with(ending)))
}

/// Paths may be written from the repository, or from one of its rooms, as in a paragraph about that room.
const ROOMS: &[&str] = &[
    "",
    "src-calc",
    "src-calc/src",
    "src-ui",
    "src-ui/src",
    "src-tauri",
    "src-tauri/src",
    "tests",
    "tests/src",
    "tests/tests",
    "xtask/src",
];

#[test]
fn every_path_in_the_developers_guide_exists() {
    if !root().join("DEVELOPERS.md").exists() {
        return;
    }
    let guide = text("DEVELOPERS.md");
    let mut seen = 0;
    for path in guide.split('`').skip(1).step_by(2).filter(|text| is_path(text)) {
        let there = ROOMS.iter().any(|room| root().join(room).join(path.trim_end_matches('/')).exists());
        assert!(there, "DEVELOPERS.md names `{path}`, which is not there");
        seen += 1;
    }
    assert!(seen > 0, "the guide names no path: this rule finds nothing");
}

#[test]
fn paths_are_told_from_other_words() {
    for (text, want) in [
        ("src-calc/src/measure/", true),
        ("app.rs", true),
        ("cargo xtask test", false),
        ("Length", false),
        ("dist/web", false),
        ("#/shelf", false),
        ("5/8", false),
        ("5/8 in", false),
    ] {
        assert_eq!(is_path(text), want, "{text}");
    }
}
