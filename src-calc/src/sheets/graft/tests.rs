use super::super::slicing::{ACROSS, ALONG, Size};
use super::*;
use proptest::prelude::*;

const ANY: Rules = Rules { stages: 0, longest_rip: i32::MAX };

/// Where each part lies when every row is laid from its beginning, worked out from the parts' own sizes alone.
fn lay(tree: &Tree, at: usize, from: [i32; 2], into: &mut Vec<(u32, [i32; 2], Size)>) -> Size {
    let node = tree.nodes[at];
    if node.axis == PART {
        into.push((node.item, from, node.size));
        return node.size;
    }
    let along = usize::from(node.axis);
    let (mut next, mut size) = (from, [0; 2]);
    let mut child = at + 1;
    let mut children = 0;
    while child < usize::from(node.end) {
        assert_eq!(usize::from(tree.nodes[child].parent), at, "a child knows its parent");
        assert_ne!(tree.nodes[child].axis, node.axis, "a row in a row is one row");
        let own = lay(tree, child, next, into);
        next[along] += own[along];
        size[along] += own[along];
        size[1 - along] = size[1 - along].max(own[1 - along]);
        child = tree.nodes[child].end.into();
        children += 1;
    }
    assert_eq!(child, usize::from(node.end), "a node ends where its last child does");
    assert!(children > 1, "a row has at least two pieces");
    assert_eq!(size, node.size);
    size
}

fn check(tree: &Tree, items: &[u32], rules: Rules) {
    let mut laid = Vec::new();
    if tree.nodes.is_empty() {
        assert!(items.is_empty());
        return;
    }
    assert_eq!(usize::from(tree.nodes[0].end), tree.nodes.len());
    let size = lay(tree, 0, [0; 2], &mut laid);
    assert!(size[0] <= tree.sheet[0] && size[1] <= tree.sheet[1], "on the sheet");
    let mut found: Vec<u32> = laid.iter().map(|part| part.0).collect();
    found.sort_unstable();
    assert_eq!(found, items, "every part once");
    for (nth, a) in laid.iter().enumerate() {
        for b in &laid[..nth] {
            let apart = (0..2).any(|of| a.1[of] + a.2[of] <= b.1[of] || b.1[of] + b.2[of] <= a.1[of]);
            assert!(apart, "{a:?} lies on {b:?}");
        }
    }
    for node in tree.nodes.iter().filter(|node| node.axis != PART) {
        if rules.stages > 0 {
            assert!(node.stage <= rules.stages, "no stage too many");
        }
        if node.axis == ACROSS {
            assert!(node.size[0] <= rules.longest_rip, "no rip too long");
        }
    }
}

proptest! {
    /// Parts go into any slot that has room for them and come out again, and the sheet stays one that can be sawn.
    #[test]
    fn a_tree_stays_a_tree(
        sizes in prop::collection::vec((1_i32..60, 1_i32..60), 1..24),
        picks in prop::collection::vec(any::<prop::sample::Index>(), 48),
        out in prop::collection::vec(any::<bool>(), 48),
        stages in prop::sample::select(vec![0_u8, 2, 3]),
        long in any::<bool>(),
    ) {
        let rules = Rules { stages, longest_rip: if long { i32::MAX } else { 60 } };
        let strips = stages == 0 || long;
        let mut scratch = Scratch::default();
        let mut tree = Tree::new([100, 100], strips, rules, &mut scratch);
        let mut items: Vec<u32> = Vec::new();
        let mut picks = picks.iter();
        for (item, (length, width)) in (0_u32..).zip(sizes) {
            let size = [length, width];
            let open: Vec<Slot> = tree.slots.iter().copied().filter(|slot| slot.takes(size)).collect();
            if open.is_empty() {
                continue;
            }
            let slot = open[picks.next().map_or(0, |pick| pick.index(open.len()))];
            tree.insert(slot, Node::part(item, size, false), rules, &mut scratch);
            items.push(item);
            check(&tree, &items, rules);
        }
        let gone: Vec<bool> = (0..tree.nodes.len()).map(|at| out[at % out.len()]).collect();
        let taken: Vec<u32> = tree.nodes.iter().zip(&gone).filter(|(node, gone)| node.axis == PART && **gone).map(|(node, _)| node.item).collect();
        items.retain(|item| !taken.contains(item));
        tree.remove(&gone, rules, &mut scratch);
        check(&tree, &items, rules);
    }
}

#[test]
fn a_part_goes_over_the_two_lowest_of_a_row() {
    let mut scratch = Scratch::default();
    let mut tree = Tree::new([100, 100], true, ANY, &mut scratch);
    let mut put = |tree: &mut Tree, item: u32, size: Size, want: fn(&Slot) -> bool| {
        let slot = tree.slots.iter().copied().find(want).unwrap();
        tree.insert(slot, Node::part(item, size, false), ANY, &mut scratch);
    };
    put(&mut tree, 0, [30, 90], |_| true);
    put(&mut tree, 1, [30, 40], |slot| slot.axis == ALONG);
    put(&mut tree, 2, [40, 50], |slot| slot.axis == ALONG);
    // 30 + 40 wide and 50 high: 70 × 50 has room over both, and nowhere else.
    put(&mut tree, 3, [70, 50], |slot| slot.group == 2);
    check(&tree, &[0, 1, 2, 3], ANY);
    assert_eq!(tree.used, 2700 + 1200 + 2000 + 3500);
    assert!(tree.slots.iter().all(|slot| slot.spare <= 10), "{:?}", tree.slots);
}
