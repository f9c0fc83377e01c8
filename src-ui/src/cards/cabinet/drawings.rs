//! The drawings of the cabinet and its parts, by name and in the maker's own unit.

use super::{Cabinet, parts};
use crate::show::Show;
use crate::widgets::drawing::DrawingSheet;
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Drawn, Face, Inputs, View, drawings};
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
        let title = title(answer, drawn.view);
        html! { <DrawingSheet key={at} {title} drawing={Rc::new(worded(drawn.drawing, props.show))} /> }
    };
    html! { <div class="drawings">{ for drawn.into_iter().enumerate().map(one) }</div> }
}

/// Every drawing, under its heading.
pub(super) fn folded(fields: &Fields<Cabinet>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    html! { <Fold name="drawings" title={say("cabinet-drawings")}><All {answered} {show} /></Fold> }
}
