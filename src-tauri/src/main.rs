//! The native window.

// Without this Windows would open a console beside it.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    scantling_app::run();
}
