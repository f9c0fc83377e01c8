//! Cabinet: the whole of it, from a dozen measurements. What it is made of stands in [`crate::cabinet`].

use super::Card;
pub use crate::cabinet::{Cabinet as Answer, Inputs, solve};

/// This card for the registry.
pub const CARD: Card = Card { slug: "cabinet", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
