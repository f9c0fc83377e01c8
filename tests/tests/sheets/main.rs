//! Sheet layouts against a checker, a replay of the cuts, and the best there is, none of which knows the solver.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "the way in which a check fails")]

mod broken;
mod optimal;
mod random;
mod repeatable;
mod told;
