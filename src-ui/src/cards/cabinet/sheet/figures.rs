//! The drawings of a shop sheet, each at a scale that it says.

use super::super::drawings::{title, worded};
use crate::show::Show;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Drawn, View, drawings};
use scantling::drawing::Scaled;
use yew::prelude::*;

/// What a view of the whole has room for, in millimetres: with its name under it, half a page.
const WHOLE_MM: [f64; 2] = [180.0, 150.0];
/// What each face of a part has.
const FACE_MM: [f64; 2] = [180.0, 110.0];

/// A drawing with its name and its scale.
pub(super) fn figure(name: &str, scaled: &Scaled) -> Html {
    let name = say_with("shop-scale", [("name", name.into()), ("scale", scaled.one_to.into())]);
    let picture = Html::from_html_unchecked(scaled.to_picture(&name).into());
    html! { <figure class="shop-figure">{ picture }<figcaption>{ name }</figcaption></figure> }
}

fn all(answer: &Answer, show: Show) -> Vec<Drawn> {
    let worded = |drawn: Drawn| Drawn { drawing: worded(drawn.drawing, show), ..drawn };
    drawings(answer).unwrap_or_default().into_iter().map(worded).collect()
}

/// From in front, cut through and from above to one scale, and taken apart.
pub(super) fn whole(answer: &Answer, show: Show) -> Html {
    let drawn = all(answer, show);
    let is_view = |drawn: &&Drawn| matches!(drawn.view, View::Front | View::Section | View::Plan);
    let on_paper = |drawn: &Drawn| drawn.drawing.clone().on_paper(WHOLE_MM).one_to;
    let one_to = drawn.iter().filter(is_view).map(on_paper).max().unwrap_or(1);
    let views = drawn.iter().filter(is_view).map(|drawn| (drawn.view, drawn.drawing.clone().at_scale(one_to)));
    let apart = drawn.iter().filter(|drawn| drawn.view == View::Apart);
    let apart = apart.map(|drawn| (drawn.view, drawn.drawing.clone().on_paper(WHOLE_MM)));
    html! { <div class="shop-figures">{ for views.chain(apart).map(|(view, scaled)| figure(&title(answer, view), &scaled)) }</div> }
}

/// Every face that something is done to.
pub(super) fn faces(answer: &Answer, show: Show) -> Html {
    let drawn = all(answer, show);
    let faces = drawn.iter().filter(|drawn| matches!(drawn.view, View::Part { .. }));
    let one = |drawn: &Drawn| figure(&title(answer, drawn.view), &drawn.drawing.clone().on_paper(FACE_MM));
    html! {
        <>
            <p>{ say("shop-faces-corner") }</p>
            <div class="shop-figures">{ for faces.map(one) }</div>
        </>
    }
}
