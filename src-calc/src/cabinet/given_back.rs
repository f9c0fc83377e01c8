//! What a card that was opened from the cabinet gives back to it.

use super::Inputs;
use crate::as_text;
use serde_json::Value;

/// Each card's slug, and the inputs that it shares with the cabinet: the card's own, then the cabinet's, as pointers
/// into their JSON.
const SHARED: &[(&str, &[(&str, &str)])] = &[
    ("back-panel", &[("/clearance", "/clearance"), ("/left/depth", "/groove_depth")]),
    (
        "shelf",
        &[
            ("/material", "/shelf/material"),
            ("/thickness", "/shelf/thickness"),
            ("/per_metre", "/load"),
            ("/own_density", "/own_density"),
        ],
    ),
    ("sheet-layout", &[("/sheet_length", "/sheet_length"), ("/sheet_width", "/sheet_width"), ("/kerf", "/kerf")]),
    (
        "groove",
        &[
            ("/panel", "/back_board/thickness"),
            ("/fit", "/groove_fit"),
            ("/depth", "/groove_depth"),
            ("/kerf", "/kerf"),
        ],
    ),
    (
        "hole-rows",
        &[
            ("/thickness", "/carcass/thickness"),
            ("/door_thickness", "/door/thickness"),
            ("/hole", "/holes/pin"),
            ("/hole_depth", "/holes/pin_depth"),
        ],
    ),
    (
        "cup-hinge",
        &[
            ("/reveal", "/reveal"),
            ("/gap", "/gap"),
            ("/cup_edge", "/cup_edge"),
            ("/cup_diameter", "/holes/cup"),
            ("/cup_depth", "/holes/cup_depth"),
            ("/door_thickness", "/door/thickness"),
            ("/material", "/door/material"),
        ],
    ),
    (
        "joints",
        &[
            ("/kind", "/joint"),
            ("/dowel_diameter", "/joint_sizes/dowel_diameter"),
            ("/dowel_length", "/joint_sizes/dowel_length"),
            ("/tenon_thickness", "/joint_sizes/tenon_thickness"),
            ("/tenon_width", "/joint_sizes/tenon_width"),
            ("/tenon_length", "/joint_sizes/tenon_length"),
            ("/biscuit", "/joint_sizes/biscuit"),
            ("/screw_length", "/joint_sizes/screw_length"),
            ("/core", "/joint_sizes/core"),
            ("/shank", "/joint_sizes/shank"),
            ("/spacing", "/joint_sizes/spacing"),
        ],
    ),
    (
        "clothes-rail",
        &[
            ("/shape", "/rail/shape"),
            ("/diameter", "/rail/diameter"),
            ("/height", "/rail/height"),
            ("/width", "/rail/width"),
            ("/wall", "/rail/wall"),
            ("/material", "/rail/material"),
            ("/wood", "/rail/wood"),
            ("/garments", "/rail/garments"),
            ("/hanger", "/rail/hanger"),
        ],
    ),
    (
        "wall-cleat",
        &[
            ("/thickness", "/strip/thickness"),
            ("/strip_height", "/strip_height"),
            ("/bevel", "/bevel"),
            ("/slack", "/slack"),
            ("/kerf", "/kerf"),
            ("/top_at", "/top_at"),
            ("/ceiling", "/ceiling"),
        ],
    ),
    (
        "hanging",
        &[
            ("/count", "/screws"),
            ("/stud_pitch", "/stud_pitch"),
            ("/stud", "/stud"),
            ("/screw", "/screw"),
            ("/screw_length", "/screw_length"),
            ("/per_metre", "/load"),
            ("/bevel", "/bevel"),
            ("/ceiling", "/ceiling"),
            ("/own_density", "/own_density"),
        ],
    ),
];

/// The hinge constant, which the cabinet has one of for each way that a door lies.
fn arm(slug: &str, handed: &Value) -> Option<(&'static str, &'static str)> {
    let mounting = handed.pointer("/mounting")?.as_str().filter(|_| slug == "cup-hinge")?;
    let arm = match mounting {
        "full" => "/arm",
        "half" => "/half_arm",
        "inset" => "/inset_arm",
        _ => return None,
    };
    Some(("/constant", arm))
}

/// The cabinet's inputs with what was changed on a card since it was opened from the cabinet, and how many of its
/// inputs that are. Nothing where no input that both have was changed.
///
/// `handed` are the card's inputs as it took them over, `now` as they are.
pub fn given_back(slug: &str, handed: &Value, now: &Value, inputs: &Inputs) -> Option<(Inputs, u32)> {
    let (_, shared) = SHARED.iter().find(|(card, _)| *card == slug)?;
    let mut cabinet = serde_json::to_value(inputs).ok()?;
    let mut changed = 0;
    for (own, cabinets) in shared.iter().copied().chain(arm(slug, handed)) {
        let (Some(before), Some(value)) = (handed.pointer(own), now.pointer(own)) else { continue };
        let Some(place) = cabinet.pointer_mut(cabinets).filter(|_| value != before) else { continue };
        *place = value.clone();
        changed += 1;
    }
    let given = as_text::fit(&cabinet)?;
    (changed > 0).then_some((given, changed))
}

#[cfg(test)]
mod tests {
    use super::super::{handed, solve};
    use super::*;
    use crate::measure::Reading;
    use serde_json::json;

    /// What each card is handed by a cabinet.
    fn all_handed(inputs: &Inputs) -> Vec<(&'static str, Value)> {
        handed(inputs, &solve(inputs).unwrap())
    }

    /// Another value of the same kind, that the cabinet can be built with.
    fn another(value: &Value) -> Value {
        match value.as_str().unwrap() {
            "plywood_birch" => json!("mdf"),
            "dowel" => json!("biscuit"),
            "spruce_pine_fir" => json!("hem_fir"),
            "no10" => json!("no12"),
            "no20" => json!("no0"),
            "round_tube" => json!("oval_tube"),
            "steel" => json!("brass"),
            "ash_european" => json!("beech_european"),
            "coats" => json!("shirts"),
            "" => json!("40"),
            number => {
                let number: f64 = number.split([' ', '±']).next().unwrap().parse().unwrap();
                json!((number + 0.25).to_string())
            }
        }
    }

    /// Every shared input arrives in the cabinet, and the card is handed it again.
    #[test]
    fn what_is_given_back_is_handed_over_again() {
        // Deep and high enough for coats, in a bay of their own.
        let inputs = Inputs {
            depth: Reading::mm("650"),
            height: Reading::mm("1700"),
            bays: "2".into(),
            rail_bay: "2".into(),
            ..Inputs::default()
        };
        let before = all_handed(&inputs);
        let mut seen = 0;
        for (slug, shared) in SHARED {
            let (_, handed) = before.iter().find(|(card, _)| card == slug).unwrap();
            for (own, cabinets) in *shared {
                let mut now = handed.clone();
                let value = match (*own, handed.pointer(own).unwrap()) {
                    // Screws come by the piece.
                    ("/count", _) => json!("5"),
                    (_, value) => another(value),
                };
                *now.pointer_mut(own).unwrap() = value.clone();
                let (given, changed) = given_back(slug, handed, &now, &inputs).unwrap();
                assert_eq!(changed, 1, "{slug} {own}");
                assert_eq!(serde_json::to_value(&given).unwrap().pointer(cabinets), Some(&value), "{slug} {own}");
                let after = all_handed(&given);
                let again = after.iter().find(|(card, _)| card == slug).unwrap().1.pointer(own).unwrap().clone();
                let bare = |value: &Value| value.as_str().unwrap().trim_end_matches(" mm").to_owned();
                assert_eq!(bare(&again), bare(&value), "{slug} {own}");
                seen += 1;
            }
        }
        assert!(seen > 35, "{seen}");
    }

    /// Whatever way the doors lie, the constant arrives where that way's is.
    #[test]
    fn the_hinge_constant_goes_to_its_own_arm() {
        use super::super::Lie;
        for (lie, arm) in [(Lie::Full, "/arm"), (Lie::Half, "/half_arm"), (Lie::Inset, "/inset_arm")] {
            let inputs = Inputs { lie, ..Inputs::default() };
            let all = all_handed(&inputs);
            let (_, handed) = all.iter().find(|(card, _)| *card == "cup-hinge").unwrap();
            let mut now = handed.clone();
            now["constant"] = another(&handed["constant"]);
            let (given, changed) = given_back("cup-hinge", handed, &now, &inputs).unwrap();
            assert_eq!(changed, 1, "{lie:?}");
            assert_eq!(serde_json::to_value(&given).unwrap().pointer(arm), Some(&now["constant"]), "{lie:?}");
            let again = all_handed(&given);
            let (_, again) = again.iter().find(|(card, _)| *card == "cup-hinge").unwrap();
            assert_eq!(again["constant"], now["constant"], "{lie:?}");
        }
    }

    #[test]
    fn what_was_not_changed_is_not_given_back() {
        let inputs = Inputs::default();
        for (slug, handed) in all_handed(&inputs) {
            assert_eq!(given_back(slug, &handed, &handed, &inputs), None, "{slug}");
            let mut other = handed.clone();
            other["nobody's"] = json!("7");
            assert_eq!(given_back(slug, &handed, &other, &inputs), None, "{slug}");
        }
        assert_eq!(given_back("no such card", &json!({}), &json!({}), &inputs), None);
    }
}
