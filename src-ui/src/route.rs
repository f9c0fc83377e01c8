//! Addresses: `#/` is the bench, `#/settings` the settings, `#/tape` the tape, `#/shelf` a card,
//! `#/cabinet/sheet` the cabinet's shop sheet.
//!
//! They live behind the hash, so that the same files work from a web server, in the native window and from a folder.

use yew::prelude::*;

/// What is on the screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// All cards.
    Bench,
    /// Units, tool, look, shop.
    Settings,
    /// The last answers.
    Tape,
    /// The jobs.
    Jobs,
    /// The cabinet on paper.
    ShopSheet,
    /// The card of this slug; whether there is one is the screen's to say.
    Card(String),
}

impl Route {
    /// The address of the shop sheet.
    pub const SHOP_SHEET: &'static str = "#/cabinet/sheet";

    /// Reads the part of an address behind the hash.
    pub fn read(hash: &str) -> Self {
        match hash.trim_start_matches('#').trim_matches('/') {
            "" => Self::Bench,
            "settings" => Self::Settings,
            "tape" => Self::Tape,
            "jobs" => Self::Jobs,
            "cabinet/sheet" => Self::ShopSheet,
            slug => Self::Card(slug.to_owned()),
        }
    }

    /// The address of a card.
    pub fn to_card(slug: &str) -> String {
        format!("#/{slug}")
    }
}

/// The address on the screen now, following links and the back button.
#[hook]
pub fn use_route() -> Route {
    let now = || web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
    let hash = use_state_eq(now);
    {
        let hash = hash.clone();
        use_effect_with((), move |()| {
            let listener = web_sys::window()
                .map(|window| crate::browser::Listener::on(&window, "hashchange", move |_| hash.set(now())));
            move || drop(listener)
        });
    }
    Route::read(&hash)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_read_as_screens() {
        for (hash, want) in [
            ("", Route::Bench),
            ("#/", Route::Bench),
            ("#/settings", Route::Settings),
            ("#/tape", Route::Tape),
            ("#/jobs", Route::Jobs),
            (Route::SHOP_SHEET, Route::ShopSheet),
            ("#/back-panel", Route::Card("back-panel".into())),
        ] {
            assert_eq!(Route::read(hash), want, "{hash}");
        }
        assert_eq!(Route::read(&Route::to_card("shelf")), Route::Card("shelf".into()));
    }
}
