//! What a card's file writes its fields with: one call a field, the id being also the key of the label.

mod acts;

use super::card_state::{CardState, Change, Held};
use super::choice::Choice;
use super::text_field::{Note, Takes, TextField};
use crate::cards::CardView;
use crate::settings::{Settings, System, retype, step};
use crate::show::{Show, plain};
use crate::words::{say, say_with};
use scantling::measure::{AngleReading, Figure, Range, Reading, Unit};
use scantling::problem::Problem;
use std::any::Any;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// What every field is made with, whatever card it is on.
pub struct FieldTools {
    slug: &'static str,
    held: Rc<dyn Held>,
    dispatcher: UseReducerDispatcher<CardState>,
    settings: Rc<Settings>,
    stale: bool,
    pad: bool,
    ontape: Callback<(AttrValue, Callback<String>)>,
}

/// Reaches one input of some card, and does something to it.
type Reach<T> = Rc<dyn Fn(&mut dyn Any, &mut dyn FnMut(&mut T))>;

/// Does to the inputs of some card what is asked for.
type Edit<T> = Rc<dyn Fn(&mut dyn Any, &Settings, T)>;

impl FieldTools {
    /// The tools for a card as it is.
    /// `ontape` opens the tape for a field, given its label and what to do with the value.
    pub fn new(
        slug: &'static str,
        state: &UseReducerHandle<CardState>,
        pad: bool,
        ontape: Callback<(AttrValue, Callback<String>)>,
    ) -> Self {
        Self {
            slug,
            held: state.held.clone(),
            dispatcher: state.dispatcher(),
            settings: state.settings().clone(),
            stale: state.is_stale(),
            pad,
            ontape,
        }
    }

    /// The tools for what edits the inputs without a field.
    pub fn without_fields(
        slug: &'static str,
        held: Rc<dyn Held>,
        dispatcher: UseReducerDispatcher<CardState>,
        settings: Rc<Settings>,
    ) -> Self {
        let stale = !held.problems().is_empty();
        Self { slug, held, dispatcher, settings, stale, pad: false, ontape: Callback::noop() }
    }

    /// A callback that edits the inputs. It holds nothing that ages: what it needs of the settings it is handed when it
    /// is called. So a field whose looks are the same need not be drawn again for the sake of its callbacks.
    fn edit<T: 'static>(
        &self,
        field: &'static str,
        apply: impl Fn(&mut dyn Any, &Settings, T) + 'static,
    ) -> Callback<T> {
        self.edit_by(field, Rc::new(apply))
    }

    /// The same, compiled once for all that is handed over in one way.
    fn edit_by<T: 'static>(&self, field: &'static str, apply: Edit<T>) -> Callback<T> {
        let dispatcher = self.dispatcher.clone();
        Callback::from(move |value: T| {
            let apply = apply.clone();
            dispatcher.dispatch(Change::Edit(field, Box::new(move |inputs, settings| apply(inputs, settings, value))));
        })
    }

    /// The name of an input from the id of its field: `back-panel-left-depth` is `left_depth`.
    fn input_name(&self, id: &str) -> String {
        id.strip_prefix(self.slug).unwrap_or(id).trim_start_matches('-').replace('-', "_")
    }

    /// The problem of a field: `back-panel-left-depth` is named `left.depth` by the card.
    fn find_problem(&self, id: &str) -> Option<&Problem> {
        let wanted = self.input_name(id);
        self.held.problems().iter().find(|(name, _)| name.replace('.', "_") == wanted).map(|(_, problem)| problem)
    }

    fn problem(&self, id: &str) -> Option<Note> {
        let problem = self.find_problem(id)?;
        let at = match problem {
            Problem::Read(error) => Some(error.at()),
            _ => None,
        };
        Some(Note::Problem(problem.to_string().into(), at))
    }

    fn reading(
        &self,
        id: &'static str,
        takes: Takes,
        reading: &Reading,
        standing: Option<&Reading>,
        reach: Reach<Reading>,
    ) -> Html {
        let blank = reading.is_blank();
        let note = match self.problem(id) {
            Some(note) => note,
            None if blank => Note::None,
            None => self.echo(reading),
        };
        let unit = match () {
            () if blank && standing.is_some() => "",
            () if blank => self.settings.system.unit().sign(),
            () if has_unit(reading.typed()) => "",
            () => reading.bare().sign(),
        };
        let ontype = {
            let reach = reach.clone();
            self.edit(id, move |inputs, settings, typed: String| {
                reach(inputs, &mut |slot| *slot = retype(slot, typed.clone(), settings.system));
            })
        };
        // A blank field steps on from what stands in for it. That is on the screen, so the field is drawn anew with it.
        let stood = standing.cloned();
        let onstep = self.edit(id, move |inputs, settings, marks: i64| {
            reach(inputs, &mut |slot| {
                let from = stood.as_ref().filter(|_| slot.is_blank()).unwrap_or(&*slot);
                if let Some(next) = step(from, marks, settings) {
                    *slot = next;
                }
            });
        });
        let standing = standing.map(|reading| AttrValue::from(written_out(reading)));
        let ontape = {
            let (ontape, ontype) = (self.ontape.clone(), ontype.clone());
            Callback::from(move |()| ontape.emit((say(id), ontype.clone())))
        };
        html! {
            <TextField {id} label={say(id)} typed={reading.typed().to_owned()} {unit} {takes} {note} {ontype}
                onstep={Some(onstep)} ontape={Some(ontape)} {standing} pad={self.pad} />
        }
    }

    fn plain(&self, id: &'static str, unit: &'static str, typed: String, ontype: Callback<String>) -> Html {
        let note = self.problem(id).unwrap_or(Note::None);
        let written = typed.contains(|letter: char| letter.is_alphabetic() || "°%".contains(letter));
        let unit = if written { "" } else { unit };
        html! {
            <TextField {id} label={say(id)} {typed} {unit} takes={Takes::Figure} {note} {ontype} pad={self.pad} />
        }
    }

    fn figure(&self, id: &'static str, unit: &'static str, figure: &Figure, reach: Reach<Figure>) -> Html {
        self.plain(id, unit, figure.typed().to_owned(), self.edit_figure(id, reach))
    }

    fn edit_figure(&self, id: &'static str, reach: Reach<Figure>) -> Callback<String> {
        self.edit(id, move |inputs, _, typed: String| {
            reach(inputs, &mut |slot| *slot = Figure::new(typed.clone()));
        })
    }

    fn choice(&self, id: &'static str, options: Vec<AttrValue>, chosen: usize, choose: Edit<usize>) -> Html {
        let onchoose = self.edit_by(id, choose);
        let problem = self.find_problem(id).map(|problem| AttrValue::from(problem.to_string()));
        html! { <Choice {id} label={say(id)} {options} {chosen} {onchoose} {problem} /> }
    }

    fn lines(&self, id: &'static str, readings: &[Reading], refused: &[String], reach: Reach<Vec<Reading>>) -> Html {
        let text = readings.iter().map(Reading::typed).collect::<Vec<_>>().join("\n");
        let onedit = self.edit(id, move |inputs, settings, typed: String| {
            reach(inputs, &mut |slot| {
                let old = std::mem::take(slot);
                let system = settings.system;
                let blank = Reading::new("", system.unit());
                *slot = typed
                    .split('\n')
                    .enumerate()
                    .map(|(row, line)| retype(old.get(row).unwrap_or(&blank), line.to_owned(), system))
                    .collect();
            });
        });
        let oninput = Callback::from(move |event: InputEvent| {
            if let Some(area) = event.target_dyn_into::<web_sys::HtmlTextAreaElement>() {
                onedit.emit(area.value());
            }
        });
        let name = self.input_name(id);
        let problems: Vec<String> = self
            .held
            .problems()
            .iter()
            .filter(|(field, _)| field.starts_with(&name))
            .map(|(_, problem)| problem.to_string())
            .chain(refused.iter().filter(|_| !self.stale).cloned())
            .collect();
        let note_id = format!("{id}-note");
        let rows = readings.len().clamp(2, 8).to_string();
        html! {
            <div class="text-field lines">
                <label for={id}>{ say(id) }</label>
                <textarea {id} {rows} value={text} spellcheck="false" autocapitalize="off" data-takes="lines"
                    aria-invalid={(!problems.is_empty()).to_string()} aria-describedby={note_id.clone()} {oninput} />
                <div class="note" id={note_id}>
                    { for problems.iter().map(|problem| html! { <p class="problem">{ problem }</p> }) }
                </div>
            </div>
        }
    }

    /// The reading in the other system, so that both are always in sight.
    fn echo(&self, reading: &Reading) -> Note {
        let Ok(range) = reading.range() else { return Note::None };
        let other = match self.settings.system {
            System::Metric => System::Imperial,
            System::Imperial => System::Metric,
        };
        // A number typed in the other system is echoed in the one in use.
        let metric = !matches!(reading.bare(), Unit::In | Unit::Ft);
        let system = if metric == (self.settings.system == System::Metric) { other } else { self.settings.system };
        let show = Show::of(&self.settings.in_system(system));
        Note::Says(echo(range, show))
    }
}

/// A reading in a system that it was not typed in, and whether that is so exactly.
pub fn echo(range: Range, show: Show) -> AttrValue {
    let shown = show.length(range.nominal());
    let exact = shown.cost == Some(say("exact"));
    let value = plain(&shown.main);
    if range.is_exact() {
        say_with(if exact { "field-echo" } else { "field-echo-near" }, [("value", value.into())])
    } else {
        let by = plain(&show.fine_mm(range.tolerance().as_mm()).main);
        let key = if exact { "field-echo-range" } else { "field-echo-range-near" };
        say_with(key, [("value", value.into()), ("by", by.into())])
    }
}

/// The fields of one card, as they are now. A lens `fn(&mut Inputs) -> &mut T` says which input a field is for.
pub struct Fields<C: CardView> {
    tools: FieldTools,
    /// Lenses want a mutable borrow also to read.
    inputs: RefCell<C::Inputs>,
    read: C::Inputs,
    answered: Option<Rc<(C::Inputs, C::Answer)>>,
}

fn reach<C: CardView, T: 'static>(lens: fn(&mut C::Inputs) -> &mut T) -> Reach<T> {
    Rc::new(move |inputs, act| {
        if let Some(inputs) = inputs.downcast_mut::<C::Inputs>() {
            act(lens(inputs));
        }
    })
}

impl<C: CardView> Fields<C> {
    /// The fields for inputs as they are.
    pub fn new(tools: FieldTools, inputs: &C::Inputs, answered: Option<Rc<(C::Inputs, C::Answer)>>) -> Self {
        Self { tools, inputs: RefCell::new(inputs.clone()), read: inputs.clone(), answered }
    }

    /// The inputs as they are.
    pub fn inputs(&self) -> &C::Inputs {
        &self.read
    }

    /// The last good answer.
    pub fn answer(&self) -> Option<&C::Answer> {
        self.answered.as_deref().map(|(_, answer)| answer)
    }

    /// The same with the inputs that it was asked for, to be shared.
    pub fn answered(&self) -> Option<Rc<(C::Inputs, C::Answer)>> {
        self.answered.clone()
    }

    /// The settings in use.
    pub fn settings(&self) -> &Settings {
        &self.tools.settings
    }

    fn now<T: Clone>(&self, lens: fn(&mut C::Inputs) -> &mut T) -> T {
        lens(&mut self.inputs.borrow_mut()).clone()
    }

    /// A length.
    pub fn length(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Reading) -> Html {
        self.tools.reading(id, Takes::Length, &self.now(lens), None, reach::<C, _>(lens))
    }

    /// A length that may carry a `±`.
    pub fn range(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Reading) -> Html {
        self.tools.reading(id, Takes::Range, &self.now(lens), None, reach::<C, _>(lens))
    }

    /// A length for which the settings stand in while it is blank.
    pub fn length_from_shop(
        &self,
        id: &'static str,
        lens: fn(&mut C::Inputs) -> &mut Reading,
        standing: &Reading,
    ) -> Html {
        self.tools.reading(id, Takes::Length, &self.now(lens), Some(standing), reach::<C, _>(lens))
    }

    /// Any other figure, with the unit a bare number takes.
    pub fn figure(&self, id: &'static str, unit: &'static str, lens: fn(&mut C::Inputs) -> &mut Figure) -> Html {
        self.tools.figure(id, unit, &self.now(lens), reach::<C, _>(lens))
    }

    /// An angle.
    pub fn angle(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut AngleReading) -> Html {
        let reach = reach::<C, _>(lens);
        let ontype = self.tools.edit(id, move |inputs, _, typed: String| {
            reach(inputs, &mut |slot| *slot = AngleReading::new(typed.clone()));
        });
        self.tools.plain(id, "°", self.now(lens).typed().to_owned(), ontype)
    }

    /// One of a few.
    pub fn choice<T: Copy + PartialEq + 'static>(
        &self,
        id: &'static str,
        lens: fn(&mut C::Inputs) -> &mut T,
        options: Vec<(T, AttrValue)>,
    ) -> Html {
        let now = self.now(lens);
        let chosen = options.iter().position(|(value, _)| *value == now).unwrap_or(0);
        let words = options.iter().map(|(_, words)| words.clone()).collect();
        let choose = move |inputs: &mut dyn Any, _: &Settings, index: usize| {
            if let (Some(inputs), Some((value, _))) = (inputs.downcast_mut::<C::Inputs>(), options.get(index)) {
                *lens(inputs) = *value;
            }
        };
        self.tools.choice(id, words, chosen, Rc::new(choose))
    }

    /// Several readings, one a line; `refused` says what is wrong with single lines of an answer that stands without them.
    pub fn lines(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Vec<Reading>, refused: &[String]) -> Html {
        self.tools.lines(id, &self.now(lens), refused, reach::<C, _>(lens))
    }

    /// Fields that belong together under a heading.
    pub fn group(&self, title: AttrValue, fields: Html) -> Html {
        html! { <fieldset class="field-group"><legend>{ title }</legend>{ fields }</fieldset> }
    }
}

/// Whether a text carries a unit of its own.
fn has_unit(typed: &str) -> bool {
    typed.contains(|letter: char| letter.is_alphabetic() || "\"'″′".contains(letter))
}

/// A reading with its unit written out, for what stands in while a field is blank.
fn written_out(reading: &Reading) -> String {
    if has_unit(reading.typed()) {
        reading.typed().to_owned()
    } else {
        format!("{} {}", reading.typed(), reading.bare().sign())
    }
}
