//! A rail with its numbers read and checked, and what becomes of it at any span and with any brackets.

use super::inputs::Brackets;
use super::section::Section;
use crate::cards::shelf::beam::{Beam, Loads};
use crate::cards::shelf::case::{Figures, GRAVITY};
use crate::cards::shelf::judging::{Bar, Sag};

/// What hangs on the rail.
#[derive(Clone, Copy, Debug)]
pub(super) enum Hanging {
    /// N/mm, everywhere.
    PerMm(f64),
    /// N in all.
    InAll(f64),
}

/// All that matters of the inputs, as numbers.
#[derive(Clone, Copy, Debug)]
pub(super) struct Case {
    pub(super) brackets: Brackets,
    pub(super) span_mm: f64,
    pub(super) section: Section,
    pub(super) figures: Figures,
    pub(super) hanging: Hanging,
    /// What the sag is held against.
    pub(super) bar: Bar,
}

/// What becomes of a rail.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outcome {
    pub(super) bay_mm: f64,
    /// Its own weight, and what hangs on it, N/mm.
    pub(super) own: f64,
    pub(super) load: f64,
    pub(super) beam: Beam,
    /// E·I, N·mm².
    pub(super) stiffness: f64,
    pub(super) deepest_at_mm: f64,
    pub(super) instant_mm: f64,
    pub(super) late_mm: f64,
    /// The largest moment, N·mm.
    pub(super) moment: f64,
    pub(super) stress_mpa: f64,
}

impl Outcome {
    /// How far its bays sag.
    pub(super) const fn sag(&self) -> Sag {
        Sag { bay_mm: self.bay_mm, instant_mm: self.instant_mm, late_mm: self.late_mm }
    }
}

impl Case {
    /// What hangs on each millimetre, N, of a rail so long.
    fn load_at(&self, span_mm: f64) -> f64 {
        match self.hanging {
            Hanging::PerMm(load) => load,
            Hanging::InAll(force) => force / span_mm,
        }
    }

    /// Works the rail out.
    pub(super) fn outcome(&self) -> Outcome {
        let support = self.brackets.support();
        let bay_mm = self.span_mm / f64::from(support.bays());
        let own = self.figures.density_kg_m3 * self.section.area_mm2 * GRAVITY * 1e-9;
        let load = self.load_at(self.span_mm);
        let beam = Beam::new(support, bay_mm, Loads::even(own + load));
        let stiffness = self.figures.stiffness_mpa * self.section.second_moment_mm4;
        let (deepest_at_mm, deepest) = beam.deepest();
        let instant_mm = deepest / stiffness;
        let moment = beam.sagging_moment().max(beam.support_moment());
        Outcome {
            bay_mm,
            own,
            load,
            beam,
            stiffness,
            deepest_at_mm,
            instant_mm,
            late_mm: instant_mm * (1.0 + self.figures.creep),
            moment,
            stress_mpa: moment / self.section.modulus_mm3,
        }
    }

    /// Whether it holds: within the chosen limit, judged as chosen, and strong enough.
    pub(super) fn passes(&self, outcome: &Outcome) -> bool {
        let strong = |strength: f64| outcome.stress_mpa * self.figures.divisor <= strength;
        self.bar.keeps(outcome.sag()) && self.figures.strength_mpa.is_none_or(strong)
    }

    /// Whether it holds at another span: whatever the brackets, the sag goes with w·L⁴ and the moment with w·L², so one
    /// outcome tells all of them.
    pub(super) fn holds_at(&self, span_mm: f64, outcome: &Outcome) -> bool {
        let longer = span_mm / self.span_mm;
        let before = outcome.own + outcome.load;
        let heavier = if before > 0.0 { (outcome.own + self.load_at(span_mm)) / before } else { 1.0 };
        let (moment, sag) = (heavier * longer.powi(2), heavier * longer.powi(4));
        self.passes(&Outcome {
            bay_mm: outcome.bay_mm * longer,
            instant_mm: outcome.instant_mm * sag,
            late_mm: outcome.late_mm * sag,
            stress_mpa: outcome.stress_mpa * moment,
            ..*outcome
        })
    }

    /// The sag on the first day with all the clothes pushed into the outer bays; none without brackets.
    pub(super) fn uneven_mm(&self, outcome: &Outcome) -> Option<f64> {
        (self.brackets != Brackets::None && outcome.load > 0.0).then(|| {
            let full = outcome.own + outcome.load;
            let loads = Loads { even: [full, outcome.own, full], point: 0.0 };
            Beam::new(self.brackets.support(), outcome.bay_mm, loads).deepest().1 / outcome.stiffness
        })
    }
}
