//! The native window: the scenarios that it shares with the browser, with the same real typing.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on has failed")]

use scantling_tests::fault::{Fault, Outcome};
use scantling_tests::play::play;
use scantling_tests::scenarios::card::whole_way;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::scenarios::{cabinet, jobs, settings, storage, tape};
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
fn what_could_not_be_read_at_the_start_is_not_written_over() -> Outcome {
    alone("unread", async |shell| {
        let block = async |shell: &mut Shell| {
            shell.end().await?;
            std::fs::rename(shell.data(), shell.data().with_extension("away"))?;
            std::fs::write(shell.data(), "A file where the folder was.")?;
            shell.restart().await
        };
        let free = async |shell: &mut Shell| {
            std::fs::remove_file(shell.data())?;
            Ok(std::fs::rename(shell.data().with_extension("away"), shell.data())?)
        };
        storage::is_read_again(shell, block, free).await
    })
}

#[test]
fn the_tape_carries_values() -> Outcome {
    alone("tape", async |shell| tape::carries_values(shell).await)
}

#[test]
fn jobs_are_saved_gone_back_to_and_put_away() -> Outcome {
    alone("jobs", async |shell| jobs::are_kept(shell).await)
}

#[test]
fn a_cabinet_gets_what_hangs_on_it() -> Outcome {
    alone("cabinet-accessories", async |shell| {
        cabinet::names_what_is_in_the_way(shell).await?;
        cabinet::adds_up_costs(shell).await?;
        cabinet::opens_doors_by_strips(shell).await?;
        cabinet::hangs_hooks(shell).await?;
        cabinet::hangs_a_rail(shell).await?;
        cabinet::hangs_a_shelf_outside(shell).await
    })
}

#[test]
fn a_cabinet_is_drawn_saved_and_followed() -> Outcome {
    alone("cabinet-followed", async |shell| {
        cabinet::draws(shell).await?;
        cabinet::saves_files(shell, saved).await?;
        cabinet::has_a_shop_sheet(shell).await?;
        cabinet::is_followed_at_the_saw(shell).await?;
        cabinet::keeps_ticks(shell).await
    })
}

#[test]
fn a_cabinet_hands_over_and_is_given_back() -> Outcome {
    alone("cabinet-given-back", async |shell| {
        cabinet::hands_over(shell).await?;
        cabinet::is_given_back(shell).await
    })
}

/// The text of the file that the app says it has saved.
async fn saved(shell: &Shell, css: &str) -> Outcome<String> {
    let said = shell.text(css).await?.unwrap_or_default();
    let path = said.strip_prefix("Saved as ").ok_or_else(|| Fault::Wrong(format!("no path: {said}")))?;
    Ok(std::fs::read_to_string(path)?)
}

#[test]
fn jobs_go_through_a_file() -> Outcome {
    alone("jobs-file", async |shell| {
        jobs::go_through_a_file(shell, async |shell: &Shell| saved(shell, ".job-said").await).await
    })
}

#[test]
fn five_hundred_saves_survive_the_window_being_killed() -> Outcome {
    alone("jobs-killed", async |shell| jobs::survive_being_killed(shell, 500).await)
}
