//! The native window, driven through its own WebDriver: the scenarios that both shells share.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test that cannot go on has failed")]

use scantling_tests::fault::Outcome;
use scantling_tests::play::play;
use scantling_tests::scenarios::card::whole_way;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::Kind;

fn card(slug: &str) -> Outcome {
    let case = CASES.iter().find(|case| case.slug == slug).unwrap();
    play(slug, Kind::Window, async |shell| whole_way(shell, case).await)
}

#[test]
fn convert() -> Outcome {
    card("convert")
}

#[test]
fn back_panel() -> Outcome {
    card("back-panel")
}

#[test]
fn bevelled_strips() -> Outcome {
    card("bevelled-strips")
}

#[test]
fn shelf() -> Outcome {
    card("shelf")
}

#[test]
fn cup_hinge() -> Outcome {
    card("cup-hinge")
}

#[test]
fn settings_are_there_after_a_restart() -> Outcome {
    play("settings", Kind::Window, async |shell| scantling_tests::scenarios::settings::are_kept(shell).await)
}
