//! How good and how fast sheet layouts are: `cargo xtask bench sheets` builds this for speed and runs it.
//!
//! Every layout that is counted goes through the checker and the replay of the tests first.
//!
//! **Seconds** are those that the program had on a core, where the system says them (Linux does), so that a busy machine
//! does not count against it; elsewhere those of the clock on the wall.

mod asked;
mod browser;
mod classes;
mod clock;
mod library;
mod speed;

use asked::Asked;
use scantling_tests::sheets::{Flaw, Misstep};
use std::path::PathBuf;
use std::process::ExitCode;

/// Why a figure could not be had.
#[derive(Debug, thiserror::Error)]
enum Trouble {
    #[error("{}: {source}", path.display())]
    File { path: PathBuf, source: std::io::Error },
    #[error("{}: {source} in {line:?}", path.display())]
    Line { path: PathBuf, line: String, source: serde_json::Error },
    #[error("{id}: {source}")]
    Job { id: String, source: scantling::sheets::JobError },
    #[error("{id}: {source}")]
    Length { id: String, source: scantling::measure::LengthError },
    #[error("{id}: the layout is none: {source}")]
    Flaw { id: String, source: Flaw },
    #[error("{id}: the cuts do not make the layout: {source}")]
    Misstep { id: String, source: Misstep },
    #[error("{id}: {sheets} sheets, and no layout has fewer than {bound}: one of the two is wrong")]
    Bound { id: String, sheets: u64, bound: u64 },
    #[error("“{0}” says nothing to this command. It takes {taken}", taken = asked::TAKEN)]
    Option(String),
    #[error("--layouts takes the layouts of one kind: say --turn yes or --turn no too.")]
    BothTurns,
    #[error("The packing library: {0}")]
    Library(String),
    #[error("In the browser: {0}")]
    Browser(#[from] scantling_tests::fault::Fault),
    #[error("{what}: {source}")]
    NotStarted { what: String, source: std::io::Error },
    #[error("WebAssembly answers {wasm} and the native program {native}: they did not do the same")]
    Unlike { wasm: i64, native: i64 },
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match Asked::read(&words).and_then(|asked| measure(&asked)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("{trouble}");
            ExitCode::FAILURE
        }
    }
}

fn measure(asked: &Asked) -> Result<(), Trouble> {
    println!("seconds: {}; seed {}, runs {}", clock::name(), asked.seed, asked.runs);
    let instances = match &asked.instances {
        Some(path) => classes::read(path)?,
        None => Vec::new(),
    };
    if instances.is_empty() && asked.wants("classes") {
        println!("{}", classes::WHERE_FROM);
    }
    if asked.wants("classes") && !instances.is_empty() {
        classes::measure("published instances", &instances, asked)?;
    }
    if asked.alone {
        return Ok(());
    }
    if asked.wants("drawn") {
        classes::measure("instances drawn by the published rules", &classes::drawn(asked.seed), asked)?;
    }
    if asked.wants("speed") {
        speed::measure(asked.seed)?;
    }
    if asked.wants("library") {
        let drawn = classes::drawn(asked.seed);
        library::measure(if instances.is_empty() { &drawn } else { &instances }, asked)?;
    }
    if asked.wants("browser") {
        browser::measure(asked)?;
    }
    Ok(())
}
