//! The sizes of what is bought: joints, pins, cups, the clothes rail.

use super::Cabinet;
use crate::cards::clothes_rail::{garments, metals, shapes, woods};
use crate::cards::joints::biscuits;
use crate::widgets::fields::Fields;
use scantling::cabinet::Inputs;
use scantling::cards::clothes_rail::Material;
use scantling::cards::joints::Kind;
use yew::prelude::*;

/// Of the joint that is chosen.
pub(super) fn joint(fields: &Fields<Cabinet>) -> Html {
    let kind = fields.inputs().joint;
    html! {
        <>
            if kind == Kind::Dowel {
                { fields.length("cabinet-joint-sizes-dowel-diameter", |inputs| &mut inputs.joint_sizes.dowel_diameter) }
                { fields.length("cabinet-joint-sizes-dowel-length", |inputs| &mut inputs.joint_sizes.dowel_length) }
            }
            if kind == Kind::LooseTenon {
                { fields.length("cabinet-joint-sizes-tenon-thickness", |inputs| &mut inputs.joint_sizes.tenon_thickness) }
                { fields.length("cabinet-joint-sizes-tenon-width", |inputs| &mut inputs.joint_sizes.tenon_width) }
                { fields.length("cabinet-joint-sizes-tenon-length", |inputs| &mut inputs.joint_sizes.tenon_length) }
            }
            if kind == Kind::Biscuit {
                { fields.choice("cabinet-joint-sizes-biscuit", |inputs| &mut inputs.joint_sizes.biscuit, biscuits()) }
            }
            if kind.is_screw() {
                { fields.length("cabinet-joint-sizes-screw-length", |inputs| &mut inputs.joint_sizes.screw_length) }
            }
            if kind == Kind::ConnectingScrew {
                { fields.length("cabinet-joint-sizes-core", |inputs| &mut inputs.joint_sizes.core) }
                { fields.length("cabinet-joint-sizes-shank", |inputs| &mut inputs.joint_sizes.shank) }
            }
            { fields.length("cabinet-joint-sizes-spacing", |inputs| &mut inputs.joint_sizes.spacing) }
        </>
    }
}

/// Bits for rows of holes, where there are any.
pub(super) fn pins(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.length("cabinet-holes-pin", |inputs| &mut inputs.holes.pin) }
            { fields.length("cabinet-holes-pin-depth", |inputs| &mut inputs.holes.pin_depth) }
        </>
    }
}

/// The cups of hinges.
pub(super) fn cups(fields: &Fields<Cabinet>) -> Html {
    html! {
        <>
            { fields.length("cabinet-holes-cup", |inputs| &mut inputs.holes.cup) }
            { fields.length("cabinet-holes-cup-depth", |inputs| &mut inputs.holes.cup_depth) }
        </>
    }
}

/// The rail, where a bay has one.
pub(super) fn rail(fields: &Fields<Cabinet>) -> Html {
    let Inputs { rail_bay, rail, .. } = fields.inputs();
    if rail_bay.is_blank() {
        return Html::default();
    }
    html! {
        <>
            { fields.choice("cabinet-rail-garments", |inputs| &mut inputs.rail.garments, garments()) }
            { fields.length("cabinet-rail-hanger", |inputs| &mut inputs.rail.hanger) }
            { fields.choice("cabinet-rail-shape", |inputs| &mut inputs.rail.shape, shapes()) }
            if rail.shape.is_round() {
                { fields.length("cabinet-rail-diameter", |inputs| &mut inputs.rail.diameter) }
            } else {
                { fields.length("cabinet-rail-height", |inputs| &mut inputs.rail.height) }
                { fields.length("cabinet-rail-width", |inputs| &mut inputs.rail.width) }
            }
            if rail.shape.is_tube() {
                { fields.length("cabinet-rail-wall", |inputs| &mut inputs.rail.wall) }
            }
            { fields.choice("cabinet-rail-material", |inputs| &mut inputs.rail.material, metals()) }
            if rail.material == Material::Wood {
                { fields.choice("cabinet-rail-wood", |inputs| &mut inputs.rail.wood, woods()) }
            }
            { fields.length("cabinet-rail-play", |inputs| &mut inputs.rail.play) }
        </>
    }
}
