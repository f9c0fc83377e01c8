//! Putting parts into a tree of cuts, and taking them out.

use super::slicing::{NONE, Node, PART, Rules, Scratch, Slot, Tree, place};

impl Tree {
    /// Puts a part into a slot of this tree.
    pub(super) fn insert(&mut self, slot: Slot, part: Node, rules: Rules, scratch: &mut Scratch) {
        let mut grown = std::mem::take(&mut scratch.nodes);
        grown.clear();
        if slot.node == NONE {
            grown.push(Node { parent: NONE, end: 1, ..part });
        } else if slot.group > 0 {
            self.over_a_few(slot, part, &mut grown, scratch);
        } else if self.nodes[usize::from(slot.node)].axis == slot.axis {
            self.beside(slot, part, &mut grown);
        } else {
            self.around(slot, part, &mut grown);
        }
        scratch.nodes = std::mem::replace(&mut self.nodes, grown);
        self.settle(rules, scratch);
    }

    /// One more child of a node, in front of the others.
    fn beside(&self, slot: Slot, part: Node, grown: &mut Vec<Node>) {
        let at = usize::from(slot.node);
        self.up_to(at, 1, grown);
        grown.extend(self.nodes.get(at).map(|node| Node { end: node.end + 1, ..*node }));
        grown.push(Node { parent: slot.node, end: slot.node + 2, ..part });
        self.after(at + 1, slot.node + 1, 1, grown);
    }

    /// A node and the part become the children of a new one in its place.
    fn around(&self, slot: Slot, part: Node, grown: &mut Vec<Node>) {
        let at = usize::from(slot.node);
        let Node { parent, end, .. } = self.nodes[at];
        self.up_to(at, 2, grown);
        grown.push(Node { end: end + 2, ..Node::inner(slot.axis, parent) });
        self.copy(at, slot.node, grown);
        grown.push(Node { parent: slot.node, end: end + 2, ..part });
        self.after(end.into(), end, 2, grown);
    }

    /// The smallest few children of a row become a row of their own, with the part over it.
    fn over_a_few(&self, slot: Slot, part: Node, grown: &mut Vec<Node>, scratch: &mut Scratch) {
        const ADDED: u16 = 3;
        let at = usize::from(slot.node);
        let Node { axis, end, .. } = self.nodes[at];
        self.children(at, &mut scratch.children);
        let (few, others) = scratch.children.split_at(usize::from(slot.group).min(scratch.children.len()));
        self.up_to(at, ADDED, grown);
        grown.push(Node { end: end + ADDED, ..self.nodes[at] });
        let over = grown.len();
        grown.push(Node::inner(slot.axis, slot.node));
        let row = grown.len();
        grown.push(Node::inner(axis, place(over)));
        for &(_, _, child) in few {
            self.copy(child.into(), place(row), grown);
        }
        let next = place(grown.len());
        grown[row].end = next;
        grown.push(Node { parent: place(over), end: next + 1, ..part });
        grown[over].end = next + 1;
        for &(_, _, child) in others {
            self.copy(child.into(), slot.node, grown);
        }
        self.after(end.into(), end, ADDED, grown);
    }

    /// The nodes before one, where it and its forebears grow by so many.
    fn up_to(&self, at: usize, added: u16, grown: &mut Vec<Node>) {
        let longer =
            |node: &Node| Node { end: if usize::from(node.end) > at { node.end + added } else { node.end }, ..*node };
        grown.extend(self.nodes.iter().take(at).map(longer));
    }

    /// The nodes from one on, moved by so many. Parents from `moved` on have moved too.
    fn after(&self, from: usize, moved: u16, added: u16, grown: &mut Vec<Node>) {
        grown.extend(self.nodes.iter().skip(from).map(|node| {
            let parent = if node.parent != NONE && node.parent >= moved { node.parent + added } else { node.parent };
            Node { parent, end: node.end + added, ..*node }
        }));
    }

    /// A node with all below it, to the end of another tree.
    fn copy(&self, at: usize, parent: u16, grown: &mut Vec<Node>) {
        let from = place(at);
        let to = place(grown.len());
        let below = self.nodes.get(at..usize::from(self.nodes[at].end)).unwrap_or_default();
        grown.extend(below.iter().enumerate().map(|(nth, node)| Node {
            parent: if nth == 0 { parent } else { node.parent - from + to },
            end: node.end - from + to,
            ..*node
        }));
    }

    /// Takes out the parts that stand at these places of the tree. What is left alone in a row takes the row's place.
    pub(super) fn remove(&mut self, gone: &[bool], rules: Rules, scratch: &mut Scratch) {
        let alive = &mut scratch.alive;
        alive.clear();
        alive.resize(self.nodes.len(), 0);
        for (at, node) in self.nodes.iter().enumerate().rev() {
            if node.axis == PART {
                alive[at] = u16::from(!gone[at]);
            }
            if alive[at] > 0 && node.parent != NONE {
                alive[usize::from(node.parent)] += 1;
            }
        }
        let mut thinned = std::mem::take(&mut scratch.nodes);
        thinned.clear();
        if !self.nodes.is_empty() {
            self.keep(0, NONE, PART, &scratch.alive, &mut thinned);
        }
        scratch.nodes = std::mem::replace(&mut self.nodes, thinned);
        self.settle(rules, scratch);
    }

    fn keep(&self, at: usize, parent: u16, parent_axis: u8, alive: &[u16], into: &mut Vec<Node>) {
        let node = self.nodes[at];
        let next = into.len();
        match alive[at] {
            0 => return,
            _ if node.axis == PART => {
                into.push(Node { parent, end: place(next + 1), ..node });
                return;
            }
            _ => {}
        }
        let stays = alive[at] > 1 && node.axis != parent_axis;
        let (under, axis) = if stays { (place(next), node.axis) } else { (parent, parent_axis) };
        if stays {
            into.push(Node { parent, ..node });
        }
        let mut child = at + 1;
        while child < usize::from(node.end) {
            self.keep(child, under, axis, alive, into);
            child = self.nodes[child].end.into();
        }
        if stays {
            into[next].end = place(into.len());
        }
    }
}

#[cfg(test)]
mod tests;
