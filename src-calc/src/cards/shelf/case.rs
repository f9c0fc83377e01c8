//! A shelf with its numbers read and checked, and what becomes of it at any span, thickness and height of strip.

use super::beam::{Beam, Loads, Support};
use super::inputs::Grain;
use super::judging::{Bar, Sag};
use super::section::{Part, Section, Strip};
use crate::stock::materials::Family;

/// Standard gravity, m/s². Exact by definition.
pub(in crate::cards) const GRAVITY: f64 = 9.806_65;

/// The figures of one material that enter the sum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::cards) struct Figures {
    pub(in crate::cards) stiffness_mpa: f64,
    pub(in crate::cards) strength_mpa: Option<f64>,
    pub(in crate::cards) divisor: f64,
    pub(in crate::cards) density_kg_m3: f64,
    pub(in crate::cards) creep: f64,
}

/// Where they come from: typed, or a table in which the thickness picks the line.
#[derive(Clone, Copy, Debug)]
pub(super) enum Material {
    Own(Figures),
    Table(&'static Family, Grain),
}

impl Material {
    /// The figures for a thickness; none where the table has nothing in that direction.
    pub(super) fn at(self, thickness_mm: f64) -> Option<Figures> {
        match self {
            Self::Own(figures) => Some(figures),
            Self::Table(family, grain) => {
                let (row, _) = family.row(thickness_mm)?;
                let bending = match grain {
                    Grain::Along => row.along,
                    Grain::Across => row.across?,
                };
                Some(Figures {
                    stiffness_mpa: bending.stiffness_mpa,
                    strength_mpa: bending.strength_mpa,
                    divisor: family.kind.divisor(family.values),
                    density_kg_m3: row.density_kg_m3,
                    creep: family.kind.creep(),
                })
            }
        }
    }
}

/// A strip's material and size.
#[derive(Clone, Copy, Debug)]
pub(super) struct StripOf {
    pub(super) kind: Strip,
    pub(super) material: Material,
    pub(super) width_mm: f64,
    pub(super) height_mm: f64,
}

impl StripOf {
    /// The thickness of the board that it is cut from.
    pub(super) fn thickness_mm(&self) -> f64 {
        if self.kind == Strip::Under { self.height_mm } else { self.width_mm }
    }

    pub(super) fn figures(&self) -> Option<Figures> {
        self.material.at(self.thickness_mm())
    }

    /// kg/m³ · mm² of all its pieces.
    fn heft(&self, figures: &Figures) -> f64 {
        figures.density_kg_m3 * self.kind.pieces() * self.width_mm * self.height_mm
    }
}

/// All that matters of the inputs, as numbers.
#[derive(Clone, Copy, Debug)]
pub(super) struct Case {
    pub(super) support: Support,
    pub(super) span_mm: f64,
    pub(super) thickness_mm: f64,
    pub(super) depth_mm: f64,
    pub(super) board: Material,
    pub(super) strip: Option<StripOf>,
    /// The things on the shelf, without its own weight.
    pub(super) load: Loads,
    /// The share of the time that they are there, 0 to 1.
    pub(super) share: f64,
    /// What the sag is held against.
    pub(super) bar: Bar,
}

/// What becomes of a shelf.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outcome {
    pub(super) board: Figures,
    pub(super) strip: Option<(StripOf, Figures)>,
    /// Section on the first day, and with every stiffness divided by 1 + creep.
    pub(super) section: Section,
    pub(super) crept: Section,
    pub(super) bay_mm: f64,
    pub(super) own_n_per_mm: f64,
    /// All loads on the first day.
    pub(super) loads: Loads,
    /// Loads that stay: own weight and a share of the things.
    pub(super) lasting: Loads,
    pub(super) beam: Beam,
    /// The beam whose deflection is the sag in the long run (its loads are already divided by the stiffness).
    pub(super) late: Beam,
    pub(super) instant_at_mm: f64,
    pub(super) instant_mm: f64,
    pub(super) late_at_mm: f64,
    pub(super) late_mm: f64,
    pub(super) moment: f64,
}

impl Outcome {
    /// How far its bays sag.
    pub(super) const fn sag(&self) -> Sag {
        Sag { bay_mm: self.bay_mm, instant_mm: self.instant_mm, late_mm: self.late_mm }
    }

    /// The largest stress in the board, on the first day or later when the load has moved to the stiffer part.
    pub(super) fn board_stress(&self) -> f64 {
        self.section.board_stress(self.moment).max(self.crept.board_stress(self.moment))
    }

    /// The same in the strip.
    pub(super) fn strip_stress(&self) -> Option<f64> {
        let first = self.section.strip_stress(self.moment)?;
        Some(self.crept.strip_stress(self.moment).map_or(first, |later| later.max(first)))
    }

    /// Whether every stress is within what may stay; a strength that nobody published does not count against it.
    pub(super) fn strong_enough(&self) -> bool {
        let within =
            |stress: f64, figures: &Figures| figures.strength_mpa.is_none_or(|f| stress * figures.divisor <= f);
        within(self.board_stress(), &self.board)
            && self.strip.zip(self.strip_stress()).is_none_or(|((_, figures), stress)| within(stress, &figures))
    }
}

impl Case {
    /// Works the shelf out; none where a table has nothing for it.
    pub(super) fn outcome(&self) -> Option<Outcome> {
        let board = self.board.at(self.thickness_mm)?;
        let strip = match self.strip {
            Some(strip) => Some((strip, strip.figures()?)),
            None => None,
        };
        let heft = board.density_kg_m3 * self.depth_mm * self.thickness_mm
            + strip.map_or(0.0, |(strip, figures)| strip.heft(&figures));
        let own_n_per_mm = heft * GRAVITY * 1e-9;
        let section_with = |crept: bool| {
            let stiffness = |f: &Figures| if crept { f.stiffness_mpa / (1.0 + f.creep) } else { f.stiffness_mpa };
            let part = Part { stiffness: stiffness(&board), width: self.depth_mm, height: self.thickness_mm };
            match &strip {
                Some((of, figures)) => Section::new(
                    part,
                    of.kind,
                    Part { stiffness: stiffness(figures), width: of.width_mm, height: of.height_mm },
                ),
                None => Section::new(part, Strip::None, part),
            }
        };
        let (section, crept) = (section_with(false), section_with(true));
        let bay_mm = self.span_mm / f64::from(self.support.bays());
        let own = Loads::even(own_n_per_mm);
        let (loads, lasting) = (own.plus(self.load), own.plus(self.load.scaled(self.share)));
        let beam = Beam::new(self.support, bay_mm, loads);
        let (instant_at_mm, instant) = beam.deepest();
        // The lasting loads sag the crept section; the rest of the load adds what it does on the first day.
        let (per_first, per_crept) = (1.0 / section.stiffness, 1.0 / crept.stiffness);
        let late_loads = loads.scaled(per_first).plus(lasting.scaled(per_crept - per_first));
        let late = Beam::new(self.support, bay_mm, late_loads);
        let (late_at_mm, late_mm) = late.deepest();
        Some(Outcome {
            board,
            strip,
            section,
            crept,
            bay_mm,
            own_n_per_mm,
            loads,
            lasting,
            beam,
            late,
            instant_at_mm,
            instant_mm: instant * per_first,
            late_at_mm,
            late_mm,
            moment: beam.sagging_moment().max(beam.support_moment()),
        })
    }

    /// Whether the shelf holds: within the chosen limit, judged as chosen, and strong enough.
    pub(super) fn holds(&self) -> bool {
        self.outcome().is_some_and(|outcome| self.passes(&outcome))
    }

    /// The same of an outcome that is already worked out.
    pub(super) fn passes(&self, outcome: &Outcome) -> bool {
        self.bar.keeps(outcome.sag()) && outcome.strong_enough()
    }

    /// The sag on the first day with things in the first bay only, and in the third if there are three: the worst that an
    /// unevenly filled shelf does. None for one bay, and with one thing in the middle of the first.
    pub(super) fn uneven_mm(&self, outcome: &Outcome) -> Option<f64> {
        let [first, _, third] = self.load.even;
        (self.support.bays() > 1 && first > 0.0).then(|| {
            let loads = Loads::even(outcome.own_n_per_mm).plus(Loads { even: [first, 0.0, third], point: 0.0 });
            Beam::new(self.support, outcome.bay_mm, loads).deepest().1 / outcome.section.stiffness
        })
    }
}
