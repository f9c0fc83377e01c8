//! The tape: answers come on it, can be named, and go into any field.

use crate::fault::{Outcome, require_same};
use crate::shell::Shell;
use crate::wait::until;

const VALUES: &str = "return [...document.querySelectorAll('.tape .tape-value .line-main')]
    .map((value) => value.textContent.replace(/\\s+/g, ' ').trim());";

const ORIGINS: &str =
    "return [...document.querySelectorAll('.tape .tape-origin')].map((place) => place.textContent.trim());";

async fn values_are(shell: &Shell, wanted: &[&str]) -> Outcome {
    let look = async || shell.ask::<Vec<String>>(VALUES, &[]).await;
    until(&format!("{wanted:?} on the tape"), look, |values| values == wanted).await.map(drop)
}

/// Fills the tape, names an answer, starts anew, and puts answers into a field.
///
/// # Errors
/// When a value is not where it should be.
pub async fn carries_values(shell: &mut Shell) -> Outcome {
    shell.open_tape().await?;
    values_are(shell, &[]).await?;

    // 864 + 2 × 8 − 3 mm and 712 + 2 × 8 − 3 mm: handbook P-7.
    shell.open_card("back-panel").await?;
    shell.type_into("back-panel-opening-width", "864 mm").await?;
    shell.type_into("back-panel-clearance", "3 mm").await?;
    shell.answers(&["877 mm", "725 mm"]).await?;
    // A value that does not stand large is put on it by hand.
    shell.press("[data-action=hold]").await?;
    shell.press(".tape-page .tape-row:nth-child(3) [data-action=pick]").await?;
    shell.shows(".tape-page [role=status]:not(:empty)").await?;
    shell.keep_picture("tape-hold").await?;
    let held: Vec<String> = shell.ask(VALUES, &[]).await?;
    let third = held.get(2).cloned().unwrap_or_default();
    shell.press(".tape-page [data-action=close]").await?;
    shell.shows_no(".tape-page").await?;

    shell.open_tape().await?;
    values_are(shell, &[&third, "877 mm", "725 mm"]).await?;
    let origins: Vec<String> = shell.ask(ORIGINS, &[]).await?;
    let first_words = |place: &String| place.split(" · ").next().map(str::to_owned);
    let cards: Vec<_> = origins.iter().filter_map(first_words).collect();
    require_same(&cards, &vec!["Back panel".to_owned(); 3], "where the answers come from")?;
    shell.element(".tape-row:nth-child(2) .tape-name").await?.send_keys("back of the cupboard").await?;
    shell.press(".tape-row:nth-child(1) [data-action=drop]").await?;
    values_are(shell, &["877 mm", "725 mm"]).await?;
    shell.keep_picture("tape").await?;

    shell.restart().await?;
    shell.open_card("shelf").await?;
    // By the unit beside the field, and by the keys in it.
    shell.press(".text-field:has(#shelf-span) [data-action=tape]").await?;
    values_are(shell, &["877 mm", "725 mm"]).await?;
    let name: String = shell.ask("return document.querySelector('.tape-page .tape-name').value", &[]).await?;
    require_same(&name.as_str(), &"back of the cupboard", "the name after a restart")?;
    shell.keep_picture("tape-for-a-field").await?;
    shell.press(".tape-page .tape-row:nth-child(1) [data-action=pick]").await?;
    shell.shows_no(".tape-page").await?;
    shell.field_is("shelf-span", "the value taken", |field| field.value == "877 mm").await?;

    shell.alt_down("shelf-span").await?;
    shell.press(".tape-page .tape-row:nth-child(2) [data-action=pick]").await?;
    shell.field_is("shelf-span", "the other value", |field| field.value == "725 mm").await.map(drop)
}
