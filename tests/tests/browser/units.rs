//! The unit that a bare number takes.

use scantling_tests::fault::{Outcome, require_same};
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;

const UNIT: &str =
    "return document.getElementById(arguments[0]).parentElement.querySelector('.text-field-tape').innerText";

async fn has_unit(shell: &Shell, id: &str, unit: &str) -> Outcome {
    let look = async || shell.ask::<String>(UNIT, &[json!(id)]).await;
    until(&format!("{unit} beside {id}"), look, |shown| shown == unit).await.map(drop)
}

/// A number keeps the unit that it was typed in; one that is typed over all of it takes the system in use, also where
/// both begin with the same digit.
#[test]
fn what_is_typed_over_a_field_takes_the_unit_in_use() -> Outcome {
    play("units", Kind::Browser, async |shell| {
        shell.open_card("shelf").await?;
        shell.type_into("shelf-span", "864").await?;
        shell.switch_to_inches(true).await?;
        has_unit(shell, "shelf-span", "mm").await?;
        shell.type_into("shelf-span", "84").await?;
        has_unit(shell, "shelf-span", "in").await?;
        // Undo goes back to before the field was touched, unit and all.
        shell.press("[data-action='undo']").await?;
        has_unit(shell, "shelf-span", "mm").await?;
        let span = shell.field("shelf-span").await?.value;
        require_same(&span.as_str(), &"800", "the span before")
    })
}
