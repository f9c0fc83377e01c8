//! The cut list, and the holes of every part, as tables.

use crate::show::{Show, Shown, plain};
use crate::widgets::copying::PlainText;
use crate::widgets::fold::Fold;
use crate::widgets::saving::Save;
use crate::words::{say, say_with};
use scantling::cabinet::{
    Axis, Beside, Cabinet, Hand, Join, Line, Rows, Socket, Stock, What, cut_list_csv, cut_list_text,
};
use scantling::measure::Length;
use yew::prelude::*;

/// What a part is called on the screen.
pub(super) fn name(what: What) -> AttrValue {
    match what {
        What::Side(Hand::Left) => say("cabinet-part-side-left"),
        What::Side(Hand::Right) => say("cabinet-part-side-right"),
        What::Top => say("cabinet-part-top"),
        What::Bottom => say("cabinet-part-bottom"),
        What::Upright { after } => say_with("cabinet-part-upright", [("bay", after.into())]),
        What::FixedShelf { .. } => say("cabinet-part-fixed-shelf"),
        What::LooseShelf { .. } => say("cabinet-part-shelf"),
        What::Back => say("cabinet-part-back"),
        What::Door { hinged: Hand::Left, .. } => say("cabinet-part-door-left"),
        What::Door { hinged: Hand::Right, .. } => say("cabinet-part-door-right"),
        What::Handle { .. } => say("cabinet-part-handle"),
        What::HookRail => say("cabinet-part-hook-rail"),
        What::OutsideShelf => say("cabinet-part-outside-shelf"),
        What::CabinetStrip => say("cabinet-part-cabinet-strip"),
        What::WallStrip => say("cabinet-part-wall-strip"),
        What::Spacer => say("cabinet-part-spacer"),
        What::HangingRail { .. } => say("cabinet-part-hanging-rail"),
        What::PlinthFront => say("cabinet-part-plinth-front"),
        What::PlinthRear => say("cabinet-part-plinth-rear"),
        What::PlinthCross { .. } => say("cabinet-part-plinth-cross"),
        What::Rail => say("cabinet-part-rail"),
        What::Edging { .. } => say("cabinet-part-edging"),
    }
}

/// What a board is called.
pub(super) fn stock(stock: Stock) -> AttrValue {
    say(match stock {
        Stock::Carcass => "cabinet-stock-carcass",
        Stock::Shelf => "cabinet-stock-shelf",
        Stock::Back => "cabinet-stock-back",
        Stock::Door => "cabinet-stock-door",
        Stock::Strip => "cabinet-stock-strip",
        Stock::Handle => "cabinet-stock-handle",
        Stock::Rail => "cabinet-stock-rail",
        Stock::Edging => "cabinet-stock-edging",
    })
}

/// Lengths with signs between them, in one unit.
pub(super) fn sizes<const N: usize>(sides: [Length; N], show: Show) -> String {
    plain(&Shown::joined(sides.map(|side| show.length(side)), " × ").main)
}

/// The names of the parts of a line, each once.
pub(super) fn names(cabinet: &Cabinet, parts: &[usize]) -> String {
    let mut names: Vec<AttrValue> = Vec::new();
    for part in parts.iter().filter_map(|at| cabinet.parts.get(*at)) {
        let name = name(part.what);
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names.join(", ")
}

fn line(cabinet: &Cabinet, line: &Line, show: Show) -> Html {
    // A measured thickness is said as it was measured.
    let thick = show.typed(line.thickness);
    html! {
        <tr>
            <th scope="row">{ format!("{} × {}", line.parts.len(), names(cabinet, &line.parts)) }</th>
            <td>{ sizes([line.length, line.width], show) }</td>
            <td>{ format!("{}, {thick}", stock(line.stock)) }</td>
        </tr>
    }
}

/// Every part once, those that are cut alike together.
pub(super) fn cut_list(cabinet: &Cabinet, show: Show) -> Html {
    let (marks, rounding) = show.marks();
    html! {
        <section class="parts">
            <h3>{ say("cabinet-cut-list") }</h3>
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ say("cabinet-column-part") }</th>
                        <th scope="col">{ say("cabinet-column-size") }</th>
                        <th scope="col">{ say("cabinet-column-board") }</th>
                    </tr>
                </thead>
                <tbody>{ for cabinet.cut_list.iter().map(|one| line(cabinet, one, show)) }</tbody>
            </table>
            <div class="actions">
                <Save action="save-csv" words={say("cabinet-save-csv")} file="cut-list.csv" kind="text/csv"
                    text={cut_list_csv(cabinet)} />
                <PlainText text={cut_list_text(cabinet, marks, rounding)} file="cut-list.txt"
                    copy={say("cabinet-copy-text")} save={say("cabinet-save-text")} />
            </div>
        </section>
    }
}

/// Lengths one after another, the unit once behind them all.
pub(super) fn listed(lengths: impl Iterator<Item = Length>, show: Show) -> String {
    let said: Vec<String> = lengths.map(|at| show.on_drawing(at)).collect();
    let unit = [" mm", " in"].into_iter().find(|unit| said.iter().all(|one| one.ends_with(unit)));
    let Some(unit) = unit.filter(|_| !said.is_empty()) else { return said.join("; ") };
    let bare: Vec<&str> = said.iter().map(|one| one.strip_suffix(unit).unwrap_or(one)).collect();
    format!("{}{unit}", bare.join("; "))
}

/// How deep, in words.
pub(super) fn deep(length: Length, show: Show) -> AttrValue {
    say_with("cabinet-deep", [("deep", show.on_drawing(length).into())])
}

fn row_table(cabinet: &Cabinet, rows: &Rows, show: Show) -> Html {
    let Some(part) = cabinet.parts.get(rows.on) else { return Html::default() };
    let face = say(if rows.face == Hand::Right { "cabinet-face-right" } else { "cabinet-face-left" });
    let title = format!("{}, {face}", name(part.what));
    let row = |label: AttrValue, values: String| html! { <tr><th scope="row">{ label }</th><td>{ values }</td></tr> };
    let row_of = |row: &scantling::cards::hole_rows::Row, through: bool| {
        let deep = if through { say("cabinet-through") } else { deep(rows.deep, show) };
        // A bit is no mark on a tape.
        let deep = format!("⌀ {}, {deep}", show.typed(rows.rows.hole));
        let values = [("setback", show.on_drawing(row.from_front).into()), ("deep", deep.into())];
        let screws = row.holes.iter().filter(|hole| hole.plate).map(|hole| hole.at);
        let pins = row.holes.iter().filter(|hole| !hole.plate).map(|hole| hole.at);
        (say_with("cabinet-row", values), listed(pins, show), listed(screws, show))
    };
    let [front_through, rear_through] = rows.through;
    let (front, front_pins, screws) = row_of(&rows.rows.front, front_through);
    let rear = rows.rows.rear.as_ref().map(|row| row_of(row, rear_through));
    html! {
        <table>
            <caption>{ title }</caption>
            <tbody>
                if !front_pins.is_empty() {
                    { row(front.clone(), front_pins) }
                }
                if !screws.is_empty() {
                    { row(say_with("cabinet-plates", [("row", front.as_str().into())]), screws) }
                }
                if let Some((rear, pins, _)) = rear {
                    { row(rear, pins) }
                }
            </tbody>
        </table>
    }
}

/// Plinth under the bottom, and the cleat's strip through a back that is planted on.
fn screw_table(cabinet: &Cabinet, show: Show) -> Html {
    let mut rows: Vec<(AttrValue, String)> = Vec::new();
    let mut add = |words: AttrValue, at: &[Length]| rows.push((words, listed(at.iter().copied(), show)));
    if let Some(plinth) = &cabinet.plinth {
        for line in plinth.lines {
            let values = [("front", show.on_drawing(line).into())];
            add(say_with("cabinet-plinth-screws", values), &plinth.screws);
        }
    }
    if let Some(strip) = &cabinet.strip_screws {
        for (down, at) in [&strip.into_top, &strip.into_sides] {
            let values = [("down", show.on_drawing(*down).into())];
            add(say_with("cabinet-strip-screws", values), at);
        }
    }
    if rows.is_empty() {
        return Html::default();
    }
    let row = |(words, at)| html! { <tr><th scope="row">{ words }</th><td>{ at }</td></tr> };
    html! {
        <table>
            <caption>{ say("cabinet-screws-through") }</caption>
            <tbody>{ for rows.into_iter().map(row) }</tbody>
        </table>
    }
}

fn join_table(cabinet: &Cabinet, join: &Join, show: Show) -> Html {
    let edges: Vec<usize> = join.pairs.iter().map(|(edge, _)| *edge).collect();
    let faces: Vec<usize> = join.pairs.iter().map(|(_, face)| *face).collect();
    let marks = listed(join.marks.marks.iter().copied(), show);
    let on_faces = join.marks.marks.iter().filter_map(|mark| mark.plus(join.gap).ok());
    let mut lines = Vec::new();
    for line in &join.lines {
        if !lines.contains(line) {
            lines.push(*line);
        }
    }
    let row = |label: AttrValue, values: String| html! { <tr><th scope="row">{ label }</th><td>{ values }</td></tr> };
    let fixing = &join.marks.fixing;
    let [on_edge, on_face, line_on_face] = match join.along {
        Axis::Deep => ["cabinet-marks-edge", "cabinet-marks-face", "cabinet-line-face"],
        Axis::Up => ["cabinet-marks-edge-down", "cabinet-marks-face-down", "cabinet-line-face-front"],
        Axis::Across => ["cabinet-marks-edge-across", "cabinet-marks-face-across", "cabinet-line-face-front"],
    };
    html! {
        <table>
            <caption>{ format!("{} – {}", names(cabinet, &edges), names(cabinet, &faces)) }</caption>
            <tbody>
                { row(say(on_edge), marks) }
                { row(say(on_face), listed(on_faces, show)) }
                { row(say("cabinet-line-edge"), show.on_drawing(join.marks.line)) }
                { row(say(line_on_face), listed(lines.into_iter(), show)) }
                { row(say("cabinet-joint-deep"), sizes([fixing.in_edge, fixing.in_other], show).replace('×', "/")) }
            </tbody>
        </table>
    }
}

fn cup_table(cabinet: &Cabinet, show: Show) -> Html {
    let row = |door: &scantling::cabinet::Door| {
        let what = cabinet.parts.get(door.on).map(|part| name(part.what)).unwrap_or_default();
        html! { <tr><th scope="row">{ what }</th><td>{ listed(door.cups.iter().copied(), show) }</td></tr> }
    };
    let Some(first) = cabinet.doors.first() else { return Html::default() };
    let values = [("edge", show.on_drawing(first.answer.cup_centre).into())];
    html! {
        <table>
            <caption>{ say_with("cabinet-cups", values) }</caption>
            <tbody>{ for cabinet.doors.iter().map(row) }</tbody>
        </table>
    }
}

/// Where each door is bored for the screws of its handle.
fn handle_table(cabinet: &Cabinet, show: Show) -> Html {
    let row = |door: &scantling::cabinet::Door| {
        let handle = door.handle.as_ref()?;
        let what = cabinet.parts.get(door.on).map(|part| name(part.what)).unwrap_or_default();
        let screws = listed(handle.screws.iter().copied(), show);
        Some(html! { <tr><th scope="row">{ what }</th><td>{ screws }</td></tr> })
    };
    let Some(first) = cabinet.doors.iter().find_map(|door| door.handle.as_ref()) else { return Html::default() };
    let values = [("edge", show.on_drawing(first.from_edge).into())];
    html! {
        <table>
            <caption>{ say_with("cabinet-handle-screws", values) }</caption>
            <tbody>{ for cabinet.doors.iter().filter_map(row) }</tbody>
        </table>
    }
}

/// Hooks on their rail, and its screws through the bottom.
fn hook_table(cabinet: &Cabinet, show: Show) -> Html {
    let Some(rail) = &cabinet.hooks else { return Html::default() };
    let screws = [("front", show.on_drawing(rail.from_front).into())];
    let row = |label: AttrValue, at: &[Length]| {
        html! { <tr><th scope="row">{ label }</th><td>{ listed(at.iter().copied(), show) }</td></tr> }
    };
    html! {
        <table>
            <caption>{ say("cabinet-part-hook-rail") }</caption>
            <tbody>
                { row(say_with("cabinet-hooks-at", [("up", show.on_drawing(rail.up).into())]), &rail.hooks) }
                { row(say_with("cabinet-hooks-screws", screws), &rail.screws) }
            </tbody>
        </table>
    }
}

/// The brackets of a shelf outside on what holds it, and on the shelf.
fn bracket_table(cabinet: &Cabinet, show: Show) -> Html {
    let Some(shelf) = &cabinet.outside else { return Html::default() };
    let [along, across, of_shelf] = if shelf.at == Beside::Under {
        ["cabinet-brackets-on-bottom", "cabinet-bracket-screws-on-bottom", "cabinet-bracket-screws-under"]
    } else {
        ["cabinet-brackets-on-side", "cabinet-bracket-screws-on-side", "cabinet-bracket-screws-beside"]
    };
    let rows = [
        (say(along), &shelf.on_holder),
        (say(across), &shelf.screws),
        (say("cabinet-brackets-on-shelf"), &shelf.brackets),
        (say(of_shelf), &shelf.shelf_screws),
    ];
    html! {
        <table>
            <caption>{ say("cabinet-brackets") }</caption>
            <tbody>
                { for rows.into_iter().map(|(label, at)| html! {
                    <tr><th scope="row">{ label }</th><td>{ listed(at.iter().copied(), show) }</td></tr>
                }) }
            </tbody>
        </table>
    }
}

/// Where the sockets of the clothes rail are screwed on.
fn socket_table(cabinet: &Cabinet, show: Show) -> Html {
    let row = |socket: &Socket| {
        let what = cabinet.parts.get(socket.on).map(|part| name(part.what)).unwrap_or_default();
        let values = [("up", show.on_drawing(socket.up).into()), ("front", show.on_drawing(socket.from_front).into())];
        html! { <tr><th scope="row">{ what }</th><td>{ say_with("cabinet-socket-at", values) }</td></tr> }
    };
    if cabinet.sockets.is_empty() {
        return Html::default();
    }
    html! {
        <table>
            <caption>{ say("cabinet-sockets") }</caption>
            <tbody>{ for cabinet.sockets.iter().map(row) }</tbody>
        </table>
    }
}

/// Running measurements, part by part: rows, joints, cups.
pub(super) fn hole_tables(cabinet: &Cabinet, show: Show) -> Html {
    html! {
        <div class="parts hole-tables">
            <p class="hint">{ say("cabinet-datum") }</p>
            { for cabinet.rows.iter().map(|rows| row_table(cabinet, rows, show)) }
            { cup_table(cabinet, show) }
            { handle_table(cabinet, show) }
            { socket_table(cabinet, show) }
            { hook_table(cabinet, show) }
            { screw_table(cabinet, show) }
            { bracket_table(cabinet, show) }
            { for cabinet.joins.iter().map(|join| join_table(cabinet, join, show)) }
        </div>
    }
}

/// The same under its heading.
pub(super) fn holes(cabinet: &Cabinet, show: Show) -> Html {
    html! { <Fold name="holes" title={say("cabinet-holes")}>{ hole_tables(cabinet, show) }</Fold> }
}
