//! What pulls at the wall: the cabinet levers over its lower rear edge, and a bevel wedges outwards.

use super::GRAVITY;
use super::inputs::Hung;
use super::read::Read;
use super::weigh::Weighed;
use crate::stock::fixings::FRICTION;
use serde::Serialize;

/// The forces between the cabinet and the wall.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pull {
    /// The weight of cabinet and contents, in N: all of it hangs on the fixings.
    pub weight_n: f64,
    /// The centre of gravity from the wall, with the doors where that is most, in millimetres.
    pub out_mm: f64,
    /// From the lower rear edge up to where it hangs, in millimetres.
    pub arm_mm: f64,
    /// The pull of the lever over the lower rear edge, in N, and as much push on the wall there: `W·e / h`.
    pub lever_n: f64,
    /// What the bevel presses outwards as the cabinet settles, in N: `W·tan(β − φ)`; none without a bevel.
    pub wedge_n: Option<f64>,
    /// The greater of both, in N.
    pub pull_n: f64,
    /// By how much more the fixings pull because the strip tips about its lower edge; 1 for a rail.
    pub prying: f64,
}

/// The angle of friction, in radians.
pub(super) fn friction_angle() -> f64 {
    FRICTION.atan()
}

/// The forces on the wall.
///
/// The weight is taken to hang at the wall's own face, which makes the lever a little longer than it is, and to load
/// the strip half its thickness out, at its upper edge.
pub(super) fn pulled(read: &Read, weighed: &Weighed) -> Pull {
    let weight_n = weighed.total_kg * GRAVITY;
    let (out_mm, arm_mm) = (weighed.worst().out_mm, read.bears_up.as_mm());
    let lever_n = weight_n * out_mm / arm_mm;
    let wedge_n = match read.hung {
        Hung::Cleat => Some(weight_n * (read.bevel_degrees.to_radians() - friction_angle()).tan()),
        Hung::Rail => None,
    };
    let pull_n = wedge_n.map_or(lever_n, |wedge| wedge.max(lever_n));
    let prying = match read.hung {
        Hung::Cleat => {
            let moment = pull_n * read.strip_height.as_mm() + weight_n * read.strip.as_mm() / 2.0;
            moment / (pull_n * read.fixings_up.as_mm())
        }
        Hung::Rail => 1.0,
    };
    Pull { weight_n, out_mm, arm_mm, lever_n, wedge_n, pull_n, prying }
}
