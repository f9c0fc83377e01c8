//! What the wall has to hold, and what a measured size may do, by hand.

use super::*;

fn contents_kg(inputs: &Inputs) -> Result<f64, Box<dyn std::error::Error>> {
    Ok(solved(inputs)?.hang.ok_or("does not hang")?.weighed.contents_kg)
}

/// Clothes hang on the wall too: a rail over 770.8 mm at 40 kg a metre, and 9 on the bottom.
#[test]
fn clothes_load_the_wall() -> Checked {
    let inputs = Inputs {
        width: Reading::mm("800"),
        height: Reading::mm("1700"),
        depth: Reading::mm("650"),
        rail_bay: "1".into(),
        ..Inputs::default()
    };
    let bay = 0.8 - 2.0 * 0.0146;
    let kg = contents_kg(&inputs)?;
    assert!((kg - bay * (40.0 + 9.0)).abs() < 0.01, "{kg}");
    // Shelves that are not there carry nothing; in the other bay of two they do.
    let two = Inputs { width: Reading::mm("1600"), bays: "2".into(), ..inputs };
    let inside = 1.6 - 2.0 * 0.0146;
    let bay = (inside - 0.0146) / 2.0;
    let kg = contents_kg(&two)?;
    let wanted = inside * 9.0 + 40.0 * bay + 3.0 * 9.0 * (inside - bay);
    assert!((kg - wanted).abs() < 0.05, "{kg} for {wanted}");
    Ok(())
}

/// Twelve shelves carry as much as twelve do: 13 levels of 800.8 mm at 3 kg a metre.
#[test]
fn every_shelf_loads_the_wall() -> Checked {
    let inputs = Inputs {
        height: Reading::mm("1800"),
        loose_shelves: "12".into(),
        least_gap: Reading::mm("60"),
        load: "3".into(),
        ..Inputs::default()
    };
    let kg = contents_kg(&inputs)?;
    assert!((kg - 13.0 * 0.8008 * 3.0).abs() < 0.1, "{kg}");
    let few = Inputs { loose_shelves: "7".into(), ..inputs };
    // The same few in every bay are told by the metre, and the hanging card takes the outer width.
    let kg = contents_kg(&few)?;
    assert!((kg - 8.0 * 0.83 * 3.0).abs() < 0.01, "{kg}");
    Ok(())
}

/// In a room on the wall with 5 free above, a cleat that wants 14.1 to be lifted over lacks 9.1, whatever the ceiling.
#[test]
fn the_room_on_the_wall_is_also_for_lifting() -> Checked {
    use crate::cards::wall_cleat::Lifts;
    for ceiling in ["2300", ""] {
        let inputs = Inputs { size_from: SizeFrom::Opening, ceiling: Reading::mm(ceiling), ..Inputs::default() };
        let cabinet = solved(&inputs)?;
        assert_eq!(cabinet.cleat.map(|cleat| cleat.lifts), Some(Lifts::Not(mm("9.1")?)), "{ceiling}");
    }
    let low = Inputs { size_from: SizeFrom::Opening, free: Reading::mm("20"), ..Inputs::default() };
    assert_eq!(solved(&low)?.cleat.map(|cleat| cleat.lifts), Some(Lifts::On(mm("5.9")?)));
    Ok(())
}

/// Edging weighs what its board does: 20 mm in front of two sides, top and bottom.
#[test]
fn edging_has_its_weight() -> Checked {
    let bare = Inputs { doors: Doors::None, loose_shelves: "0".into(), ..Inputs::default() };
    let edged = Inputs { edging: Edging::Solid, edging_thickness: Reading::mm("20"), ..bare.clone() };
    let (bare, edged) = (solved(&bare)?.weight_kg, solved(&edged)?.weight_kg);
    // In front of the same boards, which are as much narrower.
    assert!((bare - edged).abs() < 1e-9, "{bare} {edged}");
    Ok(())
}

fn fit(inputs: &Inputs, what: Fitted) -> Result<Fit, Box<dyn std::error::Error>> {
    Ok(*solved(inputs)?.fits.iter().find(|fit| fit.what == what).ok_or("not looked at")?)
}

/// A cabinet for a room is cut to one size whatever the room is: only what is free beside it is in doubt.
#[test]
fn the_doubt_of_a_room_is_not_the_cabinets() -> Checked {
    let inputs = Inputs { size_from: SizeFrom::Opening, width: Reading::mm("830 ± 4"), ..Inputs::default() };
    let room = fit(&inputs, Fitted::InRoomAcross)?;
    assert_eq!((room.least, room.most, room.again), (mm("6")?, mm("14")?, Some("width")));
    let back = fit(&inputs, Fitted::BackAcross)?;
    assert_eq!((back.least, back.fits), (mm("2")?, true));
    let wide = Inputs { width: Reading::mm("830 ± 12"), ..inputs };
    assert!(!fit(&wide, Fitted::InRoomAcross)?.fits);
    assert!(fit(&Inputs::default(), Fitted::InRoomAcross).is_err());
    Ok(())
}

/// A door lies where its hinge holds it, by the inner face: a thicker side shows more of itself, a thinner one less.
#[test]
fn reveals_and_gaps_take_what_the_boards_are_off() -> Checked {
    let thick = |tolerance: &str| {
        let mut inputs = Inputs { gap: Reading::mm("3"), ..Inputs::default() };
        inputs.carcass.thickness = Reading::mm(&format!("14.6 ± {tolerance}"));
        inputs
    };
    let reveal = fit(&thick("0.2"), Fitted::DoorGaps)?;
    assert_eq!((reveal.least, reveal.most, reveal.fits), (mm("1.4")?, mm("1.8")?, true));
    let flush = fit(&thick("1.6"), Fitted::DoorGaps)?;
    assert_eq!((flush.least, flush.fits, flush.again), (Length::ZERO, false, Some("carcass.thickness")));
    // Uprights are marked from the left: all that the width is off falls into the last bay.
    let bays = Inputs { width: Reading::mm("1500 ± 3"), bays: "3".into(), ..Inputs::default() };
    let shelves = fit(&bays, Fitted::Shelves)?;
    assert_eq!((shelves.least, shelves.fits), (mm("2 - 3 - 0.2")?, false));
    Ok(())
}

/// A sheet of 2440 × 1220 loses 10 at each edge.
#[test]
fn parts_larger_than_a_sheet_are_named() -> Checked {
    let sized = |width: &str| Inputs { width: Reading::mm(width), bays: "3".into(), ..Inputs::default() };
    let large = |inputs: &Inputs| -> Result<usize, String> {
        Ok(solved(inputs)?.clashes.iter().filter(|clash| matches!(clash, Clash::LargerThanSheet { .. })).count())
    };
    assert_eq!(large(&sized("1200"))?, 0);
    // The back's grain runs up: it is wider than 1200. Top and bottom are 2·14.6 shorter than the cabinet.
    assert_eq!(large(&sized("2440"))?, 1);
    assert!(large(&sized("2500"))? >= 3);
    Ok(())
}
