//! The cards of a cabinet, opened with its own measurements.

use super::goods::layout;
use super::{Cabinet, Inputs};
use serde::Serialize;
use serde_json::Value;

/// What a sheet layout takes over: the rest, such as offcuts that were put by, stays as it is there.
const LAYOUT: [&str; 7] = ["parts", "sheet_name", "sheet_length", "sheet_width", "sheet_price", "sheets", "kerf"];

/// Each card's slug, with the inputs that it takes over, in the order of the job.
pub fn handed(inputs: &Inputs, cabinet: &Cabinet) -> Vec<(&'static str, Value)> {
    let asked = &cabinet.asked;
    let mut layout = serde_json::to_value(layout(inputs, cabinet)).unwrap_or_default();
    if let Value::Object(fields) = &mut layout {
        fields.retain(|name, _| LAYOUT.contains(&name.as_str()));
    }
    let cards = [
        ("back-panel", told(asked.back_panel.as_ref())),
        ("shelf", told(asked.shelf.as_ref())),
        ("clothes-rail", told(asked.clothes_rail.as_ref())),
        ("sheet-layout", Some(layout)),
        ("groove", told(asked.groove.as_ref())),
        ("hole-rows", told(asked.hole_rows.as_ref())),
        ("cup-hinge", told(asked.cup_hinge.as_ref())),
        ("joints", told(asked.joints.as_ref())),
        ("bevelled-strips", told(asked.bevelled_strips.as_ref())),
        ("wall-cleat", told(asked.wall_cleat.as_ref())),
        ("hanging", told(asked.hanging.as_ref())),
    ];
    cards.into_iter().filter_map(|(slug, inputs)| Some((slug, inputs?))).collect()
}

fn told<I: Serialize>(inputs: Option<&I>) -> Option<Value> {
    serde_json::to_value(inputs?).ok()
}
