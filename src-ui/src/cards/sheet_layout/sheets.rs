//! The sheets of a layout, each drawn to scale, and the same in words.

use super::SheetLayout;
use crate::near::use_near;
use crate::pictures::{Anchor, Ink, Place, Scale, WIDTH, across, paper, round, text, upright};
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::words::{say, say_with};
use scantling::cards::sheet_layout::Answer;
use scantling::sheets::{Area, Layout, Left, Placed, Sheet, SheetGrain};
use std::rc::Rc;
use std::sync::Arc;
use yew::prelude::*;

/// So many sheets are drawn at once; of more, those near the screen.
const AT_ONCE: usize = 3;
/// The least width of a kerf on paper, so that it can be seen.
const LEAST_KERF: f64 = 1.4;

/// Rectangles as one shape: a sheet may have dozens.
fn shape<'a>(areas: impl Iterator<Item = &'a Area>, scale: Scale, by: f64, class: &'static str) -> Html {
    let mut d = String::new();
    for area in areas {
        let (x, y) = (scale.x(area.x.as_mm()) - by, scale.y(area.y.as_mm() + area.width.as_mm()) - by);
        let (across, down) =
            (scale.length(area.length.as_mm()) + 2.0 * by, scale.length(area.width.as_mm()) + 2.0 * by);
        let [x, y, across, down] = [x, y, across.max(0.3), down.max(0.3)].map(round);
        d.push_str(&format!("M{x} {y}h{across}v{down}h-{across}z"));
    }
    html! { <path {class} {d} /> }
}

fn whole(sheet: &Sheet) -> Area {
    let zero = scantling::measure::Length::ZERO;
    Area { x: zero, y: zero, length: sheet.length, width: sheet.width }
}

fn offcuts(sheet: &Sheet) -> impl Iterator<Item = &Area> {
    sheet.left.iter().filter(|left| left.keep).map(|left| &left.area)
}

/// Waste hatched, what is cut out dark round its edges, parts and offcuts on top.
fn pieces(sheet: &Sheet, scale: Scale, kerf: f64) -> Html {
    let whole = whole(sheet);
    let parts = || sheet.parts.iter().map(|placed| &placed.area);
    // The saw's line is half on either side of the gap; it is drawn at least as wide as can be seen.
    let thin = (LEAST_KERF - scale.length(kerf)).max(0.0) / 2.0;
    html! {
        <>
            { shape(std::iter::once(&whole), scale, 0.0, "sheet-waste") }
            { shape(parts().chain(offcuts(sheet)), scale, scale.length(kerf) / 2.0 + 0.35, "sheet-kerf") }
            { shape(offcuts(sheet), scale, -thin, "sheet-offcut") }
            { shape(parts(), scale, -thin, "sheet-part") }
            { shape(std::iter::once(&whole), scale, 0.0, "sheet-edge") }
        </>
    }
}

/// A sheet in a small picture, without words.
pub(super) fn in_small(sheet: &Sheet, scale: Scale) -> Html {
    pieces(sheet, scale, 0.0)
}

/// About the width of a letter of the words on parts.
const LETTER: f64 = 6.3;
const LINE: f64 = 12.0;

fn letters(words: &str) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "a few dozen letters")]
    let count = words.chars().count() as f64;
    count * LETTER + 4.0
}

/// Words in the middle of an area, along it or turned: name and size, or the name alone, or else the short word that the
/// list has beside the name; none where not even that has room.
fn words_in(area: &Area, scale: Scale, lines: &[String], short: &str) -> Html {
    let (x, y) = (area.x.as_mm() + area.length.as_mm() / 2.0, area.y.as_mm() + area.width.as_mm() / 2.0);
    let (x, y) = (scale.x(x), scale.y(y));
    let (wide, high) = (scale.length(area.length.as_mm()), scale.length(area.width.as_mm()));
    let fits = |lines: &[String], wide: f64, high: f64| {
        #[expect(clippy::cast_precision_loss, reason = "two lines")]
        let tall = lines.len() as f64 * LINE;
        high >= tall - 1.5 && lines.iter().all(|line| letters(line) <= wide)
    };
    let one_line = [lines.join(" ")];
    let first = lines.get(..1).unwrap_or_default();
    let short = [short.to_owned()];
    for lines in [lines, &one_line, first, &short] {
        for turned in [false, true] {
            let (along, aside) = if turned { (high, wide) } else { (wide, high) };
            if lines.iter().all(String::is_empty) || !fits(lines, along, aside) {
                continue;
            }
            #[expect(clippy::cast_precision_loss, reason = "two lines")]
            let top = y - (lines.len() as f64 - 1.0) * LINE / 2.0 + 3.8;
            #[expect(clippy::cast_precision_loss, reason = "two lines")]
            let written = lines
                .iter()
                .enumerate()
                .map(|(at, line)| text((x, top + at as f64 * LINE), line.clone(), Anchor::Middle, Ink::Outline));
            let turn = turned.then(|| format!("rotate(-90 {} {})", round(x), round(y)));
            return html! { <g class="on-part" transform={turn}>{ for written }</g> };
        }
    }
    Html::default()
}

/// What one sheet needs to be drawn.
#[derive(Clone, Properties)]
pub(super) struct SheetProps {
    layout: Arc<Layout>,
    at: usize,
    /// What the parts are called, by their place in the job.
    names: Rc<[AttrValue]>,
    grain: SheetGrain,
    offcut: bool,
    kerf: f64,
    show: Show,
}

/// A sheet that looks the same is not drawn again, whatever became of the others.
impl PartialEq for SheetProps {
    fn eq(&self, other: &Self) -> bool {
        let same = Arc::ptr_eq(&self.layout, &other.layout) || self.sheet() == other.sheet();
        same && self.at == other.at
            && self.names == other.names
            && self.show == other.show
            && (self.grain, self.offcut) == (other.grain, other.offcut)
            && self.kerf.to_bits() == other.kerf.to_bits()
    }
}

impl SheetProps {
    fn sheet(&self) -> Option<&Sheet> {
        self.layout.sheets.get(self.at)
    }

    fn name(&self, placed: &Placed) -> AttrValue {
        self.names.get(placed.part).cloned().unwrap_or_default()
    }

    fn size(&self, area: &Area) -> String {
        plain(&Shown::joined([area.length, area.width].map(|side| self.show.length(side)), " × ").main)
    }

    /// The same without the unit, for a drawing.
    fn bare_size(&self, area: &Area) -> String {
        let size = self.size(area);
        size.strip_suffix(" mm").or(size.strip_suffix(" in")).unwrap_or(&size).to_owned()
    }

    fn title(&self) -> AttrValue {
        let number = u32::try_from(self.at + 1).unwrap_or(0);
        let size = self.sheet().map(|sheet| self.size(&whole(sheet))).unwrap_or_default();
        let values = [("number", number.into()), ("size", size.into())];
        say_with(if self.offcut { "sheet-layout-offcut-title" } else { "sheet-layout-sheet-title" }, values)
    }

    fn grain_words(&self) -> AttrValue {
        say(match self.grain {
            SheetGrain::Along => "sheet-layout-grain-runs-along",
            SheetGrain::Across => "sheet-layout-grain-runs-across",
            SheetGrain::Plain => "sheet-layout-grain-runs-not",
        })
    }
}

/// To scale; far from the screen only the paper, as large as it is.
fn drawing(props: &SheetProps, sheet: &Sheet, near: bool) -> Html {
    let (long, wide) = (sheet.length.as_mm(), sheet.width.as_mm());
    let height = (WIDTH - 40.0) * wide / long.max(1e-6);
    // A sheet that stands on end is as high as a phone is wide.
    let place = Place { x: 34.0, y: 26.0, width: WIDTH - 40.0, height: height.min(360.0) };
    let scale = Scale::fit(long, wide, place);
    let (left, right, top, bottom) = (scale.x(0.0), scale.x(long), scale.y(wide), scale.y(0.0));
    let name = say_with("sheet-layout-drawing", [("sheet", props.title().as_str().into())]);
    if !near {
        return paper(name, bottom + 22.0, Html::default());
    }
    let arrow = match props.grain {
        SheetGrain::Along => "↔",
        SheetGrain::Across => "↕",
        SheetGrain::Plain => "",
    };
    let part = |placed: &Placed| {
        let name = props.name(placed);
        let number = (placed.part + 1).to_string();
        words_in(&placed.area, scale, &[name.to_string(), props.bare_size(&placed.area)], &number)
    };
    let offcut = |left: &Left| {
        words_in(&left.area, scale, &[say("sheet-layout-offcut").to_string(), props.bare_size(&left.area)], "")
    };
    let content = html! {
        <>
            { across(left, right, top - 13.0, props.show.on_drawing(sheet.length)) }
            { upright(top, bottom, left - 15.0, props.show.on_drawing(sheet.width)) }
            { pieces(sheet, scale, props.kerf) }
            { for sheet.parts.iter().map(part) }
            { for sheet.left.iter().filter(|left| left.keep).map(offcut) }
            { text((right, bottom + 15.0), format!("{} {arrow}", props.grain_words()), Anchor::End, Ink::Soft) }
        </>
    };
    paper(name, bottom + 22.0, content)
}

/// The facts of a drawing in words.
fn listed(props: &SheetProps, sheet: &Sheet) -> Html {
    let place = |area: &Area| {
        let [x, y] = [area.x, area.y].map(|side| plain(&props.show.length(side).main));
        say_with("sheet-layout-place", [("x", x.into()), ("y", y.into())])
    };
    let row = |name: &str, area: &Area| {
        html! { <tr><th scope="row">{ name }</th><td>{ props.size(area) }</td><td>{ place(area) }</td></tr> }
    };
    let part = |placed: &Placed| {
        let turned = if placed.turned { say("sheet-layout-turned") } else { AttrValue::default() };
        let name = format!("{} · {} {turned}", placed.part + 1, props.name(placed));
        row(&name, &placed.area)
    };
    let left = |left: &Left| {
        let what = say(if left.keep { "sheet-layout-offcut" } else { "sheet-layout-waste" });
        row(&what, &left.area)
    };
    html! {
        <table>
            <caption class="unseen">{ props.title() }</caption>
            <tbody>
                { for sheet.parts.iter().map(part) }
                { for sheet.left.iter().map(left) }
            </tbody>
        </table>
    }
}

#[component]
fn OneSheet(props: &SheetProps) -> Html {
    let place = use_node_ref();
    let near = use_near(&place, props.at < AT_ONCE);
    let Some(sheet) = props.sheet() else { return Html::default() };
    let (own, pieces) = (props.clone(), u32::try_from(sheet.parts.len()).unwrap_or(0));
    let title = say_with("sheet-layout-in-words", [("count", pieces.into())]);
    html! {
        <figure class="sheet" ref={place}>
            <figcaption>{ props.title() }</figcaption>
            { drawing(props, sheet, near) }
            <Fold name="sheet" {title}><Listed ..own /></Fold>
        </figure>
    }
}

/// Drawn only once its fold is open.
#[component]
fn Listed(props: &SheetProps) -> Html {
    props.sheet().map(|sheet| listed(props, sheet)).unwrap_or_default()
}

/// Every sheet of the layout.
pub(super) fn sheets(fields: &Fields<SheetLayout>, show: Show) -> Html {
    let Some(answer) = fields.answer() else { return Html::default() };
    let Answer { layout, job, parts, .. } = answer;
    if layout.sheets.is_empty() {
        return Html::default();
    }
    let names: Rc<[AttrValue]> = parts.iter().map(|part| part.name.clone().into()).collect();
    let sheet = |(at, sheet): (usize, &Sheet)| {
        let stock = job.stock.get(sheet.stock);
        SheetProps {
            layout: layout.clone(),
            at,
            names: names.clone(),
            grain: stock.map(|stock| stock.grain).unwrap_or_default(),
            offcut: stock.is_some_and(|stock| stock.offcut),
            kerf: job.saw.kerf.as_mm(),
            show,
        }
    };
    let all = layout.sheets.iter().enumerate().map(sheet);
    html! {
        <section class="sheets">
            <h3>{ say("sheet-layout-drawings") }</h3>
            { for all.map(|sheet| html! { <OneSheet key={sheet.at} ..sheet.clone() /> }) }
        </section>
    }
}
