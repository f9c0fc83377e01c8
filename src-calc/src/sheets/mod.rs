//! Laying parts on sheets, and the order of the cuts.
//!
//! [`Search::new`] gives a first complete layout at once; [`Search::step`] betters it for as long as it is asked to, in
//! this order of goals: all parts cut; the least cost of sheets; the largest single offcut; the fewest settings of the
//! fence; the fewest cuts. [`Search::layout`] works the best one out to places, offcuts and cuts.
//!
//! # Method
//! A sheet is a tree of cuts whose waste is not decided before it is needed (`slicing`). A try takes some parts off one to
//! three sheets and lays them anew, with those that are on no sheet yet, large ones first and each where it wastes least
//! (`hunt`, `lay`, `fits`). The sheets may cost less than those of the best layout so far, so that a layout on which every part
//! finds a place is better; until then the area of what has no place is the measure, and a try that makes it larger is
//! accepted now and then, more seldom as the search cools down (`goal`). Such a search with a goal is due to J. Gardeyn and
//! T. Wauters (*A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem with guillotine
//! constraints*, European Journal of Operational Research 301, 2022, arXiv 2508.19306); the trees, the measure of waste
//! and the goals for offcut and settings are our own. `bound` says when no sheet can be saved.
//!
//! The larger offcut is found by the same search, on a sheet made smaller by what is to be left over. `carve` turns a tree
//! into cuts, `order` puts these in an order in which the fence is set seldom.
//!
//! # What was tried
//! Sheets for the 350 instances of `cargo xtask bench sheets`, fixed / turned, one seed, 60,000 tries each (some 0.3 s);
//! a sheet or two either way is chance. The bound is 4930 / 4750, the fewest known were 5003 / 4814.
//!
//! | | fixed | turned |
//! | --- | --- | --- |
//! | the best of eight first layouts | 5082 | 4904 |
//! | as it is now | 5009 | 4822 |
//! | no part over a few of a row's children | 5009 | 4830 |
//! | cooling down once instead of again and again | 5011 | 4827 |
//! | cooling down from twice as warm | 5009 | 4830 |
//! | at most 5, 12 parts off a sheet instead of 8 | 5016, 5009 | 4831, 4827 |
//! | a reward for waste that lies together on few sheets | 5012 | 4825 |
//! | the area that is left counted to the power of 0.7 | 5011 | 4829 |
//! | three times the noise in choosing a place | 5012 | 4826 |
//! | a place passed by twice as often | 5011 | 4826 |
//! | seldom more than one sheet ruined | 5014 | 4827 |
//! | a part to any place that has room, 4 of 256 times | 5010 | 4825 |
//!
//! With a second each, three seeds: 5005, 5007 and 5008 fixed, 4820, 4821 and 4823 turned.
//!
//! The last one changes nothing here, but without it small jobs in three stages take a sheet too many.

mod bound;
mod carve;
mod chance;
mod fits;
mod goal;
mod graft;
mod hunt;
mod job;
mod lay;
mod layout;
mod linear;
mod order;
mod search;
mod slicing;
mod task;
mod units;
mod worth;

pub use job::{Cuts, Grain, Job, JobError, Part, Saw, SheetGrain, Stock};
pub use layout::{Area, Becomes, Cut, Layout, Left, Piece, Placed, Setting, Sheet, Unfit, Unplaced, Way};
pub use linear::{Bar, BarLayout, CutBar, Wanted, cut_bars};
pub use search::{MOST_PIECES, Progress, Search};
