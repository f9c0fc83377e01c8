//! What the cabinet costs, line by line, worked out once it is asked for.

use super::{Cabinet, parts};
use crate::show::{Show, plain};
use crate::widgets::fields::Fields;
use crate::widgets::fold::Fold;
use crate::words::{say, say_with};
use scantling::cabinet::{Amount, Cabinet as Answer, Cost, Costs, Inputs, Priced, Stock, costs};
use std::rc::Rc;
use yew::prelude::*;

fn name(what: Priced, inputs: &Inputs) -> AttrValue {
    match what {
        Priced::Board(stock) => say_with("cabinet-cost-sheets", [("board", parts::stock(stock).as_str().into())]),
        Priced::Edging => say("cabinet-edging-length"),
        Priced::Hinge => say("cabinet-cost-hinges"),
        Priced::ShelfPin => say("cabinet-pin"),
        Priced::Joint => super::joint(inputs.joint),
        Priced::WallFixing => say("cabinet-wall-fixing"),
        Priced::Rail => say("cabinet-cost-rail"),
        Priced::RailSocket => say("cabinet-rail-socket"),
        Priced::Leg => say("cabinet-leg"),
        Priced::Handle => say("cabinet-part-handle"),
        Priced::Screw => say("cabinet-cost-screws"),
        Priced::Hook => say("cabinet-hook"),
        Priced::Bracket => say("cabinet-cost-brackets"),
    }
}

fn line(cost: &Cost, inputs: &Inputs, show: Show) -> Html {
    let amount = match cost.amount {
        Amount::Pieces(count) => count.to_string(),
        Amount::Run(length) => plain(&show.length(length).main),
    };
    let price = cost.price.typed().trim();
    let price = match cost.amount {
        // A written unit stays as it is.
        Amount::Run(_) if !price.ends_with(char::is_alphabetic) => format!("{price} /m"),
        _ => price.to_owned(),
    };
    let amount = match &cost.sum {
        None => amount.into(),
        Some(_) => say_with("cabinet-cost-each", [("amount", amount.into()), ("price", price.into())]),
    };
    let sum = cost.sum.map_or_else(|| say("cabinet-cost-none"), |sum| sum.to_string().into());
    html! { <tr><th scope="row">{ name(cost.what, inputs) }</th><td>{ amount }</td><td>{ sum }</td></tr> }
}

/// Sheets may be fewer in a better layout, parts may be larger than a sheet, and not all may have a price.
fn hints(costs: &Costs, inputs: &Inputs) -> Vec<AttrValue> {
    let mut hints = Vec::new();
    let unpriced: Vec<AttrValue> =
        costs.lines.iter().filter(|line| line.sum.is_none()).map(|line| name(line.what, inputs)).collect();
    if !unpriced.is_empty() {
        hints.push(say_with("cabinet-cost-without", [("what", unpriced.join("; ").into())]));
    }
    let sheets = costs.lines.iter().map(|line| match (line.what, line.amount) {
        (Priced::Board(_), Amount::Pieces(count)) => count,
        _ => 0,
    });
    if sheets.sum::<u32>() > costs.fewest_sheets {
        hints.push(say_with("cabinet-cost-fewer", [("fewest", costs.fewest_sheets.into())]));
    }
    if !costs.too_large.is_empty() {
        hints.push(say_with("cabinet-cost-too-large", [("what", costs.too_large.join(", ").into())]));
    }
    hints
}

#[derive(Properties)]
struct AllProps {
    answered: Rc<(Inputs, Answer)>,
    show: Show,
}

impl PartialEq for AllProps {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.answered, &other.answered) && self.show == other.show
    }
}

/// The parts are laid out only where this is seen.
#[component]
fn All(props: &AllProps) -> Html {
    let (inputs, answer) = &*props.answered;
    let costs = match costs(inputs, answer) {
        Ok(costs) => costs,
        Err(problems) => {
            return html! { <p class="hint">{ for problems.iter().map(|(_, problem)| problem.to_string()) }</p> };
        }
    };
    html! {
        <div class="parts costs">
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ say("cabinet-column-what") }</th>
                        <th scope="col">{ say("cabinet-column-amount") }</th>
                        <th scope="col">{ say("cabinet-column-cost") }</th>
                    </tr>
                </thead>
                <tbody>{ for costs.lines.iter().map(|cost| line(cost, inputs, props.show)) }</tbody>
                if let Some(total) = costs.total {
                    <tfoot>
                        <tr><th scope="row" colspan="2">{ say("cabinet-cost-total") }</th><td>{ total.to_string() }</td></tr>
                    </tfoot>
                }
            </table>
            { for hints(&costs, inputs).into_iter().map(|hint| html! { <p class="hint">{ hint }</p> }) }
        </div>
    }
}

/// The same on paper, where anything has a price.
pub(super) fn on_paper(answered: &Rc<(Inputs, Answer)>, show: Show) -> Option<Html> {
    let (inputs, answer) = &**answered;
    let priced = costs(inputs, answer).is_ok_and(|costs| costs.total.is_some());
    priced.then(|| html! { <All answered={answered.clone()} {show} /> })
}

/// The costs under their heading.
pub(super) fn folded(fields: &Fields<Cabinet>, show: Show) -> Html {
    let Some(answered) = fields.answered() else { return Html::default() };
    html! { <Fold name="costs" title={say("cabinet-costs")}><All {answered} {show} /></Fold> }
}

/// What sheets and fittings cost: those that this cabinet has.
pub(super) fn fields(fields: &Fields<Cabinet>) -> Html {
    let has = |what| fields.inputs().counts(what);
    html! {
        <>
            { fields.figure("cabinet-carcass-price", "", |inputs| &mut inputs.carcass.price) }
            if has(Priced::Board(Stock::Shelf)) {
                { fields.figure("cabinet-shelf-price", "", |inputs| &mut inputs.shelf.price) }
            }
            if has(Priced::Board(Stock::Door)) {
                { fields.figure("cabinet-door-price", "", |inputs| &mut inputs.door.price) }
            }
            if has(Priced::Board(Stock::Back)) {
                { fields.figure("cabinet-back-board-price", "", |inputs| &mut inputs.back_board.price) }
            }
            if has(Priced::Board(Stock::Strip)) {
                { fields.figure("cabinet-strip-price", "", |inputs| &mut inputs.strip.price) }
            }
            if has(Priced::Edging) {
                { fields.figure("cabinet-prices-edging", "/m", |inputs| &mut inputs.prices.edging) }
            }
            if has(Priced::Hinge) {
                { fields.figure("cabinet-prices-hinge", "", |inputs| &mut inputs.prices.hinge) }
            }
            if has(Priced::ShelfPin) {
                { fields.figure("cabinet-prices-shelf-pin", "", |inputs| &mut inputs.prices.shelf_pin) }
            }
            { fields.figure("cabinet-prices-joint", "", |inputs| &mut inputs.prices.joint) }
            if has(Priced::WallFixing) {
                { fields.figure("cabinet-prices-wall-fixing", "", |inputs| &mut inputs.prices.wall_fixing) }
            }
            if has(Priced::Rail) {
                { fields.figure("cabinet-prices-rail", "/m", |inputs| &mut inputs.prices.rail) }
                { fields.figure("cabinet-prices-rail-socket", "", |inputs| &mut inputs.prices.rail_socket) }
            }
            if has(Priced::Leg) {
                { fields.figure("cabinet-prices-leg", "", |inputs| &mut inputs.prices.leg) }
            }
            if has(Priced::Handle) {
                { fields.figure("cabinet-prices-handle", "/m", |inputs| &mut inputs.prices.handle) }
            }
            if has(Priced::Screw) {
                { fields.figure("cabinet-prices-screw", "", |inputs| &mut inputs.prices.screw) }
            }
            if has(Priced::Hook) {
                { fields.figure("cabinet-prices-hook", "", |inputs| &mut inputs.prices.hook) }
            }
            if has(Priced::Bracket) {
                { fields.figure("cabinet-prices-bracket", "", |inputs| &mut inputs.prices.bracket) }
            }
        </>
    }
}
