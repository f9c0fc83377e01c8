//! A list that is ticked off, in groups: large enough to be read and touched at a machine.

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
