//! The answer as text on the clipboard.

use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;

const READ: &str = "
    const done = arguments[arguments.length - 1];
    navigator.clipboard.readText().then(done, (error) => done(String(error)));";

async fn may_read(shell: &Shell) -> Outcome {
    let origin = shell.server()?.origin();
    let given = json!({ "origin": origin, "permissions": ["clipboardReadWrite", "clipboardSanitizedWrite"] });
    shell.tool("Browser.grantPermissions", given).await?;
    shell.tool("Emulation.setFocusEmulationEnabled", json!({ "enabled": true })).await.map(drop)
}

#[test]
fn the_answer_is_copied_in_both_systems() -> Outcome {
    play("clipboard", Kind::Browser, async |shell| {
        may_read(shell).await?;
        shell.open_card("back-panel").await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.press("[data-action=copy]").await?;
        let copied = until(
            "the answer copied",
            async || shell.ask_later::<String>(READ, &[]).await,
            |text| text.contains("878 mm"),
        )
        .await?;
        // 878/25.4 = 34.567 in, nearest 34 9/16; 726/25.4 = 28.583 in, nearest 28 9/16.
        for wanted in ["878 mm (≈ 34 9/16 in)", "726 mm (≈ 28 9/16 in)"] {
            require(copied.contains(wanted), || format!("{wanted:?} is not in {copied:?}"))?;
        }
        let title = shell.text("section.card > h2").await?.unwrap_or_default();
        require(copied.starts_with(&format!("{title}\n")), || format!("{title:?} does not stand over {copied:?}"))?;
        until(
            "a word that it was copied",
            async || shell.text(".said").await,
            |said| said.as_deref().is_some_and(|said| !said.is_empty()),
        )
        .await
        .map(drop)
    })
}

/// Aligned for a fixed-width letter, in the unit in use: the sides are 1170 by 350 mm, 46 1/16 by 13 3/4 in.
#[test]
fn the_cut_list_is_copied_as_lines_that_can_be_read() -> Outcome {
    play("clipboard-cut-list", Kind::Browser, async |shell| {
        may_read(shell).await?;
        for (inches, side) in [(false, ["1170 mm", "350 mm"]), (true, ["46 1/16 in", "13 3/4 in"])] {
            shell.switch_to_inches(inches).await?;
            shell.open_card("cabinet").await?;
            shell.press("[data-action=copy-text]").await?;
            let copied = async || shell.ask_later::<String>(READ, &[]).await;
            let has_side = |text: &String| {
                text.lines().any(|line| line.contains("Side") && side.iter().all(|size| line.contains(size)))
            };
            let copied = until("the cut list copied", copied, has_side).await?;
            // The head, and a line each: sides, top, bottom, back, two cleats, spacer, shelves, doors.
            require(copied.lines().count() == 10, || copied.clone())?;
        }
        Ok(())
    })
}
