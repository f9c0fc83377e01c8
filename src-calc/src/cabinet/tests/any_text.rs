//! Whatever is typed into whichever field: nothing panics, and what is refused is refused at a field of the cabinet.

use super::*;
use crate::cards::joints::Kind;
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::Value;

/// What people type by mistake, half typed, or to see what happens.
const ODD: &[&str] = &[
    "",
    " ",
    "0",
    "-1",
    "-0.5",
    "ten",
    "1,200",
    "600\n800",
    "± 100",
    "600 ± 100",
    "18 ± 20",
    "1e9",
    "1e300",
    "99999999999999999999",
    "0.000001",
    "1/3",
    "1/999983",
    "17/16 in",
    "4",
    "12",
    "40",
    "60",
    "350",
    "1200",
    "4999",
    "1 km",
    "12 in",
    "3'",
    "1/0",
    "((",
    "√2",
    "50 kg",
    "45",
];

/// Every field into which something is typed, as a problem names it, with its place as serde has it.
fn fields() -> Vec<(String, String)> {
    let Ok(whole) = serde_json::to_value(Inputs::default()) else { return Vec::new() };
    let mut fields = Vec::new();
    let mut add = |name: String| {
        let place = format!("/{}", name.replace('.', "/"));
        let mut tried = whole.clone();
        let Some(field) = tried.pointer_mut(&place).filter(|field| field.is_string()) else { return };
        // A choice reads only its own words.
        *field = "ten".into();
        if serde_json::from_value::<Inputs>(tried).is_ok() && name != "done_of" {
            fields.push((name, place));
        }
    };
    for (name, value) in whole.as_object().into_iter().flatten() {
        add(name.clone());
        for below in value.as_object().into_iter().flatten().map(|(below, _)| below) {
            add(format!("{name}.{below}"));
        }
    }
    fields
}

prop_compose! {
    /// Every way of building, so that every field counts in some.
    fn built()(
        size_from in select(SizeFrom::ALL),
        corners in select(Corners::ALL),
        back in select(Back::ALL),
        stands in select(Stands::ALL),
        doors in select(Doors::ALL),
        lie in select(Lie::ALL),
        edging in select(Edging::ALL),
        joint in select(Kind::ALL),
        past_bottom in any::<bool>(),
        (own, pull, outside) in (any::<bool>(), select(Pull::ALL), select(Beside::ALL)),
    ) -> Inputs {
        let mut inputs =
            Inputs { size_from, corners, back, stands, doors, lie, edging, joint, past_bottom, ..Inputs::default() };
        inputs.handle.pull = pull;
        inputs.outside.at = outside;
        if own {
            inputs.hooks.count = "5".into();
        }
        if own {
            inputs.door.material = crate::stock::materials::Choice::Own;
            inputs.shelf.material = crate::stock::materials::Choice::Own;
        }
        inputs
    }
}

fn typed() -> impl Strategy<Value = String> {
    prop_oneof![
        6 => select(ODD).prop_map(str::to_owned),
        2 => (0_u32..30_000).prop_map(|tenths| format!("{}.{}", tenths / 10, tenths % 10)),
        1 => "\\PC*",
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 600, ..ProptestConfig::default() })]

    #[test]
    fn whatever_is_typed_is_answered_or_refused_at_its_field(
        inputs in built(),
        typed in prop::collection::vec((any::<prop::sample::Index>(), typed()), 1..9),
    ) {
        let fields = fields();
        let mut value = serde_json::to_value(&inputs).unwrap_or_default();
        for (at, text) in &typed {
            let (_, place) = &fields[at.index(fields.len())];
            if let Some(field) = value.pointer_mut(place) {
                *field = Value::String(text.clone());
            }
        }
        let inputs: Inputs = serde_json::from_value(value).map_err(|error| TestCaseError::fail(error.to_string()))?;
        let answered = solve(&inputs).and_then(|cabinet| costs(&inputs, &cabinet).map(drop));
        if let Err(problems) = answered {
            for (name, problem) in problems.iter() {
                let known = fields.iter().any(|(field, _)| field == name);
                prop_assert!(known, "{name:?}: {problem} for {typed:?}");
            }
        }
    }
}

/// The list of fields is the whole of it: what nothing is typed into is a choice, or what is done.
#[test]
fn every_field_is_typed_into() {
    let fields = fields();
    assert!(fields.len() > 40, "{fields:?}");
    for name in ["width", "kerf", "carcass.thickness", "carcass.price", "bevel", "load", "own_density", "screws"] {
        assert!(fields.iter().any(|(field, _)| field == name), "{name}");
    }
    assert!(!fields.iter().any(|(field, _)| field.ends_with("material")));
}

/// More than a saw takes, more than a board bears: named where it was typed.
#[test]
fn what_is_absurd_is_refused_where_it_was_typed() {
    let refused = |change: fn(&mut Inputs), field: &str| {
        let mut inputs = Inputs::default();
        change(&mut inputs);
        let Err(problems) = solve(&inputs) else { panic!("{field} was taken") };
        assert!(problems.iter().all(|(name, _)| name == field), "{field}: {problems:?}");
    };
    refused(|inputs| inputs.kerf = Reading::mm("1200"), "kerf");
    // On legs and with its back planted on nothing of the cabinet itself asks for the kerf, but the sheets do.
    let mut unasked = Inputs { stands: Stands::Legs, back: Back::Planted, ..Inputs::default() };
    for kerf in ["13", "12 ft", "-3", "1e300", "three"] {
        unasked.kerf = Reading::mm(kerf);
        let at = solve(&unasked).err().map(|problems| problems.iter().map(|(name, _)| name.to_owned()).collect());
        assert_eq!(at, Some(vec!["kerf".to_owned()]), "{kerf}");
    }
    // Seven lengths whose divisors have nothing in common: their sum cannot be held, and the finest is to be rounded.
    refused(
        |inputs| {
            inputs.width = Reading::mm("830 1/999983");
            inputs.height = Reading::mm("1170 1/999979");
            inputs.depth = Reading::mm("350 1/999961");
            inputs.carcass.thickness = Reading::mm("14 1/999959");
            inputs.groove_depth = Reading::mm("6 1/999953");
            inputs.clearance = Reading::mm("2 1/999931");
            inputs.reveal = Reading::mm("1 1/999917");
            inputs.gap = Reading::mm("3 1/999907");
        },
        "height",
    );
}
