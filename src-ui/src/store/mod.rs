//! Where the user's things are kept: one trait, a browser and a native window behind it.

mod browser;
mod indexed;
mod jobs;
mod tauri;

pub use jobs::{JobEntry, Revision, ToSave};

use std::cell::RefCell;
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
    /// Something that was kept is damaged.
    #[error("It cannot be read. {0}")]
    Unreadable(String),
    /// There is no room.
    #[error("There is no room left on this device for what Scantling keeps.")]
    NoRoom,
    /// What is kept was written by a newer program.
    #[error("What is kept here was written by a newer Scantling, and is left as it is.")]
    Newer,
}

/// Where the user's things are kept. Screens get it from above and cannot tell which it is.
pub trait Store {
    /// Everything that is kept, by key.
    fn all(&self) -> Soon<BTreeMap<String, String>>;
    /// Keeps a text under a key, wholly or not at all.
    fn keep(&self, key: &str, value: &str) -> Soon<()>;
    /// Every job, the last saved first; those that were put away too.
    fn jobs(&self) -> Soon<Vec<JobEntry>>;
    /// Saves a job as its next revision, wholly or not at all. Once this is answered, nothing that happens to the
    /// program undoes it.
    fn save_job(&self, to_save: ToSave) -> Soon<JobEntry>;
    /// The revisions of a job that are still kept, the last first.
    fn revisions(&self, id: u32) -> Soon<Vec<Revision>>;
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

/// What is kept, at hand on this page, and the store behind it.
#[derive(Clone)]
pub struct Kept {
    at_hand: Rc<RefCell<BTreeMap<String, String>>>,
    store: Rc<dyn Store>,
}

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.at_hand, &other.at_hand)
    }
}

impl Kept {
    /// Reads what is kept; where nothing can be read, starts empty and says why.
    pub async fn open(store: Rc<dyn Store>) -> (Self, Option<StoreError>) {
        let (all, trouble) = match store.all().await {
            Ok(all) => (all, None),
            Err(error) => (BTreeMap::new(), Some(error)),
        };
        (Self { at_hand: Rc::new(RefCell::new(all)), store }, trouble)
    }

    /// What is kept under a key.
    pub fn get(&self, key: &str) -> Option<String> {
        self.at_hand.borrow().get(key).cloned()
    }

    /// Keeps a text, here at once and in the store as soon as it can.
    pub fn keep(&self, key: &str, value: String) -> Soon<()> {
        let soon = self.store.keep(key, &value);
        self.at_hand.borrow_mut().insert(key.to_owned(), value);
        soon
    }

    /// The store behind it.
    pub fn store(&self) -> Rc<dyn Store> {
        self.store.clone()
    }

    /// The key of a card's inputs as they were before another card handed it its own.
    pub fn before_of(slug: &str) -> String {
        format!("before/{slug}")
    }

    /// The key of what another card handed to a card.
    pub fn handed_to(slug: &str) -> String {
        format!("handed/{slug}")
    }

    /// The key of a card's inputs.
    pub fn inputs_of(slug: &str) -> String {
        format!("inputs/{slug}")
    }
}
