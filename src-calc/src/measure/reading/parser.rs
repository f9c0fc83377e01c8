//! From tokens to a length: precedence climbing, with the kind of each value carried along.

use super::lexer::{Kind, Lexer, Token};
use super::literal::Literal;
use crate::measure::{Length, LengthError, Ratio, ReadError, Unit};

/// The most brackets within each other.
const MOST_BRACKETS: usize = 32;

/// What a part of a reading is.
#[derive(Clone, Copy, Debug)]
enum Value {
    /// A number without a unit: a plain one, or a length in the field's unit, as it turns out.
    Bare(Ratio),
    /// Millimetres.
    Length(Ratio),
    /// A length divided by a length at that place, which is a plain number for good.
    Plain(Ratio, usize),
}

/// Reads one text. Cheap to copy, so it looks ahead by trying on a copy.
#[derive(Clone, Debug)]
pub(in crate::measure) struct Parser<'a> {
    typed: &'a str,
    lexer: Lexer<'a>,
    token: Token<'a>,
    /// What a bare number is in.
    bare: Unit,
    /// The unit that was written last.
    written: Option<Unit>,
    depth: usize,
}

impl<'a> Parser<'a> {
    pub(in crate::measure) fn new(typed: &'a str, bare: Unit) -> Result<Self, ReadError> {
        let mut lexer = Lexer::new(typed)?;
        let token = lexer.next()?;
        Ok(Self { typed, lexer, token, bare, written: None, depth: 0 })
    }

    /// The next token.
    pub(in crate::measure) const fn peek(&self) -> Token<'a> {
        self.token
    }

    /// Goes on by one token.
    pub(in crate::measure) fn advance(&mut self) -> Result<(), ReadError> {
        self.token = self.lexer.next()?;
        Ok(())
    }

    /// The text behind the next token's start, and where that is.
    pub(in crate::measure) fn rest(&self) -> (&'a str, usize) {
        let at = self.token.at;
        let start = self.typed.char_indices().nth(at).map_or(self.typed.len(), |(start, _)| start);
        (self.typed.get(start..).unwrap_or_default(), at)
    }

    /// A sign, if one stands here; whether it is a minus.
    pub(in crate::measure) fn sign(&mut self) -> Result<bool, ReadError> {
        let minus = match self.token.kind {
            Kind::Plus => false,
            Kind::Minus { .. } => true,
            _ => return Ok(false),
        };
        self.advance()?;
        Ok(minus)
    }

    /// One number without arithmetic, if one stands here, and whether it is nothing but a whole one.
    pub(in crate::measure) fn number(&mut self) -> Result<Option<(Ratio, bool)>, ReadError> {
        Ok(self.literal(false)?.map(|literal| (literal.value, literal.digits.is_some())))
    }

    /// The whole text: a length, and the tolerance with the place of its sign.
    pub(in crate::measure) fn reading(mut self) -> Result<(Length, Option<(Length, usize)>), ReadError> {
        if self.token.kind == Kind::End {
            return Err(ReadError::Empty);
        }
        let value = self.sum()?;
        let length = self.result(value, 0)?;
        let Token { kind: Kind::PlusMinus, at, .. } = self.token else {
            self.end()?;
            return Ok((length, None));
        };
        self.advance()?;
        self.bare = self.written.unwrap_or(self.bare);
        let start = self.token.at;
        let value = self.sum()?;
        let tolerance = self.result(value, start)?;
        if let Token { kind: Kind::PlusMinus, at, .. } = self.token {
            return Err(ReadError::ToleranceMisplaced { at });
        }
        self.end()?;
        if tolerance.is_negative() {
            return Err(ReadError::ToleranceNegative { at });
        }
        Ok((length, Some((tolerance, at))))
    }

    fn end(&self) -> Result<(), ReadError> {
        if self.token.kind == Kind::End { Ok(()) } else { Err(self.out_of_place()) }
    }

    /// A value as the length that it has to be.
    fn result(&self, value: Value, at: usize) -> Result<Length, ReadError> {
        let mm = match value {
            Value::Bare(number) => self.bare.to_mm(number),
            Value::Length(mm) => Ok(mm),
            Value::Plain(_, at) => return Err(ReadError::NoLength { at }),
        };
        mm.and_then(Length::from_mm).map_err(|error| ReadError::Exact { error, at })
    }

    /// Terms joined by `+` and `-`.
    fn sum(&mut self) -> Result<Value, ReadError> {
        let mut left = self.product(false)?;
        loop {
            let Token { kind, at, .. } = self.token;
            let minus = match kind {
                Kind::Plus => false,
                Kind::Minus { .. } => true,
                _ => return Ok(left),
            };
            self.advance()?;
            let right = self.product(true)?;
            left = self.added(left, right, minus, at)?;
        }
    }

    /// Factors joined by `*` and `/`.
    fn product(&mut self, after_operator: bool) -> Result<Value, ReadError> {
        let mut left = self.signed(after_operator)?;
        loop {
            let Token { kind, at, .. } = self.token;
            let divide = match kind {
                Kind::Times => false,
                Kind::Slash | Kind::Divide | Kind::FractionSlash => true,
                _ => return Ok(left),
            };
            self.advance()?;
            let right = self.signed(true)?;
            left = if divide { divided(left, right, at)? } else { multiplied(left, right, at)? };
        }
    }

    fn signed(&mut self, after_operator: bool) -> Result<Value, ReadError> {
        let negative = self.sign()?;
        let value = self.operand(after_operator)?;
        Ok(match value {
            _ if !negative => value,
            Value::Bare(number) => Value::Bare(number.negated()),
            Value::Length(mm) => Value::Length(mm.negated()),
            Value::Plain(number, at) => Value::Plain(number.negated(), at),
        })
    }

    /// A number or a bracket, with its unit.
    fn operand(&mut self, after_operator: bool) -> Result<Value, ReadError> {
        if let Some(first) = self.literal(after_operator)? {
            let value = match self.unit()? {
                None => Value::Bare(first.value),
                Some(unit) => self.compound(first, unit)?,
            };
            self.no_second_unit()?;
            return Ok(value);
        }
        let Token { kind: Kind::Open, at, .. } = self.token else { return Err(self.number_missing()) };
        if self.depth == MOST_BRACKETS {
            return Err(ReadError::TooDeep { limit: MOST_BRACKETS, at });
        }
        self.depth += 1;
        self.advance()?;
        let inner = self.sum()?;
        match self.token.kind {
            Kind::Close => self.advance()?,
            Kind::End => return Err(ReadError::NotClosed { at }),
            _ => return Err(self.out_of_place()),
        }
        self.depth -= 1;
        let unit_at = self.token.at;
        let value = match (self.unit()?, inner) {
            (None, inner) => inner,
            (Some(unit), Value::Bare(number)) => Value::Length(in_mm(number, unit, unit_at)?),
            (Some(_), _) => return Err(ReadError::UnitTwice { at: unit_at }),
        };
        self.no_second_unit()?;
        Ok(value)
    }

    /// The unit that stands here, if one does.
    fn unit(&mut self) -> Result<Option<Unit>, ReadError> {
        let unit = match self.token.kind {
            Kind::Stroke => Unit::Ft,
            Kind::Strokes => Unit::In,
            Kind::Word(word) => match Unit::of_word(word) {
                Some(unit) => unit,
                None => return Err(self.out_of_place()),
            },
            _ => return Ok(None),
        };
        self.written = Some(unit);
        self.advance()?;
        Ok(Some(unit))
    }

    fn no_second_unit(&self) -> Result<(), ReadError> {
        match self.token.kind {
            Kind::Stroke | Kind::Strokes => Err(ReadError::UnitTwice { at: self.token.at }),
            Kind::Word(word) if Unit::of_word(word).is_some() => Err(ReadError::UnitTwice { at: self.token.at }),
            _ => Ok(()),
        }
    }

    /// `2' 3 1/2"`, `1 m 20 cm`: what follows the first number and its unit.
    fn compound(&mut self, first: Literal, unit: Unit) -> Result<Value, ReadError> {
        let mut total = in_mm(first.value, unit, first.at)?;
        let (mut unit, mut part) = (unit, first);
        // Each part is in a smaller unit than the one before, so there are three at most.
        while part.digits.is_some() {
            let Some((next, smaller)) = self.smaller_part(part, unit)? else { break };
            total = total
                .plus(in_mm(next.value, smaller, next.at)?)
                .map_err(|error| ReadError::Exact { error, at: next.at })?;
            (part, unit) = (next, smaller);
        }
        Ok(Value::Length(total))
    }

    /// The next part of a compound, with its unit, written or understood.
    fn smaller_part(&mut self, part: Literal, unit: Unit) -> Result<Option<(Literal, Unit)>, ReadError> {
        if unit == Unit::Ft
            && let Token { kind: Kind::Minus { hyphen: true }, spaced: false, .. } = self.token
        {
            return self.hyphened_inches();
        }
        let Some(next) = self.literal(false)? else { return Ok(None) };
        if unit == Unit::Ft && self.token.kind != Kind::Strokes && is_marked_thousand(part, next) {
            return Err(self.clone().marked_thousands(part.at));
        }
        let smaller = match (unit, self.unit()?) {
            (Unit::Ft, Some(Unit::In)) => Unit::In,
            (Unit::M, Some(smaller @ (Unit::Cm | Unit::Mm))) => smaller,
            (Unit::Cm, Some(Unit::Mm)) => Unit::Mm,
            (Unit::Ft, None) if next.value < Ratio::whole(12) => Unit::In,
            (Unit::M, None) if next.digits == Some(2) => Unit::Cm,
            (Unit::Ft | Unit::M | Unit::Cm, None) => return Err(ReadError::UnitMissing { at: next.at }),
            _ => return Err(ReadError::OperatorMissing { at: next.at }),
        };
        self.written = Some(smaller);
        Ok(Some((next, smaller)))
    }

    /// The rest of `2'-3 1/2"`; nothing is consumed where the hyphen subtracts.
    fn hyphened_inches(&mut self) -> Result<Option<(Literal, Unit)>, ReadError> {
        let mut ahead = self.clone();
        ahead.advance()?;
        if ahead.token.spaced {
            return Ok(None);
        }
        let Some(next) = ahead.literal(false)? else { return Ok(None) };
        let inches = match ahead.unit()? {
            Some(unit) => unit == Unit::In,
            None => true,
        };
        if !inches || next.value >= Ratio::whole(12) {
            return Ok(None);
        }
        ahead.written = Some(Unit::In);
        *self = ahead;
        Ok(Some((next, Unit::In)))
    }

    fn added(&self, left: Value, right: Value, minus: bool, at: usize) -> Result<Value, ReadError> {
        let exact = |error| ReadError::Exact { error, at };
        let join = |a: Ratio, b: Ratio| if minus { a.minus(b) } else { a.plus(b) }.map_err(exact);
        let field = |number| self.bare.to_mm(number).map_err(exact);
        Ok(match (left, right) {
            (Value::Bare(a), Value::Bare(b)) => Value::Bare(join(a, b)?),
            (Value::Bare(a), Value::Length(b)) => Value::Length(join(field(a)?, b)?),
            (Value::Length(a), Value::Bare(b)) => Value::Length(join(a, field(b)?)?),
            (Value::Length(a), Value::Length(b)) => Value::Length(join(a, b)?),
            (Value::Plain(a, from), Value::Bare(b) | Value::Plain(b, _)) | (Value::Bare(a), Value::Plain(b, from)) => {
                Value::Plain(join(a, b)?, from)
            }
            (Value::Plain(..), Value::Length(_)) | (Value::Length(_), Value::Plain(..)) => {
                return Err(ReadError::NumberPlusLength { at });
            }
        })
    }

    /// What is wrong where a number should start.
    pub(in crate::measure) fn number_missing(&self) -> ReadError {
        let at = self.token.at;
        match self.token.kind {
            Kind::End => ReadError::Unfinished { at },
            Kind::Stray(found) => ReadError::Unexpected { found, at },
            Kind::PlusMinus if self.depth > 0 => ReadError::ToleranceMisplaced { at },
            Kind::Word(word) if Unit::of_word(word).is_none() => self.out_of_place(),
            _ => ReadError::NumberMissing { found: self.character(), at },
        }
    }

    /// What is wrong with a token that cannot follow what stands before it.
    pub(in crate::measure) fn out_of_place(&self) -> ReadError {
        let at = self.token.at;
        match self.token.kind {
            Kind::Close => ReadError::NotOpened { at },
            Kind::PlusMinus => ReadError::ToleranceMisplaced { at },
            Kind::Word("x" | "X") => ReadError::LetterTimes { at },
            Kind::Word(word) => ReadError::UnknownUnit { word: word.to_owned(), at },
            Kind::Open | Kind::Whole { .. } | Kind::Decimal(_) | Kind::Vulgar { .. } => {
                ReadError::OperatorMissing { at }
            }
            _ => ReadError::Unexpected { found: self.character(), at },
        }
    }

    /// The character where the token starts, as typed.
    fn character(&self) -> char {
        self.typed.chars().nth(self.token.at).unwrap_or(' ')
    }

    /// The text from a character up to the token that stands here.
    fn text_since(&self, at: usize) -> String {
        let length = self.token.at.saturating_sub(at);
        self.typed.chars().skip(at).take(length).collect::<String>().trim_end().to_owned()
    }

    /// `1'200` or `1'200'000`: the parser stands behind the first three digits.
    fn marked_thousands(mut self, at: usize) -> ReadError {
        while self.token.kind == Kind::Stroke {
            let mut ahead = self.clone();
            if ahead.advance().is_err() || !matches!(ahead.token.kind, Kind::Whole { digits: 3, .. }) {
                break;
            }
            if ahead.advance().is_err() {
                break;
            }
            self = ahead;
        }
        self.thousands(at)
    }

    /// `1 200`: the parser stands on the second number.
    pub(super) fn spaced_thousands(&self, at: usize) -> ReadError {
        let mut end = self.clone();
        while matches!(end.token.kind, Kind::Whole { digits: 3, .. }) {
            if end.advance().is_err() {
                break;
            }
        }
        end.thousands(at)
    }

    fn thousands(&self, at: usize) -> ReadError {
        let typed = self.text_since(at);
        ReadError::Thousands { plain: typed.chars().filter(char::is_ascii_digit).collect(), typed, at }
    }
}

/// Whether `1'200` was typed, without a space.
fn is_marked_thousand(first: Literal, next: Literal) -> bool {
    let apart = next.at.saturating_sub(first.at);
    next.digits == Some(3) && first.digits.is_some_and(|digits| digits <= 3 && apart == digits + 1)
}

fn in_mm(number: Ratio, unit: Unit, at: usize) -> Result<Ratio, ReadError> {
    unit.to_mm(number).map_err(|error| ReadError::Exact { error, at })
}

fn multiplied(left: Value, right: Value, at: usize) -> Result<Value, ReadError> {
    let times = |a: Ratio, b: Ratio| a.times(b).map_err(|error| ReadError::Exact { error, at });
    Ok(match (left, right) {
        (Value::Length(_), Value::Length(_)) => return Err(ReadError::LengthTimesLength { at }),
        (Value::Length(a), Value::Bare(b) | Value::Plain(b, _))
        | (Value::Bare(a) | Value::Plain(a, _), Value::Length(b)) => Value::Length(times(a, b)?),
        (Value::Plain(a, from), Value::Plain(b, _)) => Value::Plain(times(a, b)?, from),
        // A bare number may still be the length that the plain one multiplies.
        (Value::Bare(a), Value::Bare(b) | Value::Plain(b, _)) | (Value::Plain(a, _), Value::Bare(b)) => {
            Value::Bare(times(a, b)?)
        }
    })
}

fn divided(left: Value, right: Value, at: usize) -> Result<Value, ReadError> {
    let over = |a: Ratio, b: Ratio| a.over(b).map_err(|error: LengthError| ReadError::Exact { error, at });
    Ok(match (left, right) {
        (Value::Length(a), Value::Length(b)) => Value::Plain(over(a, b)?, at),
        (Value::Length(a), Value::Bare(b) | Value::Plain(b, _)) => Value::Length(over(a, b)?),
        (Value::Bare(_) | Value::Plain(..), Value::Length(_)) => return Err(ReadError::NumberOverLength { at }),
        (Value::Plain(a, from), Value::Bare(b) | Value::Plain(b, _)) => Value::Plain(over(a, b)?, from),
        (Value::Bare(a), Value::Bare(b) | Value::Plain(b, _)) => Value::Bare(over(a, b)?),
    })
}
