//! The cut list, and the holes of every part, as tables.

use crate::show::{Show, Shown, plain};
use crate::widgets::copying::PlainText;
use crate::widgets::fold::Fold;
use crate::widgets::saving::Save;
use crate::words::{say, say_with};
use scantling::cabinet::{
    Axis, Beside, Cabinet, Hand, Join, Line, Rows, Socket, Stock, What, cut_list_csv, cut_list_text,
};
use scantling::cards::joints::Kind;
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

/// A part that there may be several of, by its place: the bay that it is in, and which from below.
pub(super) fn place(cabinet: &Cabinet, on: usize) -> AttrValue {
    let Some(part) = cabinet.parts.get(on) else { return AttrValue::default() };
    let what = name(part.what);
    let in_bay = |bay: u32, number: Option<u32>| {
        let values = [("what", what.as_str().into()), ("bay", bay.into())];
        match number {
            Some(number) => {
                let [what, bay] = values;
                say_with("cabinet-part-in-bay-number", [what, bay, ("number", number.into())])
            }
            None => say_with("cabinet-part-in-bay", values),
        }
    };
    match part.what {
        What::FixedShelf { bay, number } | What::LooseShelf { bay, number } => in_bay(bay, Some(number)),
        What::Door { bay, .. } | What::HangingRail { bay } if cabinet.bays.len() > 1 => in_bay(bay, None),
        _ => what,
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

/// Length and width. Edging is as wide as its board was measured, and not as the nearest mark of a tape.
pub(super) fn size_of(line: &Line, show: Show) -> String {
    if line.stock == Stock::Edging {
        return format!("{} × {}", show.on_drawing(line.length), show.typed(line.width));
    }
    sizes([line.length, line.width], show)
}

fn line(cabinet: &Cabinet, line: &Line, show: Show) -> Html {
    // A measured thickness is said as it was measured.
    let thick = show.typed(line.thickness);
    html! {
        <tr>
            <th scope="row">{ format!("{} × {}", line.parts.len(), names(cabinet, &line.parts)) }</th>
            <td>{ size_of(line, show) }</td>
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
    joined(lengths.map(|at| show.on_drawing(at)).collect())
}

/// The same for what fits a fitting.
pub(super) fn listed_hardware(lengths: impl Iterator<Item = Length>, show: Show) -> String {
    joined(lengths.map(|at| show.hardware(at)).collect())
}

fn joined(said: Vec<String>) -> String {
    let unit = [" mm", " in"].into_iter().find(|unit| said.iter().all(|one| one.ends_with(unit)));
    let Some(unit) = unit.filter(|_| !said.is_empty()) else { return said.join("; ") };
    let bare: Vec<&str> = said.iter().map(|one| one.strip_suffix(unit).unwrap_or(one)).collect();
    format!("{}{unit}", bare.join("; "))
}

/// How deep, in words.
pub(super) fn deep(length: Length, show: Show) -> AttrValue {
    say_with("cabinet-deep", [("deep", show.hardware(length).into())])
}

fn row_table(cabinet: &Cabinet, rows: &Rows, show: Show) -> Html {
    let Some(part) = cabinet.parts.get(rows.on) else { return Html::default() };
    let face = say(if rows.face == Hand::Right { "cabinet-face-right" } else { "cabinet-face-left" });
    let title = format!("{}, {face}", name(part.what));
    let row = |label: AttrValue, values: String| html! { <tr><th scope="row">{ label }</th><td>{ values }</td></tr> };
    let both = [Some(&rows.rows.front), rows.rows.rear.as_ref()].into_iter().zip(rows.through);
    let lines = both.zip(cabinet.bored(rows)).flat_map(|((own, through), bored)| {
        let setback = own.map_or_else(String::new, |own| show.hardware(own.from_front));
        let deep = if through { say("cabinet-through") } else { deep(rows.deep, show) };
        // A bit is no mark on a tape.
        let deep = format!("⌀ {}, {deep}", show.typed(rows.rows.hole));
        let title = say_with("cabinet-row", [("setback", setback.into()), ("deep", deep.into())]);
        let of =
            |plate: bool| listed_hardware(bored.iter().filter(|hole| hole.plate == plate).map(|hole| hole.at), show);
        let plates = say_with("cabinet-plates", [("row", title.as_str().into())]);
        [(title, of(false)), (plates, of(true))].into_iter().filter(|(_, at)| !at.is_empty()).collect::<Vec<_>>()
    });
    html! {
        <table>
            <caption>{ title }</caption>
            <tbody>{ for lines.map(|(label, values)| row(label, values)) }</tbody>
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

/// What is joined to what.
pub(super) fn joint_name(cabinet: &Cabinet, join: &Join) -> String {
    let [edges, faces]: [Vec<usize>; 2] =
        [join.pairs.iter().map(|pair| pair.0).collect(), join.pairs.iter().map(|pair| pair.1).collect()];
    format!("{} – {}", names(cabinet, &edges), names(cabinet, &faces))
}

/// The line on each board, those that have the same together.
fn lines(cabinet: &Cabinet, join: &Join, show: Show) -> Vec<(AttrValue, String)> {
    let mut found: Vec<(Length, Vec<usize>)> = Vec::new();
    for ((_, face), line) in join.pairs.iter().zip(&join.lines) {
        match found.iter_mut().find(|(other, _)| other == line) {
            Some((_, faces)) if faces.contains(face) => {}
            Some((_, faces)) => faces.push(*face),
            None => found.push((*line, vec![*face])),
        }
    }
    let key = if join.along == Axis::Deep { "cabinet-line-face" } else { "cabinet-line-face-front" };
    let one = |(line, faces): (Length, Vec<usize>)| {
        (say_with(key, [("board", names(cabinet, &faces).into())]), show.on_drawing(line))
    };
    found.into_iter().map(one).collect()
}

fn join_table(cabinet: &Cabinet, join: &Join, show: Show) -> Html {
    let marks = listed(join.marks.marks.iter().copied(), show);
    let on_faces = join.marks.marks.iter().filter_map(|mark| mark.plus(join.gap).ok());
    let row = |label: AttrValue, values: String| html! { <tr><th scope="row">{ label }</th><td>{ values }</td></tr> };
    let fixing = &join.marks.fixing;
    let [on_edge, on_face] = match join.along {
        Axis::Deep => ["cabinet-marks-edge", "cabinet-marks-face"],
        Axis::Up => ["cabinet-marks-edge-down", "cabinet-marks-face-down"],
        Axis::Across => ["cabinet-marks-edge-across", "cabinet-marks-face-across"],
    };
    let pocket = join.marks.kind == Kind::PocketScrew;
    let in_face = if fixing.through { say("cabinet-through") } else { deep(fixing.in_other, show) };
    let bits = [
        (say("cabinet-bore-edge"), format!("⌀ {}, {}", show.typed(fixing.across), deep(fixing.in_edge, show))),
        (say("cabinet-bore-face"), format!("⌀ {}, {in_face}", show.typed(fixing.across_other))),
    ];
    html! {
        <table>
            <caption>{ joint_name(cabinet, join) }</caption>
            <tbody>
                { row(say(on_edge), marks) }
                if pocket {
                    { row(say("cabinet-pocket-shoulder"), show.hardware(fixing.in_edge)) }
                } else {
                    { row(say(on_face), listed(on_faces, show)) }
                    { row(say("cabinet-line-edge"), show.on_drawing(join.marks.line)) }
                    { for lines(cabinet, join, show).into_iter().map(|(label, at)| row(label, at)) }
                    { for bits.into_iter().map(|(label, bit)| row(label, bit)) }
                }
            </tbody>
        </table>
    }
}

fn cup_table(cabinet: &Cabinet, show: Show) -> Html {
    let row = |door: &scantling::cabinet::Door| {
        let at = listed_hardware(door.cups.iter().copied(), show);
        html! { <tr><th scope="row">{ place(cabinet, door.on) }</th><td>{ at }</td></tr> }
    };
    let Some(first) = cabinet.doors.first() else { return Html::default() };
    let values = [("edge", show.hardware(first.answer.cup_centre).into())];
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
        let screws = listed(handle.screws.iter().copied(), show);
        Some(html! { <tr><th scope="row">{ place(cabinet, door.on) }</th><td>{ screws }</td></tr> })
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
