//! What every card is asked: its demo, and inputs that reach every branch of its working.

use serde_json::{Map, Value, json};

/// Fields with the values that each takes in turn; every combination is asked. The other fields are the demo's.
pub(crate) fn rounds(slug: &str) -> Vec<Value> {
    match slug {
        "convert" => vec![json!({
            "readings": [["15 mm"], ["23 5/8 in"], ["1234.56"], ["-7.3"], ["1/3 mm"], ["17.6"], ["0"], ["18.25"]],
            "graduation": ["mm", "half_mm", "tenth_mm", "eighth", "sixteenth", "sixty_fourth"],
            "rounding": ["nearest", "not_over", "not_under"],
        })],
        "cabinet" => vec![
            json!({
                "size_from": ["outside", "opening", "inside"],
                "stands": ["cleat", "rail", "plinth", "legs"],
                "lie": ["full", "inset"],
                "back": ["groove", "planted"],
                "loose_shelves": ["0", "3"],
            }),
            json!({ "handle": [{ "pull": "strip", "set_in": "3" }], "hooks": [{ "count": "4" }] }),
            json!({ "outside": [{ "at": "left" }, { "at": "right", "brackets": "3" }, { "at": "under", "brackets": "6" }] }),
        ],
        "back-panel" => vec![
            json!({
                "sheet": ["plywood", "mdf", "own"],
                "left": [edge("groove", "8"), edge("rabbet", "10 ± 0.2"), edge("held_short", "3")],
                "bottom": [edge("past_edge", "18"), edge("groove", "8"), edge("held_short", "2")],
                "clearance": ["2", "1/16 in"],
            }),
            json!({ "division": ["equal"], "count": ["2", "3"], "seams": ["vertical", "horizontal"] }),
            json!({ "division": ["scraps"] }),
            json!({
                "first_diagonal": ["900", "902.5"],
                "second_diagonal": ["900", "899"],
                "swing": ["0", "30", "100"],
            }),
        ],
        "shelf" => shelf(),
        "clothes-rail" => clothes_rail(),
        "spacing" => vec![
            json!({
                "even": ["gaps", "centres"],
                "ends": ["gap", "half", "piece", "own"],
                "by": ["count"],
                "count": ["1", "2", "7", "12"],
                "datum": ["0", "12.5"],
            }),
            json!({
                "even": ["gaps", "centres"],
                "ends": ["gap", "half", "piece", "own"],
                "by": ["largest_gap"],
                "largest_gap": ["20", "55", "100", "378", "800", "3 3/8 in"],
                "end": ["50", "22.5"],
            }),
        ],
        "wood-movement" => vec![
            json!({
                "set": ["grooves", "gap", "slots"],
                "held": ["middle", "one_edge"],
                "by": ["air", "meter"],
                "grain": ["flat_sawn", "quarter_sawn", "along"],
                "species": ["oak_white", "own"],
                "to_screw": ["", "100"],
            }),
            json!({ "by": ["meter"], "made_moisture": ["6", "10", "14"], "set": ["grooves", "gap", "slots"] }),
            json!({ "made": [climate("30", "15"), climate("80", "25")], "set": ["grooves", "slots"] }),
        ],
        "sheet-layout" => vec![json!({
            "kerf": ["0", "3.2", "1/8 in"],
            "trim": ["0", "5"],
            "sheet_length": ["2440", "8 ft"],
            "parts": [["Side 1170 × 330 × 2"], ["Shelf 23 5/8 in × 300 mm × 7", "Strip 300 × 590 × 16"]],
        })],
        "bevelled-strips" => vec![json!({
            "shape": ["parallelogram", "trapezoid", "cleat_pair"],
            "measured_at": ["wide_face", "narrow_face", "mid_thickness"],
            "first_edge": ["square", "bevelled"],
            "bevel": ["0", "22.5", "45"],
            "planing": ["0", "0.4"],
            "wanted": ["", "2"],
        })],
        "angles" => vec![
            json!({ "job": ["right_angle"], "width": ["864", "200"], "height": ["712", "34 in"] }),
            json!({ "job": ["right_angle"], "first_diagonal": ["1120", "1119"], "second_diagonal": ["1118", "1124"] }),
            json!({ "job": ["slope"], "rise": ["150", "7 in"], "run": ["600", "3 ft"] }),
            json!({
                "job": ["sides"],
                "stand": ["flat", "upright", "leaning"],
                "sides": ["3", "4", "6", "8"],
                "lean": ["0", "15", "60"],
                "board_width": ["40", "3 in"],
            }),
            json!({ "job": ["taper"], "edges": ["one", "both"], "narrow": ["28", "10"], "jig_arm": ["300", "450"] }),
        ],
        "groove" => vec![json!({
            "cut": ["groove", "rabbet"],
            "deep": ["third", "half", "two_thirds", "own"],
            "against": ["near_edge", "far_edge"],
            "panel": ["2.9", "5.7", "6.1", "9 ± 0.2"],
            "part_width": ["", "330"],
        })],
        "hole-rows" => vec![
            json!({
                "first": ["balanced", "given"],
                "doors": ["in_front", "inset"],
                "rear": ["balanced", "steps", "own", "none"],
                "height": ["1169.2", "700", "27 3/4 in"],
                "depth": ["330", "290", "580"],
                "pitch": ["32", "25"],
            }),
            json!({ "front_setback": ["37", "280"], "rear": ["none"], "hinges": [["584.6"], []] }),
        ],
        "cup-hinge" => vec![
            json!({
                "find": ["overlay", "plate_height", "cup_edge", "constant"],
                "mounting": ["full", "half", "inset"],
                "wish": ["gap", "overlay"],
                "doors": ["one", "two"],
                "hinges": ["", "3"],
                "door_weight": ["", "12.5"],
            }),
            json!({ "opening_width": ["550", "620", "700"], "doors": ["one"], "material": ["mdf", "own"] }),
            json!({ "find": ["overlay"], "plate_height": ["0", "3", "9"], "mounting": ["full", "half", "inset"] }),
        ],
        "joints" => vec![
            json!({
                "kind": ["dowel", "loose_tenon", "biscuit", "connecting_screw", "pocket_screw"],
                "meeting": ["face", "edge"],
                "spread": ["even", "steps"],
                "count": ["", "4"],
                "edge_thickness": ["14.6", "19"],
                "face_thickness": ["14.6", "19"],
                "from_end": ["0", "100"],
                "face_depth": ["", "9"],
            }),
            json!({
                "kind": ["connecting_screw", "pocket_screw"],
                "screw_length": ["", "32", "50"],
                "shoulder": ["", "18"],
                "edge_thickness": ["18"],
                "face_thickness": ["18", "25"],
            }),
        ],
        "wall-cleat" => vec![json!({
            "back": ["inset", "flush"],
            "bevel": ["20", "45", "50"],
            "thickness": ["14.6", "3/4 in"],
            "strip_height": ["40", "70", "100"],
            "slack": ["0", "0.5"],
        })],
        "hanging" => hanging(),
        "materials" => materials(),
        _ => panic!("{slug} is a new card: say here what it is to be asked"),
    }
}

fn shelf() -> Vec<Value> {
    vec![
        json!({
            "support": ["loose", "fixed_both_ends", "fixed_one_end", "one_divider", "two_dividers"],
            "load": ["contents", "per_metre", "middle"],
            "strip": ["none", "front", "front_and_back", "under"],
            "material": ["plywood_birch", "mdf", "own"],
            "strip_material": ["pine_scots", "own"],
            "share": ["100", "40"],
        }),
        json!({ "grain": ["along", "across"], "thickness": ["12", "18", "3/4 in"], "span": ["600", "1200", "4 ft"] }),
        json!({ "support": ["two_dividers", "fixed_one_end"], "load": ["middle"], "middle": ["0", "300"] }),
    ]
}

fn clothes_rail() -> Vec<Value> {
    vec![
        json!({
            "shape": ["round_tube", "oval_tube", "ellipse_tube", "round_bar", "flat_bar"],
            "brackets": ["none", "middle", "thirds"],
            "load": ["garments", "per_metre", "total"],
            "material": ["steel", "wood", "own"],
            "hung": ["sides", "top"],
            "width": ["15", "40"],
        }),
        json!({ "hung": ["top"], "bracket_drop": ["0", "32", "80"], "sheet": ["12", "14.6", "1 in"] }),
        json!({ "inside_depth": ["500", "610"], "drop": ["", "1100"], "own_strength": ["", "190"], "material": ["own"] }),
    ]
}

fn hanging() -> Vec<Value> {
    vec![
        json!({
            "weight": ["parts", "known"],
            "doors": ["none", "one", "two"],
            "shelves": ["0", "2"],
            "load": ["per_metre", "each"],
            "hung": ["cleat", "rail"],
            "fixing": ["wood_screw", "anchor"],
        }),
        json!({
            "screw": ["no6", "no8", "no10", "no12", "no14", "own"],
            "stud": ["spruce_pine_fir", "douglas_fir", "southern_pine", "own"],
            "screw_length": ["50", "80"],
            "bevel": ["20", "45", "60"],
        }),
        json!({ "grip": ["good", "fair", "poor"], "twist": ["0", "45"], "lift_to": ["900", "1800"] }),
        json!({ "fixing": ["anchor"], "rating": ["allowed", "failure"], "pull_rating": ["300 N", "", "0"] }),
    ]
}

fn materials() -> Vec<Value> {
    vec![
        json!({
            "sheets": ["", "3"],
            "density": ["", "680"],
            "material": ["plywood_birch", "own"],
            "sheet_waste": ["0", "15"],
            "thickness": ["14.6", "3/4 in"],
        }),
        json!({
            "sheet_parts": [[], ["500 × 400 × 3"]],
            "boards": [[], ["900 × 95 × 22 × 2", "8 ft × 4 in × 1/2 in"]],
            "edges": [[], ["1170 × 2"]],
            "joints": [[], ["330 × 14.6 × 8"]],
            "coat": ["nothing", "one_face", "both_faces"],
        }),
        json!({ "screws": [[], ["8 × 3"]], "pins": [[], ["16"]], "spare": ["0", "10"], "bottle": ["0.25", "0.1"] }),
        json!({ "coat": ["listed"], "faces": [["1170 × 330 × 20"]], "coats": ["1", "4"], "can": ["0.75", "2.5"] }),
        json!({ "edges": [["1170 × 2", "800 × 4"]], "band_extra": ["0", "40"], "roll": ["2 m", "10 m"] }),
    ]
}

fn edge(way: &str, depth: &str) -> Value {
    json!({ "way": way, "depth": depth })
}

fn climate(humidity: &str, temperature: &str) -> Value {
    json!({ "humidity": humidity, "temperature": temperature })
}

/// Every combination of a round.
pub(crate) fn combinations(round: &Value) -> Vec<Map<String, Value>> {
    let mut all = vec![Map::new()];
    for (field, values) in round.as_object().unwrap() {
        let values = values.as_array().unwrap();
        let with = |inputs: &Map<String, Value>, value: &Value| {
            let mut inputs = inputs.clone();
            inputs.insert(field.clone(), value.clone());
            inputs
        };
        all = all.iter().flat_map(|inputs| values.iter().map(move |value| with(inputs, value))).collect();
    }
    all
}
