//! The least that sheets for a small job can cost, by trying every layout there is.
//!
//! For every set of parts the smallest rectangles from which it can be cut are listed, from those of its two halves, for
//! every way to halve it; then every way to share the parts out among sheets is tried. What it takes doubles twice with
//! each part, so it is for half a dozen.

use super::exact::{Rect, Unit};
use super::fit::{grain_allows, usable};
use scantling::sheets::{Cuts, Job, Part};

/// More parts would take too long.
pub const MOST_PARTS: usize = 8;

/// The least cost of sheets from which all parts can be cut, if there are as many sheets as are wanted of each stock.
/// `costs` says what each of the job's stock counts: one for the fewest sheets. `None` if the parts cannot all be cut, or
/// are too many, or the job says how long a rip may be, which is not looked at here.
pub fn least_cost(job: &Job, costs: &[u64]) -> Option<u64> {
    let unit = Unit::of_job(job)?;
    let pieces: Vec<&Part> = job
        .parts
        .iter()
        .flat_map(|part| std::iter::repeat_n(part, usize::try_from(part.quantity).unwrap_or(usize::MAX)))
        .take(MOST_PARTS + 1)
        .collect();
    if pieces.len() > MOST_PARTS || job.saw.longest_rip.is_some() {
        return None;
    }
    let sets = 1_usize << pieces.len();
    // What one sheet for exactly this set costs, at least.
    let mut one: Vec<Option<u64>> = vec![None; sets];
    for (stock, cost) in job.stock.iter().zip(costs) {
        let sheet = usable(job, stock, unit);
        let lies: Vec<Vec<Size>> = pieces
            .iter()
            .map(|part| {
                let turns = [false, true]
                    .into_iter()
                    .filter(|turned| part.stock == stock.name && grain_allows(part.grain, stock.grain, *turned));
                turns
                    .map(|turned| {
                        let [length, width] = [part.length, part.width].map(|length| unit.count(length));
                        if turned { Size { x: width, y: length } } else { Size { x: length, y: width } }
                    })
                    .collect()
            })
            .collect();
        let boxes = Boxes { lies, kerf: unit.count(job.saw.kerf) };
        let smallest = boxes.of(job.saw.cuts);
        for (cheapest, sizes) in one.iter_mut().zip(&smallest) {
            if sizes.iter().any(|size| size.on(&sheet)) {
                *cheapest = Some(cheapest.map_or(*cost, |before| before.min(*cost)));
            }
        }
    }
    share_out(&one)
}

/// The cheapest way to part the whole set into sets of one sheet each.
fn share_out(one: &[Option<u64>]) -> Option<u64> {
    let mut best: Vec<Option<u64>> = vec![None; one.len()];
    if let Some(nothing) = best.first_mut() {
        *nothing = Some(0);
    }
    for set in 1..one.len() {
        let shared = parts_of(set).chain([set]).filter_map(|some| {
            let rest = best.get(set & !some).copied().flatten()?;
            rest.checked_add(one.get(some).copied().flatten()?)
        });
        let least = shared.min();
        if let Some(slot) = best.get_mut(set) {
            *slot = least;
        }
    }
    best.last().copied().flatten()
}

/// The sets within a set, without it and without the empty one.
fn parts_of(set: usize) -> impl Iterator<Item = usize> {
    std::iter::successors(Some((set.wrapping_sub(1)) & set), move |part| Some((part.wrapping_sub(1)) & set))
        .take_while(|part| *part != 0)
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Size {
    x: i128,
    y: i128,
}

impl Size {
    fn on(self, sheet: &Rect) -> bool {
        self.x <= sheet.x.size() && self.y <= sheet.y.size()
    }
}

/// How each piece may lie, and what goes between two.
struct Boxes {
    lies: Vec<Vec<Size>>,
    kerf: i128,
}

/// For every set of pieces, numbered by its bits.
type Sizes = Vec<Vec<Size>>;

impl Boxes {
    fn of(&self, cuts: Cuts) -> Sizes {
        match cuts {
            Cuts::Any => self.joined(|set, parts| {
                if set.is_power_of_two() {
                    return self.alone(set);
                }
                [Self::beside, Self::above].map(|join| self.pairs(set, parts, parts, join)).concat()
            }),
            Cuts::Two => {
                let strips = self.equal(|size| size.y, Self::beside);
                self.stacked(&strips, Self::above)
            }
            Cuts::Three => {
                let columns = self.equal(|size| size.x, Self::above);
                let strips = self.stacked(&columns, Self::beside);
                self.stacked(&strips, Self::above)
            }
        }
    }

    fn beside(&self, one: Size, other: Size) -> Size {
        Size { x: one.x + self.kerf + other.x, y: one.y.max(other.y) }
    }

    fn above(&self, one: Size, other: Size) -> Size {
        Size { x: one.x.max(other.x), y: one.y + self.kerf + other.y }
    }

    fn alone(&self, set: usize) -> Vec<Size> {
        let at = usize::try_from(set.trailing_zeros()).unwrap_or(usize::MAX);
        self.lies.get(at).cloned().unwrap_or_default()
    }

    /// The sizes of every set in turn; each is made of what its own parts gave.
    fn joined(&self, of: impl Fn(usize, &Sizes) -> Vec<Size>) -> Sizes {
        let mut all: Sizes = vec![Vec::new()];
        for set in 1..1_usize << self.lies.len() {
            let sizes = smallest(of(set, &all));
            all.push(sizes);
        }
        all
    }

    fn pairs(&self, set: usize, one: &Sizes, other: &Sizes, join: fn(&Self, Size, Size) -> Size) -> Vec<Size> {
        let sizes = |all: &Sizes, set: usize| all.get(set).cloned().unwrap_or_default();
        let mut found = Vec::new();
        for part in parts_of(set) {
            for a in sizes(one, part) {
                found.extend(sizes(other, set & !part).into_iter().map(|b| join(self, a, b)));
            }
        }
        found
    }

    /// Pieces in one row that all have the same measure across it. Not only the smallest: the measures have to agree.
    fn equal(&self, measure: fn(Size) -> i128, join: fn(&Self, Size, Size) -> Size) -> Sizes {
        let mut all: Sizes = vec![Vec::new()];
        for set in 1..1_usize << self.lies.len() {
            let last = set & set.wrapping_neg();
            let mut sizes = Vec::new();
            for one in self.alone(last) {
                let others = all.get(set & !last).cloned().unwrap_or_default();
                let others = others.into_iter().filter(|other| measure(*other) == measure(one));
                if set == last { sizes.push(one) } else { sizes.extend(others.map(|other| join(self, one, other))) }
            }
            sizes.dedup();
            all.push(sizes);
        }
        all
    }

    /// Rows of such sets one after another.
    fn stacked(&self, rows: &Sizes, join: fn(&Self, Size, Size) -> Size) -> Sizes {
        self.joined(|set, stacks| {
            let alone = rows.get(set).cloned().unwrap_or_default();
            [alone, self.pairs(set, rows, stacks, join)].concat()
        })
    }
}

/// Without those in which another would have room.
fn smallest(mut sizes: Vec<Size>) -> Vec<Size> {
    sizes.sort_by_key(|size| (size.x, size.y));
    let mut kept: Vec<Size> = Vec::new();
    for size in sizes {
        if kept.last().is_none_or(|last| size.y < last.y) {
            kept.push(size);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::super::instances::Instance;
    use super::*;
    use scantling::measure::Length;

    /// The fewest sheets of 100 by 100 for these, by any cuts, by two stages and by three.
    #[track_caller]
    fn check(parts: &[[u32; 2]], turn: bool, kerf: i64, want: [u64; 3]) {
        let instance = Instance { id: String::new(), class: 0, sheet: [100, 100], parts: parts.to_vec() };
        let got = [Cuts::Any, Cuts::Two, Cuts::Three].map(|cuts| {
            let mut job = instance.job(turn).unwrap();
            job.saw.cuts = cuts;
            job.saw.kerf = Length::mm(kerf, 1).unwrap();
            least_cost(&job, &[1]).unwrap()
        });
        assert_eq!(got, want, "{parts:?}, turned: {turn}, kerf {kerf}");
    }

    #[test]
    fn what_can_be_worked_out_by_hand_is_found() {
        check(&[[50, 50]; 4], false, 0, [1, 1, 1]);
        check(&[[50, 50]; 4], false, 1, [4, 4, 4]);
        check(&[[49, 50]; 2], false, 2, [1, 1, 1]);
        // Side by side they are of unequal width, and a second stage does not trim.
        check(&[[50, 60], [50, 50]], false, 0, [1, 2, 1]);
        check(&[[50, 60], [50, 50]], true, 0, [1, 1, 1]);
        // A pinwheel, which no cut from edge to edge enters.
        check(&[[60, 40], [40, 60], [60, 40], [40, 60]], false, 0, [2, 2, 2]);
        check(&[[60, 40], [40, 60], [60, 40], [40, 60]], true, 0, [2, 2, 2]);
        // Two columns, in one of them parts of unequal length: a fourth stage.
        check(&[[60, 70], [60, 30], [40, 50], [30, 50]], false, 0, [1, 2, 2]);
    }
}
