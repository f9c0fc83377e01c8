//! A sheet as a tree of cuts, without fixed waste.
//!
//! Every inner node lays its children side by side along one axis; a leaf is a part. Sizes are the least that the parts
//! need, worked out from the leaves up; the room a node may grow to is worked out from the sheet down. A part can so be
//! put beside or over any node, or over a few children of one, wherever the sheet still has room: nothing has been
//! decided about waste before it is needed. Any such tree can be sawn by cuts from edge to edge.
//!
//! Every part and every sheet is longer and wider by one kerf here: parts in a row then need no kerf counted between
//! them, and the last one may come to the sheet's edge.

/// No node.
pub(super) const NONE: u16 = u16::MAX;
/// Along the sheet: what crosscuts separate.
pub(super) const ALONG: u8 = 0;
/// Across the sheet: what rips separate.
pub(super) const ACROSS: u8 = 1;
/// A part, which has no axis.
pub(super) const PART: u8 = 2;

/// A size along and across the sheet, a kerf included.
pub(super) type Size = [i32; 2];

/// Which cuts are allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Rules {
    /// The greatest number of stages, rips first; nought for any.
    pub(super) stages: u8,
    /// The longest rip, a kerf included.
    pub(super) longest_rip: i32,
}

/// A node. They stand in preorder: a node's descendants are those up to `end`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Node {
    /// [`ALONG`], [`ACROSS`] or [`PART`].
    pub(super) axis: u8,
    /// Whether the part is turned.
    pub(super) turned: bool,
    /// The stage of the cuts between its children.
    pub(super) stage: u8,
    pub(super) parent: u16,
    pub(super) end: u16,
    /// Which part it is.
    pub(super) item: u32,
    /// What it needs.
    pub(super) size: Size,
    /// What it may grow to.
    pub(super) room: Size,
}

impl Node {
    /// A part, not yet in a tree.
    pub(super) const fn part(item: u32, size: Size, turned: bool) -> Self {
        Self { axis: PART, turned, stage: 0, parent: NONE, end: 0, item, size, room: [0; 2] }
    }

    /// An inner node, not yet in a tree.
    pub(super) const fn inner(axis: u8, parent: u16) -> Self {
        Self { axis, turned: false, stage: 0, parent, end: 0, item: 0, size: [0; 2], room: [0; 2] }
    }
}

/// A place where one more part may go: beside a node along an axis.
#[derive(Clone, Copy, Debug)]
pub(super) struct Slot {
    /// Which node; [`NONE`] for the empty sheet.
    pub(super) node: u16,
    /// Over how many of its children, the smallest ones; nought for the whole node.
    pub(super) group: u16,
    pub(super) axis: u8,
    /// Whether the part has to be exactly as wide as what is there, since no stage is left to trim it.
    pub(super) exact: bool,
    /// What is there already, along the axis.
    pub(super) there: i32,
    /// How much may come to it.
    pub(super) spare: i32,
    /// What is there already, square to the axis.
    pub(super) across: i32,
    /// How much it may grow to.
    pub(super) across_room: i32,
}

impl Slot {
    /// Whether a part of that size has room there.
    pub(super) fn takes(&self, size: Size) -> bool {
        let (along, across) = axes(self.axis);
        let (long, wide) = (size[along], size[across]);
        long <= self.spare && wide <= self.across_room && (!self.exact || wide == self.across)
    }
}

/// The parts on one sheet.
#[derive(Clone, Debug)]
pub(super) struct Tree {
    /// The sheet, or what of it may be used.
    pub(super) sheet: Size,
    /// Whether strips may be ripped off the whole sheet. Where it is longer than the longest rip, and stages count, its
    /// first cuts are crosscuts.
    pub(super) strips: bool,
    pub(super) nodes: Vec<Node>,
    pub(super) slots: Vec<Slot>,
    /// The area of the parts.
    pub(super) used: i64,
    /// How many parts.
    pub(super) count: usize,
    /// Two trees of one sheet with the same mark are equal.
    pub(super) mark: u32,
}

/// A child: its size square to the row, its size along it, and where it stands.
pub(super) type Child = (i32, i32, u16);

/// Memory that is used again and again.
#[derive(Clone, Debug, Default)]
pub(super) struct Scratch {
    pub(super) nodes: Vec<Node>,
    pub(super) children: Vec<Child>,
    pub(super) alive: Vec<u16>,
}

/// A place in a tree. A job has far fewer than 2¹⁵ parts, and a tree fewer than twice as many nodes.
#[expect(clippy::cast_possible_truncation, reason = "bounded by the number of parts that a job may have")]
pub(super) const fn place(at: usize) -> u16 {
    at as u16
}

impl Tree {
    /// An empty sheet.
    pub(super) fn new(sheet: Size, strips: bool, rules: Rules, scratch: &mut Scratch) -> Self {
        let mut tree = Self { sheet, strips, nodes: Vec::new(), slots: Vec::new(), used: 0, count: 0, mark: 0 };
        tree.settle(rules, scratch);
        tree
    }

    /// Becomes the other one without asking for memory.
    pub(super) fn become_like(&mut self, other: &Self) {
        (self.sheet, self.strips) = (other.sheet, other.strips);
        self.nodes.clone_from(&other.nodes);
        self.slots.clone_from(&other.slots);
        (self.used, self.count, self.mark) = (other.used, other.count, other.mark);
    }

    /// Whether nothing is on it.
    pub(super) fn is_empty(&self) -> bool {
        self.nodes.is_empty()
    }

    /// The children of a node, the smallest square to its axis first.
    pub(super) fn children(&self, at: usize, into: &mut Vec<Child>) {
        let node = &self.nodes[at];
        let (along, across) = axes(node.axis);
        into.clear();
        let mut child = at + 1;
        while child < usize::from(node.end) {
            let Node { size, end, .. } = self.nodes[child];
            into.push((size[across], size[along], place(child)));
            child = end.into();
        }
        into.sort_unstable();
    }

    /// Works out sizes, rooms, stages and slots anew.
    pub(super) fn settle(&mut self, rules: Rules, scratch: &mut Scratch) {
        self.measure();
        self.slots.clear();
        if self.nodes.is_empty() {
            let [length, width] = self.sheet;
            let (node, across_room) = (NONE, width);
            // Without strips only a third stage can make a part narrower than the sheet.
            let exact = rules.stages == 2 && !self.strips;
            let slot = Slot { node, group: 0, axis: ALONG, exact, there: 0, spare: length, across: width, across_room };
            self.slots.push(slot);
        }
        for at in 0..self.nodes.len() {
            self.give_room(at, rules);
            self.find_slots(at, rules);
            if rules.stages == 0 && self.nodes[at].axis != PART {
                self.find_groups(at, rules, scratch);
            }
        }
    }

    fn measure(&mut self) {
        (self.used, self.count) = (0, 0);
        for node in self.nodes.iter_mut().filter(|node| node.axis != PART) {
            node.size = [0; 2];
        }
        for at in (0..self.nodes.len()).rev() {
            let Node { axis, size, parent, .. } = self.nodes[at];
            if axis == PART {
                self.used += i64::from(size[0]) * i64::from(size[1]);
                self.count += 1;
            }
            if parent != NONE {
                let parent = &mut self.nodes[usize::from(parent)];
                let (along, across) = axes(parent.axis);
                parent.size[along] += size[along];
                parent.size[across] = parent.size[across].max(size[across]);
            }
        }
    }

    fn give_room(&mut self, at: usize, rules: Rules) {
        let Node { axis, size, parent, .. } = self.nodes[at];
        let (room, stage) = if parent == NONE {
            // A row of crosscuts at the root stands on one strip, which was ripped before. A stack of rips at the root is
            // that of strips, or stands on one piece that was crosscut before.
            let stage = match axis {
                ALONG => 2,
                _ if self.strips => 1,
                _ => 3,
            };
            (self.sheet, stage)
        } else {
            let parent = &self.nodes[usize::from(parent)];
            let (along, _) = axes(parent.axis);
            let mut room = parent.room;
            if parent.axis == ACROSS {
                room[0] = room[0].min(rules.longest_rip);
            }
            room[along] = parent.room[along] - parent.size[along] + size[along];
            (room, parent.stage.saturating_add(1))
        };
        let node = &mut self.nodes[at];
        (node.room, node.stage) = (room, stage);
    }

    fn find_slots(&mut self, at: usize, rules: Rules) {
        let Node { axis, parent, stage, .. } = self.nodes[at];
        let limit = if rules.stages == 0 { u8::MAX } else { rules.stages };
        let is_root = parent == NONE;
        if axis != PART {
            self.push_slot(at, axis, stage == limit, rules);
            // With stages the strips at the root stay the first cuts; without strips the crosscuts do.
            if is_root && (rules.stages == 0 || (axis == ALONG) == self.strips) {
                self.push_slot(at, 1 - axis, false, rules);
            }
        } else if is_root {
            if self.strips || limit > 2 {
                self.push_slot(at, ACROSS, !self.strips && limit == 3, rules);
            }
            self.push_slot(at, ALONG, limit == 2, rules);
        } else if stage <= limit {
            // A new node here would be of the stage that the part itself has.
            let axis = 1 - self.nodes[usize::from(parent)].axis;
            self.push_slot(at, axis, stage == limit, rules);
        }
    }

    fn push_slot(&mut self, at: usize, axis: u8, exact: bool, rules: Rules) {
        let Node { size, room, .. } = self.nodes[at];
        let (along, across) = axes(axis);
        let across_room = if axis == ACROSS { room[across].min(rules.longest_rip) } else { room[across] };
        let spare = room[along] - size[along];
        if spare > 0 && size[across] <= across_room {
            let (node, there, across) = (place(at), size[along], size[across]);
            self.slots.push(Slot { node, group: 0, axis, exact, there, spare, across, across_room });
        }
    }

    /// Over the smallest few of a row's children.
    fn find_groups(&mut self, at: usize, rules: Rules, scratch: &mut Scratch) {
        let Node { axis, size, room, .. } = self.nodes[at];
        let (along, across) = axes(axis);
        self.children(at, &mut scratch.children);
        let row = &scratch.children;
        let slack = room[along] - size[along];
        // No stack may be wider than the longest rip: neither the one a group stands in, nor a new one over it.
        let [row_limit, stack_limit] =
            if axis == ALONG { [i32::MAX, rules.longest_rip] } else { [rules.longest_rip, i32::MAX] };
        let mut length = row.first().map_or(0, |child| child.1);
        for (before, &(high, long, _)) in row.iter().enumerate().take(row.len().saturating_sub(1)).skip(1) {
            length += long;
            let spare = room[across].min(row_limit) - high;
            if spare <= 0 || length > stack_limit {
                break;
            }
            let (node, group, axis) = (place(at), place(before + 1), 1 - axis);
            let across_room = (length + slack).min(stack_limit);
            self.slots.push(Slot { node, group, axis, exact: false, there: high, spare, across: length, across_room });
        }
    }
}

/// An axis and the other one, as places in a [`Size`].
pub(super) fn axes(axis: u8) -> (usize, usize) {
    let along = usize::from(axis & 1);
    (along, 1 - along)
}
