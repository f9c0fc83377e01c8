//! Groove and rabbet: how high the blade stands, where the fence stands for every pass, and what is left of the wood.

mod passes;
mod solved;
#[cfg(test)]
mod tests;
mod working;

pub use passes::{Pass, Wall};
pub use solved::solve;

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, Range, Reading};
use crate::working::Working;
use serde::{Deserialize, Serialize};

/// What is cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cut {
    /// A groove, with wood on both sides of it.
    #[default]
    Groove,
    /// A rabbet: the same right at the edge.
    Rabbet,
}

impl Cut {
    /// Both, in the order of a list.
    pub const ALL: &[Self] = &[Self::Groove, Self::Rabbet];

    /// The deepest that the trade goes, as a share of the thickness: half of it for a groove, two thirds for a rabbet.
    pub(super) const fn deepest(self) -> (i64, u64) {
        match self {
            Self::Groove => (1, 2),
            Self::Rabbet => (2, 3),
        }
    }
}

/// How the depth is given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Deep {
    /// A third of the thickness.
    #[default]
    Third,
    /// Half of it.
    Half,
    /// Two thirds of it, as for the rabbet of a back.
    TwoThirds,
    /// A depth of one's own.
    Own,
}

impl Deep {
    /// Every way, in the order of a list.
    pub const ALL: &[Self] = &[Self::Third, Self::Half, Self::TwoThirds, Self::Own];

    /// The share of the thickness; nothing for a depth of one's own.
    pub const fn share(self) -> Option<(i64, u64)> {
        match self {
            Self::Third => Some((1, 3)),
            Self::Half => Some((1, 2)),
            Self::TwoThirds => Some((2, 3)),
            Self::Own => None,
        }
    }
}

/// Which edge of the part runs along the fence.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Against {
    /// The edge that the groove lies at.
    #[default]
    NearEdge,
    /// The opposite edge. The width of the part must be known.
    FarEdge,
}

impl Against {
    /// Both, in the order of a list.
    pub const ALL: &[Self] = &[Self::NearEdge, Self::FarEdge];
}

/// What the maker gives. `Default` is the groove for the back in the side of a potting-shed cupboard.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What is cut.
    pub cut: Cut,
    /// Measured thickness of the part that is cut.
    pub thickness: Reading,
    /// Measured thickness of the panel that goes in. A ± is allowed.
    pub panel: Reading,
    /// How much wider than the panel the groove is cut.
    pub fit: Reading,
    /// Wood between the edge and the groove; only read for a groove.
    pub distance: Reading,
    /// How the depth is given.
    pub deep: Deep,
    /// A depth of one's own; only read for that.
    pub depth: Reading,
    /// What the blade takes.
    pub kerf: Reading,
    /// Which edge runs along the fence.
    pub against: Against,
    /// Width of the part, from the edge that the groove lies at to the opposite one. Blank when not needed: it must be
    /// known when the opposite edge is at the fence, and for the part that the back slides in past.
    pub part_width: Reading,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            cut: Cut::Groove,
            thickness: Reading::mm("14.6"),
            panel: Reading::mm("5.7"),
            fit: Reading::mm("0.3"),
            distance: Reading::mm("12"),
            deep: Deep::Third,
            depth: Reading::mm("6"),
            kerf: Reading::mm("3.2"),
            against: Against::NearEdge,
            part_width: Reading::mm("330"),
        }
    }
}

/// How it stands, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// At the upper end of its ±, the panel is thicker than the groove is wide.
    TooTight,
    /// Deeper than the trade goes: half the thickness for a groove, two thirds for a rabbet.
    TooDeep,
    /// It takes the panel, and enough wood is left.
    Good,
}

/// The part that is ripped right through, so that the back slides in past it: most often the bottom.
///
/// It is cut to the same width as the grooved parts first, and then back to the wall of the groove that the back's face
/// lies at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Ripped {
    /// Its width then, which is also the fence with its uncut edge against it, to the near side of the blade.
    pub width: Length,
    /// What comes off, the kerf included.
    pub off: Length,
}

/// How the saw is set.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Groove or rabbet.
    pub cut: Cut,
    /// Thickness of the part.
    pub thickness: Length,
    /// From the edge to the nearer wall; zero for a rabbet.
    pub starts_at: Length,
    /// Width of the groove.
    pub width: Length,
    /// From the edge to the farther wall.
    pub ends_at: Length,
    /// Its depth, which is the height of the upright blade above the table.
    pub depth: Length,
    /// The wood left under it.
    pub left: Length,
    /// The deepest that leaves enough wood.
    pub deepest: Length,
    /// Room beside the panel: low at its thickest, high at its thinnest; below zero it does not go in.
    pub play: Range,
    /// The kerf.
    pub kerf: Length,
    /// Which edge runs along the fence.
    pub against: Against,
    /// Every pass, the fence moving away from the blade.
    pub passes: Vec<Pass>,
    /// How far the fence moves between passes; nothing where there is one.
    pub shift: Option<Length>,
    /// How far one pass overlaps the next; nothing where there is one. At zero a ridge may be left standing.
    pub overlap: Option<Length>,
    /// Whether the blade comes so near to the fence that it needs a scrap face.
    pub scrap_face: bool,
    /// The part that the back slides in past; nothing where the width of the part was not given.
    pub ripped: Option<Ripped>,
    /// How it stands.
    pub verdict: Verdict,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// This card for the registry.
pub const CARD: Card = Card { slug: "groove", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
