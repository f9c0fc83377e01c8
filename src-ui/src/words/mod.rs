//! Words: every label, hint and button comes from the Fluent files in `locales/`, which `build.rs` turns into a table.

use std::borrow::Cow;
use yew::AttrValue;

include!(concat!(env!("OUT_DIR"), "/words.rs"));

/// A value that is put into a text.
pub enum Value<'a> {
    /// Words, or a figure that is written already.
    Text(Cow<'a, str>),
    /// A number of things.
    Count(u32),
}

impl<'a> From<&'a str> for Value<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Value<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl From<u32> for Value<'_> {
    fn from(count: u32) -> Self {
        Self::Count(count)
    }
}

thread_local! {
    /// The words of each key, in the order of the keys.
    static ROWS: Vec<&'static str> = WORDS.split('\u{1f}').collect();
}

/// The words of a key as they stand in the table, whose keys are sorted.
fn find(key: &str) -> Option<&'static str> {
    let row = KEYS.binary_search(&key).ok()?;
    ROWS.with(|rows| rows.get(row).copied())
}

/// The words of a key; the key itself where there are none, which a rule test finds.
pub fn say(key: &str) -> AttrValue {
    match find(key) {
        Some(words) if !words.contains('{') => AttrValue::Static(words),
        Some(_) | None => key.to_owned().into(),
    }
}

/// The words of a key with values in them.
pub fn say_with<const N: usize>(key: &str, values: [(&str, Value); N]) -> AttrValue {
    say_with_all(key, &values)
}

fn say_with_all(key: &str, values: &[(&str, Value)]) -> AttrValue {
    let mut text = String::new();
    match find(key) {
        Some(words) => write(&mut text, words, values),
        None => text.push_str(key),
    }
    text.into()
}

/// Text as it stands, the value of `{name}`, and of `{name|one|other}` the first where the count of that name is one,
/// else the second.
fn write(text: &mut String, words: &str, values: &[(&str, Value)]) {
    let value = |name: &str| values.iter().find(|(known, _)| *known == name).map(|(_, value)| value);
    let mut rest = words;
    while let Some((before, braced)) = rest.split_once('{') {
        text.push_str(before);
        let (inside, after) = split(braced, '}');
        let (name, forms) = split(inside, '|');
        if forms.is_empty() {
            match value(name) {
                Some(Value::Text(words)) => text.push_str(words),
                Some(Value::Count(count)) => text.push_str(&count.to_string()),
                // A value that was not given shows by its name, so that it is seen.
                None => text.push_str(name),
            }
        } else {
            let (one, other) = split(forms, '|');
            write(text, if matches!(value(name), Some(Value::Count(1))) { one } else { other }, values);
        }
        rest = after;
    }
    text.push_str(rest);
}

/// What stands before the first such sign outside of further braces, and what comes after it.
fn split(text: &str, sign: char) -> (&str, &str) {
    let mut depth = 0_u32;
    for (at, letter) in text.char_indices() {
        match letter {
            _ if letter == sign && depth == 0 => return (&text[..at], &text[at + sign.len_utf8()..]),
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => (),
        }
    }
    (text, "")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_values_and_plurals_come_from_the_files() {
        assert_eq!(say("close"), "Close");
        assert_eq!(say("no-such-key"), "no-such-key");
        assert_eq!(say_with("field-echo", [("value", "31 1/2 in".into())]), "= 31 1/2 in");
        for (count, want) in [(1, "1 strip"), (0, "0 strips"), (4, "4 strips")] {
            assert_eq!(say_with("bevelled-strips-strips", [("count", Value::from(count))]), want);
        }
    }

    #[test]
    fn the_table_is_sorted_so_that_keys_are_found() {
        assert!(KEYS.is_sorted());
        assert_eq!(KEYS.len(), WORDS.split('\u{1f}').count());
        assert!(KEYS.iter().zip(WORDS.split('\u{1f}')).all(|(key, words)| find(key) == Some(words)));
    }

    #[test]
    fn values_stand_in_plurals_and_after_them() {
        let words = "{n|{n} part of {all}|{n} parts of {all}}, {missing}|{n||s}.";
        for (count, want) in [(1, "1 part of 9, missing|."), (2, "2 parts of 9, missing|s.")] {
            let mut text = String::new();
            write(&mut text, words, &[("n", count.into()), ("all", "9".into())]);
            assert_eq!(text, want);
        }
    }
}
