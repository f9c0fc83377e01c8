//! Rows that can be taken out again, one by one.

use crate::words::say_with;
use yew::prelude::*;

/// A row: what it is, and what is to be known of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// What it is.
    pub what: AttrValue,
    /// A few words beside it.
    pub note: AttrValue,
}

/// The rows, each with its button; `ondrop` is told which one.
pub fn rows(title: AttrValue, rows: &[Row], ondrop: &Callback<usize>) -> Html {
    if rows.is_empty() {
        return Html::default();
    }
    html! {
        <div class="rows" role="group" aria-label={title.clone()}>
            <h4>{ title }</h4>
            <ul>
                { for rows.iter().enumerate().map(|(at, row)| {
                    let ondrop = ondrop.clone();
                    let name = say_with("take-out", [("what", row.what.as_str().into())]);
                    html! {
                        <li class="row">
                            <span><strong>{ &row.what }</strong>{ " " }<span class="line-other">{ &row.note }</span></span>
                            <button type="button" class="quiet" data-action="take-out" aria-label={name}
                                onclick={move |_: MouseEvent| ondrop.emit(at)}>{ "✕" }</button>
                        </li>
                    }
                }) }
            </ul>
        </div>
    }
}

/// A button of a card's own, beside what it is about.
pub fn button(action: &'static str, words: AttrValue, onpress: &Callback<()>) -> Html {
    let onpress = onpress.clone();
    html! {
        <button type="button" data-action={action} onclick={move |_: MouseEvent| onpress.emit(())}>{ words }</button>
    }
}
