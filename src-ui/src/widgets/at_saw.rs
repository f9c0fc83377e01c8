//! At the saw: only the numbers, over the whole screen, the screen kept awake where the platform can.

use super::over::Over;
use super::reply::{Reply, verdict};
use crate::browser::{Listener, call, settle};
use crate::show::{draw, draw_other};
use crate::words::say;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::JsValue;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct AtSawProps {
    /// The card's name.
    pub title: AttrValue,
    /// What is shown.
    pub reply: Reply,
    /// What else is wanted there, such as an order of cuts.
    pub more: Html,
    /// Closed again.
    pub onclose: Callback<()>,
}

/// Asks for the screen to stay on, and lets go again. A platform without the means refuses, and the screen dims as
/// usual, which is then said.
async fn keep_awake(open: Rc<Cell<bool>>, held: Rc<RefCell<Option<JsValue>>>, dims: UseStateSetter<bool>) {
    let lock = settle(call("navigator.wakeLock", "request", &["screen".into()])).await;
    match lock {
        Some(lock) if !open.get() => release(&lock),
        _ if !open.get() => {}
        lock => {
            dims.set(lock.is_none());
            held.replace(lock);
        }
    }
}

fn release(lock: &JsValue) {
    if let Ok(method) = js_sys::Reflect::get(lock, &"release".into())
        && let Some(method) = wasm_bindgen::JsCast::dyn_ref::<js_sys::Function>(&method)
    {
        // A lock that the browser took back already is as good as released.
        let _ = method.call0(lock);
    }
}

#[component]
pub fn AtSaw(props: &AtSawProps) -> Html {
    let dims = use_state_eq(|| false);
    let set_dims = dims.setter();
    use_effect_with((), move |()| {
        let open = Rc::new(Cell::new(true));
        let held = Rc::new(RefCell::new(None));
        wasm_bindgen_futures::spawn_local(keep_awake(open.clone(), held.clone(), set_dims.clone()));
        // A browser drops the lock when the page goes out of sight; ask again when it comes back.
        let again = web_sys::window().and_then(|window| window.document()).map(|document| {
            let (open, held) = (open.clone(), held.clone());
            Listener::on(&document, "visibilitychange", move |_| {
                wasm_bindgen_futures::spawn_local(keep_awake(open.clone(), held.clone(), set_dims.clone()));
            })
        });
        move || {
            drop(again);
            open.set(false);
            if let Some(lock) = held.take() {
                release(&lock);
            }
        }
    });
    html! {
        <Over title={props.title.clone()} class="at-saw" onclose={props.onclose.clone()}>
            <div class="at-saw-lines">
                if *dims {
                    <p class="hint at-saw-dims" role="status">{ say("at-saw-dims") }</p>
                }
                { for props.reply.main.iter().map(|line| html! {
                    <p class="at-saw-line" data-tone={line.tone.name()}>
                        <span class="answer-label">{ &line.label }</span>
                        <span class="at-saw-main">{ draw(&line.shown.main) }</span>
                        <span class="answer-other">
                            if let Some(cost) = &line.shown.cost {
                                <span class="answer-cost">{ cost }</span>
                            }
                            { draw_other(&line.shown) }
                        </span>
                    </p>
                }) }
                if let Some(judged) = &props.reply.verdict { { verdict(judged) } }
                { props.more.clone() }
                { for props.reply.groups.iter().map(super::reply::group) }
            </div>
        </Over>
    }
}
