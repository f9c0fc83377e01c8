//! Where the user's things are kept: one trait, a browser and a native window behind it.

mod browser;
#[cfg(test)]
pub(crate) mod fake;
mod indexed;
mod jobs;
mod kept;
mod tauri;

pub use jobs::{JobEntry, Listed, Revision, ToSave};
pub use kept::Kept;

use std::collections::BTreeMap;
use std::future::Future;
use std::pin::Pin;
use std::rc::Rc;

/// A call that answers later, on this thread.
pub type Soon<T> = Pin<Box<dyn Future<Output = Result<T, StoreError>>>>;

/// Why something could not be kept. What was typed stays on the screen.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum StoreError {
    /// The device has no room, or does not let this page keep anything.
    #[error("This device does not let Scantling keep anything: {0}.")]
    Refused(String),
    /// As the shell says it, in a whole sentence.
    #[error("{0}")]
    Told(String),
    /// An older revision than those that are kept.
    #[error("This revision is no longer kept.")]
    Gone,
    /// A revision that is there and damaged.
    #[error("This revision is damaged and cannot be read.")]
    Damaged,
    /// What was kept is no job, or none that this program knows.
    #[error("It cannot be read. {0}")]
    Unreadable(String),
    /// There is no room.
    #[error("There is no room left on this device for what Scantling keeps.")]
    NoRoom,
    /// What is kept could not be read, so that nothing may take its place.
    #[error("Nothing is kept now: what was kept before could not be read.")]
    Unread,
    /// What is kept was written by a newer program.
    #[error("What is kept here was written by a newer Scantling, and is left as it is.")]
    Newer,
}

/// Where the user's things are kept. Screens get it from above and cannot tell which it is.
pub trait Store {
    /// Everything that is kept, by key.
    fn all(&self) -> Soon<BTreeMap<String, String>>;
    /// Keeps each text under its key: all of them or none.
    fn keep(&self, texts: &[(String, String)]) -> Soon<()>;
    /// Every job, the last saved first; those that were put away too.
    fn jobs(&self) -> Soon<Listed<JobEntry>>;
    /// Saves a job as its next revision, wholly or not at all. Once this is answered, nothing that happens to the
    /// program undoes it.
    fn save_job(&self, to_save: ToSave) -> Soon<JobEntry>;
    /// The revisions of a job that are still kept, the last first.
    fn revisions(&self, id: u32) -> Soon<Listed<Revision>>;
    /// A revision's text; nothing where it is no longer kept.
    fn revision(&self, id: u32, number: u32) -> Soon<Option<String>>;
    /// Puts a job away, or back.
    fn remove_job(&self, id: u32, removed: bool) -> Soon<()>;
    /// Forgets a job with all of its revisions.
    fn forget_job(&self, id: u32) -> Soon<()>;
    /// Whether [`Store::back_up`] does something.
    fn makes_backups(&self) -> bool;
    /// Copies everything that is kept into a file of its own, and says where; nothing where jobs are passed on as a
    /// file of jobs alone.
    fn back_up(&self) -> Soon<Option<String>>;
    /// Whether the device may clear what is kept when it gets short of room; asks it not to.
    fn may_be_cleared(&self) -> Soon<bool>;
    /// Hands a text to the maker as a file, and says where it is, if anybody knows.
    fn save_file(&self, name: &str, kind: &str, text: &str) -> Soon<Option<String>>;
}

/// The store of the shell that this page runs in.
pub fn here() -> Rc<dyn Store> {
    if tauri::is_here() { Rc::new(tauri::Window) } else { Rc::new(browser::Page) }
}
