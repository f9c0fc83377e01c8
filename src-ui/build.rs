//! Turns the Fluent files in `locales/` into a table, so that the page carries words and no reader for them.
//!
//! What is read is what our words use: text, values (`{ $name }`) and plurals (`{ $count -> [one] … *[other] … }`).
//! Anything else stops the build with a sentence. In the table a value is `{name}`, and a plural `{name|one|other}`, and
//! all words are one text: pointers pack worst of all that the page carries.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::{env, fs};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    println!("cargo::rerun-if-changed=locales");
    let folder = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?).join("locales/en");
    let mut files: Vec<PathBuf> =
        fs::read_dir(&folder)?.map(|entry| Ok(entry?.path())).collect::<std::io::Result<_>>()?;
    files.sort();
    let mut table = BTreeMap::new();
    for file in files {
        for (key, words) in words(&file)? {
            if table.insert(key.clone(), words).is_some() {
                return Err(format!("{key} stands in more than one file of words.").into());
            }
        }
    }
    let keys: Vec<&String> = table.keys().collect();
    let words: Vec<&str> = table.values().map(String::as_str).collect();
    let code = format!("static KEYS: &[&str] = &{keys:?};\nstatic WORDS: &str = {:?};\n", words.join("\u{1f}"));
    fs::write(PathBuf::from(env::var("OUT_DIR")?).join("words.rs"), code)?;
    Ok(())
}

/// Every key of a file, with its words as the table has them.
fn words(file: &Path) -> Result<Vec<(String, String)>, String> {
    let text = fs::read_to_string(file).map_err(|error| format!("{}: {error}", file.display()))?;
    let read = fluent_syntax::parser::parse(text.as_str())
        .map_err(|(_, errors)| format!("{} cannot be read as Fluent: {errors:?}", file.display()))?;
    let mut found = Vec::new();
    for entry in read.body {
        let Entry::Message(message) = entry else { continue };
        let key = message.id.name.to_owned();
        let pattern = message.value.ok_or_else(|| format!("{key} has no words."))?;
        found.push((key.clone(), written(&pattern).map_err(|what| format!("{key}: {what}"))?));
    }
    Ok(found)
}

fn written(pattern: &Pattern<&str>) -> Result<String, String> {
    pattern.elements.iter().map(piece).collect()
}

fn piece(element: &PatternElement<&str>) -> Result<String, String> {
    match element {
        PatternElement::TextElement { value } if value.contains(['{', '|', '}', '\u{1f}']) => {
            Err(format!("“{value}” has a sign in it that the table needs for itself."))
        }
        PatternElement::TextElement { value } => Ok((*value).to_owned()),
        PatternElement::Placeable { expression: Expression::Inline(inline) } => {
            Ok(format!("{{{}}}", variable(inline)?))
        }
        PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
            let [one, other] = ["one", "other"].map(|wanted| variants.iter().find(|variant| is_for(variant, wanted)));
            let (Some(one), Some(other), 2) = (one, other, variants.len()) else {
                return Err("a plural has the forms [one] and *[other], in English.".to_owned());
            };
            let (one, other) = (written(&one.value)?, written(&other.value)?);
            Ok(format!("{{{}|{one}|{other}}}", variable(selector)?))
        }
    }
}

fn variable<'a>(inline: &InlineExpression<&'a str>) -> Result<&'a str, String> {
    match inline {
        InlineExpression::VariableReference { id } => Ok(id.name),
        other => Err(format!("only values such as $name are read here, not {other:?}.")),
    }
}

fn is_for(variant: &Variant<&str>, wanted: &str) -> bool {
    matches!(&variant.key, VariantKey::Identifier { name } if *name == wanted)
}
