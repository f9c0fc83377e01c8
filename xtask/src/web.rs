//! `cargo xtask build`: the web app in one folder, and the same pages for the native window.

use crate::halt::{AtFile, Halt};
use crate::{call, compiler, css, packing, portable, precache, terse, tree};
use flate2::{Compression, write::GzEncoder};
use std::fs;
use std::io::Write;
use std::path::Path;
use std::process::Command;
use wasm_bindgen_cli_support::Bindgen;

/// The web app in one file.
pub(crate) const PORTABLE: &str = "scantling.html";
pub(crate) const WASM: &str = "scantling_bg.wasm";

/// What the page takes from the icons.
const ICONS: [(&str, &str); 4] = [
    ("scantling.svg", "icon.svg"),
    ("web-192.png", "icon-192.png"),
    ("web-512.png", "icon-512.png"),
    ("web-512-maskable.png", "icon-512-maskable.png"),
];

pub(crate) fn build() -> Result<(), Halt> {
    println!("Building the pages.");
    let mut command = compiler::BROWSER.cargo("build")?;
    command.args(["--package", "scantling-ui", "--profile", "web"]);
    let what = "Building the pages";
    let module = call::built(what, &mut command)?
        .into_iter()
        .find(|file| file.extension().is_some_and(|extension| extension == "wasm"))
        .ok_or_else(|| Halt::NotMade { what: what.to_owned(), made: "a .wasm file".to_owned() })?;
    let mut files = files(&module)?;
    write(&tree::window(), &for_window(&files))?;
    let worker = precache::worker(&read_static("sw.js")?, &files);
    write(&tree::portable(), &[(PORTABLE.to_owned(), portable::page(&files)?.into_bytes())])?;
    files.push(("sw.js".to_owned(), sent(worker.as_bytes())));
    let web = tree::web();
    write(&web, &files)?;

    println!("The web app is in {}: {} files, gzip -9 in KB:", web.display(), files.len());
    for (path, content) in &files {
        println!("  {:>7.1}  {path}", kilobytes(gzipped(content)));
    }
    println!("  {:>7.1}  together", kilobytes(size()?));
    Ok(())
}

/// The web app in one file. It is made along with the rest: this says where it is.
pub(crate) fn portable() -> Result<(), Halt> {
    build()?;
    let file = tree::portable().join(PORTABLE);
    let size = fs::metadata(&file).at("read", &file)?.len();
    let size = kilobytes(usize::try_from(size).unwrap_or(usize::MAX));
    println!(
        "\nAll of it in one file of {size:.0} KB, to be opened by any browser made since 2023:\n  {}",
        file.display()
    );
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
    if let Some(optimiser) = compiler::wasm_optimiser() {
        let file = glue.join(WASM);
        call::run("Making the program smaller", Command::new(optimiser).arg("-Oz").arg(&file).arg("-o").arg(&file))?;
    }

    let root = tree::root();
    let mut files = vec![("scantling.css".to_owned(), css::joined(&root.join("src-ui/src"))?.into_bytes())];
    for name in ["index.html", "boot.js", "manifest.webmanifest"] {
        files.push((name.to_owned(), read_static(name)?.into_bytes()));
    }
    let from_folder = |folder: &Path, name: &str| fs::read(folder.join(name)).at("read", folder.join(name));
    files.push(("scantling.js".to_owned(), from_folder(&glue, "scantling.js")?));
    files.push((WASM.to_owned(), packing::packed_well(&from_folder(&glue, WASM)?)?));
    for (name, as_name) in ICONS {
        files.push((as_name.to_owned(), from_folder(&root.join("icons"), name)?));
    }
    for (name, content) in &mut files {
        if name.ends_with(".js") || name.ends_with(".css") {
            *content = sent(content);
        }
    }
    files.sort();
    Ok(files)
}

/// A script or style sheet as it is sent. The glue is made by another program: as long as it has no text over several
/// lines, it may be shortened too.
fn sent(content: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(content);
    if terse::spans_lines(&text) { content.to_vec() } else { terse::terse(&text).into_bytes() }
}

pub(crate) fn read_static(name: &str) -> Result<String, Halt> {
    let path = tree::root().join("src-ui/static").join(name);
    fs::read_to_string(&path).at("read", &path)
}

/// Makes a folder hold these files and no others. What is already as it should be is not touched: the window is
/// built anew whenever a file of its pages is newer.
fn write(folder: &Path, files: &[(String, Vec<u8>)]) -> Result<(), Halt> {
    fs::create_dir_all(folder).at("made", folder)?;
    for path in tree::files_below(folder).at("read", folder)? {
        if !files.iter().any(|(name, _)| folder.join(name) == path) {
            fs::remove_file(&path).at("removed", &path)?;
        }
    }
    for (name, content) in files {
        let path = folder.join(name);
        if fs::read(&path).ok().as_ref() != Some(content) {
            fs::write(&path, content).at("written", &path)?;
        }
    }
    Ok(())
}

/// The same pages for the native window. Tauri sends it a policy of its own, which lets the page call the window's
/// two commands; both policies would hold at once, so the page's own stays out. Nor is there anything to install.
fn for_window(files: &[(String, Vec<u8>)]) -> Vec<(String, Vec<u8>)> {
    let only_web = ["http-equiv=\"Content-Security-Policy\"", "rel=\"manifest\""];
    let of_window = |(name, content): &(String, Vec<u8>)| match name.as_str() {
        "manifest.webmanifest" => None,
        "index.html" => {
            let index = String::from_utf8_lossy(content);
            let kept = index.split_inclusive('\n').filter(|line| !only_web.iter().any(|mark| line.contains(mark)));
            Some((name.clone(), kept.collect::<String>().into_bytes()))
        }
        _ => Some((name.clone(), content.clone())),
    };
    files.iter().filter_map(of_window).collect()
}

/// The content under `gzip -9`.
pub(crate) fn packed(content: &[u8]) -> Vec<u8> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    // Writing to memory does not fail; if it did, the app in one file would not start in its test.
    encoder.write_all(content).and_then(|()| encoder.finish()).unwrap_or_default()
}

fn gzipped(content: &[u8]) -> usize {
    packed(content).len()
}

/// For showing only.
pub(crate) fn kilobytes(bytes: usize) -> f64 {
    u32::try_from(bytes).map_or(f64::INFINITY, f64::from) / 1000.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_windows_pages_differ_by_the_policy_and_the_manifest_only() {
        let names = ["index.html", "boot.js", "manifest.webmanifest"];
        let web = names.map(|name| (name.to_owned(), read_static(name).unwrap().into_bytes()));
        let window = for_window(&web);
        assert_eq!(window.len(), 2);
        assert_eq!(window[1], web[1]);
        let [before, after] = [&web[0], &window[0]].map(|(_, content)| String::from_utf8(content.clone()).unwrap());
        let left_out: Vec<_> = before.lines().filter(|line| !after.contains(line)).collect();
        assert_eq!(left_out.len(), 2, "{left_out:?}");
        assert_eq!(before.lines().count(), after.lines().count() + 2);
    }

    #[test]
    fn a_folder_is_left_with_these_files_and_no_others() {
        let folder = std::env::temp_dir().join(format!("scantling-web-{}", std::process::id()));
        let files = |pairs: &[(&str, &str)]| -> Vec<(String, Vec<u8>)> {
            pairs.iter().map(|(name, content)| ((*name).to_owned(), content.as_bytes().to_vec())).collect()
        };
        write(&folder, &files(&[("a", "1"), ("b", "2"), ("old", "3")])).unwrap();
        let same = folder.join("a").metadata().unwrap().modified().unwrap();
        write(&folder, &files(&[("a", "1"), ("b", "4")])).unwrap();
        let left: Vec<_> = tree::files_below(&folder).unwrap();
        let texts: Vec<_> = left.iter().map(|path| fs::read_to_string(path).unwrap()).collect();
        let still = folder.join("a").metadata().unwrap().modified().unwrap();
        fs::remove_dir_all(&folder).unwrap();
        assert_eq!(left, [folder.join("a"), folder.join("b")]);
        assert_eq!(texts, ["1", "4"]);
        assert_eq!(still, same);
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
