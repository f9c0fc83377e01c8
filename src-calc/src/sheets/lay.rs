//! Laying a piece: on a sheet that is begun, on a new one, or now and then anywhere.

use super::chance::draw;
use super::hunt::{Hunt, Open};
use super::slicing::{NONE, Node, Tree, place};

/// How often a part goes to any place that has room instead of the best, of 256.
const WILD: u8 = 8;

/// How a part is put down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Hand {
    /// At the best place.
    Steady,
    /// Nearly: now and then past a good place, and able to take it back.
    Loose,
}

impl Hunt {
    /// Any place that has room on some sheet, be it a poor one: what looks poor may be just what the next part needs.
    fn place_anywhere(&mut self, item: u32) -> Option<(usize, u16, bool)> {
        let at = draw(&mut self.rng, 0..self.sheets.len().max(1));
        self.sheets.get(at).filter(|open| !open.tree.is_empty())?;
        self.any_slot(at, item)
    }

    fn any_slot(&mut self, at: usize, item: u32) -> Option<(usize, u16, bool)> {
        let open = self.sheets.get(at)?;
        let kind = self.kind(item);
        let size = self.task.kinds[kind].size;
        let ways = self.task.ways(kind, open.board);
        let mut found = None;
        let mut seen = 0;
        for (turned, size) in [(false, size), (true, [size[1], size[0]])] {
            if !ways[usize::from(turned)] {
                continue;
            }
            for (nth, _) in open.tree.slots.iter().enumerate().filter(|(_, slot)| slot.takes(size)) {
                seen += 1;
                if self.rng.u32(0..seen) == 0 {
                    found = Some((at, place(nth), turned));
                }
            }
        }
        found
    }

    /// Puts a piece on a sheet, on a new one where it must be and may be.
    pub(super) fn put(&mut self, item: u32, hand: Hand) -> bool {
        let anywhere = if hand == Hand::Loose && self.rng.u8(..) < WILD { self.place_anywhere(item) } else { None };
        let place = anywhere.or_else(|| self.place_among(item, hand)).or_else(|| self.place_anew(item, hand));
        let Some((at, slot, turned)) = place else { return false };
        if hand == Hand::Loose {
            self.save(at);
        }
        let size = self.task.kinds[self.kind(item)].size;
        let size = if turned { [size[1], size[0]] } else { size };
        let rules = self.task.rules;
        let open = &mut self.sheets[at];
        if open.tree.is_empty() {
            self.cost += self.task.boards[open.board].cost;
        }
        let slot = open.tree.slots[usize::from(slot)];
        open.tree.insert(slot, Node::part(item, size, turned), rules, &mut self.scratch);
        self.mark(at);
        true
    }

    /// The best place on a sheet that is begun: which sheet, which slot, and whether turned.
    #[expect(clippy::float_arithmetic, reason = "an estimate to choose by")]
    fn place_among(&mut self, item: u32, hand: Hand) -> Option<(usize, u16, bool)> {
        /// How often a place is passed by, of 256.
        const BLINKS: u8 = 5;
        let kind = self.kind(item);
        let mut best = None;
        let mut least = f32::INFINITY;
        for (at, open) in self.sheets.iter().enumerate() {
            if open.tree.is_empty() {
                continue;
            }
            let fit = self.fits.best(&self.task, self.weights, (at, &open.tree, open.board), kind);
            let mut waste = fit.waste;
            if !waste.is_finite() {
                continue;
            }
            if hand == Hand::Loose {
                if self.rng.u8(..) < BLINKS {
                    continue;
                }
                waste *= 0.95 + 0.1 * self.rng.f32();
            }
            if waste < least {
                least = waste;
                best = Some((at, fit.slot, fit.turned));
            }
        }
        best
    }

    /// A place on a sheet that is still whole: the cheapest for its area, or any that may be begun.
    fn place_anew(&mut self, item: u32, hand: Hand) -> Option<(usize, u16, bool)> {
        let kind = self.kind(item);
        let mut choice = None;
        let mut least = i128::MAX;
        for (nth, board) in self.task.boards.iter().enumerate() {
            let [straight, turned] = self.task.ways(kind, nth);
            if !(straight || turned) || self.cost.saturating_add(board.cost) > self.budget {
                continue;
            }
            // What is free comes first, the smallest of it before the others.
            let rank = match hand {
                Hand::Loose => self.rng.u32(..).into(),
                Hand::Steady if board.cost == 0 => i128::from(board.area()) - i128::from(i64::MAX),
                Hand::Steady => i128::from(board.cost) * i128::from(i64::MAX) / i128::from(board.area().max(1)),
            };
            if rank < least {
                let mut used = 0;
                let mut empty = None;
                for (at, open) in self.sheets.iter().enumerate().filter(|(_, open)| open.board == nth) {
                    used += 1;
                    let fits = open.tree.slots.first().is_some_and(|slot| slot.node == NONE)
                        && self.fits.best(&self.task, self.weights, (at, &open.tree, nth), kind).waste.is_finite();
                    empty = empty.or(fits.then_some(at));
                }
                if empty.is_some() || (self.may_add && used < board.count) {
                    least = rank;
                    choice = Some((nth, empty));
                }
            }
        }
        let (board, empty) = choice?;
        let at = empty.unwrap_or_else(|| {
            let of = &self.task.boards[board];
            let tree = Tree::new(of.size, self.task.has_strips(of), self.task.rules, &mut self.scratch);
            self.sheets.push(Open { board, tree });
            let at = self.sheets.len() - 1;
            self.mark(at);
            at
        });
        if hand == Hand::Loose {
            return self.any_slot(at, item);
        }
        let fit = self.fits.best(&self.task, self.weights, (at, &self.sheets[at].tree, board), kind);
        fit.waste.is_finite().then_some((at, fit.slot, fit.turned))
    }
}
