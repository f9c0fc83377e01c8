//! The order of work: what shuts a way comes after what goes through it.

use super::*;

fn order(cabinet: &Cabinet, wanted: &[fn(&Setup) -> bool]) -> bool {
    let places: Vec<Option<usize>> =
        wanted.iter().map(|wanted| cabinet.work.iter().position(|step| wanted(&step.setup))).collect();
    places.iter().all(Option::is_some) && places.is_sorted()
}

/// A back in grooves all round goes in while the carcass is put together; one that is open below slides in afterwards.
#[test]
fn the_back_goes_in_while_there_is_a_way() -> Checked {
    let held = solved(&Inputs { past_bottom: false, ..Inputs::default() })?;
    let back = held.parts.iter().position(|part| part.what == What::Back).ok_or("no back")?;
    let assembled = held.work.iter().find(|step| step.setup == Setup::Assemble { about_back: true });
    assert!(assembled.is_some_and(|step| step.parts.contains(&back)));
    assert!(!held.work.iter().any(|step| matches!(step.setup, Setup::PutIn { .. })));
    // In rabbets the strip of a cleat comes behind it.
    let covered = solved(&Inputs { back: Back::Rabbet, past_bottom: false, ..Inputs::default() })?;
    assert!(covered.work.iter().any(|step| step.setup == Setup::Assemble { about_back: true }));
    for inputs in [
        Inputs::default(),
        Inputs { back: Back::Rabbet, past_bottom: false, stands: Stands::Rail, ..Inputs::default() },
        Inputs { back: Back::Planted, past_bottom: false, ..Inputs::default() },
    ] {
        let cabinet = solved(&inputs)?;
        assert!(order(
            &cabinet,
            &[|s| *s == Setup::Assemble { about_back: false }, |s| matches!(s, Setup::PutIn { .. })]
        ));
    }
    Ok(())
}

/// The plinth is screwed on while its screws are reached. Its rear stands in front of the back, whose groove ends at 12 + 6,
/// so that the back slides in past it; the screws go through the bottom into the middles of both.
#[test]
fn the_plinth_leaves_the_back_its_way() -> Checked {
    let cabinet = solved(&Inputs { stands: Stands::Plinth, ..Inputs::default() })?;
    let steps: [fn(&Setup) -> bool; 5] = [
        |s| matches!(s, Setup::PlinthHoles { .. }),
        |s| matches!(s, Setup::Assemble { .. }),
        |s| *s == Setup::PlinthTogether,
        |s| *s == Setup::FixPlinth,
        |s| matches!(s, Setup::PutIn { .. }),
    ];
    assert!(order(&cabinet, &steps), "{:?}", cabinet.work);
    assert_eq!(along(part(&cabinet, What::PlinthRear)?, Axis::Deep), [18.0, 32.6]);
    let plinth = cabinet.plinth.as_ref().ok_or("no plinth")?;
    // Set back by 50, 14.6 thick; the rear's middle is 25.3 from the rear edges.
    assert_eq!(plinth.lines, [mm("50 + 7.3")?, mm("350 - 25.3")?]);
    // Two crosses, two screws in either end of each; 14.6 and 35 less a skin of 3 take 45.
    assert_eq!((plinth.cross_screws, plinth.cross_screw, plinth.screw), (8, mm("45")?, mm("45")?));
    let held = solved(&Inputs { stands: Stands::Plinth, past_bottom: false, ..Inputs::default() })?;
    assert_eq!(along(part(&held, What::PlinthRear)?, Axis::Deep), [18.0, 32.6]);
    let planted = solved(&Inputs { stands: Stands::Plinth, back: Back::Planted, ..Inputs::default() })?;
    assert_eq!(along(part(&planted, What::PlinthRear)?, Axis::Deep), [0.0, 14.6]);
    Ok(())
}

/// Both strips of the cleat are one board until the bevel parts them: only then is the wall's cut shorter.
#[test]
fn the_strips_of_a_cleat_are_cut_after_they_are_parted() -> Checked {
    let cabinet = solved(&Inputs::default())?;
    let at = |what: What| cabinet.parts.iter().position(|part| part.what == what).ok_or(format!("no {what:?}"));
    let (on_cabinet, on_wall) = (at(What::CabinetStrip)?, at(What::WallStrip)?);
    let of = |part: usize| cabinet.work.iter().filter(move |step| step.parts.contains(&part)).map(|step| &step.setup);
    let cleat = cabinet.cleat.as_ref().ok_or("no cleat")?;
    let board = Setup::CleatBoard { fence: cleat.board, stop: mm("800.8")? };
    assert_eq!(of(on_cabinet).next(), Some(&board));
    assert!(of(on_wall).all(|setup| !matches!(setup, Setup::Rip { .. } | Setup::CleatBoard { .. })));
    let cut = Setup::CleatCut { stop: mm("780.8")? };
    let bevel = of(on_wall).position(|setup| matches!(setup, Setup::Bevel { .. }));
    assert!(bevel.is_some() && bevel < of(on_wall).position(|setup| *setup == cut));
    Ok(())
}

/// Rows go right through only where every hole of them meets one behind it.
#[test]
fn holes_that_meet_none_do_not_go_through() -> Checked {
    let inputs = Inputs {
        width: Reading::mm("1200"),
        depth: Reading::mm("620"),
        bays: "2".into(),
        rail_bay: "2".into(),
        doors: Doors::Left,
        ..Inputs::default()
    };
    let cabinet = solved(&inputs)?;
    let upright = cabinet.parts.iter().position(|part| part.what == What::Upright { after: 1 }).ok_or("no upright")?;
    let of = |cabinet: &Cabinet, face: Hand| {
        cabinet.rows.iter().find(|rows| rows.on == upright && rows.face == face).map(|rows| rows.through)
    };
    // The wardrobe's face has plates alone: most pins of the other meet nothing, nor do the outer plates.
    assert_eq!((of(&cabinet, Hand::Left), of(&cabinet, Hand::Right)), (Some([false; 2]), Some([false; 2])));
    // Loose shelves on both sides: every hole meets one.
    let both = Inputs { rail_bay: crate::measure::Figure::default(), doors: Doors::None, ..inputs };
    let both = solved(&both)?;
    assert_eq!((of(&both, Hand::Left), of(&both, Hand::Right)), (Some([true; 2]), Some([true; 2])));
    Ok(())
}

/// Over the sides, grooves in top and bottom stop where the back does: 14.6 − 6 from either end.
#[test]
fn grooves_stop_before_ends_that_are_seen() -> Checked {
    let inputs = Inputs { corners: Corners::Over, past_bottom: false, ..Inputs::default() };
    let cabinet = solved(&inputs)?;
    let step = |what: What| {
        let on = cabinet.parts.iter().position(|part| part.what == what)?;
        let setups = cabinet.work.iter().filter(|step| step.parts.contains(&on)).map(|step| step.setup.clone());
        setups.into_iter().find(|setup| matches!(setup, Setup::Groove { .. } | Setup::StoppedGroove { .. }))
    };
    let (depth, walls, ends) = (mm("6")?, [mm("15.1")?, mm("21.1")?], [mm("8.6")?, mm("830 - 8.6")?]);
    let stopped = Some(Setup::StoppedGroove { depth, walls, ends });
    assert_eq!([step(What::Top), step(What::Bottom)], [stopped.clone(), stopped]);
    assert!(matches!(step(What::Side(Hand::Left)), Some(Setup::Groove { rabbet: false, .. })));
    assert!(cabinet.cautions.contains(&Caution::RoutedSlot));
    Ok(())
}

/// Ticks belong to the very work: whatever changes a step makes another mark of it, and what changes none does not.
#[test]
fn the_mark_changes_with_the_work() -> Checked {
    let mark = |change: fn(&mut Inputs)| -> Result<String, String> {
        let mut inputs = Inputs::default();
        change(&mut inputs);
        Ok(solved(&inputs)?.work_mark)
    };
    let demo = mark(|_| {})?;
    let changes: [fn(&mut Inputs); 9] = [
        |inputs| inputs.joint = crate::cards::joints::Kind::ConnectingScrew,
        |inputs| inputs.joint_sizes.dowel_diameter = Reading::mm("8"),
        |inputs| inputs.cup_edge = Reading::mm("5"),
        |inputs| inputs.holes.cup = Reading::mm("26"),
        |inputs| inputs.holes.pin_depth = Reading::mm("9"),
        |inputs| inputs.kerf = Reading::mm("2.6"),
        |inputs| inputs.groove_fit = Reading::mm("0.5"),
        |inputs| inputs.top_at = Reading::mm("2050"),
        |inputs| inputs.width = Reading::mm("831"),
    ];
    for (at, change) in changes.into_iter().enumerate() {
        assert_ne!(mark(change)?, demo, "change {at}");
    }
    assert_eq!(mark(|inputs| inputs.prices.hinge = "4".into())?, demo);
    Ok(())
}
