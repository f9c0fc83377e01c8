//! Cabinet: everything follows a measured thickness, what is in the way is named, ticks over a restart.

use crate::jobs::CATCH;
use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::scenarios::cabinet::{self, says, wide};
use scantling_tests::shell::{Kind, PHONE, Shell};
use scantling_tests::wait::until;
use serde_json::json;

#[test]
fn everything_follows_the_measured_thickness() -> Outcome {
    play("cabinet-follows", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        // 830 − 2·14.6 between the sides; shelves 2 shorter.
        says(shell, ".parts table", "799 × 327 mm").await?;
        shell.type_into("cabinet-carcass-thickness", "18").await?;
        // 830 − 36 − 2; doors (794 + 2·16.4 − 3) / 2 = 411.9 by 1134 + 32.8 = 1166.8.
        says(shell, ".parts table", "792 × 327 mm").await?;
        says(shell, ".parts table", "carcass, 18 mm").await?;
        says(shell, ".parts table", "1167 × 412 mm").await?;
        // The bottom is ripped for the back to slide in past it: 350 − 21.1.
        says(shell, ".parts table", "794 × 329 mm").await?;
        shell.keep_picture("cabinet-follows").await
    })
}

#[test]
fn what_is_in_the_way_is_named() -> Outcome {
    play("cabinet-in-the-way", Kind::Browser, async |shell| cabinet::names_what_is_in_the_way(shell).await)
}

#[test]
fn costs_are_added_up_and_what_has_no_price_is_named() -> Outcome {
    play("cabinet-costs", Kind::Browser, async |shell| cabinet::adds_up_costs(shell).await)
}

#[test]
fn strips_of_wood_open_the_doors() -> Outcome {
    play("cabinet-handles", Kind::Browser, async |shell| cabinet::opens_doors_by_strips(shell).await)
}

#[test]
fn hooks_hang_below_what_hangs() -> Outcome {
    play("cabinet-hooks", Kind::Browser, async |shell| cabinet::hangs_hooks(shell).await)
}

#[test]
fn a_clothes_rail_is_a_part_and_sizes_are_the_makers() -> Outcome {
    play("cabinet-rail", Kind::Browser, async |shell| cabinet::hangs_a_rail(shell).await)
}

#[test]
fn a_shelf_outside_is_cut_marked_and_named_where_a_door_strikes_it() -> Outcome {
    play("cabinet-outside", Kind::Browser, async |shell| cabinet::hangs_a_shelf_outside(shell).await)
}

#[test]
fn ticks_are_there_after_a_restart_and_go_with_other_sizes() -> Outcome {
    play("cabinet-ticks", Kind::Browser, async |shell| cabinet::keeps_ticks(shell).await)
}

/// Fingers come down at the first places, go to the second in steps, and are lifted.
async fn fingers(shell: &Shell, ways: &[[[f64; 2]; 2]]) -> Outcome {
    let touch = async |kind: &str, share: f64| -> Outcome {
        let point = |(id, [from, to]): (usize, &[[f64; 2]; 2])| {
            let [x, y] = [0, 1].map(|axis| from[axis] + share * (to[axis] - from[axis]));
            json!({ "x": x, "y": y, "id": id })
        };
        let points: Vec<_> = if share > 1.0 { Vec::new() } else { ways.iter().enumerate().map(point).collect() };
        shell.tool("Input.dispatchTouchEvent", json!({ "type": kind, "touchPoints": points })).await.map(drop)
    };
    touch("touchStart", 0.0).await?;
    for step in 1..=5 {
        touch("touchMove", f64::from(step) / 5.0).await?;
    }
    touch("touchEnd", 2.0).await
}

/// The first drawing: the middle of its paper, and how far it is scrolled.
const PAPER: &str = "
    const paper = document.querySelector('.drawn-paper');
    const box = paper.getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2, paper.scrollLeft, paper.scrollTop];";

#[test]
fn two_fingers_enlarge_a_drawing_one_moves_it_and_a_tap_asks_about_a_part() -> Outcome {
    play("cabinet-drawing-touch", Kind::Browser, async |shell| {
        shell.touch_screen(PHONE).await?;
        shell.go_to("").await?;
        shell.started().await?;
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=drawings] > summary").await?;
        shell.element(".drawn-paper svg").await?;
        let before = wide(shell).await?;
        let [x, y, ..]: [f64; 4] = shell.ask(PAPER, &[]).await?;
        fingers(shell, &[[[x - 40.0, y], [x - 100.0, y]], [[x + 40.0, y], [x + 100.0, y]]]).await?;
        // 80 apart, then 200.
        until("2.5 times as wide", async || wide(shell).await, |now| (now / before - 2.5).abs() < 0.1).await?;
        let [_, _, left, top]: [f64; 4] = shell.ask(PAPER, &[]).await?;
        fingers(shell, &[[[x, y], [x - 50.0, y - 30.0]]]).await?;
        let scrolled = async || shell.ask::<[f64; 4]>(PAPER, &[]).await;
        let moved = |now: &[f64; 4]| (now[2] - left - 50.0).abs() < 3.0 && (now[3] - top - 30.0).abs() < 3.0;
        until("moved with the finger", scrolled, moved).await?;
        shell.keep_picture("cabinet-drawing-touch").await?;
        // The fingers did not choose anything; a tap does, and the list says the same.
        require(shell.count(".drawn-paper [data-chosen]").await? == 0, || "a part was chosen by moving".to_owned())?;
        for _ in 0..2 {
            shell.press(".drawn [data-action=smaller]").await?;
        }
        until("as wide as before", async || wide(shell).await, |now| (now / before - 1.0).abs() < 0.02).await?;
        shell.element(".drawn-paper [data-owner='0']").await?;
        shell.tap(".drawn-paper [data-owner='0']").await?;
        shell.shows(".drawn-paper [data-owner='0'][data-chosen]").await?;
        says(shell, ".drawn-facts", "Left side").await?;
        says(shell, ".drawn-facts", "1170 × 350 mm").await?;
        let listed = "return document.querySelector('.drawn-choice select').selectedOptions[0].textContent";
        until("the list", async || shell.ask::<String>(listed, &[]).await, |part| part == "Left side").await?;
        shell.keep_picture("cabinet-drawing-part").await
    })
}

#[test]
fn the_drawings_are_there_once_they_are_asked_for_and_can_be_looked_at_closely() -> Outcome {
    play("cabinet-drawings", Kind::Browser, async |shell| cabinet::draws(shell).await)
}

#[test]
fn another_card_opens_with_the_cabinets_sizes_and_has_its_own_back_by_undo() -> Outcome {
    play("cabinet-hands-over", Kind::Browser, async |shell| cabinet::hands_over(shell).await)
}

#[test]
fn what_is_changed_on_another_card_is_given_back() -> Outcome {
    play("cabinet-given-back", Kind::Browser, async |shell| cabinet::is_given_back(shell).await)
}

#[test]
fn the_next_cut_is_ticked_and_taken_back_at_the_saw() -> Outcome {
    play("cabinet-next", Kind::Browser, async |shell| cabinet::is_followed_at_the_saw(shell).await)
}

#[test]
fn cut_list_and_drawings_are_saved() -> Outcome {
    play("cabinet-files", Kind::Browser, async |shell| {
        shell.run_first(CATCH).await?;
        shell.go_to("").await?;
        shell.started().await?;
        cabinet::saves_files(shell, async |shell: &Shell, _: &str| shell.ask("return window.saved", &[]).await).await
    })
}
