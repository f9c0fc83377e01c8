//! What random cabinets have outside. Strips by which doors are opened: each in front of its own door, clear of the other,
//! its screws through both. Hooks on a rail under the bottom. Only the places of the parts are used.

use super::cabinet::{bounds, cabinet};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cabinet::{At, Cabinet, Hand, Inputs, Pull, Stands, What, solve};
use scantling::measure::{AngleReading, Length, Reading};

/// mm.
const TOUCH: f64 = 1e-6;

prop_compose! {
    /// Random cabinets, three in four with strips on their doors, eight in nine of those that hang with hooks.
    pub(super) fn with_outside()(
        mut inputs in cabinet(),
        pull in prop::bool::weighted(0.75),
        (thickness, width, set_in) in (150..300_u32, 300..700_u32, 0..150_u32),
        length in prop::option::of(600..2500_u32),
        bevel in select(vec!["", "20", "30"]),
        at in select(At::ALL),
        hooks in 0..9_u32,
    ) -> Inputs {
        if hooks > 0 {
            inputs.hooks.count = hooks.to_string().as_str().into();
        }
        let tenths = |tenths: u32| Reading::mm(&format!("{}.{}", tenths / 10, tenths % 10));
        let handle = &mut inputs.handle;
        handle.pull = if pull { Pull::Strip } else { Pull::None };
        (handle.thickness, handle.width, handle.set_in) = (tenths(thickness), tenths(width), tenths(set_in));
        handle.length = length.map(tenths).unwrap_or_default();
        handle.bevel = AngleReading::from(bevel);
        handle.at = at;
        inputs
    }
}

/// The rail touches the bottom from below and its screws go down into the middle of it; hooks are as far from each other
/// as twice from either end.
fn hooks_fit(cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let Some(rail) = &cabinet.hooks else { return Ok(()) };
    let (strip, bottom) = (bounds(&cabinet.parts[rail.on].place), bounds(&cabinet.parts[rail.under].place));
    prop_assert!((strip.maxs.z - bottom.mins.z).abs() < TOUCH, "{strip:?} does not touch {bottom:?}");
    prop_assert!((cabinet.depth.as_mm() - rail.from_front.as_mm() - strip.center().y).abs() < TOUCH);
    prop_assert!(bottom.mins.y - TOUCH <= strip.mins.y && strip.maxs.y <= bottom.maxs.y + TOUCH);
    for screw in rail.screws.iter().map(|at| bottom.mins.x + at.as_mm()) {
        prop_assert!(strip.mins.x + 10.0 < screw && screw < strip.maxs.x - 10.0, "a screw at {screw} in {strip:?}");
    }
    prop_assert!(rail.screw.as_mm() < bottom.extents().z + strip.extents().z);
    let at: Vec<f64> = rail.hooks.iter().map(|at| strip.mins.x + at.as_mm()).collect();
    let ends = [at[0] - strip.mins.x, strip.maxs.x - at[at.len() - 1]];
    prop_assert!((ends[0] - ends[1]).abs() < TOUCH, "{ends:?}");
    prop_assert!(at.windows(2).all(|pair| (pair[1] - pair[0] - 2.0 * ends[0]).abs() < TOUCH), "{at:?}");
    Ok(())
}

pub(super) fn outside_fits(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    hooks_fit(cabinet)?;
    let mm = |reading: &Reading| reading.length().unwrap().as_mm();
    let mut strips = Vec::new();
    for door in &cabinet.doors {
        prop_assert_eq!(door.handle.is_some(), inputs.handle.pull == Pull::Strip);
        let Some(handle) = &door.handle else { continue };
        let (strip, leaf) = (bounds(&cabinet.parts[handle.on].place), bounds(&door.place));
        prop_assert_eq!(cabinet.parts[handle.on].what, What::Handle { on: door.on });
        prop_assert!((strip.mins.y - leaf.maxs.y).abs() < TOUCH, "{strip:?} does not lie on {leaf:?}");
        let What::Door { hinged, .. } = cabinet.parts[door.on].what else { panic!("no door") };
        let (near, far) = match hinged {
            Hand::Left => (leaf.maxs.x - strip.maxs.x, leaf.maxs.x - strip.mins.x),
            Hand::Right => (strip.mins.x - leaf.mins.x, strip.maxs.x - leaf.mins.x),
        };
        prop_assert!((near - mm(&inputs.handle.set_in)).abs() < TOUCH, "{near} from the free edge");
        prop_assert!(far <= leaf.extents().x / 2.0 + TOUCH, "it reaches past the middle of the door");
        let (below, above) = (strip.mins.z - leaf.mins.z, leaf.maxs.z - strip.maxs.z);
        prop_assert!(below > -TOUCH && above > -TOUCH, "it reaches past the door");
        let (hung, short) = (inputs.stands == Stands::Cleat || inputs.stands == Stands::Rail, below + above > TOUCH);
        match inputs.handle.at {
            At::Middle => prop_assert!((below - above).abs() < TOUCH),
            At::InReach if short => prop_assert!((below < TOUCH) == hung && (above < TOUCH) != hung),
            At::InReach => {}
        }
        // The screws lie on what is left of the rear, go through the door, and end within the strip.
        let slope = cabinet.handle_rip.as_ref().map_or(0.0, |rip| rip.slope_mm);
        let line = handle.from_edge.as_mm();
        prop_assert!(near + 6.0 - TOUCH <= line && line <= far - slope - 6.0 + TOUCH, "{line} in {near}–{far}");
        let (through, both) = (leaf.extents().y, leaf.extents().y + strip.extents().y);
        let long = handle.screw.as_mm();
        prop_assert!(through + 5.0 < long && long <= both - 3.0 + TOUCH, "a screw of {long} in {through} and {both}");
        prop_assert!(handle.screws.len() >= 2);
        for screw in handle.screws.iter().map(|screw| leaf.mins.z + screw.as_mm()) {
            prop_assert!(strip.mins.z + 10.0 < screw && screw < strip.maxs.z - 10.0, "a screw at {screw} in {strip:?}");
        }
        strips.push(strip);
    }
    for (at, strip) in strips.iter().enumerate() {
        prop_assert!(
            strips.iter().skip(at + 1).all(|other| strip.maxs.x <= other.mins.x || other.maxs.x <= strip.mins.x)
        );
    }
    Ok(())
}

/// The checks can refuse: a strip on the hinge edge, one that lies in the air, a screw that comes out in front.
#[test]
fn a_handle_put_on_wrongly_is_seen() {
    let mut inputs = Inputs::default();
    inputs.handle.pull = Pull::Strip;
    inputs.hooks.count = "3".into();
    let good = solve(&inputs).unwrap();
    assert!(outside_fits(&inputs, &good).is_ok());
    let wrong = |change: fn(&mut Cabinet, usize)| {
        let mut cabinet = good.clone();
        let on = cabinet.doors[0].handle.as_ref().unwrap().on;
        change(&mut cabinet, on);
        outside_fits(&inputs, &cabinet).is_err()
    };
    let ten = Length::mm(10, 1).unwrap();
    assert!(wrong(|cabinet, on| cabinet.parts[on].place.from[1] = Length::ZERO));
    assert!(wrong(|cabinet, on| cabinet.parts[on].place.to[0] = cabinet.doors[0].place.from[0]));
    assert!(wrong(|cabinet, _| cabinet.doors[0].handle.as_mut().unwrap().screw = Length::mm(40, 1).unwrap()));
    assert!(wrong(|cabinet, _| cabinet.doors[0].handle.as_mut().unwrap().screws[0] = Length::ZERO));
    assert!(wrong(|cabinet, _| cabinet.hooks.as_mut().unwrap().hooks[0] = Length::ZERO));
    assert!(wrong(|cabinet, _| cabinet.hooks.as_mut().unwrap().from_front = Length::ZERO));
    let mut wide = good.clone();
    let on = wide.doors[0].handle.as_ref().unwrap().on;
    wide.parts[on].place.to[0] = wide.parts[on].place.to[0].plus(ten).unwrap();
    assert!(outside_fits(&inputs, &wide).is_err());
}
