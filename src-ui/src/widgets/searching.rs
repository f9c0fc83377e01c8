//! Goes on looking for a better answer while a card is open: in slices so short that no key and no finger waits, with
//! its progress in sight, to be stopped at any time.

use super::card_state::{Held, Seeks};
use crate::browser::{AfterPaint, Lull, now_ms};
use crate::cards::CardView;
use crate::words::{say, say_with};
use std::rc::Rc;
use yew::prelude::*;

/// How far a search is.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sought {
    /// From nought to one.
    pub share: f64,
    /// Whether it is at its end.
    pub done: bool,
    /// Whether something better may have been found since it was last asked for.
    pub news: bool,
}

/// A card's own search.
pub trait Seeker<C: CardView> {
    /// At most so many tries.
    fn step(&mut self, tries: u32);
    /// How far it is.
    fn sought(&self) -> Sought;
    /// A better answer than this one, put into the inputs too, so that it is kept with them.
    fn better(&mut self, inputs: &mut C::Inputs, prepared: &mut C::Inputs, answer: &C::Answer) -> Option<C::Answer>;
}

/// The same, whatever card it is.
pub trait Seek {
    /// At most so many tries.
    fn step(&mut self, tries: u32);
    /// How far it is.
    fn sought(&self) -> Sought;
    /// The card with a better answer than before.
    fn better(&mut self) -> Option<Rc<dyn Held>>;
}

/// A slice ends after so long, of the 16 ms from frame to frame.
const SLICE_MS: f64 = 5.0;
/// So many tries between two looks at the clock.
const TRIES: u32 = 8;
/// Typing has to rest for so long first.
const REST_MS: i32 = 400;
/// A better answer comes at most so often, and the bar moves so often.
const NEWS_MS: f64 = 1000.0;
const SHOW_MS: f64 = 500.0;
/// What takes longer than this from one slice to the next has cost a frame.
const FRAME_MS: f64 = 25.0;
/// Where a better answer takes long to be worked out and drawn, or the bar to be moved, so many times as long passes
/// before the next, so that hardly one frame of a hundred is a long one.
const NEWS_SHARE: f64 = 150.0;
const SHOW_SHARE: f64 = 100.0;

#[derive(Clone, Properties)]
pub struct SearchingProps {
    /// The card as it is.
    pub held: Rc<dyn Held>,
    /// For the first of these the second was found.
    pub onbetter: Callback<(Rc<dyn Held>, Rc<dyn Held>)>,
    /// Something lies over the card that must not change under the eyes.
    pub waits: bool,
}

impl PartialEq for SearchingProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.held, &other.held) && self.waits == other.waits
    }
}

pub enum Message {
    /// Time for a slice.
    Slice,
    /// Stop was pressed, or go on.
    Stop(bool),
}

pub struct Searching {
    /// The card that is searched for: as given, or as found since.
    held: Rc<dyn Held>,
    seek: Option<Box<dyn Seek>>,
    stopped: bool,
    /// Whether it searched since the card was opened: then its button stays, so that the focus is not lost with it.
    begun: bool,
    shown: Sought,
    shown_at: f64,
    /// How long to wait before the bar moves again, and whether the next slice is the first after it has.
    show_again: f64,
    just_shown: bool,
    /// A better answer that is worked out and waits for a slice in which it is drawn.
    found: Option<Rc<dyn Held>>,
    told_at: f64,
    /// How long it took the last time from then until the next slice, once it was drawn.
    telling: f64,
    /// Whether the next slice is the first after that.
    just_told: bool,
    waiting: Option<AfterPaint>,
    rested: Lull,
}

impl Searching {
    fn is_wanted(&self, ctx: &Context<Self>) -> bool {
        let on = self.held.seeks() == Some(Seeks::On) && self.held.problems().is_empty() && !self.held.is_pending();
        let ended = self.seek.is_some() && self.shown.done;
        on && !self.stopped && !ended && !ctx.props().waits
    }

    /// Whether there is something to look for, be it stopped or not.
    fn searches(&self) -> bool {
        self.held.seeks() == Some(Seeks::On) && !(self.seek.is_some() && self.shown.done)
    }

    /// Goes on once the next frame has been painted.
    fn go_on(&mut self, ctx: &Context<Self>) {
        self.rested.forget();
        self.waiting = self.is_wanted(ctx).then(|| {
            let link = ctx.link().clone();
            AfterPaint::then(0, move || link.send_message(Message::Slice))
        });
    }

    /// Goes on once typing rests.
    fn rest(&mut self, ctx: &Context<Self>) {
        self.waiting = None;
        if self.is_wanted(ctx) {
            self.rested.wait(REST_MS);
        } else {
            self.rested.forget();
        }
    }

    /// Whether anything is to be drawn.
    fn slice(&mut self, ctx: &Context<Self>) -> bool {
        let Some(seek) = &mut self.seek else {
            // The first layout of a search takes a slice by itself.
            self.seek = self.held.seek();
            self.begun = true;
            // What was found so far has only just been drawn.
            self.told_at = now_ms();
            self.shown_at = self.told_at;
            self.shown =
                self.seek.as_ref().map_or(Sought { share: 1.0, done: true, news: false }, |seek| seek.sought());
            return true;
        };
        let begun = now_ms();
        if let Some(better) = self.found.take() {
            let before = std::mem::replace(&mut self.held, better.clone());
            ctx.props().onbetter.emit((before, better));
            self.shown = seek.sought();
            return true;
        }
        if std::mem::take(&mut self.just_told) {
            self.telling = begun - self.told_at;
        }
        if std::mem::take(&mut self.just_shown) {
            let took = begun - self.shown_at;
            self.show_again = if took > FRAME_MS { SHOW_SHARE * took } else { SHOW_MS };
        }
        let sought = seek.sought();
        let pause = NEWS_MS.max(NEWS_SHARE * self.telling);
        if sought.news && (sought.done || begun - self.told_at > pause) {
            self.told_at = begun;
            self.just_told = true;
            // Worked out in this slice, drawn in the next.
            self.found = seek.better();
            return false;
        }
        // The last news is told in a slice of its own, and the bar moves in one.
        let ends = sought.done && !sought.news;
        if ends || begun - self.shown_at > self.show_again {
            self.shown_at = begun;
            self.just_shown = true;
            self.shown = Sought { done: ends, ..sought };
            return true;
        }
        while now_ms() - begun < SLICE_MS && !seek.sought().done {
            seek.step(TRIES);
        }
        false
    }
}

impl Component for Searching {
    type Message = Message;
    type Properties = SearchingProps;

    fn create(ctx: &Context<Self>) -> Self {
        let link = ctx.link().clone();
        let mut searching = Self {
            held: ctx.props().held.clone(),
            seek: None,
            stopped: false,
            begun: false,
            shown: Sought::default(),
            shown_at: 0.0,
            show_again: SHOW_MS,
            just_shown: false,
            found: None,
            told_at: 0.0,
            telling: 0.0,
            just_told: false,
            waiting: None,
            rested: Lull::new(move || link.send_message(Message::Slice)),
        };
        searching.rest(ctx);
        searching
    }

    fn changed(&mut self, ctx: &Context<Self>, before: &SearchingProps) -> bool {
        if !Rc::ptr_eq(&self.held, &ctx.props().held) {
            let searched = self.searches() && !self.stopped;
            self.held = ctx.props().held.clone();
            self.seek = None;
            self.found = None;
            // Another job is looked at by itself.
            self.stopped &= Rc::ptr_eq(&before.held, &ctx.props().held);
            (self.told_at, self.telling) = (0.0, 0.0);
            (self.just_told, self.just_shown) = (false, false);
            self.rest(ctx);
            // As long as the answer before stands, so does what was said of the search for it: keys stay light.
            if searched && self.held.is_pending() {
                return false;
            }
            self.shown = Sought::default();
        } else if before.waits != ctx.props().waits || (self.waiting.is_none() && !self.rested.waits()) {
            self.go_on(ctx);
        }
        true
    }

    fn update(&mut self, ctx: &Context<Self>, message: Message) -> bool {
        let draw = match message {
            Message::Slice => self.slice(ctx),
            Message::Stop(stop) => {
                // At the end there is nothing to stop.
                self.stopped = stop && self.searches();
                true
            }
        };
        self.go_on(ctx);
        draw
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        let Some(seeks) = self.held.seeks() else { return Html::default() };
        let searches = self.searches();
        let share = if searches { self.shown.share } else { 1.0 };
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from nought to a hundred")]
        let per_cent = (share.clamp(0.0, 1.0) * 100.0) as u32;
        let words = match (seeks, searches) {
            (Seeks::Held, _) => say("search-held"),
            (_, false) => say("search-done"),
            (_, true) if self.stopped => say_with("search-stopped", [("percent", per_cent.into())]),
            (_, true) => say_with("search-on", [("percent", per_cent.into())]),
        };
        let press = |stop: bool| ctx.link().callback(move |_: MouseEvent| Message::Stop(stop));
        html! {
            <div class="searching" data-searches={(searches && !self.stopped).to_string()}>
                <label class="searching-words">
                    <span>{ words }</span>
                    if seeks != Seeks::Held {
                        <progress max="100" value={per_cent.to_string()} />
                    }
                </label>
                if searches || self.begun {
                    <button type="button" data-action={if self.stopped { "go-on" } else { "stop" }}
                        aria-disabled={(!searches).to_string()} onclick={press(!self.stopped)}>
                        { say(if self.stopped { "search-go-on" } else { "search-stop" }) }
                    </button>
                }
            </div>
        }
    }
}
