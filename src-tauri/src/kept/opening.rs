//! Opening the database: made where there is none, put aside where it is damaged, and only looked at where the system
//! allows no more.

use super::{KeepError, LAYOUT, NOTICE, PATIENCE, jobs};
use rusqlite::{Connection, ErrorCode, MAIN_DB, OpenFlags, OptionalExtension, TransactionBehavior};
use std::ffi::OsString;
use std::fs::{create_dir_all, metadata, rename};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// An open database.
pub(super) struct Opened {
    pub(super) database: Connection,
    /// Whether it can be written. Otherwise it is opened anew at each use: it may be writable by then.
    pub(super) writes: bool,
    /// Why it can only be read, where that is known better than by trying to write.
    why_not: Option<rusqlite::Error>,
}

impl Opened {
    /// One that can be written.
    pub(super) fn to_write(database: Connection) -> Self {
        Self { database, writes: true, why_not: None }
    }

    /// What is to be told of this.
    pub(super) fn told(self, error: rusqlite::Error) -> rusqlite::Error {
        match error.sqlite_error_code() {
            Some(ErrorCode::ReadOnly) => self.why_not.unwrap_or(error),
            _ => error,
        }
    }
}

/// Opens the file, or makes it, with its folder.
pub(super) fn open(path: &Path) -> Result<Opened, KeepError> {
    if let Some(folder) = path.parent() {
        create_dir_all(folder).map_err(|source| KeepError::Folder { path: folder.to_owned(), source })?;
    }
    if is_torn(path) {
        return open_after_putting_aside(path);
    }
    match open_or_wait(path) {
        Ok(database) => Ok(Opened { writes: !database.is_readonly(MAIN_DB)?, ..Opened::to_write(database) }),
        Err(KeepError::Database(error)) if is_damage(&error) => open_after_putting_aside(path),
        // SQLite wants to write beside the file even to read it. Why that may not be is what matters if this fails too.
        Err(KeepError::Database(error)) if is_read_only(&error) && path.exists() => match open_to_read(path) {
            Ok(database) => Ok(Opened { database, writes: false, why_not: Some(error) }),
            Err(KeepError::NewerVersion) => Err(KeepError::NewerVersion),
            Err(_) => Err(error.into()),
        },
        Err(error) => Err(error),
    }
}

fn open_after_putting_aside(path: &Path) -> Result<Opened, KeepError> {
    let aside = put_aside(path)?;
    let database = open_or_wait(path)?;
    let name = aside.file_name().unwrap_or(aside.as_os_str()).display();
    let notice = format!(
        "What was kept before is damaged and could not be read. It was put aside as {name} in the folder {}.",
        path.parent().unwrap_or(path).display()
    );
    database.execute("INSERT INTO kept (key, value) VALUES (?1, ?2)", (NOTICE, notice))?;
    Ok(Opened::to_write(database))
}

/// Two windows that start together stand in each other's way while one of them changes how the file is written; SQLite
/// gives up at once then, so waiting is done here.
fn open_or_wait(path: &Path) -> Result<Connection, KeepError> {
    let started = Instant::now();
    loop {
        match open_now(path) {
            Err(KeepError::Database(error)) if is_busy(&error) && started.elapsed() < PATIENCE => wait(),
            opened => return opened,
        }
    }
}

fn wait() {
    std::thread::sleep(Duration::from_millis(10));
}

fn open_now(path: &Path) -> Result<Connection, KeepError> {
    let mut database = Connection::open(path)?;
    // A second window of the same maker may be writing.
    database.busy_timeout(PATIENCE)?;
    let layout = layout_of(&database)?;
    check(&database)?;
    database.pragma_update(None, "journal_mode", "WAL")?;
    // Each text is on the disk when `keep` returns, through a power cut too.
    database.pragma_update(None, "synchronous", "FULL")?;
    jobs::enforce(&database)?;
    if layout < LAYOUT {
        let making = database.transaction_with_behavior(TransactionBehavior::Immediate)?;
        // Another window may have been first.
        let layout = layout_of(&making)?;
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

fn layout_of(database: &Connection) -> Result<i64, KeepError> {
    let layout: i64 = database.pragma_query_value(None, "user_version", |row| row.get(0))?;
    if layout > LAYOUT { Err(KeepError::NewerVersion) } else { Ok(layout) }
}

/// Looks whether the whole file is in order.
pub(super) fn check(database: &Connection) -> Result<(), KeepError> {
    let found: Option<String> =
        database.query_row("PRAGMA quick_check(1)", (), |row| row.get(0)).optional()?.filter(|found| found != "ok");
    let Some(found) = found else { return Ok(()) };
    let code = rusqlite::ffi::Error::new(rusqlite::ffi::SQLITE_CORRUPT);
    Err(rusqlite::Error::SqliteFailure(code, Some(found)).into())
}

/// Opens a file to be read, in a folder that nothing may be written to. Where there is no log beside it, nobody else
/// has it open either, and SQLite is told that it does not change.
pub(super) fn open_to_read(path: &Path) -> Result<Connection, KeepError> {
    let no_log = metadata(beside(path, "-wal")).map_or(0, |log| log.len()) == 0;
    let mut address = String::from(if cfg!(windows) { "file:///" } else { "file:" });
    for letter in path.display().to_string().chars() {
        match letter {
            '\\' if cfg!(windows) => address.push('/'),
            '%' | '?' | '#' => address.push_str(&format!("%{:02X}", u32::from(letter))),
            letter => address.push(letter),
        }
    }
    address.push_str(if no_log { "?immutable=1" } else { "?mode=ro" });
    let database = Connection::open_with_flags(address, OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI)?;
    database.busy_timeout(PATIENCE)?;
    layout_of(&database)?;
    Ok(database)
}

fn is_busy(error: &rusqlite::Error) -> bool {
    matches!(error.sqlite_error_code(), Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked))
}

fn is_read_only(error: &rusqlite::Error) -> bool {
    matches!(
        error.sqlite_error_code(),
        Some(ErrorCode::ReadOnly | ErrorCode::CannotOpen | ErrorCode::PermissionDenied | ErrorCode::SystemIoFailure)
    )
}

/// Whether the file itself is broken. Anything else (locked, full, read-only) may pass, and moves nothing.
fn is_damage(error: &rusqlite::Error) -> bool {
    matches!(error.sqlite_error_code(), Some(ErrorCode::NotADatabase | ErrorCode::DatabaseCorrupt))
}

/// Whether the database has lost all of itself, or is gone from beside its log. SQLite would take either for a new one,
/// and delete the log. Another window that just makes it is waited for.
fn is_torn(path: &Path) -> bool {
    let started = Instant::now();
    loop {
        let Ok(found) = metadata(path) else {
            return metadata(beside(path, "-wal")).is_ok_and(|log| log.len() > 0);
        };
        if found.len() > 0 {
            return false;
        }
        let age = found.modified().ok().and_then(|at| at.elapsed().ok());
        if age.is_some_and(|age| age > PATIENCE) || started.elapsed() > PATIENCE {
            return true;
        }
        wait();
    }
}

/// The file of this path with something more at the end of its name.
pub(super) fn beside(path: &Path, more: &str) -> PathBuf {
    let mut name = OsString::from(path);
    name.push(more);
    PathBuf::from(name)
}

/// Renames a damaged database, with the files that SQLite keeps beside it, to a name that nothing has, and gives the
/// first of them.
fn put_aside(path: &Path) -> Result<PathBuf, KeepError> {
    const ALL: [&str; 4] = ["", "-wal", "-shm", "-journal"];
    let is_free = |named: &Path| ALL.iter().all(|more| !beside(named, more).exists());
    let free = (1_u32..).map(|number| beside(path, &format!(".damaged-{number}"))).find(|named| is_free(named));
    let free = free.unwrap_or_default();
    let mut moved = None;
    for more in ALL {
        let (from, to) = (beside(path, more), beside(&free, more));
        if from.exists() {
            rename(&from, &to).map_err(|source| KeepError::Folder { path: from, source })?;
            moved = moved.or(Some(to));
        }
    }
    Ok(moved.unwrap_or(free))
}
