//! Laying parts on sheets, and the order of the cuts.

mod job;
mod layout;

pub use job::{Cuts, Grain, Job, Part, Saw, SheetGrain, Stock};
pub use layout::{Area, Becomes, Cut, Layout, Left, Piece, Placed, Setting, Sheet, Unfit, Unplaced, Way};
