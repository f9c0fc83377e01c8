//! Asking the cards: a cabinet works out nothing that a card does.

use crate::measure::{Length, Range, Reading};
use crate::problem::Problems;

/// A length as a card takes it.
pub(super) fn reading(length: Length) -> Reading {
    Reading::mm(&length.to_string())
}

/// A measured length as a card takes it.
pub(super) fn ranged(range: Range) -> Reading {
    if range.is_exact() {
        return reading(range.nominal());
    }
    Reading::mm(&format!("{} ± {}", range.nominal(), range.tolerance()))
}

/// A card's answer; what it finds wrong is named as the cabinet's own fields, by pairs of the card's name and ours.
/// What has no field here is wrong with the cabinet as a whole.
pub(super) fn answered<T>(result: Result<T, Problems>, names: &[(&str, &str)]) -> Result<T, Problems> {
    result.map_err(|theirs| {
        let mut ours = Problems::default();
        for (field, problem) in theirs.iter() {
            let name = names.iter().find(|(theirs, _)| *theirs == field).map_or("", |(_, ours)| ours);
            ours.add(name, problem.clone());
        }
        ours
    })
}
