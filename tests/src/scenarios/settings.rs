//! The settings: each takes hold at once, and is there after a restart.

use crate::fault::{Outcome, require, require_same};
use crate::shell::Shell;
use crate::wait::until;
use serde_json::json;

/// The colour behind everything.
async fn paper(shell: &Shell) -> Outcome<String> {
    shell.ask("return getComputedStyle(document.body).backgroundColor", &[]).await
}

const CHOSEN: &str = "
    const chosen = document.querySelector(`#${arguments[0]} input:checked`) ?? document.getElementById(arguments[0]);
    return Number(chosen.value);";

/// Changes every setting, looks at what it does, and starts the app anew.
///
/// # Errors
/// When a setting does not take hold, or is gone.
pub async fn are_kept(shell: &mut Shell) -> Outcome {
    // In the order of the screen: inches; 1/32 in; 0.1 mm; not over; slate; our pad.
    let wanted = [
        ("settings-system", 1),
        ("settings-inch-graduation", 4),
        ("settings-mm-graduation", 2),
        ("settings-rounding", 1),
        ("settings-theme", 2),
        ("settings-keys", 1),
    ];
    shell.open_settings().await?;
    let light = paper(shell).await?;
    for (id, index) in wanted {
        shell.choose(id, index).await?;
    }
    until("another look", async || paper(shell).await, |now| *now != light).await?;
    shell.type_into("settings-kerf", "2.4").await?;
    shell.field_is("settings-kerf", "read", |field| !field.invalid && field.value == "2.4").await?;
    shell.keep_picture("settings-changed").await?;

    // 877 mm is 34 16.9/32 in, 725 mm is 28 17.4/32 in: not over makes 16/32 and 17/32 of them (handbook P-7).
    shell.open_card("back-panel").await?;
    shell.type_into("back-panel-opening-width", "864 mm").await?;
    shell.type_into("back-panel-clearance", "3 mm").await?;
    shell.answers(&["34 1/2 inch", "28 17/32 inch"]).await?;
    // Away from the card, so that it has kept what was typed; otherwise it waits until typing rests.
    shell.open_bench().await?;

    shell.restart().await?;
    shell.open_settings().await?;
    for (id, index) in wanted {
        let chosen: usize = shell.ask(CHOSEN, &[json!(id)]).await?;
        require_same(&chosen, &index, id)?;
    }
    let kerf = shell.field("settings-kerf").await?.value;
    require_same(&kerf.as_str(), &"2.4", "settings-kerf")?;
    let dark = paper(shell).await?;
    require(dark != light, || format!("the look is {dark} again"))?;

    // A measurement that cannot be read is not kept, and says so.
    shell.type_into("settings-kerf", "0").await?;
    shell.field_is("settings-kerf", "refused", |field| field.invalid && field.note.contains("more than zero")).await?;
    shell.open_card("back-panel").await?;
    shell.answers(&["34 1/2 inch", "28 17/32 inch"]).await.map(drop)
}
