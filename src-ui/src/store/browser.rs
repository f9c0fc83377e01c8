//! Kept in the browser's local storage: small texts, there at once at the next start.

use super::{Soon, Store, StoreError};
use std::collections::BTreeMap;
use wasm_bindgen::JsValue;
use web_sys::Storage;

/// So that another app on the same address keeps its own.
const PREFIX: &str = "scantling/";

/// The page's own store.
pub(super) struct Page;

fn refused(error: &JsValue) -> StoreError {
    let name = js_sys::Reflect::get(error, &"name".into()).ok().and_then(|name| name.as_string());
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

impl Store for Page {
    fn all(&self) -> Soon<BTreeMap<String, String>> {
        Box::pin(std::future::ready(all()))
    }

    fn keep(&self, key: &str, value: &str) -> Soon<()> {
        let done = storage()
            .and_then(|storage| storage.set_item(&format!("{PREFIX}{key}"), value).map_err(|error| refused(&error)));
        Box::pin(std::future::ready(done))
    }
}
