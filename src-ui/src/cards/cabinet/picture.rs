//! The cabinet from in front and cut through from the side, to one scale.

use crate::pictures::{Ink, Place, Scale, across, line, paper, polygon, rect, upright};
use crate::show::Show;
use crate::words::say;
use scantling::cabinet::{Axis, Cabinet, OutsideShelf, Part, Stock, What};
use scantling::measure::Length;
use yew::prelude::*;

/// From where to where a part goes in a direction, in millimetres.
fn along(part: &Part, axis: Axis) -> (f64, f64) {
    let (from, to) = part.place.along(axis);
    (from.as_mm(), to.as_mm())
}

/// What is seen from in front, the doors taken off.
fn is_seen(part: &Part) -> bool {
    !matches!(part.what, What::CabinetStrip | What::WallStrip | What::Spacer)
        && !matches!(part.stock, Stock::Back | Stock::Door)
}

fn front(cabinet: &Cabinet, x: impl Fn(f64) -> f64, y: impl Fn(f64) -> f64) -> Html {
    let block = |part: &Part, ink: Ink| {
        let ((left, right), (low, high)) = (along(part, Axis::Across), along(part, Axis::Up));
        rect(x(left), y(high), x(right) - x(left), y(low) - y(high), ink)
    };
    let back = cabinet.parts.iter().filter(|part| part.stock == Stock::Back).map(|part| block(part, Ink::Soft));
    let seen = cabinet.parts.iter().filter(|part| is_seen(part)).map(|part| block(part, Ink::Wood));
    let brackets = cabinet.outside.iter().flat_map(OutsideShelf::brackets_in_front).map(|corners| {
        let corners: Vec<_> = corners.into_iter().map(|[across, up]| (x(across), y(up))).collect();
        html! { <>{ for corners.windows(2).map(|ends| line(ends[0], ends[1], Ink::Outline)) }</> }
    });
    let doors = cabinet.doors.iter().map(|door| {
        let ((left, right), (low, high)) = (door.place.along(Axis::Across), door.place.along(Axis::Up));
        let [left, right, low, high] = [left, right, low, high].map(Length::as_mm);
        let corners = [(left, low), (right, low), (right, high), (left, high), (left, low)];
        let corners: Vec<_> = corners.iter().map(|(across, up)| (x(*across), y(*up))).collect();
        html! { <>{ for corners.windows(2).map(|ends| line(ends[0], ends[1], Ink::Dashed)) }</> }
    });
    html! { <>{ for back }{ for seen }{ for brackets }{ for doors }</> }
}

/// Cut through the middle of the first bay, seen from the right: the wall to the left.
fn section(cabinet: &Cabinet, x: impl Fn(f64) -> f64, y: impl Fn(f64) -> f64) -> Html {
    let middle = cabinet.bays.first().map_or(0.0, |(from, to)| f64::midpoint(from.as_mm(), to.as_mm()) - 1.0);
    let cut = |part: &&Part| {
        let (from, to) = along(part, Axis::Across);
        from <= middle && middle <= to
    };
    let drawn = |part: &Part| {
        let ink = if part.stock == Stock::Back { Ink::Panel } else { Ink::Cut };
        if let Some(quad) = part.section {
            return polygon(&quad.map(|[deep, up]| (x(deep), y(up))), ink);
        }
        let ((rear, front), (low, high)) = (along(part, Axis::Deep), along(part, Axis::Up));
        rect(x(rear), y(high), x(front) - x(rear), y(low) - y(high), ink)
    };
    html! { <>{ for cabinet.parts.iter().filter(cut).map(drawn) }</> }
}

/// Legs, which are no parts, as the drawing has them.
fn legs(cabinet: &Cabinet, [from, to]: [f64; 2], x: impl Fn(f64) -> f64, y: impl Fn(f64) -> f64) -> Vec<Html> {
    let leg = |at: f64| rect(x(at), y(0.0), x(at + 25.0) - x(at), y(-cabinet.base.as_mm()) - y(0.0), Ink::Wood);
    if cabinet.legs { vec![leg(from + 50.0), leg(to - 75.0)] } else { Vec::new() }
}

/// Both views side by side, with the sizes over all.
pub(super) fn picture(cabinet: &Cabinet, show: Show) -> Html {
    let (width, height, depth) = (cabinet.width.as_mm(), cabinet.height.as_mm(), cabinet.depth.as_mm());
    let least = |axis: Axis| cabinet.parts.iter().map(|part| along(part, axis).0).fold(0.0, f64::min);
    let most = |axis: Axis| cabinet.parts.iter().map(|part| along(part, axis).1).fold(0.0, f64::max);
    let (rear, fore) = (least(Axis::Deep), most(Axis::Deep).max(depth));
    let base = -least(Axis::Up).min(-cabinet.base.as_mm());
    let (left, right) = (least(Axis::Across), most(Axis::Across).max(width));
    let gap = 0.12 * width.max(depth);
    let place = Place { x: 30.0, y: 8.0, width: 322.0, height: 190.0 };
    let scale = Scale::fit(right - left + gap + fore - rear, height + base, place);
    let y = |up: f64| scale.y(up + base);
    let (front_x, side_x) =
        (|across: f64| scale.x(across - left), |deep: f64| scale.x(right - left + gap + deep - rear));
    let (low, foot) = (y(-base), y(-cabinet.base.as_mm()));
    let over_all = cabinet.height.plus(cabinet.base).unwrap_or(cabinet.height);
    let content = html! {
        <>
            { front(cabinet, front_x, y) }
            { section(cabinet, side_x, y) }
            { for legs(cabinet, [0.0, width], front_x, y) }
            { for legs(cabinet, [0.0, depth], side_x, y) }
            { upright(foot, y(height), front_x(left) - 16.0, show.on_drawing(over_all)) }
            { across(front_x(0.0), front_x(width), low + 16.0, show.on_drawing(cabinet.width)) }
            { across(side_x(0.0), side_x(depth), low + 34.0, show.on_drawing(cabinet.depth)) }
        </>
    };
    paper(say("cabinet-picture"), low + 48.0, content)
}
