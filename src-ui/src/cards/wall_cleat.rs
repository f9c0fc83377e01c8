//! Wall cleat card: strips, cabinet and heights in; where everything goes, and how the pair is cut, out.

use super::{CardView, Stage};
use crate::pictures::{Ink, Place, Scale, across, leader, line, paper, polygon, rect, upright};
use crate::settings::Settings;
use crate::show::{Show, Shown, figures};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::wall_cleat::{Answer, Back, Cut, Inputs, Lifts, Pass, Quad, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Reading};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct WallCleat;

fn strip_fields(fields: &Fields<WallCleat>) -> Html {
    html! {
        <>
            { fields.length_from_shop("wall-cleat-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
            { fields.length("wall-cleat-strip-height", |inputs| &mut inputs.strip_height) }
            { fields.angle("wall-cleat-bevel", |inputs| &mut inputs.bevel) }
            { fields.length_from_shop("wall-cleat-kerf", |inputs| &mut inputs.kerf, &fields.settings().kerf) }
            { fields.length("wall-cleat-end-gap", |inputs| &mut inputs.end_gap) }
        </>
    }
}

fn cabinet_fields(fields: &Fields<WallCleat>) -> Html {
    let inset = fields.inputs().back == Back::Inset;
    let sheet = &fields.settings().sheet;
    html! {
        <>
            { fields.choice("wall-cleat-back", |inputs| &mut inputs.back, vec![
                (Back::Inset, say("wall-cleat-back-inset")),
                (Back::Flush, say("wall-cleat-back-flush")),
            ]) }
            if inset {
                { fields.length("wall-cleat-slack", |inputs| &mut inputs.slack) }
            }
            { fields.length("wall-cleat-cabinet-width", |inputs| &mut inputs.cabinet_width) }
            { fields.length("wall-cleat-cabinet-height", |inputs| &mut inputs.cabinet_height) }
            if inset {
                { fields.length_from_shop("wall-cleat-side", |inputs| &mut inputs.side, sheet) }
            }
            { fields.length_from_shop("wall-cleat-below-top", |inputs| &mut inputs.below_top, sheet) }
        </>
    }
}

fn wall_fields(fields: &Fields<WallCleat>) -> Html {
    html! {
        <>
            { fields.length("wall-cleat-top-at", |inputs| &mut inputs.top_at) }
            { fields.length("wall-cleat-ceiling", |inputs| &mut inputs.ceiling) }
        </>
    }
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    match answer.lifts {
        Lifts::On(spare) => Verdict {
            tone: Tone::Good,
            words: say_with("wall-cleat-lifts-on", [("spare", show.on_drawing(spare).into())]),
        },
        Lifts::Not(missing) => Verdict {
            tone: Tone::Over,
            words: say_with("wall-cleat-lifts-not", [("missing", show.on_drawing(missing).into())]),
        },
        Lifts::Unknown => Verdict {
            tone: Tone::Mind,
            words: say_with("wall-cleat-lifts-unknown", [("lift", show.on_drawing(answer.lift).into())]),
        },
    }
}

fn line_of(key: &str, length: Length, show: Show) -> Line {
    Line::new(say(key), show.length(length))
}

fn on_the_wall(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![
        line_of("wall-cleat-screws-at", answer.screws_at, show),
        line_of("wall-cleat-point-at", answer.wall_strip_top, show),
        line_of("wall-cleat-spacer-at", answer.spacer_at, show),
        line_of("wall-cleat-top", answer.top_at, show),
    ];
    if let Some(highest) = answer.highest_top {
        lines.push(line_of("wall-cleat-highest-top", highest, show));
    }
    Group { title: say("wall-cleat-on-the-wall"), lines }
}

fn strips(answer: &Answer, show: Show) -> Group {
    let size = [show.length(answer.thickness), show.length(answer.wide)];
    Group {
        title: say("wall-cleat-strips"),
        lines: vec![
            Line::new(say("wall-cleat-section"), Shown::joined(size, " × ")),
            line_of("wall-cleat-narrow", answer.narrow, show),
            Line::new(say("wall-cleat-bevel-width"), show.length_mm(answer.bevel_width_mm)),
            line_of("wall-cleat-cabinet-strip", answer.cabinet_strip_length, show),
            line_of("wall-cleat-wall-strip", answer.wall_strip_length, show),
            line_of("wall-cleat-spacer", answer.spacer_thickness, show),
        ],
    }
}

fn pass(pass: &Pass, show: Show) -> Line {
    let cut = match pass.cut {
        Cut::Pair => say("wall-cleat-cut-pair"),
        Cut::Part => say("wall-cleat-cut-part"),
        Cut::Edge => say("wall-cleat-cut-edge"),
    };
    let values = [("cut", cut.as_str().into()), ("lean", figures(pass.lean_degrees, 4).into())];
    Line::new(say_with("wall-cleat-pass", values), show.length(pass.fence))
}

fn saw(answer: &Answer, show: Show) -> Group {
    let board = line_of("wall-cleat-board", answer.board, show);
    let passes = answer.passes.iter().map(|one| pass(one, show));
    Group { title: say("wall-cleat-saw"), lines: std::iter::once(board).chain(passes).collect() }
}

/// The upper end of the cabinet from the side: all of it would make the strips too small to see.
fn picture(answer: &Answer, show: Show) -> Html {
    let section = &answer.section;
    let (lower, under_top) = (section.wall_strip[0][1], section.cabinet_strip[2][1]);
    let wide = answer.wide.as_mm();
    let (bottom, ceiling) = (lower - 0.3 * wide, section.top_mm + answer.lift.as_mm());
    let wall = 0.8 * answer.thickness.as_mm();
    let panel = 0.4 * answer.thickness.as_mm();
    let right = section.back_mm + panel + wide;
    let place = Place { x: 100.0, y: 8.0, width: 180.0, height: 176.0 };
    let scale = Scale::fit(right + wall, ceiling - bottom, place);
    let (x, y) = (|mm: f64| scale.x(mm + wall), |mm: f64| scale.y(mm - bottom));
    let block = |left: f64, right: f64, low: f64, high: f64, ink: Ink| {
        rect(x(left), y(high), scale.length(right - left), scale.length(high - low), ink)
    };
    let strip = |corners: &Quad, ink: Ink| {
        polygon(&corners.iter().map(|[across, up]| (x(*across), y(*up))).collect::<Vec<_>>(), ink)
    };
    let foot = y(bottom);
    paper(
        say("wall-cleat-picture"),
        foot + 32.0,
        html! {
            <>
                { block(-wall, 0.0, bottom, ceiling, Ink::Waste) }
                { line((x(0.0), foot), (x(0.0), y(ceiling)), Ink::Outline) }
                { block(section.back_mm, section.back_mm + panel, bottom, under_top, Ink::Panel) }
                { block(section.rear_mm, right, under_top, section.top_mm, Ink::Wood) }
                { strip(&section.wall_strip, Ink::Cut) }
                { strip(&section.cabinet_strip, Ink::Wood) }
                { line((x(0.0), y(ceiling)), (x(right), y(ceiling)), Ink::Dashed) }
                { upright(y(lower), y(lower + wide), x(right) - 8.0, show.on_drawing(answer.wide)) }
                { upright(y(section.top_mm), y(ceiling), x(right) + 10.0, show.on_drawing(answer.lift)) }
                { leader((x(-wall), y(lower)), (x(-wall) - 8.0, y(lower)), show.on_drawing(answer.wall_strip_at), Ink::Blue) }
                { across(x(0.0), x(section.back_mm), foot + 16.0, show.on_drawing(answer.spacer_thickness)) }
            </>
        },
    )
}

impl CardView for WallCleat {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "wall-cleat";
    const STAGE: Stage = Stage::Hang;
    const CAUTIONS_FIRST: bool = true;

    fn title() -> AttrValue {
        say("wall-cleat-title")
    }

    fn also_called() -> AttrValue {
        say("wall-cleat-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        let shop = Reading::default;
        Inputs { thickness: shop(), kerf: shop(), side: shop(), below_top: shop(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        for reading in [&mut inputs.thickness, &mut inputs.side, &mut inputs.below_top] {
            if reading.is_blank() {
                *reading = settings.sheet.clone();
            }
        }
        if inputs.kerf.is_blank() {
            inputs.kerf = settings.kerf.clone();
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("wall-cleat-strips"), strip_fields(fields)) }
                { fields.group(say("wall-cleat-group-cabinet"), cabinet_fields(fields)) }
                { fields.group(say("wall-cleat-group-wall"), wall_fields(fields)) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let first = match inputs.back {
            Back::Inset => line_of("wall-cleat-inset", answer.inset, show),
            Back::Flush => line_of("wall-cleat-stands-off", answer.stands_off, show),
        };
        Reply {
            main: vec![
                first,
                line_of("wall-cleat-wall-strip-at", answer.wall_strip_at, show),
                line_of("wall-cleat-lift", answer.lift, show),
            ],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups: vec![on_the_wall(answer, show), strips(answer, show), saw(answer, show)],
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let values =
            [("top", show.on_drawing(answer.top_at).into()), ("bevel", figures(answer.bevel_degrees, 4).into())];
        say_with("wall-cleat-given", values)
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
