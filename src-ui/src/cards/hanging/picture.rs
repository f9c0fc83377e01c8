//! The cabinet on its wall from the side, to scale, with its centre of gravity and what pulls and pushes.

use crate::pictures::{Anchor, Ink, Place, Scale, across, circle, line, paper, polygon, rect, text, upright};
use crate::show::{Show, plain};
use crate::words::say;
use scantling::cards::hanging::{Answer, What};
use scantling::measure::Measure;
use yew::prelude::*;

/// Length of an arrow, in drawing units.
const ARROW: f64 = 26.0;

/// An arrow from `from`, along `(x, y)` of unit length.
fn arrow(from: (f64, f64), (x, y): (f64, f64)) -> Html {
    let to = (from.0 + ARROW * x, from.1 + ARROW * y);
    let barb = |side: f64| (to.0 - 7.0 * x - side * 3.5 * y, to.1 - 7.0 * y + side * 3.5 * x);
    html! { <>{ line(from, to, Ink::Red) }{ polygon(&[to, barb(1.0), barb(-1.0)], Ink::Red) }</> }
}

/// The picture.
pub(super) fn picture(answer: &Answer, show: Show) -> Html {
    let (height, depth, off) = (answer.height.as_mm(), answer.depth.as_mm(), answer.stands_off.as_mm());
    let pull = &answer.pull;
    let wall = 0.08 * height.max(depth);
    let door = answer.weighed.parts.iter().find(|part| part.what == What::Doors);
    // Shut, the middle of a door lies half its thickness in front of the carcass.
    let door_thick = door.map_or(0.0, |door| 2.0 * (door.centre.out_mm - off - depth).max(0.0));
    let right = (off + depth + door_thick).max(pull.out_mm) + wall;
    let place = Place { x: 30.0, y: 10.0, width: 220.0, height: 168.0 };
    let scale = Scale::fit(right + wall, height + 2.0 * wall, place);
    let (x, y) = (|mm: f64| scale.x(mm + wall), |mm: f64| scale.y(mm + wall));
    let block = |left: f64, wide: f64, low: f64, high: f64, ink: Ink| {
        rect(x(left), y(high), scale.length(wide), scale.length(high - low), ink)
    };
    let centre = (x(pull.out_mm), y(answer.weighed.worst().up_mm));
    let bears = y(pull.arm_mm);
    let newtons = |value: f64| plain(&show.estimate(value, Measure::N).main);
    let foot = y(-wall);
    paper(
        say("hanging-picture"),
        foot + 32.0,
        html! {
            <>
                { block(-wall, wall, -wall, height + wall, Ink::Waste) }
                { line((x(0.0), foot), (x(0.0), y(height + wall)), Ink::Outline) }
                { block(off, depth, 0.0, height, Ink::Wood) }
                if door.is_some() {
                    { block(off + depth, door_thick, 0.0, height, Ink::Panel) }
                }
                { circle(centre, 5.0, Ink::Red) }
                { arrow(centre, (0.0, 1.0)) }
                { arrow((x(off), bears), (1.0, 0.0)) }
                { text((x(-wall) - 6.0, bears + 4.5), newtons(pull.pull_n), Anchor::End, Ink::Red) }
                { arrow((x(off) + ARROW, y(0.0) - 6.0), (-1.0, 0.0)) }
                { upright(y(0.0), bears, x(right) + 4.0, plain(&show.length_mm(pull.arm_mm).main)) }
                { across(x(0.0), centre.0, foot + 16.0, plain(&show.length_mm(pull.out_mm).main)) }
            </>
        },
    )
}
