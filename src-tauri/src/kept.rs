//! What the page keeps: texts by key, and jobs, in one SQLite file.

mod jobs;
mod opening;

pub use jobs::{Entry, Revision};

use opening::Opened;
use rusqlite::ffi::{SQLITE_IOERR_SHMOPEN, SQLITE_IOERR_SHMSIZE};
use rusqlite::{Connection, ErrorCode, TransactionBehavior};
use serde::ser::{Serialize, SerializeStruct, Serializer};
use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::{Mutex, PoisonError};
use std::time::Duration;

/// The layout this program writes, kept in the file as `user_version`: in 1 there were no jobs.
const LAYOUT: i64 = 2;

/// How long another window may hold the file before this one gives up.
const PATIENCE: Duration = Duration::from_secs(3);

/// Under this key stands a sentence for the maker, for the page to show until it is forgotten.
pub const NOTICE: &str = "notice";

/// Why something could not be kept, or what is kept could not be read.
///
/// Crosses to the page as `{ "kind": "newerVersion", "message": "…" }`; the page matches on `kind`.
#[derive(Debug, thiserror::Error)]
pub enum KeepError {
    /// The file was written by a newer program, whose layout this one does not know.
    #[error("What is kept here was written by a newer Scantling, and is left as it is.")]
    NewerVersion,
    /// The folder or a file in it cannot be used.
    #[error("{} cannot be used: {source}.", path.display())]
    Folder {
        /// What could not be made or moved.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The database refused.
    #[error("{}", refusal(.0))]
    Database(#[from] rusqlite::Error),
}

/// What a maker can do about it, before what the database says.
fn refusal(error: &rusqlite::Error) -> String {
    let extended = error.sqlite_error().map(|error| error.extended_code);
    let advice = match error.sqlite_error_code() {
        Some(ErrorCode::DiskFull) => "There is no room left on the disk.",
        // The file that windows share beside the database is the first that finds no room.
        Some(_) if matches!(extended, Some(SQLITE_IOERR_SHMSIZE | SQLITE_IOERR_SHMOPEN)) => {
            "There is no room left on the disk, or its folder may only be read."
        }
        Some(ErrorCode::ReadOnly | ErrorCode::CannotOpen | ErrorCode::PermissionDenied) => {
            "The file or its folder may only be read."
        }
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => "Another window holds the file.",
        Some(ErrorCode::SystemIoFailure) => "The disk could not be read or written.",
        _ => return format!("The database refused: {error}."),
    };
    format!("{advice} The database says: {error}.")
}

impl KeepError {
    fn kind(&self) -> &'static str {
        match self {
            Self::NewerVersion => "newerVersion",
            Self::Folder { .. } => "folder",
            Self::Database(_) => "database",
        }
    }
}

impl Serialize for KeepError {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut error = serializer.serialize_struct("KeepError", 2)?;
        error.serialize_field("kind", self.kind())?;
        error.serialize_field("message", &self.to_string())?;
        error.end()
    }
}

/// Texts by key in a file, which is opened at the first use. Where that fails, the next use tries again: the disk may
/// have room by then.
#[derive(Debug)]
pub struct Kept {
    path: PathBuf,
    database: Mutex<Option<Connection>>,
}

impl Kept {
    /// Keeps in the file of this path. Its folder is made where it is missing.
    pub fn at(path: PathBuf) -> Self {
        Self { path, database: Mutex::new(None) }
    }

    /// Everything that is kept.
    pub fn all(&self) -> Result<BTreeMap<String, String>, KeepError> {
        self.with(|database| {
            let mut select = database.prepare_cached("SELECT key, value FROM kept")?;
            select.query_map((), |row| Ok((row.get(0)?, row.get(1)?)))?.collect()
        })
    }

    /// Keeps each text under its key, in one transaction: all of them or none.
    pub fn keep(&self, texts: &[(impl AsRef<str>, impl AsRef<str>)]) -> Result<(), KeepError> {
        self.with(|database| {
            let keeping = database.transaction_with_behavior(TransactionBehavior::Immediate)?;
            for (key, value) in texts {
                keeping
                    .prepare_cached(
                        "INSERT INTO kept (key, value) VALUES (?1, ?2) ON CONFLICT DO UPDATE SET value = ?2",
                    )?
                    .execute((key.as_ref(), value.as_ref()))?;
            }
            keeping.commit()
        })
    }

    fn with<T>(&self, work: impl FnOnce(&mut Connection) -> rusqlite::Result<T>) -> Result<T, KeepError> {
        // A panic of another call leaves the connection as it was: a transaction that is not committed is undone.
        let mut database = self.database.lock().unwrap_or_else(PoisonError::into_inner);
        let mut open = match database.take() {
            Some(database) => Opened::to_write(database),
            None => opening::open(&self.path)?,
        };
        let done = work(&mut open.database);
        if open.writes {
            database.replace(open.database);
            return Ok(done?);
        }
        done.map_err(|error| open.told(error).into())
    }
}

#[cfg(test)]
mod tests;
