//! `cargo xtask bundle`: the package that a desktop installs.

use crate::halt::{AtFile, Halt};
use crate::{call, need, npm, tree, web};

pub(crate) fn bundle() -> Result<(), Halt> {
    need::install(&[&need::WEB_VIEW, &need::NPM])?;
    npm::install()?;
    web::build()?;
    println!("Building and packing the window.");
    let folder = tree::target().join("release/bundle/deb");
    if folder.exists() {
        // A package of another version would be taken for this one.
        std::fs::remove_dir_all(&folder).at("emptied", &folder)?;
    }
    let what = "Packing the window";
    call::run(what, npm::tauri().args(["build", "--bundles", "deb"]))?;
    let files = tree::files_below(&folder).at("read", &folder)?;
    let package = files.into_iter().find(|path| path.extension().is_some_and(|extension| extension == "deb"));
    let package = package.ok_or_else(|| Halt::NotMade { what: what.to_owned(), made: "a .deb file".to_owned() })?;
    println!("The package is {}", package.display());
    Ok(())
}
