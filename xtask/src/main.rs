//! Builds, runs and tests Scantling.

mod android;
mod bench;
mod bundle;
mod call;
mod compiler;
mod css;
mod display;
mod halt;
mod icons;
mod need;
mod npm;
mod packing;
mod portable;
mod precache;
mod prepared;
mod run;
mod serve;
mod terse;
mod test;
mod tree;
mod web;
mod window;

use halt::Halt;
use std::process::ExitCode;

const HELP: &str = "\
Scantling, a shop calculator for cabinetmakers. What would you like to do?

To use it
  cargo xtask run                 Open it in a window, or in the browser where there is no display
  cargo xtask serve [--port N]    Serve it to this machine's browser, and say the address

To make it
  cargo xtask build               The web app: one folder, dist/web, for any web server
  cargo xtask portable            The web app in one HTML file, to be opened from a stick or a phone's own files
  cargo xtask bundle              The package that a desktop installs (.deb)
  cargo xtask icons               Every icon, from the one drawing icons/scantling.svg

To check it
  cargo xtask test [--quick]      Everything; --quick leaves out Chromium and the window
  cargo xtask bench               How fast and how large it is, and the machine's name
  cargo xtask bench sheets        How few sheets the layouts take, and how fast: [--instances FILE] [--seconds S]
                                  [--turn yes|no] [--layouts FILE] [--seed N] [--runs N]
                                  [--only classes|drawn|speed|library|browser]
  cargo xtask check-android       Whether it would compile for a phone

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
        ["run"] => run::run(),
        ["serve"] => run::serve(None),
        ["serve", "--port", port] => run::serve(Some(port.parse().map_err(|_| Halt::UnknownOption(port.to_owned()))?)),
        ["build"] => web::build(),
        ["portable"] => web::portable(),
        ["bundle"] => bundle::bundle(),
        ["icons"] => icons::icons(),
        ["test"] => test::test(false),
        ["test", "--quick"] => test::test(true),
        ["bench"] => bench::bench(),
        ["bench", "sheets", ref options @ ..] => bench::sheets::sheets(options),
        ["check-android"] => android::check(),
        [command, ..] if !HELP.contains(&format!("cargo xtask {command} ")) => {
            Err(Halt::UnknownCommand(command.to_owned()))
        }
        [_, ref options @ ..] => Err(Halt::UnknownOption(options.join(" "))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn unknown_words_are_answered_with_a_sentence() {
        for (words, want) in [
            (vec!["dance"], "No command is called “dance”. `cargo xtask` alone lists them."),
            (
                vec!["build", "--fast"],
                "“--fast” says nothing to this command. `cargo xtask` alone lists what each takes.",
            ),
            (
                vec!["serve", "--port", "x"],
                "“x” says nothing to this command. `cargo xtask` alone lists what each takes.",
            ),
        ] {
            assert_eq!(obey(&words).unwrap_err().to_string(), want);
        }
    }
}
