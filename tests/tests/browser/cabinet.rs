//! Cabinet: everything follows a measured thickness, what is in the way is named, ticks over a restart.

use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, PHONE, Shell};
use scantling_tests::wait::until;
use serde_json::json;

/// The text of the first such element holds these words.
async fn says(shell: &Shell, css: &str, words: &str) -> Outcome {
    let look = async || shell.text(css).await;
    until(words, look, |text| text.as_deref().is_some_and(|text| text.contains(words))).await.map(drop)
}

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
    play("cabinet-in-the-way", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        says(shell, ".card-top .verdict", "Fits together").await?;
        // The middle hinge of three lies where the middle shelf meets the side.
        shell.type_into("cabinet-fixed-shelves", "1").await?;
        says(shell, ".card-top .verdict", "Bay 1: a hinge lies on fixed shelf 1").await?;
        shell.keep_picture("cabinet-in-the-way").await
    })
}

#[test]
fn costs_are_added_up_and_what_has_no_price_is_named() -> Outcome {
    play("cabinet-costs", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=costs] > summary").await?;
        says(shell, ".costs", "Not counted, for want of a price: Sheets, carcass").await?;
        shell.type_into("cabinet-carcass-price", "64.50").await?;
        shell.type_into("cabinet-prices-hinge", "4.35").await?;
        // One sheet, and 6 · 4.35 = 26.10.
        says(shell, ".costs tfoot", "90.60").await?;
        says(shell, ".costs", "6 at 4.35").await?;
        shell.type_into("cabinet-prices-hinge", "dear").await?;
        says(shell, "#cabinet-prices-hinge-note", "does not belong").await?;
        shell.keep_picture("cabinet-costs").await
    })
}

#[test]
fn strips_of_wood_open_the_doors() -> Outcome {
    play("cabinet-handles", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.choose("cabinet-handle-pull", 1).await?;
        says(shell, ".parts table", "2 × Handle strip").await?;
        says(shell, ".parts table", "1167 × 40 mm").await?;
        shell.press("[data-fold=holes] > summary").await?;
        // 40 less 20·tan 30° is 28.45 behind: its middle is 14.2 from the edge.
        says(shell, ".hole-tables", "Screws of the handle, 14 mm from the free edge").await?;
        shell.type_into("cabinet-handle-thickness", "12").await?;
        says(shell, "#cabinet-handle-thickness-note", "At least 15 mm").await?;
        shell.keep_picture("cabinet-handles").await
    })
}

#[test]
fn hooks_hang_below_what_hangs() -> Outcome {
    play("cabinet-hooks", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.type_into("cabinet-hooks-count", "4").await?;
        says(shell, ".parts table", "1 × Hook rail").await?;
        shell.press("[data-fold=holes] > summary").await?;
        // 800.8 in four shares of 200.2, a hook in the middle of each.
        says(shell, ".hole-tables", "100; 300.5; 500.5; 700.5 mm").await?;
        shell.type_into("cabinet-hooks-height", "30").await?;
        says(shell, "#cabinet-hooks-height-note", "At least 40 mm").await?;
        shell.keep_picture("cabinet-hooks").await
    })
}

#[test]
fn a_shelf_outside_is_cut_marked_and_named_where_a_door_strikes_it() -> Outcome {
    play("cabinet-outside", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.choose("cabinet-outside-at", 1).await?;
        // 350 less the 17.6 of the door, which opens past that side.
        says(shell, ".parts table", "1 × Shelf outside").await?;
        says(shell, ".parts table", "332.5 × 200 mm").await?;
        shell.press("[data-fold=holes] > summary").await?;
        says(shell, ".hole-tables", "67.5; 300 mm").await?;
        says(shell, ".cautions", "maker's own sheet").await?;
        shell.type_into("cabinet-outside-length", "350").await?;
        says(shell, ".card-top .verdict", "the door strikes the shelf outside").await?;
        shell.type_into("cabinet-outside-leg", "800").await?;
        says(shell, "#cabinet-outside-leg-note", "the side goes no further down").await?;
        shell.keep_picture("cabinet-outside").await
    })
}

const TICKED: &str = "return document.querySelectorAll('.tick input:checked').length";
#[test]
fn ticks_are_there_after_a_restart_and_go_with_other_sizes() -> Outcome {
    play("cabinet-ticks", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=cuts] > summary").await?;
        for number in [0, 3] {
            shell.press(&format!(".cut-order input[data-number='{number}']")).await?;
        }
        let ticked = async || shell.ask::<usize>(TICKED, &[]).await;
        until("two ticks", ticked, |count| *count == 2).await?;
        shell.keep_picture("cabinet-ticks").await?;
        shell.open_bench().await?;
        shell.restart().await?;
        shell.open_card("cabinet").await?;
        shell.press("[data-action=saw]").await?;
        until("two ticks at the saw", async || shell.ask::<usize>(TICKED, &[]).await, |count| *count == 2).await?;
        shell.press("[data-action=close]").await?;
        shell.shows_no("dialog.at-saw").await?;
        shell.press("[data-fold=cuts] > summary").await?;
        shell.type_into("cabinet-width", "900").await?;
        says(shell, ".cut-state", "2 ticks belong to other parts").await?;
        until("no ticks", async || shell.ask::<usize>(TICKED, &[]).await, |count| *count == 0).await.map(drop)
    })
}

/// How wide the first drawing is.
async fn wide(shell: &Shell) -> Outcome<f64> {
    shell.ask("return document.querySelector('.drawn-paper svg').getBoundingClientRect().width", &[]).await
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
    play("cabinet-drawings", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        let drawn = async || shell.ask::<usize>("return document.querySelectorAll('.drawn svg').length", &[]).await;
        until("no drawing", drawn, |count| *count == 0).await?;
        shell.press("[data-fold=drawings] > summary").await?;
        // Front, section, plan, taken apart; both sides, top, bottom, back, three strips, a shelf, two doors.
        until("every drawing", drawn, |count| *count == 15).await?;
        says(shell, ".drawings", "Left side, face to the right").await?;
        let before = wide(shell).await?;
        shell.press(".drawn [data-action=larger]").await?;
        until("twice as wide", async || wide(shell).await, |now| (now / before - 2.0).abs() < 0.02).await?;
        shell.keep_picture("cabinet-drawings").await
    })
}

#[test]
fn another_card_opens_with_the_cabinets_sizes_and_has_its_own_back_by_undo() -> Outcome {
    play("cabinet-hands-over", Kind::Browser, async |shell| {
        shell.open_card("back-panel").await?;
        shell.type_into("back-panel-opening-width", "900").await?;
        shell.answers(&["914 mm", "726 mm"]).await?;
        shell.open_bench().await?;
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=hands] > summary").await?;
        shell.press("[data-hands=back-panel]").await?;
        // What the cabinet says of its back.
        shell.answers(&["811 mm", "1159.5 mm"]).await?;
        shell.press("[data-action=undo]").await?;
        shell.answers(&["914 mm", "726 mm"]).await.map(drop)
    })
}

#[test]
fn what_is_changed_on_another_card_is_given_back() -> Outcome {
    play("cabinet-given-back", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=hands] > summary").await?;
        shell.press("[data-hands=wall-cleat]").await?;
        shell.type_into("wall-cleat-strip-height", "80").await?;
        shell.type_into("wall-cleat-slack", "1").await?;
        says(shell, ".gives-back", "2 inputs that the cabinet has too").await?;
        shell.keep_picture("cabinet-given-back").await?;
        shell.press("[data-action=give-back]").await?;
        shell.field_is("cabinet-strip-height", "given back", |field| field.value == "80").await?;
        shell.field_is("cabinet-slack", "given back", |field| field.value == "1").await?;
        shell.press("[data-action=undo]").await?;
        shell.field_is("cabinet-strip-height", "as before", |field| field.value == "70").await?;
        // Once given back, it is no longer offered.
        shell.open_bench().await?;
        shell.open_card("wall-cleat").await?;
        shell.field_is("wall-cleat-strip-height", "as typed", |field| field.value == "80").await?;
        shell.shows_no(".gives-back").await
    })
}

#[test]
fn the_next_cut_is_ticked_and_taken_back_at_the_saw() -> Outcome {
    play("cabinet-next", Kind::Browser, async |shell| {
        shell.open_card("cabinet").await?;
        shell.press("[data-action=saw]").await?;
        // The cabinet's first setting: both sides and what else is 350 mm deep are ripped first.
        says(shell, "dialog .coming .coming-setting", "Rip, fence").await?;
        let first = shell.text("dialog .coming .coming-what").await?;
        shell.press("dialog [data-action=tick-next]").await?;
        let ticked = async || shell.ask::<usize>(TICKED, &[]).await;
        until("a tick", ticked, |count| *count == 1).await?;
        until("another", async || shell.text("dialog .coming .coming-what").await, |next| *next != first).await?;
        shell.press("dialog [data-action=tick-next]").await?;
        until("two ticks", ticked, |count| *count == 2).await?;
        shell.keep_picture("cabinet-next").await?;
        shell.press("dialog [data-action=untick]").await?;
        shell.press("dialog [data-action=untick]").await?;
        until("no ticks", ticked, |count| *count == 0).await?;
        until("the first again", async || shell.text("dialog .coming .coming-what").await, |next| *next == first)
            .await
            .map(drop)
    })
}
