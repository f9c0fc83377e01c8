//! The page's start.

fn main() {
    let place = web_sys::window().and_then(|window| window.document()).and_then(|page| page.get_element_by_id("app"));
    if let Some(place) = place {
        // What stood there while the program was loading makes room.
        place.set_inner_html("");
        yew::Renderer::<scantling_ui::app::App>::with_root(place).render();
    }
}
