//! Every job that is kept: to open, to go back to an older revision of, to copy, to pass on as a file, to put away.

mod passing_on;
mod put_away;
mod revisions;

use super::fold::Fold;
use crate::browser::focused;
use crate::jobs::{OpenJob, put_on_bench, read, when};
use crate::route::Route;
use crate::store::{JobEntry, Kept, Listed, StoreError, ToSave};
use crate::words::{say, say_with};
use passing_on::{PassingOn, save_jobs};
use put_away::PutAway;
use revisions::Revisions;
use scantling::job::LONGEST_NAME;
use std::rc::Rc;
use web_sys::HtmlElement;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct JobListProps {
    /// What is kept.
    pub kept: Kept,
    /// Says something above every screen.
    pub onnotice: Callback<AttrValue>,
}

/// So many jobs are drawn before more are asked for.
const FIRST: usize = 60;

/// As many letters as the words that tell a copy may take.
const ROOM_FOR_COPY: usize = 12;

/// What the whole list needs.
#[derive(Clone, PartialEq)]
pub struct Desk {
    kept: Kept,
    /// Says something, and lists the jobs anew.
    said: Callback<Result<AttrValue, StoreError>>,
    /// Says something that is still to be seen on another screen.
    onnotice: Callback<AttrValue>,
}

impl Desk {
    /// Does something, and says how it went.
    fn run(&self, work: impl Future<Output = Result<AttrValue, StoreError>> + 'static) {
        let said = self.said.clone();
        wasm_bindgen_futures::spawn_local(async move { said.emit(work.await) });
    }

    /// Puts a revision of a job on the bench, and goes there.
    fn open(&self, entry: &JobEntry, number: u32) {
        let (desk, entry) = (self.clone(), entry.clone());
        wasm_bindgen_futures::spawn_local(async move {
            match put_on_bench(&desk.kept, &entry, number).await {
                Ok(told) => {
                    if let Some(told) = told {
                        desk.onnotice.emit(told);
                    }
                    if let Some(window) = web_sys::window() {
                        // Refused only for a malformed address.
                        let _ = window.location().set_hash(&Route::to_card(scantling::job::CARD));
                    }
                }
                Err(error) => desk.said.emit(Err(error)),
            }
        });
    }
}

#[derive(PartialEq, Properties)]
struct RowProps {
    entry: JobEntry,
    desk: Desk,
    /// Whether it is the one whose actions are shown.
    chosen: bool,
    onchoose: Callback<u32>,
}

#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { entry, desk, chosen, onchoose } = props;
    let choose = {
        let (onchoose, id) = (onchoose.clone(), entry.id);
        move |_: MouseEvent| onchoose.emit(id)
    };
    html! {
        <li class="job" data-job={entry.id.to_string()}>
            <button type="button" class="job-row" aria-expanded={chosen.to_string()} onclick={choose}>
                <strong>{ &entry.name }</strong>
                <span>{ &entry.about }</span>
                <span>{ say_with("jobs-saved", [("when", when(entry.saved_ms).into()), ("revision", entry.revision.into())]) }</span>
            </button>
            if *chosen { { chosen_job(entry, desk) } }
        </li>
    }
}

fn chosen_job(entry: &JobEntry, desk: &Desk) -> Html {
    let open = {
        let (desk, entry) = (desk.clone(), entry.clone());
        move |_: MouseEvent| desk.open(&entry, entry.revision)
    };
    let copy = {
        let (desk, entry) = (desk.clone(), entry.clone());
        move |_: MouseEvent| {
            let (kept, entry) = (desk.kept.clone(), entry.clone());
            desk.run(async move {
                let mut job = read(&kept, &entry).await?;
                // A name as long as may be keeps room for what tells the copy from it.
                let name: String = entry.name.chars().take(LONGEST_NAME - ROOM_FOR_COPY).collect();
                job.rename(&say_with("jobs-copy-of", [("name", name.as_str().into())]));
                let (name, about, content) = (job.name.clone(), entry.about, job.text());
                let copied = kept.store().save_job(ToSave { id: None, name, about, content }).await?;
                Ok(say_with("jobs-copied", [("name", copied.name.into())]))
            });
        }
    };
    let as_file = {
        let (desk, entry) = (desk.clone(), entry.clone());
        move |_: MouseEvent| {
            let name = format!("{}.json", entry.name);
            desk.run(save_jobs(desk.kept.clone(), vec![entry.clone()], name));
        }
    };
    let away = {
        let (desk, entry) = (desk.clone(), entry.clone());
        move |_: MouseEvent| {
            let (kept, entry) = (desk.kept.clone(), entry.clone());
            desk.run(async move {
                kept.store().remove_job(entry.id, true).await?;
                Ok(say_with("jobs-put-away", [("name", entry.name.into())]))
            });
        }
    };
    html! {
        <div class="job-chosen">
            <div class="job-buttons">
                <button type="button" class="strong" data-action="open" onclick={open}>{ say("jobs-open") }</button>
                <button type="button" data-action="copy-job" onclick={copy}>{ say("jobs-copy") }</button>
                <button type="button" data-action="save-file" onclick={as_file}>{ say("jobs-file") }</button>
                <button type="button" data-action="put-away" onclick={away}>{ say("jobs-away") }</button>
            </div>
            <Fold name="revisions" title={say("jobs-revisions")}>
                <Revisions entry={entry.clone()} desk={desk.clone()} />
            </Fold>
        </div>
    }
}

/// A list of jobs as it was read; read again it is another one.
struct Listing(Option<Rc<Listed<JobEntry>>>);

impl PartialEq for Listing {
    fn eq(&self, other: &Self) -> bool {
        self.0.as_ref().map(Rc::as_ptr) == other.0.as_ref().map(Rc::as_ptr)
    }
}

#[component]
pub fn JobList(props: &JobListProps) -> Html {
    let jobs = use_state(|| None::<Rc<Listed<JobEntry>>>);
    // With its number: the same words said again are something new.
    let said = use_state(|| None::<(u32, Result<AttrValue, StoreError>)>);
    let told = use_mut_ref(|| 0_u32);
    let chosen = use_state_eq(|| OpenJob::of(&props.kept).id);
    let wanted = use_state_eq(String::new);
    let most = use_state_eq(|| FIRST);
    let list = {
        let (kept, jobs, said) = (props.kept.clone(), jobs.clone(), said.clone());
        use_callback((), move |(), ()| {
            let (kept, jobs, said) = (kept.clone(), jobs.clone(), said.clone());
            wasm_bindgen_futures::spawn_local(async move {
                match kept.store().jobs().await {
                    Ok(all) => jobs.set(Some(Rc::new(all))),
                    Err(error) => said.set(Some((0, Err(error)))),
                }
            });
        })
    };
    {
        let list = list.clone();
        use_effect_with((), move |()| list.emit(()));
    }
    let onsaid = {
        let said = said.clone();
        use_callback((), move |how, ()| {
            *told.borrow_mut() += 1;
            said.set(Some((*told.borrow(), how)));
            list.emit(());
        })
    };
    let words = use_node_ref();
    {
        let (words, is_told) = (words.clone(), said.is_some());
        use_effect_with(Listing(jobs.as_ref().cloned()), move |_| {
            // The button that was pressed may have gone with its job: what was said of it is where to go on from.
            let lost = focused().is_none_or(|element| element.tag_name() == "BODY");
            if let Some(words) = words.cast::<HtmlElement>().filter(|_| lost && is_told) {
                // Nothing is lost where it cannot be focused.
                let _ = words.focus();
            }
        });
    }
    let desk = Desk { kept: props.kept.clone(), said: onsaid, onnotice: props.onnotice.clone() };
    let onchoose = {
        let chosen = chosen.clone();
        Callback::from(move |id: u32| chosen.set(if *chosen == Some(id) { None } else { Some(id) }))
    };
    let ontype = {
        let wanted = wanted.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                wanted.set(input.value());
            }
        })
    };
    let onmore = {
        let most = most.clone();
        move |_: MouseEvent| most.set(usize::MAX)
    };
    let (away, here): (Vec<JobEntry>, Vec<JobEntry>) =
        jobs.iter().flat_map(|jobs| jobs.read.iter().cloned()).partition(|entry| entry.removed);
    let sought = wanted.to_lowercase();
    let found: Vec<&JobEntry> = here.iter().filter(|entry| entry.name.to_lowercase().contains(&sought)).collect();
    let more = found.len().saturating_sub(*most);
    html! {
        <section class="job-list" aria-label={say("jobs-title")} data-listed={jobs.as_ref().map(|jobs| jobs.read.len().to_string())}>
            <p role="status" class="job-said" tabindex="-1" ref={words}>{ for said.iter().map(|(number, how)| match how {
                Ok(words) => html! { <span key={*number}>{ words }</span> },
                Err(error) => html! { <span key={*number} class="problem">{ error.to_string() }</span> },
            }) }</p>
            if here.len() > 8 || !wanted.is_empty() {
                <label class="bench-search">
                    <span>{ say("jobs-search") }</span>
                    <input type="search" value={(*wanted).clone()} autocomplete="off" oninput={ontype} />
                </label>
            }
            if jobs.as_ref().is_some_and(|jobs| jobs.damaged == 0) && here.is_empty() {
                <p class="about">{ say("jobs-none") }</p>
            }
            { for jobs.iter().filter(|jobs| jobs.damaged > 0).map(|jobs| html! {
                <p class="problem" role="status">{ say_with("jobs-damaged", [("count", jobs.damaged.into())]) }</p>
            }) }
            if found.is_empty() && !here.is_empty() {
                <p class="about" role="status">{ say("jobs-not-found") }</p>
            }
            <ul class="jobs">{ for found.iter().take(*most).map(|entry| html! {
                <Row key={entry.id} entry={(*entry).clone()} desk={desk.clone()} chosen={*chosen == Some(entry.id)}
                    onchoose={onchoose.clone()} />
            }) }</ul>
            if more > 0 {
                <button type="button" data-action="more" onclick={onmore}>
                    { say_with("jobs-more", [("count", u32::try_from(more).unwrap_or(u32::MAX).into())]) }
                </button>
            }
            <PassingOn desk={desk.clone()} jobs={here.clone()} />
            if !away.is_empty() {
                <Fold name="put-away" title={say("jobs-away-title")}><PutAway entries={away} {desk} /></Fold>
            }
        </section>
    }
}
