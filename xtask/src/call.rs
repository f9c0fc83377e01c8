//! Calling other programs: what failed is said by the words of the work, not by a command line.

use crate::halt::Halt;
use crate::tree;
use std::ffi::OsStr;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};
use std::thread::JoinHandle;

/// A program, run from the repository's folder.
pub(crate) fn program(name: impl AsRef<OsStr>) -> Command {
    let mut command = Command::new(name);
    command.current_dir(tree::root());
    command
}

/// The cargo that runs this program.
pub(crate) fn cargo() -> Command {
    program(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// Runs to the end; `what` names the work in the sentence of a failure.
pub(crate) fn run(what: &str, command: &mut Command) -> Result<(), Halt> {
    let status = command.status().map_err(|source| not_started(command, source))?;
    if status.success() { Ok(()) } else { Err(Halt::Unsuccessful { what: what.to_owned(), status }) }
}

/// A program that runs beside others.
pub(crate) struct Begun(JoinHandle<std::io::Result<Output>>, String);

/// Begins a program whose words are kept until it is asked for them.
pub(crate) fn begun(command: &mut Command) -> Result<Begun, Halt> {
    let child = command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn();
    let child = child.map_err(|source| not_started(command, source))?;
    // Read all the while, or it would wait for somebody to listen.
    let program = command.get_program().to_string_lossy().into_owned();
    Ok(Begun(std::thread::spawn(|| child.wait_with_output()), program))
}

impl Begun {
    /// Waits for its end and shows what it said; `what` names the work in the sentence of a failure.
    pub(crate) fn told(self, what: &str) -> Result<(), Halt> {
        let Self(running, program) = self;
        let ended = running.join().unwrap_or_else(|_| Err(std::io::ErrorKind::Other.into()));
        let output = ended.map_err(|source| not_started(&Command::new(program), source))?;
        print!("{}{}", String::from_utf8_lossy(&output.stderr), String::from_utf8_lossy(&output.stdout));
        if output.status.success() {
            Ok(())
        } else {
            Err(Halt::Unsuccessful { what: what.to_owned(), status: output.status })
        }
    }
}

/// Whether a command runs and succeeds; nothing is shown.
pub(crate) fn succeeds(command: &mut Command) -> bool {
    command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// What a command prints, without the end of the line; `None` if it fails.
pub(crate) fn says(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).stderr(Stdio::null()).output().ok()?;
    let said = String::from_utf8(output.stdout).ok()?;
    output.status.success().then(|| said.trim_end().to_owned())
}

/// Where a program of this name is on the path.
pub(crate) fn on_path(name: &str) -> Option<PathBuf> {
    std::env::split_paths(&std::env::var_os("PATH")?).map(|folder| folder.join(name)).find(|file| file.is_file())
}

/// Runs a `cargo build` and gives the files it made, wherever cargo puts them.
pub(crate) fn built(what: &str, command: &mut Command) -> Result<Vec<PathBuf>, Halt> {
    command.arg("--message-format=json-render-diagnostics").stdout(Stdio::piped());
    let mut child = command.spawn().map_err(|source| not_started(command, source))?;
    let files = child.stdout.take().map(|out| made(BufReader::new(out))).unwrap_or_default();
    let status = child.wait().map_err(|source| not_started(command, source))?;
    if status.success() { Ok(files) } else { Err(Halt::Unsuccessful { what: what.to_owned(), status }) }
}

fn made(messages: impl BufRead) -> Vec<PathBuf> {
    messages
        .lines()
        .map_while(Result::ok)
        .filter_map(|line| serde_json::from_str::<serde_json::Value>(&line).ok())
        .filter(|message| message["reason"] == "compiler-artifact")
        .filter_map(|message| message["filenames"].as_array().cloned())
        .flatten()
        .filter_map(|file| file.as_str().map(PathBuf::from))
        .collect()
}

pub(crate) fn not_started(command: &Command, source: std::io::Error) -> Halt {
    Halt::NotStarted { program: command.get_program().display().to_string(), source }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_read_from_cargos_messages_and_other_lines_are_not() {
        let messages = concat!(
            "{\"reason\":\"build-script-executed\",\"out_dir\":\"x\"}\n",
            "something else\n",
            "{\"reason\":\"compiler-artifact\",\"filenames\":[\"a.wasm\",\"a.d\"]}\n",
            "{\"reason\":\"compiler-artifact\",\"filenames\":[\"b.rlib\"]}\n",
        );
        assert_eq!(made(messages.as_bytes()), ["a.wasm", "a.d", "b.rlib"].map(PathBuf::from));
    }
}
