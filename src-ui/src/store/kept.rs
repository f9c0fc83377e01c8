//! What is kept, at hand on this page.

use super::{Soon, Store, StoreError};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

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
