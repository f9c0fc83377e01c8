//! Words: every key that is used has words, and all words are used.

use crate::room::texts;
use crate::rust::{Quoted, Source};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use scantling::cards::CARDS;
use std::collections::{BTreeMap, BTreeSet};

/// The words of a key: which file, and the values that have to be given.
struct Words {
    file: String,
    values: BTreeSet<String>,
}

/// Every key in the files of words.
fn known() -> BTreeMap<String, Words> {
    let mut known = BTreeMap::new();
    for (file, text) in texts("src-ui/locales/en", ".ftl") {
        let resource = match fluent_syntax::parser::parse(text.as_str()) {
            Ok(resource) => resource,
            Err((_, errors)) => panic!("{file} cannot be read: {errors:?}"),
        };
        for entry in &resource.body {
            match entry {
                Entry::Message(message) => {
                    let pattern = message.value.as_ref().unwrap_or_else(|| panic!("{}: no words", message.id.name));
                    assert!(message.attributes.is_empty(), "{}: attributes are not used here", message.id.name);
                    let words = Words { file: file.clone(), values: values(pattern) };
                    let before = known.insert(message.id.name.to_owned(), words);
                    assert!(
                        before.is_none(),
                        "{} has words twice, in {file} and {}",
                        message.id.name,
                        before.unwrap().file
                    );
                }
                Entry::Term(_) | Entry::Junk { .. } => panic!("{file}: only plain messages are used here"),
                _ => {}
            }
        }
    }
    known
}

/// The values a pattern needs, its choices included.
fn values(pattern: &Pattern<&str>) -> BTreeSet<String> {
    fn inline(expression: &InlineExpression<&str>, into: &mut BTreeSet<String>) {
        match expression {
            InlineExpression::VariableReference { id } => {
                into.insert(id.name.to_owned());
            }
            InlineExpression::FunctionReference { arguments, .. } => {
                arguments.positional.iter().for_each(|argument| inline(argument, into));
            }
            InlineExpression::Placeable { expression } => whole(expression, into),
            _ => {}
        }
    }
    fn whole(expression: &Expression<&str>, into: &mut BTreeSet<String>) {
        match expression {
            Expression::Inline(one) => inline(one, into),
            Expression::Select { selector, variants } => {
                inline(selector, into);
                variants.iter().for_each(|variant| into.extend(values(&variant.value)));
            }
        }
    }
    let mut found = BTreeSet::new();
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            whole(expression, &mut found);
        }
    }
    found
}

/// How a text in quotes is used, as far as words go.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Use {
    /// Its words are asked for as they are.
    Said,
    /// Its words are asked for with values in them.
    SaidWith,
    /// Something else, such as the name of a class.
    Other,
}

/// Everything that begins like this is the id of a field or a key of its card, and so has words.
fn is_of_a_screen(text: &str) -> bool {
    let screens = CARDS.iter().map(|card| card.slug).chain(["settings"]);
    let key = text.chars().all(|letter| letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-');
    key && screens.into_iter().any(|screen| text.strip_prefix(screen).is_some_and(|rest| rest.starts_with('-')))
}

fn used_as(quoted: &Quoted) -> Use {
    let called = |name: &str| {
        let before = quoted
            .before
            .strip_suffix(&format!("{name}(&"))
            .or_else(|| quoted.before.strip_suffix(&format!("{name}(")));
        before.is_some_and(|before| !before.ends_with(|letter: char| letter.is_alphanumeric() || letter == '_'))
    };
    match () {
        () if called("say_with") => Use::SaidWith,
        () if called("say") || is_of_a_screen(&quoted.text) => Use::Said,
        () => Use::Other,
    }
}

/// Every text in quotes on the screens' side, with where it stands; tests may name keys that are not there.
fn quoted() -> Vec<(String, Quoted)> {
    let mut all = Vec::new();
    for (path, text) in texts("src-ui/src", ".rs") {
        let source = Source::read(&text);
        let shown = Source::read(&text[..]).without_tests().matches("\"\"").count();
        all.extend(source.quoted.into_iter().take(shown).map(|quoted| (path.clone(), quoted)));
    }
    all
}

#[test]
fn every_key_that_is_used_has_words() {
    let known = known();
    for (path, quoted) in quoted() {
        let used = used_as(&quoted);
        match (used, known.get(&quoted.text)) {
            (Use::Other, _) => {}
            (_, None) => panic!("{path}: {:?} has no words", quoted.text),
            (Use::Said, Some(words)) => {
                // A key that is only passed on may be given its values further on.
                let passed_on = !quoted.before.ends_with("say(");
                let needs = &words.values;
                assert!(passed_on || needs.is_empty(), "{path}: {:?} needs {needs:?}", quoted.text);
            }
            (Use::SaidWith, Some(words)) => {
                assert!(!words.values.is_empty(), "{path}: {:?} takes no values", quoted.text);
            }
        }
    }
}

#[test]
fn all_words_are_used() {
    let used: BTreeSet<String> = quoted().into_iter().map(|(_, quoted)| quoted.text).collect();
    for (key, words) in known() {
        assert!(used.contains(&key), "{}: {key} is used nowhere", words.file);
    }
}

#[test]
fn words_belong_to_the_file_of_their_screen() {
    for (key, words) in known() {
        for slug in CARDS.iter().map(|card| card.slug).chain(["settings"]) {
            let of_it = key.strip_prefix(slug).is_some_and(|rest| rest.is_empty() || rest.starts_with('-'));
            let its_file = words.file.ends_with(&format!("/{slug}.ftl"));
            let title = words.file.ends_with("/frame.ftl") && key == "settings-title";
            assert!(of_it == its_file || title, "{key} stands in {}", words.file);
        }
    }
}

#[test]
fn uses_are_told_apart() {
    let source = Source::read(
        "say(\"back\"); say_with(\"cost-tie\", []); essay(\"x\"); f.length(\"settings-kerf\"); a.say(\"k\")",
    );
    let uses: Vec<Use> = source.quoted.iter().map(used_as).collect();
    assert_eq!(uses, [Use::Said, Use::SaidWith, Use::Other, Use::Said, Use::Said]);
}
