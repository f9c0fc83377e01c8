//! What the search is after: first fewer or cheaper sheets, then a larger offcut, then fewer settings of the fence.

use super::chance::{draw, shuffle};
use super::hunt::{Hunt, Open};
use super::lay::Hand;
use super::slicing::{PART, Tree};
use super::worth::Worth;

/// How many tries each goal gets.
const FOR_SHEETS: u64 = 200_000;
const FOR_OFFCUT: u64 = 30_000;
const FOR_SETTINGS: u64 = 10_000;
/// All of them.
pub(super) const FOR_ALL: u64 = FOR_SHEETS + FOR_OFFCUT + FOR_SETTINGS;

/// The first time that it cools down takes so many tries, and each further one half as many again.
const FIRST_COOLING: u64 = 20_000;
/// So many tries for one size of offcut.
const FOR_ONE_OFFCUT: u64 = 2_000;

/// What the search is after.
#[derive(Clone, Debug)]
pub(super) enum Goal {
    /// Nothing yet: the first layouts are being made, next the one of this round.
    Start {
        /// From one; round nought is the one that a search begins with.
        round: u8,
        /// So many tries from now.
        after: u8,
    },
    /// All parts on sheets that cost less.
    Sheets {
        /// Tries since it was warmest, and how many till it is cold.
        since: u64,
        cooling: u64,
    },
    /// The same sheets with a larger offcut.
    Offcut(Squeeze),
    /// The same with fewer settings and cuts; how good the layout in hand is.
    Settings(Worth),
    /// Nothing more.
    Done,
}

/// One sheet made shorter or narrower by what is to be left over.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Squeeze {
    /// Along which axis of the sheet the offcut is cut off.
    axis: usize,
    /// An area that was reached, and one that was not.
    low: i64,
    high: i64,
    /// What is tried for.
    target: i64,
    tries: u64,
}

impl Goal {
    /// What a search begins with.
    pub(super) const FIRST: Self = Self::Start { round: 1, after: 0 };

    /// Whether more than the cost counts by now.
    pub(super) const fn wants_worth(&self) -> bool {
        matches!(self, Self::Offcut(_) | Self::Settings(_))
    }
}

impl Hunt {
    /// How many tries are behind it, were it to go through all goals.
    pub(super) fn covered(&self) -> u64 {
        match self.goal {
            Goal::Done => FOR_ALL,
            _ => self.tries,
        }
    }

    /// Whether no sheet can be saved.
    pub(super) fn is_proven(&self) -> bool {
        self.best.left.is_empty() && self.best.cost <= self.bound.cost
    }

    /// Whether the first layouts are behind it.
    pub(super) const fn has_goal(&self) -> bool {
        !matches!(self.goal, Goal::Start { .. })
    }

    /// Whether there is nothing more to look for.
    pub(super) const fn is_done(&self) -> bool {
        matches!(self.goal, Goal::Done)
    }

    /// One try towards the goal.
    pub(super) fn step(&mut self) {
        self.tries += 1;
        match self.goal {
            Goal::Start { round, after } => {
                // None of them is a try for anything.
                self.tries -= 1;
                match after.checked_sub(1) {
                    Some(after) => self.goal = Goal::Start { round, after },
                    None => self.start(round),
                }
            }
            Goal::Sheets { since, cooling } => self.step_for_sheets(since, cooling),
            Goal::Offcut(squeeze) => self.step_for_offcut(squeeze),
            Goal::Settings(worth) => self.step_for_settings(worth),
            Goal::Done => self.tries -= 1,
        }
    }

    /// The goal that comes next. What it saves of its tries is not given to another one.
    pub(super) fn begin_next_goal(&mut self) {
        match self.goal {
            Goal::Start { .. } if !self.is_proven() => {
                self.goal = Goal::Sheets { since: 0, cooling: FIRST_COOLING };
                self.want_cheaper();
            }
            Goal::Start { .. } | Goal::Sheets { .. } => {
                self.tries = FOR_SHEETS;
                self.load_best();
                self.best.worth = Some(self.worth());
                self.goal = Goal::Offcut(Squeeze::default());
                self.begin_squeeze(0);
            }
            Goal::Offcut(_) => {
                self.tries = FOR_SHEETS + FOR_OFFCUT;
                self.load_best();
                self.goal = Goal::Settings(self.worth());
            }
            Goal::Settings(_) | Goal::Done => self.goal = Goal::Done,
        }
    }

    fn load_best(&mut self) {
        (self.may_add, self.budget) = (false, self.best.cost);
        self.load(self.best.sheets.clone(), self.best.left.clone());
    }

    /// Begins from the best layout, less the sheets that it may not cost any more.
    fn want_cheaper(&mut self) {
        self.load(self.best.sheets.clone(), self.best.left.clone());
        self.budget = if self.left.is_empty() { self.best.cost - 1 } else { i64::MAX };
        while self.cost > self.budget {
            let emptiest = |(_, open): &(usize, &Open)| (self.task.boards[open.board].cost == 0, open.tree.used);
            let Some((at, _)) = self.sheets.iter().enumerate().min_by_key(emptiest) else { break };
            let open = self.sheets.swap_remove(at);
            self.cost -= self.task.boards[open.board].cost;
            self.left.extend(items(&open.tree));
        }
        let (sheets, left) = (std::mem::take(&mut self.sheets), std::mem::take(&mut self.left));
        self.load(sheets, left);
    }

    #[expect(clippy::float_arithmetic, clippy::cast_precision_loss, reason = "how much worse a try may be is a guess")]
    fn step_for_sheets(&mut self, since: u64, cooling: u64) {
        /// When warmest and when cold, as shares of the mean area of a part.
        const WARM: f64 = 0.15;
        const COLD: f64 = 0.01;
        let (since, cooling) = if since < cooling { (since + 1, cooling) } else { (0, cooling + cooling / 2) };
        self.goal = Goal::Sheets { since, cooling };
        let left_area = self.ruin_and_lay();
        let rest = 1.0 - since as f64 / cooling as f64;
        let warmth = self.mean_area as f64 * (COLD + (WARM - COLD) * rest * rest * rest);
        let allowed = warmth * self.chance();
        if left_area as f64 <= self.left_area as f64 + allowed {
            self.accept(left_area);
            if self.keep_if_better() && self.left.is_empty() && !self.is_proven() {
                self.want_cheaper();
                self.goal = Goal::Sheets { since: 0, cooling: FIRST_COOLING };
            }
        } else {
            self.take_back();
        }
        if self.is_proven() || self.tries >= FOR_SHEETS {
            self.begin_next_goal();
        }
    }

    /// A chance number, exponentially distributed as near as it matters, by arithmetic that is the same on every machine.
    #[expect(clippy::float_arithmetic, clippy::cast_precision_loss, reason = "a chance number")]
    fn chance(&mut self) -> f64 {
        let bits = self.rng.u64(..) | 1;
        let zeros = bits.leading_zeros();
        let rest = (bits << zeros << 1) >> 11;
        (f64::from(zeros) + 1.0 - rest as f64 / (1_u64 << 53) as f64) * std::f64::consts::LN_2
    }

    /// One try: ruins one to three sheets and lays what was on them, and what was left, anew. Gives the area that is left
    /// now.
    fn ruin_and_lay(&mut self) -> i64 {
        /// A try takes no more parts off a sheet than this.
        const MOST: usize = 8;
        /// Of what is on no sheet, no more than this.
        const MOST_LEFT: usize = 40;
        self.begin_try();
        let ruins = 1 + usize::from(self.rng.u8(0..10) < 6) + usize::from(self.rng.u8(0..10) < 2);
        let whole = self.task.boards.len() > 1 && self.rng.u8(0..16) == 0;
        for _ in 0..ruins.min(self.sheets.len()) {
            let mut at = draw(&mut self.rng, 0..self.sheets.len());
            if self.rng.bool() {
                let other = draw(&mut self.rng, 0..self.sheets.len());
                if self.sheets[other].tree.used < self.sheets[at].tree.used {
                    at = other;
                }
            }
            if self.is_touched(at) {
                continue;
            }
            if whole {
                self.empty(at);
            } else {
                self.ruin(at, MOST);
            }
        }
        self.still_left.clear();
        if self.left.len() > MOST_LEFT {
            shuffle(&mut self.rng, &mut self.left);
            self.still_left.extend(self.left.iter().skip(MOST_LEFT));
        }
        self.pool.extend(self.left.iter().take(MOST_LEFT).map(|item| (0, *item)));
        self.order_pool();
        let pool = std::mem::take(&mut self.pool);
        for &(_, item) in &pool {
            if !self.put(item, Hand::Loose) {
                self.still_left.push(item);
            }
        }
        self.pool = pool;
        self.still_left.iter().map(|item| self.area(*item)).sum()
    }

    /// Large parts first, by one measure or another, and not too strictly.
    fn order_pool(&mut self) {
        let by = self.rng.u8(0..5);
        let loose = self.rng.i64(0..256);
        let mut pool = std::mem::take(&mut self.pool);
        for (key, item) in &mut pool {
            let [length, width] = self.task.kinds[self.kind(*item)].size.map(i64::from);
            let measure = match by {
                2 => length.max(width),
                3 => length.min(width),
                _ => length * width,
            };
            *key = -measure * (1024 + loose * self.rng.i64(-256..256) / 256);
        }
        pool.sort_unstable();
        self.pool = pool;
    }

    fn accept(&mut self, left_area: i64) {
        self.left_area = left_area;
        std::mem::swap(&mut self.left, &mut self.still_left);
    }

    /// Begins to look for an offcut along one axis.
    fn begin_squeeze(&mut self, axis: usize) {
        let low = self.best.worth.map_or(0, |worth| worth.offcut);
        let boards = self.best.sheets.iter().map(|open| (self.task.boards[open.board].area(), open.tree.used));
        let free = boards.clone().map(|(area, used)| area - used).sum::<i64>();
        let high = boards.map(|(area, _)| area).max().unwrap_or(0).min(free);
        let squeeze = Squeeze { axis, low, high, target: 0, tries: 0 };
        self.squeeze(squeeze);
    }

    /// Takes what is on the emptiest sheet off it, and makes it smaller by the offcut that is wanted; where that makes no
    /// sense any more, goes on to the other axis, and then to the next goal.
    fn squeeze(&mut self, mut squeeze: Squeeze) {
        self.load_best();
        let emptiest = (0..self.sheets.len()).min_by_key(|at| self.sheets[*at].tree.used);
        let full = emptiest.map(|at| self.task.boards[self.sheets[at].board].size);
        let (Some(at), Some(full)) = (emptiest, full) else { return self.end_squeeze(squeeze.axis) };
        let area = i64::from(full[0]) * i64::from(full[1]);
        squeeze.target = squeeze.low + (squeeze.high - squeeze.low) / 2 + 1;
        squeeze.tries = 0;
        let axis = squeeze.axis;
        let across = i64::from((full[1 - axis] - self.task.kerf).max(1));
        let along = i32::try_from(squeeze.target / across + 1).unwrap_or(i32::MAX);
        let stays = full[axis].saturating_sub(along).saturating_sub(self.task.kerf);
        // With stages an offcut is a strip of the whole length, or where there are no strips, of the whole width.
        if self.task.rules.stages > 0 && self.sheets[at].tree.strips == (axis == 0) {
            return self.end_squeeze(axis);
        }
        if squeeze.high - squeeze.low < area / 64 || stays <= 0 || !self.best.left.is_empty() {
            return self.end_squeeze(axis);
        }
        let mut smaller = full;
        smaller[axis] = stays;
        let left = items(&self.sheets[at].tree).collect();
        let strips = self.sheets[at].tree.strips;
        self.sheets[at].tree = Tree::new(smaller, strips, self.task.rules, &mut self.scratch);
        let sheets = std::mem::take(&mut self.sheets);
        self.load(sheets, left);
        // The sheet is begun anew, so it is not paid for until something is on it.
        self.cost -= self.task.boards[self.sheets[at].board].cost;
        self.goal = Goal::Offcut(squeeze);
    }

    fn end_squeeze(&mut self, axis: usize) {
        if axis == 0 { self.begin_squeeze(1) } else { self.begin_next_goal() }
    }

    fn step_for_offcut(&mut self, mut squeeze: Squeeze) {
        if self.tries >= FOR_SHEETS + FOR_OFFCUT {
            return self.begin_next_goal();
        }
        squeeze.tries += 1;
        self.goal = Goal::Offcut(squeeze);
        let left_area = self.ruin_and_lay();
        // The first time all that was on the sheet is in the pool.
        let worse = i64::from(self.rng.u8(0..8) == 0) * self.mean_area / 16;
        if left_area > self.left_area.saturating_add(worse) {
            self.take_back();
        } else {
            self.accept(left_area);
        }
        if self.left.is_empty() {
            self.keep_if_better();
            let reached = self.best.worth.map_or(0, |worth| worth.offcut);
            self.squeeze(Squeeze { low: reached.max(squeeze.target), ..squeeze });
        } else if squeeze.tries >= FOR_ONE_OFFCUT {
            self.squeeze(Squeeze { high: squeeze.target, ..squeeze });
        }
    }

    fn step_for_settings(&mut self, worth: Worth) {
        /// Where there are more parts a list is long whatever is done, and looking at it takes long too.
        const MOST_PARTS: usize = 150;
        if self.tries >= FOR_ALL || self.task.items.len() > MOST_PARTS || self.sheets.is_empty() {
            return self.begin_next_goal();
        }
        let left_area = self.ruin_and_lay();
        if left_area > self.left_area || self.cost > self.best.cost {
            return self.take_back();
        }
        let now = self.worth();
        if now < worth {
            return self.take_back();
        }
        self.goal = Goal::Settings(now);
        self.accept(left_area);
        if now > worth {
            self.keep_if_better();
        }
    }
}

/// The pieces on a sheet.
fn items(tree: &Tree) -> impl Iterator<Item = u32> {
    tree.nodes.iter().filter(|node| node.axis == PART).map(|node| node.item)
}
