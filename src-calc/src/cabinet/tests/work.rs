//! The order of work by hand: where joints and holes are on the parts that are set up.

use super::*;
use crate::drawing::{Layer, Shape};

/// The marks of every step in which a face of this part is set up for joints, with the line that they are on.
fn on_faces(cabinet: &Cabinet, what: What) -> Vec<(Vec<Length>, Length)> {
    let on = cabinet.parts.iter().position(|part| part.what == what);
    let marks = |step: &Step| match &step.setup {
        Setup::JoinFace { marks, line, .. } if on.is_some_and(|on| step.parts.contains(&on)) => {
            Some((marks.clone(), *line))
        }
        _ => None,
    };
    cabinet.work.iter().filter_map(marks).collect()
}

/// A fixed shelf behind inset doors begins 19.2 + 2 behind the sides' front edges: its marks on them lie so much farther
/// back than those in its own ends.
#[test]
fn faces_are_marked_from_their_own_front_edge() -> Checked {
    let inputs = Inputs {
        lie: Lie::Inset,
        door: Board { thickness: Reading::mm("19.2"), ..Inputs::default().door },
        fixed_shelves: "1".into(),
        ..Inputs::default()
    };
    let cabinet = solved(&inputs)?;
    let (at, shelf) = cabinet
        .parts
        .iter()
        .enumerate()
        .find(|(_, part)| matches!(part.what, What::FixedShelf { .. }))
        .ok_or("no shelf")?;
    let in_ends = cabinet.work.iter().find_map(|step| match &step.setup {
        Setup::Join { marks, .. } if step.parts.contains(&at) => Some(marks.clone()),
        _ => None,
    });
    let in_ends = in_ends.ok_or("no joints in its ends")?;
    let behind = mm("19.2 + 2")?;
    let wanted = in_ends.iter().map(|mark| mark.plus(behind)).collect::<Result<Vec<_>, _>>()?;
    let z = shelf.place.along(Axis::Up);
    let line = z.0.plus(z.1)?.times(1, 2)?;
    for side in [What::Side(Hand::Left), What::Side(Hand::Right)] {
        assert!(on_faces(&cabinet, side).contains(&(wanted.clone(), line)), "{side:?}: {:?}", on_faces(&cabinet, side));
    }
    // The bottom is flush with the sides: 14.6 / 2 up, its marks as they are.
    let low = mm("7.3")?;
    let bottom = on_faces(&cabinet, What::Side(Hand::Left)).into_iter().find(|(_, line)| *line == low);
    let flush = cabinet.joins.iter().find(|join| join.gap.is_zero() && join.lines.contains(&low));
    assert_eq!(bottom.map(|(marks, _)| marks), flush.map(|join| join.marks.marks.clone()));
    assert!(flush.is_some());
    Ok(())
}

/// The stop of a row is set for a hole that is drilled.
#[test]
fn a_row_begins_at_its_first_hole() -> Checked {
    let cabinet = solved(&Inputs::default())?;
    let mut rows = 0;
    for step in &cabinet.work {
        let Setup::Row { from_front, first, hole, .. } = &step.setup else { continue };
        rows += 1;
        assert_eq!(*hole, mm("5")?);
        for on in &step.parts {
            let own = cabinet.rows.iter().filter(|rows| rows.on == *on);
            let mut own = own.flat_map(|rows| std::iter::once(&rows.rows.front).chain(&rows.rows.rear));
            assert!(own.any(|row| row.from_front == *from_front && row.holes[0].at == *first), "{first}");
        }
    }
    assert!(rows >= 2);
    Ok(())
}

/// Under the rail that it hangs by, 300 high, loose shelves end 1170 − 14.6 − 300 up, and so do their holes.
#[test]
fn loose_shelves_stay_below_the_rail() -> Checked {
    let inputs = Inputs {
        stands: Stands::Rail,
        strip_height: Reading::mm("300"),
        loose_shelves: "6".into(),
        least_gap: Reading::mm("50"),
        ..Inputs::default()
    };
    let cabinet = solved(&inputs)?;
    let free_to = mm("1170 - 14.6 - 300")?;
    let shelves = cabinet.parts.iter().filter(|part| matches!(part.what, What::LooseShelf { .. }));
    let tops: Vec<Length> = shelves.map(|part| part.place.along(Axis::Up).1).collect();
    assert!(tops.len() == 6 && tops.iter().all(|top| *top <= free_to), "{tops:?}");
    for row in cabinet.rows.iter().flat_map(|rows| std::iter::once(&rows.rows.front).chain(&rows.rows.rear)) {
        let pins = row.holes.iter().filter(|hole| !hole.plate);
        assert!(pins.clone().count() > 0 && pins.clone().all(|hole| hole.at <= free_to), "{row:?}");
    }
    // One shelf that is fixed half way up leaves the rail no more than what is above it: (1140.8 − 14.6) / 2.
    let fixed = Inputs { fixed_shelves: "1".into(), strip_height: Reading::mm("563.2"), ..inputs };
    let most = solve(&fixed).err().and_then(|problems| problems.of("strip_height").map(ToString::to_string));
    assert!(most.as_deref().is_some_and(|most| most.contains("563.1 mm")), "{most:?}");
    Ok(())
}

#[test]
fn doors_that_cover_nothing_or_touch_are_named() -> Checked {
    let bare = Inputs { reveal: Reading::mm("14.6"), ..Inputs::default() };
    assert!(solve(&bare).is_err_and(|problems| problems.of("reveal").is_some()));
    let inset = solved(&Inputs { lie: Lie::Inset, ..bare });
    assert!(inset.is_ok(), "{inset:?}");
    let touching = solved(&Inputs { gap: Reading::mm("0"), ..Inputs::default() })?;
    let gaps = |cabinet: &Cabinet| cabinet.fits.iter().find(|fit| fit.what == Fitted::DoorGaps).map(|fit| fit.fits);
    assert_eq!((gaps(&touching), gaps(&solved(&Inputs::default())?)), (Some(false), Some(true)));
    Ok(())
}

#[test]
fn what_stands_may_tip_and_what_is_heavy_is_lifted_by_two() -> Checked {
    let standing = Inputs { stands: Stands::Plinth, doors: Doors::None, ..Inputs::default() };
    assert!(solved(&standing)?.cautions.contains(&Caution::TipsOver));
    let narrow = Inputs { width: Reading::mm("300"), ..standing.clone() };
    let narrow = solved(&narrow)?;
    assert!(narrow.weight_kg < 23.0 && !narrow.cautions.contains(&Caution::HeavyLift), "{}", narrow.weight_kg);
    let wide = Inputs { width: Reading::mm("1800"), bays: "3".into(), ..standing };
    let cabinet = solved(&wide)?;
    assert!(cabinet.weight_kg > 23.0 && cabinet.cautions.contains(&Caution::HeavyLift), "{}", cabinet.weight_kg);
    Ok(())
}

/// The rail's card says 72.5 below the top and, from the back, half of the 600 that hangers take: 1170 − 14.6 − 72.5 up on
/// the side, 14.6 less on the upright, which stands on the bottom; 650 − 21.1 − 300 from the front.
#[test]
fn sockets_are_level_on_both_boards() -> Checked {
    let inputs = Inputs { bays: "2".into(), rail_bay: "1".into(), depth: Reading::mm("650"), ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    let rail = cabinet.rail.as_ref().ok_or("no rail")?;
    assert_eq!((rail.room.middle_down, rail.room.from_back), (mm("72.5")?, mm("300")?));
    let at = |what: What| cabinet.parts.iter().position(|part| part.what == what).ok_or(format!("no {what:?}"));
    let (side, upright) = (at(What::Side(Hand::Left))?, at(What::Upright { after: 1 })?);
    let from_front = mm("650 - 21.1 - 300")?;
    let wanted = [
        Socket { on: side, face: Hand::Right, up: mm("1170 - 14.6 - 72.5")?, from_front },
        Socket { on: upright, face: Hand::Left, up: mm("1170 - 14.6 - 72.5 - 14.6")?, from_front },
    ];
    assert_eq!(cabinet.sockets, wanted);
    for socket in wanted {
        let setup = Setup::Socket { from_front: socket.from_front, up: socket.up };
        let step = cabinet.work.iter().find(|step| step.setup == setup).ok_or("no step")?;
        assert_eq!(step.parts, [socket.on]);
        let face = if socket.face == Hand::Right { Face::Right } else { Face::Left };
        let view = View::Part { on: socket.on, face };
        let drawn = drawings(&cabinet)?.into_iter().find(|drawn| drawn.view == view).ok_or("not drawn")?;
        // Both are drawn from their lower end; a right face has its front edge at the top, a left one at the bottom.
        let front = |y: f64| if face == Face::Right { 650.0 - y } else { y };
        let is_there = drawn.drawing.shapes.iter().any(|shape| match shape {
            Shape::Circle { layer: Layer::Mark, centre: [x, y], .. } => {
                (x - socket.up.as_mm()).abs() < 1e-6 && (front(*y) - from_front.as_mm()).abs() < 1e-6
            }
            _ => false,
        });
        assert!(is_there, "{view:?}: {:?}", drawn.drawing.shapes);
    }
    assert!(solved(&Inputs::default())?.sockets.is_empty());
    Ok(())
}
