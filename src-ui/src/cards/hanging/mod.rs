//! Hanging card: panels, contents and fixings in; weight, lift, and whether it holds, out.

mod fields;
mod picture;

use super::{CardView, Stage};
use crate::settings::Settings;
use crate::show::{Show, Shown, figures, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::hanging::{Answer, Holds, Inputs, Lift, TiltsUp, Weighed, What, solve};
use scantling::caution::Caution;
use scantling::measure::{Measure, Reading};
use scantling::problem::Problems;
use scantling::stock::fixings::Screw;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Hanging;

fn screw_words(screw: Screw) -> AttrValue {
    match screw {
        Screw::No6 => say("hanging-screw-6"),
        Screw::No8 => say("hanging-screw-8"),
        Screw::No10 => say("hanging-screw-10"),
        Screw::No12 => say("hanging-screw-12"),
        Screw::No14 => say("hanging-screw-14"),
        Screw::Own => say("hanging-screw-own"),
    }
}

fn percent(share: Option<f64>) -> String {
    share.map_or_else(|| "–".to_owned(), |share| figures(share * 100.0, 3))
}

fn verdict(answer: &Answer) -> Verdict {
    let used = percent(answer.each.used);
    let (tone, words) = match (answer.holds, answer.would.count) {
        (Holds::Yes, _) => (Tone::Good, say_with("hanging-holds", [("used", used.into())])),
        (Holds::TooMuch, Some(count)) => {
            let values = [("used", used.into()), ("count", count.into())];
            (Tone::Over, say_with("hanging-too-much", values))
        }
        (Holds::TooMuch, None) => (Tone::Over, say_with("hanging-far-too-much", [("used", used.into())])),
        (Holds::TooFewStuds(studs), _) => (Tone::Over, say_with("hanging-few-studs", [("studs", studs.into())])),
        (Holds::NoGrip, _) => (Tone::Over, say("hanging-no-grip")),
    };
    Verdict { tone, words }
}

/// What would make it hold, each by itself; nothing where it holds.
fn would(answer: &Answer, show: Show) -> Option<Group> {
    if answer.holds == Holds::Yes {
        return None;
    }
    let mut lines = Vec::new();
    if let Some(count) = answer.would.count {
        lines.push(Line::new(say("hanging-would-count"), Shown::words(count.to_string())));
    }
    if let Some(length) = answer.would.length_mm {
        lines.push(Line::new(say("hanging-would-length"), show.length_mm(length)));
    }
    if let Some(screw) = answer.would.screw {
        lines.push(Line::new(say("hanging-would-screw"), Shown::words(screw_words(screw))));
    }
    if lines.is_empty() {
        lines.push(Line::new(say("hanging-would-none"), Shown::words(say("hanging-would-none-advice"))));
    }
    Some(Group { title: say("hanging-would"), lines })
}

fn fixings(answer: &Answer, show: Show) -> Group {
    let newtons = |value: f64| show.estimate(value, Measure::N);
    let of = |value: f64, most: f64| Shown {
        cost: Some(say_with("hanging-of", [("most", plain(&newtons(most).main).into())])),
        ..newtons(value)
    };
    let (each, allowed) = (&answer.each, &answer.allowed);
    let mut lines = vec![
        Line::new(say("hanging-each-pull"), of(each.pull_n, allowed.pull_n)),
        Line::new(say("hanging-each-shear"), of(each.shear_n, allowed.shear_n)),
    ];
    if let Some(in_stud) = allowed.in_stud_mm {
        lines.push(Line::new(say("hanging-in-stud"), show.length_mm(in_stud)));
    }
    if let Some(comes_out) = allowed.comes_out_n {
        lines.push(Line::new(say("hanging-comes-out"), newtons(comes_out)));
    }
    if each.used_squared.is_some() {
        let squares = Shown::words(say_with("hanging-percent", [("used", percent(each.used_squared).into())]));
        lines.push(Line::new(say("hanging-squares"), squares));
    }
    Group { title: say("hanging-each"), lines }
}

fn marks(answer: &Answer, show: Show) -> Group {
    let line = |mark: &scantling::cards::hanging::Mark| {
        Line::new(say_with("hanging-mark", [("count", mark.fixings.into())]), show.length(mark.at))
    };
    Group { title: say("hanging-marks"), lines: answer.marks.iter().map(line).collect() }
}

fn wall(answer: &Answer, show: Show) -> Group {
    let pull = &answer.pull;
    let newtons = |value: f64| show.estimate(value, Measure::N);
    let mut lines = vec![Line::new(say("hanging-lever"), newtons(pull.lever_n))];
    if let Some(wedge) = pull.wedge_n {
        lines.push(Line::new(say("hanging-wedge"), newtons(wedge)));
        let times = say_with("hanging-times", [("times", figures(pull.prying, 3).into())]);
        lines.push(Line::new(say("hanging-prying"), Shown::words(times)));
    }
    Group { title: say("hanging-wall"), lines }
}

fn masses(weighed: &Weighed, show: Show) -> Group {
    let kg = |value: f64| show.estimate(value, Measure::Kg);
    let words = |what: What| match what {
        What::Cabinet => say("hanging-part-cabinet"),
        What::Sides => say("hanging-part-sides"),
        What::TopAndBottom => say("hanging-part-top-and-bottom"),
        What::Back => say("hanging-part-back"),
        What::Shelves => say("hanging-part-shelves"),
        What::Doors => say("hanging-part-doors"),
        What::Contents => say("hanging-part-contents"),
    };
    let mut lines: Vec<Line> = weighed.parts.iter().map(|part| Line::new(words(part.what), kg(part.kg))).collect();
    lines.push(Line::new(say("hanging-empty"), kg(weighed.cabinet_kg)));
    if weighed.open.is_some() {
        lines.push(Line::new(say("hanging-centre-shut"), show.length_mm(weighed.shut.out_mm)));
    }
    lines.push(Line::new(say("hanging-centre-up"), show.length_mm(weighed.shut.up_mm)));
    Group { title: say("hanging-masses"), lines }
}

fn people(count: Option<u32>) -> (Shown, Tone) {
    match count {
        Some(count) => (Shown::words(say_with("hanging-people", [("count", count.into())])), Tone::Plain),
        None => (Shown::words(say("hanging-nobody")), Tone::Over),
    }
}

fn by_hand(lift: &Lift, weighed: &Weighed, show: Show) -> Group {
    let kg = |value: f64| show.estimate(value, Measure::Kg);
    let crew = |label: &str, count: Option<u32>| {
        let (shown, tone) = people(count);
        Line::new(say(label), shown).toned(tone)
    };
    let mut lines = vec![
        Line::new(say("hanging-bare"), kg(weighed.bare_kg)),
        crew("hanging-people-bare", lift.people_bare),
        crew("hanging-people-whole", lift.people_whole),
    ];
    for one in &lift.crews {
        let label = say_with("hanging-crew", [("count", one.people.into())]);
        let index = say_with("hanging-index", [("index", figures(one.bare_index, 3).into())]);
        lines.push(Line::new(label, Shown { cost: Some(index), ..kg(one.limit_kg) }));
    }
    Group { title: say("hanging-lift"), lines }
}

fn tilt(answer: &Answer, show: Show) -> Group {
    let tilt = &answer.tilt;
    let mut lines = vec![Line::new(say("hanging-diagonal"), show.length_mm(tilt.diagonal_mm))];
    match tilt.tilts_up {
        TiltsUp::Clears(spare) => {
            lines.push(Line::new(say("hanging-clears"), show.length_mm(spare)).toned(Tone::Good));
        }
        TiltsUp::Strikes(missing) => {
            lines.push(Line::new(say("hanging-strikes"), show.length_mm(missing)).toned(Tone::Over));
        }
        TiltsUp::Unknown => {}
    }
    if let Some(highest) = tilt.highest_mm {
        lines.push(Line::new(say("hanging-highest"), show.length_mm(highest)));
    }
    Group { title: say("hanging-tilt"), lines }
}

fn notes(answer: &Answer) -> Option<Group> {
    let line = |note: &scantling::cards::hanging::Note| {
        Line::new(say("hanging-note"), Shown::words(note.to_string())).toned(Tone::Mind)
    };
    let lines: Vec<Line> = answer.notes.iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("hanging-notes"), lines })
}

impl CardView for Hanging {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "hanging";
    const STAGE: Stage = Stage::Hang;
    const CAUTIONS_FIRST: bool = true;

    fn title() -> AttrValue {
        say("hanging-title")
    }

    fn also_called() -> AttrValue {
        say("hanging-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { thickness: Reading::default(), strip: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        for reading in [&mut inputs.thickness, &mut inputs.strip] {
            if reading.is_blank() {
                *reading = settings.sheet.clone();
            }
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        fields::all(fields)
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture::picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let weighed = &answer.weighed;
        let mut groups = Vec::new();
        groups.extend(would(answer, show));
        groups.extend([fixings(answer, show), marks(answer, show), wall(answer, show)]);
        groups.extend([masses(weighed, show), by_hand(&answer.lift, weighed, show), tilt(answer, show)]);
        groups.extend(notes(answer));
        Reply {
            main: vec![
                Line::new(say("hanging-total"), show.estimate(weighed.total_kg, Measure::Kg)),
                Line::new(say("hanging-centre"), show.length_mm(weighed.worst().out_mm)),
            ],
            verdict: Some(verdict(answer)),
            glance: None,
            groups,
        }
    }

    fn given(_: &Inputs, answer: &Answer, _: Show) -> AttrValue {
        say_with("hanging-given", [("count", answer.count.into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
