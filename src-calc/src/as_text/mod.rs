//! Inputs as the text in which they are kept, and back.
//!
//! The text is JSON. It goes through [`Value`] both ways, and back from there through a reader that says only that a
//! text does not fit, not why: nobody is told, since what was kept was written by this program. So every type's shape
//! is compiled once, for one reader, which makes the page a good deal smaller than `serde_json::from_str` for each.

mod reader;

use serde::{Serialize, de::DeserializeOwned};
use serde_json::Value;

/// The text of something; nothing where it cannot be written, such as a map whose keys are no words.
pub fn write<T: Serialize>(what: &T) -> Option<String> {
    serde_json::to_value(what).ok().map(|value| value.to_string())
}

/// What a text says; nothing where it is not in the shape that is wanted.
///
/// # Example
/// ```
/// # use scantling::{as_text, cards::shelf::Inputs, measure::Reading};
/// let shelf = Inputs { span: Reading::mm("31 1/2 in"), ..Inputs::default() };
/// let text = as_text::write(&shelf).unwrap();
/// assert_eq!(as_text::read(&text), Some(shelf));
/// assert_eq!(as_text::read::<Inputs>("no shelf"), None);
/// ```
pub fn read<T: DeserializeOwned>(text: &str) -> Option<T> {
    fit(&serde_json::from_str(text).ok()?)
}

/// The same from a value.
pub fn fit<T: DeserializeOwned>(value: &Value) -> Option<T> {
    T::deserialize(reader::Reader::of(value)).ok()
}

#[cfg(test)]
mod tests;
