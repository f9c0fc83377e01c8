//! The working: every formula, the same with its numbers, what came out, and who says so.

use super::fold::use_unfolded;
use crate::settings::System;
use crate::show::{Show, draw, draw_other, figures, plain};
use crate::words::say;
use scantling::measure::{Measure, Quantity};
use scantling::source::Source;
use scantling::working::{Step, Working};
use yew::prelude::*;

/// Whether the numbers of a step are written in inches: only where nothing but lengths meets. A length in inches beside
/// newtons and millimetres would make the line come out wrong.
fn in_inches(step: &Step, show: Show) -> bool {
    use Measure::{Count, Degrees, Mm, Number, Percent};
    let is_plain = |quantity: &Quantity| {
        matches!(
            quantity,
            Quantity::Length(_) | Quantity::Estimate { unit: Mm | Degrees | Percent | Number | Count, .. }
        )
    };
    show.system == System::Imperial && step.given.iter().map(|(_, value)| value).chain([&step.gives]).all(is_plain)
}

/// The formula's right side with the numbers in place of the symbols; `None` when no symbol stands in it.
fn with_numbers(step: &Step, show: Show) -> Option<String> {
    let inches = in_inches(step, show);
    let (_, right) = step.formula.split_once('=')?;
    let mut text = String::new();
    let mut replaced = false;
    let mut symbol = String::new();
    // A symbol runs until a space or a bracket; the end closes the last one.
    for letter in right.trim().chars().chain(std::iter::once(' ')) {
        if !matches!(letter, ' ' | '(' | ')' | '·' | '/' | '²' | '³' | '⁴' | ',' | '+' | '−' | '×' | '÷') {
            symbol.push(letter);
            continue;
        }
        match step.given.iter().find(|(name, _)| *name == symbol) {
            Some((_, value)) => {
                replaced = true;
                text.push_str(&number(value, inches));
            }
            None => text.push_str(&symbol),
        }
        symbol.clear();
        text.push(letter);
    }
    replaced.then(|| text.trim_end().to_owned())
}

/// A value without its unit, exact enough to follow the arithmetic.
fn number(value: &Quantity, inches: bool) -> String {
    match value {
        Quantity::Length(length) if inches => figures(length.as_inches(), 6),
        Quantity::Length(length) => figures(length.as_mm(), 7),
        Quantity::Estimate { value, unit: Measure::Mm } if inches => figures(value / 25.4, 5),
        Quantity::Estimate { value, .. } => figures(*value, 5),
    }
}

/// A citation with its mark.
pub fn source(source: &Source) -> Html {
    html! { <p class="source"><span class="source-mark">{ source.mark.words() }</span>{ " · " }{ source.cite }</p> }
}

fn step(step: &Step, show: Show) -> Html {
    let given = step
        .given
        .iter()
        .map(|(name, value)| format!("{name} = {}", plain(&show.quantity(value).main)))
        .collect::<Vec<_>>()
        .join(", ");
    let gives = show.quantity(&step.gives);
    html! {
        <li class="step">
            <h4>{ step.what }</h4>
            <p class="formula">{ step.formula }</p>
            if let Some(text) = with_numbers(step, show) {
                <p class="formula numbers">
                    { text }
                    if show.system == System::Imperial && !in_inches(step, show) {
                        <span class="given">{ " · " }{ say("working-metric") }</span>
                    }
                </p>
            }
            <p class="gives">
                { "= " }{ draw(&gives.main) }
                if !gives.other.is_empty() {
                    <span class="line-other">{ " " }{ draw_other(&gives) }</span>
                }
            </p>
            if !given.is_empty() {
                <p class="given">{ given }</p>
            }
            { source(&step.source) }
        </li>
    }
}

#[derive(PartialEq, Properties)]
pub struct WorkingFoldProps {
    /// The steps.
    pub working: Working,
    /// How values look.
    pub show: Show,
}

/// Folded until asked for; only then is it drawn, so that it costs nothing while typing.
#[component]
pub fn WorkingFold(props: &WorkingFoldProps) -> Html {
    let (open, toggle) = use_unfolded();
    html! {
        <details class="fold" ontoggle={toggle}>
            <summary>{ say("working-title") }</summary>
            if open {
                <ol class="steps">{ for props.working.0.iter().map(|one| step(one, props.show)) }</ol>
            }
        </details>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::settings::Settings;
    use scantling::source::GEOMETRY;

    #[test]
    fn numbers_stand_where_the_symbols_stood() {
        let mm = |value| Quantity::from(scantling::measure::Length::mm(value, 1).unwrap());
        let step = Step {
            what: "Panel width",
            formula: "W = (O + g1) − c",
            given: vec![("O", mm(764)), ("g1", mm(7)), ("c", mm(2))],
            gives: mm(769),
            source: GEOMETRY,
        };
        let show = Show::of(&Settings::default());
        assert_eq!(with_numbers(&step, show).as_deref(), Some("(764 + 7) − 2"));
        let inches = Show::of(&Settings::default().in_system(System::Imperial));
        assert_eq!(
            with_numbers(&step, inches).as_deref(),
            Some("(30.0787 + 0.275591) − 0.07874"),
            "764/25.4 and so on, to six decimals"
        );
    }
    #[test]
    fn inches_and_newtons_never_meet_in_one_line() {
        let mm = |value| Quantity::from(scantling::measure::Length::mm(value, 1).unwrap());
        let inches = Show::of(&Settings::default().in_system(System::Imperial));
        let lengths = Step {
            what: "Edge of the kerf",
            formula: "E = D + k",
            given: vec![("D", mm(254)), ("k", Quantity::mm(3.81))],
            gives: Quantity::mm(257.81),
            source: GEOMETRY,
        };
        assert_eq!(with_numbers(&lengths, inches).as_deref(), Some("10 + 0.15"));
        let moment = Step {
            what: "Moment",
            formula: "M = F · L",
            given: vec![("F", Quantity::newtons(100.0)), ("L", mm(254))],
            gives: Quantity::n_mm(25_400.0),
            source: GEOMETRY,
        };
        assert_eq!(with_numbers(&moment, inches).as_deref(), Some("100 · 254"));
    }
}
