//! Jobs that were put away: each can be put back, or forgotten for good.

use super::Desk;
use crate::jobs::OpenJob;
use crate::store::{JobEntry, Kept};
use crate::words::{say, say_with};
use scantling::job::CARD;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub(super) struct PutAwayProps {
    /// The jobs.
    pub entries: Vec<JobEntry>,
    /// Where it is done.
    pub desk: Desk,
}

fn put_back(desk: &Desk, entry: &JobEntry) {
    let (kept, entry) = (desk.kept.clone(), entry.clone());
    desk.run(async move {
        kept.store().remove_job(entry.id, false).await?;
        Ok(say_with("jobs-put-back", [("name", entry.name.into())]))
    });
}

fn forget(desk: &Desk, entry: &JobEntry) {
    let (kept, entry) = (desk.kept.clone(), entry.clone());
    desk.run(async move {
        kept.store().forget_job(entry.id).await?;
        let open = OpenJob::of(&kept);
        if open.id == Some(entry.id) {
            // What is on the bench stays there, and belongs to no job now.
            let inputs = kept.get(&Kept::inputs_of(CARD)).unwrap_or_default();
            kept.keep_all(open.forgotten(&inputs).texts_with(inputs).to_vec()).await?;
        }
        Ok(say_with("jobs-forgotten", [("name", entry.name.into())]))
    });
}

#[component]
pub(super) fn PutAway(props: &PutAwayProps) -> Html {
    // The one whose forgetting was asked for once: nothing brings it back, so it takes a second press.
    let asked = use_state_eq(|| None::<u32>);
    let row = |entry: &JobEntry| {
        let (desk, sure) = (&props.desk, *asked == Some(entry.id));
        let back = {
            let (desk, entry) = (desk.clone(), entry.clone());
            move |_: MouseEvent| put_back(&desk, &entry)
        };
        let forget = {
            let (desk, entry, asked) = (desk.clone(), entry.clone(), asked.clone());
            move |_: MouseEvent| if sure { forget(&desk, &entry) } else { asked.set(Some(entry.id)) }
        };
        html! {
            <li key={entry.id} class="job" data-job={entry.id.to_string()}>
                <p class="job-row"><strong>{ &entry.name }</strong><span>{ &entry.about }</span></p>
                <div class="job-buttons">
                    <button type="button" data-action="put-back" onclick={back}>{ say("jobs-back") }</button>
                    <button type="button" data-action="forget" data-sure={sure.to_string()} onclick={forget}>
                        { say(if sure { "jobs-forget-sure" } else { "jobs-forget" }) }
                    </button>
                </div>
            </li>
        }
    };
    html! { <ul class="jobs">{ for props.entries.iter().map(row) }</ul> }
}
