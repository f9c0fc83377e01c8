//! Asking the cards: a cabinet works out nothing that a card does.

use crate::cards::{
    back_panel, bevelled_strips, clothes_rail, cup_hinge, groove, hanging, hole_rows, joints, shelf, wall_cleat,
};
use crate::measure::{Length, Range, Reading};
use crate::problem::Problems;
use serde::Serialize;

/// A length as a card takes it: in millimetres, without the unit, which stands beside the card's field.
pub(super) fn reading(length: Length) -> Reading {
    Reading::mm(&bare(length))
}

fn bare(length: Length) -> String {
    let typed = length.to_string();
    typed.strip_suffix(" mm").map(str::to_owned).unwrap_or(typed)
}

/// A measured length as a card takes it.
pub(super) fn ranged(range: Range) -> Reading {
    if range.is_exact() {
        return reading(range.nominal());
    }
    Reading::mm(&format!("{} ± {}", bare(range.nominal()), bare(range.tolerance())))
}

/// A card's answer; what it finds wrong is named as the cabinet's own fields, by pairs of the card's name and ours. All
/// items of a list have one name. What grew past what can be held exactly has none.
pub(super) fn answered<T>(result: Result<T, Problems>, names: &[(&str, &str)]) -> Result<T, Problems> {
    result.map_err(|theirs| {
        let mut ours = Problems::default();
        for (field, problem) in theirs.iter() {
            let list = field.split('.').next().unwrap_or(field);
            let known = |wanted: &str| names.iter().find(|(theirs, _)| *theirs == wanted);
            let name = known(field).or_else(|| known(list)).map_or("", |(_, ours)| ours);
            ours.add(name, problem.clone());
        }
        ours
    })
}

/// What each card was asked first, so that it can be opened with the cabinet's own measurements. None where the cabinet
/// has no such thing.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Asked {
    /// The back.
    pub back_panel: Option<back_panel::Inputs>,
    /// A board of the shelves.
    pub shelf: Option<shelf::Inputs>,
    /// The clothes rail.
    pub clothes_rail: Option<clothes_rail::Inputs>,
    /// The groove or rabbet for the back.
    pub groove: Option<groove::Inputs>,
    /// The rows of the first board that has any.
    pub hole_rows: Option<hole_rows::Inputs>,
    /// The first door.
    pub cup_hinge: Option<cup_hinge::Inputs>,
    /// The first joints.
    pub joints: Option<joints::Inputs>,
    /// The strips for handles.
    pub bevelled_strips: Option<bevelled_strips::Inputs>,
    /// The strips of the wall cleat.
    pub wall_cleat: Option<wall_cleat::Inputs>,
    /// The wall.
    pub hanging: Option<hanging::Inputs>,
}
