//! What a number is.
//!
//! Lengths are exact: a [`Length`] is a fraction of a millimetre, and an inch is 127/5 of one, so both systems mix
//! without drift. A [`Reading`] is what a person typed, kept as typed; [`Reading::length`] reads it.
//! Rounding happens once, at the end, to the [`Graduation`] of the tool in hand, and says what it cost.
//! Estimates (loads, sag, sines) are `f64`, named with their unit; [`Length::from_estimate_mm`] is the one door back.
#![deny(clippy::float_arithmetic)]

mod angle;
mod figure;
mod graduation;
mod length;
mod length_error;
mod quantity;
mod range;
mod ratio;
mod read_error;
mod reading;
mod style;
mod unit;

pub use angle::{Angle, AngleReading};
pub use figure::{Figure, FigureKind};
pub use graduation::{Graduation, Rounded, Rounding};
pub use length::Length;
pub use length_error::LengthError;
pub use quantity::{Measure, Quantity};
pub use range::Range;
pub use ratio::Ratio;
pub use read_error::ReadError;
pub use reading::Reading;
pub use style::{InchParts, Style};
pub use unit::Unit;
