//! Chance numbers that are the same on every machine: a `usize` is drawn from fewer bits where it has fewer.

use fastrand::Rng;
use std::ops::Range;

/// A place within a range that is not empty.
pub(super) fn draw(rng: &mut Rng, range: Range<usize>) -> usize {
    let [from, to] = [range.start, range.end].map(|end| u64::try_from(end).unwrap_or(u64::MAX));
    // What was drawn lies within the range, and so within a `usize`.
    usize::try_from(rng.u64(from..to)).unwrap_or(range.start)
}

/// Puts a list into an order of chance.
pub(super) fn shuffle<T>(rng: &mut Rng, list: &mut [T]) {
    for at in 1..list.len() {
        list.swap(at, draw(rng, 0..at + 1));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What a machine of 64 bits draws by itself.
    #[test]
    fn nothing_changes_where_a_place_has_64_bits() {
        let (mut ours, mut theirs) = (Rng::with_seed(7), Rng::with_seed(7));
        for many in 1..500_usize {
            assert_eq!(u64::try_from(draw(&mut ours, 0..many)).unwrap(), theirs.u64(0..u64::try_from(many).unwrap()));
        }
        let mut list: Vec<u32> = (0..100).collect();
        shuffle(&mut ours, &mut list);
        assert_ne!(list, (0..100).collect::<Vec<u32>>());
        list.sort_unstable();
        assert_eq!(list, (0..100).collect::<Vec<u32>>());
    }
}
