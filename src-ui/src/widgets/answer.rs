//! The answer in large type, with the verdict; greyed while the inputs cannot be used.

use super::reply::{Reply, verdict};
use crate::browser::Later;
use crate::show::{draw, draw_other};
use crate::words::say;
use std::rc::Rc;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct AnswerProps {
    /// For ids.
    pub slug: &'static str,
    /// The last good answer.
    pub reply: Rc<Reply>,
    /// Whether it is older than the inputs.
    pub stale: bool,
    /// The answer was tapped.
    pub ontap: Callback<()>,
}

/// A screen reader is told once typing rests, not at every key.
const REST_MS: i32 = 600;

#[component]
pub fn Answer(props: &AnswerProps) -> Html {
    let spoken = use_state_eq(String::new);
    {
        let said = if props.stale { say("answer-stale").to_string() } else { props.reply.spoken() };
        let spoken = spoken.clone();
        use_effect_with(said, move |said| {
            let said = said.clone();
            let later = Later::after(REST_MS, move || spoken.set(said.clone()));
            move || drop(later)
        });
    }
    let tap = {
        let ontap = props.ontap.clone();
        move |_: MouseEvent| ontap.emit(())
    };
    html! {
        <div class="answer" data-stale={props.stale.to_string()} onclick={tap}>
            <div class="answer-lines">
                { for props.reply.main.iter().map(|line| html! {
                    <div class="answer-line" data-tone={line.tone.name()}>
                        <span class="answer-label">{ &line.label }</span>
                        <span class="answer-main">{ draw(&line.shown.main) }</span>
                        <span class="answer-other">
                            if let Some(cost) = &line.shown.cost {
                                <span class="answer-cost">{ cost }</span>
                            }
                            { draw_other(&line.shown) }
                        </span>
                    </div>
                }) }
            </div>
            if props.stale {
                <p class="verdict" data-tone="mind">{ say("answer-stale") }</p>
            } else if let Some(judged) = &props.reply.verdict {
                { verdict(judged) }
            }
            <output id={format!("{}-answer", props.slug)} class="unseen" aria-live="polite">{ &*spoken }</output>
        </div>
    }
}
