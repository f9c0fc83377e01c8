//! The cuts of a layout, made one after another.

use super::exact::{Rect, Span, Unit};
use super::fit::usable;
use super::flaw::Which;
use super::misstep::Misstep;
use scantling::sheets::{Becomes, Cut, Job, Layout, Piece, Setting, Way};
use std::collections::{HashMap, HashSet};

/// Begins with whole sheets, makes every cut in its order, and ends with the parts where the layout has them, the
/// offcuts that it names, and waste.
///
/// # Errors
/// The first [`Misstep`].
pub fn replay(job: &Job, layout: &Layout) -> Result<(), Misstep> {
    let unit = Unit::of_both(job, layout).ok_or(Misstep::TooFine)?;
    let mut bench = Bench::with_sheets(job, layout, unit)?;
    let mut number = 0;
    let mut before: Option<&Setting> = None;
    for (setting, set) in layout.settings.iter().enumerate() {
        if set.cuts.is_empty() {
            return Err(Misstep::EmptySetting { setting });
        }
        if before.is_some_and(|before| (before.way, before.fence) == (set.way, set.fence)) {
            return Err(Misstep::SameSetting { setting });
        }
        for cut in &set.cuts {
            if (cut.way, cut.fence) != (set.way, set.fence) {
                return Err(Misstep::OtherSetting { sheet: cut.sheet, cut: number, setting });
            }
            bench.make(cut, number)?;
            number += 1;
        }
        before = Some(set);
    }
    bench.look_over()
}

/// How often a place in the list of a sheet is filled.
type Counts = HashMap<(usize, usize), u32>;

/// A piece that lies beside the saw.
#[derive(Clone, Copy, Debug)]
struct Lying {
    sheet: usize,
    rect: Rect,
    /// Nothing for a whole sheet.
    becomes: Option<Becomes>,
    /// The stage of the cut that made it, and its way; nought for a sheet, trimmed or not.
    stage: u8,
    way: Option<Way>,
    /// A strip that was trimmed off.
    trimmings: bool,
}

/// All that lies beside the saw.
struct Bench<'a> {
    job: &'a Job,
    layout: &'a Layout,
    unit: Unit,
    lying: HashMap<u32, Lying>,
    numbers: HashSet<u32>,
    /// What of each sheet is there once it is trimmed.
    usable: Vec<Rect>,
}

impl<'a> Bench<'a> {
    fn with_sheets(job: &'a Job, layout: &'a Layout, unit: Unit) -> Result<Self, Misstep> {
        let mut bench = Self { job, layout, unit, lying: HashMap::new(), numbers: HashSet::new(), usable: Vec::new() };
        for (number, sheet) in layout.sheets.iter().enumerate() {
            let stock = job.stock.get(sheet.stock);
            let stock = stock.ok_or(Misstep::NoSuchStock { sheet: number, stock: sheet.stock })?;
            let rect = Rect::sized(unit.count(sheet.length), unit.count(sheet.width));
            let id = u32::try_from(number).unwrap_or(u32::MAX);
            let whole = Lying { sheet: number, rect, becomes: None, stage: 0, way: None, trimmings: false };
            bench.lying.insert(id, whole);
            bench.numbers.insert(id);
            bench.usable.push(usable(job, stock, unit));
        }
        Ok(bench)
    }

    fn make(&mut self, cut: &Cut, number: usize) -> Result<(), Misstep> {
        let (sheet, piece) = (cut.sheet, cut.piece);
        let whole = self.lying.remove(&piece).ok_or(Misstep::NoSuchPiece { sheet, cut: number, piece })?;
        if whole.sheet != sheet {
            return Err(Misstep::OtherSheet { sheet, cut: number, piece });
        }
        if whole.becomes.is_some_and(|becomes| becomes != Becomes::Rest) {
            return Err(Misstep::Finished { sheet, cut: number, piece });
        }
        self.measure(cut, number, &whole.rect)?;
        let (stage, way) = if cut.trim {
            self.trim(cut, number, &whole)?;
            (0, None)
        } else {
            (self.stage(cut, number, &whole)?, Some(cut.way))
        };
        for made in [Some(cut.keeps), cut.falls].into_iter().flatten() {
            if !self.numbers.insert(made.id) {
                return Err(Misstep::NumberTaken { sheet, cut: number, piece: made.id });
            }
            let trimmings = cut.trim && made.id != cut.keeps.id;
            let rect = self.unit.rect(&made.area);
            self.lying.insert(made.id, Lying { sheet, rect, becomes: Some(made.becomes), stage, way, trimmings });
        }
        Ok(())
    }

    /// What is kept, what the blade takes, and what falls off make up the piece.
    fn measure(&self, cut: &Cut, number: usize, whole: &Rect) -> Result<(), Misstep> {
        let (sheet, cut_number) = (cut.sheet, number);
        let [kerf, fence] = [self.job.saw.kerf, cut.fence].map(|length| self.unit.count(length));
        let keeps = self.unit.rect(&cut.keeps.area);
        if square_to(cut.way, &keeps).size() != fence || fence <= 0 {
            return Err(Misstep::Fence { sheet, cut: cut_number });
        }
        let of = square_to(cut.way, whole);
        let kept = if cut.from_far {
            Span { from: of.to - fence, to: of.to }
        } else {
            Span { from: of.from, to: of.from + fence }
        };
        if keeps != with(cut.way, whole, kept) {
            return Err(Misstep::Keeps { sheet, cut: cut_number });
        }
        let rest = if cut.from_far {
            Span { from: of.from, to: kept.from - kerf }
        } else {
            Span { from: kept.to + kerf, to: of.to }
        };
        let falls = cut.falls.map(|falls: Piece| self.unit.rect(&falls.area));
        match falls {
            _ if of.size() <= fence => Err(Misstep::NoCut { sheet, cut: cut_number }),
            None if rest.size() <= 0 => Ok(()),
            Some(falls) if rest.size() > 0 && falls == with(cut.way, whole, rest) => Ok(()),
            _ => Err(Misstep::Falls { sheet, cut: cut_number }),
        }
    }

    /// A trimming cut takes one edge of a sheet down to what is used of it; the strip is waste.
    fn trim(&self, cut: &Cut, number: usize, whole: &Lying) -> Result<(), Misstep> {
        let usable = self.usable.get(cut.sheet).copied();
        let kept = square_to(cut.way, &self.unit.rect(&cut.keeps.area));
        let of = square_to(cut.way, &whole.rect);
        let to = usable.map(|usable| square_to(cut.way, &usable));
        let right = to.is_some_and(|to| {
            let (kept_edge, edge) = if cut.from_far { (kept.from, to.from) } else { (kept.to, to.to) };
            let cuts_something = if cut.from_far { of.from < to.from } else { to.to < of.to };
            kept_edge == edge && cuts_something
        });
        let waste = cut.falls.is_none_or(|falls| falls.becomes == Becomes::Waste);
        if right && waste && whole.stage == 0 { Ok(()) } else { Err(Misstep::Trim { sheet: cut.sheet, cut: number }) }
    }

    fn stage(&self, cut: &Cut, number: usize, whole: &Lying) -> Result<u8, Misstep> {
        let (sheet, cut_number) = (cut.sheet, number);
        if whole.stage == 0 && self.usable.get(sheet) != Some(&whole.rect) {
            return Err(Misstep::Untrimmed { sheet });
        }
        // The odd stages are rips; a sheet has stage nought, on which the first stage may follow or be left out.
        let stage = match (cut.way, whole.way) {
            (way, Some(before)) if way == before => whole.stage,
            (Way::Rip, None) => 1,
            (Way::Crosscut, None) => 2,
            (_, Some(_)) => whole.stage.saturating_add(1),
        };
        if let Some(most) = self.job.saw.cuts.stages().filter(|most| stage > *most) {
            return Err(Misstep::Stage { sheet, cut: cut_number, stage, most });
        }
        let longest = self.job.saw.longest_rip.map(|longest| self.unit.count(longest));
        if cut.way == Way::Rip && longest.is_some_and(|longest| whole.rect.x.size() > longest) {
            return Err(Misstep::LongRip { sheet, cut: cut_number });
        }
        Ok(stage)
    }

    /// What lies there at the end.
    fn look_over(&self) -> Result<(), Misstep> {
        let mut ids: Vec<u32> = self.lying.keys().copied().collect();
        ids.sort_unstable();
        let (mut parts, mut left) = (Counts::new(), Counts::new());
        for id in ids {
            let Some(lying) = self.lying.get(&id) else { continue };
            if lying.stage == 0 && !lying.trimmings && self.usable.get(lying.sheet) != Some(&lying.rect) {
                return Err(Misstep::Untrimmed { sheet: lying.sheet });
            }
            if let Some(place) = self.part_there(id, lying)? {
                *parts.entry((lying.sheet, place)).or_default() += 1;
            } else if let Some(place) = self.left_there(id, lying)? {
                *left.entry((lying.sheet, place)).or_default() += 1;
            }
        }
        for (sheet, laid) in self.layout.sheets.iter().enumerate() {
            let lacking = |counts: &Counts, of: usize| (0..of).find(|place| counts.get(&(sheet, *place)) != Some(&1));
            if let Some(placed) = lacking(&parts, laid.parts.len()).and_then(|place| laid.parts.get(place)) {
                let which = Which { part: placed.part, copy: placed.copy };
                return Err(Misstep::PartCount { sheet, which });
            }
            if let Some(left) = lacking(&left, laid.left.len()) {
                return Err(Misstep::LeftCount { sheet, left });
            }
        }
        Ok(())
    }

    /// Which place in the sheet's list of parts a piece fills, if it is a part. A sheet that was never cut is one if
    /// a part lies all over it.
    fn part_there(&self, piece: u32, lying: &Lying) -> Result<Option<usize>, Misstep> {
        let sheet = lying.sheet;
        let placed = self.layout.sheets.get(sheet).map_or(&[][..], |sheet| &sheet.parts[..]);
        let place = placed.iter().position(|placed| self.unit.rect(&placed.area) == lying.rect);
        match lying.becomes {
            None => place.map(Some).ok_or(Misstep::Unfinished { sheet, piece }),
            Some(Becomes::Part { part, copy }) => {
                let which = Which { part, copy };
                let there = place.and_then(|place| placed.get(place));
                if there.is_some_and(|there| (there.part, there.copy) == (part, copy)) {
                    Ok(place)
                } else {
                    Err(Misstep::NotThatPart { sheet, piece, which })
                }
            }
            Some(Becomes::Rest) => Err(Misstep::Unfinished { sheet, piece }),
            Some(Becomes::Offcut | Becomes::Waste) => Ok(None),
        }
    }

    /// Which place in the sheet's list of what is left over a piece fills. Waste need not stand there.
    fn left_there(&self, piece: u32, lying: &Lying) -> Result<Option<usize>, Misstep> {
        let sheet = lying.sheet;
        let left = self.layout.sheets.get(sheet).map_or(&[][..], |sheet| &sheet.left[..]);
        let place = left.iter().position(|left| self.unit.rect(&left.area) == lying.rect);
        let kept = place.and_then(|place| left.get(place)).is_some_and(|left| left.keep);
        if lying.becomes == Some(Becomes::Offcut) {
            return if kept { Ok(place) } else { Err(Misstep::NotThatOffcut { sheet, piece }) };
        }
        let large = lying.rect.shorter() >= self.unit.count(self.job.saw.least_offcut);
        if kept || (large && !lying.trimmings) { Err(Misstep::GoodWaste { sheet, piece }) } else { Ok(place) }
    }
}

/// What a cut of this way divides: a rip the width, a crosscut the length.
fn square_to(way: Way, rect: &Rect) -> Span {
    match way {
        Way::Rip => rect.y,
        Way::Crosscut => rect.x,
    }
}

/// The same rectangle with another measure there.
fn with(way: Way, rect: &Rect, span: Span) -> Rect {
    match way {
        Way::Rip => Rect { y: span, ..*rect },
        Way::Crosscut => Rect { x: span, ..*rect },
    }
}
