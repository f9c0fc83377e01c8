use super::*;
use crate::cabinet::{Inputs, solve};
use crate::drawing::Point;
use crate::measure::Reading;
use strips::{LONGEST_MM, strips};

type Checked = Result<(), Box<dyn std::error::Error>>;

fn demo() -> Result<Cabinet, String> {
    solve(&Inputs::default()).map_err(|problems| format!("{problems:?}"))
}

fn circles(drawing: &Drawing) -> Vec<(Point, f64)> {
    let circle = |shape: &Shape| match shape {
        Shape::Circle { centre, radius, .. } => Some((*centre, *radius)),
        Shape::Line { .. } => None,
    };
    drawing.shapes.iter().filter_map(circle).collect()
}

fn has_line(drawing: &Drawing, from: Point, to: Point) -> bool {
    let near = |a: Point, b: Point| (a[0] - b[0]).hypot(a[1] - b[1]) < 1e-9;
    drawing.shapes.iter().any(|shape| match shape {
        Shape::Line { points, .. } => matches!(points.as_slice(), [a, b] if near(*a, from) && near(*b, to)),
        Shape::Circle { .. } => false,
    })
}

#[test]
fn every_page_has_its_bars_and_lies_on_both_papers() -> Checked {
    let pages = templates(&demo()?)?;
    assert!(pages.len() > 2);
    for template in &pages {
        let drawing = &template.drawing;
        assert!(has_line(drawing, [0.0, 16.0], [100.0, 16.0]) && has_line(drawing, [0.0, 5.0], [101.6, 5.0]));
        // A4 less 12 mm on both sides is 186 wide; Letter less as much is 255 high, 25 of them for the heading.
        let [width, height] = drawing.clone().at_scale(1).size_mm();
        assert!(width <= 186.0 && height <= 230.0, "{width} × {height}");
        assert!(template.page >= 1 && template.page <= template.pages);
    }
    Ok(())
}

/// 22.5 from the edge to the middle of a cup of 35 mm that stands 5 in from it: (5 + 40) / 2, by hand.
#[test]
fn a_cup_lies_as_far_from_the_edge_as_its_card_says() -> Checked {
    let cabinet = demo()?;
    let pages = templates(&cabinet)?;
    let cups: Vec<&Template> = pages.iter().filter(|page| matches!(page.pattern, Pattern::Cup { .. })).collect();
    let [cup] = cups.as_slice() else { return Err("one page for both doors".into()) };
    let Pattern::Cup { doors } = &cup.pattern else { return Err("no cup".into()) };
    assert_eq!(doors.len(), 2);
    let [([x, _], radius)] = circles(&cup.drawing)[..] else { return Err("one circle".into()) };
    let door = cabinet.doors.first().ok_or("no door")?;
    assert!((x - radius - door.answer.cup_edge.as_mm()).abs() < 1e-9);
    assert!((x + radius - door.answer.cup_far_edge.as_mm()).abs() < 1e-9);
    Ok(())
}

/// What is printed of a row, strip after strip, is the row.
#[test]
fn the_strips_hold_every_hole_once_and_at_its_distance() -> Checked {
    let cabinet = demo()?;
    for (row, uses) in strips::rows(&cabinet)? {
        assert!(!uses.is_empty());
        let own = strips(&row.holes)?;
        let holes: Vec<Length> = own.iter().flat_map(|strip| strip.holes.clone()).collect();
        assert_eq!(holes, row.holes);
        for pair in own.windows(2) {
            let [before, after] = pair else { continue };
            assert_eq!(before.goes_on_above, after.goes_on_below);
            assert_eq!(before.goes_on_above, before.to == after.from);
        }
        for strip in &own {
            assert!(strip.to.minus(strip.from)? <= Length::mm(LONGEST_MM + 32, 1)?);
            assert!(strip.holes.iter().all(|hole| strip.from < *hole && *hole < strip.to));
        }
        let pages = row_pages(&row, &uses)?;
        let drawn: Vec<(Point, f64)> = pages.iter().flat_map(|page| circles(&page.drawing)).collect();
        assert_eq!(drawn.len(), row.holes.len());
        // Within a strip the holes are as far from one another as on the board.
        for (holes, drawn) in row.holes.windows(2).zip(drawn.windows(2)) {
            let ([low, high], [([x, y], _), ([next_x, next_y], _)]) = (holes, drawn) else { continue };
            if (x - next_x).abs() < 1e-9 && next_y > y {
                assert!((next_y - y - high.minus(*low)?.as_mm()).abs() < 1e-9);
            }
        }
    }
    Ok(())
}

/// The same row on both sides is one template.
#[test]
fn rows_that_are_alike_are_printed_once() -> Checked {
    let rows = strips::rows(&demo()?)?;
    let uses: Vec<Vec<bool>> = rows.iter().map(|(_, uses)| uses.iter().map(|one| one.rear).collect()).collect();
    assert_eq!(uses, [vec![false; 2], vec![true; 2]], "front and rear, each on both sides");
    Ok(())
}

/// Behind a strip of 140 mm the rear row lies 140 farther from the rear edge than behind none: no page is so wide.
#[test]
fn a_row_that_no_page_is_wide_enough_for_is_named() -> Checked {
    assert_eq!(without_template(&demo()?)?, []);
    let mut inputs = Inputs::default();
    (inputs.strip.thickness, inputs.strip_height) = (Reading::mm("140"), Reading::mm("200"));
    let cabinet = solve(&inputs).map_err(|problems| format!("{problems:?}"))?;
    let far = without_template(&cabinet)?;
    let [Pattern::Row { uses, from_edge, .. }] = far.as_slice() else { return Err(format!("{far:?}").into()) };
    assert!(uses.len() == 2 && uses.iter().all(|one| one.rear) && from_edge.as_mm() > 170.0, "{far:?}");
    let printed = templates(&cabinet)?;
    let is_it = |page: &Template| matches!(&page.pattern, Pattern::Row { uses: own, .. } if own == uses);
    assert!(!printed.iter().any(is_it) && !printed.is_empty());
    Ok(())
}

#[test]
fn far_holes_begin_a_strip_of_their_own_and_near_ones_are_joined() -> Checked {
    let mm = |at: &str| Reading::mm(at).length();
    let holes = ["57", "89", "569", "601"].map(mm).into_iter().collect::<Result<Vec<_>, _>>()?;
    let [low, high] = &strips(&holes)?[..] else { return Err("two strips".into()) };
    // From the lower end, and past the last hole by half a step; the far one by half a step before its first.
    assert_eq!((low.from, low.to, low.goes_on_above), (Length::ZERO, mm("105")?, false));
    assert_eq!((high.from, high.to, high.goes_on_below), (mm("553")?, mm("617")?, false));
    let step = (0..12).map(|at| Length::mm(41 + 32 * at, 1)).collect::<Result<Vec<_>, _>>()?;
    let joined = strips(&step)?;
    assert!(joined.len() > 1 && joined.iter().skip(1).all(|strip| strip.goes_on_below));
    // Midway between 137 (the last that has 16 left below 180, 169 has not) and 169.
    assert_eq!(joined.first().map(|strip| strip.to), Some(mm("153")?));
    assert_eq!(strips(&[])?, []);
    Ok(())
}
