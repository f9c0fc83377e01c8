use super::*;
use crate::measure::Reading;
use proptest::prelude::*;

fn shed() -> Job {
    Job::new("  Potting shed ", &Inputs::default())
}

fn wide(typed: &str) -> Inputs {
    Inputs { width: Reading::mm(typed), ..Inputs::default() }
}

#[test]
fn a_job_reads_back_as_it_was_written() {
    let shed = shed();
    assert_eq!(shed.name, "Potting shed");
    assert_eq!(shed.cabinet(), Inputs::default());
    assert_eq!(Job::read(&shed.text()), Ok(shed.clone()));
    let other = Job::new("Hall", &wide("31 1/2 in"));
    let file = write_file(&[shed.clone(), other.clone()]);
    assert_eq!(read_file(&file), Ok(vec![shed.clone(), other]));
    assert_eq!(read_file(&format!("\u{FEFF}{file}")).map(|jobs| jobs.len()), Ok(2));
    assert_eq!(read_file(&write_file(&[])), Ok(vec![]));
}

#[test]
fn what_is_not_known_stays() {
    let text = json!({
        "name": "Newer",
        "colour": [1, { "deep": true }],
        "cards": {
            "cabinet": {
                "width": "700",
                "drawers": { "count": 3 },
                "carcass": { "material": "plywood_birch", "thickness": "15", "lot": "A7" },
            },
            "stool": { "legs": 3 },
        },
    });
    let mut job = Job::read(&text.to_string()).unwrap();
    assert_eq!(job.cabinet().width.typed(), "700");
    job.set_cabinet(&wide("640"));
    job.rename("Newer still");
    let again: Value = serde_json::from_str(&job.text()).unwrap();
    assert_eq!(again["name"], "Newer still");
    assert_eq!(again["colour"], text["colour"]);
    assert_eq!(again["cards"]["stool"], text["cards"]["stool"]);
    let cabinet = &again["cards"]["cabinet"];
    assert_eq!(cabinet["width"], "640");
    assert_eq!(cabinet["drawers"], json!({ "count": 3 }));
    assert_eq!(cabinet["carcass"]["lot"], "A7");
    // What is known follows the new inputs, not the old ones.
    assert_eq!(cabinet["carcass"]["thickness"], serde_json::to_value(Inputs::default().carcass.thickness).unwrap());
}

/// A material of one's own is written as an object, one of the table as a word: the one's fields must not get into the
/// other.
#[test]
fn a_known_field_that_goes_does_not_come_back() {
    let (mut old, known, mut next) =
        (json!({ "a": { "own": 1 } }), json!({ "a": { "own": 1 } }), json!({ "a": "word" }));
    keep_unknown(&old, &known, &mut next);
    assert_eq!(next, json!({ "a": "word" }));
    old["a"]["more"] = json!(2);
    let mut next = json!({ "a": { "other": 3 } });
    keep_unknown(&old, &known, &mut next);
    assert_eq!(next, json!({ "a": { "other": 3, "more": 2 } }));
}

/// More than anybody has, each with all of its work ticked off.
#[test]
fn as_many_jobs_as_anybody_has_are_read_back() {
    let ticked = Inputs { done: (0..300).collect(), done_of: "0123456789abcdef".into(), ..Inputs::default() };
    let jobs = vec![Job::new("Potting shed", &ticked); 5_000];
    assert_eq!(read_file(&write_file(&jobs)).map(|jobs| jobs.len()), Ok(5_000));
}

#[test]
fn a_name_is_cut_where_it_gets_too_long() {
    let job = Job::new(&"ä".repeat(500), &Inputs::default());
    assert_eq!(job.name.chars().count(), LONGEST_NAME);
}

#[test]
fn what_is_no_file_of_jobs_is_told_from_one() {
    let job = |cabinet: Value| json!({ "scantling": 1, "jobs": [{ "name": "x", "cards": { "cabinet": cabinet } }] });
    for (text, want) in [
        (String::new(), "This file is empty"),
        ("\u{FEFF} \n".to_owned(), "This file is empty"),
        ("{\n".to_owned(), "breaks off at line 2"),
        (write_file(&[Job::new("Shed", &Inputs::default())])[..900].to_owned(), "breaks off at line 1"),
        ("{\"scantling\": 1,\n jobs: []}".to_owned(), "line 2 at letter 2 is not JSON"),
        ("[]".to_owned(), "no “scantling” number"),
        (r#"{"jobs": []}"#.to_owned(), "no “scantling” number"),
        (r#"{"scantling": 1}"#.to_owned(), "no list of “jobs”"),
        (r#"{"scantling": "1", "jobs": []}"#.to_owned(), "no “scantling” number"),
        (r#"{"scantling": 2, "jobs": []}"#.to_owned(), "form 2"),
        (r#"{"scantling": 1, "jobs": [7]}"#.to_owned(), "Job 1 cannot be read: it is not an object"),
        (r#"{"scantling": 1, "jobs": [{"cards": {}}]}"#.to_owned(), "no “name”"),
        (r#"{"scantling": 1, "jobs": [{"name": "x"}]}"#.to_owned(), "no “cabinet”"),
        (job(json!(7)).to_string(), "no “cabinet”"),
        (
            job(json!({ "height": "700", "width": {} })).to_string(),
            "what its cabinet has for “width” is not understood",
        ),
        (job(json!({ "corners": "round" })).to_string(), "has for “corners” is not understood"),
        ("[".repeat(100_000), "not JSON"),
        (" ".repeat(MOST_BYTES + 1), "more than 32 MB"),
    ] {
        let told = read_file(&text).unwrap_err().to_string();
        assert!(told.contains(want), "{told}");
    }
}

#[test]
fn marks_tell_inputs_apart() {
    assert_eq!(text_mark("640"), text_mark("640"));
    assert_ne!(text_mark("640"), text_mark("641"));
}

/// Any JSON, a few levels deep.
fn json_value() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        ".{0,12}".prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 40, 6, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            proptest::collection::btree_map("[a-z_]{1,8}|cards|cabinet|name|width|carcass|jobs", inner, 0..6)
                .prop_map(|fields| Value::Object(fields.into_iter().collect())),
        ]
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn no_text_makes_it_panic(text in ".{0,400}") {
        let _ = read_file(&text);
    }

    #[test]
    fn no_json_makes_it_panic(value in json_value()) {
        let _ = Job::read(&value.to_string());
        let _ = read_file(&json!({ "scantling": 1, "jobs": [value] }).to_string());
    }

    /// A good file, broken anywhere: what is still read is read back the same once written.
    #[test]
    fn a_broken_file_is_refused_or_read_whole(at in 0.0..1.0_f64, put in proptest::option::of(any::<char>()), gone in 0..40_usize) {
        let mut text: Vec<char> = write_file(&[shed(), Job::new("Hall", &wide("700"))]).chars().collect();
        #[expect(clippy::cast_precision_loss, clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a place in a text")]
        let from = (at * text.len() as f64) as usize;
        let to = (from + gone).min(text.len());
        text.splice(from..to, put);
        let text: String = text.into_iter().collect();
        if let Ok(jobs) = read_file(&text) {
            prop_assert_eq!(read_file(&write_file(&jobs)), Ok(jobs));
        }
    }

    /// Fields of any kind that nobody knows come through, and the cabinet can be changed beside them.
    #[test]
    fn unknown_fields_survive(
        at_job in proptest::collection::btree_map("x_[a-z]{1,6}", json_value(), 0..4),
        at_inputs in proptest::collection::btree_map("x_[a-z]{1,6}", json_value(), 0..4),
        at_board in proptest::collection::btree_map("x_[a-z]{1,6}", json_value(), 0..4),
    ) {
        let mut value: Value = serde_json::from_str(&shed().text()).unwrap();
        let put = |to: &mut Value, fields: &std::collections::BTreeMap<String, Value>| {
            for (name, field) in fields {
                to[name] = field.clone();
            }
        };
        put(&mut value, &at_job);
        put(&mut value["cards"]["cabinet"], &at_inputs);
        put(&mut value["cards"]["cabinet"]["door"], &at_board);
        // A number is read back as it was written, not as it was made.
        let text = value.to_string();
        let value: Value = serde_json::from_str(&text).unwrap();
        let mut jobs = read_file(&write_file(&[Job::read(&text).unwrap()])).unwrap();
        jobs[0].set_cabinet(&wide("640"));
        let again: Value = serde_json::from_str(&jobs[0].text()).unwrap();
        let mut want = value;
        want["cards"]["cabinet"]["width"] = json!("640");
        prop_assert_eq!(again, want);
    }
}
