//! Jobs in the browser's own database: one object store for the jobs, one for their revisions.
//!
//! A job that was saved has to be there after whatever happens next, so a save asks that it be on the disk before it is
//! called done. That has no word in the crate yet, so such a transaction is begun by hand.

use super::{JobEntry, Listed, Revision, StoreError, ToSave};
use idb::{DatabaseEvent, Factory, KeyRange, ObjectStore, ObjectStoreParams, Query, Transaction};
use scantling::as_text;
use scantling::job::Job;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{IdbDatabase, IdbTransaction};

const NAME: &str = "scantling";
const VERSION: u32 = 1;
const JOBS: &str = "jobs";
const REVISIONS: &str = "revisions";
/// Under this key of the jobs stands the last number that was given; no job has it.
const LAST_ID: f64 = 0.0;
const READ: &str = "readonly";
const WRITE: &str = "readwrite";
/// So many revisions of a job are kept.
const MOST_REVISIONS: u32 = 50;

/// A revision as it is kept.
#[derive(Serialize, Deserialize)]
struct Kept {
    #[serde(flatten)]
    listed: Revision,
    content: String,
}

/// The browser's reasons have names, which the crate's messages end with.
fn failed(error: impl std::fmt::Display) -> StoreError {
    let error = error.to_string();
    match () {
        () if error.contains("QuotaExceededError") => StoreError::NoRoom,
        () if error.contains("VersionError") => StoreError::Newer,
        () => StoreError::Refused(error),
    }
}

/// What the browser itself refuses.
fn refused(error: &JsValue) -> StoreError {
    failed(error.unchecked_ref::<js_sys::Object>().to_string())
}

/// A connection, closed when it is no longer needed: a newer version of the database must not wait for it.
struct Open(IdbDatabase);

impl Drop for Open {
    fn drop(&mut self) {
        self.0.close();
    }
}

/// A transaction, and the browser's own word for it, which alone says why it was undone.
struct Doing {
    transaction: Transaction,
    raw: IdbTransaction,
}

impl Open {
    async fn new() -> Result<Self, StoreError> {
        let mut asked = Factory::new().map_err(failed)?.open(NAME, Some(VERSION)).map_err(failed)?;
        asked.on_upgrade_needed(|event| {
            let Ok(database) = event.database() else { return };
            for store in [JOBS, REVISIONS] {
                // One that could not be made is missed by the first transaction, which says so.
                drop(database.create_object_store(store, ObjectStoreParams::new()));
            }
        });
        Ok(Self(asked.await.map_err(failed)?.into()))
    }

    /// A transaction over both stores, that is on the disk when it is done.
    fn begin(&self, mode: &str) -> Result<Doing, StoreError> {
        let begin = || -> Result<JsValue, JsValue> {
            let options = js_sys::Object::new();
            js_sys::Reflect::set(&options, &"durability".into(), &"strict".into())?;
            let begin: js_sys::Function = js_sys::Reflect::get(&self.0, &"transaction".into())?.dyn_into()?;
            begin.call3(&self.0, &js_sys::Array::of2(&JOBS.into(), &REVISIONS.into()), &mode.into(), &options)
        };
        let raw: IdbTransaction = begin().and_then(JsCast::dyn_into).map_err(|error| refused(&error))?;
        Ok(Doing { transaction: raw.clone().into(), raw })
    }
}

impl Doing {
    fn store(&self, name: &str) -> Result<ObjectStore, StoreError> {
        self.transaction.object_store(name).map_err(failed)
    }

    /// Waits until it is done; until then, nothing is.
    async fn done(self) -> Result<(), StoreError> {
        let result = self.transaction.await.map_err(failed)?;
        if result.is_committed() {
            return Ok(());
        }
        let why = self.raw.error().map(|error| refused(&error));
        Err(why.unwrap_or_else(|| StoreError::Refused("the browser's database gave up".into())))
    }
}

fn read<T: DeserializeOwned>(value: &JsValue) -> Option<T> {
    as_text::read(&value.as_string()?)
}

fn written<T: Serialize>(value: &T) -> JsValue {
    as_text::write(value).unwrap_or_default().into()
}

fn job_key(id: u32) -> JsValue {
    id.into()
}

fn revision_key(id: u32, number: u32) -> JsValue {
    js_sys::Array::of2(&id.into(), &number.into()).into()
}

fn range(id: u32, from: u32, to: u32) -> Result<Query, StoreError> {
    let (from, to) = (revision_key(id, from), revision_key(id, to));
    KeyRange::bound(&from, &to, Some(false), Some(false)).map(Query::KeyRange).map_err(failed)
}

async fn get(from: &ObjectStore, key: JsValue) -> Result<Option<JsValue>, StoreError> {
    from.get(key).map_err(failed)?.await.map_err(failed)
}

async fn put(to: &ObjectStore, key: JsValue, value: &JsValue) -> Result<(), StoreError> {
    to.put(value, Some(&key)).map_err(failed)?.await.map_err(failed).map(drop)
}

async fn delete(from: &ObjectStore, query: Query) -> Result<(), StoreError> {
    from.delete(query).map_err(failed)?.await.map_err(failed)
}

async fn get_all(from: &ObjectStore, query: Option<Query>) -> Result<Vec<JsValue>, StoreError> {
    from.get_all(query, None).map_err(failed)?.await.map_err(failed)
}

async fn keys(of: &ObjectStore, query: Option<Query>) -> Result<Vec<JsValue>, StoreError> {
    of.get_all_keys(query, None).map_err(failed)?.await.map_err(failed)
}

/// The job that a key of either store belongs to.
fn job_of(key: &JsValue) -> f64 {
    let first = || key.dyn_ref::<js_sys::Array>().and_then(|key| key.get(0).as_f64());
    key.as_f64().or_else(first).unwrap_or(LAST_ID)
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "counted by ones from nought")]
fn number(counted: f64) -> u32 {
    counted as u32
}

/// A job's entry in the list. One that is damaged is made anew of the last of its revisions that can be read.
async fn entry_of(id: u32, kept: &JsValue, revisions: &ObjectStore) -> Result<Option<JobEntry>, StoreError> {
    if let Some(entry) = read(kept) {
        return Ok(Some(entry));
    }
    let all = get_all(revisions, Some(range(id, 0, u32::MAX)?)).await?;
    Ok(all.iter().rev().find_map(|kept| {
        let Kept { listed: Revision { number, about, saved_ms }, content } = read(kept)?;
        let name = Job::read(&content).ok()?.name;
        Some(JobEntry { id, name, about, revision: number, saved_ms, removed: false })
    }))
}

/// Every job, the last saved first.
pub(super) async fn jobs() -> Result<Listed<JobEntry>, StoreError> {
    let database = Open::new().await?;
    let listing = database.begin(READ)?;
    let (jobs, revisions) = (listing.store(JOBS)?, listing.store(REVISIONS)?);
    let (keys, all) = (keys(&jobs, None).await?, get_all(&jobs, None).await?);
    let mut listed = Listed::whole(Vec::new());
    for (key, kept) in keys.iter().zip(&all).filter(|(key, _)| job_of(key) != LAST_ID) {
        match entry_of(number(job_of(key)), kept, &revisions).await? {
            Some(entry) => listed.read.push(entry),
            None => listed.damaged += 1,
        }
    }
    listed.read.sort_by(|a, b| b.saved_ms.total_cmp(&a.saved_ms).then(b.id.cmp(&a.id)));
    Ok(listed)
}

/// The last number that was given to a job.
async fn last_id(jobs: &ObjectStore, revisions: &ObjectStore) -> Result<f64, StoreError> {
    if let Some(last) = get(jobs, LAST_ID.into()).await?.and_then(|last| last.as_f64()) {
        return Ok(last);
    }
    // Where that is damaged too, no number that is in use may be given once more.
    let used = [keys(jobs, None).await?, keys(revisions, None).await?];
    Ok(used.iter().flatten().map(job_of).fold(LAST_ID, f64::max))
}

/// The number of a job's next revision, which is free even where the entry or the last revision is damaged.
async fn next_revision(known: &JobEntry, revisions: &ObjectStore) -> Result<u32, StoreError> {
    let used = keys(revisions, Some(range(known.id, known.revision, u32::MAX)?)).await?;
    let second = |key: &JsValue| key.dyn_ref::<js_sys::Array>().and_then(|key| key.get(1).as_f64()).map(number);
    Ok(1 + used.last().and_then(second).unwrap_or_default().max(known.revision))
}

/// Saves a job as its next revision, in one transaction.
pub(super) async fn save(to_save: ToSave) -> Result<JobEntry, StoreError> {
    let database = Open::new().await?;
    let saving = database.begin(WRITE)?;
    match save_in(&saving, to_save).await {
        Ok(entry) => saving.done().await.map(|()| entry),
        Err(error) => {
            // A refusal has mostly undone it already; this makes sure.
            drop(saving.transaction.abort());
            Err(error)
        }
    }
}

/// The job of this number, if there is one.
async fn known(id: Option<u32>, jobs: &ObjectStore, revisions: &ObjectStore) -> Result<Option<JobEntry>, StoreError> {
    let Some(id) = id else { return Ok(None) };
    match get(jobs, job_key(id)).await? {
        Some(kept) => entry_of(id, &kept, revisions).await,
        None => Ok(None),
    }
}

async fn save_in(saving: &Doing, to_save: ToSave) -> Result<JobEntry, StoreError> {
    let (jobs, revisions) = (saving.store(JOBS)?, saving.store(REVISIONS)?);
    let (id, revision) = match known(to_save.id, &jobs, &revisions).await? {
        Some(known) => (known.id, next_revision(&known, &revisions).await?),
        None => {
            let next = last_id(&jobs, &revisions).await? + 1.0;
            put(&jobs, LAST_ID.into(), &next.into()).await?;
            (number(next), 1)
        }
    };
    let ToSave { name, about, content, .. } = to_save;
    let entry = JobEntry { id, name, about, revision, saved_ms: js_sys::Date::now(), removed: false };
    let listed = Revision { number: revision, about: entry.about.clone(), saved_ms: entry.saved_ms };
    put(&revisions, revision_key(id, revision), &written(&Kept { listed, content })).await?;
    put(&jobs, job_key(id), &written(&entry)).await?;
    if let Some(last) = revision.checked_sub(MOST_REVISIONS).filter(|last| *last > 0) {
        delete(&revisions, range(id, 0, last)?).await?;
    }
    Ok(entry)
}

/// The revisions of a job, the last first.
pub(super) async fn revisions(id: u32) -> Result<Listed<Revision>, StoreError> {
    let database = Open::new().await?;
    let all = get_all(&database.begin(READ)?.store(REVISIONS)?, Some(range(id, 0, u32::MAX)?)).await?;
    let revisions: Vec<Revision> = all.iter().rev().filter_map(read).collect();
    let damaged = u32::try_from(all.len() - revisions.len()).unwrap_or(u32::MAX);
    Ok(Listed { read: revisions, damaged })
}

/// A revision's text.
pub(super) async fn revision(id: u32, number: u32) -> Result<Option<String>, StoreError> {
    let database = Open::new().await?;
    let kept = get(&database.begin(READ)?.store(REVISIONS)?, revision_key(id, number)).await?;
    kept.map(|kept| read(&kept).map(|kept: Kept| kept.content).ok_or(StoreError::Damaged)).transpose()
}

/// Puts a job away, or back.
pub(super) async fn remove(id: u32, removed: bool) -> Result<(), StoreError> {
    let database = Open::new().await?;
    let changing = database.begin(WRITE)?;
    let (jobs, revisions) = (changing.store(JOBS)?, changing.store(REVISIONS)?);
    if let Some(entry) = known(Some(id), &jobs, &revisions).await? {
        put(&jobs, job_key(id), &written(&JobEntry { removed, ..entry })).await?;
    }
    changing.done().await
}

/// Forgets a job with all of its revisions.
pub(super) async fn forget(id: u32) -> Result<(), StoreError> {
    let database = Open::new().await?;
    let changing = database.begin(WRITE)?;
    delete(&changing.store(JOBS)?, Query::Key(job_key(id))).await?;
    delete(&changing.store(REVISIONS)?, range(id, 0, u32::MAX)?).await?;
    changing.done().await
}
