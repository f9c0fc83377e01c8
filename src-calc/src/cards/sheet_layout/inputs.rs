//! What a person gives for a layout.

use super::found::Found;
use crate::as_text;
use crate::measure::{Figure, Length, Reading};
use crate::sheets::{Cuts, SheetGrain};
use serde::{Deserialize, Deserializer, Serialize};

/// An offcut that was put by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Kept {
    /// What it is, as parts name their stock; blank for the main sheet's.
    #[serde(default)]
    pub stock: String,
    /// Its first measure.
    pub length: Length,
    /// Its second measure.
    pub width: Length,
    /// How its grain runs.
    #[serde(default)]
    pub grain: SheetGrain,
    /// The list of parts that it was left over from: it waits until another one is laid out.
    #[serde(default)]
    pub left_by: String,
}

/// What the maker gives. Lines are kept as typed. Blank stands for the main sheet's stock, for as many sheets as are
/// wanted, for no price, for the shop's kerf, for any length of rip.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// The parts: name, length × width × how many, stock, grain.
    pub parts: Vec<Reading>,
    /// What the main sheet is, as parts name it.
    pub sheet_name: Figure,
    /// Its length.
    pub sheet_length: Reading,
    /// Its width.
    pub sheet_width: Reading,
    /// How many there are.
    pub sheet_count: Figure,
    /// What one costs.
    pub sheet_price: Figure,
    /// How its grain runs.
    pub sheet_grain: SheetGrain,
    /// Further sheets: name, length × width × how many, price, grain.
    pub sheets: Vec<Reading>,
    /// Offcuts, in the same way; one each where it is not said.
    pub offcuts: Vec<Reading>,
    /// Offcuts of earlier layouts.
    pub kept: Vec<Kept>,
    /// What a cut takes away.
    pub kerf: Reading,
    /// What is cut off each edge of a whole sheet first.
    pub trim: Reading,
    /// In what order cuts may come.
    pub cuts: Cuts,
    /// The longest rip that there is room for.
    pub longest_rip: Reading,
    /// The shorter side of the smallest offcut worth keeping.
    pub least_offcut: Reading,
    /// The best layout that was found for these.
    #[serde(deserialize_with = "found")]
    pub found: Option<Found>,
    /// The cuts that are done, by their place in the order of cuts.
    pub done: Vec<u32>,
    /// The layout that they belong to.
    pub done_of: String,
}

/// A layout that cannot be read is looked for again; what was typed beside it stays.
fn found<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<Found>, D::Error> {
    let value = serde_json::Value::deserialize(deserializer)?;
    Ok(as_text::fit(&value))
}

/// The plywood of a potting-shed cupboard with two doors; the price is made up.
impl Default for Inputs {
    fn default() -> Self {
        let parts = [
            "Side 1170 × 330 × 2",
            "Shelf 800 × 330 × 4",
            "Door 1164 × 411.5 × 2",
            "Plinth 800 × 95 × 2",
            "Cleat 800 × 70 × 3 free",
            "Pot rack 620 × 180 × 2",
            "Worktop 1200 × 420",
            "Drawer side 400 × 140 × 8",
            "Drawer front 390 × 160 × 4",
        ];
        Self {
            parts: parts.map(Reading::mm).to_vec(),
            sheet_name: Figure::default(),
            sheet_length: Reading::mm("2440"),
            sheet_width: Reading::mm("1220"),
            sheet_count: Figure::default(),
            sheet_price: "64.50".into(),
            sheet_grain: SheetGrain::Along,
            sheets: Vec::new(),
            offcuts: Vec::new(),
            kept: Vec::new(),
            kerf: Reading::mm("3.2"),
            trim: Reading::mm("10"),
            cuts: Cuts::Any,
            longest_rip: Reading::default(),
            least_offcut: Reading::mm("150"),
            found: None,
            done: Vec::new(),
            done_of: String::new(),
        }
    }
}
