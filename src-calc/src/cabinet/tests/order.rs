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
    assert!(!held.work.iter().any(|step| step.setup == Setup::PutIn));
    for inputs in [
        Inputs::default(),
        Inputs { back: Back::Rabbet, past_bottom: false, ..Inputs::default() },
        Inputs { back: Back::Planted, past_bottom: false, ..Inputs::default() },
    ] {
        let cabinet = solved(&inputs)?;
        assert!(order(&cabinet, &[|s| *s == Setup::Assemble { about_back: false }, |s| *s == Setup::PutIn]));
    }
    Ok(())
}

/// Under the cabinet the plinth shuts the way of a back that slides in from below. Its rear stands under what is left of
/// the bottom, which begins at 12 + 6; the screws go through the bottom into the middles of both.
#[test]
fn the_plinth_comes_after_the_back() -> Checked {
    let cabinet = solved(&Inputs { stands: Stands::Plinth, ..Inputs::default() })?;
    let steps: [fn(&Setup) -> bool; 5] = [
        |s| matches!(s, Setup::PlinthHoles { .. }),
        |s| matches!(s, Setup::Assemble { .. }),
        |s| *s == Setup::PutIn,
        |s| *s == Setup::PlinthTogether,
        |s| *s == Setup::FixPlinth,
    ];
    assert!(order(&cabinet, &steps), "{:?}", cabinet.work);
    assert_eq!(along(part(&cabinet, What::PlinthRear)?, Axis::Deep), [18.0, 32.6]);
    let plinth = cabinet.plinth.as_ref().ok_or("no plinth")?;
    // Set back by 50, 14.6 thick; the rear's middle is 25.3 from the rear edges.
    assert_eq!(plinth.lines, [mm("50 + 7.3")?, mm("350 - 25.3")?]);
    // Two crosses, two screws in either end of each; 14.6 and 35 less a skin of 3 take 45.
    assert_eq!((plinth.cross_screws, plinth.cross_screw, plinth.screw), (8, mm("45")?, mm("45")?));
    let held = solved(&Inputs { stands: Stands::Plinth, past_bottom: false, ..Inputs::default() })?;
    assert_eq!(along(part(&held, What::PlinthRear)?, Axis::Deep), [0.0, 14.6]);
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
        cabinet.work.iter().find_map(|step| match &step.setup {
            Setup::Groove { stopped, .. } if step.parts.contains(&on) => Some(*stopped),
            _ => None,
        })
    };
    let stopped = Some([mm("8.6")?, mm("830 - 8.6")?]);
    assert_eq!([step(What::Top), step(What::Bottom)], [Some(stopped); 2]);
    assert_eq!(step(What::Side(Hand::Left)), Some(None));
    Ok(())
}
