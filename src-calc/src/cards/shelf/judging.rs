//! How much a bay may sag, and whether it keeps to that: one rule for shelves and rails.

use super::answer::{Carried, Verdict};
use super::beam::Beam;
use super::case::GRAVITY;
use super::inputs::{Judged, Limit};

/// The limit that decides, and which sag is held against it.
#[derive(Clone, Copy, Debug)]
pub(in crate::cards) struct Bar {
    pub(in crate::cards) limit: Limit,
    /// One's own limit, mm, if it is given.
    pub(in crate::cards) own_mm: Option<f64>,
    pub(in crate::cards) judged: Judged,
}

/// How far a bay sags.
#[derive(Clone, Copy, Debug)]
pub(in crate::cards) struct Sag {
    /// The length of the bay, mm.
    pub(in crate::cards) bay_mm: f64,
    /// On the first day, mm.
    pub(in crate::cards) instant_mm: f64,
    /// After years, mm.
    pub(in crate::cards) late_mm: f64,
}

impl Bar {
    /// What a limit allows in a bay, mm; none for one's own limit if it is not given.
    fn allowed_mm(&self, limit: Limit, bay_mm: f64) -> Option<f64> {
        limit.divisor().map(|n| bay_mm / n).or(self.own_mm)
    }

    /// The sag that counts, mm.
    pub(in crate::cards) const fn counts_mm(&self, sag: Sag) -> f64 {
        match self.judged {
            Judged::LongTerm => sag.late_mm,
            Judged::Instant => sag.instant_mm,
        }
    }

    /// Whether it stays within the limit that decides.
    pub(in crate::cards) fn keeps(&self, sag: Sag) -> bool {
        self.allowed_mm(self.limit, sag.bay_mm).is_some_and(|allowed| self.counts_mm(sag) <= allowed)
    }

    /// Every limit that is known, strict to lax.
    pub(in crate::cards) fn verdicts(&self, sag: Sag) -> Vec<Verdict> {
        let verdict = |&limit: &Limit| {
            let allowed_mm = self.allowed_mm(limit, sag.bay_mm)?;
            Some(Verdict {
                limit,
                allowed_mm,
                instant: sag.instant_mm <= allowed_mm,
                long_term: sag.late_mm <= allowed_mm,
                chosen: limit == self.limit,
            })
        };
        Limit::ALL.iter().filter_map(verdict).collect()
    }
}

/// What each support carries of a beam with bays so long.
pub(in crate::cards) fn supports(beam: &Beam, bay_mm: f64) -> Vec<Carried> {
    let places = (0_u32..).map(|at| f64::from(at) * bay_mm);
    let carried = |(along_mm, force_n): (f64, f64)| Carried { along_mm, force_n, mass_kg: force_n / GRAVITY };
    places.zip(beam.reactions()).map(carried).collect()
}
