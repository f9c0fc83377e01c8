//! The cabinet taken apart: every part moved away from the middle, seen from the right and above.

use crate::cabinet::Cabinet;
use crate::cabinet::part::{Axis, Part};
use crate::drawing::{Drawing, Layer, Point, Shape};

/// How much farther from the middle a part is drawn than it lies.
const SPREAD: f64 = 0.55;

/// Corners of a block, low and high along each axis, moved away from the middle.
struct Moved {
    /// The part's place in the list of parts.
    on: usize,
    low: [f64; 3],
    high: [f64; 3],
}

impl Moved {
    fn new(on: usize, part: &Part, middle: [f64; 3]) -> Self {
        let [low, high] = [part.place.from, part.place.to].map(|corner| corner.map(crate::measure::Length::as_mm));
        let off = [0, 1, 2].map(|axis| SPREAD * (f64::midpoint(low[axis], high[axis]) - middle[axis]));
        Self {
            on,
            low: [0, 1, 2].map(|axis| low[axis] + off[axis]),
            high: [0, 1, 2].map(|axis| high[axis] + off[axis]),
        }
    }

    /// How near to the eye its middle is: the eye looks from the right, from in front and from above.
    fn near(&self) -> f64 {
        let middle = [0, 1, 2].map(|axis| f64::midpoint(self.low[axis], self.high[axis]));
        middle.iter().sum()
    }

    /// The three faces that are seen: right, front and top.
    fn faces(&self) -> [[[f64; 3]; 4]; 3] {
        let ([x0, y0, z0], [x1, y1, z1]) = (self.low, self.high);
        [
            [[x1, y0, z0], [x1, y1, z0], [x1, y1, z1], [x1, y0, z1]],
            [[x0, y1, z0], [x1, y1, z0], [x1, y1, z1], [x0, y1, z1]],
            [[x0, y0, z1], [x1, y0, z1], [x1, y1, z1], [x0, y1, z1]],
        ]
    }
}

/// Isometric: across falls to the right, the depth comes to the left and down.
fn seen([x, y, z]: [f64; 3]) -> Point {
    let (cos, sin) = (3.0_f64.sqrt() / 2.0, 0.5);
    [x * cos - y * cos, z - x * sin - y * sin]
}

pub(super) fn apart(cabinet: &Cabinet) -> Drawing {
    let middle = [cabinet.width, cabinet.depth, cabinet.height].map(|size| size.as_mm() / 2.0);
    let mut moved: Vec<Moved> = cabinet
        .parts
        .iter()
        .enumerate()
        .filter(|(_, part)| part.place.extent(Axis::Across).is_ok())
        .map(|(on, part)| Moved::new(on, part, middle))
        .collect();
    // What is far is drawn first, and what is near over it.
    moved.sort_by(|a, b| a.near().total_cmp(&b.near()));
    let face =
        |corners: [[f64; 3]; 4]| Shape::Line { layer: Layer::Cut, points: corners.map(seen).to_vec(), closed: true };
    let mut drawing = Drawing::default();
    for part in &moved {
        drawing.draw_of(part.on, part.faces().map(face));
    }
    drawing
}
