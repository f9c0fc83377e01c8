//! What a person gives for a cabinet that is to be weighed, lifted and hung.

use crate::measure::{AngleReading, Figure, Reading};
use crate::stock::fixings::{Screw, Stud};
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// How the cabinet's weight is known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Weight {
    /// From its panels.
    #[default]
    Parts,
    /// It was weighed, doors and shelves with it.
    Known,
}

impl Weight {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Parts, Self::Known];
}

/// How many doors it has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Doors {
    /// None.
    #[default]
    None,
    /// One over the whole front.
    One,
    /// A pair.
    Two,
}

impl Doors {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::None, Self::One, Self::Two];

    /// How many.
    pub const fn count(self) -> u32 {
        match self {
            Self::None => 0,
            Self::One => 1,
            Self::Two => 2,
        }
    }
}

/// How the contents are given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Load {
    /// So much per metre on the bottom and on every shelf.
    #[default]
    PerMetre,
    /// A mass for the bottom and for each shelf.
    Each,
}

impl Load {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::PerMetre, Self::Each];
}

/// How well the cabinet can be held, in the words of the lifting equation.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grip {
    /// Handles, or edges that the hand closes round.
    Good,
    /// Edges that the fingers bend under.
    #[default]
    Fair,
    /// Slippery or nothing to hold.
    Poor,
}

impl Grip {
    /// Good to poor.
    pub const ALL: &'static [Self] = &[Self::Good, Self::Fair, Self::Poor];
}

/// What the cabinet hangs by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hung {
    /// A bevelled wall cleat, which its fixings hold.
    #[default]
    Cleat,
    /// Fixings right through a rail in the cabinet.
    Rail,
}

impl Hung {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Cleat, Self::Rail];
}

/// What holds on the wall.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Fixing {
    /// Wood screws in studs.
    #[default]
    WoodScrew,
    /// Plugs or hollow-wall anchors, by the rating on the packet.
    Anchor,
}

impl Fixing {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::WoodScrew, Self::Anchor];
}

/// What the packet prints.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Rating {
    /// The load that one fixing may carry.
    #[default]
    Allowed,
    /// The load at which it fails; it is divided by the factor.
    Failure,
}

impl Rating {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Allowed, Self::Failure];
}

/// The most shelves: one level less than [`Inputs::levels`] has.
pub(super) const MOST_SHELVES: u32 = 7;

/// What the maker gives. `Default` hangs the potting-shed cupboard with its boots.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// How the weight is known.
    pub weight: Weight,
    /// The cabinet empty, with doors and shelves, for [`Weight::Known`].
    pub known_weight: Figure,
    /// Outer width.
    pub width: Reading,
    /// Outer height.
    pub height: Reading,
    /// Depth without doors, to the rear edges.
    pub depth: Reading,
    /// Thickness of sides, top, bottom and shelves.
    pub thickness: Reading,
    /// What they are.
    pub material: Choice,
    /// Thickness of the back, between the sides.
    pub back_thickness: Reading,
    /// What it is.
    pub back_material: Choice,
    /// How far the back's rear face is set in from the rear edges.
    pub back_inset: Reading,
    /// How many loose shelves, evenly spread.
    pub shelves: Figure,
    /// How many doors, in front of the carcass.
    pub doors: Doors,
    /// Thickness of the doors.
    pub door_thickness: Reading,
    /// What they are.
    pub door_material: Choice,
    /// The density of a material of one's own.
    pub own_density: Figure,
    /// How the contents are given.
    pub load: Load,
    /// Mass per metre of the bottom and of each shelf, for [`Load::PerMetre`].
    pub per_metre: Figure,
    /// Masses from the bottom up, for [`Load::Each`]; blank for nothing.
    pub levels: [Figure; 8],
    /// From the lifter's ankles out to the hands.
    pub hands_out: Reading,
    /// Height of the hands at the start of the lift.
    pub lift_from: Reading,
    /// Height of the hands at its end.
    pub lift_to: Reading,
    /// How far the body twists.
    pub twist: AngleReading,
    /// How well the cabinet can be held.
    pub grip: Grip,
    /// Height of the ceiling; blank if it is not tilted up below one.
    pub ceiling: Reading,
    /// What must stay free below the ceiling while it is tilted up.
    pub clearance: Reading,
    /// What the cabinet hangs by.
    pub hung: Hung,
    /// The bevel, from square: 30 to 60°.
    pub bevel: AngleReading,
    /// How far below the cabinet's top the bevel bears, or the fixings sit.
    pub bevel_down: Reading,
    /// How far the rear edges stand off the wall.
    pub stands_off: Reading,
    /// Thickness of the wall strip, or of the rail.
    pub strip: Reading,
    /// Height of the wall strip.
    pub strip_height: Reading,
    /// How far above the lower edge of the wall strip its fixings sit.
    pub fixings_up: Reading,
    /// Length of the strip or rail.
    pub strip_length: Reading,
    /// What holds on the wall.
    pub fixing: Fixing,
    /// How many.
    pub count: Figure,
    /// From the strip's end to the first fixing.
    pub first_at: Reading,
    /// From stud to stud.
    pub stud_pitch: Reading,
    /// What the studs are.
    pub stud: Stud,
    /// The specific gravity of a stud of one's own, oven-dry.
    pub own_gravity: Figure,
    /// What lies on the studs, such as plasterboard.
    pub lining: Reading,
    /// The wood screw.
    pub screw: Screw,
    /// Its diameter, for one of one's own.
    pub own_diameter: Reading,
    /// Its length.
    pub screw_length: Reading,
    /// The packet's rating for a pull out of the wall, one fixing.
    pub pull_rating: Figure,
    /// The packet's rating for a load along the wall, one fixing.
    pub shear_rating: Figure,
    /// What the packet prints.
    pub rating: Rating,
    /// What the load at which it fails is divided by.
    pub factor: Figure,
}

impl Default for Inputs {
    fn default() -> Self {
        let birch = || Choice::find("plywood_birch").unwrap_or_default();
        Self {
            weight: Weight::Parts,
            known_weight: "35".into(),
            width: Reading::mm("829.2"),
            height: Reading::mm("1169.2"),
            depth: Reading::mm("350"),
            thickness: Reading::mm("14.6"),
            material: birch(),
            back_thickness: Reading::mm("6.5"),
            back_material: birch(),
            back_inset: Reading::mm("15"),
            shelves: "2".into(),
            doors: Doors::Two,
            door_thickness: Reading::mm("17.6"),
            door_material: birch(),
            own_density: "650".into(),
            load: Load::PerMetre,
            per_metre: "9".into(),
            levels: Default::default(),
            hands_out: Reading::mm("300"),
            lift_from: Reading::mm("750"),
            lift_to: Reading::mm("1400"),
            twist: AngleReading::from("0"),
            grip: Grip::Fair,
            ceiling: Reading::mm("2300"),
            clearance: Reading::mm("10"),
            hung: Hung::Cleat,
            bevel: AngleReading::from("45"),
            bevel_down: Reading::mm("80"),
            stands_off: Reading::mm("0"),
            strip: Reading::mm("14.6"),
            strip_height: Reading::mm("70"),
            fixings_up: Reading::mm("37"),
            strip_length: Reading::mm("780"),
            fixing: Fixing::WoodScrew,
            count: "4".into(),
            first_at: Reading::mm("90"),
            stud_pitch: Reading::mm("600"),
            stud: Stud::SprucePineFir,
            own_gravity: "0.42".into(),
            lining: Reading::mm("12.5"),
            screw: Screw::No10,
            own_diameter: Reading::mm("5"),
            screw_length: Reading::mm("80"),
            pull_rating: "300 N".into(),
            shear_rating: "500 N".into(),
            rating: Rating::Allowed,
            factor: "4".into(),
        }
    }
}
