//! Drawings on paper, at a scale that can be said.

use super::{Drawing, Point};

/// The scales of technical drawings, one to so many. From memory: ISO 5455.
const SCALES: [u32; 8] = [1, 2, 5, 10, 20, 50, 100, 200];
/// Height of the figures on paper, in millimetres. From memory: ISO 3098 begins with 1.8 and 2.5.
const FIGURE_MM: f64 = 2.5;

/// A drawing as it lies on paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Scaled {
    /// The drawing, in millimetres of the thing itself, its figures as large as paper wants them.
    pub drawing: Drawing,
    /// The scale: one to so many.
    pub one_to: u32,
}

impl Drawing {
    /// The drawing at a scale of one to so many.
    #[must_use]
    pub fn at_scale(self, one_to: u32) -> Scaled {
        let one_to = one_to.max(1);
        Scaled { drawing: Self { figure: Some(FIGURE_MM * f64::from(one_to)), ..self }, one_to }
    }

    /// The drawing at the largest of the usual scales at which all of it lies on so much paper, `[width, height]` in
    /// millimetres; at the smallest of them where none does.
    #[must_use]
    pub fn on_paper(self, [width, height]: Point) -> Scaled {
        let mut scaled = self.at_scale(SCALES[0]);
        for one_to in SCALES {
            scaled = scaled.drawing.at_scale(one_to);
            let [wide, high] = scaled.size_mm();
            if wide <= width && high <= height {
                break;
            }
        }
        scaled
    }
}

impl Scaled {
    /// Width and height of the paper that it takes, in millimetres.
    pub fn size_mm(&self) -> Point {
        let [low, high] = self.drawing.paper();
        [high[0] - low[0], high[1] - low[1]].map(|side| side / f64::from(self.one_to))
    }

    /// As SVG for a page, as large as the scale says; the page's style sheet says how the layers look.
    pub fn to_picture(&self, name: &str) -> String {
        self.drawing.svg(name, "", self.one_to)
    }
}
