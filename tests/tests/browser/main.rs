//! The web app in Chromium: the scenarios that both shells share, and what only a browser has or can show.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "a test that cannot go on has failed")]

mod accessibility;
mod addresses;
mod cabinet;
mod clipboard;
mod jobs;
mod layout;
mod offline;
mod origins;
mod paper;
mod pictures;
mod portable;
mod printed;
mod saw;
mod search;
mod shared;
mod sheet_layout;
mod storage;
mod touch;
mod two_windows;
mod units;
mod version;
