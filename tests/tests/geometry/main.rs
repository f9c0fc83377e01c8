//! The cards' geometry against independent libraries, a module a card. Nothing here uses a formula of the cards.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "the way in which a check fails")]

mod angles;
mod back_panel;
mod bevelled_strips;
mod cabinet;
mod cabinet_joints;
mod cabinet_outside;
mod clothes_rail;
mod cup_hinge;
mod drawings;
mod groove;
mod hanging;
mod hole_rows;
mod joints;
mod materials;
mod shelf;
mod spacing;
mod wall_cleat;
mod wood_movement;
