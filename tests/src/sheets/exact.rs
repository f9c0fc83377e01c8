//! Whole numbers for exact lengths: all of a job and its layout are whole multiples of one small unit.

use scantling::measure::Length;
use scantling::sheets::{Area, Job, Layout, Piece};

/// Past this a product with the numerator of a length could leave 128 bits.
const FINEST: i128 = 1 << 60;

/// The unit: the least common denominator of all lengths.
#[derive(Clone, Copy, Debug)]
pub(super) struct Unit {
    per_mm: i128,
}

impl Unit {
    /// The unit of a job alone.
    pub(super) fn of_job(job: &Job) -> Option<Self> {
        Self::of(&lengths_of_job(job))
    }

    /// The unit of a job and what was made of it.
    pub(super) fn of_both(job: &Job, layout: &Layout) -> Option<Self> {
        let mut lengths = lengths_of_job(job);
        for sheet in &layout.sheets {
            lengths.extend([sheet.length, sheet.width]);
            sheet.parts.iter().for_each(|placed| lengths.extend(of_area(&placed.area)));
            sheet.left.iter().for_each(|left| lengths.extend(of_area(&left.area)));
        }
        for setting in &layout.settings {
            lengths.push(setting.fence);
            for cut in &setting.cuts {
                let pieces = [Some(cut.keeps), cut.falls].into_iter().flatten();
                lengths.push(cut.fence);
                lengths.extend(pieces.flat_map(|piece: Piece| of_area(&piece.area)));
            }
        }
        Self::of(&lengths)
    }

    fn of(lengths: &[Length]) -> Option<Self> {
        let mut per_mm: i128 = 1;
        for length in lengths {
            let denominator = i128::from(length.in_mm().denominator());
            if per_mm % denominator != 0 {
                per_mm = per_mm / common(per_mm, denominator) * denominator;
            }
            if per_mm > FINEST {
                return None;
            }
        }
        Some(Self { per_mm })
    }

    /// How many of the unit a length is. Only for lengths that the unit was made of.
    pub(super) fn count(self, length: Length) -> i128 {
        let mm = length.in_mm();
        let count = i128::from(mm.numerator()) * (self.per_mm / i128::from(mm.denominator()));
        if mm.is_negative() { -count } else { count }
    }

    pub(super) fn rect(self, area: &Area) -> Rect {
        let [x, y, length, width] = of_area(area).map(|length| self.count(length));
        Rect { x: Span { from: x, to: x + length }, y: Span { from: y, to: y + width } }
    }
}

fn lengths_of_job(job: &Job) -> Vec<Length> {
    let saw = &job.saw;
    let parts = job.parts.iter().flat_map(|part| [part.length, part.width]);
    let stock = job.stock.iter().flat_map(|stock| [stock.length, stock.width]);
    parts.chain(stock).chain([saw.kerf, saw.trim, saw.least_offcut]).chain(saw.longest_rip).collect()
}

fn of_area(area: &Area) -> [Length; 4] {
    [area.x, area.y, area.length, area.width]
}

fn common(mut a: i128, mut b: i128) -> i128 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}

/// From here to there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Span {
    pub(super) from: i128,
    pub(super) to: i128,
}

impl Span {
    pub(super) fn size(self) -> i128 {
        self.to - self.from
    }

    pub(super) fn within(self, other: Self) -> bool {
        other.from <= self.from && self.to <= other.to
    }

    /// Whether so much is free between the two.
    pub(super) fn apart(self, other: Self, by: i128) -> bool {
        self.to + by <= other.from || other.to + by <= self.from
    }

    /// Without so much at both ends.
    pub(super) fn less(self, by: i128) -> Self {
        Self { from: self.from + by, to: self.to - by }
    }
}

/// A rectangle on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Rect {
    pub(super) x: Span,
    pub(super) y: Span,
}

impl Rect {
    /// From the corner of a sheet.
    pub(super) fn sized(length: i128, width: i128) -> Self {
        Self { x: Span { from: 0, to: length }, y: Span { from: 0, to: width } }
    }

    pub(super) fn within(&self, other: &Self) -> bool {
        self.x.within(other.x) && self.y.within(other.y)
    }

    pub(super) fn apart(&self, other: &Self, by: i128) -> bool {
        self.x.apart(other.x, by) || self.y.apart(other.y, by)
    }

    pub(super) fn less(&self, by: i128) -> Self {
        Self { x: self.x.less(by), y: self.y.less(by) }
    }

    pub(super) fn shorter(&self) -> i128 {
        self.x.size().min(self.y.size())
    }

    /// Only to compare: sides of what fits the unit are far below the root of 128 bits.
    pub(super) fn area(&self) -> i128 {
        self.x.size().saturating_mul(self.y.size())
    }

    pub(super) fn is_something(&self) -> bool {
        self.shorter() > 0
    }
}
