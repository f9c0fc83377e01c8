//! Builds, runs and tests Scantling.

mod call;
mod css;
mod halt;
mod need;
mod precache;
mod serve;
mod tree;
mod wasm;
mod web;

use halt::Halt;
use std::process::ExitCode;

const HELP: &str = "\
Scantling, a shop calculator for cabinetmakers. What would you like to do?

  cargo xtask build           Make the web app: one folder, dist/web, for any web server
  cargo xtask serve [--port N]
                              Serve that app to this machine's browser, and say the address

What a command needs and this machine lacks is installed first, after saying what and why.";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match obey(&words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(halt) => {
            eprintln!("{halt}");
            ExitCode::FAILURE
        }
    }
}

fn obey(words: &[&str]) -> Result<(), Halt> {
    match *words {
        [] | ["help" | "--help" | "-h"] => {
            println!("{HELP}");
            Ok(())
        }
        ["build"] => web::build(),
        ["serve"] => serve::serve(None),
        ["serve", "--port", port] => {
            serve::serve(Some(port.parse().map_err(|_| Halt::UnknownOption(port.to_owned()))?))
        }
        ["build" | "serve", option, ..] => Err(Halt::UnknownOption(option.to_owned())),
        [command, ..] => Err(Halt::UnknownCommand(command.to_owned())),
    }
}
