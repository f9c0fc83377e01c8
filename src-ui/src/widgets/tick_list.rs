//! A list that is ticked off, in groups: large enough to be read and touched at a machine.

use crate::words::{say, say_with};
use yew::prelude::*;

/// Something to be done.
#[derive(Clone, Debug, PartialEq)]
pub struct Tick {
    /// Its number through all groups.
    pub number: u32,
    /// What is done.
    pub what: AttrValue,
    /// What comes of it.
    pub then: AttrValue,
    /// Whether it is done.
    pub done: bool,
}

/// What is ticked off, and of what.
#[derive(Clone, Debug, PartialEq)]
pub struct Ticked {
    /// The numbers that are ticked.
    pub done: Vec<u32>,
    /// The mark of the work that they belong to.
    pub of: String,
    /// The mark of the work as it is now.
    pub mark: String,
}

impl Ticked {
    /// Those of the work as it is now.
    pub fn here(&self) -> &[u32] {
        if self.of == self.mark { &self.done } else { &[] }
    }

    /// How many there are, of whatever work.
    pub fn count(&self) -> u32 {
        u32::try_from(self.done.len()).unwrap_or(u32::MAX)
    }

    /// Whether there are some, but of other work.
    pub fn is_aside(&self) -> bool {
        !self.done.is_empty() && self.of != self.mark
    }

    /// How much is done, in these words, and as a bar.
    pub fn state(&self, all: u32, words: AttrValue) -> Html {
        if self.is_aside() {
            return html! { <p class="cut-state verdict" data-tone="mind" role="status">{ words }</p> };
        }
        html! {
            <p class="cut-state" role="status">
                <span>{ words }</span>
                <progress max={all.max(1).to_string()} value={self.count().to_string()} aria-hidden="true" />
            </p>
        }
    }
}

/// Ticks a number, or takes its tick back; ticks of other work than that of the mark go.
pub fn toggle((done, of): (&mut Vec<u32>, &mut String), mark: &str, number: u32) {
    if of != mark {
        mark.clone_into(of);
        done.clear();
    }
    match done.iter().position(|ticked| *ticked == number) {
        Some(at) => {
            done.remove(at);
        }
        None => done.push(number),
    }
}

/// What is to be done next, with its setting; a button that ticks it, and one that takes the last tick back. Whoever
/// follows the work at a machine needs no more of the list.
pub fn next<'a>(
    groups: impl Iterator<Item = (&'a AttrValue, &'a [Tick])>,
    ticked: &Ticked,
    ontick: &Callback<u32>,
) -> Html {
    if ticked.is_aside() {
        return Html::default();
    }
    let open = groups.filter_map(|(name, ticks)| {
        let at = ticks.iter().position(|tick| !tick.done)?;
        Some((name, ticks, at))
    });
    let press = |number: u32| {
        let ontick = ontick.clone();
        move |_: MouseEvent| ontick.emit(number)
    };
    let small = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let undo = ticked.here().last().map(|last| {
        html! { <button type="button" data-action="untick" onclick={press(*last)}>{ say("next-undo") }</button> }
    });
    let next = open.into_iter().next().map(|(name, ticks, at)| {
        let left = ticks.iter().filter(|tick| !tick.done).count();
        let count = say_with("next-count", [("left", small(left).into()), ("all", small(ticks.len()).into())]);
        html! {
            <>
                <p class="coming-setting">{ name }{ " · " }{ count }</p>
                { for ticks.get(at).map(|tick| html! {
                    <>
                        <p class="coming-what"><strong>{ &tick.what }</strong><span class="tick-then">{ &tick.then }</span></p>
                        <button type="button" class="strong" data-action="tick-next" onclick={press(tick.number)}>
                            { say("next-done") }
                        </button>
                    </>
                }) }
            </>
        }
    });
    html! {
        <section class="coming" aria-label={say("next-title")}>
            { next.unwrap_or_else(|| html! { <p class="coming-what"><strong>{ say("next-none") }</strong></p> }) }
            { undo.unwrap_or_default() }
        </section>
    }
}

#[derive(Properties)]
pub struct TickGroupProps {
    /// What they have in common.
    pub title: Html,
    /// The same in words, by which it is known again.
    pub name: AttrValue,
    /// What is to be done.
    pub ticks: Vec<Tick>,
    /// One was ticked, or its tick taken back.
    pub ontick: Callback<u32>,
}

/// The callback is made anew at every draw, but holds nothing that ages; the title says no more than the name.
impl PartialEq for TickGroupProps {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name && self.ticks == other.ticks
    }
}

#[component]
pub fn TickGroup(props: &TickGroupProps) -> Html {
    let done = props.ticks.iter().all(|tick| tick.done);
    html! {
        <div class="tick-group" role="group" data-done={done.to_string()} aria-label={props.name.clone()}>
            <h4>{ props.title.clone() }</h4>
            <ul>
                { for props.ticks.iter().map(|tick| {
                    let (ontick, number) = (props.ontick.clone(), tick.number);
                    html! {
                        <li key={number}>
                            <label class="tick">
                                <input type="checkbox" checked={tick.done} data-number={number.to_string()}
                                    onchange={move |_: Event| ontick.emit(number)} />
                                <span><strong>{ &tick.what }</strong><span class="tick-then">{ &tick.then }</span></span>
                            </label>
                        </li>
                    }
                }) }
            </ul>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tick_is_taken_back_and_goes_with_other_work() {
        let (mut done, mut of) = (Vec::new(), String::new());
        for number in [3, 5, 3] {
            toggle((&mut done, &mut of), "first", number);
        }
        assert_eq!((done.as_slice(), of.as_str()), ([5].as_slice(), "first"));
        let aside = Ticked { done: done.clone(), of: of.clone(), mark: "second".to_owned() };
        assert!(aside.is_aside() && aside.here().is_empty() && aside.count() == 1);
        toggle((&mut done, &mut of), "second", 7);
        assert_eq!((done, of.as_str()), (vec![7], "second"));
    }
}
