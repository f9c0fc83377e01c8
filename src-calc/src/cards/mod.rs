//! The cards: one calculation a file, all of the same shape.
//!
//! A card file has three things in this order: `Inputs` (its `Default` is the demo), `Answer`, and `solve`;
//! then `CARD`, by which the registry below and anything that speaks JSON reach it.

pub mod angles;
pub mod back_panel;
pub mod bevelled_strips;
pub mod cabinet;
pub mod clothes_rail;
pub mod convert;
pub mod cup_hinge;
pub mod groove;
pub mod hanging;
pub mod hole_rows;
pub mod joints;
pub mod materials;
pub mod sheet_layout;
pub mod shelf;
pub mod spacing;
pub mod wall_cleat;
pub mod wood_movement;

use crate::problem::Problems;
use serde::{Serialize, de::DeserializeOwned};
use serde_json::Value;

/// A card as the outside reaches it: by its slug, in JSON.
#[derive(Clone, Copy, Debug)]
pub struct Card {
    /// The name in addresses, files and words: `back-panel`.
    pub slug: &'static str,
    /// The demo inputs.
    pub demo: fn() -> Value,
    /// Inputs in, answer out. Inputs left out are those of the demo.
    pub ask: fn(&Value) -> Result<Value, Refusal>,
}

/// Why a request got no answer.
#[derive(Debug, thiserror::Error)]
pub enum Refusal {
    /// The request is not in the shape of the card's inputs.
    #[error("The inputs do not have the shape of this card's inputs: {0}")]
    Shape(#[from] serde_json::Error),
    /// Inputs that cannot be used.
    #[error("Some inputs cannot be used.")]
    Problems(Problems),
}

/// Every card, in the order of the bench.
pub const CARDS: &[Card] = &[
    convert::CARD,
    cabinet::CARD,
    back_panel::CARD,
    shelf::CARD,
    clothes_rail::CARD,
    spacing::CARD,
    wood_movement::CARD,
    sheet_layout::CARD,
    bevelled_strips::CARD,
    angles::CARD,
    groove::CARD,
    hole_rows::CARD,
    cup_hinge::CARD,
    joints::CARD,
    wall_cleat::CARD,
    hanging::CARD,
    materials::CARD,
];

/// The card of that slug.
pub fn card(slug: &str) -> Option<&'static Card> {
    CARDS.iter().find(|card| card.slug == slug)
}

fn demo<I: Default + Serialize>() -> Value {
    serde_json::to_value(I::default()).unwrap_or_default()
}

fn ask<I: DeserializeOwned, A: Serialize>(
    solve: fn(&I) -> Result<A, Problems>,
    inputs: &Value,
) -> Result<Value, Refusal> {
    let inputs: I = serde_json::from_value(inputs.clone())?;
    let answer = solve(&inputs).map_err(Refusal::Problems)?;
    Ok(serde_json::to_value(answer)?)
}
