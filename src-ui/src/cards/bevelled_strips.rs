//! Bevelled strips card: board, bevel and strip in; how many, and how each cut's fence is set, out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, paper, polygon, text, upright};
use crate::settings::Settings;
use crate::show::{Show, Shown};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::bevelled_strips::{
    Answer, Cut, Face, FirstEdge, Inputs, MeasuredAt, Pass, Shape, Touching, Turn, solve,
};
use scantling::caution::Caution;
use scantling::measure::{Figure, Measure, Reading};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct BevelledStrips;

fn pass_label(number: usize, pass: &Pass) -> AttrValue {
    let cut = match pass.cut {
        Cut::Trim => say("bevelled-strips-cut-trim"),
        Cut::Strip => say("bevelled-strips-cut-strip"),
    };
    let turn = match pass.turn {
        Turn::Start => say("bevelled-strips-turn-start"),
        Turn::Keep => say("bevelled-strips-turn-keep"),
        Turn::Roll => say("bevelled-strips-turn-roll"),
        Turn::Spin => say("bevelled-strips-turn-spin"),
        Turn::EndOverEnd => say("bevelled-strips-turn-end-over-end"),
    };
    let up = match pass.up {
        Face::Marked => say("bevelled-strips-up-marked"),
        Face::Other => say("bevelled-strips-up-other"),
    };
    let touching = match pass.touching {
        Touching::Square => say("bevelled-strips-touching-square"),
        Touching::Lower => say("bevelled-strips-touching-lower"),
        Touching::Upper => say("bevelled-strips-touching-upper"),
    };
    say_with(
        "bevelled-strips-pass",
        [
            ("number", number.to_string().into()),
            ("cut", cut.as_str().into()),
            ("turn", turn.as_str().into()),
            ("up", up.as_str().into()),
            ("touching", touching.as_str().into()),
        ],
    )
}

/// Passes that are made alike, one after the other, stand in one line.
fn passes(answer: &Answer, show: Show) -> Group {
    let mut lines: Vec<Line> = Vec::new();
    let mut at = 0;
    while let Some(pass) = answer.passes.get(at) {
        let alike = answer.passes.iter().skip(at).take_while(|other| *other == pass).count().max(1);
        let label = pass_label(at + 1, pass);
        let label = if alike > 1 {
            say_with(
                "bevelled-strips-passes-alike",
                [("pass", label.as_str().into()), ("last", (at + alike).to_string().into())],
            )
        } else {
            label
        };
        lines.push(Line::new(label, show.length_mm(pass.fence_mm)));
        at += alike;
    }
    Group { title: say("bevelled-strips-passes"), lines }
}

fn sizes(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![
        Line::new(say("bevelled-strips-wide"), show.length_mm(answer.finished.wide_mm)),
        Line::new(say("bevelled-strips-mid"), show.length_mm(answer.finished.mid_mm)),
        Line::new(say("bevelled-strips-narrow"), show.length_mm(answer.finished.narrow_mm)),
    ];
    if let Some(square) = answer.square_to_bevel_mm {
        lines.push(Line::new(say("bevelled-strips-square"), show.length_mm(square)));
    }
    lines.push(Line::new(say("bevelled-strips-bevel-width"), show.length_mm(answer.bevel_width_mm)));
    if answer.sawn != answer.finished {
        lines.push(Line::new(say("bevelled-strips-sawn-wide"), show.length_mm(answer.sawn.wide_mm)));
    }
    Group { title: say("bevelled-strips-finished"), lines }
}

fn saw(answer: &Answer, show: Show) -> Group {
    Group {
        title: say("bevelled-strips-saw"),
        lines: vec![
            Line::new(say("bevelled-strips-tilt"), show.estimate(answer.bevel_degrees, Measure::Degrees)),
            Line::new(say("bevelled-strips-blade"), show.length_mm(answer.blade_above_table_mm)),
            Line::new(say("bevelled-strips-kerf-on-face"), show.fine_mm(answer.kerf_on_face_mm)),
            Line::new(say("bevelled-strips-slope"), show.fine_mm(answer.slope_mm)),
            Line::new(say("bevelled-strips-used"), show.length_mm(answer.used_mm)),
            Line::new(say("bevelled-strips-offcut"), show.length_mm(answer.offcut_wide_mm)),
        ],
    }
}

fn picture(answer: &Answer, show: Show) -> Html {
    let section = &answer.section;
    let (width, thickness) = (section.width.as_mm(), section.thickness.as_mm());
    let scale = Scale::fit(width, thickness, Place { x: 14.0, y: 26.0, width: 264.0, height: 76.0 });
    let points = |corners: &[[f64; 2]]| {
        // A kerf may run off the board; on the drawing the board's end cuts it off.
        corners.iter().map(|[x, y]| scale.point((x.clamp(0.0, width), *y))).collect::<Vec<_>>()
    };
    let (left, right) = (scale.x(0.0), scale.x(width));
    let (bottom, top) = (scale.y(0.0), scale.y(thickness));
    let fence = section.strips.first().map(|strip| {
        let shown =
            answer.passes.iter().find(|pass| pass.cut == Cut::Strip).map_or(answer.fence_mm, |pass| pass.fence_mm);
        let from = scale.x(strip[0][0]);
        across(from, from + scale.length(shown), top - 14.0, crate::show::plain(&show.length_mm(shown).main))
    });
    paper(
        say("bevelled-strips-picture"),
        bottom + 34.0,
        html! {
            <>
                { polygon(&[(left, top), (right, top), (right, bottom), (left, bottom)], Ink::Outline) }
                if !section.offcut.is_empty() {
                    { polygon(&points(&section.offcut), Ink::Waste) }
                }
                { for section.strips.iter().map(|strip| polygon(&points(strip), Ink::Cut)) }
                { for section.kerfs.iter().map(|kerf| polygon(&points(kerf), Ink::Blue)) }
                { for fence }
                { across(left, right, bottom + 18.0, show.on_drawing(section.width)) }
                { upright(top, bottom, right + 12.0, show.on_drawing(section.thickness)) }
                { for section.strips.iter().enumerate().take(12).map(|(index, strip)| {
                    let centre = strip.iter().map(|corner| corner[0]).sum::<f64>() / 4.0;
                    let y = f64::midpoint(top, bottom) + 4.5;
                    text((scale.x(centre), y), (index + 1).to_string(), Anchor::Middle, Ink::Outline)
                }) }
            </>
        },
    )
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    if answer.missing > 0 {
        let words =
            say_with("bevelled-strips-missing", [("missing", answer.missing.into()), ("boards", answer.boards.into())]);
        return Verdict { tone: Tone::Over, words };
    }
    let left = crate::show::plain(&show.length_mm(answer.left_mm.max(0.0)).main);
    Verdict { tone: Tone::Good, words: say_with("bevelled-strips-left", [("left", left.into())]) }
}

impl CardView for BevelledStrips {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "bevelled-strips";
    const STAGE: Stage = Stage::Cut;

    fn title() -> AttrValue {
        say("bevelled-strips-title")
    }

    fn also_called() -> AttrValue {
        say("bevelled-strips-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { kerf: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.kerf.is_blank() {
            inputs.kerf = settings.kerf.clone();
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        let inputs = fields.inputs();
        let pair = inputs.shape == Shape::CleatPair;
        html! {
            <>
                { fields.choice("bevelled-strips-shape", |inputs| &mut inputs.shape, vec![
                    (Shape::Parallelogram, say("bevelled-strips-shape-parallelogram")),
                    (Shape::Trapezoid, say("bevelled-strips-shape-trapezoid")),
                    (Shape::CleatPair, say("bevelled-strips-shape-cleat-pair")),
                ]) }
                { fields.length("bevelled-strips-board-width", |inputs| &mut inputs.board_width) }
                { fields.length("bevelled-strips-thickness", |inputs| &mut inputs.thickness) }
                { fields.angle("bevelled-strips-bevel", |inputs| &mut inputs.bevel) }
                if !pair {
                    { fields.length("bevelled-strips-strip-width", |inputs| &mut inputs.strip_width) }
                }
                if inputs.shape == Shape::Trapezoid {
                    { fields.choice("bevelled-strips-measured-at", |inputs| &mut inputs.measured_at, vec![
                        (MeasuredAt::WideFace, say("bevelled-strips-at-wide")),
                        (MeasuredAt::MidThickness, say("bevelled-strips-at-mid")),
                        (MeasuredAt::NarrowFace, say("bevelled-strips-at-narrow")),
                    ]) }
                }
                if !pair {
                    { fields.choice("bevelled-strips-first-edge", |inputs| &mut inputs.first_edge, vec![
                        (FirstEdge::Square, say("bevelled-strips-first-square")),
                        (FirstEdge::Bevelled, say("bevelled-strips-first-bevelled")),
                    ]) }
                }
                { fields.length_from_shop("bevelled-strips-kerf", |inputs| &mut inputs.kerf, &fields.settings().kerf) }
                { fields.length("bevelled-strips-planing", |inputs| &mut inputs.planing) }
                { fields.length("bevelled-strips-tooth-above", |inputs| &mut inputs.tooth_above) }
                if !pair {
                    { fields.figure("bevelled-strips-wanted", "", |inputs: &mut Inputs| -> &mut Figure { &mut inputs.wanted }) }
                }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let strips = if inputs.shape == Shape::CleatPair {
            Line::new(say("bevelled-strips-cleat"), show.length_mm(answer.finished.wide_mm))
        } else {
            Line::new(
                say("bevelled-strips-count"),
                Shown::words(say_with("bevelled-strips-strips", [("count", answer.count.into())])),
            )
        };
        Reply {
            main: vec![strips, Line::new(say("bevelled-strips-fence"), show.length_mm(answer.fence_mm))],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups: vec![passes(answer, show), sizes(answer, show), saw(answer, show)],
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let width = show.on_drawing(answer.section.width);
        say_with(
            "bevelled-strips-given",
            [("width", width.into()), ("bevel", crate::show::figures(answer.bevel_degrees, 3).into())],
        )
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
