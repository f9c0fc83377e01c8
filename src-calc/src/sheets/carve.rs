//! From a tree to the pieces that a saw makes of the sheet, and the cuts that make them.

use super::hunt::Open;
use super::layout::Way;
use super::slicing::{ACROSS, ALONG, NONE, Node, PART, Size, axes};
use super::task::Task;

/// A rectangle on a sheet, in units, without any kerf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Rect {
    pub(super) at: [i32; 2],
    pub(super) size: Size,
}

impl Rect {
    pub(super) fn area(self) -> i64 {
        i64::from(self.size[0]) * i64::from(self.size[1])
    }
}

/// What becomes of a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum End {
    Part(u32),
    Offcut,
    Waste,
    Rest,
}

/// A piece that a cut makes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cutting {
    pub(super) id: u32,
    pub(super) rect: Rect,
    pub(super) end: End,
}

/// One cut.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sawn {
    pub(super) sheet: usize,
    pub(super) piece: u32,
    pub(super) way: Way,
    pub(super) trim: bool,
    pub(super) fence: i32,
    pub(super) from_far: bool,
    pub(super) keeps: Cutting,
    pub(super) falls: Option<Cutting>,
}

/// What is left over.
#[derive(Clone, Copy, Debug)]
pub(super) struct Remnant {
    pub(super) rect: Rect,
    pub(super) keep: bool,
}

/// A part at its place.
#[derive(Clone, Copy, Debug)]
pub(super) struct Laid {
    pub(super) item: u32,
    pub(super) rect: Rect,
    pub(super) turned: bool,
}

/// A sheet, cut up.
#[derive(Clone, Debug, Default)]
pub(super) struct Carved {
    pub(super) parts: Vec<Laid>,
    pub(super) left: Vec<Remnant>,
    pub(super) cuts: Vec<Sawn>,
}

/// Cuts up one sheet, the `sheet`th; its whole is the piece of that number.
pub(super) fn carve(task: &Task, sheet: usize, open: &Open, next_piece: &mut u32) -> Carved {
    let trim = task.boards[open.board].trim;
    let usable = task.boards[open.board].size.map(|size| size - task.kerf);
    let strips = open.tree.strips;
    let mut saw = Saw { task, sheet, strips, nodes: &open.tree.nodes, next_piece, carved: Carved::default() };
    let id = u32::try_from(sheet).unwrap_or(u32::MAX);
    let rect = Rect { at: [0; 2], size: usable.map(|size| size + 2 * trim) };
    let (id, rect) = if trim > 0 { saw.trim(id, rect, trim) } else { (id, rect) };
    if !open.tree.is_empty() {
        saw.piece(0, id, rect);
    }
    saw.carved
}

struct Saw<'a> {
    task: &'a Task,
    sheet: usize,
    strips: bool,
    nodes: &'a [Node],
    next_piece: &'a mut u32,
    carved: Carved,
}

const fn way(axis: usize) -> Way {
    if axis == 0 { Way::Crosscut } else { Way::Rip }
}

impl Saw<'_> {
    /// What a node needs, without a kerf.
    fn need(&self, node: usize) -> Size {
        self.nodes[node].size.map(|size| size - self.task.kerf)
    }

    fn number(&mut self) -> u32 {
        let id = *self.next_piece;
        *self.next_piece = id.saturating_add(1);
        id
    }

    /// All four edges of a whole sheet, the long ones first.
    fn trim(&mut self, mut id: u32, mut rect: Rect, trim: i32) -> (u32, Rect) {
        let strip = (trim - self.task.kerf).max(0);
        for (axis, from_far) in [(1, true), (1, false), (0, true), (0, false)] {
            let fence = rect.size[axis] - trim;
            let (mut keeps, mut falls) = (rect, rect);
            (keeps.size[axis], falls.size[axis]) = (fence, strip);
            // From the far edge: the strip at the near edge falls off.
            if from_far {
                keeps.at[axis] += trim;
            } else {
                falls.at[axis] += rect.size[axis] - strip;
            }
            let keeps = Cutting { id: self.number(), rect: keeps, end: End::Rest };
            let falls = (strip > 0).then(|| Cutting { id: self.number(), rect: falls, end: End::Waste });
            let sheet = self.sheet;
            self.carved.cuts.push(Sawn { sheet, piece: id, way: way(axis), trim: true, fence, from_far, keeps, falls });
            (id, rect) = (keeps.id, keeps.rect);
        }
        // Where the whole sheet holds just one part, the last trimming cut makes it.
        if let (Some(last), Some(node)) = (self.carved.cuts.last_mut(), self.nodes.first()) {
            let need = node.size.map(|size| size - self.task.kerf);
            if node.axis == PART && need == rect.size {
                last.keeps.end = End::Part(node.item);
            }
        }
        (id, rect)
    }

    /// Cuts a piece so that `fence` of it is kept along an axis. Gives what is kept and what falls off.
    fn cut(&mut self, id: u32, rect: Rect, axis: usize, fence: i32, ends: [End; 2]) -> (Cutting, Option<Cutting>) {
        let (mut keeps, mut falls) = (rect, rect);
        keeps.size[axis] = fence;
        falls.at[axis] += fence + self.task.kerf;
        falls.size[axis] -= fence + self.task.kerf;
        let keeps = Cutting { id: self.number(), rect: keeps, end: ends[0] };
        let falls = (falls.size[axis] > 0).then(|| Cutting { id: self.number(), rect: falls, end: ends[1] });
        let sheet = self.sheet;
        let cut = Sawn { sheet, piece: id, way: way(axis), trim: false, fence, from_far: false, keeps, falls };
        self.carved.cuts.push(cut);
        (keeps, falls)
    }

    fn is_kept(&self, size: Size) -> bool {
        size[0].min(size[1]) >= self.task.least_offcut.max(1)
    }

    /// What is cut off and not needed.
    fn leave(&self, size: Size) -> End {
        if self.is_kept(size) { End::Offcut } else { End::Waste }
    }

    /// What a piece is that holds just this node.
    fn end_of(&self, node: usize, size: Size) -> End {
        match self.nodes[node] {
            Node { axis: PART, item, .. } if self.need(node) == size => End::Part(item),
            _ => End::Rest,
        }
    }

    /// Cuts a piece down to what is kept of it along an axis, and notes what is left over.
    fn cut_down(&mut self, id: u32, rect: Rect, axis: usize, fence: i32, end: End) -> (u32, Rect) {
        let mut rest = rect.size;
        rest[axis] -= fence + self.task.kerf;
        let (keeps, falls) = self.cut(id, rect, axis, fence, [end, self.leave(rest)]);
        if let Some(falls) = falls {
            self.carved.left.push(Remnant { rect: falls.rect, keep: self.is_kept(falls.rect.size) });
        }
        (keeps.id, keeps.rect)
    }

    /// How good it is to cut down along one axis first: the largest that is left over, those worth keeping before others.
    fn first_worth(&self, rect: Rect, need: Size, first: usize) -> (i64, i64) {
        let kerf = self.task.kerf;
        let (mut one, mut two) = (rect.size, need);
        one[first] -= need[first] + kerf;
        two[1 - first] = rect.size[1 - first] - need[1 - first] - kerf;
        let areas = [one, two].map(|size| match size {
            [a, b] if a > 0 && b > 0 => {
                (i64::from(self.is_kept(size)) * i64::from(a) * i64::from(b), i64::from(a) * i64::from(b))
            }
            _ => (0, 0),
        });
        areas[0].max(areas[1])
    }

    /// Which of the axes a piece that is larger than its node both ways is cut down along first.
    fn first_axis(&self, node: usize, rect: Rect, need: Size) -> usize {
        let is_root = self.nodes[node].parent == NONE;
        if rect.size[0] > self.longest_rip() {
            0
        } else if self.task.rules.stages > 0 && is_root {
            usize::from(self.strips)
        } else {
            usize::from(self.first_worth(rect, need, 1) > self.first_worth(rect, need, 0))
        }
    }

    fn longest_rip(&self) -> i32 {
        self.task.rules.longest_rip.saturating_sub(self.task.kerf)
    }

    /// Cuts up a piece that holds a node.
    fn piece(&mut self, node: usize, mut id: u32, mut rect: Rect) {
        let need = self.need(node);
        let Node { axis, parent, item, turned, .. } = self.nodes[node];
        // When stages count, the first row is cut before anything is cut square to it.
        let first_row = if self.strips { ACROSS } else { ALONG };
        let at_once = self.task.rules.stages > 0 && parent == NONE && axis == first_row;
        let first = self.first_axis(node, rect, need);
        for at in [first, 1 - first] {
            let (along, across) = axes(axis);
            // The end of a row is cut off with its last piece, unless that would spoil a strip beside it.
            let with_the_row = axis != PART && at == along && (first == across || rect.size[across] == need[across]);
            let too_long = at == 1 && rect.size[0] > self.longest_rip();
            if rect.size[at] > need[at] && !with_the_row && !at_once && !too_long {
                let mut kept = rect.size;
                kept[at] = need[at];
                let end = self.end_of(node, kept);
                (id, rect) = self.cut_down(id, rect, at, need[at], end);
            }
        }
        if axis == PART {
            self.carved.parts.push(Laid { item, rect, turned });
        } else {
            self.row(node, id, rect);
        }
    }

    /// Cuts a row into its pieces, large ones first and those of a size together.
    fn row(&mut self, node: usize, mut id: u32, mut rect: Rect) {
        let (along, across) = axes(self.nodes[node].axis);
        let mut children = Vec::new();
        let mut child = node + 1;
        while child < usize::from(self.nodes[node].end) {
            let size = self.nodes[child].size;
            children.push((size[along], size[across], child));
            child = self.nodes[child].end.into();
        }
        children.sort_unstable_by(|a, b| b.cmp(a));
        for (nth, &(_, _, child)) in children.iter().enumerate() {
            let fence = self.need(child)[along];
            if rect.size[along] == fence {
                return self.piece(child, id, rect);
            }
            let mut kept = rect.size;
            kept[along] = fence;
            let mut rest = rect.size;
            rest[along] -= fence + self.task.kerf;
            let falls_end = match children.get(nth + 1) {
                None => self.leave(rest),
                Some(&(_, _, next)) => self.end_of(next, rest),
            };
            let (keeps, falls) = self.cut(id, rect, along, fence, [self.end_of(child, kept), falls_end]);
            self.piece(child, keeps.id, keeps.rect);
            let Some(falls) = falls else { return };
            if nth + 1 == children.len() {
                self.carved.left.push(Remnant { rect: falls.rect, keep: self.is_kept(falls.rect.size) });
            }
            (id, rect) = (falls.id, falls.rect);
        }
    }
}
