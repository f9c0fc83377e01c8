//! What counts between layouts that cost the same: the largest offcut, then few settings of the fence, then few cuts.

use super::carve::carve;
use super::hunt::Open;
use super::order::settings;
use super::task::Task;
use std::cmp::Reverse;

/// How good a layout is beside its cost. The greater, the better.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Worth {
    /// The area of the largest offcut that is worth keeping.
    pub(super) offcut: i64,
    /// How often the fence is set.
    pub(super) settings: Reverse<usize>,
    /// How many cuts.
    pub(super) cuts: Reverse<usize>,
}

/// Looks at sheets in the making.
pub(super) fn worth(task: &Task, sheets: &[Open]) -> Worth {
    let mut cuts = Vec::new();
    let mut offcut = 0;
    let mut next_piece = u32::try_from(sheets.len()).unwrap_or(u32::MAX);
    for (nth, open) in sheets.iter().enumerate().filter(|(_, open)| !open.tree.is_empty()) {
        let carved = carve(task, nth, open, &mut next_piece);
        let kept = carved.left.iter().filter(|left| left.keep).map(|left| left.rect.area());
        offcut = kept.fold(offcut, i64::max);
        cuts.extend(carved.cuts);
    }
    Worth { offcut, settings: Reverse(settings(&cuts).len()), cuts: Reverse(cuts.len()) }
}
