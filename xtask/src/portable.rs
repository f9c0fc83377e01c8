//! `cargo xtask portable`: the whole app in one HTML file, for a stick, a mail or a phone's folder of files.

use crate::halt::Halt;
use crate::{terse, web};
use base64::{Engine, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// How a policy names a script or a style that stands in the page.
fn named(content: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(content)))
}

/// A text that ends neither a script nor a style by accident.
fn held(name: &str, text: String) -> Result<String, Halt> {
    if text.contains("</") { Err(Halt::NotPortable { name: name.to_owned() }) } else { Ok(text) }
}

/// The page, made of the files of the web app.
///
/// # Errors
/// [`Halt`] where one of them is missing, or would not be read as it is in one page.
pub(crate) fn page(files: &[(String, Vec<u8>)]) -> Result<String, Halt> {
    let file = |name: &str| {
        let found = files.iter().find(|(path, _)| path == name).map(|(_, content)| content.as_slice());
        found.ok_or_else(|| Halt::NotMade { what: "Building the pages".to_owned(), made: name.to_owned() })
    };
    let text = |name: &str| file(name).map(|content| String::from_utf8_lossy(content).into_owned());
    let style = held("scantling.css", text("scantling.css")?)?;
    let start = terse::terse(&web::read_static("portable.js")?);
    let script = held("scantling.js", format!("{}\n{start}", text("scantling.js")?))?;
    let program = STANDARD.encode(web::packed(file(web::WASM)?));
    let icon = STANDARD.encode(file("icon.svg")?);
    let policy = format!(
        "default-src 'none'; script-src {} 'wasm-unsafe-eval'; style-src {}; img-src data:; base-uri 'none'; form-action 'none'",
        named(&script),
        named(&style),
    );
    let mut page = String::new();
    for line in text("index.html")?.lines() {
        // Writing to a string does not fail.
        let _ = match () {
            () if line.contains("Content-Security-Policy") => {
                writeln!(page, "<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">")
            }
            () if line.contains("rel=\"manifest\"") || line.contains("apple-touch-icon") => Ok(()),
            () if line.contains("rel=\"icon\"") => {
                writeln!(page, "<link rel=\"icon\" href=\"data:image/svg+xml;base64,{icon}\">")
            }
            () if line.contains("rel=\"stylesheet\"") => writeln!(page, "<style>{style}</style>"),
            () if line.contains("src=\"boot.js\"") => Ok(()),
            () if line.contains("</body>") => writeln!(
                page,
                "<script type=\"application/gzip\" id=\"program\">{program}</script>\n<script type=\"module\">{script}</script>\n{line}"
            ),
            () => writeln!(page, "{line}"),
        };
    }
    Ok(page)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files(glue: &str) -> Vec<(String, Vec<u8>)> {
        let index = web::read_static("index.html").unwrap();
        let of = |name: &str, text: &str| (name.to_owned(), text.as_bytes().to_vec());
        vec![
            of("index.html", &index),
            of("scantling.css", "p{}"),
            of("scantling.js", glue),
            of(web::WASM, "wasm"),
            of("icon.svg", "<svg/>"),
        ]
    }

    #[test]
    fn nothing_is_left_outside() {
        let page = page(&files("const a = 1;")).unwrap();
        assert!(!page.contains("src=\"boot.js\"") && !page.contains("manifest.webmanifest"));
        let outside = page.lines().filter(|line| line.contains("href=") || line.contains("src=")).collect::<Vec<_>>();
        assert!(outside.iter().all(|line| line.contains("href=\"data:")), "{outside:?}");
        let script = page.split_once("<script type=\"module\">").unwrap().1.split_once("</script>").unwrap().0;
        assert!(page.contains(&named(script)), "the policy does not name the script");
    }

    #[test]
    fn what_would_end_the_script_is_refused() {
        let refused = page(&files("const a = '</script>';")).unwrap_err().to_string();
        assert!(refused.contains("scantling.js"), "{refused}");
    }
}
