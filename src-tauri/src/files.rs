//! Files that the maker asked for: drawings, cut lists, jobs. They go into one folder, and nothing there is overwritten.

use serde::ser::{Serialize, SerializeStruct, Serializer};
use std::fs::{self, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

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

/// No longer name fits every file system, in bytes, with a number and an ending.
const LONGEST_STEM: usize = 200;

/// Names that are devices on some systems, whatever their ending.
const DEVICES: [&str; 6] = ["con", "prn", "aux", "nul", "com", "lpt"];

/// A name that is only a name on every system, whatever the page asks for: no folder, no device, no hidden file. Its
/// stem and its ending, which has the dot.
fn tame(name: &str) -> (String, String) {
    let (stem, ending) = match name.rsplit_once('.') {
        Some((stem, ending)) if ending.chars().all(|letter| letter.is_ascii_alphanumeric()) => (stem, ending),
        _ => (name, ""),
    };
    let unsafe_there = |letter: char| letter.is_control() || "/\\:*?\"<>|".contains(letter);
    let mut tamed = String::new();
    for letter in stem.chars() {
        if tamed.len() + letter.len_utf8() > LONGEST_STEM {
            break;
        }
        tamed.push(if unsafe_there(letter) { '-' } else { letter });
    }
    let tamed = tamed.trim_matches(['.', ' ']);
    let lower = tamed.to_ascii_lowercase();
    let bare = lower.trim_end_matches(|letter: char| letter.is_ascii_digit());
    let tamed = match tamed {
        "" => "scantling".to_owned(),
        _ if DEVICES.contains(&bare) => format!("{tamed}-"),
        _ => tamed.to_owned(),
    };
    (tamed, if ending.is_empty() { String::new() } else { format!(".{}", ending.get(..8).unwrap_or(ending)) })
}

impl Files {
    /// Writes into this folder, which is made where it is missing.
    pub fn at(folder: PathBuf) -> Self {
        Self { folder }
    }

    /// Where it is.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Writes a new file of this name; where there is one already, its name gets a number.
    pub fn save(&self, name: &str, text: &str) -> Result<PathBuf, SaveError> {
        let (stem, ending) = tame(name);
        let failed = |path: &PathBuf| {
            let path = path.clone();
            move |source| SaveError { path, source }
        };
        fs::create_dir_all(&self.folder).map_err(failed(&self.folder))?;
        let mut number = 1_u32;
        loop {
            let own = if number == 1 { format!("{stem}{ending}") } else { format!("{stem} {number}{ending}") };
            let path = self.folder.join(own);
            match OpenOptions::new().write(true).create_new(true).open(&path) {
                Ok(mut file) => {
                    let written = file.write_all(text.as_bytes()).and_then(|()| file.sync_all());
                    if written.is_err() {
                        // Half a file is worse than none; where it cannot be removed either, the refusal says where.
                        let _ = fs::remove_file(&path);
                    }
                    return written.map(|()| path.clone()).map_err(failed(&path));
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
        let long = "ü".repeat(300);
        let cut = format!("{}.json", "ü".repeat(LONGEST_STEM / 2));
        for (name, want) in [
            ("../../etc/passwd", "-..-etc-passwd"),
            ("/etc/passwd", "-etc-passwd"),
            ("..", "scantling"),
            ("", "scantling"),
            (".json", "scantling.json"),
            (".hidden", "scantling.hidden"),
            ("a:b*c?.svg", "a-b-c-.svg"),
            ("one\ntwo.txt", "one-two.txt"),
            ("NUL.json", "NUL-.json"),
            ("com1.json", "com1-.json"),
            ("Console.json", "Console.json"),
            ("Schrank für Töpfe.json", "Schrank für Töpfe.json"),
            ("e\u{301}tage.json", "e\u{301}tage.json"),
            (&format!("{long}.json"), &cut),
        ] {
            let (stem, ending) = tame(name);
            assert_eq!(format!("{stem}{ending}"), want, "{name}");
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
