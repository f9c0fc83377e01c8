//! A line of a list taken apart: a name, two sizes, how many, and what stands behind them.
//!
//! Written by hand, `Shelf 800 × 330 × 4 birch across`; or in columns with tabs, semicolons or commas between them, as a
//! spreadsheet gives them. Where a comma may be a decimal one, or a space may part thousands, the line asks.

use super::cells::{Between, cells, loose_cells};
use crate::measure::{Length, Reading, Unit};
use crate::problem::Problem;
use crate::sheets::JobError;

/// The pieces of a line, as typed. What was left out is blank.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Row {
    pub(super) name: String,
    pub(super) length: String,
    pub(super) width: String,
    pub(super) count: String,
    /// What stands behind, such as stock and grain, or price.
    pub(super) rest: Vec<String>,
    /// Whether every comma parted two columns, so that a number too many may be a decimal comma.
    pub(super) by_commas: bool,
}

const SHAPE: Problem =
    Problem::Clash { why: "Write a name, length × width × how many, such as Shelf 800 × 330 × 4." };
const THOUSANDS: Problem = Problem::Clash {
    why: "Does the space part thousands, or a number in the name from a length? Write 2800, or a comma behind the name.",
};
pub(super) const DECIMAL_COMMAS: Problem = Problem::Clash {
    why: "There is a number too many. Where commas are decimal, put semicolons or tabs between the columns.",
};

/// What a column of a table is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Column {
    Name,
    Length,
    Width,
    Count,
    Stock,
    Grain,
    Other,
}

/// The words by which a column is known, by how its heading begins.
const COLUMNS: &[(Column, &[&str])] = &[
    (Column::Grain, &["grain"]),
    (Column::Length, &["length", "long"]),
    (Column::Width, &["width", "wide", "height", "breadth"]),
    (Column::Count, &["quantity", "qty", "how many", "count", "number", "no", "pcs", "pieces", "off"]),
    (Column::Stock, &["stock", "material", "sheet", "board"]),
    (Column::Name, &["name", "part", "description", "item", "what"]),
];

/// The units that a heading may name, as in `Length (mm)`.
const UNITS: [&str; 4] = ["mm", "cm", "in", "ft"];

/// The first line of a table, where it says what its columns are, and in which unit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Heading(Vec<(Column, Option<&'static str>)>);

impl Heading {
    /// A line in columns without any digit, by which at least length and width are known.
    pub(super) fn of(typed: &str) -> Option<Self> {
        if typed.contains(|letter: char| letter.is_ascii_digit()) {
            return None;
        }
        let (_, cells) = cells(typed)?;
        let column = |cell: &String| {
            let cell = cell.to_lowercase();
            let known = COLUMNS.iter().find(|(_, words)| words.iter().any(|word| cell.starts_with(word)));
            let mut words = cell.split(|letter: char| !letter.is_alphabetic()).skip(1);
            let unit = words.find_map(|word| UNITS.into_iter().find(|unit| *unit == word));
            (known.map_or(Column::Other, |(column, _)| *column), unit)
        };
        let columns: Vec<(Column, Option<&str>)> = cells.iter().map(column).collect();
        let has = |wanted| columns.iter().any(|(column, _)| *column == wanted);
        (has(Column::Length) && has(Column::Width)).then_some(Self(columns))
    }

    fn row(&self, cells: &[String]) -> Row {
        let of = |wanted| {
            let at = self.0.iter().position(|(column, _)| *column == wanted);
            at.and_then(|at| cells.get(at)).cloned().unwrap_or_default()
        };
        // A unit that is written with the number wins.
        let size = |wanted| {
            let cell = of(wanted);
            let (_, unit) = self.0.iter().find(|(column, _)| *column == wanted).copied().unwrap_or((wanted, None));
            match unit.filter(|_| cell.ends_with(char::is_numeric)) {
                Some(unit) => format!("{cell} {unit}"),
                None => cell,
            }
        };
        Row {
            name: of(Column::Name),
            length: size(Column::Length),
            width: size(Column::Width),
            count: of(Column::Count),
            rest: vec![of(Column::Stock), of(Column::Grain)],
            by_commas: false,
        }
    }
}

/// Takes a line apart; `heading` is that of its table, if it has one.
///
/// # Errors
/// [`Problem::Clash`] where there are not two sizes, or where one cannot tell what is meant.
pub(super) fn row(typed: &str, bare: Unit, heading: Option<&Heading>) -> Result<Row, Problem> {
    match cells(typed) {
        Some((between, cells)) => match heading {
            Some(heading) if cells.len() > 2 => Ok(heading.row(&cells)),
            _ => in_columns(cells, between, bare),
        },
        None => by_hand(typed, bare),
    }
}

fn reads(text: &str, bare: Unit) -> bool {
    Reading::new(text, bare).length().is_ok()
}

fn in_columns(cells: Vec<String>, between: Between, bare: Unit) -> Result<Row, Problem> {
    // A size such as 800 × 330 may stand in one column; where two columns have numbers, an × belongs to a name.
    let in_one = cells.iter().filter(|cell| reads(cell, bare)).count() < 2;
    let mut pieces: Vec<String> = Vec::with_capacity(cells.len());
    for cell in cells {
        let at = if in_one { crosses(&cell) } else { Vec::new() };
        pieces.extend(parted(&cell, &at).into_iter().map(str::to_owned));
    }
    let leading = pieces.iter().take_while(|piece| reads(piece, bare)).count();
    // Two or three numbers are sizes and how many; a fourth before them numbers the part.
    let named = !(2..=3).contains(&leading);
    let mut pieces = pieces.into_iter();
    let name = if named { pieces.next().unwrap_or_default() } else { String::new() };
    let (Some(length), Some(width)) = (pieces.next(), pieces.next()) else { return Err(SHAPE) };
    let count = pieces.next().unwrap_or_default();
    Ok(Row { name, length, width, count, rest: pieces.collect(), by_commas: between == Between::Commas })
}

fn by_hand(typed: &str, bare: Unit) -> Result<Row, Problem> {
    let cells = loose_cells(typed);
    let found = cells.iter().enumerate().map(|(at, cell)| (at, times(cell))).find(|(_, times)| !times.is_empty());
    let (at, times) = found.ok_or(SHAPE)?;
    let cell = cells.get(at).copied().unwrap_or_default();
    let pieces = parted(cell, &times);
    let (first, width, third) = match *pieces.as_slice() {
        [first, width] => (first, width, None),
        [first, width, third] => (first, width, Some(third)),
        _ => return Err(SHAPE),
    };
    let (name, length) = name_and_length(first, bare)?;
    let before: Vec<&str> = cells.iter().take(at).copied().chain([name]).filter(|cell| !cell.is_empty()).collect();
    let ((width, behind), count) = match third {
        Some(third) => {
            let (count, behind) = third.split_once(char::is_whitespace).unwrap_or((third, ""));
            ((width, without_off(behind)), count)
        }
        None => (length_and_rest(width, bare), ""),
    };
    let rest = std::iter::once(behind).chain(cells.iter().skip(at + 1).copied());
    Ok(Row {
        name: before.join(", "),
        length: length.to_owned(),
        width: width.to_owned(),
        count: count.to_owned(),
        rest: rest.map(str::trim).filter(|piece| !piece.is_empty()).map(str::to_owned).collect(),
        by_commas: false,
    })
}

/// What stands behind a number, without the word that only says it is one: `3 off`.
fn without_off(behind: &str) -> &str {
    let (first, rest) = behind.split_once(char::is_whitespace).unwrap_or((behind, ""));
    if ["off", "pc", "pcs", "pieces"].contains(&first.to_lowercase().as_str()) { rest } else { behind }
}

/// Where each word begins.
fn words(text: &str) -> impl Iterator<Item = usize> {
    let mut before = ' ';
    text.char_indices().filter_map(move |(at, letter)| {
        let begins = before.is_whitespace() && !letter.is_whitespace();
        before = letter;
        begins.then_some(at)
    })
}

/// The name before a length: the length is as long as it can be read.
fn name_and_length(text: &str, bare: Unit) -> Result<(&str, &str), Problem> {
    let mut first = None;
    for at in words(text) {
        let (name, length) = text.split_at_checked(at).unwrap_or((text, ""));
        // A reading begins with no letter, and a dash by itself stands behind a name.
        let begins = |letter: char| letter.is_alphabetic() || "-–—:".contains(letter);
        if length.starts_with(begins) && !length.starts_with('-') || length.starts_with("- ") {
            continue;
        }
        first = first.or(Some((name, length)));
        if reads(length, bare) {
            return if parts_thousands(name, length) { Err(THOUSANDS) } else { Ok((without_dash(name), length)) };
        }
    }
    // Nothing reads: what should be a length begins at the first digit, and says itself what is wrong.
    first.map(|(name, length)| (without_dash(name), length)).ok_or(SHAPE)
}

fn without_dash(name: &str) -> &str {
    name.trim_end_matches(|letter: char| letter.is_whitespace() || "-–—:".contains(letter)).trim_start()
}

/// Whether `2 800` may be a number whose thousands are set apart.
fn parts_thousands(name: &str, length: &str) -> bool {
    let digits = |text: &str| !text.is_empty() && text.chars().all(|letter| letter.is_ascii_digit());
    let before = name.trim_end().rsplit(char::is_whitespace).next().unwrap_or_default();
    let number: String = length.chars().take_while(char::is_ascii_digit).collect();
    digits(before) && before.len() <= 3 && number.len() == 3
}

/// The length before other words: as long as it can be read. Where none can, all of it.
fn length_and_rest(text: &str, bare: Unit) -> (&str, &str) {
    let mut ends: Vec<usize> = words(text).skip(1).chain([text.len()]).collect();
    while let Some(end) = ends.pop() {
        let (length, rest) = text.split_at_checked(end).unwrap_or((text, ""));
        if reads(length, bare) {
            return (length.trim_end(), rest);
        }
    }
    (text, "")
}

/// The places of what stands between sizes: `×`, or an `x` between two numbers.
pub(super) fn crosses(text: &str) -> Vec<usize> {
    let is_number = |letter: char| letter.is_numeric() || matches!(letter, '.' | '(' | '-');
    let is_cross = |(at, letter): &(usize, char)| match letter {
        '×' => true,
        'x' | 'X' => {
            let (before, after) = text.split_at_checked(*at).unwrap_or_default();
            let after = after.chars().skip(1).find(|letter| !letter.is_whitespace());
            after.is_some_and(is_number) && ends_a_length(before.trim_end())
        }
        _ => false,
    };
    text.char_indices().filter(is_cross).map(|(at, _)| at).collect()
}

/// The same, or `*` where there is none of them.
fn times(text: &str) -> Vec<usize> {
    let crosses = crosses(text);
    if crosses.is_empty() { text.match_indices('*').map(|(at, _)| at).collect() } else { crosses }
}

/// Whether a text ends in a number, or a number with a unit.
fn ends_a_length(text: &str) -> bool {
    let word_at = text
        .rfind(|letter: char| !letter.is_alphabetic())
        .map_or(0, |at| at + text.get(at..).and_then(|rest| rest.chars().next()).map_or(1, char::len_utf8));
    let word = text.get(word_at..).unwrap_or_default().to_lowercase();
    match word.as_str() {
        "" => text.ends_with(|letter: char| letter.is_numeric() || "\"'″′)".contains(letter)),
        "mm" | "cm" | "m" | "in" | "inch" | "inches" | "ft" | "foot" | "feet" => true,
        // A unit that is not known here is still one: the length says so.
        _ => word.len() <= 3 && text.get(..word_at).unwrap_or_default().trim_end().ends_with(char::is_numeric),
    }
}

/// A text parted at these places, each of one letter.
fn parted<'a>(text: &'a str, at: &[usize]) -> Vec<&'a str> {
    let mut pieces = Vec::with_capacity(at.len() + 1);
    let mut from = 0;
    for at in at {
        pieces.push(text.get(from..*at).unwrap_or_default().trim());
        from = at + text.get(*at..).and_then(|rest| rest.chars().next()).map_or(1, char::len_utf8);
    }
    pieces.push(text.get(from..).unwrap_or_default().trim());
    pieces
}

/// A size above zero.
///
/// # Errors
/// What is wrong with the reading, [`Problem::NotAboveZero`], or one that is longer than the search takes.
pub(super) fn size(typed: &str, bare: Unit) -> Result<Length, Problem> {
    let length = Reading::new(typed, bare).length()?;
    if !length.is_positive() {
        Err(Problem::NotAboveZero)
    } else if length >= Length::mm(30_000, 1)? {
        Err(Problem::Sheets(JobError::TooLong))
    } else {
        Ok(length)
    }
}
