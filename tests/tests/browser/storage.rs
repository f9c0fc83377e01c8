//! A device that lost, damaged or refuses what is kept: the app says so, and works.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::scenarios::jobs;
use scantling_tests::scenarios::storage::is_read_again;
use scantling_tests::shell::{Kind, Shell};

#[test]
fn damaged_inputs_give_the_demo_and_stay_out_of_the_way() -> Outcome {
    play("damaged", Kind::Browser, async |shell| {
        shell.open_card("back-panel").await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.open_bench().await?;
        let damage = "
            const keys = Object.keys(localStorage).filter((key) => key.startsWith('scantling/'));
            for (const key of keys) localStorage.setItem(key, localStorage.getItem(key).slice(0, -9) + '\\u0000{');
            return keys.length;";
        let damaged: usize = shell.ask(damage, &[]).await?;
        require(damaged > 0, || "nothing was kept that could be damaged".to_owned())?;

        shell.go_to("#/back-panel").await?;
        shell.started().await?;
        shell.answers(&["578 mm", "726 mm"]).await?;
        shell.shows(".notice [data-action=noticed]").await?;
        shell.keep_picture("damaged").await?;
        let aside: String = shell.ask("return localStorage['scantling/damaged/back-panel']", &[]).await?;
        require(aside.contains("864"), || format!("put aside: {aside}"))?;
        shell.press("[data-action=noticed]").await?;
        shell.shows_no(".notice").await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.go_to("#/back-panel").await?;
        shell.started().await?;
        shell.answers(&["878 mm", "726 mm"]).await.map(drop)
    })
}

#[test]
fn a_damaged_cabinet_is_not_saved_as_the_newest_of_its_job() -> Outcome {
    play("damaged-cabinet", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.type_into("job-name", "Shed").await?;
        shell.type_into("cabinet-width", "640").await?;
        jobs::save(shell, 1).await?;
        let damage = "localStorage['scantling/inputs/cabinet'] = localStorage['scantling/inputs/cabinet'].slice(0, -9)";
        shell.ask::<()>(damage, &[]).await?;
        shell.go_to("#/cabinet").await?;
        shell.started().await?;
        shell.shows(".notice [data-action=noticed]").await?;
        jobs::bar_is(shell, "new", 0).await?;
        jobs::save(shell, 1).await?;
        // It is a job of its own; the shed is as it was saved.
        shell.open_jobs().await?;
        shell.press(".job:not(:has([aria-expanded=true])) .job-row").await?;
        shell.press(".job [data-action=open]").await?;
        shell.field_is("cabinet-width", "as saved", |field| field.value == "640").await?;
        jobs::bar_is(shell, "saved", 1).await
    })
}

/// Fills what room the browser gives, to the last letter.
const FILL: &str = "
    let piece = 'x'.repeat(1 << 20);
    for (let n = 0; piece.length > 0; n += 1) {
        try { localStorage.setItem('filled-' + n, piece); } catch { piece = piece.slice(0, piece.length >> 1); }
    }";

#[test]
fn a_full_device_says_so_and_answers_all_the_same() -> Outcome {
    play("full", Kind::Browser, async |shell| {
        shell.ask::<()>(FILL, &[]).await?;
        shell.open_card("back-panel").await?;
        require_same(&shell.count(".notice[role=alert]").await?, &0, "a notice before anything was typed")?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.shows(".notice[role=alert]").await?;
        shell.keep_picture("full").await?;
        shell.type_into("back-panel-opening-width", "964").await?;
        shell.answers(&["978 mm", "726 mm"]).await?;
        // On the bench it is there for as long as the app is open.
        shell.open_bench().await?;
        let figure = shell.text("main .bench-row[data-card='back-panel'] .bench-main").await?;
        require_same(&figure.as_deref(), &Some("978 × 726 mm"), "the bench")?;
        // Once there is room the notice goes.
        shell
            .ask::<()>(
                "Object.keys(localStorage).forEach((key) => key.startsWith('filled-') && localStorage.removeItem(key))",
                &[],
            )
            .await?;
        shell.open_card("back-panel").await?;
        shell.type_into("back-panel-opening-width", "965").await?;
        shell.shows_no(".notice").await
    })
}

#[test]
fn a_device_that_keeps_nothing_says_so_and_answers_all_the_same() -> Outcome {
    play("blocked", Kind::Browser, async |shell| {
        shell
            .run_first("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('', 'SecurityError'); } });")
            .await?;
        shell.go_to("#/back-panel").await?;
        shell.started().await?;
        shell.shows(".notice[role=alert]").await?;
        shell.answers(&["578 mm", "726 mm"]).await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await.map(drop)
    })
}

/// The page's own storage cannot be had until it is freed.
const BLOCK: &str = "
    try {
        const own = window.localStorage;
        window.blocked = true;
        const get = () => { if (window.blocked) throw new DOMException('', 'SecurityError'); return own; };
        Object.defineProperty(window, 'localStorage', { get });
    } catch { /* An empty page has none. */ }";

#[test]
fn what_could_not_be_read_at_the_start_is_not_written_over() -> Outcome {
    play("unread", Kind::Browser, async |shell| {
        let block = async |shell: &mut Shell| {
            shell.run_first(BLOCK).await?;
            shell.go_to("").await?;
            shell.started().await
        };
        is_read_again(shell, block, async |shell: &mut Shell| shell.ask("window.blocked = false", &[]).await).await
    })
}
