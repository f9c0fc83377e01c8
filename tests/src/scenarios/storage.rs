//! A store that fails: what was kept is neither lost nor written over.

use crate::fault::Outcome;
use crate::shell::Shell;

/// At a start at which what is kept cannot be read, the app says so, and what is typed takes the place of nothing. Once
/// it can be read again, all of it is there. `block` starts the app so; `free` lets it read.
///
/// # Errors
/// When anything is not as it should be.
pub async fn is_read_again(
    shell: &mut Shell,
    block: impl AsyncFn(&mut Shell) -> Outcome,
    free: impl AsyncFn(&mut Shell) -> Outcome,
) -> Outcome {
    shell.open_card("back-panel").await?;
    shell.type_into("back-panel-opening-width", "864").await?;
    shell.answers(&["878 mm", "726 mm"]).await?;
    shell.open_bench().await?;
    block(shell).await?;

    shell.shows("[data-action=read-again]").await?;
    shell.keep_picture("unread").await?;
    shell.open_card("back-panel").await?;
    shell.answers(&["578 mm", "726 mm"]).await?;
    shell.type_into("back-panel-opening-width", "964").await?;
    shell.answers(&["978 mm", "726 mm"]).await?;
    // What cannot be read yet says so once more, and leaves on the screen what was typed.
    shell.press("[data-action=read-again]").await?;
    shell.answers(&["978 mm", "726 mm"]).await?;

    free(shell).await?;
    shell.type_into("back-panel-opening-width", "965").await?;
    shell.answers(&["979 mm", "726 mm"]).await?;
    // Leaving a card keeps its inputs at once, if it keeps them at all.
    shell.open_bench().await?;
    shell.press("[data-action=read-again]").await?;
    shell.shows_no(".notice").await?;
    shell.open_card("back-panel").await?;
    shell.answers(&["878 mm", "726 mm"]).await?;
    shell.type_into("back-panel-opening-width", "900").await?;
    shell.answers(&["914 mm", "726 mm"]).await?;
    shell.open_bench().await?;
    shell.restart().await?;
    shell.open_card("back-panel").await?;
    shell.answers(&["914 mm", "726 mm"]).await.map(drop)
}
