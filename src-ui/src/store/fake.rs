//! A store in memory, for tests on the host: it answers at once, and refuses what it is told to.

use super::{JobEntry, Listed, Revision, Soon, Store, StoreError, ToSave};
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::pin::{Pin, pin};
use std::rc::Rc;
use std::task::{Context, Poll, Waker};

/// What it keeps, as two windows of one browser share it.
#[derive(Default)]
pub(crate) struct Fake {
    pub(crate) texts: RefCell<BTreeMap<String, String>>,
    /// Each job with the contents of its revisions, the first first.
    pub(crate) jobs: RefCell<Vec<(JobEntry, Vec<String>)>>,
    refusal: RefCell<Option<StoreError>>,
    saves_wait: Rc<Cell<bool>>,
}

/// The answer of a call that needs no waiting.
pub(crate) fn now<T>(soon: impl Future<Output = T>) -> T {
    match pin!(soon).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(answer) => answer,
        Poll::Pending => panic!("it waits for something"),
    }
}

/// Whether something is not done yet.
pub(crate) fn is_pending<F: Future>(soon: Pin<&mut F>) -> bool {
    soon.poll(&mut Context::from_waker(Waker::noop())).is_pending()
}

impl Fake {
    /// Whether the saving of jobs is done only once this is called again.
    pub(crate) fn wait(&self, waits: bool) {
        self.saves_wait.set(waits);
    }

    /// Refuses everything with this from now on; with nothing no more.
    pub(crate) fn refuse(&self, refusal: Option<StoreError>) {
        self.refusal.replace(refusal);
    }

    fn answer<T: 'static>(&self, work: impl FnOnce() -> T) -> Soon<T> {
        let answer = match &*self.refusal.borrow() {
            Some(refusal) => Err(refusal.clone()),
            None => Ok(work()),
        };
        Box::pin(std::future::ready(answer))
    }
}

impl Store for Fake {
    fn all(&self) -> Soon<BTreeMap<String, String>> {
        self.answer(|| self.texts.borrow().clone())
    }

    fn keep(&self, texts: &[(String, String)]) -> Soon<()> {
        self.answer(|| self.texts.borrow_mut().extend(texts.iter().cloned()))
    }

    fn jobs(&self) -> Soon<Listed<JobEntry>> {
        self.answer(|| Listed::whole(self.jobs.borrow().iter().map(|(entry, _)| entry.clone()).collect()))
    }

    fn save_job(&self, to_save: ToSave) -> Soon<JobEntry> {
        let saved = self.answer(|| {
            let mut jobs = self.jobs.borrow_mut();
            let ToSave { id, name, about, content } = to_save;
            let known = jobs.iter().position(|(entry, _)| Some(entry.id) == id);
            let at = known.unwrap_or_else(|| {
                let id = 1 + jobs.iter().map(|(entry, _)| entry.id).max().unwrap_or(0);
                let saved_ms = 0.0;
                let entry =
                    JobEntry { id, name: String::new(), about: String::new(), revision: 0, saved_ms, removed: false };
                jobs.push((entry, Vec::new()));
                jobs.len() - 1
            });
            let (entry, contents) = &mut jobs[at];
            contents.push(content);
            *entry = JobEntry { name, about, revision: entry.revision + 1, removed: false, ..entry.clone() };
            entry.clone()
        });
        let waits = self.saves_wait.clone();
        Box::pin(async move {
            std::future::poll_fn(|_| if waits.get() { Poll::Pending } else { Poll::Ready(()) }).await;
            saved.await
        })
    }

    fn revisions(&self, _: u32) -> Soon<Listed<Revision>> {
        self.answer(|| Listed::whole(Vec::new()))
    }

    fn revision(&self, id: u32, number: u32) -> Soon<Option<String>> {
        self.answer(|| {
            let jobs = self.jobs.borrow();
            let (_, contents) = jobs.iter().find(|(entry, _)| entry.id == id)?;
            contents.get(number.checked_sub(1)? as usize).cloned()
        })
    }

    fn remove_job(&self, id: u32, removed: bool) -> Soon<()> {
        self.answer(|| {
            for (entry, _) in self.jobs.borrow_mut().iter_mut().filter(|(entry, _)| entry.id == id) {
                entry.removed = removed;
            }
        })
    }

    fn forget_job(&self, id: u32) -> Soon<()> {
        self.answer(|| self.jobs.borrow_mut().retain(|(entry, _)| entry.id != id))
    }

    fn makes_backups(&self) -> bool {
        false
    }

    fn back_up(&self) -> Soon<Option<String>> {
        self.answer(|| None)
    }

    fn may_be_cleared(&self) -> Soon<bool> {
        self.answer(|| false)
    }

    fn save_file(&self, _: &str, _: &str, _: &str) -> Soon<Option<String>> {
        self.answer(|| None)
    }
}
