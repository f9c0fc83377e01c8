//! The cabinet from in front, from the side, from above.

use super::{along, is_behind, is_door};
use crate::cabinet::part::{Axis, Part, Stock, What};
use crate::cabinet::{Beside, Cabinet, OutsideShelf};
use crate::drawing::{Dimension, Drawing, Layer, Shape};
use crate::measure::{Length, LengthError};

/// How far beside the drawing a first dimension stands, and every further one, as shares of its larger side.
const BESIDE: f64 = 0.06;
const FURTHER: f64 = 0.06;
/// What the words of a length take at the most, as a share of the same: ten letters.
const WORDS: f64 = 0.19;

/// A part as a rectangle across two axes.
fn rect(part: &Part, layer: Layer, across: Axis, up: Axis, turned: bool) -> Shape {
    let ((left, right), (low, high)) = (along(part, across), along(part, up));
    let (low, high) = if turned { (-high, -low) } else { (low, high) };
    Shape::rect(layer, [left, low], [right, high])
}

/// Dimensions, row by row beside the drawing.
struct Rows {
    step: f64,
    first: f64,
}

impl Rows {
    fn beside(width: f64, height: f64) -> Self {
        let side = width.max(height);
        Self { step: side * FURTHER, first: side * BESIDE }
    }

    fn at(&self, row: u32) -> f64 {
        -(self.first + f64::from(row) * self.step)
    }
}

fn mm(length: Length) -> f64 {
    length.as_mm()
}

pub(super) fn front(cabinet: &Cabinet) -> Result<Drawing, LengthError> {
    let (width, height, base) = (mm(cabinet.width), mm(cabinet.height), mm(cabinet.base));
    let rows = Rows::beside(width, height);
    let mut drawing = Drawing::default();
    let parts = || cabinet.parts.iter().enumerate();
    for (on, part) in parts().filter(|(_, part)| part.stock == Stock::Back) {
        drawing.draw_of(on, [rect(part, Layer::Hidden, Axis::Across, Axis::Up, false)]);
    }
    // Behind what lies inside, so that this can still be touched.
    for door in &cabinet.doors {
        let [from, to] = [door.place.from, door.place.to].map(|corner| [mm(corner[0]), mm(corner[2])]);
        drawing.draw_of(door.on, [Shape::rect(Layer::Hidden, from, to)]);
    }
    let seen = parts().filter(|(_, part)| {
        !is_behind(part) && part.stock != Stock::Back && !is_door(cabinet, part) && part.what != What::PlinthRear
    });
    for (on, part) in seen {
        drawing.draw_of(on, [rect(part, Layer::Outline, Axis::Across, Axis::Up, false)]);
    }
    let brackets = cabinet.outside.iter().flat_map(OutsideShelf::brackets_in_front);
    drawing.shapes.extend(brackets.map(|points| Shape::Line { layer: Layer::Outline, points, closed: false }));
    drawing.shapes.extend(legs(cabinet, [0.0, width]));
    let low = lowest(cabinet, base);
    drawing.dimensions.push(Dimension::new([0.0, low], [width, low], rows.at(1), cabinet.width));
    for (from, to) in &cabinet.bays {
        drawing.dimensions.push(Dimension::new([mm(*from), low], [mm(*to), low], rows.at(0), to.minus(*from)?));
    }
    let over_all = cabinet.height.plus(cabinet.base)?;
    let left = leftmost(cabinet);
    let shortest = heights(cabinet, &rows, &mut drawing)?;
    // Words that are longer than what they measure stand level, and need the room.
    let row = if shortest < WORDS * width.max(height) { 4 } else { 1 };
    drawing.dimensions.push(Dimension::new([left, -base], [left, height], rows.at(row), over_all));
    Ok(drawing)
}

/// Legs, which are no parts, at both ends of what they stand under: as thick as half their distance from its end.
fn legs(cabinet: &Cabinet, [from, to]: [f64; 2]) -> Vec<Shape> {
    /// From the ends to the outer faces of legs, in millimetres. Common practice.
    const IN_BY_MM: f64 = 50.0;
    if !cabinet.legs {
        return Vec::new();
    }
    let (foot, thick) = (-mm(cabinet.base), IN_BY_MM / 2.0);
    let leg = |at: f64| Shape::rect(Layer::Outline, [at, foot], [at + thick, 0.0]);
    vec![leg(from + IN_BY_MM), leg(to - IN_BY_MM - thick)]
}

/// Where the lowest part ends, or the legs that are no parts.
fn lowest(cabinet: &Cabinet, base: f64) -> f64 {
    cabinet.parts.iter().map(|part| along(part, Axis::Up).0).fold(-base, f64::min)
}

/// Where the part farthest to the left begins.
fn leftmost(cabinet: &Cabinet) -> f64 {
    cabinet.parts.iter().map(|part| along(part, Axis::Across).0).fold(0.0, f64::min)
}

/// Clear heights from board to board of the first bay, on its left; gives the shortest, in millimetres.
fn heights(cabinet: &Cabinet, rows: &Rows, drawing: &mut Drawing) -> Result<f64, LengthError> {
    let mut boards: Vec<(Length, Length)> = Vec::new();
    for part in &cabinet.parts {
        let counts = matches!(part.what, What::Bottom | What::Top)
            || matches!(part.what, What::FixedShelf { bay: 1, .. } | What::LooseShelf { bay: 1, .. });
        if counts {
            boards.push(part.place.along(Axis::Up));
        }
    }
    boards.sort_unstable();
    let left = leftmost(cabinet);
    let mut shortest = f64::INFINITY;
    for (board, next) in boards.iter().zip(boards.iter().skip(1)) {
        let clear = next.0.minus(board.1)?;
        drawing.dimensions.push(Dimension::new([left, mm(board.1)], [left, mm(next.0)], rows.at(0), clear));
        shortest = shortest.min(mm(clear));
    }
    Ok(shortest)
}

/// Whether a part is met by a cut at that place of an axis.
fn is_cut(part: &Part, axis: Axis, at: f64) -> bool {
    let (from, to) = along(part, axis);
    from < at && at < to
}

/// Whether the clothes rail is round when it is cut through.
fn is_round(cabinet: &Cabinet) -> bool {
    cabinet.asked.clothes_rail.as_ref().is_some_and(|rail| rail.shape.is_round())
}

pub(super) fn section(cabinet: &Cabinet) -> Result<Drawing, LengthError> {
    // Beside the middle of the first bay, where two doors meet.
    let at = cabinet.bays.first().map_or(0.0, |(from, to)| 0.6 * mm(*from) + 0.4 * mm(*to));
    let (depth, height, base) = (mm(cabinet.depth), mm(cabinet.height), mm(cabinet.base));
    let rows = Rows::beside(depth, height);
    let mut drawing = Drawing::default();
    for (on, part) in cabinet.parts.iter().enumerate().filter(|(_, part)| is_cut(part, Axis::Across, at)) {
        let shape = match part.section {
            Some(quad) => Shape::Line { layer: Layer::Cut, points: quad.to_vec(), closed: true },
            None if part.what == What::Rail && is_round(cabinet) => {
                let ((rear, front), (low, high)) = (along(part, Axis::Deep), along(part, Axis::Up));
                let centre = [f64::midpoint(rear, front), f64::midpoint(low, high)];
                Shape::Circle { layer: Layer::Cut, centre, radius: (front - rear) / 2.0 }
            }
            None => rect(part, Layer::Cut, Axis::Deep, Axis::Up, false),
        };
        drawing.draw_of(on, [shape]);
    }
    if let Some(shelf) = cabinet.outside.as_ref().filter(|shelf| shelf.at == Beside::Under) {
        let (rear, high) = (mm(shelf.place.from[1]), mm(shelf.place.to[2]));
        let end = rear + mm(shelf.arm);
        let points = vec![[end, high + mm(shelf.leg)], [rear, high + mm(shelf.leg)], [rear, high], [end, high]];
        drawing.shapes.push(Shape::Line { layer: Layer::Outline, points, closed: false });
    }
    drawing.shapes.extend(legs(cabinet, [0.0, depth]));
    let low = lowest(cabinet, base);
    drawing.dimensions.push(Dimension::new([0.0, low], [depth, low], rows.at(1), cabinet.depth));
    let shelf = cabinet
        .parts
        .iter()
        .find(|part| matches!(part.what, What::LooseShelf { bay: 1, .. } | What::FixedShelf { bay: 1, .. }));
    if let Some(shelf) = shelf {
        let (from, to) = shelf.place.along(Axis::Deep);
        drawing.dimensions.push(Dimension::new([mm(from), low], [mm(to), low], rows.at(0), to.minus(from)?));
    }
    if let Some(back) = cabinet.parts.iter().find(|part| part.what == What::Back) {
        let (from, to) = back.place.along(Axis::Up);
        let left = along(back, Axis::Deep).0.min(0.0);
        drawing.dimensions.push(Dimension::new([left, mm(from)], [left, mm(to)], rows.at(0), to.minus(from)?));
    }
    let over_all = cabinet.height.plus(cabinet.base)?;
    drawing.dimensions.push(Dimension::new([0.0, -base], [0.0, height], rows.at(1), over_all));
    Ok(drawing)
}

pub(super) fn plan(cabinet: &Cabinet) -> Result<Drawing, LengthError> {
    // Clear of shelves: in the widest gap between boards.
    let mut edges: Vec<(f64, f64)> = cabinet
        .parts
        .iter()
        .filter(|part| part.thick == Axis::Up && part.stock != Stock::Edging && part.what != What::OutsideShelf)
        .map(|part| along(part, Axis::Up))
        .collect();
    edges.sort_by(|a, b| a.0.total_cmp(&b.0));
    let gaps = edges.iter().zip(edges.iter().skip(1)).map(|(board, next)| (board.1, next.0));
    let widest = gaps.max_by(|a, b| (a.1 - a.0).total_cmp(&(b.1 - b.0)));
    let at = widest.map_or(mm(cabinet.height) / 2.0, |(from, to)| f64::midpoint(from, to));
    let (width, depth) = (mm(cabinet.width), mm(cabinet.depth));
    let rows = Rows::beside(width, depth);
    let mut drawing = Drawing::default();
    let parts = || cabinet.parts.iter().enumerate();
    for (on, part) in parts().filter(|(_, part)| is_cut(part, Axis::Up, at) && !is_behind(part)) {
        drawing.draw_of(on, [rect(part, Layer::Cut, Axis::Across, Axis::Deep, true)]);
    }
    for (on, part) in parts().filter(|(_, part)| part.what == What::OutsideShelf && !is_cut(part, Axis::Up, at)) {
        drawing.draw_of(on, [rect(part, Layer::Hidden, Axis::Across, Axis::Deep, true)]);
    }
    // The grooves that the back lies in are cut out of the boards.
    let boards = cabinet.parts.iter().filter(|part| is_cut(part, Axis::Up, at));
    for groove in boards.flat_map(|part| &part.grooves) {
        let [from, to] = [groove.from, groove.to].map(|corner| [mm(corner[0]), -mm(corner[1])]);
        drawing.shapes.push(Shape::rect(Layer::Groove, from, to));
    }
    if let Some((on, back)) = parts().find(|(_, part)| part.what == What::Back) {
        drawing.draw_of(on, [rect(back, Layer::Cut, Axis::Across, Axis::Deep, true)]);
        let (from, to) = back.place.along(Axis::Across);
        let top = (-along(back, Axis::Deep).0).max(0.0);
        drawing.dimensions.push(Dimension::new([mm(from), top], [mm(to), top], -rows.at(0), to.minus(from)?));
    }
    let front = -cabinet.parts.iter().map(|part| along(part, Axis::Deep).1).fold(depth, f64::max);
    for door in &cabinet.doors {
        let (from, to) = door.place.along(Axis::Across);
        let beside = rows.at(0);
        drawing.dimensions.push(Dimension::new([mm(from), front], [mm(to), front], beside, to.minus(from)?));
    }
    drawing.dimensions.push(Dimension::new([0.0, front], [width, front], rows.at(1), cabinet.width));
    let left = leftmost(cabinet);
    drawing.dimensions.push(Dimension::new([left, -depth], [left, 0.0], rows.at(0), cabinet.depth));
    Ok(drawing)
}
