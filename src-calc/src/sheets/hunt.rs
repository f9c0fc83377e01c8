//! The search for one task: ruin some of a layout, lay it again, keep what is better.

use super::bound;
use super::chance::draw;
use super::fits::{Fits, Weights};
use super::goal::Goal;
use super::lay::Hand;
use super::slicing::{PART, Scratch, Tree};
use super::task::Task;
use super::worth::{Worth, worth};
use fastrand::Rng;

/// Of so few pieces every first layout is made at once.
const FEW: usize = 100;
/// Of more pieces each takes the place of so many tries, so that a short step does not make two.
const AS_TRIES: u8 = 8;

/// A sheet in the making.
#[derive(Clone, Debug)]
pub(super) struct Open {
    pub(super) board: usize,
    pub(super) tree: Tree,
}

/// The best layout so far.
#[derive(Clone, Debug)]
pub(super) struct Best {
    /// Sheets with something on them.
    pub(super) sheets: Vec<Open>,
    /// Pieces that are on none, and their area.
    pub(super) left: Vec<u32>,
    pub(super) left_area: i64,
    pub(super) cost: i64,
    /// What else counts, once it has been looked at.
    pub(super) worth: Option<Worth>,
}

/// The search for one task.
#[derive(Clone, Debug)]
pub(super) struct Hunt {
    pub(super) task: Task,
    pub(super) best: Best,
    pub(super) bound: bound::Bound,
    /// How many tries were made, and how often something better, or more of the bound, was found.
    pub(super) tries: u64,
    pub(super) version: u32,
    pub(super) goal: Goal,
    pub(super) sheets: Vec<Open>,
    pub(super) left: Vec<u32>,
    pub(super) left_area: i64,
    pub(super) cost: i64,
    /// What the sheets may cost.
    pub(super) budget: i64,
    /// Whether sheets may be begun that are not there yet.
    pub(super) may_add: bool,
    pub(super) rng: Rng,
    pub(super) scratch: Scratch,
    pub(super) fits: Fits,
    pub(super) weights: Weights,
    next_mark: u32,
    saved: Vec<Open>,
    saved_places: Vec<usize>,
    saved_cost: i64,
    pub(super) pool: Vec<(i64, u32)>,
    pub(super) still_left: Vec<u32>,
    gone: Vec<bool>,
    /// The mean area of a piece.
    pub(super) mean_area: i64,
}

impl Hunt {
    /// With a first layout. Where there are many pieces only one order is tried, and only the area is looked at: the rest
    /// comes with the first tries.
    pub(super) fn new(task: Task, seed: u64) -> Self {
        let bound = bound::by_area(&task);
        let pieces = i64::try_from(task.items.len()).unwrap_or(i64::MAX).max(1);
        let mean_area = task.items.iter().map(|kind| task.kinds[*kind as usize].area()).sum::<i64>() / pieces;
        let best = Best { sheets: Vec::new(), left: Vec::new(), left_area: i64::MAX, cost: i64::MAX, worth: None };
        let mut hunt = Self {
            fits: Fits::new(task.kinds.len()),
            task,
            best,
            bound,
            tries: 0,
            version: 0,
            goal: Goal::FIRST,
            sheets: Vec::new(),
            left: Vec::new(),
            left_area: 0,
            cost: 0,
            budget: i64::MAX,
            may_add: true,
            rng: Rng::with_seed(seed),
            scratch: Scratch::default(),
            weights: Weights { mismatch: 1.0, gap: 1.0 },
            next_mark: 0,
            saved: Vec::new(),
            saved_places: Vec::new(),
            saved_cost: 0,
            pool: Vec::new(),
            still_left: Vec::new(),
            gone: Vec::new(),
            mean_area,
        };
        hunt.lay_first(0);
        if hunt.task.items.len() <= FEW {
            while !hunt.has_goal() {
                hunt.step();
            }
        }
        hunt
    }

    pub(super) fn area(&self, item: u32) -> i64 {
        self.task.kinds[self.kind(item)].area()
    }

    pub(super) fn kind(&self, item: u32) -> usize {
        self.task.items[item as usize] as usize
    }

    /// A tree has changed.
    pub(super) fn mark(&mut self, at: usize) {
        self.next_mark += 1;
        self.sheets[at].tree.mark = self.next_mark;
    }

    /// Begins anew from these sheets.
    pub(super) fn load(&mut self, sheets: Vec<Open>, left: Vec<u32>) {
        self.left_area = left.iter().map(|item| self.area(*item)).sum();
        self.left = left;
        self.cost = sheets.iter().map(|open| self.task.boards[open.board].cost).sum();
        self.sheets = sheets;
        self.saved_places.clear();
        self.fits.clear();
        for at in 0..self.sheets.len() {
            self.mark(at);
        }
    }

    /// Keeps the layout as it stands when it is better than the best.
    pub(super) fn keep_if_better(&mut self) -> bool {
        let better = match self.left_area.cmp(&self.best.left_area).then(self.cost.cmp(&self.best.cost)) {
            std::cmp::Ordering::Less => true,
            std::cmp::Ordering::Greater => false,
            std::cmp::Ordering::Equal => self.goal.wants_worth() && Some(self.worth()) > self.best.worth,
        };
        if better {
            let sheets = self.sheets.iter().filter(|open| !open.tree.is_empty()).cloned().collect();
            let worth = self.goal.wants_worth().then(|| self.worth());
            self.best = Best { sheets, left: self.left.clone(), left_area: self.left_area, cost: self.cost, worth };
            self.version += 1;
        }
        better
    }

    /// What else counts in the layout as it stands.
    pub(super) fn worth(&self) -> Worth {
        worth(&self.task, &self.sheets)
    }

    /// A first layout by one of several orders, which is kept when it is the best.
    fn lay_first(&mut self, round: u8) {
        self.weights = Weights { mismatch: 1.0, gap: if round < 4 { 1.0 } else { 0.2 } };
        self.load(Vec::new(), Vec::new());
        let mut order: Vec<(i64, u32)> = (0_u32..)
            .zip(&self.task.items)
            .map(|(item, kind)| {
                let [length, width] = self.task.kinds[*kind as usize].size.map(i64::from);
                let key = match round % 4 {
                    0 => length * width,
                    1 => (length.max(width) << 31) + length.min(width),
                    2 => (width << 31) + length,
                    _ => (length << 31) + width,
                };
                (-key, item)
            })
            .collect();
        order.sort_unstable();
        for (_, item) in order {
            if !self.put(item, Hand::Steady) {
                self.left.push(item);
                self.left_area += self.area(item);
            }
        }
        self.keep_if_better();
        self.weights = Weights { mismatch: 1.0, gap: 1.0 };
    }

    /// The first layouts one by one, then the bound, then the first goal.
    pub(super) fn start(&mut self, round: u8) {
        // The orders are short of good ones only for few parts, where all of them take no time.
        let rounds = if self.task.items.len() > FEW { 4 } else { 8 };
        if round < rounds {
            self.lay_first(round);
            self.goal = Goal::Start { round: round + 1, after: AS_TRIES - 1 };
            return;
        }
        let bound = bound::of(&self.task);
        if bound != self.bound {
            self.bound = bound;
            self.version += 1;
        }
        self.begin_next_goal();
    }

    /// Remembers a sheet as it was before this try.
    pub(super) fn save(&mut self, at: usize) {
        let count = self.saved_places.len();
        if self.saved_places.contains(&at) {
            return;
        }
        match self.saved.get_mut(count) {
            Some(saved) => {
                saved.board = self.sheets[at].board;
                saved.tree.become_like(&self.sheets[at].tree);
            }
            None => self.saved.push(self.sheets[at].clone()),
        }
        self.saved_places.push(at);
    }

    /// Before a try.
    pub(super) fn begin_try(&mut self) {
        self.saved_places.clear();
        self.saved_cost = self.cost;
        self.pool.clear();
    }

    /// Puts everything back as it was before this try.
    pub(super) fn take_back(&mut self) {
        for (saved, at) in self.saved_places.iter().enumerate() {
            std::mem::swap(&mut self.sheets[*at], &mut self.saved[saved]);
        }
        self.saved_places.clear();
        self.cost = self.saved_cost;
    }

    /// Whether a sheet was touched in this try.
    pub(super) fn is_touched(&self, at: usize) -> bool {
        self.saved_places.contains(&at)
    }

    /// Takes parts off a sheet into the pool: all below a node, some here and there, or everything.
    pub(super) fn ruin(&mut self, at: usize, most: usize) {
        self.save(at);
        let tree = &self.sheets[at].tree;
        let (nodes, count) = (tree.nodes.len(), tree.count);
        if nodes == 0 {
            return;
        }
        self.gone.clear();
        self.gone.resize(nodes, false);
        match self.rng.u8(0..3) {
            0 if count <= most => self.gone.fill(true),
            1 => {
                for _ in 0..4 {
                    let from = draw(&mut self.rng, 0..nodes);
                    let to = usize::from(tree.nodes[from].end);
                    if to - from <= 2 * most {
                        self.gone[from..to].fill(true);
                        break;
                    }
                }
            }
            _ => {
                let few = draw(&mut self.rng, 1..most.min(count) + 1);
                for gone in &mut self.gone {
                    *gone = draw(&mut self.rng, 0..count) < few;
                }
            }
        }
        self.clear_gone(at);
    }

    /// Takes everything off a sheet into the pool.
    pub(super) fn empty(&mut self, at: usize) {
        self.save(at);
        self.gone.clear();
        self.gone.resize(self.sheets[at].tree.nodes.len(), true);
        self.clear_gone(at);
    }

    fn clear_gone(&mut self, at: usize) {
        let rules = self.task.rules;
        let open = &mut self.sheets[at];
        let was_empty = open.tree.is_empty();
        let gone = open.tree.nodes.iter().zip(&self.gone).filter(|(node, gone)| node.axis == PART && **gone);
        self.pool.extend(gone.map(|(node, _)| (0, node.item)));
        open.tree.remove(&self.gone, rules, &mut self.scratch);
        if open.tree.is_empty() && !was_empty {
            self.cost -= self.task.boards[open.board].cost;
        }
        self.mark(at);
    }
}
