//! A back made of several pieces: how wide each is, and where the seams fall.

use crate::measure::{Length, LengthError};
use serde::{Deserialize, Serialize};

/// How the back is divided.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Division {
    /// One piece.
    #[default]
    Whole,
    /// So many equal pieces.
    Equal,
    /// Out of the scraps at hand.
    Scraps,
}

impl Division {
    /// Every way, in the order of a list.
    pub const ALL: &[Self] = &[Self::Whole, Self::Equal, Self::Scraps];
}

/// Which way the seams run.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Seams {
    /// Pieces side by side, counted from the left.
    #[default]
    Vertical,
    /// Pieces one above the other, counted from the bottom.
    Horizontal,
}

impl Seams {
    /// Both ways, in the order of a list.
    pub const ALL: &[Self] = &[Self::Vertical, Self::Horizontal];
}

/// One piece of the back.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Piece {
    /// Its size across the seams.
    pub width: Length,
    /// Where it starts, from the left or bottom edge of the panel.
    pub starts_at: Length,
    /// Which scrap it comes from, counted from nought.
    pub scrap: Option<usize>,
    /// What is cut off that scrap.
    pub cut_off: Length,
}

/// The pieces of the back.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Pieces {
    /// Which way the seams run.
    pub seams: Seams,
    /// The size of the panel across the seams.
    pub total: Length,
    /// The pieces, from the left or the bottom. Together exactly the total, unless something is missing.
    pub list: Vec<Piece>,
    /// Each seam, from the left or bottom edge of the panel.
    pub seams_at: Vec<Length>,
    /// What the scraps together fall short by.
    pub missing: Length,
    /// What is cut off, all together.
    pub left_over: Length,
    /// Scraps that stay whole, counted from nought.
    pub unused: Vec<usize>,
    /// Whether a piece is narrower than wanted.
    pub sliver: bool,
}

impl Pieces {
    /// `count` equal pieces.
    pub(super) fn equal(total: Length, count: u32, seams: Seams) -> Result<Self, LengthError> {
        let width = total.times(1, u64::from(count.max(1)))?;
        let cuts = (0..count.max(1)).map(|_| (width, None, Length::ZERO)).collect();
        Self::lay(total, seams, cuts)
    }

    /// Pieces out of `scraps`: as few as can be, the last from the smallest scrap that will do, and none narrower
    /// than `least` where that can be had by trimming the widest. They lie in the order in which the scraps were given.
    pub(super) fn from_scraps(
        total: Length,
        scraps: &[Scrap],
        least: Length,
        seams: Seams,
    ) -> Result<Self, LengthError> {
        let mut cuts = choose(total, scraps, least)?;
        cuts.sort_by_key(|cut| cut.scrap.index);
        let mut laid = Vec::with_capacity(cuts.len());
        for cut in &cuts {
            laid.push((cut.width, Some(cut.scrap.index), cut.scrap.width.minus(cut.width)?));
        }
        let mut pieces = Self::lay(total, seams, laid)?;
        let is_used = |scrap: &Scrap| cuts.iter().any(|cut| cut.scrap.index == scrap.index);
        pieces.unused = scraps.iter().filter(|scrap| !is_used(scrap)).map(|scrap| scrap.index).collect();
        pieces.sliver = cuts.len() > 1 && cuts.iter().any(|cut| cut.width < least);
        Ok(pieces)
    }

    fn lay(total: Length, seams: Seams, cuts: Vec<(Length, Option<usize>, Length)>) -> Result<Self, LengthError> {
        let (mut list, mut seams_at) = (Vec::with_capacity(cuts.len()), Vec::new());
        let (mut reached, mut left_over) = (Length::ZERO, Length::ZERO);
        for (width, scrap, cut_off) in cuts {
            if !list.is_empty() {
                seams_at.push(reached);
            }
            list.push(Piece { width, starts_at: reached, scrap, cut_off });
            reached = reached.plus(width)?;
            left_over = left_over.plus(cut_off)?;
        }
        let missing = total.minus(reached)?;
        Ok(Self { seams, total, list, seams_at, missing, left_over, unused: Vec::new(), sliver: false })
    }
}

/// A scrap at hand, and its place in the list of them.
#[derive(Clone, Copy)]
pub(super) struct Scrap {
    pub(super) index: usize,
    pub(super) width: Length,
}

/// A scrap, and how wide a piece is cut from it.
struct Cut {
    scrap: Scrap,
    width: Length,
}

/// Which scraps, and how wide each is cut. All of them, uncut, when even together they do not reach.
fn choose(total: Length, scraps: &[Scrap], least: Length) -> Result<Vec<Cut>, LengthError> {
    let mut widest_first = scraps.to_vec();
    widest_first.sort_by_key(|scrap| std::cmp::Reverse(scrap.width));
    let mut chosen = Vec::new();
    let mut rest = total;
    let mut candidates = widest_first.as_slice();
    while let Some((&scrap, others)) = candidates.split_first() {
        if scrap.width >= rest {
            chosen.push(Cut { scrap: last_scrap(rest, candidates, least).unwrap_or(scrap), width: rest });
            widen_last(&mut chosen, least)?;
            break;
        }
        chosen.push(Cut { scrap, width: scrap.width });
        rest = rest.minus(scrap.width)?;
        candidates = others;
    }
    Ok(chosen)
}

/// The smallest scrap that gives the rest and is itself no sliver; else the smallest that gives the rest.
fn last_scrap(rest: Length, widest_first: &[Scrap], least: Length) -> Option<Scrap> {
    let enough = |at_least: Length| widest_first.iter().rev().find(|scrap| scrap.width >= at_least).copied();
    enough(rest.max(least)).or_else(|| enough(rest))
}

/// Takes from the widest piece what the last one needs to be no sliver, as far as both allow.
fn widen_last(chosen: &mut [Cut], least: Length) -> Result<(), LengthError> {
    let [widest, .., last] = chosen else { return Ok(()) };
    let wanted = least.min(last.scrap.width);
    if last.width < wanted {
        let trimmed = widest.width.minus(wanted.minus(last.width)?)?;
        if trimmed >= least {
            widest.width = trimmed;
            last.width = wanted;
        }
    }
    Ok(())
}
