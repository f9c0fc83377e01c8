//! Cup hinges: the usual sizes, examples of the maker's figures, and how many a door needs.

use crate::source::Source;

/// The cup hole, its far edge, the plate's holes.
pub const CUP: Source = Source::published("catalogue pages of three hinge makers: cup hole 35 mm, 10.5 to 13 mm deep");

/// The distance that a maker allows between the door's edge and the cup's.
pub const CUP_EDGE: Source =
    Source::published("catalogue pages of three hinge makers: 3 to 7 mm by model, 3 to 6 mm usual");

/// The line of the plate's holes.
pub const PLATE_LINE: Source = Source::published(
    "three explanations of the 32 mm system and hinge makers' pages: 37 mm behind the front edge, holes 32 mm apart; inset doors add the door's thickness (one sheet adds 1.5 mm more)",
);

/// The overlay formula.
pub const OVERLAY: Source = Source::published(
    "two hinge makers' pages: overlay = arm constant + distance from the door's edge to the cup − height of the plate",
);

/// The arm's constant: there is no universal one.
pub const CONSTANT: Source = Source::published(
    "one hinge maker's sheet: 15 mm for full overlay, 5.5 for half, −4 for inset; others give 11 to 16 for full overlay. Take yours from the maker's sheet",
);

/// How near to the ends of the door the outer hinges sit.
pub const END_DISTANCE: Source =
    Source::published("one hinge maker's page: at least 80 mm from the ends of the door; 80 to 100 mm is usual");

/// Heights of mounting plates as they are commonly sold, mm.
pub const PLATES_MM: [i64; 4] = [0, 2, 3, 4];

/// A maker's published gap beside the door, as an example.
pub const LEAST_REVEAL: Source = Source::published(
    "one hinge maker's table, as an example: doors of 20 to 24 mm with the cup 3 to 7 mm in need 1.0 to 2.1 mm; a thick-door hinge at 3 mm needs 5.4 mm for a 30 mm door and 11.1 mm for 36 mm. Yours is in your maker's table",
);

/// The number of hinges.
pub const HINGE_COUNT: Source = Source::practice(
    "2 hinges to 900 mm and 6 kg, 3 to 1600 mm and 12 kg, 4 to 2000 mm and 17 kg, 5 to 2400 mm and 22 kg, the larger of the two; one maker publishes 2 for 4–6 kg, 3 for 6–12 kg",
);

/// The widest door for that number, and the hinge more for one a little wider.
pub const HINGE_WIDTH: Source =
    Source::published("one hinge maker's page: doors to 600 mm wide, one hinge more to 650 mm");

/// One line of the table: how many hinges carry a door up to this height and weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HingeClass {
    /// How many hinges.
    pub hinges: u64,
    /// The greatest height of the door, mm.
    pub height_mm: f64,
    /// The greatest weight of the door, kg.
    pub weight_kg: f64,
}

/// See [`HINGE_COUNT`].
pub const HINGE_CLASSES: [HingeClass; 4] = [
    HingeClass { hinges: 2, height_mm: 900.0, weight_kg: 6.0 },
    HingeClass { hinges: 3, height_mm: 1600.0, weight_kg: 12.0 },
    HingeClass { hinges: 4, height_mm: 2000.0, weight_kg: 17.0 },
    HingeClass { hinges: 5, height_mm: 2400.0, weight_kg: 22.0 },
];
