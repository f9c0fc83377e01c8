//! Jobs from a file and into one, and a copy of everything where the shell makes one.

use super::Desk;
use crate::jobs::{about, read};
use crate::store::{JobEntry, Kept, StoreError, ToSave};
use crate::widgets::file_field::{FileField, FileRead};
use crate::words::{say, say_with};
use scantling::job::{Job, MOST_BYTES, read_file, write_file};
use yew::prelude::*;

/// Writes jobs into a file. One that cannot be read keeps no other out of it, and is named.
pub(super) async fn save_jobs(kept: Kept, entries: Vec<JobEntry>, name: String) -> Result<AttrValue, StoreError> {
    let (mut jobs, mut left_out, mut refusal) = (Vec::new(), Vec::new(), None);
    for entry in &entries {
        match read(&kept, entry).await {
            Ok(job) => jobs.push(job),
            Err(error @ (StoreError::Damaged | StoreError::Gone | StoreError::Unreadable(_))) => {
                left_out.push(entry.name.as_str());
                refusal = Some(error);
            }
            Err(error) => return Err(error),
        }
    }
    if let (true, Some(refusal)) = (jobs.is_empty(), refusal) {
        return Err(refusal);
    }
    let place = kept.store().save_file(&name, "application/json", &write_file(&jobs)).await?.unwrap_or(name);
    Ok(match left_out.is_empty() {
        true => say_with("file-saved", [("place", place.into())]),
        false => say_with("jobs-file-without", [("place", place.into()), ("names", left_out.join(", ").into())]),
    })
}

/// Saves each job of a file as a new one, the last first, so that they stand in the list as in the file.
async fn take_in(kept: Kept, jobs: Vec<Job>) -> Result<AttrValue, StoreError> {
    let all = u32::try_from(jobs.len()).unwrap_or(u32::MAX);
    for (done, mut job) in (0..).zip(jobs.into_iter().rev()) {
        if job.name.is_empty() {
            job.rename(&say("job-nameless"));
        }
        let (name, about, content) = (job.name.clone(), about(&job.cabinet()), job.text());
        if let Err(error) = kept.store().save_job(ToSave { id: None, name, about, content }).await {
            let values = [("count", done.into()), ("all", all.into()), ("why", error.to_string().into())];
            return Err(StoreError::Told(say_with("jobs-taken-in-part", values).to_string()));
        }
    }
    Ok(say_with("jobs-taken-in", [("count", all.into())]))
}

#[derive(PartialEq, Properties)]
pub(super) struct PassingOnProps {
    /// Where it is done.
    pub desk: Desk,
    /// The jobs there are.
    pub jobs: Vec<JobEntry>,
}

#[component]
pub(super) fn PassingOn(props: &PassingOnProps) -> Html {
    let may_be_cleared = use_state_eq(|| false);
    let problem = use_state_eq(AttrValue::default);
    {
        let (kept, may_be_cleared, any) = (props.desk.kept.clone(), may_be_cleared.clone(), !props.jobs.is_empty());
        // Asked for once there is something to lose: browsers ask the maker, or look at how the page is used.
        use_effect_with(any, move |any| {
            if *any {
                wasm_bindgen_futures::spawn_local(async move {
                    may_be_cleared.set(kept.store().may_be_cleared().await.unwrap_or(true));
                });
            }
        });
    }
    let onread = {
        let (desk, problem) = (props.desk.clone(), problem.clone());
        Callback::from(move |file: FileRead| match read_file(&file.text) {
            Ok(jobs) => {
                problem.set(AttrValue::default());
                desk.run(take_in(desk.kept.clone(), jobs));
            }
            Err(error) => problem.set(error.to_string().into()),
        })
    };
    let all = {
        let (desk, jobs) = (props.desk.clone(), props.jobs.clone());
        move |_: MouseEvent| desk.run(save_jobs(desk.kept.clone(), jobs.clone(), "scantling-jobs.json".to_owned()))
    };
    let back_up = {
        let desk = props.desk.clone();
        move |_: MouseEvent| {
            let kept = desk.kept.clone();
            desk.run(async move {
                let place = kept.store().back_up().await?.unwrap_or_default();
                Ok(say_with("file-saved", [("place", place.into())]))
            });
        }
    };
    html! {
        <section class="job-files" aria-label={say("jobs-files")}>
            <FileField id="jobs-file-in" label={say("jobs-file-in")} accept=".json,application/json"
                most_bytes={MOST_BYTES} any_letters=true read={say("jobs-file-read")}
                refused={say("jobs-file-not-read")} {onread} />
            if !problem.is_empty() {
                <p class="problem" role="alert">{ (*problem).clone() }</p>
            }
            if !props.jobs.is_empty() {
                <p class="hint">{ say("jobs-files-note") }</p>
                <div class="job-buttons">
                    <button type="button" data-action="save-all" onclick={all}>{ say("jobs-file-all") }</button>
                    if props.desk.kept.store().makes_backups() {
                        <button type="button" data-action="back-up" onclick={back_up}>{ say("jobs-back-up") }</button>
                    }
                </div>
            }
            if *may_be_cleared {
                <p class="hint">{ say("jobs-may-be-cleared") }</p>
            }
        </section>
    }
}
