//! Hole rows card: a side and its hinges in, every hole of both sides and the settings of the guide out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, circle, line, paper, rect, text};
use crate::settings::Settings;
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::hole_rows::{Answer, Balance, Datum, Doors, First, Hand, Inputs, Note, Rear, Row, Side, solve};
use scantling::caution::Caution;
use scantling::measure::Reading;
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct HoleRows;

fn side_fields(fields: &Fields<HoleRows>) -> Html {
    html! {
        <>
            { fields.length("hole-rows-height", |inputs| &mut inputs.height) }
            { fields.length("hole-rows-depth", |inputs| &mut inputs.depth) }
            { fields.length_from_shop("hole-rows-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
            { fields.choice("hole-rows-datum", |inputs| &mut inputs.datum, vec![
                (Datum::Bottom, say("hole-rows-datum-bottom")),
                (Datum::Top, say("hole-rows-datum-top")),
            ]) }
        </>
    }
}

fn row_fields(fields: &Fields<HoleRows>) -> Html {
    html! {
        <>
            { fields.choice("hole-rows-first", |inputs| &mut inputs.first, vec![
                (First::Balanced, say("hole-rows-first-balanced")),
                (First::Given, say("hole-rows-first-given")),
            ]) }
            { fields.length("hole-rows-end-distance", |inputs| &mut inputs.end_distance) }
            { fields.length("hole-rows-pitch", |inputs| &mut inputs.pitch) }
            { fields.choice("hole-rows-doors", |inputs| &mut inputs.doors, vec![
                (Doors::InFront, say("hole-rows-doors-in-front")),
                (Doors::Inset, say("hole-rows-doors-inset")),
            ]) }
            if fields.inputs().doors == Doors::Inset {
                { fields.length("hole-rows-door-thickness", |inputs| &mut inputs.door_thickness) }
            }
            { fields.length("hole-rows-front-setback", |inputs| &mut inputs.front_setback) }
            { fields.choice("hole-rows-rear", |inputs| &mut inputs.rear, vec![
                (Rear::Balanced, say("hole-rows-rear-balanced")),
                (Rear::Steps, say("hole-rows-rear-steps")),
                (Rear::Own, say("hole-rows-rear-own")),
                (Rear::None, say("hole-rows-rear-none")),
            ]) }
            if fields.inputs().rear == Rear::Own {
                { fields.length("hole-rows-rear-setback", |inputs| &mut inputs.rear_setback) }
            }
        </>
    }
}

fn shelf_fields(fields: &Fields<HoleRows>) -> Html {
    html! {
        <>
            { fields.length("hole-rows-shelves-from", |inputs| &mut inputs.shelves_from) }
            { fields.length("hole-rows-shelves-to", |inputs| &mut inputs.shelves_to) }
            { fields.lines("hole-rows-skip-from", |inputs| &mut inputs.skip_from, &[]) }
            { fields.lines("hole-rows-skip-to", |inputs| &mut inputs.skip_to, &[]) }
        </>
    }
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    let change = answer.height_change;
    let (tone, words) = match answer.balance {
        Balance::Alike => (Tone::Good, say("hole-rows-alike")),
        Balance::RowsOnly => (Tone::Good, say("hole-rows-rows-only")),
        Balance::Uneven => (
            Tone::Mind,
            say_with(
                "hole-rows-uneven",
                [("less", show.on_drawing(change.less).into()), ("more", show.on_drawing(change.more).into())],
            ),
        ),
    };
    Verdict { tone, words }
}

fn setting(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![
        Line::new(say("hole-rows-end-stop"), show.length(answer.first)),
        Line::new(say("hole-rows-front-rail"), show.length(answer.front.rail_edge)),
    ];
    if let Some(rear) = &answer.rear {
        lines.push(Line::new(say("hole-rows-rear-rail"), show.length(rear.rail_edge)));
    }
    lines.push(Line::new(say("hole-rows-left-behind"), show.length(answer.left_behind)));
    Group { title: say("hole-rows-setting"), lines }
}

fn division(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![
        Line::new(say("hole-rows-count"), Shown::words(answer.count.to_string())),
        Line::new(say("hole-rows-last"), show.length(answer.last_from_end)),
    ];
    if !answer.height_change.fits() {
        lines.push(Line::new(say("hole-rows-over"), show.length(answer.height_change.less)));
        lines.push(Line::new(say("hole-rows-missing"), show.length(answer.height_change.more)));
    }
    if let Some(apart) = answer.apart {
        lines.push(Line::new(say("hole-rows-apart"), show.length(apart)));
        if !answer.depth_change.fits() {
            lines.push(Line::new(say("hole-rows-depth-over"), show.length(answer.depth_change.less)));
            lines.push(Line::new(say("hole-rows-depth-missing"), show.length(answer.depth_change.more)));
        }
    }
    Group { title: say("hole-rows-division"), lines }
}

fn name(hand: &Hand) -> AttrValue {
    match hand.side {
        Side::Left => say("hole-rows-left"),
        Side::Right => say("hole-rows-right"),
    }
}

fn hands(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    for hand in &answer.hands {
        let edge = if hand.front_near { say("hole-rows-front-near") } else { say("hole-rows-front-away") };
        lines.push(Line::new(name(hand), Shown::words(edge)));
        let rows = [Some(hand.front), hand.rear].into_iter().flatten().map(|row| show.length(row));
        let label = say_with("hole-rows-from-near", [("side", name(hand).as_str().into())]);
        lines.push(Line::new(label, Shown { cost: None, ..Shown::joined(rows, ", ") }));
    }
    Group { title: say("hole-rows-hands"), lines }
}

fn holes(title: AttrValue, row: &Row, show: Show) -> Group {
    let line = |hole: &scantling::cards::hole_rows::Hole| {
        let number = hole.number.to_string().into();
        let key = if hole.plate { "hole-rows-plate-hole" } else { "hole-rows-hole-number" };
        Line::new(say_with(key, [("number", number)]), show.length(hole.at))
    };
    Group { title, lines: row.holes.iter().map(line).collect() }
}

fn plates(answer: &Answer, show: Show) -> Option<Group> {
    let mut lines = Vec::new();
    for (index, plate) in answer.plates.iter().enumerate() {
        let number = || (index + 1).to_string();
        let pair = Shown::joined([show.length(plate.near_hole), show.length(plate.far_hole)], ", ");
        let by = plain(&show.fine_mm(plate.moved.abs().as_mm()).main);
        let key = if plate.moved.is_negative() { "hole-rows-moved-back" } else { "hole-rows-moved" };
        let moved = (!plate.moved.is_zero()).then(|| say_with(key, [("by", by.into())]));
        let label = say_with("hole-rows-plate", [("number", number().into())]);
        lines.push(Line::new(label, Shown { cost: moved, ..pair }));
        let label = say_with("hole-rows-cup", [("number", number().into())]);
        lines.push(Line::new(label, show.length(plate.on_door)));
    }
    (!lines.is_empty()).then(|| Group { title: say("hole-rows-group-hinges"), lines })
}

fn notes(answer: &Answer) -> Option<Group> {
    let line = |note: &Note| Line::new(say("hole-rows-note"), Shown::words(note.to_string())).toned(Tone::Mind);
    let lines: Vec<Line> = answer.notes.iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("hole-rows-notes"), lines })
}

/// One side, its near edge at `near` from the lower edge of the drawing, in millimetres.
fn side(answer: &Answer, hand: &Hand, near: f64, scale: &Scale) -> Html {
    let (height, depth) = (answer.height.as_mm(), answer.depth.as_mm());
    // A hole that would be too small to be seen is drawn a little larger; its middle is where it is.
    let radius = scale.length(answer.hole.as_mm() / 2.0).max(1.1);
    let rows = [(Some(&answer.front), Some(hand.front)), (answer.rear.as_ref(), hand.rear)];
    let dots = rows.into_iter().filter_map(|(row, at)| row.zip(at)).flat_map(|(row, at)| {
        let y = scale.y(near + at.as_mm());
        row.holes.iter().map(move |hole| {
            let ink = if hole.plate { Ink::Red } else { Ink::Outline };
            circle((scale.x(hole.at.as_mm()), y), radius, ink)
        })
    });
    let front = if hand.front_near { near } else { near + depth };
    html! {
        <>
            { rect(scale.x(0.0), scale.y(near + depth), scale.length(height), scale.length(depth), Ink::Wood) }
            { line((scale.x(0.0), scale.y(front)), (scale.x(height), scale.y(front)), Ink::Blue) }
            { for dots }
            { text((scale.x(height / 2.0), scale.y(near + depth / 2.0) + 4.5), name(hand), Anchor::Middle, Ink::Soft) }
        </>
    }
}

fn picture(answer: &Answer, show: Show) -> Html {
    let (height, depth) = (answer.height.as_mm(), answer.depth.as_mm());
    let between = depth * 0.12;
    let place = Place { x: 92.0, y: 8.0, width: 250.0, height: 150.0 };
    let scale = Scale::fit(height, 2.0 * depth + between, place);
    let [left, right] = &answer.hands;
    let setback = answer.front.from_front.as_mm();
    // The front row's distance is shown at the front edge of the right side, whichever way that lies.
    let front = if right.front_near { 0.0 } else { depth };
    let row = if right.front_near { setback } else { depth - setback };
    let (x, y1, y2) = (scale.x(0.0) - 8.0, scale.y(front), scale.y(row));
    let below = scale.y(0.0);
    paper(
        say("hole-rows-picture"),
        212.0,
        html! {
            <>
                { side(answer, left, depth + between, &scale) }
                { side(answer, right, 0.0, &scale) }
                { line((x, y1), (x, y2), Ink::Blue) }
                { line((x - 5.0, y1), (x + 5.0, y1), Ink::Blue) }
                { line((x - 5.0, y2), (x + 5.0, y2), Ink::Blue) }
                { text((x - 8.0, f64::midpoint(y1, y2) + 4.5), show.on_drawing(answer.front.from_front), Anchor::End, Ink::Blue) }
                { across(scale.x(0.0), scale.x(answer.first.as_mm()), below + 16.0, show.on_drawing(answer.first)) }
                { across(scale.x(0.0), scale.x(height), below + 38.0, show.on_drawing(answer.height)) }
            </>
        },
    )
}

impl CardView for HoleRows {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "hole-rows";
    const STAGE: Stage = Stage::Drill;

    fn title() -> AttrValue {
        say("hole-rows-title")
    }

    fn also_called() -> AttrValue {
        say("hole-rows-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { thickness: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.thickness.is_blank() {
            inputs.thickness = settings.sheet.clone();
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("hole-rows-group-side"), side_fields(fields)) }
                { fields.group(say("hole-rows-group-rows"), row_fields(fields)) }
                { fields.group(say("hole-rows-group-shelves"), shelf_fields(fields)) }
                { fields.group(say("hole-rows-group-hinges"), html! {
                    <>
                        { fields.lines("hole-rows-hinges", |inputs| &mut inputs.hinges, &[]) }
                        { fields.length("hole-rows-door-end", |inputs| &mut inputs.door_end) }
                    </>
                }) }
                { fields.group(say("hole-rows-group-drill"), html! {
                    <>
                        { fields.length("hole-rows-hole", |inputs| &mut inputs.hole) }
                        { fields.length("hole-rows-hole-depth", |inputs| &mut inputs.hole_depth) }
                        { fields.length("hole-rows-rail-offset", |inputs| &mut inputs.rail_offset) }
                    </>
                }) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let rows = [Some(&answer.front), answer.rear.as_ref()];
        let at = Shown::joined(rows.into_iter().flatten().map(|row| show.length(row.from_front)), ", ");
        let label = if answer.rear.is_some() { say("hole-rows-rows-at") } else { say("hole-rows-row-at") };
        let mut groups = vec![setting(answer, show), division(answer, show), hands(answer, show)];
        groups.extend(plates(answer, show));
        groups.push(holes(say("hole-rows-front-row"), &answer.front, show));
        groups.extend(answer.rear.as_ref().map(|rear| holes(say("hole-rows-rear-row"), rear, show)));
        groups.extend(notes(answer));
        Reply {
            main: vec![Line::new(say("hole-rows-first-hole"), show.length(answer.first)), Line::new(label, at)],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups,
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        say_with(
            "hole-rows-given",
            [("count", answer.count.to_string().into()), ("height", show.on_drawing(answer.height).into())],
        )
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
