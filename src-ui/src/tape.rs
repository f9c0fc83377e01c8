//! The tape: the last answers as lengths, to be put into any field. No browser in here, so it is tested on the host.

use crate::store::{Kept, StoreError};
use scantling::as_text;
use scantling::measure::Length;
use serde::{Deserialize, Serialize};
use yew::Callback;

/// As many answers as the tape holds.
const LONGEST: usize = 20;

const KEY: &str = "tape";

/// One answer on the tape.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Entry {
    /// The answer, unrounded.
    pub value: Length,
    /// The slug of the card it came from.
    pub card: String,
    /// The name of its line there.
    pub line: String,
    /// What the maker calls it; often nothing.
    #[serde(default)]
    pub name: String,
}

/// The last answers, the newest first.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Tape(pub Vec<Entry>);

impl Tape {
    /// As it was kept; empty where it cannot be read.
    pub fn of(kept: &Kept) -> Self {
        kept.get(KEY).and_then(|text| as_text::read(&text)).unwrap_or_default()
    }

    /// As a text to keep, with its key.
    pub fn text(&self) -> Option<(String, String)> {
        Some((KEY.to_owned(), as_text::write(self)?))
    }

    /// Keeps it.
    pub fn keep(&self, kept: &Kept, ontrouble: &Callback<StoreError>) {
        let Some(text) = self.text() else { return };
        let (soon, ontrouble) = (kept.keep_all(vec![text]), ontrouble.clone());
        wasm_bindgen_futures::spawn_local(async move {
            if let Err(error) = soon.await {
                ontrouble.emit(error);
            }
        });
    }

    /// Puts a card's answers on top, the first line uppermost. While nothing else is worked on, a line's newer answer
    /// takes the place of its older one: only where typing came to rest is worth a place.
    pub fn record(&mut self, card: &str, lines: Vec<(String, Length)>) {
        let run = self.0.iter().take_while(|entry| entry.card == card).count();
        let mut at = 0;
        self.0.retain(|entry| {
            let replaced = at < run && entry.name.is_empty() && lines.iter().any(|(line, _)| *line == entry.line);
            at += 1;
            !replaced
        });
        for (line, value) in lines.into_iter().rev() {
            let entry = Entry { value, card: card.to_owned(), line, name: String::new() };
            self.0.insert(0, entry);
        }
        while self.0.len() > LONGEST {
            // A name says that the answer is still wanted.
            let oldest = self.0.iter().rposition(|entry| entry.name.is_empty()).unwrap_or(LONGEST);
            self.0.remove(oldest);
        }
    }

    /// Names an answer, or takes its name away.
    pub fn rename(&mut self, index: usize, name: String) {
        if let Some(entry) = self.0.get_mut(index) {
            entry.name = name;
        }
    }

    /// Takes an answer off.
    pub fn drop_at(&mut self, index: usize) {
        if index < self.0.len() {
            self.0.remove(index);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn record(tape: &mut Tape, card: &str, line: &str, mm: i64) {
        tape.record(card, vec![(line.to_owned(), Length::mm(mm, 1).unwrap())]);
    }

    fn values(tape: &Tape) -> Vec<String> {
        tape.0.iter().map(|entry| format!("{} {} {}", entry.card, entry.line, entry.value)).collect()
    }

    #[test]
    fn a_line_that_is_still_worked_on_has_one_place() {
        let mut tape = Tape::default();
        record(&mut tape, "shelf", "sag", 4);
        record(&mut tape, "shelf", "span", 900);
        record(&mut tape, "shelf", "sag", 5);
        assert_eq!(values(&tape), ["shelf sag 5 mm", "shelf span 900 mm"]);
        record(&mut tape, "back-panel", "width", 877);
        record(&mut tape, "shelf", "sag", 6);
        assert_eq!(
            values(&tape),
            ["shelf sag 6 mm", "back-panel width 877 mm", "shelf sag 5 mm", "shelf span 900 mm"],
            "an older sitting keeps its answers"
        );
    }

    #[test]
    fn a_named_answer_is_not_replaced_and_leaves_last() {
        let mut tape = Tape::default();
        record(&mut tape, "back-panel", "width", 877);
        tape.rename(0, "back".to_owned());
        record(&mut tape, "back-panel", "width", 880);
        assert_eq!(tape.0.len(), 2);
        for mm in 0..30 {
            record(&mut tape, if mm % 2 == 0 { "shelf" } else { "convert" }, "line", mm);
        }
        assert_eq!(tape.0.len(), LONGEST);
        assert_eq!(tape.0.last().map(|entry| entry.name.as_str()), Some("back"));
    }

    #[test]
    fn several_lines_stand_in_their_order_and_read_back() {
        let mut tape = Tape::default();
        let mm = |value| Length::mm(value, 3).unwrap();
        tape.record("back-panel", vec![("width".to_owned(), mm(100)), ("height".to_owned(), mm(50))]);
        assert_eq!(values(&tape), ["back-panel width 33 1/3 mm", "back-panel height 16 2/3 mm"]);
        let text = as_text::write(&tape).unwrap();
        assert_eq!(as_text::read::<Tape>(&text).unwrap(), tape);
        tape.drop_at(0);
        tape.drop_at(7);
        assert_eq!(values(&tape), ["back-panel height 16 2/3 mm"]);
    }
}
