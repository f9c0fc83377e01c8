//! From lines to parts and stock. A line that cannot be read is marked, and the rest is laid out.

use super::rows::{DECIMAL_COMMAS, Heading, Row, row, size};
use crate::measure::{Figure, FigureKind, Quantity, Ratio, Reading};
use crate::problem::Problem;
use crate::sheets::{Grain, Part, SheetGrain, Stock};
use serde::{Serialize, Serializer};

/// The most lines of a list, and the most pieces of all parts together.
pub(super) const MOST_LINES: usize = 400;
pub(super) const MOST_PIECES: u32 = 2000;
/// The most of one part, or of one sheet.
const MOST: u32 = 999;
/// The longest text of a line that is read.
const MOST_LETTERS: usize = 400;

const WORDS: Problem = Problem::Clash {
    why: "Behind the number stand the stock and the grain, such as birch across. The grain is along, across or free.",
};
const PRICE: Problem = Problem::Clash {
    why: "Behind the number stand the price and the grain, such as 64.50 across. The grain is along, across or plain.",
};
const COUNT_FIRST: Problem =
    Problem::Clash { why: "Does this begin with how many? Write the number last: length × width × how many." };

/// Which list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum List {
    /// The parts.
    Parts,
    /// Further sheets.
    Sheets,
    /// Offcuts.
    Offcuts,
}

impl List {
    /// The name of the input.
    pub const fn field(self) -> &'static str {
        match self {
            Self::Parts => "parts",
            Self::Sheets => "sheets",
            Self::Offcuts => "offcuts",
        }
    }
}

/// A line that is left out, and why.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mark {
    /// Which list.
    pub list: List,
    /// Which of its lines, from nought.
    pub line: usize,
    /// What was typed.
    pub typed: String,
    /// What is wrong, and what would be accepted.
    #[serde(serialize_with = "sentence")]
    pub why: Problem,
}

fn sentence<S: Serializer>(problem: &Problem, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(problem)
}

/// What was made of the lines of a list, each with its number, and the marks of the others.
pub(super) struct Lines<T> {
    pub(super) good: Vec<(usize, T)>,
    pub(super) marks: Vec<Mark>,
}

/// How a stock's name is told again, however it is written.
pub(super) fn stock_name(typed: &str) -> String {
    typed.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

fn each<T>(list: List, lines: &[Reading], read: impl Fn(&Reading) -> Result<T, Problem>) -> Lines<T> {
    let mut into = Lines { good: Vec::new(), marks: Vec::new() };
    let filled = lines.iter().enumerate().filter(|(_, line)| !line.is_blank());
    for (number, (line, reading)) in filled.enumerate() {
        let most = || Quantity::count(u64::try_from(MOST_LINES).unwrap_or(u64::MAX));
        let outcome = match number {
            MOST_LINES => Err(Problem::TooLarge { most: most(), why: "a longer list is better laid out in parts" }),
            // Once is enough.
            _ if number > MOST_LINES => break,
            _ if reading.typed().len() > MOST_LETTERS => {
                Err(Problem::Clash { why: "This is too long for a line. Write one part on each." })
            }
            _ => read(reading),
        };
        match outcome {
            Ok(good) => into.good.push((line, good)),
            Err(why) => {
                let typed: String = reading.typed().trim().chars().take(40).collect();
                into.marks.push(Mark { list, line, typed, why });
            }
        }
    }
    into
}

/// The parts of a list.
pub(super) fn parts(lines: &[Reading]) -> Lines<Part> {
    let first = lines.iter().position(|line| !line.is_blank());
    let heading = first.and_then(|at| lines.get(at)).and_then(|line| Heading::of(line.typed()));
    // A heading is no part, and nothing to be marked.
    let from = first.filter(|_| heading.is_some()).map_or(0, |at| at + 1);
    let mut read = each(List::Parts, lines.get(from..).unwrap_or_default(), |line| {
        part(&row(line.typed(), line.bare(), heading.as_ref())?, line)
    });
    read.good.iter_mut().for_each(|(line, _)| *line += from);
    read.marks.iter_mut().for_each(|mark| mark.line += from);
    let mut pieces = 0_u32;
    read.good.retain(|(line, part)| {
        pieces = pieces.saturating_add(part.quantity);
        let fits = pieces <= MOST_PIECES;
        if !fits {
            let why = Problem::TooLarge {
                most: Quantity::count(MOST_PIECES.into()),
                why: "so many pieces in all are laid out at once",
            };
            read.marks.push(Mark { list: List::Parts, line: *line, typed: part.name.clone(), why });
            pieces -= part.quantity;
        }
        fits
    });
    for (line, part) in &mut read.good {
        if part.name.is_empty() {
            part.name = format!("Part {}", *line + 1);
        }
    }
    read
}

fn part(row: &Row, line: &Reading) -> Result<Part, Problem> {
    let (length, width) = (size(&row.length, line.bare())?, size(&row.width, line.bare())?);
    let quantity = count(&row.count)?.unwrap_or(1);
    // 2 × 600 × 400 would be four hundred slivers.
    if row.length.trim().len() <= 2 && row.length.trim().parse::<u32>().is_ok_and(|first| first <= 20) && quantity > 99
    {
        return Err(COUNT_FIRST);
    }
    let words: Vec<&str> = row.rest.iter().map(|word| word.trim()).filter(|word| !word.is_empty()).collect();
    let (stock, grain) = stock_and_grain(&words, row.by_commas)?;
    Ok(Part { name: row.name.clone(), length, width, quantity, stock: stock_name(&stock), grain })
}

fn grain(word: &str) -> Option<Grain> {
    match word.to_lowercase().as_str() {
        "along" | "length" | "lengthways" => Some(Grain::Along),
        "across" | "width" | "crossways" => Some(Grain::Across),
        "free" | "any" | "none" | "no" => Some(Grain::Free),
        _ => None,
    }
}

fn stock_and_grain(words: &[&str], by_commas: bool) -> Result<(String, Grain), Problem> {
    let is_number = |word: &str| word.chars().all(|letter| letter.is_ascii_digit() || letter == '.');
    if by_commas && words.iter().any(|word| is_number(word)) {
        return Err(DECIMAL_COMMAS);
    }
    match *words {
        [] => Ok((String::new(), Grain::default())),
        [one] => {
            let (before, last) = one.rsplit_once(char::is_whitespace).unwrap_or(("", one));
            match grain(last) {
                Some(grain) => Ok((before.to_owned(), grain)),
                None if is_number(one) && !by_commas && one.len() > 2 => Err(WORDS),
                None => Ok(((*one).to_owned(), Grain::default())),
            }
        }
        [stock, last] => Ok((stock.to_owned(), grain(last).ok_or(WORDS)?)),
        _ => Err(WORDS),
    }
}

/// How many, where it is said: `3`, `x3`, `3 off`.
fn count(typed: &str) -> Result<Option<u32>, Problem> {
    let typed = typed.trim().trim_start_matches(['x', 'X', '×']).trim_start();
    if typed.is_empty() {
        return Ok(None);
    }
    let number =
        typed.trim_end_matches(|letter: char| letter.is_alphabetic() || letter.is_whitespace() || letter == '×');
    let behind = typed.get(number.len()..).unwrap_or_default().trim().to_lowercase();
    let number = if ["off", "pc", "pcs", "pieces", "x", "×"].contains(&behind.as_str()) { number } else { typed };
    let count = match number.parse::<u32>() {
        Ok(count) => Ok(count),
        Err(_) => u32::try_from(Figure::new(number).exact(FigureKind::Count)?.numerator()),
    };
    match count {
        Ok(0) => Err(Problem::NotAboveZero),
        Ok(count) if count <= MOST => Ok(Some(count)),
        _ => Err(Problem::TooLarge { most: Quantity::count(MOST.into()), why: "nobody cuts more of one" }),
    }
}

/// The stock of a list; offcuts are one each where it is not said.
pub(super) fn stock(list: List, lines: &[Reading]) -> Lines<Stock> {
    let offcut = list == List::Offcuts;
    each(list, lines, |line| {
        let row = row(line.typed(), line.bare(), None)?;
        let (length, width) = (size(&row.length, line.bare())?, size(&row.width, line.bare())?);
        let quantity = count(&row.count)?.or(offcut.then_some(1));
        let (price, grain) = price_and_grain(&row)?;
        Ok(Stock { name: stock_name(&row.name), length, width, quantity, price, grain, offcut })
    })
}

fn price_and_grain(row: &Row) -> Result<(Option<Ratio>, SheetGrain), Problem> {
    let (mut price, mut grain) = (None, None);
    let words = row.rest.iter().flat_map(|piece| piece.split_whitespace());
    for word in words {
        let word = word.trim_matches(|letter: char| "€$£,@".contains(letter)).to_lowercase();
        match word.as_str() {
            "" | "at" | "each" | "grain" => {}
            "along" | "length" if grain.is_none() => grain = Some(SheetGrain::Along),
            "across" | "width" if grain.is_none() => grain = Some(SheetGrain::Across),
            "plain" | "none" | "no" | "free" if grain.is_none() => grain = Some(SheetGrain::Plain),
            number if number.starts_with(|letter: char| letter.is_ascii_digit()) && price.is_none() => {
                price = Some(Figure::new(number).exact(FigureKind::Number)?);
            }
            _ => return Err(if row.by_commas && price.is_some() { DECIMAL_COMMAS } else { PRICE }),
        }
    }
    Ok((price, grain.unwrap_or_default()))
}
