//! Clothes-rail card: rail, span and clothes in; how far it sags, what would hold it, and the room for the clothes, out.

mod picture;

use super::{CardView, Stage};
use crate::settings::Settings;
use crate::show::{Show, Shown, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::clothes_rail::{Answer, Brackets, Hung, Inputs, Load, Material, Shape, solve};
use scantling::cards::shelf::{Found, Judged, Limit};
use scantling::caution::Caution;
use scantling::measure::{Length, Measure, Reading};
use scantling::problem::Problems;
use scantling::stock::clothes::Garments;
use scantling::stock::materials::{Choice, Kind};
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct ClothesRail;

fn garments_words(garments: Garments) -> AttrValue {
    match garments {
        Garments::Shirts => say("clothes-rail-garments-shirts"),
        Garments::Trousers => say("clothes-rail-garments-trousers"),
        Garments::Suits => say("clothes-rail-garments-suits"),
        Garments::Dresses => say("clothes-rail-garments-dresses"),
        Garments::Coats => say("clothes-rail-garments-coats"),
    }
}

/// What may hang there, to choose from.
pub(super) fn garments() -> Vec<(Garments, AttrValue)> {
    Garments::ALL.iter().map(|one| (*one, garments_words(*one))).collect()
}

/// What a rail may look like.
pub(super) fn shapes() -> Vec<(Shape, AttrValue)> {
    vec![
        (Shape::RoundTube, say("clothes-rail-shape-round-tube")),
        (Shape::OvalTube, say("clothes-rail-shape-oval-tube")),
        (Shape::EllipseTube, say("clothes-rail-shape-ellipse-tube")),
        (Shape::RoundBar, say("clothes-rail-shape-round-bar")),
        (Shape::FlatBar, say("clothes-rail-shape-flat-bar")),
    ]
}

/// What it may be made of, whose figures are known.
pub(super) fn metals() -> Vec<(Material, AttrValue)> {
    vec![
        (Material::Steel, say("clothes-rail-material-steel")),
        (Material::Stainless, say("clothes-rail-material-stainless")),
        (Material::Aluminium, say("clothes-rail-material-aluminium")),
        (Material::Brass, say("clothes-rail-material-brass")),
        (Material::Wood, say("clothes-rail-material-wood")),
    ]
}

/// Solid woods.
pub(super) fn woods() -> Vec<(Choice, AttrValue)> {
    let named = |choice: &Choice| choice.family().filter(|f| f.kind == Kind::Solid).map(|f| (*choice, f.name.into()));
    Choice::ALL.iter().filter_map(named).collect()
}

fn limit_words(limit: Limit) -> AttrValue {
    match limit {
        Limit::Visible => say("clothes-rail-limit-visible"),
        Limit::Span360 => say("clothes-rail-limit-360"),
        Limit::Span300 => say("clothes-rail-limit-300"),
        Limit::Span200 => say("clothes-rail-limit-200"),
        Limit::Own => say("clothes-rail-limit-own"),
    }
}

fn brackets_words(brackets: Brackets) -> AttrValue {
    match brackets {
        Brackets::None => say("clothes-rail-brackets-none"),
        Brackets::Middle => say("clothes-rail-brackets-middle"),
        Brackets::Thirds => say("clothes-rail-brackets-thirds"),
    }
}

fn rail_fields(fields: &Fields<ClothesRail>) -> Html {
    let inputs = fields.inputs();
    let mut materials = metals();
    materials.push((Material::Own, say("clothes-rail-material-own")));
    html! {
        <>
            { fields.choice("clothes-rail-shape", |inputs| &mut inputs.shape, shapes()) }
            if inputs.shape.is_round() {
                { fields.length("clothes-rail-diameter", |inputs| &mut inputs.diameter) }
            } else {
                { fields.length("clothes-rail-height", |inputs| &mut inputs.height) }
                { fields.length("clothes-rail-width", |inputs| &mut inputs.width) }
            }
            if inputs.shape.is_tube() {
                { fields.length("clothes-rail-wall", |inputs| &mut inputs.wall) }
            }
            { fields.choice("clothes-rail-material", |inputs| &mut inputs.material, materials) }
            if inputs.material == Material::Wood {
                { fields.choice("clothes-rail-wood", |inputs| &mut inputs.wood, woods()) }
            }
            if inputs.material == Material::Own {
                { fields.figure("clothes-rail-own-stiffness", "MPa", |inputs| &mut inputs.own_stiffness) }
                { fields.figure("clothes-rail-own-strength", "MPa", |inputs| &mut inputs.own_strength) }
                { fields.figure("clothes-rail-own-divisor", "", |inputs| &mut inputs.own_divisor) }
                { fields.figure("clothes-rail-own-density", "kg/m³", |inputs| &mut inputs.own_density) }
                { fields.figure("clothes-rail-own-creep", "", |inputs| &mut inputs.own_creep) }
            }
            { fields.length("clothes-rail-span", |inputs| &mut inputs.span) }
            { fields.choice("clothes-rail-brackets", |inputs| &mut inputs.brackets,
                Brackets::ALL.iter().map(|one| (*one, brackets_words(*one))).collect()) }
        </>
    }
}

fn load_fields(fields: &Fields<ClothesRail>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("clothes-rail-garments", |inputs| &mut inputs.garments, garments()) }
            { fields.choice("clothes-rail-load", |inputs| &mut inputs.load, vec![
                (Load::Garments, say("clothes-rail-load-garments")),
                (Load::PerMetre, say("clothes-rail-load-per-metre")),
                (Load::Total, say("clothes-rail-load-total")),
            ]) }
            { match inputs.load {
                Load::Garments => Html::default(),
                Load::PerMetre => fields.figure("clothes-rail-per-metre", "kg/m", |inputs| &mut inputs.per_metre),
                Load::Total => fields.figure("clothes-rail-total", "kg", |inputs| &mut inputs.total),
            } }
            { fields.choice("clothes-rail-limit", |inputs| &mut inputs.limit,
                Limit::ALL.iter().map(|one| (*one, limit_words(*one))).collect()) }
            if inputs.limit == Limit::Own {
                { fields.length("clothes-rail-own-limit", |inputs| &mut inputs.own_limit) }
            }
            { fields.choice("clothes-rail-judged", |inputs| &mut inputs.judged, vec![
                (Judged::LongTerm, say("clothes-rail-judged-long-term")),
                (Judged::Instant, say("clothes-rail-judged-instant")),
            ]) }
        </>
    }
}

fn room_fields(fields: &Fields<ClothesRail>) -> Html {
    html! {
        <>
            { fields.choice("clothes-rail-hung", |inputs| &mut inputs.hung, vec![
                (Hung::Sides, say("clothes-rail-hung-sides")),
                (Hung::Top, say("clothes-rail-hung-top")),
            ]) }
            if fields.inputs().hung == Hung::Top {
                { fields.length("clothes-rail-bracket-drop", |inputs| &mut inputs.bracket_drop) }
                { fields.length_from_shop("clothes-rail-sheet", |inputs| &mut inputs.sheet, &fields.settings().sheet) }
            }
            { fields.length("clothes-rail-hook", |inputs| &mut inputs.hook) }
            { fields.length("clothes-rail-drop", |inputs| &mut inputs.drop) }
            { fields.length("clothes-rail-below", |inputs| &mut inputs.below) }
            { fields.length("clothes-rail-hanger", |inputs| &mut inputs.hanger) }
            { fields.length("clothes-rail-bulk", |inputs| &mut inputs.bulk) }
            { fields.length("clothes-rail-inside-depth", |inputs| &mut inputs.inside_depth) }
            { fields.length("clothes-rail-inside-height", |inputs| &mut inputs.inside_height) }
        </>
    }
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    if answer.stress.is_some_and(|stress| !stress.holds) {
        return Verdict { tone: Tone::Over, words: say("clothes-rail-too-weak") };
    }
    let allowed = answer.verdicts.iter().find(|verdict| verdict.chosen).map(|verdict| verdict.allowed_mm);
    let allowed = allowed.map_or_else(String::new, |mm| plain(&show.fine_mm(mm).main));
    let (tone, words) = match (answer.holds, answer.fewest) {
        (true, _) => (Tone::Good, say_with("clothes-rail-within", [("limit", allowed.into())])),
        (false, Some(Brackets::Middle)) => (Tone::Over, say_with("clothes-rail-over-one", [("limit", allowed.into())])),
        (false, Some(Brackets::Thirds)) => (Tone::Over, say_with("clothes-rail-over-two", [("limit", allowed.into())])),
        _ => (Tone::Over, say_with("clothes-rail-over", [("limit", allowed.into())])),
    };
    Verdict { tone, words }
}

fn would_hold(answer: &Answer, show: Show) -> Group {
    let line = |with: &scantling::cards::clothes_rail::WithBrackets| {
        let mut shown = match with.longest_span {
            Found::At(length) => show.length(length),
            Found::All(length) => {
                Shown::words(say_with("clothes-rail-found-all", [("length", show.on_drawing(length).into())]))
            }
            Found::None(length) => {
                Shown::words(say_with("clothes-rail-found-none", [("length", show.on_drawing(length).into())]))
            }
        };
        let sag = plain(&show.fine_mm(with.sag_mm).main);
        shown.cost = Some(say_with("clothes-rail-sags", [("sag", sag.into())]));
        Line::new(brackets_words(with.brackets), shown).toned(if with.holds { Tone::Good } else { Tone::Over })
    };
    Group { title: say("clothes-rail-longest"), lines: answer.with_brackets.iter().map(line).collect() }
}

fn room(answer: &Answer, show: Show) -> Group {
    let room = &answer.room;
    let spare = |length: Length| {
        let by = plain(&show.length(length.abs()).main).into();
        let key = if length.is_negative() { "clothes-rail-missing" } else { "clothes-rail-spare" };
        (say_with(key, [("by", by)]), if length.is_negative() { Tone::Over } else { Tone::Plain })
    };
    let (height, height_tone) = spare(room.height_spare);
    let (depth, depth_tone) = spare(room.depth_spare);
    let mut lines = vec![
        Line::new(say("clothes-rail-middle-down"), show.length(room.middle_down)),
        Line::new(say("clothes-rail-from-back"), show.length(room.from_back)),
        Line::new(say("clothes-rail-hook-room"), show.length(room.hook)),
        Line::new(say("clothes-rail-hem"), show.length(room.drop)),
        Line::new(say("clothes-rail-room-height"), Shown { cost: Some(height), ..show.length(room.height) })
            .toned(height_tone),
        Line::new(say("clothes-rail-room-depth"), Shown { cost: Some(depth), ..show.length(room.depth) })
            .toned(depth_tone),
    ];
    if let Some(blocks) = &room.blocks {
        let layers = say_with("clothes-rail-layers", [("count", blocks.layers.to_string().into())]);
        let label = say_with("clothes-rail-blocks", [("count", blocks.count.to_string().into())]);
        lines.push(Line::new(label, Shown { cost: Some(layers), ..show.length(blocks.thickness) }));
    }
    Group { title: say("clothes-rail-room"), lines }
}

fn sag(answer: &Answer, show: Show) -> Group {
    let ratio = |ratio: f64| if ratio.is_finite() { format!("L/{}", figures(ratio, 3)) } else { "–".into() };
    let with_ratio = |mm: f64, over: f64| Shown { cost: Some(ratio(over).into()), ..show.fine_mm(mm) };
    let mut lines = vec![
        Line::new(say("clothes-rail-instant"), with_ratio(answer.instant_mm, answer.instant_ratio)),
        Line::new(say("clothes-rail-long-term"), with_ratio(answer.long_term_mm, answer.long_term_ratio)),
    ];
    if let Some(uneven) = answer.uneven_mm {
        lines.push(Line::new(say("clothes-rail-uneven"), show.fine_mm(uneven)));
    }
    for limit in &answer.verdicts {
        let (tone, words) = match (limit.instant, limit.long_term) {
            (true, true) => (Tone::Good, say("clothes-rail-keeps")),
            (true, false) => (Tone::Mind, say("clothes-rail-keeps-at-first")),
            _ => (Tone::Over, say("clothes-rail-exceeds")),
        };
        let shown = Shown { cost: Some(format!("{}{words}", tone.mark()).into()), ..show.fine_mm(limit.allowed_mm) };
        lines.push(Line::new(limit_words(limit.limit), shown).toned(tone));
    }
    Group { title: say("clothes-rail-sag"), lines }
}

fn strength(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    if let Some(stress) = &answer.stress {
        let mut shown = show.estimate(stress.stress_mpa, Measure::Mpa);
        shown.cost = Some(say_with(
            "clothes-rail-stress-of",
            [
                ("strength", plain(&show.estimate(stress.strength_mpa, Measure::Mpa).main).into()),
                ("divisor", figures(stress.divisor, 3).into()),
                ("used", figures(stress.used_percent, 2).into()),
            ],
        ));
        let tone = if stress.holds { Tone::Plain } else { Tone::Over };
        lines.push(Line::new(say("clothes-rail-stress"), shown).toned(tone));
    }
    lines.push(Line::new(say("clothes-rail-load-all"), show.estimate(answer.load_kg, Measure::Kg)));
    lines.push(Line::new(say("clothes-rail-own-weight"), show.estimate(answer.own_weight_kg, Measure::Kg)));
    for support in &answer.supports {
        let at = plain(&show.length_mm(support.along_mm).main);
        let label = say_with("clothes-rail-support-at", [("at", at.into())]);
        lines.push(Line::new(label, show.estimate(support.mass_kg, Measure::Kg)));
    }
    let mut shown = show.estimate(answer.material.stiffness_mpa, Measure::Mpa);
    shown.cost = answer.material.source.map(|source| format!("{} · {}", source.mark.words(), source.cite).into());
    lines.push(Line::new(say("clothes-rail-stiffness"), shown));
    for note in &answer.notes {
        lines.push(Line::new(say("clothes-rail-note"), Shown::words(note.to_string())).toned(Tone::Mind));
    }
    Group { title: say("clothes-rail-strength"), lines }
}

impl CardView for ClothesRail {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "clothes-rail";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("clothes-rail-title")
    }

    fn also_called() -> AttrValue {
        say("clothes-rail-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { sheet: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.sheet.is_blank() {
            inputs.sheet = settings.sheet.clone();
        }
        inputs.graduation = settings.graduation();
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("clothes-rail-group-rail"), rail_fields(fields)) }
                { fields.group(say("clothes-rail-group-clothes"), load_fields(fields)) }
                { fields.group(say("clothes-rail-group-cabinet"), room_fields(fields)) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture::draw(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let (label, mm) = match inputs.judged {
            Judged::LongTerm => (say("clothes-rail-long-term"), answer.long_term_mm),
            Judged::Instant => (say("clothes-rail-instant"), answer.instant_mm),
        };
        Reply {
            main: vec![
                Line::new(label, show.fine_mm(mm)),
                Line::new(say("clothes-rail-middle-down"), show.length(answer.room.middle_down)),
            ],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups: vec![would_hold(answer, show), room(answer, show), sag(answer, show), strength(answer, show)],
        }
    }

    fn given(inputs: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let what = garments_words(inputs.garments);
        say_with(
            "clothes-rail-given",
            [("span", show.on_drawing(answer.span).into()), ("garments", what.as_str().into())],
        )
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
