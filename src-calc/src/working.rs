//! The working of an answer: each formula, the numbers that went in, what came out, and the source.

use crate::measure::Quantity;
use crate::source::Source;
use serde::Serialize;

/// One line of the working.
///
/// `formula` is written with single spaces around operators and names each symbol of `given` exactly as listed there,
/// so that a screen can print the same formula again with the numbers in place of the symbols.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// What this line works out, such as `Panel width`.
    pub what: &'static str,
    /// The formula in symbols, such as `W = O + a + b − c`.
    pub formula: &'static str,
    /// What each symbol stood for.
    pub given: Vec<(&'static str, Quantity)>,
    /// What came out.
    pub gives: Quantity,
    /// Who says so.
    pub source: Source,
}

/// The working of an answer, in the order in which a person would do it.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(transparent)]
pub struct Working(pub Vec<Step>);

impl Working {
    /// Adds a line.
    pub fn step(
        &mut self,
        what: &'static str,
        formula: &'static str,
        given: impl AsRef<[(&'static str, Quantity)]>,
        gives: impl Into<Quantity>,
        source: Source,
    ) {
        self.push(what, formula, given.as_ref(), gives.into(), source);
    }

    /// The same, compiled once for every number of symbols.
    fn push(
        &mut self,
        what: &'static str,
        formula: &'static str,
        given: &[(&'static str, Quantity)],
        gives: Quantity,
        source: Source,
    ) {
        self.0.push(Step { what, formula, given: given.to_vec(), gives, source });
    }
}
