//! Scantling checked from outside: one driver for the real browser and the real window, and the scenarios for both.
//!
//! - [`places`] what the test run has prepared; [`fault`] why a check could not be made
//! - [`server`] a web server that can be switched off; [`process`] the programs that are started, and ended
//! - [`shell`] the app in a browser or in its own window; [`page`] what a person does there; [`wait`] until it shows
//! - [`chromium`] what only the browser's tools can do: sizes, themes, touch, no network, a slow processor
//! - [`sheets`] sheet layouts: a checker of their places, a replay of their cuts, jobs to try them on
//! - [`scenarios`] what is checked in both shells; [`play`] runs one of them

pub mod chromium;
pub mod fault;
pub mod page;
pub mod places;
pub mod play;
pub mod process;
pub mod scenarios;
pub mod server;
pub mod sheets;
pub mod shell;
pub mod wait;
