//! The parts on their sheets, as the sheet layout card lays them, in plain lines.

use super::figures::figure;
use super::section;
use crate::show::{Show, Shown, plain};
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Inputs, layout};
use scantling::cards::sheet_layout;
use scantling::drawing::{Dimension, Drawing, Layer, Note, Scaled, Shape};
use scantling::sheets::{Area, Sheet, SheetGrain};
use yew::prelude::*;

/// What a sheet has room for, in millimetres.
const SHEET_MM: [f64; 2] = [180.0, 130.0];
/// How wide a letter is, and from one line to the next, in heights of a figure.
const LETTER: f64 = 0.6;
const LINE: f64 = 1.3;

/// The cabinet's parts on sheets; as a search on the card itself has laid them, where it was for the same parts.
fn laid(inputs: &Inputs, answer: &Answer, kept: Option<&str>) -> Option<sheet_layout::Answer> {
    let kept: Option<sheet_layout::Inputs> = kept.and_then(scantling::as_text::read);
    let found = kept.and_then(|kept| kept.found);
    sheet_layout::solve(&sheet_layout::Inputs { found, ..layout(inputs, answer) }).ok()
}

fn rect(layer: Layer, area: &Area) -> Shape {
    let [x, y, length, width] = [area.x, area.y, area.length, area.width].map(|side| side.as_mm());
    Shape::rect(layer, [x, y], [x + length, y + width])
}

/// Words in the middle of an area, on as many lines as there is room for; the number alone where there is no room.
fn write(drawing: &mut Drawing, area: &Area, words: [&str; 2], number: &str) {
    let figure = drawing.figure_mm();
    let [x, y, length, width] = [area.x, area.y, area.length, area.width].map(|side| side.as_mm());
    let fits = |lines: &[String]| {
        #[expect(clippy::cast_precision_loss, reason = "a few dozen letters on two lines")]
        let (high, wide) = (
            lines.len() as f64 * LINE * figure,
            lines.iter().map(|line| line.chars().count()).max().unwrap_or(0) as f64 * LETTER * figure,
        );
        high <= width && wide <= length - figure
    };
    let two = words.map(str::to_owned).to_vec();
    let choices = [two, vec![words.join(" ")], vec![words[0].to_owned()], vec![number.to_owned()]];
    let Some(lines) = choices.into_iter().find(|lines| fits(lines)) else { return };
    #[expect(clippy::cast_precision_loss, reason = "two lines")]
    let first = y + width / 2.0 + (lines.len() as f64 / 2.0 - 1.0) * LINE * figure + 0.3 * figure;
    for (at, line) in lines.into_iter().enumerate() {
        #[expect(clippy::cast_precision_loss, reason = "two lines")]
        let down = at as f64 * LINE * figure;
        drawing.notes.push(Note::new([x + length / 2.0, first - down], line));
    }
}

/// A sheet to scale: what is cut out of it, what is worth keeping dashed.
fn drawn(sheet: &Sheet, laid: &sheet_layout::Answer, show: Show) -> Scaled {
    let (long, wide) = (sheet.length.as_mm(), sheet.width.as_mm());
    let offcuts = || sheet.left.iter().filter(|left| left.keep);
    let mut shapes = vec![Shape::rect(Layer::Outline, [0.0; 2], [long, wide])];
    shapes.extend(sheet.parts.iter().map(|placed| rect(Layer::Cut, &placed.area)));
    shapes.extend(offcuts().map(|left| rect(Layer::Hidden, &left.area)));
    let beside = -0.05 * long;
    let dimensions = vec![
        Dimension {
            words: show.on_drawing(sheet.length),
            ..Dimension::new([0.0; 2], [long, 0.0], beside, sheet.length)
        },
        Dimension { words: show.on_drawing(sheet.width), ..Dimension::new([0.0; 2], [0.0, wide], beside, sheet.width) },
    ];
    let mut scaled = Drawing { shapes, dimensions, ..Drawing::default() }.on_paper(SHEET_MM);
    let size = |area: &Area| plain(&Shown::joined([area.length, area.width].map(|side| show.length(side)), " × ").main);
    for placed in &sheet.parts {
        let name = laid.parts.get(placed.part).map_or("", |part| part.name.as_str());
        write(&mut scaled.drawing, &placed.area, [name, &size(&placed.area)], &(placed.part + 1).to_string());
    }
    for left in offcuts() {
        write(&mut scaled.drawing, &left.area, [&say("sheet-layout-offcut"), &size(&left.area)], "");
    }
    scaled
}

/// Every sheet, and what lies on none.
pub(super) fn sheets(inputs: &Inputs, answer: &Answer, kept: Option<&str>, show: Show) -> Html {
    let Some(laid) = laid(inputs, answer, kept) else {
        return html! { <p>{ say("shop-no-layout") }</p> };
    };
    let sheet = |(at, sheet): (usize, &Sheet)| {
        let size = plain(&Shown::joined([sheet.length, sheet.width].map(|side| show.length(side)), " × ").main);
        let number = u32::try_from(at + 1).unwrap_or(u32::MAX);
        let name = say_with("sheet-layout-sheet-title", [("number", number.into()), ("size", size.into())]);
        let stock = laid.job.stock.get(sheet.stock);
        let board = stock.map(|stock| stock.name.as_str()).unwrap_or_default();
        let grain = say(match stock.map(|stock| stock.grain).unwrap_or_default() {
            SheetGrain::Along => "sheet-layout-grain-runs-along",
            SheetGrain::Across => "sheet-layout-grain-runs-across",
            SheetGrain::Plain => "sheet-layout-grain-runs-not",
        });
        figure(&format!("{name}, {board}, {grain}"), &drawn(sheet, &laid, show))
    };
    let left_out = |left: &sheet_layout::LeftOut| {
        let values =
            [("name", left.name.as_str().into()), ("count", left.count.into()), ("why", left.why.as_str().into())];
        html! { <p class="shop-wrong">{ "✕ " }{ say_with("shop-left-out", values) }</p> }
    };
    let title = say_with("shop-sheets", [("kerf", show.on_drawing(laid.job.saw.kerf).into())]);
    section(
        title,
        html! {
            <>
                { for laid.left_out.iter().map(left_out) }
                <div class="shop-figures">{ for laid.layout.sheets.iter().enumerate().map(sheet) }</div>
            </>
        },
    )
}
