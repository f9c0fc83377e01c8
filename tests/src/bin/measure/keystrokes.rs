//! From a key to the painted answer, on every card, and to the painted drawing of a cabinet.

use super::{SLOWER, in_order, percentile, tell};
use scantling_tests::fault::Outcome;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde::Deserialize;
use serde_json::json;
use std::time::Duration;

/// So many keys on each card.
const KEYS: usize = 200;

/// So long from one painted answer to the next key: a fast typist's.
pub(super) const PACE: Duration = Duration::from_millis(120);

/// Notes for every key how long it was until the changed answer was painted, and how much of that was no wait.
const WATCH: &str = "
    const watch = window.watch = { painted: [], worked: [] };
    let begun = null, waiting = false;
    addEventListener('keydown', (event) => { begun = event.timeStamp; }, { capture: true });
    new MutationObserver(() => {
        if (begun === null || waiting) return;
        waiting = true;
        const changed = performance.now();
        requestAnimationFrame(() => {
            const framed = performance.now();
            scheduler.postTask(() => {
                const painted = performance.now();
                watch.painted.push(painted - begun);
                watch.worked.push(changed - begun + painted - framed);
                begun = null;
                waiting = false;
            }, { priority: 'user-blocking' });
        });
    }).observe(document.querySelector(arguments[0]), { subtree: true, childList: true, characterData: true, attributes: true });";

#[derive(Debug, Deserialize)]
struct Watched {
    painted: Vec<f64>,
    worked: Vec<f64>,
}

/// What is watched: the figures, or the picture over them.
const ANSWER: &str = ".answer-lines";
const DRAWING: &str = ".card-top .picture";

/// The least that a page can do for a key.
pub(super) const BARE: &str = "data:text/html,<p class=answer-lines>0</p><input id=bare value=864><script>
    const [answer, field] = document.querySelectorAll('p, input');
    field.addEventListener('input', () => { answer.textContent = 2 * field.value; });
</script>";

/// A field of each card in which one more digit at the end changes the answer, and so does taking it back.
const FIELDS: &[(&str, &str)] = &[
    ("convert-readings", "333"),
    ("cabinet-width", "333"),
    ("back-panel-opening-width", "864"),
    ("shelf-span", "900"),
    ("clothes-rail-span", "900"),
    ("spacing-length", "864"),
    ("wood-movement-width", "300"),
    ("sheet-layout-sheet-price", "64"),
    ("bevelled-strips-strip-width", "20"),
    ("angles-side", "400"),
    ("groove-distance", "10"),
    ("hole-rows-end-distance", "40"),
    ("cup-hinge-opening-width", "864"),
    ("joints-length", "333"),
    ("wall-cleat-top-at", "2000"),
    ("hanging-width", "900"),
    ("materials-sheet-price", "64"),
];

pub(super) async fn keystrokes() -> Outcome {
    let shell = &mut Shell::open(Kind::Browser).await?;
    for (case, (id, text)) in CASES.iter().zip(FIELDS) {
        shell.open_card(case.slug).await?;
        shell.answers(case.demo).await?;
        shell.type_into(id, text).await?;
        shell.field_is(id, "typed", |field| field.value == *text && field.focused).await?;
        tell_keys(case.slug, keys(shell, case.slug, ANSWER).await?, Some(16.0));
    }
    shell.end().await
}

pub(super) async fn drawings() -> Outcome {
    let shell = &mut Shell::open(Kind::Browser).await?;
    shell.open_card("cabinet").await?;
    shell.type_into("cabinet-width", "333").await?;
    tell_keys("cabinet, drawing", keys(shell, "cabinet", DRAWING).await?, Some(16.0));
    // Eight bays of twenty-four shelves, on a plinth.
    shell.choose("cabinet-stands", 2).await?;
    let typed =
        [("least-gap", "50"), ("height", "2000"), ("bays", "8"), ("loose-shelves", "24"), ("width", "3500 + 1")];
    for (field, text) in typed {
        shell.type_into(&format!("cabinet-{field}"), text).await?;
    }
    tell_keys("cabinet of 200 parts, drawing", keys(shell, "cabinet", DRAWING).await?, Some(50.0));
    shell.session()?.goto(BARE).await?;
    shell.ask::<()>("document.getElementById('bare').focus()", &[]).await?;
    tell_keys("bare page", keys(shell, "bare page", ANSWER).await?, None);
    shell.end().await
}

fn tell_keys(page: &str, watched: Watched, bar: Option<f64>) {
    let (painted, worked) = (in_order(watched.painted), in_order(watched.worked));
    let name = |what: &str| format!("{page}: key to painted answer, {what}, processor {SLOWER} times slower");
    tell(&name("median"), percentile(&painted, 50), "ms", None);
    tell(&name("99th percentile"), percentile(&painted, 99), "ms", bar);
    tell(&name("99th percentile less the wait for a frame"), percentile(&worked, 99), "ms", None);
}

/// Presses keys in the field that has the focus: a digit, and the same taken back. What changes for each is what stands
/// in the first element of this selector.
async fn keys(shell: &Shell, page: &str, watched: &str) -> Outcome<Watched> {
    shell.slow_down(SLOWER).await?;
    shell.ask::<()>(WATCH, &[watched.into()]).await?;
    for number in 0..KEYS {
        let key = if number % 2 == 0 {
            json!({ "key": "1", "code": "Digit1", "windowsVirtualKeyCode": 49, "text": "1" })
        } else {
            json!({ "key": "Backspace", "code": "Backspace", "windowsVirtualKeyCode": 8 })
        };
        for kind in ["keyDown", "keyUp"] {
            let mut event = key.clone();
            event["type"] = kind.into();
            shell.tool("Input.dispatchKeyEvent", event).await?;
        }
        let look = async || shell.ask::<usize>("return window.watch.painted.length", &[]).await;
        until(&format!("{page}: the answer to key {number}"), look, |count| *count > number).await?;
        tokio::time::sleep(PACE).await;
    }
    shell.slow_down(1).await?;
    shell.ask("return window.watch", &[]).await
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_card_has_a_field_to_type_into() {
        for (case, (id, _)) in CASES.iter().zip(FIELDS) {
            assert!(id.starts_with(case.slug), "{id}");
        }
        assert_eq!(CASES.len(), FIELDS.len());
    }
}
