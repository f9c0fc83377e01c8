//! Back panel card: the opening and its edges in, the panel out.

use super::{CardView, Stage};
use crate::pictures::{Anchor, Ink, Place, Scale, across, line, paper, rect, text, upright};
use crate::show::{Show, Shown};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::back_panel::{
    Across, Answer, Division, Hold, Inputs, Seams, Side, Verdict as Stands, Way, solve,
};
use scantling::caution::Caution;
use scantling::measure::{Length, Range};
use scantling::problem::Problems;
use scantling::stock::movement::Sheet;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct BackPanel;

fn way(fields: &Fields<BackPanel>, id: &'static str, lens: fn(&mut Inputs) -> &mut Way) -> Html {
    let words = |way| match way {
        Way::Groove => say("back-panel-way-groove"),
        Way::Rabbet => say("back-panel-way-rabbet"),
        Way::PastEdge => say("back-panel-way-past-edge"),
        Way::HeldShort => say("back-panel-way-held-short"),
    };
    fields.choice(id, lens, Way::ALL.iter().map(|way| (*way, words(*way))).collect())
}

fn division_fields(fields: &Fields<BackPanel>) -> Html {
    let divided = fields.inputs().division != Division::Whole;
    html! {
        <>
            { fields.choice("back-panel-division", |inputs| &mut inputs.division, vec![
                (Division::Whole, say("back-panel-division-whole")),
                (Division::Equal, say("back-panel-division-equal")),
                (Division::Scraps, say("back-panel-division-scraps")),
            ]) }
            if fields.inputs().division == Division::Equal {
                { fields.figure("back-panel-count", "", |inputs| &mut inputs.count) }
            }
            if fields.inputs().division == Division::Scraps {
                { fields.lines("back-panel-scraps", |inputs| &mut inputs.scraps, &[]) }
                { fields.length("back-panel-least-piece", |inputs| &mut inputs.least_piece) }
            }
            if divided {
                { fields.choice("back-panel-seams", |inputs| &mut inputs.seams, vec![
                    (Seams::Vertical, say("back-panel-seams-vertical")),
                    (Seams::Horizontal, say("back-panel-seams-horizontal")),
                ]) }
            }
        </>
    }
}

fn verdict(answer: &Answer) -> Verdict {
    let (tone, words) = match answer.verdict {
        Stands::DoesNotGoIn => (Tone::Over, say("back-panel-does-not-go-in")),
        Stands::FallsOut => (Tone::Over, say("back-panel-falls-out")),
        Stands::Binds => (Tone::Over, say("back-panel-binds")),
        Stands::Short => (Tone::Mind, say("back-panel-short")),
        Stands::Good => (Tone::Good, say("back-panel-good")),
    };
    Verdict { tone, words }
}

fn side_line(label: AttrValue, side: &Side, hold: Hold, show: Show) -> Option<Line> {
    let engagement = side.engagement_mm?;
    let tone = match hold {
        Hold::FallsOut if engagement <= 0.0 => Tone::Over,
        _ => Tone::Plain,
    };
    Some(Line::new(label, show.fine_mm(engagement)).toned(tone))
}

fn range_line(label: &str, range: Range, show: Show) -> Option<Line> {
    let pair = Shown::joined([show.length(range.low()), show.length(range.high())], " – ");
    (!range.tolerance().is_zero()).then(|| Line::new(say(label), Shown { cost: None, ..pair }))
}

fn movement(label: &str, across: &Across, show: Show) -> Group {
    let mut lines = Vec::new();
    lines.extend(range_line("back-panel-worst", across.size, show));
    if let Some(largest) = across.largest {
        lines.push(Line::new(say("back-panel-largest"), show.length(largest)));
    }
    if let Some(spare) = across.wet_spare_mm {
        let tone = if spare < 0.0 { Tone::Over } else { Tone::Plain };
        lines.push(Line::new(say("back-panel-wet-spare"), show.fine_mm(spare)).toned(tone));
    }
    let (first, second) = if label == "back-panel-width" {
        (say("back-panel-bears-left"), say("back-panel-bears-right"))
    } else {
        (say("back-panel-bears-bottom"), say("back-panel-bears-top"))
    };
    lines.extend(side_line(first, &across.first, across.hold, show));
    lines.extend(side_line(second, &across.second, across.hold, show));
    if let Some(depth) = across.depth_wanted_mm {
        lines.push(Line::new(say("back-panel-depth-wanted"), show.length_mm(depth)).toned(Tone::Mind));
    }
    Group { title: say(label), lines }
}

fn pieces(answer: &Answer, show: Show) -> Option<Group> {
    let pieces = &answer.pieces;
    if pieces.list.len() < 2 && pieces.missing.is_zero() {
        return None;
    }
    let mut lines = Vec::new();
    for (index, piece) in pieces.list.iter().enumerate() {
        let number = (index + 1).to_string();
        let label = match piece.scrap {
            Some(scrap) => say_with(
                "back-panel-piece-of-scrap",
                [("number", number.into()), ("scrap", (scrap + 1).to_string().into())],
            ),
            None => say_with("back-panel-piece", [("number", number.into())]),
        };
        lines.push(Line::new(label, show.length(piece.width)));
    }
    for seam in &pieces.seams_at {
        lines.push(Line::new(say("back-panel-seam"), show.length(*seam)));
    }
    if !pieces.missing.is_zero() {
        lines.push(Line::new(say("back-panel-missing"), show.length(pieces.missing)).toned(Tone::Over));
    }
    if !pieces.left_over.is_zero() {
        lines.push(Line::new(say("back-panel-left-over"), show.length(pieces.left_over)));
    }
    if pieces.sliver {
        lines
            .push(Line::new(say("back-panel-sliver"), Shown::words(say("back-panel-sliver-advice"))).toned(Tone::Mind));
    }
    Some(Group { title: say("back-panel-pieces"), lines })
}

fn squareness(answer: &Answer, show: Show) -> Group {
    let square = &answer.squareness;
    let mut lines = vec![Line::new(say("back-panel-diagonal"), show.length_mm(square.diagonal_mm))];
    if let Some(lean) = &square.lean {
        lines.push(Line::new(say("back-panel-lean-height"), show.fine_mm(lean.over_height_mm.abs())));
        lines.push(Line::new(say("back-panel-lean-width"), show.fine_mm(lean.over_width_mm.abs())));
        let (tone, words) = if lean.goes_in {
            (Tone::Good, say("back-panel-lean-fits"))
        } else {
            (Tone::Over, say("back-panel-lean-too-much"))
        };
        lines.push(Line::new(say("back-panel-lean-verdict"), Shown::words(words)).toned(tone));
    }
    Group { title: say("back-panel-squareness"), lines }
}

/// One of the four parts around the opening, drawn as the section through it with its groove, rabbet or plain edge.
fn section(side: &Side, face: f64, outwards: f64, place: (f64, f64), scale: &Scale) -> Html {
    // The part is drawn as thick as the housing plus half of it again, so that a groove never cuts it through.
    let reach = side.reach.nominal().as_mm();
    let thick = scale.length((reach.abs() * 2.0).max(18.0)) * outwards;
    let (top, bottom) = place;
    let (left, right) = (face.min(face + thick), face.max(face + thick));
    rect(left, top, right - left, bottom - top, Ink::Wood)
}

fn picture(answer: &Answer, show: Show) -> Html {
    let (width, height) = (&answer.width, &answer.height);
    let mm = |length: Length| length.as_mm();
    let (open_w, open_h) = (mm(width.opening.nominal()), mm(height.opening.nominal()));
    let margin = [&width.first, &width.second, &height.first, &height.second]
        .iter()
        .map(|side| (side.reach.nominal().as_mm().abs() * 2.0).max(18.0))
        .fold(0.0, f64::max);
    let place = Place { x: 70.0, y: 8.0, width: 220.0, height: 152.0 };
    let scale = Scale::fit(open_w + 2.0 * margin, open_h + 2.0 * margin, place);
    let (x0, x1) = (scale.x(margin), scale.x(margin + open_w));
    let (y0, y1) = (scale.y(margin), scale.y(margin + open_h));
    let (outer_top, outer_bottom) = (scale.y(2.0 * margin + open_h), scale.y(0.0));
    let panel_x = scale.x(margin + mm(width.starts_at));
    let panel_y = scale.y(margin + mm(height.starts_at));
    let panel_w = scale.length(mm(width.size.nominal()));
    let panel_h = scale.length(mm(height.size.nominal()));
    let seams = answer.pieces.seams_at.iter().map(|seam| match answer.pieces.seams {
        Seams::Vertical => {
            let x = panel_x + scale.length(mm(*seam));
            line((x, panel_y), (x, panel_y - panel_h), Ink::Outline)
        }
        Seams::Horizontal => {
            let y = panel_y - scale.length(mm(*seam));
            line((panel_x, y), (panel_x + panel_w, y), Ink::Outline)
        }
    });
    let sizes = Shown::joined([show.length(width.size.nominal()), show.length(height.size.nominal())], " × ");
    paper(
        say("back-panel-picture"),
        212.0,
        html! {
            <>
                { section(&width.first, x0, -1.0, (outer_top, outer_bottom), &scale) }
                { section(&width.second, x1, 1.0, (outer_top, outer_bottom), &scale) }
                { rect(x0, y1 - (y1 - outer_top).abs(), x1 - x0, (y1 - outer_top).abs(), Ink::Wood) }
                { rect(x0, y0, x1 - x0, (outer_bottom - y0).abs(), Ink::Wood) }
                { rect(panel_x, panel_y - panel_h, panel_w, panel_h, Ink::Panel) }
                { rect(x0, y1, x1 - x0, y0 - y1, Ink::Dashed) }
                { for seams }
                { across(x0, x1, outer_bottom + 16.0, show.on_drawing(width.opening.nominal())) }
                { upright(y0, y1, 40.0, show.on_drawing(height.opening.nominal())) }
                { text((180.0, 208.0), crate::show::plain(&sizes.main), Anchor::Middle, Ink::Red) }
            </>
        },
    )
}

impl CardView for BackPanel {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "back-panel";
    const STAGE: Stage = Stage::Size;

    fn title() -> AttrValue {
        say("back-panel-title")
    }

    fn also_called() -> AttrValue {
        say("back-panel-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn fields(fields: &Fields<Self>) -> Html {
        let sheet = |sheet| match sheet {
            Sheet::Plywood => say("back-panel-sheet-plywood"),
            Sheet::Mdf => say("back-panel-sheet-mdf"),
            Sheet::Particleboard => say("back-panel-sheet-particleboard"),
            Sheet::Hardboard => say("back-panel-sheet-hardboard"),
            Sheet::Own => say("back-panel-sheet-own"),
        };
        let inputs = fields.inputs();
        html! {
            <>
                { fields.range("back-panel-opening-width", |inputs| &mut inputs.opening_width) }
                { fields.range("back-panel-opening-height", |inputs| &mut inputs.opening_height) }
                { fields.group(say("back-panel-edges"), html! {
                    <>
                        { way(fields, "back-panel-left-way", |inputs| &mut inputs.left.way) }
                        { fields.range("back-panel-left-depth", |inputs| &mut inputs.left.depth) }
                        { way(fields, "back-panel-right-way", |inputs| &mut inputs.right.way) }
                        { fields.range("back-panel-right-depth", |inputs| &mut inputs.right.depth) }
                        { way(fields, "back-panel-top-way", |inputs| &mut inputs.top.way) }
                        { fields.range("back-panel-top-depth", |inputs| &mut inputs.top.depth) }
                        { way(fields, "back-panel-bottom-way", |inputs| &mut inputs.bottom.way) }
                        { fields.range("back-panel-bottom-depth", |inputs| &mut inputs.bottom.depth) }
                    </>
                }) }
                { fields.length("back-panel-clearance", |inputs| &mut inputs.clearance) }
                { fields.length("back-panel-least-engagement", |inputs| &mut inputs.least_engagement) }
                { fields.choice("back-panel-sheet", |inputs| &mut inputs.sheet,
                    Sheet::ALL.iter().map(|one| (*one, sheet(*one))).collect()) }
                if inputs.sheet == Sheet::Own {
                    { fields.figure("back-panel-strain", "%", |inputs| &mut inputs.strain) }
                } else {
                    { fields.figure("back-panel-swing", "%", |inputs| &mut inputs.swing) }
                }
                { division_fields(fields) }
                { fields.group(say("back-panel-diagonals"), html! {
                    <>
                        { fields.length("back-panel-first-diagonal", |inputs| &mut inputs.first_diagonal) }
                        { fields.length("back-panel-second-diagonal", |inputs| &mut inputs.second_diagonal) }
                    </>
                }) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(_: &Inputs, answer: &Answer, show: Show) -> Reply {
        let mut groups = vec![
            movement("back-panel-width", &answer.width, show),
            movement("back-panel-height", &answer.height, show),
        ];
        groups.extend(pieces(answer, show));
        groups.push(squareness(answer, show));
        Reply {
            main: vec![
                Line::new(say("back-panel-width"), show.length(answer.width.size.nominal())),
                Line::new(say("back-panel-height"), show.length(answer.height.size.nominal())),
            ],
            verdict: Some(verdict(answer)),
            glance: Some(Shown::joined(
                [show.length(answer.width.size.nominal()), show.length(answer.height.size.nominal())],
                " × ",
            )),
            groups,
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        let opening = Shown::joined(
            [show.length(answer.width.opening.nominal()), show.length(answer.height.opening.nominal())],
            " × ",
        );
        say_with("back-panel-given", [("opening", crate::show::plain(&opening.main).into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
