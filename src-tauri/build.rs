//! Makes the permissions of the page's commands, and sees that there are pages to embed.

use std::{fs, io, path::Path};

/// The pages as `cargo xtask build` leaves them for the window.
const PAGES: &str = "../dist/window";

fn main() -> Result<(), Box<dyn std::error::Error>> {
    stand_in(Path::new(PAGES))?;
    println!("cargo:rerun-if-changed={PAGES}");
    let commands = tauri_build::AppManifest::new().commands(&[
        "kept_all",
        "keep",
        "jobs",
        "save_job",
        "revisions",
        "revision",
        "remove_job",
        "forget_job",
        "back_up",
        "save_file",
    ]);
    tauri_build::try_build(tauri_build::Attributes::new().app_manifest(commands))?;
    Ok(())
}

/// On a fresh clone the shell is checked before any page is built, and Tauri refuses to embed nothing.
fn stand_in(pages: &Path) -> io::Result<()> {
    let index = pages.join("index.html");
    if index.exists() {
        return Ok(());
    }
    fs::create_dir_all(pages)?;
    fs::write(index, "<!doctype html><title>Scantling</title><p>The pages are not built: run cargo xtask run.</p>\n")
}
