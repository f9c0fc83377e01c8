//! `cargo xtask bench sheets`: how good and how fast sheet layouts are. The measuring is done by the tests' program
//! `measure_sheets`; here it gets what it needs.

use crate::halt::Halt;
use crate::{call, compiler, need, tree};
use std::path::PathBuf;
use std::process::Command;

/// Options that name a file.
const FILES: [&str; 2] = ["--instances", "--layouts"];

pub(crate) fn sheets(options: &[&str]) -> Result<(), Halt> {
    let mut more: Vec<String> = Vec::new();
    let mut give = |option: &str, path: PathBuf| more.extend([option.to_owned(), path.display().to_string()]);
    let only = options.iter().position(|option| *option == "--only").and_then(|at| options.get(at + 1).copied());
    let wants = |section: &str| !options.contains(&"--instances") && only.is_none_or(|only| only == section);
    if let Some(instances) = instances().filter(|_| !options.contains(&"--instances")) {
        give("--instances-there", instances);
    }
    if wants("library")
        && let Some(python) = python()
    {
        give("--python", python);
    }
    if wants("browser") {
        need::install(&[&need::BROWSER])?;
        give("--native", lay("Building the tries for this machine", call::cargo().args(["build", "--release"]), "")?);
        let mut command = compiler::BROWSER.cargo("build")?;
        give("--wasm", lay("Building the tries for the browser", command.args(["--profile", "web"]), ".wasm")?);
    }
    println!("{}", super::machine());
    let mut command = call::cargo();
    command.args(["run", "--quiet", "--release", "--package", "scantling-tests", "--bin", "measure_sheets", "--"]);
    call::run("Measuring sheet layouts", command.args(from_here(options)?).args(more))
}

/// The published instances, where they stand beside the repository.
fn instances() -> Option<PathBuf> {
    let beside = tree::root().parent()?.join("shared").join("data").join("bin-packing-2d");
    Some(beside.join("instances.jsonl")).filter(|path| path.is_file())
}

/// The options with their files as seen from where the command was given: the program runs in the repository's folder.
fn from_here(options: &[&str]) -> Result<Vec<String>, Halt> {
    let mut given = Vec::new();
    let mut is_file = false;
    for option in options {
        given.push(if is_file {
            let absolute = std::path::absolute(option);
            let absolute =
                absolute.map_err(|source| Halt::File { doing: "found", path: PathBuf::from(option), source })?;
            absolute.display().to_string()
        } else {
            (*option).to_owned()
        });
        is_file = FILES.contains(option);
    }
    Ok(given)
}

/// Builds the package of tries and gives the program.
fn lay(what: &str, command: &mut Command, ending: &str) -> Result<PathBuf, Halt> {
    let ending = if ending.is_empty() { std::env::consts::EXE_SUFFIX } else { ending };
    let name = format!("scantling-lay{ending}");
    let built = call::built(what, command.args(["--package", "scantling-lay"]))?;
    let program = built.into_iter().find(|path| path.file_name().is_some_and(|file| file == name.as_str()));
    program.ok_or_else(|| Halt::NotMade { what: what.to_owned(), made: name })
}

/// A Python of our own with the packing library in it, below the folder where cargo builds. Where none can be had, the
/// figures beside it are left out.
fn python() -> Option<PathBuf> {
    let home = tree::target().join("rectpack");
    let python = home.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    let has_it = || call::succeeds(Command::new(&python).args(["-c", "import rectpack"]));
    if has_it() {
        return Some(python);
    }
    println!("Fetching the packing library rectpack for Python, to measure beside it.");
    let made = call::on_path("python3").is_some()
        && call::succeeds(call::program("python3").args(["-m", "venv"]).arg(&home))
        && call::succeeds(Command::new(&python).args(["-m", "pip", "install", "--quiet", "rectpack"]));
    if made && has_it() {
        return Some(python);
    }
    println!("It cannot be had here: that takes python3 with venv and pip, and a registry of packages.");
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_named_from_where_the_command_was_given() {
        let here = std::env::current_dir().unwrap();
        let given = from_here(&["--instances", "a.jsonl", "--seconds", "2", "--layouts", "out"]).unwrap();
        let [a, out] = ["a.jsonl", "out"].map(|name| here.join(name).display().to_string());
        assert_eq!(given, ["--instances", &a, "--seconds", "2", "--layouts", &out]);
    }
}
