//! Any text, as a file of jobs and as the cabinet of one: nothing panics or hangs, and what was read is written as a file
//! that reads back the same.
//!
//! From `src-calc`, with `cargo install cargo-fuzz` done once:
//!
//! ```text
//! cargo +nightly fuzz run jobs -- -dict=fuzz/jobs.dict -max_len=4096 -max_total_time=60
//! ```
//!
//! Without a nightly compiler, `RUSTC_BOOTSTRAP=1 cargo fuzz run jobs …` does.
//! A text that fails becomes a row of the job's tests; the corpus itself is not kept.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling::cabinet::{Inputs, costs, solve};
use scantling::job::{read_file, write_file};

fn check(text: &str) {
    let Ok(jobs) = read_file(text) else { return };
    assert_eq!(read_file(&write_file(&jobs)).as_ref(), Ok(&jobs));
    for job in &jobs {
        let inputs: Inputs = job.cabinet();
        // What is saved as it was changes nothing of what is not known here.
        let mut same = job.clone();
        same.set_cabinet(&inputs);
        assert_eq!(same.cabinet(), inputs);
        if let Ok(cabinet) = solve(&inputs) {
            let _ = costs(&inputs, &cabinet);
        }
    }
}

fuzz_target!(|text: &str| {
    check(text);
    // Few texts come upon the form of a file by chance.
    check(&format!(r#"{{"scantling":1,"jobs":[{{"name":"Shed","cards":{{"cabinet":{text}}}}}]}}"#));
});
