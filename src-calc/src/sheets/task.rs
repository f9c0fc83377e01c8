//! A job in whole units: what the search works on. One task for each stock name.

use super::slicing::{Rules, Size};
use super::units::Scale;
use super::{Grain, Job, Part, SheetGrain, Stock, Unfit, Unplaced};

/// Parts that are alike to the search.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Kind {
    /// Its size as it is given, a kerf included.
    pub(super) size: Size,
    pub(super) grain: Grain,
}

impl Kind {
    pub(super) fn area(self) -> i64 {
        i64::from(self.size[0]) * i64::from(self.size[1])
    }
}

/// A stock that parts can be cut from.
#[derive(Clone, Copy, Debug)]
pub(super) struct Board {
    /// Which of the job's stock.
    pub(super) stock: usize,
    /// What of it can be used, a kerf included.
    pub(super) size: Size,
    /// What is trimmed off each edge.
    pub(super) trim: i32,
    /// What it costs, in units that mean nothing outside.
    pub(super) cost: i64,
    /// How many there are at the most.
    pub(super) count: usize,
    grain: SheetGrain,
}

impl Board {
    pub(super) fn area(&self) -> i64 {
        i64::from(self.size[0]) * i64::from(self.size[1])
    }
}

/// The parts of one stock name, and what they can be cut from.
#[derive(Clone, Debug)]
pub(super) struct Task {
    pub(super) scale: Scale,
    pub(super) kerf: i32,
    pub(super) rules: Rules,
    /// The least short side of an offcut that is kept.
    pub(super) least_offcut: i32,
    pub(super) kinds: Vec<Kind>,
    /// The kind of every piece.
    pub(super) items: Vec<u32>,
    /// Which of the job's parts each piece is, and which of its pieces.
    pub(super) pieces: Vec<(usize, u32)>,
    pub(super) boards: Vec<Board>,
    /// For every kind and board, whether it may lie as it is given, and turned.
    ways: Vec<[bool; 2]>,
    /// What no board can give.
    pub(super) unplaced: Vec<Unplaced>,
}

impl Task {
    /// The task of one stock name.
    pub(super) fn new(job: &Job, name: &str, scale: Scale) -> Self {
        let kerf = scale.up(job.saw.kerf);
        let rules = Rules {
            stages: job.saw.cuts.stages().unwrap_or(0),
            longest_rip: job.saw.longest_rip.map_or(i32::MAX, |rip| scale.down(rip).saturating_add(kerf)),
        };
        let pieces = job.parts.iter().filter(|part| part.stock == name).map(|part| u64::from(part.quantity)).sum();
        let mut task = Self {
            scale,
            kerf,
            rules,
            least_offcut: scale.up(job.saw.least_offcut),
            kinds: Vec::new(),
            items: Vec::new(),
            pieces: Vec::new(),
            boards: Vec::new(),
            ways: Vec::new(),
            unplaced: Vec::new(),
        };
        let named = boards(job, name, scale, pieces);
        task.boards = named.iter().filter(|board| board.count > 0).copied().collect();
        for (at, part) in job.parts.iter().enumerate().filter(|(_, part)| part.stock == name) {
            task.add(at, part, &named);
        }
        task
    }

    fn add(&mut self, at: usize, part: &Part, named: &[Board]) {
        let (scale, kerf) = (self.scale, self.kerf);
        let size = [scale.up(part.length).saturating_add(kerf), scale.up(part.width).saturating_add(kerf)];
        let kind = Kind { size, grain: part.grain };
        let ways: Vec<[bool; 2]> = self.boards.iter().map(|board| self.ways_of(kind, board)).collect();
        if !ways.iter().any(|way| way[0] || way[1]) {
            self.unplaced.push(Unplaced { part: at, count: part.quantity, why: self.why_not(kind, named) });
            return;
        }
        let known = self.kinds.iter().position(|other| *other == kind);
        let kind = known.unwrap_or_else(|| {
            self.kinds.push(kind);
            self.ways.extend(ways);
            self.kinds.len() - 1
        });
        for copy in 0..part.quantity {
            self.items.push(u32::try_from(kind).unwrap_or(u32::MAX));
            self.pieces.push((at, copy));
        }
    }

    fn ways_of(&self, kind: Kind, board: &Board) -> [bool; 2] {
        let [straight, turned] = grain_ways(kind.grain, board.grain);
        [straight && self.fits(kind.size, board), turned && self.fits([kind.size[1], kind.size[0]], board)]
    }

    fn fits(&self, size: Size, board: &Board) -> bool {
        size[0] <= board.size[0] && size[1] <= board.size[1] && self.can_rip(size, board)
    }

    /// Whether the saw has room for the rips that a part needs. One as wide as the sheet needs none.
    fn can_rip(&self, size: Size, board: &Board) -> bool {
        size[1] == board.size[1]
            || (self.rules.stages != 2 && size[0] <= self.rules.longest_rip)
            || (self.rules.stages == 2 && self.has_strips(board))
    }

    /// Whether strips can be ripped off a whole board; where no stages count it does not matter.
    pub(super) fn has_strips(&self, board: &Board) -> bool {
        self.rules.stages == 0 || board.size[0] <= self.rules.longest_rip
    }

    /// Why no board that is there can give a part, by all boards of the name, those too that are used up.
    fn why_not(&self, kind: Kind, named: &[Board]) -> Unfit {
        let turned = [kind.size[1], kind.size[0]];
        let inside = |size: Size, board: &Board| size[0] <= board.size[0] && size[1] <= board.size[1];
        let any = |holds: &dyn Fn(&Board) -> bool| named.iter().any(holds);
        let by_grain = |board: &Board| {
            let [straight, may_turn] = grain_ways(kind.grain, board.grain);
            (straight && inside(kind.size, board)) || (may_turn && inside(turned, board))
        };
        if named.is_empty() {
            Unfit::NoStock
        } else if any(&|board| self.ways_of(kind, board).contains(&true)) {
            Unfit::NoSheetLeft
        } else if any(&by_grain) {
            Unfit::LongRip
        } else if any(&|board| inside(kind.size, board) || inside(turned, board)) {
            Unfit::Grain
        } else {
            Unfit::TooLarge
        }
    }

    /// Whether a kind may lie on a board as it is given, and turned.
    pub(super) fn ways(&self, kind: usize, board: usize) -> [bool; 2] {
        self.ways.get(kind * self.boards.len() + board).copied().unwrap_or_default()
    }
}

/// Whether a part may lie as it is given, and turned, as far as the grain goes.
pub(super) const fn grain_ways(part: Grain, sheet: SheetGrain) -> [bool; 2] {
    match (part, sheet) {
        (Grain::Free, _) | (_, SheetGrain::Plain) => [true, true],
        (Grain::Along, SheetGrain::Along) | (Grain::Across, SheetGrain::Across) => [true, false],
        (Grain::Along, SheetGrain::Across) | (Grain::Across, SheetGrain::Along) => [false, true],
    }
}

/// The boards of a name, with their costs to one another; those too of which there are none.
#[expect(clippy::float_arithmetic, clippy::cast_possible_truncation, reason = "prices are only compared")]
fn boards(job: &Job, name: &str, scale: Scale, pieces: u64) -> Vec<Board> {
    /// The dearest one costs so much.
    const DEAREST: f64 = 1e12;
    let named = || job.stock.iter().enumerate().filter(|(_, stock)| stock.name == name);
    let area = |stock: &Stock| stock.length.as_mm() * stock.width.as_mm();
    let price = |stock: &Stock| stock.price.map(|price| price.as_f64());
    let dearest_area = named().filter_map(|(_, stock)| Some(price(stock)? / area(stock))).fold(0.0, f64::max);
    let rate = if dearest_area > 0.0 { dearest_area } else { 1.0 };
    let cost = |stock: &Stock| match price(stock) {
        Some(price) => price,
        None if stock.offcut => 0.0,
        None => area(stock) * rate,
    };
    let dearest = named().map(|(_, stock)| cost(stock)).fold(0.0, f64::max);
    let most = usize::try_from(pieces).unwrap_or(usize::MAX);
    let boards = named().map(|(at, stock)| {
        let trim = if stock.offcut { 0 } else { scale.up(job.saw.trim) };
        let kerf = scale.up(job.saw.kerf);
        let usable = |length| scale.down(length).saturating_sub(trim.saturating_mul(2));
        Board {
            stock: at,
            size: [usable(stock.length).saturating_add(kerf), usable(stock.width).saturating_add(kerf)],
            trim,
            cost: if dearest > 0.0 { (cost(stock) / dearest * DEAREST).round() as i64 } else { 0 },
            count: stock.quantity.map_or(most, |quantity| usize::try_from(quantity).unwrap_or(most).min(most)),
            grain: stock.grain,
        }
    });
    boards.collect()
}
