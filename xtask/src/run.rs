//! `cargo xtask run`: the app, in its window; where there is no display, in this machine's browser.

use crate::halt::Halt;
use crate::{call, display, serve, web, window};

pub(crate) fn run() -> Result<(), Halt> {
    if !display::is_there() {
        println!("There is no display here for a window (neither DISPLAY nor WAYLAND_DISPLAY is set).");
        return serve(None);
    }
    web::build()?;
    println!("Building the window.");
    let app = window::build()?;
    println!("Opening the window.");
    call::run("The window", &mut call::program(app))
}

/// `cargo xtask serve`: the same pages for a browser, whether there is a display or not.
pub(crate) fn serve(port: Option<u16>) -> Result<(), Halt> {
    web::build()?;
    serve::serve(port)
}
