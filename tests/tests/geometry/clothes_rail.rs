//! Rails against finite elements, and their cross-sections against polygons of thousands of sides, whose moments are
//! added up edge by edge. Nothing of the card's closed forms is used.

use crate::shelf::{ELEMENTS, finite_elements};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::clothes_rail::{Answer, Brackets, Inputs, Load, Material, Shape, solve};
use scantling::cards::shelf::Support;
use scantling::measure::Reading;
use std::f64::consts::PI;

const GRAVITY: f64 = 9.806_65;
/// Sides of a half circle: a polygon of so many is smaller than its curve by about 5 in ten million.
const SIDES: usize = 3000;

type Point = (f64, f64);

/// Half of an ellipse about `(cx, cy)` from one angle on, half a turn.
fn half_turn((cx, cy): Point, (a, b): Point, from: f64) -> impl Iterator<Item = Point> {
    (0..=SIDES).map(move |at| {
        let turned = from + PI * at as f64 / SIDES as f64;
        (cx + a * turned.cos(), cy + b * turned.sin())
    })
}

/// The outline `inset` millimetres inside of a rail's, middle at nought.
fn outline(shape: Shape, width: f64, height: f64, inset: f64) -> Vec<Point> {
    let (a, b) = (width / 2.0 - inset, height / 2.0 - inset);
    match shape {
        Shape::FlatBar => vec![(a, b), (-a, b), (-a, -b), (a, -b)],
        Shape::OvalTube if height > width => {
            let centre = (height - width) / 2.0;
            half_turn((0.0, centre), (a, a), 0.0).chain(half_turn((0.0, -centre), (a, a), PI)).collect()
        }
        Shape::OvalTube => {
            let centre = (width - height) / 2.0;
            half_turn((centre, 0.0), (b, b), -PI / 2.0).chain(half_turn((-centre, 0.0), (b, b), PI / 2.0)).collect()
        }
        Shape::RoundTube | Shape::RoundBar | Shape::EllipseTube => {
            half_turn((0.0, 0.0), (a, b), 0.0).chain(half_turn((0.0, 0.0), (a, b), PI)).collect()
        }
    }
}

/// Area, and second moment about the level axis through nought, by the edges of a polygon that runs leftwards round.
fn moments(polygon: &[Point]) -> (f64, f64) {
    let (mut area, mut second) = (0.0, 0.0);
    for (at, (x1, y1)) in polygon.iter().enumerate() {
        let (x2, y2) = polygon[(at + 1) % polygon.len()];
        let cross = x1 * y2 - x2 * y1;
        area += cross / 2.0;
        second += cross * (y1 * y1 + y1 * y2 + y2 * y2) / 12.0;
    }
    (area, second)
}

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

#[track_caller]
fn near(got: f64, want: f64, within: f64, what: &str) {
    assert!((got - want).abs() <= within, "{what}: the card says {got}, outside {want}");
}

/// A rail in tenths of a millimetre.
#[derive(Clone, Copy, Debug)]
struct Rail {
    shape: Shape,
    brackets: Brackets,
    height: u32,
    width: u32,
    wall: u32,
    span: u32,
    mass: u32,
}

impl Rail {
    fn check(&self) {
        let tenths = |tenths: u32| Reading::mm(&format!("{tenths}/10"));
        let mm = |tenths: u32| f64::from(tenths) / 10.0;
        let answer = solved(&Inputs {
            shape: self.shape,
            brackets: self.brackets,
            diameter: tenths(self.height),
            height: tenths(self.height),
            width: tenths(self.width),
            wall: tenths(self.wall),
            span: tenths(self.span),
            material: Material::Steel,
            load: Load::PerMetre,
            per_metre: self.mass.to_string().as_str().into(),
            ..Inputs::default()
        });
        let round = matches!(self.shape, Shape::RoundTube | Shape::RoundBar);
        let (height, span) = (mm(self.height), mm(self.span));
        let width = if round { height } else { mm(self.width) };
        let (mut area, mut second) = moments(&outline(self.shape, width, height, 0.0));
        if matches!(self.shape, Shape::RoundTube | Shape::OvalTube | Shape::EllipseTube) {
            let (hollow, of_hollow) = moments(&outline(self.shape, width, height, mm(self.wall)));
            (area, second) = (area - hollow, second - of_hollow);
        }
        near(answer.section.area_mm2, area, 2e-6 * width * height, "area");
        near(answer.section.second_moment_mm4, second, 2e-6 * width * height.powi(3), "second moment");

        let (support, bays) = match self.brackets {
            Brackets::None => (Support::Loose, 1.0),
            Brackets::Middle => (Support::OneDivider, 2.0),
            Brackets::Thirds => (Support::TwoDividers, 3.0),
        };
        // Steel as EN 1993-1-1 has it.
        let even = f64::from(self.mass) * GRAVITY / 1000.0 + area * 7850.0 * GRAVITY * 1e-9;
        let bent = finite_elements(support, span, 210_000.0 * second, even, 0.0);
        // The wall may be a hundredth of the height, and then the polygons' difference is a hundred times less sure.
        let within = 5e-4 * answer.instant_mm;
        for (place, node) in answer.line.iter().zip((0..=ELEMENTS).step_by(ELEMENTS / 40)) {
            near(place.instant_mm, bent.sag[node], within, "sag on the first day");
            near(place.long_term_mm, bent.sag[node], within, "sag after years");
        }
        let deepest = bent.sag.iter().copied().fold(0.0, f64::max);
        near(answer.instant_mm, deepest, 1.5e-3 * deepest, "deepest");
        for (carried, force) in answer.supports.iter().zip(&bent.reactions) {
            near(carried.force_n, *force, 1e-4 * even * span, "reaction");
        }
        assert_eq!(answer.supports.len(), bent.reactions.len());
        let stress = bent.moment * height / 2.0 / second;
        near(answer.stress.unwrap().stress_mpa, stress, 1e-3 * stress, "stress");
        near(answer.instant_ratio, span / bays / answer.instant_mm, 1e-9 * answer.instant_ratio, "ratio");
    }
}

#[test]
fn polygons_add_up_to_known_moments() {
    // A square of side 2 about its middle: 4, and 2·2³/12.
    let (area, second) = moments(&[(1.0, 1.0), (-1.0, 1.0), (-1.0, -1.0), (1.0, -1.0)]);
    near(area, 4.0, 1e-12, "area");
    near(second, 4.0 / 3.0, 1e-12, "second moment");
}

#[test]
fn every_shape_with_every_bracket_agrees() {
    for shape in Shape::ALL {
        for brackets in Brackets::ALL {
            Rail { shape: *shape, brackets: *brackets, height: 300, width: 150, wall: 10, span: 9000, mass: 40 }
                .check();
            Rail { shape: *shape, brackets: *brackets, height: 150, width: 300, wall: 10, span: 9000, mass: 40 }
                .check();
        }
    }
}

proptest! {
    #[test]
    fn any_rail_agrees_with_polygons_and_finite_elements(
        shape in select(Shape::ALL),
        brackets in select(Brackets::ALL),
        sizes in (100_u32..500, 100_u32..500, 5_u32..45),
        span in 3000_u32..25_000,
        mass in 0_u32..60,
    ) {
        let (height, width, wall) = sizes;
        Rail { shape, brackets, height, width, wall, span, mass }.check();
    }
}
