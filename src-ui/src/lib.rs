//! Scantling on a screen.
//!
//! - [`app`] the frame; [`route`] addresses; [`screens`] bench and settings
//! - [`cards`] one file a card: fields in, picture and answer out
//! - [`widgets`] what every card is made of; [`pictures`] drawing primitives
//! - [`settings`], [`show`] how values look; [`words`] every label; [`store`] what is kept, behind one trait; [`jobs`] the job on the bench; [`damaged`] what cannot be read; [`tape`] the last answers

// Component macros make public items that no docs page shows; what matters to a reader is documented where it stands.
#![allow(missing_docs, reason = "Yew's component macro generates public items without docs")]

pub mod app;
pub mod browser;
pub mod cards;
pub mod damaged;
pub mod in_sight;
pub mod jobs;
pub mod near;
pub mod pictures;
pub mod route;
pub mod screens;
pub mod settings;
pub mod show;
pub mod store;
pub mod tape;
pub mod widgets;
pub mod words;
