//! Strips, rails and edge band: pieces from bars, exactly.

use super::JobError;
use super::search::MOST_PIECES;
use super::units::Scale;
use crate::measure::{Length, LengthError, Ratio};
use serde::Serialize;
use std::collections::HashMap;

/// After so many steps the best that was found is given, without proof. Lists of a shop take far fewer.
const MOST_STEPS: u32 = 200_000;

/// Pieces of one length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// How long.
    pub length: Length,
    /// How many.
    pub quantity: u32,
}

/// Bars, strips or rolls of one length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bar {
    /// How long.
    pub length: Length,
    /// How many there are; `None` for as many as are wanted.
    pub quantity: Option<u32>,
    /// What one costs; where it is left out a bar counts by its length, at the dearest price per length of the others.
    pub price: Option<Ratio>,
}

/// One bar, cut up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct CutBar {
    /// Which of the bars.
    pub bar: usize,
    /// Which of the wanted lengths come off it, the longest first.
    pub pieces: Vec<usize>,
    /// What is left of it.
    pub left: Length,
}

/// Every piece on a bar.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct BarLayout {
    /// The bars that are used.
    pub bars: Vec<CutBar>,
    /// How many of each wanted length found no place: longer than every bar, or no bar left.
    pub unplaced: Vec<u32>,
    /// Whether it is certain that no other way costs less.
    pub proven: bool,
}

/// Cuts pieces from bars at the least cost.
///
/// The bar of the longest piece that is left is filled in every way that leaves no room for another piece: one of them
/// is part of a best solution, since a piece can be moved up to it from any other bar. What was reached before at no
/// greater cost is not gone through again.
///
/// # Errors
/// [`JobError`] for a length that is none, for too many pieces and too long bars; places are exact, or
/// [`JobError::TooLong`].
pub fn cut_bars(wanted: &[Wanted], bars: &[Bar], kerf: Length) -> Result<BarLayout, JobError> {
    if let Some(at) = wanted.iter().position(|wanted| !wanted.length.is_positive()) {
        return Err(JobError::Part { at });
    }
    if let Some(at) = bars.iter().position(|bar| !bar.length.is_positive()) {
        return Err(JobError::Stock { at });
    }
    if kerf.is_negative() || bars.iter().any(|bar| bar.price.is_some_and(Ratio::is_negative)) {
        return Err(JobError::BelowZero);
    }
    if wanted.iter().fold(0_u32, |sum, wanted| sum.saturating_add(wanted.quantity)) > MOST_PIECES {
        return Err(JobError::TooMany { most: MOST_PIECES });
    }
    let lengths = wanted.iter().map(|wanted| wanted.length).chain(bars.iter().map(|bar| bar.length)).chain([kerf]);
    let scale = Scale::of(lengths)?;
    let mut bench = Bench::new(wanted, bars, kerf, scale);
    let unplaced = bench.set_aside(wanted);
    bench.fill(0, 0);
    // Where the bars do not suffice, as much as can be is cut, the longest first.
    let (best, proven) = match bench.best.take() {
        Some((_, best)) => (best, bench.steps < MOST_STEPS),
        None => (bench.as_much_as_can_be(), false),
    };
    bench.layout(wanted, &best, unplaced, proven, scale).map_err(|_| JobError::TooLong)
}

/// One bar with what comes off it, by kind.
type Filled = (usize, Vec<u32>);

struct Bench {
    /// Distinct lengths with a kerf, the longest first, and which of the wanted they are.
    kinds: Vec<(i64, Vec<usize>)>,
    /// How many of each are left to cut.
    counts: Vec<u32>,
    /// Length with a kerf, cost, how many are left.
    bars: Vec<(i64, i64, u32)>,
    filled: Vec<Filled>,
    best: Option<(i64, Vec<Filled>)>,
    seen: HashMap<(Vec<u32>, Vec<u32>), i64>,
    steps: u32,
}

impl Bench {
    fn new(wanted: &[Wanted], bars: &[Bar], kerf: Length, scale: Scale) -> Self {
        let kerf = i64::from(scale.up(kerf));
        let mut kinds: Vec<(i64, Vec<usize>)> = Vec::new();
        for (at, wanted) in wanted.iter().enumerate() {
            let length = i64::from(scale.up(wanted.length)) + kerf;
            match kinds.iter_mut().find(|kind| kind.0 == length) {
                Some(kind) => kind.1.push(at),
                None => kinds.push((length, vec![at])),
            }
        }
        kinds.sort_unstable_by(|a, b| b.cmp(a));
        let of = |at: &usize| wanted.get(*at).map_or(0, |wanted| wanted.quantity);
        let counts: Vec<u32> = kinds.iter().map(|kind| kind.1.iter().map(of).sum()).collect();
        let pieces = counts.iter().sum();
        let costs = costs(bars);
        let bars = bars.iter().zip(costs).map(|(bar, cost)| {
            (i64::from(scale.down(bar.length)) + kerf, cost, bar.quantity.unwrap_or(pieces).min(pieces))
        });
        let bars = bars.collect();
        Self { kinds, counts, bars, filled: Vec::new(), best: None, seen: HashMap::new(), steps: 0 }
    }

    /// Takes out what is longer than every bar, and says how many of each wanted length that is.
    fn set_aside(&mut self, wanted: &[Wanted]) -> Vec<u32> {
        let mut unplaced = vec![0; wanted.len()];
        let longest = self.bars.iter().filter(|bar| bar.2 > 0).map(|bar| bar.0).max().unwrap_or(0);
        for (kind, count) in self.kinds.iter().zip(&mut self.counts).filter(|(kind, _)| kind.0 > longest) {
            *count = 0;
            for at in &kind.1 {
                if let (Some(unplaced), Some(wanted)) = (unplaced.get_mut(*at), wanted.get(*at)) {
                    *unplaced = wanted.quantity;
                }
            }
        }
        unplaced
    }

    /// What the rest costs at the least: its length where that is cheapest; whole bars where there is one kind.
    fn at_least(&self) -> i64 {
        let rest: i128 =
            self.kinds.iter().zip(&self.counts).map(|(kind, count)| i128::from(kind.0) * i128::from(*count)).sum();
        let by_bar = |bar: &(i64, i64, u32)| {
            let (length, cost) = (i128::from(bar.0.max(1)), i128::from(bar.1));
            if self.bars.len() == 1 { (rest + length - 1) / length * cost } else { rest * cost / length }
        };
        let least = self.bars.iter().map(by_bar).min().unwrap_or(0);
        i64::try_from(least).unwrap_or(i64::MAX)
    }

    /// Cuts what is left, `cost` having been spent.
    fn fill(&mut self, cost: i64, depth: u32) {
        let Some(longest) = self.counts.iter().position(|count| *count > 0) else {
            if self.best.as_ref().is_none_or(|best| cost < best.0) {
                self.best = Some((cost, self.filled.clone()));
            }
            return;
        };
        self.steps += 1;
        let hopeless = self.best.as_ref().is_some_and(|best| cost.saturating_add(self.at_least()) >= best.0);
        // A list is never longer than it has pieces; the greedy way down is always finished.
        if hopeless || (self.steps > MOST_STEPS && self.best.is_some()) || depth > MOST_PIECES {
            return;
        }
        let used: Vec<u32> = self.bars.iter().map(|bar| bar.2).collect();
        let state = (self.counts.clone(), used);
        if self.seen.get(&state).is_some_and(|before| *before <= cost) {
            return;
        }
        self.seen.insert(state, cost);
        let mut ways: Vec<(i64, Filled)> = Vec::new();
        for (at, &(length, _, left)) in self.bars.iter().enumerate() {
            let first = self.kinds.get(longest).map_or(i64::MAX, |kind| kind.0);
            if left > 0 && first <= length {
                let mut taken = vec![0; self.kinds.len()];
                taken[longest] = 1;
                self.ways(longest, length - first, &mut taken, &mut |taken, waste| {
                    ways.push((waste, (at, taken.to_vec())))
                });
            }
        }
        // The least waste for the money first.
        ways.sort_by_key(|(waste, (at, _))| self.bars.get(*at).map(|bar| (*waste, bar.1)));
        for (_, (at, taken)) in ways {
            let price = self.take(at, &taken);
            self.filled.push((at, taken));
            self.fill(cost.saturating_add(price), depth + 1);
            if let Some((at, taken)) = self.filled.pop() {
                self.put_back(at, &taken);
            }
        }
    }

    /// Every way to fill a bar further, with pieces no longer than of one kind, so that no piece that is left fits.
    fn ways(&self, kind: usize, room: i64, taken: &mut [u32], found: &mut impl FnMut(&[u32], i64)) {
        let Some((length, _)) = self.kinds.get(kind) else {
            let fits_more = (0..self.kinds.len()).any(|at| self.kinds[at].0 <= room && taken[at] < self.counts[at]);
            if !fits_more {
                found(taken, room);
            }
            return;
        };
        let before = taken[kind];
        let most = u32::try_from(room / *length).unwrap_or(u32::MAX).min(self.counts[kind] - before);
        for more in (0..=most).rev() {
            taken[kind] = before + more;
            self.ways(kind + 1, room - i64::from(more) * *length, taken, found);
        }
        taken[kind] = before;
    }

    fn take(&mut self, at: usize, taken: &[u32]) -> i64 {
        for (count, taken) in self.counts.iter_mut().zip(taken) {
            *count -= taken;
        }
        self.bars.get_mut(at).map_or(0, |bar| {
            bar.2 -= 1;
            bar.1
        })
    }

    fn put_back(&mut self, at: usize, taken: &[u32]) {
        for (count, taken) in self.counts.iter_mut().zip(taken) {
            *count += taken;
        }
        if let Some(bar) = self.bars.get_mut(at) {
            bar.2 += 1;
        }
    }

    /// Longest bars first, each with the longest pieces that fit.
    fn as_much_as_can_be(&mut self) -> Vec<Filled> {
        let mut order: Vec<usize> = (0..self.bars.len()).collect();
        order.sort_by_key(|at| std::cmp::Reverse(self.bars[*at].0));
        let mut filled = Vec::new();
        for at in order {
            while self.bars[at].2 > 0 {
                let mut room = self.bars[at].0;
                let mut taken = vec![0; self.kinds.len()];
                for (kind, taken) in taken.iter_mut().enumerate() {
                    let length = self.kinds[kind].0;
                    *taken = u32::try_from(room / length).unwrap_or(u32::MAX).min(self.counts[kind]);
                    room -= i64::from(*taken) * length;
                }
                if taken.iter().all(|taken| *taken == 0) {
                    break;
                }
                self.take(at, &taken);
                filled.push((at, taken));
            }
        }
        filled
    }

    fn layout(
        &self,
        wanted: &[Wanted],
        filled: &[Filled],
        mut unplaced: Vec<u32>,
        proven: bool,
        scale: Scale,
    ) -> Result<BarLayout, LengthError> {
        let mut rest: Vec<u32> = wanted.iter().zip(&unplaced).map(|(wanted, out)| wanted.quantity - out).collect();
        let mut bars = Vec::new();
        for (bar, taken) in filled {
            let mut pieces = Vec::new();
            let mut left = self.bars[*bar].0;
            for (kind, count) in self.kinds.iter().zip(taken) {
                for _ in 0..*count {
                    if let Some(at) = kind.1.iter().copied().find(|at| rest[*at] > 0) {
                        rest[at] -= 1;
                        pieces.push(at);
                    }
                }
                left -= i64::from(*count) * kind.0;
            }
            let left = scale.length(i32::try_from(left).unwrap_or(i32::MAX))?;
            bars.push(CutBar { bar: *bar, pieces, left });
        }
        for (unplaced, rest) in unplaced.iter_mut().zip(rest) {
            *unplaced += rest;
        }
        Ok(BarLayout { bars, unplaced, proven })
    }
}

/// What each bar costs, to one another.
#[expect(clippy::float_arithmetic, clippy::cast_possible_truncation, reason = "prices are only compared")]
fn costs(bars: &[Bar]) -> Vec<i64> {
    /// The dearest one costs so much.
    const DEAREST: f64 = 1e12;
    let rate = bars.iter().filter_map(|bar| Some(bar.price?.as_f64() / bar.length.as_mm())).fold(0.0, f64::max);
    let rate = if rate > 0.0 { rate } else { 1.0 };
    let cost = |bar: &Bar| bar.price.map_or(bar.length.as_mm() * rate, Ratio::as_f64);
    let dearest = bars.iter().map(cost).fold(0.0, f64::max);
    bars.iter().map(|bar| if dearest > 0.0 { (cost(bar) / dearest * DEAREST).round() as i64 } else { 0 }).collect()
}

#[cfg(test)]
mod tests;
