//! Rows of holes, and how they are parted into strips that a page has room for.

use super::RowUse;
use crate::cabinet::Cabinet;
use crate::cards::hole_rows;
use crate::measure::{Length, LengthError};

/// As long as a strip is at most, in millimetres: a page has that much above its bars.
pub(super) const LONGEST_MM: i64 = 180;
/// What a strip has past its outermost hole, in millimetres: half a step of 32.
const PAST_MM: i64 = 16;
/// Holes so far from each other, in millimetres, are still on strips that are joined.
const APART_MM: i64 = 64;

/// A row that may be on several boards.
#[derive(Debug, PartialEq)]
pub(super) struct Row {
    pub(super) hole: Length,
    pub(super) from_edge: Length,
    /// Middles of the holes, from the board's lower end.
    pub(super) holes: Vec<Length>,
}

/// A piece of a row.
#[derive(Debug, PartialEq)]
pub(super) struct Strip {
    /// From the board's lower end.
    pub(super) from: Length,
    pub(super) to: Length,
    /// Whether the strip before goes on here without a gap.
    pub(super) goes_on_below: bool,
    pub(super) goes_on_above: bool,
    /// From the board's lower end.
    pub(super) holes: Vec<Length>,
}

/// Every row, those that are alike together: the front one from the front edge, the rear one from the rear edge.
pub(super) fn rows(cabinet: &Cabinet) -> Result<Vec<(Row, Vec<RowUse>)>, LengthError> {
    let mut all: Vec<(Row, Vec<RowUse>)> = Vec::new();
    for rows in &cabinet.rows {
        let mut add = |row: &hole_rows::Row, from_edge: Length, rear: bool| {
            if row.holes.is_empty() {
                return;
            }
            let holes = row.holes.iter().map(|hole| hole.at).collect();
            let row = Row { hole: rows.rows.hole, from_edge, holes };
            let own = RowUse { on: rows.on, face: rows.face, rear };
            match all.iter_mut().find(|(other, _)| *other == row) {
                Some((_, uses)) => uses.push(own),
                None => all.push((row, vec![own])),
            }
        };
        add(&rows.rows.front, rows.rows.front.from_front, false);
        if let Some(rear) = &rows.rows.rear {
            add(rear, rows.rows.depth.minus(rear.from_front)?, true);
        }
    }
    Ok(all)
}

/// The row in strips, each with at least one hole and none cut through; where there are no holes there is no strip.
pub(super) fn strips(holes: &[Length]) -> Result<Vec<Strip>, LengthError> {
    let [longest, past, apart] = [LONGEST_MM, PAST_MM, APART_MM].map(|mm| Length::mm(mm, 1));
    let (longest, past, apart) = (longest?, past?, apart?);
    let mut strips: Vec<Strip> = Vec::new();
    let mut holes = holes.iter().copied().peekable();
    while let Some(first) = holes.next() {
        let joined = strips.last().filter(|strip| strip.goes_on_above).map(|strip| strip.to);
        let from = match joined {
            Some(to) => to,
            // The lower end of the board is the best edge to measure from, where it is near enough.
            None if strips.is_empty() && first.plus(past)? <= longest => Length::ZERO,
            None => first.minus(past)?,
        };
        let end = from.plus(longest)?;
        let mut own = vec![first];
        let mut last = first;
        while let Some(next) = holes.next_if(|next| next.plus(past).is_ok_and(|past| past <= end)) {
            own.push(next);
            last = next;
        }
        let next = holes.peek().copied();
        let goes_on = next.filter(|next| next.minus(last).is_ok_and(|gap| gap <= apart));
        let to = match goes_on {
            Some(next) => last.plus(next)?.times(1, 2)?,
            None => last.plus(past)?,
        };
        strips.push(Strip { from, to, goes_on_below: joined.is_some(), goes_on_above: goes_on.is_some(), holes: own });
    }
    Ok(strips)
}
