//! The state of a card on the screen. No browser in here, so it is tested on the host.

use crate::cards::CardView;
use crate::settings::Settings;
use crate::store::Kept;
use scantling::problem::Problems;
use std::rc::Rc;
use yew::prelude::*;

/// As far back as undo goes.
const UNDO_DEPTH: usize = 50;

/// Inputs, the last good answer, and what is wrong now.
pub struct CardState<C: CardView> {
    /// As the maker left them; blank where the settings stand in.
    pub inputs: C::Inputs,
    /// With the settings filled in: what the answer was asked for. Belongs to `answer`.
    pub answered: Option<Rc<(C::Inputs, C::Answer)>>,
    /// What is wrong with the inputs as they are; empty when the answer is theirs.
    pub problems: Problems,
    settings: Rc<Settings>,
    past: Vec<(&'static str, C::Inputs)>,
}

/// What can happen to a card.
pub enum Change<C: CardView> {
    /// A field was edited. Edits of one field in a row are undone as one. The settings are handed in, so that a
    /// callback made under older ones still does right.
    Edit(&'static str, Box<dyn FnOnce(&mut C::Inputs, &Settings)>),
    /// Back to before the last edit.
    Undo,
    /// Back to the demo.
    Demo,
    /// The settings changed.
    Settings(Rc<Settings>),
}

/// The name under which putting back to the demo stands in the history.
const DEMO: &str = "demo";

impl<C: CardView> CardState<C> {
    /// A card that starts from these inputs.
    pub fn new(inputs: C::Inputs, settings: Rc<Settings>) -> Self {
        Self { inputs, answered: None, problems: Problems::default(), settings, past: Vec::new() }.solved()
    }

    /// Solves again. When the inputs cannot be used the last good answer stays.
    fn solved(mut self) -> Self {
        let mut prepared = self.inputs.clone();
        C::prepare(&mut prepared, &self.settings);
        match C::solve(&prepared) {
            Ok(answer) => {
                self.answered = Some(Rc::new((prepared, answer)));
                self.problems = Problems::default();
            }
            Err(problems) => self.problems = problems,
        }
        self
    }

    fn copy(&self) -> Self {
        Self {
            inputs: self.inputs.clone(),
            answered: self.answered.clone(),
            problems: self.problems.clone(),
            settings: self.settings.clone(),
            past: self.past.clone(),
        }
    }

    /// Whether the answer shown is older than the inputs.
    pub fn is_stale(&self) -> bool {
        !self.problems.is_empty()
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

impl<C: CardView> Reducible for CardState<C> {
    type Action = Change<C>;

    fn reduce(self: Rc<Self>, change: Change<C>) -> Rc<Self> {
        let mut next = self.copy();
        match change {
            Change::Edit(field, apply) => {
                let before = next.inputs.clone();
                apply(&mut next.inputs, &next.settings);
                if next.inputs == before {
                    return self;
                }
                if next.past.last().is_none_or(|(last, _)| *last != field) {
                    next.past.push((field, before));
                    let excess = next.past.len().saturating_sub(UNDO_DEPTH);
                    next.past.drain(..excess);
                }
            }
            Change::Undo => match next.past.pop() {
                Some((_, before)) => next.inputs = before,
                None => return self,
            },
            Change::Demo => {
                next.past.push((DEMO, next.inputs));
                next.inputs = C::start(&next.settings);
            }
            Change::Settings(settings) => {
                if settings == next.settings {
                    return self;
                }
                next.settings = settings;
            }
        }
        Rc::new(next.solved())
    }
}

/// A card's inputs as they were kept; the start where none are, or where they cannot be read.
pub fn read_inputs<C: CardView>(kept: &Kept, settings: &Settings) -> C::Inputs {
    kept.get(&Kept::inputs_of(C::SLUG))
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_else(|| C::start(settings))
}
