//! Where joints are, by hand: what a cabinet hangs by, uprights with shelves on both faces, and the back in the way.

use super::*;
use crate::cards::joints::Kind;

fn join(cabinet: &Cabinet, edge: What, face: What) -> Result<&Join, String> {
    let at = |what: What| cabinet.parts.iter().position(|part| part.what == what);
    let (Some(edge), Some(face)) = (at(edge), at(face)) else { return Err(format!("no {edge:?} or no {face:?}")) };
    cabinet.joins.iter().find(|join| join.pairs.contains(&(edge, face))).ok_or_else(|| "not joined".to_owned())
}

fn marks(join: &Join) -> Result<Vec<Length>, LengthError> {
    join.marks.marks.iter().map(|mark| mark.plus(join.gap)).collect()
}

fn all(typed: &[&str]) -> Result<Vec<Length>, crate::measure::ReadError> {
    typed.iter().map(|typed| mm(typed)).collect()
}

/// The rail carries the whole cabinet. Its back face lies on the groove, which ends at 12 + 5.7 + 0.3; it is 70 high under
/// a top of 14.6, so its ends have two dowels, a quarter from either edge.
#[test]
fn what_a_cabinet_hangs_by_is_joined_to_it() -> Checked {
    let cabinet = solved(&Inputs { stands: Stands::Rail, ..Inputs::default() })?;
    let rail = What::HangingRail { bay: 1 };
    for side in [What::Side(Hand::Left), What::Side(Hand::Right)] {
        let ends = join(&cabinet, rail, side)?;
        assert_eq!((ends.along, ends.marks.marks.clone()), (Axis::Up, all(&["17.5", "52.5"])?));
        assert_eq!(marks(ends)?, all(&["14.6 + 17.5", "14.6 + 52.5"])?);
        assert_eq!(ends.lines, [mm("350 - 18 - 7.3")?, mm("350 - 18 - 7.3")?]);
    }
    // 800.8 long: seven dowels, 45 from its ends and 118.47 apart.
    let edge = join(&cabinet, rail, What::Top)?;
    assert_eq!((edge.along, edge.marks.marks.len(), edge.gap), (Axis::Across, 7, Length::ZERO));
    assert_eq!(edge.marks.marks[0], mm("45")?);
    let on = cabinet.parts.iter().position(|part| part.what == rail).ok_or("no rail")?;
    let with = |wanted: fn(&Setup) -> bool| {
        cabinet.work.iter().position(|step| wanted(&step.setup) && step.parts.contains(&on))
    };
    let order = [
        with(|setup| matches!(setup, Setup::Join { along: Axis::Up, .. })),
        with(|setup| matches!(setup, Setup::Assemble { .. })),
        with(|setup| matches!(setup, Setup::HangUp { .. })),
    ];
    assert!(order.iter().all(Option::is_some) && order.is_sorted(), "{order:?}");

    // The strip of a cleat likewise: it ends half a millimetre before the back, 15.1 from the rear edges.
    let cabinet = solved(&Inputs::default())?;
    let ends = join(&cabinet, What::CabinetStrip, What::Side(Hand::Left))?;
    assert_eq!(ends.lines[0], mm("350 - 15.1 + 7.3")?);
    assert!(join(&cabinet, What::CabinetStrip, What::Top).is_ok());
    Ok(())
}

/// Behind a back that is planted on, the strip reaches the top of the cabinet and is screwed into the rear edges.
#[test]
fn the_strip_behind_a_planted_back_is_screwed_into_the_edges() -> Checked {
    let cabinet = solved(&Inputs { back: Back::Planted, ..Inputs::default() })?;
    let strip = part(&cabinet, What::CabinetStrip)?;
    assert_eq!(along(strip, Axis::Up), [1100.0, 1170.0]);
    assert!(join(&cabinet, What::CabinetStrip, What::Top).is_err());
    let screws = cabinet.strip_screws.as_ref().ok_or("no screws")?;
    assert_eq!((screws.into_top.0, screws.into_sides.0), (mm("7.3")?, mm("35")?));
    // Through 14.6 and 5.7, and 35 less a skin of 3 into the edge: 52.3, sold as 50.
    assert_eq!(screws.screw, mm("50")?);
    let left = strip.place.from[0];
    let sides: Vec<Length> = screws.into_sides.1.iter().map(|at| at.plus(left)).collect::<Result<_, _>>()?;
    assert_eq!(sides, all(&["7.3", "830 - 7.3"])?);
    assert!(cabinet.work.iter().any(|step| step.setup == Setup::FixStrip));
    Ok(())
}

/// In a rabbet the strip is as much longer as both rabbets are deep, and lies as much higher; what is left of a side of
/// 14.6 behind a rabbet of 6 takes no deeper dowel than 8.6 less the skin of 3.
#[test]
fn the_strip_lies_in_the_rabbet() -> Checked {
    let cabinet = solved(&Inputs { back: Back::Rabbet, ..Inputs::default() })?;
    let strip = part(&cabinet, What::CabinetStrip)?;
    assert_eq!(along(strip, Axis::Across), [8.6, 821.4]);
    assert_eq!(along(strip, Axis::Up)[1].to_bits(), f64::to_bits(1161.4));
    let ends = join(&cabinet, What::CabinetStrip, What::Side(Hand::Left))?;
    assert!(ends.marks.fixing.in_other <= mm("5.6")?, "{}", ends.marks.fixing.in_other);
    Ok(())
}

/// Two shelves at one height meet an upright from both sides: 328.9 − 2 deep, dowels at 45, 163.45 and 281.9 of the one,
/// and half way between them of the other.
#[test]
fn joints_from_both_faces_of_an_upright_pass_each_other() -> Checked {
    let inputs = Inputs {
        width: Reading::mm("1200"),
        bays: "2".into(),
        fixed_shelves: "1".into(),
        loose_shelves: "0".into(),
        doors: Doors::None,
        ..Inputs::default()
    };
    let cabinet = solved(&inputs)?;
    let upright = What::Upright { after: 1 };
    let left = join(&cabinet, What::FixedShelf { bay: 1, number: 1 }, upright)?;
    let right = join(&cabinet, What::FixedShelf { bay: 2, number: 1 }, upright)?;
    assert_eq!(left.marks.marks, all(&["45", "163.45", "281.9"])?);
    assert_eq!(right.marks.marks, all(&["104.225", "222.675"])?);
    assert!(cabinet.clashes.is_empty(), "{:?}", cabinet.clashes);
    let on = cabinet.parts.iter().position(|part| part.what == upright).ok_or("no upright")?;
    // The order of work says which face each of them is in.
    for (join, face) in [(left, Hand::Left), (right, Hand::Right)] {
        let mut pairs = join.pairs.iter().zip(&join.lines);
        let (_, line) = pairs.find(|((_, face), _)| *face == on).ok_or("no pair")?;
        let (kind, along, line) = (Kind::Dowel, Axis::Deep, *line);
        let setup = Setup::JoinFace { kind, along, marks: marks(join)?, line };
        let step = cabinet.work.iter().find(|step| step.setup == setup).ok_or("no step")?;
        assert_eq!(step.faces, [(on, face)]);
    }
    // Slots are too long to pass each other, and screws come out under the other shelf.
    for joint in [Kind::Biscuit, Kind::ConnectingScrew] {
        let cabinet = solved(&Inputs { joint, ..inputs.clone() })?;
        assert_eq!(cabinet.clashes, [Clash::JointsMeet { board: on }], "{joint:?}");
    }
    Ok(())
}

/// Over the sides, a bottom that is ripped back for the back begins at 21.1: biscuits in the sides' ends keep off it.
#[test]
fn joints_keep_off_the_back() -> Checked {
    for joint in Kind::ALL {
        let inputs = Inputs { corners: Corners::Over, joint: *joint, ..Inputs::default() };
        let cabinet = solved(&inputs)?;
        let inner = mm("21.1")?;
        for (edge, face) in [(What::Side(Hand::Left), What::Bottom), (What::Side(Hand::Left), What::Top)] {
            let joined = join(&cabinet, edge, face)?;
            let half = joined.marks.fixing.along.times(1, 2)?;
            for mark in &joined.marks.marks {
                let rear = mm("350")?.minus(mark.plus(half)?)?;
                assert!(rear >= inner, "{joint:?} {face:?}: ends {rear} from the rear");
            }
        }
    }
    Ok(())
}
