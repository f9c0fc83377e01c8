//! The revisions of a job, each to be put on the bench again.

use super::Desk;
use crate::jobs::when;
use crate::store::{JobEntry, Listed, Revision};
use crate::words::{say, say_with};
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub(super) struct RevisionsProps {
    /// The job.
    pub entry: JobEntry,
    /// Where it is opened.
    pub desk: Desk,
}

#[component]
pub(super) fn Revisions(props: &RevisionsProps) -> Html {
    let revisions = use_state(|| Listed::whole(Vec::new()));
    {
        let (desk, revisions) = (props.desk.clone(), revisions.clone());
        use_effect_with(props.entry.id, move |id| {
            let id = *id;
            wasm_bindgen_futures::spawn_local(async move {
                match desk.kept.store().revisions(id).await {
                    Ok(all) => revisions.set(all),
                    Err(error) => desk.said.emit(Err(error)),
                }
            });
        });
    }
    let row = |revision: &Revision| {
        let (desk, entry, number) = (props.desk.clone(), props.entry.clone(), revision.number);
        let name = say_with("jobs-open-revision", [("revision", number.into())]);
        html! {
            <li class="revision" data-revision={number.to_string()}>
                <span><strong>{ number }</strong>{ " · " }{ when(revision.saved_ms) }<br />{ &revision.about }</span>
                <button type="button" data-action="open-revision" aria-label={name}
                    onclick={move |_: MouseEvent| desk.open(&entry, number)}>{ say("jobs-open") }</button>
            </li>
        }
    };
    html! {
        <>
            <p class="hint">{ say("jobs-revisions-note") }</p>
            if revisions.damaged > 0 {
                <p class="problem" role="status">
                    { say_with("jobs-revisions-damaged", [("count", revisions.damaged.into())]) }
                </p>
            }
            <ul class="revisions">{ for revisions.read.iter().map(row) }</ul>
        </>
    }
}
