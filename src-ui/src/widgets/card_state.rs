//! The state of a card on the screen. No browser in here, so it is tested on the host.
//!
//! A card's own types are met only in [`Held`]; everything above it is one piece of code for all cards, which keeps the
//! page small.

use super::fields::{FieldTools, Fields};
use super::reply::Reply;
use super::searching::{Seek, Seeker, Sought};
use crate::cards::CardView;
use crate::settings::Settings;
use crate::show::Show;
use scantling::as_text;
use scantling::caution::Caution;
use scantling::problem::Problems;
use scantling::working::Working;
use std::any::Any;
use std::rc::Rc;
use yew::prelude::*;

/// As far back as undo goes.
const UNDO_DEPTH: usize = 50;

/// The name under which putting back to the demo stands in the history.
const DEMO: &str = "demo";

/// An edit of some card's inputs. The settings are handed in, so that a callback made under older ones does right.
pub type Apply = Box<dyn FnOnce(&mut dyn Any, &Settings)>;

/// A card's inputs with their answer, whatever card it is. Never changed: an edit makes another one.
pub trait Held {
    /// The same after an edit; nothing when the edit changed nothing. An answer that takes long may wait for the next.
    fn edited(&self, apply: Apply, settings: &Settings, waits: bool) -> Option<Rc<dyn Held>>;
    /// The same inputs under other settings.
    fn solved(&self, settings: &Settings) -> Rc<dyn Held>;
    /// The demo, with the last good answer still at hand.
    fn demo(&self, settings: &Settings) -> Rc<dyn Held>;
    /// Whether the answer is still that of earlier inputs, and to be worked out once typing rests.
    fn is_pending(&self) -> bool;
    /// What is wrong with the inputs as they are; empty when the answer is theirs.
    fn problems(&self) -> &Problems;
    /// The last good answer itself, by which it is known again.
    fn answer(&self) -> Option<Rc<dyn Any>>;
    /// The last good answer in lines; nothing when there never was one.
    fn reply(&self, show: Show) -> Option<Reply>;
    /// Its picture.
    fn picture(&self, show: Show) -> Option<Html>;
    /// What it is for, in a few words.
    fn given(&self, show: Show) -> Option<AttrValue>;
    /// How it came about, and what to mind.
    fn reasons(&self) -> Option<(&Working, &[Caution])>;
    /// Whether what to mind stands above the figures.
    fn cautions_first(&self) -> bool;
    /// The fields.
    fn fields(&self, tools: FieldTools) -> Html;
    /// What stands between the actions and the figures, such as large pictures; `at_saw` for what stands at the saw.
    fn more(&self, tools: FieldTools, show: Show, at_saw: bool) -> Html;
    /// How looking for a better answer stands; nothing for cards whose answer is the only one.
    fn seeks(&self) -> Option<Seeks>;
    /// What looks for a better answer; nothing when there is none to be found, or none is wanted.
    fn seek(&self) -> Option<Box<dyn Seek>>;
    /// Whether other cards can be opened with this one's measurements, as they are now.
    fn can_hand_over(&self) -> bool;
    /// Those cards, and the inputs that each takes over.
    fn hands_over(&self) -> Vec<(&'static str, serde_json::Value)>;
    /// The inputs, as text to keep.
    fn text(&self) -> Option<String>;
    /// Whether it stands in for inputs that were kept and cannot be read.
    fn stands_in(&self) -> bool;
}

/// How looking for a better answer stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seeks {
    /// There may be one.
    On,
    /// There is none.
    Done,
    /// The answer is in use and has to stay.
    Held,
}

/// [`Held`] for one card.
struct Of<C: CardView> {
    /// As the maker left them; blank where the settings stand in.
    inputs: C::Inputs,
    /// The last good answer, and the inputs with the settings filled in that it was asked for.
    answered: Option<Rc<(C::Inputs, C::Answer)>>,
    problems: Problems,
    /// Whether the answer is still to be worked out.
    pending: bool,
    /// Whether these are in the place of others that cannot be read.
    stands_in: bool,
}

impl<C: CardView> Of<C> {
    /// Solves. When the inputs cannot be used the last good answer stays.
    fn solve(inputs: C::Inputs, before: Option<Rc<(C::Inputs, C::Answer)>>, settings: &Settings) -> Self {
        let mut prepared = inputs.clone();
        C::prepare(&mut prepared, settings);
        let (answered, problems) = match C::solve(&prepared) {
            Ok(answer) => (Some(Rc::new((prepared, answer))), Problems::default()),
            Err(problems) => (before, problems),
        };
        Self { inputs, answered, problems, pending: false, stands_in: false }
    }
}

impl<C: CardView> Held for Of<C> {
    fn edited(&self, apply: Apply, settings: &Settings, waits: bool) -> Option<Rc<dyn Held>> {
        let mut inputs = self.inputs.clone();
        apply(&mut inputs, settings);
        if inputs == self.inputs {
            return None;
        }
        // Keys follow each other faster than a heavy answer: it waits for the last one.
        let heavy = self.answered.as_deref().is_some_and(|(_, before)| C::is_heavy(&inputs, before));
        Some(match &self.answered {
            Some(_) if heavy && waits => {
                let (answered, problems) = (self.answered.clone(), Problems::default());
                Rc::new(Self { inputs, answered, problems, pending: true, stands_in: false })
            }
            answered => Rc::new(Self::solve(inputs, answered.clone(), settings)),
        })
    }

    fn solved(&self, settings: &Settings) -> Rc<dyn Held> {
        Rc::new(Self::solve(self.inputs.clone(), self.answered.clone(), settings))
    }

    fn demo(&self, settings: &Settings) -> Rc<dyn Held> {
        Rc::new(Self::solve(C::demo(&self.inputs, settings), self.answered.clone(), settings))
    }

    fn is_pending(&self) -> bool {
        self.pending
    }

    fn problems(&self) -> &Problems {
        &self.problems
    }

    fn answer(&self) -> Option<Rc<dyn Any>> {
        self.answered.clone().map(|answered| answered as Rc<dyn Any>)
    }

    fn reply(&self, show: Show) -> Option<Reply> {
        let (inputs, answer) = self.answered.as_deref()?;
        Some(C::reply(inputs, answer, show))
    }

    fn picture(&self, show: Show) -> Option<Html> {
        let (inputs, answer) = self.answered.as_deref()?;
        Some(C::picture(inputs, answer, show))
    }

    fn given(&self, show: Show) -> Option<AttrValue> {
        let (inputs, answer) = self.answered.as_deref()?;
        Some(C::given(inputs, answer, show))
    }

    fn reasons(&self) -> Option<(&Working, &[Caution])> {
        let (_, answer) = self.answered.as_deref()?;
        Some((C::working(answer), C::cautions(answer)))
    }

    fn cautions_first(&self) -> bool {
        C::CAUTIONS_FIRST
    }

    fn fields(&self, tools: FieldTools) -> Html {
        C::fields(&Fields::new(tools, &self.inputs, self.answered.clone()))
    }

    fn more(&self, tools: FieldTools, show: Show, at_saw: bool) -> Html {
        C::more(&Fields::new(tools, &self.inputs, self.answered.clone()), show, at_saw)
    }

    fn seeks(&self) -> Option<Seeks> {
        let (_, answer) = self.answered.as_deref()?;
        C::seeks(&self.inputs, answer)
    }

    fn seek(&self) -> Option<Box<dyn Seek>> {
        let answered = self.answered.clone().filter(|_| self.problems.is_empty() && !self.pending)?;
        let seeker = C::seek(&self.inputs, &answered.1)?;
        Some(Box::new(SeekOf::<C> { seeker, inputs: self.inputs.clone(), answered }))
    }

    fn can_hand_over(&self) -> bool {
        C::HANDS_OVER && self.answered.is_some() && self.problems.is_empty() && !self.pending
    }

    fn hands_over(&self) -> Vec<(&'static str, serde_json::Value)> {
        let Some((inputs, answer)) = self.answered.as_deref() else { return Vec::new() };
        C::hands_over(inputs, answer)
    }

    fn text(&self) -> Option<String> {
        as_text::write(&self.inputs)
    }

    fn stands_in(&self) -> bool {
        self.stands_in
    }
}

/// [`Seek`] for one card.
struct SeekOf<C: CardView> {
    seeker: Box<dyn Seeker<C>>,
    inputs: C::Inputs,
    answered: Rc<(C::Inputs, C::Answer)>,
}

impl<C: CardView> Seek for SeekOf<C> {
    fn step(&mut self, tries: u32) {
        self.seeker.step(tries);
    }

    fn sought(&self) -> Sought {
        self.seeker.sought()
    }

    fn better(&mut self) -> Option<Rc<dyn Held>> {
        let mut prepared = self.answered.0.clone();
        let answer = self.seeker.better(&mut self.inputs, &mut prepared, &self.answered.1)?;
        self.answered = Rc::new((prepared, answer));
        let (inputs, answered) = (self.inputs.clone(), Some(self.answered.clone()));
        Some(Rc::new(Of::<C> { inputs, answered, problems: Problems::default(), pending: false, stands_in: false }))
    }
}

/// A card from its inputs as they were kept; its start where none are, or where they cannot be read.
pub fn open<C: CardView>(kept: Option<&str>, settings: &Settings) -> Rc<dyn Held> {
    let kept = kept.filter(|text| !text.is_empty());
    let read = kept.and_then(as_text::read);
    let stands_in = kept.is_some() && read.is_none();
    let inputs = read.unwrap_or_else(|| C::start(settings));
    Rc::new(Of::<C> { stands_in, ..Of::<C>::solve(inputs, None, settings) })
}

/// A card with its history.
pub struct CardState {
    /// The card as it is.
    pub held: Rc<dyn Held>,
    settings: Rc<Settings>,
    past: Vec<(&'static str, Rc<dyn Held>)>,
}

/// What can happen to a card.
pub enum Change {
    /// A field was edited. Edits of one field in a row are undone as one; one of no field stands by itself.
    Edit(&'static str, Apply),
    /// Back to before the last edit.
    Undo,
    /// Back to the demo.
    Demo,
    /// The settings changed.
    Settings(Rc<Settings>),
    /// Typing rests: the answer that waited for that is worked out.
    Rest,
    /// For the first of these the second was found. Undo knows nothing of it.
    Better(Rc<dyn Held>, Rc<dyn Held>),
}

impl CardState {
    /// A card that starts so.
    pub fn new(held: Rc<dyn Held>, settings: Rc<Settings>) -> Self {
        Self { held, settings, past: Vec::new() }
    }

    /// The same, with something that undo goes back to.
    pub fn after(mut self, before: Rc<dyn Held>) -> Self {
        self.past.push(("", before));
        self
    }

    /// Whether the answer shown is older than the inputs.
    pub fn is_stale(&self) -> bool {
        !self.held.problems().is_empty()
    }

    /// Whether there is something to undo.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// The settings the answer was worked out with.
    pub fn settings(&self) -> &Rc<Settings> {
        &self.settings
    }
}

impl Reducible for CardState {
    type Action = Change;

    fn reduce(self: Rc<Self>, change: Change) -> Rc<Self> {
        let mut past = self.past.clone();
        let mut settings = self.settings.clone();
        let held = match change {
            Change::Edit(field, apply) => {
                let Some(held) = self.held.edited(apply, &settings, !field.is_empty()) else { return self };
                if field.is_empty() || past.last().is_none_or(|(last, _)| *last != field) {
                    past.push((field, self.held.clone()));
                    let excess = past.len().saturating_sub(UNDO_DEPTH);
                    past.drain(..excess);
                }
                held
            }
            Change::Undo => match past.pop() {
                Some((_, before)) => before.solved(&settings),
                None => return self,
            },
            Change::Demo => {
                past.push((DEMO, self.held.clone()));
                self.held.demo(&settings)
            }
            Change::Better(of, better) => {
                // What was found for inputs that are gone by now is of no use.
                if !Rc::ptr_eq(&of, &self.held) {
                    return self;
                }
                better
            }
            Change::Rest => {
                if !self.held.is_pending() {
                    return self;
                }
                self.held.solved(&settings)
            }
            Change::Settings(next) => {
                if next == settings {
                    return self;
                }
                settings = next;
                self.held.solved(&settings)
            }
        };
        Rc::new(Self { held, settings, past })
    }
}

#[cfg(test)]
mod tests;
