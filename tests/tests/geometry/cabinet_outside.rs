//! What random cabinets have outside. Strips by which doors are opened: each in front of its own door, clear of the other,
//! its screws through both. Hooks on a rail under the bottom. A shelf on brackets. Only the places of the parts are used.

use super::cabinet::{bounds, cabinet};
use parry3d_f64::bounding_volume::{Aabb, BoundingVolume};
use parry3d_f64::math::{Pose, Vector};
use parry3d_f64::query::intersection_test;
use parry3d_f64::shape::Cuboid;
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cabinet::{
    At, Beside, Block, Cabinet, Clash, Edging, Hand, Inputs, Lie, Outside, OutsideShelf, Pull, Stands, What, solve,
};
use scantling::measure::{AngleReading, Length, Reading};

/// mm.
const TOUCH: f64 = 1e-6;

prop_compose! {
    /// A shelf outside, three times in four.
    fn outside()(
        at in select(Beside::ALL),
        (length, depth) in (1500..7000_u32, 900..2500_u32),
        (brackets, leg) in (2..6_u32, 400..1400_u32),
        arm in 52..95_u32,
        load in 0..30_u32,
    ) -> Outside {
        let tenths = |tenths: u32| Reading::mm(&format!("{}.{}", tenths / 10, tenths % 10));
        Outside {
            at,
            length: tenths(length),
            depth: tenths(depth),
            brackets: brackets.to_string().as_str().into(),
            arm: tenths(depth * arm / 100),
            leg: tenths(leg),
            load: load.to_string().as_str().into(),
            ..Outside::default()
        }
    }
}

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
        outside in outside(),
        (up, long, rail) in (5..9_i64, 0..3_u32, 600..3000_u32),
    ) -> Inputs {
        // Somewhere on the upper half of the side.
        let height = inputs.height.length().unwrap();
        inputs.outside = outside;
        inputs.outside.up = Reading::mm(&height.times(up, 10).unwrap().to_string());
        match long {
            0 => inputs.outside.length = Reading::default(),
            // Nearly to the front, where doors come by.
            1 => inputs.outside.length = Reading::mm(&inputs.depth.length().unwrap().times(49, 50).unwrap().to_string()),
            _ => {}
        }
        if hooks > 0 {
            inputs.hooks.count = hooks.to_string().as_str().into();
        }
        let tenths = |tenths: u32| Reading::mm(&format!("{}.{}", tenths / 10, tenths % 10));
        if inputs.stands == Stands::Rail {
            // So high that shelves have to stay below it.
            inputs.strip_height = tenths(rail);
        }
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

/// Where its board and their edging lie together, and that they fill it.
fn filled(cabinet: &Cabinet, on: usize) -> (Aabb, f64) {
    let own = |what: What| what == What::OutsideShelf || what == What::Edging { on };
    let blocks = cabinet.parts.iter().filter(|part| own(part.what)).map(|part| bounds(&part.place));
    blocks.fold((Aabb::new_invalid(), 0.0), |(all, volume), block| (all.merged(&block), volume + block.volume()))
}

/// The shelf touches the side, or hangs so far below the bottom; every bracket lies under it and on what holds it.
fn shelf_fits(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let Some(shelf) = &cabinet.outside else { return Ok(()) };
    let (place, holder) = (bounds(&shelf.place), bounds(&cabinet.parts[shelf.held_by].place));
    let (all, volume) = filled(cabinet, shelf.on);
    prop_assert!((all.mins - place.mins).length() + (all.maxs - place.maxs).length() < TOUCH, "{all:?} for {place:?}");
    prop_assert!((volume - place.volume()).abs() < 1e-3, "its edging does not fill it");
    let [arm, leg, depth] = [shelf.arm, shelf.leg, cabinet.depth].map(Length::as_mm);
    let near = |a: f64, b: f64| (a - b).abs() < TOUCH;
    let under = shelf.at == Beside::Under;
    let touches = match shelf.at {
        Beside::Left => near(place.maxs.x, holder.mins.x),
        Beside::Right => near(place.mins.x, holder.maxs.x),
        _ => near(place.maxs.z, holder.mins.z - leg) && near(place.mins.y, holder.mins.y),
    };
    prop_assert!(touches, "{place:?} is not at {holder:?}");
    if under {
        prop_assert!(holder.mins.x < place.mins.x + TOUCH && place.maxs.x < holder.maxs.x + TOUCH);
    } else {
        prop_assert!(near(place.maxs.z, inputs.outside.up.length().unwrap().as_mm()));
        prop_assert!(place.maxs.z < holder.maxs.z + TOUCH && holder.mins.z < place.mins.z - leg + TOUCH);
    }
    prop_assert!(-TOUCH < place.mins.y && place.maxs.y < depth + TOUCH, "{place:?} stands out in front");
    let (low, high) = if under { (place.mins.x, place.maxs.x) } else { (place.mins.y, place.maxs.y) };
    let mut on_holder: Vec<f64> = shelf.on_holder.iter().map(|at| at.as_mm()).collect();
    on_holder.iter_mut().for_each(|at| *at = if under { holder.mins.x + *at } else { depth - *at });
    on_holder.sort_by(f64::total_cmp);
    let on_shelf: Vec<f64> = shelf.brackets.iter().map(|at| low + at.as_mm()).collect();
    prop_assert!(on_shelf.len() >= 2 && on_shelf.len() == on_holder.len());
    prop_assert!(
        on_shelf.iter().zip(&on_holder).all(|(shelf, holder)| near(*shelf, *holder)),
        "{on_shelf:?} {on_holder:?}"
    );
    let bay = shelf.answer.bay.as_mm();
    prop_assert!(on_shelf.windows(2).all(|pair| near(pair[1] - pair[0], bay)), "{on_shelf:?} are not {bay} apart");
    prop_assert!(near(on_shelf[0] - low, high - on_shelf[on_shelf.len() - 1]) && on_shelf[0] - low < 50.0 + TOUCH);
    // The holder's part of a bracket, and the shelf's, each from its corner.
    let (corner, end) = if under { (place.mins.y, place.mins.y + arm) } else { (place.mins.z, place.mins.z - leg) };
    for screw in shelf.screws.iter().map(|at| if under { depth - at.as_mm() } else { holder.mins.z + at.as_mm() }) {
        prop_assert!(
            corner.min(end) < screw && screw < corner.max(end),
            "a screw at {screw}, the bracket {corner}–{end}"
        );
    }
    let board = bounds(&cabinet.parts[shelf.on].place);
    let across = if under { board.extents().y } else { board.extents().x };
    prop_assert!(arm < across + TOUCH && shelf.shelf_screws.iter().all(|at| at.is_positive() && at.as_mm() < arm));
    let into = if under { holder.extents().z } else { holder.extents().x };
    prop_assert!(shelf.screw.is_positive() && shelf.screw.as_mm() < into - 2.0, "{} in {into}", shelf.screw);
    prop_assert!(shelf.shelf_screw.is_positive() && shelf.shelf_screw.as_mm() < place.extents().z - 2.0);
    Ok(())
}

/// Whether a bracket's screw and a hole of the other face come within 6 mm of each other in the side, by their places in
/// the whole cabinet; none where they come just so near.
fn screw_meets_hole(cabinet: &Cabinet, shelf: &OutsideShelf) -> Option<bool> {
    let side = bounds(&cabinet.parts[shelf.held_by].place);
    let front = cabinet.depth.as_mm();
    let mut meets = false;
    for rows in cabinet.rows.iter().filter(|rows| rows.on == shelf.held_by && shelf.at != Beside::Under) {
        let left = side.extents().x - rows.deep.as_mm() - shelf.screw.as_mm();
        for row in std::iter::once(&rows.rows.front).chain(&rows.rows.rear) {
            for hole in row.holes.iter().map(|hole| [row.from_front, hole.at].map(Length::as_mm)) {
                let hole = Vector::new(0.0, front - hole[0], rows.datum.as_mm() + hole[1]);
                for (at, screw) in shelf.on_holder.iter().flat_map(|at| shelf.screws.iter().map(move |up| (at, up))) {
                    let screw = Vector::new(0.0, front - at.as_mm(), side.mins.z + screw.as_mm());
                    let apart = (hole - screw).length();
                    if (apart - 6.0).abs() < TOUCH {
                        return None;
                    }
                    meets |= left < -TOUCH && apart < 6.0;
                }
            }
        }
    }
    Some(meets)
}

/// The shelf's clashes, by a door turned step by step about its rear corner, and by the brackets as solids.
fn shelf_is_clear(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let told = |wanted: fn(&Clash) -> bool| cabinet.clashes.iter().any(wanted);
    let none = inputs.outside.at == Beside::Under && cabinet.outside.is_none();
    prop_assert_eq!(told(|clash| *clash == Clash::NothingUnder), none);
    let Some(shelf) = &cabinet.outside else { return Ok(()) };
    let place = bounds(&shelf.place);
    let solid = |block: Aabb| Cuboid::new(block.half_extents() - Vector::splat(1e-3));
    let mut struck = false;
    for door in cabinet.doors.iter().filter(|_| inputs.lie != Lie::Inset) {
        let leaf = bounds(&door.place);
        let (pivot, turn) = match cabinet.parts[door.on].what {
            What::Door { hinged: Hand::Left, .. } => (leaf.mins.x, 1.0),
            _ => (leaf.maxs.x, -1.0),
        };
        let pivot = Vector::new(pivot, leaf.mins.y, 0.0);
        for degrees in (92..=180).step_by(4) {
            let axis = Vector::new(0.0, 0.0, turn * f64::from(degrees).to_radians());
            let turned = Pose::rotation(axis);
            let pose = Pose::from_translation(pivot) * turned * Pose::from_translation(leaf.center() - pivot);
            // A door of another bay comes over the front, not past the side.
            struck |= intersection_test(&pose, &solid(leaf), &Pose::from_translation(place.center()), &solid(place))
                .unwrap()
                .intersecting
                && door.place.from[0].min(cabinet.width.minus(door.place.to[0]).unwrap()) < cabinet.bays[0].0;
        }
    }
    prop_assert_eq!(told(|clash| matches!(clash, Clash::OutsideInDoorsWay { .. })), struck);
    if let Some(meets) = screw_meets_hole(cabinet, shelf) {
        prop_assert_eq!(told(|clash| *clash == Clash::BracketMeetsHole), meets);
    }
    let rail = cabinet.hooks.as_ref().map(|rail| bounds(&cabinet.parts[rail.on].place));
    let meets = rail.filter(|_| shelf.at == Beside::Under).is_some_and(|rail| {
        let holder = &cabinet.parts[shelf.held_by].place;
        shelf.on_holder.iter().any(|at| {
            let x = holder.from[0].as_mm() + at.as_mm();
            let corner = Vector::new(x - 5.0, place.mins.y, -2.0);
            let bracket = Aabb::new(corner, Vector::new(x + 5.0, place.mins.y + shelf.arm.as_mm(), -0.5));
            bracket.intersection(&rail).is_some_and(|both| both.extents().min_element() > TOUCH)
        })
    });
    prop_assert_eq!(told(|clash| *clash == Clash::BracketsMeetHooks), meets);
    Ok(())
}

pub(super) fn outside_fits(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    hooks_fit(cabinet)?;
    shelf_fits(inputs, cabinet)?;
    shelf_is_clear(inputs, cabinet)?;
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

/// The same for a shelf: in the air, too far forward, brackets that miss it or what holds it, a clash that is not told.
#[test]
fn a_shelf_put_on_wrongly_is_seen() {
    for at in [Beside::Left, Beside::Right, Beside::Under] {
        let mut inputs = Inputs { edging: Edging::Band, ..Inputs::default() };
        inputs.outside.at = at;
        inputs.hooks.count = "3".into();
        let good = solve(&inputs).unwrap();
        assert!(outside_fits(&inputs, &good).is_ok(), "{:?}", outside_fits(&inputs, &good));
        let wrong = |change: &dyn Fn(&mut OutsideShelf)| {
            let mut cabinet = good.clone();
            change(cabinet.outside.as_mut().unwrap());
            outside_fits(&inputs, &cabinet).is_err()
        };
        let ten = || Length::mm(10, 1).unwrap();
        assert!(wrong(&|shelf| shelf.place.to[1] = shelf.place.to[1].plus(ten()).unwrap()));
        assert!(wrong(&|shelf| shelf.brackets[0] = ten()));
        assert!(wrong(&|shelf| shelf.on_holder[0] = ten()));
        assert!(wrong(&|shelf| shelf.screws[0] = ten()));
        assert!(wrong(&|shelf| shelf.shelf_screws[1] = shelf.arm.plus(ten()).unwrap()));
        assert!(wrong(&|shelf| shelf.screw = shelf.screw.plus(ten()).unwrap()));
        assert!(wrong(&|shelf| shelf.shelf_screw = shelf.shelf_screw.plus(ten()).unwrap()));
        // All of it moved by a centimetre along each way: off the side, off the height, off its own brackets.
        for axis in 0..3 {
            let mut moved = good.clone();
            let on = moved.outside.as_ref().unwrap().on;
            let away = |block: &mut Block| {
                for corner in [&mut block.from, &mut block.to] {
                    corner[axis] = corner[axis].minus(ten()).unwrap();
                }
            };
            away(&mut moved.outside.as_mut().unwrap().place);
            let own = |what: What| what == What::OutsideShelf || what == What::Edging { on };
            moved.parts.iter_mut().filter(|part| own(part.what)).for_each(|part| away(&mut part.place));
            assert!(outside_fits(&inputs, &moved).is_err(), "{at:?} moved along {axis}");
        }
        let mut silent = good.clone();
        silent.clashes.push(Clash::OutsideInDoorsWay { bay: 1 });
        assert!(outside_fits(&inputs, &silent).is_err());
        let (was, mut silent) = (good.clashes.len(), good.clone());
        silent.clashes.clear();
        assert_eq!(outside_fits(&inputs, &silent).is_err(), was > 0);
    }
}
