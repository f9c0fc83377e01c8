//! What a layout comes to.

use crate::cards::materials::Decimal;
use crate::measure::{Length, LengthError, Ratio};
use crate::sheets::{Area, Job, Layout, Sheet};
use serde::Serialize;

/// How many of a part lie in a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct InARow {
    /// What there is of the sheet, trimmed.
    pub usable: Length,
    /// The part.
    pub part: Length,
    /// How many.
    pub count: u32,
    /// What is left over behind the last one, without a cut.
    pub left: Length,
}

impl InARow {
    /// `n = floor((S + k) / (p + k))`: a kerf between each two, and none behind the last.
    ///
    /// # Errors
    /// [`LengthError`] when a sum cannot be held.
    pub fn of(usable: Length, part: Length, kerf: Length) -> Result<Self, LengthError> {
        let count = usable.plus(kerf)?.floor_div(part.plus(kerf)?)?.max(0);
        let parts = part.times(count, 1)?.plus(kerf.times((count - 1).max(0), 1)?)?;
        let left = usable.minus(parts)?;
        Ok(Self { usable, part, count: u32::try_from(count).map_err(|_| LengthError::TooLong)?, left })
    }
}

/// Areas, money, and how many of what.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Figures {
    /// How many pieces lie on sheets.
    pub pieces: u32,
    /// Their area, m².
    pub parts_m2: f64,
    /// The area of the sheets that are used, m².
    pub sheets_m2: f64,
    /// What of it becomes parts, per cent.
    pub yield_percent: f64,
    /// The area of the offcuts worth keeping, m².
    pub offcuts_m2: f64,
    /// The largest of them, its longer side first.
    pub largest_offcut: Option<[Length; 2]>,
    /// How many there are.
    pub offcuts: u32,
    /// What the sheets cost together, of those that have a price.
    pub cost: Option<Decimal>,
    /// How many sheets have none; offcuts are not counted.
    pub unpriced: u32,
    /// How many times a fence or a stop is set.
    pub settings: u32,
    /// How many cuts.
    pub cuts: u32,
    /// How many of the longest part lie in a row on the first sheet.
    pub in_a_row: Option<InARow>,
}

/// An area in square metres.
pub(super) fn m2(length: Length, width: Length) -> f64 {
    length.as_mm() * width.as_mm() / 1e6
}

fn area_m2(area: &Area) -> f64 {
    m2(area.length, area.width)
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

impl Figures {
    pub(super) fn of(job: &Job, layout: &Layout) -> Result<Self, LengthError> {
        let parts = || layout.sheets.iter().flat_map(|sheet| &sheet.parts);
        let offcuts = || layout.sheets.iter().flat_map(|sheet| &sheet.left).filter(|left| left.keep);
        let parts_m2: f64 = parts().map(|placed| area_m2(&placed.area)).sum();
        let sheets_m2: f64 = layout.sheets.iter().map(|sheet| m2(sheet.length, sheet.width)).sum();
        let largest = offcuts().max_by(|a, b| area_m2(&a.area).total_cmp(&area_m2(&b.area)));
        let largest =
            largest.map(|left| [left.area.length.max(left.area.width), left.area.length.min(left.area.width)]);
        let (cost, unpriced) = cost(job, layout)?;
        Ok(Self {
            pieces: count(parts().count()),
            parts_m2,
            sheets_m2,
            yield_percent: if sheets_m2 > 0.0 { 100.0 * parts_m2 / sheets_m2 } else { 0.0 },
            offcuts_m2: offcuts().map(|left| area_m2(&left.area)).sum(),
            largest_offcut: largest,
            offcuts: count(offcuts().count()),
            cost,
            unpriced,
            settings: count(layout.settings.len()),
            cuts: count(layout.cuts()),
            in_a_row: in_a_row(job, layout)?,
        })
    }
}

fn cost(job: &Job, layout: &Layout) -> Result<(Option<Decimal>, u32), LengthError> {
    let (mut sum, mut unpriced) = (None::<Ratio>, 0_u32);
    for sheet in &layout.sheets {
        match job.stock.get(sheet.stock) {
            Some(stock) if stock.price.is_some() => {
                let price = stock.price.unwrap_or(Ratio::ZERO);
                sum = Some(sum.unwrap_or(Ratio::ZERO).plus(price)?);
            }
            Some(stock) if !stock.offcut => unpriced += 1,
            _ => {}
        }
    }
    Ok((sum.map(|sum| Decimal::nearest(sum, 2)).transpose()?, unpriced))
}

/// What may be used of a sheet along its length and across it.
pub(super) fn usable(job: &Job, sheet: &Sheet) -> Result<[Length; 2], LengthError> {
    let offcut = job.stock.get(sheet.stock).is_some_and(|stock| stock.offcut);
    let trim = if offcut { Length::ZERO } else { job.saw.trim.times(2, 1)? };
    Ok([sheet.length.minus(trim)?, sheet.width.minus(trim)?])
}

/// The part that is longest along the first sheet, in a row of its own.
fn in_a_row(job: &Job, layout: &Layout) -> Result<Option<InARow>, LengthError> {
    let Some(sheet) = layout.sheets.first() else { return Ok(None) };
    let Some(part) = sheet.parts.iter().map(|placed| placed.area.length).max() else { return Ok(None) };
    let [usable, _] = usable(job, sheet)?;
    InARow::of(usable, part, job.saw.kerf).map(Some)
}
