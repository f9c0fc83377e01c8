//! Compilers for other machines than this one: rustup's where it has the target, else Debian's. The standard library
//! is built from its source along with the program where that makes a smaller page, or where there is no built one.

use crate::halt::Halt;
use crate::{call, need};
use std::path::{Path, PathBuf};
use std::process::Command;

/// The browser.
pub(crate) const BROWSER: Target = Target {
    name: "wasm32-unknown-unknown",
    std_parts: "std,panic_abort",
    linker: Some(("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", "wasm-ld")),
    small: &[
        // The page travels to phones: a standard library built for size, and no texts for panics that nobody reads.
        ("CARGO_UNSTABLE_BUILD_STD_FEATURES", "optimize_for_size"),
        (
            "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS",
            "-Zunstable-options -Cpanic=immediate-abort -Zlocation-detail=none -Zfmt-debug=none",
        ),
    ],
};

/// Phones with Android.
pub(crate) const ANDROID: Target =
    Target { name: "aarch64-linux-android", std_parts: "std,panic_abort,panic_unwind", linker: None, small: &[] };

/// A machine to compile for.
pub(crate) struct Target {
    name: &'static str,
    /// The parts of the standard library to build from its source.
    std_parts: &'static str,
    /// The linker that Debian's cargo has to be told of.
    linker: Option<(&'static str, &'static str)>,
    /// What makes the program small when the standard library is built along with it.
    small: &'static [(&'static str, &'static str)],
}

impl Target {
    /// A cargo command for this target, with what is missing for it installed first.
    pub(crate) fn cargo(&self, subcommand: &str) -> Result<Command, Halt> {
        let by_rustup = self.rustup_has_it() || (!need::DEBIAN_RUST.is_there() && self.rustup_adds_it());
        let mut command = if by_rustup {
            self.rustup_cargo()
        } else {
            need::install(&[&need::DEBIAN_RUST])?;
            self.debian_cargo()
        };
        command.args([subcommand, "--target", self.name]);
        Ok(command)
    }

    /// With the standard library that came built, unless one from its source makes a smaller page.
    fn rustup_cargo(&self) -> Command {
        let mut command = call::cargo();
        if !self.small.is_empty() {
            if source_is_there() || rustup_adds_source() {
                self.build_std(&mut command);
            } else {
                println!(
                    "The standard library's source is not to be had: the pages get larger, and are otherwise the same."
                );
            }
        }
        command
    }

    /// Set for this one command only: native code stays with rustup's compiler.
    fn debian_cargo(&self) -> Command {
        let mut command = call::program("/usr/bin/cargo");
        command
            .env("CARGO", "/usr/bin/cargo")
            .env("RUSTC", "/usr/bin/rustc")
            .envs(self.linker)
            // What the cargo that runs this program has set for its own compiler.
            .env_remove("RUSTUP_TOOLCHAIN")
            .env_remove("LD_LIBRARY_PATH");
        self.build_std(&mut command);
        command
    }

    fn build_std(&self, command: &mut Command) {
        command
            .env("RUSTC_BOOTSTRAP", "1")
            .env("CARGO_UNSTABLE_BUILD_STD", self.std_parts)
            .envs(self.small.iter().copied());
    }

    fn rustup_has_it(&self) -> bool {
        in_sysroot(&format!("{}/lib", self.name)).is_some_and(|folder| folder.is_dir())
    }

    fn rustup_adds_it(&self) -> bool {
        if call::on_path("rustup").is_none() {
            return false;
        }
        println!("Asking rustup for the standard library of {}.", self.name);
        call::succeeds(call::program("rustup").args(["target", "add", self.name])) && self.rustup_has_it()
    }
}

/// Where something of the compiler in use would be, by its path below the folder of its libraries.
fn in_sysroot(path: &str) -> Option<PathBuf> {
    let sysroot = call::says(call::program("rustc").args(["--print", "sysroot"]))?;
    Some(Path::new(&sysroot).join("lib/rustlib").join(path))
}

fn source_is_there() -> bool {
    in_sysroot("src/rust/library/std/Cargo.toml").is_some_and(|file| file.is_file())
}

fn rustup_adds_source() -> bool {
    if call::on_path("rustup").is_none() {
        return false;
    }
    println!("Asking rustup for the standard library's source, which makes the pages smaller.");
    call::succeeds(call::program("rustup").args(["component", "add", "rust-src"])) && source_is_there()
}

/// Where a `wasm-opt` is that knows today's WebAssembly, if there is one. Debian 12's own is too old.
pub(crate) fn wasm_optimiser() -> Option<PathBuf> {
    let path = call::on_path("wasm-opt")?;
    let said = call::says(Command::new(&path).arg("--version"))?;
    let version: u32 = said.split_whitespace().find_map(|word| word.parse().ok())?;
    (version >= 120).then_some(path)
}
