//! The native window's program.

use crate::halt::Halt;
use crate::{call, need};
use std::path::PathBuf;

/// Builds it for use on this machine and gives its path. The pages must be built before.
pub(crate) fn build() -> Result<PathBuf, Halt> {
    need::install(&[&need::WEB_VIEW])?;
    let what = "Building the window";
    let program = format!("scantling-app{}", std::env::consts::EXE_SUFFIX);
    call::built(what, call::cargo().args(["build", "--package", "scantling-app"]))?
        .into_iter()
        .find(|file| file.file_name().is_some_and(|name| name == program.as_str()))
        .ok_or_else(|| Halt::NotMade { what: what.to_owned(), made: program })
}
