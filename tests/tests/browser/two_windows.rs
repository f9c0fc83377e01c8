//! Two windows of one browser, which share what is kept: each goes on with its own job.

use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::scenarios::jobs;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use thirtyfour::WindowHandle;

/// Opens another window, with the cabinet card, and gives the one that was there before; the other one is in front.
async fn another(shell: &Shell) -> Outcome<WindowHandle> {
    let first = shell.session()?.window().await?;
    let second = shell.session()?.new_tab().await?;
    shell.session()?.switch_to_window(second).await?;
    shell.go_to("").await?;
    shell.started().await?;
    shell.open_card("cabinet").await?;
    Ok(first)
}

async fn to(shell: &Shell, window: &WindowHandle) -> Outcome {
    Ok(shell.session()?.switch_to_window(window.clone()).await?)
}

/// Types a width and waits until it is kept.
async fn type_width(shell: &Shell, width: &str) -> Outcome {
    shell.type_into("cabinet-width", width).await?;
    let kept = async || shell.ask::<String>("return localStorage['scantling/inputs/cabinet'] ?? ''", &[]).await;
    until("the width kept", kept, |kept| kept.contains(width)).await.map(drop)
}

/// Loads the page anew, and looks which cabinet stands under which name.
async fn is_after_a_reload(shell: &Shell, width: &str, name: &str) -> Outcome {
    shell.session()?.refresh().await?;
    shell.started().await?;
    shell.shows(".job-bar").await?;
    shell.field_is("cabinet-width", "as typed", |field| field.value == width).await?;
    shell.field_is("job-name", "the job of this window", |field| field.value == name).await.map(drop)
}

#[test]
fn two_windows_do_not_mix_up_their_jobs() -> Outcome {
    play("jobs-two-windows", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "Shed").await?;
        jobs::save(shell, 1).await?;
        let first = another(shell).await?;
        let second = shell.session()?.window().await?;
        shell.type_into("job-name", "Hall").await?;
        shell.press("[data-action=save-new]").await?;
        jobs::bar_is(shell, "saved", 1).await?;
        // Back in the first one, it is still the shed that is typed into.
        to(shell, &first).await?;
        type_width(shell, "640").await?;
        jobs::bar_is(shell, "changed", 1).await?;
        is_after_a_reload(shell, "640", "Shed").await?;

        // A save takes its own inputs, and puts its own beside its own job.
        to(shell, &second).await?;
        type_width(shell, "901").await?;
        to(shell, &first).await?;
        jobs::save(shell, 2).await?;
        is_after_a_reload(shell, "640", "Shed").await?;
        jobs::bar_is(shell, "saved", 2).await?;
        // The other one knows nothing of it.
        to(shell, &second).await?;
        shell.field_is("cabinet-width", "as typed", |field| field.value == "901").await?;
        jobs::save(shell, 2).await?;
        is_after_a_reload(shell, "901", "Hall").await
    })
}

#[test]
fn a_window_without_a_job_does_not_type_into_that_of_another() -> Outcome {
    play("jobs-none-and-one", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        let first = another(shell).await?;
        shell.type_into("job-name", "Hall").await?;
        jobs::save(shell, 1).await?;
        to(shell, &first).await?;
        type_width(shell, "555").await?;
        is_after_a_reload(shell, "555", "").await?;
        jobs::bar_is(shell, "new", 0).await
    })
}

#[test]
fn a_job_that_is_saved_in_two_windows_says_so() -> Outcome {
    play("jobs-one-in-two", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "Shed").await?;
        jobs::save(shell, 1).await?;
        let first = another(shell).await?;
        shell.type_into("cabinet-width", "640").await?;
        jobs::save(shell, 2).await?;
        to(shell, &first).await?;
        shell.type_into("cabinet-width", "901").await?;
        jobs::save(shell, 3).await?;
        shell.keep_picture("jobs-meanwhile").await?;
        let told = shell.text(".job-state").await?.unwrap_or_default();
        require(told.contains("Revision 2 was saved in another window"), || told.clone())?;
        // Both are there.
        shell.open_jobs().await?;
        shell.press("[data-fold=revisions] > summary").await?;
        shell.press(".revision[data-revision='2'] [data-action=open-revision]").await?;
        shell.field_is("cabinet-width", "as saved in the other", |field| field.value == "640").await?;
        shell.open_jobs().await?;
        shell.press("[data-fold=revisions] > summary").await?;
        shell.press(".revision[data-revision='3'] [data-action=open-revision]").await?;
        shell.field_is("cabinet-width", "as saved in this one", |field| field.value == "901").await.map(drop)
    })
}
