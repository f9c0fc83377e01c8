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
/// and of the other 12 farther back, which is a dowel of 6 and twice the skin of 3.
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
    assert_eq!(right.marks.marks, all(&["57", "175.45", "293.9"])?);
    assert!(cabinet.clashes.is_empty(), "{:?}", cabinet.clashes);
    let on = cabinet.parts.iter().position(|part| part.what == upright).ok_or("no upright")?;
    // The order of work says which face each of them is in.
    for (join, face) in [(left, Hand::Left), (right, Hand::Right)] {
        let mut pairs = join.pairs.iter().zip(&join.lines);
        let (_, line) = pairs.find(|((_, face), _)| *face == on).ok_or("no pair")?;
        let (kind, along, line) = (Kind::Dowel, Axis::Deep, *line);
        let fixing = &join.marks.fixing;
        let bore = Bore { across: fixing.across, along: fixing.along, deep: Some(fixing.in_other) };
        let setup = Setup::JoinFace { kind, along, marks: marks(join)?, line, bore };
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

/// A shelf of the second bay has other marks in its left end, which meets the upright, than in its right one; pockets are
/// cut in ends alone, and a connecting screw goes right through the face.
#[test]
fn ends_and_bores_are_told() -> Checked {
    let inputs = Inputs {
        width: Reading::mm("1200"),
        bays: "2".into(),
        fixed_shelves: "1".into(),
        doors: Doors::None,
        ..Inputs::default()
    };
    let cabinet = solved(&inputs)?;
    let second = What::FixedShelf { bay: 2, number: 1 };
    let on = cabinet.parts.iter().position(|part| part.what == second).ok_or("no shelf")?;
    let ends = |cabinet: &Cabinet| -> Vec<Hand> {
        let joins = cabinet.work.iter().filter(|step| matches!(step.setup, Setup::Join { .. }));
        joins.flat_map(|step| &step.faces).filter(|(part, _)| *part == on).map(|(_, end)| *end).collect()
    };
    assert_eq!(ends(&cabinet).len(), 2);
    assert!(ends(&cabinet).contains(&Hand::Left) && ends(&cabinet).contains(&Hand::Right));
    let pockets = solved(&Inputs { joint: Kind::PocketScrew, ..inputs.clone() })?;
    assert!(pockets.work.iter().any(|step| matches!(step.setup, Setup::Pockets { .. })));
    assert!(!pockets.work.iter().any(|step| matches!(step.setup, Setup::JoinFace { .. } | Setup::Join { .. })));
    let screws = solved(&Inputs { joint: Kind::ConnectingScrew, ..inputs })?;
    let through = |step: &&Step| matches!(step.setup, Setup::JoinFace { bore: Bore { deep: None, .. }, .. });
    assert!(screws.work.iter().any(|step| through(&step)));
    assert!(screws.work.iter().filter(|step| matches!(step.setup, Setup::JoinFace { .. })).all(|step| through(&step)));
    Ok(())
}

/// The hinge card that is opened from the cabinet has the cabinet's own cups, and plates from the side's lower end.
#[test]
fn hinges_are_told_where_the_holes_are() -> Checked {
    let cabinet = solved(&Inputs::default())?;
    let asked = cabinet.asked.cup_hinge.as_ref().ok_or("not asked")?;
    let answer = cup_hinge::solve(asked).map_err(|problems| format!("{problems:?}"))?;
    let cups: Vec<Length> = answer.hinges.iter().map(|hinge| hinge.on_door).collect();
    assert_eq!(cups, cabinet.doors[0].cups);
    // The demo by hand has the lowest plate's holes at 41 + 32·k: the cup 87.4 above a door that begins 1.6 up.
    assert_eq!((answer.hinges[0].lower_hole, answer.hinges[0].upper_hole), (mm("73")?, mm("105")?));
    Ok(())
}

/// A low rail, narrow bays and shallow shelves have fewer joints, and are no reason to refuse a cabinet.
#[test]
fn short_joints_are_no_refusal() -> Checked {
    let two = || Inputs { bays: "2".into(), doors: Doors::None, ..Inputs::default() };
    let mut low = Inputs { stands: Stands::Rail, strip_height: Reading::mm("40"), ..two() };
    low.joint_sizes.dowel_diameter = Reading::mm("8");
    let shallow = Inputs { depth: Reading::mm("200"), fixed_shelves: "1".into(), loose_shelves: "0".into(), ..two() };
    let narrow = Inputs {
        stands: Stands::Rail,
        width: Reading::mm("400"),
        bays: "4".into(),
        loose_shelves: "0".into(),
        ..two()
    };
    for inputs in [low, shallow, narrow] {
        for joint in Kind::ALL {
            let inputs = Inputs { joint: *joint, ..inputs.clone() };
            if let Err(problems) = solve(&inputs) {
                return Err(format!("{joint:?}, {} bays: {problems:?}", inputs.bays.typed()).into());
            }
        }
    }
    Ok(())
}

/// A connecting screw of 70 in the rail's end comes 52 and 2 deep into it: what is in its upper edge begins beyond that.
/// Pushed on one another they are named.
#[test]
fn joints_in_ends_and_edges_keep_clear_of_each_other() -> Checked {
    let mut inputs = Inputs { stands: Stands::Rail, joint: Kind::ConnectingScrew, ..Inputs::default() };
    inputs.carcass.thickness = Reading::mm("18");
    inputs.joint_sizes.screw_length = Reading::mm("70");
    let cabinet = solved(&inputs)?;
    let edge = join(&cabinet, What::HangingRail { bay: 1 }, What::Top)?;
    assert!(edge.marks.marks[0] > mm("54")?, "{}", edge.marks.marks[0]);
    assert!(cabinet.clashes.is_empty(), "{:?}", cabinet.clashes);
    // A bracket's screw at the height of a fixed shelf, 50 from the front, meets a dowel that is 47 from it.
    let mut inputs =
        Inputs { fixed_shelves: "1".into(), loose_shelves: "0".into(), doors: Doors::None, ..Inputs::default() };
    inputs.outside.at = Beside::Left;
    inputs.outside.up = Reading::mm("630");
    let cabinet = solved(&inputs)?;
    let side = cabinet.parts.iter().position(|part| part.what == What::Side(Hand::Left)).ok_or("no side")?;
    assert!(cabinet.clashes.contains(&Clash::JointsMeet { board: side }), "{:?}", cabinet.clashes);
    Ok(())
}
