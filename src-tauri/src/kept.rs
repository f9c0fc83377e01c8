//! What the page keeps: texts by key, and jobs, in one SQLite file.

mod jobs;

pub use jobs::{Entry, Revision};

use rusqlite::ffi::{SQLITE_IOERR_SHMOPEN, SQLITE_IOERR_SHMSIZE};
use rusqlite::{Connection, ErrorCode, OptionalExtension, TransactionBehavior};
use serde::ser::{Serialize, SerializeStruct, Serializer};
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

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
        let open = match database.take() {
            Some(open) => open,
            None => open_or_put_aside(&self.path)?,
        };
        Ok(work(database.insert(open))?)
    }
}

fn open_or_put_aside(path: &Path) -> Result<Connection, KeepError> {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder).map_err(|source| KeepError::Folder { path: folder.to_owned(), source })?;
    }
    match open(path) {
        Err(KeepError::Database(error)) if is_damage(&error) => {
            let aside = put_aside(path)?;
            let database = open(path)?;
            let name = aside.file_name().unwrap_or(aside.as_os_str()).display();
            let notice = format!(
                "What was kept before is damaged and could not be read. It was put aside as {name} in the folder {}.",
                path.parent().unwrap_or(path).display()
            );
            database.execute("INSERT INTO kept (key, value) VALUES (?1, ?2)", (NOTICE, notice))?;
            Ok(database)
        }
        opened => opened,
    }
}

/// Opens the file, or makes it. Two windows that start together stand in each other's way while one of them changes how
/// the file is written; SQLite gives up at once then, so waiting is done here.
fn open(path: &Path) -> Result<Connection, KeepError> {
    let started = Instant::now();
    loop {
        match open_now(path) {
            Err(KeepError::Database(error)) if is_busy(&error) && started.elapsed() < PATIENCE => {
                std::thread::sleep(Duration::from_millis(10));
            }
            opened => return opened,
        }
    }
}

fn is_busy(error: &rusqlite::Error) -> bool {
    matches!(error.sqlite_error_code(), Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked))
}

fn open_now(path: &Path) -> Result<Connection, KeepError> {
    let mut database = Connection::open(path)?;
    // A second window of the same maker may be writing.
    database.busy_timeout(PATIENCE)?;
    let layout: i64 = database.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if layout > LAYOUT {
        return Err(KeepError::NewerVersion);
    }
    let found: Option<String> =
        database.query_row("PRAGMA quick_check(1)", (), |row| row.get(0)).optional()?.filter(|found| found != "ok");
    if let Some(found) = found {
        let code = rusqlite::ffi::Error::new(rusqlite::ffi::SQLITE_CORRUPT);
        return Err(rusqlite::Error::SqliteFailure(code, Some(found)).into());
    }
    database.pragma_update(None, "journal_mode", "WAL")?;
    // Each text is on the disk when `keep` returns, through a power cut too.
    database.pragma_update(None, "synchronous", "FULL")?;
    jobs::enforce(&database)?;
    if layout < LAYOUT {
        let making = database.transaction_with_behavior(TransactionBehavior::Immediate)?;
        // Another window may have been first.
        let layout: i64 = making.pragma_query_value(None, "user_version", |row| row.get(0))?;
        if layout < 1 {
            making.execute_batch("CREATE TABLE kept (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT")?;
        }
        if layout < 2 {
            making.execute_batch(jobs::TABLES)?;
        }
        making.pragma_update(None, "user_version", LAYOUT)?;
        making.commit()?;
    }
    Ok(database)
}

/// Whether the file itself is broken. Anything else (locked, full, read-only) may pass, and moves nothing.
fn is_damage(error: &rusqlite::Error) -> bool {
    matches!(error.sqlite_error_code(), Some(ErrorCode::NotADatabase | ErrorCode::DatabaseCorrupt))
}

/// Renames a damaged database, with the files that SQLite keeps beside it, to a name that nothing has.
fn put_aside(path: &Path) -> Result<PathBuf, KeepError> {
    let named = |suffix: &str| {
        let mut name = OsString::from(path);
        name.push(suffix);
        PathBuf::from(name)
    };
    let free = (1_u32..).map(|number| format!(".damaged-{number}")).find(|suffix| !named(suffix).exists());
    let suffix = free.unwrap_or_default();
    for beside in ["", "-wal", "-shm"] {
        let (from, to) = (named(beside), named(&format!("{suffix}{beside}")));
        if from.exists() {
            std::fs::rename(&from, to).map_err(|source| KeepError::Folder { path: from, source })?;
        }
    }
    Ok(named(&suffix))
}

#[cfg(test)]
mod tests;
