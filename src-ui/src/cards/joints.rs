//! Joints card: an edge, what it meets and what holds it in; how many, where and how deep, out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, circle, line, paper, polygon, rect, text};
use crate::settings::Settings;
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::joints::{Answer, Biscuit, Inputs, Kind, Meeting, Note, Spread, Stays, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Reading, Rounding};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Joints;

/// The sizes of biscuits, to choose from.
pub(super) fn biscuits() -> Vec<(Biscuit, AttrValue)> {
    vec![
        (Biscuit::No0, say("joints-biscuit-no0")),
        (Biscuit::No10, say("joints-biscuit-no10")),
        (Biscuit::No20, say("joints-biscuit-no20")),
    ]
}

fn part_fields(fields: &Fields<Joints>) -> Html {
    let sheet = &fields.settings().sheet;
    html! {
        <>
            { fields.length("joints-length", |inputs| &mut inputs.length) }
            { fields.length_from_shop("joints-edge-thickness", |inputs| &mut inputs.edge_thickness, sheet) }
            if fields.inputs().meeting == Meeting::Face {
                { fields.length_from_shop("joints-face-thickness", |inputs| &mut inputs.face_thickness, sheet) }
                { fields.length("joints-from-end", |inputs| &mut inputs.from_end) }
            }
            if fields.inputs().kind != Kind::PocketScrew {
                { fields.length("joints-line", |inputs| &mut inputs.line) }
            }
            { fields.length("joints-skin", |inputs| &mut inputs.skin) }
        </>
    }
}

fn spread_fields(fields: &Fields<Joints>) -> Html {
    html! {
        <>
            { fields.length("joints-end-distance", |inputs| &mut inputs.end_distance) }
            { fields.length("joints-other-end", |inputs| &mut inputs.other_end) }
            { fields.length("joints-spacing", |inputs| &mut inputs.spacing) }
            { fields.choice("joints-spread", |inputs| &mut inputs.spread, vec![
                (Spread::Even, say("joints-spread-even")),
                (Spread::Steps, say("joints-spread-steps")),
            ]) }
            { fields.figure("joints-count", "", |inputs| &mut inputs.count) }
        </>
    }
}

fn size_fields(fields: &Fields<Joints>) -> Html {
    let kind = fields.inputs().kind;
    html! {
        <>
            if kind == Kind::Dowel {
                { fields.length("joints-dowel-diameter", |inputs| &mut inputs.dowel_diameter) }
                { fields.length("joints-dowel-length", |inputs| &mut inputs.dowel_length) }
            }
            if kind == Kind::LooseTenon {
                { fields.length("joints-tenon-thickness", |inputs| &mut inputs.tenon_thickness) }
                { fields.length("joints-tenon-width", |inputs| &mut inputs.tenon_width) }
                { fields.length("joints-tenon-length", |inputs| &mut inputs.tenon_length) }
            }
            if kind == Kind::Biscuit {
                { fields.choice("joints-biscuit", |inputs| &mut inputs.biscuit, biscuits()) }
                { fields.length("joints-cutter", |inputs| &mut inputs.cutter) }
            }
            if kind.is_screw() {
                { fields.length("joints-screw-length", |inputs| &mut inputs.screw_length) }
            } else {
                { fields.length("joints-face-depth", |inputs| &mut inputs.face_depth) }
            }
            if kind == Kind::ConnectingScrew {
                { fields.length("joints-core", |inputs| &mut inputs.core) }
                { fields.length("joints-shank", |inputs| &mut inputs.shank) }
            }
            if kind == Kind::PocketScrew {
                { fields.length("joints-shoulder", |inputs| &mut inputs.shoulder) }
            } else {
                { fields.length("joints-glue", |inputs| &mut inputs.glue) }
            }
        </>
    }
}

fn how_many(answer: &Answer) -> AttrValue {
    let count = u32::try_from(answer.marks.len()).unwrap_or(u32::MAX);
    let key = match answer.kind {
        Kind::Dowel => "joints-dowels",
        Kind::LooseTenon => "joints-tenons",
        Kind::Biscuit => "joints-biscuits",
        Kind::ConnectingScrew | Kind::PocketScrew => "joints-screws",
    };
    say_with(key, [("count", count.into())])
}

/// The face part's depth is never rounded up nor the edge part's down, so that what goes in has its room.
fn depths(answer: &Answer, show: Show) -> [Shown; 2] {
    let fixing = &answer.fixing;
    let in_other = show.length_towards(fixing.in_other, Rounding::NotOver);
    [in_other, show.length_towards(fixing.in_edge, Rounding::NotUnder)]
}

fn main_lines(answer: &Answer, show: Show) -> Vec<Line> {
    let first = answer.marks.first().copied().unwrap_or_default();
    let places = match answer.spacing {
        Some(spacing) => {
            let pair = [show.length(first), show.length(spacing)];
            Line::new(say("joints-first-then"), Shown::joined(pair, ", "))
        }
        None => Line::new(say("joints-first-only"), show.length(first)),
    };
    let deep = match &answer.screw {
        Some(screw) => {
            let pair = [show.length(screw.length), show.length(screw.reach)];
            Line::new(say("joints-screw-long"), Shown::joined(pair, ", "))
        }
        None => {
            let label = if answer.face_thickness.is_some() { "joints-deep" } else { "joints-deep-edges" };
            Line::new(say(label), Shown::joined(depths(answer, show), ", "))
        }
    };
    vec![Line::new(say("joints-how-many"), Shown::words(how_many(answer))), places, deep]
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    let least = plain(&show.fine_mm(answer.left.least.as_mm()).main);
    let (tone, words) = match answer.stays {
        Stays::Inside => (Tone::Good, say_with("joints-inside", [("least", least.into())])),
        Stays::Thin => (Tone::Over, say_with("joints-thin", [("least", least.into())])),
        Stays::BreaksOut => (Tone::Over, say("joints-breaks-out")),
    };
    Verdict { tone, words }
}

fn numbered(title: AttrValue, marks: &[Length], show: Show) -> Group {
    let line = |(index, mark): (usize, &Length)| {
        Line::new(say_with("joints-mark", [("number", (index + 1).to_string().into())]), show.length(*mark))
    };
    Group { title, lines: marks.iter().enumerate().map(line).collect() }
}

/// The marks of the mating part; a row that is the same from both ends needs no second list.
fn mate(answer: &Answer, show: Show) -> Group {
    let title = say("joints-mirrored");
    if answer.mirrored != answer.marks {
        return numbered(title, &answer.mirrored, show);
    }
    Group { title, lines: vec![Line::new(say("joints-marks-alike"), Shown::words(say("joints-marks-alike-both")))] }
}

fn lines_to_mark(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![Line::new(say("joints-line-edge"), show.length(answer.line))];
    lines.extend(answer.line_on_face.map(|line| Line::new(say("joints-line-face"), show.length(line))));
    Group { title: say("joints-lines"), lines }
}

fn sizes(answer: &Answer, show: Show) -> Group {
    let fixing = &answer.fixing;
    let [in_other, in_edge] = depths(answer, show);
    let other = if fixing.through { say("joints-through") } else { say("joints-in-other") };
    let mut lines = Vec::new();
    if answer.kind != Kind::PocketScrew {
        lines.push(Line::new(say("joints-in-edge"), in_edge));
    }
    lines.extend([
        Line::new(other, in_other),
        Line::new(say("joints-across"), show.length(fixing.across)),
        Line::new(say("joints-across-other"), show.length(fixing.across_other)),
        Line::new(say("joints-along"), show.length(fixing.along)),
    ]);
    if let Some(screw) = &answer.screw {
        if answer.kind == Kind::PocketScrew {
            lines.push(Line::new(say("joints-shoulder-at"), show.length(fixing.in_edge)));
        }
        lines.push(Line::new(say("joints-screw"), show.length(screw.length)));
        lines.push(Line::new(say("joints-reach"), show.length(screw.reach)));
        if let Some(longest) = screw.longest {
            lines.push(Line::new(say("joints-longest"), show.length_towards(longest, Rounding::NotOver)));
        }
    }
    Group { title: say("joints-depths"), lines }
}

fn left(answer: &Answer, show: Show) -> Group {
    let left = &answer.left;
    let line = |label: AttrValue, length: Length| {
        let over = length == left.least && answer.stays != Stays::Inside;
        Line::new(label, show.fine_mm(length.as_mm())).toned(if over { Tone::Over } else { Tone::Plain })
    };
    let mut lines = vec![line(say("joints-left-outer"), left.outer), line(say("joints-left-inner"), left.inner)];
    lines.extend(left.behind.map(|length| line(say("joints-left-behind"), length)));
    lines.extend(left.to_end.map(|length| line(say("joints-left-to-end"), length)));
    lines.push(line(say("joints-left-ends"), left.ends));
    Group { title: say("joints-left"), lines }
}

fn notes(answer: &Answer) -> Option<Group> {
    let line = |note: &Note| Line::new(say("joints-note"), Shown::words(note.to_string())).toned(Tone::Mind);
    let lines: Vec<Line> = answer.notes.iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("joints-notes"), lines })
}

/// The sloping screw of a pocket, from its shoulder to its point, `half` its thickness either way; its axis comes out
/// of the end at `out` and leans away from the outer face on its way.
fn pocket_screw(answer: &Answer, out: (f64, f64), half: f64) -> [(f64, f64); 4] {
    let (reach, shoulder) = (answer.screw.map_or(0.0, |screw| screw.reach.as_mm()), answer.fixing.in_edge.as_mm());
    // The slope as the answer has it: the way square to the face over the way along the screw.
    let cos = if reach > 0.0 { (answer.fixing.in_other.as_mm() / reach).min(1.0) } else { 1.0 };
    let sin = (1.0 - cos * cos).sqrt();
    let at = |along: f64, beside: f64| (out.0 - along * cos + beside * sin, out.1 + along * sin + beside * cos);
    [at(reach, 0.0), at(reach * 0.8, half), at(-shoulder, half), at(-shoulder, -half)]
}

/// The section through a joint, the edge part to the right of the other, its outer face below.
fn section(answer: &Answer, show: Show) -> Html {
    let mm = |length: Length| length.as_mm();
    let (edge, fixing) = (mm(answer.edge_thickness), &answer.fixing);
    let shown = mm(fixing.in_edge) + 22.0;
    let other = answer.face_thickness.map_or(mm(fixing.in_other) + 22.0, mm);
    let below = answer.line_on_face.map_or(0.0, |line| (mm(line) - mm(answer.line)).min(18.0));
    let above = if answer.face_thickness.is_some() { 14.0 } else { 0.0 };
    let place = Place { x: 76.0, y: 6.0, width: 220.0, height: 96.0 };
    let scale = Scale::fit(other + shown, below + edge + above, place);
    let middle = below + mm(answer.line);
    let part = |left: f64, bottom: f64, width: f64, height: f64, ink| {
        rect(scale.x(left), scale.y(bottom + height), scale.length(width), scale.length(height), ink)
    };
    let hole =
        |left: f64, width: f64, across: Length| part(left, middle - mm(across) / 2.0, width, mm(across), Ink::Outline);
    let (in_other, in_edge) = (mm(fixing.in_other), mm(fixing.in_edge));
    // The same figures as in the answer, rounded the same way.
    let [other_deep, edge_deep] = depths(answer, show).map(|shown| plain(&shown.main));
    html! {
        <>
            { part(0.0, 0.0, other, below + edge + above, if answer.face_thickness.is_some() { Ink::Cut } else { Ink::Wood }) }
            { part(other, below, shown, edge, Ink::Wood) }
            if answer.kind == Kind::PocketScrew {
                { polygon(&scale.points(&pocket_screw(answer, (other, middle), mm(fixing.across) / 2.0)), Ink::Outline) }
            } else {
                { hole(other - in_other, in_other, fixing.across_other) }
                { hole(other, in_edge, fixing.across) }
                { across(scale.x(other), scale.x(other + in_edge), 118.0, edge_deep) }
            }
            { line((scale.x(other) - 14.0, scale.y(middle)), (scale.x(other) + 14.0, scale.y(middle)), Ink::Dashed) }
            { text((scale.x(0.0) - 6.0, scale.y(middle) + 4.5), other_deep, Anchor::End, Ink::Blue) }
        </>
    }
}

/// The edge seen from its end, with every mark.
fn edge(answer: &Answer, show: Show) -> Html {
    let mm = |length: Length| length.as_mm();
    let (length, thickness) = (mm(answer.length), mm(answer.edge_thickness));
    let scale = Scale::fit(length, thickness, Place { x: 30.0, y: 132.0, width: 300.0, height: 22.0 });
    let (along, wide) = (mm(answer.fixing.along), mm(answer.fixing.across));
    let y = scale.y(mm(answer.line));
    let one = |mark: &Length| {
        let x = mm(*mark);
        if matches!(answer.kind, Kind::LooseTenon | Kind::Biscuit) {
            let (width, height) = (scale.length(along), scale.length(wide).max(1.5));
            rect(scale.x(x - along / 2.0), y - height / 2.0, width, height, Ink::Outline)
        } else {
            circle((scale.x(x), y), scale.length(wide / 2.0).max(1.1), Ink::Outline)
        }
    };
    let first = answer.marks.first().copied().unwrap_or_default();
    let second = answer.marks.get(1);
    html! {
        <>
            { rect(scale.x(0.0), scale.y(thickness), scale.length(length), scale.length(thickness), Ink::Wood) }
            { for answer.marks.iter().map(one) }
            { across(scale.x(0.0), scale.x(mm(first)), 172.0, show.on_drawing(first)) }
            if let (Some(second), Some(spacing)) = (second, answer.spacing) {
                { across(scale.x(mm(first)), scale.x(mm(*second)), 196.0, show.on_drawing(spacing)) }
            }
        </>
    }
}

impl CardView for Joints {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "joints";
    const STAGE: Stage = Stage::Join;

    fn title() -> AttrValue {
        say("joints-title")
    }

    fn also_called() -> AttrValue {
        say("joints-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { edge_thickness: Reading::default(), face_thickness: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        for reading in [&mut inputs.edge_thickness, &mut inputs.face_thickness] {
            if reading.is_blank() {
                *reading = settings.sheet.clone();
            }
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.choice("joints-kind", |inputs| &mut inputs.kind, vec![
                    (Kind::Dowel, say("joints-kind-dowel")),
                    (Kind::LooseTenon, say("joints-kind-loose-tenon")),
                    (Kind::Biscuit, say("joints-kind-biscuit")),
                    (Kind::ConnectingScrew, say("joints-kind-connecting-screw")),
                    (Kind::PocketScrew, say("joints-kind-pocket-screw")),
                ]) }
                { fields.choice("joints-meeting", |inputs| &mut inputs.meeting, vec![
                    (Meeting::Face, say("joints-meeting-face")),
                    (Meeting::Edge, say("joints-meeting-edge")),
                ]) }
                { fields.group(say("joints-group-parts"), part_fields(fields)) }
                { fields.group(say("joints-group-spread"), spread_fields(fields)) }
                { fields.group(say("joints-group-sizes"), size_fields(fields)) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        paper(say("joints-picture"), 212.0, html! { <>{ section(answer, show) }{ edge(answer, show) }</> })
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let mut groups = vec![
            numbered(say("joints-marks"), &answer.marks, show),
            mate(answer, show),
            lines_to_mark(answer, show),
            sizes(answer, show),
            left(answer, show),
        ];
        groups.extend(notes(answer));
        Reply { main: main_lines(answer, show), verdict: Some(verdict(answer, show)), glance: None, groups }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let thickness = show.on_drawing(answer.edge_thickness);
        say_with("joints-given", [("length", show.on_drawing(answer.length).into()), ("thickness", thickness.into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
