//! Scripts and style sheets as they are sent: without what only people read.

/// Leaves out indentation, blank lines, and comments that begin a line. What runs stays line by line as it was written.
///
/// A text that spans lines within quotes would be changed by this; [`spans_lines`] finds one.
pub(crate) fn terse(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut in_comment = false;
    for line in text.lines().map(str::trim) {
        if in_comment || line.starts_with("/*") {
            // A comment is closed at the end of a line, or what follows it would be lost.
            in_comment = !line.ends_with("*/");
        } else if !line.is_empty() && !line.starts_with("//") {
            kept.push_str(line);
            kept.push('\n');
        }
    }
    kept
}

/// Whether a text between backquotes runs over a line's end.
pub(crate) fn spans_lines(text: &str) -> bool {
    text.lines().any(|line| line.matches('`').count() % 2 == 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comments_and_indentation_are_left_out() {
        for (text, want) in [
            ("  a {\n    b: c; /* why */\n  }\n", "a {\nb: c; /* why */\n}\n"),
            ("/* one */\na\n", "a\n"),
            ("/**\n * much\n */\na\n\nb // kept\n", "a\nb // kept\n"),
            ("// gone\nlet a = \"//\";\n", "let a = \"//\";\n"),
        ] {
            assert_eq!(terse(text), want, "{text}");
        }
    }

    #[test]
    fn no_script_or_sheet_of_ours_is_changed_in_meaning() {
        let mut seen = 0;
        for path in crate::tree::files_below(&crate::tree::root().join("src-ui")).unwrap() {
            if path.extension().is_some_and(|extension| extension == "js" || extension == "css") {
                let text = std::fs::read_to_string(&path).unwrap();
                let comments_end_lines = text.lines().all(|line| {
                    line.rfind("*/")
                        .is_none_or(|at| line.trim_end().len() == at + 2 || !line.trim_start().starts_with("/*"))
                });
                assert!(!spans_lines(&text) && comments_end_lines, "{}", path.display());
                seen += 1;
            }
        }
        assert!(seen > 5);
    }
}
