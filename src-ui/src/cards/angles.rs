//! Angles card: a corner, a slope, a frame or a taper in; the saw's two scales and the marks out.

use super::{CardView, Stage};
use crate::pictures::{Ink, Place, Scale, across, line, paper, polygon, upright};
use crate::settings::System;
use crate::show::{Show, Shown, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::angles::{
    Answer, Edges, Inputs, Job, Outcome, Reach, RightAngle, Scales, Sides, Slope, Stand, Taper, Triple, solve,
};
use scantling::caution::Caution;
use scantling::measure::{Length, Measure};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Angles;

fn degrees(label: AttrValue, value: f64, show: Show) -> Line {
    Line::new(label, show.estimate(value, Measure::Degrees))
}

/// The marks of the system in use, or those of the other one where the sides are too short for them.
fn triple(right: &RightAngle, show: Show) -> Option<Triple> {
    match show.system {
        System::Metric => right.metric.or(right.inches),
        System::Imperial => right.inches.or(right.metric),
    }
}

fn main_lines(outcome: &Outcome, show: Show) -> Vec<Line> {
    match outcome {
        Outcome::RightAngle(right) => {
            let mut lines = vec![Line::new(say("angles-diagonals"), show.length_mm(right.diagonal_mm))];
            if let Some(Triple { three, four, five }) = triple(right, show) {
                let marks = Shown::joined([three, four, five].map(|mark| show.length(mark)), " · ");
                lines.push(Line::new(say("angles-triple"), marks));
            }
            lines
        }
        Outcome::Slope(slope) => vec![
            degrees(say("angles-slope"), slope.degrees, show),
            Line::new(say("angles-along"), show.length_mm(slope.along_mm)),
        ],
        Outcome::Sides(sides) => vec![
            degrees(say("angles-tilt"), sides.tilt_degrees, show),
            degrees(say("angles-gauge"), sides.gauge_degrees, show),
            Line::new(say("angles-short"), show.length_mm(sides.short_mm)),
        ],
        Outcome::Taper(taper) => vec![
            degrees(say("angles-jig"), taper.degrees, show),
            Line::new(say("angles-opening"), show.length_mm(taper.opening_mm)),
        ],
    }
}

fn scales(scales: Scales, show: Show) -> Group {
    Group {
        title: say("angles-scales"),
        lines: vec![
            degrees(say("angles-scale-tilt"), scales.tilt_degrees, show),
            degrees(say("angles-scale-gauge"), scales.gauge_degrees, show),
            degrees(say("angles-scale-90"), scales.gauge_from_90_degrees, show),
        ],
    }
}

fn details(outcome: &Outcome, show: Show) -> Option<Group> {
    let lines = match outcome {
        Outcome::RightAngle(right) => {
            let out = right.out?;
            let misfit = Line::new(say("angles-misfit"), show.fine_mm(out.misfit_mm));
            vec![
                Line::new(say("angles-out-over"), show.fine_mm(out.over_height_mm.abs())),
                degrees(say("angles-out-degrees"), out.degrees.abs(), show),
                Line::new(say("angles-even"), show.length_mm(out.even_mm)),
                // A tape is good to half a millimetre at either end.
                if out.misfit_mm.abs() > 1.0 { misfit.toned(Tone::Mind) } else { misfit },
            ]
        }
        Outcome::Slope(slope) => vec![
            Line::new(say("angles-percent"), show.estimate(slope.percent, Measure::Percent)),
            degrees(say("angles-plumb-cut"), slope.degrees, show),
            degrees(say("angles-level-cut"), slope.level_cut_degrees, show),
        ],
        Outcome::Sides(sides) => {
            let mut lines = vec![
                degrees(say("angles-corner"), sides.corner_degrees, show),
                degrees(say("angles-dihedral"), sides.dihedral_degrees, show),
            ];
            if let Some(butt) = sides.butt_tilt_degrees {
                lines.push(degrees(say("angles-butt"), butt, show));
            }
            lines.push(Line::new(say("angles-long"), show.length(sides.long)));
            lines.push(Line::new(say("angles-stands"), show.length_mm(sides.height_mm)));
            lines.push(Line::new(say("angles-across"), show.length_mm(sides.across_mm)));
            lines
        }
        Outcome::Taper(taper) => {
            let mut lines = vec![
                Line::new(say("angles-offset"), show.length(taper.offset)),
                Line::new(say("angles-edge"), show.length_mm(taper.edge_mm)),
            ];
            if let (Some(second), Some(opening)) = (taper.second_degrees, taper.second_opening_mm) {
                lines.push(degrees(say("angles-second"), second, show));
                lines.push(Line::new(say("angles-second-opening"), show.length_mm(opening)));
            }
            lines
        }
    };
    Some(Group { title: say("angles-details"), lines })
}

fn verdict(answer: &Answer, show: Show) -> Option<Verdict> {
    if let Outcome::RightAngle(right) = &answer.outcome {
        let out = right.out?;
        let over = [("over", plain(&show.fine_mm(out.over_height_mm.abs()).main).into())];
        let (tone, words) = match out.square {
            true => (Tone::Good, say("angles-square")),
            false if out.over_height_mm > 0.0 => (Tone::Mind, say_with("angles-shorten-first", over)),
            false => (Tone::Mind, say_with("angles-shorten-second", over)),
        };
        return Some(Verdict { tone, words });
    }
    answer.scales?;
    let (tone, words) = match answer.reach {
        Reach::TiltBeyond => (Tone::Mind, say("angles-tilt-beyond")),
        Reach::GaugeBeyond => (Tone::Mind, say("angles-gauge-beyond")),
        Reach::Within => (Tone::Good, say("angles-within")),
    };
    Some(Verdict { tone, words })
}

const PLACE: Place = Place { x: 76.0, y: 30.0, width: 190.0, height: 120.0 };

/// A frame with its diagonals, and the marks from its corner at the bottom left.
fn draw_right_angle(right: &RightAngle, show: Show) -> Html {
    let (width, height) = (right.width.as_mm(), right.height.as_mm());
    let scale = Scale::fit(width, height, PLACE);
    let at = |x: f64, y: f64| scale.point((x, y));
    let corners = [at(0.0, 0.0), at(width, 0.0), at(width, height), at(0.0, height)];
    let [start, right_end, _, top] = corners;
    let marks = triple(right, show).map(|Triple { three, four, .. }| {
        let (along, up) = if width < height { (three, four) } else { (four, three) };
        polygon(&[start, at(along.as_mm(), 0.0), at(0.0, up.as_mm())], Ink::Red)
    });
    html! {
        <>
            { polygon(&corners, Ink::Wood) }
            { line(corners[0], corners[2], Ink::Dashed) }
            { line(corners[1], corners[3], Ink::Dashed) }
            { for marks }
            { across(start.0, right_end.0, start.1 + 18.0, show.on_drawing(right.width)) }
            { upright(top.1, start.1, right_end.0 + 14.0, show.on_drawing(right.height)) }
        </>
    }
}

fn draw_slope(slope: &Slope, show: Show) -> Html {
    let (rise, run) = (slope.rise.as_mm(), slope.run.as_mm());
    let scale = Scale::fit(run, rise, PLACE);
    let [start, end, top] = [(0.0, 0.0), (run, 0.0), (run, rise)].map(|point| scale.point(point));
    html! {
        <>
            { polygon(&[start, end, top], Ink::Wood) }
            { across(start.0, end.0, start.1 + 18.0, show.on_drawing(slope.run)) }
            { upright(top.1, end.1, end.0 + 14.0, show.on_drawing(slope.rise)) }
        </>
    }
}

/// A piece on its inner face, the long edge on top, with what the two cuts take off a square-ended board.
fn draw_sides(sides: &Sides, show: Show) -> Html {
    let (long, width) = (sides.long.as_mm(), sides.board_width.as_mm());
    let off = (long - sides.short_mm) / 2.0;
    let scale = Scale::fit(long, width, PLACE);
    let at = |x: f64, y: f64| scale.point((x, y));
    let [left, right] = [at(0.0, width), at(long, width)];
    let [low_left, low_right] = [at(off, 0.0), at(long - off, 0.0)];
    html! {
        <>
            { polygon(&[left, at(0.0, 0.0), low_left], Ink::Waste) }
            { polygon(&[right, at(long, 0.0), low_right], Ink::Waste) }
            { polygon(&[left, right, low_right, low_left], Ink::Wood) }
            { across(left.0, right.0, left.1 - 14.0, show.on_drawing(sides.long)) }
            { across(low_left.0, low_right.0, low_left.1 + 18.0, plain(&show.length_mm(sides.short_mm).main)) }
            { upright(left.1, low_left.1, right.0 + 14.0, show.on_drawing(sides.board_width)) }
        </>
    }
}

/// A piece lying along the fence, its wide end on the left, and what comes off.
fn draw_taper(taper: &Taper, show: Show) -> Html {
    let [length, wide, narrow] = [taper.length, taper.wide, taper.narrow].map(Length::as_mm);
    let offset = taper.offset.as_mm();
    let low = if taper.edges == Edges::Both { offset } else { 0.0 };
    let scale = Scale::fit(length, wide, PLACE);
    let at = |x: f64, y: f64| scale.point((x, y));
    let (bottom, top) = (at(0.0, 0.0), at(0.0, wide));
    let (end_low, end_top) = (at(length, low), at(length, low + narrow));
    html! {
        <>
            { polygon(&[top, at(length, wide), end_top], Ink::Waste) }
            if taper.edges == Edges::Both {
                { polygon(&[bottom, at(length, 0.0), end_low], Ink::Waste) }
            }
            { polygon(&[bottom, end_low, end_top, top], Ink::Wood) }
            { across(bottom.0, end_low.0, bottom.1 + 18.0, show.on_drawing(taper.length)) }
            { upright(top.1, bottom.1, bottom.0 - 66.0, show.on_drawing(taper.wide)) }
            { upright(end_top.1, end_low.1, end_low.0 + 14.0, show.on_drawing(taper.narrow)) }
        </>
    }
}

fn sides_fields(fields: &Fields<Angles>) -> Html {
    html! {
        <>
            { fields.figure("angles-sides", "", |inputs| &mut inputs.sides) }
            { fields.choice("angles-stand", |inputs| &mut inputs.stand, vec![
                (Stand::Flat, say("angles-stand-flat")),
                (Stand::Upright, say("angles-stand-upright")),
                (Stand::Leaning, say("angles-stand-leaning")),
            ]) }
            if fields.inputs().stand == Stand::Leaning {
                { fields.angle("angles-lean", |inputs| &mut inputs.lean) }
            }
            { fields.length("angles-side", |inputs| &mut inputs.side) }
            { fields.length("angles-board-width", |inputs| &mut inputs.board_width) }
        </>
    }
}

fn right_angle_fields(fields: &Fields<Angles>) -> Html {
    html! {
        <>
            { fields.length("angles-width", |inputs| &mut inputs.width) }
            { fields.length("angles-height", |inputs| &mut inputs.height) }
            { fields.length("angles-first-diagonal", |inputs| &mut inputs.first_diagonal) }
            { fields.length("angles-second-diagonal", |inputs| &mut inputs.second_diagonal) }
        </>
    }
}

fn taper_fields(fields: &Fields<Angles>) -> Html {
    html! {
        <>
            { fields.length("angles-taper-length", |inputs| &mut inputs.taper_length) }
            { fields.length("angles-wide", |inputs| &mut inputs.wide) }
            { fields.length("angles-narrow", |inputs| &mut inputs.narrow) }
            { fields.choice("angles-edges", |inputs| &mut inputs.edges, vec![
                (Edges::One, say("angles-edges-one")),
                (Edges::Both, say("angles-edges-both")),
            ]) }
            { fields.length("angles-jig-arm", |inputs| &mut inputs.jig_arm) }
        </>
    }
}

impl CardView for Angles {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "angles";
    const STAGE: Stage = Stage::Cut;

    fn title() -> AttrValue {
        say("angles-title")
    }

    fn also_called() -> AttrValue {
        say("angles-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.choice("angles-job", |inputs| &mut inputs.job, vec![
                    (Job::RightAngle, say("angles-job-right-angle")),
                    (Job::Slope, say("angles-job-slope")),
                    (Job::Sides, say("angles-job-sides")),
                    (Job::Taper, say("angles-job-taper")),
                ]) }
                { match fields.inputs().job {
                    Job::RightAngle => right_angle_fields(fields),
                    Job::Sides => sides_fields(fields),
                    Job::Taper => taper_fields(fields),
                    Job::Slope => html! {
                        <>
                            { fields.length("angles-rise", |inputs| &mut inputs.rise) }
                            { fields.length("angles-run", |inputs| &mut inputs.run) }
                        </>
                    },
                } }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        let drawn = match &answer.outcome {
            Outcome::RightAngle(right) => draw_right_angle(right, show),
            Outcome::Slope(slope) => draw_slope(slope, show),
            Outcome::Sides(sides) => draw_sides(sides, show),
            Outcome::Taper(taper) => draw_taper(taper, show),
        };
        paper(say("angles-picture"), 182.0, drawn)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let mut groups = Vec::new();
        groups.extend(answer.scales.map(|both| scales(both, show)));
        groups.extend(details(&answer.outcome, show));
        Reply { main: main_lines(&answer.outcome, show), verdict: verdict(answer, show), glance: None, groups }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        match &answer.outcome {
            Outcome::RightAngle(right) => {
                let sizes = Shown::joined([show.length(right.width), show.length(right.height)], " × ");
                say_with("angles-given-right-angle", [("sizes", plain(&sizes.main).into())])
            }
            Outcome::Slope(slope) => say_with(
                "angles-given-slope",
                [("rise", show.on_drawing(slope.rise).into()), ("run", show.on_drawing(slope.run).into())],
            ),
            Outcome::Sides(sides) => say_with(
                "angles-given-sides",
                [("count", sides.count.into()), ("lean", figures(sides.lean_degrees, 4).into())],
            ),
            Outcome::Taper(taper) => say_with(
                "angles-given-taper",
                [("wide", show.on_drawing(taper.wide).into()), ("narrow", show.on_drawing(taper.narrow).into())],
            ),
        }
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
