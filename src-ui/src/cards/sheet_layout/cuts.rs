//! The order of cuts: for every setting of fence or stop, the cuts that are made with it, to be ticked off.

use super::SheetLayout;
use crate::show::{Show, draw, draw_other, plain};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::widgets::tick_list::{Tick, TickGroup, Ticked, next, toggle};
use crate::words::{say, say_with};
use scantling::cards::sheet_layout::{Answer, Inputs};
use scantling::sheets::{Area, Becomes, Cut, Piece, Setting, Way};
use std::collections::BTreeMap;
use std::rc::Rc;
use yew::prelude::*;

/// How pieces are called on the way: sheets by their place, rests by a number to be chalked on them.
struct Names<'a> {
    answer: &'a Answer,
    rests: BTreeMap<u32, u32>,
    show: Show,
}

impl<'a> Names<'a> {
    fn of(answer: &'a Answer, show: Show) -> Self {
        let mut rests = BTreeMap::new();
        let cuts = answer.layout.settings.iter().flat_map(|setting| &setting.cuts);
        for piece in cuts.flat_map(|cut| std::iter::once(&cut.keeps).chain(&cut.falls)) {
            if piece.becomes == Becomes::Rest {
                let next = u32::try_from(rests.len() + 1).unwrap_or(u32::MAX);
                rests.insert(piece.id, next);
            }
        }
        Self { answer, rests, show }
    }

    fn size(&self, area: &Area) -> String {
        let sides = [area.length, area.width].map(|side| self.show.length(side));
        plain(&crate::show::Shown::joined(sides, " × ").main)
    }

    /// What is cut.
    fn cut(&self, cut: &Cut) -> AttrValue {
        let sheet = u32::try_from(cut.sheet + 1).unwrap_or(u32::MAX);
        match self.rests.get(&cut.piece) {
            Some(number) => say_with("sheet-layout-piece", [("number", (*number).into()), ("sheet", sheet.into())]),
            None => say_with("sheet-layout-sheet", [("number", sheet.into())]),
        }
    }

    /// What a piece becomes, in words.
    fn becomes(&self, piece: &Piece) -> AttrValue {
        let size = self.size(&piece.area);
        match piece.becomes {
            Becomes::Part { part, .. } => {
                let name = self.answer.parts.get(part).map(|part| part.name.as_str()).unwrap_or_default();
                say_with("sheet-layout-becomes-part", [("name", name.into()), ("size", size.into())])
            }
            Becomes::Offcut => say_with("sheet-layout-becomes-offcut", [("size", size.into())]),
            Becomes::Waste => say("sheet-layout-becomes-waste"),
            Becomes::Rest => {
                let number = self.rests.get(&piece.id).copied().unwrap_or(0);
                say_with("sheet-layout-becomes-rest", [("number", number.into()), ("size", size.into())])
            }
        }
    }

    fn tick(&self, number: u32, cut: &Cut, done: bool) -> Tick {
        let edge = say(match (cut.way, cut.from_far) {
            (Way::Rip, false) => "sheet-layout-edge-lower",
            (Way::Rip, true) => "sheet-layout-edge-upper",
            (Way::Crosscut, false) => "sheet-layout-edge-left",
            (Way::Crosscut, true) => "sheet-layout-edge-right",
        });
        let keeps = self.becomes(&cut.keeps);
        let then = match &cut.falls {
            Some(falls) => say_with(
                "sheet-layout-cut-gives",
                [
                    ("edge", edge.as_str().into()),
                    ("keeps", keeps.as_str().into()),
                    ("falls", self.becomes(falls).as_str().into()),
                ],
            ),
            None => {
                say_with("sheet-layout-cut-last", [("edge", edge.as_str().into()), ("keeps", keeps.as_str().into())])
            }
        };
        let what = if cut.trim {
            say_with("sheet-layout-trimmed", [("what", self.cut(cut).as_str().into())])
        } else {
            self.cut(cut)
        };
        Tick { number, what, then, done }
    }

    fn title(&self, setting: &Setting) -> (Html, AttrValue) {
        let fence = self.show.length(setting.fence);
        let way = say(if setting.way == Way::Rip { "sheet-layout-rip-at" } else { "sheet-layout-crosscut-at" });
        let name = format!("{way} {}", plain(&fence.main)).into();
        let title = html! {
            <>
                { &way }{ " " }<span class="tick-figure">{ draw(&fence.main) }</span>
                { " " }<span class="line-other">{ draw_other(&fence) }</span>
            </>
        };
        (title, name)
    }
}

#[derive(Properties)]
pub(super) struct OrderProps {
    answered: Rc<(Inputs, Answer)>,
    /// What is done.
    ticked: Ticked,
    show: Show,
    ontick: Callback<u32>,
}

/// The callback is made anew at every draw, but holds nothing that ages.
impl PartialEq for OrderProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.answered, &other.answered) && self.ticked == other.ticked && self.show == other.show
    }
}

/// The list, and how much of it is done.
#[component]
fn Order(props: &OrderProps) -> Html {
    let (_, answer) = &*props.answered;
    let names = Names::of(answer, props.show);
    let here = props.ticked.here();
    let mut number = 0_u32;
    let mut group = |setting: &Setting| {
        let ticks = setting.cuts.iter().map(|cut| {
            let tick = names.tick(number, cut, here.contains(&number));
            number += 1;
            tick
        });
        let ticks: Vec<Tick> = ticks.collect();
        let (title, name) = names.title(setting);
        (title, name, ticks)
    };
    let groups: Vec<(Html, AttrValue, Vec<Tick>)> = answer.layout.settings.iter().map(&mut group).collect();
    let coming = next(groups.iter().map(|(_, name, ticks)| (name, ticks.as_slice())), &props.ticked, &props.ontick);
    html! {
        <div class="cut-order">
            { state(answer.figures.cuts, &props.ticked) }
            { for groups.into_iter().enumerate().map(|(at, (title, name, ticks))| html! {
                <TickGroup key={at} {title} {name} {ticks} ontick={props.ontick.clone()} />
            }) }
            { coming }
        </div>
    }
}

/// How many cuts are done, or that those which were belong to another layout.
fn state(all: u32, ticked: &Ticked) -> Html {
    let count = ticked.count();
    let words = if ticked.is_aside() {
        say_with("sheet-layout-ticks-gone", [("count", count.into())])
    } else {
        say_with("sheet-layout-ticked", [("count", count.into()), ("all", all.into())])
    };
    ticked.state(all, words)
}

/// The order of cuts, drawn only where it is seen.
pub(super) fn order(fields: &Fields<SheetLayout>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    let mark = answered.1.layout_mark.clone();
    let ticked = {
        let inputs = fields.inputs();
        Ticked { done: inputs.done.clone(), of: inputs.done_of.clone(), mark: mark.clone() }
    };
    let ontick = fields.act(move |inputs, _, number: u32| {
        toggle((&mut inputs.done, &mut inputs.done_of), &mark, number);
    });
    html! { <Order {answered} {ticked} {show} {ontick} /> }
}

/// The list under its heading.
pub(super) fn folded(fields: &Fields<SheetLayout>, answer: &Answer, show: Show) -> Html {
    let figures = &answer.figures;
    let title = say_with("sheet-layout-order", [("cuts", figures.cuts.into()), ("settings", figures.settings.into())]);
    html! { <Fold name="cuts" {title}>{ order(fields, show) }</Fold> }
}
