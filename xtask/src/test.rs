//! `cargo xtask test`: everything that is checked before a change is taken.

use crate::display::Hidden;
use crate::halt::{AtFile, Halt};
use crate::{call, need, prepared, tree, web, window};
use std::collections::BTreeSet;
use std::path::Path;
use std::time::Instant;

/// The checks that drive the running app; everything else needs only a compiler.
const END_TO_END: [&str; 2] = ["browser", "window"];

/// Runs all checks; the quick ones alone leave out the running app.
pub(crate) fn test(quick: bool) -> Result<(), Halt> {
    let mut steps = Steps { started: Instant::now(), now: 0, all: if quick { 5 } else { 8 } };
    steps.next("Look for what is missing", || {
        if quick { need::install(&[&need::WEB_VIEW]) } else { prepared::install() }
    })?;
    steps.next("Format", || call::run("The format check", call::cargo().args(["fmt", "--all", "--check"])))?;
    steps.next("Clippy, warnings denied", clippy)?;
    let app = if quick {
        None
    } else {
        steps.next("Web app", web::build)?;
        Some(steps.next("Window, and all tests", window::build_with_tests)?)
    };
    steps.next("Examples in the documentation", || {
        call::run("Testing the documentation", call::cargo().args(["test", "--workspace", "--doc", "--quiet"]))
    })?;
    steps.next("Unit, property, handbook, geometry and repository tests", || {
        let mut command = call::cargo();
        command.args(["test", "--workspace", "--lib", "--bins", "--benches", "--examples"]);
        for name in integration_tests(&tree::root())?.iter().filter(|name| !END_TO_END.contains(&name.as_str())) {
            command.args(["--test", name]);
        }
        call::run("The tests", &mut command)
    })?;
    if let Some(app) = app {
        steps.next("In Chromium and in the window", || end_to_end(&app))?;
    }
    Ok(())
}

fn clippy() -> Result<(), Halt> {
    let mut command = call::cargo();
    command.args(["clippy", "--workspace", "--all-targets", "--", "--deny", "warnings"]);
    call::run("Clippy", &mut command)?;
    // The fuzz targets are a workspace of their own. To be looked at they need no fuzzer, nor the compiler that makes one.
    let mut command = call::cargo();
    command.args(["clippy", "--manifest-path", "src-calc/fuzz/Cargo.toml", "--target-dir", "target"]);
    command.args(["--", "--deny", "warnings"]).env("CUSTOM_LIBFUZZER_PATH", "none/libfuzzer.a");
    call::run("Clippy of the fuzz targets", &mut command)
}

/// Both suites at once: the one waits for windows most of the time. What the second says is shown when the first is done.
fn end_to_end(app: &Path) -> Result<(), Halt> {
    let display = Hidden::start()?;
    let command = |name: &str| {
        let mut command = call::cargo();
        command.args(["test", "--workspace", "--test", name]);
        display.lend(prepared::tell(&mut command, app));
        command
    };
    let [shown, kept] = END_TO_END;
    let second = call::begun(&mut command(kept))?;
    let first = call::run("The tests in Chromium", &mut command(shown));
    let second = second.told("The tests in the window");
    first.and(second)
}

/// The names of all integration tests of the workspace.
fn integration_tests(root: &Path) -> Result<BTreeSet<String>, Halt> {
    let mut names = BTreeSet::new();
    for room in ["src-calc", "src-ui", "src-tauri", "tests", "xtask"] {
        let folder = root.join(room).join("tests");
        if !folder.is_dir() {
            continue;
        }
        for entry in folder.read_dir().at("read", &folder)? {
            let path = entry.at("read", &folder)?.path();
            let is_test = path.join("main.rs").is_file() || path.extension().is_some_and(|extension| extension == "rs");
            names.extend(path.file_stem().filter(|_| is_test).map(|name| name.display().to_string()));
        }
    }
    Ok(names)
}

/// Says which step is running, of how many, and how long each took.
struct Steps {
    started: Instant,
    now: u8,
    all: u8,
}

impl Steps {
    fn next<T>(&mut self, name: &str, work: impl FnOnce() -> Result<T, Halt>) -> Result<T, Halt> {
        self.now += 1;
        let (now, all, before) = (self.now, self.all, self.started.elapsed().as_secs());
        println!("[{now}/{all}] {name} ({}:{:02} so far)", before / 60, before % 60);
        work()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_integration_tests_are_found_by_their_place() {
        let root = std::env::temp_dir().join(format!("scantling-test-{}", std::process::id()));
        for path in [
            "tests/tests/browser/main.rs",
            "tests/tests/browser/offline.rs",
            "tests/tests/shared/rows.csv",
            "src-calc/tests/reading.rs",
            "src-calc/tests/reading.proptest-regressions",
            "src-calc/src/tests/unit.rs",
        ] {
            let path = root.join(path);
            std::fs::create_dir_all(path.parent().unwrap()).unwrap();
            std::fs::write(path, "").unwrap();
        }
        let names = integration_tests(&root);
        std::fs::remove_dir_all(&root).unwrap();
        assert_eq!(names.unwrap().into_iter().collect::<Vec<_>>(), ["browser", "reading"]);
    }
}
