mod jobs;
#[cfg(target_os = "linux")]
mod read_only;

use super::*;
use std::path::Path;
use tempfile::TempDir;

fn folder() -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("below/scantling.db");
    (folder, path)
}

fn texts(kept: &Kept) -> Vec<(String, String)> {
    kept.all().unwrap().into_iter().collect()
}

fn pair(key: &str, value: &str) -> (String, String) {
    (key.to_owned(), value.to_owned())
}

#[test]
fn what_is_kept_is_there_at_the_next_start() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    assert_eq!(texts(&kept), []);
    kept.keep(&[("inputs/shelf", "{\"span\":\"23 5/8\"}")]).unwrap();
    kept.keep(&[("inputs/convert", "first")]).unwrap();
    kept.keep(&[("inputs/convert", "″⅝, 'quoted'; --")]).unwrap();
    kept.keep(&[("inputs/back-panel", "")]).unwrap();
    drop(kept);
    let want = [
        pair("inputs/back-panel", ""),
        pair("inputs/convert", "″⅝, 'quoted'; --"),
        pair("inputs/shelf", "{\"span\":\"23 5/8\"}"),
    ];
    assert_eq!(texts(&Kept::at(path)), want);
}

#[test]
fn each_text_is_on_the_disk_before_the_program_ends() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    kept.keep(&[("settings", "inches")]).unwrap();
    // Not dropped: another connection sees only what was committed, as after a crash.
    assert_eq!(texts(&Kept::at(path.clone())), [pair("settings", "inches")]);
    let journal: String =
        Connection::open(&path).unwrap().pragma_query_value(None, "journal_mode", |row| row.get(0)).unwrap();
    assert_eq!(journal, "wal");
}

#[test]
fn texts_that_belong_together_are_kept_together_or_not_at_all() {
    let (_folder, path) = folder();
    let kept = Kept::at(path);
    kept.keep(&[("inputs/cabinet", "640"), ("job", "Shed")]).unwrap();
    let pages: i64 = kept.with(|database| database.pragma_query_value(None, "page_count", |row| row.get(0))).unwrap();
    kept.with(|database| database.pragma_update(None, "max_page_count", pages)).unwrap();
    let long = "Hall".repeat(50_000);
    assert!(kept.keep(&[("inputs/cabinet", "901"), ("job", long.as_str())]).is_err());
    assert_eq!(texts(&kept), [pair("inputs/cabinet", "640"), pair("job", "Shed")]);
}

#[test]
fn two_windows_write_one_file() {
    let (_folder, path) = folder();
    let windows = [Kept::at(path.clone()), Kept::at(path.clone())];
    std::thread::scope(|scope| {
        for (window, kept) in windows.iter().enumerate() {
            scope.spawn(move || (0..50).for_each(|n| kept.keep(&[(format!("{window}/{n}"), "x")]).unwrap()));
        }
    });
    assert_eq!(texts(&Kept::at(path)).len(), 100);
}

/// Damages a database, and checks that it is put aside unchanged, that a new one works, and that the maker is told.
fn is_put_aside(damage: impl Fn(&Path)) {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    for n in 0..200 {
        kept.keep(&[(format!("inputs/{n}"), "x".repeat(500))]).unwrap();
    }
    drop(kept);
    for round in 1..=2 {
        damage(&path);
        let damaged = std::fs::read(&path).unwrap();
        let kept = Kept::at(path.clone());
        kept.keep(&[("settings", "inches")]).unwrap();
        let all = kept.all().unwrap();
        assert_eq!(all.get("settings").map(String::as_str), Some("inches"));
        let name = format!("scantling.db.damaged-{round}");
        assert!(all.get(NOTICE).unwrap().contains(&name), "{:?}", all.get(NOTICE));
        assert_eq!(all.len(), 2);
        assert_eq!(std::fs::read(path.with_file_name(name)).unwrap(), damaged);
        kept.keep(&[(NOTICE, "")]).unwrap();
        assert_eq!(texts(&Kept::at(path.clone())), [pair(NOTICE, ""), pair("settings", "inches")]);
    }
}

#[test]
fn a_file_that_is_no_database_is_put_aside() {
    is_put_aside(|path| std::fs::write(path, "these are not the bytes of a database".repeat(300)).unwrap());
}

#[test]
fn a_database_with_torn_pages_is_put_aside() {
    is_put_aside(|path| {
        let mut bytes = std::fs::read(path).unwrap();
        let pages = bytes.len().min(4096);
        bytes[100..pages].fill(0xA5);
        std::fs::write(path, bytes).unwrap();
    });
}

/// So that nothing looks as if another window were just making it.
fn long_ago(path: &Path) {
    let file = std::fs::OpenOptions::new().write(true).open(path).unwrap();
    file.set_modified(std::time::SystemTime::now() - 10 * PATIENCE).unwrap();
}

#[test]
fn an_empty_file_is_put_aside() {
    is_put_aside(|path| {
        std::fs::write(path, "").unwrap();
        long_ago(path);
    });
}

#[test]
fn a_log_without_a_proper_database_is_put_aside() {
    for database in [None, Some("")] {
        let (_folder, path) = folder();
        let kept = Kept::at(path.clone());
        kept.keep(&[("settings", "inches")]).unwrap();
        let log = std::fs::read(opening::beside(&path, "-wal")).unwrap();
        assert!(!log.is_empty());
        drop(kept);
        std::fs::write(opening::beside(&path, "-wal"), &log).unwrap();
        std::fs::remove_file(&path).unwrap();
        if let Some(text) = database {
            std::fs::write(&path, text).unwrap();
            long_ago(&path);
        }
        let kept = Kept::at(path.clone());
        assert!(kept.all().unwrap().get(NOTICE).unwrap().contains("scantling.db.damaged-1"));
        assert_eq!(std::fs::read(path.with_file_name("scantling.db.damaged-1-wal")).unwrap(), log);
    }
}

#[test]
fn a_database_that_another_window_makes_is_waited_for() {
    let (_folder, path) = folder();
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    std::fs::write(&path, "").unwrap();
    std::thread::scope(|scope| {
        let waits = scope.spawn(|| Kept::at(path.clone()).all().unwrap());
        // What the other window does next with the file that it has just made.
        let other = Connection::open(&path).unwrap();
        let table = "CREATE TABLE kept (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT";
        other.execute_batch(&format!("BEGIN; {table}; PRAGMA user_version = 1; COMMIT")).unwrap();
        assert_eq!(waits.join().unwrap().get(NOTICE), None);
    });
}

#[test]
fn a_newer_database_is_left_as_it_is() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    kept.keep(&[("settings", "inches")]).unwrap();
    drop(kept);
    let newer = Connection::open(&path).unwrap();
    newer.pragma_update(None, "user_version", LAYOUT + 1).unwrap();
    drop(newer);
    let before = std::fs::read(&path).unwrap();
    let kept = Kept::at(path.clone());
    assert!(matches!(kept.all(), Err(KeepError::NewerVersion)));
    assert!(matches!(kept.keep(&[("settings", "mm")]), Err(KeepError::NewerVersion)));
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn where_the_folder_cannot_be_made_it_says_so_and_tries_again() {
    let (folder, path) = folder();
    let in_the_way = folder.path().join("below");
    std::fs::write(&in_the_way, "a file").unwrap();
    let kept = Kept::at(path);
    assert!(matches!(kept.keep(&[("settings", "mm")]), Err(KeepError::Folder { .. })));
    std::fs::remove_file(in_the_way).unwrap();
    kept.keep(&[("settings", "mm")]).unwrap();
    assert_eq!(texts(&kept), [pair("settings", "mm")]);
}

#[test]
fn an_error_crosses_to_the_page_as_kind_and_message() {
    assert_eq!(
        serde_json::to_value(KeepError::NewerVersion).unwrap(),
        serde_json::json!({
            "kind": "newerVersion",
            "message": "What is kept here was written by a newer Scantling, and is left as it is."
        })
    );
    let refused = KeepError::from(rusqlite::Error::InvalidQuery);
    assert_eq!(serde_json::to_value(refused).unwrap()["kind"], "database");
}

#[test]
fn a_disk_is_said_to_be_full_by_whatever_finds_out_first() {
    use rusqlite::ffi;
    for (code, want) in [
        (ffi::SQLITE_FULL, "There is no room left on the disk. "),
        (ffi::SQLITE_IOERR_SHMSIZE, "There is no room left on the disk, or its folder may only be read. "),
        (ffi::SQLITE_IOERR_SHMOPEN, "There is no room left on the disk, or its folder may only be read. "),
        (ffi::SQLITE_IOERR_READ, "The disk could not be read or written. "),
        (ffi::SQLITE_READONLY_DIRECTORY, "The file or its folder may only be read. "),
        (ffi::SQLITE_BUSY, "Another window holds the file. "),
    ] {
        let said = KeepError::from(rusqlite::Error::SqliteFailure(ffi::Error::new(code), None)).to_string();
        assert!(said.starts_with(want), "{code}: {said}");
    }
}
