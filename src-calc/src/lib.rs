//! The trade computation of Scantling, the shop calculator of a cabinetmaker.
//!
//! The rooms, in reading order:
//! - [`measure`]: what a number is. An exact [`measure::Length`], the [`measure::Reading`] a person types,
//!   the [`measure::Graduation`] of the tool in hand.
//! - [`source`], [`working`], [`caution`], [`problem`]: why an answer can be trusted, what to mind, what was wrong.
//! - [`stock`]: what things are made of, and where each value was published.
//! - [`sheets`]: laying parts on sheets, and the order of cuts.
//! - [`drawing`]: shapes and dimensions in millimetres, as SVG and DXF.
//! - [`cards`]: one calculation a file, all of the same shape.
//! - [`as_text`]: inputs as the text in which they are kept, and back.
//! - [`cabinet`]: a whole cabinet, put together from what the cards say.
//! - [`job`]: a cabinet under a name, as it is kept and passed on.
//!
//! Pure functions: nothing here reads a clock, a setting or a file, and nothing panics on any input.

pub mod as_text;
pub mod cabinet;
pub mod cards;
pub mod caution;
pub mod drawing;
pub mod job;
mod mark;
pub mod measure;
pub mod problem;
pub mod sheets;
pub mod source;
pub mod stock;
pub mod working;
