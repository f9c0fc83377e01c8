//! What the end-to-end checks are told: where the app is, and what they may use.

use crate::halt::Halt;
use crate::{call, need, npm, tree, web};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Installs what the end-to-end checks drive the app with.
pub(crate) fn install() -> Result<(), Halt> {
    need::install(&[&need::WEB_VIEW, &need::NPM, &need::BROWSER, &need::WINDOW_DRIVER])?;
    npm::install()?;
    if !is_there("tauri-driver") {
        println!("Missing: tauri-driver, which lets the tests type into the window. Building it with cargo.");
        let mut command = call::cargo();
        command.args(["install", "tauri-driver", "--version", "^2", "--locked", "--quiet"]);
        call::run("Installing tauri-driver", &mut command)?;
    }
    Ok(())
}

/// Tells a command where everything is.
pub(crate) fn tell<'a>(command: &'a mut Command, app: &Path) -> &'a mut Command {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let with_cargos = std::env::join_paths(std::env::split_paths(&path).chain(cargo_programs()));
    command
        .env("PATH", with_cargos.unwrap_or(path))
        .env("SCANTLING_WEB", tree::web())
        .env("SCANTLING_PORTABLE", tree::portable().join(web::PORTABLE))
        .env("SCANTLING_APP", app)
        .env("SCANTLING_ARTEFACTS", tree::target().join("artefacts"))
        .env("SCANTLING_AXE", npm::axe())
}

fn is_there(program: &str) -> bool {
    call::on_path(program).is_some() || cargo_programs().is_some_and(|folder| folder.join(program).is_file())
}

/// Where `cargo install` puts programs, which need not be on the path.
fn cargo_programs() -> Option<PathBuf> {
    let home = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = home.or_else(|| Some(PathBuf::from(std::env::var_os("HOME")?).join(".cargo")))?;
    Some(home.join("bin"))
}
