//! As SVG 1.1: one unit is a millimetre, `y` down as the format has it.

use super::{Dimension, Drawing, Layer, Point, STROKE, Shape};
use std::fmt::Write;

/// What an SVG of its own needs to look the same everywhere; on a page its style sheet has the last word.
const STYLE: &str = "text{font-family:sans-serif;stroke:none;fill:#124}path,circle{fill:none;stroke:#222}\
.HIDDEN{stroke-dasharray:4 3}.CUT{fill:#e8d9bd}.GROOVE{fill:#d8c7a5}.MARK,.DIMENSION{stroke:#15437e}.DATUM{stroke:#b3261e}";

fn number(value: f64) -> f64 {
    let rounded = (value * 1000.0).round() / 1000.0;
    // No minus before nothing.
    if rounded == 0.0 { 0.0 } else { rounded }
}

/// Text that means nothing to the format.
fn escaped(words: &str) -> String {
    words.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

fn path(out: &mut String, layer: Layer, points: &[Point], (closed, owner): (bool, &str), top: f64) {
    let mut d = String::new();
    for (at, [x, y]) in points.iter().enumerate() {
        // Writing to a text does not fail.
        let _ = write!(d, "{}{} {}", if at == 0 { "M" } else { "L" }, number(*x), number(top - y));
    }
    let end = if closed { "Z" } else { "" };
    let _ = write!(out, "<path class=\"{}\"{owner} d=\"{d}{end}\"/>", layer.name());
}

fn dimension(out: &mut String, dimension: &Dimension, figure: f64, top: f64) {
    let ends = dimension.ends();
    path(out, Layer::Dimension, &ends, (false, ""), top);
    let stroke = STROKE * figure;
    for [x, y] in ends {
        let across = if dimension.is_upright() {
            [[x - stroke, y], [x + stroke, y]]
        } else {
            [[x, y - stroke], [x, y + stroke]]
        };
        path(out, Layer::Dimension, &across, (false, ""), top);
    }
    let words = escaped(&dimension.words);
    let ([x, y], turned) = dimension.words_at(figure);
    let [x, y] = [x, top - y].map(number);
    let turn = if turned { format!(" transform=\"rotate(-90 {x} {y})\"") } else { String::new() };
    let _ = write!(out, "<text class=\"DIMENSION\" x=\"{x}\" y=\"{y}\"{turn} text-anchor=\"middle\">{words}</text>");
}

impl Drawing {
    /// The drawing as an SVG file; `name` is read out to those who do not see it.
    pub fn to_svg(&self, name: &str) -> String {
        self.svg(name, &format!("<style>{STYLE}</style>"), 1)
    }

    /// The same for a page, whose style sheet says how the layers look.
    pub fn to_picture(&self, name: &str) -> String {
        self.svg(name, "", 1)
    }

    /// As large on paper as one to so many.
    pub(super) fn svg(&self, name: &str, style: &str, one_to: u32) -> String {
        let [low, high] = self.paper();
        let (width, height, top) = (high[0] - low[0], high[1] - low[1], high[1]);
        let figure = self.figure_mm();
        let mut out = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"{}\" width=\"{}mm\" height=\"{}mm\" \
             viewBox=\"{} 0 {} {}\" font-size=\"{}\" stroke-width=\"{}\">{style}",
            escaped(name),
            number(width / f64::from(one_to)),
            number(height / f64::from(one_to)),
            number(low[0]),
            number(width),
            number(height),
            number(figure),
            number(figure / 10.0),
        );
        for (at, shape) in self.shapes.iter().enumerate() {
            let owner = self.owner_of(at).map(|owner| format!(" data-owner=\"{owner}\"")).unwrap_or_default();
            match shape {
                Shape::Line { layer, points, closed } => path(&mut out, *layer, points, (*closed, &owner), top),
                Shape::Circle { layer, centre: [x, y], radius } => {
                    let [x, y, radius] = [*x, top - y, *radius].map(number);
                    let class = layer.name();
                    let _ = write!(out, "<circle class=\"{class}\"{owner} cx=\"{x}\" cy=\"{y}\" r=\"{radius}\"/>");
                }
            }
        }
        for one in &self.dimensions {
            dimension(&mut out, one, figure, top);
        }
        for note in &self.notes {
            let [x, y] = [note.at[0], top - note.at[1]].map(number);
            let _ = write!(out, "<text x=\"{x}\" y=\"{y}\" text-anchor=\"middle\">{}</text>", escaped(&note.words));
        }
        out.push_str("</svg>");
        out
    }
}
