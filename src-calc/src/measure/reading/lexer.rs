//! From characters to tokens. Copied freely, so a parser looks ahead by trying.

use crate::measure::{LengthError, Ratio, ReadError};
use std::str::Chars;

/// The longest text that is read, in characters.
const MOST_CHARACTERS: usize = 200;

/// What a token is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::measure) enum Kind<'a> {
    /// The end of the text.
    End,
    /// A whole number and its count of digits.
    Whole {
        value: u64,
        digits: usize,
    },
    /// A number with decimals.
    Decimal(Ratio),
    /// A fraction that is one character, or is set with raised and lowered digits.
    Vulgar {
        numerator: u64,
        denominator: u64,
    },
    /// A word, which may be a unit.
    Word(&'a str),
    /// One stroke: feet, or minutes of arc.
    Stroke,
    /// Two strokes: inches, or seconds of arc.
    Strokes,
    /// The sign of a degree.
    Degree,
    Plus,
    /// Minus; `hyphen` when it is not the true minus sign.
    Minus {
        hyphen: bool,
    },
    Times,
    /// `/`
    Slash,
    /// `⁄`, which only ever makes fractions.
    FractionSlash,
    /// `÷`
    Divide,
    PlusMinus,
    Open,
    Close,
    /// Anything else.
    Stray(char),
}

/// A token, where it stands, and whether space stands before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::measure) struct Token<'a> {
    pub(in crate::measure) kind: Kind<'a>,
    pub(in crate::measure) at: usize,
    pub(in crate::measure) spaced: bool,
}

/// Gives the tokens of a text one by one.
#[derive(Clone, Debug)]
pub(in crate::measure) struct Lexer<'a> {
    rest: Chars<'a>,
    at: usize,
}

impl<'a> Lexer<'a> {
    /// # Errors
    /// [`ReadError::TooMuch`].
    pub(in crate::measure) fn new(typed: &'a str) -> Result<Self, ReadError> {
        // A character takes a byte or more, so short texts need no counting.
        if typed.len() > MOST_CHARACTERS && typed.chars().nth(MOST_CHARACTERS).is_some() {
            return Err(ReadError::TooMuch { limit: MOST_CHARACTERS, at: MOST_CHARACTERS });
        }
        Ok(Self { rest: typed.chars(), at: 0 })
    }

    /// What is left of the text.
    fn rest(&self) -> &'a str {
        self.rest.as_str()
    }

    fn peek(&self) -> Option<char> {
        self.rest.clone().next().map(plain)
    }

    fn peek_second(&self) -> Option<char> {
        self.rest.clone().nth(1).map(plain)
    }

    fn bump(&mut self) -> Option<char> {
        let next = self.rest.next().map(plain);
        // Bounded by MOST_CHARACTERS.
        self.at += usize::from(next.is_some());
        next
    }

    fn bump_if(&mut self, wanted: impl Fn(char) -> bool) -> bool {
        let found = self.peek().is_some_and(wanted);
        if found {
            self.bump();
        }
        found
    }

    /// The next token.
    ///
    /// # Errors
    /// What is wrong with a number: its marks, its size.
    pub(in crate::measure) fn next(&mut self) -> Result<Token<'a>, ReadError> {
        let mut spaced = false;
        while let Some(next) = self.peek()
            && is_space(next)
        {
            spaced |= !is_invisible(next);
            self.bump();
        }
        let (start, at) = (self.rest(), self.at);
        let kind = match self.peek() {
            None => Kind::End,
            Some(digit) if digit.is_ascii_digit() => self.number(start, at)?,
            Some('.' | ',') if self.peek_second().is_some_and(|next| next.is_ascii_digit()) => {
                self.number(start, at)?
            }
            Some(letter) if letter.is_alphabetic() && raised(letter).is_none() => self.word(start),
            Some(other) => {
                self.bump();
                self.sign(other, at)?
            }
        };
        Ok(Token { kind, at, spaced })
    }

    fn word(&mut self, start: &'a str) -> Kind<'a> {
        let plain = start.bytes().take_while(u8::is_ascii_alphabetic).count();
        self.skip_plain(start, plain);
        while self.bump_if(|next| next.is_alphabetic() && raised(next).is_none()) {}
        let word = start.strip_suffix(self.rest()).unwrap_or(start);
        // The full stop of an abbreviation: `23 in.`
        if self.peek() == Some('.') && !self.peek_second().is_some_and(|next| next.is_ascii_digit()) {
            self.bump();
        }
        if word == "º" { Kind::Degree } else { Kind::Word(word) }
    }

    fn sign(&mut self, sign: char, at: usize) -> Result<Kind<'a>, ReadError> {
        Ok(match sign {
            '+' => self.plus(),
            '±' => Kind::PlusMinus,
            '-' | '‐' | '‑' | '‒' | '–' | '—' | '﹣' => Kind::Minus { hyphen: true },
            '−' => Kind::Minus { hyphen: false },
            '*' | '×' | '·' | '⋅' | '∙' | '•' | '∗' | '✕' => Kind::Times,
            '/' | '∕' => Kind::Slash,
            '⁄' => Kind::FractionSlash,
            '÷' => Kind::Divide,
            '(' | '[' => Kind::Open,
            ')' | ']' => Kind::Close,
            '°' | '˚' => Kind::Degree,
            '㎜' => Kind::Word("mm"),
            '㎝' => Kind::Word("cm"),
            stroke if is_stroke(stroke) => {
                if self.bump_if(is_stroke) {
                    Kind::Strokes
                } else {
                    Kind::Stroke
                }
            }
            '"' | '″' | '”' | '“' | '‟' | '„' | 'ʺ' | '〃' => Kind::Strokes,
            other => match vulgar(other) {
                Some((numerator, denominator)) => Kind::Vulgar { numerator, denominator },
                None => self.set_fraction(other, at)?,
            },
        })
    }

    /// `+`, or `+/-` and `+-`.
    fn plus(&mut self) -> Kind<'a> {
        let hyphen = |next| matches!(next, '-' | '−' | '–');
        if self.bump_if(hyphen) {
            return Kind::PlusMinus;
        }
        if self.peek() == Some('/') && self.peek_second().is_some_and(hyphen) {
            self.bump();
            self.bump();
            return Kind::PlusMinus;
        }
        Kind::Plus
    }

    /// `⁵⁄₈` and `⅟₆₄`, the first character of which is read already.
    fn set_fraction(&mut self, first: char, at: usize) -> Result<Kind<'a>, ReadError> {
        let numerator = if first == '⅟' {
            1
        } else {
            let Some(digit) = raised(first) else { return Ok(Kind::Stray(first)) };
            let numerator = self.digits_of(digit, raised, at)?;
            if !self.bump_if(|next| matches!(next, '⁄' | '/' | '∕')) {
                return Ok(Kind::Stray(first));
            }
            numerator
        };
        let start = self.at;
        let found = if self.peek().is_some_and(|next| next.is_ascii_digit()) {
            self.digits_of(0, |next| next.to_digit(10), at)?
        } else if self.peek().and_then(lowered).is_some() {
            self.digits_of(0, lowered, at)?
        } else {
            return Err(match self.peek() {
                Some(found) => ReadError::NumberMissing { found, at: start },
                None => ReadError::Unfinished { at: start },
            });
        };
        Ok(Kind::Vulgar { numerator, denominator: found })
    }

    fn digits_of(&mut self, first: u32, digit: impl Fn(char) -> Option<u32>, at: usize) -> Result<u64, ReadError> {
        let mut value = u64::from(first);
        while let Some(next) = self.peek().and_then(&digit) {
            value = appended(value, next, LengthError::TooLong, at)?;
            self.bump();
        }
        Ok(value)
    }

    /// A whole number in plain digits with nothing doubtful behind it, which is what most are.
    fn short_whole(&mut self, start: &'a str) -> Option<Kind<'a>> {
        let digits = start.bytes().position(|byte| !byte.is_ascii_digit()).unwrap_or(start.len());
        let doubtful = |byte: &u8| !byte.is_ascii() || matches!(byte, b'.' | b',');
        if start.as_bytes().get(digits).is_some_and(doubtful) {
            return None;
        }
        let value = start.get(..digits)?.parse().ok()?;
        self.skip_plain(start, digits)?;
        Some(Kind::Whole { value, digits })
    }

    /// Goes on by so many characters of one byte each.
    fn skip_plain(&mut self, start: &'a str, count: usize) -> Option<()> {
        self.rest = start.get(count..)?.chars();
        self.at += count;
        Some(())
    }

    fn number(&mut self, start: &'a str, at: usize) -> Result<Kind<'a>, ReadError> {
        if let Some(whole) = self.short_whole(start) {
            return Ok(whole);
        }
        let before = self.at;
        let value = self.digits_of(0, |next| next.to_digit(10), at)?;
        let digits = self.at - before;
        let Some(mark @ ('.' | ',')) = self.peek() else { return Ok(Kind::Whole { value, digits }) };
        if !self.peek_second().is_some_and(|next| next.is_ascii_digit()) {
            let mark_at = self.at;
            self.bump();
            return Err(match self.peek() {
                None => ReadError::Unfinished { at: self.at },
                Some(_) => ReadError::Unexpected { found: mark, at: mark_at },
            });
        }
        self.bump();
        let (mut mantissa, mut scale, mut zeros, mut places) = (value, 1_u64, 0_u32, 0_usize);
        while let Some(digit) = self.peek().and_then(|next| next.to_digit(10)) {
            self.bump();
            places += 1;
            if digit == 0 {
                // Closing zeros change nothing, however many there are.
                zeros += 1;
                continue;
            }
            for _ in 0..zeros {
                mantissa = appended(mantissa, 0, LengthError::TooFine, at)?;
                scale = appended(scale, 0, LengthError::TooFine, at)?;
            }
            mantissa = appended(mantissa, digit, LengthError::TooFine, at)?;
            scale = appended(scale, 0, LengthError::TooFine, at)?;
            zeros = 0;
        }
        if let Some('.' | ',') = self.peek()
            && self.peek_second().is_some_and(|next| next.is_ascii_digit())
        {
            return Err(self.second_mark(start, mark, at));
        }
        if mark == ',' && places == 3 && (1..=3).contains(&digits) && value != 0 {
            let typed = self.since(start);
            let point = typed.replace(',', ".");
            let decimal = point.trim_end_matches('0').trim_end_matches('.').to_owned();
            return Err(ReadError::AmbiguousComma {
                typed: typed.to_owned(),
                decimal,
                whole: typed.replace(',', ""),
                at,
            });
        }
        let exact = Ratio::lowest(false, mantissa, scale).map_err(|error| ReadError::Exact { error, at })?;
        Ok(Kind::Decimal(exact))
    }

    /// What is wrong with a number that has a second mark, the lexer standing on it.
    fn second_mark(&mut self, start: &'a str, first: char, at: usize) -> ReadError {
        let (found, found_at) = (self.peek().unwrap_or(first), self.at);
        while self.bump_if(|next| next.is_ascii_digit() || matches!(next, '.' | ',')) {}
        let typed = self.since(start);
        let is_mark = |next: char| matches!(next, '.' | ',');
        let last = typed.chars().rev().find(|next| is_mark(*next)).filter(|last| *last != first);
        // All groups but the first have three digits, and so has the last unless it is the decimals.
        let groups = typed.split(is_mark).count().saturating_sub(usize::from(last.is_some()));
        if typed.split(is_mark).take(groups).skip(1).any(|group| group.len() != 3) {
            return ReadError::Unexpected { found, at: found_at };
        }
        let plain = match last {
            Some(last) => typed.replace(first, "").replace(last, "."),
            None => typed.replace(first, ""),
        };
        ReadError::Thousands { typed: typed.to_owned(), plain, at }
    }

    /// The text from `start` to here.
    fn since(&self, start: &'a str) -> &'a str {
        start.strip_suffix(self.rest()).unwrap_or(start)
    }
}

fn appended(value: u64, digit: u32, error: LengthError, at: usize) -> Result<u64, ReadError> {
    value
        .checked_mul(10)
        .and_then(|shifted| shifted.checked_add(u64::from(digit)))
        .ok_or(ReadError::Exact { error, at })
}

/// Space of any width, and characters that are not seen at all.
pub(super) fn is_space(found: char) -> bool {
    found.is_whitespace() || is_invisible(found)
}

fn is_invisible(found: char) -> bool {
    matches!(found, '\u{200B}'..='\u{200F}' | '\u{2060}' | '\u{FEFF}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

/// Full-width forms are the plain characters in another size.
fn plain(found: char) -> char {
    match found {
        '\u{FF01}'..='\u{FF5E}' => char::from_u32(u32::from(found) - 0xFEE0).unwrap_or(found),
        _ => found,
    }
}

fn is_stroke(found: char) -> bool {
    matches!(found, '\'' | '′' | '’' | '‘' | '‛' | 'ʹ' | 'ʼ' | '´' | '`')
}

fn raised(found: char) -> Option<u32> {
    match found {
        '⁰' => Some(0),
        '¹' => Some(1),
        '²' => Some(2),
        '³' => Some(3),
        '⁴'..='⁹' => u32::from(found).checked_sub(u32::from('⁴')).map(|above| above + 4),
        _ => None,
    }
}

fn lowered(found: char) -> Option<u32> {
    matches!(found, '₀'..='₉').then(|| u32::from(found) - u32::from('₀'))
}

fn vulgar(found: char) -> Option<(u64, u64)> {
    Some(match found {
        '½' => (1, 2),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅐' => (1, 7),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        '↉' => (0, 3),
        _ => return None,
    })
}
