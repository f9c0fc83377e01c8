//! The native window: the scenarios that it shares with the browser, with the same real typing.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use scantling_tests::fault::{Fault, Outcome};
use scantling_tests::play::play;
use scantling_tests::scenarios::card::whole_way;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::scenarios::{jobs, settings, tape};
use scantling_tests::shell::{Kind, Shell};
use std::sync::{Mutex, PoisonError};

/// Windows of one display take the focus from each other, and the keys go to the one that has it.
static DISPLAY: Mutex<()> = Mutex::new(());

fn alone(name: &str, scenario: impl AsyncFnOnce(&mut Shell) -> Outcome) -> Outcome {
    let _mine = DISPLAY.lock().unwrap_or_else(PoisonError::into_inner);
    play(name, Kind::Window, scenario)
}

fn card(slug: &str) -> Outcome {
    let case = CASES.iter().find(|case| case.slug == slug).unwrap();
    alone(slug, async |shell| whole_way(shell, case).await)
}

#[test]
fn convert() -> Outcome {
    card("convert")
}

#[test]
fn cabinet() -> Outcome {
    card("cabinet")
}

#[test]
fn back_panel() -> Outcome {
    card("back-panel")
}

#[test]
fn wood_movement() -> Outcome {
    card("wood-movement")
}

#[test]
fn sheet_layout() -> Outcome {
    card("sheet-layout")
}

#[test]
fn bevelled_strips() -> Outcome {
    card("bevelled-strips")
}

#[test]
fn angles() -> Outcome {
    card("angles")
}

#[test]
fn groove() -> Outcome {
    card("groove")
}

#[test]
fn shelf() -> Outcome {
    card("shelf")
}

#[test]
fn clothes_rail() -> Outcome {
    card("clothes-rail")
}

#[test]
fn spacing() -> Outcome {
    card("spacing")
}

#[test]
fn hole_rows() -> Outcome {
    card("hole-rows")
}

#[test]
fn cup_hinge() -> Outcome {
    card("cup-hinge")
}

#[test]
fn joints() -> Outcome {
    card("joints")
}

#[test]
fn wall_cleat() -> Outcome {
    card("wall-cleat")
}

#[test]
fn hanging() -> Outcome {
    card("hanging")
}

#[test]
fn materials() -> Outcome {
    card("materials")
}

#[test]
fn settings_are_there_after_a_restart() -> Outcome {
    alone("settings", async |shell| settings::are_kept(shell).await)
}

#[test]
fn the_tape_carries_values() -> Outcome {
    alone("tape", async |shell| tape::carries_values(shell).await)
}

#[test]
fn jobs_are_saved_gone_back_to_and_put_away() -> Outcome {
    alone("jobs", async |shell| jobs::are_kept(shell).await)
}

/// The text of the file that the app says it has saved.
async fn saved(shell: &Shell) -> Outcome<String> {
    let said = shell.text(".job-said").await?.unwrap_or_default();
    let path = said.strip_prefix("Saved as ").ok_or_else(|| Fault::Wrong(format!("no path: {said}")))?;
    Ok(std::fs::read_to_string(path)?)
}

#[test]
fn jobs_go_through_a_file() -> Outcome {
    alone("jobs-file", async |shell| jobs::go_through_a_file(shell, saved).await)
}

#[test]
fn five_hundred_saves_survive_the_window_being_killed() -> Outcome {
    alone("jobs-killed", async |shell| jobs::survive_being_killed(shell, 500).await)
}
