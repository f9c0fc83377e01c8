//! Sheet layouts checked from outside. Nothing here uses the solver: only the plain types of what goes in and comes out.
//!
//! - [`check`]: whether the parts lie as they may, and can be cut apart; its [`Flaw`]s
//! - [`replay`]: the cuts made one after another, from full sheets to the last piece; its [`Misstep`]s
//! - [`brute`]: the fewest sheets and the least cost of small jobs, by trying every layout there is
//! - [`jobs`]: random jobs of every kind, from a seed
//! - [`instances`]: the published ones, and more by the published rules

pub mod brute;
mod check;
mod exact;
mod fit;
mod flaw;
pub mod instances;
pub mod jobs;
mod misstep;
pub mod random;
mod replay;
mod separate;

pub use check::check;
pub use flaw::{Flaw, Which};
pub use misstep::Misstep;
pub use replay::replay;
