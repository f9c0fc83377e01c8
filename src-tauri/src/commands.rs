//! What the page may ask of the window.
//!
//! They run on the window's own thread, one after the other: on several threads an older text could be kept after a
//! newer one.

use crate::kept::{KeepError, Kept};
use std::collections::BTreeMap;
use tauri::State;

/// Everything that is kept, key to text.
#[tauri::command]
pub fn kept_all(kept: State<'_, Kept>) -> Result<BTreeMap<String, String>, KeepError> {
    kept.all()
}

/// Keeps a text under a key, wholly or not at all; without a text the key is forgotten.
#[tauri::command]
pub fn keep(kept: State<'_, Kept>, key: String, value: Option<String>) -> Result<(), KeepError> {
    kept.keep(&key, value.as_deref())
}
