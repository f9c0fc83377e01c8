//! The order of cuts, so that the fence is set as seldom as can be.

use super::carve::Sawn;
use super::layout::Way;
use std::collections::BTreeMap;

/// How the saw stands for a cut. Trimming comes before everything else.
type Stand = (bool, Way, i32);

#[derive(Default)]
struct Waiting {
    /// Cuts whose piece is there.
    ready: Vec<usize>,
    /// All that are not made yet.
    count: usize,
}

/// Groups cuts by how the saw stands, in an order in which every piece is there before it is cut.
///
/// A stand is chosen when no other cut of it is still to come, if there is such a one: so it is not needed twice. Among
/// several the one with the most cuts is taken.
pub(super) fn settings(cuts: &[Sawn]) -> Vec<Vec<usize>> {
    let stand = |cut: &Sawn| -> Stand { (!cut.trim, cut.way, cut.fence) };
    let mut cut_of: BTreeMap<u32, usize> = cuts.iter().enumerate().map(|(at, cut)| (cut.piece, at)).collect();
    let made: Vec<u32> =
        cuts.iter().flat_map(|cut| [Some(cut.keeps.id), cut.falls.map(|falls| falls.id)]).flatten().collect();
    let mut waiting: BTreeMap<Stand, Waiting> = BTreeMap::new();
    for cut in cuts {
        waiting.entry(stand(cut)).or_default().count += 1;
    }
    let mut begun: Vec<usize> = cut_of.values().copied().collect();
    let later: std::collections::BTreeSet<usize> = made.iter().filter_map(|piece| cut_of.get(piece).copied()).collect();
    begun.retain(|at| !later.contains(at));
    for at in begun {
        if let Some(cut) = cuts.get(at) {
            waiting.entry(stand(cut)).or_default().ready.push(at);
        }
    }
    let mut order = Vec::new();
    while let Some(next) = choose(&waiting) {
        let mut group: Vec<usize> = Vec::new();
        let mut ready = waiting.get_mut(&next).map(|waiting| std::mem::take(&mut waiting.ready)).unwrap_or_default();
        ready.sort_unstable();
        let mut turn = 0;
        while let Some(at) = ready.get(turn).copied() {
            turn += 1;
            let Some(cut) = cuts.get(at) else { continue };
            cut_of.remove(&cut.piece);
            group.push(at);
            for piece in [Some(cut.keeps.id), cut.falls.map(|falls| falls.id)].into_iter().flatten() {
                let Some(follows) = cut_of.get(&piece).copied() else { continue };
                match cuts.get(follows).map(stand) {
                    Some(same) if same == next => ready.push(follows),
                    Some(other) => waiting.entry(other).or_default().ready.push(follows),
                    None => {}
                }
            }
        }
        if let Some(now) = waiting.get_mut(&next) {
            now.count = now.count.saturating_sub(group.len());
            if now.count == 0 {
                waiting.remove(&next);
            }
        }
        order.push(group);
    }
    order
}

fn choose(waiting: &BTreeMap<Stand, Waiting>) -> Option<Stand> {
    let ready = waiting.iter().filter(|(_, waiting)| !waiting.ready.is_empty());
    let best = ready.max_by_key(|((cut_apart, way, fence), waiting)| {
        let all_there = waiting.ready.len() == waiting.count;
        (!cut_apart, all_there, waiting.ready.len(), *way == Way::Rip, *fence)
    });
    best.map(|(stand, _)| *stand)
}
