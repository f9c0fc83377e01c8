//! Random cabinets put together as solids of the `parry3d` library: what overlaps, what lies in which groove, what the
//! doors cover, what the shelves lie on. Only the places of the parts are used, none of the cabinet's arithmetic.

use super::cabinet_joints::joints_meet;
use super::cabinet_outside::{outside_fits, with_outside};
use parry3d_f64::bounding_volume::{Aabb, BoundingVolume};
use parry3d_f64::math::{Pose, Vector};
use parry3d_f64::query::intersection_test;
use parry3d_f64::shape::{ConvexPolyhedron, Cuboid, Shape};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cabinet::{
    Back, Block, Cabinet, Corners, Door, Doors, Edging, Hand, Inputs, Lie, SizeFrom, Stands, Stock, What, solve,
};
use scantling::cards::joints::Kind;
use scantling::measure::{Length, Reading};

/// mm. What only touches comes out this far apart, or in one another, by rounding.
const TOUCH: f64 = 1e-6;
/// mm. Every solid is so much smaller all round than its part, so that those that only touch do not meet.
const SHRUNK: f64 = 1e-4;

/// A convex piece of a part.
struct Solid {
    part: usize,
    shape: Box<dyn Shape>,
    pose: Pose,
    bounds: Aabb,
}

fn corner(point: [Length; 3]) -> Vector {
    let [x, y, z] = point.map(Length::as_mm);
    Vector::new(x, y, z)
}

pub(super) fn bounds(block: &Block) -> Aabb {
    Aabb::new(corner(block.from), corner(block.to))
}

fn cuboid(part: usize, bounds: Aabb) -> Solid {
    let pose = Pose::from_translation(bounds.center());
    let half = (bounds.half_extents() - Vector::splat(SHRUNK)).max(Vector::splat(SHRUNK));
    Solid { part, shape: Box::new(Cuboid::new(half)), pose, bounds }
}

/// The extent of a box along x, y, z.
fn extents(of: Aabb) -> [f64; 3] {
    let size = of.extents();
    [size.x, size.y, size.z]
}

/// A block with others taken out of it: cut along every face, and the pieces outside of the others kept.
fn cut(part: usize, whole: Aabb, out: &[Aabb]) -> Vec<Solid> {
    let planes = |of: fn(Vector) -> f64| {
        let ends = out.iter().flat_map(|cut| [of(cut.mins), of(cut.maxs)]);
        let (low, high) = (of(whole.mins), of(whole.maxs));
        let mut planes: Vec<f64> = ends.map(|end| end.clamp(low, high)).chain([low, high]).collect();
        planes.sort_by(f64::total_cmp);
        planes.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        planes.windows(2).map(|pair| (pair[0], pair[1])).collect::<Vec<_>>()
    };
    let [xs, ys, zs] = [planes(|at| at.x), planes(|at| at.y), planes(|at| at.z)];
    let mut pieces = Vec::new();
    for x in &xs {
        for y in &ys {
            for z in &zs {
                let piece = Aabb::new(Vector::new(x.0, y.0, z.0), Vector::new(x.1, y.1, z.1));
                let middle = piece.center();
                if !out.iter().any(|cut| cut.contains_local_point(middle)) {
                    pieces.push(cuboid(part, piece));
                }
            }
        }
    }
    pieces
}

/// Every part as solids.
fn solids(cabinet: &Cabinet) -> Vec<Solid> {
    let mut solids = Vec::new();
    for (at, part) in cabinet.parts.iter().enumerate() {
        let whole = bounds(&part.place);
        match part.section {
            Some(quad) => {
                let ends = [whole.mins.x + SHRUNK, whole.maxs.x - SHRUNK];
                let middle = [0, 1].map(|axis| quad.iter().map(|point| point[axis]).sum::<f64>() / 4.0);
                // Towards the middle by more than enough, for that way is not square to every edge.
                let inward = |point: [f64; 2]| {
                    let away = [point[0] - middle[0], point[1] - middle[1]];
                    let far = away[0].hypot(away[1]);
                    [0, 1].map(|axis| point[axis] - away[axis] / far * 10.0 * SHRUNK)
                };
                let section = quad.map(inward);
                let points: Vec<Vector> =
                    ends.iter().flat_map(|x| section.map(|[y, z]| Vector::new(*x, y, z))).collect();
                let hull = ConvexPolyhedron::from_convex_hull(&points).unwrap();
                let bounds = hull.compute_aabb(&Pose::IDENTITY);
                solids.push(Solid { part: at, shape: Box::new(hull), pose: Pose::IDENTITY, bounds });
            }
            None => {
                let out: Vec<Aabb> = part.grooves.iter().map(bounds).collect();
                solids.extend(cut(at, whole, &out));
            }
        }
    }
    solids
}

pub(super) fn nothing_overlaps(cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let solids = solids(cabinet);
    for (at, solid) in solids.iter().enumerate() {
        for other in solids.iter().skip(at + 1).filter(|other| other.part != solid.part) {
            if !solid.bounds.intersects(&other.bounds) {
                continue;
            }
            let met = intersection_test(&solid.pose, &*solid.shape, &other.pose, &*other.shape).unwrap();
            let names = [solid, other].map(|solid| cabinet.parts[solid.part].what);
            prop_assert!(!met.intersecting, "{names:?} are in one another");
        }
    }
    Ok(())
}

/// Whether a part belongs to the box itself.
fn is_carcass(cabinet: &Cabinet, what: What) -> bool {
    match what {
        What::Side(_) | What::Top | What::Bottom => true,
        What::Edging { on } => is_carcass(cabinet, cabinet.parts[on].what),
        _ => false,
    }
}

fn outside_is_met(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let mut all = Aabb::new_invalid();
    for part in cabinet.parts.iter().filter(|part| is_carcass(cabinet, part.what)) {
        all.take_point(corner(part.place.from));
        all.take_point(corner(part.place.to));
    }
    let size = extents(all);
    let told = [cabinet.width, cabinet.depth, cabinet.height].map(Length::as_mm);
    prop_assert!(size.iter().zip(told).all(|(size, told)| (size - told).abs() < TOUCH), "{size:?} for {told:?}");
    if inputs.size_from == SizeFrom::Outside {
        let base = if inputs.stands == Stands::Plinth || inputs.stands == Stands::Legs {
            &inputs.base
        } else {
            &Reading::mm("0")
        };
        let typed = [&inputs.width, &inputs.depth, &inputs.height].map(|side| side.length().unwrap().as_mm());
        let wanted = [typed[0], typed[1], typed[2] - base.length().unwrap().as_mm()];
        prop_assert!(
            size.iter().zip(wanted).all(|(size, wanted)| (size - wanted).abs() < TOUCH),
            "{size:?} {wanted:?}"
        );
    }
    Ok(())
}

/// The back reaches into each groove by its depth, less its share of the clearance.
fn grooves_hold(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let back = cabinet.parts.iter().find(|part| part.what == What::Back).unwrap();
    let back = bounds(&back.place);
    let [depth, clearance] = [&inputs.groove_depth, &inputs.clearance].map(|side| side.length().unwrap().as_mm());
    let past = inputs.past_bottom;
    for part in cabinet.parts.iter().filter(|part| !part.grooves.is_empty()) {
        let board = bounds(&part.place);
        let inside = board.intersection(&back).map(extents);
        let (axis, wanted) = match part.what {
            What::Side(_) => (0, depth - clearance / 2.0),
            // With the lower edge free, all of the clearance is above.
            What::Top if past => (2, depth - clearance),
            _ => (2, depth - clearance / 2.0),
        };
        let deep = inside.map_or(0.0, |inside| inside[axis]);
        prop_assert!((deep - wanted).abs() < TOUCH, "{:?} holds {deep} for {wanted}", part.what);
        let free = part.grooves.iter().map(bounds).filter_map(|groove| groove.intersection(&back)).map(extents);
        let within: f64 = free.map(|size| size[axis]).sum();
        prop_assert!((within - wanted).abs() < TOUCH, "{:?}: {within} of {wanted} lie in the groove", part.what);
    }
    Ok(())
}

/// Front view: how far a door reaches past its opening, and what is left between doors.
fn doors_cover(inputs: &Inputs, cabinet: &Cabinet) -> Result<(), TestCaseError> {
    let [reveal, gap] = [&inputs.reveal, &inputs.gap].map(|side| side.length().unwrap().as_mm());
    let carcass = inputs.carcass.thickness.range().unwrap().nominal().as_mm();
    let last = u32::try_from(cabinet.bays.len()).unwrap();
    for door in &cabinet.doors {
        let What::Door { bay, hinged } = cabinet.parts[door.on].what else { panic!("no door") };
        let (from, to) = cabinet.bays[usize::try_from(bay - 1).unwrap()];
        let place = bounds(&door.place);
        // On the hinge side.
        let over = match hinged {
            Hand::Left => from.as_mm() - place.mins.x,
            Hand::Right => place.maxs.x - to.as_mm(),
        };
        let at_side = (hinged == Hand::Left && bay == 1) || (hinged == Hand::Right && bay == last);
        let wanted = match inputs.lie {
            Lie::Inset => -gap,
            Lie::Full if at_side => carcass - reveal,
            Lie::Full | Lie::Half => (carcass - gap) / 2.0,
        };
        prop_assert!((over - wanted).abs() < TOUCH, "bay {bay} {hinged:?}: {over} for {wanted}");
        let (low, high) = (carcass - place.mins.z, place.maxs.z - (cabinet.height.as_mm() - carcass));
        let upright = if inputs.lie == Lie::Inset { -gap } else { carcass - reveal };
        prop_assert!([low, high].iter().all(|over| (over - upright).abs() < TOUCH), "{low} {high} for {upright}");
    }
    let mut edges: Vec<(f64, f64)> =
        cabinet.doors.iter().map(|door| bounds(&door.place)).map(|b| (b.mins.x, b.maxs.x)).collect();
    edges.sort_by(|a, b| a.0.total_cmp(&b.0));
    if inputs.lie != Lie::Inset {
        for pair in edges.windows(2) {
            let between = pair[1].0 - pair[0].1;
            prop_assert!((between - gap).abs() < TOUCH, "{between} between two doors, for {gap}");
        }
    } else if inputs.doors == Doors::Pair {
        for pair in edges.chunks(2) {
            let between = pair[1].0 - pair[0].1;
            prop_assert!((between - gap).abs() < TOUCH, "{between} between two inset doors, for {gap}");
        }
    }
    Ok(())
}

/// Every loose shelf lies on pins of both boards beside it, no plate is in its way; cups lie level with their plates.
fn holes_meet(cabinet: &Cabinet) -> Result<(), TestCaseError> {
    for part in &cabinet.parts {
        let What::LooseShelf { bay, .. } = part.what else { continue };
        let shelf = bounds(&part.place);
        let own: Vec<_> = cabinet.rows.iter().filter(|rows| rows.bay == bay).collect();
        prop_assert_eq!(own.len(), 2);
        for rows in own {
            let board = bounds(&cabinet.parts[rows.on].place);
            let front = cabinet.depth.as_mm();
            for row in std::iter::once(&rows.rows.front).chain(&rows.rows.rear) {
                let on = row.holes.iter().any(|hole| {
                    let middle = rows.datum.as_mm() + hole.at.as_mm();
                    (middle + rows.rows.hole.as_mm() / 2.0 - shelf.mins.z).abs() < TOUCH
                });
                prop_assert!(on, "{:?} has no pin in {:?}", part.what, cabinet.parts[rows.on].what);
                let y = front - row.from_front.as_mm();
                prop_assert!(shelf.mins.y < y && y < shelf.maxs.y, "a pin at {y} is not under {shelf:?}");
                prop_assert!(board.mins.y < y && y < front, "a hole at {y} is not in {board:?}");
            }
            for plate in &rows.rows.plates {
                let [low, high] = [plate.near_hole, plate.far_hole].map(|at| rows.datum.as_mm() + at.as_mm());
                prop_assert!(high < shelf.mins.z || low > shelf.maxs.z, "a plate lies behind {:?}", part.what);
            }
        }
    }
    for door in &cabinet.doors {
        cups_meet_plates(cabinet, door)?;
    }
    Ok(())
}

fn cups_meet_plates(cabinet: &Cabinet, door: &Door) -> Result<(), TestCaseError> {
    let What::Door { bay, hinged } = cabinet.parts[door.on].what else { panic!("no door") };
    let face = if hinged == Hand::Left { Hand::Right } else { Hand::Left };
    let rows = cabinet.rows.iter().find(|rows| rows.bay == bay && rows.face == face).unwrap();
    prop_assert_eq!(rows.rows.plates.len(), door.cups.len());
    prop_assert!(door.cups.len() >= 2);
    for (plate, cup) in rows.rows.plates.iter().zip(&door.cups) {
        let (plate, cup) = (rows.datum.as_mm() + plate.middle.as_mm(), door.place.from[2].as_mm() + cup.as_mm());
        prop_assert!((plate - cup).abs() < TOUCH, "plate at {plate}, cup at {cup}");
    }
    Ok(())
}

fn tenths(range: std::ops::Range<i64>) -> impl Strategy<Value = Reading> {
    range.prop_map(|tenths| Reading::mm(&format!("{}.{}", tenths / 10, tenths % 10)))
}

prop_compose! {
    fn built()(
        size_from in select(SizeFrom::ALL),
        corners in select(Corners::ALL),
        back in select(Back::ALL),
        stands in select(Stands::ALL),
        doors in select(Doors::ALL),
        lie in select(Lie::ALL),
        edging in select(Edging::ALL),
        joint in select(Kind::ALL),
        past_bottom in any::<bool>(),
    ) -> Inputs {
        Inputs { size_from, corners, back, stands, doors, lie, edging, joint, past_bottom, ..Inputs::default() }
    }
}

prop_compose! {
    pub(super) fn cabinet()(
        mut inputs in built(),
        width in tenths(3000..16000),
        height in tenths(3000..22000),
        depth in tenths(2200..6500),
        carcass in tenths(140..220),
        shelf in tenths(120..250),
        back in tenths(30..80),
        door in tenths(155..220),
        strip in tenths(120..200),
        groove_depth in tenths(40..70),
        clearance in tenths(0..30),
        edging in tenths(3..60),
        bays in 1..5_u32,
        (fixed, loose, rail) in (0..3_u32, 0..5_u32, 0..9_u32),
        (reveal, gap) in (tenths(5..30), tenths(10..40)),
        (pin, dowel) in (tenths(30..80), tenths(50..100)),
    ) -> Inputs {
        inputs.width = width;
        inputs.height = height;
        inputs.depth = depth;
        inputs.carcass.thickness = carcass;
        inputs.shelf.thickness = shelf;
        inputs.back_board.thickness = back;
        inputs.door.thickness = door;
        inputs.strip.thickness = strip;
        inputs.groove_depth = groove_depth;
        inputs.clearance = clearance;
        inputs.edging_thickness = edging;
        inputs.bays = bays.to_string().as_str().into();
        inputs.fixed_shelves = fixed.to_string().as_str().into();
        inputs.loose_shelves = loose.to_string().as_str().into();
        if rail > 0 && rail <= bays {
            inputs.rail_bay = rail.to_string().as_str().into();
        }
        inputs.reveal = reveal;
        inputs.gap = gap;
        inputs.holes.pin = pin;
        inputs.joint_sizes.dowel_diameter = dowel;
        inputs
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, max_global_rejects: 3000, ..ProptestConfig::default() })]

    #[test]
    fn a_cabinet_goes_together_as_it_says(inputs in with_outside()) {
        // What cannot be built is refused with a reason; at most half of what is drawn may be.
        let Ok(cabinet) = solve(&inputs) else { return Err(TestCaseError::reject("cannot be built")) };
        nothing_overlaps(&cabinet)?;
        outside_is_met(&inputs, &cabinet)?;
        grooves_hold(&inputs, &cabinet)?;
        doors_cover(&inputs, &cabinet)?;
        holes_meet(&cabinet)?;
        joints_meet(&cabinet)?;
        outside_fits(&inputs, &cabinet)?;
    }
}

/// The checks themselves can refuse: a shelf pushed into the side, a back too narrow, a door hung too far out.
#[test]
fn a_cabinet_put_together_wrongly_is_seen() {
    let inputs = Inputs::default();
    let good = solve(&inputs).unwrap();
    let place = |cabinet: &mut Cabinet, what: fn(&What) -> bool, axis: usize, by: Length| {
        let part = cabinet.parts.iter_mut().find(|part| what(&part.what)).unwrap();
        part.place.from[axis] = part.place.from[axis].plus(by).unwrap();
        part.place.to[axis] = part.place.to[axis].plus(by).unwrap();
    };
    let two = Length::mm(2, 1).unwrap();
    let mut pushed = good.clone();
    place(&mut pushed, |what| matches!(what, What::LooseShelf { .. }), 0, two);
    assert!(nothing_overlaps(&good).is_ok() && nothing_overlaps(&pushed).is_err());
    let mut shifted = good.clone();
    place(&mut shifted, |what| *what == What::Back, 0, two);
    assert!(grooves_hold(&inputs, &good).is_ok() && grooves_hold(&inputs, &shifted).is_err());
    let mut hung = good.clone();
    hung.doors[0].place.from[0] = two;
    assert!(doors_cover(&inputs, &good).is_ok() && doors_cover(&inputs, &hung).is_err());
    let mut raised = good.clone();
    place(&mut raised, |what| matches!(what, What::LooseShelf { .. }), 2, two);
    assert!(holes_meet(&good).is_ok() && holes_meet(&raised).is_err());
    let mut joined = good.clone();
    joined.joins[0].lines[0] = two;
    assert!(joints_meet(&good).is_ok() && joints_meet(&joined).is_err());
    let mut wide = good.clone();
    place(&mut wide, |what| matches!(what, What::Side(Hand::Right)), 0, two);
    assert!(outside_is_met(&inputs, &good).is_ok() && outside_is_met(&inputs, &wide).is_err());
    assert!(good.parts.iter().any(|part| part.stock == Stock::Back));
}
