//! Jobs as a store lists them.

use serde::{Deserialize, Serialize};

/// A job in the list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct JobEntry {
    /// By which it is known; never used twice.
    pub id: u32,
    /// As the maker calls it.
    pub name: String,
    /// In a few words.
    pub about: String,
    /// The number of its last revision, counted from one.
    pub revision: u32,
    /// When that was saved, in milliseconds since 1970.
    pub saved_ms: f64,
    /// Whether it was put away, and can be put back.
    #[serde(default)]
    pub removed: bool,
}

/// A revision in the list of a job's.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Revision {
    /// Counted from one.
    pub number: u32,
    /// In a few words.
    pub about: String,
    /// When it was saved, in milliseconds since 1970.
    pub saved_ms: f64,
}

/// What there is of something, and how much of it is there but damaged.
#[derive(Clone, Debug, PartialEq)]
pub struct Listed<T> {
    /// What can be read.
    pub read: Vec<T>,
    /// How many more cannot.
    pub damaged: u32,
}

impl<T> Listed<T> {
    /// All of it can be read.
    pub fn whole(read: Vec<T>) -> Self {
        Self { read, damaged: 0 }
    }
}

/// What is saved as a job's next revision.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ToSave {
    /// The job's number; nothing for a new one.
    pub id: Option<u32>,
    /// Its name.
    pub name: String,
    /// In a few words.
    pub about: String,
    /// The whole of it.
    pub content: String,
}
