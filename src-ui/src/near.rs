//! Draws only what lies on the screen or near it: of a long page most does not.

use crate::browser::Listener;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit};
use yew::prelude::*;

/// How far beyond the screen still counts as near it, in its own heights: a page ahead of a finger.
const MARGIN: &str = "100%";

/// Tells whenever an element comes near the screen or goes away from it, until dropped.
struct Watch {
    observer: IntersectionObserver,
    _callback: Closure<dyn FnMut(js_sys::Array)>,
}

impl Watch {
    fn new(element: &Element, tell: impl Fn(bool) + 'static) -> Option<Self> {
        let callback = Closure::new(move |entries: js_sys::Array| {
            // The last one is how it stands now.
            let last = entries.iter().last().and_then(|entry| entry.dyn_into::<IntersectionObserverEntry>().ok());
            if let Some(entry) = last {
                tell(entry.is_intersecting());
            }
        });
        let options = IntersectionObserverInit::new();
        options.set_root_margin(MARGIN);
        let observer = IntersectionObserver::new_with_options(callback.as_ref().unchecked_ref(), &options).ok()?;
        observer.observe(element);
        Some(Self { observer, _callback: callback })
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}

/// Whether the element lies near the screen, or the page is printed. `first` holds until that is known.
#[hook]
pub fn use_near(place: &NodeRef, first: bool) -> bool {
    let near = use_state_eq(|| first);
    {
        let (place, near) = (place.clone(), near.clone());
        use_effect_with((), move |()| {
            let printed = {
                let near = near.clone();
                web_sys::window().map(|window| Listener::on(&window, "beforeprint", move |_| near.set(true)))
            };
            let watch = place.cast::<Element>().and_then(|element| Watch::new(&element, move |is| near.set(is)));
            move || drop((printed, watch))
        });
    }
    *near
}
