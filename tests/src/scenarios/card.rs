//! A maker's whole way through a card, with real typing.

use super::cards::{Act, Case};
use crate::fault::{Outcome, require, require_same};
use crate::page::Card;
use crate::shell::Shell;
use crate::wait::until;
use thirtyfour::Key;

/// All of it, in one sitting and the next.
///
/// # Errors
/// When anything is not as the case says.
pub async fn whole_way(shell: &mut Shell, case: &Case) -> Outcome {
    opens_with_the_demo(shell, case).await?;
    answers_what_is_typed(shell, case).await?;
    keeps_the_last_answer_beside_a_bad_reading(shell, case).await?;
    takes_keys(shell, case).await?;
    shows_both_systems(shell, case).await?;
    shows_the_numbers_at_the_saw(shell, case).await?;
    says_why(shell, case).await?;
    is_on_the_bench_and_there_after_a_restart(shell, case).await?;
    goes_back_to_the_demo(shell, case).await
}

async fn act(shell: &Shell, act: Act) -> Outcome {
    match act {
        Act::Type(id, text) => shell.type_into(id, text).await,
        Act::Choose(id, index) => shell.choose(id, index).await,
    }
}

/// Both systems are in sight.
fn both_in_sight(card: &Card) -> Outcome {
    let with_unit = |unit: &str| card.main.iter().chain(&card.other).any(|text| text.contains(unit));
    require(with_unit("mm") && with_unit("inch"), || format!("mm and inches are wanted, not {card:?}"))
}

async fn opens_with_the_demo(shell: &Shell, case: &Case) -> Outcome {
    shell.pick_card(case.slug).await?;
    let card = shell.answers(case.demo).await?;
    both_in_sight(&card)?;
    shell.keep_picture(case.slug).await
}

async fn answers_what_is_typed(shell: &Shell, case: &Case) -> Outcome {
    for one in case.acts {
        act(shell, *one).await?;
    }
    let card = shell.answers(case.answer).await?;
    both_in_sight(&card)?;
    // The polite region follows once typing rests: a screen reader hears the figures, not every key.
    let first = case.answer.first().copied().unwrap_or_default();
    until("the answer spoken", async || shell.card().await, |card| card.spoken.contains(first)).await?;

    if let Some(last @ Act::Type(id, text)) = case.acts.last() {
        shell.press("[data-action=undo]").await?;
        shell.field_is(id, "what stood there before", |field| field.value != *text && !field.value.is_empty()).await?;
        act(shell, *last).await?;
        shell.answers(case.answer).await?;
    }
    Ok(())
}

async fn keeps_the_last_answer_beside_a_bad_reading(shell: &Shell, case: &Case) -> Outcome {
    let (id, bad, words) = case.bad;
    let good = shell.field(id).await?.value;
    shell.type_into(id, bad).await?;
    let field = shell.field_is(id, "marked, with a note", |field| field.invalid && !field.note.is_empty()).await?;
    require(field.note.contains(words), || format!("{id} with {bad:?} says {:?}; {words:?} is wanted", field.note))?;
    let kept = |card: &Card| card.stale && card.main == case.answer;
    until("the last answer, greyed", async || shell.card().await, kept).await?;
    shell.keep_picture(&format!("{}-bad-reading", case.slug)).await?;

    shell.type_into(id, &good).await?;
    shell.answers(case.answer).await?;
    let field = shell.field(id).await?;
    require(!field.invalid && !field.note.contains(words), || format!("{id} is still marked: {field:?}"))
}

async fn takes_keys(shell: &Shell, case: &Case) -> Outcome {
    if let Some((from, to)) = case.enter {
        shell.key(from, Key::Enter).await?;
        shell.field_is(to, "the focus after Enter", |field| field.focused).await?;
    }
    if let Some((id, up, down)) = case.steps {
        let before = shell.field(id).await?.value;
        shell.key(id, Key::Up).await?;
        shell.field_is(id, "one mark more", |field| field.value == up).await?;
        shell.key(id, Key::Down).await?;
        shell.key(id, Key::Down).await?;
        shell.field_is(id, "one mark less", |field| field.value == down).await?;
        shell.type_into(id, &before).await?;
    }
    shell.answers(case.answer).await.map(drop)
}

async fn shows_both_systems(shell: &Shell, case: &Case) -> Outcome {
    shell.switch_to_inches(true).await?;
    let card = shell.answers(case.inches).await?;
    both_in_sight(&card)?;
    shell.keep_picture(&format!("{}-inches", case.slug)).await?;
    shell.switch_to_inches(false).await?;
    shell.answers(case.answer).await.map(drop)
}

const AT_SAW: &str = "return [...document.querySelectorAll('dialog.at-saw[open] .at-saw-main')]
    .map((element) => element.textContent.replace(/\\s+/g, ' ').trim());";

async fn shows_the_numbers_at_the_saw(shell: &Shell, case: &Case) -> Outcome {
    shell.press("[data-action=saw]").await?;
    let look = async || shell.ask::<Vec<String>>(AT_SAW, &[]).await;
    until("the numbers at the saw", look, |numbers| numbers == case.answer).await?;
    shell.keep_picture(&format!("{}-at-the-saw", case.slug)).await?;
    shell.press("[data-action=close]").await?;
    shell.shows_no("dialog.at-saw").await?;

    // The answer itself opens it too, and Escape closes it.
    shell.press(".answer").await?;
    until("the numbers at the saw", look, |numbers| numbers == case.answer).await?;
    shell.session()?.action_chain().send_keys(Key::Escape).perform().await?;
    shell.shows_no("dialog.at-saw").await
}

async fn says_why(shell: &Shell, case: &Case) -> Outcome {
    shell.press("details.fold > summary").await?;
    shell.shows("details.fold[open] .step").await?;
    let marks: Vec<String> = shell
        .ask("return [...document.querySelectorAll('.step .source-mark')].map((mark) => mark.textContent.trim())", &[])
        .await?;
    require_same(&marks.len(), &shell.count(".step").await?, "a source for every step")?;
    let known = ["published", "common practice", "from memory"];
    require(marks.iter().all(|mark| known.contains(&mark.to_lowercase().as_str())), || format!("{marks:?}"))?;
    shell.keep_picture(&format!("{}-working", case.slug)).await
}

/// The number that begins a line such as `877 × 725 mm` or `34 1/2 inch`.
fn first_number(line: &str) -> &str {
    let first = line.split(" × ").next().unwrap_or_default();
    ["mm", "inch", "strips"].iter().find_map(|unit| first.strip_suffix(unit)).unwrap_or(first).trim()
}

/// The first large figure of a card on the bench.
async fn on_the_bench(shell: &Shell, case: &Case, figure: &str) -> Outcome {
    let css = format!("main .bench-row[data-card='{}'] .bench-main", case.slug);
    let what = format!("{figure} of {} on the bench", case.slug);
    let holds = |text: &Option<String>| text.as_deref().is_some_and(|text| first_number(text) == first_number(figure));
    until(&what, async || shell.text(&css).await, holds).await.map(drop)
}

async fn is_on_the_bench_and_there_after_a_restart(shell: &mut Shell, case: &Case) -> Outcome {
    let first = |figures: &[&'static str]| figures.first().copied().unwrap_or_default();
    shell.open_bench().await?;
    on_the_bench(shell, case, first(case.answer)).await?;
    shell.keep_picture(&format!("{}-on-the-bench", case.slug)).await?;
    shell.switch_to_inches(true).await?;
    on_the_bench(shell, case, first(case.inches)).await?;

    shell.restart().await?;
    shell.open_bench().await?;
    on_the_bench(shell, case, first(case.inches)).await?;
    shell.open_card(case.slug).await?;
    shell.answers(case.inches).await?;
    for one in case.acts {
        if let Act::Type(id, text) = one {
            require_same(&shell.field(id).await?.value.as_str(), text, &format!("{id} after a restart"))?;
        }
    }
    shell.switch_to_inches(false).await?;
    shell.answers(case.answer).await.map(drop)
}

async fn goes_back_to_the_demo(shell: &Shell, case: &Case) -> Outcome {
    shell.press("[data-action=demo]").await?;
    shell.answers(case.demo).await?;
    shell.press("[data-action=undo]").await?;
    shell.answers(case.answer).await.map(drop)
}
