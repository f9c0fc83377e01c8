//! A line as a table has it: cells with tabs, semicolons or commas between, some of them in quotes.

use super::rows::crosses;

/// What stands between the cells of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Between {
    /// As a spreadsheet gives what is copied from it.
    Tabs,
    /// As a spreadsheet saves it where the comma is decimal.
    Semicolons,
    /// Each comma parts two cells.
    Commas,
    /// A comma with a space; one between two digits is decimal.
    CommasAndSpaces,
}

/// The cells of a line, trimmed; nothing where it is in no columns.
pub(super) fn cells(line: &str) -> Option<(Between, Vec<String>)> {
    let between = match () {
        () if line.contains('\t') => Between::Tabs,
        () if line.contains(';') => Between::Semicolons,
        // Sizes with × between them are written by hand: then a comma is decimal, or stands before a remark.
        () if !line.contains(',') || !crosses(line).is_empty() => return None,
        () if line.matches(", ").count() >= 2 => Between::CommasAndSpaces,
        () => Between::Commas,
    };
    Some((between, split(line, between)))
}

fn split(line: &str, between: Between) -> Vec<String> {
    let letters: Vec<char> = line.chars().collect();
    let at = |index: usize| letters.get(index).copied();
    let parts_here = |index: usize| match (between, at(index)) {
        (Between::Tabs, Some('\t')) | (Between::Semicolons, Some(';')) | (Between::Commas, Some(',')) => true,
        (Between::CommasAndSpaces, Some(',')) => {
            let digit = |letter: Option<char>| letter.is_some_and(|letter| letter.is_ascii_digit());
            !(digit(index.checked_sub(1).and_then(at)) && digit(at(index + 1)))
        }
        _ => false,
    };
    let mut cells = vec![String::new()];
    let (mut quoted, mut index) = (false, 0);
    while let Some(letter) = at(index) {
        let cell = cells.last().map_or("", String::as_str);
        match letter {
            // A mark of inches stands behind its number; only one that begins a cell is a quote.
            '"' if !quoted && cell.trim().is_empty() && closes(&letters, index) => quoted = true,
            '"' if quoted && at(index + 1) == Some('"') => {
                push(&mut cells, '"');
                index += 1;
            }
            '"' if quoted => quoted = false,
            _ if !quoted && parts_here(index) => cells.push(String::new()),
            _ => push(&mut cells, letter),
        }
        index += 1;
    }
    let trim =
        |cell: String| cell.trim_matches(|letter: char| letter.is_whitespace() || letter == '\u{FEFF}').to_owned();
    cells.into_iter().map(trim).collect()
}

/// Whether another quote follows.
fn closes(letters: &[char], from: usize) -> bool {
    letters.iter().skip(from + 1).any(|letter| *letter == '"')
}

fn push(cells: &mut [String], letter: char) {
    if let Some(cell) = cells.last_mut() {
        cell.push(letter);
    }
}

/// A line written by hand at its commas, but for decimal ones.
pub(super) fn loose_cells(line: &str) -> Vec<&str> {
    let bytes = line.as_bytes();
    let digit = |at: Option<usize>| at.and_then(|at| bytes.get(at)).is_some_and(u8::is_ascii_digit);
    let mut cells = Vec::new();
    let mut from = 0;
    for (at, _) in line.match_indices(',') {
        if digit(at.checked_sub(1)) && digit(Some(at + 1)) {
            continue;
        }
        cells.push(line.get(from..at).unwrap_or_default().trim());
        from = at + 1;
    }
    cells.push(line.get(from..).unwrap_or_default().trim());
    cells
}
