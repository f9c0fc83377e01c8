//! Narrow screens and large text: nothing runs out of sight, nothing is cut off, and nothing moves that should not.

use scantling_tests::chromium::Scheme;
use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use thirtyfour::Key;

/// What does not fit: the page scrolls sideways, or words or a field lie outside the screen or what holds them.
const OUT_OF_SIGHT: &str = "
    const wide = document.documentElement.clientWidth;
    const out = [];
    if (document.scrollingElement.scrollWidth > wide) out.push(`scrolls sideways: ${document.scrollingElement.scrollWidth} in ${wide}`);
    const root = document.querySelector('dialog[open]') ?? document.body;
    const name = (e) => `${e.tagName.toLowerCase()}${e.id ? '#' + e.id : ''}.${e.getAttribute('class') ?? ''}`;
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const text = node.nodeType === Node.TEXT_NODE;
        const element = text ? node.parentElement : node;
        if (text ? !node.data.trim() : !element.matches('input, select, textarea, button, a')) continue;
        if (element.closest('.unseen, .skip, .patterns, script, option, textarea') && text) continue;
        if (element.closest('.unseen, .skip, .patterns')) continue;
        const range = document.createRange();
        if (text) range.selectNodeContents(node); else range.selectNode(node);
        const box = text ? range.getBoundingClientRect() : element.getBoundingClientRect();
        if (box.width === 0 || box.height === 0) continue;
        const what = `${name(element)} ${JSON.stringify((text ? node.data : element.value ?? '').trim().slice(0, 40))}`;
        if (box.left < -1 || box.right > wide + 1) out.push(`outside the screen: ${what} ${box.left.toFixed()}..${box.right.toFixed()} of ${wide}`);
        for (let holder = element; holder && holder !== document.body; holder = holder.parentElement) {
            const style = getComputedStyle(holder);
            const held = holder.getBoundingClientRect();
            const x = style.overflowX !== 'visible' && (box.left < held.left - 1 || box.right > held.right + 1);
            const y = ['hidden', 'clip'].includes(style.overflowY) && (box.top < held.top - 1 || box.bottom > held.bottom + 1);
            if (x || y) { out.push(`cut off by ${name(holder)}: ${what} ${x ? 'sideways' : 'in height'}`); break; }
        }
        if (element.matches('input[type=text]') && element.scrollWidth > element.clientWidth + 1)
            out.push(`too narrow for its text: ${what}`);
    }
    return [...new Set(out)];";

async fn look(shell: &Shell, screen: &str, into: &mut Vec<String>) -> Outcome {
    let out: Vec<String> = shell.ask(OUT_OF_SIGHT, &[]).await?;
    into.extend(out.into_iter().map(|out| format!("{screen}: {out}")));
    Ok(())
}

/// Looks at every screen, the cards with a bad reading and in both systems too.
async fn all_in_sight(shell: &Shell, picture: &str) -> Outcome {
    let mut out = Vec::new();
    shell.open_bench().await?;
    look(shell, "bench", &mut out).await?;
    shell.keep_picture(&format!("{picture}-bench")).await?;
    shell.open_settings().await?;
    look(shell, "settings", &mut out).await?;
    shell.keep_picture(&format!("{picture}-settings")).await?;
    for case in CASES {
        shell.open_card(case.slug).await?;
        shell.answers(case.demo).await?;
        shell.press("details.fold > summary").await?;
        shell.shows("details.fold[open] .step").await?;
        look(shell, case.slug, &mut out).await?;
        shell.switch_to_inches(true).await?;
        look(shell, &format!("{} in inches", case.slug), &mut out).await?;
        shell.keep_picture(&format!("{picture}-{}", case.slug)).await?;
        shell.switch_to_inches(false).await?;
        shell.type_into(case.bad.0, case.bad.1).await?;
        shell.field_is(case.bad.0, "marked", |field| field.invalid).await?;
        look(shell, &format!("{} with a bad reading", case.slug), &mut out).await?;
        shell.press("[data-action=demo]").await?;
        shell.answers(case.demo).await?;
        shell.press("[data-action=saw]").await?;
        shell.shows("dialog.at-saw[open]").await?;
        look(shell, &format!("{} at the saw", case.slug), &mut out).await?;
        shell.keep_picture(&format!("{picture}-{}-at-the-saw", case.slug)).await?;
        shell.press("[data-action=close]").await?;
    }
    require(out.is_empty(), || format!("{} do not fit:\n{}", out.len(), out.join("\n")))
}

#[test]
fn all_is_in_sight_on_a_screen_of_320() -> Outcome {
    play("narrow", Kind::Browser, async |shell| {
        shell.size((320, 640)).await?;
        all_in_sight(shell, "narrow").await
    })
}

#[test]
fn all_is_in_sight_with_text_at_200_per_cent() -> Outcome {
    play("large-text", Kind::Browser, async |shell| {
        shell.with_letters(32).await?;
        let letters: String = shell.ask("return getComputedStyle(document.body).fontSize", &[]).await?;
        require_same(&letters.as_str(), &"32px", "the size of letters")?;
        all_in_sight(shell, "large-text").await
    })
}

const MOVING: &str = "
    const seconds = (list) => Math.max(...list.split(',').map((one) => parseFloat(one)));
    return [...document.querySelectorAll('*')].filter((element) => {
        const style = getComputedStyle(element);
        const moves = style.transitionProperty !== 'none' && seconds(style.transitionDuration) > 0;
        return moves || (style.animationName !== 'none' && seconds(style.animationDuration) > 0);
    }).map((element) => element.outerHTML.slice(0, 80));";

#[test]
fn nothing_moves_where_that_is_not_wanted() -> Outcome {
    play("still", Kind::Browser, async |shell| {
        shell.prefer(Scheme::Light, true).await?;
        for case in CASES {
            shell.open_card(case.slug).await?;
            shell.answers(case.demo).await?;
            shell.press("[data-action=saw]").await?;
            shell.shows("dialog.at-saw[open]").await?;
            let moving: Vec<String> = shell.ask(MOVING, &[]).await?;
            require(moving.is_empty(), || format!("{}: {moving:?}", case.slug))?;
            shell.press("[data-action=close]").await?;
        }
        Ok(())
    })
}

/// Where the focus is, and whether it can be seen there: nothing that sticks to an edge of the screen lies over it.
const FOCUS: &str = "
    const element = document.activeElement;
    if (element === document.body || element === null) return null;
    const box = element.getBoundingClientRect();
    const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    const name = element.id || element.dataset.action || element.getAttribute('href') || element.tagName;
    const own = element.contains(top) || [...(element.labels ?? [])].some((label) => label.contains(top));
    return { name, hidden: own ? null : top?.outerHTML.slice(0, 90) ?? 'the edge of the screen' };";

#[derive(Debug, serde::Deserialize)]
struct Focus {
    name: String,
    hidden: Option<String>,
}

#[test]
fn the_focus_is_never_hidden() -> Outcome {
    play("focus", Kind::Browser, async |shell| {
        let mut hidden = Vec::new();
        for case in CASES {
            shell.pick_card(case.slug).await?;
            shell.answers(case.demo).await?;
            let (mut seen, mut last) = (0, String::new());
            // There and back again: the screen scrolls the one way going down, the other going up.
            for back in [false, true] {
                loop {
                    let hands = shell.session()?.action_chain();
                    let hands = if back { hands.key_down(Key::Shift) } else { hands };
                    hands.send_keys(Key::Tab).key_up(Key::Shift).perform().await?;
                    let look = async || shell.ask::<Option<Focus>>(FOCUS, &[]).await;
                    // It scrolls into sight a moment after it came.
                    let in_sight = |focus: &Option<Focus>| focus.as_ref().is_none_or(|focus| focus.hidden.is_none());
                    let focus = match until("the focus in sight", look, in_sight).await {
                        Ok(focus) => focus,
                        Err(_) => look().await?,
                    };
                    let Some(focus) = focus else { break };
                    if focus.name == last {
                        break;
                    }
                    seen += 1;
                    hidden.extend(focus.hidden.map(|by| format!("{} {} under {by}", case.slug, focus.name)));
                    last = focus.name;
                    require(seen < 400, || format!("{}: the focus never comes round", case.slug))?;
                }
            }
            require(seen > 6, || format!("{}: only {seen} stops", case.slug))?;
        }
        require(hidden.is_empty(), || format!("{} times the focus is hidden:\n{}", hidden.len(), hidden.join("\n")))
    })
}
