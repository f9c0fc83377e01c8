//! The working of a layout.

use super::figures::{Figures, m2, usable};
use crate::measure::{LengthError, Quantity};
use crate::sheets::{Job, Layout};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const KERFS: Source = Source::practice("plane geometry: n parts in a row need n − 1 kerfs between them");
const AREA: Source = Source::practice("parts cannot overlap, so they need at least their own area of trimmed sheet");
const BOUND: Source = Source::memory(
    "dual feasible functions after Fekete and Schepers (2001): sizes are rounded so that what fits still fits",
);

pub(super) fn working(job: &Job, layout: &Layout, of: &Figures, bound: usize) -> Result<Working, LengthError> {
    let mut steps = Working::default();
    let (parts, sheets) = (Quantity::m2(of.parts_m2), Quantity::m2(of.sheets_m2));
    steps.step("Area of the parts", "A, the sum of length × width × number", [], parts, GEOMETRY);
    steps.step("Area of the sheets", "S, the sum of length × width", [], sheets, GEOMETRY);
    if of.sheets_m2 > 0.0 {
        let given = [("A", parts), ("S", sheets)];
        steps.step("Yield, in per cent", "y = 100 × A / S", given, Quantity::percent(of.yield_percent), GEOMETRY);
    }
    if let Some(row) = of.in_a_row {
        let given = [("S", row.usable.into()), ("k", job.saw.kerf.into()), ("p", row.part.into())];
        let formula = "n = floor((S + k) / (p + k))";
        steps.step(
            "The longest part, in a row along the sheet",
            formula,
            given,
            Quantity::count(row.count.into()),
            KERFS,
        );
        let given = [
            ("S", row.usable.into()),
            ("n", Quantity::count(row.count.into())),
            ("p", row.part.into()),
            ("k", job.saw.kerf.into()),
        ];
        steps.step("Left over behind the last", "r = S − n × p − (n − 1) × k", given, row.left, KERFS);
    }
    if let Some((sheet, true)) = layout.sheets.first().map(|first| {
        let same = |sheet: &crate::sheets::Sheet| (sheet.length, sheet.width) == (first.length, first.width);
        (first, layout.sheets.iter().all(same) && layout.unplaced.is_empty())
    }) {
        let [length, width] = usable(job, sheet)?;
        let one = m2(length, width);
        let given = [("A", parts), ("U", Quantity::m2(one))];
        let least = if one > 0.0 { (of.parts_m2 / one - 1e-9).ceil().max(1.0) } else { 1.0 };
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "some sheets, one or more")]
        let least = least as u64;
        let formula = "a = A / U, rounded up";
        steps.step("Trimmed sheets, by area alone", formula, given, Quantity::count(least), AREA);
    }
    let least = Quantity::count(u64::try_from(bound).unwrap_or(u64::MAX));
    steps.step("No layout has fewer sheets", "N, by the sizes of the parts", [], least, BOUND);
    Ok(steps)
}
