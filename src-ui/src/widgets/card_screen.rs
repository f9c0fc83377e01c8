//! A whole card: picture and answer on top, fields under the thumb, actions, working and cautions below.

use super::actions::Actions;
use super::answer::Answer;
use super::at_saw::AtSaw;
use super::card_state::{CardState, Change, Held};
use super::fields::FieldTools;
use super::handing_over::{keep_in, take_before};
use super::reply::Reply;
use super::searching::Searching;
use super::settled::{Edits, Now, Part, Settled, SettledProps};
use super::tape_list::{TapePage, TapeUse};
use crate::browser::{AfterPaint, Listener, Lull, focus_next_field};
use crate::cards::CardEntry;
use crate::damaged::set_aside;
use crate::jobs::OpenJob;
use crate::settings::SettingsHandle;
use crate::show::Show;
use crate::store::{Kept, StoreError};
use crate::tape::Tape;
use crate::words::say;
use std::any::Any;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use yew::prelude::*;

/// What a card needs of the app around it.
#[derive(Clone, PartialEq)]
pub struct Host {
    /// What is kept.
    pub kept: Kept,
    /// A card's inputs were kept.
    pub onkept: Callback<()>,
    /// Something could not be kept.
    pub ontrouble: Callback<StoreError>,
    /// Something for the maker to know, whatever screen comes next.
    pub onnotice: Callback<AttrValue>,
    /// Our pad is used.
    pub pad: bool,
}

#[derive(PartialEq, Properties)]
pub struct CardScreenProps {
    /// Which card.
    pub card: CardEntry,
    /// The app around it.
    pub host: Host,
}

/// Typing rests for so long before the inputs are kept and an answer that takes long is worked out; leaving the page
/// keeps them at once.
const REST_MS: i32 = 250;

/// Does what waits for typing to rest. Keeps the inputs whenever they change: soon after, and at once when the page goes
/// out of sight or the card closes.
#[hook]
fn use_rests(slug: &'static str, host: &Host, state: &UseReducerHandle<CardState>) {
    let show = Show::of(state.settings());
    let waiting = use_mut_ref(|| None::<Rc<dyn Held>>);
    let seen = use_mut_ref(|| state.held.clone());
    let keep_now = {
        let (host, waiting) = (host.clone(), waiting.clone());
        Rc::new(move || {
            let Some(held) = waiting.borrow_mut().take() else { return };
            let Some(text) = held.text() else { return };
            let mut texts = match slug {
                // Another window of the same browser may have put another job there: what is typed here is still of this
                // window's.
                scantling::job::CARD => OpenJob::of(&host.kept).texts_with(text).to_vec(),
                _ => vec![(Kept::inputs_of(slug), text)],
            };
            if let (true, Some(reply)) = (held.problems().is_empty() && !held.is_pending(), held.reply(show)) {
                let lines = reply.main_lengths().into_iter().map(|(line, length)| (line.to_string(), length));
                let mut tape = Tape::of(&host.kept);
                tape.record(slug, lines.collect());
                texts.extend(tape.text());
            }
            let soon = host.kept.keep_all(texts);
            let (onkept, ontrouble) = (host.onkept.clone(), host.ontrouble.clone());
            wasm_bindgen_futures::spawn_local(async move {
                match soon.await {
                    Ok(()) => onkept.emit(()),
                    Err(error) => ontrouble.emit(error),
                }
            });
        })
    };
    {
        let (keep_now, held, dispatcher) = (keep_now.clone(), state.held.clone(), state.dispatcher());
        let now = seen.clone();
        let rests = move || {
            // An answer that takes long is a frame's work, and so is keeping what it is of: that waits for the next rest.
            if now.borrow().is_pending() {
                dispatcher.dispatch(Change::Rest);
            } else {
                keep_now();
            }
        };
        let lull = use_memo((), move |()| Lull::new(rests));
        use_effect(move || {
            if !Rc::ptr_eq(&seen.borrow(), &held) {
                seen.replace(held.clone());
                waiting.replace(Some(held));
                lull.wait(REST_MS);
            }
        });
    }
    use_effect_with((), move |()| {
        let hide = web_sys::window().map(|window| {
            let keep_now = keep_now.clone();
            Listener::on(&window, "pagehide", move |_| keep_now())
        });
        move || {
            drop(hide);
            keep_now();
        }
    });
}

/// What may lie over a card.
enum Page {
    /// The numbers, large.
    Saw,
    /// The tape, for the field of this label.
    Paste(AttrValue, Callback<String>),
    /// Values of the answer to put on the tape.
    Hold,
}

/// What stands on a page over the card.
struct Shown<'a> {
    title: &'a AttrValue,
    reply: Reply,
    more: Html,
    show: Show,
}

fn page_over(page: &Page, slug: &'static str, shown: Shown<'_>, host: &Host, onclose: Callback<()>) -> Html {
    let Shown { title, reply, more, show } = shown;
    let purpose = match page {
        Page::Saw => return html! { <AtSaw title={title.clone()} {reply} {more} {onclose} /> },
        Page::Paste(label, onpaste) => TapeUse::Paste(label.clone(), onpaste.clone()),
        Page::Hold => TapeUse::Hold(slug, reply.lengths()),
    };
    html! { <TapePage {purpose} kept={host.kept.clone()} ontrouble={host.ontrouble.clone()} {show} {onclose} /> }
}

/// What can be done with a card. Made once, so that what is drawn with these looks the same at every key.
struct Acts {
    saw: Callback<()>,
    hold: Callback<()>,
    undo: Callback<()>,
    demo: Callback<()>,
    /// The answer as text.
    text: Callback<(), String>,
    /// For the first of these the second was found.
    better: Callback<(Rc<dyn Held>, Rc<dyn Held>)>,
    next_on_enter: Callback<KeyboardEvent>,
}

impl Acts {
    fn new(
        now: Now,
        dispatcher: UseReducerDispatcher<CardState>,
        over: UseStateSetter<Option<Page>>,
        title: AttrValue,
        show: Show,
    ) -> Self {
        let open = |page: fn() -> Page| {
            let over = over.clone();
            Callback::from(move |()| over.set(Some(page())))
        };
        let act = |change: fn() -> Change| {
            let dispatcher = dispatcher.clone();
            Callback::from(move |()| dispatcher.dispatch(change()))
        };
        let next_on_enter = |event: KeyboardEvent| {
            let Some(target) = event.target().and_then(|target| target.dyn_into::<web_sys::HtmlElement>().ok()) else {
                return;
            };
            // In a list of lines Enter makes the next line; on a button it presses.
            if event.key() == "Enter" && !matches!(target.tag_name().as_str(), "TEXTAREA" | "BUTTON") {
                event.prevent_default();
                focus_next_field(&target, true);
            }
        };
        Self {
            saw: open(|| Page::Saw),
            hold: open(|| Page::Hold),
            undo: act(|| Change::Undo),
            demo: act(|| Change::Demo),
            text: Callback::from(move |()| {
                now.borrow().reply(show).map_or_else(String::new, |reply| reply.as_text(&title))
            }),
            better: {
                let dispatcher = dispatcher.clone();
                Callback::from(move |(of, better)| dispatcher.dispatch(Change::Better(of, better)))
            },
            next_on_enter: Callback::from(next_on_enter),
        }
    }
}

/// An answer and how it is shown. Kept answers are compared by where they lie, and stay there while they are kept.
struct Shows(Option<Rc<dyn Any>>, Show);

impl PartialEq for Shows {
    fn eq(&self, other: &Self) -> bool {
        let same = match (&self.0, &other.0) {
            (Some(one), Some(another)) => Rc::ptr_eq(one, another),
            (one, another) => one.is_none() && another.is_none(),
        };
        same && self.1 == other.1
    }
}

/// Whether the card has been on the screen: the answer comes before the fields, which are many.
#[hook]
fn use_first_paint() -> UseStateHandle<bool> {
    let painted = use_state_eq(|| false);
    {
        let painted = painted.clone();
        use_effect_with((), move |()| {
            let soon = AfterPaint::then(0, move || painted.set(true));
            move || drop(soon)
        });
    }
    painted
}

#[component]
pub fn CardScreen(props: &CardScreenProps) -> Html {
    let Some(settings) = use_context::<SettingsHandle>() else { return Html::default() };
    let settings = Rc::new((*settings).clone());
    let CardEntry { slug, title, open, .. } = props.card;
    let state = {
        let (host, settings) = (props.host.clone(), settings.clone());
        use_reducer(move || {
            let text = host.kept.get(&Kept::inputs_of(slug));
            let before = take_before(&host.kept, slug).map(|before| open(Some(&before), &settings));
            let held = open(text.as_deref(), &settings);
            if held.stands_in() {
                keep_in(set_aside(&host.kept, slug), &host.ontrouble);
            }
            let state = CardState::new(held, settings);
            match before {
                Some(before) => state.after(before),
                None => state,
            }
        })
    };
    {
        let state = state.dispatcher();
        use_effect_with(settings.clone(), move |settings| state.dispatch(Change::Settings(settings.clone())));
    }
    {
        let (onnotice, stands_in) = (props.host.onnotice.clone(), state.held.stands_in());
        use_effect_with((), move |()| {
            if stands_in {
                onnotice.emit(say("damaged-inputs"));
            }
        });
    }
    use_rests(slug, &props.host, &state);
    let over = use_state(|| None::<Page>);
    let painted = use_first_paint();

    let show = Show::of(state.settings());
    let title = title();
    let now: Now = use_mut_ref(|| state.held.clone());
    now.replace(state.held.clone());
    let acts = {
        let (now, dispatcher, over, title) = (now.clone(), state.dispatcher(), over.setter(), title.clone());
        use_memo((title.clone(), show), move |_| Acts::new(now, dispatcher, over, title, show))
    };
    let ontape = {
        let over = over.clone();
        Callback::from(move |(label, onpaste)| over.set(Some(Page::Paste(label, onpaste))))
    };
    let tools = FieldTools::new(slug, &state, props.host.pad, ontape);
    let edits = Edits { slug, dispatcher: state.dispatcher(), settings: state.settings().clone() };
    let settled = SettledProps {
        held: state.held.clone(),
        show,
        part: Part::Picture,
        edits: edits.clone(),
        now: now.clone(),
        host: props.host.clone(),
    };
    let reply = {
        let held = state.held.clone();
        use_memo(Shows(held.answer(), show), move |_| held.reply(show).map(Rc::new))
    };
    let at_large = state.held.problems().of("").map(|problem| {
        html! { <p class="problem at-large" role="alert">{ problem.to_string() }</p> }
    });
    html! {
        <section class="card" aria-labelledby={format!("{}-title", slug)} data-card={slug}>
            <h2 class="unseen" id={format!("{}-title", slug)}>{ &title }</h2>
            <div class="card-asked">
                <div class="card-top">
                    <div class="picture" data-stale={state.is_stale().to_string()}>
                        <Settled ..settled.clone() />
                    </div>
                    if let Some(reply) = &*reply {
                        <Answer {slug} reply={reply.clone()} stale={state.is_stale()} ontap={acts.saw.clone()} />
                    } else {
                        <p class="answer verdict" data-tone="mind">{ say("answer-none") }</p>
                    }
                    <Searching held={state.held.clone()} onbetter={acts.better.clone()} waits={over.is_some()} />
                </div>
                <form class="fields" novalidate=true aria-label={say("fields-title")} onkeydown={acts.next_on_enter.clone()}
                    onsubmit={|event: SubmitEvent| event.prevent_default()}>
                    { at_large }
                    if *painted { { state.held.fields(tools) } }
                </form>
            </div>
            <div class="card-below">
                <Actions title={title.clone()} text={acts.text.clone()} can_undo={state.can_undo()} onundo={acts.undo.clone()}
                    ondemo={acts.demo.clone()} onsaw={acts.saw.clone()} onhold={acts.hold.clone()} />
                <Settled part={Part::Below} ..settled />
            </div>
            { for over.as_ref().map(|page| {
                let onclose = {
                    let over = over.clone();
                    Callback::from(move |()| over.set(None))
                };
                let more = match page {
                    Page::Saw => state.held.more(edits.tools(state.held.clone()), show, true),
                    _ => Html::default(),
                };
                let shown = Shown { title: &title, reply: reply.as_deref().cloned().unwrap_or_default(), more, show };
                page_over(page, slug, shown, &props.host, onclose)
            }) }
        </section>
    }
}
