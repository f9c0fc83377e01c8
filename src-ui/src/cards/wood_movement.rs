//! Wood-movement card: wood, width and moisture in; how far it moves and what to allow for it, out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, line, paper, rect, text};
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::wood_movement::{Allow, Answer, By, Grain, Held, Inputs, Set, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Measure, Rounding};
use scantling::problem::Problems;
use scantling::stock::materials::Choice;
use scantling::stock::movement::{Sheet, solid::coefficients};
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct WoodMovement;

/// The movement is drawn so that it can be seen: about so wide at each edge at the most, in drawing units.
const MOVED_DRAWN: f64 = 26.0;

fn grain_words(grain: Grain) -> AttrValue {
    match grain {
        Grain::FlatSawn => say("wood-movement-grain-flat-sawn"),
        Grain::QuarterSawn => say("wood-movement-grain-quarter-sawn"),
        Grain::Along => say("wood-movement-grain-along"),
    }
}

fn species() -> Vec<(Choice, AttrValue)> {
    let named = |choice: &Choice| match choice.family() {
        Some(family) => coefficients(*choice).map(|_| (*choice, AttrValue::from(family.name))),
        None => Some((*choice, say("wood-movement-species-own"))),
    };
    Choice::ALL.iter().filter_map(named).collect()
}

fn part_fields(fields: &Fields<WoodMovement>) -> Html {
    html! {
        <>
            { fields.choice("wood-movement-species", |inputs| &mut inputs.species, species()) }
            if fields.inputs().species == Choice::Own {
                { fields.figure("wood-movement-own-rate", "%", |inputs| &mut inputs.own_rate) }
            }
            { fields.choice("wood-movement-grain", |inputs| &mut inputs.grain,
                Grain::ALL.iter().map(|one| (*one, grain_words(*one))).collect()) }
            { fields.length("wood-movement-width", |inputs| &mut inputs.width) }
        </>
    }
}

fn moisture_fields(fields: &Fields<WoodMovement>) -> Html {
    html! {
        <>
            { fields.choice("wood-movement-by", |inputs| &mut inputs.by, vec![
                (By::Air, say("wood-movement-by-air")),
                (By::Meter, say("wood-movement-by-meter")),
            ]) }
            if fields.inputs().by == By::Air {
                { fields.figure("wood-movement-made-humidity", "%", |inputs| &mut inputs.made.humidity) }
                { fields.figure("wood-movement-made-temperature", "°C", |inputs| &mut inputs.made.temperature) }
                { fields.figure("wood-movement-dry-humidity", "%", |inputs| &mut inputs.dry.humidity) }
                { fields.figure("wood-movement-dry-temperature", "°C", |inputs| &mut inputs.dry.temperature) }
                { fields.figure("wood-movement-damp-humidity", "%", |inputs| &mut inputs.damp.humidity) }
                { fields.figure("wood-movement-damp-temperature", "°C", |inputs| &mut inputs.damp.temperature) }
            } else {
                { fields.figure("wood-movement-made-moisture", "%", |inputs| &mut inputs.made_moisture) }
                { fields.figure("wood-movement-dry-moisture", "%", |inputs| &mut inputs.dry_moisture) }
                { fields.figure("wood-movement-damp-moisture", "%", |inputs| &mut inputs.damp_moisture) }
            }
        </>
    }
}

fn set_fields(fields: &Fields<WoodMovement>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("wood-movement-set", |inputs| &mut inputs.set, vec![
                (Set::Grooves, say("wood-movement-set-grooves")),
                (Set::Gap, say("wood-movement-set-gap")),
                (Set::Slots, say("wood-movement-set-slots")),
            ]) }
            { fields.choice("wood-movement-held", |inputs| &mut inputs.held, vec![
                (Held::Middle, say("wood-movement-held-middle")),
                (Held::OneEdge, say("wood-movement-held-one-edge")),
            ]) }
            if inputs.set == Set::Grooves {
                { fields.length("wood-movement-bearing", |inputs| &mut inputs.bearing) }
            }
            if inputs.set == Set::Slots {
                { fields.length("wood-movement-screw", |inputs| &mut inputs.screw) }
                { fields.length("wood-movement-to-screw", |inputs| &mut inputs.to_screw) }
            } else {
                { fields.length("wood-movement-spare", |inputs| &mut inputs.spare) }
            }
            { fields.choice("wood-movement-beside", |inputs| &mut inputs.beside, vec![
                (Sheet::Plywood, say("wood-movement-beside-plywood")),
                (Sheet::Mdf, say("wood-movement-beside-mdf")),
                (Sheet::Particleboard, say("wood-movement-beside-particleboard")),
                (Sheet::Hardboard, say("wood-movement-beside-hardboard")),
                (Sheet::Own, say("wood-movement-beside-own")),
            ]) }
            if inputs.beside == Sheet::Own {
                { fields.figure("wood-movement-own-sheet", "%", |inputs| &mut inputs.own_sheet) }
            }
        </>
    }
}

/// What is allowed must not be short of it: rounded up.
fn allowed(length: Length, show: Show) -> Shown {
    show.length_towards(length, Rounding::NotUnder)
}

fn allowance(answer: &Answer, show: Show) -> Line {
    match answer.allow {
        Allow::Groove { depth, .. } => Line::new(say("wood-movement-groove-depth"), allowed(depth, show)),
        Allow::Gap { made, .. } => Line::new(say("wood-movement-gap-made"), allowed(made, show)),
        Allow::Slot { length, .. } => Line::new(say("wood-movement-slot-length"), allowed(length, show)),
    }
}

fn allow(answer: &Answer, show: Show) -> Group {
    let mut lines = vec![allowance(answer, show)];
    match answer.allow {
        Allow::Groove { tongue, free, opening, .. } => lines.extend([
            Line::new(say("wood-movement-tongue"), show.length(tongue)),
            Line::new(say("wood-movement-free"), allowed(free, show)),
            Line::new(say("wood-movement-opening"), show.length(opening)),
        ]),
        Allow::Gap { widest, least, .. } => lines.extend([
            Line::new(say("wood-movement-gap-widest"), show.length(widest)),
            Line::new(say("wood-movement-gap-least"), show.length(least)),
        ]),
        Allow::Slot { screw_at, from_held, .. } => lines.extend([
            Line::new(say("wood-movement-screw-at"), show.length(screw_at)),
            Line::new(say("wood-movement-from-held"), show.length(from_held)),
        ]),
    }
    Group { title: say("wood-movement-allow"), lines }
}

fn movement(answer: &Answer, show: Show) -> Group {
    let percent = |label: AttrValue, value: f64| Line::new(label, show.estimate(value, Measure::Percent));
    let mut rate = show.estimate(answer.rate_percent, Measure::Percent);
    let source = answer.rate_source;
    rate.cost = Some(format!("{} · {}", source.mark.words(), source.cite).into());
    let mut lines = vec![
        percent(say("wood-movement-moisture-made"), answer.made_percent),
        percent(say("wood-movement-moisture-dry"), answer.dry_percent),
        percent(say("wood-movement-moisture-damp"), answer.damp_percent),
        Line::new(say("wood-movement-rate"), rate),
        Line::new(say("wood-movement-swing"), show.fine_mm(answer.swing_mm)),
    ];
    if let Some(sheet) = answer.sheet_mm {
        lines.push(Line::new(say("wood-movement-sheet"), show.fine_mm(sheet)));
    }
    for note in &answer.notes {
        lines.push(Line::new(say("wood-movement-note"), Shown::words(note.to_string())).toned(Tone::Mind));
    }
    Group { title: say("wood-movement-movement"), lines }
}

/// The part seen from its end, to scale along its width; its movement at the edges enlarged as written on it.
fn picture(inputs: &Inputs, answer: &Answer, show: Show) -> Html {
    let width = answer.width.as_mm();
    let place = Place { x: 70.0, y: 0.0, width: 220.0, height: 60.0 };
    let scale = Scale::fit_width(width, place);
    let (left, right) = (scale.x(0.0), scale.x(width));
    let most = scale.length(answer.grows_mm.max(answer.shrinks_mm));
    // A whole number of times, so that it can be written on the drawing.
    let times = (MOVED_DRAWN / most.max(1e-9)).floor().clamp(1.0, 1000.0);
    let (edges, both) = if inputs.held == Held::Middle { (2.0, true) } else { (1.0, false) };
    let (grow, shrink) =
        (scale.length(answer.grows_mm) * times / edges, scale.length(answer.shrinks_mm) * times / edges);
    let (top, high) = (34.0, 58.0);
    // Between the driest and the dampest the edge wanders over this band.
    let band = |x: f64, outwards: f64| {
        let (from, to) = (x - outwards * shrink, x + outwards * grow);
        rect(from.min(to), top, (to - from).abs(), high, Ink::Waste)
    };
    let drawn = {
        let swing = plain(&show.fine_mm(answer.swing_mm).main);
        say_with("wood-movement-drawn", [("swing", swing.into()), ("times", times.to_string().into())])
    };
    let fast = if both { f64::midpoint(left, right) } else { left };
    paper(
        say("wood-movement-picture"),
        156.0,
        html! {
            <>
                { rect(left, top, right - left, high, if inputs.grain == Grain::Along { Ink::Wood } else { Ink::Cut }) }
                { band(right, 1.0) }
                if both { { band(left, -1.0) } }
                { line((fast, top - 8.0), (fast, top + high + 8.0), Ink::Red) }
                { line((right, top - 6.0), (right, top + high + 6.0), Ink::Dashed) }
                { line((left, top - 6.0), (left, top + high + 6.0), Ink::Dashed) }
                { text((180.0, 18.0), drawn, Anchor::Middle, Ink::Blue) }
                { across(left, right, 126.0, show.on_drawing(answer.width)) }
            </>
        },
    )
}

impl CardView for WoodMovement {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "wood-movement";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("wood-movement-title")
    }

    fn also_called() -> AttrValue {
        say("wood-movement-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("wood-movement-group-part"), part_fields(fields)) }
                { fields.group(say("wood-movement-group-moisture"), moisture_fields(fields)) }
                { fields.group(say("wood-movement-group-set"), set_fields(fields)) }
            </>
        }
    }

    fn picture(inputs: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(inputs, answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let (tone, words) = if answer.in_range {
            (Tone::Good, say("wood-movement-in-range"))
        } else {
            (Tone::Mind, say("wood-movement-out-of-range"))
        };
        Reply {
            main: vec![
                allowance(answer, show),
                Line::new(say("wood-movement-grows"), show.fine_mm(answer.grows_mm)),
                Line::new(say("wood-movement-shrinks"), show.fine_mm(answer.shrinks_mm)),
            ],
            verdict: Some(Verdict { tone, words }),
            glance: None,
            groups: vec![allow(answer, show), movement(answer, show)],
        }
    }

    fn given(inputs: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let grain = grain_words(inputs.grain);
        say_with(
            "wood-movement-given",
            [("width", show.on_drawing(answer.width).into()), ("grain", grain.as_str().into())],
        )
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
