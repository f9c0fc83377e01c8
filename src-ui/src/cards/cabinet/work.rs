//! The order of work: every setting with the parts that share it, to be ticked off.

use super::{Cabinet, joint, parts};
use crate::show::{Show, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::widgets::tick_list::{Tick, TickGroup, Ticked, next, toggle};
use crate::words::{say, say_with};
use scantling::cabinet::{Axis, Beside, Bore, Cabinet as Answer, Hand, Inputs, OnWall, Setup, Step, What};
use scantling::cards::joints::Kind;
use scantling::measure::Length;
use std::rc::Rc;
use yew::prelude::*;

/// What is bored or cut for a joint, and how deep: it is in the words of the joint.
fn bored(kind: Kind, bore: &Bore, show: Show) -> String {
    let deep = bore.deep.map_or_else(|| say("cabinet-through"), |deep| parts::deep(deep, show));
    let (kind, across) = (joint(kind), show.typed(bore.across));
    if bore.across == bore.along {
        format!("{kind}, ⌀ {across}, {deep}")
    } else {
        format!("{kind}, {across} × {}, {deep}", show.hardware(bore.along))
    }
}

fn joined(key: &'static str, joint: String, marks: String, line: String) -> AttrValue {
    say_with(key, [("joint", joint.into()), ("marks", marks.into()), ("line", line.into())])
}

/// Hung on the wall: the spacer's packing, the heights of the strips and the places of the screws.
fn hung(packing: Length, strip: Option<&OnWall>, screws: &[(Length, u32)], show: Show) -> AttrValue {
    let mut said: Vec<AttrValue> = Vec::new();
    if packing.is_positive() {
        said.push(say_with("cabinet-do-pack", [("packing", show.typed(packing).into())]));
    }
    if let Some(strip) = strip {
        let values = [
            ("point", show.on_drawing(strip.point).into()),
            ("screws", show.on_drawing(strip.screws).into()),
            ("spacer", show.on_drawing(strip.spacer).into()),
        ];
        said.push(say_with("cabinet-do-on-wall", values));
    }
    let along = screws.iter().map(|(at, count)| {
        if *count > 1 { format!("{count} × {}", show.on_drawing(*at)) } else { show.on_drawing(*at) }
    });
    let along: Vec<String> = along.collect();
    if !along.is_empty() {
        said.push(say_with("cabinet-do-wall-screws", [("at", along.join("; ").into())]));
    }
    said.push(say("cabinet-do-hang-up"));
    said.join(". ").into()
}

/// The setting in words.
fn title(setup: &Setup, show: Show) -> AttrValue {
    let at = |length| show.on_drawing(length);
    let listed = |lengths: &[Length]| parts::listed(lengths.iter().copied(), show);
    let fine = |length: Length| plain(&show.fine_mm(length.as_mm()).main);
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
        Setup::Groove { height, rabbet, passes } => {
            // Rounded to a tape's marks one by one, its two walls would no longer lie as far apart as the back is thick.
            let fences: Vec<_> = passes.iter().map(|pass| fine(pass.near)).collect();
            let values = [("height", fine(*height).into()), ("fences", fences.join("; ").into())];
            say_with(if *rabbet { "cabinet-do-rabbet" } else { "cabinet-do-groove" }, values)
        }
        Setup::StoppedGroove { depth, walls: [near, far], ends: [from, to] } => {
            let values = [
                ("depth", fine(*depth).into()),
                ("near", fine(*near).into()),
                ("far", fine(*far).into()),
                ("from", at(*from).into()),
                ("to", at(*to).into()),
            ];
            say_with("cabinet-do-groove-stopped", values)
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
                ("setback", show.hardware(*from_front).into()),
                ("first", show.hardware(*first).into()),
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
                ("deep", show.hardware(*deep).into()),
                ("edge", show.hardware(*from_edge).into()),
                ("at", parts::listed_hardware(cups.iter().copied(), show).into()),
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
        Setup::Join { kind, along, marks, line, bore } => {
            let key = match along {
                Axis::Deep => "cabinet-do-join",
                Axis::Up => "cabinet-do-join-down",
                Axis::Across => "cabinet-do-join-across",
            };
            joined(key, bored(*kind, bore, show), listed(marks), at(*line))
        }
        Setup::Pockets { along, marks, shoulder, screw } => {
            let key = match along {
                Axis::Deep => "cabinet-do-pockets",
                Axis::Up => "cabinet-do-pockets-down",
                Axis::Across => "cabinet-do-pockets-across",
            };
            let values = [
                ("marks", listed(marks).into()),
                ("shoulder", show.hardware(*shoulder).into()),
                ("screw", show.hardware(*screw).into()),
            ];
            say_with(key, values)
        }
        Setup::JoinFace { kind, along, marks, line, bore } => {
            let key = match along {
                Axis::Deep => "cabinet-do-join-face",
                Axis::Up => "cabinet-do-join-face-down",
                Axis::Across => "cabinet-do-join-face-across",
            };
            joined(key, bored(*kind, bore, show), listed(marks), at(*line))
        }
        Setup::Assemble { about_back: false } => say("cabinet-do-assemble"),
        Setup::Assemble { about_back: true } => say("cabinet-do-assemble-about"),
        Setup::PlinthTogether => say("cabinet-do-plinth"),
        Setup::FixPlinth => say("cabinet-do-fix-plinth"),
        Setup::FixStrip => say("cabinet-do-fix-strip"),
        Setup::Rail { length } => say_with("cabinet-do-rail", [("length", at(*length).into())]),
        Setup::PutIn { pitch: None } => say("cabinet-do-put-in"),
        Setup::PutIn { pitch: Some(pitch) } => {
            say_with("cabinet-do-put-on", [("pitch", show.on_drawing(*pitch).into())])
        }
        Setup::FixHooks => say("cabinet-do-fix-hooks"),
        Setup::FixHandles => say("cabinet-do-fix-handles"),
        Setup::HangDoors => say("cabinet-do-hang-doors"),
        Setup::HangUp { packing, strip, screws } => hung(*packing, strip.as_ref(), screws, show),
        Setup::Legs => say("cabinet-do-legs"),
        Setup::FixOutside => say("cabinet-do-fix-outside"),
    }
}

/// Which face of an upright, or which end of a shelf, it is done to: other steps may be done to the other.
fn faces(answer: &Answer, step: &Step, here: &[usize]) -> String {
    let told = |part: &usize| {
        let done = |hand: Hand| step.faces.contains(&(*part, hand));
        let shelf = answer.parts.get(*part).is_some_and(|part| matches!(part.what, What::FixedShelf { .. }));
        let words = match (done(Hand::Left), done(Hand::Right), shelf) {
            (true, true, true) => say("cabinet-ends-both"),
            (true, false, true) => say("cabinet-end-left"),
            (false, true, true) => say("cabinet-end-right"),
            (true, true, false) => say("cabinet-faces-both"),
            (true, false, false) => say("cabinet-face-left"),
            (false, true, false) => say("cabinet-face-right"),
            (false, false, _) => return None,
        };
        Some((parts::place(answer, *part), words))
    };
    let told: Vec<(AttrValue, AttrValue)> = here.iter().filter_map(told).collect();
    match told.as_slice() {
        [] => String::new(),
        // An upright's own name says which it is.
        [(place, words)] if *place == parts::names(answer, here) => format!(", {words}"),
        all => {
            let all: Vec<String> = all.iter().map(|(place, words)| format!("{place}: {words}")).collect();
            format!(" ({})", all.join("; "))
        }
    }
}

/// The parts of a step, those that are cut alike as one tick.
fn ticks(answer: &Answer, step: &Step, show: Show, number: &mut u32, done: &[u32]) -> Vec<Tick> {
    let mut ticks = Vec::new();
    for line in &answer.cut_list {
        let here: Vec<usize> = line.parts.iter().copied().filter(|part| step.parts.contains(part)).collect();
        if here.is_empty() {
            continue;
        }
        let what = format!("{} × {}{}", here.len(), parts::names(answer, &here), faces(answer, step, &here));
        let then = parts::size_of(line, show);
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
