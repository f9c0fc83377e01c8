//! The drawings of the cabinet and its parts, by name and in the maker's own unit.

use super::{Cabinet, parts};
use crate::show::Show;
use crate::widgets::drawing::{DrawingSheet, Piece};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::words::{say, say_with};
use scantling::cabinet::{Axis, Cabinet as Answer, Drawn, Face, Inputs, Join, View, drawings, edged};
use scantling::drawing::Drawing;
use std::rc::Rc;
use yew::prelude::*;

/// What is drawn, in words.
pub(super) fn title(answer: &Answer, view: View) -> AttrValue {
    let (on, face) = match view {
        View::Front => return say("cabinet-view-front"),
        View::Section => return say("cabinet-view-section"),
        View::Plan => return say("cabinet-view-plan"),
        View::Apart => return say("cabinet-view-apart"),
        View::Part { on, face } => (on, face),
    };
    let part = answer.parts.get(on).map(|part| parts::name(part.what)).unwrap_or_default();
    let face = say(match face {
        Face::Right => "cabinet-face-right",
        Face::Left => "cabinet-face-left",
        Face::Upper => "cabinet-face-upper",
        Face::Lower => "cabinet-face-lower",
        Face::Rear => "cabinet-face-inside",
    });
    say_with("cabinet-view-part", [("part", part.as_str().into()), ("face", face.as_str().into())])
}

/// With its figures in the maker's own unit.
pub(super) fn worded(mut drawing: Drawing, show: Show) -> Drawing {
    for dimension in &mut drawing.dimensions {
        dimension.words = show.on_drawing(dimension.length);
    }
    for note in &mut drawing.notes {
        if let Some(length) = note.length {
            note.words = show.on_drawing(length);
        }
    }
    drawing
}

/// Holes of rows and cups in a part.
fn holes(answer: &Answer, on: usize) -> usize {
    let rows = answer.rows.iter().filter(|rows| rows.on == on);
    let rows = rows.flat_map(|rows| std::iter::once(&rows.rows.front).chain(&rows.rows.rear));
    let cups = answer.doors.iter().filter(|door| door.on == on).map(|door| door.cups.len());
    rows.map(|row| row.holes.len()).chain(cups).sum()
}

/// Joints in the ends or the face of a part.
fn joints(answer: &Answer, on: usize) -> usize {
    let own = |join: &Join| join.pairs.iter().filter(|(edge, face)| [*edge, *face].contains(&on)).count();
    answer.joins.iter().map(|join| own(join) * join.marks.marks.len()).sum()
}

/// What is to be known of a part, in numbers.
fn piece(answer: &Answer, on: usize, show: Show) -> Option<Piece> {
    let part = answer.parts.get(on)?;
    let grain = say(match part.grain {
        Axis::Across => "cabinet-grain-across",
        Axis::Deep => "cabinet-grain-deep",
        Axis::Up => "cabinet-grain-up",
    });
    let place = parts::sizes(part.place.from, show).replace('×', "/");
    let board = format!("{}, {}", parts::stock(part.stock), show.typed(part.thickness));
    let mut facts = vec![
        (say("cabinet-column-part"), parts::name(part.what)),
        (say("cabinet-column-size"), parts::sizes([part.length, part.width], show).into()),
        (say("cabinet-column-board"), board.into()),
        (say("cabinet-fact-grain"), grain),
        (say("cabinet-fact-place"), place.into()),
    ];
    let [long, short] = edged(answer, on);
    if long + short > 0 {
        facts.push((say("cabinet-fact-edges"), format!("{long} / {short}").into()));
    }
    let counts = [
        (say("cabinet-fact-holes"), holes(answer, on)),
        (say("cabinet-fact-joints"), joints(answer, on)),
        (say("cabinet-fact-grooves"), part.grooves.len()),
    ];
    facts.extend(
        counts.into_iter().filter(|(_, count)| *count > 0).map(|(name, count)| (name, count.to_string().into())),
    );
    Some(Piece { number: on, name: parts::name(part.what), facts })
}

/// The parts that a drawing shows, each once.
fn pieces(answer: &Answer, drawn: &Drawn, show: Show) -> Rc<[Piece]> {
    let mut shown: Vec<usize> = match drawn.view {
        View::Part { on, .. } => vec![on],
        _ => drawn.drawing.owned.iter().map(|(_, owner)| *owner).collect(),
    };
    shown.sort_unstable();
    shown.dedup();
    shown.into_iter().filter_map(|on| piece(answer, on, show)).collect()
}

#[derive(Properties)]
struct AllProps {
    answered: Rc<(Inputs, Answer)>,
    show: Show,
}

impl PartialEq for AllProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.answered, &other.answered) && self.show == other.show
    }
}

/// Drawn only once they are unfolded.
#[component]
fn All(props: &AllProps) -> Html {
    let (_, answer) = &*props.answered;
    let drawn = drawings(answer).unwrap_or_default();
    let one = |(at, drawn): (usize, Drawn)| {
        let (title, pieces) = (title(answer, drawn.view), pieces(answer, &drawn, props.show));
        html! { <DrawingSheet key={at} {title} {pieces} drawing={Rc::new(worded(drawn.drawing, props.show))} /> }
    };
    html! { <div class="drawings">{ for drawn.into_iter().enumerate().map(one) }</div> }
}

/// Every drawing, under its heading.
pub(super) fn folded(fields: &Fields<Cabinet>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    html! { <Fold name="drawings" title={say("cabinet-drawings")}><All {answered} {show} /></Fold> }
}
