//! A short text by which the same thing is known again, whatever became of it in between.

use std::hash::Hasher;

/// Fowler, Noll and Vo's hash of 64 bits: short, and the same on every machine. What it tells apart is kept by one
/// maker, who has no reason to deceive it.
pub(crate) struct Fnv(u64);

impl Hasher for Fnv {
    fn finish(&self) -> u64 {
        self.0
    }

    fn write(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }

    /// The kinds of an enum, which have 32 bits in a browser and 64 elsewhere.
    fn write_isize(&mut self, value: isize) {
        self.write_i64(i64::try_from(value).unwrap_or(i64::MAX));
    }
}

/// The mark of what is written.
pub(crate) fn mark(write: impl FnOnce(&mut Fnv)) -> String {
    let mut hasher = Fnv(0xcbf2_9ce4_8422_2325);
    write(&mut hasher);
    format!("{:016x}", hasher.finish())
}
