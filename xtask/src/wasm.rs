//! The compiler that makes WebAssembly: rustup's where it has the target, else Debian's.

use crate::halt::Halt;
use crate::{call, need};
use std::path::{Path, PathBuf};
use std::process::Command;

const TARGET: &str = "wasm32-unknown-unknown";

/// A `cargo` that builds for the browser, with what is missing for it installed first.
pub(crate) fn cargo_build() -> Result<Command, Halt> {
    let mut command = if rustup_has_target() || (!need::DEBIAN_RUST.is_there() && rustup_adds_target()) {
        call::cargo()
    } else {
        need::install(&[&need::DEBIAN_RUST])?;
        let mut command = debian_cargo("std,panic_abort");
        command.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", "wasm-ld");
        command
    };
    command.args(["build", "--target", TARGET]);
    Ok(command)
}

/// Debian's cargo and compiler, which build the standard library from its source along with the program.
/// Only this one command uses them: native code stays with rustup's.
pub(crate) fn debian_cargo(std_parts: &str) -> Command {
    let mut command = call::program("/usr/bin/cargo");
    command
        .env("CARGO", "/usr/bin/cargo")
        .env("RUSTC", "/usr/bin/rustc")
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_UNSTABLE_BUILD_STD", std_parts)
        .env_remove("RUSTUP_TOOLCHAIN")
        .env_remove("LD_LIBRARY_PATH");
    command
}

fn rustup_has_target() -> bool {
    call::says(call::program("rustc").args(["--print", "sysroot"]))
        .is_some_and(|sysroot| Path::new(&sysroot).join("lib/rustlib").join(TARGET).join("lib").is_dir())
}

fn rustup_adds_target() -> bool {
    if call::on_path("rustup").is_none() {
        return false;
    }
    println!("The browser's standard library is missing: asking rustup for {TARGET}.");
    call::succeeds(call::program("rustup").args(["target", "add", TARGET])) && rustup_has_target()
}

/// Where a `wasm-opt` is that knows today's WebAssembly, if there is one. Debian 12's own is too old.
pub(crate) fn optimiser() -> Option<PathBuf> {
    let path = call::on_path("wasm-opt")?;
    let said = call::says(Command::new(&path).arg("--version"))?;
    let version: u32 = said.split_whitespace().find_map(|word| word.parse().ok())?;
    (version >= 120).then_some(path)
}
