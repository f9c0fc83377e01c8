//! Displays: whether there is one, and one without a screen for the tests.

use crate::call;
use crate::halt::Halt;
use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};

/// Whether a window can be opened here.
pub(crate) fn is_there() -> bool {
    let set = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    cfg!(not(target_os = "linux")) || set("DISPLAY") || set("WAYLAND_DISPLAY")
}

/// A display that nobody sees, until dropped.
pub(crate) struct Hidden {
    server: Child,
    /// What programs find in `DISPLAY`.
    name: String,
}

impl Hidden {
    /// Starts one under a number that nothing else uses.
    pub(crate) fn start() -> Result<Self, Halt> {
        let mut command = Command::new("Xvfb");
        // It picks the number itself and says it once it can be used.
        command.args(["-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp"]);
        let spawned = command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null()).spawn();
        let server = spawned.map_err(|source| call::not_started(&command, source))?;
        let mut display = Self { server, name: String::new() };
        let mut number = String::new();
        if let Some(said) = display.server.stdout.take() {
            BufReader::new(said).read_line(&mut number).map_err(|source| call::not_started(&command, source))?;
        }
        if number.trim().is_empty() {
            return Err(Halt::NotMade { what: "Xvfb".to_owned(), made: "a display".to_owned() });
        }
        display.name = format!(":{}", number.trim());
        Ok(display)
    }

    /// Lets a command open its windows here, and nowhere else.
    pub(crate) fn lend(&self, command: &mut Command) {
        command.env("DISPLAY", &self.name).env("GDK_BACKEND", "x11").env_remove("WAYLAND_DISPLAY");
    }
}

impl Drop for Hidden {
    fn drop(&mut self) {
        // It may have ended by itself, which is as well.
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_hidden_displays_have_numbers_of_their_own() {
        if call::on_path("Xvfb").is_none() {
            return;
        }
        let (one, other) = (Hidden::start().unwrap(), Hidden::start().unwrap());
        assert_ne!(one.name, other.name);
    }
}
