//! The jobs: each under a name, with its last revisions.

use super::opening::{beside, check, open_to_read};
use super::{KeepError, Kept};
use rusqlite::{Connection, OptionalExtension, Row, Transaction, TransactionBehavior};
use serde::Serialize;
use std::fs::OpenOptions;
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

/// So many revisions of a job are kept.
const MOST_REVISIONS: i64 = 50;

/// The tables, beside that of the texts by key. A number that was a job's is never another's.
pub(super) const TABLES: &str = "
    CREATE TABLE job (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        name TEXT NOT NULL,
        about TEXT NOT NULL,
        revision INTEGER NOT NULL,
        saved_ms INTEGER NOT NULL,
        removed INTEGER NOT NULL DEFAULT 0
    ) STRICT;
    CREATE TABLE revision (
        job INTEGER NOT NULL REFERENCES job (id) ON DELETE CASCADE,
        number INTEGER NOT NULL,
        about TEXT NOT NULL,
        saved_ms INTEGER NOT NULL,
        content TEXT NOT NULL,
        PRIMARY KEY (job, number)
    ) STRICT;";

/// A job as it stands in the list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Entry {
    /// By which it is known; never used twice.
    pub id: i64,
    /// As the maker calls it.
    pub name: String,
    /// In a few words.
    pub about: String,
    /// The number of its last revision.
    pub revision: i64,
    /// When that was saved, in milliseconds since 1970.
    pub saved_ms: i64,
    /// Whether it was put away, and can be put back.
    pub removed: bool,
}

/// A revision as it stands in the list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Revision {
    /// Counted from one.
    pub number: i64,
    /// In a few words.
    pub about: String,
    /// When it was saved, in milliseconds since 1970.
    pub saved_ms: i64,
}

fn now_ms() -> i64 {
    // A clock before 1970 is wrong in any case.
    let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
    i64::try_from(since.as_millis()).unwrap_or(i64::MAX)
}

fn entry(row: &Row<'_>) -> rusqlite::Result<Entry> {
    Ok(Entry {
        id: row.get(0)?,
        name: row.get(1)?,
        about: row.get(2)?,
        revision: row.get(3)?,
        saved_ms: row.get(4)?,
        removed: row.get(5)?,
    })
}

const ENTRY: &str = "SELECT id, name, about, revision, saved_ms, removed FROM job";

fn save(saving: &Transaction<'_>, id: Option<i64>, name: &str, about: &str, content: &str) -> rusqlite::Result<Entry> {
    let saved_ms = now_ms();
    let known = match id {
        Some(id) => saving
            .prepare_cached(
                "UPDATE job SET name = ?2, about = ?3, revision = revision + 1, saved_ms = ?4, removed = 0
                 WHERE id = ?1 RETURNING id, name, about, revision, saved_ms, removed",
            )?
            .query_row((id, name, about, saved_ms), entry)
            .optional()?,
        None => None,
    };
    // One that was forgotten meanwhile, as by another window, is made anew.
    let entry = match known {
        Some(entry) => entry,
        None => saving
            .prepare_cached(
                "INSERT INTO job (name, about, revision, saved_ms) VALUES (?1, ?2, 1, ?3)
                 RETURNING id, name, about, revision, saved_ms, removed",
            )?
            .query_row((name, about, saved_ms), entry)?,
    };
    saving
        .prepare_cached("INSERT INTO revision (job, number, about, saved_ms, content) VALUES (?1, ?2, ?3, ?4, ?5)")?
        .execute((entry.id, entry.revision, about, saved_ms, content))?;
    saving
        .prepare_cached("DELETE FROM revision WHERE job = ?1 AND number <= ?2")?
        .execute((entry.id, entry.revision - MOST_REVISIONS))?;
    Ok(entry)
}

impl Kept {
    /// Every job, the last saved first; those that were put away too.
    pub fn jobs(&self) -> Result<Vec<Entry>, KeepError> {
        self.with(|database| {
            let mut select = database.prepare_cached(&format!("{ENTRY} ORDER BY saved_ms DESC, id DESC"))?;
            select.query_map((), entry)?.collect()
        })
    }

    /// Saves a job as its next revision, or a new one where it has no number, in one transaction: all of it or nothing.
    pub fn save_job(&self, id: Option<i64>, name: &str, about: &str, content: &str) -> Result<Entry, KeepError> {
        self.with(|database| {
            let saving = database.transaction_with_behavior(TransactionBehavior::Immediate)?;
            let entry = save(&saving, id, name, about, content)?;
            saving.commit()?;
            Ok(entry)
        })
    }

    /// The revisions of a job that are still kept, the last first.
    pub fn revisions(&self, id: i64) -> Result<Vec<Revision>, KeepError> {
        self.with(|database| {
            let mut select = database
                .prepare_cached("SELECT number, about, saved_ms FROM revision WHERE job = ?1 ORDER BY number DESC")?;
            let revision =
                |row: &Row<'_>| Ok(Revision { number: row.get(0)?, about: row.get(1)?, saved_ms: row.get(2)? });
            select.query_map((id,), revision)?.collect()
        })
    }

    /// A revision's text; nothing where it is no longer kept.
    pub fn revision(&self, id: i64, number: i64) -> Result<Option<String>, KeepError> {
        self.with(|database| {
            database
                .prepare_cached("SELECT content FROM revision WHERE job = ?1 AND number = ?2")?
                .query_row((id, number), |row| row.get(0))
                .optional()
        })
    }

    /// Puts a job away, or back.
    pub fn remove_job(&self, id: i64, removed: bool) -> Result<(), KeepError> {
        self.with(|database| {
            database.prepare_cached("UPDATE job SET removed = ?2 WHERE id = ?1")?.execute((id, removed)).map(|_| ())
        })
    }

    /// Forgets a job with all of its revisions.
    pub fn forget_job(&self, id: i64) -> Result<(), KeepError> {
        self.with(|database| database.prepare_cached("DELETE FROM job WHERE id = ?1")?.execute((id,)).map(|_| ()))
    }

    /// Writes everything that is kept into one new file in a folder, and says where. Put in the place of the database,
    /// while no window is open, it is the database again.
    ///
    /// Only what was written whole and reads back gets a backup's name.
    pub fn back_up(&self, folder: &Path) -> Result<PathBuf, KeepError> {
        let failed = |path: &Path| {
            let path = path.to_owned();
            move |source| KeepError::Folder { path, source }
        };
        std::fs::create_dir_all(folder).map_err(failed(folder))?;
        let file =
            (1_u32..).map(|number| folder.join(format!("scantling-backup-{number}.db"))).find(|file| !file.exists());
        let file = file.unwrap_or_default();
        let part = beside(&file, ".part");
        if part.exists() {
            // What a program that was ended in the middle has left.
            std::fs::remove_file(&part).map_err(failed(&part))?;
        }
        let made = self.write_copy(&part).and_then(|()| std::fs::rename(&part, &file).map_err(failed(&file)));
        if made.is_err() {
            // Half a backup is worse than none. The refusal says why there is none; it need not be there at all.
            let _ = std::fs::remove_file(&part);
        }
        made.map(|()| file)
    }

    /// Writes everything into a new file, looks whether it is in order, and sees that it is on the disk.
    fn write_copy(&self, file: &Path) -> Result<(), KeepError> {
        self.with(|database| database.execute("VACUUM INTO ?1", (file.display().to_string(),)).map(|_| ()))?;
        check(&open_to_read(file)?)?;
        let written = OpenOptions::new().write(true).open(file).and_then(|file| file.sync_all());
        written.map_err(|source| KeepError::Folder { path: file.to_owned(), source })
    }
}

/// Foreign keys are off in SQLite until they are asked for.
pub(super) fn enforce(database: &Connection) -> rusqlite::Result<()> {
    database.pragma_update(None, "foreign_keys", true)
}
