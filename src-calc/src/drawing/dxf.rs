//! As DXF of release 12, the oldest that every reader knows: lines, circles and texts on named layers, in millimetres.
//!
//! Source: the published DXF reference, group codes of release 12 (from memory); read back by an independent library.

use super::{Drawing, Layer, Point, STROKE, Shape};
use std::fmt::Write;

/// Pairs of a group code and its value, a line each.
struct Pairs(String);

impl Pairs {
    fn text(&mut self, code: u16, value: &str) {
        // A line break would begin another pair.
        let value: String = value.chars().filter(|letter| !letter.is_control()).collect();
        // Writing to a text does not fail.
        let _ = write!(self.0, "{code}\r\n{value}\r\n");
    }

    fn number(&mut self, code: u16, value: f64) {
        let _ = write!(self.0, "{code}\r\n{value:.6}\r\n");
    }

    fn whole(&mut self, code: u16, value: u16) {
        let _ = write!(self.0, "{code}\r\n{value}\r\n");
    }

    fn point(&mut self, first: u16, [x, y]: Point) {
        self.number(first, x);
        self.number(first + 10, y);
        self.number(first + 20, 0.0);
    }

    fn entity(&mut self, kind: &str, layer: Layer) {
        self.text(0, kind);
        self.text(8, layer.name());
    }

    fn line(&mut self, layer: Layer, from: Point, to: Point) {
        self.entity("LINE", layer);
        self.point(10, from);
        self.point(11, to);
    }

    fn words(&mut self, words: &str, [x, y]: Point, height: f64, turned: f64) {
        self.entity("TEXT", Layer::Dimension);
        self.point(10, [x, y]);
        self.number(40, height);
        self.text(1, words);
        self.number(50, turned);
        // Centred on the second point.
        self.whole(72, 1);
        self.point(11, [x, y]);
    }

    /// The colours of the layers are the seven that have names.
    fn layers(&mut self) {
        self.text(0, "SECTION");
        self.text(2, "TABLES");
        self.text(0, "TABLE");
        self.text(2, "LAYER");
        self.whole(70, 8);
        for (layer, colour) in Layer::ALL.iter().zip([7, 8, 7, 3, 1, 5, 1, 4]) {
            self.text(0, "LAYER");
            self.text(2, layer.name());
            self.whole(70, 0);
            self.whole(62, colour);
            self.text(6, "CONTINUOUS");
        }
        self.text(0, "ENDTAB");
        self.text(0, "ENDSEC");
    }
}

impl Drawing {
    /// The drawing as a DXF file, in millimetres.
    pub fn to_dxf(&self) -> String {
        let figure = self.figure_mm();
        let mut out = Pairs(String::new());
        out.text(0, "SECTION");
        out.text(2, "HEADER");
        out.text(9, "$ACADVER");
        out.text(1, "AC1009");
        out.text(9, "$INSUNITS");
        out.whole(70, 4);
        out.text(0, "ENDSEC");
        out.layers();
        out.text(0, "SECTION");
        out.text(2, "ENTITIES");
        for shape in &self.shapes {
            match shape {
                Shape::Line { layer, points, closed } => {
                    let last = points.first().filter(|_| *closed);
                    for (from, to) in points.iter().zip(points.iter().skip(1).chain(last)) {
                        out.line(*layer, *from, *to);
                    }
                }
                Shape::Circle { layer, centre, radius } => {
                    out.entity("CIRCLE", *layer);
                    out.point(10, *centre);
                    out.number(40, *radius);
                }
            }
        }
        for dimension in &self.dimensions {
            let [from, to] = dimension.ends();
            out.line(Layer::Dimension, from, to);
            let stroke = STROKE * figure;
            let upright = dimension.is_upright();
            for [x, y] in [from, to] {
                let (a, b) =
                    if upright { ([x - stroke, y], [x + stroke, y]) } else { ([x, y - stroke], [x, y + stroke]) };
                out.line(Layer::Dimension, a, b);
            }
            let (at, turned) = dimension.words_at(figure);
            out.words(&dimension.words, at, figure, if turned { 90.0 } else { 0.0 });
        }
        for note in &self.notes {
            out.words(&note.words, note.at, figure, 0.0);
        }
        out.text(0, "ENDSEC");
        out.text(0, "EOF");
        out.0
    }
}
