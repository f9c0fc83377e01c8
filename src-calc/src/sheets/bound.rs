//! How few sheets can do at the least.
//!
//! By area, and by dual feasible functions: maps of lengths such that whatever fits side by side on a sheet still does
//! after the map. The area of the mapped parts over that of the mapped sheet is a bound as well, often a better one,
//! since a part of just over half a sheet can be counted as half of one or more. A part that may be turned counts with
//! the smaller of its two mapped areas.
//!
//! Source: S. P. Fekete, J. Schepers, *New classes of fast lower bounds for bin packing problems*, Mathematical
//! Programming 91 (2001), for the first two maps; J. Carlier, F. Clautiaux, A. Moukrim, *New reduction procedures and
//! lower bounds for the two-dimensional bin packing problem with fixed orientation*, Computers & Operations Research 34
//! (2007), for the third; from memory. The tests hold them to what they promise.
#![expect(clippy::float_arithmetic, clippy::cast_precision_loss, reason = "rounded down with care at the end")]

use super::task::Task;

/// How far a sum of shares may be off.
const SLIP: f64 = 1e-7;
/// No more thresholds than these are tried for each map, to be quick with many parts.
const THRESHOLDS: usize = 48;
/// The second map's whole numbers.
const STEPS: i64 = 12;

/// The least that a task can take.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Bound {
    /// Sheets and offcuts, of whatever size.
    pub(super) sheets: usize,
    /// In the units of [`super::task::Board::cost`].
    pub(super) cost: i64,
}

/// The bound of a task all of whose pieces fit some board.
pub(super) fn of(task: &Task) -> Bound {
    if task.items.is_empty() {
        return Bound { sheets: 0, cost: 0 };
    }
    least(task, by_maps(task))
}

/// The same by area alone, which takes no time.
pub(super) fn by_area(task: &Task) -> Bound {
    least(task, 0)
}

/// By area, where no fewer than so many sheets will do.
fn least(task: &Task, sheets: usize) -> Bound {
    let area: f64 = task.items.iter().map(|kind| task.kinds[*kind as usize].area() as f64).sum();
    let sheets = sheets.max(sheets_by_area(task, area));
    let cost = cost(task, area);
    let same = task.boards.first().map_or(0, |board| board.cost);
    let cost = if task.boards.iter().all(|board| board.cost == same) {
        cost.max(i64::try_from(sheets).unwrap_or(i64::MAX).saturating_mul(same))
    } else {
        cost
    };
    Bound { sheets, cost }
}

/// The largest boards first, as many as there are.
fn sheets_by_area(task: &Task, area: f64) -> usize {
    let mut boards: Vec<(i64, usize)> = task.boards.iter().map(|board| (board.area(), board.count)).collect();
    boards.sort_unstable_by(|a, b| b.cmp(a));
    let mut rest = area;
    let mut sheets = 0;
    for (board, count) in boards {
        for _ in 0..count {
            if rest <= SLIP * area {
                return sheets;
            }
            rest -= board as f64;
            sheets += 1;
        }
    }
    sheets
}

/// What the area costs where it is cheapest, no sheet cut up. Where all that is paid for costs the same, whole sheets.
#[expect(clippy::cast_possible_truncation, reason = "below the cost of all sheets")]
fn cost(task: &Task, area: f64) -> i64 {
    let mut boards: Vec<(f64, f64, usize)> =
        task.boards.iter().map(|board| (board.cost as f64, board.area() as f64, board.count)).collect();
    boards.sort_by(|a, b| (a.0 / a.1).total_cmp(&(b.0 / b.1)));
    let mut rest = area;
    let mut cost = 0.0;
    for &(price, each, count) in &boards {
        let some = (rest / each).clamp(0.0, count as f64);
        rest -= some * each;
        cost += some * price;
    }
    let mut paid = task.boards.iter().map(|board| board.cost).filter(|cost| *cost > 0);
    let price = paid.next().unwrap_or(0);
    let exact = (cost * (1.0 - SLIP)).floor().max(0.0) as i64;
    if price > 0 && paid.all(|other| other == price) { exact.saturating_add(price - 1) / price * price } else { exact }
}

/// A map of the lengths from nought to `whole`, with what the whole becomes.
struct Map {
    /// What each kind's length becomes, as a share of the whole; infinite where it is longer.
    first: Vec<f64>,
    /// What each kind's width becomes.
    second: Vec<f64>,
}

fn by_maps(task: &Task) -> usize {
    let whole = task
        .boards
        .iter()
        .fold([0_i64; 2], |whole, board| [whole[0].max(board.size[0].into()), whole[1].max(board.size[1].into())]);
    let mut counts = vec![0.0; task.kinds.len()];
    for kind in &task.items {
        counts[*kind as usize] += 1.0;
    }
    let turns: Vec<[bool; 2]> = (0..task.kinds.len())
        .map(|kind| {
            let ways = (0..task.boards.len()).map(|board| task.ways(kind, board));
            ways.fold([false; 2], |all, way| [all[0] || way[0], all[1] || way[1]])
        })
        .collect();
    let maps = whole.map(|whole| maps(task, whole));
    let mut most: f64 = 0.0;
    for along in &maps[0] {
        for across in &maps[1] {
            let sum: f64 = (0..counts.len())
                .map(|kind| {
                    let straight = if turns[kind][0] { along.first[kind] * across.second[kind] } else { f64::INFINITY };
                    let turned = if turns[kind][1] { along.second[kind] * across.first[kind] } else { f64::INFINITY };
                    counts[kind] * straight.min(turned)
                })
                .sum();
            most = most.max(sum);
        }
    }
    whole_sheets(most)
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "no more than there are pieces")]
fn whole_sheets(shares: f64) -> usize {
    if shares.is_finite() { (shares * (1.0 - SLIP)).ceil().max(0.0) as usize } else { 0 }
}

fn maps(task: &Task, whole: i64) -> Vec<Map> {
    let lengths = |of: usize| task.kinds.iter().map(move |kind| i64::from(kind.size[of])).collect::<Vec<_>>();
    let (first, second) = (lengths(0), lengths(1));
    let mut thresholds: Vec<i64> = first
        .iter()
        .chain(&second)
        .flat_map(|length| [*length, whole - *length + 1])
        .filter(|at| (1..=whole / 2).contains(at))
        .collect();
    thresholds.sort_unstable();
    thresholds.dedup();
    let step = thresholds.len().div_ceil(THRESHOLDS).max(1);
    let thresholds: Vec<i64> = thresholds.into_iter().step_by(step).collect();
    let map = |of: &dyn Fn(i64) -> f64| {
        let all = |lengths: &[i64]| {
            lengths.iter().map(|length| if *length > whole { f64::INFINITY } else { of(*length) }).collect()
        };
        Map { first: all(&first), second: all(&second) }
    };
    let mut maps = vec![map(&|length| length as f64 / whole as f64)];
    for &at in &thresholds {
        maps.push(map(&|length| small_vanish(length, whole, at)));
        maps.push(map(&|length| halves_count(length, whole, at)));
    }
    for steps in 1..=STEPS {
        maps.push(map(&|length| in_steps(length, whole, steps)));
    }
    maps
}

/// Shorter than `at` counts nothing, longer than what leaves less than `at` counts as the whole.
fn small_vanish(length: i64, whole: i64, at: i64) -> f64 {
    if length > whole - at {
        1.0
    } else if length < at {
        0.0
    } else {
        length as f64 / whole as f64
    }
}

/// Rounded down to one of so many steps, unless it meets one more of them exactly.
fn in_steps(length: i64, whole: i64, steps: i64) -> f64 {
    let more = length * (steps + 1);
    if more % whole == 0 { length as f64 / whole as f64 } else { (more / whole) as f64 / steps as f64 }
}

/// Counted in pieces of `at`: what is over half a whole by what it leaves, the rest by what it holds.
fn halves_count(length: i64, whole: i64, at: i64) -> f64 {
    let all = whole / at;
    let count = match (2 * length).cmp(&whole) {
        std::cmp::Ordering::Greater => 2 * (all - (whole - length) / at),
        std::cmp::Ordering::Equal => all,
        std::cmp::Ordering::Less => 2 * (length / at),
    };
    count as f64 / (2 * all) as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// What fits side by side still does after any of the maps: that is what makes the bound a bound.
        #[test]
        fn maps_keep_what_fits(whole in 1_i64..200, cuts in prop::collection::vec(0_i64..200, 0..6), at in 1_i64..100, steps in 1..=STEPS) {
            let at = at.min(whole / 2).max(1);
            prop_assume!(at <= whole / 2);
            let mut marks: Vec<i64> = cuts.into_iter().map(|cut| cut % (whole + 1)).collect();
            marks.push(0);
            marks.push(whole);
            marks.sort_unstable();
            let lengths: Vec<i64> = marks.windows(2).map(|pair| pair[1] - pair[0]).collect();
            let sum = |of: &dyn Fn(i64) -> f64| lengths.iter().map(|length| of(*length)).sum::<f64>();
            prop_assert!(sum(&|length| small_vanish(length, whole, at)) <= 1.0 + SLIP);
            prop_assert!(sum(&|length| in_steps(length, whole, steps)) <= 1.0 + SLIP);
            prop_assert!(sum(&|length| halves_count(length, whole, at)) <= 1.0 + SLIP);
        }
    }
}
