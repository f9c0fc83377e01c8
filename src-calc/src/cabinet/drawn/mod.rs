//! Drawings of a cabinet, computed from its parts: from in front, cut through, from above, taken apart, and each part
//! with its holes and grooves.

mod apart;
mod face;
mod views;

use super::Cabinet;
use super::part::{Axis, Part, Stock, What};
use crate::drawing::Drawing;
use crate::measure::LengthError;
use serde::Serialize;

pub use face::Face;

/// What is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum View {
    /// From in front, doors dashed.
    Front,
    /// Cut through from top to bottom, the wall to the left.
    Section,
    /// Cut through half way up, seen from above, the wall at the top.
    Plan,
    /// Every part moved away from the middle.
    Apart,
    /// A face of a part.
    Part {
        /// Its place in the list of parts.
        on: usize,
        /// Which face.
        face: Face,
    },
}

/// A drawing, and of what.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Drawn {
    /// What is drawn.
    pub view: View,
    /// The drawing.
    pub drawing: Drawing,
}

/// From where to where a part goes, in millimetres.
fn along(part: &Part, axis: Axis) -> (f64, f64) {
    let (from, to) = part.place.along(axis);
    (from.as_mm(), to.as_mm())
}

/// Whether a part stays on the wall or lies between wall and back.
fn is_behind(part: &Part) -> bool {
    matches!(part.what, What::CabinetStrip | What::WallStrip | What::Spacer)
}

/// Whether a part is a door, or the edging of one.
fn is_door(cabinet: &Cabinet, part: &Part) -> bool {
    match part.what {
        What::Edging { on } => cabinet.parts.get(on).is_some_and(|board| board.stock == Stock::Door),
        _ => part.stock == Stock::Door,
    }
}

/// Every drawing, the whole before its parts.
///
/// # Errors
/// [`LengthError`] when a dimension cannot be held.
pub fn drawings(cabinet: &Cabinet) -> Result<Vec<Drawn>, LengthError> {
    let mut all = vec![
        Drawn { view: View::Front, drawing: views::front(cabinet)? },
        Drawn { view: View::Section, drawing: views::section(cabinet)? },
        Drawn { view: View::Plan, drawing: views::plan(cabinet)? },
        Drawn { view: View::Apart, drawing: apart::apart(cabinet) },
    ];
    for line in &cabinet.cut_list {
        // Those that are cut alike may be drilled differently: they are drawn once for each that is.
        let mut known: Vec<Drawing> = Vec::new();
        for on in &line.parts {
            let own = |part: &&Part| !matches!(part.stock, Stock::Edging | Stock::Rail);
            let Some(part) = cabinet.parts.get(*on).filter(own) else { continue };
            for face in Face::of(cabinet, *on, part) {
                let drawing = face::face(cabinet, *on, part, face)?;
                if !known.contains(&drawing) {
                    known.push(drawing.clone());
                    all.push(Drawn { view: View::Part { on: *on, face }, drawing });
                }
            }
        }
    }
    Ok(all)
}
