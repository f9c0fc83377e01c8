//! The repository's files, as a maker's machine would have them: without what was built or installed.

use std::fs;
use std::path::{Path, PathBuf};

/// What was made, not written.
const MADE: &[&str] = &["target", "dist", "node_modules", ".git", "gen"];

/// A file that was written by hand, or is kept with what was.
pub(crate) struct Written {
    /// From the repository's own folder, with `/` on every system.
    pub(crate) path: String,
    /// Nothing for a file that holds no text.
    pub(crate) text: Option<String>,
}

pub(crate) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_owned()
}

/// Every file below a folder of the repository, in the order of their paths.
pub(crate) fn files(below: &str) -> Vec<Written> {
    let root = root();
    let mut found = Vec::new();
    gather(&root, &root.join(below), &mut found);
    assert!(!found.is_empty(), "nothing below {below:?}: was it moved?");
    found.sort_by(|a, b| a.path.cmp(&b.path));
    found
}

/// The same, only the text of files with this ending.
pub(crate) fn texts(below: &str, ending: &str) -> Vec<(String, String)> {
    let files = files(below).into_iter().filter(|file| file.path.ends_with(ending));
    files.filter_map(|file| Some((file.path, file.text?))).collect()
}

pub(crate) fn text(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

fn gather(root: &Path, folder: &Path, into: &mut Vec<Written>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if MADE.contains(&name.as_str()) {
            continue;
        }
        if path.is_dir() {
            gather(root, &path, into);
        } else {
            let parts: Vec<_> =
                path.strip_prefix(root).unwrap().components().map(|part| part.as_os_str().to_string_lossy()).collect();
            into.push(Written { path: parts.join("/"), text: String::from_utf8(fs::read(&path).unwrap()).ok() });
        }
    }
}
