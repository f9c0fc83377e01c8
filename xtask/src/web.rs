//! `cargo xtask build`: the web app in one folder, and the same pages for the native window.

use crate::halt::{AtFile, Halt};
use crate::{call, css, precache, tree, wasm};
use flate2::{Compression, write::GzEncoder};
use std::fs;
use std::io::Write;
use std::path::Path;
use std::process::Command;
use wasm_bindgen_cli_support::Bindgen;

const WASM: &str = "scantling_bg.wasm";
const WORKER: &str = "sw.js";

/// What the page takes from the icons.
const ICONS: [(&str, &str); 4] = [
    ("scantling.svg", "icon.svg"),
    ("web-192.png", "icon-192.png"),
    ("web-512.png", "icon-512.png"),
    ("web-512-maskable.png", "icon-512-maskable.png"),
];

pub(crate) fn build() -> Result<(), Halt> {
    println!("Building the pages.");
    let mut command = wasm::cargo_build()?;
    command.args(["--package", "scantling-ui", "--profile", "web"]);
    let what = "Building the pages";
    let module = call::built(what, &mut command)?
        .into_iter()
        .find(|file| file.extension().is_some_and(|extension| extension == "wasm"))
        .ok_or_else(|| Halt::NotMade { what: what.to_owned(), made: "a .wasm file".to_owned() })?;
    let files = files(&module)?;

    let web = tree::web();
    write(&web, &files, &[])?;
    let worker = precache::worker(&read_static(WORKER)?, &files);
    fs::write(web.join(WORKER), &worker).at("written", web.join(WORKER))?;
    // Tauri sends the window a policy of its own, which lets the page call the two commands; both policies would
    // hold at once, so the page's own stays out. Nor is there anything for a worker or an installer to do.
    write(&tree::window(), &files, &["manifest.webmanifest"])?;
    let index = tree::window().join("index.html");
    fs::write(&index, without_policy(&read_static("index.html")?)).at("written", &index)?;

    let total: usize = files.iter().map(|(_, content)| gzipped(content)).sum::<usize>() + gzipped(worker.as_bytes());
    println!("The web app is in {}: {} files, {:.1} KB gzip -9.", web.display(), files.len() + 1, kilobytes(total));
    for (path, content) in &files {
        println!("  {:>7.1} KB  {path}", kilobytes(gzipped(content)));
    }
    Ok(())
}

/// How large the web app is when sent, in bytes: every file by itself under `gzip -9`.
pub(crate) fn size() -> Result<usize, Halt> {
    let web = tree::web();
    let files = tree::files_below(&web).map_err(|_| Halt::NotBuilt(web))?;
    files.iter().map(|path| Ok(gzipped(&fs::read(path).at("read", path)?))).sum()
}

/// Every file of the app but the worker, by the path that the page asks for.
fn files(module: &Path) -> Result<Vec<(String, Vec<u8>)>, Halt> {
    let glue = tree::target().join("glue");
    Bindgen::new()
        .input_path(module)
        .out_name("scantling")
        .web(true)
        .map_err(|error| Halt::Glue(error.into()))?
        .typescript(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate(&glue)
        .map_err(|error| Halt::Glue(error.into()))?;
    if let Some(optimiser) = wasm::optimiser() {
        let file = glue.join(WASM);
        call::run("Making the program smaller", Command::new(optimiser).arg("-Oz").arg(&file).arg("-o").arg(&file))?;
    }

    let root = tree::root();
    let mut files = vec![("scantling.css".to_owned(), css::joined(&root.join("src-ui/src"))?.into_bytes())];
    for name in ["index.html", "boot.js", "manifest.webmanifest"] {
        files.push((name.to_owned(), read_static(name)?.into_bytes()));
    }
    let from_folder = |folder: &Path, name: &str| fs::read(folder.join(name)).at("read", folder.join(name));
    for name in ["scantling.js", WASM] {
        files.push((name.to_owned(), from_folder(&glue, name)?));
    }
    for (name, as_name) in ICONS {
        files.push((as_name.to_owned(), from_folder(&root.join("icons"), name)?));
    }
    files.sort();
    Ok(files)
}

fn read_static(name: &str) -> Result<String, Halt> {
    let path = tree::root().join("src-ui/static").join(name);
    fs::read_to_string(&path).at("read", &path)
}

/// Writes a folder anew, so that nothing of an older build stays in it.
fn write(folder: &Path, files: &[(String, Vec<u8>)], but: &[&str]) -> Result<(), Halt> {
    if folder.exists() {
        fs::remove_dir_all(folder).at("emptied", folder)?;
    }
    fs::create_dir_all(folder).at("made", folder)?;
    for (path, content) in files.iter().filter(|(path, _)| !but.contains(&path.as_str())) {
        fs::write(folder.join(path), content).at("written", folder.join(path))?;
    }
    Ok(())
}

/// The page without the lines that only a web server's visitor needs.
fn without_policy(index: &str) -> String {
    let only_web = ["http-equiv=\"Content-Security-Policy\"", "rel=\"manifest\""];
    index.split_inclusive('\n').filter(|line| !only_web.iter().any(|mark| line.contains(mark))).collect()
}

fn gzipped(content: &[u8]) -> usize {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    // Writing to memory does not fail; if it did, the size would be missing from the sum, not wrong in a file.
    encoder.write_all(content).and_then(|()| encoder.finish()).map_or(0, |packed| packed.len())
}

/// For showing only.
pub(crate) fn kilobytes(bytes: usize) -> f64 {
    u32::try_from(bytes).map_or(f64::INFINITY, f64::from) / 1000.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_windows_page_differs_by_the_policy_and_the_manifest_only() {
        let index = read_static("index.html").unwrap();
        let window = without_policy(&index);
        assert!(index.contains("Content-Security-Policy") && !window.contains("Content-Security-Policy"));
        assert_eq!(index.lines().count(), window.lines().count() + 2);
    }

    #[test]
    fn the_policy_of_the_page_is_the_strict_one() {
        let index = read_static("index.html").unwrap();
        let policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; \
                      font-src 'none'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; \
                      form-action 'none'";
        assert!(index.contains(&format!("content=\"{policy}\"")));
    }

    #[test]
    fn gzip_makes_repetition_small() {
        assert!(gzipped(&[b'a'; 10_000]) < 100);
        assert_eq!(kilobytes(1500).to_string(), "1.5");
    }
}
