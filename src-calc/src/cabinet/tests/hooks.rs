//! A row of hooks under a cabinet, against sums done by hand.

use super::*;

fn hooked(count: &str) -> Inputs {
    let mut inputs = Inputs::default();
    inputs.hooks.count = count.into();
    inputs
}

/// Under the bottom of 800.8, whose front is at 350 and whose back ends at 21.1; the strip is 14.6 thick.
#[test]
fn hooks_share_their_rail_out_evenly() -> Checked {
    let cabinet = solved(&hooked("4"))?;
    let rail = cabinet.hooks.as_ref().ok_or("no hooks")?;
    let board = &cabinet.parts[rail.on];
    assert_eq!((board.what, sizes(board)), (What::HookRail, ["800.8 mm", "60 mm", "14.6 mm"].map(str::to_owned)));
    assert_eq!(along(board, Axis::Up), [-60.0, 0.0]);
    assert_eq!(along(board, Axis::Deep), [21.1, 35.7]);
    // 800.8 / 4 is 200.2: each in the middle of its share.
    let hooks: Vec<Length> = ["100.1", "300.3", "500.5", "700.7"].into_iter().map(mm).collect::<Result<_, _>>()?;
    assert_eq!((&rail.hooks, rail.up), (&hooks, mm("30")?));
    // 50 from the ends, 700.8 in three gaps; in the middle of the strip, 350 − 21.1 − 7.3 from the front.
    let screws: Vec<Length> = ["50", "283.6", "517.2", "750.8"].into_iter().map(mm).collect::<Result<_, _>>()?;
    assert_eq!((&rail.screws, rail.from_front), (&screws, mm("321.6")?));
    // Through 14.6 and 35 into the rail, less 3: 46.6.
    assert_eq!(rail.screw, mm("45")?);
    assert_eq!(cabinet.parts[rail.under].what, What::Bottom);
    let count = |what| cabinet.fittings.iter().find(|line| line.what == what).map(|line| line.count);
    assert_eq!((count(Fitting::Hook), count(Fitting::Screw { length: rail.screw })), (Some(4), Some(4)));
    Ok(())
}

/// The rail weighs 0.8008 · 0.06 · 0.0146 m³ of the strip's board, and a kilogram hangs on each of four hooks.
#[test]
fn the_wall_carries_what_hangs_on_them() -> Checked {
    let (with, without) = (solved(&hooked("4"))?, solved(&Inputs::default())?);
    let total = |cabinet: &Cabinet| cabinet.hang.as_ref().map(|hang| hang.weighed.total_kg);
    let (with_kg, without_kg) = (total(&with).ok_or("no wall")?, total(&without).ok_or("no wall")?);
    let rail = with.weight_kg - without.weight_kg;
    let material = Inputs::default().strip.material;
    let (row, _) = material.family().and_then(|family| family.row(14.6)).ok_or("no row")?;
    assert!((rail - 0.8008 * 0.06 * 0.0146 * row.density_kg_m3).abs() < 1e-9, "{rail}");
    // The wall is told to ten grams.
    assert!((with_kg - without_kg - rail - 4.0).abs() < 0.0101, "{with_kg} {without_kg}");
    Ok(())
}

#[test]
fn hooks_come_on_when_the_carcass_is_together() -> Checked {
    let cabinet = solved(&hooked("3"))?;
    let step = |wanted: fn(&Setup) -> bool| cabinet.work.iter().position(|step| wanted(&step.setup));
    let order = [
        step(|setup| matches!(setup, Setup::HookRailHoles { .. })),
        step(|setup| matches!(setup, Setup::Hooks { .. })),
        step(|setup| matches!(setup, Setup::Assemble { .. })),
        step(|setup| *setup == Setup::FixHooks),
        step(|setup| matches!(setup, Setup::HangUp { .. })),
    ];
    assert!(order.iter().all(Option::is_some) && order.is_sorted(), "{order:?}");
    assert_ne!(cabinet.work_mark, solved(&hooked("4"))?.work_mark);
    Ok(())
}

/// Eight hooks stand 100.1 apart from 50.05 on: the outer ones 0.05 beside the outer screws, which move 12 away from them.
#[test]
fn screws_and_hooks_do_not_meet_in_the_rail() -> Checked {
    let cabinet = solved(&hooked("8"))?;
    let rail = cabinet.hooks.as_ref().ok_or("no hooks")?;
    let screws: Vec<Length> = ["38.05", "283.6", "517.2", "762.75"].into_iter().map(mm).collect::<Result<_, _>>()?;
    assert_eq!(rail.screws, screws);
    for count in 1..=30_u32 {
        let cabinet = solved(&hooked(&count.to_string()))?;
        let rail = cabinet.hooks.as_ref().ok_or("no hooks")?;
        let nearest =
            rail.screws.iter().flat_map(|screw| rail.hooks.iter().map(|hook| (screw.as_mm() - hook.as_mm()).abs()));
        let nearest = nearest.fold(f64::INFINITY, f64::min);
        assert!(nearest >= 12.0 - 1e-9, "{count} hooks: {nearest} mm");
    }
    Ok(())
}

/// With an upright at 600 of 1200 a screw would come down in the middle of its end; 1200 − 2·14.6 is 1170.8 long.
#[test]
fn screws_do_not_come_down_on_uprights() -> Checked {
    let inputs = Inputs { width: Reading::mm("1200"), bays: "2".into(), ..hooked("6") };
    let cabinet = solved(&inputs)?;
    let rail = cabinet.hooks.as_ref().ok_or("no hooks")?;
    let upright = part(&cabinet, What::Upright { after: 1 })?.place.along(Axis::Across);
    let from = part(&cabinet, What::HookRail)?.place.from[0];
    for screw in &rail.screws {
        let at = from.plus(*screw)?;
        assert!(at <= upright.0.minus(mm("12")?)? || at >= upright.1.plus(mm("12")?)?, "{at} in {upright:?}");
    }
    assert!(rail.screws.len() > 2);
    Ok(())
}

#[test]
fn what_makes_no_row_of_hooks_is_refused_at_its_field() {
    let wrong = |change: fn(&mut Hooks), field: &str| {
        let mut inputs = hooked("4");
        change(&mut inputs.hooks);
        let refused = solve(&inputs).err().is_some_and(|problems| problems.iter().all(|(name, _)| name == field));
        assert!(refused, "{field}: {:?}", solve(&inputs).err());
    };
    wrong(|hooks| hooks.count = "0".into(), "hooks.count");
    wrong(|hooks| hooks.count = "41".into(), "hooks.count");
    // 800.8 / 34 = 23.6 apart: no screw lies 12 from two of them.
    wrong(|hooks| hooks.count = "34".into(), "hooks.count");
    assert!(solve(&hooked("33")).is_ok(), "24.3 apart");
    wrong(|hooks| hooks.height = Reading::mm("30"), "hooks.height");
    wrong(|hooks| hooks.height = Reading::mm("301"), "hooks.height");
    wrong(|hooks| hooks.load = "-1".into(), "hooks.load");
    // What stands on the floor has none, whatever is typed.
    let standing = Inputs { stands: Stands::Plinth, ..hooked("many") };
    assert!(solve(&standing).is_ok_and(|cabinet| cabinet.hooks.is_none()));
}
