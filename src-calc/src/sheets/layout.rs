//! What comes out: parts at their places, what is left over, and the order of cuts.

use crate::measure::{Length, Ratio};
use serde::{Deserialize, Serialize};

/// A rectangle on a sheet. `x` runs along the sheet's length and `y` along its width, from one corner of the whole sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Area {
    /// From the corner, along the sheet.
    pub x: Length,
    /// From the corner, across it.
    pub y: Length,
    /// Its size along the sheet.
    pub length: Length,
    /// Its size across it.
    pub width: Length,
}

/// A part at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Placed {
    /// Which of the job's parts.
    pub part: usize,
    /// Which of its pieces, counted from nought.
    pub copy: u32,
    /// Where it lies, and its size as it lies there.
    pub area: Area,
    /// Whether its length lies across the sheet.
    pub turned: bool,
}

/// A rectangle that is left over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Left {
    /// Where it lies.
    pub area: Area,
    /// Whether it is large enough to keep.
    pub keep: bool,
}

/// One sheet, cut up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Sheet {
    /// Which of the job's stock.
    pub stock: usize,
    /// The whole sheet.
    pub length: Length,
    /// The whole sheet.
    pub width: Length,
    /// The parts on it.
    pub parts: Vec<Placed>,
    /// What is left over: what is kept before what is not, the largest first.
    pub left: Vec<Left>,
}

/// Why a part is not on any sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, thiserror::Error)]
#[serde(rename_all = "snake_case")]
pub enum Unfit {
    /// No stock has its name.
    #[error("There is no stock of this name. Name one of the sheets, or add a sheet of this name.")]
    NoStock,
    /// It is larger than every sheet, either way round.
    #[error("It is larger than every trimmed sheet. A larger sheet is needed, or a part in two pieces.")]
    TooLarge,
    /// It would fit if it were turned.
    #[error("It fits only across the grain. Let its grain run free, or take a larger sheet.")]
    Grain,
    /// It would have to be cut by a rip that is longer than the saw can take.
    #[error("It needs a longer rip than the saw has room for.")]
    LongRip,
    /// It fits, but no sheet has room left.
    #[error("The sheets are used up. More sheets of this stock are needed.")]
    NoSheetLeft,
}

/// A part that is not on any sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Unplaced {
    /// Which of the job's parts.
    pub part: usize,
    /// How many of its pieces.
    pub count: u32,
    /// Why.
    pub why: Unfit,
}

/// Which way a cut runs: along the sheet's length or across it, whatever piece of it is being cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Way {
    /// Along the length of the sheet.
    Rip,
    /// Across it.
    Crosscut,
}

/// What a piece is once it lies beside the saw.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Becomes {
    /// A finished part of the job, and which of its pieces.
    Part {
        /// Which of the job's parts.
        part: usize,
        /// Which of its pieces.
        copy: u32,
    },
    /// An offcut to keep.
    Offcut,
    /// Waste.
    Waste,
    /// To be cut further.
    Rest,
}

/// A piece that a cut makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Piece {
    /// Its number, counted through the whole list. The sheets come first, in their order, from nought.
    pub id: u32,
    /// Where on its sheet it came from, and its size.
    pub area: Area,
    /// What it is.
    pub becomes: Becomes,
}

/// One cut: a piece goes in, the one against the fence and the one that falls off come out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Cut {
    /// Which sheet, in the order of the layout.
    pub sheet: usize,
    /// The number of the piece that is cut.
    pub piece: u32,
    /// Which way.
    pub way: Way,
    /// Whether it only trims the edge of a whole sheet.
    pub trim: bool,
    /// From the fence, or from the stop, to the near side of the blade.
    pub fence: Length,
    /// Whether the edge that lies against the fence is the far one: the greater `y` for a rip, the greater `x` for a
    /// crosscut.
    pub from_far: bool,
    /// The piece between fence and blade.
    pub keeps: Piece,
    /// The piece on the other side; none where the blade takes all that is left.
    pub falls: Option<Piece>,
}

/// Cuts that are made one after another without moving the fence.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Setting {
    /// Which way.
    pub way: Way,
    /// How the fence, or the stop, is set.
    pub fence: Length,
    /// The cuts.
    pub cuts: Vec<Cut>,
}

/// Everything about one way of cutting a job.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Layout {
    /// One for each sheet that is used, in the order in which the stock is listed.
    pub sheets: Vec<Sheet>,
    /// What could not be placed.
    pub unplaced: Vec<Unplaced>,
    /// What the sheets cost together, of those that have a price; nothing where none has.
    #[serde(skip)]
    pub price: Option<Ratio>,
    /// The order of cuts.
    pub settings: Vec<Setting>,
}

impl Layout {
    /// How many cuts.
    pub fn cuts(&self) -> usize {
        self.settings.iter().map(|setting| setting.cuts.len()).sum()
    }
}
