//! Cup hinge card: three of overlay, plate, cup edge and arm in, the fourth out; and door, cups and plate holes.

use super::{CardView, Stage};
use crate::pictures::{Ink, Place, Scale, across, leader, line, paper, rect};
use crate::settings::Settings;
use crate::show::{Show, Shown, plain};
use crate::widgets::fields::Fields;
use crate::widgets::reply::{Group, Line, Reply, Tone, Verdict};
use crate::words::{say, say_with};
use scantling::cards::cup_hinge::{Answer, Doors, Find, Inputs, Mounting, Note, Opens, Rect, Spread, Wish, solve};
use scantling::caution::Caution;
use scantling::measure::{Measure, Reading};
use scantling::problem::Problems;
use scantling::stock::materials::Choice;
use scantling::working::Working;
use yew::prelude::*;

/// The card.
pub(super) struct CupHinge;

fn hinge_fields(fields: &Fields<CupHinge>) -> Html {
    let inputs = fields.inputs();
    let given = |find: Find| inputs.find != find;
    html! {
        <>
            { fields.choice("cup-hinge-find", |inputs| &mut inputs.find, vec![
                (Find::PlateHeight, say("cup-hinge-find-plate-height")),
                (Find::Overlay, say("cup-hinge-find-overlay")),
                (Find::CupEdge, say("cup-hinge-find-cup-edge")),
                (Find::Constant, say("cup-hinge-find-constant")),
            ]) }
            { fields.choice("cup-hinge-mounting", |inputs| &mut inputs.mounting, vec![
                (Mounting::Full, say("cup-hinge-mounting-full")),
                (Mounting::Half, say("cup-hinge-mounting-half")),
                (Mounting::Inset, say("cup-hinge-mounting-inset")),
            ]) }
            if given(Find::Overlay) && inputs.mounting != Mounting::Inset {
                { fields.choice("cup-hinge-wish", |inputs| &mut inputs.wish, vec![
                    (Wish::Gap, say("cup-hinge-wish-gap")),
                    (Wish::Overlay, say("cup-hinge-wish-overlay")),
                ]) }
                if inputs.wish == Wish::Overlay {
                    { fields.length("cup-hinge-overlay", |inputs| &mut inputs.overlay) }
                } else if inputs.mounting == Mounting::Full {
                    { fields.length("cup-hinge-reveal", |inputs| &mut inputs.reveal) }
                }
            }
            if inputs.mounting != Mounting::Full || inputs.doors == Doors::Two {
                { fields.length("cup-hinge-gap", |inputs| &mut inputs.gap) }
            }
            if given(Find::PlateHeight) {
                { fields.length("cup-hinge-plate-height", |inputs| &mut inputs.plate_height) }
            }
            if given(Find::CupEdge) {
                { fields.length("cup-hinge-cup-edge", |inputs| &mut inputs.cup_edge) }
            }
            if given(Find::Constant) {
                { fields.length("cup-hinge-constant", |inputs| &mut inputs.constant) }
            }
            { fields.lines("cup-hinge-plates", |inputs| &mut inputs.plates, &[]) }
            { fields.length("cup-hinge-least-reveal", |inputs| &mut inputs.least_reveal) }
        </>
    }
}

fn door_fields(fields: &Fields<CupHinge>) -> Html {
    let inputs = fields.inputs();
    let overlaid = inputs.mounting != Mounting::Inset;
    html! {
        <>
            if inputs.mounting == Mounting::Half {
                { fields.length_from_shop("cup-hinge-partition", |inputs| &mut inputs.partition, &fields.settings().sheet) }
            } else {
                { fields.length_from_shop("cup-hinge-side", |inputs| &mut inputs.side, &fields.settings().sheet) }
            }
            { fields.choice("cup-hinge-doors", |inputs| &mut inputs.doors, vec![
                (Doors::One, say("cup-hinge-doors-one")),
                (Doors::Two, say("cup-hinge-doors-two")),
            ]) }
            { fields.range("cup-hinge-opening-width", |inputs| &mut inputs.opening_width) }
            { fields.range("cup-hinge-opening-height", |inputs| &mut inputs.opening_height) }
            if overlaid && inputs.doors == Doors::One {
                { fields.length("cup-hinge-other-overlay", |inputs| &mut inputs.other_overlay) }
            }
            if overlaid {
                { fields.length("cup-hinge-top-overlay", |inputs| &mut inputs.top_overlay) }
                { fields.length("cup-hinge-bottom-overlay", |inputs| &mut inputs.bottom_overlay) }
            }
            { fields.length("cup-hinge-door-thickness", |inputs| &mut inputs.door_thickness) }
            { fields.choice("cup-hinge-material", |inputs| &mut inputs.material, Choice::ALL.iter().map(|choice| {
                let words = choice.family().map_or_else(|| say("cup-hinge-material-own"), |family| family.name.into());
                (*choice, words)
            }).collect()) }
            { fields.figure("cup-hinge-door-weight", "kg", |inputs| &mut inputs.door_weight) }
        </>
    }
}

fn hole_fields(fields: &Fields<CupHinge>) -> Html {
    html! {
        <>
            { fields.length("cup-hinge-cup-diameter", |inputs| &mut inputs.cup_diameter) }
            { fields.length("cup-hinge-cup-depth", |inputs| &mut inputs.cup_depth) }
            { fields.length("cup-hinge-end-distance", |inputs| &mut inputs.end_distance) }
            { fields.figure("cup-hinge-hinges", "", |inputs| &mut inputs.hinges) }
            { fields.choice("cup-hinge-spread", |inputs| &mut inputs.spread, vec![
                (Spread::Even, say("cup-hinge-spread-even")),
                (Spread::Pitch, say("cup-hinge-spread-pitch")),
            ]) }
            { fields.length("cup-hinge-plate-setback", |inputs| &mut inputs.plate_setback) }
            { fields.length_from_shop("cup-hinge-datum", |inputs| &mut inputs.datum, &fields.settings().sheet) }
        </>
    }
}

fn found(inputs: &Inputs, answer: &Answer, show: Show) -> Line {
    let (label, length) = match inputs.find {
        Find::PlateHeight => (say("cup-hinge-plate-height"), answer.plate_height),
        Find::Overlay => (say("cup-hinge-overlay"), answer.overlay),
        Find::CupEdge => (say("cup-hinge-cup-edge"), answer.cup_edge),
        Find::Constant => (say("cup-hinge-constant"), answer.constant),
    };
    Line::new(label, show.length(length))
}

fn verdict(answer: &Answer, show: Show) -> Verdict {
    match answer.room.opens {
        Opens::Freely(spare) => Verdict {
            tone: Tone::Good,
            words: say_with("cup-hinge-opens", [("spare", plain(&show.fine_mm(spare.as_mm()).main).into())]),
        },
        Opens::Strikes(missing) => Verdict {
            tone: Tone::Over,
            words: say_with("cup-hinge-strikes", [("missing", plain(&show.fine_mm(missing.as_mm()).main).into())]),
        },
        Opens::Unknown => Verdict { tone: Tone::Mind, words: say("cup-hinge-opens-unknown") },
    }
}

fn plates(answer: &Answer, show: Show) -> Group {
    let lines = answer
        .plates
        .iter()
        .map(|plate| {
            let label = say_with("cup-hinge-plate", [("height", show.on_drawing(plate.height).into())]);
            let gives =
                say_with("cup-hinge-plate-gives", [("gap", plain(&show.fine_mm(plate.gap.as_mm()).main).into())]);
            let nearest = if plate.nearest {
                format!("{gives} · {}", say("cup-hinge-plate-nearest"))
            } else {
                gives.to_string()
            };
            Line::new(label, Shown { cost: Some(nearest.into()), ..show.length(plate.overlay) })
        })
        .collect();
    Group { title: say("cup-hinge-plates-give"), lines }
}

fn door(answer: &Answer, show: Show) -> Group {
    Group {
        title: say("cup-hinge-door"),
        lines: vec![
            Line::new(say("cup-hinge-overlay"), show.length(answer.overlay)),
            Line::new(say("cup-hinge-seen-gap"), show.length(answer.gap)),
            Line::new(say("cup-hinge-cup-centre"), show.length(answer.cup_centre)),
            Line::new(say("cup-hinge-cup-far-edge"), show.length(answer.cup_far_edge)),
            Line::new(say("cup-hinge-left-behind"), show.length(answer.left_behind)),
            Line::new(say("cup-hinge-weight"), show.estimate(answer.door_weight_kg, Measure::Kg)),
            Line::new(say("cup-hinge-plate-line"), show.length(answer.plate_line)),
        ],
    }
}

fn hinges(answer: &Answer, show: Show) -> Vec<Group> {
    let list = |title: &str, of: &dyn Fn(&scantling::cards::cup_hinge::Hinge) -> Shown| Group {
        title: say(title),
        lines: answer
            .hinges
            .iter()
            .enumerate()
            .map(|(index, hinge)| {
                Line::new(say_with("cup-hinge-hinge", [("number", (index + 1).to_string().into())]), of(hinge))
            })
            .collect(),
    };
    vec![
        list("cup-hinge-on-door", &|hinge| show.length(hinge.on_door)),
        list("cup-hinge-on-side", &|hinge| {
            let pair = Shown::joined([show.length(hinge.lower_hole), show.length(hinge.upper_hole)], ", ");
            Shown { cost: None, ..pair }
        }),
    ]
}

fn notes(answer: &Answer) -> Option<Group> {
    let line = |note: &Note| Line::new(say("cup-hinge-note"), Shown::words(note.to_string())).toned(Tone::Mind);
    let lines: Vec<Line> = answer.notes.iter().map(line).collect();
    (!lines.is_empty()).then(|| Group { title: say("cup-hinge-notes"), lines })
}

fn picture(answer: &Answer, show: Show) -> Html {
    let plan = &answer.plan;
    let mm = |length: scantling::measure::Length| length.as_mm();
    // The whole width of the door says nothing; its first part beside the side does.
    let door_shown = mm(answer.cup_far_edge) + 14.0;
    let (front, back) = (mm(plan.door.front).min(0.0), mm(plan.plate_line) + 26.0);
    let left = [&plan.side, &plan.door].iter().map(|rect| mm(rect.left)).fold(0.0, f64::min);
    let left = plan.neighbour.map_or(left, |rect| left.min(mm(rect.left)));
    let right = mm(plan.door.left) + door_shown;
    let place = Place { x: 84.0, y: 34.0, width: 190.0, height: 150.0 };
    let scale = Scale::fit(right - left, back - front, place);
    let x = |value: f64| scale.x(value - left);
    // Depth grows upwards on the drawing, away from the person who stands in front of the door.
    let y = |value: f64| scale.y(value - front);
    let draw = |piece: &Rect, width: f64, ink| {
        let (from, depth) = (mm(piece.front), mm(piece.depth).min(back - mm(piece.front)));
        rect(x(mm(piece.left)), y(from + depth), scale.length(width), scale.length(depth), ink)
    };
    let door_left = mm(plan.door.left);
    let cup_left = mm(plan.cup.left);
    let overlay_from = mm(plan.side.left) + mm(plan.side.width);
    let line_y = y(mm(plan.plate_line));
    paper(
        say("cup-hinge-picture"),
        228.0,
        html! {
            <>
                { draw(&plan.side, mm(plan.side.width), Ink::Cut) }
                { draw(&plan.door, door_shown, Ink::Wood) }
                if let Some(neighbour) = &plan.neighbour { { draw(neighbour, mm(neighbour.width), Ink::Wood) } }
                { draw(&plan.cup, mm(plan.cup.width), Ink::Outline) }
                { draw(&plan.plate, mm(plan.plate.width), Ink::Panel) }
                { line((x(mm(plan.side.left)) - 6.0, line_y), (x(overlay_from) + 20.0, line_y), Ink::Dashed) }
                { leader((x(overlay_from) + 20.0, line_y), (x(overlay_from) + 40.0, line_y - 12.0), show.on_drawing(answer.plate_line), Ink::Blue) }
                { across(x(door_left.min(overlay_from)), x(door_left.max(overlay_from)), y(front) + 16.0, show.on_drawing(answer.overlay)) }
                { across(x(door_left), x(cup_left), y(front) + 36.0, show.on_drawing(answer.cup_edge)) }
            </>
        },
    )
}

impl CardView for CupHinge {
    type Inputs = Inputs;
    type Answer = Answer;
    const SLUG: &'static str = "cup-hinge";
    const STAGE: Stage = Stage::Drill;

    fn title() -> AttrValue {
        say("cup-hinge-title")
    }

    fn also_called() -> AttrValue {
        say("cup-hinge-also")
    }

    fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
        solve(inputs)
    }

    fn start(_: &Settings) -> Inputs {
        Inputs {
            side: Reading::default(),
            partition: Reading::default(),
            datum: Reading::default(),
            ..Inputs::default()
        }
    }

    fn prepare(inputs: &mut Inputs, settings: &Settings) {
        for reading in [&mut inputs.side, &mut inputs.partition, &mut inputs.datum] {
            if reading.is_blank() {
                *reading = settings.sheet.clone();
            }
        }
    }

    fn fields(fields: &Fields<Self>) -> Html {
        html! {
            <>
                { fields.group(say("cup-hinge-group-hinge"), hinge_fields(fields)) }
                { fields.group(say("cup-hinge-door"), door_fields(fields)) }
                { fields.group(say("cup-hinge-group-holes"), hole_fields(fields)) }
            </>
        }
    }

    fn picture(_: &Inputs, answer: &Answer, show: Show) -> Html {
        picture(answer, show)
    }

    fn reply(inputs: &Inputs, answer: &Answer, show: Show) -> Reply {
        let size = [show.length(answer.door_width.nominal()), show.length(answer.door_height.nominal())];
        let mut groups = vec![plates(answer, show), door(answer, show)];
        groups.extend(hinges(answer, show));
        groups.extend(notes(answer));
        Reply {
            main: vec![found(inputs, answer, show), Line::new(say("cup-hinge-each-door"), Shown::joined(size, " × "))],
            verdict: Some(verdict(answer, show)),
            glance: None,
            groups,
        }
    }

    fn given(_: &Inputs, answer: &Answer, show: Show) -> AttrValue {
        say_with("cup-hinge-given", [("overlay", show.on_drawing(answer.overlay).into())])
    }

    fn working(answer: &Answer) -> &Working {
        &answer.working
    }

    fn cautions(answer: &Answer) -> &[Caution] {
        &answer.cautions
    }
}
