//! Drawings in millimetres: shapes on layers, and dimensions; written as SVG or as DXF.
//!
//! `x` runs to the right and `y` up, as on a drawing. Nothing here knows what is drawn.

mod dxf;
mod scaled;
mod svg;
#[cfg(test)]
mod tests;

use crate::measure::Length;
use serde::Serialize;

pub use scaled::Scaled;

/// A point in millimetres.
pub type Point = [f64; 2];

/// What a shape stands for, and so on which layer it lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Layer {
    /// An edge that is seen.
    Outline,
    /// An edge that is hidden, or a door that is taken off.
    Hidden,
    /// Wood that is cut through.
    Cut,
    /// A groove or a rabbet.
    Groove,
    /// A hole.
    Hole,
    /// A mark to be made, such as a line of joints.
    Mark,
    /// The corner that everything is measured from.
    Datum,
    /// Dimension lines and their figures.
    Dimension,
}

impl Layer {
    /// Every layer.
    pub const ALL: &'static [Self] =
        &[Self::Outline, Self::Hidden, Self::Cut, Self::Groove, Self::Hole, Self::Mark, Self::Datum, Self::Dimension];

    /// Its name in a file.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Outline => "OUTLINE",
            Self::Hidden => "HIDDEN",
            Self::Cut => "CUT",
            Self::Groove => "GROOVE",
            Self::Hole => "HOLE",
            Self::Mark => "MARK",
            Self::Datum => "DATUM",
            Self::Dimension => "DIMENSION",
        }
    }
}

/// Something drawn.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Shape {
    /// A line from point to point, closed or not.
    Line {
        /// Where it lies.
        layer: Layer,
        /// Its points, two or more.
        points: Vec<Point>,
        /// Whether it goes back to the first one.
        closed: bool,
    },
    /// A circle.
    Circle {
        /// Where it lies.
        layer: Layer,
        /// Its middle.
        centre: Point,
        /// Its radius.
        radius: f64,
    },
}

impl Shape {
    /// A rectangle between two opposite corners.
    pub fn rect(layer: Layer, from: Point, to: Point) -> Self {
        let points = vec![from, [to[0], from[1]], to, [from[0], to[1]]];
        Self::Line { layer, points, closed: true }
    }

    /// A straight line.
    pub fn line(layer: Layer, from: Point, to: Point) -> Self {
        Self::Line { layer, points: vec![from, to], closed: false }
    }

    /// Where it lies.
    pub const fn layer(&self) -> Layer {
        match self {
            Self::Line { layer, .. } | Self::Circle { layer, .. } => *layer,
        }
    }
}

/// A length in millimetres, without the unit.
fn in_mm(length: Length) -> String {
    let words = length.to_string();
    words.strip_suffix(" mm").unwrap_or(&words).to_owned()
}

/// A dimension: the length between two points, on a line beside them.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Dimension {
    /// From here.
    pub from: Point,
    /// To here; either on the same height or straight above.
    pub to: Point,
    /// How far beside the points its line lies: below or to the left of them where it is less than zero.
    pub beside: f64,
    /// What it measures.
    pub length: Length,
    /// What is written; at first the length in millimetres.
    pub words: String,
}

impl Dimension {
    /// A dimension that says its length.
    pub fn new(from: Point, to: Point, beside: f64, length: Length) -> Self {
        Self { from, to, beside, length, words: in_mm(length) }
    }

    /// Whether it measures upwards.
    pub fn is_upright(&self) -> bool {
        (self.to[1] - self.from[1]).abs() > (self.to[0] - self.from[0]).abs()
    }

    /// Where the middle of the foot of its words is, and whether they are turned: upwards they run along their line, unless
    /// they are longer than that, and then stand level beside it.
    fn words_at(&self, figure: f64) -> (Point, bool) {
        let [from, to] = self.ends();
        let (x, y) = (f64::midpoint(from[0], to[0]), f64::midpoint(from[1], to[1]));
        let (lift, wide) = (0.4 * figure, width_of(&self.words, figure));
        if !self.is_upright() {
            return ([x, y + lift], false);
        }
        if wide <= (to[1] - from[1]).abs() {
            return ([x - lift, y], true);
        }
        let beside = (STROKE + 0.3) * figure + wide / 2.0;
        ([if self.beside < 0.0 { x - beside } else { x + beside }, y - lift], false)
    }

    /// Where its line begins and ends.
    fn ends(&self) -> [Point; 2] {
        let shift = |[x, y]: Point| if self.is_upright() { [x + self.beside, y] } else { [x, y + self.beside] };
        [shift(self.from), shift(self.to)]
    }
}

/// Words at a place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Note {
    /// The middle of their lower edge.
    pub at: Point,
    /// What is said; where it is a length, at first that in millimetres.
    pub words: String,
    /// The length that it says, if it says one.
    pub length: Option<Length>,
}

impl Note {
    /// Words as they are.
    pub fn new(at: Point, words: impl Into<String>) -> Self {
        Self { at, words: words.into(), length: None }
    }

    /// A note that says a length.
    pub fn of_length(at: Point, length: Length) -> Self {
        Self { at, words: in_mm(length), length: Some(length) }
    }
}

/// A drawing.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Drawing {
    /// What is drawn, the last on top.
    pub shapes: Vec<Shape>,
    /// What is measured.
    pub dimensions: Vec<Dimension>,
    /// What is said beside it.
    pub notes: Vec<Note>,
    /// Shapes that belong to something, by their places in `shapes`, and the numbers of what they belong to.
    pub owned: Vec<(usize, usize)>,
    /// Height of its figures, in millimetres; where there is none, a share of its larger side.
    pub figure: Option<f64>,
}

/// Height of the figures, as a share of the larger side of a drawing.
const FIGURE_SHARE: f64 = 0.03;
/// Half the length of the strokes at the ends of a dimension, in heights of a figure.
const STROKE: f64 = 0.6;
/// How wide a letter is at most, in heights of a figure.
const LETTER: f64 = 0.62;

impl Drawing {
    /// Draws shapes that belong to what has this number.
    pub fn draw_of(&mut self, owner: usize, shapes: impl IntoIterator<Item = Shape>) {
        let from = self.shapes.len();
        self.shapes.extend(shapes);
        self.owned.extend((from..self.shapes.len()).map(|shape| (shape, owner)));
    }

    /// What a shape belongs to.
    fn owner_of(&self, shape: usize) -> Option<usize> {
        self.owned.iter().find(|(owned, _)| *owned == shape).map(|(_, owner)| *owner)
    }

    /// The lower left and the upper right corner of all shapes; nothing where there are none.
    pub fn extent(&self) -> Option<[Point; 2]> {
        let mut corners: Option<[Point; 2]> = None;
        let mut take = |[x, y]: Point| {
            let [low, high] = corners.get_or_insert([[x, y], [x, y]]);
            (low[0], low[1]) = (low[0].min(x), low[1].min(y));
            (high[0], high[1]) = (high[0].max(x), high[1].max(y));
        };
        for shape in &self.shapes {
            match shape {
                Shape::Line { points, .. } => points.iter().for_each(|point| take(*point)),
                Shape::Circle { centre: [x, y], radius, .. } => {
                    take([x - radius, y - radius]);
                    take([x + radius, y + radius]);
                }
            }
        }
        corners
    }

    /// Height of its figures, in millimetres.
    pub fn figure_mm(&self) -> f64 {
        if let Some(figure) = self.figure {
            return figure;
        }
        let Some([low, high]) = self.extent() else { return 1.0 };
        ((high[0] - low[0]).max(high[1] - low[1]) * FIGURE_SHARE).max(0.1)
    }

    /// What all of it takes, dimensions and notes included.
    fn paper(&self) -> [Point; 2] {
        let figure = self.figure_mm();
        let [mut low, mut high] = self.extent().unwrap_or([[0.0; 2], [1.0; 2]]);
        let mut take = |[x, y]: Point| {
            (low[0], low[1]) = (low[0].min(x), low[1].min(y));
            (high[0], high[1]) = (high[0].max(x), high[1].max(y));
        };
        for dimension in &self.dimensions {
            for [x, y] in dimension.ends() {
                take([x - 2.0 * figure, y - 2.0 * figure]);
                take([x + 2.0 * figure, y + 2.0 * figure]);
            }
            let ([x, y], turned) = dimension.words_at(figure);
            let half = if turned { 0.0 } else { width_of(&dimension.words, figure) / 2.0 };
            take([x - half, y]);
            take([x + half, y]);
        }
        for note in &self.notes {
            let half = width_of(&note.words, figure) / 2.0;
            take([note.at[0] - half, note.at[1] - figure]);
            take([note.at[0] + half, note.at[1] + 2.0 * figure]);
        }
        [[low[0] - figure, low[1] - figure], [high[0] + figure, high[1] + figure]]
    }
}

/// How wide words are at most, in millimetres.
fn width_of(words: &str, figure: f64) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "a label has a few dozen letters")]
    let letters = words.chars().count() as f64;
    letters * LETTER * figure
}
