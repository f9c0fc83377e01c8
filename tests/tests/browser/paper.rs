//! Printed pages read back from PDF, knowing only the format: what is written, which lines and circles lie where, and
//! in which colours.

use lopdf::content::{Content, Operation};
use lopdf::{Dictionary, Document, Object, ObjectId};

/// A point on the page, in points of 1/72 inch from its lower left corner.
pub(crate) type Point = [f64; 2];

/// A page.
#[derive(Debug, Default)]
pub(crate) struct Page {
    /// Width and height.
    pub(crate) size: Point,
    /// Everything that is written, without spaces.
    pub(crate) text: String,
    /// Straight lines.
    pub(crate) lines: Vec<[Point; 2]>,
    /// Closed curves: the corners of what they take.
    pub(crate) round: Vec<[Point; 2]>,
    /// Every colour that is set, red, green and blue.
    pub(crate) colours: Vec<[f64; 3]>,
}

/// `[a b c d e f]` of the format: x' = a·x + c·y + e, y' = b·x + d·y + f.
type Matrix = [f64; 6];

/// First `inner`, then `outer`.
fn joined(inner: Matrix, outer: Matrix) -> Matrix {
    let [a, b, c, d, e, f] = inner;
    let [p, q, r, s, t, u] = outer;
    [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u]
}

fn numbers(objects: &[Object]) -> Vec<f64> {
    objects.iter().filter_map(|object| object.as_float().ok()).map(f64::from).collect()
}

/// A page on its way through its operations.
struct Walk<'a> {
    document: &'a Document,
    page: Page,
    matrix: Matrix,
    kept: Vec<Matrix>,
    /// The lines being drawn: their points, and whether there is a curve among them.
    paths: Vec<(Vec<Point>, bool)>,
}

impl Walk<'_> {
    fn place(&self, x: f64, y: f64) -> Point {
        let [a, b, c, d, e, f] = self.matrix;
        [a * x + c * y + e, b * x + d * y + f]
    }

    fn add(&mut self, x: f64, y: f64, curve: bool) {
        let point = self.place(x, y);
        if let Some((points, curved)) = self.paths.last_mut() {
            points.push(point);
            *curved |= curve;
        }
    }

    /// What was drawn goes onto the page.
    fn paint(&mut self) {
        for (points, curved) in self.paths.drain(..) {
            if !curved {
                self.page.lines.extend(points.windows(2).map(|pair| [pair[0], pair[1]]));
                continue;
            }
            let corner = |least: fn(f64, f64) -> f64, from: f64| {
                [0, 1].map(|axis| points.iter().map(|point| point[axis]).fold(from, least))
            };
            self.page.round.push([corner(f64::min, f64::INFINITY), corner(f64::max, f64::NEG_INFINITY)]);
        }
    }

    fn step(&mut self, operation: &Operation, resources: &Dictionary) {
        let given = numbers(&operation.operands);
        match (operation.operator.as_str(), given.as_slice()) {
            ("q", _) => self.kept.push(self.matrix),
            ("Q", _) => self.matrix = self.kept.pop().expect("a state to go back to"),
            ("cm", &[a, b, c, d, e, f]) => self.matrix = joined([a, b, c, d, e, f], self.matrix),
            ("m", &[x, y]) => {
                self.paths.push((Vec::new(), false));
                self.add(x, y, false);
            }
            ("l", &[x, y]) => self.add(x, y, false),
            ("c", &[.., x, y]) | ("v" | "y", &[_, _, x, y]) => self.add(x, y, true),
            ("h", _) => {
                if let Some((points, _)) = self.paths.last_mut() {
                    points.extend(points.first().copied());
                }
            }
            ("re", &[x, y, width, height]) => {
                self.paths.push((Vec::new(), false));
                for (x, y) in [(x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y)] {
                    self.add(x, y, false);
                }
            }
            ("S" | "s" | "f" | "F" | "f*" | "B" | "B*" | "b" | "b*", _) => self.paint(),
            ("n", _) => self.paths.clear(),
            ("rg" | "RG" | "sc" | "SC" | "scn" | "SCN", &[red, green, blue]) => {
                self.page.colours.push([red, green, blue]);
            }
            ("g" | "G" | "sc" | "SC" | "scn" | "SCN", &[grey]) => self.page.colours.push([grey; 3]),
            ("k" | "K" | "sh", _) => panic!("{operation:?} is not read here"),
            ("Do", _) => self.form(operation, resources),
            _ => {}
        }
    }

    /// A drawing within the drawing.
    fn form(&mut self, operation: &Operation, resources: &Dictionary) {
        let name = operation.operands[0].as_name().unwrap();
        let forms = self.document.get_dict_in_dict(resources, b"XObject").unwrap();
        let (_, form) = self.document.dereference(forms.get(name).unwrap()).unwrap();
        let form = form.as_stream().unwrap();
        assert_eq!(form.dict.get(b"Subtype").unwrap().as_name().unwrap(), b"Form", "no pictures on the sheet");
        let kept = self.matrix;
        if let Ok(matrix) = form.dict.get(b"Matrix").and_then(Object::as_array) {
            let own: Matrix = numbers(matrix).try_into().unwrap();
            self.matrix = joined(own, kept);
        }
        let own = self.document.get_dict_in_dict(&form.dict, b"Resources").unwrap_or(resources).clone();
        let content = form.decompressed_content().unwrap_or_else(|_| form.content.clone());
        self.all(&content, &own);
        self.matrix = kept;
    }

    fn all(&mut self, content: &[u8], resources: &Dictionary) {
        let depth = self.kept.len();
        for operation in &Content::decode(content).unwrap().operations {
            self.step(operation, resources);
        }
        assert_eq!(self.kept.len(), depth, "as many states kept as taken back");
    }
}

fn page(document: &Document, number: u32, id: ObjectId) -> Page {
    let dict = document.get_dictionary(id).unwrap();
    let media = dict.get_deref(b"MediaBox", document).or_else(|_| {
        let parent = dict.get_deref(b"Parent", document)?.as_dict()?;
        parent.get_deref(b"MediaBox", document)
    });
    let corners = numbers(media.unwrap().as_array().unwrap());
    let text = document.extract_text(&[number]).unwrap();
    let page = Page {
        size: [corners[2] - corners[0], corners[3] - corners[1]],
        text: without_spaces(&text),
        ..Page::default()
    };
    let resources = document.get_dict_in_dict(dict, b"Resources").unwrap();
    let mut walk = Walk { document, page, matrix: [1.0, 0.0, 0.0, 1.0, 0.0, 0.0], kept: Vec::new(), paths: Vec::new() };
    walk.all(&document.get_page_content(id), resources);
    walk.page
}

/// Letters that a font draws as one.
const DRAWN_AS_ONE: [(&str, &str); 5] = [("ﬀ", "ff"), ("ﬁ", "fi"), ("ﬂ", "fl"), ("ﬃ", "ffi"), ("ﬄ", "ffl")];

/// As text is compared: where a line breaks does not matter, nor which letters are drawn as one.
pub(crate) fn without_spaces(text: &str) -> String {
    let text: String = text.chars().filter(|letter| !letter.is_whitespace()).collect();
    DRAWN_AS_ONE.iter().fold(text, |text, (one, letters)| text.replace(one, letters))
}

/// Every page of a file.
pub(crate) fn pages(file: &[u8]) -> Vec<Page> {
    let document = Document::load_mem(file).unwrap();
    document.get_pages().into_iter().map(|(number, id)| page(&document, number, id)).collect()
}
