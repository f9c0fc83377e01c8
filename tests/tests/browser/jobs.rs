//! Jobs in the browser's database, and what only a browser does to them.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::scenarios::cabinet::says;
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

/// Counts how often the page asks the browser not to clear what it keeps.
const COUNT_ASKED: &str = "
    window.asked = 0;
    navigator.storage.persist = async () => { window.asked += 1; return true; };";

#[test]
fn the_browser_is_asked_to_keep_jobs_once_there_is_one() -> Outcome {
    play("jobs-stay", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.ask::<()>(COUNT_ASKED, &[]).await?;
        let asked = async || shell.ask::<u32>("return window.asked", &[]).await;
        shell.type_into("job-name", "Shed").await?;
        require_same(&asked().await?, &0, "asked before there is a job")?;
        jobs::save(shell, 1).await?;
        until("it was asked", asked, |asked| *asked == 1).await?;
        shell.type_into("cabinet-width", "640").await?;
        jobs::save(shell, 2).await?;
        require_same(&asked().await?, &1, "asked for two saves")
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

/// Puts half a text in the place of what stands under a key of one of the database's stores.
const DAMAGE: &str = "
    const done = arguments[arguments.length - 1];
    const [store, key] = arguments;
    const asked = indexedDB.open('scantling');
    asked.onsuccess = () => {
        const damaging = asked.result.transaction(store, 'readwrite');
        damaging.objectStore(store).put('{\"id\":1,', key);
        damaging.oncomplete = () => { asked.result.close(); done(true); };
        damaging.onabort = () => done(false);
    };";

async fn damage(shell: &Shell, store: &str, key: serde_json::Value) -> Outcome {
    let done = shell.ask_later(DAMAGE, &[store.into(), key]).await?;
    require(done, || format!("nothing of {store} could be damaged"))
}

#[test]
fn a_damaged_job_is_made_anew_of_its_revisions_or_told() -> Outcome {
    play("jobs-damaged", Kind::Browser, async |shell| {
        shell.run_first(CATCH).await?;
        shell.go_to("").await?;
        shell.started().await?;
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "Shed").await?;
        jobs::save(shell, 1).await?;
        shell.type_into("cabinet-width", "640").await?;
        jobs::save(shell, 2).await?;
        shell.type_into("cabinet-width", "650").await?;
        jobs::save(shell, 3).await?;
        shell.type_into("job-name", "Hall").await?;
        shell.press("[data-action=save-new]").await?;
        jobs::bar_is(shell, "saved", 1).await?;

        damage(shell, "jobs", json!(1)).await?;
        damage(shell, "revisions", json!([1, 3])).await?;
        shell.open_jobs().await?;
        jobs::listed(shell, &["Hall", "Shed"]).await?;
        shell.press(".job:last-child .job-row").await?;
        shell.press("[data-fold=revisions] > summary").await?;
        says(shell, ".job-chosen .problem", "One more revision is damaged").await?;
        shell.keep_picture("jobs-damaged").await?;
        shell.press(".job [data-action=open]").await?;
        shell.field_is("cabinet-width", "that of the last that can be read", |field| field.value == "640").await?;
        // The next one does not take the place of the damaged one, and the entry is whole again.
        shell.type_into("cabinet-width", "660").await?;
        jobs::save(shell, 4).await?;

        // A file of all jobs has those that can be read, and names the others.
        damage(shell, "revisions", json!([2, 1])).await?;
        shell.open_jobs().await?;
        jobs::listed(shell, &["Shed", "Hall"]).await?;
        shell.press("[data-action=save-all]").await?;
        says(shell, ".job-said", "cannot be read: Hall").await?;
        let file: serde_json::Value = serde_json::from_str(&shell.ask::<String>("return window.saved", &[]).await?)?;
        require_same(&file["jobs"].as_array().map(Vec::len), &Some(1), "jobs in the file")?;
        require_same(&file["jobs"][0]["cards"]["cabinet"]["width"], &json!("660"), "the width in the file")?;

        // Of a job with nothing that can be read it is said that it is there.
        damage(shell, "jobs", json!(2)).await?;
        shell.open_bench().await?;
        shell.open_jobs().await?;
        says(shell, ".job-list > .problem", "One more job is damaged").await?;
        jobs::listed(shell, &["Shed"]).await?;
        // No number is given once more, even where the last that was given is damaged.
        damage(shell, "jobs", json!(0)).await?;
        shell.press(".job:first-child [data-action=copy-job]").await?;
        jobs::listed(shell, &["Shed, copy", "Shed"]).await?;
        says(shell, ".job-list > .problem", "One more job is damaged").await.map(drop)
    })
}
