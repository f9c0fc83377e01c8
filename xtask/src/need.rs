//! What a command needs that is not the project's own: is it there, why is it wanted, and how it is installed.

use crate::call;
use crate::halt::Halt;
use std::path::Path;
use std::process::Command;

/// One thing a machine may lack.
pub(crate) struct Need {
    what: &'static str,
    why: &'static str,
    there: fn() -> bool,
    /// Packages by system; a system without an entry has the thing by itself, or no package of it.
    debian: &'static str,
    fedora: &'static str,
    arch: &'static str,
    /// A whole command: macOS has no package manager of its own.
    mac: &'static str,
}

pub(crate) const DEBIAN_RUST: Need = Need {
    what: "a Rust compiler that builds the browser's standard library from source",
    why: "the pages run as WebAssembly, and rustup could not add the target wasm32-unknown-unknown",
    there: || {
        let source = Path::new("/usr/lib/rustlib/src/rust/library/std/Cargo.toml");
        source.is_file() && Path::new("/usr/bin/cargo").is_file() && call::on_path("wasm-ld").is_some()
    },
    debian: "rustc-web cargo-web rust-web-src lld",
    fedora: "rust-std-static-wasm32-unknown-unknown",
    arch: "rust-wasm",
    mac: "rustup target add wasm32-unknown-unknown",
};

pub(crate) const WEB_VIEW: Need = Need {
    what: "a C compiler and WebKitGTK's development files",
    why: "the native window shows the pages with WebKit, and the job database is compiled from C",
    there: || {
        cfg!(not(target_os = "linux"))
            || (call::on_path("cc").is_some()
                && call::succeeds(Command::new("pkg-config").args(["--exists", "webkit2gtk-4.1"])))
    },
    debian: "gcc libc6-dev pkg-config libwebkit2gtk-4.1-dev",
    fedora: "gcc pkgconf webkit2gtk4.1-devel",
    arch: "gcc pkgconf webkit2gtk-4.1",
    mac: "xcode-select --install",
};

pub(crate) const NPM: Need = Need {
    what: "node and npm",
    why: "the accessibility checker, the bundler and the icon maker come from npm",
    there: || call::on_path("npm").is_some() && call::on_path("node").is_some(),
    debian: "nodejs npm",
    fedora: "nodejs npm",
    arch: "nodejs npm",
    mac: "brew install node",
};

pub(crate) const BROWSER: Need = Need {
    what: "Chromium and its WebDriver",
    why: "the end-to-end tests type into the real pages",
    there: || call::on_path("chromium").is_some() && call::on_path("chromedriver").is_some(),
    debian: "chromium chromium-driver",
    fedora: "chromium chromedriver",
    arch: "chromium",
    mac: "brew install --cask chromium chromedriver",
};

pub(crate) const WINDOW_DRIVER: Need = Need {
    what: "WebKitGTK's WebDriver and a display without a screen",
    why: "the end-to-end tests type into the real window",
    there: || call::on_path("WebKitWebDriver").is_some() && call::on_path("Xvfb").is_some(),
    debian: "webkit2gtk-driver xvfb",
    fedora: "webkit2gtk-driver xorg-x11-server-Xvfb",
    arch: "webkit2gtk-4.1 xorg-server-xvfb",
    mac: "",
};

impl Need {
    pub(crate) fn is_there(&self) -> bool {
        (self.there)()
    }
}

/// Installs what is missing: on Debian by itself, elsewhere it says the commands and stops.
pub(crate) fn install(needs: &[&Need]) -> Result<(), Halt> {
    let missing: Vec<&Need> = needs.iter().copied().filter(|need| !need.is_there()).collect();
    if missing.is_empty() {
        return Ok(());
    }
    println!("Missing on this machine:");
    for need in &missing {
        println!("  {} ({}), because {}.", need.what, need.debian, need.why);
    }
    let system = System::here();
    let root = root();
    if let (System::Debian, Some(root)) = (system, root) {
        println!(
            "Installing with apt-get{}.",
            if root == Root::Sudo { ", which asks for root through sudo" } else { "" }
        );
        apt_get(root, &["update", "-q"])?;
        let packages = missing.iter().flat_map(|need| need.debian.split(' '));
        let arguments: Vec<&str> =
            ["install", "-y", "-q", "--no-install-recommends"].into_iter().chain(packages).collect();
        apt_get(root, &arguments)?;
    }
    let still: Vec<&Need> = missing.into_iter().filter(|need| !need.is_there()).collect();
    if still.is_empty() { Ok(()) } else { Err(Halt::Lacking { commands: commands(system, &still) }) }
}

/// The systems whose commands are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum System {
    /// Debian 12 or newer: the one where installing is done here.
    Debian,
    /// The same packages under apt-get, not tried there.
    LikeDebian,
    Fedora,
    Arch,
    Mac,
    Other,
}

impl System {
    fn here() -> Self {
        if cfg!(target_os = "macos") {
            return Self::Mac;
        }
        std::fs::read_to_string("/etc/os-release").map_or(Self::Other, |release| Self::read(&release))
    }

    /// Reads an `/etc/os-release`.
    fn read(release: &str) -> Self {
        let value = |name: &str| {
            let line = release.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix('='));
            line.map(|value| value.trim_matches('"').to_owned()).unwrap_or_default()
        };
        let (id, like) = (value("ID"), value("ID_LIKE"));
        let is = |name: &str| id == name || like.split(' ').any(|word| word == name);
        // Debian's testing has no number: newer than every one that has.
        let version = value("VERSION_ID").parse::<u32>();
        match () {
            () if id == "debian" && version.is_ok_and(|version| version < 12) => Self::LikeDebian,
            () if id == "debian" => Self::Debian,
            () if is("debian") => Self::LikeDebian,
            () if is("fedora") => Self::Fedora,
            () if is("arch") => Self::Arch,
            () => Self::Other,
        }
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Root {
    Already,
    Sudo,
}

/// How this person can be root, if at all.
fn root() -> Option<Root> {
    if call::says(Command::new("id").arg("-u")).as_deref() == Some("0") {
        Some(Root::Already)
    } else {
        call::on_path("sudo").map(|_| Root::Sudo)
    }
}

fn apt_get(root: Root, arguments: &[&str]) -> Result<(), Halt> {
    let mut command = match root {
        Root::Already => call::program("env"),
        Root::Sudo => {
            let mut sudo = call::program("sudo");
            sudo.arg("env");
            sudo
        }
    };
    command.args(["DEBIAN_FRONTEND=noninteractive", "apt-get"]).args(arguments);
    call::run("Installing with apt-get", &mut command)
}

/// The commands that a person types to get what is missing.
fn commands(system: System, missing: &[&Need]) -> String {
    let list = |packages: fn(&Need) -> &'static str| {
        missing.iter().map(|need| packages(need)).filter(|names| !names.is_empty()).collect::<Vec<_>>()
    };
    let indent = |line: &str| format!("    {line}\n");
    match system {
        System::Debian | System::LikeDebian => {
            let packages = list(|need| need.debian).join(" ");
            indent("sudo apt-get update")
                + &indent(&format!("sudo apt-get install -y --no-install-recommends {packages}"))
        }
        System::Fedora => indent(&format!("sudo dnf install -y {}", list(|need| need.fedora).join(" "))),
        System::Arch => indent(&format!("sudo pacman -S --needed {}", list(|need| need.arch).join(" "))),
        System::Mac => list(|need| need.mac).into_iter().map(indent).collect(),
        System::Other => {
            let packages = list(|need| need.debian).join(" ");
            format!("    (install what Debian calls: {packages})\n")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn systems_are_read_from_their_release_file() {
        for (release, want) in [
            ("ID=debian\nVERSION_ID=\"12\"", System::Debian),
            ("ID=debian\nVERSION_ID=\"11\"", System::LikeDebian),
            ("PRETTY_NAME=\"Debian testing\"\nID=debian", System::Debian),
            ("ID=ubuntu\nID_LIKE=debian\nVERSION_ID=\"24.04\"", System::LikeDebian),
            ("ID=linuxmint\nID_LIKE=\"ubuntu debian\"", System::LikeDebian),
            ("ID=fedora\nVERSION_ID=42", System::Fedora),
            ("ID=manjaro\nID_LIKE=arch", System::Arch),
            ("ID=haiku", System::Other),
            ("", System::Other),
        ] {
            assert_eq!(System::read(release), want, "{release}");
        }
    }

    #[test]
    fn commands_name_every_missing_package_of_the_system() {
        let missing = [&NPM, &WINDOW_DRIVER];
        assert_eq!(
            commands(System::LikeDebian, &missing),
            "    sudo apt-get update\n    sudo apt-get install -y --no-install-recommends nodejs npm webkit2gtk-driver xvfb\n"
        );
        assert_eq!(commands(System::Mac, &missing), "    brew install node\n");
        assert_eq!(
            commands(System::Arch, &missing),
            "    sudo pacman -S --needed nodejs npm webkit2gtk-4.1 xorg-server-xvfb\n"
        );
    }
}
