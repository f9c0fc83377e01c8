//! At the saw the screen stays on, where the browser lets it.

use scantling_tests::fault::{Outcome, require_same};
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;

/// Notes what is asked of the screen.
const NOTE: &str = "
    window.awake = [];
    const lock = { release: async () => { window.awake.push('released'); } };
    const request = async (what) => { window.awake.push(what); return lock; };
    Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: { request } });";

/// A browser that has no such thing, or refuses it.
const NEVER: &str = "Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: undefined });";
const REFUSED: &str = "
    const request = async () => { throw new DOMException('', 'NotAllowedError'); };
    Object.defineProperty(navigator, 'wakeLock', { configurable: true, value: { request } });";

async fn notes(shell: &Shell, want: &[&str]) -> Outcome {
    let look = async || shell.ask::<Vec<String>>("return window.awake", &[]).await;
    until(&format!("{want:?}"), look, |notes| notes == want).await.map(drop)
}

#[test]
fn the_screen_is_kept_awake_at_the_saw_and_let_go() -> Outcome {
    play("saw-awake", Kind::Browser, async |shell| {
        shell.open_card("back-panel").await?;
        shell.ask::<()>(NOTE, &[]).await?;
        shell.press("[data-action=saw]").await?;
        shell.shows("dialog.at-saw[open]").await?;
        notes(shell, &["screen"]).await?;
        require_same(&shell.count(".at-saw-dims").await?, &0, "hints that the screen may go dark")?;
        shell.press("[data-action=close]").await?;
        notes(shell, &["screen", "released"]).await
    })
}

#[test]
fn where_the_screen_cannot_be_kept_awake_it_says_so() -> Outcome {
    play("saw-dims", Kind::Browser, async |shell| {
        shell.open_card("back-panel").await?;
        for without in [NEVER, REFUSED] {
            shell.ask::<()>(without, &[]).await?;
            shell.press("[data-action=saw]").await?;
            shell.shows(".at-saw-dims").await?;
            shell.keep_picture("saw-dims").await?;
            shell.press("[data-action=close]").await?;
            shell.shows_no("dialog.at-saw").await?;
        }
        Ok(())
    })
}
