//! What is asked for: size, boards, construction, what is in it, doors, wall.

use super::{Cabinet, costs, sizes};
use crate::widgets::fields::Fields;
use crate::words::say;
use scantling::cabinet::{At, Back, Beside, Corners, Doors, Edging, Lie, Pull, SizeFrom, Stands};
use scantling::cards::joints::Kind;
use scantling::stock::materials::Choice;
use yew::prelude::*;

fn materials() -> Vec<(Choice, AttrValue)> {
    let words =
        |choice: Choice| choice.family().map_or_else(|| say("cabinet-material-own"), |family| family.name.into());
    Choice::ALL.iter().map(|choice| (*choice, words(*choice))).collect()
}

fn size(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.choice("cabinet-size-from", |inputs| &mut inputs.size_from, vec![
                (SizeFrom::Outside, say("cabinet-size-from-outside")),
                (SizeFrom::Opening, say("cabinet-size-from-opening")),
                (SizeFrom::Inside, say("cabinet-size-from-inside")),
            ]) }
            { fields.range("cabinet-width", |inputs| &mut inputs.width) }
            { fields.range("cabinet-height", |inputs| &mut inputs.height) }
            { fields.range("cabinet-depth", |inputs| &mut inputs.depth) }
            if fields.inputs().size_from == SizeFrom::Opening {
                { fields.length("cabinet-free", |inputs| &mut inputs.free) }
            }
        </>
    }
}

fn boards(fields: &Fields<Cabinet>) -> Html {
    let inputs = fields.inputs();
    let boards = [&inputs.carcass, &inputs.shelf, &inputs.back_board, &inputs.door, &inputs.strip];
    let handles = inputs.doors != Doors::None && inputs.handle.pull == Pull::Strip;
    let own =
        boards.iter().any(|board| board.material == Choice::Own) || (handles && inputs.handle.material == Choice::Own);
    html! {
        <>
            { fields.range("cabinet-carcass-thickness", |inputs| &mut inputs.carcass.thickness) }
            { fields.choice("cabinet-carcass-material", |inputs| &mut inputs.carcass.material, materials()) }
            { fields.range("cabinet-shelf-thickness", |inputs| &mut inputs.shelf.thickness) }
            { fields.choice("cabinet-shelf-material", |inputs| &mut inputs.shelf.material, materials()) }
            { fields.range("cabinet-back_board-thickness", |inputs| &mut inputs.back_board.thickness) }
            { fields.choice("cabinet-back_board-material", |inputs| &mut inputs.back_board.material, materials()) }
            if inputs.doors != Doors::None {
                { fields.range("cabinet-door-thickness", |inputs| &mut inputs.door.thickness) }
                { fields.choice("cabinet-door-material", |inputs| &mut inputs.door.material, materials()) }
            }
            if inputs.stands.is_hung() {
                { fields.range("cabinet-strip-thickness", |inputs| &mut inputs.strip.thickness) }
                { fields.choice("cabinet-strip-material", |inputs| &mut inputs.strip.material, materials()) }
            }
            if own {
                { fields.figure("cabinet-own-density", "kg/m³", |inputs| &mut inputs.own_density) }
            }
        </>
    }
}

fn construction(fields: &Fields<Cabinet>) -> Html {
    let inputs = fields.inputs();
    let planted = inputs.back == Back::Planted;
    html! {
        <>
            { fields.choice("cabinet-corners", |inputs| &mut inputs.corners, vec![
                (Corners::Between, say("cabinet-corners-between")),
                (Corners::Over, say("cabinet-corners-over")),
            ]) }
            { fields.choice("cabinet-joint", |inputs| &mut inputs.joint, vec![
                (Kind::Dowel, say("cabinet-joint-dowel")),
                (Kind::LooseTenon, say("cabinet-joint-tenon")),
                (Kind::Biscuit, say("cabinet-joint-biscuit")),
                (Kind::ConnectingScrew, say("cabinet-joint-screw")),
                (Kind::PocketScrew, say("cabinet-joint-pocket")),
            ]) }
            { sizes::joint(fields) }
            { fields.choice("cabinet-back", |inputs| &mut inputs.back, vec![
                (Back::Groove, say("cabinet-back-groove")),
                (Back::Rabbet, say("cabinet-back-rabbet")),
                (Back::Planted, say("cabinet-back-planted")),
            ]) }
            if !planted {
                { fields.choice("cabinet-past-bottom", |inputs| &mut inputs.past_bottom, vec![
                    (true, say("cabinet-past-bottom-yes")),
                    (false, say("cabinet-past-bottom-no")),
                ]) }
                { fields.length("cabinet-groove-depth", |inputs| &mut inputs.groove_depth) }
                { fields.length("cabinet-groove-fit", |inputs| &mut inputs.groove_fit) }
            }
            if inputs.back == Back::Groove && inputs.stands != Stands::Cleat {
                { fields.length("cabinet-back-set", |inputs| &mut inputs.back_set) }
            }
            { fields.length("cabinet-clearance", |inputs| &mut inputs.clearance) }
            { fields.length_from_shop("cabinet-kerf", |inputs| &mut inputs.kerf, &fields.settings().kerf) }
            { fields.choice("cabinet-edging", |inputs| &mut inputs.edging, vec![
                (Edging::Bare, say("cabinet-edging-bare")),
                (Edging::Solid, say("cabinet-edging-solid")),
                (Edging::Band, say("cabinet-edging-band")),
            ]) }
            if inputs.edging != Edging::Bare {
                { fields.length("cabinet-edging-thickness", |inputs| &mut inputs.edging_thickness) }
            }
        </>
    }
}

fn inside(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.figure("cabinet-bays", "", |inputs| &mut inputs.bays) }
            { fields.figure("cabinet-fixed-shelves", "", |inputs| &mut inputs.fixed_shelves) }
            { fields.figure("cabinet-loose-shelves", "", |inputs| &mut inputs.loose_shelves) }
            { fields.length("cabinet-shelf-play", |inputs| &mut inputs.shelf_play) }
            { fields.length("cabinet-shelf-back", |inputs| &mut inputs.shelf_back) }
            { fields.length("cabinet-least-gap", |inputs| &mut inputs.least_gap) }
            { sizes::pins(fields) }
            { fields.figure("cabinet-rail-bay", "", |inputs| &mut inputs.rail_bay) }
            { sizes::rail(fields) }
            { fields.figure("cabinet-load", "kg/m", |inputs| &mut inputs.load) }
        </>
    }
}

fn doors(fields: &Fields<Cabinet>) -> Html {
    let inputs = fields.inputs();
    let several = inputs.bays.typed().trim() != "1";
    html! {
        <>
            { fields.choice("cabinet-doors", |inputs| &mut inputs.doors, vec![
                (Doors::None, say("cabinet-doors-none")),
                (Doors::Left, say("cabinet-doors-left")),
                (Doors::Right, say("cabinet-doors-right")),
                (Doors::Pair, say("cabinet-doors-pair")),
            ]) }
            if inputs.doors != Doors::None {
                { fields.choice("cabinet-lie", |inputs| &mut inputs.lie, vec![
                    (Lie::Full, say("cabinet-lie-full")),
                    (Lie::Half, say("cabinet-lie-half")),
                    (Lie::Inset, say("cabinet-lie-inset")),
                ]) }
                if inputs.lie != Lie::Inset {
                    { fields.length("cabinet-reveal", |inputs| &mut inputs.reveal) }
                }
                { fields.length("cabinet-gap", |inputs| &mut inputs.gap) }
                if inputs.lie == Lie::Full {
                    { fields.length("cabinet-arm", |inputs| &mut inputs.arm) }
                }
                if inputs.lie == Lie::Half || (several && inputs.lie == Lie::Full) {
                    { fields.length("cabinet-half-arm", |inputs| &mut inputs.half_arm) }
                }
                if inputs.lie == Lie::Inset {
                    { fields.length("cabinet-inset-arm", |inputs| &mut inputs.inset_arm) }
                }
                { fields.length("cabinet-cup-edge", |inputs| &mut inputs.cup_edge) }
                { sizes::cups(fields) }
                { handles(fields) }
            }
        </>
    }
}

fn handles(fields: &Fields<Cabinet>) -> Html {
    let handle = &fields.inputs().handle;
    html! {
        <>
            { fields.choice("cabinet-handle-pull", |inputs| &mut inputs.handle.pull, vec![
                (Pull::None, say("cabinet-handle-pull-none")),
                (Pull::Strip, say("cabinet-handle-pull-strip")),
            ]) }
            if handle.pull == Pull::Strip {
                { fields.range("cabinet-handle-thickness", |inputs| &mut inputs.handle.thickness) }
                { fields.length("cabinet-handle-width", |inputs| &mut inputs.handle.width) }
                { fields.choice("cabinet-handle-material", |inputs| &mut inputs.handle.material, materials()) }
                { fields.length("cabinet-handle-length", |inputs| &mut inputs.handle.length) }
                if !handle.length.is_blank() {
                    { fields.choice("cabinet-handle-at", |inputs| &mut inputs.handle.at, vec![
                        (At::InReach, say("cabinet-handle-at-in-reach")),
                        (At::Middle, say("cabinet-handle-at-middle")),
                    ]) }
                }
                { fields.length("cabinet-handle-set-in", |inputs| &mut inputs.handle.set_in) }
                { fields.angle("cabinet-handle-bevel", |inputs| &mut inputs.handle.bevel) }
            }
        </>
    }
}

fn stands(fields: &Fields<Cabinet>) -> Html {
    let inputs = fields.inputs();
    let hung = inputs.stands.is_hung();
    html! {
        <>
            { fields.choice("cabinet-stands", |inputs| &mut inputs.stands, vec![
                (Stands::Cleat, say("cabinet-stands-cleat")),
                (Stands::Rail, say("cabinet-stands-rail")),
                (Stands::Plinth, say("cabinet-stands-plinth")),
                (Stands::Legs, say("cabinet-stands-legs")),
            ]) }
            if hung {
                { fields.length("cabinet-strip-height", |inputs| &mut inputs.strip_height) }
                { fields.length("cabinet-ceiling", |inputs| &mut inputs.ceiling) }
                { fields.figure("cabinet-screws", "", |inputs| &mut inputs.screws) }
                { fields.length("cabinet-screw-length", |inputs| &mut inputs.screw_length) }
                { fields.length("cabinet-stud-pitch", |inputs| &mut inputs.stud_pitch) }
                { fields.figure("cabinet-hooks-count", "", |inputs| &mut inputs.hooks.count) }
                if !inputs.hooks.count.is_blank() {
                    { fields.length("cabinet-hooks-height", |inputs| &mut inputs.hooks.height) }
                    { fields.figure("cabinet-hooks-load", "kg", |inputs| &mut inputs.hooks.load) }
                }
            } else {
                { fields.length("cabinet-base", |inputs| &mut inputs.base) }
            }
            if inputs.stands == Stands::Cleat {
                { fields.length("cabinet-top-at", |inputs| &mut inputs.top_at) }
                { fields.angle("cabinet-bevel", |inputs| &mut inputs.bevel) }
                { fields.length("cabinet-slack", |inputs| &mut inputs.slack) }
            }
            if inputs.stands == Stands::Plinth {
                { fields.length("cabinet-toe", |inputs| &mut inputs.toe) }
            }
        </>
    }
}

/// A shelf on brackets: nothing of it is asked for where there is none.
fn outside(fields: &Fields<Cabinet>) -> Html {
    let outside = &fields.inputs().outside;
    html! {
        <>
            { fields.choice("cabinet-outside-at", |inputs| &mut inputs.outside.at, vec![
                (Beside::None, say("cabinet-outside-at-none")),
                (Beside::Left, say("cabinet-outside-at-left")),
                (Beside::Right, say("cabinet-outside-at-right")),
                (Beside::Under, say("cabinet-outside-at-under")),
            ]) }
            if outside.at != Beside::None {
                if outside.at != Beside::Under {
                    { fields.length("cabinet-outside-up", |inputs| &mut inputs.outside.up) }
                }
                { fields.length("cabinet-outside-length", |inputs| &mut inputs.outside.length) }
                { fields.length("cabinet-outside-depth", |inputs| &mut inputs.outside.depth) }
                { fields.figure("cabinet-outside-brackets", "", |inputs| &mut inputs.outside.brackets) }
                { fields.length("cabinet-outside-arm", |inputs| &mut inputs.outside.arm) }
                { fields.length("cabinet-outside-leg", |inputs| &mut inputs.outside.leg) }
                { fields.figure("cabinet-outside-load", "kg/m", |inputs| &mut inputs.outside.load) }
            }
        </>
    }
}

fn sheets(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.length("cabinet-sheet-length", |inputs| &mut inputs.sheet_length) }
            { fields.length("cabinet-sheet-width", |inputs| &mut inputs.sheet_width) }
        </>
    }
}

/// Every field, in the order in which a cabinet is thought out.
pub(super) fn all(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.group(say("cabinet-group-size"), size(fields)) }
            { fields.group(say("cabinet-group-boards"), boards(fields)) }
            { fields.group(say("cabinet-group-construction"), construction(fields)) }
            { fields.group(say("cabinet-group-inside"), inside(fields)) }
            { fields.group(say("cabinet-group-doors"), doors(fields)) }
            { fields.group(say("cabinet-group-stands"), stands(fields)) }
            { fields.group(say("cabinet-group-outside"), outside(fields)) }
            { fields.group(say("cabinet-group-sheets"), sheets(fields)) }
            { fields.group(say("cabinet-group-prices"), costs::fields(fields)) }
        </>
    }
}
