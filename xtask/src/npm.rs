//! The tools that come from npm, in the versions of `tests/package-lock.json`.

use crate::halt::Halt;
use crate::{call, need, tree};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::SystemTime;

/// Installs them where they are missing or of another lock file.
pub(crate) fn install() -> Result<(), Halt> {
    need::install(&[&need::NPM])?;
    let tests = tree::root().join("tests");
    let changed = |path: &Path| path.metadata().and_then(|data| data.modified()).unwrap_or(SystemTime::UNIX_EPOCH);
    // npm writes the first of these last of all.
    let (done, wanted) = (packages().join(".package-lock.json"), tests.join("package-lock.json"));
    if done.is_file() && changed(&done) >= changed(&wanted) {
        return Ok(());
    }
    println!("Fetching the accessibility checker, the bundler and the icon maker from npm.");
    call::run("Fetching packages from npm", call::program("npm").arg("ci").arg("--no-progress").current_dir(tests))
}

/// The accessibility checker: one script, to be run inside a page.
pub(crate) fn axe() -> PathBuf {
    packages().join("axe-core/axe.min.js")
}

/// Tauri's own command, which bundles and makes icons.
pub(crate) fn tauri() -> Command {
    let mut command = call::program(packages().join(".bin/tauri"));
    command.current_dir(tree::root().join("src-tauri"));
    command
}

fn packages() -> PathBuf {
    tree::root().join("tests/node_modules")
}
