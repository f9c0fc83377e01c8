//! Why a typed text is no length, angle or figure.

use super::LengthError;

/// Why a text could not be read. `Display` says what is wrong and what would be accepted.
///
/// `at` counts characters from the start of the text, from zero.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// Nothing was typed.
    #[error("Give a length, such as 23 5/8 in or 600 mm.")]
    Empty,
    /// Nothing was typed where an angle is wanted.
    #[error("Give an angle in degrees, such as 22.5 or 22°30'.")]
    EmptyAngle,
    /// Nothing was typed where a figure is wanted.
    #[error("Give a figure, such as 12.5.")]
    EmptyFigure,
    /// The text is longer than anybody's arithmetic.
    #[error("This is too long to read: at most {limit} characters.")]
    TooMuch {
        /// The most characters that are read.
        limit: usize,
        /// The first character too many.
        at: usize,
    },
    /// Brackets in brackets in brackets.
    #[error("These brackets go too deep: at most {limit} within each other.")]
    TooDeep {
        /// The most brackets within each other.
        limit: usize,
        /// The first bracket too many.
        at: usize,
    },
    /// A character that belongs in no reading.
    #[error("“{found}” does not belong here. Digits, + - * / ( ) and the units mm, cm, m, in, ft do.")]
    Unexpected {
        /// The character.
        found: char,
        /// Where it stands.
        at: usize,
    },
    /// A word that is no unit.
    #[error("“{word}” is not a unit of length known here. mm, cm, m, in and ft are.")]
    UnknownUnit {
        /// The word as typed.
        word: String,
        /// Where it starts.
        at: usize,
    },
    /// The letter x between two numbers.
    #[error("One length at a time: “x” is not read. To multiply, write * or ×.")]
    LetterTimes {
        /// Where it stands.
        at: usize,
    },
    /// The text ends where a number should follow.
    #[error("Something is missing at the end: a number should follow.")]
    Unfinished {
        /// The end.
        at: usize,
    },
    /// Something else stands where a number should.
    #[error("A number is missing before “{found}”.")]
    NumberMissing {
        /// What stands there instead.
        found: char,
        /// Where it stands.
        at: usize,
    },
    /// Two numbers with nothing to join them.
    #[error("Something is missing between these two numbers: a unit, or one of + - * /.")]
    OperatorMissing {
        /// Where the second one starts.
        at: usize,
    },
    /// A comma that may be decimal or may mark thousands.
    #[error("Is {typed} a decimal comma or a thousand? Write {decimal} or {whole}.")]
    AmbiguousComma {
        /// The number as typed.
        typed: String,
        /// How to write it if the comma is a decimal one.
        decimal: String,
        /// How to write it if the comma marks thousands.
        whole: String,
        /// Where the number starts.
        at: usize,
    },
    /// Marks between the thousands.
    #[error("Is {typed} one number with its thousands marked? Write it as {plain}.")]
    Thousands {
        /// The number as typed.
        typed: String,
        /// The digits without the marks.
        plain: String,
        /// Where the number starts.
        at: usize,
    },
    /// A hyphen that may join a whole number to its fraction, or may subtract.
    #[error("Does the hyphen in {typed} join or subtract? Write {joined} or {subtracted}.")]
    AmbiguousHyphen {
        /// The part as typed.
        typed: String,
        /// How to write it as one number.
        joined: String,
        /// How to write it as a subtraction.
        subtracted: String,
        /// Where the part starts.
        at: usize,
    },
    /// A whole number followed by a fraction of one or more.
    #[error("After a whole number the fraction should be less than one. Write one fraction, or + between them.")]
    FractionTooLarge {
        /// Where the fraction starts.
        at: usize,
    },
    /// A number after metres, centimetres or feet that may be several things.
    #[error("Which unit is this number in? Write it behind the number.")]
    UnitMissing {
        /// Where the number starts.
        at: usize,
    },
    /// A second unit on what is a length already.
    #[error("This has a unit already. Leave the second one out.")]
    UnitTwice {
        /// Where the second unit stands.
        at: usize,
    },
    /// A bracket that is never closed.
    #[error("This bracket is not closed. Write ) where it ends.")]
    NotClosed {
        /// Where the bracket opens.
        at: usize,
    },
    /// A closing bracket without its opening one.
    #[error("This bracket was never opened. Leave it out, or write ( where it starts.")]
    NotOpened {
        /// Where the bracket closes.
        at: usize,
    },
    /// A length multiplied by a length.
    #[error("A length times a length is an area. Leave the unit off one of them.")]
    LengthTimesLength {
        /// The operator.
        at: usize,
    },
    /// A number divided by a length.
    #[error("A number cannot be divided by a length. Give the number a unit, or leave the unit off behind the /.")]
    NumberOverLength {
        /// The operator.
        at: usize,
    },
    /// A length divided by a length as a result.
    #[error("A length divided by a length is a plain number, not a length. Multiply it by a length.")]
    NoLength {
        /// The division.
        at: usize,
    },
    /// A length divided by a length, then added to a length.
    #[error("A plain number (a length divided by a length) cannot be added to a length or taken from one.")]
    NumberPlusLength {
        /// The operator.
        at: usize,
    },
    /// `±` where one exact length is wanted.
    #[error("One exact length is wanted here. Leave the ± and what follows out.")]
    ToleranceNotWanted {
        /// The sign.
        at: usize,
    },
    /// `±` inside brackets, or a second one.
    #[error("Only one ± is read, at the end: 764 ± 0.5.")]
    ToleranceMisplaced {
        /// The sign.
        at: usize,
    },
    /// A tolerance below zero.
    #[error("What follows the ± cannot be less than zero.")]
    ToleranceNegative {
        /// The sign.
        at: usize,
    },
    /// Minutes or seconds of 60 or more, or behind decimals, or a second sign of the same kind.
    #[error("Write an angle as 22.5, 22 1/2 or 22°30': whole degrees first, then minutes and seconds below 60.")]
    AngleParts {
        /// Where the part starts.
        at: usize,
    },
    /// A word or a unit of length in an angle.
    #[error("“{word}” does not belong in an angle. Write it in degrees, such as 22.5 or 22°30'.")]
    NotInAngle {
        /// The word as typed.
        word: String,
        /// Where it starts.
        at: usize,
    },
    /// A figure that starts with its unit, or with any other word.
    #[error("“{word}” does not belong before the number. Write a figure, such as 12.5.")]
    NotInFigure {
        /// The word as typed.
        word: String,
        /// Where it starts.
        at: usize,
    },
    /// A unit that this figure is not measured in.
    #[error("“{word}” is not a unit for this. {accepted}")]
    UnknownFigureUnit {
        /// The unit as typed.
        word: String,
        /// A sentence: which units are.
        accepted: &'static str,
        /// Where it starts.
        at: usize,
    },
    /// A count that is not whole, or below zero.
    #[error("A whole number is wanted here, zero or more.")]
    NotWhole {
        /// Where the number starts.
        at: usize,
    },
    /// The numbers are too large or too fine, or a division by zero.
    #[error("{error}")]
    Exact {
        /// What went wrong.
        error: LengthError,
        /// Where.
        at: usize,
    },
}

impl ReadError {
    /// Where in the text it is, in characters from its start.
    pub const fn at(&self) -> usize {
        match self {
            Self::Empty | Self::EmptyAngle | Self::EmptyFigure => 0,
            Self::TooMuch { at, .. }
            | Self::TooDeep { at, .. }
            | Self::Unexpected { at, .. }
            | Self::UnknownUnit { at, .. }
            | Self::LetterTimes { at }
            | Self::Unfinished { at }
            | Self::NumberMissing { at, .. }
            | Self::OperatorMissing { at }
            | Self::AmbiguousComma { at, .. }
            | Self::Thousands { at, .. }
            | Self::AmbiguousHyphen { at, .. }
            | Self::FractionTooLarge { at }
            | Self::UnitMissing { at }
            | Self::UnitTwice { at }
            | Self::NotClosed { at }
            | Self::NotOpened { at }
            | Self::LengthTimesLength { at }
            | Self::NumberOverLength { at }
            | Self::NoLength { at }
            | Self::NumberPlusLength { at }
            | Self::ToleranceNotWanted { at }
            | Self::ToleranceMisplaced { at }
            | Self::ToleranceNegative { at }
            | Self::AngleParts { at }
            | Self::NotInAngle { at, .. }
            | Self::NotInFigure { at, .. }
            | Self::UnknownFigureUnit { at, .. }
            | Self::NotWhole { at }
            | Self::Exact { at, .. } => *at,
        }
    }
}
