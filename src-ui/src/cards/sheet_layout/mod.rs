//! Sheet layout card: parts and sheets in; the sheets drawn to scale, offcuts and the order of cuts out.

mod cuts;
mod fields;
mod offcuts;
mod sheets;

use super::{CardView, Stage};
use crate::pictures::{Place, Scale, paper};
use crate::settings::Settings;
use crate::show::{Show, Shown, spoken};
use crate::widgets::card_state::Seeks;
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::widgets::searching::{Seeker, Sought};
use crate::words::{say, say_with};
use scantling::cards::sheet_layout::{Answer, Further, Inputs, solve};
use scantling::caution::Caution;
use scantling::measure::{Length, Measure, Reading};
use scantling::problem::Problems;
use scantling::sheets::Sheet;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct SheetLayout;

/// `2 sheets`, `1 sheet + 1 offcut`.
fn taken(answer: &Answer) -> AttrValue {
    let (sheets, offcuts) = answer.sheets();
    let sheets_said = say_with("sheet-layout-sheets-taken", [("count", sheets.into())]);
    let offcuts_said = say_with("sheet-layout-offcuts-taken", [("count", offcuts.into())]);
    match (sheets, offcuts) {
        (_, 0) => sheets_said,
        (0, _) => offcuts_said,
        _ => format!("{sheets_said} + {offcuts_said}").into(),
    }
}

/// The sizes of the sheets that are used, where they are all the same.
fn one_size(answer: &Answer) -> Option<[Length; 2]> {
    let first = answer.layout.sheets.first()?;
    let same = |sheet: &Sheet| (sheet.length, sheet.width) == (first.length, first.width);
    answer.layout.sheets.iter().all(same).then_some([first.length, first.width])
}

fn main_lines(answer: &Answer, show: Show) -> Vec<Line> {
    let figures = &answer.figures;
    let size = one_size(answer).map(|sides| Shown::joined(sides.map(|side| show.length(side)), " × "));
    // One line of small words, so that the answer leaves room for the fields.
    let size = size.map(|size| {
        let near = if size.near { "≈ " } else { "" };
        format!("{}, {near}{}", spoken(&size.main), spoken(&size.other)).into()
    });
    let cost = figures.cost.map(|cost| say_with("sheet-layout-costs", [("cost", cost.to_string().into())]));
    let takes = Shown { cost: size, ..Shown::words(taken(answer)) };
    let yielded = Shown { cost, ..show.estimate(figures.yield_percent, Measure::Percent) };
    vec![Line::new(say("sheet-layout-takes"), takes), Line::new(say("sheet-layout-yield"), yielded)]
}

fn verdict(answer: &Answer) -> Verdict {
    let out = answer.left_out.iter().fold(0_u32, |sum, left| sum.saturating_add(left.count));
    let (sheets, offcuts) = answer.sheets();
    let taken = sheets.saturating_add(offcuts);
    let bound = u32::try_from(answer.bound).unwrap_or(u32::MAX);
    match () {
        () if out > 0 => {
            Verdict { tone: Tone::Over, words: say_with("sheet-layout-left-out-count", [("count", out.into())]) }
        }
        () if !answer.marks.is_empty() => {
            let count = u32::try_from(answer.marks.len()).unwrap_or(u32::MAX);
            Verdict { tone: Tone::Mind, words: say_with("sheet-layout-marked", [("count", count.into())]) }
        }
        () if taken <= bound => {
            Verdict { tone: Tone::Good, words: say_with("sheet-layout-bound", [("count", bound.into())]) }
        }
        () => Verdict { tone: Tone::Mind, words: say_with("sheet-layout-bound", [("count", bound.into())]) },
    }
}

fn count(count: u32) -> Shown {
    Shown::words(count.to_string())
}

fn figures(answer: &Answer, show: Show) -> Group {
    let figures = &answer.figures;
    let area = |m2| show.estimate(m2, Measure::M2);
    let bound = u32::try_from(answer.bound).unwrap_or(u32::MAX);
    let mut lines = vec![Line::new(say("sheet-layout-pieces"), count(figures.pieces))];
    if let Some(cost) = figures.cost {
        lines.push(Line::new(say("sheet-layout-cost"), Shown::words(cost.to_string())));
    }
    if figures.unpriced > 0 {
        lines.push(Line::new(say("sheet-layout-unpriced"), count(figures.unpriced)).toned(Tone::Mind));
    }
    if let Some(largest) = figures.largest_offcut {
        let size = Shown::joined(largest.map(|side| show.length(side)), " × ");
        lines.push(Line::new(say("sheet-layout-largest"), size));
    }
    lines.extend([
        Line::new(say("sheet-layout-fewest"), count(bound)),
        Line::new(say("sheet-layout-parts-area"), area(figures.parts_m2)),
        Line::new(say("sheet-layout-sheets-area"), area(figures.sheets_m2)),
        Line::new(say("sheet-layout-offcuts-area"), area(figures.offcuts_m2)),
        Line::new(say("sheet-layout-settings"), count(figures.settings)),
        Line::new(say("sheet-layout-cuts-count"), count(figures.cuts)),
    ]);
    Group { title: say("sheet-layout-figures"), lines }
}

fn left_out(answer: &Answer) -> Option<Group> {
    let line = |left: &scantling::cards::sheet_layout::LeftOut| {
        Line::new(format!("{} × {}", left.name, left.count).into(), Shown::words(left.why.clone())).toned(Tone::Over)
    };
    let lines: Vec<Line> = answer.left_out.iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("sheet-layout-left-out"), lines })
}

/// More pieces are not laid out at every key.
const HEAVY: u32 = 80;
/// So many sheets are drawn in the small picture.
const MOST_DRAWN: usize = 6;

/// Every sheet in small, without words: the large ones stand below.
fn picture(answer: &Answer) -> Html {
    let layout = &answer.layout;
    let drawn = layout.sheets.len().min(MOST_DRAWN);
    let largest = layout.sheets.iter().take(drawn);
    let (long, wide) = largest.fold((1.0_f64, 1.0_f64), |(long, wide), sheet| {
        (long.max(sheet.length.as_mm()), wide.max(sheet.width.as_mm()))
    });
    let columns = if drawn > 3 { 3 } else { drawn.max(1) };
    let rows = drawn.max(1).div_ceil(columns);
    #[expect(clippy::cast_precision_loss, reason = "a handful of sheets")]
    let (across, down) = (columns as f64, rows as f64);
    let gap = 8.0;
    let width = (344.0 - gap * (across - 1.0)) / across;
    let height = (width * wide / long).min(104.0 / down);
    let one = |at: usize, sheet: &scantling::sheets::Sheet| {
        #[expect(clippy::cast_precision_loss, reason = "a handful of sheets")]
        let (column, row) = ((at % columns) as f64, (at / columns) as f64);
        let place = Place { x: 8.0 + column * (width + gap), y: 6.0 + row * (height + gap), width, height };
        sheets::in_small(sheet, Scale::fit(long, wide, place))
    };
    let more = layout.sheets.len() - drawn;
    let name = say_with("sheet-layout-picture", [("count", u32::try_from(layout.sheets.len()).unwrap_or(0).into())]);
    let foot = 12.0 + down * (height + gap) - gap;
    let content = html! {
        <>
            { for layout.sheets.iter().take(drawn).enumerate().map(|(at, sheet)| one(at, sheet)) }
            if more > 0 {
                { crate::pictures::text((352.0, foot + 12.0), format!("+ {more}"), crate::pictures::Anchor::End,
                    crate::pictures::Ink::Outline) }
            }
        </>
    };
    paper(name, if more > 0 { foot + 18.0 } else { foot }, content)
}

/// Whether cuts of this very layout are done: then it has to stay.
fn is_being_cut(inputs: &Inputs, answer: &Answer) -> bool {
    !inputs.done.is_empty() && inputs.done_of == answer.layout_mark
}

impl Seeker<SheetLayout> for Further {
    fn step(&mut self, tries: u32) {
        Self::step(self, tries);
    }

    fn sought(&self) -> Sought {
        let progress = self.progress();
        #[expect(clippy::cast_precision_loss, reason = "the share of a bar")]
        let share = progress.tries as f64 / progress.of.max(1) as f64;
        Sought { share, done: progress.done, news: self.has_news() }
    }

    fn better(&mut self, inputs: &mut Inputs, prepared: &mut Inputs, answer: &Answer) -> Option<Answer> {
        let (next, answer) = Self::better(self, prepared, answer)?;
        inputs.found = next.found.clone();
        *prepared = next;
        Some(answer)
    }
}

impl CardView for SheetLayout {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "sheet-layout";
    const STAGE: Stage = Stage::Cut;

    fn title() -> AttrValue {
        say("sheet-layout-title")
    }

    fn also_called() -> AttrValue {
        say("sheet-layout-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { kerf: Reading::default(), ..Inputs::default() }
    }

    fn demo(now: &Inputs, settings: &Settings) -> Inputs {
        Inputs { kept: now.kept.clone(), ..Self::start(settings) }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.kerf.is_blank() {
            inputs.kerf = settings.kerf.clone();
        }
    }

    fn is_heavy(_: &Inputs, before: &Answer) -> bool {
        before.figures.pieces > HEAVY
    }

    fn fields(fields: &Fields<Self>) -> Html {
        fields::fields(fields)
    }

    fn picture(_: &Inputs, answer: &Answer, _: Show) -> Html {
        picture(answer)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let groups = left_out(answer).into_iter().chain([figures(answer, show)]).collect();
        Reply { main: main_lines(answer, show), glance: None, verdict: Some(verdict(answer)), groups }
    }

    fn more(fields: &Fields<Self>, show: Show, at_saw: bool) -> Html {
        let Some(answer) = fields.answer() else { return Html::default() };
        if at_saw {
            return cuts::order(fields, show);
        }
        html! {
            <>
                { sheets::sheets(fields, show) }
                { offcuts::offcuts(fields, answer, show) }
                { cuts::folded(fields, answer, show) }
            </>
        }
    }

    fn seeks(inputs: &Inputs, answer: &Answer) -> Option<Seeks> {
        Some(match () {
            () if is_being_cut(inputs, answer) => Seeks::Held,
            () if answer.done => Seeks::Done,
            () => Seeks::On,
        })
    }

    fn seek(inputs: &Inputs, answer: &Answer) -> Option<Box<dyn Seeker<Self>>> {
        if is_being_cut(inputs, answer) {
            return None;
        }
        Further::of(answer).map(|further| Box::new(further) as Box<dyn Seeker<Self>>)
    }

    fn given(_: &Inputs, answer: &Answer, _: Show) -> AttrValue {
        say_with("sheet-layout-given", [("count", answer.figures.pieces.into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
