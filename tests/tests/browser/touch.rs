//! Fingers: targets large enough, and our own pad in place of the system's keyboard.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;
use thirtyfour::Key;

/// Targets smaller than a dusty thumb.
const SMALL: &str = "
    const least = 48 - 0.01;
    const root = document.querySelector('dialog[open]') ?? document.body;
    const all = root.querySelectorAll('a[href], button, input, select, textarea, summary');
    return [...all].filter((element) => !element.closest('.skip')).map((element) => [element, element.getBoundingClientRect()])
        .filter(([, box]) => box.width > 0 && (box.width < least || box.height < least))
        .map(([element, box]) => `${element.outerHTML.slice(0, 90)}: ${box.width.toFixed(1)} × ${box.height.toFixed(1)}`);";

async fn measure(shell: &Shell, screen: &str, into: &mut Vec<String>) -> Outcome {
    let small: Vec<String> = shell.ask(SMALL, &[]).await?;
    into.extend(small.into_iter().map(|small| format!("{screen}: {small}")));
    Ok(())
}

/// The app under fingers, on a screen of this width.
async fn with_fingers(shell: &Shell, width: u32) -> Outcome {
    shell.touch_screen((width, 740)).await?;
    shell.go_to("").await?;
    shell.started().await
}

#[test]
fn every_target_is_large_enough_for_a_thumb() -> Outcome {
    play("targets", Kind::Browser, async |shell| {
        with_fingers(shell, 320).await?;
        let mut small = Vec::new();
        shell.open_bench().await?;
        measure(shell, "bench", &mut small).await?;
        shell.open_settings().await?;
        measure(shell, "settings", &mut small).await?;
        for case in CASES {
            shell.open_card(case.slug).await?;
            shell.answers(case.demo).await?;
            measure(shell, case.slug, &mut small).await?;
            if let Some((id, _)) = case.enter {
                shell.element(&format!("#{id}")).await?;
                shell.tap(&format!("#{id}")).await?;
                shell.shows(".number-pad button").await?;
            }
            measure(shell, &format!("{} with the pad", case.slug), &mut small).await?;
            shell.element("[data-action=saw]").await?;
            shell.tap("[data-action=saw]").await?;
            shell.shows("dialog.at-saw[open]").await?;
            measure(shell, &format!("{} at the saw", case.slug), &mut small).await?;
            shell.press("[data-action=close]").await?;
        }
        shell.open_card("cabinet").await?;
        shell.press("[data-fold=drawings] > summary").await?;
        shell.shows(".drawn-choice select").await?;
        measure(shell, "drawings", &mut small).await?;
        shell.press(".shop-open a").await?;
        shell.shows(".shop-template svg").await?;
        measure(shell, "shop sheet", &mut small).await?;
        require(small.is_empty(), || format!("{} targets are too small:\n{}", small.len(), small.join("\n")))
    })
}

/// A finger on the key of our pad with this text or name.
async fn key(shell: &Shell, name: &str) -> Outcome {
    let mark = "
        document.querySelector('[data-tapped]')?.removeAttribute('data-tapped');
        const keys = [...document.querySelectorAll('.number-pad button')];
        const key = keys.find((key) => key.textContent === arguments[0] || key.getAttribute('aria-label') === arguments[0]);
        key?.setAttribute('data-tapped', '');
        return key !== undefined;";
    require(shell.ask(mark, &[json!(name)]).await?, || format!("the pad has no key {name}"))?;
    shell.tap("[data-tapped]").await
}

async fn keys(shell: &Shell, names: &[&str]) -> Outcome {
    for name in names {
        key(shell, name).await?;
    }
    Ok(())
}

/// Whether the field with the focus can be seen: on the screen, above the pad, and below what sticks to the top.
const IN_SIGHT: &str = "
    const box = document.activeElement.getBoundingClientRect();
    const at = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    return document.activeElement.contains(at);";

#[test]
fn our_pad_types_a_reading() -> Outcome {
    play("pad", Kind::Browser, async |shell| {
        with_fingers(shell, 360).await?;
        shell.open_card("back-panel").await?;
        shell.answers(&["578 mm", "726 mm"]).await?;
        require_same(&shell.count(".number-pad").await?, &0, "a pad before any field has the focus")?;
        let id = "back-panel-opening-width";
        shell.element(&format!("#{id}")).await?;
        shell.tap(&format!("#{id}")).await?;
        shell.shows(".number-pad button").await?;
        let mode: String = shell.ask("return document.activeElement.inputMode", &[]).await?;
        require_same(&mode.as_str(), &"none", "what keeps the system's keyboard away")?;
        let seen = async || shell.ask::<bool>(IN_SIGHT, &[]).await;
        until("the field above the pad", seen, |seen| *seen).await?;

        keys(shell, &["8", "6", "4", "4"]).await?;
        key(shell, "Take back").await?;
        shell.field_is(id, "864", |field| field.value == "864" && field.focused).await?;
        // 864 + 8 + 8 − 2 (handbook, section 5).
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.keep_picture("pad").await?;

        // 23 5/8 in + 15 mm = 615.075 mm; 615.075 + 8 + 8 − 2 = 629.075, on marks of 0.5 mm 629.
        shell.type_into(id, "").await?;
        keys(shell, &["2", "3", "Space", "5", "/8", "in", "Plus", "1", "5", "mm"]).await?;
        shell.field_is(id, "what was tapped", |field| field.value == "23 5/8 in + 15 mm").await?;
        shell.answers(&["629 mm", "726 mm"]).await?;

        key(shell, "Next").await?;
        shell.field_is("back-panel-opening-height", "the focus", |field| field.focused).await?;
        keys(shell, &["7", "0", "2"]).await?;
        key(shell, "One mark more").await?;
        shell.field_is("back-panel-opening-height", "one mark more", |field| field.value == "702.5").await?;
        shell.answers(&["629 mm", "726.5 mm"]).await?;
        until("the next field above the pad", seen, |seen| *seen).await.map(drop)
    })
}

#[test]
fn the_pad_never_hides_the_field_it_types_into() -> Outcome {
    play("pad-fields", Kind::Browser, async |shell| {
        // A short phone: 640 high, of which the pad takes half.
        shell.touch_screen((360, 640)).await?;
        let mut hidden = Vec::new();
        for case in CASES {
            if case.enter.is_none() {
                continue;
            }
            shell.go_to(&format!("#/{}", case.slug)).await?;
            shell.started().await?;
            shell.answers(case.demo).await?;
            shell.shows(".fields input[data-takes]").await?;
            let first: String = shell.ask("return document.querySelector('.fields input[data-takes]').id", &[]).await?;
            shell.element(&format!("#{first}")).await?;
            shell.tap(&format!("#{first}")).await?;
            shell.shows(".number-pad button").await?;
            let mut fields = 0;
            while let Some(id) = shell.ask::<Option<String>>("return document.activeElement.id || null", &[]).await? {
                let seen = async || shell.ask::<bool>(IN_SIGHT, &[]).await;
                if until("the field in sight", seen, |seen| *seen).await.is_err() {
                    hidden.push(id.clone());
                }
                fields += 1;
                // A list of choices has no use for the pad; from there Enter goes on.
                if shell.count(".number-pad").await? > 0 {
                    key(shell, "Next").await?;
                } else {
                    shell.key(&id, Key::Enter).await?;
                }
                let moved = async || shell.ask::<Option<String>>("return document.activeElement.id || null", &[]).await;
                until("the next field", moved, |now| now.as_ref() != Some(&id)).await?;
            }
            require(fields > 3, || format!("{}: only {fields} fields", case.slug))?;
        }
        require(hidden.is_empty(), || format!("hidden: {hidden:?}"))
    })
}

#[test]
fn without_fingers_there_is_no_pad() -> Outcome {
    play("no-pad", Kind::Browser, async |shell| {
        shell.open_card("back-panel").await?;
        shell.press("#back-panel-opening-width").await?;
        shell.field_is("back-panel-opening-width", "the focus", |field| field.focused).await?;
        require_same(&shell.count(".number-pad").await?, &0, "pads")
    })
}
