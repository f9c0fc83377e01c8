//! The native window around the pages, and what it keeps for them.
//!
//! The page reaches the [`commands`] by `window.__TAURI_INTERNALS__.invoke(name, arguments)`, a promise. Every
//! Tauri page has it without a line of script more; whether it is there also tells the page that it is in a window.
//!
//! - `invoke("kept_all")` gives an object, key to text.
//! - `invoke("keep", { texts })`, pairs of key and text, keeps all of them or none.
//! - `jobs`, `save_job`, `revisions`, `revision`, `remove_job`, `forget_job` and `back_up` are those of [`kept::Kept`].
//! - `invoke("save_file", { name, text })` writes a new file and gives its path, see [`files::Files`].
//!
//! A refusal is `{ kind, message }`, see [`kept::KeepError`].
//!
//! `window.print()` is the web view's own, but on Apple's systems Tauri answers it, and asks for a permission.
//!
//! Two more things are deliberately absent: no Tauri permission beyond these, and no way for the page to leave its own
//! address.

pub mod commands;
pub mod files;
pub mod kept;

use files::Files;
use kept::Kept;
use std::path::PathBuf;
use tauri::{App, Manager, Url, WebviewWindowBuilder};

/// Where the data goes instead of the system's folder for it: for tests, and for a job database on a stick.
const DATA_DIR: &str = "SCANTLING_DATA_DIR";

/// Opens the window and stays until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let ran = tauri::Builder::default()
        .invoke_handler(tauri::generate_handler![
            commands::kept_all,
            commands::keep,
            commands::jobs,
            commands::save_job,
            commands::revisions,
            commands::revision,
            commands::remove_job,
            commands::forget_job,
            commands::back_up,
            commands::save_file,
        ])
        .setup(|app| Ok(open(app)?))
        .run(tauri::generate_context!());
    if let Err(error) = ran {
        eprintln!("The window could not be opened: {error}.");
        std::process::exit(1);
    }
}

fn open(app: &App) -> tauri::Result<()> {
    let (folder, files) = match std::env::var_os(DATA_DIR) {
        Some(folder) => (PathBuf::from(&folder), PathBuf::from(folder).join("files")),
        // Where the system knows of no such folder, what is kept is the next best place.
        None => {
            let folder = app.path().app_data_dir()?;
            let files = app.path().download_dir().unwrap_or_else(|_| folder.join("files"));
            (folder, files)
        }
    };
    app.manage(Kept::at(folder.join("scantling.db")));
    app.manage(Files::at(files));
    #[cfg(desktop)]
    remember_size(app, &folder)?;
    for window in &app.config().app.windows {
        WebviewWindowBuilder::from_config(app, window)?.on_navigation(is_own).build()?;
    }
    Ok(())
}

/// Opens the window as large as it was last time.
#[cfg(desktop)]
fn remember_size(app: &App, folder: &std::path::Path) -> tauri::Result<()> {
    use tauri_plugin_window_state::{Builder, StateFlags};
    // The plug-in joins this to its own folder; an absolute path takes its place.
    let size = folder.join("window.json").display().to_string();
    let remember = StateFlags::SIZE | StateFlags::MAXIMIZED;
    app.handle().plugin(Builder::default().with_filename(size).with_state_flags(remember).build())
}

/// Whether an address is one of the pages inside the app: nothing else is ever opened in its window.
fn is_own(address: &Url) -> bool {
    match address.scheme() {
        "tauri" => address.host_str() == Some("localhost"),
        // Windows and Android have no schemes of an app's own.
        "http" | "https" => address.host_str() == Some("tauri.localhost"),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_apps_own_pages_open_in_its_window() {
        for (address, want) in [
            ("tauri://localhost/index.html#/shelf", true),
            ("http://tauri.localhost/", true),
            ("https://tauri.localhost/", true),
            ("http://localhost/", false),
            ("https://example.org/", false),
            ("tauri://example.org/", false),
            ("file:///etc/passwd", false),
            ("data:text/html,x", false),
        ] {
            assert_eq!(is_own(&Url::parse(address).unwrap()), want, "{address}");
        }
    }
}
