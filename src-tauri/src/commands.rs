//! What the page may ask of the window.
//!
//! They run on the window's own thread, one after the other: on several threads an older text could be kept after a
//! newer one.

use crate::files::{Files, SaveError};
use crate::kept::{Entry, KeepError, Kept, Revision};
use std::collections::BTreeMap;
use tauri::State;

/// Everything that is kept, key to text.
#[tauri::command]
pub fn kept_all(kept: State<'_, Kept>) -> Result<BTreeMap<String, String>, KeepError> {
    kept.all()
}

/// Keeps each text under its key, all of them or none.
#[tauri::command]
pub fn keep(kept: State<'_, Kept>, texts: Vec<(String, String)>) -> Result<(), KeepError> {
    kept.keep(&texts)
}

/// Every job, the last saved first.
#[tauri::command]
pub fn jobs(kept: State<'_, Kept>) -> Result<Vec<Entry>, KeepError> {
    kept.jobs()
}

/// Saves a job as its next revision; without a number as a new one.
#[tauri::command]
pub fn save_job(
    kept: State<'_, Kept>,
    id: Option<i64>,
    name: String,
    about: String,
    content: String,
) -> Result<Entry, KeepError> {
    kept.save_job(id, &name, &about, &content)
}

/// The revisions of a job, the last first.
#[tauri::command]
pub fn revisions(kept: State<'_, Kept>, id: i64) -> Result<Vec<Revision>, KeepError> {
    kept.revisions(id)
}

/// A revision's text.
#[tauri::command]
pub fn revision(kept: State<'_, Kept>, id: i64, number: i64) -> Result<Option<String>, KeepError> {
    kept.revision(id, number)
}

/// Puts a job away, or back.
#[tauri::command]
pub fn remove_job(kept: State<'_, Kept>, id: i64, removed: bool) -> Result<(), KeepError> {
    kept.remove_job(id, removed)
}

/// Forgets a job.
#[tauri::command]
pub fn forget_job(kept: State<'_, Kept>, id: i64) -> Result<(), KeepError> {
    kept.forget_job(id)
}

/// Copies everything that is kept into a new file, and says where.
#[tauri::command]
pub fn back_up(kept: State<'_, Kept>, files: State<'_, Files>) -> Result<String, KeepError> {
    kept.back_up(files.folder()).map(|file| file.display().to_string())
}

/// Writes a text into a new file of the maker's, and says where.
#[tauri::command]
pub fn save_file(files: State<'_, Files>, name: String, text: String) -> Result<String, SaveError> {
    files.save(&name, &text).map(|file| file.display().to_string())
}
