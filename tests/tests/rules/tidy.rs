//! Sizes, and what must not be in the repository: other origins, other machines' paths, registries' addresses.

use crate::room::{files, texts};

/// A file that needs more is two files.
const MOST_LINES: usize = 400;

#[test]
fn no_file_is_longer_than_a_person_reads() {
    for ending in [".rs", ".css"] {
        for (path, text) in texts("", ending) {
            let lines = text.lines().count();
            assert!(lines <= MOST_LINES, "{path} has {lines} lines; {MOST_LINES} is the end");
        }
    }
}

#[test]
fn no_file_is_a_drawer_for_odds_and_ends() {
    for (path, _) in texts("", ".rs") {
        for name in ["utils", "util", "helpers", "helper", "common", "misc", "manager"] {
            let is = path.split('/').any(|part| part == name || part.strip_suffix(".rs") == Some(name));
            assert!(!is, "{path}: name it by the thing");
        }
    }
}

/// The name of a language of drawings, which no browser ever asks for.
const DRAWINGS: &str = "http://www.w3.org/";

#[test]
fn the_app_names_no_other_origin() {
    for file in files("src-ui") {
        let Some(text) = file.text else { continue };
        for scheme in ["http://", "https://", "wss://", "ws://", "\"//"] {
            for (at, _) in text.match_indices(scheme) {
                let rest = &text[at..];
                assert!(rest.starts_with(DRAWINGS), "{}: {}", file.path, rest.chars().take(60).collect::<String>());
            }
        }
    }
}

#[test]
fn nothing_tells_of_the_machine_it_was_written_on() {
    // In two halves, so that this file does not name them either.
    let places = [
        ("/ho", "me/"),
        ("/ro", "ot/"),
        ("/Use", "rs/"),
        ("/wo", "rk/"),
        ("C:", "\\\\"),
        ("C:", "\\Users"),
        ("../sha", "red"),
        ("../.lib", "rary"),
        ("crates", ".io"),
        ("npm", "js."),
        ("py", "pi.org"),
        ("static.rust", "-lang.org"),
        ("deb.de", "bian.org"),
        ("githubuser", "content.com"),
    ];
    for file in files("") {
        let Some(text) = file.text else { continue };
        for (number, line) in text.lines().enumerate() {
            // Cargo writes the name of its index into every lock file; it is a name, and no mirror's address.
            if file.path.ends_with("Cargo.lock")
                && line.starts_with("source = \"registry+https://github.com/rust-lang/")
            {
                continue;
            }
            for (one, two) in places {
                let place = format!("{one}{two}");
                assert!(!line.contains(&place), "{}:{}: {place} in {line:?}", file.path, number + 1);
            }
        }
    }
}
