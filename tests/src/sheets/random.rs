//! Numbers by chance that are the same on every machine, for the same seed.

/// SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number generators, 2014; its constants from memory).
#[derive(Clone, Debug)]
pub struct Chance {
    state: u64,
}

impl Chance {
    /// From a seed; every seed is as good as any.
    pub fn new(seed: u64) -> Self {
        Self { state: seed }
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.state;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A whole number from `least` to `most`, both included; `least` where it is not below `most`.
    pub fn within(&mut self, least: i64, most: i64) -> i64 {
        let choices = most.abs_diff(least).wrapping_add(1);
        if most <= least || choices == 0 {
            return least;
        }
        // The bias is one in 2⁶⁴ times the number of choices.
        least.wrapping_add_unsigned(self.bits() % choices)
    }

    /// True so often in a hundred.
    pub fn per_cent(&mut self, often: u64) -> bool {
        self.bits() % 100 < often
    }

    /// One of these.
    pub fn one_of<T: Copy>(&mut self, first: T, others: &[T]) -> T {
        let at = usize::try_from(self.bits() % (others.len() as u64 + 1)).unwrap_or(0);
        at.checked_sub(1).and_then(|at| others.get(at).copied()).unwrap_or(first)
    }
}
