//! From what was typed to numbers, with every problem named.

use super::case::{Case, Hanging};
use super::inputs::{Hung, Inputs, Load, Material};
use super::room::Sizes;
use super::section::Section;
use crate::cards::shelf::Limit;
use crate::cards::shelf::case::{Figures, GRAVITY};
use crate::cards::shelf::judging::Bar;
use crate::cards::shelf::read::{OwnMaterial, between};
use crate::measure::{FigureKind, Length, Quantity, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::materials::{Choice, Kind};
use crate::stock::metals;

/// The inputs, read.
pub(super) struct Read {
    pub(super) case: Case,
    pub(super) sizes: Sizes,
    pub(super) span: Length,
    pub(super) bay: Length,
    pub(super) width: Length,
    pub(super) wall: Length,
}

const NO_RAIL: &str = "more is no clothes rail";
const NO_CABINET: &str = "more is no cabinet";

fn at_most(length: Length, most_mm: i64, why: &'static str) -> Result<Length, Problem> {
    let most = Length::mm(most_mm, 1)?;
    if length > most { Err(Problem::TooLarge { most: most.into(), why }) } else { Ok(length) }
}

/// A length above zero and up to `most_mm`.
fn size(problems: &mut Problems, field: &str, reading: &Reading, most_mm: i64, why: &'static str) -> Option<Length> {
    let length = problems.above_zero(field, reading)?;
    problems.check(field, at_most(length, most_mm, why))
}

/// A length from zero up to `most_mm`.
fn room(problems: &mut Problems, field: &str, reading: &Reading, most_mm: i64) -> Option<Length> {
    let length = problems.zero_or_more(field, reading)?;
    problems.check(field, at_most(length, most_mm, NO_CABINET))
}

impl Inputs {
    /// Width, height and wall; the wall of a bar is nothing.
    fn outline(&self, problems: &mut Problems) -> Option<(Length, Length, Length)> {
        let (smallest, field) = if self.shape.is_round() {
            let diameter = size(problems, "diameter", &self.diameter, 200, NO_RAIL);
            (diameter.map(|diameter| (diameter, diameter)), "diameter")
        } else {
            let height = size(problems, "height", &self.height, 200, NO_RAIL);
            let width = size(problems, "width", &self.width, 200, NO_RAIL);
            (width.zip(height), "width")
        };
        let wall = if self.shape.is_tube() { problems.above_zero("wall", &self.wall) } else { Some(Length::ZERO) };
        let ((width, height), wall) = (smallest?, wall?);
        let half = problems.check(field, width.min(height).times(1, 2))?;
        if wall > half {
            let why = "the walls of a tube meet there, and it is a bar";
            problems.add("wall", Problem::TooLarge { most: half.into(), why });
            return None;
        }
        Some((width, height, wall))
    }

    fn figures(&self, problems: &mut Problems) -> Option<Figures> {
        if let Some(metal) = self.material.metal() {
            return Some(Figures {
                stiffness_mpa: metal.stiffness_mpa,
                strength_mpa: Some(metal.yield_mpa),
                divisor: metals::DIVISOR,
                density_kg_m3: metal.density_kg_m3,
                creep: 0.0,
            });
        }
        if self.material == Material::Own {
            let Self { own_stiffness, own_strength, own_divisor, own_density, own_creep, .. } = self;
            return OwnMaterial { own_stiffness, own_strength, own_divisor, own_density, own_creep }.read(problems);
        }
        let family = self.wood.family().filter(|family| family.kind == Kind::Solid);
        let Some((family, row)) = family.and_then(|family| Some((family, family.rows().first()?))) else {
            problems.add("wood", Problem::Clash { why: "A wooden rail is solid wood: choose one of the species." });
            return None;
        };
        Some(Figures {
            stiffness_mpa: row.along.stiffness_mpa,
            strength_mpa: row.along.strength_mpa,
            divisor: family.kind.divisor(family.values),
            density_kg_m3: row.density_kg_m3,
            creep: family.kind.creep(),
        })
    }

    fn hanging(&self, problems: &mut Problems) -> Option<Hanging> {
        const WHY: &str = "more is no load of clothes";
        let per_metre = |kg_per_m: f64| Hanging::PerMm(kg_per_m * GRAVITY / 1000.0);
        Some(match self.load {
            Load::Garments => per_metre(self.garments.kg_per_m().1),
            Load::PerMetre => {
                let kind = FigureKind::MassPerLength;
                let typed = between(&self.per_metre, kind, (0.0, 1000.0), Quantity::kg_per_m, WHY);
                per_metre(problems.check("per_metre", typed)?)
            }
            Load::Total => {
                let typed = between(&self.total, FigureKind::Mass, (0.0, 1000.0), Quantity::kg, WHY);
                Hanging::InAll(problems.check("total", typed)? * GRAVITY)
            }
        })
    }

    /// What holds the rail under the top; none for sockets on the sides. The outer option is for problems.
    #[allow(clippy::option_option, reason = "no brackets is an answer, unreadable is none")]
    fn under_top(&self, rail_height: Option<Length>, problems: &mut Problems) -> Option<Option<(Length, Length)>> {
        if self.hung != Hung::Top {
            return Some(None);
        }
        let drop = size(problems, "bracket_drop", &self.bracket_drop, 1000, "more is no bracket");
        let sheet = size(problems, "sheet", &self.sheet, 300, "more is no sheet");
        let (drop, sheet, rail_height) = (drop?, sheet?, rail_height?);
        let half = problems.check("bracket_drop", rail_height.times(1, 2))?;
        if drop < half {
            let why = "the upper half of the rail has to fit under the foot";
            problems.add("bracket_drop", Problem::TooSmall { least: half.into(), why });
            return None;
        }
        let thinnest = problems.check("sheet", Length::mm(1, 1))?;
        if sheet < thinnest {
            problems.add("sheet", Problem::TooSmall { least: thinnest.into(), why: "blocks are glued up from it" });
            return None;
        }
        Some(Some((drop, sheet)))
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let outline = self.outline(&mut problems);
        let figures = self.figures(&mut problems);
        let span = size(&mut problems, "span", &self.span, 20_000, NO_RAIL);
        let hanging = self.hanging(&mut problems);
        let own_limit = if self.limit == Limit::Own || !self.own_limit.is_blank() {
            size(&mut problems, "own_limit", &self.own_limit, 1000, NO_RAIL)
        } else {
            None
        };
        let under_top = self.under_top(outline.map(|(_, height, _)| height), &mut problems);
        let hook = room(&mut problems, "hook", &self.hook, 1000);
        let drop = if self.drop.is_blank() {
            problems.check("drop", Length::mm(self.garments.drop_mm(), 1))
        } else {
            size(&mut problems, "drop", &self.drop, 5000, "more is no garment")
        };
        let below = room(&mut problems, "below", &self.below, 5000);
        let hanger = size(&mut problems, "hanger", &self.hanger, 2000, "more is no hanger");
        let bulk = room(&mut problems, "bulk", &self.bulk, 1000);
        let inside_depth = size(&mut problems, "inside_depth", &self.inside_depth, 5000, NO_CABINET);
        let inside_height = size(&mut problems, "inside_height", &self.inside_height, 10_000, NO_CABINET);
        let read = (|| {
            let (width, rail_height, wall) = outline?;
            let span = span?;
            let bay = problems.check("span", span.times(1, u64::from(self.brackets.support().bays())))?;
            let case = Case {
                brackets: self.brackets,
                span_mm: span.as_mm(),
                section: Section::new(self.shape, width.as_mm(), rail_height.as_mm(), wall.as_mm()),
                figures: figures?,
                hanging: hanging?,
                bar: Bar { limit: self.limit, own_mm: own_limit.map(Length::as_mm), judged: self.judged },
            };
            let sizes = Sizes {
                rail_height,
                hook: hook?,
                drop: drop?,
                below: below?,
                hanger: hanger?,
                bulk: bulk?,
                inside_depth: inside_depth?,
                inside_height: inside_height?,
                under_top: under_top?,
            };
            Some(Read { case, sizes, span, bay, width, wall })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }

    /// The name of the material in words; empty for one's own.
    pub(super) const fn material_name(&self) -> &'static str {
        match (self.material, self.wood) {
            (Material::Wood, Choice::Table(family)) => family.name,
            _ => match self.material.metal() {
                Some(metal) => metal.name,
                None => "",
            },
        }
    }
}
