//! A drawing with its name: to be looked at closely, to be asked about its parts, and saved.

mod fingers;

use super::saving::{ToFile, use_saving};
use crate::browser::Listener;
use crate::words::{say, say_with};
use fingers::{Asked, Fingers, Point};
use scantling::drawing::Drawing;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, HtmlSelectElement, SvgElement};
use yew::prelude::*;

/// As large as a drawing is shown, in sizes of its place.
const MOST_ZOOM: f64 = 8.0;

/// A part that is drawn, and what is to be known of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Its number in the drawing.
    pub number: usize,
    /// What it is called.
    pub name: AttrValue,
    /// Its numbers, each with its name.
    pub facts: Vec<(AttrValue, AttrValue)>,
}

#[derive(PartialEq, Properties)]
pub struct DrawingProps {
    /// What is drawn.
    pub title: AttrValue,
    /// The drawing.
    pub drawing: Rc<Drawing>,
    /// The parts on it that can be chosen; where there is only one it is shown from the start.
    pub pieces: Rc<[Piece]>,
}

/// The picture on its paper.
fn picture_on(paper: &HtmlElement) -> Option<SvgElement> {
    paper.query_selector("svg").ok()??.dyn_into().ok()
}

/// Makes the picture `to / from` as large as it is, and keeps what lies at a place of the screen where it is.
fn enlarge(paper: &HtmlElement, (from, to): (f64, f64), about: Point) -> Option<()> {
    let picture = picture_on(paper)?;
    let before = picture.get_bounding_client_rect();
    // The page's policy is about styles in its text; what a script sets is its own.
    let style = picture.style();
    for (name, value) in [
        ("inline-size", format!("{}px", before.width() * to / from)),
        ("max-inline-size", "none".to_owned()),
        ("max-block-size", "none".to_owned()),
    ] {
        // Refused only where the value is malformed.
        let _ = if to > 1.0 { style.set_property(name, &value) } else { style.remove_property(name).map(drop) };
    }
    let after = picture.get_bounding_client_rect();
    let moved = |about: f64, (at, size): (f64, f64), (now, large): (f64, f64)| {
        now + (about - at) / size.max(1.0) * large - about
    };
    scroll(
        paper,
        [
            moved(about[0], (before.x(), before.width()), (after.x(), after.width())),
            moved(about[1], (before.y(), before.height()), (after.y(), after.height())),
        ],
    );
    Some(())
}

/// Scrolls the paper by so much.
fn scroll(paper: &HtmlElement, by: Point) {
    #[expect(clippy::cast_possible_truncation, reason = "pixels of a screen")]
    let [across, down] = by.map(|by| by.round() as i32);
    paper.set_scroll_left(paper.scroll_left() + across);
    paper.set_scroll_top(paper.scroll_top() + down);
}

/// How large the picture is shown, and what makes it larger.
#[hook]
fn use_zoom(paper: &NodeRef) -> (f64, Rc<dyn Fn(f64, Point)>) {
    let shown = use_state_eq(|| 1.0_f64);
    // As it is now: several fingers may move between two draws.
    let now = use_mut_ref(|| 1.0_f64);
    let zoom = {
        let (paper, shown) = (paper.clone(), shown.clone());
        Rc::new(move |times: f64, about: Point| {
            let Some(paper) = paper.cast::<HtmlElement>() else { return };
            let from = *now.borrow();
            let to = (from * times).clamp(1.0, MOST_ZOOM);
            if (from - to).abs() > f64::EPSILON && enlarge(&paper, (from, to), about).is_some() {
                now.replace(to);
                shown.set(to);
            }
        })
    };
    (*shown, zoom)
}

/// Two fingers are ours: the page does not scroll under them.
#[hook]
fn use_two_fingers(paper: &NodeRef) {
    let paper = paper.clone();
    use_effect_with((), move |()| {
        let heard = paper.cast::<Element>().map(|paper| {
            Listener::on(&paper, "touchmove", |event| {
                let touches = event.dyn_ref::<web_sys::TouchEvent>().map_or(0, |event| event.touches().length());
                if touches > 1 {
                    event.prevent_default();
                }
            })
        });
        move || drop(heard)
    });
}

/// Marks the chosen part in the picture.
fn mark(paper: &NodeRef, chosen: Option<usize>) {
    let Some(shapes) = paper.cast::<Element>().and_then(|paper| paper.query_selector_all("[data-owner]").ok()) else {
        return;
    };
    for at in 0..shapes.length() {
        let Some(shape) = shapes.get(at).and_then(|shape| shape.dyn_into::<Element>().ok()) else { continue };
        let is_it = chosen.is_some() && owner(&shape) == chosen;
        // An attribute of this name is never refused.
        let _ = shape.toggle_attribute_with_force("data-chosen", is_it);
    }
}

fn owner(shape: &Element) -> Option<usize> {
    shape.get_attribute("data-owner")?.parse().ok()
}

/// The list that parts are chosen from without touching the drawing, and the numbers of the chosen one.
fn asked_about(pieces: &[Piece], chosen: Option<usize>, onchoose: &Callback<Option<usize>>) -> Html {
    let alone = if let [piece] = pieces { Some(piece) } else { None };
    let piece = alone.or_else(|| pieces.iter().find(|piece| Some(piece.number) == chosen));
    let onchange = {
        let onchoose = onchoose.clone();
        Callback::from(move |event: Event| {
            let number = event.target_dyn_into::<HtmlSelectElement>().and_then(|select| select.value().parse().ok());
            onchoose.emit(number);
        })
    };
    html! {
        <div class="drawn-part">
            if pieces.len() > 1 {
                <label class="drawn-choice">
                    <span>{ say("drawing-part") }</span>
                    <select {onchange}>
                        <option value="" selected={chosen.is_none()}>{ say("drawing-no-part") }</option>
                        { for pieces.iter().map(|piece| html! {
                            <option value={piece.number.to_string()} selected={Some(piece.number) == chosen}>{ &piece.name }</option>
                        }) }
                    </select>
                </label>
            }
            <div class="drawn-facts" role="status">
                if let Some(piece) = piece {
                    <dl aria-label={piece.name.clone()}>
                        { for piece.facts.iter().map(|(name, value)| html! { <div><dt>{ name }</dt><dd>{ value }</dd></div> }) }
                    </dl>
                }
            </div>
        </div>
    }
}

#[component]
pub fn DrawingSheet(props: &DrawingProps) -> Html {
    let paper = use_node_ref();
    let (zoom, zoom_by) = use_zoom(&paper);
    let fingers = use_mut_ref(Fingers::default);
    let chosen = use_state_eq(|| None::<usize>);
    use_two_fingers(&paper);
    let picture = props.drawing.to_picture(&props.title);
    {
        let paper = paper.clone();
        use_effect_with((picture.clone(), *chosen), move |(_, chosen)| mark(&paper, *chosen));
    }
    {
        // Of other parts the same number is another one.
        let chosen = chosen.clone();
        let names: Vec<AttrValue> = props.pieces.iter().map(|piece| piece.name.clone()).collect();
        use_effect_with(names, move |_| chosen.set(None));
    }
    {
        // A picture that is drawn anew has lost its size.
        let zoom_by = zoom_by.clone();
        use_effect_with(picture.clone(), move |_| zoom_by(0.0, [0.0; 2]));
    }
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
    let zoomed = |times: f64| {
        let (paper, zoom_by) = (paper.clone(), zoom_by.clone());
        Callback::from(move |_: MouseEvent| {
            if let Some(place) = paper.cast::<Element>().map(|paper| paper.get_bounding_client_rect()) {
                zoom_by(times, [place.x() + place.width() / 2.0, place.y() + place.height() / 2.0]);
            }
        })
    };
    let (said, save_file) = use_saving();
    let save = |kind: &'static str, end: &'static str, write: fn(&Drawing, &str) -> String| {
        let (drawing, title, save) = (props.drawing.clone(), title.clone(), save_file.clone());
        Callback::from(move |_: MouseEvent| {
            save.emit(ToFile { name: format!("{title}.{end}"), kind, text: write(&drawing, &title) });
        })
    };
    let svg = save("image/svg+xml", "svg", Drawing::to_svg);
    let dxf = save("application/dxf", "dxf", |drawing, _| drawing.to_dxf());
    let at = |event: &PointerEvent| [event.client_x(), event.client_y()].map(f64::from);
    let ondown = {
        let fingers = fingers.clone();
        Callback::from(move |event: PointerEvent| fingers.borrow_mut().down(event.pointer_id(), at(&event)))
    };
    let onmove = {
        let (fingers, paper, zoom_by) = (fingers.clone(), paper.clone(), zoom_by.clone());
        Callback::from(move |event: PointerEvent| {
            let asked = fingers.borrow_mut().moved(event.pointer_id(), at(&event));
            let (Some(Asked { by, times, about }), Some(paper)) = (asked, paper.cast::<HtmlElement>()) else { return };
            scroll(&paper, by.map(|by| -by));
            if (times - 1.0).abs() > f64::EPSILON {
                zoom_by(times, about);
            }
        })
    };
    let onup = {
        let fingers = fingers.clone();
        Callback::from(move |event: PointerEvent| fingers.borrow_mut().up(event.pointer_id()))
    };
    let onchoose = {
        let chosen = chosen.clone();
        Callback::from(move |number: Option<usize>| chosen.set(number))
    };
    let onclick = {
        let onchoose = onchoose.clone();
        Callback::from(move |event: MouseEvent| {
            if fingers.borrow().tapped() {
                let shape = event.target_dyn_into::<Element>().and_then(|shape| shape.closest("[data-owner]").ok()?);
                onchoose.emit(shape.as_ref().and_then(owner));
            }
        })
    };
    html! {
        <figure class="drawn">
            <figcaption>
                <span>{ title }</span>
                { button("smaller", "−", zoom <= 1.0, zoomed(0.5)) }
                { button("larger", "+", zoom >= MOST_ZOOM, zoomed(2.0)) }
                { button("save-svg", "SVG", false, svg) }
                { button("save-dxf", "DXF", false, dxf) }
            </figcaption>
            <div class="drawn-paper" ref={paper} data-zoomed={(zoom > 1.0).to_string()} tabindex="0" role="group"
                aria-label={title.clone()} {onclick} onpointerdown={ondown} onpointermove={onmove}
                onpointerup={onup.clone()} onpointercancel={onup.clone()} onpointerleave={onup}>
                { Html::from_html_unchecked(picture.into()) }
            </div>
            <p role="status" class="said">{ said }</p>
            { asked_about(&props.pieces, *chosen, &onchoose) }
        </figure>
    }
}
