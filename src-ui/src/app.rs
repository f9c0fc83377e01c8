//! The frame around every screen: the bar, the bench or a card, the pad, and what the app has to say.

mod notices;

use crate::browser::{Later, Listener, focused, media};
use crate::cards::{ShopSheet, card};
use crate::in_sight::use_focus_in_sight;
use crate::jobs::OpenJob;
use crate::route::{Route, use_route};
use crate::screens::bench::bench;
use crate::screens::settings::settings_screen;
use crate::settings::{Keys, Settings, SettingsChange, SettingsHandle, System, Theme};
use crate::show::Show;
use crate::store::{Kept, StoreError, here};
use crate::widgets::card_screen::{CardScreen, Host};
use crate::widgets::job_list::JobList;
use crate::widgets::number_pad::number_pad;
use crate::widgets::tape_list::TapeList;
use crate::words::say;
use notices::Notices;
use scantling::as_text;
use std::cell::Cell;
use std::rc::Rc;
use yew::prelude::*;

const SETTINGS: &str = "settings";

/// Where the shell leaves a sentence for the maker, such as that a damaged file was set aside.
const NOTICE: &str = "notice";

/// From here on there is room for the bench beside a card.
const WIDE: &str = "(min-width: 1000px)";

/// What is kept, as it was read last.
#[derive(Clone)]
struct Opened {
    kept: Kept,
    /// Why it could not be read.
    unread: Option<StoreError>,
    /// How often it was read.
    times: u32,
}

/// Opens the store, then the app: nothing is shown before the maker's own numbers are at hand. Where they could not be
/// read at first, the whole app begins anew once they were.
#[component]
pub fn App() -> Html {
    let opened = use_state(|| None::<Opened>);
    let goes = use_mut_ref(|| false);
    let read = {
        let opened = opened.clone();
        Callback::from(move |()| {
            // Read twice at once, half of the app would look at the one and half at the other.
            if goes.replace(true) {
                return;
            }
            let (opened, goes) = (opened.clone(), goes.clone());
            wasm_bindgen_futures::spawn_local(async move {
                let (kept, unread) = Kept::open(here()).await;
                goes.replace(false);
                opened.set(Some(match &*opened {
                    // What was typed stays on the screen until there is something to take its place.
                    Some(before) if unread.is_some() => Opened { unread, ..before.clone() },
                    before => Opened { kept, unread, times: before.as_ref().map_or(1, |before| before.times + 1) },
                }));
            });
        })
    };
    {
        let read = read.clone();
        use_effect_with((), move |()| read.emit(()));
    }
    match &*opened {
        None => Html::default(),
        Some(Opened { kept, unread, times }) => html! {
            <Frame key={*times} kept={kept.clone()} unread={unread.clone()} onread={read} />
        },
    }
}

#[derive(PartialEq, Properties)]
struct FrameProps {
    kept: Kept,
    unread: Option<StoreError>,
    onread: Callback<()>,
}

/// Whether a query holds, also after the window is turned or resized.
#[hook]
fn use_media(query: &'static str) -> bool {
    let holds = use_state_eq(|| media(query));
    {
        let holds = holds.clone();
        use_effect_with((), move |()| {
            let resized =
                web_sys::window().map(|window| Listener::on(&window, "resize", move |_| holds.set(media(query))));
            move || drop(resized)
        });
    }
    *holds
}

/// Whether a field that our pad can type into has the focus.
#[hook]
fn use_field_focus() -> bool {
    let on_field = use_state_eq(|| false);
    {
        let on_field = on_field.clone();
        use_effect_with((), move |()| {
            let document = web_sys::window().and_then(|window| window.document());
            let heard = document.map(|document| {
                let here = || {
                    focused().is_some_and(|element| {
                        element.get_attribute("data-takes").is_some_and(|takes| takes != "words")
                    })
                };
                // While a button is pressed nothing may move from under it, or the press would miss: the pad goes
                // only when pointer and click are done.
                let pressed = Rc::new(Cell::new(false));
                let came = on_field.clone();
                let look = {
                    let (pressed, later) = (pressed.clone(), Cell::new(None));
                    Rc::new(move || {
                        let (pressed, on_field) = (pressed.clone(), on_field.clone());
                        later.set(Some(Later::after(0, move || {
                            if !pressed.get() {
                                on_field.set(here());
                            }
                        })));
                    })
                };
                let (left, moved, down) = (look.clone(), look.clone(), pressed.clone());
                let risen = |event| {
                    let (look, pressed) = (look.clone(), pressed.clone());
                    Listener::on(&document, event, move |_| {
                        pressed.set(false);
                        look();
                    })
                };
                [
                    Listener::on(&document, "focusin", move |_| {
                        // A tap moves the focus before it clicks: only a field brings the pad up at once.
                        if here() { came.set(true) } else { moved() }
                    }),
                    Listener::on(&document, "focusout", move |_| left()),
                    Listener::on(&document, "pointerdown", move |_| down.set(true)),
                    risen("pointerup"),
                    risen("pointercancel"),
                ]
            });
            move || drop(heard)
        });
    }
    *on_field
}

/// Whether a newer version waits to take over.
#[hook]
fn use_new_version() -> bool {
    // The start script leaves a mark as well, in case it found out before anybody listened.
    let marked = || crate::browser::find("document.documentElement.dataset.newVersion").is_some();
    let waits = use_state_eq(marked);
    {
        let waits = waits.clone();
        use_effect_with((), move |()| {
            let heard = web_sys::window()
                .map(|window| Listener::on(&window, "scantling-new-version", move |_| waits.set(true)));
            move || drop(heard)
        });
    }
    *waits
}

/// Reads the settings, and keeps them whenever they change.
#[hook]
fn use_settings(kept: &Kept, ontrouble: &Callback<StoreError>) -> SettingsHandle {
    let settings = {
        let kept = kept.clone();
        use_reducer(move || -> Settings {
            kept.get(SETTINGS).and_then(|text| as_text::read(&text)).unwrap_or_default()
        })
    };
    let (kept, ontrouble, first) = (kept.clone(), ontrouble.clone(), use_mut_ref(|| true));
    use_effect_with((*settings).clone(), move |settings| {
        let theme = match settings.theme {
            Theme::Device => "device",
            Theme::Paper => "paper",
            Theme::Slate => "slate",
        };
        if let Some(root) = web_sys::window().and_then(|w| w.document()).and_then(|d| d.document_element()) {
            // Refused only for a malformed name.
            let _ = root.set_attribute("data-theme", theme);
        }
        if first.replace(false) {
            return;
        }
        if let Some(text) = as_text::write(settings) {
            let soon = kept.keep(SETTINGS, text);
            wasm_bindgen_futures::spawn_local(async move {
                if let Err(error) = soon.await {
                    ontrouble.emit(error);
                }
            });
        }
    });
    settings
}

fn unit_switch(settings: &SettingsHandle) -> Html {
    let one = |system: System, words: &'static str, name: &str| {
        let settings = settings.clone();
        let pressed = settings.system == system;
        // What is drawn comes first in the name, so that who says what they see is understood.
        let name = format!("{words}, {}", say(name));
        let onclick = move |_: MouseEvent| settings.dispatch(SettingsChange::new(move |next| next.system = system));
        html! {
            <button type="button" aria-pressed={pressed.to_string()} aria-label={name} {onclick}>{ words }</button>
        }
    };
    html! {
        <div class="unit-switch" role="group" aria-label={say("settings-system")}>
            { one(System::Metric, "mm", "settings-system-metric") }
            { one(System::Imperial, "in", "settings-system-imperial") }
        </div>
    }
}

#[component]
fn Frame(props: &FrameProps) -> Html {
    let trouble = use_state_eq(|| None::<StoreError>);
    let ontrouble = {
        let trouble = trouble.clone();
        use_callback((), move |error: StoreError, ()| trouble.set(Some(error)))
    };
    let onkept = {
        // The bench reads what is kept whenever it is drawn: drawing it anew is enough.
        let (again, trouble) = (use_force_update(), trouble.clone());
        use_callback((), move |(), ()| {
            // Whatever was in the way is so no longer.
            trouble.set(None);
            again.force_update();
        })
    };
    let settings = use_settings(&props.kept, &ontrouble);
    let notice = {
        let kept = props.kept.clone();
        use_state_eq(move || kept.get(NOTICE).filter(|text| !text.is_empty()).map(AttrValue::from))
    };
    let onnotice = {
        let notice = notice.clone();
        Callback::from(move |words: AttrValue| {
            // What was not closed yet is still to be read.
            let before = notice.iter().map(|before| format!("{before} "));
            notice.set(Some(before.chain([words.to_string()]).collect::<String>().into()));
        })
    };
    let onnoticed = {
        let (kept, notice, ontrouble) = (props.kept.clone(), notice.clone(), ontrouble.clone());
        Callback::from(move |()| {
            notice.set(None);
            let (soon, ontrouble) = (kept.keep(NOTICE, String::new()), ontrouble.clone());
            wasm_bindgen_futures::spawn_local(async move {
                if let Err(error) = soon.await {
                    ontrouble.emit(error);
                }
            });
        })
    };
    let route = use_route();
    let wide = use_media(WIDE);
    let coarse = use_media("(pointer: coarse)");
    let on_field = use_field_focus();
    let new_version = use_new_version();
    use_focus_in_sight();
    let pad = match settings.keys {
        Keys::Pad => true,
        Keys::Keyboard => false,
        Keys::Device => coarse,
    };
    let host = Host { kept: props.kept.clone(), onkept, ontrouble, onnotice: onnotice.clone(), pad };
    let open = match &route {
        Route::Card(slug) => card(slug),
        _ => None,
    };
    let title = match (&route, open) {
        (Route::Settings, _) => say("settings-title"),
        (Route::Tape, _) => say("tape-title"),
        (Route::Jobs, _) => say("jobs-title"),
        (Route::ShopSheet, _) => say("shop-title"),
        (Route::Card(_), Some(card)) => (card.title)(),
        (Route::Card(_), None) => say("no-such-card"),
        (Route::Bench, _) => say("bench-title"),
    };
    use_effect_with(title.clone(), |title| {
        if let Some(document) = web_sys::window().and_then(|window| window.document()) {
            document.set_title(&format!("{title} · Scantling"));
        }
    });
    let screen = match (&route, open) {
        (Route::Settings, _) => settings_screen(&settings, pad),
        (Route::Tape, _) => html! {
            <TapeList kept={props.kept.clone()} ontrouble={host.ontrouble} show={Show::of(&settings)} />
        },
        (Route::Jobs, _) => html! { <JobList kept={props.kept.clone()} {onnotice} /> },
        (Route::ShopSheet, _) => {
            let kept = |slug: &str| props.kept.get(&Kept::inputs_of(slug)).map(AttrValue::from);
            html! { <ShopSheet inputs={kept("cabinet")} layout={kept("sheet-layout")} job={OpenJob::of(&props.kept).name}
            settings={(*settings).clone()} /> }
        }
        (Route::Card(_), Some(card)) => {
            html! { <div class="card-place" key={card.slug}><CardScreen card={*card} host={host} /></div> }
        }
        _ => bench(&props.kept, &settings, None),
    };
    let beside = (wide && open.is_some()).then(|| html! {
        <aside class="beside" aria-label={say("bench-title")}>{ bench(&props.kept, &settings, open.map(|card| card.slug)) }</aside>
    });
    let here = |at: bool| at.then_some("page");
    html! {
        <ContextProvider<SettingsHandle> context={settings.clone()}>
            <div class="frame" data-pad={(pad && on_field).to_string()} data-screen={if open.is_some() { "card" } else { "list" }}>
                <a class="skip" href="#main" onclick={skip}>{ say("skip") }</a>
                <header class="bar">
                    if route != Route::Bench {
                        <a class="back" href="#/" aria-label={say("back")}>{ "‹" }</a>
                    }
                    <h1>{ title }</h1>
                    { unit_switch(&settings) }
                </header>
                <Notices unread={props.unread.clone()} onread={props.onread.clone()} trouble={(*trouble).clone()}
                    notice={(*notice).clone()} {onnoticed} {new_version} />
                <div class="floor">
                    { beside }
                    <main id="main" tabindex="-1">{ screen }</main>
                </div>
                if pad && on_field {
                    { number_pad() }
                } else {
                    <nav class="foot" aria-label={say("foot-title")}>
                        <a href="#/" aria-current={here(route == Route::Bench)}>{ say("bench-title") }</a>
                        <a href="#/jobs" aria-current={here(route == Route::Jobs)}>{ say("jobs-title") }</a>
                        <a href="#/tape" aria-current={here(route == Route::Tape)}>{ say("tape-title") }</a>
                        <a href="#/settings" aria-current={here(route == Route::Settings)}>{ say("settings-title") }</a>
                    </nav>
                }
            </div>
            { crate::pictures::patterns() }
        </ContextProvider<SettingsHandle>>
    }
}

/// The hash is the address here, so the skip link moves the focus itself.
fn skip(event: MouseEvent) {
    event.prevent_default();
    let main = web_sys::window().and_then(|w| w.document()).and_then(|d| d.get_element_by_id("main"));
    if let Some(main) = main.and_then(|main| wasm_bindgen::JsCast::dyn_into::<web_sys::HtmlElement>(main).ok()) {
        // An element on the page can take the focus.
        let _ = main.focus();
    }
}
