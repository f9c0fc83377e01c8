//! Dimension lines: thin, blue, the figure in a gap of the line.

use super::{Anchor, Ink, line, round, text};
use yew::prelude::*;

/// Half the height of the strokes at the ends.
const TICK: f64 = 5.0;
/// About the width of a figure, for the gap in the line.
/// Set for the widest of the fonts that a device may have.
const LETTER: f64 = 9.2;

fn letters(words: &str) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a label has a few dozen letters")]
    let count = words.chars().count() as f64;
    count * LETTER + 8.0
}

/// From left to right at height `y`, the figure in the middle, or beside the line where it would not fit in.
pub fn across(x1: f64, x2: f64, y: f64, words: impl Into<AttrValue>) -> Html {
    let words: AttrValue = words.into();
    let (x1, x2) = (x1.min(x2), x1.max(x2));
    let gap = letters(&words);
    let middle = f64::midpoint(x1, x2);
    let fits = x2 - x1 > gap + 12.0;
    // Beside the line on the right while the paper reaches, else on the left.
    let beside_right = x2 + gap < super::WIDTH;
    html! {
        <g class="dimension">
            { line((x1, y - TICK), (x1, y + TICK), Ink::Blue) }
            { line((x2, y - TICK), (x2, y + TICK), Ink::Blue) }
            if fits {
                { line((x1, y), (middle - gap / 2.0, y), Ink::Blue) }
                { line((middle + gap / 2.0, y), (x2, y), Ink::Blue) }
                { text((middle, y + 4.5), words, Anchor::Middle, Ink::Blue) }
            } else {
                { line((x1, y), (x2, y), Ink::Blue) }
                if beside_right {
                    { text((x2 + 7.0, y + 4.5), words, Anchor::Start, Ink::Blue) }
                } else {
                    { text((x1 - 7.0, y + 4.5), words, Anchor::End, Ink::Blue) }
                }
            }
        </g>
    }
}

/// From bottom to top at `x`, the figure turned along the line.
pub fn upright(y1: f64, y2: f64, x: f64, words: impl Into<AttrValue>) -> Html {
    let words: AttrValue = words.into();
    let (y1, y2) = (y1.min(y2), y1.max(y2));
    let gap = letters(&words);
    let middle = f64::midpoint(y1, y2);
    let fits = y2 - y1 > gap + 12.0;
    let turn = format!("rotate(-90 {} {})", round(x), round(middle));
    html! {
        <g class="dimension">
            { line((x - TICK, y1), (x + TICK, y1), Ink::Blue) }
            { line((x - TICK, y2), (x + TICK, y2), Ink::Blue) }
            if fits {
                { line((x, y1), (x, middle - gap / 2.0), Ink::Blue) }
                { line((x, middle + gap / 2.0), (x, y2), Ink::Blue) }
                <g transform={turn}>{ text((x, middle + 4.5), words, Anchor::Middle, Ink::Blue) }</g>
            } else {
                { line((x, y1), (x, y2), Ink::Blue) }
                { text((x + 8.0, middle + 4.5), words, Anchor::Start, Ink::Blue) }
            }
        </g>
    }
}

/// Along a slanting line between two points, without a figure: both ends marked.
pub fn along(from: (f64, f64), to: (f64, f64)) -> Html {
    html! { <g class="dimension">{ line(from, to, Ink::Blue) }</g> }
}

/// A thin line from a detail to its words.
pub fn leader(from: (f64, f64), to: (f64, f64), words: impl Into<AttrValue>, ink: Ink) -> Html {
    let anchor = if to.0 >= from.0 { Anchor::Start } else { Anchor::End };
    let shift = if to.0 >= from.0 { 4.0 } else { -4.0 };
    html! {
        <g class="dimension">
            { line(from, to, Ink::Soft) }
            { text((to.0 + shift, to.1 + 4.5), words, anchor, ink) }
        </g>
    }
}
