//! One number: whole, decimal, fraction, or a whole number with its fraction.

use super::{Kind, Parser, Token};
use crate::measure::{LengthError, Ratio, ReadError};

/// A number, and what it needs to be remembered by.
#[derive(Clone, Copy, Debug)]
pub(super) struct Literal {
    pub(super) value: Ratio,
    /// The count of digits, if the number is nothing but a whole one.
    pub(super) digits: Option<usize>,
    pub(super) at: usize,
}

/// A fraction behind a whole number.
struct Fraction {
    numerator: u64,
    denominator: u64,
    at: usize,
}

impl Fraction {
    fn is_below_one(&self) -> bool {
        self.numerator < self.denominator
    }

    fn is_on_a_tape(&self) -> bool {
        self.denominator.is_power_of_two() && self.denominator <= 128
    }

    fn value(&self) -> Result<Ratio, ReadError> {
        Ratio::lowest(false, self.numerator, self.denominator).map_err(|error| ReadError::Exact { error, at: self.at })
    }

    /// With the whole number before it.
    fn after(&self, whole: u64) -> Result<Ratio, ReadError> {
        if self.denominator != 0 && !self.is_below_one() {
            return Err(ReadError::FractionTooLarge { at: self.at });
        }
        Ratio::whole(whole).plus(self.value()?).map_err(|error| ReadError::Exact { error, at: self.at })
    }
}

impl Parser<'_> {
    /// The number that the next token starts, if it starts one.
    ///
    /// `after_operator` says that an operator stands before it without a space, so that a hyphen within is doubtful.
    pub(super) fn literal(&mut self, after_operator: bool) -> Result<Option<Literal>, ReadError> {
        let Token { kind, at, spaced } = self.peek();
        let (whole, digits) = match kind {
            Kind::Decimal(value) => {
                self.advance()?;
                return Ok(Some(Literal { value, digits: None, at }));
            }
            Kind::Vulgar { numerator, denominator } => {
                self.advance()?;
                let value = Fraction { numerator, denominator, at }.value()?;
                return Ok(Some(Literal { value, digits: None, at }));
            }
            Kind::Whole { value, digits } => (value, digits),
            _ => return Ok(None),
        };
        self.advance()?;
        if let Some(denominator) = self.denominator()? {
            let value = Fraction { numerator: whole, denominator, at }.value()?;
            return Ok(Some(Literal { value, digits: None, at }));
        }
        let next = self.peek();
        let value = match next.kind {
            Kind::Vulgar { numerator, denominator } => {
                self.advance()?;
                Some(Fraction { numerator, denominator, at: next.at }.after(whole)?)
            }
            Kind::Whole { value: numerator, digits: following } => {
                let second = self.clone();
                self.advance()?;
                match self.denominator()? {
                    Some(denominator) => Some(Fraction { numerator, denominator, at: next.at }.after(whole)?),
                    None if following == 3 && digits <= 3 => return Err(second.spaced_thousands(at)),
                    None => return Err(ReadError::OperatorMissing { at: next.at }),
                }
            }
            Kind::Minus { hyphen: true } if !next.spaced => self.hyphenated(whole, after_operator && !spaced, at)?,
            _ => None,
        };
        Ok(Some(match value {
            Some(value) => Literal { value, digits: None, at },
            None => Literal { value: Ratio::whole(whole), digits: Some(digits), at },
        }))
    }

    /// The rest of `5/8` without spaces, or of `5⁄8`, the parser standing behind the 5; nothing is consumed where
    /// the slash divides.
    fn denominator(&mut self) -> Result<Option<u64>, ReadError> {
        let slash = self.peek();
        let set = slash.kind == Kind::FractionSlash;
        if !(set || slash.kind == Kind::Slash && !slash.spaced) {
            return Ok(None);
        }
        let mut ahead = self.clone();
        ahead.advance()?;
        let below = ahead.peek();
        let Kind::Whole { value: denominator, .. } = below.kind else { return Ok(None) };
        if below.spaced && !set {
            return Ok(None);
        }
        if denominator == 0 {
            return Err(ReadError::Exact { error: LengthError::DividedByZero, at: below.at });
        }
        ahead.advance()?;
        *self = ahead;
        Ok(Some(denominator))
    }

    /// The rest of `23-5/8`, the parser standing on the hyphen; nothing is consumed where the hyphen subtracts.
    fn hyphenated(&mut self, whole: u64, doubtful: bool, at: usize) -> Result<Option<Ratio>, ReadError> {
        let mut ahead = self.clone();
        ahead.advance()?;
        let Token { kind, at: fraction_at, spaced } = ahead.peek();
        if spaced {
            return Ok(None);
        }
        let (numerator, denominator) = match kind {
            Kind::Vulgar { numerator, denominator } => {
                ahead.advance()?;
                (numerator, denominator)
            }
            Kind::Whole { value, .. } => {
                ahead.advance()?;
                let Some(denominator) = ahead.denominator()? else { return Ok(None) };
                (value, denominator)
            }
            _ => return Ok(None),
        };
        let fraction = Fraction { numerator, denominator, at: fraction_at };
        if !fraction.is_below_one() {
            return Ok(None);
        }
        let next = ahead.peek();
        let operator_follows = !next.spaced
            && matches!(next.kind, Kind::Plus | Kind::Minus { .. } | Kind::Times | Kind::Slash | Kind::Divide);
        if doubtful || operator_follows || !fraction.is_on_a_tape() {
            return Err(ReadError::AmbiguousHyphen {
                typed: format!("{whole}-{numerator}/{denominator}"),
                joined: format!("{whole} {numerator}/{denominator}"),
                subtracted: format!("{whole} - {numerator}/{denominator}"),
                at,
            });
        }
        let value = fraction.after(whole)?;
        *self = ahead;
        Ok(Some(value))
    }
}
