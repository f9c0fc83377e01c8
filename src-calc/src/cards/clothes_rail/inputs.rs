//! What a person gives for a clothes rail.

use super::section::Shape;
use crate::cards::shelf::beam::Support;
use crate::cards::shelf::{Judged, Limit};
use crate::measure::{Figure, Graduation, Reading};
use crate::stock::clothes::Garments;
use crate::stock::materials::Choice;
use crate::stock::metals::{ALUMINIUM, BRASS, Metal, STAINLESS, STEEL};
use serde::{Deserialize, Serialize};

/// What the rail is made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Material {
    /// Plain or plated steel.
    #[default]
    Steel,
    /// Stainless steel.
    Stainless,
    /// Extruded aluminium.
    Aluminium,
    /// Brass.
    Brass,
    /// Solid wood, see [`Inputs::wood`].
    Wood,
    /// Figures of one's own.
    Own,
}

impl Material {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] =
        &[Self::Steel, Self::Stainless, Self::Aluminium, Self::Brass, Self::Wood, Self::Own];

    /// The metal, if it is one.
    pub const fn metal(self) -> Option<&'static Metal> {
        match self {
            Self::Steel => Some(&STEEL),
            Self::Stainless => Some(&STAINLESS),
            Self::Aluminium => Some(&ALUMINIUM),
            Self::Brass => Some(&BRASS),
            Self::Wood | Self::Own => None,
        }
    }
}

/// Brackets between the ends, under a rail in one length.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Brackets {
    /// None: the rail lies in its two ends.
    #[default]
    None,
    /// One in the middle.
    Middle,
    /// Two, at the thirds.
    Thirds,
}

impl Brackets {
    /// Few to many.
    pub const ALL: &'static [Self] = &[Self::None, Self::Middle, Self::Thirds];

    /// As the supports of a beam whose ends are free to turn.
    pub(super) const fn support(self) -> Support {
        match self {
            Self::None => Support::Loose,
            Self::Middle => Support::OneDivider,
            Self::Thirds => Support::TwoDividers,
        }
    }
}

/// How the load is given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Load {
    /// What hangs there, see [`Garments`].
    #[default]
    Garments,
    /// So much per metre.
    PerMetre,
    /// So much in all, spread evenly.
    Total,
}

impl Load {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Garments, Self::PerMetre, Self::Total];
}

/// What holds the rail.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hung {
    /// Sockets on the two sides.
    #[default]
    Sides,
    /// Brackets under the top, on blocks where they need them.
    Top,
}

impl Hung {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::Sides, Self::Top];
}

/// What the maker gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What the rail looks like when it is cut through.
    pub shape: Shape,
    /// Outer diameter of a round rail.
    pub diameter: Reading,
    /// Height of any other, as it is hung.
    pub height: Reading,
    /// Width of any other, front to back.
    pub width: Reading,
    /// Thickness of a tube's wall.
    pub wall: Reading,
    /// What it is made of.
    pub material: Material,
    /// The species, for [`Material::Wood`].
    pub wood: Choice,
    /// Clear span from end to end.
    pub span: Reading,
    /// Brackets between the ends.
    pub brackets: Brackets,
    /// How the load is given.
    pub load: Load,
    /// What hangs there; also for its length.
    pub garments: Garments,
    /// Mass per length, for [`Load::PerMetre`].
    pub per_metre: Figure,
    /// Mass in all, for [`Load::Total`].
    pub total: Figure,
    /// The limit that decides.
    pub limit: Limit,
    /// One's own limit: a sag.
    pub own_limit: Reading,
    /// Which sag decides.
    pub judged: Judged,
    /// One's own material: modulus of elasticity.
    pub own_stiffness: Figure,
    /// One's own material: strength.
    pub own_strength: Figure,
    /// What that strength is divided by.
    pub own_divisor: Figure,
    /// One's own material: density.
    pub own_density: Figure,
    /// One's own material: the share by which the sag grows in the long run.
    pub own_creep: Figure,
    /// What holds the rail.
    pub hung: Hung,
    /// From a bracket's foot to the middle of the rail, for [`Hung::Top`].
    pub bracket_drop: Reading,
    /// What the blocks are cut from, for [`Hung::Top`].
    pub sheet: Reading,
    /// Room wanted between the top of the rail and what is above it.
    pub hook: Reading,
    /// From the top of the rail to the hem; blank for the usual of the garments.
    pub drop: Reading,
    /// Room wanted under the hem.
    pub below: Reading,
    /// Width of the hangers.
    pub hanger: Reading,
    /// Room in front of the hangers, and as much behind.
    pub bulk: Reading,
    /// Clear depth of the cabinet, front to back.
    pub inside_depth: Reading,
    /// Clear height of the cabinet, from the top down to what is under the clothes.
    pub inside_height: Reading,
    /// The marks of the tool in hand, for the longest span.
    pub graduation: Graduation,
}

/// The coat bay of a potting-shed cupboard.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            shape: Shape::RoundTube,
            diameter: Reading::mm("25"),
            height: Reading::mm("30"),
            width: Reading::mm("15"),
            wall: Reading::mm("1.5"),
            material: Material::Steel,
            wood: Choice::find("ash_european").unwrap_or_default(),
            span: Reading::mm("864"),
            brackets: Brackets::None,
            load: Load::Garments,
            garments: Garments::Coats,
            per_metre: "30".into(),
            total: "25".into(),
            limit: Limit::Span300,
            own_limit: Reading::default(),
            judged: Judged::LongTerm,
            own_stiffness: "200000".into(),
            own_strength: "190".into(),
            own_divisor: "1.5".into(),
            own_density: "7850".into(),
            own_creep: "0".into(),
            hung: Hung::Sides,
            bracket_drop: Reading::mm("32"),
            sheet: Reading::mm("14.6"),
            hook: Reading::mm("60"),
            drop: Reading::default(),
            below: Reading::mm("50"),
            hanger: Reading::mm("450"),
            bulk: Reading::mm("75"),
            inside_depth: Reading::mm("610"),
            inside_height: Reading::mm("1600"),
            graduation: Graduation::Mm,
        }
    }
}
