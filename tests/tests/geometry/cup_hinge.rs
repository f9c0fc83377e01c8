//! Doors put in front of their opening as polygons of the `geo` library: what they cover, what they leave open, and
//! whether cups and plates meet. Only the answer's sizes are used, none of its formulas.

use geo::{Area, BooleanOps, Contains, Intersects, Polygon, Rect, coord};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::cup_hinge::{self, Answer, Doors, Find, Inputs, Mounting, Spread, Wish, solve};
use scantling::measure::{Length, Reading};

/// mm². Polygon clipping snaps to a grid of about a billionth of the shape, here up to 10 m of edges by 1e-5 mm; a
/// tenth of a millimetre of gap would be 30 mm² at least.
const AREA: f64 = 0.1;

fn polygon(left: f64, bottom: f64, right: f64, top: f64) -> Polygon {
    Rect::new(coord! { x: left, y: bottom }, coord! { x: right, y: top }).to_polygon()
}

fn shown(tenths: i64) -> Reading {
    Reading::mm(&format!("{tenths}/10"))
}

fn of(rect: cup_hinge::Rect) -> Polygon {
    let (left, front) = (rect.left.as_mm(), rect.front.as_mm());
    polygon(left, front, left + rect.width.as_mm(), front + rect.depth.as_mm())
}

/// Front view: the opening from the origin, its doors hung by the overlays, and the sides left and right of it.
struct Front {
    doors: Vec<Polygon>,
    opening: Polygon,
    left_side: Polygon,
    right_side: Polygon,
    height: f64,
}

impl Front {
    fn new(inputs: &Inputs, answer: &Answer, bottom_overlay: f64, side: f64) -> Self {
        let mm = |reading: &Reading| reading.length().unwrap().as_mm();
        let (width, height) = (mm(&inputs.opening_width), mm(&inputs.opening_height));
        let (wide, high) = (answer.door_width.nominal().as_mm(), answer.door_height.nominal().as_mm());
        let (left, bottom) = (-answer.overlay.as_mm(), -bottom_overlay);
        let mut doors = vec![polygon(left, bottom, left + wide, bottom + high)];
        if inputs.doors == Doors::Two {
            // The second door hangs on the right side, by its own overlay.
            let right = width - left;
            doors.push(polygon(right - wide, bottom, right, bottom + high));
        }
        Self {
            doors,
            opening: polygon(0.0, 0.0, width, height),
            left_side: polygon(-side, -500.0, 0.0, height + 500.0),
            right_side: polygon(width, -500.0, width + side, height + 500.0),
            height: high,
        }
    }

    fn covered(&self, what: &Polygon) -> f64 {
        self.doors.iter().map(|door| what.intersection(door).unsigned_area()).sum()
    }
}

fn near(got: f64, want: f64, within: f64, what: &str) -> Result<(), TestCaseError> {
    prop_assert!((got - want).abs() <= within, "{}: got {}, want {}", what, got, want);
    Ok(())
}

proptest! {
    #[test]
    fn doors_over_the_sides_cover_what_they_say(
        doors in select(Doors::ALL),
        sizes in (3000_i64..12_000, 4000_i64..22_000),
        overlays in (20_i64..180, 20_i64..180, -30_i64..200, -30_i64..200),
        gap in 0_i64..60,
    ) {
        let (width, height) = sizes;
        let (overlay, other, top, bottom) = overlays;
        let inputs = Inputs {
            find: Find::PlateHeight,
            wish: Wish::Overlay,
            overlay: shown(overlay),
            other_overlay: shown(other),
            top_overlay: shown(top),
            bottom_overlay: shown(bottom),
            gap: shown(gap),
            doors,
            opening_width: shown(width),
            opening_height: shown(height),
            side: Reading::mm("18"),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let tenth = |tenths: i64| tenths as f64 / 10.0;
        let front = Front::new(&inputs, &answer, tenth(bottom), 18.0);
        near(front.covered(&front.left_side), tenth(overlay) * front.height, AREA, "left side")?;
        let on_the_right = if doors == Doors::Two { overlay } else { other };
        near(front.covered(&front.right_side), tenth(on_the_right) * front.height, AREA, "right side")?;
        // From end to end of the opening only the gap of a pair, and what top and bottom fall short by, stay open.
        let seen_height = tenth(height) + tenth(top.min(0)) + tenth(bottom.min(0));
        let seen_width = tenth(width) - if doors == Doors::Two { tenth(gap) } else { 0.0 };
        near(front.covered(&front.opening), seen_width * seen_height, AREA, "opening")?;
        near(front.height, tenth(height + top + bottom), 1e-9, "height")?;
        near(answer.gap.as_mm(), 18.0 - tenth(overlay), 1e-9, "reveal")?;
    }

    #[test]
    fn inset_doors_leave_the_gap_all_round(
        doors in select(Doors::ALL),
        sizes in (3000_i64..12_000, 4000_i64..22_000),
        gap in 1_i64..60,
    ) {
        let (width, height) = sizes;
        let inputs = Inputs {
            mounting: Mounting::Inset,
            doors,
            gap: shown(gap),
            opening_width: shown(width),
            opening_height: shown(height),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let gap = gap as f64 / 10.0;
        let front = Front::new(&inputs, &answer, -gap, 18.0);
        let mut open = geo::MultiPolygon::new(vec![front.opening.clone()]);
        for door in &front.doors {
            prop_assert!(front.opening.contains(door));
            open = open.difference(door);
        }
        // A frame of the gap's width, and one or no strip of it in the middle.
        let (w, h) = (width as f64 / 10.0, height as f64 / 10.0);
        let middle = if doors == Doors::Two { gap * (h - 2.0 * gap) } else { 0.0 };
        near(open.unsigned_area(), w * h - (w - 2.0 * gap) * (h - 2.0 * gap) + middle, AREA, "what stays open")?;
    }

    #[test]
    fn cups_and_plates_meet_within_door_and_opening(
        mounting in select(Mounting::ALL),
        spread in select(Spread::ALL),
        height in 6000_i64..22_000,
        bottom in -30_i64..160,
        datum in 0_i64..300,
        hinges in 2_u32..8,
    ) {
        let inputs = Inputs {
            mounting,
            spread,
            opening_height: shown(height),
            bottom_overlay: shown(bottom),
            datum: shown(datum),
            hinges: hinges.to_string().as_str().into(),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        prop_assert_eq!(answer.hinges.len(), hinges as usize);
        // Upwards from the lower edge of the opening: where the door's end and the datum lie.
        let door_end = if mounting == Mounting::Inset { answer.gap.as_mm().max(3.0) } else { -(bottom as f64) / 10.0 };
        let datum_at = -(datum as f64) / 10.0;
        let mut last: Option<Length> = None;
        for hinge in &answer.hinges {
            let cup = door_end + hinge.on_door.as_mm();
            near(datum_at + hinge.on_side.as_mm(), cup, 1e-9, "cup and plate")?;
            near(hinge.upper_hole.as_mm() - hinge.lower_hole.as_mm(), 32.0, 1e-9, "holes")?;
            near(hinge.upper_hole.as_mm() + hinge.lower_hole.as_mm(), 2.0 * hinge.on_side.as_mm(), 1e-9, "middle")?;
            prop_assert!(hinge.on_door.as_mm() >= 100.0);
            prop_assert!(hinge.on_door.as_mm() <= answer.door_height.nominal().as_mm() - 100.0 + 1e-9);
            if let Some(last) = last {
                let apart = hinge.on_door.minus(last).unwrap();
                prop_assert!(apart.is_positive());
                if spread == Spread::Pitch {
                    prop_assert_eq!(apart.ratio(Length::mm(32, 1).unwrap()).unwrap().denominator(), 1);
                }
            }
            last = Some(hinge.on_door);
        }
    }

    #[test]
    fn the_plan_shows_door_cup_and_plate_where_they_are(
        mounting in select(Mounting::ALL),
        sides in (120_i64..250, 140_i64..280),
        edge in 30_i64..70,
        gap in 1_i64..60,
    ) {
        let (side, thickness) = sides;
        let inputs = Inputs {
            mounting,
            side: shown(side),
            partition: shown(side),
            door_thickness: shown(thickness),
            cup_edge: shown(edge),
            gap: shown(gap),
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let plan = answer.plan;
        let (side, door, cup) = (of(plan.side), of(plan.door), of(plan.cup));
        near(door.intersection(&cup).unsigned_area(), cup.unsigned_area(), AREA, "the cup lies in the door")?;
        near(side.intersection(&door).unsigned_area(), 0.0, AREA, "door and side")?;
        near(plan.cup.left.as_mm() - plan.door.left.as_mm(), edge as f64 / 10.0, 1e-9, "edge to cup")?;
        let covered = side.unsigned_area() / plan.side.depth.as_mm() - plan.door.left.as_mm();
        near(covered, answer.overlay.as_mm(), 1e-9, "overlay")?;
        near(plan.plate.left.as_mm(), plan.side.width.as_mm(), 1e-9, "the plate stands on the inner face")?;
        if let Some(neighbour) = plan.neighbour {
            let apart = plan.door.left.as_mm() - neighbour.width.as_mm();
            near(apart, answer.gap.as_mm(), 1e-9, "gap between two doors")?;
            prop_assert!(!of(neighbour).intersects(&cup));
        }
    }
}
