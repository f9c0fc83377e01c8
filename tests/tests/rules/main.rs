//! Checks on the repository itself: what the rooms may know of each other, words, sizes, and what must not be in it.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test that cannot go on has failed")]

mod calc;
mod developers;
mod room;
mod rust;
mod tidy;
mod words;
