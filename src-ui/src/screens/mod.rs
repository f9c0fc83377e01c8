//! The screens that are not a card.

pub mod bench;
pub mod settings;
