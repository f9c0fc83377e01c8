//! Whether rectangles can be cut apart from edge to edge.
//!
//! What can be cut apart can still be cut apart when some of it is not there. So the first cuts that are found are as
//! good as any, and as many as there are can be made at once: nothing has to be tried again.

use super::exact::{Rect, Span};
use scantling::sheets::Cuts;

/// What the saw allows.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rules {
    pub(super) kerf: i128,
    pub(super) cuts: Cuts,
    pub(super) longest_rip: Option<i128>,
}

impl Rules {
    /// Whether all these can be cut from the trimmed sheet, each to its size.
    pub(super) fn separate(self, parts: &[Rect], sheet: &Rect) -> bool {
        match self.cuts {
            Cuts::Any => self.any(parts, sheet, false),
            Cuts::Two => self.two(parts, sheet),
            Cuts::Three => self.three(parts, sheet),
        }
    }

    fn may_rip(self, length: i128) -> bool {
        self.longest_rip.is_none_or(|longest| length <= longest)
    }

    /// Crosscuts first: they make the rips shorter, and take nothing from what comes after. Once a piece was ripped, all
    /// that comes from it is shorter, so that only the first rip can be too long.
    fn any(self, parts: &[Rect], sheet: &Rect, ripped: bool) -> bool {
        self.groups(parts, |part| part.x).iter().all(|column| {
            if let [one] = column[..] {
                return ripped || one.y == sheet.y || self.may_rip(one.x.size());
            }
            if !ripped && !self.may_rip(reach(column).size()) {
                return false;
            }
            let rows = self.groups(column, |part| part.y);
            rows.len() > 1 && rows.iter().all(|row| self.any(row, sheet, true))
        })
    }

    /// Strips as wide as every part in them.
    fn two(self, parts: &[Rect], sheet: &Rect) -> bool {
        if !self.may_rip(sheet.x.size()) && parts.iter().any(|part| part.y != sheet.y) {
            return false;
        }
        self.groups(parts, |part| part.y).iter().all(|strip| {
            strip.windows(2).all(|two| two[0].y == two[1].y)
                && self.groups(strip, |part| part.x).iter().all(|column| column.len() == 1)
        })
    }

    /// Strips, cut across, and what comes of it ripped to parts that are all as long as it.
    fn three(self, parts: &[Rect], sheet: &Rect) -> bool {
        let strips =
            if self.may_rip(sheet.x.size()) { self.groups(parts, |part| part.y) } else { vec![parts.to_vec()] };
        strips.iter().all(|strip| {
            self.groups(strip, |part| part.x).iter().all(|column| {
                let whole = column.len() == 1 && column[0].y == sheet.y;
                (whole || self.may_rip(reach(column).size()))
                    && column.windows(2).all(|two| two[0].x == two[1].x)
                    && self.groups(column, |part| part.y).iter().all(|cell| cell.len() == 1)
            })
        })
    }

    /// The parts by the cuts that can go between them square to this direction: as many groups as there can be.
    fn groups(self, parts: &[Rect], along: fn(&Rect) -> Span) -> Vec<Vec<Rect>> {
        let mut sorted = parts.to_vec();
        sorted.sort_by_key(|part| along(part).from);
        let mut groups: Vec<Vec<Rect>> = Vec::new();
        let mut end = None;
        for part in sorted {
            let span = along(&part);
            match (end, groups.last_mut()) {
                (Some(reached), Some(group)) if span.from < reached + self.kerf => group.push(part),
                _ => groups.push(vec![part]),
            }
            end = Some(end.map_or(span.to, |reached: i128| reached.max(span.to)));
        }
        groups
    }
}

/// From the first to the last along the sheet.
fn reach(parts: &[Rect]) -> Span {
    let from = parts.iter().map(|part| part.x.from).min().unwrap_or(0);
    let to = parts.iter().map(|part| part.x.to).max().unwrap_or(0);
    Span { from, to }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rect((x, y, length, width): (i128, i128, i128, i128)) -> Rect {
        Rect { x: Span { from: x, to: x + length }, y: Span { from: y, to: y + width } }
    }

    /// On a sheet of 10 by 10: by any cuts, by two stages, by three.
    #[track_caller]
    fn check(parts: &[(i128, i128, i128, i128)], kerf: i128, longest_rip: Option<i128>, want: [bool; 3]) {
        let parts: Vec<Rect> = parts.iter().copied().map(rect).collect();
        let got = [Cuts::Any, Cuts::Two, Cuts::Three]
            .map(|cuts| Rules { kerf, cuts, longest_rip }.separate(&parts, &Rect::sized(10, 10)));
        assert_eq!(got, want, "{parts:?}, kerf {kerf}, rips to {longest_rip:?}");
    }

    #[test]
    fn what_can_be_cut_apart_is_told_from_what_cannot() {
        let pinwheel = [(0, 0, 6, 4), (6, 0, 4, 6), (4, 6, 6, 4), (0, 4, 4, 6), (4, 4, 2, 2)];
        check(&pinwheel, 0, None, [false; 3]);
        check(&pinwheel[..4], 0, None, [false; 3]);
        check(&pinwheel[..3], 0, None, [true, false, true]);
        // A strip of equal widths; one of unequal widths; two lengths in one column.
        check(&[(0, 0, 3, 4), (3, 0, 5, 4), (0, 4, 9, 6)], 0, None, [true, true, true]);
        check(&[(0, 0, 3, 4), (3, 0, 5, 3), (0, 4, 9, 6)], 0, None, [true, false, true]);
        check(&[(0, 0, 3, 4), (0, 4, 2, 4), (3, 0, 5, 9)], 0, None, [true, false, false]);
    }

    #[test]
    fn a_kerf_has_to_be_free_between() {
        check(&[(0, 0, 4, 4), (5, 0, 4, 4)], 1, None, [true; 3]);
        check(&[(0, 0, 4, 4), (5, 0, 4, 4)], 2, None, [false; 3]);
        // At the edge the blade may hang over.
        check(&[(0, 0, 9, 9)], 2, None, [true; 3]);
    }

    #[test]
    fn a_rip_is_no_longer_than_the_saw_takes() {
        check(&[(0, 0, 5, 4)], 0, Some(5), [true, false, true]);
        check(&[(0, 0, 6, 4)], 0, Some(5), [false; 3]);
        check(&[(0, 0, 6, 10)], 0, Some(5), [true; 3]);
        check(&[(0, 0, 5, 4), (0, 4, 5, 6), (5, 0, 5, 10)], 0, Some(5), [true, false, true]);
        check(&[(0, 0, 5, 4), (0, 4, 6, 6)], 0, Some(5), [false; 3]);
    }
}
