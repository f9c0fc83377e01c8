//! What is checked in both shells: the whole way of a maker through a card, and what is true of every screen.

pub mod cabinet;
pub mod card;
pub mod cards;
pub mod jobs;
pub mod settings;
pub mod storage;
pub mod tape;
