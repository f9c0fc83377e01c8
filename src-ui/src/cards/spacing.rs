//! Even spacing card: a length and its pieces in; gaps, and marks from one end, out.

use super::{CardView, Stage};
use crate::pictures::{Ink, Place, Scale, across, line, paper, rect};
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::spacing::{Answer, By, Ends, Even, Inputs, Spread, Within, solve};
use scantling::caution::Caution;
use scantling::measure::Length;
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Spacing;

fn piece(at: usize) -> AttrValue {
    say_with("spacing-piece", [("number", (at + 1).to_string().into())])
}

fn marks(answer: &Answer, show: Show) -> Vec<Group> {
    let numbered = || answer.pieces.iter().enumerate();
    let centres = numbered().map(|(at, one)| Line::new(piece(at), show.length(one.centre))).collect();
    let centres = Group { title: say("spacing-centres"), lines: centres };
    if answer.width.is_zero() {
        return vec![centres];
    }
    let edges = numbered().map(|(at, one)| {
        let pair = Shown::joined([show.length(one.near), show.length(one.far)], ", ");
        Line::new(piece(at), Shown { cost: None, ..pair })
    });
    vec![Group { title: say("spacing-edges"), lines: edges.collect() }, centres]
}

fn gaps(answer: &Answer, show: Show) -> Group {
    let Spread { count, pitch, end_gap, .. } = answer.spread;
    let mut lines = vec![Line::new(say("spacing-end-gap"), show.length(end_gap))];
    // Why the marks are taken from the end: the rounding of one step, as often as one steps.
    if let Some(error) = pitch.and_then(|pitch| show.rounding_of(pitch)) {
        let out_mm = error.abs().as_mm() * f64::from(count - 1);
        lines.push(Line::new(say("spacing-stepped"), show.fine_mm(out_mm)));
    }
    Group { title: say("spacing-gaps"), lines }
}

fn beside(answer: &Answer, show: Show) -> Option<Group> {
    let line = |spread: Spread| {
        let label = say_with("spacing-with", [("count", spread.count.into())]);
        Line::new(label, show.length(spread.gap.unwrap_or(spread.end_gap)))
    };
    let lines: Vec<Line> = [answer.fewer, answer.more].into_iter().flatten().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("spacing-beside"), lines })
}

fn verdict(answer: &Answer, show: Show) -> Option<Verdict> {
    let fine = |length: Length| plain(&show.fine_mm(length.as_mm()).main);
    let (tone, words) = match answer.within {
        Some(Within::EndsOver(over)) => (Tone::Mind, say_with("spacing-ends-over", [("over", fine(over).into())])),
        Some(Within::Spare(spare)) => (Tone::Good, say_with("spacing-spare", [("spare", fine(spare).into())])),
        None if answer.spread.gap.is_some_and(Length::is_zero) => (Tone::Mind, say("spacing-touch")),
        None => return None,
    };
    Some(Verdict { tone, words })
}

/// The pieces on their length above, the story stick with their edges below.
fn picture(answer: &Answer, show: Show) -> Html {
    let scale = Scale::fit_width(answer.length.as_mm(), Place { x: 14.0, y: 0.0, width: 332.0, height: 0.0 });
    let x = |from_end: Length| scale.x(from_end.as_mm() - answer.datum.as_mm());
    let (left, right) = (scale.x(0.0), scale.x(answer.length.as_mm()));
    let (top, foot, stick, below) = (42.0, 92.0, 108.0, 122.0);
    let first = answer.pieces.first();
    let gap = match (first, answer.pieces.get(1)) {
        (Some(first), Some(second)) => answer.spread.gap.map(|gap| (x(first.far), x(second.near), gap)),
        (first, _) => first.map(|first| (left, x(first.near), answer.spread.end_gap)),
    };
    paper(
        say("spacing-picture"),
        160.0,
        html! {
            <>
                if let Some((from, to, gap)) = gap { { across(from, to, 24.0, show.on_drawing(gap)) } }
                { line((left, foot), (right, foot), Ink::Soft) }
                { for answer.pieces.iter().map(|one| if answer.width.is_zero() {
                    line((x(one.near), top), (x(one.near), foot), Ink::Outline)
                } else {
                    rect(x(one.near), top, scale.length(answer.width.as_mm()), foot - top, Ink::Cut)
                }) }
                { rect(left, stick, right - left, below - stick, Ink::Wood) }
                { for answer.pieces.iter().flat_map(|one| [one.near, one.far]).map(|mark| {
                    line((x(mark), stick), (x(mark), below), Ink::Blue)
                }) }
                { across(left, right, below + 20.0, show.on_drawing(answer.length)) }
            </>
        },
    )
}

impl CardView for Spacing {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "spacing";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("spacing-title")
    }

    fn also_called() -> AttrValue {
        say("spacing-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn fields(fields: &Fields<Self>) -> Html {
        let inputs = fields.inputs();
        html! {
            <>
                { fields.length("spacing-length", |inputs| &mut inputs.length) }
                { fields.length("spacing-width", |inputs| &mut inputs.width) }
                { fields.choice("spacing-by", |inputs| &mut inputs.by, vec![
                    (By::Count, say("spacing-by-count")),
                    (By::LargestGap, say("spacing-by-largest-gap")),
                ]) }
                if inputs.by == By::Count {
                    { fields.figure("spacing-count", "", |inputs| &mut inputs.count) }
                } else {
                    { fields.length("spacing-largest-gap", |inputs| &mut inputs.largest_gap) }
                }
                { fields.choice("spacing-even", |inputs| &mut inputs.even, vec![
                    (Even::Gaps, say("spacing-even-gaps")),
                    (Even::Centres, say("spacing-even-centres")),
                ]) }
                { fields.choice("spacing-ends", |inputs| &mut inputs.ends, vec![
                    (Ends::Gap, say("spacing-ends-gap")),
                    (Ends::Half, say("spacing-ends-half")),
                    (Ends::Piece, say("spacing-ends-piece")),
                    (Ends::Own, say("spacing-ends-own")),
                ]) }
                if inputs.ends == Ends::Own {
                    { fields.length("spacing-end", |inputs| &mut inputs.end) }
                }
                { fields.length("spacing-datum", |inputs| &mut inputs.datum) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let Spread { count, gap, pitch, end_gap } = answer.spread;
        let mut main = Vec::with_capacity(3);
        if inputs.by == By::LargestGap {
            main.push(Line::new(say("spacing-number"), Shown::words(count.to_string())));
        }
        match (gap, pitch) {
            (Some(gap), Some(pitch)) => {
                main.push(Line::new(say("spacing-gap"), show.length(gap)));
                main.push(Line::new(say("spacing-pitch"), show.length(pitch)));
            }
            _ => main.push(Line::new(say("spacing-end-gap"), show.length(end_gap))),
        }
        let mut groups = marks(answer, show);
        groups.push(gaps(answer, show));
        groups.extend(beside(answer, show));
        Reply { main, glance: None, verdict: verdict(answer, show), groups }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let (width, length) = (show.on_drawing(answer.width), show.on_drawing(answer.length));
        let count = answer.spread.count.to_string();
        say_with("spacing-given", [("count", count.into()), ("width", width.into()), ("length", length.into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
