//! The cabinet and its parts as drawings, to be looked at closely and saved.

use super::{Cabinet, parts};
use crate::browser::save_file;
use crate::show::Show;
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Drawn, Face, Inputs, View, drawings};
use std::rc::Rc;
use yew::prelude::*;

/// What is drawn, in words.
fn title(answer: &Answer, view: View) -> AttrValue {
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
fn worded(mut drawn: Drawn, show: Show) -> Drawn {
    for dimension in &mut drawn.drawing.dimensions {
        dimension.words = show.on_drawing(dimension.length);
    }
    drawn
}

#[derive(PartialEq, Properties)]
struct OneProps {
    title: AttrValue,
    drawn: Rc<Drawn>,
}

/// A drawing, and what can be done with it.
#[component]
fn One(props: &OneProps) -> Html {
    let zoom = use_state_eq(|| 1_u32);
    let button =
        |action: &'static str, (sign, name): (&'static str, AttrValue), off: bool, press: Callback<MouseEvent>| {
            let values = [("drawing", props.title.as_str().into()), ("name", name.as_str().into())];
            html! {
                <button type="button" data-action={action} disabled={off} onclick={press}
                    aria-label={say_with("cabinet-named", values)}>{ sign }</button>
            }
        };
    let zoomed = |to: u32| {
        let zoom = zoom.clone();
        Callback::from(move |_: MouseEvent| zoom.set(to))
    };
    let save = |kind: &'static str, end: &'static str, write: fn(&Drawn, &str) -> String| {
        let (drawn, title) = (props.drawn.clone(), props.title.clone());
        Callback::from(move |_: MouseEvent| {
            // Where the page may not save there is nothing to save to.
            let _ = save_file(&format!("{title}.{end}"), kind, &write(&drawn, &title));
        })
    };
    let svg = save("image/svg+xml", "svg", |drawn, title| drawn.drawing.to_svg(title));
    let dxf = save("application/dxf", "dxf", |drawn, _| drawn.drawing.to_dxf());
    let picture = Html::from_html_unchecked(props.drawn.drawing.to_picture(&props.title).into());
    html! {
        <figure class="drawn">
            <figcaption>
                <span>{ &props.title }</span>
                { button("smaller", ("−", say("cabinet-smaller")), *zoom == 1, zoomed((*zoom / 2).max(1))) }
                { button("larger", ("+", say("cabinet-larger")), *zoom == 4, zoomed((*zoom * 2).min(4))) }
                { button("save-svg", ("SVG", say("cabinet-save-svg")), false, svg) }
                { button("save-dxf", ("DXF", say("cabinet-save-dxf")), false, dxf) }
            </figcaption>
            <div class="drawn-paper" data-zoom={zoom.to_string()} tabindex="0" role="group"
                aria-label={props.title.clone()}>{ picture }</div>
        </figure>
    }
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
        html! { <One key={at} {title} drawn={Rc::new(worded(drawn, props.show))} /> }
    };
    html! { <div class="drawings">{ for drawn.into_iter().enumerate().map(one) }</div> }
}

/// Every drawing, under its heading.
pub(super) fn folded(fields: &Fields<Cabinet>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    html! { <Fold name="drawings" title={say("cabinet-drawings")}><All {answered} {show} /></Fold> }
}
