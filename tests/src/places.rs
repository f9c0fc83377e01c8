//! What `cargo xtask test` has prepared, and where it says it is.

use crate::fault::{Fault, Outcome};
use std::path::PathBuf;

fn place(name: &'static str) -> Outcome<PathBuf> {
    std::env::var_os(name).filter(|value| !value.is_empty()).map(PathBuf::from).ok_or(Fault::NotPrepared { name })
}

/// The built web app.
pub fn web() -> Outcome<PathBuf> {
    place("SCANTLING_WEB")
}

/// The web app in one file.
///
/// # Errors
/// When the test run has not prepared it.
pub fn portable() -> Outcome<PathBuf> {
    place("SCANTLING_PORTABLE")
}

/// The native window's program.
pub fn app() -> Outcome<PathBuf> {
    place("SCANTLING_APP")
}

/// The folder that keeps screenshots.
pub fn artefacts() -> Outcome<PathBuf> {
    let folder = place("SCANTLING_ARTEFACTS")?;
    std::fs::create_dir_all(&folder)?;
    Ok(folder)
}

/// The accessibility checker, one script.
pub fn accessibility_checker() -> Outcome<PathBuf> {
    place("SCANTLING_AXE")
}
