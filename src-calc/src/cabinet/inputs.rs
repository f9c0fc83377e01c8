//! What a maker gives for a whole cabinet: a dozen measurements, and how it is built.

use super::costs::Prices;
use super::handles::Handle;
use super::hooks::Hooks;
use super::outside::Outside;
use super::rail::Rail;
use super::sizes::{Holes, JointSizes};
use crate::cards::joints::Kind as Joint;
use crate::measure::{AngleReading, Figure, Reading};
use crate::stock::fixings::{Screw, Stud};
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// What width, height and depth are measures of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SizeFrom {
    /// The carcass over all, plinth or legs included, doors in front of it not.
    #[default]
    Outside,
    /// The room on the wall, doors included.
    Opening,
    /// What has to go in: clear width and height, and the depth of a shelf in front of the back.
    Inside,
}

impl SizeFrom {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::Outside, Self::Opening, Self::Inside];
}

/// How top and bottom meet the sides.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Corners {
    /// Top and bottom stand between the sides.
    #[default]
    Between,
    /// Top and bottom lie over the ends of the sides.
    Over,
}

impl Corners {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Between, Self::Over];
}

/// How the back is held.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Back {
    /// In grooves.
    #[default]
    Groove,
    /// In rabbets, from behind.
    Rabbet,
    /// Planted on the rear edges.
    Planted,
}

impl Back {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::Groove, Self::Rabbet, Self::Planted];
}

/// What the cabinet hangs or stands on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Stands {
    /// A bevelled wall cleat, behind the back.
    #[default]
    Cleat,
    /// Fixings through a rail under the top, in front of the back.
    Rail,
    /// A plinth.
    Plinth,
    /// Legs.
    Legs,
}

impl Stands {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::Cleat, Self::Rail, Self::Plinth, Self::Legs];

    /// Whether the wall carries it.
    pub const fn is_hung(self) -> bool {
        matches!(self, Self::Cleat | Self::Rail)
    }
}

/// How many doors close each bay.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Doors {
    /// None.
    None,
    /// One, hinged on the left.
    Left,
    /// One, hinged on the right.
    Right,
    /// A pair.
    #[default]
    Pair,
}

impl Doors {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::None, Self::Left, Self::Right, Self::Pair];
}

/// How the doors lie on the outer sides; on an upright between two bays they share it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Lie {
    /// Over the whole side but the reveal.
    #[default]
    Full,
    /// Over half of it, as beside another cabinet.
    Half,
    /// Within the opening.
    Inset,
}

impl Lie {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::Full, Self::Half, Self::Inset];
}

/// What the edges that are seen get.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Edging {
    /// Nothing.
    #[default]
    Bare,
    /// Strips of solid wood, glued on.
    Solid,
    /// Edge band.
    Band,
}

impl Edging {
    /// In the order of a list.
    pub const ALL: &'static [Self] = &[Self::Bare, Self::Solid, Self::Band];
}

/// A board that parts are cut from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Board {
    /// What it is.
    pub material: Choice,
    /// Its measured thickness; `±` allowed.
    pub thickness: Reading,
    /// What a sheet of it costs; blank if that does not matter.
    #[serde(default)]
    pub price: Figure,
}

impl Board {
    /// Of a material of the table, by its id, with its thickness as typed.
    fn of(material: &str, thickness: &str) -> Self {
        let material = Choice::find(material).unwrap_or_default();
        Self { material, thickness: Reading::mm(thickness), price: Figure::default() }
    }
}

/// What the maker gives. `Default` is the potting-shed cupboard.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What the next three are measures of.
    pub size_from: SizeFrom,
    /// Width; `±` allowed, as in the other two.
    pub width: Reading,
    /// Height.
    pub height: Reading,
    /// Depth.
    pub depth: Reading,
    /// What stays free on each side and above, for [`SizeFrom::Opening`].
    pub free: Reading,
    /// Sides, top, bottom, uprights.
    pub carcass: Board,
    /// Shelves, fixed and loose.
    pub shelf: Board,
    /// The back.
    pub back_board: Board,
    /// The doors.
    pub door: Board,
    /// Wall cleat, or the rail under the top.
    pub strip: Board,
    /// The density of a material of one's own, kg/m³.
    pub own_density: Figure,
    /// How top and bottom meet the sides.
    pub corners: Corners,
    /// What joins the carcass.
    pub joint: Joint,
    /// The sizes of what joins it.
    pub joint_sizes: JointSizes,
    /// How the back is held.
    pub back: Back,
    /// Depth of its grooves or rabbets.
    pub groove_depth: Reading,
    /// How much wider than the back they are cut.
    pub groove_fit: Reading,
    /// From the rear edges to the back, where nothing behind it says how far.
    pub back_set: Reading,
    /// What the back is smaller than its room, both edges together.
    pub clearance: Reading,
    /// Whether it runs past the bottom, so that it slides in from below.
    pub past_bottom: bool,
    /// What the saw takes.
    pub kerf: Reading,
    /// What it hangs or stands on.
    pub stands: Stands,
    /// How high its top comes above the floor, hung.
    pub top_at: Reading,
    /// Height of the ceiling; blank if nothing is above.
    pub ceiling: Reading,
    /// The cleat's bevel.
    pub bevel: AngleReading,
    /// Height of each strip, or of the rail.
    pub strip_height: Reading,
    /// How much farther in than the strip's thickness the back lies.
    pub slack: Reading,
    /// Height of plinth or legs.
    pub base: Reading,
    /// How far the plinth stands back.
    pub toe: Reading,
    /// Into how many bays uprights divide it.
    pub bays: Figure,
    /// Fixed shelves in each bay.
    pub fixed_shelves: Figure,
    /// Loose shelves in each bay.
    pub loose_shelves: Figure,
    /// What a loose shelf is shorter than its bay, both ends together.
    pub shelf_play: Reading,
    /// How far behind the front edges, or behind inset doors, the shelves end.
    pub shelf_back: Reading,
    /// No hole for a shelf comes nearer than this to a board above or below.
    pub least_gap: Reading,
    /// The bay that has a clothes rail and no shelves, from the left; blank for none.
    pub rail_bay: Figure,
    /// That rail.
    pub rail: Rail,
    /// What stands in it, kg for each metre of shelf.
    pub load: Figure,
    /// How many doors close each bay.
    pub doors: Doors,
    /// How they lie on the sides.
    pub lie: Lie,
    /// From a door's edge to the outer face of the cabinet.
    pub reveal: Reading,
    /// Between two doors, and all round an inset one.
    pub gap: Reading,
    /// The arm's constant of hinges for doors over a whole side, from their maker's sheet.
    pub arm: Reading,
    /// The same for doors that share a side or an upright.
    pub half_arm: Reading,
    /// The same for inset doors; less than zero.
    pub inset_arm: Reading,
    /// From the door's edge to the edge of the cup.
    pub cup_edge: Reading,
    /// Bits for pins and cups.
    pub holes: Holes,
    /// What doors are opened by.
    pub handle: Handle,
    /// What hangs below it.
    pub hooks: Hooks,
    /// A shelf outside, on brackets.
    pub outside: Outside,
    /// What the seen edges get.
    pub edging: Edging,
    /// How thick that is.
    pub edging_thickness: Reading,
    /// Length of a whole sheet of any of the boards.
    pub sheet_length: Reading,
    /// Its width.
    pub sheet_width: Reading,
    /// What the studs are.
    pub stud: Stud,
    /// From stud to stud.
    pub stud_pitch: Reading,
    /// The wall screws.
    pub screw: Screw,
    /// Their length.
    pub screw_length: Reading,
    /// How many of them.
    pub screws: Figure,
    /// What fittings cost.
    pub prices: Prices,
    /// The steps of the work that are done, part by part, by their place in the order of work.
    pub done: Vec<u32>,
    /// The work that they belong to.
    pub done_of: String,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            size_from: SizeFrom::Outside,
            width: Reading::mm("830"),
            height: Reading::mm("1170"),
            depth: Reading::mm("350"),
            free: Reading::mm("5"),
            carcass: Board::of("plywood_birch", "14.6 ± 0.2"),
            shelf: Board::of("plywood_birch", "14.6 ± 0.2"),
            back_board: Board::of("plywood_birch", "5.7 ± 0.1"),
            door: Board::of("plywood_birch", "17.6 ± 0.2"),
            strip: Board::of("plywood_birch", "14.6 ± 0.2"),
            own_density: "650".into(),
            corners: Corners::Between,
            joint: Joint::Dowel,
            joint_sizes: JointSizes::default(),
            back: Back::Groove,
            groove_depth: Reading::mm("6"),
            groove_fit: Reading::mm("0.3"),
            back_set: Reading::mm("12"),
            clearance: Reading::mm("2"),
            past_bottom: true,
            kerf: Reading::mm("3.2"),
            stands: Stands::Cleat,
            top_at: Reading::mm("2100"),
            ceiling: Reading::mm("2300"),
            bevel: AngleReading::from("45"),
            strip_height: Reading::mm("70"),
            slack: Reading::mm("0.5"),
            base: Reading::mm("80"),
            toe: Reading::mm("50"),
            bays: "1".into(),
            fixed_shelves: "0".into(),
            loose_shelves: "3".into(),
            shelf_play: Reading::mm("2"),
            shelf_back: Reading::mm("2"),
            least_gap: Reading::mm("100"),
            rail_bay: Figure::default(),
            rail: Rail::default(),
            load: "9".into(),
            doors: Doors::Pair,
            lie: Lie::Full,
            reveal: Reading::mm("1.6"),
            gap: Reading::mm("3"),
            arm: Reading::mm("11"),
            half_arm: Reading::mm("4"),
            inset_arm: Reading::mm("-5"),
            cup_edge: Reading::mm("4"),
            holes: Holes::default(),
            handle: Handle::default(),
            hooks: Hooks::default(),
            outside: Outside::default(),
            edging: Edging::Bare,
            edging_thickness: Reading::mm("1"),
            sheet_length: Reading::mm("2440"),
            sheet_width: Reading::mm("1220"),
            stud: Stud::SprucePineFir,
            stud_pitch: Reading::mm("600"),
            screw: Screw::No10,
            screw_length: Reading::mm("80"),
            screws: "4".into(),
            prices: Prices::default(),
            done: Vec::new(),
            done_of: String::new(),
        }
    }
}
