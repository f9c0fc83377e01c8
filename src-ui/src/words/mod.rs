//! Words: every label, hint and button comes from the Fluent files in `locales/`, which `build.rs` turns into a table.

use std::borrow::Cow;
use yew::AttrValue;

/// A piece of a text.
enum Piece {
    /// As it stands.
    Text(&'static str),
    /// The value of that name.
    Value(&'static str),
    /// The first where the count of that name is one, else the second.
    Plural(&'static str, &'static [Piece], &'static [Piece]),
}

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

/// The pieces of a key. The table is sorted by key.
fn find(key: &str) -> Option<&'static [Piece]> {
    let row = WORDS.binary_search_by_key(&key, |(key, _)| key).ok()?;
    WORDS.get(row).map(|(_, pieces)| *pieces)
}

/// The words of a key; the key itself where there are none, which a rule test finds.
pub fn say(key: &str) -> AttrValue {
    match find(key) {
        Some([Piece::Text(text)]) => AttrValue::Static(text),
        Some(_) | None => key.to_owned().into(),
    }
}

/// The words of a key with values in them.
pub fn say_with<const N: usize>(key: &str, values: [(&str, Value); N]) -> AttrValue {
    let mut text = String::new();
    match find(key) {
        Some(pieces) => write(&mut text, pieces, &values),
        None => text.push_str(key),
    }
    text.into()
}

fn write(text: &mut String, pieces: &[Piece], values: &[(&str, Value)]) {
    let value = |name: &str| values.iter().find(|(known, _)| *known == name).map(|(_, value)| value);
    for piece in pieces {
        match piece {
            Piece::Text(words) => text.push_str(words),
            Piece::Value(name) => match value(name) {
                Some(Value::Text(words)) => text.push_str(words),
                Some(Value::Count(count)) => text.push_str(&count.to_string()),
                // A value that was not given shows by its name, so that it is seen.
                None => text.push_str(name),
            },
            Piece::Plural(name, one, other) => {
                let is_one = matches!(value(name), Some(Value::Count(1)));
                write(text, if is_one { one } else { other }, values);
            }
        }
    }
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
        assert!(WORDS.is_sorted_by_key(|(key, _)| key));
        assert!(WORDS.iter().all(|(key, _)| find(key).is_some()));
    }
}
