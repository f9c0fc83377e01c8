//! The check rows of the project's handbook, a module a card.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "the way in which a check fails")]

mod angles;
mod back_panel;
mod bevelled_strips;
mod cabinet;
mod clothes_rail;
mod cup_hinge;
mod groove;
mod hanging;
mod hole_rows;
mod joints;
mod materials;
mod sheet_layout;
mod shelf;
mod spacing;
mod wall_cleat;
mod wood_movement;
