//! Kept by the native window, in its database, through its commands.

use super::{JobEntry, Listed, Revision, Soon, Store, StoreError, ToSave};
use crate::browser::{call, find};
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use wasm_bindgen::{JsCast, JsValue};

const BRIDGE: &str = "__TAURI_INTERNALS__";

/// Whether this page runs in the native window.
pub(super) fn is_here() -> bool {
    find(BRIDGE).is_some()
}

/// The native window's store.
pub(super) struct Window;

fn invoke(command: &'static str, arguments: &[(&str, JsValue)]) -> Option<JsValue> {
    let object = js_sys::Object::new();
    for (name, value) in arguments {
        js_sys::Reflect::set(&object, &(*name).into(), value).ok()?;
    }
    call(BRIDGE, "invoke", &[command.into(), object.into()])
}

async fn answer(promise: Option<JsValue>) -> Result<JsValue, StoreError> {
    let promise: js_sys::Promise = promise
        .and_then(|value| value.dyn_into().ok())
        .ok_or_else(|| StoreError::Refused("the window does not answer".into()))?;
    wasm_bindgen_futures::JsFuture::from(promise).await.map_err(|error| {
        let message = js_sys::Reflect::get(&error, &"message".into()).ok().and_then(|message| message.as_string());
        match message {
            Some(message) => StoreError::Told(message),
            None => StoreError::Refused(error.as_string().unwrap_or_default()),
        }
    })
}

/// An answer that is more than a text.
async fn read<T: DeserializeOwned>(promise: Option<JsValue>) -> Result<T, StoreError> {
    let value = answer(promise).await?;
    let text = js_sys::JSON::stringify(&value).ok().and_then(|text| text.as_string());
    text.and_then(|text| scantling::as_text::read(&text))
        .ok_or_else(|| StoreError::Refused("the window's answer is not understood".into()))
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

    fn keep(&self, texts: &[(String, String)]) -> Soon<()> {
        let pairs = texts.iter().map(|(key, value)| js_sys::Array::of2(&key.into(), &value.into()));
        let promise = invoke("keep", &[("texts", pairs.collect::<js_sys::Array>().into())]);
        Box::pin(async move { answer(promise).await.map(|_| ()) })
    }

    fn jobs(&self) -> Soon<Listed<JobEntry>> {
        let jobs = read(invoke("jobs", &[]));
        Box::pin(async { jobs.await.map(Listed::whole) })
    }

    fn save_job(&self, to_save: ToSave) -> Soon<JobEntry> {
        let ToSave { id, name, about, content } = to_save;
        let arguments = [
            ("id", id.map_or(JsValue::NULL, JsValue::from)),
            ("name", name.into()),
            ("about", about.into()),
            ("content", content.into()),
        ];
        Box::pin(read(invoke("save_job", &arguments)))
    }

    fn revisions(&self, id: u32) -> Soon<Listed<Revision>> {
        let revisions = read(invoke("revisions", &[("id", id.into())]));
        Box::pin(async { revisions.await.map(Listed::whole) })
    }

    fn revision(&self, id: u32, number: u32) -> Soon<Option<String>> {
        Box::pin(read(invoke("revision", &[("id", id.into()), ("number", number.into())])))
    }

    fn remove_job(&self, id: u32, removed: bool) -> Soon<()> {
        Box::pin(read(invoke("remove_job", &[("id", id.into()), ("removed", removed.into())])))
    }

    fn forget_job(&self, id: u32) -> Soon<()> {
        Box::pin(read(invoke("forget_job", &[("id", id.into())])))
    }

    fn makes_backups(&self) -> bool {
        true
    }

    fn back_up(&self) -> Soon<Option<String>> {
        Box::pin(read(invoke("back_up", &[])))
    }

    fn may_be_cleared(&self) -> Soon<bool> {
        Box::pin(std::future::ready(Ok(false)))
    }

    fn save_file(&self, name: &str, _: &str, text: &str) -> Soon<Option<String>> {
        Box::pin(read(invoke("save_file", &[("name", name.into()), ("text", text.into())])))
    }
}
