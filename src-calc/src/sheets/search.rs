//! The search as the outside sees it: begun, gone on with, stopped at any time.

use super::carve::{Carved, Cutting, End, Rect, Sawn, carve};
use super::goal::FOR_ALL;
use super::hunt::Hunt;
use super::layout::{Area, Becomes, Cut, Layout, Left, Piece, Placed, Setting, Sheet, Unfit, Unplaced};
use super::order::settings;
use super::task::Task;
use super::units::Scale;
use super::{Job, JobError};
use crate::measure::{Length, LengthError, Ratio};
use std::collections::BTreeMap;

/// No more pieces than this are laid out at once.
pub const MOST_PIECES: u32 = 5_000;

/// How far a search has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// Tries so far; a goal that was reached early counts as gone through.
    pub tries: u64,
    /// When it ends.
    pub of: u64,
    /// The sheets of the best layout.
    pub sheets: usize,
    /// The job cannot be done with fewer, as far as is known by now.
    pub bound: usize,
    /// Whether no sheet, and no money, can be saved any more.
    pub proven: bool,
    /// Whether it goes on no longer.
    pub done: bool,
    /// Grows with every better layout, and when the bound rises.
    pub version: u32,
}

/// A search for the best layout of a job. It is the same for the same job and seed, on every machine.
///
/// # Example
/// ```
/// # use scantling::measure::Length;
/// # use scantling::sheets::{Cuts, Grain, Job, Part, Saw, Search, SheetGrain, Stock};
/// let mm = |length| Length::mm(length, 1).unwrap();
/// let side = Part { name: "side".into(), length: mm(720), width: mm(300), quantity: 4, stock: "birch".into(), grain: Grain::Along };
/// let sheet = Stock { name: "birch".into(), length: mm(1500), width: mm(610), quantity: None, price: None, grain: SheetGrain::Along, offcut: false };
/// let saw = Saw { kerf: mm(3), trim: mm(0), cuts: Cuts::Any, longest_rip: None, least_offcut: mm(100) };
/// let mut search = Search::new(&Job { parts: vec![side], stock: vec![sheet], saw }, 1)?;
/// search.step(1_000);
/// assert_eq!(search.layout()?.sheets.len(), 1);
/// assert!(search.progress().proven);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug)]
pub struct Search {
    job: Job,
    scale: Scale,
    hunts: Vec<Hunt>,
    /// The hunt whose turn it is.
    turn: usize,
}

impl Search {
    /// Begins: at once there is a first layout.
    ///
    /// # Errors
    /// [`JobError`] for a part, a sheet or a kerf that is no size, and for too many or too large ones.
    pub fn new(job: &Job, seed: u64) -> Result<Self, JobError> {
        job.check(MOST_PIECES)?;
        let scale = Scale::of(job.lengths())?;
        let mut names: Vec<&str> = job.parts.iter().map(|part| part.stock.as_str()).collect();
        names.sort_unstable();
        names.dedup();
        let hunts = names.into_iter().map(|name| Hunt::new(Task::new(job, name, scale), seed)).collect();
        Ok(Self { job: job.clone(), scale, hunts, turn: 0 })
    }

    /// Goes on for so many tries at the most, in turns where there are several stocks.
    pub fn step(&mut self, tries: u32) {
        for _ in 0..tries {
            let count = self.hunts.len();
            let open = (0..count).map(|after| (self.turn + after) % count).find(|at| !self.hunts[*at].is_done());
            let Some(at) = open else { return };
            self.hunts[at].step();
            self.turn = (at + 1) % count;
        }
    }

    /// How far it has come.
    pub fn progress(&self) -> Progress {
        let sum = |of: fn(&Hunt) -> usize| self.hunts.iter().map(of).sum();
        Progress {
            tries: self.hunts.iter().map(Hunt::covered).sum(),
            of: FOR_ALL.saturating_mul(u64::try_from(self.hunts.len()).unwrap_or(u64::MAX)),
            sheets: sum(|hunt| hunt.best.sheets.len()),
            bound: sum(|hunt| hunt.bound.sheets),
            proven: self.hunts.iter().all(Hunt::is_proven),
            done: self.hunts.iter().all(Hunt::is_done),
            version: self.hunts.iter().fold(0, |sum, hunt| sum.saturating_add(hunt.version)),
        }
    }

    /// The best layout so far.
    ///
    /// # Errors
    /// [`LengthError`] where a place or a price cannot be held exactly.
    pub fn layout(&self) -> Result<Layout, LengthError> {
        let mut opens: Vec<(usize, &Hunt, usize)> = Vec::new();
        for hunt in &self.hunts {
            for (at, open) in hunt.best.sheets.iter().enumerate() {
                opens.push((hunt.task.boards[open.board].stock, hunt, at));
            }
        }
        opens.sort_by_key(|(stock, hunt, at)| (*stock, std::cmp::Reverse(hunt.best.sheets[*at].tree.used)));
        let mut next_piece = u32::try_from(opens.len()).unwrap_or(u32::MAX);
        let mut layout = Layout { unplaced: self.unplaced(), price: self.price(&opens)?, ..Layout::default() };
        let mut cuts: Vec<Sawn> = Vec::new();
        for (nth, (stock, hunt, at)) in opens.iter().enumerate() {
            let carved = carve(&hunt.task, nth, &hunt.best.sheets[*at], &mut next_piece);
            layout.sheets.push(self.sheet(*stock, &hunt.task, &carved)?);
            cuts.extend(carved.cuts);
        }
        for group in settings(&cuts) {
            let group = group.into_iter().filter_map(|at| cuts.get(at));
            let group = group.filter_map(|cut| opens.get(cut.sheet).map(|(_, hunt, _)| self.cut(cut, &hunt.task)));
            let cuts = group.collect::<Result<Vec<Cut>, _>>()?;
            if let Some(Cut { way, fence, .. }) = cuts.first().copied() {
                layout.settings.push(Setting { way, fence, cuts });
            }
        }
        Ok(layout)
    }

    fn price(&self, opens: &[(usize, &Hunt, usize)]) -> Result<Option<Ratio>, LengthError> {
        let prices = opens.iter().filter_map(|(stock, _, _)| self.job.stock.get(*stock)?.price);
        prices.map(Some).try_fold(None, |sum, price| match (sum, price) {
            (Some(sum), Some(price)) => Ratio::plus(sum, price).map(Some),
            (sum, price) => Ok(sum.or(price)),
        })
    }

    fn unplaced(&self) -> Vec<Unplaced> {
        let mut unplaced = Vec::new();
        for hunt in &self.hunts {
            unplaced.extend(&hunt.task.unplaced);
            let mut left: BTreeMap<usize, u32> = BTreeMap::new();
            for item in &hunt.best.left {
                *left.entry(hunt.task.pieces[*item as usize].0).or_default() += 1;
            }
            unplaced.extend(left.into_iter().map(|(part, count)| Unplaced { part, count, why: Unfit::NoSheetLeft }));
        }
        unplaced.sort_unstable_by_key(|unplaced| unplaced.part);
        unplaced
    }

    fn area(&self, rect: Rect) -> Result<Area, LengthError> {
        let length = |units| self.scale.length(units);
        Ok(Area {
            x: length(rect.at[0])?,
            y: length(rect.at[1])?,
            length: length(rect.size[0])?,
            width: length(rect.size[1])?,
        })
    }

    fn sheet(&self, stock: usize, task: &Task, carved: &Carved) -> Result<Sheet, LengthError> {
        let whole = self.job.stock.get(stock).map_or([Length::ZERO; 2], |stock| [stock.length, stock.width]);
        let mut parts = Vec::new();
        for laid in &carved.parts {
            let (part, copy) = task.pieces[laid.item as usize];
            parts.push(Placed { part, copy, area: self.area(laid.rect)?, turned: laid.turned });
        }
        let mut left: Vec<_> = carved.left.iter().collect();
        left.sort_by_key(|left| std::cmp::Reverse((left.keep, left.rect.area())));
        let left = left.into_iter().map(|left| Ok(Left { area: self.area(left.rect)?, keep: left.keep }));
        Ok(Sheet { stock, length: whole[0], width: whole[1], parts, left: left.collect::<Result<_, LengthError>>()? })
    }

    fn cut(&self, cut: &Sawn, task: &Task) -> Result<Cut, LengthError> {
        let piece = |cutting: Cutting| -> Result<Piece, LengthError> {
            let becomes = match cutting.end {
                End::Part(item) => {
                    let (part, copy) = task.pieces[item as usize];
                    Becomes::Part { part, copy }
                }
                End::Offcut => Becomes::Offcut,
                End::Waste => Becomes::Waste,
                End::Rest => Becomes::Rest,
            };
            Ok(Piece { id: cutting.id, area: self.area(cutting.rect)?, becomes })
        };
        Ok(Cut {
            sheet: cut.sheet,
            piece: cut.piece,
            way: cut.way,
            trim: cut.trim,
            fence: self.scale.length(cut.fence)?,
            from_far: cut.from_far,
            keeps: piece(cut.keeps)?,
            falls: cut.falls.map(piece).transpose()?,
        })
    }
}
