//! Whether a layout is one for its job.

use super::exact::{Rect, Unit};
use super::fit::{grain_allows, rules, stock_for, usable};
use super::flaw::{Flaw, Which};
use num_rational::Ratio;
use scantling::sheets::{Job, Layout, Part, Placed, Sheet, Stock, Unfit, Unplaced};
use std::collections::HashSet;

/// Every part once or named as not placed, on a sheet of its stock, the right way round, a kerf apart, and all of it to
/// be had by the cuts that the job allows.
///
/// # Errors
/// The first [`Flaw`] that is found.
pub fn check(job: &Job, layout: &Layout) -> Result<(), Flaw> {
    let unit = Unit::of_both(job, layout).ok_or(Flaw::TooFine)?;
    let mut seen = HashSet::new();
    for (number, sheet) in layout.sheets.iter().enumerate() {
        let stock = job.stock.get(sheet.stock).ok_or(Flaw::NoSuchStock { sheet: number, stock: sheet.stock })?;
        let checked = OneSheet { job, unit, number, sheet, stock, usable: usable(job, stock, unit) };
        checked.itself()?;
        let parts = checked.parts(&mut seen)?;
        checked.left(&parts)?;
        if !rules(job, unit).separate(&parts, &checked.usable) {
            return Err(Flaw::NotSeparable { sheet: number, cuts: job.saw.cuts });
        }
    }
    stock(job, layout)?;
    for (number, part) in job.parts.iter().enumerate() {
        let of_it = seen.iter().filter(|which| which.part == number).count();
        all_of(job, layout, (number, part), u32::try_from(of_it).unwrap_or(u32::MAX), unit)?;
    }
    if let Some(none) = layout.unplaced.iter().find(|unplaced| unplaced.part >= job.parts.len()) {
        return Err(Flaw::Count { part: none.part, wanted: 0, placed: 0, unplaced: none.count });
    }
    if price(job, layout) == layout.price.map(|price| exact(&price)) { Ok(()) } else { Err(Flaw::Price) }
}

/// One sheet of the layout.
struct OneSheet<'a> {
    job: &'a Job,
    unit: Unit,
    number: usize,
    sheet: &'a Sheet,
    stock: &'a Stock,
    usable: Rect,
}

impl OneSheet<'_> {
    fn itself(&self) -> Result<(), Flaw> {
        let Self { number: sheet, .. } = *self;
        if (self.sheet.length, self.sheet.width) != (self.stock.length, self.stock.width) {
            return Err(Flaw::SheetSize { sheet });
        }
        if self.sheet.parts.is_empty() { Err(Flaw::EmptySheet { sheet }) } else { Ok(()) }
    }

    fn parts(&self, seen: &mut HashSet<Which>) -> Result<Vec<Rect>, Flaw> {
        let kerf = self.unit.count(self.job.saw.kerf);
        let mut rects: Vec<Rect> = Vec::new();
        for placed in &self.sheet.parts {
            let rect = self.part(placed, seen)?;
            if let Some(near) = rects.iter().position(|other| !rect.apart(other, kerf)) {
                let other = self.sheet.parts.get(near).map_or_else(|| which(placed), which);
                return Err(Flaw::TooClose { sheet: self.number, one: other, other: which(placed) });
            }
            rects.push(rect);
        }
        Ok(rects)
    }

    fn part(&self, placed: &Placed, seen: &mut HashSet<Which>) -> Result<Rect, Flaw> {
        let (sheet, which) = (self.number, which(placed));
        let part = self.job.parts.get(placed.part).filter(|part| placed.copy < part.quantity);
        let part = part.ok_or(Flaw::NoSuchPart { sheet, which })?;
        if part.stock != self.stock.name {
            return Err(Flaw::OtherStock { sheet, which });
        }
        if !seen.insert(which) {
            return Err(Flaw::Twice { sheet, which });
        }
        let size = if placed.turned { (part.width, part.length) } else { (part.length, part.width) };
        if (placed.area.length, placed.area.width) != size {
            return Err(Flaw::PartSize { sheet, which });
        }
        if !grain_allows(part.grain, self.stock.grain, placed.turned) {
            return Err(Flaw::AgainstGrain { sheet, which });
        }
        let rect = self.unit.rect(&placed.area);
        if rect.within(&self.usable) { Ok(rect) } else { Err(Flaw::Outside { sheet, which }) }
    }

    fn left(&self, parts: &[Rect]) -> Result<(), Flaw> {
        let sheet = self.number;
        let [kerf, least] = [self.job.saw.kerf, self.job.saw.least_offcut].map(|length| self.unit.count(length));
        let rects: Vec<Rect> = self.sheet.left.iter().map(|left| self.unit.rect(&left.area)).collect();
        for (left, rect) in rects.iter().enumerate() {
            if !rect.within(&self.usable) || !rect.is_something() {
                return Err(Flaw::LeftOutside { sheet, left });
            }
            if let Some(near) = parts.iter().position(|part| !part.apart(rect, kerf)) {
                let which = self.sheet.parts.get(near).map_or(Which { part: near, copy: 0 }, which);
                return Err(Flaw::LeftNearPart { sheet, left, which });
            }
            let before = rects.get(..left).unwrap_or_default();
            if let Some(one) = before.iter().position(|other| !other.apart(rect, kerf)) {
                return Err(Flaw::LeftNearLeft { sheet, one, other: left });
            }
            if self.sheet.left.get(left).is_some_and(|said| said.keep != (rect.shorter() >= least)) {
                return Err(Flaw::Keep { sheet, left });
            }
            let rank = |at: usize, rect: &Rect| (self.sheet.left.get(at).is_some_and(|left| left.keep), rect.area());
            if left.checked_sub(1).is_some_and(|at| before.last().is_some_and(|last| rank(at, last) < rank(left, rect)))
            {
                return Err(Flaw::LeftOrder { sheet, left });
            }
        }
        Ok(())
    }
}

fn which(placed: &Placed) -> Which {
    Which { part: placed.part, copy: placed.copy }
}

fn used(layout: &Layout, stock: usize) -> usize {
    layout.sheets.iter().filter(|sheet| sheet.stock == stock).count()
}

fn is_left(job: &Job, layout: &Layout, stock: usize) -> bool {
    let there = job.stock.get(stock).map(|stock| stock.quantity);
    there.is_some_and(|there| there.is_none_or(|there| used(layout, stock) < usize::try_from(there).unwrap_or(0)))
}

fn stock(job: &Job, layout: &Layout) -> Result<(), Flaw> {
    if let Some(at) = layout.sheets.windows(2).position(|two| two[0].stock > two[1].stock) {
        return Err(Flaw::SheetOrder { sheet: at + 1 });
    }
    for (stock, of) in job.stock.iter().enumerate() {
        let used = used(layout, stock);
        if let Some(there) = of.quantity.filter(|there| used > usize::try_from(*there).unwrap_or(usize::MAX)) {
            return Err(Flaw::TooManySheets { stock, used, there });
        }
    }
    Ok(())
}

/// Whether all pieces of a part are somewhere, and the reason for those that are not on a sheet is the true one.
fn all_of(job: &Job, layout: &Layout, of: (usize, &Part), placed: u32, unit: Unit) -> Result<(), Flaw> {
    let (number, part) = of;
    let said: Vec<&Unplaced> = layout.unplaced.iter().filter(|unplaced| unplaced.part == number).collect();
    if said.len() > 1 || said.iter().any(|unplaced| unplaced.count == 0) {
        return Err(Flaw::UnplacedTwice { part: number });
    }
    let unplaced = said.first().map_or(0, |unplaced| unplaced.count);
    if placed.checked_add(unplaced) != Some(part.quantity) {
        return Err(Flaw::Count { part: number, wanted: part.quantity, placed, unplaced });
    }
    let Some(said) = said.first().map(|unplaced| unplaced.why) else { return Ok(()) };
    let is = match stock_for(job, part, unit) {
        Err(why) => why,
        Ok(stock) => match stock.into_iter().find(|stock| is_left(job, layout, *stock)) {
            Some(stock) => return Err(Flaw::SheetLeft { part: number, stock }),
            None => Unfit::NoSheetLeft,
        },
    };
    if said == is { Ok(()) } else { Err(Flaw::Reason { part: number, said, is }) }
}

/// An exact number of another make.
pub(super) fn exact(ratio: &scantling::measure::Ratio) -> Ratio<i128> {
    let magnitude = Ratio::new(i128::from(ratio.numerator()), i128::from(ratio.denominator()));
    if ratio.is_negative() { -magnitude } else { magnitude }
}

/// What the sheets cost that have a price; none where none has.
fn price(job: &Job, layout: &Layout) -> Option<Ratio<i128>> {
    let prices = layout.sheets.iter().filter_map(|sheet| job.stock.get(sheet.stock)?.price);
    prices.map(|price| exact(&price)).reduce(|sum, price| sum + price)
}
