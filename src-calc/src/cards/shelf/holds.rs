//! What would hold the load: the longest span, the thinnest board, the lowest strip.
//!
//! Looked for among the marks of the tool in hand, so each answer is a mark that holds while the next one does not.

use super::case::{Case, Material, StripOf};
use crate::measure::{Graduation, Length};
use serde::Serialize;

/// The longest shelf that is looked at, mm.
const LONGEST_MM: f64 = 5000.0;
/// The thickest board that is looked at, mm.
const THICKEST_MM: f64 = 100.0;
/// The highest strip that is looked at, mm.
const HIGHEST_MM: f64 = 250.0;

/// What was found among the marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Found {
    /// This mark holds, and one more towards the weaker side does not.
    At(Length),
    /// Every mark looked at holds; this is the last of them.
    All(Length),
    /// None of them holds; this was the last.
    None(Length),
}

/// What would hold the load, one thing changed at a time and everything else as it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct WouldHold {
    /// The longest span, rounded down to a mark.
    pub longest_span: Found,
    /// The least thickness, rounded up; a table's line follows the thickness.
    pub least_thickness: Found,
    /// The least height of the chosen strip (or of a front strip, if none is chosen), rounded up; zero if none is needed.
    /// None if the strip's width or material cannot be read.
    pub least_strip_height: Option<Found>,
}

/// The last mark at or below a size.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "sizes above are at most 5 m in 0.1 mm")]
fn last_mark(mm: f64, step_mm: f64) -> u32 {
    // A float a hair under a mark that it stands on must not lose that mark.
    (mm / step_mm + 1e-9).floor().clamp(0.0, 1e6) as u32
}

/// A mark that passes while the one before does not, by halving; `fails` does not pass and `passes` does.
fn first_to_pass(mut fails: u32, mut passes: u32, test: impl Fn(u32) -> bool) -> u32 {
    while passes - fails > 1 {
        let middle = fails + (passes - fails) / 2;
        if test(middle) { passes = middle } else { fails = middle }
    }
    passes
}

/// The longest span that holds, among the marks; a longer one never holds where a shorter one does not.
pub(in crate::cards) fn longest_span(graduation: Graduation, holds: &dyn Fn(f64) -> bool) -> Found {
    let step = graduation.step();
    let step_mm = step.as_mm();
    // Marks are few and steps short: this cannot fail, and zero would show at once.
    let at = |mark: u32| step.times(i64::from(mark), 1).unwrap_or_default();
    let span = |mark: u32| holds(f64::from(mark) * step_mm);
    let last = last_mark(LONGEST_MM, step_mm);
    if span(last) {
        Found::All(at(last))
    } else if !span(1) {
        Found::None(at(1))
    } else {
        Found::At(at(first_to_pass(1, last, |mark| !span(mark)) - 1))
    }
}

impl WouldHold {
    /// `strip` is the strip to try if the shelf has none.
    pub(super) fn find(case: &Case, strip: Option<StripOf>, graduation: Graduation) -> Self {
        let step = graduation.step();
        let step_mm = step.as_mm();
        // Marks are few and steps short: this cannot fail, and zero would show at once.
        let at = |mark: u32| step.times(i64::from(mark), 1).unwrap_or_default();
        let mm = |mark: u32| f64::from(mark) * step_mm;

        let longest_span = longest_span(graduation, &|span_mm| Case { span_mm, ..*case }.holds());

        let thickness = |mark: u32| Case { thickness_mm: mm(mark), ..*case }.holds();
        // From one line of the table to the next the stiffness may drop, so each line's thicknesses are tried by themselves.
        let last = last_mark(THICKEST_MM, step_mm);
        let mut fails = 0;
        let mut least = None;
        for end in line_ends(case.board).map(|end| last_mark(end, step_mm)).chain([last]) {
            let end = end.min(last);
            if end > fails && thickness(end) {
                least = Some(first_to_pass(fails, end, thickness));
                break;
            }
            fails = fails.max(end);
        }
        let least_thickness = least.map_or(Found::None(at(last)), |mark| Found::At(at(mark)));

        let last = last_mark(HIGHEST_MM, step_mm);
        let least_strip_height = strip.map(|strip| {
            let bare = Case { strip: None, ..*case };
            let height = |mark: u32| Case { strip: Some(StripOf { height_mm: mm(mark), ..strip }), ..*case }.holds();
            if bare.holds() {
                Found::At(Length::ZERO)
            } else if height(last) {
                Found::At(at(first_to_pass(0, last, height)))
            } else {
                Found::None(at(last))
            }
        });
        Self { longest_span, least_thickness, least_strip_height }
    }
}

/// Where one line of the board's table gives way to the next: halfway between the two ranges.
fn line_ends(board: Material) -> impl Iterator<Item = f64> {
    let rows = match board {
        Material::Table(family, _) => family.rows(),
        Material::Own(_) => &[],
    };
    let ranges = rows.iter().filter_map(|row| row.thickness_mm);
    ranges.clone().zip(ranges.skip(1)).map(|((_, end), (start, _))| (end + start) / 2.0)
}
