//! What a person gives for a shopping list. A list that is blank is not bought, and its fields do not matter.

use crate::measure::{Figure, Reading};
use crate::stock::materials::Choice;
use serde::{Deserialize, Serialize};

/// What the price of solid wood is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SolidPer {
    /// A cubic metre.
    #[default]
    CubicMetre,
    /// A board foot.
    BoardFoot,
}

impl SolidPer {
    /// Both, in the order of a list.
    pub const ALL: &'static [Self] = &[Self::CubicMetre, Self::BoardFoot];
}

/// What is coated.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Coat {
    /// Nothing.
    #[default]
    Nothing,
    /// One face of every sheet part.
    OneFace,
    /// Both faces of every sheet part.
    BothFaces,
    /// The faces of a list.
    Listed,
}

impl Coat {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] = &[Self::Nothing, Self::OneFace, Self::BothFaces, Self::Listed];
}

/// What the maker gives. Lines are sizes and a number with `×` between, such as `600 × 300 × 2`; a number left out is one.
/// Prices are plain numbers of whatever the money is; a blank one leaves its line without an amount.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Sheet parts: length × width × number.
    pub sheet_parts: Vec<Reading>,
    /// What the sheet is, for its weight.
    pub material: Choice,
    /// Its density, kg/m³, for [`Choice::Own`].
    pub density: Figure,
    /// Its thickness.
    pub thickness: Reading,
    /// Length of a whole sheet.
    pub sheet_length: Reading,
    /// Width of a whole sheet.
    pub sheet_width: Reading,
    /// What goes to kerfs, trimming and offcuts, per cent on top of the parts' area.
    pub sheet_waste: Figure,
    /// How many sheets, where a layout has said so; blank for as many as the area takes.
    pub sheets: Figure,
    /// Price of a sheet.
    pub sheet_price: Figure,
    /// Solid parts: length × width × thickness × number, rough, as they are bought.
    pub boards: Vec<Reading>,
    /// What goes to planing, ends and knots, per cent on top.
    pub board_waste: Figure,
    /// What the price is for.
    pub board_per: SolidPer,
    /// Price of so much.
    pub board_price: Figure,
    /// Edges that get a band: length × number.
    pub edges: Vec<Reading>,
    /// What is cut longer on each piece of band.
    pub band_extra: Reading,
    /// Length of a roll.
    pub roll: Reading,
    /// Price of a roll.
    pub roll_price: Figure,
    /// Glued joints: length × width × number.
    pub joints: Vec<Reading>,
    /// How much glue is spread, g/m².
    pub glue_spread: Figure,
    /// What a bottle holds, kg.
    pub bottle: Figure,
    /// Price of a bottle.
    pub bottle_price: Figure,
    /// What is coated.
    pub coat: Coat,
    /// The faces for [`Coat::Listed`]: length × width × number.
    pub faces: Vec<Reading>,
    /// How many coats.
    pub coats: Figure,
    /// How far a litre goes, m²/l, one coat.
    pub coverage: Figure,
    /// What a can holds, litres.
    pub can: Figure,
    /// Price of a can.
    pub can_price: Figure,
    /// Screws: places × screws in each.
    pub screws: Vec<Reading>,
    /// Screws in a box.
    pub screw_box: Figure,
    /// Price of a box of screws.
    pub screw_price: Figure,
    /// Pins: places × pins in each.
    pub pins: Vec<Reading>,
    /// Pins in a box.
    pub pin_box: Figure,
    /// Price of a box of pins.
    pub pin_price: Figure,
    /// Screws and pins on top, per cent, for those that are lost.
    pub spare: Figure,
    /// Whatever else: number × price, and a name, such as `6 × 2.35 hinges`.
    pub others: Vec<Reading>,
}

fn lines<const N: usize>(typed: [&str; N]) -> Vec<Reading> {
    typed.map(Reading::mm).to_vec()
}

/// A potting-shed cupboard with two doors; the prices are made up.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            sheet_parts: lines(["1170 × 330 × 2", "800 × 330 × 4", "1164 × 411.5 × 2"]),
            material: Choice::find("plywood_birch").unwrap_or_default(),
            density: Figure::default(),
            thickness: Reading::mm("14.6"),
            sheet_length: Reading::mm("2440"),
            sheet_width: Reading::mm("1220"),
            sheet_waste: "15".into(),
            sheets: Figure::default(),
            sheet_price: "64.50".into(),
            boards: lines(["900 × 95 × 22 × 2"]),
            board_waste: "25".into(),
            board_per: SolidPer::CubicMetre,
            board_price: "1400".into(),
            edges: lines(["1170 × 2", "800 × 4", "1164 × 4", "411.5 × 4"]),
            band_extra: Reading::mm("40"),
            roll: Reading::mm("10 m"),
            roll_price: "8.90".into(),
            joints: lines(["330 × 14.6 × 8"]),
            glue_spread: "180".into(),
            bottle: "0.25".into(),
            bottle_price: "4.20".into(),
            coat: Coat::BothFaces,
            faces: Vec::new(),
            coats: "3".into(),
            coverage: "11".into(),
            can: "0.75".into(),
            can_price: "14.95".into(),
            screws: lines(["8 × 3"]),
            screw_box: "100".into(),
            screw_price: "5.40".into(),
            pins: lines(["16"]),
            pin_box: "50".into(),
            pin_price: "2.10".into(),
            spare: "10".into(),
            others: lines(["6 × 2.35 hinges"]),
        }
    }
}
