//! A part of a cabinet: what it is cut to, and where it lies.
//!
//! `x` runs across from the outer face of the left side, `y` from the rear edges to the front, `z` up from the lower
//! end of the carcass; plinth and legs stand below it.

use crate::measure::{Length, LengthError};
use serde::Serialize;

/// A direction in the cabinet, by its place in a corner's coordinates.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Axis {
    /// From left to right.
    Across,
    /// From the rear edges to the front.
    Deep,
    /// Up.
    Up,
}

/// A rectangular block, its faces along the axes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Block {
    /// Its corner at the left, rear and bottom.
    pub from: [Length; 3],
    /// The opposite corner.
    pub to: [Length; 3],
}

impl Block {
    /// From one coordinate to the other in each direction.
    pub(super) const fn new(x: (Length, Length), y: (Length, Length), z: (Length, Length)) -> Self {
        Self { from: [x.0, y.0, z.0], to: [x.1, y.1, z.1] }
    }

    /// From where to where it goes in a direction.
    pub const fn along(&self, axis: Axis) -> (Length, Length) {
        let [x, y, z] = [(self.from[0], self.to[0]), (self.from[1], self.to[1]), (self.from[2], self.to[2])];
        match axis {
            Axis::Across => x,
            Axis::Deep => y,
            Axis::Up => z,
        }
    }

    /// How far it goes in a direction.
    ///
    /// # Errors
    /// [`LengthError`] when the difference cannot be held.
    pub fn extent(&self, axis: Axis) -> Result<Length, LengthError> {
        let (from, to) = self.along(axis);
        to.minus(from)
    }
}

/// Which hand, seen from in front.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Hand {
    /// Left.
    Left,
    /// Right.
    Right,
}

/// What a part is. Bays, and what there are several of, are counted from one, from the left and from below.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// A side.
    Side(Hand),
    /// The top.
    Top,
    /// The bottom.
    Bottom,
    /// Between two bays.
    Upright {
        /// The bay to its left.
        after: u32,
    },
    /// A shelf that is joined.
    FixedShelf {
        /// In which bay.
        bay: u32,
        /// Which.
        number: u32,
    },
    /// A shelf on pins.
    LooseShelf {
        /// In which bay.
        bay: u32,
        /// Which.
        number: u32,
    },
    /// The back.
    Back,
    /// A door.
    Door {
        /// In front of which bay.
        bay: u32,
        /// On which side it is hinged.
        hinged: Hand,
    },
    /// A strip by which a door is opened.
    Handle {
        /// The door's place in the list of parts.
        on: usize,
    },
    /// The rail for hooks, under the bottom.
    HookRail,
    /// A shelf outside, on brackets.
    OutsideShelf,
    /// The cleat's strip on the cabinet.
    CabinetStrip,
    /// The cleat's strip on the wall.
    WallStrip,
    /// What keeps the cabinet upright below.
    Spacer,
    /// The rail under the top, for fixings to the wall.
    HangingRail {
        /// In which bay.
        bay: u32,
    },
    /// The front of the plinth.
    PlinthFront,
    /// Its rear.
    PlinthRear,
    /// What holds both apart.
    PlinthCross {
        /// Which, from the left.
        number: u32,
    },
    /// The clothes rail, bought by length.
    Rail,
    /// Solid wood or band on an edge of another part.
    Edging {
        /// That part's place in the list.
        on: usize,
    },
}

impl What {
    /// The name in the cut list.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Side(_) => "Side",
            Self::Top => "Top",
            Self::Bottom => "Bottom",
            Self::Upright { .. } => "Upright",
            Self::FixedShelf { .. } => "Fixed shelf",
            Self::LooseShelf { .. } => "Shelf",
            Self::Back => "Back",
            Self::Door { .. } => "Door",
            Self::Handle { .. } => "Handle strip",
            Self::HookRail => "Hook rail",
            Self::OutsideShelf => "Outside shelf",
            Self::CabinetStrip => "Cleat on the cabinet",
            Self::WallStrip => "Cleat on the wall",
            Self::Spacer => "Spacer",
            Self::HangingRail { .. } => "Hanging rail",
            Self::PlinthFront | Self::PlinthRear => "Plinth",
            Self::PlinthCross { .. } => "Plinth cross",
            Self::Rail => "Clothes rail",
            Self::Edging { .. } => "Edging",
        }
    }
}

/// Which board a part is cut from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Stock {
    /// Sides, top, bottom, uprights, plinth.
    Carcass,
    /// Shelves.
    Shelf,
    /// The back.
    Back,
    /// Doors.
    Door,
    /// Cleat or rail.
    Strip,
    /// Solid wood for handles.
    Handle,
    /// Clothes rail.
    Rail,
    /// Solid strips or band for edges.
    Edging,
}

impl Stock {
    /// As it is called in a cut list.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Carcass => "carcass",
            Self::Shelf => "shelf",
            Self::Back => "back",
            Self::Door => "door",
            Self::Strip => "strip",
            Self::Handle => "handle",
            Self::Rail => "rail",
            Self::Edging => "edging",
        }
    }
}

/// A part at its place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Part {
    /// What it is.
    pub what: What,
    /// Which board it is cut from.
    pub stock: Stock,
    /// Where it lies, before anything is cut out of it.
    pub place: Block,
    /// Which way its length, and the grain, runs.
    pub grain: Axis,
    /// Which way it is thick.
    pub thick: Axis,
    /// Grooves and rabbets: what is taken out of it.
    pub grooves: Vec<Block>,
    /// A bevelled strip's four corners `[y, z]` in millimetres, counter-clockwise.
    pub section: Option<[[f64; 2]; 4]>,
    /// Length, along the grain.
    pub length: Length,
    /// Width.
    pub width: Length,
    /// Thickness.
    pub thickness: Length,
}

impl Part {
    /// Its sizes follow from its place.
    ///
    /// # Errors
    /// [`LengthError`] when a size cannot be held.
    pub(super) fn new(
        what: What,
        stock: Stock,
        place: Block,
        (grain, thick): (Axis, Axis),
    ) -> Result<Self, LengthError> {
        let wide = match (grain, thick) {
            (Axis::Across, Axis::Up) | (Axis::Up, Axis::Across) => Axis::Deep,
            (Axis::Across, _) | (_, Axis::Across) => Axis::Up,
            _ => Axis::Across,
        };
        Ok(Self {
            what,
            stock,
            length: place.extent(grain)?,
            width: place.extent(wide)?,
            thickness: place.extent(thick)?,
            place,
            grain,
            thick,
            grooves: Vec::new(),
            section: None,
        })
    }
}
