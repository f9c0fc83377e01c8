//! Runs one scenario: starts the app, keeps a picture of the screen if it fails, and ends the app whatever happens.

use crate::fault::Outcome;
use crate::shell::{Kind, Shell};
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};

/// Runs a scenario in a shell that was never used before. The name is that of the picture kept if it fails.
///
/// # Errors
/// Those of the scenario.
pub fn play(name: &str, kind: Kind, scenario: impl AsyncFnOnce(&mut Shell) -> Outcome) -> Outcome {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    let mut shell = runtime.block_on(Shell::open(kind))?;
    let outcome = catch_unwind(AssertUnwindSafe(|| runtime.block_on(scenario(&mut shell))));
    if !matches!(outcome, Ok(Ok(()))) {
        if let Ok(words) = runtime.block_on(shell.last_words()) {
            eprintln!("{name} fails at {words}");
        }
        // The scenario's own failure is what matters; a picture that cannot be had says nothing new.
        let _ = runtime.block_on(shell.keep_picture(&format!("failed-{name}")));
    }
    let ended = runtime.block_on(shell.end());
    if let Err(error) = ended {
        // All that had to be seen was seen; what is left running ends with its driver.
        eprintln!("{name} was played, and the driver did not end it: {error}");
    }
    match outcome {
        Ok(outcome) => outcome,
        Err(panic) => resume_unwind(panic),
    }
}
