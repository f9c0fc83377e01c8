//! What boards are made of: stiffness, strength, weight and creep, and where each value was published.
//!
//! A [`Family`] is what a person names ("birch plywood", "MDF"); its [`Row`]s are the table lines for ranges of
//! thickness, so the measured thickness picks the line. A species of solid wood has one line.

mod boards;
mod cited;
mod solid;

use crate::source::Source;
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// What a board is, as far as creep and safety are concerned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Solid wood.
    Solid,
    /// Plywood.
    Plywood,
    /// Oriented strand board.
    Osb,
    /// Particleboard.
    Particleboard,
    /// Medium density fibreboard.
    Mdf,
    /// Hardboard.
    Hardboard,
}

impl Kind {
    /// The share by which the sag grows in the long run under a load that stays, indoors (service class 1).
    pub const fn creep(self) -> f64 {
        match self {
            Self::Solid => 0.60,
            Self::Plywood => 0.80,
            Self::Osb => 1.50,
            Self::Particleboard | Self::Mdf | Self::Hardboard => 2.25,
        }
    }

    /// Who says how much it creeps.
    pub const fn creep_source(self) -> Source {
        match self {
            Self::Solid | Self::Plywood | Self::Osb => cited::CREEP,
            Self::Particleboard | Self::Mdf | Self::Hardboard => cited::CREEP_ASSUMED,
        }
    }

    /// What a strength of this kind of value is divided by to get the stress that may stay for years.
    ///
    /// A mean strength: 3 for wood and plywood, 4 for boards of strands, particles and fibres. A 5 % value:
    /// `1.5 · γM / kmod` for a permanent load indoors.
    pub const fn divisor(self, values: Values) -> f64 {
        match (values, self) {
            (Values::Mean, Self::Solid | Self::Plywood) => 3.0,
            (Values::Mean, _) => 4.0,
            (_, Self::Solid) => 3.25,
            (_, Self::Plywood) => 3.0,
            (_, Self::Osb) => 4.5,
            (_, Self::Particleboard | Self::Hardboard) => 6.5,
            (_, Self::Mdf) => 9.75,
        }
    }

    /// Who says so.
    pub const fn divisor_source(self, values: Values) -> Source {
        match values {
            Values::Mean => cited::SAFETY_ON_MEAN,
            Values::Design | Values::Minimum => cited::SAFETY_ON_LOW,
        }
    }
}

/// Which kind of value a family's figures are; two tables of one board can differ by half over this alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Values {
    /// Stiffness and strength are averages.
    Mean,
    /// Stiffness is an average, strength the value that 5 % of the boards fall short of.
    Design,
    /// Both are what the product must reach at least.
    Minimum,
}

/// Bending along one direction of the face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Bending {
    /// Modulus of elasticity in bending, MPa.
    pub stiffness_mpa: f64,
    /// Bending strength, MPa, where one is published; see [`Values`].
    pub strength_mpa: Option<f64>,
}

/// One line of a table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Row {
    /// What the line is for, such as `15 mm, 11 plies`; empty where the family has one line.
    pub label: &'static str,
    /// The thicknesses that it holds for, both ends included, in mm; none if it holds for all.
    pub thickness_mm: Option<(f64, f64)>,
    /// With the grain, the strands or the face veneer running along the span.
    pub along: Bending,
    /// With it running across the span, where that is published.
    pub across: Option<Bending>,
    /// kg/m³ at about 12 % moisture.
    pub density_kg_m3: f64,
    /// Who says so.
    pub source: Source,
}

impl Row {
    /// How far a thickness lies outside of this line's range, mm.
    fn off_by_mm(&self, thickness_mm: f64) -> f64 {
        self.thickness_mm.map_or(0.0, |(least, most)| (least - thickness_mm).max(thickness_mm - most).max(0.0))
    }
}

#[derive(Clone, Copy, Debug)]
enum Rows {
    One(Row),
    ByThickness(&'static [Row]),
}

/// A material as a person names it.
#[derive(Clone, Copy, Debug)]
pub struct Family {
    /// The name in files and addresses.
    pub id: &'static str,
    /// The name in words.
    pub name: &'static str,
    /// What it is.
    pub kind: Kind,
    /// Which kind of value its figures are.
    pub values: Values,
    rows: Rows,
}

impl Family {
    /// The lines of its table, thin to thick.
    pub fn rows(&self) -> &[Row] {
        match &self.rows {
            Rows::One(row) => std::slice::from_ref(row),
            Rows::ByThickness(rows) => rows,
        }
    }

    /// The line for a measured thickness, and whether the thickness lies in its range; else it is the nearest line.
    pub fn row(&self, thickness_mm: f64) -> Option<(&Row, bool)> {
        let nearest = |a: &&Row, b: &&Row| a.off_by_mm(thickness_mm).total_cmp(&b.off_by_mm(thickness_mm));
        self.rows().iter().min_by(nearest).map(|row| (row, row.off_by_mm(thickness_mm) <= 0.0))
    }
}

/// The choice of a material: one of the table, or the user's own figures.
#[derive(Clone, Copy, Debug, Default)]
pub enum Choice {
    /// Figures of one's own.
    #[default]
    Own,
    /// A family of the table.
    Table(&'static Family),
}

const COUNT: usize = boards::FAMILIES.len() + solid::FAMILIES.len() + 1;

impl Choice {
    /// Boards, then solid wood, then one's own figures.
    pub const ALL: &'static [Self] = &{
        let mut all = [Self::Own; COUNT];
        let mut at = 0;
        while at < boards::FAMILIES.len() {
            all[at] = Self::Table(&boards::FAMILIES[at]);
            at += 1;
        }
        while at < COUNT - 1 {
            all[at] = Self::Table(&solid::FAMILIES[at - boards::FAMILIES.len()]);
            at += 1;
        }
        all
    };

    /// The choice of that id: a family's, or `own`.
    pub fn find(id: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|choice| choice.id() == id)
    }

    /// The name in files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Own => "own",
            Self::Table(family) => family.id,
        }
    }

    /// The family, unless it is one's own figures.
    pub const fn family(self) -> Option<&'static Family> {
        match self {
            Self::Own => None,
            Self::Table(family) => Some(family),
        }
    }
}

impl PartialEq for Choice {
    fn eq(&self, other: &Self) -> bool {
        self.id() == other.id()
    }
}

impl Eq for Choice {}

/// As its id.
impl Serialize for Choice {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.id())
    }
}

impl<'de> Deserialize<'de> for Choice {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let id = String::deserialize(deserializer)?;
        Self::find(&id).ok_or_else(|| de::Error::custom(format_args!("no material is called “{id}”")))
    }
}

#[cfg(test)]
mod tests;
