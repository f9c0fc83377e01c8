//! A drawing with its name, to be looked at closely and saved.

use crate::browser::save_file;
use crate::words::{say, say_with};
use scantling::drawing::Drawing;
use std::rc::Rc;
use yew::prelude::*;

/// As large as a drawing is shown, in widths of its place.
const MOST_ZOOM: u32 = 4;

#[derive(PartialEq, Properties)]
pub struct DrawingProps {
    /// What is drawn.
    pub title: AttrValue,
    /// The drawing.
    pub drawing: Rc<Drawing>,
}

#[component]
pub fn DrawingSheet(props: &DrawingProps) -> Html {
    let zoom = use_state_eq(|| 1_u32);
    let title = &props.title;
    let button = |action: &'static str, sign: &'static str, off: bool, press: Callback<MouseEvent>| {
        let name = say(match action {
            "smaller" => "drawing-smaller",
            "larger" => "drawing-larger",
            "save-svg" => "drawing-save-svg",
            _ => "drawing-save-dxf",
        });
        let values = [("drawing", title.as_str().into()), ("name", name.as_str().into())];
        html! {
            <button type="button" data-action={action} disabled={off} onclick={press}
                aria-label={say_with("drawing-named", values)}>{ sign }</button>
        }
    };
    let zoomed = |to: u32| {
        let zoom = zoom.clone();
        Callback::from(move |_: MouseEvent| zoom.set(to))
    };
    let save = |kind: &'static str, end: &'static str, write: fn(&Drawing, &str) -> String| {
        let (drawing, title) = (props.drawing.clone(), title.clone());
        Callback::from(move |_: MouseEvent| {
            // Where the page may not save there is nothing to save to.
            let _ = save_file(&format!("{title}.{end}"), kind, &write(&drawing, &title));
        })
    };
    let svg = save("image/svg+xml", "svg", Drawing::to_svg);
    let dxf = save("application/dxf", "dxf", |drawing, _| drawing.to_dxf());
    let picture = Html::from_html_unchecked(props.drawing.to_picture(title).into());
    html! {
        <figure class="drawn">
            <figcaption>
                <span>{ title }</span>
                { button("smaller", "−", *zoom == 1, zoomed((*zoom / 2).max(1))) }
                { button("larger", "+", *zoom == MOST_ZOOM, zoomed((*zoom * 2).min(MOST_ZOOM))) }
                { button("save-svg", "SVG", false, svg) }
                { button("save-dxf", "DXF", false, dxf) }
            </figcaption>
            <div class="drawn-paper" data-zoom={zoom.to_string()} tabindex="0" role="group"
                aria-label={title.clone()}>{ picture }</div>
        </figure>
    }
}
