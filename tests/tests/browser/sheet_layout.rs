//! Sheet layout: lines that are marked, a table from a file, ticks over a restart, offcuts, and a search that stops.

use scantling::cards::sheet_layout::{Further, Inputs, solve};
use scantling::measure::Reading;
use scantling_tests::fault::{Fault, Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::{Value, json};

const PARTS: &str = "sheet-layout-parts";

/// Puts a text into the list of parts as a paste does.
async fn paste(shell: &Shell, text: &str) -> Outcome {
    let script = "
        const area = document.getElementById('sheet-layout-parts');
        area.focus();
        area.select();
        document.execCommand('insertText', false, arguments[0]);";
    shell.ask::<()>(script, &[json!(text)]).await
}

/// The text of the first such element holds these words.
async fn says(shell: &Shell, css: &str, words: &str) -> Outcome {
    let look = async || shell.text(css).await;
    until(words, look, |text| text.as_deref().is_some_and(|text| text.contains(words))).await.map(drop)
}

/// Waits until a search is at its end, which may take longer than a person looks at a page.
async fn searched(shell: &Shell) -> Outcome {
    for _ in 0..4 {
        if says(shell, ".searching-words", "to the end").await.is_ok() {
            return Ok(());
        }
    }
    says(shell, ".searching-words", "to the end").await
}

#[test]
fn a_line_that_cannot_be_read_is_marked_and_the_rest_is_laid_out() -> Outcome {
    play("layout-marks", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        paste(shell, "Side\t600\t400\t3\nTop\t6oo\t400\t1\nShelf\t\"500\"\t300\t2").await?;
        // (3 · 0.6 · 0.4 + 2 · 0.5 · 0.3)/2.9768.
        shell.answers(&["1 sheet", "34.3 %"]).await?;
        let field = shell.field_is(PARTS, "marked", |field| field.invalid).await?;
        require(field.note.contains("Line 2") && field.note.contains("6oo"), || field.note.clone())?;
        shell.keep_picture("layout-marks").await?;
        paste(shell, "Side 600 x 400 x3").await?;
        shell.field_is(PARTS, "unmarked", |field| !field.invalid).await.map(drop)
    })
}

/// Hands a file to the field, as a person's choice does.
const CHOOSE: &str = "
    const field = document.getElementById('sheet-layout-file');
    const files = new DataTransfer();
    files.items.add(new File([arguments[0]], 'parts.csv', { type: 'text/csv' }));
    field.files = files.files;
    field.dispatchEvent(new Event('change', { bubbles: true }));";

#[test]
fn a_table_is_read_from_a_file_and_undone() -> Outcome {
    play("layout-file", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        let before = shell.field(PARTS).await?.value;
        let table = "\u{FEFF}Qty;Length;Width;Part\r\n3;600;400;\"Side; left\"\r\n2;500;300,5;Shelf\r\n";
        shell.ask::<()>(CHOOSE, &[json!(table)]).await?;
        shell.field_is(PARTS, "the table", |field| field.value.contains("Side; left")).await?;
        // (3 · 0.6 · 0.4 + 2 · 0.5 · 0.3005)/2.9768.
        shell.answers(&["1 sheet", "34.3 %"]).await?;
        says(shell, "#sheet-layout-file-note", "parts.csv is read").await?;
        shell.press("[data-action=undo]").await?;
        shell.field_is(PARTS, "what stood there before", |field| field.value == before).await?;
        shell.ask::<()>(CHOOSE, &[json!("\u{0}\u{1}")]).await?;
        says(shell, "#sheet-layout-file-note", "cannot be read").await?;
        require_same(&shell.field(PARTS).await?.value, &before, "the list after a file that is none")
    })
}

const TICKED: &str = "return document.querySelectorAll('.cut-order input:checked').length";

#[test]
fn ticks_are_there_after_a_restart_and_go_with_their_layout() -> Outcome {
    play("layout-ticks", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        paste(shell, "Side 600 x 400 x3").await?;
        shell.answers(&["1 sheet", "24.2 %"]).await?;
        // A better layout would have other cuts; a maker waits until there are no more, or stops the search.
        searched(shell).await?;
        shell.press("[data-fold=cuts] > summary").await?;
        for number in [0, 2] {
            shell.press(&format!(".cut-order input[data-number='{number}']")).await?;
        }
        let ticked = async || shell.ask::<usize>(TICKED, &[]).await;
        until("two ticks", ticked, |count| *count == 2).await?;
        says(shell, ".cut-state", "2 of").await?;
        says(shell, ".searching", "this layout stays").await?;
        shell.keep_picture("layout-ticks").await?;

        shell.press(".unit-switch button:last-of-type").await?;
        shell.press(".unit-switch button:first-of-type").await?;
        shell.open_bench().await?;
        shell.restart().await?;
        shell.open_card("sheet-layout").await?;
        shell.press("[data-action=saw]").await?;
        until("two ticks at the saw", async || shell.ask::<usize>(TICKED, &[]).await, |count| *count == 2).await?;
        shell.keep_picture("layout-ticks-at-the-saw").await?;
        shell.press("[data-action=close]").await?;
        shell.shows_no("dialog.at-saw").await?;

        // Another layout has no ticks, and says so; the same one has them again.
        shell.press("[data-fold=cuts] > summary").await?;
        shell.type_into("sheet-layout-trim", "5").await?;
        says(shell, ".cut-state", "2 ticks are put aside").await?;
        until("no ticks", async || shell.ask::<usize>(TICKED, &[]).await, |count| *count == 0).await?;
        shell.type_into("sheet-layout-trim", "10").await?;
        says(shell, ".cut-state", "2 of").await
    })
}

#[test]
fn an_offcut_is_put_by_and_used_first_for_the_next_list() -> Outcome {
    play("layout-offcuts", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        paste(shell, "Side 600 x 400 x3").await?;
        shell.answers(&["1 sheet", "24.2 %"]).await?;
        // Better layouts have other offcuts; a finger waits until there are no more.
        searched(shell).await?;
        shell.press("[data-action=put-by]").await?;
        shell.shows("[data-action=take-back]").await?;
        // The sheet that they came from is not laid out again.
        shell.answers(&["1 sheet", "24.2 %"]).await?;
        let rows = shell.count(".rows .row").await?;
        require(rows > 0, || "no offcut is in the stock".to_owned())?;
        shell.keep_picture("layout-offcuts").await?;

        paste(shell, "Shelf 500 x 300").await?;
        let look = async || shell.card().await;
        until("an offcut used", look, |card| card.main.first().is_some_and(|first| first == "1 offcut")).await?;
        shell.press("[data-action=take-out]").await?;
        until("one less", async || shell.count(".rows .row").await, |count| *count == rows - 1).await?;
        shell.press("[data-action=undo]").await?;
        until("there again", async || shell.count(".rows .row").await, |count| *count == rows).await.map(drop)
    })
}

#[test]
fn a_search_is_stopped_gone_on_with_and_not_lost() -> Outcome {
    play("layout-search", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        shell.shows(".searching[data-searches=true]").await?;
        shell.press("[data-action=stop]").await?;
        shell.shows("[data-action=go-on]").await?;
        let at = shell.text(".searching-words").await?;
        tokio::time::sleep(std::time::Duration::from_millis(600)).await;
        require_same(&shell.text(".searching-words").await?, &at, "a search that was stopped")?;
        shell.press("[data-action=go-on]").await?;
        searched(shell).await?;
        let small = shell.card().await?.other;
        shell.open_bench().await?;
        shell.restart().await?;
        shell.open_card("sheet-layout").await?;
        until("the best layout again", async || shell.card().await, |card| card.other == small).await?;
        says(shell, ".searching-words", "to the end").await
    })
}

/// The search goes the same way here as natively: to the same layout, whatever the slices were.
#[test]
fn the_page_finds_the_very_layout_that_is_found_natively() -> Outcome {
    let list: Vec<String> =
        (0..8).map(|at| format!("Part {at}, {} x {} x 3", 300 + at * 137 % 700, 150 + at * 71 % 300)).collect();
    let list = list.join("\n");
    play("layout-same", Kind::Browser, async |shell| {
        shell.open_card("sheet-layout").await?;
        paste(shell, &list).await?;
        let parts = list.lines().map(Reading::mm).collect();
        let inputs = Inputs { parts, ..Inputs::default() };
        let mut answer = solve(&inputs).map_err(|problems| Fault::Wrong(format!("{problems:?}")))?;
        let mut now = inputs;
        if let Some(mut further) = Further::of(&answer) {
            while !further.progress().done {
                further.step(1_000);
            }
            if let Some((next, better)) = further.better(&now, &answer) {
                (now, answer) = (next, better);
            }
        }
        searched(shell).await?;
        let kept = "return JSON.parse(localStorage.getItem('scantling/inputs/sheet-layout')).found.layout";
        let found = now.found.as_ref().map(|found| serde_json::to_value(&found.layout)).transpose()?;
        require(found.is_some(), || format!("natively nothing better was looked for: {:?}", answer.bound))?;
        let look = async || shell.ask::<Value>(kept, &[]).await;
        until("the same layout", look, |layout| Some(layout) == found.as_ref()).await.map(drop)
    })
}
