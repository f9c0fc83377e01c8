//! Back panel: how large it is cut, whether it slides home, and whether it stays there.

mod across;
mod pieces;
mod read;
mod square;
#[cfg(test)]
mod tests;
mod working;

pub use across::{Across, Fit, Hold, Side, Window};
pub use pieces::{Division, Piece, Pieces, Seams};
pub use square::{Lean, Squareness};

use self::read::Cut;
use super::Card;
use crate::caution::Caution;
use crate::measure::{Figure, Length, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::movement::Sheet;
use crate::working::Working;
use serde::{Deserialize, Serialize};

/// What one edge of the panel does.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Way {
    /// It sits in a groove.
    #[default]
    Groove,
    /// It sits in a rabbet: stopped like in a groove, but put in from behind.
    Rabbet,
    /// It runs past the face of the opening, over the edge of the part, and is nailed there.
    PastEdge,
    /// It stops short of the face of the opening. It bears on nothing: the other edges hold the panel in its place.
    HeldShort,
}

impl Way {
    /// Every way, in the order of a list.
    pub const ALL: &[Self] = &[Self::Groove, Self::Rabbet, Self::PastEdge, Self::HeldShort];

    /// Whether the edge is stopped by the bottom of a groove or the side of a rabbet.
    pub const fn is_housed(self) -> bool {
        matches!(self, Self::Groove | Self::Rabbet)
    }
}

/// One edge of the back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Edge {
    /// What the edge does.
    pub way: Way,
    /// How deep the groove or rabbet is, how far the panel laps over the part's edge, or how far it is held short.
    /// A ± is allowed.
    pub depth: Reading,
}

impl Edge {
    /// An edge with its depth as typed, bare numbers in millimetres.
    pub fn new(way: Way, depth: &str) -> Self {
        Self { way, depth: Reading::mm(depth) }
    }
}

impl Default for Edge {
    fn default() -> Self {
        Self::new(Way::Groove, "8")
    }
}

/// What the maker gives. `Default` is the back of a potting-shed cupboard, open at the bottom to slide it in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Clear width between the faces of the two sides. A ± is allowed.
    pub opening_width: Reading,
    /// Clear height between the faces of bottom and top. A ± is allowed.
    pub opening_height: Reading,
    /// Left edge.
    pub left: Edge,
    /// Right edge.
    pub right: Edge,
    /// Top edge.
    pub top: Edge,
    /// Bottom edge.
    pub bottom: Edge,
    /// Clearance in each direction, both edges together. Taken off where at least one of the two edges sits in a
    /// groove or rabbet; an edge that runs past or is held short needs none.
    pub clearance: Reading,
    /// The least that must still bear in a groove or rabbet, or on the edge it is nailed to.
    pub least_engagement: Reading,
    /// What the panel is made of.
    pub sheet: Sheet,
    /// Growth of a sheet of one's own, in per cent over the whole swing of the humidity; only read for that.
    pub strain: Figure,
    /// From the driest to the wettest day, in points of relative humidity: 30 for a heated room (35 to 65 %). The
    /// panel may be cut on either day, so it is counted both ways.
    pub swing: Figure,
    /// How the back is divided.
    pub division: Division,
    /// Into how many equal pieces; only read for those.
    pub count: Figure,
    /// The widths of the scraps at hand, measured across the seams; only read for those. They must be long enough.
    pub scraps: Vec<Reading>,
    /// Which way the seams run.
    pub seams: Seams,
    /// The narrowest piece that is still no sliver.
    pub least_piece: Reading,
    /// The opening's diagonal from the bottom left to the top right; blank when not measured.
    pub first_diagonal: Reading,
    /// The opening's diagonal from the bottom right to the top left; blank when not measured.
    pub second_diagonal: Reading,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            opening_width: Reading::mm("564 ± 0.5"),
            opening_height: Reading::mm("702 ± 0.5"),
            left: Edge::default(),
            right: Edge::default(),
            top: Edge::default(),
            bottom: Edge::new(Way::PastEdge, "18"),
            clearance: Reading::mm("2"),
            least_engagement: Reading::mm("2"),
            sheet: Sheet::Plywood,
            strain: Figure::new("0.2"),
            swing: Figure::new("30"),
            division: Division::Whole,
            count: Figure::new("2"),
            scraps: vec![Reading::mm("310"), Reading::mm("12 in"), Reading::mm("450")],
            seams: Seams::Vertical,
            least_piece: Reading::mm("60"),
            first_diagonal: Reading::default(),
            second_diagonal: Reading::default(),
        }
    }
}

/// How the whole panel stands, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// It does not go in where the opening is smallest.
    DoesNotGoIn,
    /// On the driest day an edge can come out.
    FallsOut,
    /// On the wettest day it binds.
    Binds,
    /// On the driest day it bears by less than wanted.
    Short,
    /// It goes in, never binds and always bears.
    Good,
}

/// The size of the back, and whether it works.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Left to right.
    pub width: Across,
    /// Bottom to top.
    pub height: Across,
    /// The worse of both directions.
    pub verdict: Verdict,
    /// Growth from the driest to the wettest day, in per cent of the size.
    pub strain_percent: f64,
    /// The pieces it is made of.
    pub pieces: Pieces,
    /// The opening's diagonal, and its lean.
    pub squareness: Squareness,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// What holds for both directions.
struct Bounds {
    clearance: Length,
    least_engagement: Length,
    /// As a fraction of the size.
    strain: f64,
}

/// The size of the back.
///
/// # Errors
/// A [`Problem`] for each input that cannot be used: unreadable, at or below zero, or contradicting another.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let mut problems = Problems::default();
    let opening_width = read::opening(&mut problems, "opening_width", &inputs.opening_width);
    let opening_height = read::opening(&mut problems, "opening_height", &inputs.opening_height);
    let left = read::edge(&mut problems, "left.depth", &inputs.left);
    let right = read::edge(&mut problems, "right.depth", &inputs.right);
    let top = read::edge(&mut problems, "top.depth", &inputs.top);
    let bottom = read::edge(&mut problems, "bottom.depth", &inputs.bottom);
    let clearance = problems.zero_or_more("clearance", &inputs.clearance);
    let least_engagement = problems.zero_or_more("least_engagement", &inputs.least_engagement);
    let growth = read::growth(&mut problems, inputs);
    let cut = read::cut(&mut problems, inputs);
    let diagonals = read::diagonals(&mut problems, inputs);

    let (Some(opening_width), Some(opening_height)) = (opening_width, opening_height) else { return Err(problems) };
    let (Some(left), Some(right), Some(top), Some(bottom)) = (left, right, top, bottom) else { return Err(problems) };
    let (Some(clearance), Some(least_engagement)) = (clearance, least_engagement) else { return Err(problems) };
    let (Some(growth), Some(cut), Some(diagonals)) = (growth, cut, diagonals) else {
        return Err(problems);
    };

    let bounds = Bounds { clearance, least_engagement, strain: growth.percent / 100.0 };
    let width = Across::new(opening_width, [left, right], &bounds)?;
    let height = Across::new(opening_height, [bottom, top], &bounds)?;
    for (field, across) in [("opening_width", &width), ("opening_height", &height)] {
        if !across.size.low().is_positive() {
            problems.add(
                field,
                Problem::Clash {
                    why: "Nothing is left of the panel: the clearance and the gaps of edges held short take all of it.",
                },
            );
        }
    }
    let mut squareness = Squareness::new(&width, &height);
    if let Some((first, second)) = diagonals {
        squareness.lean = Lean::new(first.as_mm(), second.as_mm(), &width, &height);
        if squareness.lean.is_none_or(|lean| lean.degrees.abs() > 30.0) {
            problems.add(
                "second_diagonal",
                Problem::Clash {
                    why: "No opening of this width and height has two diagonals so far apart. Measure them again.",
                },
            );
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }

    let total = if inputs.seams == Seams::Vertical { width.size.nominal() } else { height.size.nominal() };
    let pieces = match cut {
        Cut::Equal(count) => Pieces::equal(total, count, inputs.seams)?,
        Cut::Scraps { scraps, least } => Pieces::from_scraps(total, &scraps, least, inputs.seams)?,
    };
    let working = working::show(inputs, &width, &height, growth, &pieces, &squareness);
    let verdict = verdict(&width).min(verdict(&height));
    let cautions = cautions(inputs, &width, &height);
    Ok(Answer { width, height, verdict, strain_percent: growth.percent, pieces, squareness, working, cautions })
}

fn verdict(across: &Across) -> Verdict {
    match (across.fit, across.hold) {
        (Fit::DoesNotGoIn, _) => Verdict::DoesNotGoIn,
        (_, Hold::FallsOut) => Verdict::FallsOut,
        (Fit::Binds, _) => Verdict::Binds,
        (_, Hold::Short) => Verdict::Short,
        (Fit::Free | Fit::NothingToBind, Hold::Bears | Hold::NothingToBear) => Verdict::Good,
    }
}

fn cautions(inputs: &Inputs, width: &Across, height: &Across) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if [&inputs.left, &inputs.right, &inputs.top, &inputs.bottom].iter().any(|edge| edge.way.is_housed()) {
        cautions.push(Caution::BlindCut);
    }
    // From about a metre on a panel is cut from a sheet that one person does not hold.
    if [width, height].iter().any(|across| across.size.nominal().as_mm() > 1000.0) {
        cautions.push(Caution::SheetHandling);
    }
    cautions.push(Caution::DustAndNoise);
    cautions
}

/// This card for the registry.
pub const CARD: Card =
    Card { slug: "back-panel", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
