//! Materials: how much of everything, in the packs that it is sold in, and a shopping list that adds up.
//!
//! Lengths, areas, packs and money are exact; weights are estimates.

mod bought;
mod decimal;
mod inputs;
mod lines;
mod list;
mod reads;
mod steps;

pub use bought::{Band, Boards, Finish, Fixings, Glue, Sheets};
pub use decimal::Decimal;
pub use inputs::{Coat, Inputs, SolidPer};
pub use list::{Item, List, What};

use super::Card;
use crate::caution::Caution;
use crate::measure::LengthError;
use crate::problem::{Problem, Problems};
use crate::working::Working;
use bought::FixingFields;
use reads::{Price, Reads};
use serde::Serialize;

/// How much of everything. A section that was left blank is nothing.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Sheets.
    pub sheets: Option<Sheets>,
    /// Solid wood.
    pub boards: Option<Boards>,
    /// Edge band.
    pub band: Option<Band>,
    /// Glue.
    pub glue: Option<Glue>,
    /// Finish.
    pub finish: Option<Finish>,
    /// Screws.
    pub screws: Option<Fixings>,
    /// Pins.
    pub pins: Option<Fixings>,
    /// The shopping list.
    pub list: List,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
}

/// Works out what is bought.
///
/// # Errors
/// A problem for each field that cannot be used, and one where nothing is to be bought.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let mut reads = Reads::default();
    let answer = answer(inputs, &mut reads);
    if !reads.0.is_empty() {
        return Err(reads.0);
    }
    let answer = answer?;
    if answer.list.items.is_empty() {
        let why = "Give something to buy: parts, boards, edges, joints, faces, screws or pins.";
        return Err(Problems::one("sheet_parts", Problem::Clash { why }));
    }
    Ok(answer)
}

fn answer(inputs: &Inputs, reads: &mut Reads) -> Result<Answer, LengthError> {
    let mut list = List::default();
    let sheets = bought::sheets(inputs, reads)?;
    let price = reads.price("sheet_price", &inputs.sheet_price);
    list.packs(What::Sheets, sheets.as_ref().map(|sheets| sheets.count), price)?;

    let boards = bought::boards(inputs, reads)?;
    let price = reads.price("board_price", &inputs.board_price);
    if let Some(boards) = &boards {
        match inputs.board_per {
            SolidPer::CubicMetre => list.add(What::CubicMetres, boards.gross_m3, price)?,
            SolidPer::BoardFoot => list.add(What::BoardFeet, boards.gross_board_feet, price)?,
        }
    }

    let band = bought::band(inputs, reads)?;
    let price = reads.price("roll_price", &inputs.roll_price);
    list.packs(What::Rolls, band.as_ref().map(|band| band.rolls), price)?;

    let glue = bought::glue(inputs, reads)?;
    let price = reads.price("bottle_price", &inputs.bottle_price);
    list.packs(What::Bottles, glue.as_ref().map(|glue| glue.bottles), price)?;

    let finish = bought::finish(inputs, reads, sheets.as_ref())?;
    let price = reads.price("can_price", &inputs.can_price);
    list.packs(What::Cans, finish.as_ref().map(|finish| finish.cans), price)?;

    let spare = reads.percent("spare", &inputs.spare);
    let fields = FixingFields { list: ("screws", &inputs.screws), in_box: ("screw_box", &inputs.screw_box) };
    let screws = bought::fixings(&fields, spare, reads)?;
    let price = reads.price("screw_price", &inputs.screw_price);
    list.packs(What::ScrewBoxes, screws.as_ref().map(|screws| screws.boxes), price)?;
    let fields = FixingFields { list: ("pins", &inputs.pins), in_box: ("pin_box", &inputs.pin_box) };
    let pins = bought::fixings(&fields, spare, reads)?;
    let price = reads.price("pin_price", &inputs.pin_price);
    list.packs(What::PinBoxes, pins.as_ref().map(|pins| pins.boxes), price)?;

    for other in lines::others(&mut reads.0, "others", &inputs.others) {
        let price = Price { each: other.price, typed: other.typed };
        list.add(What::Other(other.name), Decimal::whole(other.count.into()), Some(price))?;
    }
    let mut answer = Answer {
        sheets,
        boards,
        band,
        glue,
        finish,
        screws,
        pins,
        list,
        working: Working::default(),
        cautions: Vec::new(),
    };
    answer.working = steps::working(&answer);
    answer.cautions = cautions(&answer);
    Ok(answer)
}

fn cautions(answer: &Answer) -> Vec<Caution> {
    let applies = [
        (answer.sheets.is_some(), Caution::SheetHandling),
        (answer.glue.is_some() || answer.finish.is_some(), Caution::GluesAndFinishes),
        (answer.sheets.is_some() || answer.boards.is_some(), Caution::DustAndNoise),
        (answer.sheets.is_some(), Caution::Estimate),
    ];
    applies.into_iter().filter_map(|(applies, caution)| applies.then_some(caution)).collect()
}

/// The materials card.
pub const CARD: Card = Card { slug: "materials", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
