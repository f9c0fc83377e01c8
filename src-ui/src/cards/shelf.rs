//! Shelf card: board, span and load in; how far it sags, whether it holds, and what would hold, out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, line, paper, polygon, rect, text};
use crate::settings::Settings;
use crate::show::{Show, Shown, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::shelf::{Answer, Found, Grain, Inputs, Judged, Limit, Load, PartOf, Strip, Support, solve};
use scantling::caution::Caution;
use scantling::measure::{Measure, Reading};
use scantling::problem::Problems;
use scantling::stock::loads::Contents;
use scantling::stock::materials::Choice;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Shelf;

/// The sag is drawn so that it can be seen: never less than as it is, and about so high at the most, in drawing units.
const SAG_DRAWN: f64 = 26.0;

fn contents_words(contents: Contents) -> AttrValue {
    match contents {
        Contents::Shoes => say("shelf-contents-shoes"),
        Contents::Boots => say("shelf-contents-boots"),
        Contents::FoldedClothes => say("shelf-contents-folded-clothes"),
        Contents::Books => say("shelf-contents-books"),
        Contents::LargeBooks => say("shelf-contents-large-books"),
        Contents::Records => say("shelf-contents-records"),
        Contents::Crockery => say("shelf-contents-crockery"),
        Contents::Jars => say("shelf-contents-jars"),
        Contents::Tins => say("shelf-contents-tins"),
        Contents::Paint => say("shelf-contents-paint"),
        Contents::Tools => say("shelf-contents-tools"),
    }
}

fn limit_words(limit: Limit) -> AttrValue {
    match limit {
        Limit::Visible => say("shelf-limit-visible"),
        Limit::Span360 => say("shelf-limit-360"),
        Limit::Span300 => say("shelf-limit-300"),
        Limit::Span200 => say("shelf-limit-200"),
        Limit::Own => say("shelf-limit-own"),
    }
}

fn materials() -> Vec<(Choice, AttrValue)> {
    let words = |choice: Choice| choice.family().map_or_else(|| say("shelf-material-own"), |family| family.name.into());
    Choice::ALL.iter().map(|choice| (*choice, words(*choice))).collect()
}

fn board_fields(fields: &Fields<Shelf>) -> Html {
    let inputs = fields.inputs();
    let across = inputs
        .material
        .family()
        .is_some_and(|family| family.rows().iter().any(|row| row.across.is_some_and(|across| across != row.along)));
    html! {
        <>
            { fields.choice("shelf-material", |inputs| &mut inputs.material, materials()) }
            if inputs.material == Choice::Own {
                { own_fields(fields) }
            }
            if across || inputs.grain == Grain::Across {
                { fields.choice("shelf-grain", |inputs| &mut inputs.grain, vec![
                    (Grain::Along, say("shelf-grain-along")),
                    (Grain::Across, say("shelf-grain-across")),
                ]) }
            }
            { fields.length("shelf-span", |inputs| &mut inputs.span) }
            { fields.length_from_shop("shelf-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
            { fields.length("shelf-depth", |inputs| &mut inputs.depth) }
            { fields.choice("shelf-support", |inputs| &mut inputs.support, vec![
                (Support::Loose, say("shelf-support-loose")),
                (Support::FixedBothEnds, say("shelf-support-fixed-both")),
                (Support::FixedOneEnd, say("shelf-support-fixed-one")),
                (Support::OneDivider, say("shelf-support-one-divider")),
                (Support::TwoDividers, say("shelf-support-two-dividers")),
            ]) }
        </>
    }
}

fn own_fields(fields: &Fields<Shelf>) -> Html {
    html! {
        <>
            { fields.figure("shelf-own-stiffness", "MPa", |inputs| &mut inputs.own_stiffness) }
            { fields.figure("shelf-own-strength", "MPa", |inputs| &mut inputs.own_strength) }
            { fields.figure("shelf-own-divisor", "", |inputs| &mut inputs.own_divisor) }
            { fields.figure("shelf-own-density", "kg/m³", |inputs| &mut inputs.own_density) }
            { fields.figure("shelf-own-creep", "", |inputs| &mut inputs.own_creep) }
        </>
    }
}

fn load_fields(fields: &Fields<Shelf>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("shelf-load", |inputs| &mut inputs.load, vec![
                (Load::Contents, say("shelf-load-contents")),
                (Load::PerMetre, say("shelf-load-per-metre")),
                (Load::Middle, say("shelf-load-middle")),
            ]) }
            { match inputs.load {
                Load::Contents => fields.choice("shelf-contents", |inputs| &mut inputs.contents,
                    Contents::ALL.iter().map(|one| (*one, contents_words(*one))).collect()),
                Load::PerMetre => fields.figure("shelf-per-metre", "kg/m", |inputs| &mut inputs.per_metre),
                Load::Middle => fields.figure("shelf-middle", "kg", |inputs| &mut inputs.middle),
            } }
            { fields.figure("shelf-share", "%", |inputs| &mut inputs.share) }
        </>
    }
}

fn strip_fields(fields: &Fields<Shelf>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("shelf-strip", |inputs| &mut inputs.strip, vec![
                (Strip::None, say("shelf-strip-none")),
                (Strip::Front, say("shelf-strip-front")),
                (Strip::FrontAndBack, say("shelf-strip-front-and-back")),
                (Strip::Under, say("shelf-strip-under")),
            ]) }
            if inputs.strip != Strip::None {
                { fields.choice("shelf-strip-material", |inputs| &mut inputs.strip_material, materials()) }
                if inputs.strip_material == Choice::Own && inputs.material != Choice::Own {
                    { own_fields(fields) }
                }
                { fields.length("shelf-strip-width", |inputs| &mut inputs.strip_width) }
                { fields.length("shelf-strip-height", |inputs| &mut inputs.strip_height) }
            }
        </>
    }
}

fn limit_fields(fields: &Fields<Shelf>) -> Html {
    html! {
        <>
            { fields.choice("shelf-limit", |inputs| &mut inputs.limit,
                Limit::ALL.iter().map(|one| (*one, limit_words(*one))).collect()) }
            if fields.inputs().limit == Limit::Own {
                { fields.length("shelf-own-limit", |inputs| &mut inputs.own_limit) }
            }
            { fields.choice("shelf-judged", |inputs| &mut inputs.judged, vec![
                (Judged::LongTerm, say("shelf-judged-long-term")),
                (Judged::Instant, say("shelf-judged-instant")),
            ]) }
        </>
    }
}

fn verdict(inputs: &Inputs, answer: &Answer, show: Show) -> Verdict {
    let weak = answer.strength.iter().any(|part| part.holds == Some(false));
    if weak {
        return Verdict { tone: Tone::Over, words: say("shelf-too-weak") };
    }
    let limit = answer.verdicts.iter().find(|verdict| verdict.chosen);
    let allowed = limit.map_or_else(String::new, |limit| plain(&show.fine_mm(limit.allowed_mm).main));
    let kept = limit.is_some_and(|limit| match inputs.judged {
        Judged::LongTerm => limit.long_term,
        Judged::Instant => limit.instant,
    });
    if kept {
        Verdict { tone: Tone::Good, words: say_with("shelf-within", [("limit", allowed.into())]) }
    } else {
        Verdict { tone: Tone::Over, words: say_with("shelf-over", [("limit", allowed.into())]) }
    }
}

fn found(label: &str, found: Found, show: Show) -> Line {
    let (shown, tone) = match found {
        Found::At(length) if length.is_zero() => (Shown::words(say("shelf-found-not-needed")), Tone::Plain),
        Found::At(length) => (show.length(length), Tone::Plain),
        Found::All(length) => {
            (Shown::words(say_with("shelf-found-all", [("length", show.on_drawing(length).into())])), Tone::Plain)
        }
        Found::None(length) => {
            (Shown::words(say_with("shelf-found-none", [("length", show.on_drawing(length).into())])), Tone::Over)
        }
    };
    Line::new(say(label), shown).toned(tone)
}

fn would_hold(answer: &Answer, show: Show) -> Group {
    let hold = &answer.would_hold;
    let mut lines = vec![
        found("shelf-longest-span", hold.longest_span, show),
        found("shelf-least-thickness", hold.least_thickness, show),
    ];
    if let Some(strip) = hold.least_strip_height {
        lines.push(found("shelf-least-strip", strip, show));
    }
    Group { title: say("shelf-would-hold"), lines }
}

fn sag(answer: &Answer, show: Show) -> Group {
    let ratio = |ratio: f64| if ratio.is_finite() { format!("L/{}", figures(ratio, 3)) } else { "–".into() };
    let with_ratio = |mm: f64, over: f64| Shown { cost: Some(ratio(over).into()), ..show.fine_mm(mm) };
    let mut lines = vec![
        Line::new(say("shelf-instant"), with_ratio(answer.instant_mm, answer.instant_ratio)),
        Line::new(say("shelf-long-term"), with_ratio(answer.long_term_mm, answer.long_term_ratio)),
    ];
    if let Some(uneven) = answer.uneven_mm {
        lines.push(Line::new(say("shelf-uneven"), show.fine_mm(uneven)));
    }
    for limit in &answer.verdicts {
        let (tone, words) = match (limit.instant, limit.long_term) {
            (true, true) => (Tone::Good, say("shelf-keeps")),
            (true, false) => (Tone::Mind, say("shelf-keeps-at-first")),
            _ => (Tone::Over, say("shelf-exceeds")),
        };
        let shown = Shown { cost: Some(format!("{}{words}", tone.mark()).into()), ..show.fine_mm(limit.allowed_mm) };
        lines.push(Line::new(limit_words(limit.limit), shown).toned(tone));
    }
    Group { title: say("shelf-sag"), lines }
}

fn strength(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    for part in &answer.strength {
        let label = match part.part {
            PartOf::Board => say("shelf-stress-board"),
            PartOf::Strip => say("shelf-stress-strip"),
        };
        let tone = if part.holds == Some(false) { Tone::Over } else { Tone::Plain };
        let mut shown = show.estimate(part.stress_mpa, Measure::Mpa);
        if let (Some(strength), Some(used)) = (part.strength_mpa, part.used_percent) {
            shown.cost = Some(say_with(
                "shelf-stress-of",
                [
                    ("strength", plain(&show.estimate(strength, Measure::Mpa).main).into()),
                    ("divisor", figures(part.divisor, 3).into()),
                    ("used", figures(used, 2).into()),
                ],
            ));
        }
        lines.push(Line::new(label, shown).toned(tone));
    }
    lines.push(Line::new(say("shelf-load-total"), show.estimate(answer.load_kg, Measure::Kg)));
    lines.push(Line::new(say("shelf-own-weight"), show.estimate(answer.own_weight_kg, Measure::Kg)));
    for support in &answer.supports {
        let at = plain(&show.length_mm(support.along_mm).main);
        let tone = if support.force_n < 0.0 { Tone::Over } else { Tone::Plain };
        let label = say_with("shelf-support-at", [("at", at.into())]);
        lines.push(Line::new(label, show.estimate(support.mass_kg, Measure::Kg)).toned(tone));
    }
    Group { title: say("shelf-strength"), lines }
}

fn board(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    for used in std::iter::once(&answer.board).chain(&answer.strip) {
        let name = if used.name.is_empty() {
            say("shelf-material-own")
        } else {
            format!("{} {}", used.name, used.label).into()
        };
        let mut shown = show.estimate(used.stiffness_mpa, Measure::Mpa);
        shown.cost = used.source.map(|source| format!("{} · {}", source.mark.words(), source.cite).into());
        lines.push(Line::new(say_with("shelf-stiffness-of", [("name", name.as_str().into())]), shown));
    }
    for note in &answer.notes {
        lines.push(Line::new(say("shelf-note"), Shown::words(note.to_string())).toned(Tone::Mind));
    }
    Group { title: say("shelf-board"), lines }
}

fn picture(answer: &Answer, show: Show) -> Html {
    let span = answer.span.as_mm();
    let place = Place { x: 34.0, y: 0.0, width: 292.0, height: 70.0 };
    let scale = Scale::fit_width(span, place);
    let deepest = answer.line.iter().map(|place| place.long_term_mm.abs()).fold(0.0, f64::max);
    // A whole number of times, so that it can be written on the drawing.
    let times = (SAG_DRAWN / scale.length(deepest).max(1e-9)).floor().clamp(1.0, 1000.0);
    let thick = scale.length(answer.thickness.as_mm()).clamp(3.0, 40.0);
    let top = 44.0;
    let sagged = |offset: f64| {
        answer
            .line
            .iter()
            .map(|place| (scale.x(place.along_mm), top + offset + scale.length(place.long_term_mm) * times))
            .collect::<Vec<_>>()
    };
    let mut shape = sagged(0.0);
    shape.extend(sagged(thick).into_iter().rev());
    let (left, right) = (scale.x(0.0), scale.x(span));
    let foot = 108.0;
    let deep_x = scale.x(answer.deepest_at_mm);
    let tone = if answer.holds { Ink::Blue } else { Ink::Red };
    let label = say_with(
        "shelf-drawn",
        [("sag", plain(&show.fine_mm(deepest).main).into()), ("times", figures(times, 4).into())],
    );
    let supports = answer.supports.iter().map(|support| {
        let x = scale.x(support.along_mm);
        if support.along_mm <= 0.0 {
            rect(x - 16.0, 14.0, 16.0, foot - 6.0, Ink::Cut)
        } else if support.along_mm >= span * 0.999 {
            rect(x, 14.0, 16.0, foot - 6.0, Ink::Cut)
        } else {
            rect(x - 3.0, top + thick, 6.0, foot - top - thick + 8.0, Ink::Cut)
        }
    });
    paper(
        say("shelf-picture"),
        152.0,
        html! {
            <>
                { for supports }
                { polygon(&shape, Ink::Wood) }
                { line((left, top), (right, top), Ink::Dashed) }
                { line((deep_x, top), (deep_x, top + scale.length(deepest) * times), Ink::Red) }
                { text((180.0, foot - 4.0), label, Anchor::Middle, tone) }
                { across(left, right, foot + 28.0, show.on_drawing(answer.span)) }
            </>
        },
    )
}

impl CardView for Shelf {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "shelf";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("shelf-title")
    }

    fn also_called() -> AttrValue {
        say("shelf-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { thickness: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.thickness.is_blank() {
            inputs.thickness = settings.sheet.clone();
        }
        inputs.graduation = settings.graduation();
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { board_fields(fields) }
                { load_fields(fields) }
                { strip_fields(fields) }
                { limit_fields(fields) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let (label, mm) = match inputs.judged {
            Judged::LongTerm => (say("shelf-long-term"), answer.long_term_mm),
            Judged::Instant => (say("shelf-instant"), answer.instant_mm),
        };
        Reply {
            main: vec![Line::new(label, show.fine_mm(mm))],
            verdict: Some(verdict(inputs, answer, show)),
            glance: None,
            groups: vec![would_hold(answer, show), sag(answer, show), strength(answer, show), board(answer, show)],
        }
    }

    fn given(inputs: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let load = match inputs.load {
            Load::Contents => contents_words(inputs.contents),
            Load::PerMetre => say("shelf-load-per-metre"),
            Load::Middle => say("shelf-load-middle"),
        };
        say_with("shelf-given", [("span", show.on_drawing(answer.span).into()), ("load", load.as_str().into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
