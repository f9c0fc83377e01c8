//! Drawings of random cabinets, read back by libraries that know only the formats: `dxf` for DXF, `roxmltree` for SVG.

use super::cabinet::cabinet;
use dxf::entities::EntityType;
use proptest::prelude::*;
use scantling::cabinet::{Axis, Cabinet, Drawn, Face, Hand, Inputs, Stock, View, What, drawings, solve};
use scantling::drawing::{Drawing, Layer, Shape};
use std::collections::BTreeSet;

/// mm: six decimals are written.
const WRITTEN: f64 = 2e-6;

/// What a library found in a DXF file.
#[derive(Default)]
struct Found {
    lines: Vec<(String, [f64; 4])>,
    circles: Vec<(String, [f64; 3])>,
    texts: Vec<String>,
}

fn read(drawing: &Drawing) -> Found {
    let text = drawing.to_dxf();
    let file = dxf::Drawing::load(&mut text.as_bytes()).unwrap();
    let mut found = Found::default();
    for entity in file.entities() {
        let layer = entity.common.layer.clone();
        match &entity.specific {
            EntityType::Line(line) => found.lines.push((layer, [line.p1.x, line.p1.y, line.p2.x, line.p2.y])),
            EntityType::Circle(circle) => {
                found.circles.push((layer, [circle.center.x, circle.center.y, circle.radius]));
            }
            EntityType::Text(text) => found.texts.push(text.value.clone()),
            other => panic!("not written: {other:?}"),
        }
    }
    found
}

/// Every shape is found again, on its layer and at its place.
fn dxf_holds(drawing: &Drawing) -> Result<(), TestCaseError> {
    let found = read(drawing);
    let near = |a: f64, b: f64| (a - b).abs() < WRITTEN;
    for shape in &drawing.shapes {
        let layer = shape.layer().name();
        match shape {
            Shape::Line { points, closed, .. } => {
                let mut ends: Vec<_> = points.windows(2).map(|pair| [pair[0], pair[1]]).collect();
                if *closed {
                    ends.push([points[points.len() - 1], points[0]]);
                }
                for [from, to] in ends {
                    let there = found.lines.iter().any(|(on, line)| {
                        on == layer
                            && near(line[0], from[0])
                            && near(line[1], from[1])
                            && near(line[2], to[0])
                            && near(line[3], to[1])
                    });
                    prop_assert!(there, "no line on {layer} from {from:?} to {to:?}");
                }
            }
            Shape::Circle { centre, radius, .. } => {
                let there = found.circles.iter().any(|(on, circle)| {
                    on == layer && near(circle[0], centre[0]) && near(circle[1], centre[1]) && near(circle[2], *radius)
                });
                prop_assert!(there, "no circle on {layer} at {centre:?}");
            }
        }
    }
    let circles = drawing.shapes.iter().filter(|shape| matches!(shape, Shape::Circle { .. })).count();
    prop_assert_eq!(found.circles.len(), circles);
    prop_assert_eq!(found.texts.len(), drawing.dimensions.len() + drawing.notes.len());
    Ok(())
}

/// The picture is well formed, and everything in it lies on its paper.
fn svg_holds(drawing: &Drawing) -> Result<(), TestCaseError> {
    let text = drawing.to_svg("Seite <links> & \"rechts\"");
    let file = roxmltree::Document::parse(&text).unwrap();
    let root = file.root_element();
    prop_assert_eq!(root.attribute("aria-label"), Some("Seite <links> & \"rechts\""));
    let numbers = |words: &str| -> Vec<f64> {
        words
            .split(|letter: char| !(letter.is_ascii_digit() || ".-".contains(letter)))
            .filter_map(|one| one.parse().ok())
            .collect()
    };
    let paper = numbers(root.attribute("viewBox").unwrap());
    let inside =
        |x: f64, y: f64| x >= paper[0] - 1e-2 && x <= paper[0] + paper[2] + 1e-2 && y >= -1e-2 && y <= paper[3] + 1e-2;
    let mut circles = 0;
    for node in root.descendants() {
        let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
        match node.tag_name().name() {
            "circle" => {
                circles += 1;
                prop_assert!(inside(number("cx"), number("cy")));
            }
            "path" => {
                let at = numbers(node.attribute("d").unwrap());
                prop_assert!(at.len() >= 4 && at.len() % 2 == 0);
                prop_assert!(at.chunks(2).all(|point| inside(point[0], point[1])), "{at:?} on {paper:?}");
            }
            "text" => prop_assert!(inside(number("x"), number("y"))),
            _ => {}
        }
    }
    prop_assert_eq!(circles, drawing.shapes.iter().filter(|shape| matches!(shape, Shape::Circle { .. })).count());
    Ok(())
}

fn on(drawing: &Drawing, layer: Layer) -> usize {
    drawing.shapes.iter().filter(|shape| shape.layer() == layer).count()
}

/// A part is drawn in its own size, with as many holes as its rows and cups have, and its grooves.
fn part_is_whole(cabinet: &Cabinet, drawn: &Drawn) -> Result<(), TestCaseError> {
    let View::Part { on: at, face } = drawn.view else { return Ok(()) };
    let part = &cabinet.parts[at];
    let Some(Shape::Line { points, .. }) = drawn.drawing.shapes.first() else { panic!("no outline") };
    let size = [points[2][0] - points[0][0], points[2][1] - points[0][1]];
    let told = [part.length.as_mm(), part.width.as_mm()];
    prop_assert!(size.iter().zip(told).all(|(size, told)| (size - told).abs() < 1e-5), "{size:?} for {told:?}");
    let hand = match face {
        Face::Right => Some(Hand::Right),
        Face::Left => Some(Hand::Left),
        _ => None,
    };
    let rows = cabinet.rows.iter().filter(|rows| rows.on == at).flat_map(|rows| {
        let both = [Some(&rows.rows.front), rows.rows.rear.as_ref()].into_iter().zip(rows.through);
        both.filter_map(move |(row, through)| row.filter(|_| through || Some(rows.face) == hand))
    });
    // A hole that goes right through is one, whichever face it is counted in.
    let holes: BTreeSet<_> = rows.flat_map(|row| row.holes.iter().map(|hole| (row.from_front, hole.at))).collect();
    let holes = holes.len();
    let cups: usize = cabinet.doors.iter().filter(|door| door.on == at).map(|door| door.cups.len()).sum();
    let plinth =
        cabinet.plinth.as_ref().filter(|plinth| plinth.under == at).map_or(0, |plinth| 2 * plinth.screws.len());
    let strip = cabinet.strip_screws.as_ref().filter(|strip| strip.on == at);
    let strip = strip.map_or(0, |strip| strip.into_top.1.len() + strip.into_sides.1.len());
    prop_assert_eq!(on(&drawn.drawing, Layer::Hole), holes + cups + plinth + strip, "{:?}", part.what);
    prop_assert_eq!(on(&drawn.drawing, Layer::Groove), part.grooves.len());
    prop_assert_eq!(on(&drawn.drawing, Layer::Datum), 1);
    // Nothing is drilled beside the board.
    for shape in &drawn.drawing.shapes {
        if let Shape::Circle { centre: [x, y], layer: Layer::Hole, .. } = shape {
            prop_assert!(*x > 0.0 && *x < size[0] && *y > -20.0 && *y < size[1] + 20.0, "{shape:?} in {size:?}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, max_global_rejects: 600, ..ProptestConfig::default() })]

    #[test]
    fn drawings_read_back(inputs in cabinet()) {
        let Ok(cabinet) = solve(&inputs) else { return Err(TestCaseError::reject("cannot be built")) };
        let all = drawings(&cabinet).unwrap();
        for drawn in &all {
            dxf_holds(&drawn.drawing)?;
            svg_holds(&drawn.drawing)?;
            part_is_whole(&cabinet, drawn)?;
        }
        // Whatever is sawn is drawn, itself or one that is alike.
        for line in cabinet.cut_list.iter().filter(|line| !matches!(line.stock, Stock::Edging | Stock::Rail)) {
            let drawn = all.iter().any(|one| matches!(one.view, View::Part { on, .. } if line.parts.contains(&on)));
            prop_assert!(drawn, "{} is not drawn", line.name);
        }
    }
}

/// Seen from inside with its lower end to the left, a left side has its front edge at the top and a right side at the
/// bottom: they mirror each other, hole for hole.
#[test]
fn both_sides_mirror_each_other() {
    let cabinet = solve(&Inputs::default()).unwrap();
    let all = drawings(&cabinet).unwrap();
    let holes = |hand: Hand| -> Vec<[f64; 2]> {
        let drawn = all.iter().find(|one| match one.view {
            View::Part { on, .. } => cabinet.parts[on].what == What::Side(hand),
            _ => false,
        });
        let shapes = &drawn.unwrap().drawing.shapes;
        let mut holes: Vec<[f64; 2]> = shapes
            .iter()
            .filter_map(|shape| match shape {
                Shape::Circle { centre, layer: Layer::Hole, .. } => Some(*centre),
                _ => None,
            })
            .collect();
        holes.sort_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
        holes
    };
    let (left, right) = (holes(Hand::Left), holes(Hand::Right));
    // The front row lies 37 from the front edge: near the top of the left one, near the bottom of the right one.
    assert!(left.iter().any(|hole| (hole[1] - (350.0 - 37.0)).abs() < 1e-6));
    assert!(right.iter().any(|hole| (hole[1] - 37.0).abs() < 1e-6));
    let mut turned: Vec<[f64; 2]> = left.iter().map(|[x, y]| [*x, 350.0 - y]).collect();
    turned.sort_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
    assert!(!right.is_empty() && turned.len() == right.len());
    assert!(turned.iter().zip(&right).all(|(a, b)| (a[0] - b[0]).abs() < 1e-6 && (a[1] - b[1]).abs() < 1e-6));
    assert_eq!(cabinet.parts[0].place.along(Axis::Up), cabinet.parts[1].place.along(Axis::Up));
}
