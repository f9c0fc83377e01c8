//! Why a length could not be made or worked out.

use serde::Serialize;

/// Why a length could not be made or worked out. `Display` is a sentence for the person at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, thiserror::Error)]
#[serde(rename_all = "snake_case")]
pub enum LengthError {
    /// The number is larger than can be held exactly.
    #[error("This is too long to be held exactly. Give a smaller number.")]
    TooLong,
    /// The fraction is finer than can be held exactly.
    #[error("This is too finely divided to be held exactly. Give fewer decimals or a coarser fraction.")]
    TooFine,
    /// Something was divided by zero.
    #[error("Nothing can be divided by zero.")]
    DividedByZero,
    /// An estimate came out as no number at all.
    #[error("This does not come out as a number.")]
    NoNumber,
}
