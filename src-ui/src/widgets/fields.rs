//! What a card's file writes its fields with: one call a field, the id being also the key of the label.

use super::card_state::{CardState, Change};
use super::choice::Choice;
use super::text_field::{Note, Takes, TextField};
use crate::cards::CardView;
use crate::settings::{Settings, System, retype, step};
use crate::show::{Show, plain};
use crate::words::{say, say_with};
use scantling::measure::{AngleReading, Figure, Reading};
use scantling::problem::Problem;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// The fields of a card, as they are now. A lens `fn(&mut Inputs) -> &mut T` says which input a field is for.
pub struct Fields<C: CardView> {
    state: UseReducerHandle<CardState<C>>,
    /// Lenses want a mutable borrow also to read; this copy gives them one.
    inputs: RefCell<C::Inputs>,
    settings: Rc<Settings>,
    pad: bool,
}

/// The name of an input from the id of its field: `back-panel-left-depth` is `left_depth`.
fn field_name<C: CardView>(id: &str) -> String {
    id.strip_prefix(C::SLUG).unwrap_or(id).trim_start_matches('-').replace('-', "_")
}

impl<C: CardView> Fields<C> {
    /// The fields for a state.
    pub fn new(state: UseReducerHandle<CardState<C>>, settings: Rc<Settings>, pad: bool) -> Self {
        let inputs = RefCell::new(state.inputs.clone());
        Self { state, inputs, settings, pad }
    }

    /// The inputs as they are.
    pub fn inputs(&self) -> &C::Inputs {
        &self.state.inputs
    }

    /// The last good answer.
    pub fn answer(&self) -> Option<&C::Answer> {
        self.state.answered.as_deref().map(|(_, answer)| answer)
    }

    /// The settings in use.
    pub fn settings(&self) -> &Settings {
        &self.settings
    }

    /// A length.
    pub fn length(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Reading) -> Html {
        self.reading(id, Takes::Length, lens, None)
    }

    /// A length that may carry a `±`.
    pub fn range(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Reading) -> Html {
        self.reading(id, Takes::Range, lens, None)
    }

    /// A length for which the settings stand in while it is blank.
    pub fn length_from_shop(
        &self,
        id: &'static str,
        lens: fn(&mut C::Inputs) -> &mut Reading,
        standing: &Reading,
    ) -> Html {
        self.reading(id, Takes::Length, lens, Some(standing))
    }

    fn reading(
        &self,
        id: &'static str,
        takes: Takes,
        lens: fn(&mut C::Inputs) -> &mut Reading,
        standing: Option<&Reading>,
    ) -> Html {
        let reading = lens(&mut self.inputs.borrow_mut()).clone();
        let blank = reading.is_blank();
        let note = match self.problem(id) {
            Some(note) => note,
            None if blank => Note::None,
            None => self.echo(&reading),
        };
        let written = reading.typed().contains(|letter: char| letter.is_alphabetic() || "\"'″′".contains(letter));
        let unit = if written || (blank && standing.is_some()) { "" } else { unit_of(&reading, blank, &self.settings) };
        let ontype = self.edit(id, move |inputs, settings, typed: String| {
            let slot = lens(inputs);
            *slot = retype(slot, typed, settings.system);
        });
        let onstep = self.edit(id, move |inputs, settings, marks: i64| {
            // A blank field steps on from what stands in for it.
            if lens(inputs).is_blank() {
                C::prepare(inputs, settings);
            }
            let slot = lens(inputs);
            if let Some(next) = step(slot, marks, settings) {
                *slot = next;
            }
        });
        let standing = standing.map(|reading| AttrValue::from(written_out(reading)));
        html! {
            <TextField {id} label={say(id)} typed={reading.typed().to_owned()} {unit} {takes} {note} {ontype}
                onstep={Some(onstep)} {standing} pad={self.pad} />
        }
    }

    /// Any other figure, with the unit a bare number takes.
    pub fn figure(&self, id: &'static str, unit: &'static str, lens: fn(&mut C::Inputs) -> &mut Figure) -> Html {
        let typed = lens(&mut self.inputs.borrow_mut()).typed().to_owned();
        let ontype = self.edit(id, move |inputs, _, typed: String| *lens(inputs) = Figure::new(typed));
        self.plain_field(id, unit, typed, ontype)
    }

    /// An angle.
    pub fn angle(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut AngleReading) -> Html {
        let typed = lens(&mut self.inputs.borrow_mut()).typed().to_owned();
        let ontype = self.edit(id, move |inputs, _, typed: String| *lens(inputs) = AngleReading::new(typed));
        self.plain_field(id, "°", typed, ontype)
    }

    fn plain_field(&self, id: &'static str, unit: &'static str, typed: String, ontype: Callback<String>) -> Html {
        let note = self.problem(id).unwrap_or(Note::None);
        let unit = if typed.contains(|letter: char| letter.is_alphabetic() || "°%".contains(letter)) { "" } else { unit };
        html! {
            <TextField {id} label={say(id)} {typed} {unit} takes={Takes::Figure} {note} {ontype} pad={self.pad} />
        }
    }

    /// One of a few.
    pub fn choice<T: Copy + PartialEq + 'static>(
        &self,
        id: &'static str,
        lens: fn(&mut C::Inputs) -> &mut T,
        options: Vec<(T, AttrValue)>,
    ) -> Html {
        let now = *lens(&mut self.inputs.borrow_mut());
        let chosen = options.iter().position(|(value, _)| *value == now).unwrap_or(0);
        let (values, words): (Vec<T>, Vec<AttrValue>) = options.into_iter().unzip();
        let onchoose = self.edit(id, move |inputs, _, index: usize| {
            if let Some(value) = values.get(index) {
                *lens(inputs) = *value;
            }
        });
        let problem = self.find_problem(id).map(|problem| AttrValue::from(problem.to_string()));
        html! { <Choice {id} label={say(id)} options={words} {chosen} {onchoose} {problem} /> }
    }

    /// Several readings, one a line; `refused` says what is wrong with single lines of an answer that stands without them.
    pub fn lines(
        &self,
        id: &'static str,
        lens: fn(&mut C::Inputs) -> &mut Vec<Reading>,
        refused: &[String],
    ) -> Html {
        let readings = lens(&mut self.inputs.borrow_mut()).clone();
        let text = readings.iter().map(Reading::typed).collect::<Vec<_>>().join("\n");
        let onedit = self.edit(id, move |inputs, settings, typed: String| {
            let slot = lens(inputs);
            let old = std::mem::take(slot);
            let system = settings.system;
            let blank = Reading::new("", system.unit());
            *slot = typed
                .split('\n')
                .enumerate()
                .map(|(row, line)| retype(old.get(row).unwrap_or(&blank), line.to_owned(), system))
                .collect();
        });
        let oninput = Callback::from(move |event: InputEvent| {
            if let Some(area) = event.target_dyn_into::<web_sys::HtmlTextAreaElement>() {
                onedit.emit(area.value());
            }
        });
        let name = field_name::<C>(id);
        let problems: Vec<String> = self
            .state
            .problems
            .iter()
            .filter(|(field, _)| field.starts_with(&name))
            .map(|(_, problem)| problem.to_string())
            .chain(refused.iter().filter(|_| !self.state.is_stale()).cloned())
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

    /// Fields that belong together under a heading.
    pub fn group(&self, title: AttrValue, fields: Html) -> Html {
        html! { <fieldset class="field-group"><legend>{ title }</legend>{ fields }</fieldset> }
    }

    /// A button that edits the inputs, such as one that adds a row.
    pub fn button(&self, id: &'static str, apply: fn(&mut C::Inputs)) -> Html {
        let onclick = self.edit(id, move |inputs, _, _: MouseEvent| apply(inputs));
        html! { <button type="button" {id} class="quiet" {onclick}>{ say(id) }</button> }
    }

    /// A callback that edits the inputs. It holds nothing that ages: what it needs of the settings it is handed when it
    /// is called. So a field whose looks are the same need not be drawn again for the sake of its callbacks.
    fn edit<T: 'static>(
        &self,
        field: &'static str,
        apply: impl Fn(&mut C::Inputs, &Settings, T) + 'static,
    ) -> Callback<T> {
        let dispatcher = self.state.dispatcher();
        let apply = Rc::new(apply);
        Callback::from(move |value: T| {
            let apply = apply.clone();
            dispatcher.dispatch(Change::Edit(field, Box::new(move |inputs, settings| apply(inputs, settings, value))));
        })
    }

    /// The problem of a field: `back-panel-left-depth` is named `left.depth` by the card.
    fn find_problem(&self, id: &str) -> Option<&Problem> {
        let wanted = field_name::<C>(id);
        self.state.problems.iter().find(|(name, _)| name.replace('.', "_") == wanted).map(|(_, problem)| problem)
    }

    fn problem(&self, id: &str) -> Option<Note> {
        let problem = self.find_problem(id)?;
        let at = match problem {
            Problem::Read(error) => Some(error.at()),
            _ => None,
        };
        Some(Note::Problem(problem.to_string().into(), at))
    }

    /// The reading in the other system, so that both are always in sight.
    fn echo(&self, reading: &Reading) -> Note {
        let Ok(range) = reading.range() else { return Note::None };
        let other = match self.settings.system {
            System::Metric => System::Imperial,
            System::Imperial => System::Metric,
        };
        // A number typed in the other system is echoed in the one in use.
        let typed_in_other = !reading_is(reading, self.settings.system);
        let system = if typed_in_other { self.settings.system } else { other };
        let show = Show::of(&self.settings.in_system(system));
        let value = plain(&show.length(range.nominal()).main);
        let text = if range.tolerance().is_zero() {
            say_with("field-echo", [("value", value.into())])
        } else {
            let by = plain(&show.fine_mm(range.tolerance().as_mm()).main);
            say_with("field-echo-range", [("value", value.into()), ("by", by.into())])
        };
        Note::Says(text)
    }
}

fn reading_is(reading: &Reading, system: System) -> bool {
    let metric = !matches!(reading.bare(), scantling::measure::Unit::In | scantling::measure::Unit::Ft);
    metric == (system == System::Metric)
}

fn unit_of(reading: &Reading, blank: bool, settings: &Settings) -> &'static str {
    let unit = if blank { settings.system.unit() } else { reading.bare() };
    unit.sign()
}

/// A reading with its unit written out, for what stands in while a field is blank.
fn written_out(reading: &Reading) -> String {
    if reading.typed().contains(char::is_alphabetic) {
        reading.typed().to_owned()
    } else {
        format!("{} {}", reading.typed(), reading.bare().sign())
    }
}
