//! Looks on for a better layout, in slices as long as the caller likes.

use super::figures::m2;
use super::{Answer, Found, Inputs, Known, SEED, without_price};
use crate::sheets::{Job, Layout, Progress, Search};
use std::cmp::Ordering;
use std::sync::Arc;

/// A search that goes on from an answer.
pub struct Further {
    search: Search,
    /// The version of the search's best that was looked at last.
    seen: Option<u32>,
    told: bool,
}

impl Further {
    /// A search for a better layout of the same job; none where nothing better is to be found.
    pub fn of(answer: &Answer) -> Option<Self> {
        if answer.done {
            return None;
        }
        let search = Search::new(&answer.job, SEED).ok()?;
        Some(Self { search, seen: None, told: false })
    }

    /// At most so many tries.
    pub fn step(&mut self, tries: u32) {
        self.search.step(tries);
    }

    /// How far it is.
    pub fn progress(&self) -> Progress {
        self.search.progress()
    }

    /// Whether a call of [`Further::better`] may have something to say.
    pub fn has_news(&self) -> bool {
        let progress = self.search.progress();
        self.seen != Some(progress.version) || (progress.done && !self.told)
    }

    /// A better answer than this one, and its inputs, with the layout in them so that it is not lost; or the same
    /// layout once more is known of it: that it takes more sheets in any case, or that there is no better one.
    pub fn better(&mut self, inputs: &Inputs, answer: &Answer) -> Option<(Inputs, Answer)> {
        let progress = self.search.progress();
        let done = progress.done;
        self.seen = Some(progress.version);
        self.told |= done;
        let layout = self.search.layout().ok()?;
        let is_better = compared(&answer.job, &layout, &answer.layout) == Ordering::Less;
        let bound = progress.bound.max(answer.bound);
        if !is_better && !done && bound == answer.bound {
            return None;
        }
        let layout = if is_better { Arc::new(without_price(layout)) } else { answer.layout.clone() };
        let known = Known { layout: layout.clone(), bound, done };
        let answer = answer.clone().with(known).ok()?;
        let found = Some(Found { job: answer.job_mark.clone(), layout, bound, done });
        Some((Inputs { found, ..inputs.clone() }, answer))
    }
}

/// Which of two layouts of a job is the better one: the lesser. All parts first, then what the sheets cost, the largest
/// offcut, the settings, the cuts.
fn compared(job: &Job, a: &Layout, b: &Layout) -> Ordering {
    let missing = |layout: &Layout| layout.unplaced.iter().map(|left| u64::from(left.count)).sum::<u64>();
    let near =
        |a: f64, b: f64| if (a - b).abs() <= 1e-9 * a.abs().max(b.abs()) { Ordering::Equal } else { a.total_cmp(&b) };
    missing(a)
        .cmp(&missing(b))
        .then_with(|| near(cost(job, a), cost(job, b)))
        .then_with(|| near(largest_m2(b), largest_m2(a)))
        .then_with(|| a.settings.len().cmp(&b.settings.len()))
        .then_with(|| a.cuts().cmp(&b.cuts()))
}

/// What the sheets cost; one without a price by its area, at the dearest price per area there is.
fn cost(job: &Job, layout: &Layout) -> f64 {
    let dearest = job.stock.iter().filter_map(|stock| Some(stock.price?.as_f64() / m2(stock.length, stock.width)));
    let dearest = dearest.fold(0.0, f64::max);
    let dearest = if dearest > 0.0 { dearest } else { 1.0 };
    let one = |sheet: &crate::sheets::Sheet| match job.stock.get(sheet.stock) {
        Some(stock) => match stock.price {
            Some(price) => price.as_f64(),
            None if stock.offcut => 0.0,
            None => dearest * m2(sheet.length, sheet.width),
        },
        None => 0.0,
    };
    layout.sheets.iter().map(one).sum()
}

fn largest_m2(layout: &Layout) -> f64 {
    let left = layout.sheets.iter().flat_map(|sheet| &sheet.left).filter(|left| left.keep);
    left.map(|left| m2(left.area.length, left.area.width)).fold(0.0, f64::max)
}
