//! Kept by the browser: small texts in its local storage, there at once at the next start; jobs in its database.

use super::{JobEntry, Listed, Revision, Soon, Store, StoreError, ToSave, indexed};
use crate::browser::{call, settle};
use std::collections::BTreeMap;
use wasm_bindgen::JsValue;
use web_sys::Storage;

/// So that another app on the same address keeps its own.
const PREFIX: &str = "scantling/";

/// The page's own store.
pub(super) struct Page;

fn refused(error: &JsValue) -> StoreError {
    let name = js_sys::Reflect::get(error, &"name".into()).ok().and_then(|name| name.as_string());
    if name.as_deref() == Some("QuotaExceededError") {
        return StoreError::NoRoom;
    }
    StoreError::Refused(name.unwrap_or_else(|| "storage is switched off".into()))
}

fn storage() -> Result<Storage, StoreError> {
    web_sys::window()
        .ok_or(JsValue::NULL)
        .and_then(|window| window.local_storage())
        .and_then(|storage| storage.ok_or(JsValue::NULL))
        .map_err(|error| refused(&error))
}

fn all() -> Result<BTreeMap<String, String>, StoreError> {
    let storage = storage()?;
    let mut kept = BTreeMap::new();
    for index in 0..storage.length().map_err(|error| refused(&error))? {
        let Some(name) = storage.key(index).ok().flatten() else { continue };
        let Some(key) = name.strip_prefix(PREFIX) else { continue };
        if let Some(value) = storage.get_item(&name).ok().flatten() {
            kept.insert(key.to_owned(), value);
        }
    }
    Ok(kept)
}

/// Puts a text under a name, or takes the name away.
fn put(storage: &Storage, name: &str, value: Option<&str>) -> Result<(), StoreError> {
    let done = match value {
        Some(value) => storage.set_item(name, value),
        None => storage.remove_item(name),
    };
    done.map_err(|error| refused(&error))
}

/// All or none: local storage has no transactions, but nothing else comes between the lines of one call, so what was
/// written before a refusal is put back.
fn keep(texts: &[(String, String)]) -> Result<(), StoreError> {
    let storage = storage()?;
    let mut before: Vec<(String, Option<String>)> = Vec::new();
    for (key, value) in texts {
        let name = format!("{PREFIX}{key}");
        let old = storage.get_item(&name).map_err(|error| refused(&error))?;
        if let Err(error) = put(&storage, &name, Some(value)) {
            for (name, old) in before.iter().rev() {
                // There is room for what was there a moment ago.
                let _ = put(&storage, name, old.as_deref());
            }
            return Err(error);
        }
        before.push((name, old));
    }
    Ok(())
}

impl Store for Page {
    fn all(&self) -> Soon<BTreeMap<String, String>> {
        Box::pin(std::future::ready(all()))
    }

    fn keep(&self, texts: &[(String, String)]) -> Soon<()> {
        Box::pin(std::future::ready(keep(texts)))
    }

    fn jobs(&self) -> Soon<Listed<JobEntry>> {
        Box::pin(indexed::jobs())
    }

    fn save_job(&self, to_save: ToSave) -> Soon<JobEntry> {
        Box::pin(indexed::save(to_save))
    }

    fn revisions(&self, id: u32) -> Soon<Listed<Revision>> {
        Box::pin(indexed::revisions(id))
    }

    fn revision(&self, id: u32, number: u32) -> Soon<Option<String>> {
        Box::pin(indexed::revision(id, number))
    }

    fn remove_job(&self, id: u32, removed: bool) -> Soon<()> {
        Box::pin(indexed::remove(id, removed))
    }

    fn forget_job(&self, id: u32) -> Soon<()> {
        Box::pin(indexed::forget(id))
    }

    fn makes_backups(&self) -> bool {
        false
    }

    fn back_up(&self) -> Soon<Option<String>> {
        Box::pin(std::future::ready(Ok(None)))
    }

    fn may_be_cleared(&self) -> Soon<bool> {
        Box::pin(async {
            let stays = settle(call("navigator.storage", "persist", &[])).await;
            Ok(stays.and_then(|stays| stays.as_bool()) != Some(true))
        })
    }

    fn save_file(&self, name: &str, kind: &str, text: &str) -> Soon<Option<String>> {
        let saved = crate::browser::save_file(name, kind, text);
        let refused = || StoreError::Told("This browser saves no file.".into());
        Box::pin(std::future::ready(saved.map(|()| None).ok_or_else(refused)))
    }
}
