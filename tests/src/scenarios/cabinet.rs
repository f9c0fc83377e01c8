//! Cabinet: what a maker does with it in either shell.

use crate::fault::{Outcome, require};
use crate::shell::Shell;
use crate::wait::until;

/// The text of the first such element holds these words.
///
/// # Errors
/// When it never does.
pub async fn says(shell: &Shell, css: &str, words: &str) -> Outcome<String> {
    let look = async || shell.text(css).await;
    let text = until(words, look, |text| text.as_deref().is_some_and(|text| text.contains(words))).await?;
    Ok(text.unwrap_or_default())
}

/// The card with the demo, whatever was there before.
async fn demo(shell: &Shell) -> Outcome {
    shell.open_card("cabinet").await?;
    shell.press("[data-action=demo]").await?;
    says(shell, ".card-top .verdict", "Fits together").await.map(drop)
}

/// So many ticks are set.
const TICKED: &str = "return document.querySelectorAll('.tick input:checked').length";

/// How wide the first drawing is.
///
/// # Errors
/// When there is none.
pub async fn wide(shell: &Shell) -> Outcome<f64> {
    shell.ask("return document.querySelector('.drawn-paper svg').getBoundingClientRect().width", &[]).await
}

/// Whatever collides is named.
///
/// # Errors
/// When anything is not as it should be.
pub async fn names_what_is_in_the_way(shell: &Shell) -> Outcome {
    demo(shell).await?;
    says(shell, ".card-top .verdict", "Fits together").await?;
    // The middle hinge of three lies where the middle shelf meets the side.
    shell.type_into("cabinet-fixed-shelves", "1").await?;
    says(shell, ".card-top .verdict", "Bay 1: a hinge lies on fixed shelf 1").await?;
    shell.keep_picture("cabinet-in-the-way").await
}

/// Costs are added up, and what has no price is named.
///
/// # Errors
/// When anything is not as it should be.
pub async fn adds_up_costs(shell: &Shell) -> Outcome {
    demo(shell).await?;
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
}

/// Strips of wood open the doors.
///
/// # Errors
/// When anything is not as it should be.
pub async fn opens_doors_by_strips(shell: &Shell) -> Outcome {
    demo(shell).await?;
    shell.choose("cabinet-handle-pull", 1).await?;
    says(shell, ".parts table", "2 × Handle strip").await?;
    says(shell, ".parts table", "1167 × 40 mm").await?;
    shell.press("[data-fold=holes] > summary").await?;
    // 40 less 20·tan 30° is 28.45 behind: its middle is 14.2 from the edge.
    says(shell, ".hole-tables", "Screws of the handle, 14 mm from the free edge").await?;
    shell.type_into("cabinet-handle-thickness", "12").await?;
    says(shell, "#cabinet-handle-thickness-note", "At least 15 mm").await?;
    shell.keep_picture("cabinet-handles").await
}

/// Hooks hang below what hangs.
///
/// # Errors
/// When anything is not as it should be.
pub async fn hangs_hooks(shell: &Shell) -> Outcome {
    demo(shell).await?;
    shell.type_into("cabinet-hooks-count", "4").await?;
    says(shell, ".parts table", "1 × Hook rail").await?;
    shell.press("[data-fold=holes] > summary").await?;
    // 800.8 in four shares of 200.2, a hook in the middle of each.
    says(shell, ".hole-tables", "100; 300.5; 500.5; 700.5 mm").await?;
    shell.type_into("cabinet-hooks-height", "30").await?;
    says(shell, "#cabinet-hooks-height-note", "At least 40 mm").await?;
    shell.keep_picture("cabinet-hooks").await
}

/// A clothes rail is a part with sockets, and the sizes of what is bought are the maker's.
///
/// # Errors
/// When anything is not as it should be.
pub async fn hangs_a_rail(shell: &Shell) -> Outcome {
    demo(shell).await?;
    shell.type_into("cabinet-rail-bay", "1").await?;
    // 800.8 less 3 for the sockets.
    says(shell, ".parts table", "1 × Clothes rail").await?;
    says(shell, ".parts table", "798 × 25 mm").await?;
    says(shell, ".groups", "Bay 1: hangers need 271 mm more depth").await?;
    says(shell, ".groups", "what hangs on the rail needs 419 mm more height").await?;
    shell.press("[data-fold=holes] > summary").await?;
    // 72.5 below the top, which is 14.6 thick; half of 328.9 from the front.
    says(shell, ".hole-tables", "1083 mm from the lower end, 164.5 mm from the front").await?;
    says(shell, ".hole-tables", "⌀ 6 mm, 22.5 mm deep").await?;
    shell.type_into("cabinet-joint-sizes-dowel-diameter", "8").await?;
    says(shell, ".hole-tables", "⌀ 8 mm, 22.5 mm deep").await?;
    shell.type_into("cabinet-rail-play", "5").await?;
    says(shell, ".parts table", "796 × 25 mm").await?;
    shell.type_into("cabinet-rail-wall", "20").await?;
    says(shell, "#cabinet-rail-wall-note", "At most 12.5 mm").await?;
    shell.keep_picture("cabinet-rail").await
}

/// A shelf outside is cut, marked, and named where a door strikes it.
///
/// # Errors
/// When anything is not as it should be.
pub async fn hangs_a_shelf_outside(shell: &Shell) -> Outcome {
    demo(shell).await?;
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
}

/// Ticks are there after a restart, and go with other sizes.
///
/// # Errors
/// When anything is not as it should be.
pub async fn keeps_ticks(shell: &mut Shell) -> Outcome {
    demo(shell).await?;
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
}

/// The drawings are there once they are asked for, and can be looked at closely.
///
/// # Errors
/// When anything is not as it should be.
pub async fn draws(shell: &Shell) -> Outcome {
    demo(shell).await?;
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
}

/// Another card opens with the cabinet's sizes, and has its own back by undo.
///
/// # Errors
/// When anything is not as it should be.
pub async fn hands_over(shell: &Shell) -> Outcome {
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
}

/// What is changed on another card is given back.
///
/// # Errors
/// When anything is not as it should be.
pub async fn is_given_back(shell: &Shell) -> Outcome {
    demo(shell).await?;
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
}

/// The next cut is ticked and taken back at the saw.
///
/// # Errors
/// When anything is not as it should be.
pub async fn is_followed_at_the_saw(shell: &Shell) -> Outcome {
    demo(shell).await?;
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
}

/// Cut list and drawings are saved as files. `saved` gives the text of the file that the words of this element tell of.
///
/// # Errors
/// When anything is not as it should be.
pub async fn saves_files(shell: &Shell, saved: impl AsyncFn(&Shell, &str) -> Outcome<String>) -> Outcome {
    demo(shell).await?;
    // What is said stands beside the button that saved it.
    let beside = |action: &str| format!(".parts [data-action={action}] + .said");
    for (action, end) in [("save-csv", ".csv"), ("save-text", ".txt")] {
        shell.press(&format!(".parts [data-action={action}]")).await?;
        says(shell, &beside(action), end).await?;
        let text = saved(shell, &beside(action)).await?;
        require(text.contains("Shelf"), || format!("{action} saved {text}"))?;
    }
    shell.press("[data-fold=drawings] > summary").await?;
    for (action, end, first, last) in [("save-svg", ".svg", "<svg", "</svg>"), ("save-dxf", ".dxf", "0", "EOF")] {
        shell.press(&format!(".drawn [data-action={action}]")).await?;
        says(shell, ".drawn .said", end).await?;
        let text = saved(shell, ".drawn .said").await?;
        let (begins, ends) = (text.trim().starts_with(first), text.trim().ends_with(last));
        require(begins && ends, || format!("{action} saved {text}"))?;
    }
    Ok(())
}

/// The shop sheet opens from the card, with its drawings, its parts and its templates.
///
/// # Errors
/// When anything is not as it should be.
pub async fn has_a_shop_sheet(shell: &Shell) -> Outcome {
    demo(shell).await?;
    shell.press(".shop-open a").await?;
    shell.shows(".shop-template svg").await?;
    says(shell, ".shop-sheet", "1167 × 412 mm").await.map(drop)?;
    shell.keep_picture("shop-sheet").await?;
    shell.open_bench().await
}
