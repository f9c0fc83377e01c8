//! The programs that drive the app: started on a free port, and ended whatever happens; and the processes there are.

use crate::fault::{Fault, Outcome};
use std::fs;
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// A WebDriver that was started here, and ends with this value.
pub struct Driver {
    child: Child,
    port: u16,
}

/// A port that nobody had a moment ago.
///
/// # Errors
/// When the system gives none.
pub fn free_port() -> Outcome<u16> {
    Ok(TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port())
}

impl Driver {
    /// Starts a driver that was told to listen on `port`, and waits until it does, as well as what it starts itself and
    /// passes everything on to, on the port `behind`.
    ///
    /// # Errors
    /// When it cannot be started, or does not listen within half a minute.
    pub fn start(mut command: Command, port: u16, behind: Option<u16>) -> Outcome<Self> {
        let program = command.get_program().to_string_lossy().into_owned();
        let child = command
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|source| Fault::NotStarted { program: program.clone(), source })?;
        let mut driver = Self { child, port };
        let begun = Instant::now();
        let silent = |port: u16| TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_err();
        while silent(port) || behind.is_some_and(silent) {
            if begun.elapsed() > Duration::from_secs(30) || driver.child.try_wait()?.is_some() {
                return Err(Fault::NoAnswer { program });
            }
            std::thread::sleep(Duration::from_millis(10));
        }
        Ok(driver)
    }

    /// Where it listens.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// Its process.
    pub fn id(&self) -> u32 {
        self.child.id()
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // The gentle way first: a driver that is asked ends what it has started itself.
        let asked = Command::new("kill").arg(self.child.id().to_string()).status().is_ok_and(|status| status.success());
        let begun = Instant::now();
        while asked && begun.elapsed() < Duration::from_secs(5) {
            if matches!(self.child.try_wait(), Ok(Some(_))) {
                return;
            }
            std::thread::sleep(Duration::from_millis(10));
        }
        // Gone already is as good.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A process as `/proc` has it.
#[derive(Clone, Copy, Debug)]
pub struct Process {
    /// Its number.
    pub id: u32,
    /// Its parent's.
    pub parent: u32,
    /// Seconds after the system's start.
    pub begun: f64,
}

/// `/proc` counts in hundredths of a second, whatever the kernel's own clock.
const TICKS: f64 = 100.0;

/// Every process there is.
///
/// # Errors
/// When `/proc` cannot be read.
pub fn processes() -> Outcome<Vec<Process>> {
    let read = |id: u32| {
        let text = fs::read_to_string(format!("/proc/{id}/stat")).ok()?;
        // The name stands in brackets and may have spaces; the fields are counted after it, from the third.
        let fields: Vec<&str> = text.rsplit_once(')')?.1.split_whitespace().collect();
        Some(Process { id, parent: fields.get(1)?.parse().ok()?, begun: fields.get(19)?.parse::<f64>().ok()? / TICKS })
    };
    let ids = fs::read_dir("/proc")?.flatten().filter_map(|entry| entry.file_name().to_str()?.parse().ok());
    Ok(ids.filter_map(read).collect())
}

/// A process and all that it has started.
///
/// # Errors
/// When `/proc` cannot be read.
pub fn family(id: u32) -> Outcome<Vec<u32>> {
    let all = processes()?;
    let mut family = vec![id];
    let mut at = 0;
    while let Some(parent) = family.get(at).copied() {
        family.extend(all.iter().filter(|process| process.parent == parent).map(|process| process.id));
        at += 1;
    }
    Ok(family)
}

/// Kills a process and all that it has started, at once and with no word to any of them.
///
/// # Errors
/// When `/proc` cannot be read, or there is nothing to kill with.
pub fn kill(id: u32) -> Outcome {
    let family = family(id)?;
    // Some of them may end by themselves in between.
    Command::new("kill").arg("-9").args(family.iter().map(u32::to_string)).stderr(Stdio::null()).status()?;
    Ok(())
}
