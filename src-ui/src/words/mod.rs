//! Words: every label, hint and button comes from the Fluent files in `locales/`.

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use std::cell::RefCell;
use std::collections::HashMap;
use yew::AttrValue;

/// Every file of words, by the screen it belongs to.
const ENGLISH: &[&str] = &[
    include_str!("../../locales/en/frame.ftl"),
    include_str!("../../locales/en/settings.ftl"),
    include_str!("../../locales/en/convert.ftl"),
    include_str!("../../locales/en/back-panel.ftl"),
    include_str!("../../locales/en/bevelled-strips.ftl"),
    include_str!("../../locales/en/shelf.ftl"),
    include_str!("../../locales/en/cup-hinge.ftl"),
];

struct Words {
    bundle: FluentBundle<FluentResource>,
    /// Words without arguments never change, and are asked for at every keystroke.
    plain: HashMap<String, AttrValue>,
}

thread_local! {
    static WORDS: RefCell<Words> = RefCell::new(Words::read());
}

impl Words {
    fn read() -> Self {
        let mut bundle = FluentBundle::new(vec!["en-GB".parse().unwrap_or_default()]);
        // The marks that keep mixed scripts apart would show up in what is copied to the clipboard.
        bundle.set_use_isolating(false);
        for text in ENGLISH {
            // A broken entry is left out and shows as its key; the rule tests find it.
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(read, _)| read);
            bundle.add_resource_overriding(resource);
        }
        Self { bundle, plain: HashMap::new() }
    }

    fn format(&self, key: &str, arguments: Option<&FluentArgs>) -> Option<String> {
        let pattern = self.bundle.get_message(key)?.value()?;
        Some(self.bundle.format_pattern(pattern, arguments, &mut Vec::new()).into_owned())
    }
}

/// The words of a key; the key itself where there are none.
pub fn say(key: &str) -> AttrValue {
    WORDS.with_borrow_mut(|words| {
        if let Some(known) = words.plain.get(key) {
            return known.clone();
        }
        let found = AttrValue::from(words.format(key, None).unwrap_or_else(|| key.to_owned()));
        words.plain.insert(key.to_owned(), found.clone());
        found
    })
}

/// The words of a key with values in them.
pub fn say_with<'a, const N: usize>(key: &str, values: [(&'a str, FluentValue<'a>); N]) -> AttrValue {
    let arguments: FluentArgs = values.into_iter().collect();
    WORDS.with_borrow(|words| words.format(key, Some(&arguments)).unwrap_or_else(|| key.to_owned()).into())
}
