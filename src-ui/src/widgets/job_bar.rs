//! The job on the bench, on its card: its name, whether it is saved, and the button that saves it.

use super::card_screen::Host;
use super::card_state::Held;
use super::handing_over::keep;
use super::settled::Now;
use super::text_field::{Note, Takes, TextField};
use crate::jobs::{As, OpenJob, Saved, save, when};
use crate::store::StoreError;
use crate::words::{say, say_with};
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, Properties)]
pub struct JobBarProps {
    /// The card as it was drawn.
    pub held: Rc<dyn Held>,
    /// The card as it is.
    pub now: Now,
    /// The app around it.
    pub host: Host,
}

impl PartialEq for JobBarProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.held, &other.held) && self.host == other.host
    }
}

/// How saving stands.
#[derive(Clone, PartialEq)]
enum Saving {
    Rests,
    Goes,
    Refused(StoreError),
    /// Done, and there is something to know of it.
    Told(AttrValue),
}

/// What is done in the background has to find the job as it is then, not as it was drawn.
type Open = Rc<std::cell::RefCell<OpenJob>>;

fn saved_or_not(open: &OpenJob, saving: &Saving, changed: bool, is_kept: bool) -> (&'static str, AttrValue) {
    let revision = || [("revision", open.revision.into()), ("when", when(open.saved_ms).into())];
    match saving {
        Saving::Goes => ("saving", say("job-saving")),
        Saving::Refused(error) => ("refused", say_with("job-refused", [("why", error.to_string().into())])),
        Saving::Rests if open.id.is_none() && !is_kept => ("new", say("job-unkept")),
        Saving::Rests if open.id.is_none() => ("new", say("job-new")),
        Saving::Told(words) if !changed => ("saved", words.clone()),
        Saving::Rests | Saving::Told(_) if changed => ("changed", say_with("job-changed", revision())),
        Saving::Rests | Saving::Told(_) => ("saved", say_with("job-saved", revision())),
    }
}

#[component]
pub fn JobBar(props: &JobBarProps) -> Html {
    let open: Open = {
        let kept = props.host.kept.clone();
        (*use_memo((), move |()| Rc::new(std::cell::RefCell::new(OpenJob::of(&kept))))).clone()
    };
    let saving = use_state_eq(|| Saving::Rests);
    let again = use_force_update();
    // What is saved is the card as it is by then, which need not have been drawn below the fields yet.
    let Some(inputs) = props.now.borrow().text() else { return Html::default() };
    let changed = open.borrow().is_changed(&inputs);
    let ontype = {
        let (props, open, again) = (props.clone(), open.clone(), again.clone());
        Callback::from(move |name: String| {
            open.borrow_mut().name = name;
            again.force_update();
            let Some(inputs) = props.now.borrow().text() else { return };
            keep(&props.host.kept, open.borrow().texts_with(inputs).to_vec(), props.host.ontrouble.clone());
        })
    };
    let save_as = |new: As| {
        let (props, open, saving) = (props.clone(), open.clone(), saving.clone());
        Callback::from(move |_: MouseEvent| {
            // Two saves at once would not know of each other's revision.
            if *saving == Saving::Goes {
                return;
            }
            let Some(inputs) = props.now.borrow().text() else { return };
            let mut job = open.borrow().clone();
            if job.name.trim().is_empty() {
                job.name = say("job-nameless").to_string();
            }
            saving.set(Saving::Goes);
            let (props, open, saving) = (props.clone(), open.clone(), saving.clone());
            wasm_bindgen_futures::spawn_local(async move {
                match save(&props.host.kept, job, inputs, new).await {
                    Ok(Saved { open: saved, meanwhile, trouble }) => {
                        open.replace(saved);
                        saving.set(meanwhile.map_or(Saving::Rests, Saving::Told));
                        if let Some(error) = trouble {
                            props.host.ontrouble.emit(error);
                        }
                        props.host.kept.stay().await;
                    }
                    Err(error) => saving.set(Saving::Refused(error)),
                }
            });
        })
    };
    let open = open.borrow();
    let (state, words) = saved_or_not(&open, &saving, changed, props.host.kept.is_read());
    html! {
        <section class="job-bar" aria-label={say("job-title")} data-state={state}
            data-revision={open.revision.to_string()}>
            <TextField id="job-name" label={say("job-name")} typed={open.name.clone()} takes={Takes::Words}
                note={Note::None} {ontype} />
            <p role="status" class="job-state">{ words }</p>
            <div class="job-buttons">
                <button type="button" data-action="save" class={if changed { "strong" } else { "" }}
                    onclick={save_as(As::Next)}>{ say("job-save") }</button>
                if open.id.is_some() {
                    <button type="button" data-action="save-new" onclick={save_as(As::New)}>{ say("job-save-new") }</button>
                }
                <a class="button" href="#/jobs">{ say("jobs-title") }</a>
            </div>
        </section>
    }
}
