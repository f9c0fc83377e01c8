//! Files that the maker asked for: drawings, cut lists, jobs. They go into one folder, and nothing there is overwritten.

use serde::ser::{Serialize, SerializeStruct, Serializer};
use std::fs::{self, OpenOptions};
use std::io::{self, Write};
use std::path::PathBuf;

/// Why a file could not be written.
#[derive(Debug, thiserror::Error)]
#[error("{} could not be written: {source}.", path.display())]
pub struct SaveError {
    path: PathBuf,
    source: io::Error,
}

/// Crosses to the page as a refusal to keep does.
impl Serialize for SaveError {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut error = serializer.serialize_struct("SaveError", 2)?;
        error.serialize_field("kind", "file")?;
        error.serialize_field("message", &self.to_string())?;
        error.end()
    }
}

/// The folder for them.
#[derive(Debug)]
pub struct Files {
    folder: PathBuf,
}

/// A name that is only a name on every system, whatever the page asks for: no folder, no device, no hidden file.
fn tame(name: &str) -> String {
    let tame = |letter: char| if letter.is_alphanumeric() || "-_. ".contains(letter) { letter } else { '-' };
    let name: String = name.chars().take(100).map(tame).collect();
    let name = name.trim_matches(['.', ' ']);
    if name.is_empty() { "scantling".to_owned() } else { name.to_owned() }
}

impl Files {
    /// Writes into this folder, which is made where it is missing.
    pub fn at(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// Writes a new file of this name; where there is one already, its name gets a number.
    pub fn save(&self, name: &str, text: &str) -> Result<PathBuf, SaveError> {
        let name = tame(name);
        let (stem, ending) = match name.rsplit_once('.') {
            Some((stem, ending)) => (stem, format!(".{ending}")),
            None => (name.as_str(), String::new()),
        };
        let failed = |path: &PathBuf| {
            let path = path.clone();
            move |source| SaveError { path, source }
        };
        fs::create_dir_all(&self.folder).map_err(failed(&self.folder))?;
        let mut number = 1_u32;
        loop {
            let own = if number == 1 { name.clone() } else { format!("{stem} {number}{ending}") };
            let path = self.folder.join(own);
            match OpenOptions::new().write(true).create_new(true).open(&path) {
                Ok(mut file) => {
                    file.write_all(text.as_bytes()).and_then(|()| file.sync_all()).map_err(failed(&path))?;
                    return Ok(path);
                }
                Err(error) if error.kind() == io::ErrorKind::AlreadyExists && number < u32::MAX => number += 1,
                Err(error) => return Err(failed(&path)(error)),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_overwritten() {
        let folder = tempfile::tempdir().unwrap();
        let files = Files::at(folder.path().join("below"));
        let first = files.save("cut list.csv", "one").unwrap();
        let second = files.save("cut list.csv", "two").unwrap();
        assert_eq!(first.file_name().unwrap(), "cut list.csv");
        assert_eq!(second.file_name().unwrap(), "cut list 2.csv");
        assert_eq!([fs::read_to_string(first).unwrap(), fs::read_to_string(second).unwrap()], ["one", "two"]);
    }

    #[test]
    fn no_name_leaves_the_folder() {
        for (name, want) in [
            ("../../etc/passwd", "-..-etc-passwd"),
            ("/etc/passwd", "-etc-passwd"),
            ("..", "scantling"),
            ("", "scantling"),
            (".hidden", "hidden"),
            ("a:b*c?.svg", "a-b-c-.svg"),
            ("Schrank für Töpfe.json", "Schrank für Töpfe.json"),
        ] {
            assert_eq!(tame(name), want, "{name}");
        }
    }

    #[test]
    fn where_nothing_can_be_written_it_says_so() {
        let folder = tempfile::tempdir().unwrap();
        let in_the_way = folder.path().join("file");
        fs::write(&in_the_way, "").unwrap();
        let refused = Files::at(in_the_way.join("below")).save("x.csv", "").unwrap_err();
        assert!(refused.to_string().contains("could not be written"), "{refused}");
        assert_eq!(serde_json::to_value(&refused).unwrap()["kind"], "file");
    }
}
