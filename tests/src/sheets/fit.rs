//! Which way round a part may lie on a sheet, and whether it can be cut from one at all.

use super::exact::{Rect, Span, Unit};
use super::separate::Rules;
use scantling::sheets::{Grain, Job, Part, SheetGrain, Stock, Unfit};

/// Whether a part may lie so. Turned, its length lies across the sheet.
pub(super) fn grain_allows(part: Grain, sheet: SheetGrain, turned: bool) -> bool {
    let part_along = match part {
        Grain::Along => !turned,
        Grain::Across => turned,
        Grain::Free => return true,
    };
    match sheet {
        SheetGrain::Along => part_along,
        SheetGrain::Across => !part_along,
        SheetGrain::Plain => true,
    }
}

/// What of a sheet parts can be cut from.
pub(super) fn usable(job: &Job, stock: &Stock, unit: Unit) -> Rect {
    let whole = Rect::sized(unit.count(stock.length), unit.count(stock.width));
    if stock.offcut { whole } else { whole.less(unit.count(job.saw.trim)) }
}

pub(super) fn rules(job: &Job, unit: Unit) -> Rules {
    let saw = &job.saw;
    Rules {
        kerf: unit.count(saw.kerf),
        cuts: saw.cuts,
        longest_rip: saw.longest_rip.map(|longest| unit.count(longest)),
    }
}

/// How far a part gets with one kind of stock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Gets {
    OtherName,
    TooLarge,
    AgainstGrain,
    LongRip,
    Cut,
}

/// The stock that a part can be cut from, or why there is none.
pub(super) fn stock_for(job: &Job, part: &Part, unit: Unit) -> Result<Vec<usize>, Unfit> {
    let gets: Vec<Gets> = job.stock.iter().map(|stock| gets(job, part, stock, unit)).collect();
    match gets.iter().max().copied().unwrap_or(Gets::OtherName) {
        Gets::OtherName => Err(Unfit::NoStock),
        Gets::TooLarge => Err(Unfit::TooLarge),
        Gets::AgainstGrain => Err(Unfit::Grain),
        Gets::LongRip => Err(Unfit::LongRip),
        Gets::Cut => Ok((0..gets.len()).filter(|at| gets.get(*at) == Some(&Gets::Cut)).collect()),
    }
}

fn gets(job: &Job, part: &Part, stock: &Stock, unit: Unit) -> Gets {
    if part.stock != stock.name {
        return Gets::OtherName;
    }
    let sheet = usable(job, stock, unit);
    let one_way = |turned: bool| {
        let (length, width) = if turned { (part.width, part.length) } else { (part.length, part.width) };
        let lies = Rect::sized(unit.count(length), unit.count(width));
        let on_sheet = Rect {
            x: Span { from: sheet.x.from, to: sheet.x.from + lies.x.size() },
            y: Span { from: sheet.y.from, to: sheet.y.from + lies.y.size() },
        };
        if !on_sheet.within(&sheet) {
            Gets::TooLarge
        } else if !grain_allows(part.grain, stock.grain, turned) {
            Gets::AgainstGrain
        } else if !rules(job, unit).separate(&[on_sheet], &sheet) {
            Gets::LongRip
        } else {
            Gets::Cut
        }
    };
    one_way(false).max(one_way(true))
}
