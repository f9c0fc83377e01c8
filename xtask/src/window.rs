//! The native window's program.

use crate::halt::Halt;
use crate::{call, need};
use std::path::PathBuf;
use std::process::Command;

const WHAT: &str = "Building the window";

/// Builds it for use on this machine and gives its path. The pages must be built before.
pub(crate) fn build() -> Result<PathBuf, Halt> {
    need::install(&[&need::WEB_VIEW])?;
    built_by(call::cargo().args(["build", "--package", "scantling-app"]))
}

/// Builds it along with everything that is tested. By itself its dependencies would get fewer features than the
/// tests ask of them, and half of them would be compiled twice.
pub(crate) fn build_with_tests() -> Result<PathBuf, Halt> {
    built_by(call::cargo().args(["build", "--workspace", "--all-targets"]))
}

fn built_by(command: &mut Command) -> Result<PathBuf, Halt> {
    let program = format!("scantling-app{}", std::env::consts::EXE_SUFFIX);
    call::built(WHAT, command)?
        .into_iter()
        .find(|file| file.file_name().is_some_and(|name| name == program.as_str()))
        .ok_or_else(|| Halt::NotMade { what: WHAT.to_owned(), made: program })
}
