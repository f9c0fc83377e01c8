//! What may come a frame after the answer: the picture, and all that stands below the fields. So a key is answered as
//! soon as the figures can be painted, also on a slow phone.

use super::card_screen::Host;
use super::card_state::{CardState, Held};
use super::cautions::cautions;
use super::fields::FieldTools;
use super::giving_back::GivingBack;
use super::handing_over::HandingOver;
use super::job_bar::JobBar;
use super::reply::group;
use super::working::WorkingFold;
use crate::browser::{AfterPaint, Lull};
use crate::settings::Settings;
use crate::show::Show;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// A card as it is when it is asked for, which may be later than when it was drawn.
pub type Now = Rc<RefCell<Rc<dyn Held>>>;

/// What is out of sight while fields are typed into waits for so long a rest.
const REST_MS: i32 = 200;

/// Which part of a card.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The picture.
    Picture,
    /// What stands below the fields: the figures that do not stand large, cautions and working.
    Below,
}

#[derive(Clone, Properties)]
pub struct SettledProps {
    /// The card as it is.
    pub held: Rc<dyn Held>,
    /// How values look.
    pub show: Show,
    /// Which part of it.
    pub part: Part,
    /// For what can be done below the fields.
    pub edits: Edits,
    /// What is done there is done with the card as it is then.
    pub now: Now,
    /// The app around the card.
    pub host: Host,
}

/// How the inputs are edited from below the fields.
#[derive(Clone)]
pub struct Edits {
    /// Which card.
    pub slug: &'static str,
    /// Where an edit goes.
    pub dispatcher: UseReducerDispatcher<CardState>,
    /// The settings in use.
    pub settings: Rc<Settings>,
}

impl Edits {
    /// The tools for a card as it is.
    pub fn tools(&self, held: Rc<dyn Held>) -> FieldTools {
        FieldTools::without_fields(self.slug, held, self.dispatcher.clone(), self.settings.clone())
    }
}

/// The same card under the same settings looks the same.
impl PartialEq for SettledProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.held, &other.held) && self.show == other.show
    }
}

/// A part of a card, as it was when the last frame had been painted and typing rested.
pub struct Settled {
    shown: Option<SettledProps>,
    painted: Option<AfterPaint>,
    rested: Lull,
}

impl Settled {
    fn wait(&mut self, ctx: &Context<Self>) {
        if ctx.props().part == Part::Below {
            return self.rested.wait(REST_MS);
        }
        // What is drawn after the next frame is drawn as it is by then.
        if self.painted.is_none() {
            let link = ctx.link().clone();
            self.painted = Some(AfterPaint::then(0, move || link.send_message(())));
        }
    }
}

impl Component for Settled {
    type Message = ();
    type Properties = SettledProps;

    fn create(ctx: &Context<Self>) -> Self {
        // The picture stands above the figures: coming later it would push them down.
        let at_once = ctx.props().part == Part::Picture;
        let link = ctx.link().clone();
        let rested = Lull::new(move || link.send_message(()));
        let mut settled = Self { shown: at_once.then(|| ctx.props().clone()), painted: None, rested };
        if !at_once {
            settled.wait(ctx);
        }
        settled
    }

    /// Nothing is drawn yet: the figures come first.
    fn changed(&mut self, ctx: &Context<Self>, _: &SettledProps) -> bool {
        // An answer that is still to be worked out looks as before.
        if !ctx.props().held.is_pending() {
            self.wait(ctx);
        }
        false
    }

    fn update(&mut self, ctx: &Context<Self>, (): ()) -> bool {
        self.painted = None;
        self.shown = Some(ctx.props().clone());
        true
    }

    fn view(&self, _: &Context<Self>) -> Html {
        let Some(shown) = &self.shown else { return Html::default() };
        match shown.part {
            Part::Picture => shown.held.picture(shown.show).unwrap_or_default(),
            Part::Below => below(shown),
        }
    }
}

/// In one piece, so that nothing moves down a moment after it came.
fn below(SettledProps { held, show, edits, now, host, .. }: &SettledProps) -> Html {
    let (show, slug) = (*show, edits.slug);
    let stale = !held.problems().is_empty();
    let (working, minded) = held.reasons().unzip();
    let minded = minded.map(cautions).unwrap_or_default();
    let (above, beneath) = if held.cautions_first() { (minded, Html::default()) } else { (Html::default(), minded) };
    html! {
        <>
            <GivingBack {slug} held={held.clone()} now={now.clone()} host={host.clone()} />
            if slug == scantling::job::CARD {
                <JobBar held={held.clone()} now={now.clone()} host={host.clone()} />
            }
            <HandingOver held={held.clone()} now={now.clone()} host={host.clone()} />
            { above }
            { held.more(edits.tools(held.clone()), show, false) }
            <div class="groups" data-stale={stale.to_string()}>
                { for held.reply(show).iter().flat_map(|reply| &reply.groups).map(group) }
            </div>
            { beneath }
            if let Some(working) = working {
                <WorkingFold working={working.clone()} {show} />
            }
        </>
    }
}
