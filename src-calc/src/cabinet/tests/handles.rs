//! Strips by which doors are opened, against sums done by hand.

use super::*;
use crate::measure::AngleReading;

fn handled(change: impl FnOnce(&mut Handle)) -> Inputs {
    let mut inputs = Inputs::default();
    inputs.handle.pull = Pull::Strip;
    change(&mut inputs.handle);
    inputs
}

fn strip(cabinet: &Cabinet, at: usize) -> Result<(&Part, &StripHandle), &'static str> {
    let handle = cabinet.doors.get(at).and_then(|door| door.handle.as_ref()).ok_or("no handle")?;
    Ok((cabinet.parts.get(handle.on).ok_or("no part")?, handle))
}

/// The demo's doors are 411.9 by 1166.8, 17.6 thick, from 1.6 to 413.5 and from 416.5 to 828.4, their lower ends at 1.6.
#[test]
fn a_strip_as_long_as_its_door_lies_along_its_free_edge() -> Checked {
    let inputs = handled(|handle| handle.bevel = AngleReading::from("45"));
    let cabinet = solved(&inputs)?;
    let (left, fixed) = strip(&cabinet, 0)?;
    assert_eq!(sizes(left), ["1166.8 mm", "40 mm", "20 mm"]);
    assert_eq!((left.stock, left.grain), (Stock::Handle, Axis::Up));
    assert_eq!(along(left, Axis::Across), [373.5, 413.5]);
    assert_eq!(along(left, Axis::Deep), [367.6, 387.6]);
    assert_eq!(along(left, Axis::Up), [1.6, 1168.4]);
    assert_eq!(along(strip(&cabinet, 1)?.0, Axis::Across), [416.5, 456.5]);
    // At 45° the bevel takes 20 of the rear: the middle of the other 20 is 10 from the edge.
    assert_eq!(fixed.from_edge, mm("10")?);
    // 50 from either end; 1066.8 between the outer ones is four gaps of 266.7, three would be more than 300.
    let wanted: Vec<Length> =
        ["50", "316.7", "583.4", "850.1", "1116.8"].into_iter().map(mm).collect::<Result<_, _>>()?;
    assert_eq!(fixed.screws, wanted);
    // 17.6 + 20 less 3 is 34.6: the next length sold is 30.
    assert_eq!(fixed.screw, mm("30")?);
    let screws = cabinet.fittings.iter().find(|line| line.what == Fitting::Screw { length: fixed.screw });
    assert_eq!(screws.map(|line| line.count), Some(10));
    Ok(())
}

/// Two strips with a cut at 45° between them: 2·40 less the slope of 20, and a kerf of 3.2·√2.
#[test]
fn two_bevelled_strips_come_from_one_board() -> Checked {
    let inputs = handled(|handle| handle.bevel = AngleReading::from("45"));
    let cabinet = solved(&inputs)?;
    let rip = cabinet.handle_rip.as_ref().ok_or("no rip")?;
    let board = 2.0 * 40.0 - 20.0 + 3.2 * 2.0_f64.sqrt();
    assert!((rip.section.width.as_mm() - board).abs() < 2e-6, "{}", rip.section.width);
    assert!((rip.finished.wide_mm - 40.0).abs() < 2e-6 && (rip.finished.narrow_mm - 20.0).abs() < 2e-6);
    let strips: Vec<usize> = cabinet.doors.iter().filter_map(|door| Some(door.handle.as_ref()?.on)).collect();
    let step = |wanted: fn(&Setup) -> bool| cabinet.work.iter().position(|step| wanted(&step.setup));
    let order = [
        step(|setup| matches!(setup, Setup::Rip { stock: Stock::Handle, .. })),
        step(|setup| matches!(setup, Setup::HandleBevel { .. })),
        step(|setup| matches!(setup, Setup::HandleHoles { .. })),
        step(|setup| matches!(setup, Setup::FixHandles)),
        step(|setup| matches!(setup, Setup::HangDoors)),
    ];
    assert!(order.iter().all(Option::is_some) && order.is_sorted(), "{order:?}");
    let fixed = cabinet.work.iter().find(|step| step.setup == Setup::FixHandles).ok_or("not fixed")?;
    assert_eq!(fixed.parts, strips);
    // The card opened from here has the same answer.
    let handed = handed(&inputs, &cabinet);
    let (_, asked) = handed.iter().find(|(card, _)| *card == "bevelled-strips").ok_or("not handed over")?;
    let card = crate::cards::card("bevelled-strips").ok_or("no card")?;
    let told = (card.ask)(asked).map_err(|refusal| format!("{refusal:?}"))?;
    assert_eq!(told, serde_json::to_value(rip)?);
    Ok(())
}

#[test]
fn a_shorter_strip_lies_where_a_hand_reaches_it() -> Checked {
    let at = |change: fn(&mut Inputs)| -> Result<[f64; 2], Box<dyn std::error::Error>> {
        let mut inputs = handled(|handle| handle.length = Reading::mm("200"));
        change(&mut inputs);
        let cabinet = solved(&inputs)?;
        let (part, _) = strip(&cabinet, 0)?;
        Ok(along(part, Axis::Up))
    };
    // The door goes from 1.6 to 1168.4; on legs 80 are taken off the height.
    assert_eq!(at(|_| ())?, [1.6, 201.6]);
    assert_eq!(at(|inputs| inputs.stands = Stands::Legs)?, [888.4, 1088.4]);
    assert_eq!(at(|inputs| inputs.handle.at = At::Middle)?, [485.0, 685.0]);
    // A square edge: the middle of 40, set in by 6. Screws 50 from the ends, above the door's lower end.
    let inputs = handled(|handle| {
        handle.length = Reading::mm("200");
        handle.at = At::Middle;
        handle.set_in = Reading::mm("6");
        handle.bevel = AngleReading::from("");
    });
    let cabinet = solved(&inputs)?;
    let (part, fixed) = strip(&cabinet, 0)?;
    assert_eq!(along(part, Axis::Across), [367.5, 407.5]);
    assert_eq!((fixed.from_edge, fixed.screws.clone()), (mm("26")?, vec![mm("533.4")?, mm("633.4")?]));
    assert!(cabinet.handle_rip.is_none());
    Ok(())
}

/// 40 · 20 · 1166.8 mm of oak at 760 kg/m³ on each of two doors.
#[test]
fn the_hinges_and_the_wall_carry_the_strips() -> Checked {
    let (with, without) = (solved(&handled(|_| ()))?, solved(&Inputs::default())?);
    let kg = 0.04 * 0.02 * 1.1668 * 760.0;
    assert!((with.weight_kg - without.weight_kg - 2.0 * kg).abs() < 1e-9);
    let door = |cabinet: &Cabinet| cabinet.doors[0].answer.door_weight_kg;
    // The card is told to ten grams.
    assert!((door(&with) - door(&without) - kg).abs() < 0.0051);
    Ok(())
}

#[test]
fn what_makes_no_handle_is_refused_at_its_field() {
    let wrong = |change: fn(&mut Handle), field: &str| {
        let refused = solve(&handled(change))
            .err()
            .is_some_and(|problems| problems.of(field).is_some() && problems.iter().all(|(name, _)| name == field));
        assert!(refused, "{field}: {:?}", solve(&handled(change)).err());
    };
    wrong(|handle| handle.thickness = Reading::mm("12"), "handle.thickness");
    wrong(|handle| handle.width = Reading::mm("10"), "handle.width");
    // Half of 411.9.
    wrong(|handle| handle.width = Reading::mm("206"), "handle.width");
    // At 45° 20 are gone.
    wrong(|handle| (handle.width, handle.bevel) = (Reading::mm("30"), AngleReading::from("45")), "handle.width");
    wrong(|handle| handle.length = Reading::mm("1167"), "handle.length");
    wrong(|handle| handle.length = Reading::mm("50"), "handle.length");
    wrong(|handle| handle.bevel = AngleReading::from("10"), "handle.bevel");
    wrong(|handle| handle.bevel = AngleReading::from("55"), "handle.bevel");
    wrong(|handle| handle.set_in = Reading::mm("-1"), "handle.set_in");
    // Without doors, or with a knob, nothing of it is read.
    let mut none = handled(|handle| handle.thickness = Reading::mm("thin"));
    none.doors = Doors::None;
    assert!(solve(&none).is_ok());
}
