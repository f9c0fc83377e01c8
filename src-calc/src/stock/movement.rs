//! How far wood and sheet goods move with the humidity of the air, and where that was published.

pub mod air;
pub mod solid;

use crate::source::Source;
use serde::{Deserialize, Serialize};

/// A kind of sheet, as far as it moves.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Sheet {
    /// Plywood, crossed veneers.
    #[default]
    Plywood,
    /// Medium density fibreboard.
    Mdf,
    /// Particleboard.
    Particleboard,
    /// Hardboard.
    Hardboard,
    /// Something else: the maker gives the movement.
    Own,
}

impl Sheet {
    /// Every kind, in the order of a list.
    pub const ALL: &[Self] = &[Self::Plywood, Self::Mdf, Self::Particleboard, Self::Hardboard, Self::Own];

    /// How far it moves; nothing for a sheet of the maker's own.
    pub const fn movement(self) -> Option<Movement> {
        match self {
            Self::Plywood => Some(PLYWOOD),
            Self::Mdf | Self::Particleboard => Some(PARTICLES),
            Self::Hardboard => Some(HARDBOARD),
            Self::Own => None,
        }
    }
}

/// Growth in length and width, the same both ways.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Movement {
    /// Growth in per cent of the size …
    pub percent: f64,
    /// … for so many points of relative humidity.
    pub per_humidity: f64,
    /// Who says so.
    pub source: Source,
}

impl Movement {
    /// Growth in per cent over a swing of the humidity, in points of relative humidity. In proportion: good for the
    /// range in which rooms and sheds live, not for wet boards.
    pub fn over(self, swing: f64) -> f64 {
        self.percent * swing / self.per_humidity
    }
}

const PLYWOOD: Movement = Movement {
    percent: 0.02,
    per_humidity: 10.0,
    source: Source::published(
        "APA, dimensional stability of plywood: about 0.0002 of the size for each 10 % of relative humidity (read as quoted by others)",
    ),
};

const PARTICLES: Movement = Movement {
    percent: 0.05,
    per_humidity: 10.0,
    source: Source::published(
        "EWPAA, Facts about Particleboard and MDF: 1 mm per metre between 9 and 12 % moisture, and 6 to 8 % moisture at 30 % humidity, 9 to 11 % at 65 %. Taken from 6 to 11 %, which is 0.048 % for each 10 % of humidity, rounded up",
    ),
};

const HARDBOARD: Movement = Movement {
    percent: 0.2,
    per_humidity: 30.0,
    source: Source::memory(
        "an older Wood Handbook table of boards: 0.15 to 0.45 % from 30 to 90 % humidity; 0.20 % for each 30 % taken, near the upper end",
    ),
};

#[cfg(test)]
mod tests {
    use super::*;

    /// A heated room swings from 35 to 65 % of relative humidity.
    #[test]
    fn moves_as_published() {
        for (sheet, percent, source) in [
            (Sheet::Plywood, 0.06, "APA: 3 × 0.0002 of the size"),
            (Sheet::Mdf, 0.15, "EWPAA: 4.5 % of moisture × 1 mm/m per 3 %"),
            (Sheet::Particleboard, 0.15, "EWPAA: 4.5 % of moisture × 1 mm/m per 3 %"),
            (Sheet::Hardboard, 0.20, "older Wood Handbook, from memory: within half of 0.15 to 0.45 %, rounded"),
        ] {
            let got = sheet.movement().map(|movement| movement.over(30.0)).unwrap_or_default();
            assert!((got - percent).abs() < 1e-12, "{sheet:?}: {got}; source: {source}");
        }
        assert_eq!(Sheet::Own.movement(), None);
    }

    /// The rounding of the EWPAA figure is upward and small.
    #[test]
    fn rounds_particles_up() {
        let from_bands = (11.0 - 6.0) / 3.0 * 0.1 / (65.0 - 30.0) * 10.0;
        assert!(PARTICLES.percent > from_bands && PARTICLES.percent < from_bands * 1.06, "{from_bands}");
    }
}
