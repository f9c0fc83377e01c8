//! The templates, a page each, as large as they are.

use super::super::{drawings::worded, parts};
use crate::show::Show;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Hand, Pattern, RowUse, Template, templates, without_template};
use yew::prelude::*;

fn used(answer: &Answer, one: &RowUse) -> AttrValue {
    let part = parts::place(answer, one.on);
    let face = say(if one.face == Hand::Right { "cabinet-face-right" } else { "cabinet-face-left" });
    let values = [("part", part.as_str().into()), ("face", face.as_str().into())];
    say_with(if one.rear { "shop-use-rear" } else { "shop-use-front" }, values)
}

fn page(answer: &Answer, template: &Template, show: Show) -> Html {
    let (name, uses) = match &template.pattern {
        Pattern::Cup { doors } => {
            let doors = parts::names(answer, doors);
            (say("shop-cup"), html! { <p>{ say_with("shop-cup-use", [("doors", doors.into())]) }</p> })
        }
        Pattern::Row { uses, hole, from_edge } => {
            let values = [("hole", show.typed(*hole).into()), ("edge", show.on_drawing(*from_edge).into())];
            (
                say_with("shop-row", values),
                html! { <><p>{ uses_of(answer, uses) }</p><p>{ say("shop-row-use") }</p></> },
            )
        }
    };
    let [number, all] = [template.page, template.pages].map(|page| u32::try_from(page).unwrap_or(u32::MAX));
    let values = [("name", name.as_str().into()), ("page", number.into()), ("pages", all.into())];
    let title = if all > 1 { say_with("shop-page", values) } else { name };
    let drawing = worded(template.drawing.clone(), show).to_picture(&title);
    html! {
        <section class="shop-template">
            <h3>{ title }</h3>
            { uses }
            <p><strong>{ say("shop-measure") }</strong></p>
            { Html::from_html_unchecked(drawing.into()) }
        </section>
    }
}

/// All that a row is for.
fn uses_of(answer: &Answer, uses: &[RowUse]) -> String {
    uses.iter().map(|one| used(answer, one)).collect::<Vec<_>>().join("; ")
}

/// What has no template, said where it would stand.
fn without(answer: &Answer, pattern: &Pattern, show: Show) -> Option<Html> {
    let Pattern::Row { uses, hole, from_edge } = pattern else { return None };
    let uses = uses_of(answer, uses);
    let values = [
        ("hole", show.typed(*hole).into()),
        ("edge", show.on_drawing(*from_edge).into()),
        ("uses", uses.as_str().into()),
    ];
    Some(html! { <p class="shop-without">{ say_with("shop-without", values) }</p> })
}

/// Every template; none where nothing is drilled.
pub(super) fn pages(answer: &Answer, show: Show) -> Html {
    let all = templates(answer).unwrap_or_default();
    let far = without_template(answer).unwrap_or_default();
    html! {
        <>
            { for far.iter().filter_map(|pattern| without(answer, pattern, show)) }
            { for all.iter().map(|template| page(answer, template, show)) }
        </>
    }
}
