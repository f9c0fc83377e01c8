use super::*;

fn contents(kept: &Kept, id: i64) -> Vec<(i64, String)> {
    let revisions = kept.revisions(id).unwrap();
    revisions.iter().map(|one| (one.number, kept.revision(id, one.number).unwrap().unwrap())).collect()
}

#[test]
fn a_job_is_saved_as_one_revision_after_another() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    assert_eq!(kept.jobs().unwrap(), []);
    let shed = kept.save_job(None, "Potting shed", "830 wide", "one").unwrap();
    assert_eq!((shed.revision, shed.removed), (1, false));
    let hall = kept.save_job(None, "Hall", "700 wide", "other").unwrap();
    assert_ne!(hall.id, shed.id);
    let again = kept.save_job(Some(shed.id), "Shed", "640 wide", "two").unwrap();
    assert_eq!((again.id, again.revision, again.name.as_str()), (shed.id, 2, "Shed"));
    drop(kept);
    let kept = Kept::at(path);
    assert_eq!(contents(&kept, shed.id), [(2, "two".to_owned()), (1, "one".to_owned())]);
    assert_eq!(kept.revisions(shed.id).unwrap()[1].about, "830 wide");
    assert_eq!(kept.jobs().unwrap().len(), 2);
    assert_eq!(kept.revision(shed.id, 3).unwrap(), None);
}

#[test]
fn the_last_fifty_revisions_are_kept() {
    let (_folder, path) = folder();
    let kept = Kept::at(path);
    let id = kept.save_job(None, "Shed", "", "1").unwrap().id;
    let other = kept.save_job(None, "Hall", "", "untouched").unwrap().id;
    for number in 2..=57 {
        assert_eq!(kept.save_job(Some(id), "Shed", "", &number.to_string()).unwrap().revision, number);
    }
    let want: Vec<(i64, String)> = (8..=57).rev().map(|number| (number, number.to_string())).collect();
    assert_eq!(contents(&kept, id), want);
    assert_eq!(contents(&kept, other).len(), 1);
}

#[test]
fn a_job_is_put_away_put_back_and_forgotten() {
    let (_folder, path) = folder();
    let kept = Kept::at(path);
    let id = kept.save_job(None, "Shed", "", "one").unwrap().id;
    kept.remove_job(id, true).unwrap();
    assert!(kept.jobs().unwrap()[0].removed);
    assert_eq!(contents(&kept, id).len(), 1);
    kept.remove_job(id, false).unwrap();
    assert!(!kept.jobs().unwrap()[0].removed);
    kept.forget_job(id).unwrap();
    assert_eq!((kept.jobs().unwrap(), contents(&kept, id)), (vec![], vec![]));
    // Its number is not given again, and what is saved under it is not lost.
    assert!(kept.save_job(Some(id), "Shed", "", "two").unwrap().id > id);
}

#[test]
fn what_was_kept_before_there_were_jobs_stays() {
    let (_folder, path) = folder();
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    let older = Connection::open(&path).unwrap();
    older.execute_batch("CREATE TABLE kept (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT").unwrap();
    older.execute("INSERT INTO kept VALUES ('settings', 'inches')", ()).unwrap();
    older.pragma_update(None, "user_version", 1).unwrap();
    drop(older);
    let kept = Kept::at(path);
    kept.save_job(None, "Shed", "", "one").unwrap();
    assert_eq!(texts(&kept), [pair("settings", "inches")]);
}

#[test]
fn a_full_disk_is_told_and_leaves_everything_as_it_was() {
    let (_folder, path) = folder();
    let kept = Kept::at(path);
    let id = kept.save_job(None, "Shed", "", "one").unwrap().id;
    let pages: i64 = kept.with(|database| database.pragma_query_value(None, "page_count", |row| row.get(0))).unwrap();
    kept.with(|database| database.pragma_update(None, "max_page_count", pages)).unwrap();
    let refused = kept.save_job(Some(id), "Shed", "", &"x".repeat(100_000)).unwrap_err();
    assert!(refused.to_string().starts_with("There is no room left on the disk."), "{refused}");
    assert_eq!(contents(&kept, id), [(1, "one".to_owned())]);
    assert_eq!(kept.jobs().unwrap()[0].revision, 1);
    kept.with(|database| database.pragma_update(None, "max_page_count", 1_000_000)).unwrap();
    assert_eq!(kept.save_job(Some(id), "Shed", "", &"x".repeat(100_000)).unwrap().revision, 2);
}

#[test]
fn a_file_that_may_only_be_read_is_told_and_left() {
    let (_folder, path) = folder();
    let kept = Kept::at(path);
    let id = kept.save_job(None, "Shed", "", "one").unwrap().id;
    kept.with(|database| database.pragma_update(None, "query_only", true)).unwrap();
    let refused = kept.save_job(Some(id), "Shed", "", "two").unwrap_err();
    assert!(refused.to_string().starts_with("The file or its folder may only be read."), "{refused}");
    kept.with(|database| database.pragma_update(None, "query_only", false)).unwrap();
    assert_eq!(contents(&kept, id), [(1, "one".to_owned())]);
}

#[test]
fn a_backup_is_a_database_of_its_own_and_never_overwritten() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    kept.keep(&[("settings", "inches")]).unwrap();
    let id = kept.save_job(None, "Shed", "", "one").unwrap().id;
    let elsewhere = path.with_file_name("files");
    let first = kept.back_up(&elsewhere).unwrap();
    kept.save_job(Some(id), "Shed", "", "two").unwrap();
    let second = kept.back_up(&elsewhere).unwrap();
    assert_eq!(first, elsewhere.join("scantling-backup-1.db"));
    assert_ne!(first, second);
    assert_eq!(contents(&Kept::at(first.clone()), id).len(), 1);
    assert_eq!(texts(&Kept::at(first)), [pair("settings", "inches")]);
    assert_eq!(contents(&Kept::at(second), id).len(), 2);
}

fn names(folder: &Path) -> Vec<String> {
    std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().file_name().into_string().unwrap()).collect()
}

/// The middle of the database is damaged after it was opened, so that the copy breaks off when much of it is written.
#[test]
fn a_backup_that_fails_leaves_nothing() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    let id = kept.save_job(None, "Shed", "", &"x".repeat(12_000_000)).unwrap().id;
    drop(kept);
    let kept = Kept::at(path.clone());
    assert_eq!(kept.jobs().unwrap()[0].id, id);
    let mut bytes = std::fs::read(&path).unwrap();
    bytes[4_000_000..5_000_000].fill(0xA5);
    std::fs::write(&path, bytes).unwrap();

    let elsewhere = path.with_file_name("files");
    assert!(kept.back_up(&elsewhere).is_err());
    assert_eq!(names(&elsewhere), [""; 0]);
}

#[test]
fn what_an_ended_backup_has_left_is_in_nobodys_way() {
    let (_folder, path) = folder();
    let kept = Kept::at(path.clone());
    kept.save_job(None, "Shed", "", "one").unwrap();
    let elsewhere = path.with_file_name("files");
    std::fs::create_dir_all(&elsewhere).unwrap();
    std::fs::write(elsewhere.join("scantling-backup-1.db.part"), "half of it").unwrap();
    kept.back_up(&elsewhere).unwrap();
    assert_eq!(names(&elsewhere), ["scantling-backup-1.db"]);
}

#[test]
fn two_windows_save_one_job() {
    let (_folder, path) = folder();
    let windows = [Kept::at(path.clone()), Kept::at(path.clone())];
    let id = windows[0].save_job(None, "Shed", "", "first").unwrap().id;
    std::thread::scope(|scope| {
        for kept in &windows {
            scope.spawn(move || (0..20).for_each(|_| drop(kept.save_job(Some(id), "Shed", "", "x").unwrap())));
        }
    });
    let numbers: Vec<i64> = Kept::at(path).revisions(id).unwrap().iter().map(|one| one.number).collect();
    assert_eq!(numbers, (1..=41).rev().collect::<Vec<i64>>());
}

/// The page is told nothing else of what another window did: a number too high says that there is one in between.
#[test]
fn the_number_of_a_revision_says_what_another_window_saved() {
    let (_folder, path) = folder();
    let windows = [Kept::at(path.clone()), Kept::at(path.clone())];
    let entry = windows[0].save_job(None, "Shed", "", "first").unwrap();
    windows[1].save_job(Some(entry.id), "Shed", "", "theirs").unwrap();
    assert_eq!(windows[0].save_job(Some(entry.id), "Shed", "", "ours").unwrap().revision, entry.revision + 2);
    let want = [(3, "ours".to_owned()), (2, "theirs".to_owned()), (1, "first".to_owned())];
    assert_eq!(contents(&Kept::at(path), entry.id), want);
}
