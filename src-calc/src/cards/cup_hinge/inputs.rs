//! What a person gives for a door on cup hinges.

use crate::measure::{Figure, Reading};
use crate::stock::hardware;
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// Which of the four is looked for; the other three are given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Find {
    /// How far the door covers the side.
    Overlay,
    /// The height of the mounting plate.
    #[default]
    PlateHeight,
    /// The distance from the door's edge to the cup's.
    CupEdge,
    /// The arm's constant, as from an old hinge whose sheet is lost.
    Constant,
}

impl Find {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::PlateHeight, Self::Overlay, Self::CupEdge, Self::Constant];
}

/// How the door sits on the side.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mounting {
    /// It covers an outer side.
    #[default]
    Full,
    /// It shares a partition with the next door.
    Half,
    /// It lies within the opening.
    Inset,
}

impl Mounting {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Full, Self::Half, Self::Inset];
}

/// How the overlay is given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Wish {
    /// By the gap that is to be seen: the reveal beside a full overlay door, the gap between two doors on a partition.
    #[default]
    Gap,
    /// By the overlay itself. An inset door has none, so its gap counts all the same.
    Overlay,
}

impl Wish {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Gap, Self::Overlay];
}

/// How many doors close the opening.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Doors {
    /// One door.
    #[default]
    One,
    /// A pair, hinged on both sides.
    Two,
}

impl Doors {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::One, Self::Two];
}

/// How the hinges are spread between the two outer ones.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Spread {
    /// Evenly.
    #[default]
    Even,
    /// A whole number of 32 mm steps apart, for sides that are bored in a row.
    Pitch,
}

impl Spread {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Even, Self::Pitch];
}

/// What the maker gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Which of the four is looked for.
    pub find: Find,
    /// How the door sits on the side.
    pub mounting: Mounting,
    /// How the overlay is given.
    pub wish: Wish,
    /// Overlay on the hinge side, for [`Wish::Overlay`].
    pub overlay: Reading,
    /// Full overlay: the reveal from the door's edge to the outer face of the side, for [`Wish::Gap`].
    pub reveal: Reading,
    /// The gap between two doors, on a partition or in a pair, and all round an inset door.
    pub gap: Reading,
    /// Height of the mounting plate, by the maker's name for it.
    pub plate_height: Reading,
    /// From the door's edge to the edge of the cup.
    pub cup_edge: Reading,
    /// The arm's constant, from the maker's sheet; below zero for inset arms.
    pub constant: Reading,
    /// Heights of the plates that can be had.
    pub plates: Vec<Reading>,
    /// Thickness of the carcass side.
    pub side: Reading,
    /// Thickness of the partition, for half overlay.
    pub partition: Reading,
    /// How many doors.
    pub doors: Doors,
    /// Opening width between the sides; `±` allowed.
    pub opening_width: Reading,
    /// Opening height; `±` allowed.
    pub opening_height: Reading,
    /// How far one door covers the side without hinges; blank for the same as the hinge side. Inset doors have the gap.
    pub other_overlay: Reading,
    /// How far the door covers the top; less than zero where it stops short. Inset doors have the gap.
    pub top_overlay: Reading,
    /// How far it covers the bottom, likewise.
    pub bottom_overlay: Reading,
    /// Thickness of the door.
    pub door_thickness: Reading,
    /// What the door is, for its weight.
    pub material: Choice,
    /// The door's weight with its handle, if it is known; needed for a material that is not in the table.
    pub door_weight: Figure,
    /// Cup hole diameter.
    pub cup_diameter: Reading,
    /// Cup hole depth.
    pub cup_depth: Reading,
    /// From the ends of the door to the middle of the outer hinges.
    pub end_distance: Reading,
    /// How many hinges on each door, if not by the table.
    pub hinges: Figure,
    /// How they are spread.
    pub spread: Spread,
    /// From the carcass' front edge to the line of the plate's holes, for a door in front of it.
    pub plate_setback: Reading,
    /// How far the lower end of the side lies below the opening; marks on the side are measured from there.
    pub datum: Reading,
    /// The gap that the door needs beside it to open, from the maker's table; blank if it is not known.
    pub least_reveal: Reading,
}

/// The pair of doors of a potting-shed cupboard.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            find: Find::PlateHeight,
            mounting: Mounting::Full,
            wish: Wish::Gap,
            overlay: Reading::mm("13"),
            reveal: Reading::mm("1.6"),
            gap: Reading::mm("3"),
            plate_height: Reading::mm("2"),
            cup_edge: Reading::mm("4"),
            constant: Reading::mm("11"),
            plates: hardware::PLATES_MM.iter().map(|mm| Reading::mm(&mm.to_string())).collect(),
            side: Reading::mm("14.6"),
            partition: Reading::mm("14.6"),
            doors: Doors::Two,
            opening_width: Reading::mm("800"),
            opening_height: Reading::mm("1140"),
            other_overlay: Reading::default(),
            top_overlay: Reading::mm("12"),
            bottom_overlay: Reading::mm("12"),
            door_thickness: Reading::mm("17.6"),
            material: Choice::find("plywood_birch").unwrap_or_default(),
            door_weight: Figure::default(),
            cup_diameter: Reading::mm("35"),
            cup_depth: Reading::mm("12.5"),
            end_distance: Reading::mm("100"),
            hinges: Figure::default(),
            spread: Spread::Even,
            plate_setback: Reading::mm("37"),
            datum: Reading::mm("14.6"),
            least_reveal: Reading::mm("1"),
        }
    }
}
