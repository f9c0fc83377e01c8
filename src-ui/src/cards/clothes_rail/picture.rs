//! The picture of a clothes rail: from the front, and the cabinet from the side.

use crate::pictures::{Anchor, Ink, Place, Scale, across, circle, line, paper, polygon, rect, text};
use crate::show::{Show, figures, plain};
use crate::words::{say, say_with};
use scantling::cards::clothes_rail::Answer;
use scantling::measure::Length;
use yew::prelude::*;

/// The sag is drawn so that it can be seen: never less than as it is, and about so high at the most, in drawing units.
const SAG_DRAWN: f64 = 22.0;

/// On the left the rail from the front, to scale along the span with the sag enlarged; on the right the cabinet from the
/// side, to scale, with a hanger and a garment on the rail.
pub(super) fn draw(answer: &Answer, show: Show) -> Html {
    paper(say("clothes-rail-picture"), 212.0, html! { <>{ front(answer, show) }{ side(answer, show) }</> })
}

fn front(answer: &Answer, show: Show) -> Html {
    let span = answer.span.as_mm();
    let scale = Scale::fit_width(span, Place { x: 18.0, y: 0.0, width: 176.0, height: 70.0 });
    let deepest = answer.line.iter().map(|place| place.long_term_mm.abs()).fold(0.0, f64::max);
    // A whole number of times, so that it can be written on the drawing.
    let times = (SAG_DRAWN / scale.length(deepest).max(1e-9)).floor().clamp(1.0, 1000.0);
    let thick = scale.length(answer.height.as_mm()).clamp(2.0, 30.0);
    let top = 52.0;
    let sagged = |offset: f64| {
        let y = |mm: f64| top + offset + scale.length(mm) * times;
        answer.line.iter().map(|place| (scale.x(place.along_mm), y(place.long_term_mm))).collect::<Vec<_>>()
    };
    let mut shape = sagged(0.0);
    shape.extend(sagged(thick).into_iter().rev());
    let (left, right) = (scale.x(0.0), scale.x(span));
    let deep_x = scale.x(answer.deepest_at_mm);
    let tone = if answer.holds { Ink::Blue } else { Ink::Red };
    let label = say_with(
        "clothes-rail-drawn",
        [("sag", plain(&show.fine_mm(deepest).main).into()), ("times", figures(times, 4).into())],
    );
    let between = answer.supports.iter().filter(|at| at.along_mm > 0.0 && at.along_mm < span * 0.999);
    html! {
        <>
            { rect(left - 12.0, 14.0, 12.0, 150.0, Ink::Cut) }
            { rect(right, 14.0, 12.0, 150.0, Ink::Cut) }
            { rect(left, 14.0, right - left, 8.0, Ink::Wood) }
            { for between.map(|at| rect(scale.x(at.along_mm) - 2.0, 22.0, 4.0, top + thick - 22.0, Ink::Cut)) }
            { polygon(&shape, Ink::Panel) }
            { line((left, top), (right, top), Ink::Dashed) }
            { line((deep_x, top), (deep_x, top + scale.length(deepest) * times), Ink::Red) }
            { text(((left + right) / 2.0, 126.0), label, Anchor::Middle, tone) }
            { across(left, right, 184.0, show.on_drawing(answer.span)) }
        </>
    }
}

fn side(answer: &Answer, show: Show) -> Html {
    let mm = |length: Length| length.as_mm();
    let room = &answer.room;
    let depth = mm(room.depth) + mm(room.depth_spare);
    let height = mm(room.height) + mm(room.height_spare);
    let reach = mm(room.height).max(height);
    let place = Place { x: 250.0, y: 14.0, width: 96.0, height: 150.0 };
    let scale = Scale::fit(depth.max(mm(room.depth)), reach, place);
    let y = |down: f64| scale.y(reach - down);
    let middle = scale.x(mm(room.from_back));
    let rail = y(mm(room.middle_down));
    // What hangs between the room in front and behind.
    let half = scale.length(mm(room.depth) / 2.0);
    let (shoulder, hem) = (y(mm(room.hook) + mm(room.drop) * 0.12), y(mm(room.hook) + mm(room.drop)));
    let garment = [
        (middle, y(mm(room.hook) + mm(room.drop) * 0.05)),
        (middle + half * 0.8, shoulder),
        (middle + half * 0.7, hem),
        (middle - half * 0.7, hem),
        (middle - half * 0.8, shoulder),
    ];
    let tone = if room.depth_spare.is_negative() || room.height_spare.is_negative() { Ink::Red } else { Ink::Soft };
    html! {
        <>
            { rect(scale.x(0.0), y(0.0), scale.length(depth), scale.length(height), Ink::Outline) }
            { line((scale.x(0.0), y(0.0)), (scale.x(0.0), y(height)), Ink::Blue) }
            { polygon(&garment, tone) }
            { circle((middle, rail), scale.length(mm(answer.height) / 2.0).max(2.0), Ink::Cut) }
            { across(scale.x(0.0), middle, 200.0, show.on_drawing(room.from_back)) }
        </>
    }
}
