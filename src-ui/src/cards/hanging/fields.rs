//! The fields of the hanging card, in the order of the job: weigh it, fill it, lift it, hang it.

use super::{Hanging, screw_words};
use crate::widgets::fields::Fields;
use crate::words::say;
use scantling::cards::hanging::{Doors, Fixing, Grip, Hung, Inputs, Load, Rating, Weight};
use scantling::measure::{Figure, FigureKind};
use scantling::stock::fixings::{Screw, Stud};
use scantling::stock::materials::Choice;
use yew::prelude::*;

fn materials() -> Vec<(Choice, AttrValue)> {
    let words =
        |choice: Choice| choice.family().map_or_else(|| say("hanging-material-own"), |family| family.name.into());
    Choice::ALL.iter().map(|choice| (*choice, words(*choice))).collect()
}

fn cabinet(fields: &Fields<Hanging>) -> Html {
    let inputs = fields.inputs();
    let parts = inputs.weight == Weight::Parts;
    let doors = inputs.doors != Doors::None;
    let own = |choice: Choice| choice == Choice::Own;
    let own = (parts && (own(inputs.material) || own(inputs.back_material))) || (doors && own(inputs.door_material));
    html! {
        <>
            { fields.choice("hanging-weight", |inputs| &mut inputs.weight, vec![
                (Weight::Parts, say("hanging-weight-parts")),
                (Weight::Known, say("hanging-weight-known")),
            ]) }
            if !parts {
                { fields.figure("hanging-known-weight", "kg", |inputs| &mut inputs.known_weight) }
            }
            { fields.length("hanging-width", |inputs| &mut inputs.width) }
            { fields.length("hanging-height", |inputs| &mut inputs.height) }
            { fields.length("hanging-depth", |inputs| &mut inputs.depth) }
            if parts {
                { fields.choice("hanging-material", |inputs| &mut inputs.material, materials()) }
                { fields.length_from_shop("hanging-thickness", |inputs| &mut inputs.thickness, &fields.settings().sheet) }
                { fields.choice("hanging-back-material", |inputs| &mut inputs.back_material, materials()) }
                { fields.length("hanging-back-thickness", |inputs| &mut inputs.back_thickness) }
                { fields.length("hanging-back-inset", |inputs| &mut inputs.back_inset) }
            }
            { fields.figure("hanging-shelves", "", |inputs| &mut inputs.shelves) }
            { fields.choice("hanging-doors", |inputs| &mut inputs.doors, vec![
                (Doors::None, say("hanging-doors-none")),
                (Doors::One, say("hanging-doors-one")),
                (Doors::Two, say("hanging-doors-two")),
            ]) }
            if doors {
                { fields.choice("hanging-door-material", |inputs| &mut inputs.door_material, materials()) }
                { fields.length("hanging-door-thickness", |inputs| &mut inputs.door_thickness) }
            }
            if own {
                { fields.figure("hanging-own-density", "kg/m³", |inputs| &mut inputs.own_density) }
            }
        </>
    }
}

/// A level's field: its id, and which mass it is for.
type Level = (&'static str, fn(&mut Inputs) -> &mut Figure);

const LEVELS: [Level; 8] = [
    ("hanging-levels-0", |inputs| &mut inputs.levels[0]),
    ("hanging-levels-1", |inputs| &mut inputs.levels[1]),
    ("hanging-levels-2", |inputs| &mut inputs.levels[2]),
    ("hanging-levels-3", |inputs| &mut inputs.levels[3]),
    ("hanging-levels-4", |inputs| &mut inputs.levels[4]),
    ("hanging-levels-5", |inputs| &mut inputs.levels[5]),
    ("hanging-levels-6", |inputs| &mut inputs.levels[6]),
    ("hanging-levels-7", |inputs| &mut inputs.levels[7]),
];

fn contents(fields: &Fields<Hanging>) -> Html {
    let inputs = fields.inputs();
    let shelves = inputs.shelves.value(FigureKind::Count).unwrap_or(0.0);
    let level =
        |((id, lens), number): (Level, u32)| (f64::from(number) <= shelves).then(|| fields.figure(id, "kg", lens));
    html! {
        <>
            { fields.choice("hanging-load", |inputs| &mut inputs.load, vec![
                (Load::PerMetre, say("hanging-load-per-metre")),
                (Load::Each, say("hanging-load-each")),
            ]) }
            if inputs.load == Load::PerMetre {
                { fields.figure("hanging-per-metre", "kg/m", |inputs| &mut inputs.per_metre) }
            } else {
                { for LEVELS.into_iter().zip(0_u32..).filter_map(level) }
            }
        </>
    }
}

fn lift(fields: &Fields<Hanging>) -> Html {
    html! {
        <>
            { fields.length("hanging-hands-out", |inputs| &mut inputs.hands_out) }
            { fields.length("hanging-lift-from", |inputs| &mut inputs.lift_from) }
            { fields.length("hanging-lift-to", |inputs| &mut inputs.lift_to) }
            { fields.angle("hanging-twist", |inputs| &mut inputs.twist) }
            { fields.choice("hanging-grip", |inputs| &mut inputs.grip, vec![
                (Grip::Good, say("hanging-grip-good")),
                (Grip::Fair, say("hanging-grip-fair")),
                (Grip::Poor, say("hanging-grip-poor")),
            ]) }
            { fields.length("hanging-ceiling", |inputs| &mut inputs.ceiling) }
            if !fields.inputs().ceiling.is_blank() {
                { fields.length("hanging-clearance", |inputs| &mut inputs.clearance) }
            }
        </>
    }
}

fn hung(fields: &Fields<Hanging>) -> Html {
    let cleat = fields.inputs().hung == Hung::Cleat;
    html! {
        <>
            { fields.choice("hanging-hung", |inputs| &mut inputs.hung, vec![
                (Hung::Cleat, say("hanging-hung-cleat")),
                (Hung::Rail, say("hanging-hung-rail")),
            ]) }
            { fields.length("hanging-bevel-down", |inputs| &mut inputs.bevel_down) }
            { fields.length("hanging-stands-off", |inputs| &mut inputs.stands_off) }
            { fields.length_from_shop("hanging-strip", |inputs| &mut inputs.strip, &fields.settings().sheet) }
            if cleat {
                { fields.angle("hanging-bevel", |inputs| &mut inputs.bevel) }
                { fields.length("hanging-strip-height", |inputs| &mut inputs.strip_height) }
                { fields.length("hanging-fixings-up", |inputs| &mut inputs.fixings_up) }
            }
            { fields.length("hanging-strip-length", |inputs| &mut inputs.strip_length) }
        </>
    }
}

fn screw(fields: &Fields<Hanging>) -> Html {
    let inputs = fields.inputs();
    html! {
        <>
            { fields.choice("hanging-screw", |inputs| &mut inputs.screw,
                Screw::ALL.iter().map(|screw| (*screw, screw_words(*screw))).collect()) }
            if inputs.screw == Screw::Own {
                { fields.length("hanging-own-diameter", |inputs| &mut inputs.own_diameter) }
            }
            { fields.length("hanging-screw-length", |inputs| &mut inputs.screw_length) }
            { fields.choice("hanging-stud", |inputs| &mut inputs.stud, vec![
                (Stud::SprucePineFirSouth, say("hanging-stud-spruce-pine-fir-south")),
                (Stud::SprucePineFir, say("hanging-stud-spruce-pine-fir")),
                (Stud::HemFir, say("hanging-stud-hem-fir")),
                (Stud::DouglasFir, say("hanging-stud-douglas-fir")),
                (Stud::SouthernPine, say("hanging-stud-southern-pine")),
                (Stud::Own, say("hanging-stud-own")),
            ]) }
            if inputs.stud == Stud::Own {
                { fields.figure("hanging-own-gravity", "", |inputs| &mut inputs.own_gravity) }
            }
            { fields.length("hanging-stud-pitch", |inputs| &mut inputs.stud_pitch) }
            { fields.length("hanging-lining", |inputs| &mut inputs.lining) }
        </>
    }
}

fn packet(fields: &Fields<Hanging>) -> Html {
    html! {
        <>
            { fields.figure("hanging-pull-rating", "N", |inputs| &mut inputs.pull_rating) }
            { fields.figure("hanging-shear-rating", "N", |inputs| &mut inputs.shear_rating) }
            { fields.choice("hanging-rating", |inputs| &mut inputs.rating, vec![
                (Rating::Allowed, say("hanging-rating-allowed")),
                (Rating::Failure, say("hanging-rating-failure")),
            ]) }
            if fields.inputs().rating == Rating::Failure {
                { fields.figure("hanging-factor", "", |inputs| &mut inputs.factor) }
            }
        </>
    }
}

fn fixings(fields: &Fields<Hanging>) -> Html {
    html! {
        <>
            { fields.choice("hanging-fixing", |inputs| &mut inputs.fixing, vec![
                (Fixing::WoodScrew, say("hanging-fixing-wood-screw")),
                (Fixing::Anchor, say("hanging-fixing-anchor")),
            ]) }
            { fields.figure("hanging-count", "", |inputs| &mut inputs.count) }
            { fields.length("hanging-first-at", |inputs| &mut inputs.first_at) }
            { match fields.inputs().fixing {
                Fixing::WoodScrew => screw(fields),
                Fixing::Anchor => packet(fields),
            } }
        </>
    }
}

/// All of them.
pub(super) fn all(fields: &Fields<Hanging>) -> Html {
    html! {
        <>
            { fields.group(say("hanging-group-cabinet"), cabinet(fields)) }
            { fields.group(say("hanging-group-contents"), contents(fields)) }
            { fields.group(say("hanging-group-hung"), hung(fields)) }
            { fields.group(say("hanging-group-fixings"), fixings(fields)) }
            { fields.group(say("hanging-lift"), lift(fields)) }
        </>
    }
}
