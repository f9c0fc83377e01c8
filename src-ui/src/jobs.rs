//! The job on the bench: which one the cabinet card holds, and saving and opening it. The jobs themselves are the
//! store's.

use crate::damaged::set_aside;
use crate::store::{JobEntry, Kept, StoreError, ToSave};
use crate::words::{say, say_with};
use scantling::as_text;
use scantling::cabinet::Inputs;
use scantling::job::{CARD, Job, text_mark};
use scantling::measure::Reading;
use serde::{Deserialize, Serialize};
use yew::AttrValue;

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
    /// The revision that the card's inputs come from.
    from: u32,
    /// The mark of the card's inputs as they were saved.
    mark: String,
    /// The mark of the card's inputs as they came onto the bench.
    came: String,
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

    /// Which one it is, and the card's inputs with it, as texts to keep. Only ever both: by themselves they could be
    /// put beside what another window of the same browser has kept, and a cabinet would stand under another one's name.
    pub fn texts_with(&self, inputs: String) -> [(String, String); 2] {
        [(Kept::inputs_of(CARD), inputs), (OPEN.to_owned(), as_text::write(self).unwrap_or_default())]
    }

    /// Whether the card's inputs, as text, or the name are others than were saved.
    pub fn is_changed(&self, inputs: &str) -> bool {
        self.name != self.saved_name || self.mark != text_mark(inputs)
    }

    /// Whether something was done to what came onto the bench that is in no revision.
    fn is_at_risk(&self, inputs: &str) -> bool {
        self.is_renamed() || self.is_changed(inputs) && self.came != text_mark(inputs)
    }

    /// Whether a name was typed that is in no revision.
    fn is_renamed(&self) -> bool {
        self.name != self.saved_name && !self.name.trim().is_empty()
    }

    /// The same after the job was forgotten: what is on the bench stays there and belongs to no job, and it was the
    /// maker's wish that it is in none.
    pub fn forgotten(&self, inputs: &str) -> Self {
        let name = || self.name.clone();
        Self { name: name(), saved_name: name(), came: text_mark(inputs), ..Self::default() }
    }

    /// The same, of these inputs, after it was saved under this name.
    fn saved(&self, entry: &JobEntry, inputs: &str) -> Self {
        let JobEntry { id, revision, saved_ms, .. } = *entry;
        // A name that was typed since stays.
        let name = if self.name.trim() == entry.name { self.name.clone() } else { entry.name.clone() };
        let mark = text_mark(inputs);
        let (saved_name, came) = (name.clone(), mark.clone());
        Self { id: Some(id), name, revision, saved_ms, from: revision, mark, came, saved_name }
    }
}

/// A cabinet in a few words, as it stands in lists.
pub fn about(cabinet: &Inputs) -> String {
    let side = |side: &Reading| match side.typed() {
        typed if typed.contains(char::is_alphabetic) => typed.to_owned(),
        typed => format!("{typed} {}", side.bare().sign()),
    };
    [&cabinet.width, &cabinet.height, &cabinet.depth].map(side).join(" × ")
}

/// What came of saving a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Saved {
    /// The job as it is on the bench now.
    pub open: OpenJob,
    /// What another window has done to the job since this one saw it, for the maker to know.
    pub meanwhile: Option<AttrValue>,
    /// Why it could not be kept that it is on the bench; it is saved all the same.
    pub trouble: Option<StoreError>,
}

/// A save gets its number within its transaction, so what number that is tells what came in between.
fn meanwhile(open: &OpenJob, entry: &JobEntry) -> Option<AttrValue> {
    match open.id {
        None => None,
        Some(id) if id != entry.id => Some(say("job-made-anew")),
        Some(_) if entry.revision == open.revision + 1 => None,
        Some(_) => {
            let theirs = entry.revision.saturating_sub(1);
            Some(say_with("job-meanwhile", [("theirs", theirs.into()), ("revision", entry.revision.into())]))
        }
    }
}

/// As what a job is saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum As {
    /// The next revision.
    Next,
    /// A job of its own.
    New,
}

/// Saves the card's inputs, as text, as the next revision of the job on the bench, or as a new job.
///
/// # Errors
/// The store's; then nothing has changed.
pub async fn save(kept: &Kept, mut open: OpenJob, inputs: String, new: As) -> Result<Saved, StoreError> {
    let (store, on_bench, key) = (kept.store(), OpenJob::of(kept), Kept::inputs_of(CARD));
    let before = kept.get(&key);
    // The demo must not become the newest revision of a job whose inputs are damaged.
    let cabinet: Inputs =
        as_text::read(&inputs).ok_or_else(|| StoreError::Unreadable(say("damaged-cabinet").to_string()))?;
    // What a newer program put into the job goes into the next revision too, and into another job that is made of it.
    let last = match open.id {
        Some(id) => match store.revision(id, open.from).await {
            Ok(text) => text.and_then(|text| Job::read(&text).ok()),
            // There is nothing of it that could go into the next.
            Err(StoreError::Damaged) => None,
            Err(error) => return Err(error),
        },
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
    if new == As::New {
        open.id = None;
    }
    let to_save = ToSave { id: open.id, name: job.name.clone(), about: about(&cabinet), content: job.text() };
    let entry = store.save_job(to_save).await?;
    let (meanwhile, mut open) = (meanwhile(&open, &entry), open.saved(&entry, &inputs));
    // Another job may have come onto the bench in between.
    let now = OpenJob::of(kept);
    if now.id != on_bench.id {
        return Ok(Saved { open, meanwhile, trouble: None });
    }
    // What was typed meanwhile stays there.
    if now.name != on_bench.name {
        open.name = now.name;
    }
    let inputs = kept.get(&key).filter(|_| kept.get(&key) != before).unwrap_or(inputs);
    let trouble = kept.keep_all(open.texts_with(inputs).to_vec()).await.err();
    Ok(Saved { open, meanwhile, trouble })
}

/// Puts a job, or one of its older revisions, on the bench: into the cabinet card. What was there and is not saved yet
/// is saved first, so that nothing is lost by it; what there is to know of that comes back.
///
/// # Errors
/// The store's; a revision that is no longer kept, or that cannot be read, is refused.
pub async fn put_on_bench(kept: &Kept, entry: &JobEntry, mut number: u32) -> Result<Option<AttrValue>, StoreError> {
    // What is on the bench may not be what the maker left there.
    if !kept.is_read() {
        return Err(StoreError::Unread);
    }
    let text = kept.store().revision(entry.id, number).await?.ok_or(StoreError::Gone)?;
    let job = Job::read(&text).map_err(|error| StoreError::Unreadable(error.to_string()))?;
    let inputs = as_text::write(&job.cabinet()).unwrap_or_default();
    let key = Kept::inputs_of(CARD);
    let (mut entry, mut told) = (entry.clone(), None);
    if let Some(before) = kept.get(&key).filter(|before| !before.is_empty()) {
        let mut open = OpenJob::of(kept);
        if as_text::read::<Inputs>(&before).is_none() {
            set_aside(kept, CARD).await?;
            told = Some(say("damaged-inputs"));
        } else if open.is_at_risk(&before) && (before != inputs || open.is_renamed()) {
            if open.name.trim().is_empty() {
                open.name =
                    if open.saved_name.is_empty() { say("job-nameless").to_string() } else { open.saved_name.clone() };
            }
            let same = before == inputs;
            let Saved { open, meanwhile, .. } = save(kept, open, before, As::Next).await?;
            if open.id == Some(entry.id) {
                (entry.name, entry.revision, entry.saved_ms) = (open.name.clone(), open.revision, open.saved_ms);
                // Only its name had changed: this is its newest revision.
                number = if same { open.revision } else { number };
            }
            told = meanwhile.map(|words| format!("{}: {words}", open.name).into());
        }
    }
    let open = OpenJob::named(&entry.name).saved(&entry, &inputs);
    // An older revision has changes to be saved, which the last one has not.
    let mark = if number == entry.revision { open.mark.clone() } else { String::new() };
    kept.keep_all(OpenJob { mark, from: number, ..open }.texts_with(inputs).to_vec()).await?;
    Ok(told)
}

/// A job as it was saved last.
///
/// # Errors
/// The store's; one that cannot be read is refused.
pub async fn read(kept: &Kept, entry: &JobEntry) -> Result<Job, StoreError> {
    let text = kept.store().revision(entry.id, entry.revision).await?.ok_or(StoreError::Gone)?;
    Job::read(&text).map_err(|error| StoreError::Unreadable(format!("{}: {error}", entry.name)))
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
mod tests;
