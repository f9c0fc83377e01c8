//! Keeps what has the focus in sight: picture and answer stick to the top of the screen, the pad or the foot to its
//! bottom, and a browser that scrolls a field into view does not count them. Beside the picture fields scroll by themselves.

use crate::browser::{AfterPaint, Later, Listener, focused};
use std::cell::Cell;
use web_sys::DomRect;
use yew::prelude::*;

/// What sticks to the top, and what to the bottom.
const TOP: &str = ".card-top";
const BOTTOM: &str = ".frame > .foot, .frame > .number-pad";

/// What scrolls by itself on a wide screen.
const FIELDS: &str = ".fields";

/// Between the field and what sticks, in pixels.
const AIR: f64 = 8.0;

/// Scrolls whenever the focus goes to something that lies under an edge.
#[hook]
pub fn use_focus_in_sight() {
    use_effect_with((), |()| {
        let document = web_sys::window().and_then(|window| window.document());
        let heard = document.map(|document| {
            let looks = Cell::new(None);
            Listener::on(&document, "focusin", move |_| {
                let look = || {
                    bring_into_sight();
                };
                // At first the pad has come up, or gone; by the second look all that waited for a frame is there too.
                looks.set(Some((Later::after(0, look), AfterPaint::then(0, look))));
            })
        });
        move || drop(heard)
    });
}

fn bring_into_sight() -> Option<()> {
    let (window, element) = (web_sys::window()?, focused()?);
    let document = window.document()?;
    // A button under the mouse must not move while it is pressed. Fields always count as visibly focused.
    if !element.matches(":focus-visible").unwrap_or(true) {
        return None;
    }
    let field = element.get_bounding_client_rect();
    // On a wide screen the fields stand beside the picture, and nothing sticks over them.
    let over = |css: &str| {
        let edge = document.query_selector(css).ok().flatten()?;
        let place = edge.get_bounding_client_rect();
        let in_its_way = place.left() < field.right() && field.left() < place.right() && !edge.contains(Some(&element));
        in_its_way.then_some(place)
    };
    let fields =
        element.closest(FIELDS).ok().flatten().filter(|fields| fields.scroll_height() > fields.client_height());
    let own = fields.as_ref().map(|fields| fields.get_bounding_client_rect());
    let from = if let Some(own) = &own {
        own.top().max(0.0)
    } else if element.closest(".card").ok().flatten().is_some() {
        over(TOP).map_or(0.0, |place: DomRect| place.bottom().max(0.0))
    } else {
        0.0
    };
    let to = over(BOTTOM).map(|place| place.top()).or_else(|| window.inner_height().ok()?.as_f64())?;
    let to = own.map_or(to, |own| own.bottom().min(to));
    let (above, below) = (field.top() - AIR - from, field.bottom() + AIR - to);
    let by = if below > 0.0 { below } else { above.min(0.0) };
    match fields {
        Some(fields) => fields.scroll_by_with_x_and_y(0.0, by),
        None => window.scroll_by_with_x_and_y(0.0, by),
    }
    Some(())
}
