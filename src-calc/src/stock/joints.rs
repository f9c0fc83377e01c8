//! Joints along an edge: the usual sizes and distances, and who says so. None of it is a standard.

use crate::source::Source;

/// How far from the ends and from each other a kind of joint is usually set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// The least and the greatest distance of the outer ones from the ends, mm.
    pub ends_mm: (i64, i64),
    /// The one taken.
    pub end_mm: i64,
    /// The least and the greatest distance from middle to middle, mm.
    pub spacing_mm: (i64, i64),
    /// The greatest that is taken.
    pub every_mm: i64,
    /// Who says so.
    pub source: Source,
}

/// Loose tenons.
pub const TENON: Usual = Usual {
    ends_mm: (50, 75),
    end_mm: 60,
    spacing_mm: (150, 200),
    every_mm: 175,
    source: Source::practice("loose tenons: 150 to 200 mm apart, the first 50 to 75 mm from an end"),
};

/// Dowels.
pub const DOWEL: Usual = Usual {
    ends_mm: (32, 50),
    end_mm: 40,
    spacing_mm: (96, 150),
    every_mm: 128,
    source: Source::practice("dowels: 96 to 150 mm apart, 3 or 4 steps of 32; the first 32 to 50 mm from an end"),
};

/// One-piece connecting screws.
pub const CONNECTING: Usual = Usual {
    ends_mm: (40, 60),
    end_mm: 50,
    spacing_mm: (100, 150),
    every_mm: 128,
    source: Source::practice("one-piece connecting screws: 100 to 150 mm apart, often 128; 40 to 60 mm from the ends"),
};

/// Pocket screws.
pub const POCKET: Usual = Usual {
    ends_mm: (40, 60),
    end_mm: 50,
    spacing_mm: (150, 200),
    every_mm: 175,
    source: Source::practice("pocket screws: 150 to 200 mm apart, about 50 mm from the ends"),
};

/// Biscuits.
pub const BISCUIT: Usual = Usual {
    ends_mm: (50, 75),
    end_mm: 60,
    spacing_mm: (150, 200),
    every_mm: 175,
    source: Source::memory("biscuits: 150 to 200 mm apart, the first 50 to 75 mm from an end, as loose tenons"),
};

/// How thick a tenon or a dowel is.
pub const THIRD_TO_HALF: Source = Source::practice(
    "tenons about a third of the board's thickness, dowels a third to a half: 6 mm in 12, 8 in 16 to 19",
);

/// How deep a dowel goes.
pub const DOWEL_DEPTH: Source = Source::practice(
    "dowels: two thirds of the thickness into the face of the other board (12 to 13 mm in 19), the rest into the edge, 2 mm for glue in all",
);

/// How deep tenons and biscuits go.
pub const HALF_EACH: Source = Source::practice(
    "half of it in each part, less where the face part is too thin; loose tenons 15 to 25 mm each side, room for glue",
);

/// The depth on each side that is usual for a loose tenon, mm.
pub const TENON_DEPTH_MM: (i64, i64) = (15, 25);
/// The width along the joint that is usual for a loose tenon, mm.
pub const TENON_WIDTH_MM: (i64, i64) = (20, 50);

/// The holes of a one-piece connecting screw.
pub const CONNECTING_HOLES: Source = Source::practice(
    "one-piece connecting screw of 7 × 50 mm: 5 mm hole in the edge, 7 mm through the face part, countersunk; boards of 16 mm and thicker",
);

/// The thinnest board for a one-piece connecting screw, mm.
pub const CONNECTING_BOARD_MM: i64 = 16;

/// Lengths of one-piece connecting screws.
pub const CONNECTING_LENGTH: Source = Source::memory(
    "sold 40, 50, 60 and 70 mm long; the shortest that reaches 30 mm into the edge, as 50 mm does through 16 to 19 mm",
);

/// Lengths sold, mm.
pub const CONNECTING_LENGTHS_MM: [i64; 4] = [40, 50, 60, 70];
/// How far they should reach into the edge, mm.
pub const CONNECTING_REACH_MM: i64 = 30;

/// The length of a pocket screw for the thickness of the board with the pocket.
pub const POCKET_LENGTH: Source = Source::practice(
    "pocket screws: 25 mm long in boards of 12 to 13 mm, 32 mm in 18 to 19 mm; between and beyond from memory",
);

/// Up to this thickness of the board, in tenths of a millimetre, such a screw, in millimetres.
pub const POCKET_LENGTHS: [(i64, i64); 6] = [(115, 19), (165, 25), (205, 32), (270, 38), (340, 50), (400, 64)];

/// The slope of a pocket.
pub const POCKET_SLOPE: Source = Source::memory(
    "pockets are drilled at 15° to the face and come out in the middle of the edge; about three fifths of the screw stay in the board with the pocket. Guides differ: measure yours on a scrap",
);

/// The slope of a pocket, degrees.
pub const POCKET_DEGREES: f64 = 15.0;
/// The part of a pocket screw that stays in the board with the pocket.
pub const POCKET_SHARE: (i64, u64) = (3, 5);
/// The shank of a pocket screw, mm.
pub const POCKET_SHANK_MM: i64 = 4;

/// The sizes of biscuits.
pub const BISCUIT_SIZE: Source = Source::memory(
    "biscuits: no. 0 is 47 × 15 mm, no. 10 is 53 × 19, no. 20 is 56 × 23; the slot is 4 mm wide and cut by a disc of 100 mm",
);

/// Width of a biscuit's slot, mm.
pub const BISCUIT_SLOT_MM: i64 = 4;
