//! The job on the bench: which one the cabinet card holds, and saving and opening it. The jobs themselves are the
//! store's.

use crate::store::{JobEntry, Kept, StoreError, ToSave};
use scantling::as_text;
use scantling::job::{CARD, Job, text_mark};
use serde::{Deserialize, Serialize};

/// Its key among what is kept.
const OPEN: &str = "job";

/// The job that the cabinet card holds, as it was saved last.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct OpenJob {
    /// Its number; nothing before it was saved.
    pub id: Option<u32>,
    /// Its name, as typed.
    pub name: String,
    /// The number of its last revision.
    pub revision: u32,
    /// When that was saved.
    pub saved_ms: f64,
    /// The mark of the card's inputs as they were saved.
    mark: String,
    /// Its name as it was saved.
    saved_name: String,
}

impl OpenJob {
    /// The one on the bench; a new one where none is.
    pub fn of(kept: &Kept) -> Self {
        kept.get(OPEN).and_then(|text| as_text::read(&text)).unwrap_or_default()
    }

    /// One that was not saved yet.
    pub fn named(name: &str) -> Self {
        Self { name: name.to_owned(), ..Self::default() }
    }

    /// Keeps which one it is.
    ///
    /// # Errors
    /// The store's.
    pub async fn keep(&self, kept: &Kept) -> Result<(), StoreError> {
        kept.keep(OPEN, as_text::write(self).unwrap_or_default()).await
    }

    /// Whether the card's inputs, as text, or the name are others than were saved.
    pub fn is_changed(&self, inputs: &str) -> bool {
        self.name != self.saved_name || self.mark != text_mark(inputs)
    }

    /// The same, of these inputs, after it was saved.
    fn saved(&self, entry: &JobEntry, inputs: &str) -> Self {
        let JobEntry { id, revision, saved_ms, .. } = *entry;
        let (name, saved_name) = (self.name.clone(), self.name.clone());
        Self { id: Some(id), name, revision, saved_ms, mark: text_mark(inputs), saved_name }
    }
}

/// Saves the card's inputs, as text, as the next revision of the job on the bench.
///
/// # Errors
/// The store's; then nothing has changed.
pub async fn save(kept: &Kept, open: OpenJob, inputs: String, about: String) -> Result<OpenJob, StoreError> {
    let store = kept.store();
    let cabinet = as_text::read(&inputs).unwrap_or_default();
    // What a newer program put into the job goes into the next revision too.
    let last = match open.id {
        Some(id) => store.revision(id, open.revision).await?.and_then(|text| Job::read(&text).ok()),
        None => None,
    };
    let job = match last {
        Some(mut job) => {
            job.rename(&open.name);
            job.set_cabinet(&cabinet);
            job
        }
        None => Job::new(&open.name, &cabinet),
    };
    let entry = store.save_job(ToSave { id: open.id, name: job.name.clone(), about, content: job.text() }).await?;
    let open = open.saved(&entry, &inputs);
    open.keep(kept).await?;
    Ok(open)
}

/// Puts a job, or one of its older revisions, on the bench: into the cabinet card, whose inputs as they were are one
/// step of undo away.
///
/// # Errors
/// The store's; a revision that is no longer kept, or that cannot be read, is refused.
pub async fn put_on_bench(kept: &Kept, entry: &JobEntry, number: u32) -> Result<(), StoreError> {
    let text = kept.store().revision(entry.id, number).await?;
    let job = text.ok_or_else(|| StoreError::Refused("this revision is no longer kept".into()))?;
    let job = Job::read(&job).map_err(|error| StoreError::Refused(error.to_string()))?;
    let inputs = as_text::write(&job.cabinet()).unwrap_or_default();
    let key = Kept::inputs_of(CARD);
    if let Some(before) = kept.get(&key).filter(|before| *before != inputs) {
        kept.keep(&Kept::before_of(CARD), before).await?;
    }
    let open = OpenJob::named(&entry.name).saved(entry, &inputs);
    // An older revision has changes to be saved, which the last one has not.
    let mark = if number == entry.revision { open.mark.clone() } else { String::new() };
    kept.keep(&key, inputs).await?;
    OpenJob { mark, ..open }.keep(kept).await
}

/// A job as it was saved last.
///
/// # Errors
/// The store's; one that cannot be read is refused.
pub async fn read(kept: &Kept, entry: &JobEntry) -> Result<Job, StoreError> {
    let text = kept.store().revision(entry.id, entry.revision).await?.unwrap_or_default();
    Job::read(&text).map_err(|error| StoreError::Refused(format!("{}: {error}", entry.name)))
}

/// The day and the time of day at which something was saved, as this device writes them.
pub fn when(saved_ms: f64) -> String {
    let options = js_sys::Object::new();
    for (name, value) in [("dateStyle", "medium"), ("timeStyle", "short")] {
        // Setting a property of a fresh object cannot fail.
        let _ = js_sys::Reflect::set(&options, &name.into(), &value.into());
    }
    js_sys::Date::new(&saved_ms.into()).to_locale_string("en-GB", &options).into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_job_is_changed_by_its_inputs_and_by_its_name() {
        let entry =
            JobEntry { id: 4, name: "Shed".into(), about: String::new(), revision: 2, saved_ms: 5.0, removed: false };
        let new = OpenJob::named("Shed");
        assert!(new.is_changed("{}"));
        let saved = new.saved(&entry, "{}");
        assert_eq!((saved.id, saved.revision), (Some(4), 2));
        assert!(!saved.is_changed("{}"));
        assert!(saved.is_changed("{\"width\":\"640\"}"));
        assert!(OpenJob { name: "Hall".into(), ..saved }.is_changed("{}"));
    }
}
