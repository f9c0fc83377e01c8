//! What can be wrong with the order of cuts.

use super::flaw::Which;

/// Why the cuts of a layout do not make its parts. Sheets, settings and cuts are counted from nought; the cuts through
/// the whole list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[expect(missing_docs, reason = "the sentence above each says what it is and what its fields are")]
pub enum Misstep {
    #[error("The lengths have no common unit that 128 bits have room for.")]
    TooFine,
    #[error("Sheet {sheet} is cut from stock {stock}, which the job does not have.")]
    NoSuchStock { sheet: usize, stock: usize },
    #[error("Setting {setting} has no cuts.")]
    EmptySetting { setting: usize },
    #[error("Setting {setting} is that of the one before it.")]
    SameSetting { setting: usize },
    #[error("Cut {cut} of sheet {sheet} has not the way and the fence of its setting {setting}.")]
    OtherSetting { sheet: usize, cut: usize, setting: usize },
    #[error("Cut {cut} of sheet {sheet}: there is no piece {piece}, or not any more.")]
    NoSuchPiece { sheet: usize, cut: usize, piece: u32 },
    #[error("Cut {cut} of sheet {sheet}: piece {piece} is of another sheet.")]
    OtherSheet { sheet: usize, cut: usize, piece: u32 },
    #[error("Cut {cut} of sheet {sheet}: piece {piece} is finished and should not be cut.")]
    Finished { sheet: usize, cut: usize, piece: u32 },
    #[error("Cut {cut} of sheet {sheet}: the number {piece} is taken already.")]
    NumberTaken { sheet: usize, cut: usize, piece: u32 },
    #[error("Cut {cut} of sheet {sheet}: what lies against the fence is not as wide as the fence is set.")]
    Fence { sheet: usize, cut: usize },
    #[error("Cut {cut} of sheet {sheet}: what is kept does not lie at its edge of the piece, as long as that.")]
    Keeps { sheet: usize, cut: usize },
    #[error("Cut {cut} of sheet {sheet}: what falls off is not what the kerf leaves of the piece.")]
    Falls { sheet: usize, cut: usize },
    #[error("Cut {cut} of sheet {sheet}: the blade takes nothing away.")]
    NoCut { sheet: usize, cut: usize },
    #[error("Cut {cut} of sheet {sheet} trims what is not to be trimmed, or not by so much, or keeps the strip.")]
    Trim { sheet: usize, cut: usize },
    #[error("Sheet {sheet} is cut or finished before all four edges are trimmed.")]
    Untrimmed { sheet: usize },
    #[error("Cut {cut} of sheet {sheet} is one of stage {stage}, and there may be {most}.")]
    Stage { sheet: usize, cut: usize, stage: u8, most: u8 },
    #[error("Cut {cut} of sheet {sheet} is a longer rip than the saw takes.")]
    LongRip { sheet: usize, cut: usize },
    #[error("Sheet {sheet}: piece {piece} is left to be cut further, and is not.")]
    Unfinished { sheet: usize, piece: u32 },
    #[error("Sheet {sheet}: piece {piece} is called {which}, which does not lie there.")]
    NotThatPart { sheet: usize, piece: u32, which: Which },
    #[error("Sheet {sheet}: {which} never comes off the saw, or comes twice.")]
    PartCount { sheet: usize, which: Which },
    #[error("Sheet {sheet}: piece {piece} is called an offcut, and the layout has none there that is kept.")]
    NotThatOffcut { sheet: usize, piece: u32 },
    #[error("Sheet {sheet}: what is left over at place {left} of its list never comes off the saw, or comes twice.")]
    LeftCount { sheet: usize, left: usize },
    #[error("Sheet {sheet}: piece {piece} is called waste, and it is large enough to keep.")]
    GoodWaste { sheet: usize, piece: u32 },
}
