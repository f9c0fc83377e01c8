//! What is kept, at hand on this page.

use super::{Soon, Store, StoreError};
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

/// What is kept, at hand on this page, and the store behind it.
#[derive(Clone)]
pub struct Kept {
    at_hand: Rc<RefCell<BTreeMap<String, String>>>,
    store: Rc<dyn Store>,
    /// Whether it was read. Otherwise something may be kept that is not at hand, and writing would take its place.
    is_read: bool,
    /// Whether the device was asked not to clear it.
    asked_to_stay: Rc<Cell<bool>>,
}

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.at_hand, &other.at_hand)
    }
}

impl Kept {
    /// Reads what is kept; where nothing can be read, starts empty and says why. Then nothing is written: what is read
    /// later, by opening once more, is as it was.
    pub async fn open(store: Rc<dyn Store>) -> (Self, Option<StoreError>) {
        let (all, trouble) = match store.all().await {
            Ok(all) => (all, None),
            Err(error) => (BTreeMap::new(), Some(error)),
        };
        let is_read = trouble.is_none();
        (Self { at_hand: Rc::new(RefCell::new(all)), store, is_read, asked_to_stay: Rc::default() }, trouble)
    }

    /// Whether what is kept was read, and what is typed is kept.
    pub fn is_read(&self) -> bool {
        self.is_read
    }

    /// What is kept under a key.
    pub fn get(&self, key: &str) -> Option<String> {
        self.at_hand.borrow().get(key).cloned()
    }

    /// Keeps a text, here at once and in the store as soon as it can. Where what is kept was not read, only here.
    pub fn keep(&self, key: &str, value: String) -> Soon<()> {
        self.keep_all(vec![(key.to_owned(), value)])
    }

    /// Keeps several texts in the same way, by key: all of them or, in the store, none.
    pub fn keep_all(&self, texts: Vec<(String, String)>) -> Soon<()> {
        let soon = match self.is_read {
            true => self.store.keep(&texts),
            false => Box::pin(std::future::ready(Err(StoreError::Unread))),
        };
        self.at_hand.borrow_mut().extend(texts);
        soon
    }

    /// Asks the device not to clear what is kept, the first time that this is called: from now on there is something to
    /// lose. It may ask the maker in turn, so nothing should wait for this.
    pub async fn stay(&self) {
        if !self.asked_to_stay.replace(true) {
            // The list of jobs says what came of it.
            let _ = self.store.may_be_cleared().await;
        }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::fake::{Fake, now};

    /// Once the store can be read, everything is as it was before it could not.
    #[test]
    fn what_could_not_be_read_is_not_written_over() {
        let store = Rc::new(Fake::default());
        let (kept, trouble) = now(Kept::open(store.clone()));
        assert_eq!(trouble, None);
        now(kept.keep("inputs/shelf", "900".into())).unwrap();

        store.refuse(Some(StoreError::NoRoom));
        let (blind, trouble) = now(Kept::open(store.clone()));
        assert_eq!((trouble, blind.is_read()), (Some(StoreError::NoRoom), false));
        store.refuse(None);
        assert_eq!(now(blind.keep("inputs/shelf", "demo".into())), Err(StoreError::Unread));
        assert_eq!(blind.get("inputs/shelf").as_deref(), Some("demo"), "for as long as the page is open");

        let (again, trouble) = now(Kept::open(store));
        assert_eq!((trouble, again.get("inputs/shelf").as_deref()), (None, Some("900")));
        now(again.keep("inputs/shelf", "1000".into())).unwrap();
    }
}
