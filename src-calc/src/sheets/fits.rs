//! Where a part goes best: on every sheet, remembered until the sheet changes.

use super::slicing::{Size, Slot, Tree};
use super::task::Task;

/// How much each kind of waste beside a new part counts.
#[derive(Clone, Copy, Debug)]
pub(super) struct Weights {
    /// What the part is narrower or wider than what is there.
    pub(super) mismatch: f32,
    /// What stays free beyond it.
    pub(super) gap: f32,
}

/// The best slot of a sheet for a kind of part.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    /// Of which state of the sheet; nought for none.
    mark: u32,
    /// Its waste; infinite where the part does not fit.
    pub(super) waste: f32,
    pub(super) slot: u16,
    pub(super) turned: bool,
}

impl Fit {
    const UNKNOWN: Self = Self { mark: 0, waste: f32::INFINITY, slot: 0, turned: false };
}

/// The best slots known, sheet by sheet and kind by kind.
#[derive(Clone, Debug)]
pub(super) struct Fits {
    kinds: usize,
    known: Vec<Fit>,
}

impl Fits {
    pub(super) fn new(kinds: usize) -> Self {
        Self { kinds, known: Vec::new() }
    }

    /// The best slot for a kind on the sheet `at`, of which board it is.
    pub(super) fn best(
        &mut self,
        task: &Task,
        weights: Weights,
        (at, tree, board): (usize, &Tree, usize),
        kind: usize,
    ) -> Fit {
        let place = at * self.kinds + kind;
        if place >= self.known.len() {
            self.known.resize((at + 1) * self.kinds, Fit::UNKNOWN);
        }
        let known = &mut self.known[place];
        if known.mark != tree.mark || tree.mark == 0 {
            *known = search(task, weights, tree, board, kind);
        }
        *known
    }

    /// Forgets everything: the weights have changed.
    pub(super) fn clear(&mut self) {
        self.known.clear();
    }
}

#[expect(clippy::cast_possible_truncation, reason = "a sheet has fewer slots than places")]
fn search(task: &Task, weights: Weights, tree: &Tree, board: usize, kind: usize) -> Fit {
    let size = task.kinds[kind].size;
    let [straight, turned] = task.ways(kind, board);
    let mut best = Fit { mark: tree.mark, ..Fit::UNKNOWN };
    let mut look = |size: Size, turned: bool| {
        for (nth, slot) in tree.slots.iter().enumerate() {
            if let Some(waste) = waste(slot, size, weights).filter(|waste| *waste < best.waste) {
                best = Fit { waste, slot: nth as u16, turned, ..best };
            }
        }
    };
    if straight {
        look(size, false);
    }
    if turned && !(straight && size[0] == size[1]) {
        look([size[1], size[0]], true);
    }
    best
}

/// What a part would waste there; `None` where it does not fit.
#[expect(clippy::float_arithmetic, clippy::cast_precision_loss, reason = "an estimate to choose by")]
fn waste(slot: &Slot, size: Size, weights: Weights) -> Option<f32> {
    if !slot.takes(size) {
        return None;
    }
    let along = usize::from(slot.axis);
    let (long, across) = (size[along], size[1 - along]);
    let gap = (slot.spare - long) as f32;
    let narrower = slot.across - across;
    // Beside a narrower part some of the row is free; beside a wider one, some of what was there.
    let (beside, beyond) = if narrower >= 0 { (long, slot.across) } else { (slot.there, across) };
    Some(weights.mismatch * narrower.abs() as f32 * beside as f32 + weights.gap * gap * beyond as f32)
}
