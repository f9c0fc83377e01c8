//! Joints of random cabinets, held against the places of the parts: none of the cabinet's own arithmetic is used.

use super::cabinet::bounds;
use parry3d_f64::bounding_volume::{Aabb, BoundingVolume};
use proptest::prelude::*;
use scantling::cabinet::{Axis, Cabinet, Join, Part};
use scantling::cards::joints::Stays;

/// mm. What only touches comes out this far apart, or in one another, by rounding.
const TOUCH: f64 = 1e-6;

/// From where to where a box goes in a direction.
fn along(of: &Aabb, axis: Axis) -> (f64, f64) {
    match axis {
        Axis::Across => (of.mins.x, of.maxs.x),
        Axis::Deep => (of.mins.y, of.maxs.y),
        Axis::Up => (of.mins.z, of.maxs.z),
    }
}

/// Where the marks of a joint lie in the cabinet, in the direction in which they run, as the maker finds them on the face:
/// from the finished front edge, from the upper end, or from the left end.
fn on_face(cabinet: &Cabinet, join: &Join, board: &Aabb) -> Vec<f64> {
    let from = |mark: f64| match join.along {
        Axis::Deep => cabinet.depth.as_mm() - mark,
        Axis::Up => board.maxs.z - mark,
        Axis::Across => board.mins.x + mark,
    };
    join.marks.marks.iter().map(|mark| from(mark.as_mm() + join.gap.as_mm())).collect()
}

/// The same as found on the end that is joined, whose edging is in front of it.
fn on_end(cabinet: &Cabinet, join: &Join, end: &Aabb) -> Vec<f64> {
    let from = |mark: f64| match join.along {
        // Its finished front edge is as far behind the cabinet's as the gap says.
        Axis::Deep => cabinet.depth.as_mm() - join.gap.as_mm() - mark,
        Axis::Up => end.maxs.z - mark,
        Axis::Across => end.mins.x + mark,
    };
    join.marks.marks.iter().map(|mark| from(mark.as_mm())).collect()
}

/// The line of a joint lies in the middle of the end that meets it, its marks are at the same places on both parts, within
/// both, and clear of the back's grooves.
pub(super) fn joints_meet(cabinet: &Cabinet) -> Result<(), TestCaseError> {
    for join in &cabinet.joins {
        prop_assert_eq!(join.pairs.len(), join.lines.len());
        for ((edge, face), line) in join.pairs.iter().zip(&join.lines) {
            let (part, other) = (&cabinet.parts[*edge], &cabinet.parts[*face]);
            let (end, board) = (bounds(&part.place), bounds(&other.place));
            // A strip in a rabbet meets its bottom, which lies within the board's box.
            let met = end.loosened(TOUCH).intersection(&board);
            prop_assert!(met.is_some(), "{:?} does not reach {:?}", part.what, other.what);
            let across = if join.along == Axis::Deep { other.grain } else { Axis::Deep };
            let (low, high) = along(&end, across);
            let at = match across {
                Axis::Deep => cabinet.depth.as_mm() - line.as_mm(),
                _ => along(&board, across).0 + line.as_mm(),
            };
            let middle = f64::midpoint(low, high);
            prop_assert!((at - middle).abs() < TOUCH, "{:?}: line at {at}, middle at {middle}", part.what);
            let both = on_face(cabinet, join, &board).into_iter().zip(on_end(cabinet, join, &end));
            for (theirs, own) in both {
                prop_assert!((theirs - own).abs() < TOUCH, "{:?}: {own} on the end, {theirs} on the face", part.what);
                stays_inside(join, own, [part, other])?;
            }
        }
    }
    Ok(())
}

/// Where the joint is said to stay inside, its whole width lies on both parts, and behind it there is no groove.
fn stays_inside(join: &Join, at: f64, parts: [&Part; 2]) -> Result<(), TestCaseError> {
    if join.marks.stays != Stays::Inside {
        return Ok(());
    }
    let half = join.marks.fixing.along.as_mm() / 2.0;
    for part in parts {
        let (from, to) = along(&bounds(&part.place), join.along);
        // In front of the boards is their edging.
        let to = if join.along == Axis::Deep { f64::INFINITY } else { to };
        let (low, high) = (at - half, at + half);
        prop_assert!(from - TOUCH < low && high < to + TOUCH, "{:?}: {low} to {high} in {from} to {to}", part.what);
        if join.along == Axis::Deep {
            for groove in part.grooves.iter().map(bounds) {
                prop_assert!(low > groove.maxs.y - TOUCH, "{:?}: {low} in a groove to {}", part.what, groove.maxs.y);
            }
        }
    }
    Ok(())
}
