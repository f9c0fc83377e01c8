//! The order of work: every setting with the parts that share it, to be ticked off.

use super::{Cabinet, joint, parts};
use crate::show::{Show, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::widgets::tick_list::{Tick, TickGroup, Ticked, next, toggle};
use crate::words::{say, say_with};
use scantling::cabinet::{Axis, Beside, Cabinet as Answer, Hand, Inputs, Setup, Step};
use scantling::cards::joints::Kind;
use scantling::measure::Length;
use std::rc::Rc;
use yew::prelude::*;

fn joined(key: &'static str, kind: Kind, marks: String, line: String) -> AttrValue {
    let kind = joint(kind);
    say_with(key, [("joint", kind.as_str().into()), ("marks", marks.into()), ("line", line.into())])
}

/// The setting in words.
fn title(setup: &Setup, show: Show) -> AttrValue {
    let at = |length| show.on_drawing(length);
    let listed = |lengths: &[Length]| parts::listed(lengths.iter().copied(), show);
    match setup {
        Setup::Rip { stock, fence } => {
            let board = parts::stock(*stock);
            say_with("cabinet-do-rip", [("board", board.as_str().into()), ("fence", at(*fence).into())])
        }
        Setup::Crosscut { stock, stop } => {
            let board = parts::stock(*stock);
            say_with("cabinet-do-crosscut", [("board", board.as_str().into()), ("stop", at(*stop).into())])
        }
        Setup::CleatBoard { fence, stop } => {
            say_with("cabinet-do-cleat-board", [("fence", at(*fence).into()), ("stop", at(*stop).into())])
        }
        Setup::CleatCut { stop } => say_with("cabinet-do-cleat-cut", [("stop", at(*stop).into())]),
        Setup::Groove { height, stopped, passes } => {
            // Rounded to a tape's marks one by one, its two walls would no longer lie as far apart as the back is thick.
            let fine = |length: Length| plain(&show.fine_mm(length.as_mm()).main);
            let fences: Vec<_> = passes.iter().map(|pass| fine(pass.near)).collect();
            let (height, fences) = (fine(*height), fences.join("; "));
            let values = [("height", height.as_str().into()), ("fences", fences.as_str().into())];
            match stopped {
                None => say_with("cabinet-do-groove", values),
                Some([from, to]) => {
                    let ends = [("from", at(*from).into()), ("to", at(*to).into())];
                    let [height, fences] = values;
                    let [from, to] = ends;
                    say_with("cabinet-do-groove-stopped", [height, fences, from, to])
                }
            }
        }
        Setup::Bevel { passes } => {
            let said = passes.iter().map(|pass| {
                let values = [("lean", figures(pass.lean_degrees, 4).into()), ("fence", at(pass.fence).into())];
                say_with("cabinet-do-bevel", values).to_string()
            });
            said.collect::<Vec<_>>().join("; ").into()
        }
        Setup::HandleBevel { lean_degrees, fence_mm } => {
            let fence = plain(&show.fine_mm(*fence_mm).main);
            let values = [("lean", figures(*lean_degrees, 4).into()), ("fence", fence.into())];
            say_with("cabinet-do-handle-bevel", values)
        }
        Setup::HandleHoles { from_edge, at: screws } => {
            let values = [("edge", at(*from_edge).into()), ("at", listed(screws).into())];
            say_with("cabinet-do-handle-holes", values)
        }
        Setup::HookRailHoles { from_front, at: screws } => {
            let values = [("front", at(*from_front).into()), ("at", listed(screws).into())];
            say_with("cabinet-do-hook-rail-holes", values)
        }
        Setup::Hooks { up, at: hooks } => {
            say_with("cabinet-do-hooks", [("up", at(*up).into()), ("at", listed(hooks).into())])
        }
        Setup::Brackets { at: beside, shelf, along, across } => {
            let values = || [("along", listed(along).into()), ("across", listed(across).into())];
            match (beside, shelf) {
                (Beside::Under, false) => say_with("cabinet-do-brackets-bottom", values()),
                (_, false) => say_with("cabinet-do-brackets-side", values()),
                (Beside::Under, true) => say_with("cabinet-do-brackets-under", values()),
                (_, true) => say_with("cabinet-do-brackets-beside", values()),
            }
        }
        Setup::Edge => say("cabinet-do-edge"),
        Setup::Row { from_front, first, hole, deep } => {
            let deep = deep.map_or_else(|| say("cabinet-through"), |deep| parts::deep(deep, show));
            let values = [
                ("hole", show.typed(*hole).into()),
                ("setback", at(*from_front).into()),
                ("first", at(*first).into()),
                ("deep", deep.as_str().into()),
            ];
            say_with("cabinet-do-row", values)
        }
        Setup::Socket { from_front, up } => {
            say_with("cabinet-do-socket", [("front", at(*from_front).into()), ("up", at(*up).into())])
        }
        Setup::Cups { from_edge, at: cups, cup, deep } => {
            let values = [
                ("cup", show.typed(*cup).into()),
                ("deep", at(*deep).into()),
                ("edge", at(*from_edge).into()),
                ("at", listed(cups).into()),
            ];
            say_with("cabinet-do-cups", values)
        }
        Setup::PlinthHoles { from_front, at: screws } => {
            let values = [("front", at(*from_front).into()), ("at", listed(screws).into())];
            say_with("cabinet-do-plinth-holes", values)
        }
        Setup::StripHoles { down, at: screws } => {
            let values = [("down", at(*down).into()), ("at", listed(screws).into())];
            say_with("cabinet-do-strip-holes", values)
        }
        Setup::Join { kind, along, marks, line } => {
            let key = match along {
                Axis::Deep => "cabinet-do-join",
                Axis::Up => "cabinet-do-join-down",
                Axis::Across => "cabinet-do-join-across",
            };
            joined(key, *kind, listed(marks), at(*line))
        }
        Setup::JoinFace { kind, along, marks, line } => {
            let key = match along {
                Axis::Deep => "cabinet-do-join-face",
                Axis::Up => "cabinet-do-join-face-down",
                Axis::Across => "cabinet-do-join-face-across",
            };
            joined(key, *kind, listed(marks), at(*line))
        }
        Setup::Assemble { about_back: false } => say("cabinet-do-assemble"),
        Setup::Assemble { about_back: true } => say("cabinet-do-assemble-about"),
        Setup::PlinthTogether => say("cabinet-do-plinth"),
        Setup::FixPlinth => say("cabinet-do-fix-plinth"),
        Setup::FixStrip => say("cabinet-do-fix-strip"),
        Setup::Rail { length } => say_with("cabinet-do-rail", [("length", at(*length).into())]),
        Setup::PutIn => say("cabinet-do-put-in"),
        Setup::FixHooks => say("cabinet-do-fix-hooks"),
        Setup::FixHandles => say("cabinet-do-fix-handles"),
        Setup::HangDoors => say("cabinet-do-hang-doors"),
        Setup::HangUp { packing } if packing.is_positive() => {
            say_with("cabinet-do-hang-up-packed", [("packing", show.typed(*packing).into())])
        }
        Setup::HangUp { .. } => say("cabinet-do-hang-up"),
        Setup::FixOutside => say("cabinet-do-fix-outside"),
    }
}

/// Which face of an upright it is done to, as other steps may be done to the other.
fn faces(step: &Step, here: &[usize]) -> String {
    let done = |hand: Hand| step.faces.iter().any(|(part, face)| here.contains(part) && *face == hand);
    let words = match (done(Hand::Left), done(Hand::Right)) {
        (true, true) => say("cabinet-faces-both"),
        (true, false) => say("cabinet-face-left"),
        (false, true) => say("cabinet-face-right"),
        (false, false) => return String::new(),
    };
    format!(", {words}")
}

/// The parts of a step, those that are cut alike as one tick.
fn ticks(answer: &Answer, step: &Step, show: Show, number: &mut u32, done: &[u32]) -> Vec<Tick> {
    let mut ticks = Vec::new();
    for line in &answer.cut_list {
        let here: Vec<usize> = line.parts.iter().copied().filter(|part| step.parts.contains(part)).collect();
        if here.is_empty() {
            continue;
        }
        let what = format!("{} × {}{}", here.len(), parts::names(answer, &here), faces(step, &here));
        let then = parts::sizes([line.length, line.width], show);
        ticks.push(Tick { number: *number, what: what.into(), then: then.into(), done: done.contains(number) });
        *number += 1;
    }
    ticks
}

/// Every step with its ticks; those of `done` are set.
pub(super) fn groups(answer: &Answer, show: Show, done: &[u32]) -> (Vec<(AttrValue, Vec<Tick>)>, u32) {
    let mut number = 0;
    let step = |step: &Step| (title(&step.setup, show), ticks(answer, step, show, &mut number, done));
    (answer.work.iter().map(step).collect(), number)
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

#[component]
fn Order(props: &OrderProps) -> Html {
    let (_, answer) = &*props.answered;
    let (groups, number) = groups(answer, props.show, props.ticked.here());
    let coming = next(groups.iter().map(|(name, ticks)| (name, ticks.as_slice())), &props.ticked, &props.ontick);
    html! {
        <div class="cut-order">
            { state(number, &props.ticked) }
            { for groups.into_iter().enumerate().map(|(at, (name, ticks))| html! {
                <TickGroup key={at} title={html! { <>{ &name }</> }} {name} {ticks} ontick={props.ontick.clone()} />
            }) }
            { coming }
        </div>
    }
}

/// How much is done, or that what was done belongs to other sizes.
fn state(all: u32, ticked: &Ticked) -> Html {
    let count = ticked.count();
    let words = if ticked.is_aside() {
        say_with("cabinet-ticks-gone", [("count", count.into())])
    } else {
        say_with("cabinet-ticked", [("count", count.into()), ("all", all.into())])
    };
    ticked.state(all, words)
}

/// The order of work, drawn only where it is seen.
pub(super) fn order(fields: &Fields<Cabinet>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    let mark = answered.1.work_mark.clone();
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
pub(super) fn folded(fields: &Fields<Cabinet>, answer: &Answer, show: Show) -> Html {
    let steps = u32::try_from(answer.work.len()).unwrap_or(u32::MAX);
    html! { <Fold name="cuts" title={say_with("cabinet-work", [("steps", steps.into())])}>{ order(fields, show) }</Fold> }
}
