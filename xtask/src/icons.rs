//! `cargo xtask icons`: every icon from the one drawing.

use crate::halt::{AtFile, Halt};
use crate::{call, npm, tree};
use std::fs;
use std::path::Path;

/// What the window and its package need, under the names that Tauri gives them.
const OF_THE_WINDOW: [&str; 5] = ["32x32.png", "128x128.png", "128x128@2x.png", "icon.icns", "icon.ico"];

/// What the web app needs: side in pixels, name.
const OF_THE_WEB: [(&str, &str); 2] = [("192", "web-192.png"), ("512", "web-512.png")];

/// A system may cut an icon to any shape that holds the middle four fifths. So the drawing, which fills its own view
/// box, is given a box of 5/4 the size to stand in.
const VIEW_BOX: &str = "viewBox=\"0 0 512 512\"";
const WIDER_BOX: &str = "viewBox=\"-64 -64 640 640\"";

pub(crate) fn icons() -> Result<(), Halt> {
    npm::install()?;
    let icons = tree::root().join("icons");
    let drawing = icons.join("scantling.svg");
    let work = tree::target().join("icons");
    fs::create_dir_all(&work).at("made", &work)?;

    draw(&drawing, &work, None)?;
    for name in OF_THE_WINDOW {
        take(&work.join(name), &icons.join(name))?;
    }
    for (side, name) in OF_THE_WEB {
        draw(&drawing, &work, Some(side))?;
        take(&work.join(format!("{side}x{side}.png")), &icons.join(name))?;
    }
    let wider = work.join("maskable.svg");
    let text = fs::read_to_string(&drawing).at("read", &drawing)?;
    fs::write(&wider, in_wider_box(&text)).at("written", &wider)?;
    draw(&wider, &work, Some("512"))?;
    take(&work.join("512x512.png"), &icons.join("web-512-maskable.png"))?;
    println!("The icons are in {}", icons.display());
    Ok(())
}

/// Draws every size that Tauri knows, or the one asked for.
fn draw(drawing: &Path, into: &Path, side: Option<&str>) -> Result<(), Halt> {
    let mut command = npm::tauri();
    command.arg("icon").arg(drawing).arg("--output").arg(into);
    if let Some(side) = side {
        command.args(["--png", side]);
    }
    call::run("Drawing the icons", &mut command)
}

fn take(from: &Path, to: &Path) -> Result<(), Halt> {
    fs::copy(from, to).at("copied", from).map(|_| ())
}

fn in_wider_box(drawing: &str) -> String {
    drawing.replacen(VIEW_BOX, WIDER_BOX, 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_drawing_has_the_box_that_is_widened() {
        let drawing = fs::read_to_string(tree::root().join("icons/scantling.svg")).unwrap();
        assert!(in_wider_box(&drawing).contains(WIDER_BOX));
    }
}
