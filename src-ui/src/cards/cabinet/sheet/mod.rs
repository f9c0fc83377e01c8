//! The shop sheet: the whole cabinet on paper, black on white; on the screen, what it will look like.

mod figures;
mod layout;
mod tables;
mod templates;

use super::{Cabinet, wrongs};
use crate::cards::CardView;
use crate::route::Route;
use crate::settings::Settings;
use crate::show::{Show, Shown};
use crate::widgets::cautions::cautions;
use crate::widgets::rows::button;
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Inputs};
use std::rc::Rc;
use yew::prelude::*;

#[derive(PartialEq, Properties)]
pub struct ShopSheetProps {
    /// The cabinet's inputs, as they are kept.
    pub inputs: Option<AttrValue>,
    /// Those of the sheet layout, which may know a better layout than the first one.
    pub layout: Option<AttrValue>,
    /// The name of the job on the bench; empty where it has none.
    pub job: AttrValue,
    /// How values look.
    pub settings: Settings,
}

impl ShopSheetProps {
    /// As the card reads them.
    fn read(&self) -> Inputs {
        let kept = self.inputs.as_deref().and_then(scantling::as_text::read);
        let mut inputs = kept.unwrap_or_else(|| Cabinet::start(&self.settings));
        Cabinet::prepare(&mut inputs, &self.settings);
        inputs
    }
}

/// What the sheet is about, with a line for what only the shop knows.
fn head(answer: &Answer, job: &AttrValue, show: Show) -> Html {
    let size = Shown::joined([answer.width, answer.height, answer.depth].map(|side| show.length(side)), " × ");
    let blank = |words: AttrValue| html! { <p class="shop-blank"><span>{ words }</span><span></span></p> };
    html! {
        <header class="shop-head">
            <h2>{ Cabinet::title() }</h2>
            <p>{ say_with("shop-carcass", [("size", size.plain().into())]) }</p>
            if job.trim().is_empty() {
                { blank(say("shop-job")) }
            } else {
                <p class="shop-job">{ say("shop-job") }{ ": " }<strong>{ job }</strong></p>
            }
            { blank(say("shop-date")) }
            { for wrongs(answer, show).into_iter().map(|wrong| html! { <p class="shop-wrong">{ "✕ " }{ wrong }</p> }) }
        </header>
    }
}

/// A part of the sheet under its heading.
fn section(title: AttrValue, content: Html) -> Html {
    html! { <section><h3>{ title }</h3>{ content }</section> }
}

#[component]
pub fn ShopSheet(props: &ShopSheetProps) -> Html {
    let inputs = props.read();
    let show = Show::of(&props.settings);
    use_effect_with((), |()| {
        // A sheet is read from its head, however far down the card was.
        if let Some(window) = web_sys::window() {
            window.scroll_to_with_x_and_y(0.0, 0.0);
        }
    });
    let with_templates = use_state_eq(|| true);
    let Ok(answer) = Cabinet::solve(&inputs) else {
        return html! {
            <div class="about">
                <p>{ say("shop-problems") }</p>
                <p class="shop-open"><a href={Route::to_card(Cabinet::SLUG)}>{ say("shop-back") }</a></p>
            </div>
        };
    };
    let print = Callback::from(|()| {
        if let Some(window) = web_sys::window() {
            // Where nothing can be printed nothing comes of it.
            let _ = window.print();
        }
    });
    let leave_out = {
        let with_templates = with_templates.clone();
        Callback::from(move |()| with_templates.set(!*with_templates))
    };
    let answered = Rc::new((inputs, answer));
    let (inputs, answer) = &*answered;
    html! {
        <div class="shop-sheet">
            <div class="shop-tools">
                { button("print", say("shop-print"), &print) }
                { button("templates", say(if *with_templates { "shop-no-templates" } else { "shop-with-templates" }), &leave_out) }
                <p class="shop-open"><a href={Route::to_card(Cabinet::SLUG)}>{ say("shop-back") }</a></p>
                <p>{ say("shop-paper") }</p>
            </div>
            <article class="shop-paper" aria-label={say("shop-title")}>
                { head(answer, &props.job, show) }
                { section(say("shop-drawings"), figures::whole(answer, show)) }
                { section(say("cabinet-cut-list"), tables::cut_list(inputs, answer, show)) }
                { layout::sheets(inputs, answer, props.layout.as_deref(), show) }
                { section(say("cabinet-fittings"), tables::fittings(answer, show)) }
                { for super::costs::on_paper(&answered, show).map(|costs| section(say("cabinet-costs"), costs)) }
                { cautions(&answer.cautions) }
                { section(say("shop-work"), tables::work(answer, show)) }
                { section(say("cabinet-holes"), super::parts::hole_tables(answer, show)) }
                { section(say("shop-faces"), figures::faces(answer, show)) }
                if *with_templates {
                    { templates::pages(answer, show) }
                }
            </article>
        </div>
    }
}
