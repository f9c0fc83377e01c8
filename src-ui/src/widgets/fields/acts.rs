//! What edits a card's inputs otherwise than by typing: buttons, ticks, files.

use super::{Fields, Takes, reach};
use crate::cards::CardView;
use crate::settings::Settings;
use crate::widgets::file_field::{FileField, FileRead};
use crate::widgets::text_field::{Note, TextField};
use crate::words::say;
use scantling::measure::Figure;
use yew::prelude::*;

impl<C: CardView> Fields<C> {
    /// A callback that edits the inputs. Each edit is undone by itself.
    pub fn act<T: 'static>(&self, apply: impl Fn(&mut C::Inputs, &Settings, T) + 'static) -> Callback<T> {
        self.tools.edit("", move |inputs, settings, value| {
            if let Some(inputs) = inputs.downcast_mut::<C::Inputs>() {
                apply(inputs, settings, value);
            }
        })
    }

    /// A few words, such as a name.
    pub fn words(&self, id: &'static str, lens: fn(&mut C::Inputs) -> &mut Figure) -> Html {
        let ontype = self.tools.edit_figure(id, reach::<C, _>(lens));
        let note = self.tools.problem(id).unwrap_or(Note::None);
        let typed = self.now(lens).typed().to_owned();
        html! { <TextField {id} label={say(id)} {typed} takes={Takes::Words} {note} {ontype} /> }
    }

    /// A button that takes a file of text.
    pub fn file(
        &self,
        id: &'static str,
        accept: &'static str,
        apply: impl Fn(&mut C::Inputs, &Settings, FileRead) + 'static,
    ) -> Html {
        html! { <FileField {id} label={say(id)} {accept} onread={self.act(apply)} /> }
    }
}
