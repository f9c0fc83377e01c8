//! What a person gives for rows of holes in the sides of a cabinet.

use crate::measure::Reading;
use serde::{Deserialize, Serialize};

/// From which end of the side everything is measured; drilling both hands from the same end keeps shelves level.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Datum {
    /// The lower end.
    #[default]
    Bottom,
    /// The upper end.
    Top,
}

impl Datum {
    /// Both ends.
    pub const ALL: &'static [Self] = &[Self::Bottom, Self::Top];
}

/// Where the first hole of a full row lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum First {
    /// As far from its end as the last hole from the other, and no nearer than the given distance.
    #[default]
    Balanced,
    /// At the given distance.
    Given,
}

impl First {
    /// Both ways.
    pub const ALL: &'static [Self] = &[Self::Balanced, Self::Given];
}

/// Where the doors hang: the front row lies behind them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Doors {
    /// In front of the sides, or there are none.
    #[default]
    InFront,
    /// Between the sides: the row moves back by the door's thickness.
    Inset,
}

impl Doors {
    /// Both ways.
    pub const ALL: &'static [Self] = &[Self::InFront, Self::Inset];
}

/// Where the rear row lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Rear {
    /// As far from the back edge as the front row from the front edge.
    #[default]
    Balanced,
    /// A whole number of steps behind the front row, and no nearer to the back edge than the front row to the front edge.
    Steps,
    /// At a distance of one's own from the back edge.
    Own,
    /// There is none.
    None,
}

impl Rear {
    /// Every way, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::Balanced, Self::Steps, Self::Own, Self::None];
}

/// What the maker gives. Everything along the side is measured from the datum end.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Length of the side, from its lower to its upper end.
    pub height: Reading,
    /// From the front edge to the back edge.
    pub depth: Reading,
    /// Thickness of the side.
    pub thickness: Reading,
    /// The datum end.
    pub datum: Datum,
    /// Where the first hole lies.
    pub first: First,
    /// The first hole from the datum end; the least for [`First::Balanced`].
    pub end_distance: Reading,
    /// From hole to hole.
    pub pitch: Reading,
    /// Where the doors hang.
    pub doors: Doors,
    /// Thickness of the door; only read for inset ones.
    pub door_thickness: Reading,
    /// The front row behind the front edge, or behind an inset door.
    pub front_setback: Reading,
    /// Where the rear row lies.
    pub rear: Rear,
    /// The rear row from the back edge; only read for [`Rear::Own`].
    pub rear_setback: Reading,
    /// No shelf sits nearer to the datum end than this; blank for the first hole.
    pub shelves_from: Reading,
    /// No shelf sits farther from the datum end than this; blank for the last hole.
    pub shelves_to: Reading,
    /// Where stretches without holes begin, one a line; a blank line begins at the datum end.
    pub skip_from: Vec<Reading>,
    /// Where they end, line by line; a blank line ends at the other end.
    pub skip_to: Vec<Reading>,
    /// Where the middles of hinge plates are wished.
    pub hinges: Vec<Reading>,
    /// Where the door begins: less than zero where it reaches past the datum end.
    pub door_end: Reading,
    /// Diameter of the holes.
    pub hole: Reading,
    /// How deep they are.
    pub hole_depth: Reading,
    /// From the middle of the drill to the edge of the rail that it runs along; the rail lies on the side's face, away
    /// from the edge that is next to the row.
    pub rail_offset: Reading,
}

/// The sides of a potting-shed cupboard with a pair of doors; pots stand too tall for a shelf in the middle.
impl Default for Inputs {
    fn default() -> Self {
        let list = |typed: &[&str]| typed.iter().map(|typed| Reading::mm(typed)).collect();
        Self {
            height: Reading::mm("1169.2"),
            depth: Reading::mm("330"),
            thickness: Reading::mm("14.6"),
            datum: Datum::Bottom,
            first: First::Balanced,
            end_distance: Reading::mm("40"),
            pitch: Reading::mm("32"),
            doors: Doors::InFront,
            door_thickness: Reading::mm("17.6"),
            front_setback: Reading::mm("37"),
            rear: Rear::Balanced,
            rear_setback: Reading::mm("37"),
            shelves_from: Reading::mm("200"),
            shelves_to: Reading::mm("970"),
            skip_from: list(&["520"]),
            skip_to: list(&["650"]),
            hinges: list(&["102.6", "584.6", "1066.6"]),
            door_end: Reading::mm("2.6"),
            hole: Reading::mm("5"),
            hole_depth: Reading::mm("10"),
            rail_offset: Reading::mm("16"),
        }
    }
}
