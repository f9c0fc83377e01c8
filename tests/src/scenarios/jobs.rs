//! Jobs: saved, gone back to, copied, put away, passed on; and there whatever happens to the app.

use super::cabinet::says;
use crate::fault::{Fault, Outcome, require, require_same};
use crate::shell::{Kind, Shell};
use crate::wait::until;
use scantling::job::Job;
use serde::Deserialize;
use serde_json::{Value, json};
use std::hash::{BuildHasher, RandomState};
use std::time::{Duration, Instant};

/// The bar on the card.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
struct Bar {
    state: String,
    revision: u32,
}

const BAR: &str = "
    const bar = document.querySelector('.job-bar');
    return bar && { state: bar.dataset.state, revision: Number(bar.dataset.revision) };";

/// Waits until the bar says so.
///
/// # Errors
/// When it never does.
pub async fn bar_is(shell: &Shell, state: &str, revision: u32) -> Outcome {
    let want = Bar { state: state.to_owned(), revision };
    let look = async || shell.ask::<Option<Bar>>(BAR, &[]).await;
    until(&format!("{want:?}"), look, |bar| bar.as_ref() == Some(&want)).await.map(drop)
}

/// Saves, and waits until that is done.
///
/// # Errors
/// When it is not.
pub async fn save(shell: &Shell, revision: u32) -> Outcome {
    shell.press("[data-action=save]").await?;
    bar_is(shell, "saved", revision).await
}

const NAMES: &str = "return [...document.querySelectorAll('.job-list > .jobs > .job strong:first-child')]
    .map((name) => name.textContent)";

/// Waits until these are the jobs in the list, in this order.
///
/// # Errors
/// When they never are.
pub async fn listed(shell: &Shell, want: &[&str]) -> Outcome {
    until(&format!("{want:?}"), async || shell.ask::<Vec<String>>(NAMES, &[]).await, |names| names == want)
        .await
        .map(drop)
}

/// Every step of a job's life, in one sitting and the next.
///
/// # Errors
/// When anything is not as it should be.
pub async fn are_kept(shell: &mut Shell) -> Outcome {
    shell.open_card("cabinet").await?;
    bar_is(shell, "new", 0).await?;
    shell.type_into("job-name", "Potting shed").await?;
    save(shell, 1).await?;
    shell.type_into("cabinet-width", "640").await?;
    bar_is(shell, "changed", 1).await?;
    save(shell, 2).await?;
    shell.keep_picture("job-saved").await?;
    shell.open_bench().await?;
    shell.restart().await?;
    shell.open_card("cabinet").await?;
    bar_is(shell, "saved", 2).await?;
    shell.field_is("job-name", "the job's name", |field| field.value == "Potting shed").await?;
    shell.field_is("cabinet-width", "as saved", |field| field.value == "640").await?;

    an_older_revision_is_opened(shell).await?;
    jobs_are_copied_and_put_away(shell).await
}

async fn an_older_revision_is_opened(shell: &Shell) -> Outcome {
    shell.open_jobs().await?;
    listed(shell, &["Potting shed"]).await?;
    // The one on the bench is the chosen one.
    shell.press("[data-fold=revisions] > summary").await?;
    shell.shows(".revision[data-revision='2']").await?;
    shell.keep_picture("jobs").await?;
    shell.press(".revision[data-revision='1'] [data-action=open-revision]").await?;
    shell.field_is("cabinet-width", "as first saved", |field| field.value == "830").await?;
    bar_is(shell, "changed", 2).await?;
    // Nothing was done to it: the newest comes back, and no revision more.
    shell.open_jobs().await?;
    shell.press(".job [data-action=open]").await?;
    shell.field_is("cabinet-width", "the newest", |field| field.value == "640").await?;
    bar_is(shell, "saved", 2).await?;

    // What was typed and not saved is saved before another one is opened.
    shell.type_into("cabinet-width", "700").await?;
    bar_is(shell, "changed", 2).await?;
    shell.open_jobs().await?;
    shell.press("[data-fold=revisions] > summary").await?;
    shell.press(".revision[data-revision='1'] [data-action=open-revision]").await?;
    shell.field_is("cabinet-width", "as first saved", |field| field.value == "830").await?;
    bar_is(shell, "changed", 3).await?;
    shell.open_jobs().await?;
    shell.press("[data-fold=revisions] > summary").await?;
    shell.press(".revision[data-revision='3'] [data-action=open-revision]").await?;
    shell.field_is("cabinet-width", "as typed", |field| field.value == "700").await?;
    bar_is(shell, "saved", 3).await
}

async fn jobs_are_copied_and_put_away(shell: &Shell) -> Outcome {
    shell.open_jobs().await?;
    shell.press("[data-action=copy-job]").await?;
    listed(shell, &["Potting shed, copy", "Potting shed"]).await?;
    shell.press("[data-action=put-away]").await?;
    listed(shell, &["Potting shed, copy"]).await?;
    // Its button has gone with it; what was said of it has the focus.
    let focus = async || shell.ask::<String>("return document.activeElement.className", &[]).await;
    until("the focus on what was said", focus, |class| class == "job-said").await?;
    shell.press("[data-fold=put-away] > summary").await?;
    shell.press("[data-action=put-back]").await?;
    listed(shell, &["Potting shed, copy", "Potting shed"]).await?;
    shell.press(".job:first-child .job-row").await?;
    shell.press("[data-action=put-away]").await?;
    listed(shell, &["Potting shed"]).await?;
    shell.press("[data-fold=put-away] > summary").await?;
    shell.press("[data-action=forget]").await?;
    // Only a second press does it.
    shell.press("[data-action=forget][data-sure=true]").await?;
    shell.shows_no("[data-fold=put-away]").await?;
    listed(shell, &["Potting shed"]).await?;

    // Saved as a new one, it is the one on the bench.
    shell.open_card("cabinet").await?;
    shell.type_into("job-name", "Hall").await?;
    shell.press("[data-action=save-new]").await?;
    bar_is(shell, "saved", 1).await?;
    shell.open_jobs().await?;
    listed(shell, &["Hall", "Potting shed"]).await?;
    let chosen = shell.text(".job-row[aria-expanded=true] strong").await?;
    require_same(&chosen.as_deref(), &Some("Hall"), "the job on the bench")?;
    the_one_on_the_bench_is_forgotten(shell).await
}

async fn the_one_on_the_bench_is_forgotten(shell: &Shell) -> Outcome {
    shell.press("[data-action=put-away]").await?;
    listed(shell, &["Potting shed"]).await?;
    shell.press("[data-fold=put-away] > summary").await?;
    shell.press("[data-action=forget]").await?;
    shell.press("[data-action=forget][data-sure=true]").await?;
    shell.shows_no("[data-fold=put-away]").await?;
    // What is on the card stays there, and is of no job.
    shell.open_card("cabinet").await?;
    bar_is(shell, "new", 0).await?;
    shell.field_is("job-name", "the name that it had", |field| field.value == "Hall").await?;
    // It does not come back by itself when another is opened.
    shell.open_jobs().await?;
    shell.press(".job:first-child .job-row").await?;
    shell.press(".job [data-action=open]").await?;
    bar_is(shell, "saved", 3).await?;
    // A name that was typed is saved first.
    shell.type_into("job-name", "Tall shed").await?;
    bar_is(shell, "changed", 3).await?;
    shell.open_jobs().await?;
    listed(shell, &["Potting shed"]).await?;
    shell.press(".job [data-action=open]").await?;
    bar_is(shell, "saved", 4).await?;
    shell.open_jobs().await?;
    listed(shell, &["Tall shed"]).await
}

/// Hands a text to the field for files of jobs, as a person's choice of a file does.
const HAND_FILE: &str = "
    const field = document.getElementById('jobs-file-in');
    const files = new DataTransfer();
    files.items.add(new File([arguments[0]], 'jobs.json', { type: 'application/json' }));
    field.files = files.files;
    field.dispatchEvent(new Event('change', { bubbles: true }));";

/// Takes in a file of jobs.
///
/// # Errors
/// When there is no field for it.
pub async fn hand_file(shell: &Shell, text: &str) -> Outcome {
    shell.ask(HAND_FILE, &[text.into()]).await
}

/// A job goes into a file and comes back from it, with fields that this program does not know; what is no file of jobs
/// is refused in words. `saved` gives the text of the file that was saved last.
///
/// # Errors
/// When anything is not as it should be.
pub async fn go_through_a_file(shell: &mut Shell, saved: impl AsyncFn(&Shell) -> Outcome<String>) -> Outcome {
    shell.open_card("cabinet").await?;
    shell.type_into("job-name", "Hall").await?;
    shell.type_into("cabinet-width", "31 1/2 in").await?;
    save(shell, 1).await?;
    shell.open_jobs().await?;
    shell.press("[data-action=save-file]").await?;
    says(shell, ".job-said", "Saved as").await?;
    let mut file: Value = serde_json::from_str(&saved(shell).await?)?;
    require_same(&file["jobs"][0]["cards"]["cabinet"]["width"], &json!("31 1/2 in"), "the width in the file")?;

    file["jobs"][0]["name"] = json!("Newer hall");
    file["jobs"][0]["cards"]["cabinet"]["drawers"] = json!({ "count": 3 });
    hand_file(shell, &file.to_string()).await?;
    listed(shell, &["Newer hall", "Hall"]).await?;
    shell.press(".job:first-child .job-row").await?;
    shell.press(".job:first-child [data-action=open]").await?;
    shell.field_is("cabinet-width", "as in the file", |field| field.value == "31 1/2 in").await?;
    bar_is(shell, "saved", 1).await?;
    shell.type_into("cabinet-width", "700").await?;
    save(shell, 2).await?;
    shell.open_jobs().await?;
    shell.press("[data-action=save-file]").await?;
    says(shell, ".job-said", "Saved as").await?;
    let again: Value = serde_json::from_str(&saved(shell).await?)?;
    let cabinet = &again["jobs"][0]["cards"]["cabinet"];
    require_same(&cabinet["drawers"], &json!({ "count": 3 }), "what nobody here knows")?;
    require_same(&cabinet["width"], &json!("700"), "the width that was typed")?;

    // A new job that is made of it has that too.
    shell.open_card("cabinet").await?;
    shell.type_into("job-name", "Third hall").await?;
    shell.press("[data-action=save-new]").await?;
    bar_is(shell, "saved", 1).await?;
    shell.open_jobs().await?;
    listed(shell, &["Third hall", "Newer hall", "Hall"]).await?;
    shell.press("[data-action=save-file]").await?;
    says(shell, ".job-said", "Saved as").await?;
    let third: Value = serde_json::from_str(&saved(shell).await?)?;
    require_same(&third["jobs"][0]["name"], &json!("Third hall"), "the name in the file")?;
    require_same(&third["jobs"][0]["cards"]["cabinet"]["drawers"], &json!({ "count": 3 }), "what nobody here knows")?;

    for (text, words) in [
        ("not json", "not JSON"),
        ("{\"scantling\": 7, \"jobs\": []}", "a newer Scantling wrote"),
        ("{\"scantling\": 1, \"jobs\": [{}]}", "Job 1 cannot be read"),
    ] {
        hand_file(shell, text).await?;
        says(shell, ".job-files > .problem", words).await?;
        let note = shell.text("#jobs-file-in-note").await?;
        require_same(&note.as_deref(), &Some("jobs.json was chosen."), "what is said beside the refusal")?;
    }
    listed(shell, &["Third hall", "Newer hall", "Hall"]).await
}

/// Saves one revision after the other, as fast as it goes; each is as wide as its number says.
const SAVE_ON: &str = "
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
    const rest = () => new Promise((done) => setTimeout(done, 0));
    const until = async (holds) => { while (!holds()) await rest(); };
    const bar = () => document.querySelector('.job-bar').dataset;
    (async () => {
        for (;;) {
            const next = Number(bar().revision) + 1;
            const field = document.getElementById('cabinet-width');
            set.call(field, String(600 + next));
            field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            await rest();
            document.querySelector('[data-action=save]').click();
            await until(() => bar().state === 'saved' && Number(bar().revision) === next);
        }
    })();";

/// A time between nought and this.
fn some_of(most: Duration) -> Duration {
    let chance = RandomState::new().hash_one(0);
    most.mul_f64(f64::from(u32::try_from(chance >> 32).unwrap_or(0)) / f64::from(u32::MAX))
}

/// Saves until so many saves were acknowledged, and is killed again and again at moments that nobody chose. After each,
/// every acknowledged save is there, and every revision can be read and is the one it says.
///
/// # Errors
/// When a save is lost, or a job cannot be read.
pub async fn survive_being_killed(shell: &mut Shell, saves: u32) -> Outcome {
    shell.open_card("cabinet").await?;
    shell.type_into("job-name", "Killed").await?;
    shell.type_into("cabinet-width", "601").await?;
    save(shell, 1).await?;
    let mut acknowledged = 1;
    let mut kills = 0;
    while acknowledged < saves {
        let life = some_of(Duration::from_secs(5));
        let begun = Instant::now();
        shell.ask::<()>(SAVE_ON, &[]).await?;
        while begun.elapsed() < life {
            let bar: Option<Bar> = shell.ask(BAR, &[]).await?;
            acknowledged = bar.map_or(acknowledged, |bar| acknowledged.max(bar.revision));
        }
        shell.kill().await?;
        kills += 1;
        can_all_be_read(shell, kills).await?;
        acknowledged = is_all_there(shell, acknowledged).await?;
    }
    Ok(())
}

/// The revisions of the only job, each with its text, as the shell's store has them.
const ALL_IN_BROWSER: &str = "
    const done = arguments[arguments.length - 1];
    const asked = indexedDB.open('scantling');
    asked.onsuccess = () => {
        const got = asked.result.transaction('revisions').objectStore('revisions').getAll();
        got.onsuccess = () => {
            asked.result.close();
            done(got.result.map((kept) => JSON.parse(kept)).map(({ number, content }) => [number, content]));
        };
    };";
const ALL_IN_WINDOW: &str = "
    const done = arguments[arguments.length - 1];
    const { invoke } = window.__TAURI_INTERNALS__;
    const one = async ({ number }) => [number, await invoke('revision', { id: 1, number })];
    invoke('revisions', { id: 1 }).then((all) => Promise.all(all.map(one))).then(done);";

/// Every revision is a whole job, as wide as its number says; one of each kill may be what was typed before it.
async fn can_all_be_read(shell: &Shell, kills: usize) -> Outcome {
    let script = match shell.kind() {
        Kind::Browser => ALL_IN_BROWSER,
        Kind::Window => ALL_IN_WINDOW,
    };
    let all: Vec<(u32, String)> = shell.ask_later(script, &[]).await?;
    require(!all.is_empty(), || "no revision is there".to_owned())?;
    let mut older = 0;
    for (number, content) in all {
        let job = Job::read(&content).map_err(|why| Fault::Wrong(format!("revision {number}: {why}")))?;
        let (cabinet, want) = (job.cabinet(), 600 + number);
        let wide: u32 = cabinet.width.typed().parse().unwrap_or_default();
        require((601..=want).contains(&wide), || format!("revision {number} is {wide} wide"))?;
        older += usize::from(wide != want);
    }
    require(older <= kills, || format!("{older} revisions are not what was saved as them, after {kills} kills"))
}

const LAST: &str = "
    const rows = [...document.querySelectorAll('.revision')].map((row) => Number(row.dataset.revision));
    return rows.length > 0 ? rows : null;";

/// Looks for the save of this number after a start, saves once more, and gives the number of that.
async fn is_all_there(shell: &Shell, acknowledged: u32) -> Outcome<u32> {
    let revisions = revisions(shell).await?;
    let last = revisions.first().copied().unwrap_or_default();
    require(last >= acknowledged, || format!("save {acknowledged} was acknowledged, and {last} is the last there is"))?;
    let want: Vec<u32> = (1..=last).rev().take(50).collect();
    require_same(&revisions, &want, "the last fifty revisions")?;
    open_revision(shell, acknowledged).await?;
    shell
        .field_is("cabinet-width", &format!("that of revision {acknowledged}"), |field| {
            field.value == (600 + acknowledged).to_string()
        })
        .await?;
    // What was typed and not saved when it was killed has become a revision by now.
    let last = self::revisions(shell).await?.first().copied().unwrap_or_default();
    open_revision(shell, last).await?;
    bar_is(shell, "saved", last).await.map_err(|fault| Fault::Wrong(format!("after opening the last: {fault}")))?;
    let next = last + 1;
    shell.type_into("cabinet-width", &(600 + next).to_string()).await?;
    save(shell, next).await?;
    Ok(next)
}

async fn open_revision(shell: &Shell, number: u32) -> Outcome {
    shell.press(&format!(".revision[data-revision='{number}'] [data-action=open-revision]")).await?;
    shell.shows(".job-bar").await
}

/// The numbers of the revisions in the list of the only job, the last first.
async fn revisions(shell: &Shell) -> Outcome<Vec<u32>> {
    shell.open_jobs().await?;
    listed(shell, &["Killed"]).await?;
    if shell.count(".job-chosen").await? == 0 {
        shell.press(".job:first-child .job-row").await?;
    }
    shell.press("[data-fold=revisions] > summary").await?;
    let look = async || shell.ask::<Option<Vec<u32>>>(LAST, &[]).await;
    Ok(until("the revisions", look, Option::is_some).await?.unwrap_or_default())
}
