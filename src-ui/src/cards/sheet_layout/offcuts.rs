//! What is left over and worth keeping: put by with one press, used first for the next list of parts.

use super::SheetLayout;
use crate::show::{Show, plain};
use crate::widgets::fields::Fields;
use crate::widgets::rows::{Row, button, rows};
use crate::words::{say, say_with};
use scantling::cards::sheet_layout::{Answer, Kept};
use scantling::measure::Length;
use std::collections::BTreeMap;
use yew::prelude::*;

fn size(length: Length, width: Length, show: Show) -> String {
    let [length, width] = [length, width].map(|side| show.length(side));
    plain(&crate::show::Shown::joined([length, width], " × ").main)
}

/// The offcuts of the layout in words, equal ones counted.
fn listed(offcuts: &[Kept], show: Show) -> Vec<String> {
    let mut counted: BTreeMap<(Length, Length), u32> = BTreeMap::new();
    for offcut in offcuts {
        *counted.entry((offcut.length.max(offcut.width), offcut.length.min(offcut.width))).or_default() += 1;
    }
    let words = |((long, short), count): ((Length, Length), u32)| match count {
        1 => size(long, short, show),
        count => format!("{count} × {}", size(long, short, show)),
    };
    counted.into_iter().rev().map(words).collect()
}

/// The offcuts of the layout, and the button that puts them by.
pub(super) fn offcuts(fields: &Fields<SheetLayout>, answer: &Answer, show: Show) -> Html {
    let offcuts = answer.offcuts();
    if offcuts.is_empty() && answer.waiting == 0 {
        return Html::default();
    }
    let count = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let put = {
        let offcuts = offcuts.clone();
        fields.act(move |inputs, _, ()| inputs.kept.extend(offcuts.iter().cloned()))
    };
    let take_back = {
        let mark = answer.parts_mark.clone();
        fields.act(move |inputs, _, ()| inputs.kept.retain(|kept| kept.left_by != mark))
    };
    html! {
        <section class="kept-offcuts">
            <h3>{ say("sheet-layout-offcuts-title") }</h3>
            if answer.waiting > 0 {
                <p role="status">{ say_with("sheet-layout-put-by", [("count", count(answer.waiting).into())]) }</p>
                { button("take-back", say("sheet-layout-take-back"), &take_back) }
            } else {
                { button("put-by", say_with("sheet-layout-keep", [("count", count(offcuts.len()).into())]), &put) }
            }
            <ul>{ for listed(&offcuts, show).into_iter().map(|words| html! { <li>{ words }</li> }) }</ul>
        </section>
    }
}

/// All that were ever put by, each to be taken out again.
pub(super) fn put_by(fields: &Fields<SheetLayout>) -> Html {
    let show = Show::of(fields.settings());
    let mark = fields.answer().map(|answer| answer.parts_mark.as_str()).unwrap_or_default();
    let row = |kept: &Kept| {
        let name = if kept.stock.is_empty() { String::new() } else { format!(" {}", kept.stock) };
        let waits = kept.left_by == mark;
        Row {
            what: format!("{}{name}", size(kept.length, kept.width, show)).into(),
            note: say(if waits { "sheet-layout-kept-waits" } else { "sheet-layout-kept-used" }),
        }
    };
    let list: Vec<Row> = fields.inputs().kept.iter().map(row).collect();
    let drop = fields.act(|inputs, _, at: usize| {
        if at < inputs.kept.len() {
            inputs.kept.remove(at);
        }
    });
    rows(say("sheet-layout-kept"), &list, &drop)
}
