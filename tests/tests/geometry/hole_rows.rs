//! Both sides set up in space by transforms of `nalgebra`: from the bench, where each lies with its inner face up, into
//! the cabinet. Only where the answer says each hole lies on the bench is used, none of its formulas.

use nalgebra::{Isometry3, Matrix3, Point3, Rotation3, Translation3, Vector3};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::hole_rows::{Answer, Datum, First, Hand, Hole, Inputs, Rear, Side, solve};
use scantling::measure::Reading;

/// mm; the coordinates are a few thousand, in doubles.
const NEAR: f64 = 1e-9;
/// From the inner face of the left side to that of the right one.
const CLEAR: f64 = 800.0;

fn tenth(tenths: i64) -> Reading {
    Reading::mm(&format!("{tenths}/10"))
}

/// The middles of a side's holes on the bench: x from its datum end, which lies to the left, y from the edge next to
/// the person, the inner face at z = 0. Front row first.
fn on_bench(answer: &Answer, hand: &Hand) -> Vec<Point3<f64>> {
    let row =
        |holes: &[Hole], y: f64| holes.iter().map(|hole| Point3::new(hole.at.as_mm(), y, 0.0)).collect::<Vec<_>>();
    let mut all = row(&answer.front.holes, hand.front.as_mm());
    if let (Some(rear), Some(y)) = (&answer.rear, hand.rear) {
        all.extend(row(&rear.holes, y.as_mm()));
    }
    all
}

/// From the bench into the cabinet, whose x runs to the right, y to the back and z up, with the left side's inner face
/// at x = 0. A rotation and a shift: a side is carried there, not turned inside out.
fn into_cabinet(answer: &Answer, hand: &Hand, datum: Datum) -> Isometry3<f64> {
    let up = if datum == Datum::Bottom { 1.0 } else { -1.0 };
    // The bench's z is the inner face's normal, its x the way from the datum end.
    let inwards = if hand.side == Side::Left { Vector3::x() } else { -Vector3::x() };
    let along = Vector3::z() * up;
    let across = inwards.cross(&along);
    let turn = Rotation3::from_matrix_unchecked(Matrix3::from_columns(&[along, across, inwards]));
    let volume: f64 = turn.matrix().determinant();
    assert!((volume - 1.0).abs() < NEAR, "a turn mirrors nothing");
    let (height, depth) = (answer.height.as_mm(), answer.depth.as_mm());
    let x = if hand.side == Side::Left { 0.0 } else { CLEAR };
    // The edge next to the person ends up in front or behind, by the turn alone.
    let y = if across.y > 0.0 { 0.0 } else { depth };
    let z = if datum == Datum::Bottom { 0.0 } else { height };
    Isometry3::from_parts(Translation3::new(x, y, z), turn.into())
}

fn placed(answer: &Answer, hand: &Hand, datum: Datum) -> Vec<Point3<f64>> {
    let carry = into_cabinet(answer, hand, datum);
    on_bench(answer, hand).iter().map(|point| carry * point).collect()
}

proptest! {
    #[test]
    fn left_and_right_are_mirrored_and_level(
        datum in select(Datum::ALL),
        first in select(First::ALL),
        rear in select(&[Rear::Balanced, Rear::Steps, Rear::None][..]),
        sizes in (3000_i64..25_000, 2000_i64..7000),
        setback in 200_i64..500,
        least in 50_i64..600,
        skip in (0_i64..20_000, 0_i64..5000),
        hinge in 0_i64..3000,
    ) {
        let (height, depth) = sizes;
        let inputs = Inputs {
            datum,
            first,
            rear,
            height: tenth(height),
            depth: tenth(depth),
            front_setback: tenth(setback),
            end_distance: tenth(least),
            shelves_from: Reading::default(),
            shelves_to: Reading::default(),
            skip_from: vec![tenth(skip.0)],
            skip_to: vec![tenth(skip.0 + skip.1)],
            hinges: vec![tenth(hinge)],
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let [left_hand, right_hand] = &answer.hands;
        prop_assert_eq!([left_hand.side, right_hand.side], [Side::Left, Side::Right]);
        let left = placed(&answer, left_hand, datum);
        let right = placed(&answer, right_hand, datum);
        prop_assert_eq!(left.len(), right.len());
        // The cabinet's middle plane is a mirror: x to CLEAR − x.
        let mirror = Matrix3::from_diagonal(&Vector3::new(-1.0, 1.0, 1.0));
        for (a, b) in left.iter().zip(&right) {
            let image = Point3::from(mirror * a.coords + Vector3::x() * CLEAR);
            prop_assert!((image - b).norm() < NEAR, "{} is not the image of {}", b, a);
            prop_assert!((a.z - b.z).abs() < NEAR, "a shelf on {} and {} is not level", a, b);
        }
        // The front row lies at its setback from the front of the cabinet, on both sides.
        for point in left.iter().chain(&right).filter(|point| point.y < depth as f64 / 20.0) {
            prop_assert!((point.y - setback as f64 / 10.0).abs() < NEAR, "{}", point);
        }
    }

    #[test]
    fn holes_are_whole_steps_apart_and_off_the_edges(
        first in select(First::ALL),
        rear in select(Rear::ALL),
        sizes in (3000_i64..25_000, 1200_i64..7000),
        least in 50_i64..600,
        skip in (0_i64..20_000, 0_i64..5000),
    ) {
        let (height, depth) = sizes;
        let inputs = Inputs {
            first,
            rear,
            height: tenth(height),
            depth: tenth(depth),
            end_distance: tenth(least),
            shelves_from: Reading::default(),
            shelves_to: Reading::default(),
            skip_from: vec![tenth(skip.0)],
            skip_to: vec![tenth(skip.0 + skip.1)],
            hinges: vec![],
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let tenths = |tenths: i64| tenths as f64 / 10.0;
        let (from, to) = (tenths(skip.0), tenths(skip.0 + skip.1));
        let points = on_bench(&answer, &answer.hands[1]);
        let start = answer.first.as_mm();
        // All that a 32 mm grid from the first hole has within both distances, less the stretch.
        let least = least as f64 / 10.0;
        let last = height as f64 / 10.0 - least;
        let grid = (0..).map(|at| start + 32.0 * f64::from(at)).take_while(|at| *at <= last + NEAR);
        // A place within a hair of an end of the stretch may fall either way here: doubles cannot tell.
        let wanted: Vec<f64> = grid.filter(|at| *at < from - NEAR || *at > to + NEAR).collect();
        let front = &points[..answer.front.holes.len()];
        for at in &wanted {
            let there = front.iter().filter(|point| (point.x - at).abs() < NEAR).count();
            prop_assert_eq!(there, 1, "the front row at {}", at);
        }
        for point in &points {
            let steps = (point.x - start) / 32.0;
            prop_assert!((steps - steps.round()).abs() < NEAR, "{} is off the steps", point);
            prop_assert!(point.x <= from + NEAR || point.x >= to - NEAR, "{} lies in the stretch", point);
            prop_assert!(point.x > least - NEAR && point.x < last + NEAR);
            prop_assert!(point.y > 2.5 && point.y < depth as f64 / 10.0 - 2.5);
        }
        // Two holes of 5 mm never meet.
        for (index, a) in points.iter().enumerate() {
            for b in &points[index + 1..] {
                prop_assert!((a - b).norm() > 5.0, "{} and {}", a, b);
            }
        }
        if first == First::Balanced {
            prop_assert!((height as f64 / 10.0 - (start + 32.0 * (answer.count - 1) as f64) - start).abs() < NEAR);
        }
    }

    #[test]
    fn a_cup_hangs_at_the_height_of_its_plate(wish in 300_i64..11_000, door in -300_i64..300) {
        let inputs = Inputs { hinges: vec![tenth(wish)], door_end: tenth(door), ..Inputs::default() };
        let answer = solve(&inputs).unwrap();
        let plate = answer.plates[0];
        let cup = door as f64 / 10.0 + plate.on_door.as_mm();
        let screws = [plate.near_hole.as_mm(), plate.far_hole.as_mm()];
        prop_assert!((screws[1] - screws[0] - 32.0).abs() < NEAR);
        prop_assert!((screws[0] + screws[1] - 2.0 * cup).abs() < NEAR, "cup at {}, screws at {:?}", cup, screws);
        for screw in screws {
            prop_assert!(on_bench(&answer, &answer.hands[1]).iter().any(|point| (point.x - screw).abs() < NEAR));
        }
    }
}
