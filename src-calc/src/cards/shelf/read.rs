//! From what was typed to numbers, with every problem named.

use super::beam::Loads;
use super::case::{Case, Figures, GRAVITY, Material, StripOf};
use super::inputs::{Grain, Inputs, Limit, Load};
use super::judging::Bar;
use super::section::Strip;
use crate::measure::{Figure, FigureKind, Length, Quantity, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::materials::Choice;

/// The inputs, read.
pub(super) struct Read {
    pub(super) case: Case,
    pub(super) span: Length,
    pub(super) bay: Length,
    pub(super) thickness: Length,
    pub(super) depth: Length,
    /// The strip to try where the shelf has none; none if its own fields cannot be read.
    pub(super) trial_strip: Option<StripOf>,
}

/// A figure from `least` to `most`, or a problem.
pub(in crate::cards) fn between(
    figure: &Figure,
    kind: FigureKind,
    (least, most): (f64, f64),
    unit: fn(f64) -> Quantity,
    why: &'static str,
) -> Result<f64, Problem> {
    let value = figure.value(kind)?;
    if value < 0.0 && least <= 0.0 {
        Err(Problem::BelowZero)
    } else if value < least {
        Err(Problem::TooSmall { least: unit(least), why })
    } else if value > most {
        Err(Problem::TooLarge { most: unit(most), why })
    } else {
        Ok(value)
    }
}

/// A length above zero and up to `most_mm`, or a problem.
fn size(reading: &Reading, most_mm: i64) -> Result<Length, Problem> {
    let length = reading.length()?;
    let most = Length::mm(most_mm, 1)?;
    if !length.is_positive() {
        Err(Problem::NotAboveZero)
    } else if length > most {
        Err(Problem::TooLarge { most: most.into(), why: "more is no shelf" })
    } else {
        Ok(length)
    }
}

/// One's own material as typed.
pub(in crate::cards) struct OwnMaterial<'a> {
    pub(in crate::cards) own_stiffness: &'a Figure,
    pub(in crate::cards) own_strength: &'a Figure,
    pub(in crate::cards) own_divisor: &'a Figure,
    pub(in crate::cards) own_density: &'a Figure,
    pub(in crate::cards) own_creep: &'a Figure,
}

impl OwnMaterial<'_> {
    /// Its figures, each checked; a problem names the field as here.
    pub(in crate::cards) fn read(&self, problems: &mut Problems) -> Option<Figures> {
        let stiffness = between(
            self.own_stiffness,
            FigureKind::Stress,
            (1.0, 1e6),
            Quantity::mpa,
            "wood and boards have 1000 to 20000 MPa, steel 210000",
        );
        let strength = between(
            self.own_strength,
            FigureKind::Stress,
            (0.1, 1e4),
            Quantity::mpa,
            "wood and boards have 10 to 120 MPa",
        );
        let density = between(
            self.own_density,
            FigureKind::Density,
            (0.0, 25_000.0),
            Quantity::number,
            "wood and boards have 300 to 1100 kg/m³; zero leaves its own weight out",
        );
        let creep = between(
            self.own_creep,
            FigureKind::Number,
            (0.0, 10.0),
            Quantity::number,
            "solid wood 0.6, plywood 0.8, boards of particles and fibres 2.25",
        );
        let divisor = between(
            self.own_divisor,
            FigureKind::Number,
            (1.0, 100.0),
            Quantity::number,
            "3 to 4 on a mean strength, 3 to 10 on a 5 % value",
        );
        let stiffness_mpa = problems.check("own_stiffness", stiffness);
        let strength_mpa = problems.check("own_strength", strength);
        let density_kg_m3 = problems.check("own_density", density);
        let creep = problems.check("own_creep", creep);
        let divisor = problems.check("own_divisor", divisor);
        Some(Figures {
            stiffness_mpa: stiffness_mpa?,
            strength_mpa: Some(strength_mpa?),
            divisor: divisor?,
            density_kg_m3: density_kg_m3?,
            creep: creep?,
        })
    }
}

impl Inputs {
    fn own(&self, problems: &mut Problems) -> Option<Figures> {
        let Self { own_stiffness, own_strength, own_divisor, own_density, own_creep, .. } = self;
        OwnMaterial { own_stiffness, own_strength, own_divisor, own_density, own_creep }.read(problems)
    }

    fn loads(&self, problems: &mut Problems) -> Option<Loads> {
        const WHY: &str = "more is a structure, not a shelf";
        Some(match self.load {
            Load::PerMetre => {
                let typed = between(&self.per_metre, FigureKind::MassPerLength, (0.0, 5000.0), Quantity::kg_per_m, WHY);
                Loads::even(problems.check("per_metre", typed)? * GRAVITY / 1000.0)
            }
            Load::Contents => Loads::even(self.contents.kg_per_m().1 * GRAVITY / 1000.0),
            Load::Middle => {
                let typed = between(&self.middle, FigureKind::Mass, (0.0, 5000.0), Quantity::kg, WHY);
                Loads { even: [0.0; 3], point: problems.check("middle", typed)? * GRAVITY }
            }
        })
    }

    fn strip_of(&self, kind: Strip, own: Option<Figures>, problems: &mut Problems) -> Option<StripOf> {
        let width = problems.check("strip_width", size(&self.strip_width, 500));
        let height = problems.check("strip_height", size(&self.strip_height, 1000));
        let material = match self.strip_material {
            Choice::Own => Material::Own(own?),
            Choice::Table(family) => Material::Table(family, Grain::Along),
        };
        Some(StripOf { kind, material, width_mm: width?.as_mm(), height_mm: height?.as_mm() })
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let thickness = problems.check("thickness", size(&self.thickness, 300));
        let depth = problems.check("depth", size(&self.depth, 3000));
        let span = problems.check("span", size(&self.span, 20_000));
        let strip_is_own = self.strip != Strip::None && self.strip_material == Choice::Own;
        let own = if self.material == Choice::Own || strip_is_own { self.own(&mut problems) } else { None };
        let board = match self.material {
            Choice::Own => own.map(Material::Own),
            Choice::Table(family) => Some(Material::Table(family, self.grain)),
        };
        if let (Some(board), Some(thickness)) = (board, thickness)
            && board.at(thickness.as_mm()).is_none()
        {
            problems.add(
                "grain",
                Problem::Clash {
                    why: "Nothing is published for this material across the grain, where wood has only 5 to 15 % of its stiffness: run the grain along the span.",
                },
            );
        }
        let load = self.loads(&mut problems);
        let share = between(
            &self.share,
            FigureKind::Percent,
            (0.0, 100.0),
            Quantity::percent,
            "it is the share of the time that the things stand there",
        );
        let share = problems.check("share", share);
        let (strip, trial_strip) = match self.strip {
            Strip::None => (None, self.strip_of(Strip::Front, own, &mut Problems::default())),
            kind => {
                let strip = self.strip_of(kind, own, &mut problems);
                (strip, strip)
            }
        };
        let own_limit = if self.limit == Limit::Own || !self.own_limit.is_blank() {
            problems.check("own_limit", size(&self.own_limit, 1000))
        } else {
            None
        };
        let read = (|| {
            let (span, thickness, depth) = (span?, thickness?, depth?);
            let bay = problems.check("span", span.times(1, u64::from(self.support.bays())))?;
            let case = Case {
                support: self.support,
                span_mm: span.as_mm(),
                thickness_mm: thickness.as_mm(),
                depth_mm: depth.as_mm(),
                board: board?,
                strip,
                load: load?,
                share: share? / 100.0,
                bar: Bar { limit: self.limit, own_mm: own_limit.map(Length::as_mm), judged: self.judged },
            };
            Some(Read { case, span, bay, thickness, depth, trial_strip })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }
}
