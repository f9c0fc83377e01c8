//! Convert card: any readings in, each on the marks of the tool in hand and on every other rule out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, line, paper, rect, text};
use crate::settings::Settings;
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone};
use crate::words::{say, say_with};
use scantling::cards::convert::{Answer, Inputs, Line as Converted, LineOutcome, solve};
use scantling::caution::Caution;
use scantling::measure::{Graduation, InchParts, Rounded, Rounding, Style, Unit};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Convert;

/// So many readings stand large; the others stand in the list.
const LARGE: usize = 2;
/// Marks of the ruler on either side of the reading.
const MARKS: i64 = 7;

fn typed(inputs: &Inputs, index: usize) -> AttrValue {
    inputs.readings.get(index).map_or_else(AttrValue::default, |reading| {
        let text = reading.typed().trim();
        if text.contains(|letter: char| letter.is_alphabetic() || "\"'″′".contains(letter)) {
            text.to_owned().into()
        } else {
            format!("{text} {}", reading.bare().sign()).into()
        }
    })
}

fn rounded(rounded: &Rounded) -> Shown {
    Shown { main: Show::rounded(rounded), cost: Some(Show::cost(rounded)), ..Shown::default() }
}

/// On the tool in hand, the exact length in millimetres or inches beside it.
fn chosen(line: &Converted, label: AttrValue, show: Show) -> Line {
    let inches = line.chosen.graduation.unit() == Unit::In;
    let exact = show.exact(line.length, !inches);
    let near = !inches && line.length.inch_parts().denominator > 64;
    Line::new(label, Shown { other: exact, near, lengths: vec![line.length], ..rounded(&line.chosen) })
}

fn ladder(line: &Converted, title: AttrValue) -> Group {
    let mut lines: Vec<Line> = line
        .ladder
        .iter()
        .map(|step| Line::new(say_with("convert-to", [("mark", mark(step.graduation).into())]), rounded(step)))
        .collect();
    let exact = if line.decimal_inches.exact { say("exact") } else { say("convert-rounded") };
    let decimal = Shown { cost: Some(exact), ..Shown::words(format!("{} in", line.decimal_inches.text)) };
    lines.push(Line::new(say("convert-decimal-inches"), decimal));
    let feet = Shown::words(line.feet_inches.value.show(Style::FeetInches));
    lines.push(Line::new(say("convert-feet-inches"), Shown { cost: Some(Show::cost(&line.feet_inches)), ..feet }));
    if let Some(sold) = &line.sold_as {
        let by = crate::show::figures(sold.difference.abs().as_mm(), 3);
        let key = match (sold.difference.is_negative(), sold.difference.is_zero()) {
            (_, true) => "convert-sold-exact",
            (true, _) => "convert-sold-under",
            (false, _) => "convert-sold-over",
        };
        let cost = say_with(key, [("mm", by.into())]);
        let also: Vec<String> =
            sold.also.iter().map(|name| plain(&crate::show::inch_parts(name.inch_parts()))).collect();
        let cost = if also.is_empty() {
            cost
        } else {
            say_with("convert-sold-also", [("cost", cost.as_str().into()), ("also", also.join(", ").into())])
        };
        let name = Shown { main: crate::show::inch_parts(sold.name.inch_parts()), ..Shown::default() };
        lines.push(Line::new(say("convert-sold-as"), Shown { cost: Some(cost), ..name }));
    }
    Group { title, lines }
}

fn mark(graduation: Graduation) -> String {
    let step = graduation.step();
    match graduation.unit() {
        Unit::In => plain(&crate::show::inch_parts(step.inch_parts())),
        _ => step.show(Style::Mm),
    }
}

/// Every so many marks a longer one, longest first, as on the tool itself.
fn longer_marks(graduation: Graduation) -> &'static [i64] {
    match graduation {
        Graduation::Half => &[2],
        Graduation::Quarter => &[4, 2],
        Graduation::Eighth => &[8, 4, 2],
        Graduation::Sixteenth => &[16, 8, 4, 2],
        Graduation::ThirtySecond => &[32, 16, 8, 4, 2],
        Graduation::SixtyFourth => &[64, 32, 16, 8, 4, 2],
        Graduation::Mm => &[10, 5],
        Graduation::HalfMm => &[20, 10, 2],
        Graduation::TenthMm => &[10, 5],
    }
}

fn picture(converted: &Converted) -> Html {
    let graduation = converted.chosen.graduation;
    let step = graduation.step();
    let at = converted.length.ratio(step).map_or(0.0, |marks| marks.as_f64());
    #[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation, reason = "a drawing needs no more")]
    let middle = at.floor() as i64;
    #[allow(clippy::cast_precision_loss, reason = "a handful of marks")]
    let scale = Scale::fit_width((2 * MARKS) as f64, Place { x: 16.0, y: 0.0, width: 328.0, height: 0.0 });
    #[allow(clippy::cast_precision_loss, reason = "marks near the middle")]
    let x = |mark: f64| scale.x(mark - middle as f64 + MARKS as f64 - 0.5);
    let (top, bottom) = (52.0, 116.0);
    let tiers = longer_marks(graduation);
    #[allow(clippy::cast_precision_loss, reason = "a handful of marks and tiers")]
    let marks = (middle - MARKS + 1..=middle + MARKS).map(|mark| {
        let tier = tiers.iter().position(|every| mark.rem_euclid(*every) == 0).unwrap_or(tiers.len());
        let height = 40.0 - 30.0 * tier as f64 / tiers.len().max(1) as f64;
        line((x(mark as f64), top), (x(mark as f64), top + height), Ink::Outline)
    });
    let label = |length: scantling::measure::Length| match graduation.unit() {
        Unit::In => {
            let parts: InchParts = length.inch_parts();
            plain(&crate::show::inch_parts(parts)).trim_end_matches(" in").to_owned()
        }
        _ => length.show(Style::Mm).trim_end_matches(" mm").to_owned(),
    };
    let below_at = converted.below.ratio(step).map_or(0.0, |marks| marks.as_f64());
    let above_at = converted.above.ratio(step).map_or(0.0, |marks| marks.as_f64());
    paper(
        say("convert-picture"),
        142.0,
        html! {
            <>
                { rect(8.0, top, 344.0, bottom - top, Ink::Wood) }
                { for marks }
                { text((x(below_at) - 3.0, bottom + 17.0), label(converted.below), Anchor::End, Ink::Blue) }
                { text((x(above_at) + 3.0, bottom + 17.0), label(converted.above), Anchor::Start, Ink::Blue) }
                { line((x(below_at), bottom - 12.0), (x(below_at), bottom + 8.0), Ink::Blue) }
                { line((x(above_at), bottom - 12.0), (x(above_at), bottom + 8.0), Ink::Blue) }
                { line((x(at), 28.0), (x(at), bottom - 14.0), Ink::Red) }
                { text((x(at), 20.0), converted.length.to_string(), Anchor::Middle, Ink::Red) }
            </>
        },
    )
}

fn first(answer: &Answer) -> Option<&Converted> {
    answer.lines.iter().find_map(LineOutcome::line)
}

impl CardView for Convert {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "convert";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("convert-title")
    }

    fn also_called() -> AttrValue {
        say("convert-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(settings: &Settings) -> Inputs {
        Inputs { graduation: settings.inch_graduation, rounding: settings.rounding, ..Inputs::default() }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        let refused: Vec<String> = fields
            .answer()
            .iter()
            .flat_map(|answer| &answer.lines)
            .filter_map(|line| match line {
                LineOutcome::Refused { index, problem } => {
                    let number = (index + 1).to_string();
                    Some(
                        say_with(
                            "convert-line-refused",
                            [("number", number.into()), ("problem", problem.to_string().into())],
                        )
                        .to_string(),
                    )
                }
                LineOutcome::Read(_) => None,
            })
            .collect();
        html! {
            <>
                { fields.lines("convert-readings", |inputs| &mut inputs.readings, &refused) }
                { fields.choice("convert-graduation", |inputs| &mut inputs.graduation,
                    Graduation::ALL.iter().map(|one| (*one, AttrValue::from(mark(*one)))).collect()) }
                { fields.choice("convert-rounding", |inputs| &mut inputs.rounding, vec![
                    (Rounding::Nearest, say("rounding-nearest")),
                    (Rounding::NotOver, say("rounding-not-over")),
                    (Rounding::NotUnder, say("rounding-not-under")),
                ]) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, _: Show) -> Html {
        first(answer).map(picture).unwrap_or_default()
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let read = || answer.lines.iter().filter_map(LineOutcome::line);
        let main = read().take(LARGE).map(|line| chosen(line, typed(inputs, line.index), show)).collect();
        let mut groups = Vec::new();
        if answer.lines.len() > 1 {
            let lines = answer.lines.iter().map(|outcome| match outcome {
                LineOutcome::Read(line) => chosen(line, typed(inputs, line.index), show),
                LineOutcome::Refused { index, problem } => {
                    Line::new(typed(inputs, *index), Shown::words(problem.to_string())).toned(Tone::Over)
                }
            });
            groups.push(Group { title: say("convert-all"), lines: lines.collect() });
        }
        groups.extend(read().take(12).map(|line| ladder(line, typed(inputs, line.index))));
        Reply { main, groups, ..Reply::default() }
    }

    fn given(inputs: &Inputs, answer: &Answer, _: Show) -> AttrValue {
        let reading = first(answer).map(|line| typed(inputs, line.index)).unwrap_or_default();
        say_with("convert-given", [("reading", reading.as_str().into()), ("mark", mark(inputs.graduation).into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
