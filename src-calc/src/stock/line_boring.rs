//! Rows of holes in a cabinet's side: the usual sizes of the 32 mm system, and who says so.

use crate::source::Source;

/// The system: pitch, hole, front row, balance.
pub const SYSTEM: Source = Source::published(
    "three explanations of the 32 mm system, which is no formal standard: 5 mm holes 32 mm apart, the front row 37 mm behind the front edge, inset doors add the door's thickness; balanced panels have the rear row as far from the rear edge, and the first hole as far from the top as from the bottom",
);

/// Fittings that reach from row to row.
pub const BRIDGE: Source = Source::published(
    "three explanations of the 32 mm system: runners and other fittings that reach over both rows need them a whole number of steps apart",
);

/// How deep the holes are.
pub const DEPTH: Source = Source::practice("holes for shelf pins and screws: 10 to 13 mm deep, whatever the board");

/// The plate's two screws.
pub const PLATE: Source = Source::published(
    "three explanations of the 32 mm system and hinge makers' pages: a plate takes two holes of the front row, 32 mm apart",
);

/// The pitch, in millimetres.
pub const PITCH_MM: i64 = 32;
/// The front row behind the front edge, in millimetres.
pub const FRONT_MM: i64 = 37;
/// The least and the greatest usual depth, in millimetres.
pub const DEPTH_MM: (i64, i64) = (10, 13);
