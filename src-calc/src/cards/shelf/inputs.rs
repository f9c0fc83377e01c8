//! What a person gives for a shelf.

use super::beam::Support;
use super::section::Strip;
use crate::measure::{Figure, Graduation, Reading};
use crate::stock::loads::Contents;
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// How the grain (the strands, the face veneer) of the board runs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grain {
    /// Along the span: the stiff way.
    #[default]
    Along,
    /// Across the span.
    Across,
}

impl Grain {
    /// Both ways.
    pub const ALL: &'static [Self] = &[Self::Along, Self::Across];
}

/// How the load is given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Load {
    /// What usually stands there, see [`Contents`].
    #[default]
    Contents,
    /// So much per metre, everywhere.
    PerMetre,
    /// One heavy thing in the middle (of the first bay, if there are several).
    Middle,
}

impl Load {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Contents, Self::PerMetre, Self::Middle];
}

/// How much sag is too much, in a bay.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Limit {
    /// 1/50 in per foot, a 600th of the span: more than this the eye sees.
    #[default]
    Visible,
    /// A 360th, the habit for floors.
    Span360,
    /// A 300th, a good shelf.
    Span300,
    /// A 200th, for a shed.
    Span200,
    /// A length of one's own.
    Own,
}

impl Limit {
    /// Strict to lax, one's own last.
    pub const ALL: &'static [Self] = &[Self::Visible, Self::Span360, Self::Span300, Self::Span200, Self::Own];

    /// The n of L/n; none for one's own.
    pub const fn divisor(self) -> Option<f64> {
        match self {
            Self::Visible => Some(600.0),
            Self::Span360 => Some(360.0),
            Self::Span300 => Some(300.0),
            Self::Span200 => Some(200.0),
            Self::Own => None,
        }
    }
}

/// Which sag the limit is held against.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Judged {
    /// After years.
    #[default]
    LongTerm,
    /// On the first day.
    Instant,
}

impl Judged {
    /// Both.
    pub const ALL: &'static [Self] = &[Self::LongTerm, Self::Instant];
}

/// What the maker gives.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// What the board is.
    pub material: Choice,
    /// How its grain runs.
    pub grain: Grain,
    /// Measured thickness of the board.
    pub thickness: Reading,
    /// Depth of the board from front to back, the strips not counted.
    pub depth: Reading,
    /// Clear span between the outer supports.
    pub span: Reading,
    /// How it is held.
    pub support: Support,
    /// How the load is given.
    pub load: Load,
    /// What stands on it, for [`Load::Contents`].
    pub contents: Contents,
    /// Mass per length, for [`Load::PerMetre`].
    pub per_metre: Figure,
    /// Mass, for [`Load::Middle`].
    pub middle: Figure,
    /// The share of the time that the load is there, percent. The shelf's own weight always is.
    pub share: Figure,
    /// A stiffening strip.
    pub strip: Strip,
    /// What the strip is; its grain runs along the span.
    pub strip_material: Choice,
    /// Its width from front to back (of one strip).
    pub strip_width: Reading,
    /// Its height.
    pub strip_height: Reading,
    /// The limit that decides.
    pub limit: Limit,
    /// One's own limit: a sag.
    pub own_limit: Reading,
    /// Which sag decides.
    pub judged: Judged,
    /// One's own material: modulus of elasticity in bending.
    pub own_stiffness: Figure,
    /// One's own material: bending strength.
    pub own_strength: Figure,
    /// What that strength is divided by.
    pub own_divisor: Figure,
    /// One's own material: density.
    pub own_density: Figure,
    /// One's own material: the share by which the sag grows in the long run.
    pub own_creep: Figure,
    /// The marks of the tool in hand, for what would hold.
    pub graduation: Graduation,
}

/// The boot shelf of a potting-shed cupboard.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            material: Choice::find("plywood_birch").unwrap_or_default(),
            grain: Grain::Along,
            thickness: Reading::mm("14.6"),
            depth: Reading::mm("330"),
            span: Reading::mm("800"),
            support: Support::Loose,
            load: Load::Contents,
            contents: Contents::Boots,
            per_metre: "20".into(),
            middle: "12".into(),
            share: "100".into(),
            strip: Strip::None,
            strip_material: Choice::find("pine_scots").unwrap_or_default(),
            strip_width: Reading::mm("20"),
            strip_height: Reading::mm("45"),
            limit: Limit::Visible,
            own_limit: Reading::default(),
            judged: Judged::LongTerm,
            own_stiffness: "9000".into(),
            own_strength: "40".into(),
            own_divisor: "4".into(),
            own_density: "600".into(),
            own_creep: "0.6".into(),
            graduation: Graduation::Mm,
        }
    }
}
