//! What is asked for: parts, sheets, the saw.

use super::SheetLayout;
use crate::widgets::fields::Fields;
use crate::words::{say, say_with};
use scantling::cards::sheet_layout::{List, Mark};
use scantling::measure::Reading;
use scantling::sheets::{Cuts, SheetGrain};
use yew::prelude::*;

/// What is wrong with the lines of a list that were left out.
fn refused(fields: &Fields<SheetLayout>, list: List) -> Vec<String> {
    let said = |mark: &Mark| {
        let line = u32::try_from(mark.line + 1).unwrap_or(u32::MAX);
        let values =
            [("line", line.into()), ("typed", mark.typed.as_str().into()), ("why", mark.why.to_string().into())];
        say_with("sheet-layout-mark", values).to_string()
    };
    let marks = fields.answer().into_iter().flat_map(|answer| &answer.marks);
    marks.filter(|mark| mark.list == list).map(said).collect()
}

fn part_fields(fields: &Fields<SheetLayout>) -> Html {
    html! {
        <>
            { fields.lines("sheet-layout-parts", |inputs| &mut inputs.parts, &refused(fields, List::Parts)) }
            <p class="hint">{ say("sheet-layout-parts-hint") }</p>
            { fields.file("sheet-layout-file", ".csv,.tsv,.txt,text/csv,text/plain", |inputs, settings, file| {
                let lines = file.text.trim_start_matches('\u{FEFF}').lines();
                inputs.parts = lines.map(|line| Reading::new(line.trim_end(), settings.system.unit())).collect();
            }) }
        </>
    }
}

fn sheet_fields(fields: &Fields<SheetLayout>) -> Html {
    html! {
        <>
            { fields.length("sheet-layout-sheet-length", |inputs| &mut inputs.sheet_length) }
            { fields.length("sheet-layout-sheet-width", |inputs| &mut inputs.sheet_width) }
            { fields.figure("sheet-layout-sheet-price", "", |inputs| &mut inputs.sheet_price) }
            { fields.figure("sheet-layout-sheet-count", "", |inputs| &mut inputs.sheet_count) }
            { fields.choice("sheet-layout-sheet-grain", |inputs| &mut inputs.sheet_grain, vec![
                (SheetGrain::Along, say("sheet-layout-grain-along")),
                (SheetGrain::Across, say("sheet-layout-grain-across")),
                (SheetGrain::Plain, say("sheet-layout-grain-plain")),
            ]) }
            { fields.words("sheet-layout-sheet-name", |inputs| &mut inputs.sheet_name) }
        </>
    }
}

fn stock_fields(fields: &Fields<SheetLayout>) -> Html {
    html! {
        <>
            { fields.lines("sheet-layout-offcuts", |inputs| &mut inputs.offcuts, &refused(fields, List::Offcuts)) }
            { super::offcuts::put_by(fields) }
            { fields.lines("sheet-layout-sheets", |inputs| &mut inputs.sheets, &refused(fields, List::Sheets)) }
            <p class="hint">{ say("sheet-layout-stock-hint") }</p>
        </>
    }
}

fn saw_fields(fields: &Fields<SheetLayout>) -> Html {
    html! {
        <>
            { fields.length_from_shop("sheet-layout-kerf", |inputs| &mut inputs.kerf, &fields.settings().kerf) }
            { fields.length("sheet-layout-trim", |inputs| &mut inputs.trim) }
            { fields.choice("sheet-layout-cuts", |inputs| &mut inputs.cuts, vec![
                (Cuts::Any, say("sheet-layout-cuts-any")),
                (Cuts::Two, say("sheet-layout-cuts-two")),
                (Cuts::Three, say("sheet-layout-cuts-three")),
            ]) }
            { fields.length("sheet-layout-longest-rip", |inputs| &mut inputs.longest_rip) }
            { fields.length("sheet-layout-least-offcut", |inputs| &mut inputs.least_offcut) }
        </>
    }
}

pub(super) fn fields(fields: &Fields<SheetLayout>) -> Html {
    html! {
        <>
            { fields.group(say("sheet-layout-group-parts"), part_fields(fields)) }
            { fields.group(say("sheet-layout-group-sheet"), sheet_fields(fields)) }
            { fields.group(say("sheet-layout-group-saw"), saw_fields(fields)) }
            { fields.group(say("sheet-layout-group-stock"), stock_fields(fields)) }
        </>
    }
}
