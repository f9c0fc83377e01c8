//! The few things asked of the browser that Yew has no word for.

use std::cell::Cell;
use std::rc::{Rc, Weak};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::{Event, EventTarget, HtmlElement, Window};

/// A listener that leaves with its owner.
pub struct Listener {
    target: EventTarget,
    event: &'static str,
    callback: Closure<dyn FnMut(Event)>,
}

impl Listener {
    /// Listens until dropped.
    pub fn on(target: &EventTarget, event: &'static str, heard: impl FnMut(Event) + 'static) -> Self {
        let callback = Closure::new(heard);
        // Refused only for a target that is going away, when there is nothing left to hear.
        let _ = target.add_event_listener_with_callback(event, callback.as_ref().unchecked_ref());
        Self { target: target.clone(), event, callback }
    }
}

impl Drop for Listener {
    fn drop(&mut self) {
        let _ = self.target.remove_event_listener_with_callback(self.event, self.callback.as_ref().unchecked_ref());
    }
}

/// A call that comes later, unless dropped first.
pub struct Later {
    handle: Option<i32>,
    _callback: Closure<dyn FnMut()>,
}

impl Later {
    /// Calls once after so many milliseconds.
    pub fn after(milliseconds: i32, call: impl FnMut() + 'static) -> Self {
        let callback = Closure::new(call);
        let handle = web_sys::window().and_then(|window| {
            window
                .set_timeout_with_callback_and_timeout_and_arguments_0(callback.as_ref().unchecked_ref(), milliseconds)
                .ok()
        });
        Self { handle, _callback: callback }
    }
}

impl Drop for Later {
    fn drop(&mut self) {
        if let (Some(handle), Some(window)) = (self.handle, web_sys::window()) {
            window.clear_timeout_with_handle(handle);
        }
    }
}

/// A call that comes once nothing has happened for a while. Putting it off costs nothing: a timer that runs already is
/// left to run, and looks when it ends whether that was long enough.
pub struct Lull {
    inner: Rc<LullInner>,
}

struct LullInner {
    /// When the call is due; nothing while none is wanted.
    due: Cell<Option<f64>>,
    timer: Cell<Option<i32>>,
    ends: Closure<dyn FnMut()>,
}

impl Lull {
    /// Nothing is called yet.
    pub fn new(call: impl Fn() + 'static) -> Self {
        let inner = Rc::new_cyclic(|own: &Weak<LullInner>| {
            let own = own.clone();
            let ends = Closure::new(move || {
                if own.upgrade().is_some_and(|own| own.is_due()) {
                    call();
                }
            });
            LullInner { due: Cell::new(None), timer: Cell::new(None), ends }
        });
        Self { inner }
    }

    /// Calls so many milliseconds from now, and not before; always with the same number.
    pub fn wait(&self, milliseconds: i32) {
        self.inner.due.set(Some(now_ms() + f64::from(milliseconds)));
        if self.inner.timer.get().is_none() {
            self.inner.run_for(milliseconds);
        }
    }

    /// Whether a call is still to come.
    pub fn waits(&self) -> bool {
        self.inner.due.get().is_some()
    }

    /// Calls no more, unless told to wait again.
    pub fn forget(&self) {
        self.inner.due.set(None);
    }
}

impl LullInner {
    fn run_for(&self, milliseconds: i32) {
        let ends = self.ends.as_ref().unchecked_ref();
        let set =
            |window: Window| window.set_timeout_with_callback_and_timeout_and_arguments_0(ends, milliseconds).ok();
        self.timer.set(web_sys::window().and_then(set));
    }

    /// Whether it is time now; otherwise the timer runs on for what is left.
    fn is_due(&self) -> bool {
        self.timer.set(None);
        // A clock may be a little ahead of the timer.
        match self.due.get().map(|due| due - now_ms()) {
            #[expect(clippy::cast_possible_truncation, reason = "at most as long as it was told to wait")]
            Some(left) if left >= 1.0 => {
                self.run_for(left.ceil() as i32);
                false
            }
            _ => self.due.take().is_some(),
        }
    }
}

impl Drop for LullInner {
    fn drop(&mut self) {
        if let (Some(handle), Some(window)) = (self.timer.get(), web_sys::window()) {
            window.clear_timeout_with_handle(handle);
        }
    }
}

/// A call that comes some time after the next frame has been painted, unless dropped first.
pub struct AfterPaint {
    handle: Option<i32>,
    _later: Rc<Cell<Option<Later>>>,
    _callback: Closure<dyn FnMut()>,
}

impl AfterPaint {
    /// Calls so many milliseconds after it: a timer that is set in a frame's own callback comes behind its paint.
    pub fn then(milliseconds: i32, call: impl FnMut() + Clone + 'static) -> Self {
        let later = Rc::new(Cell::new(None));
        let callback = Closure::new({
            let later = later.clone();
            move || later.set(Some(Later::after(milliseconds, call.clone())))
        });
        let handle =
            web_sys::window().and_then(|window| window.request_animation_frame(callback.as_ref().unchecked_ref()).ok());
        Self { handle, _later: later, _callback: callback }
    }
}

impl Drop for AfterPaint {
    fn drop(&mut self) {
        if let (Some(handle), Some(window)) = (self.handle, web_sys::window()) {
            // Refused only for a frame that was never asked for.
            let _ = window.cancel_animation_frame(handle);
        }
    }
}

/// Milliseconds since the page began, finer than a frame.
pub fn now_ms() -> f64 {
    web_sys::window().and_then(|window| window.performance()).map_or(0.0, |clock| clock.now())
}

/// Hands a text to the maker as a file.
pub fn save_file(name: &str, kind: &str, text: &str) -> Option<()> {
    let link: HtmlElement = web_sys::window()?.document()?.create_element("a").ok()?.dyn_into().ok()?;
    let address = format!("data:{kind};charset=utf-8,{}", js_sys::encode_uri_component(text));
    link.set_attribute("href", &address).ok()?;
    link.set_attribute("download", name).ok()?;
    link.click();
    Some(())
}

/// Whether a media query holds now.
pub fn media(query: &str) -> bool {
    web_sys::window().and_then(|window| window.match_media(query).ok().flatten()).is_some_and(|list| list.matches())
}

/// The element that has the focus.
pub fn focused() -> Option<HtmlElement> {
    web_sys::window()?.document()?.active_element()?.dyn_into().ok()
}

/// Looks up `path` (such as `navigator.clipboard`) from the window; `None` where the browser has no such thing.
pub fn find(path: &str) -> Option<JsValue> {
    let start: JsValue = web_sys::window()?.into();
    path.split('.').try_fold(start, |at, name| {
        let next = js_sys::Reflect::get(&at, &name.into()).ok()?;
        (!next.is_undefined() && !next.is_null()).then_some(next)
    })
}

/// Calls the method `name` of what stands at `path`; `None` where there is no such thing or it refuses at once.
pub fn call(path: &str, name: &str, arguments: &[JsValue]) -> Option<JsValue> {
    let this = find(path)?;
    let method: js_sys::Function = js_sys::Reflect::get(&this, &name.into()).ok()?.dyn_into().ok()?;
    method.apply(&this, &arguments.iter().collect::<js_sys::Array>()).ok()
}

/// Waits for a promise; `None` where the call gave none or it was refused.
pub async fn settle(value: Option<JsValue>) -> Option<JsValue> {
    let promise: js_sys::Promise = value?.dyn_into().ok()?;
    wasm_bindgen_futures::JsFuture::from(promise).await.ok()
}

/// Moves the focus to the field after this one on the card; past the last, lets go, so that the answer is in sight.
pub fn focus_next_field(from: &HtmlElement, lists_too: bool) {
    let Some(document) = web_sys::window().and_then(|window| window.document()) else { return };
    let mut wanted = ".fields input[data-takes], .fields textarea".to_owned();
    if lists_too {
        wanted.push_str(", .fields select");
    }
    let Ok(fields) = document.query_selector_all(&wanted) else { return };
    let mut passed = false;
    for index in 0..fields.length() {
        let Some(field) = fields.get(index).and_then(|node| node.dyn_into::<HtmlElement>().ok()) else { continue };
        if passed {
            // A field that is just going away cannot be focused; nothing is lost.
            let _ = field.focus();
            return;
        }
        passed = field.is_same_node(Some(from));
    }
    let _ = from.blur();
}
