//! The bench is searched by any word of the trade.

use scantling_tests::fault::Outcome;
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;

const ROWS: &str = "return [...document.querySelectorAll('main .bench-row')].map((row) => row.dataset.card)";

async fn type_search(shell: &Shell, words: &str) -> Outcome {
    let field = shell.element("main .bench-search input").await?;
    field.clear().await?;
    Ok(field.send_keys(words).await?)
}

async fn finds(shell: &Shell, words: &str, slug: &str) -> Outcome {
    type_search(shell, words).await?;
    let look = async || shell.ask::<Vec<String>>(ROWS, &[]).await;
    let held = |rows: &Vec<String>| rows.iter().any(|row| row == slug) && rows.len() < scantling::cards::CARDS.len();
    until(&format!("{slug} by the word {words}"), look, held).await.map(drop)
}

#[test]
fn cards_are_found_by_british_and_american_words() -> Outcome {
    play("search", Kind::Browser, async |shell| {
        shell.open_bench().await?;
        for (words, slug) in
            [("rebate", "back-panel"), ("rabbet", "back-panel"), ("louver", "bevelled-strips"), ("sag", "shelf")]
        {
            finds(shell, words, slug).await?;
        }
        type_search(shell, "xylophone").await?;
        let look = async || shell.text("main .bench-none").await;
        until("that nothing is found", look, |text| text.as_deref() == Some("No card by that word.")).await?;
        shell.keep_picture("search-nothing").await?;
        // What is found opens as ever.
        finds(shell, "deflection", "shelf").await?;
        shell.press("main .bench-row[data-card='shelf']").await?;
        until("the card", async || shell.card().await, |card| card.slug == "shelf").await.map(drop)
    })
}
