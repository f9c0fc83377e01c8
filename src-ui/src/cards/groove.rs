//! Groove and rabbet card: part, panel and blade in; blade height and the fence for every pass out.

use super::{CardView, Stage};
use crate::pictures::{Ink, Place, Scale, across, line, paper, polygon, rect, upright};
use crate::settings::Settings;
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::groove::{Against, Answer, Cut, Deep, Inputs, Pass, Verdict as Stands, Wall, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Reading};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Groove;

fn count(answer: &Answer) -> u32 {
    u32::try_from(answer.passes.len()).unwrap_or(u32::MAX)
}

fn passes(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    for (number, pass) in (1_u32..).zip(&answer.passes) {
        let number = [("number", number.into())];
        let label = match pass.wall {
            Wall::Near => say_with("groove-pass-near", number),
            Wall::Far => say_with("groove-pass-far", number),
            Wall::Both => say_with("groove-pass-both", number),
            Wall::Neither => say_with("groove-pass-neither", number),
        };
        lines.push(Line::new(label, show.length(pass.near)));
        if matches!(pass.wall, Wall::Far | Wall::Both) {
            lines.push(Line::new(say("groove-far-side"), show.length(pass.far)));
        }
    }
    if let Some(shift) = answer.shift {
        lines.push(Line::new(say("groove-shift"), show.fine_mm(shift.as_mm())));
    }
    if let Some(overlap) = answer.overlap {
        let overlap_line = Line::new(say("groove-overlap"), show.fine_mm(overlap.as_mm()));
        lines.push(if overlap.is_zero() { overlap_line.toned(Tone::Mind) } else { overlap_line });
    }
    if answer.scrap_face {
        let words = Shown::words(say("groove-scrap-face-needed"));
        lines.push(Line::new(say("groove-scrap-face"), words).toned(Tone::Mind));
    }
    Group { title: say("groove-passes"), lines }
}

fn sizes(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![
        Line::new(say("groove-width"), show.length(answer.width)),
        Line::new(say("groove-exact-depth"), show.fine_mm(answer.depth.as_mm())),
        Line::new(say("groove-left"), show.fine_mm(answer.left.as_mm())),
        Line::new(say("groove-deepest"), show.fine_mm(answer.deepest.as_mm())),
    ];
    if answer.cut == Cut::Groove {
        lines.push(Line::new(say("groove-starts-at"), show.length(answer.starts_at)));
    }
    lines.push(Line::new(say("groove-ends-at"), show.length(answer.ends_at)));
    if !answer.play.is_exact() {
        let ends = [answer.play.low(), answer.play.high()].map(|end| show.fine_mm(end.as_mm()));
        let tone = if answer.play.low().is_negative() { Tone::Over } else { Tone::Plain };
        lines.push(Line::new(say("groove-play"), Shown::joined(ends, " – ")).toned(tone));
    }
    Group { title: say("groove-sizes"), lines }
}

fn ripped(answer: &Answer, show: Show) -> Option<Group> {
    let ripped = answer.ripped?;
    let lines = vec![
        Line::new(say("groove-ripped-to"), show.length(ripped.width)),
        Line::new(say("groove-ripped-off"), show.length(ripped.off)),
    ];
    Some(Group { title: say("groove-ripped"), lines })
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    let left = [("left", plain(&show.fine_mm(answer.left.as_mm()).main).into())];
    let (tone, words) = match answer.verdict {
        Stands::TooTight => (Tone::Over, say("groove-too-tight")),
        Stands::TooDeep => (Tone::Mind, say_with("groove-too-deep", left)),
        Stands::Good => (Tone::Good, say_with("groove-good", left)),
    };
    Verdict { tone, words }
}

/// Where a kerf begins, from the edge that the groove lies at.
fn kerf_at(answer: &Answer, pass: &Pass) -> f64 {
    match (answer.against, answer.passes.first()) {
        (Against::FarEdge, Some(first)) => answer.ends_at.as_mm() - (pass.far.as_mm() - first.near.as_mm()),
        _ => pass.near.as_mm(),
    }
}

/// The part from its end, lying on the table: only what is around the groove where that is far from the edge.
fn picture(answer: &Answer, show: Show) -> Html {
    let mm = |length: Length| length.as_mm();
    let (thick, deep) = (mm(answer.thickness), mm(answer.depth));
    let (wall, far_wall) = (mm(answer.starts_at), mm(answer.ends_at));
    let broken = wall > 6.0 * thick;
    let from = if broken { wall - 3.0 * thick } else { 0.0 };
    let beyond = answer.ripped.map_or(f64::INFINITY, |ripped| mm(ripped.width));
    let to = far_wall + (2.0 * thick).min(beyond);
    let scale = Scale::fit(to - from, thick, Place { x: 26.0, y: 12.0, width: 232.0, height: 84.0 });
    let at = |x: f64, y: f64| scale.point((x - from, y));
    let part = [
        (from, 0.0),
        (wall, 0.0),
        (wall, deep),
        (far_wall, deep),
        (far_wall, 0.0),
        (to, 0.0),
        (to, thick),
        (from, thick),
    ];
    let ((left, table), (right, top)) = (at(from, 0.0), at(to, thick));
    let kerfs = answer.passes.iter().map(|pass| {
        let (x, y) = at(kerf_at(answer, pass), deep);
        rect(x, y, scale.length(mm(answer.kerf)), table + 6.0 - y, Ink::Blue)
    });
    let (near_x, bottom) = at(wall, deep);
    let (far_x, _) = at(far_wall, deep);
    let fence = answer.against == Against::NearEdge && !broken;
    paper(
        say("groove-picture"),
        table + 54.0,
        html! {
            <>
                { polygon(&part.map(|(x, y)| at(x, y)), Ink::Cut) }
                { for kerfs }
                { line((left - 16.0, table + 6.0), (right + 6.0, table + 6.0), Ink::Soft) }
                if fence {
                    { rect(left - 14.0, top - 4.0, 14.0, table + 6.0 - (top - 4.0), Ink::Wood) }
                }
                if broken {
                    { line((left, top - 6.0), (left, table + 6.0), Ink::Dashed) }
                }
                if answer.cut == Cut::Groove {
                    { across(left, near_x, table + 22.0, show.on_drawing(answer.starts_at)) }
                }
                { across(near_x, far_x, table + 42.0, show.on_drawing(answer.width)) }
                { upright(bottom, table, right + 14.0, plain(&show.fine_mm(deep).main)) }
                { upright(top, bottom, right + 14.0, plain(&show.fine_mm(mm(answer.left)).main)) }
            </>
        },
    )
}

impl CardView for Groove {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "groove";
    const STAGE: Stage = Stage::Groove;

    fn title() -> AttrValue {
        say("groove-title")
    }

    fn also_called() -> AttrValue {
        say("groove-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { thickness: Reading::default(), kerf: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        for (reading, standing) in [(&mut inputs.thickness, &settings.sheet), (&mut inputs.kerf, &settings.kerf)] {
            if reading.is_blank() {
                *reading = standing.clone();
            }
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        let inputs = fields.inputs();
        html! {
            <>
                { fields.choice("groove-cut", |inputs| &mut inputs.cut, vec![
                    (Cut::Groove, say("groove-cut-groove")),
                    (Cut::Rabbet, say("groove-cut-rabbet")),
                ]) }
                { fields.length_from_shop("groove-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
                { fields.range("groove-panel", |inputs| &mut inputs.panel) }
                { fields.length("groove-fit", |inputs| &mut inputs.fit) }
                if inputs.cut == Cut::Groove {
                    { fields.length("groove-distance", |inputs| &mut inputs.distance) }
                }
                { fields.choice("groove-deep", |inputs| &mut inputs.deep, vec![
                    (Deep::Third, say("groove-deep-third")),
                    (Deep::Half, say("groove-deep-half")),
                    (Deep::TwoThirds, say("groove-deep-two-thirds")),
                    (Deep::Own, say("groove-deep-own")),
                ]) }
                if inputs.deep == Deep::Own {
                    { fields.length("groove-depth", |inputs| &mut inputs.depth) }
                }
                { fields.length_from_shop("groove-kerf", |inputs| &mut inputs.kerf, &fields.settings().kerf) }
                { fields.choice("groove-against", |inputs| &mut inputs.against, vec![
                    (Against::NearEdge, say("groove-against-near")),
                    (Against::FarEdge, say("groove-against-far")),
                ]) }
                { fields.length("groove-part-width", |inputs| &mut inputs.part_width) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let first = answer.passes.first().map_or(Length::ZERO, |pass| pass.near);
        let mut groups = vec![passes(answer, show), sizes(answer, show)];
        groups.extend(ripped(answer, show));
        Reply {
            main: vec![
                Line::new(say("groove-blade"), show.length(answer.depth)),
                Line::new(say_with("groove-fence", [("count", count(answer).into())]), show.length(first)),
            ],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups,
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let sizes =
            [("width", show.on_drawing(answer.width).into()), ("thickness", show.on_drawing(answer.thickness).into())];
        match answer.cut {
            Cut::Groove => say_with("groove-given-groove", sizes),
            Cut::Rabbet => say_with("groove-given-rabbet", sizes),
        }
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
