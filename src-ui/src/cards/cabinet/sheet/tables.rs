//! What is cut, what is bought and what is done, as tables and lists with boxes to tick by hand.

use super::super::{fittings as bought, parts, work as order};
use crate::show::Show;
use crate::widgets::tick_list::Tick;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Inputs, Line, edged};
use yew::prelude::*;

/// Thickness, board and material.
fn board(inputs: &Inputs, line: &Line, show: Show) -> AttrValue {
    // A measured thickness is said as it was measured.
    let (thick, board) = (show.typed(line.thickness), parts::stock(line.stock));
    let own = || say("cabinet-material-own");
    let material = inputs
        .board(line.stock)
        .map(|board| board.material.family().map_or_else(own, |family| AttrValue::Static(family.name)));
    let Some(material) = material else { return format!("{thick} {board}").into() };
    let values = [("thick", thick.into()), ("board", board.as_str().into()), ("material", material.as_str().into())];
    say_with("shop-board", values)
}

fn edges(answer: &Answer, line: &Line) -> String {
    let [long, short] = line.parts.first().map_or([0; 2], |part| edged(answer, *part));
    let [long, short] = [long, short].map(|count| u32::try_from(count).unwrap_or(u32::MAX));
    let long = (long > 0).then(|| say_with("shop-edges-long", [("count", long.into())]));
    let short = (short > 0).then(|| say_with("shop-edges-short", [("count", short.into())]));
    let said: Vec<AttrValue> = long.into_iter().chain(short).collect();
    if said.is_empty() { "–".to_owned() } else { said.join(", ") }
}

/// Every part once, those that are cut alike together.
pub(super) fn cut_list(inputs: &Inputs, answer: &Answer, show: Show) -> Html {
    let row = |line: &Line| {
        html! {
            <tr>
                <td class="tick-cell"><span class="tick-box"></span></td>
                <td>{ line.parts.len() }</td>
                <th scope="row">{ parts::names(answer, &line.parts) }</th>
                <td>{ parts::sizes([line.length, line.width], show) }</td>
                <td>{ board(inputs, line, show) }</td>
                <td>{ edges(answer, line) }</td>
            </tr>
        }
    };
    html! {
        <table class="shop-table shop-cut-list">
            <thead>
                <tr>
                    <td></td>
                    <th scope="col">{ say("shop-column-count") }</th>
                    <th scope="col">{ say("cabinet-column-part") }</th>
                    <th scope="col">{ say("shop-column-size") }</th>
                    <th scope="col">{ say("cabinet-column-board") }</th>
                    <th scope="col">{ say("shop-column-edging") }</th>
                </tr>
            </thead>
            <tbody>{ for answer.cut_list.iter().map(row) }</tbody>
        </table>
    }
}

/// What is bought by the piece or by length.
pub(super) fn fittings(answer: &Answer, show: Show) -> Html {
    let row = |line: crate::widgets::reply::Line| {
        html! {
            <tr>
                <td class="tick-cell"><span class="tick-box"></span></td>
                <th scope="row">{ line.label }</th>
                <td>{ line.shown.plain() }</td>
            </tr>
        }
    };
    html! { <table class="shop-table"><tbody>{ for bought(answer, show).lines.into_iter().map(row) }</tbody></table> }
}

/// Every setting, with the parts that share it; the boxes are empty, for paper knows nothing of the screen.
pub(super) fn work(answer: &Answer, show: Show) -> Html {
    let (groups, _) = order::groups(answer, show, &[]);
    let tick = |tick: &Tick| {
        html! {
            <li><span class="tick-box"></span><strong>{ &tick.what }</strong>{ " " }{ &tick.then }</li>
        }
    };
    let step = |(name, ticks): &(AttrValue, Vec<Tick>)| {
        html! {
            <li class="shop-step"><h4>{ name }</h4><ul>{ for ticks.iter().map(tick) }</ul></li>
        }
    };
    html! { <ol class="shop-work">{ for groups.iter().map(step) }</ol> }
}
