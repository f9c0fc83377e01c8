//! Kept by the native window, in its database, through two commands.

use super::{Soon, Store, StoreError};
use crate::browser::{call, find};
use std::collections::BTreeMap;
use wasm_bindgen::{JsCast, JsValue};

const BRIDGE: &str = "__TAURI_INTERNALS__";

/// Whether this page runs in the native window.
pub(super) fn is_here() -> bool {
    find(BRIDGE).is_some()
}

/// The native window's store.
pub(super) struct Window;

fn invoke(command: &'static str, arguments: &[(&str, &str)]) -> Option<JsValue> {
    let object = js_sys::Object::new();
    for (name, value) in arguments {
        js_sys::Reflect::set(&object, &(*name).into(), &(*value).into()).ok()?;
    }
    call(BRIDGE, "invoke", &[command.into(), object.into()])
}

async fn answer(promise: Option<JsValue>) -> Result<JsValue, StoreError> {
    let promise: js_sys::Promise = promise
        .and_then(|value| value.dyn_into().ok())
        .ok_or_else(|| StoreError::Refused("the window does not answer".into()))?;
    wasm_bindgen_futures::JsFuture::from(promise).await.map_err(|error| {
        let message = js_sys::Reflect::get(&error, &"message".into()).ok().and_then(|message| message.as_string());
        StoreError::Refused(message.or_else(|| error.as_string()).unwrap_or_default())
    })
}

impl Store for Window {
    fn all(&self) -> Soon<BTreeMap<String, String>> {
        let promise = invoke("kept_all", &[]);
        Box::pin(async move {
            let kept = js_sys::Object::entries(answer(promise).await?.unchecked_ref());
            Ok(kept
                .iter()
                .filter_map(|pair| {
                    let pair: js_sys::Array = pair.dyn_into().ok()?;
                    Some((pair.get(0).as_string()?, pair.get(1).as_string()?))
                })
                .collect())
        })
    }

    fn keep(&self, key: &str, value: &str) -> Soon<()> {
        let promise = invoke("keep", &[("key", key), ("value", value)]);
        Box::pin(async move { answer(promise).await.map(|_| ()) })
    }
}
