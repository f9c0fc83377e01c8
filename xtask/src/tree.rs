//! Where things stand in the repository.

use std::path::{Path, PathBuf};

/// The repository's own folder.
pub(crate) fn root() -> PathBuf {
    let xtask = Path::new(env!("CARGO_MANIFEST_DIR"));
    xtask.parent().unwrap_or(xtask).to_owned()
}

/// The web app, all of it: what a web server serves.
pub(crate) fn web() -> PathBuf {
    root().join("dist/web")
}

/// The web app in one file.
pub(crate) fn portable() -> PathBuf {
    root().join("dist/portable")
}

/// The same pages as the native window embeds them.
pub(crate) fn window() -> PathBuf {
    root().join("dist/window")
}

/// Where cargo builds.
pub(crate) fn target() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), |dir| root().join(dir))
}

/// All files below a folder, in the order of their paths.
pub(crate) fn files_below(folder: &Path) -> std::io::Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() { files.extend(files_below(&path)?) } else { files.push(path) }
    }
    files.sort();
    Ok(files)
}
