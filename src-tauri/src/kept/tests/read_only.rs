//! A folder that may only be read, for real: in a process of somebody who may not write there. For root nothing is
//! forbidden, so that process gives root up first.

use super::*;
use std::fs::{Permissions, set_permissions};
use std::os::unix::fs::{MetadataExt, PermissionsExt};
use std::os::unix::process::CommandExt;
use std::process::Command;

/// Tells the other process which database it has to do with.
const PATH: &str = "SCANTLING_TEST_READ_ONLY";

/// Somebody who owns nothing.
const NOBODY: u32 = 65534;

fn permit(path: &Path, mode: u32) {
    set_permissions(path, Permissions::from_mode(mode)).unwrap();
}

/// Runs this very test once more, as somebody who may only read the folder of this database.
fn in_a_process_that_may_only_read(test: &str, path: &Path) {
    let mut command = Command::new("/proc/self/exe");
    command.args(["--exact", &format!("kept::tests::read_only::{test}"), "--nocapture"]).env(PATH, path);
    if std::fs::metadata("/proc/self").unwrap().uid() == 0 {
        command.uid(NOBODY).gid(NOBODY).current_dir("/");
    }
    let told = command.output().unwrap();
    let words = [told.stdout, told.stderr].map(|words| String::from_utf8_lossy(&words).into_owned()).concat();
    assert!(told.status.success() && words.contains("1 passed"), "{words}");
}

/// What is true in there: everything can be read, nothing written, and both are said.
fn can_be_read(path: &Path) {
    let write = std::fs::write(path.with_file_name("new"), "");
    assert_eq!(write.unwrap_err().kind(), std::io::ErrorKind::PermissionDenied, "the folder can be written");
    let kept = Kept::at(path.to_owned());
    assert_eq!(texts(&kept), [pair("settings", "inches")]);
    let jobs = kept.jobs().unwrap();
    assert_eq!(jobs[0].name, "Shed");
    assert_eq!(kept.revision(jobs[0].id, 2).unwrap().as_deref(), Some("two"));
    for refused in [
        kept.keep(&[("settings", "mm")]).unwrap_err(),
        kept.save_job(Some(jobs[0].id), "Shed", "", "three").unwrap_err(),
    ] {
        assert!(refused.to_string().starts_with("The file or its folder may only be read."), "{refused}");
    }
    let elsewhere = tempfile::tempdir().unwrap();
    let backup = kept.back_up(elsewhere.path()).unwrap();
    assert_eq!(Kept::at(backup).jobs().unwrap(), jobs);
}

/// A database with a job in it, whose folder everybody may read.
fn made() -> (TempDir, PathBuf, Kept) {
    let (folder, path) = folder();
    permit(folder.path(), 0o755);
    let kept = Kept::at(path.clone());
    kept.keep(&[("settings", "inches")]).unwrap();
    let id = kept.save_job(None, "Shed", "", "one").unwrap().id;
    kept.save_job(Some(id), "Shed", "", "two").unwrap();
    (folder, path, kept)
}

fn only_to_be_read(path: &Path, test: &str) {
    let folder = path.parent().unwrap();
    for file in std::fs::read_dir(folder).unwrap() {
        permit(&file.unwrap().path(), 0o444);
    }
    permit(folder, 0o555);
    in_a_process_that_may_only_read(test, path);
    permit(folder, 0o755);
}

#[test]
fn a_folder_that_may_only_be_read_gives_its_jobs() {
    if let Some(path) = std::env::var_os(PATH) {
        return can_be_read(Path::new(&path));
    }
    let (_folder, path, kept) = made();
    drop(kept);
    assert!(!opening::beside(&path, "-wal").exists());
    only_to_be_read(&path, "a_folder_that_may_only_be_read_gives_its_jobs");
    // Once it can be written, it is.
    permit(&path, 0o644);
    Kept::at(path).keep(&[("settings", "mm")]).unwrap();
}

/// The same while another window has it open, or after one was killed: what is in the log is read too.
#[test]
fn a_log_in_a_folder_that_may_only_be_read_is_read() {
    if let Some(path) = std::env::var_os(PATH) {
        return can_be_read(Path::new(&path));
    }
    let (_folder, path, kept) = made();
    assert!(opening::beside(&path, "-wal").exists());
    only_to_be_read(&path, "a_log_in_a_folder_that_may_only_be_read_is_read");
    drop(kept);
}
