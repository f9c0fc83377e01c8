//! Materials card: lists of parts and prices in; sheets, wood, band, glue, finish and fixings, and a shopping list, out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, paper, rect, text};
use crate::settings::Settings;
use crate::show::{Show, Shown};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::materials::{Answer, Boards, Coat, Inputs, Item, Sheets, SolidPer, What, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Measure, Reading};
use scantling::problem::Problems;
use scantling::stock::materials::Choice;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Materials;

/// What belongs to a list is asked for once something stands in it.
fn filled(lines: &[Reading]) -> bool {
    lines.iter().any(|line| !line.is_blank())
}

fn sheet_fields(fields: &Fields<Materials>) -> Html {
    let inputs = fields.inputs();
    let materials = Choice::ALL.iter().map(|choice| {
        let words = choice.family().map_or_else(|| say("materials-material-own"), |family| family.name.into());
        (*choice, words)
    });
    html! {
        <>
            { fields.lines("materials-sheet-parts", |inputs| &mut inputs.sheet_parts, &[]) }
            if filled(&inputs.sheet_parts) {
                { fields.choice("materials-material", |inputs| &mut inputs.material, materials.collect()) }
                if inputs.material == Choice::Own {
                    { fields.figure("materials-density", "kg/m³", |inputs| &mut inputs.density) }
                }
                { fields.length_from_shop("materials-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
                { fields.length("materials-sheet-length", |inputs| &mut inputs.sheet_length) }
                { fields.length("materials-sheet-width", |inputs| &mut inputs.sheet_width) }
                { fields.figure("materials-sheet-waste", "%", |inputs| &mut inputs.sheet_waste) }
                { fields.figure("materials-sheets", "", |inputs| &mut inputs.sheets) }
                { fields.figure("materials-sheet-price", "", |inputs| &mut inputs.sheet_price) }
            }
        </>
    }
}

fn wood_fields(fields: &Fields<Materials>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.lines("materials-boards", |inputs| &mut inputs.boards, &[]) }
            if filled(&inputs.boards) {
                { fields.figure("materials-board-waste", "%", |inputs| &mut inputs.board_waste) }
                { fields.choice("materials-board-per", |inputs| &mut inputs.board_per, vec![
                    (SolidPer::CubicMetre, say("materials-board-per-metre")),
                    (SolidPer::BoardFoot, say("materials-board-per-foot")),
                ]) }
                { fields.figure("materials-board-price", "", |inputs| &mut inputs.board_price) }
            }
        </>
    }
}

fn band_fields(fields: &Fields<Materials>) -> Html {
    html! {
        <>
            { fields.lines("materials-edges", |inputs| &mut inputs.edges, &[]) }
            if filled(&fields.inputs().edges) {
                { fields.length("materials-band-extra", |inputs| &mut inputs.band_extra) }
                { fields.length("materials-roll", |inputs| &mut inputs.roll) }
                { fields.figure("materials-roll-price", "", |inputs| &mut inputs.roll_price) }
            }
        </>
    }
}

fn glue_fields(fields: &Fields<Materials>) -> Html {
    html! {
        <>
            { fields.lines("materials-joints", |inputs| &mut inputs.joints, &[]) }
            if filled(&fields.inputs().joints) {
                { fields.figure("materials-glue-spread", "g/m²", |inputs| &mut inputs.glue_spread) }
                { fields.figure("materials-bottle", "kg", |inputs| &mut inputs.bottle) }
                { fields.figure("materials-bottle-price", "", |inputs| &mut inputs.bottle_price) }
            }
        </>
    }
}

fn finish_fields(fields: &Fields<Materials>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("materials-coat", |inputs| &mut inputs.coat, vec![
                (Coat::Nothing, say("materials-coat-nothing")),
                (Coat::OneFace, say("materials-coat-one-face")),
                (Coat::BothFaces, say("materials-coat-both-faces")),
                (Coat::Listed, say("materials-coat-listed")),
            ]) }
            if inputs.coat == Coat::Listed {
                { fields.lines("materials-faces", |inputs| &mut inputs.faces, &[]) }
            }
            if inputs.coat != Coat::Nothing {
                { fields.figure("materials-coats", "", |inputs| &mut inputs.coats) }
                { fields.figure("materials-coverage", "m²/l", |inputs| &mut inputs.coverage) }
                { fields.figure("materials-can", "l", |inputs| &mut inputs.can) }
                { fields.figure("materials-can-price", "", |inputs| &mut inputs.can_price) }
            }
        </>
    }
}

fn fixing_fields(fields: &Fields<Materials>) -> Html {
    let inputs = fields.inputs();
    let (screws, pins) = (filled(&inputs.screws), filled(&inputs.pins));
    html! {
        <>
            { fields.lines("materials-screws", |inputs| &mut inputs.screws, &[]) }
            if screws {
                { fields.figure("materials-screw-box", "", |inputs| &mut inputs.screw_box) }
                { fields.figure("materials-screw-price", "", |inputs| &mut inputs.screw_price) }
            }
            { fields.lines("materials-pins", |inputs| &mut inputs.pins, &[]) }
            if pins {
                { fields.figure("materials-pin-box", "", |inputs| &mut inputs.pin_box) }
                { fields.figure("materials-pin-price", "", |inputs| &mut inputs.pin_price) }
            }
            if screws || pins {
                { fields.figure("materials-spare", "%", |inputs| &mut inputs.spare) }
            }
        </>
    }
}

fn item(item: &Item) -> Line {
    let count = || u32::try_from(item.quantity.units()).unwrap_or(u32::MAX).into();
    let quantity = || item.quantity.to_string().into();
    let label = match &item.what {
        What::Sheets => say_with("materials-item-sheets", [("count", count())]),
        What::CubicMetres => say_with("materials-item-metres", [("quantity", quantity())]),
        What::BoardFeet => say_with("materials-item-feet", [("quantity", quantity())]),
        What::Rolls => say_with("materials-item-rolls", [("count", count())]),
        What::Bottles => say_with("materials-item-bottles", [("count", count())]),
        What::Cans => say_with("materials-item-cans", [("count", count())]),
        What::ScrewBoxes => say_with("materials-item-screws", [("count", count())]),
        What::PinBoxes => say_with("materials-item-pins", [("count", count())]),
        What::Other(name) => format!("{} {name}", item.quantity).trim_end().to_owned().into(),
    };
    match (&item.amount, &item.price) {
        (Some(amount), Some(price)) => {
            let each = say_with("materials-each", [("price", price.as_str().into())]);
            Line::new(label, Shown { cost: Some(each), ..Shown::words(amount.to_string()) })
        }
        _ => Line::new(label, Shown::words(say("materials-no-price"))).toned(Tone::Mind),
    }
}

fn list(answer: &Answer) -> Group {
    let mut lines: Vec<Line> = answer.list.items.iter().map(item).collect();
    lines.extend(answer.list.total.map(|total| Line::new(say("materials-total"), Shown::words(total.to_string()))));
    Group { title: say("materials-list"), lines }
}

fn sheet_group(sheets: &Sheets, show: Show) -> Group {
    let area = |m2| show.estimate(m2, Measure::M2);
    let mut lines = vec![
        Line::new(say("materials-net"), area(sheets.net_m2)),
        Line::new(say("materials-gross"), area(sheets.gross_m2)),
        Line::new(say("materials-bought"), area(sheets.bought_m2)),
        Line::new(say("materials-sheet-kg"), show.estimate(sheets.sheet_kg, Measure::Kg)),
        Line::new(say("materials-parts-kg"), show.estimate(sheets.parts_kg, Measure::Kg)),
    ];
    if sheets.by_area {
        lines.push(Line::new(say("materials-by-area"), Shown::words(say("materials-by-area-why"))).toned(Tone::Mind));
    }
    Group { title: say("materials-group-sheets"), lines }
}

fn board_group(boards: &Boards, show: Show) -> Group {
    let as_listed = |decimal: scantling::cards::materials::Decimal, unit| {
        decimal.exactly().map_or_else(|_| Shown::default(), |exact| show.estimate(exact.as_f64(), unit))
    };
    Group {
        title: say("materials-group-wood"),
        lines: vec![
            Line::new(say("materials-volume"), show.estimate(boards.net_m3, Measure::M3)),
            Line::new(say("materials-volume-gross"), as_listed(boards.gross_m3, Measure::M3)),
            Line::new(say("materials-feet"), show.estimate(boards.net_board_feet, Measure::BoardFeet)),
            Line::new(say("materials-feet-gross"), as_listed(boards.gross_board_feet, Measure::BoardFeet)),
        ],
    }
}

fn rest(answer: &Answer, show: Show) -> Group {
    let mut lines = Vec::new();
    if let Some(band) = &answer.band {
        lines.push(Line::new(say("materials-band-net"), show.length(band.net)));
        lines.push(Line::new(say("materials-band-gross"), show.length(band.gross)));
    }
    if let Some(glue) = &answer.glue {
        lines.push(Line::new(say("materials-glue-area"), show.estimate(glue.area_m2, Measure::M2)));
        lines.push(Line::new(say("materials-glue"), show.estimate(glue.kg, Measure::Kg)));
    }
    if let Some(finish) = &answer.finish {
        lines.push(Line::new(say("materials-finish-area"), show.estimate(finish.area_m2, Measure::M2)));
        lines.push(Line::new(say("materials-finish"), show.estimate(finish.litres, Measure::Litres)));
    }
    if let Some(screws) = &answer.screws {
        lines.push(Line::new(say("materials-screws-gross"), Shown::words(screws.gross.to_string())));
    }
    if let Some(pins) = &answer.pins {
        lines.push(Line::new(say("materials-pins-gross"), Shown::words(pins.gross.to_string())));
    }
    Group { title: say("materials-rest"), lines }
}

fn verdict(answer: &Answer) -> Verdict {
    match answer.list.unpriced {
        0 => Verdict { tone: Tone::Good, words: say("materials-priced") },
        count => Verdict { tone: Tone::Mind, words: say_with("materials-unpriced", [("count", count.into())]) },
    }
}

/// So many sheets, and lines of boards, are drawn; the rest is told by a number.
const MOST_DRAWN: u32 = 4;

/// The sheets, filled by area, and the boards below, all to one scale.
fn picture(answer: &Answer, show: Show) -> Html {
    let mm = |length: Length| length.as_mm();
    let (sheets, boards) = (answer.sheets.as_ref(), answer.boards.as_ref());
    if sheets.is_none() && boards.is_none() {
        return Html::default();
    }
    let [length, width] = sheets.map_or([0.0; 2], |sheets| sheets.size.map(mm));
    let gap = length * 0.04;
    let drawn = sheets.map_or(0, |sheets| sheets.count.min(MOST_DRAWN));
    let wide = (f64::from(drawn) * (length + gap) - gap).max(0.0);
    let lines: Vec<_> = boards.iter().flat_map(|boards| &boards.sizes).take(MOST_DRAWN as usize).collect();
    let longest = lines.iter().map(|(long, ..)| mm(*long)).fold(wide, f64::max);
    let between = longest * 0.03;
    let high = width + lines.iter().map(|(_, across, _)| mm(*across) + between).sum::<f64>();
    let height = (292.0 * high / longest).min(170.0);
    let scale = Scale::fit(longest, high, Place { x: 14.0, y: 30.0, width: 292.0, height });
    let sheet = |sheets: &Sheets, at: u32| {
        let (left, one) = (f64::from(at) * (length + gap), length * width / 1e6);
        let full = |m2: f64| length * (m2 / one - f64::from(at)).clamp(0.0, 1.0);
        let (net, gross) = (full(sheets.net_m2), full(sheets.gross_m2));
        let piece = |from: f64, to: f64, ink| {
            rect(scale.x(left + from), scale.y(high), scale.length(to - from), scale.length(width), ink)
        };
        html! {
            <>
                { piece(0.0, length, Ink::Outline) }
                { piece(0.0, net, Ink::Cut) }
                { piece(net, gross, Ink::Waste) }
            </>
        }
    };
    let sheets = sheets.map(|sheets| {
        let more = sheets.count.saturating_sub(drawn);
        let beside = (scale.x(wide) + 6.0, scale.y(high - width / 2.0) + 4.5);
        html! {
            <>
                { for (0..drawn).map(|at| sheet(sheets, at)) }
                { across(scale.x(0.0), scale.x(length), scale.y(high) - 14.0, show.on_drawing(sheets.size[0])) }
                if more > 0 { { text(beside, format!("+ {more}"), Anchor::Start, Ink::Outline) } }
            </>
        }
    });
    let mut top = high - width;
    let boards: Vec<Html> = lines
        .iter()
        .map(|(long, across, count)| {
            let at = (scale.x(0.0), scale.y(top - between));
            let (long, broad) = (scale.length(mm(*long)), scale.length(mm(*across)));
            top -= between + mm(*across);
            let beside = (at.0 + long + 6.0, at.1 + broad / 2.0 + 4.5);
            html! {
                <>
                    { rect(at.0, at.1, long, broad, Ink::Wood) }
                    { text(beside, format!("× {count}"), Anchor::Start, Ink::Outline) }
                </>
            }
        })
        .collect();
    paper(say("materials-picture"), scale.y(0.0) + 14.0, html! { <>{ for sheets }{ for boards }</> })
}

impl CardView for Materials {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "materials";
    const STAGE: Stage = Stage::Finish;

    fn title() -> AttrValue {
        say("materials-title")
    }

    fn also_called() -> AttrValue {
        say("materials-also")
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
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("materials-group-sheets"), sheet_fields(fields)) }
                { fields.group(say("materials-group-wood"), wood_fields(fields)) }
                { fields.group(say("materials-group-band"), band_fields(fields)) }
                { fields.group(say("materials-group-glue"), glue_fields(fields)) }
                { fields.group(say("materials-group-finish"), finish_fields(fields)) }
                { fields.group(say("materials-group-fixings"), fixing_fields(fields)) }
                { fields.group(say("materials-group-others"), fields.lines("materials-others", |inputs| &mut inputs.others, &[])) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let mut main = Vec::with_capacity(3);
        main.extend(answer.list.total.map(|total| Line::new(say("materials-total"), Shown::words(total.to_string()))));
        if let Some(sheets) = &answer.sheets {
            let label = say_with("materials-item-sheets", [("count", sheets.count.into())]);
            main.push(Line::new(label, Shown::joined(sheets.size.map(|size| show.length(size)), " × ")));
            let kg = sheets.sheet_kg * f64::from(sheets.count);
            main.push(Line::new(say("materials-sheets-kg"), show.estimate(kg, Measure::Kg)));
        }
        if main.is_empty() {
            main.extend(answer.list.items.first().map(item));
        }
        let mut groups = vec![list(answer)];
        groups.extend(answer.sheets.as_ref().map(|sheets| sheet_group(sheets, show)));
        groups.extend(answer.boards.as_ref().map(|boards| board_group(boards, show)));
        groups.extend(Some(rest(answer, show)).filter(|group| !group.lines.is_empty()));
        Reply { main, glance: None, verdict: Some(verdict(answer)), groups }
    }

    fn given(_: &Inputs, answer: &Answer, _: Show) -> AttrValue {
        let count = u32::try_from(answer.list.items.len()).unwrap_or(u32::MAX);
        say_with("materials-given", [("count", count.into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
