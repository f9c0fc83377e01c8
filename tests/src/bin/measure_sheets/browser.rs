//! WebAssembly in Chromium beside this machine's own code: one program, made for both, with the same tries.

use crate::Trouble;
use crate::asked::Asked;
use crate::clock::median;
use scantling_tests::fault::{Fault, Outcome};
use scantling_tests::shell::Shell;
use serde::Deserialize;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

/// So many runs of each; the middle one counts.
const RUNS: u32 = 5;
/// WebAssembly may take so many times as long.
const BAR: f64 = 2.5;

/// A page with nothing on it; `frame` is what the driver waits for.
const PAGE: &str = "<!doctype html><meta charset=utf-8><title>Tries</title><main class=frame></main>";

/// Every run begins with a memory of its own, as a new process does; the module is compiled once.
const RUN: &str = "
    const [runs, answer] = arguments;
    (async () => {
        const module = await WebAssembly.compileStreaming(fetch('lay.wasm'));
        const ran = [];
        for (let run = 0; run < runs; run += 1) {
            const { exports } = await WebAssembly.instantiate(module, {});
            const begun = performance.now();
            const ended = exports.main(0, 0);
            ran.push({ ended, ms: performance.now() - begun });
        }
        answer(ran);
    })().catch((error) => answer([{ ended: -1, ms: 0, error: String(error) }]));";

#[derive(Debug, Deserialize)]
struct Ran {
    ended: i64,
    ms: f64,
    error: Option<String>,
}

pub(crate) fn measure(asked: &Asked) -> Result<(), Trouble> {
    let (Some(wasm), Some(native)) = (&asked.wasm, &asked.native) else {
        println!("\nThere is nothing to run in a browser: `cargo xtask bench sheets` makes it.");
        return Ok(());
    };
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().map_err(Fault::from)?;
    // One after the other and again, so that what else the machine does falls on both.
    let (mut here, mut there) = (Vec::new(), Vec::new());
    for _ in 0..RUNS {
        here.push(run(native)?);
        there.extend(runtime.block_on(in_chromium(wasm))?);
    }
    if let Some(other) = there.iter().find(|ran| here.iter().any(|native| native.ended != ran.ended)) {
        let native = here.first().map_or(-1, |ran| ran.ended);
        return Err(Trouble::Unlike { wasm: other.ended, native });
    }
    let middle = |ran: &[Ran]| median(ran.iter().map(|ran| ran.ms).collect());
    let (native, wasm) = (middle(&here), middle(&there));
    let times = wasm / native;
    let verdict = if times <= BAR { "no more than" } else { "MORE than" };
    println!("\nthe same tries, {RUNS} runs each by turns, the middle one, on the wall");
    println!("  this machine's own code {native:>8.0} ms");
    println!("  WebAssembly in Chromium {wasm:>8.0} ms: {times:.2} times as long, {verdict} {BAR}");
    Ok(())
}

fn run(program: &Path) -> Result<Ran, Trouble> {
    let begun = Instant::now();
    let not_started = |source| Trouble::NotStarted { what: program.display().to_string(), source };
    let status = Command::new(program).status().map_err(not_started)?;
    let ms = begun.elapsed().as_secs_f64() * 1e3;
    Ok(Ran { ended: status.code().map_or(-1, i64::from), ms, error: None })
}

/// A new browser, and in it one run to be compiled by and one that counts.
async fn in_chromium(wasm: &Path) -> Outcome<Option<Ran>> {
    let folder = tempfile::tempdir()?;
    fs::write(folder.path().join("index.html"), PAGE)?;
    fs::copy(wasm, folder.path().join("lay.wasm"))?;
    let mut shell = Shell::browser(folder.path()).await?;
    let ran: Outcome<Vec<Ran>> = shell.ask_later(RUN, &[2.into()]).await;
    shell.end().await?;
    let mut ran = ran?;
    match ran.iter_mut().find_map(|ran| ran.error.take()) {
        Some(error) => Err(Fault::Wrong(error)),
        None => Ok(ran.pop()),
    }
}
