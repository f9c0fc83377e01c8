//! Jobs in the browser's database, and what only a browser does to them.

use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::scenarios::jobs;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;

#[test]
fn jobs_are_saved_gone_back_to_and_put_away() -> Outcome {
    play("jobs", Kind::Browser, async |shell| jobs::are_kept(shell).await)
}

/// Catches what is handed to the person as a file.
pub(crate) const CATCH: &str = "
    HTMLAnchorElement.prototype.click = function () {
        if (this.download) window.saved = decodeURIComponent(this.href.split(',').slice(1).join(','));
    };";

#[test]
fn jobs_go_through_a_file() -> Outcome {
    play("jobs-file", Kind::Browser, async |shell| {
        shell.run_first(CATCH).await?;
        shell.go_to("").await?;
        shell.started().await?;
        jobs::go_through_a_file(shell, async |shell: &Shell| shell.ask("return window.saved", &[]).await).await
    })
}

#[test]
fn five_hundred_saves_survive_the_browser_being_killed() -> Outcome {
    play("jobs-killed", Kind::Browser, async |shell| jobs::survive_being_killed(shell, 500).await)
}

#[test]
fn a_browser_without_room_says_so_and_loses_nothing() -> Outcome {
    play("jobs-no-room", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "Shed").await?;
        jobs::save(shell, 1).await?;
        shell.open_bench().await?;
        // Within half a minute the browser does not look again how much room there is.
        shell.restart().await?;
        shell.open_card("cabinet").await?;
        let origin = shell.server()?.origin();
        shell.tool("Storage.overrideQuotaForOrigin", json!({ "origin": origin, "quotaSize": 1 })).await?;
        shell.type_into("cabinet-width", "640").await?;
        shell.press("[data-action=save]").await?;
        let look = async || shell.text(".job-bar[data-state=refused] .job-state").await;
        let said = until("a refusal", look, Option::is_some).await?.unwrap_or_default();
        require(said.contains("no room left on this device"), || said.clone())?;
        shell.keep_picture("jobs-no-room").await?;
        shell.tool("Storage.overrideQuotaForOrigin", json!({ "origin": origin })).await?;
        shell.field_is("cabinet-width", "as typed", |field| field.value == "640").await?;
        jobs::save(shell, 2).await
    })
}

/// Makes the database one of a later version, as a newer Scantling would.
const NEWER: &str = "
    const done = arguments[arguments.length - 1];
    const asked = indexedDB.open('scantling', 99);
    asked.onsuccess = () => { asked.result.close(); done(true); };
    asked.onerror = () => done(false);";

#[test]
fn a_newer_database_is_left_as_it_is() -> Outcome {
    play("jobs-newer", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        jobs::save(shell, 1).await?;
        require(shell.ask_later::<bool>(NEWER, &[]).await?, || "the database could not be made newer".to_owned())?;
        shell.type_into("cabinet-width", "640").await?;
        shell.press("[data-action=save]").await?;
        let look = async || shell.text(".job-bar[data-state=refused] .job-state").await;
        let said = until("a refusal", look, Option::is_some).await?.unwrap_or_default();
        require(said.contains("written by a newer Scantling"), || said.clone())
    })
}
