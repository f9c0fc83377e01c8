//! Drawing primitives: a drawing on paper, to scale, from the numbers of an answer.

pub mod dimension;
pub mod scale;

pub use dimension::{across, along, leader, upright};
pub use scale::{Place, Scale};

use yew::prelude::*;

/// The width of every picture's paper, in drawing units; text is 13 of them high.
pub const WIDTH: f64 = 360.0;

/// A picture: an image with a name, whose facts also stand in text beside it.
pub fn paper(name: AttrValue, height: f64, content: Html) -> Html {
    html! {
        <svg class="paper" role="img" aria-label={name} viewBox={format!("0 0 {WIDTH} {}", round(height))}
            preserveAspectRatio="xMidYMid meet">{ content }</svg>
    }
}

/// Hatching for cut wood, kept once on the page for all pictures.
pub fn patterns() -> Html {
    html! {
        <svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false">
            <defs>
                <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <rect class="hatch-ground" width="7" height="7" />
                    <line class="hatch-line" x1="0" y1="0" x2="0" y2="7" />
                </pattern>
                <pattern id="waste" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
                    <line class="waste-line" x1="0" y1="0" x2="0" y2="5" />
                </pattern>
            </defs>
        </svg>
    }
}

/// A coordinate as written into a drawing: a hundredth is finer than any screen.
pub fn round(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}

/// How a piece is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Wood seen from its face.
    Wood,
    /// Wood that is cut through.
    Cut,
    /// A thin panel that is cut through.
    Panel,
    /// An outline on paper.
    Outline,
    /// What the saw takes, and other waste.
    Waste,
    /// What can be set or touched.
    Blue,
    /// What is over a limit, and what is measured.
    Red,
    /// A dashed line of reference.
    Dashed,
    /// A thin grey line.
    Soft,
}

impl Ink {
    fn class(self) -> &'static str {
        match self {
            Self::Wood => "ink-wood",
            Self::Cut => "ink-cut",
            Self::Panel => "ink-panel",
            Self::Outline => "ink-outline",
            Self::Waste => "ink-waste",
            Self::Blue => "ink-blue",
            Self::Red => "ink-red",
            Self::Dashed => "ink-dashed",
            Self::Soft => "ink-soft",
        }
    }
}

/// A rectangle from its upper left corner.
pub fn rect(x: f64, y: f64, width: f64, height: f64, ink: Ink) -> Html {
    let [x, y, width, height] = [x, y, width.max(0.0), height.max(0.0)].map(|value| round(value).to_string());
    html! { <rect class={ink.class()} {x} {y} {width} {height} /> }
}

/// A closed shape.
pub fn polygon(points: &[(f64, f64)], ink: Ink) -> Html {
    let points = points.iter().map(|(x, y)| format!("{},{}", round(*x), round(*y))).collect::<Vec<_>>().join(" ");
    html! { <polygon class={ink.class()} {points} /> }
}

/// An open line through points.
pub fn polyline(points: &[(f64, f64)], ink: Ink) -> Html {
    let points = points.iter().map(|(x, y)| format!("{},{}", round(*x), round(*y))).collect::<Vec<_>>().join(" ");
    html! { <polyline class={classes!("open", ink.class())} {points} /> }
}

/// A straight line.
pub fn line(from: (f64, f64), to: (f64, f64), ink: Ink) -> Html {
    polyline(&[from, to], ink)
}

/// A circle.
pub fn circle(centre: (f64, f64), radius: f64, ink: Ink) -> Html {
    let [cx, cy, r] = [centre.0, centre.1, radius.max(0.0)].map(|value| round(value).to_string());
    html! { <circle class={ink.class()} {cx} {cy} {r} /> }
}

/// Where a text stands relative to its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Begins there.
    Start,
    /// Is centred there.
    Middle,
    /// Ends there.
    End,
}

/// A text on the drawing.
pub fn text(at: (f64, f64), words: impl Into<AttrValue>, anchor: Anchor, ink: Ink) -> Html {
    let anchor = match anchor {
        Anchor::Start => "start",
        Anchor::Middle => "middle",
        Anchor::End => "end",
    };
    let (x, y) = (round(at.0).to_string(), round(at.1).to_string());
    // A reader hears the picture's name; its facts are text beside it.
    html! { <text class={ink.class()} {x} {y} text-anchor={anchor} aria-hidden="true">{ words.into() }</text> }
}
