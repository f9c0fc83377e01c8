//! The short formulas, worked by hand.

use super::limits::{bare, same, screw, solved};
use super::near;
use crate::cards::hanging::{Fixing, Grip, Holds, Hung, Inputs, Load, What};
use crate::measure::Reading;

/// What one person may lift at the start, as a share of the 23 kg of the lifting equation (revised NIOSH equation,
/// DHHS/NIOSH 94-110), with the hands 250 out at 750, where every factor is 1 but the one that changes.
fn share(change: impl FnOnce(&mut Inputs)) -> f64 {
    let answer = solved(|inputs| {
        (inputs.hands_out, inputs.grip) = (Reading::mm("250"), Grip::Good);
        (inputs.lift_from, inputs.lift_to) = (Reading::mm("750"), Reading::mm("750"));
        change(inputs);
    });
    answer.lift.start_kg / 23.0
}

#[test]
fn the_factors_of_the_lift_are_those_of_its_equation() {
    assert!(same(share(|_| ()), 1.0));
    // HM = 25 / H up to 63 cm out.
    for (out, want) in [("200", 1.0), ("250", 1.0), ("500", 0.5), ("630", 25.0 / 63.0), ("630.1", 0.0)] {
        assert!(same(share(|inputs| inputs.hands_out = Reading::mm(out)), want), "{out} out");
    }
    // VM = 1 − 0.003 · |V − 75| up to 175 cm high: 75 and 100 cm off are 0.225 and 0.3.
    for (high, want) in [("0", 0.775), ("650", 0.97), ("750", 1.0), ("850", 0.97), ("1750", 0.7), ("1750.1", 0.0)] {
        let level = |inputs: &mut Inputs| (inputs.lift_from, inputs.lift_to) = (Reading::mm(high), Reading::mm(high));
        assert!(same(share(level), want), "{high} high");
    }
    // DM = 0.82 + 4.5 / D from 25 to 175 cm, up or down.
    let far = 0.82 + 4.5 / 175.0;
    for (to, want) in [("1000", 1.0), ("1200", 0.92), ("300", 0.92), ("2500", far), ("2500.1", 0.0)] {
        assert!(same(share(|inputs| inputs.lift_to = Reading::mm(to)), want), "from 750 to {to}");
    }
    // AM = 1 − 0.0032 · A up to 135°.
    for (twist, want) in [("0", 1.0), ("50", 0.84), ("135", 0.568), ("135.1", 0.0)] {
        assert!(same(share(|inputs| inputs.twist = twist.into()), want), "{twist}° of twist");
    }
    // CM: a fair grip is as good as a good one from 75 cm up. At 74 cm VM is 0.997.
    for (grip, high, want) in [
        (Grip::Good, "740", 0.997),
        (Grip::Fair, "740", 0.997 * 0.95),
        (Grip::Fair, "750", 1.0),
        (Grip::Poor, "750", 0.9),
        (Grip::Poor, "740", 0.997 * 0.9),
    ] {
        let got = share(|inputs| {
            (inputs.lift_from, inputs.lift_to, inputs.grip) = (Reading::mm(high), Reading::mm(high), grip);
        });
        assert!(same(got, want), "{grip:?} at {high}: {got}");
    }
    // All at once: 0.5 · 0.97 · (0.82 + 0.09) · 0.84 · 0.9.
    let all = share(|inputs| {
        (inputs.hands_out, inputs.twist, inputs.grip) = (Reading::mm("500"), "50".into(), Grip::Poor);
        (inputs.lift_from, inputs.lift_to) = (Reading::mm("650"), Reading::mm("1150"));
    });
    assert!(same(all, 0.5 * 0.97 * 0.91 * 0.84 * 0.9), "{all}");
}

/// 20 kg press with 196.133 N, 200 from the wall, 800 above the lower edge: 49.03325 N by the lever. Friction of 0.3 on a
/// bevel of 45° leaves (1 − 0.3) / (1 + 0.3), 7 / 13 of the weight, which is more.
#[test]
fn the_greater_of_lever_and_wedge_pulls() {
    let pull = |bevel: Option<&str>, down: &str| {
        let change = |inputs: &mut Inputs| {
            bare(inputs, "20");
            inputs.bevel_down = Reading::mm(down);
            if let Some(bevel) = bevel {
                (inputs.hung, inputs.bevel) = (Hung::Cleat, bevel.into());
                (inputs.strip, inputs.strip_height) = (Reading::mm("14"), Reading::mm("70"));
                inputs.fixings_up = Reading::mm("35");
            }
        };
        solved(change).pull
    };
    let rail = pull(None, "200");
    assert!(same(rail.weight_n, 196.133) && same(rail.out_mm, 200.0) && same(rail.arm_mm, 800.0), "{rail:?}");
    assert!(same(rail.lever_n, 49.033_25) && same(rail.pull_n, 49.033_25), "{rail:?}");
    assert!(rail.wedge_n.is_none() && same(rail.prying, 1.0), "{rail:?}");

    let wedge = 196.133 * 7.0 / 13.0;
    let cleat = pull(Some("45"), "200");
    assert!(same(cleat.wedge_n.unwrap(), wedge) && same(cleat.pull_n, wedge), "{cleat:?}");
    // 70 over 35 is 2; the weight is 13 / 7 of the pull, 7 out: 13 / 35.
    assert!(same(cleat.prying, 2.0 + 13.0 / 35.0), "{cleat:?}");
    // tan 30° is 1 / √3.
    let third = 3_f64.sqrt().recip();
    let slight = pull(Some("30"), "200").wedge_n.unwrap();
    assert!(same(slight, 196.133 * (third - 0.3) / (1.0 + 0.3 * third)), "{slight}");
    // As far up as out the lever pulls with the whole weight: 2 + 7 / 35.
    let low = pull(Some("45"), "800");
    assert!(same(low.pull_n, 196.133) && same(low.prying, 2.2), "{low:?}");
}

/// Two anchors carry 24.516625 N out and 98.0665 N along each: a quarter and a half of what they may.
#[test]
fn shares_of_pull_and_shear_are_added() {
    let anchors = |inputs: &mut Inputs| {
        bare(inputs, "20");
        (inputs.fixing, inputs.count) = (Fixing::Anchor, "2".into());
        (inputs.pull_rating, inputs.shear_rating) = ("98.0665 N".into(), "196.133 N".into());
    };
    let each = solved(anchors).each;
    assert!(same(each.pull_n, 24.516_625) && same(each.shear_n, 98.066_5), "{each:?}");
    assert!(same(each.used.unwrap(), 0.75) && same(each.used_squared.unwrap(), 0.0625 + 0.25), "{each:?}");
}

/// 90 less 25 leaves 65 in the stud; 60 of it, two thirds of 90, are thread. By the published figures 19.65·G²·D N/mm pull
/// and 3240 psi, 22.339 N/mm², ·D² along, nine tenths for loads that stay; it comes out at 15 700 psi, 108.25 N/mm².
#[test]
fn a_screw_may_carry_what_its_formulas_say() {
    let long = solved(|inputs| screw(inputs, "90")).allowed;
    assert!(same(long.in_stud_mm.unwrap(), 65.0) && same(long.thread_mm.unwrap(), 60.0), "{long:?}");
    assert!(near(long.pull_n, 0.9 * 19.65 * 0.25 * 5.0 * 60.0), "{long:?}");
    assert!(near(long.shear_n, 0.9 * 22.339 * 25.0), "{long:?}");
    assert!(near(long.comes_out_n.unwrap(), 108.25 * 0.25 * 5.0 * 60.0), "{long:?}");
    // 60 less 25 are 35, 7 diameters, and all of it thread; 25 reach just through the lining and hold nothing.
    let short = solved(|inputs| screw(inputs, "60")).allowed;
    assert!(same(short.in_stud_mm.unwrap(), 35.0) && same(short.thread_mm.unwrap(), 35.0), "{short:?}");
    assert!(near(short.shear_n, 0.9 * 22.339 * 25.0), "{short:?}");
    let none = solved(|inputs| screw(inputs, "25"));
    assert_eq!((none.holds, none.each.used), (Holds::NoGrip, None));
}

/// The demo 10 from the wall: every part's own centre, by hand.
#[test]
fn every_part_has_its_own_centre() {
    let weighed = |level: usize| {
        let change = |inputs: &mut Inputs| {
            (inputs.stands_off, inputs.load) = (Reading::mm("10"), Load::Each);
            inputs.levels[level] = "3".into();
        };
        solved(change).weighed
    };
    // Half of 350; 15 and half of 6.5; the shelves from 21.5 to 350; half of 17.6 in front of 350. Half of 1169.2 up.
    let outs = [175.0, 175.0, 18.25, (21.5 + 350.0) / 2.0, 358.8];
    let bottom = weighed(0);
    for (part, out) in bottom.parts.iter().zip(outs) {
        assert!(near(part.centre.out_mm, 10.0 + out) && near(part.centre.up_mm, 584.6), "{part:?}");
    }
    // Three levels of (1140 − 2 · 14.6) / 3, 370.2667 high, with boards of 14.6 below each.
    for (level, up) in [(0, 199.733_3), (1, 584.6), (2, 969.466_7)] {
        let contents = weighed(level).parts.last().copied().unwrap();
        assert!(contents.what == What::Contents && near(contents.kg, 3.0), "{contents:?}");
        assert!(near(contents.centre.up_mm, up) && near(contents.centre.out_mm, 195.75), "{contents:?}");
    }
    // An empty cabinet has no contents, one without shelves no shelves.
    let empty = solved(|inputs| (inputs.per_metre, inputs.shelves) = ("0".into(), "0".into())).weighed;
    let parts: Vec<What> = empty.parts.iter().map(|part| part.what).collect();
    assert_eq!(parts, [What::Sides, What::TopAndBottom, What::Back, What::Doors]);
}
