//! Joins the style sheets that stand beside the widgets into one.

use crate::halt::{AtFile, Halt};
use crate::tree;
use std::path::Path;

/// The order in which layers win, whatever the order of the files.
const LAYERS: &str = "@layer tokens, base, widgets, cards;\n";

/// All style sheets below a folder as one text.
pub(crate) fn joined(folder: &Path) -> Result<String, Halt> {
    let mut paths = tree::files_below(folder).at("read", folder)?;
    paths.retain(|path| path.extension().is_some_and(|extension| extension == "css"));
    paths.sort_by_key(|path| (rank(path), path.clone()));
    let mut sheet = String::from(LAYERS);
    for path in paths {
        sheet.push_str(&std::fs::read_to_string(&path).at("read", &path)?);
    }
    Ok(sheet)
}

/// Tokens first, then the base; the rest by path.
fn rank(path: &Path) -> u8 {
    match path.file_name().and_then(|name| name.to_str()) {
        Some("tokens.css") => 0,
        Some("base.css") => 1,
        _ => 2,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    #[test]
    fn tokens_come_first_then_the_base_then_the_rest_by_path() {
        let folder = std::env::temp_dir().join(format!("scantling-css-{}", std::process::id()));
        for (path, text) in [
            ("base.css", "base;\n"),
            ("cards/shelf.css", "shelf;\n"),
            ("tokens.css", "tokens;\n"),
            ("widgets/answer.css", "answer;\n"),
            ("widgets/answer.rs", "not a style\n"),
            ("app.css", "app;\n"),
        ] {
            let path = folder.join(path);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, text).unwrap();
        }
        let sheet = joined(&folder).unwrap();
        fs::remove_dir_all(&folder).unwrap();
        assert_eq!(sheet, "@layer tokens, base, widgets, cards;\ntokens;\nbase;\napp;\nshelf;\nanswer;\n");
    }
}
