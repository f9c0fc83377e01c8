//! A card's history, and its inputs as they are kept.

use super::*;
use crate::cards::card;
use scantling::cards::shelf::Inputs;
use scantling::measure::Reading;

fn shelf() -> Rc<CardState> {
    let settings = Rc::new(Settings::default());
    Rc::new(CardState::new((card("shelf").unwrap().open)(None, &settings), settings))
}

fn span(typed: &'static str) -> Change {
    Change::Edit(
        "shelf-span",
        Box::new(move |inputs, _| inputs.downcast_mut::<Inputs>().unwrap().span = Reading::mm(typed)),
    )
}

fn main_line(state: &CardState) -> String {
    state.held.reply(Show::of(state.settings())).unwrap().main[0].shown.plain()
}

#[test]
fn a_bad_reading_keeps_the_last_good_answer() {
    let good = shelf().reduce(span("900"));
    let bad = good.clone().reduce(span("900 +"));
    assert!(bad.is_stale() && !good.is_stale());
    assert_eq!(main_line(&bad), main_line(&good));
    assert!(bad.held.problems().of("span").is_some());
}

#[test]
fn edits_of_one_field_are_undone_as_one() {
    let start = shelf();
    let edited = start.clone().reduce(span("9")).reduce(span("90")).reduce(span("900"));
    assert_ne!(main_line(&edited), main_line(&start));
    let undone = edited.reduce(Change::Undo);
    assert_eq!(main_line(&undone), main_line(&start));
    assert!(!undone.can_undo());
}

#[test]
fn the_demo_can_be_undone_too() {
    let edited = shelf().reduce(span("900"));
    let back = edited.clone().reduce(Change::Demo).reduce(Change::Undo);
    assert_eq!(main_line(&back), main_line(&edited));
}

#[test]
fn the_sheet_in_the_shop_reaches_a_card_that_left_it_to_the_settings() {
    let start = shelf();
    let thicker = Settings { sheet: Reading::mm("18"), ..Settings::default() };
    let changed = start.clone().reduce(Change::Settings(Rc::new(thicker)));
    assert_ne!(main_line(&changed), main_line(&start));
}

#[test]
fn inputs_read_back_as_they_were_kept() {
    let edited = shelf().reduce(span("31 1/2 in"));
    let text = edited.held.text().unwrap();
    let again = (card("shelf").unwrap().open)(Some(&text), edited.settings());
    assert_eq!(again.text(), Some(text));
    let stands_in = |kept| (card("shelf").unwrap().open)(kept, edited.settings()).stands_in();
    assert_eq!([Some("not json"), Some("{\"span\":"), Some(""), None].map(stands_in), [true, true, false, false]);
    assert!(!again.stands_in());
}
