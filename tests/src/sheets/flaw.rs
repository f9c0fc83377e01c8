//! What can be wrong with a layout.

use scantling::sheets::{Cuts, Unfit};
use std::fmt;

/// One piece of a part: its place in the job's list, and which of its pieces, both counted from nought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Which {
    /// Which of the job's parts.
    pub part: usize,
    /// Which of its pieces.
    pub copy: u32,
}

impl fmt::Display for Which {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "part {} (piece {})", self.part, self.copy)
    }
}

/// Why a layout is not one for its job. Sheets and parts are counted from nought, as in the layout.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[expect(missing_docs, reason = "the sentence above each says what it is and what its fields are")]
pub enum Flaw {
    #[error("The lengths have no common unit that 128 bits have room for.")]
    TooFine,
    #[error("Sheet {sheet} is cut from stock {stock}, which the job does not have.")]
    NoSuchStock { sheet: usize, stock: usize },
    #[error("Sheet {sheet} has not the size of its stock.")]
    SheetSize { sheet: usize },
    #[error("Sheet {sheet} is of stock that is listed before that of the sheet before it.")]
    SheetOrder { sheet: usize },
    #[error("Sheet {sheet} has no parts on it.")]
    EmptySheet { sheet: usize },
    #[error("{used} sheets of stock {stock} are used, and there are {there}.")]
    TooManySheets { stock: usize, used: usize, there: u32 },
    #[error("Sheet {sheet}: the job has no {which}.")]
    NoSuchPart { sheet: usize, which: Which },
    #[error("Sheet {sheet}: {which} is to be cut from other stock.")]
    OtherStock { sheet: usize, which: Which },
    #[error("Sheet {sheet}: {which} is placed a second time.")]
    Twice { sheet: usize, which: Which },
    #[error("Sheet {sheet}: {which} has not its size.")]
    PartSize { sheet: usize, which: Which },
    #[error("Sheet {sheet}: {which} lies against the grain.")]
    AgainstGrain { sheet: usize, which: Which },
    #[error("Sheet {sheet}: {which} is not wholly on the trimmed sheet.")]
    Outside { sheet: usize, which: Which },
    #[error("Sheet {sheet}: less than a kerf is between {one} and {other}.")]
    TooClose { sheet: usize, one: Which, other: Which },
    #[error("Sheet {sheet}: no order of {cuts:?} cuts from edge to edge separates its parts with rips short enough.")]
    NotSeparable { sheet: usize, cuts: Cuts },
    #[error("Sheet {sheet}: what is left over at place {left} of its list is not wholly on the trimmed sheet.")]
    LeftOutside { sheet: usize, left: usize },
    #[error("Sheet {sheet}: less than a kerf is between what is left over at place {left} and {which}.")]
    LeftNearPart { sheet: usize, left: usize, which: Which },
    #[error("Sheet {sheet}: less than a kerf is between what is left over at places {one} and {other}.")]
    LeftNearLeft { sheet: usize, one: usize, other: usize },
    #[error("Sheet {sheet}: what is left over at place {left} is kept or not against the rule of the job.")]
    Keep { sheet: usize, left: usize },
    #[error(
        "Sheet {sheet}: what is left over at place {left} should come before the one before it: what is kept, then what is large."
    )]
    LeftOrder { sheet: usize, left: usize },
    #[error("Part {part}: {wanted} are wanted, {placed} are on sheets and {unplaced} are said not to be.")]
    Count { part: usize, wanted: u32, placed: u32, unplaced: u32 },
    #[error("Part {part} is said not to be on any sheet twice over, or none of it is.")]
    UnplacedTwice { part: usize },
    #[error("Part {part} is said not to fit because of {said:?}, and it is because of {is:?}.")]
    Reason { part: usize, said: Unfit, is: Unfit },
    #[error("Part {part} is not on any sheet, and stock {stock} has a sheet for it.")]
    SheetLeft { part: usize, stock: usize },
    #[error("The price is not that of the sheets.")]
    Price,
}
