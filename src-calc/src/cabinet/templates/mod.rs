//! Templates for drilling at true size: printed, measured by their bar, cut out, laid against the edge, pricked through.
//!
//! A row that is longer than a page is parted into strips that are joined again along lines of the same letter.

mod strips;
#[cfg(test)]
mod tests;

use super::Cabinet;
use super::part::Hand;
use crate::drawing::{Dimension, Drawing, Layer, Note, Shape};
use crate::measure::{Length, LengthError};
use serde::Serialize;
use strips::{Row, Strip};

/// What a page has room for, across and up, in millimetres. Both A4 (210 × 297) and US Letter (215.9 × 279.4) keep 12 mm
/// and more around it, with some 25 mm left for a heading.
const PAGE_MM: [f64; 2] = [180.0, 212.0];
/// Height of the figures.
const FIGURE_MM: f64 = 2.6;
/// The bars stand below, the patterns above them.
const BARS_MM: f64 = 26.0;
/// Between two strips.
const GAP_MM: f64 = 6.0;

/// A row on a face of a board, seen from in front.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct RowUse {
    /// The board's place in the list of parts.
    pub on: usize,
    /// Which of its faces.
    pub face: Hand,
    /// Whether its edge is the rear one.
    pub rear: bool,
}

/// What is on a template.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Pattern {
    /// A hinge cup and the door's edge.
    Cup {
        /// The doors that it is for, by their places in the list of parts.
        doors: Vec<usize>,
    },
    /// A row of holes and the board's edge; turned over, it is one for the other hand.
    Row {
        /// Every row that is like it.
        uses: Vec<RowUse>,
        /// Diameter of the holes.
        hole: Length,
        /// From the edge to the middles of the holes.
        from_edge: Length,
    },
}

/// A page.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Template {
    /// What is on it.
    pub pattern: Pattern,
    /// Which page of this pattern, from one.
    pub page: usize,
    /// Of how many.
    pub pages: usize,
    /// The drawing, to be printed as large as it is.
    pub drawing: Drawing,
}

/// A page with nothing but the bars by which its size is checked: 100 mm, and 4 in for a rule in inches.
fn blank() -> Drawing {
    let mut drawing = Drawing { figure: Some(FIGURE_MM), ..Drawing::default() };
    for (length, y, words) in [(100.0, 16.0, "100 mm"), (4.0 * 25.4, 5.0, "4 in")] {
        drawing.shapes.push(Shape::line(Layer::Datum, [0.0, y], [length, y]));
        for x in [0.0, length] {
            drawing.shapes.push(Shape::line(Layer::Datum, [x, y - 2.5], [x, y + 2.5]));
        }
        drawing.notes.push(Note::new([length / 2.0, y + 1.2], words));
    }
    drawing
}

/// Half the height of a cup's template, and how far it goes past the cup.
const CUP_HALF_MM: f64 = 40.0;
const PAST_MM: f64 = 15.0;

/// The cup, the cross through its middle, and the edge that it is measured from.
fn cup(centre: Length, diameter: Length) -> Drawing {
    let mut drawing = blank();
    let (x, radius) = (centre.as_mm(), diameter.as_mm() / 2.0);
    let (right, low, high) = (x + radius + PAST_MM, BARS_MM, BARS_MM + 2.0 * CUP_HALF_MM);
    let y = f64::midpoint(low, high);
    drawing.shapes.extend([
        Shape::Line {
            layer: Layer::Hidden,
            points: vec![[0.0, low], [right, low], [right, high], [0.0, high]],
            closed: false,
        },
        Shape::line(Layer::Datum, [0.0, low], [0.0, high]),
        Shape::Circle { layer: Layer::Hole, centre: [x, y], radius },
        Shape::line(Layer::Mark, [0.0, y], [right, y]),
        Shape::line(Layer::Mark, [x, y - radius - 5.0], [x, y + radius + 5.0]),
    ]);
    drawing.dimensions.extend([
        Dimension::new([0.0, low], [x, low], 7.0, centre),
        Dimension::new([x - radius, high], [x + radius, high], -9.0, diameter),
    ]);
    drawing
}

fn cups(cabinet: &Cabinet) -> Result<Vec<Template>, LengthError> {
    let mut known: Vec<([Length; 2], Vec<usize>)> = Vec::new();
    for door in cabinet.doors.iter().filter(|door| !door.cups.is_empty()) {
        // The cup is as wide as from its near edge to its far one.
        let size = [door.answer.cup_centre, door.answer.cup_far_edge.minus(door.answer.cup_edge)?];
        match known.iter_mut().find(|(other, _)| *other == size) {
            Some((_, doors)) => doors.push(door.on),
            None => known.push((size, vec![door.on])),
        }
    }
    let page = |([centre, diameter], doors): ([Length; 2], Vec<usize>)| Template {
        pattern: Pattern::Cup { doors },
        page: 1,
        pages: 1,
        drawing: cup(centre, diameter),
    };
    Ok(known.into_iter().map(page).collect())
}

/// A letter for each place where strips meet; after the last one from the first again.
fn letter(number: usize) -> String {
    let letters = 'A'..='Z';
    letters.cycle().nth(number % 26).map(String::from).unwrap_or_default()
}

/// Where the figures beside the holes have their middle, and how wide the strip is.
fn across(row: &Row) -> (f64, f64) {
    /// What the longest figure takes.
    const WORDS_MM: f64 = 20.0;
    let (edge, radius) = (row.from_edge.as_mm(), row.hole.as_mm() / 2.0);
    if edge - radius >= WORDS_MM + 2.0 {
        ((edge - radius) / 2.0, edge + radius + 8.0)
    } else {
        (edge + radius + 2.0 + WORDS_MM / 2.0, edge + radius + WORDS_MM + 4.0)
    }
}

/// A strip with its lower left corner at `x`, right above the bars.
fn draw(drawing: &mut Drawing, x: f64, row: &Row, strip: &Strip, number: usize) {
    let (words, wide) = across(row);
    let y = |along: Length| BARS_MM + along.as_mm() - strip.from.as_mm();
    let (low, high) = (BARS_MM, y(strip.to));
    let line = |layer, y| Shape::line(layer, [x, y], [x + wide, y]);
    let ends = |joined: bool| if joined { Layer::Mark } else { Layer::Hidden };
    let lower = if strip.from.is_zero() { Layer::Datum } else { ends(strip.goes_on_below) };
    drawing.shapes.extend([
        Shape::line(Layer::Datum, [x, low], [x, high]),
        Shape::line(Layer::Hidden, [x + wide, low], [x + wide, high]),
        line(lower, low),
        line(ends(strip.goes_on_above), high),
    ]);
    let beside = |y| [x + words, y];
    if strip.goes_on_below {
        drawing.notes.push(Note::new(beside(low + 1.2), letter(number - 1)));
    } else if !strip.from.is_zero() {
        drawing.notes.push(Note::of_length(beside(low + 1.2), strip.from));
    }
    if strip.goes_on_above {
        drawing.notes.push(Note::new(beside(high - FIGURE_MM - 1.2), letter(number)));
    }
    let (edge, radius) = (x + row.from_edge.as_mm(), row.hole.as_mm() / 2.0);
    for hole in &strip.holes {
        let centre = [edge, y(*hole)];
        drawing.shapes.push(Shape::Circle { layer: Layer::Hole, centre, radius });
        let arm = radius + 2.0;
        let cross =
            [([edge - arm, centre[1]], [edge + arm, centre[1]]), ([edge, centre[1] - arm], [edge, centre[1] + arm])];
        drawing.shapes.extend(cross.map(|(from, to)| Shape::line(Layer::Mark, from, to)));
        drawing.notes.push(Note::of_length(beside(centre[1] - FIGURE_MM / 3.0), *hole));
    }
}

/// The pages of a row: its strips side by side, from the lower end.
fn row_pages(row: &Row, uses: &[RowUse]) -> Result<Vec<Template>, LengthError> {
    let (_, wide) = across(row);
    let strips = strips::strips(&row.holes)?;
    let mut pages: Vec<(Drawing, f64)> = Vec::new();
    for (number, strip) in strips.iter().enumerate() {
        let room = pages.last().is_some_and(|(_, x)| x + wide <= PAGE_MM[0]);
        if !room {
            pages.push((blank(), 0.0));
        }
        if let Some((drawing, x)) = pages.last_mut() {
            draw(drawing, *x, row, strip, number);
            *x += wide + GAP_MM;
        }
    }
    let all = pages.len();
    let pattern = Pattern::Row { uses: uses.to_vec(), hole: row.hole, from_edge: row.from_edge };
    let page = |(at, (drawing, _))| Template { pattern: pattern.clone(), page: at + 1, pages: all, drawing };
    Ok(pages.into_iter().enumerate().map(page).collect())
}

/// Whether a page is wide enough for a row and the edge that it is measured from.
fn has_room(row: &Row) -> bool {
    across(row).1 <= PAGE_MM[0]
}

/// The rows that lie farther from their edge than a page is wide: they have no template, and are marked by measuring.
///
/// # Errors
/// [`LengthError`] when a place cannot be held.
pub fn without_template(cabinet: &Cabinet) -> Result<Vec<Pattern>, LengthError> {
    let far = strips::rows(cabinet)?.into_iter().filter(|(row, _)| !has_room(row));
    Ok(far.map(|(row, uses)| Pattern::Row { uses, hole: row.hole, from_edge: row.from_edge }).collect())
}

/// A template for every cup and every row, those that are alike once; but see [`without_template`].
///
/// # Errors
/// [`LengthError`] when a place cannot be held.
pub fn templates(cabinet: &Cabinet) -> Result<Vec<Template>, LengthError> {
    let mut pages = cups(cabinet)?;
    for (row, uses) in strips::rows(cabinet)? {
        if has_room(&row) {
            pages.extend(row_pages(&row, &uses)?);
        }
    }
    Ok(pages)
}
