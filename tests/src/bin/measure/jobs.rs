//! Jobs: how long a save takes, from the press to the word that it is done, and a list of a thousand.

use super::{in_order, percentile, tell};
use scantling_tests::fault::Outcome;
use scantling_tests::scenarios::jobs::{hand_file, save};
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::{Value, json};

/// So many saves, and so many jobs.
const SAVES: usize = 100;
const JOBS: usize = 1_000;

/// Changes the width and saves, again and again; each time from the press until the bar says that it is saved.
const SAVE: &str = "
    const done = arguments[arguments.length - 1];
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    const bar = () => document.querySelector('.job-bar').dataset;
    const until = (holds) => new Promise((told) => {
        const look = () => holds() && (watch.disconnect(), told());
        const watch = new MutationObserver(look);
        watch.observe(document.body, { subtree: true, attributes: true, childList: true });
        look();
    });
    (async () => {
        const times = [];
        for (let at = 0; at < arguments[0]; at += 1) {
            const field = document.getElementById('cabinet-width');
            set.call(field, String(700 + at));
            field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            await until(() => bar().state === 'changed');
            const begun = performance.now();
            document.querySelector('[data-action=save]').click();
            await until(() => bar().state === 'saved');
            times.push(performance.now() - begun);
            // What else the page does about a change is not part of the next save.
            await new Promise((told) => setTimeout(told, 400));
        }
        done(times);
    })();";

/// Leaves the list and comes back, from the change of address until the list has been painted.
const LIST: &str = "
    const done = arguments[arguments.length - 1];
    location.hash = '#/';
    setTimeout(() => {
        const begun = performance.now();
        const watch = new MutationObserver(() => {
            if (document.querySelector('.job-list')?.dataset.listed !== String(arguments[0])) return;
            watch.disconnect();
            requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun), 0));
        });
        watch.observe(document.body, { subtree: true, attributes: true, childList: true });
        location.hash = '#/jobs';
    }, 500);";

pub(super) async fn jobs(kind: Kind) -> Outcome {
    let name = match kind {
        Kind::Browser => "browser",
        Kind::Window => "window (a debug build)",
    };
    let shell = &mut Shell::open(kind).await?;
    shell.open_card("cabinet").await?;
    shell.type_into("job-name", "Shed").await?;
    save(shell, 1).await?;
    let mut times = Vec::new();
    // A script may not run longer than half a minute.
    for _ in 0..SAVES / 25 {
        times.extend(shell.ask_later::<Vec<f64>>(SAVE, &[25.into()]).await?);
    }
    let times = in_order(times);
    tell(&format!("job: save in the {name}, median"), percentile(&times, 50), "ms", Some(20.0));
    tell(&format!("job: save in the {name}, 99th percentile"), percentile(&times, 99), "ms", None);

    shell.open_jobs().await?;
    let cabinet: Value = serde_json::to_value(scantling::cabinet::Inputs::default())?;
    let one = |at: usize| json!({ "name": format!("Cupboard {at}"), "cards": { "cabinet": cabinet } });
    let file = json!({ "scantling": 1, "jobs": (1..JOBS).map(one).collect::<Vec<_>>() });
    hand_file(shell, &file.to_string()).await?;
    // A thousand saves, each on the disk.
    let listed = format!(".job-list[data-listed='{JOBS}']");
    for _ in 0..20 {
        if until("a thousand jobs", async || shell.count(&listed).await, |count| *count == 1).await.is_ok() {
            break;
        }
    }
    let mut times = Vec::new();
    for _ in 0..10 {
        times.push(shell.ask_later::<f64>(LIST, &[JOBS.into()]).await?);
    }
    tell(
        &format!("job: {JOBS} jobs listed in the {name}, median"),
        percentile(&in_order(times), 50),
        "ms",
        Some(100.0),
    );
    shell.end().await
}
