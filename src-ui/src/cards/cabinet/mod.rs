//! Cabinet card: a dozen measurements in; every part, hole and fitting, what fits and holds, and the order of work out.

mod costs;
mod drawings;
mod fields;
mod parts;
mod picture;
mod sheet;
mod sizes;
mod work;

pub use sheet::ShopSheet;

use super::{CardView, Stage};
use crate::jobs::about;
use crate::route::Route;
use crate::settings::Settings;
use crate::show::{Show, Shown};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cabinet::{Cabinet as Answer, Clash, Fit, Fitted, Fitting, Inputs, handed, solve};
use scantling::cards::back_panel;
use scantling::cards::cup_hinge::{Mounting, Note};
use scantling::cards::groove::Verdict as GrooveVerdict;
use scantling::cards::hanging::Holds;
use scantling::cards::joints::{Kind, Stays};
use scantling::cards::wall_cleat::Lifts;
use scantling::caution::Caution;
use scantling::measure::{Length, Measure, Reading};
use scantling::problem::Problems;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct Cabinet;

fn clash(clash: &Clash, answer: &Answer, show: Show) -> AttrValue {
    match *clash {
        Clash::PlateOnShelf { bay, shelf } => {
            say_with("cabinet-clash-plate", [("bay", bay.into()), ("shelf", shelf.into())])
        }
        Clash::NoHole { bay, shelf } => say_with("cabinet-clash-hole", [("bay", bay.into()), ("shelf", shelf.into())]),
        Clash::PlatesBackToBack { after } => say_with("cabinet-clash-back", [("bay", after.into())]),
        Clash::RailInDoorsWay { bay, missing } => {
            let missing = show.on_drawing(missing);
            say_with("cabinet-clash-rail", [("bay", bay.into()), ("missing", missing.into())])
        }
        Clash::RailTooLow { bay, missing } => {
            let missing = show.on_drawing(missing);
            say_with("cabinet-clash-rail-low", [("bay", bay.into()), ("missing", missing.into())])
        }
        Clash::JointsMeet { board } => {
            let board = answer.parts.get(board).map(|part| parts::name(part.what)).unwrap_or_default();
            say_with("cabinet-clash-joints", [("board", board.as_str().into())])
        }
        Clash::WallScrewOnUpright { at } => say_with("cabinet-clash-wall-screw", [("at", show.on_drawing(at).into())]),
        Clash::LargerThanSheet { part } => {
            let part = answer.parts.get(part).map(|part| parts::name(part.what)).unwrap_or_default();
            say_with("cabinet-clash-sheet", [("part", part.as_str().into())])
        }
        Clash::DoorStrikes { bay, missing } => {
            let missing = show.on_drawing(missing);
            say_with("cabinet-clash-door", [("bay", bay.into()), ("missing", missing.into())])
        }
        Clash::OutsideInDoorsWay { bay } => say_with("cabinet-clash-outside", [("bay", bay.into())]),
        Clash::BracketsMeetHooks => say("cabinet-clash-brackets"),
        Clash::BracketMeetsHole => say("cabinet-clash-bracket"),
        Clash::NothingUnder => say("cabinet-clash-under"),
        Clash::PastRoom { by } => say_with("cabinet-clash-room", [("by", show.on_drawing(by).into())]),
    }
}

/// What is wrong with it, the worst first; each in a few words.
fn wrongs(answer: &Answer, show: Show) -> Vec<AttrValue> {
    let mut wrongs = Vec::new();
    if answer.hang.as_ref().is_some_and(|hang| hang.holds != Holds::Yes) {
        wrongs.push(say("cabinet-wrong-wall"));
    }
    if answer.shelves.iter().any(|shelf| !shelf.answer.holds) {
        wrongs.push(say("cabinet-wrong-shelf"));
    }
    if answer.outside.as_ref().is_some_and(|shelf| !shelf.answer.holds) {
        wrongs.push(say("cabinet-wrong-outside"));
    }
    if answer.rail.as_ref().is_some_and(|rail| !rail.holds) {
        wrongs.push(say("cabinet-wrong-rail"));
    }
    if answer.fits.iter().any(|fit| !fit.fits) || answer.back.verdict != back_panel::Verdict::Good {
        wrongs.push(say("cabinet-wrong-fit"));
    }
    if answer.groove.as_ref().is_some_and(|groove| groove.verdict == GrooveVerdict::TooDeep) {
        wrongs.push(say("cabinet-wrong-groove"));
    }
    for join in answer.joins.iter().filter(|join| join.marks.stays != Stays::Inside) {
        wrongs.push(say_with("cabinet-wrong-joint", [("joint", parts::joint_name(answer, join).into())]));
    }
    if let Some(Lifts::Not(missing)) = answer.cleat.as_ref().map(|cleat| cleat.lifts) {
        wrongs.push(say_with("cabinet-wrong-lift", [("missing", show.on_drawing(missing).into())]));
    }
    for note in answer.doors.iter().flat_map(|door| &door.answer.notes).filter(|note| is_wrong(**note)) {
        let words = AttrValue::from(note.to_string());
        if !wrongs.contains(&words) {
            wrongs.push(words);
        }
    }
    wrongs.extend(answer.clashes.iter().map(|one| clash(one, answer, show)));
    wrongs
}

/// Whether a door cannot be hung so; the other notes are for a thought.
const fn is_wrong(note: Note) -> bool {
    matches!(note, Note::PlateBelowZero | Note::DoorsTouch | Note::InsetTouches | Note::TooWide | Note::PlateOutside)
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    let wrongs = wrongs(answer, show);
    match wrongs.as_slice() {
        [] => Verdict { tone: Tone::Good, words: say("cabinet-good") },
        [one] => Verdict { tone: Tone::Over, words: one.clone() },
        [first, rest @ ..] => {
            let more = u32::try_from(rest.len()).unwrap_or(u32::MAX);
            let words = say_with("cabinet-wrongs", [("first", first.as_str().into()), ("more", more.into())]);
            Verdict { tone: Tone::Over, words }
        }
    }
}

fn in_the_way(answer: &Answer, show: Show) -> Option<Group> {
    let line = |words: AttrValue| Line::new(words, Shown::words(say("cabinet-change"))).toned(Tone::Over);
    let lines: Vec<Line> = wrongs(answer, show).into_iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("cabinet-in-the-way"), lines })
}

fn sizes(answer: &Answer, show: Show) -> Group {
    let three = |sides: [Length; 3]| Shown::joined(sides.map(|side| show.length(side)), " × ");
    let inside = [answer.inside_width.nominal(), answer.inside_height.nominal(), answer.inside_depth];
    let mut lines = vec![
        Line::new(say("cabinet-outside"), three([answer.width, answer.height, answer.depth])),
        Line::new(say("cabinet-inside"), three(inside)),
    ];
    let front = answer.doors.iter().filter_map(|door| door.place.to[1].minus(answer.depth).ok()).max();
    if let Some(over_all) = front.filter(|front| front.is_positive()).and_then(|front| answer.depth.plus(front).ok()) {
        lines.push(Line::new(say("cabinet-with-doors"), show.length(over_all)));
    }
    if let Some((from, to)) = answer.bays.first().filter(|_| answer.bays.len() > 1)
        && let Ok(bay) = to.minus(*from)
    {
        lines.push(Line::new(say("cabinet-bay"), show.length(bay)));
    }
    lines.push(Line::new(say("cabinet-weight"), show.estimate(answer.weight_kg, Measure::Kg)));
    Group { title: say("cabinet-sizes"), lines }
}

fn fitted(what: Fitted) -> AttrValue {
    say(match what {
        Fitted::InRoomAcross => "cabinet-fit-room-across",
        Fitted::InRoomUp => "cabinet-fit-room-up",
        Fitted::BackInGroove => "cabinet-fit-groove",
        Fitted::BackAcross => "cabinet-fit-across",
        Fitted::BackUp => "cabinet-fit-up",
        Fitted::Shelves => "cabinet-fit-shelves",
        Fitted::DoorGaps => "cabinet-fit-doors",
    })
}

/// The input's name on the screen.
fn measured(field: &str) -> AttrValue {
    say(match field {
        "height" => "cabinet-height",
        "carcass.thickness" => "cabinet-carcass-thickness",
        "back_board.thickness" => "cabinet-back_board-thickness",
        _ => "cabinet-width",
    })
}

fn fits(answer: &Answer, show: Show) -> Group {
    let line = |fit: &Fit| {
        // A tape has no marks for most of these.
        let room = Shown::joined([fit.least, fit.most].map(|room| show.fine_mm(room.as_mm())), " – ");
        let again = fit.again.map(|field| say_with("cabinet-again", [("what", measured(field).as_str().into())]));
        let tone = if fit.fits { Tone::Plain } else { Tone::Over };
        Line::new(fitted(fit.what), Shown { cost: again, ..room }).toned(tone)
    };
    Group { title: say("cabinet-fits"), lines: answer.fits.iter().map(line).collect() }
}

fn fitting(what: Fitting, show: Show) -> AttrValue {
    match what {
        Fitting::Hinge { mounting, plate } => {
            let door = say(match mounting {
                Mounting::Full => "cup-hinge-mounting-full",
                Mounting::Half => "cup-hinge-mounting-half",
                Mounting::Inset => "cup-hinge-mounting-inset",
            });
            say_with("cabinet-hinge", [("door", door.as_str().into()), ("plate", show.hardware(plate).into())])
        }
        Fitting::ShelfPin => say("cabinet-pin"),
        Fitting::Joint { kind, across, length } => joint_sized(kind, across, length, show),
        Fitting::WallFixing => say("cabinet-wall-fixing"),
        Fitting::RailSocket => say("cabinet-rail-socket"),
        Fitting::Rail { length } => say_with("cabinet-rail-tube", [("length", show.on_drawing(length).into())]),
        Fitting::Leg => say("cabinet-leg"),
        Fitting::Hook => say("cabinet-hook"),
        Fitting::Bracket { arm, leg } => {
            let sizes = [("arm", show.on_drawing(arm).into()), ("leg", show.on_drawing(leg).into())];
            say_with("cabinet-bracket", sizes)
        }
        Fitting::Screw { length } => say_with("cabinet-screw", [("length", show.hardware(length).into())]),
    }
}

/// With the sizes by which it is bought, which may be inches.
fn joint_sized(kind: Kind, across: Length, length: Length, show: Show) -> AttrValue {
    let kind_words = joint(kind);
    let (kind_words, length, across) = (kind_words.as_str(), show.typed(length), show.typed(across));
    if kind.is_screw() {
        return say_with("cabinet-joint-screw-sized", [("joint", kind_words.into()), ("length", length.into())]);
    }
    let values = [("joint", kind_words.into()), ("across", across.into()), ("length", length.into())];
    say_with("cabinet-joint-sized", values)
}

fn joint(kind: Kind) -> AttrValue {
    say(match kind {
        Kind::Dowel => "cabinet-joint-dowel",
        Kind::LooseTenon => "cabinet-joint-tenon",
        Kind::Biscuit => "cabinet-joint-biscuit",
        Kind::ConnectingScrew => "cabinet-joint-screw",
        Kind::PocketScrew => "cabinet-joint-pocket",
    })
}

fn fittings(answer: &Answer, show: Show) -> Group {
    let line =
        |one: &scantling::cabinet::Fittings| Line::new(fitting(one.what, show), Shown::words(one.count.to_string()));
    let mut lines: Vec<Line> = answer.fittings.iter().map(line).collect();
    if let Some(edging) = answer.edging {
        lines.push(Line::new(say("cabinet-edging-length"), show.length(edging)));
    }
    Group { title: say("cabinet-fittings"), lines }
}

fn holds(answer: &Answer, show: Show) -> Option<Group> {
    let mut lines = Vec::new();
    for shelf in &answer.shelves {
        let tone = if shelf.answer.holds { Tone::Plain } else { Tone::Over };
        let sag = show.fine_mm(shelf.answer.long_term_mm);
        let span = show.on_drawing(shelf.answer.span);
        lines.push(Line::new(say_with("cabinet-shelf-sag", [("span", span.into())]), sag).toned(tone));
    }
    if let Some(shelf) = &answer.outside {
        let tone = if shelf.answer.holds { Tone::Plain } else { Tone::Over };
        lines.push(Line::new(say("cabinet-outside-sag"), show.fine_mm(shelf.answer.long_term_mm)).toned(tone));
        lines.push(Line::new(say("cabinet-bracket-carries"), show.estimate(shelf.bracket_kg, Measure::Kg)));
    }
    if let Some(rail) = &answer.rail {
        let tone = if rail.holds { Tone::Plain } else { Tone::Over };
        lines.push(Line::new(say("cabinet-rail-sag"), show.fine_mm(rail.long_term_mm)).toned(tone));
    }
    if let Some(hang) = &answer.hang {
        let (tone, words) = if hang.holds == Holds::Yes {
            (Tone::Plain, say("cabinet-wall-holds"))
        } else {
            (Tone::Over, say("cabinet-wrong-wall"))
        };
        let total = show.estimate(hang.weighed.total_kg, Measure::Kg);
        lines.push(Line::new(words, total).toned(tone));
    }
    (!lines.is_empty()).then(|| Group { title: say("cabinet-holds"), lines })
}

fn count(answer: &Answer) -> u32 {
    u32::try_from(answer.parts.len()).unwrap_or(u32::MAX)
}

impl CardView for Cabinet {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "cabinet";
    const STAGE: Stage = Stage::Size;
    const CAUTIONS_FIRST: bool = true;
    const HANDS_OVER: bool = true;

    fn title() -> AttrValue {
        say("cabinet-title")
    }

    fn also_called() -> AttrValue {
        say("cabinet-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs { kerf: Reading::default(), ..Inputs::default() }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        if inputs.kerf.is_blank() {
            inputs.kerf = settings.kerf.clone();
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! { <><p class="shop-open"><a href={Route::SHOP_SHEET}>{ say("shop-open") }</a></p>{ fields::all(fields) }</> }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture::picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let inside = [answer.inside_width.nominal(), answer.inside_height.nominal()].map(|side| show.length(side));
        let back = [answer.back.width.size.nominal(), answer.back.height.size.nominal()].map(|side| show.length(side));
        let main = vec![
            Line::new(say("cabinet-inside-short"), Shown::joined(inside, " × ")),
            Line::new(say("cabinet-back-short"), Shown::joined(back, " × ")),
        ];
        let mut groups: Vec<Group> = in_the_way(answer, show).into_iter().collect();
        groups.extend([sizes(answer, show), fits(answer, show)]);
        groups.extend(holds(answer, show));
        groups.push(fittings(answer, show));
        Reply { main, glance: None, verdict: Some(verdict(answer, show)), groups }
    }

    fn more(fields: &Fields<Self>, show: Show, at_saw: bool) -> Html {
        let Some(answer) = fields.answer() else { return Html::default() };
        if at_saw {
            return work::order(fields, show);
        }
        html! {
            <>
                { parts::cut_list(answer, show) }
                { parts::holes(answer, show) }
                { costs::folded(fields, show) }
                { drawings::folded(fields, show) }
                { work::folded(fields, answer, show) }
            </>
        }
    }

    fn hands_over(inputs: &Inputs, answer: &Answer) -> Vec<(&'static str, serde_json::Value)> {
        handed(inputs, answer)
    }

    fn given(inputs: &Inputs, answer: &Answer, _: Show) -> AttrValue {
        say_with("cabinet-given", [("size", about(inputs).into()), ("parts", count(answer).into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
