//! The shopping list. Every amount is rounded to a hundredth by itself, so that the list adds up as it stands.

use super::decimal::Decimal;
use super::reads::Price;
use crate::measure::LengthError;
use serde::Serialize;

/// What a line of the list is for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// Whole sheets.
    Sheets,
    /// Solid wood by the cubic metre.
    CubicMetres,
    /// Solid wood by the board foot.
    BoardFeet,
    /// Rolls of edge band.
    Rolls,
    /// Bottles of glue.
    Bottles,
    /// Cans of finish.
    Cans,
    /// Boxes of screws.
    ScrewBoxes,
    /// Boxes of pins.
    PinBoxes,
    /// Something of the maker's own list, by its name.
    Other(String),
}

/// A line of the list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Item {
    /// What it is for.
    pub what: What,
    /// How much of it.
    pub quantity: Decimal,
    /// The price of one, as typed.
    pub price: Option<String>,
    /// Quantity × price, to the nearest hundredth.
    pub amount: Option<Decimal>,
}

/// The list and its sum.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct List {
    /// What is bought.
    pub items: Vec<Item>,
    /// The sum of the amounts; nothing where no line has one.
    pub total: Option<Decimal>,
    /// How many lines have no price.
    pub unpriced: u32,
}

impl List {
    /// Adds a line.
    ///
    /// # Errors
    /// [`LengthError`] when an amount cannot be held.
    pub(super) fn add(&mut self, what: What, quantity: Decimal, price: Option<Price>) -> Result<(), LengthError> {
        let amount = match &price {
            Some(price) => Some(Decimal::nearest(quantity.exactly()?.times(price.each)?, 2)?),
            None => None,
        };
        match (self.total, amount) {
            (Some(total), Some(amount)) => self.total = Some(total.plus(amount)?),
            (None, amount @ Some(_)) => self.total = amount,
            (_, None) => self.unpriced = self.unpriced.saturating_add(1),
        }
        self.items.push(Item { what, quantity, price: price.map(|price| price.typed), amount });
        Ok(())
    }

    /// Adds so many whole packs, if any.
    ///
    /// # Errors
    /// As [`List::add`].
    pub(super) fn packs(&mut self, what: What, packs: Option<u32>, price: Option<Price>) -> Result<(), LengthError> {
        packs.map_or(Ok(()), |packs| self.add(what, Decimal::whole(packs.into()), price))
    }
}
