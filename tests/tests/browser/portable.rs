//! The app in one file, opened from the device's own files.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::places;
use scantling_tests::play::play;
use scantling_tests::scenarios::jobs;
use scantling_tests::shell::{Kind, Shell};
use serde_json::Value;

async fn open(shell: &Shell, hash: &str) -> Outcome {
    shell.session()?.goto("about:blank").await?;
    shell.session()?.goto(format!("file://{}{hash}", places::portable()?.display())).await?;
    shell.started().await
}

#[test]
fn one_file_answers_and_keeps_what_was_typed() -> Outcome {
    play("portable", Kind::Browser, async |shell| {
        open(shell, "").await?;
        require_same(&shell.ask::<String>("return location.protocol", &[]).await?, &"file:".to_owned(), "the address")?;
        shell.open_card("back-panel").await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.keep_picture("portable").await?;
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "On a stick").await?;
        jobs::save(shell, 1).await?;
        open(shell, "#/back-panel").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.open_jobs().await?;
        require_same(&shell.text(".job strong").await?.as_deref(), &Some("On a stick"), "the job")?;
        let asked: Vec<Value> =
            shell.ask("return performance.getEntriesByType('resource').map((entry) => entry.name)", &[]).await?;
        require(asked.is_empty(), || format!("the page asked for {asked:?}"))
    })
}

#[test]
fn where_nothing_can_be_kept_it_says_so() -> Outcome {
    play("portable-blocked", Kind::Browser, async |shell| {
        shell
            .run_first(
                "for (const name of ['localStorage', 'indexedDB'])
                    Object.defineProperty(window, name, { get() { throw new DOMException('', 'SecurityError'); } });",
            )
            .await?;
        open(shell, "#/cabinet").await?;
        shell.shows(".notice[role=alert]").await?;
        shell.press("[data-action=save]").await?;
        shell.shows(".job-bar[data-state=refused]").await?;
        open(shell, "#/back-panel").await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await.map(drop)
    })
}
