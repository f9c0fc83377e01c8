//! Every screen under an accessibility checker, in both themes: no finding.

use scantling_tests::chromium::Scheme;
use scantling_tests::fault::{Outcome, require};
use scantling_tests::places;
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};

const RUN: &str = "
    const done = arguments[arguments.length - 1];
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    axe.run(document, { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] }).then((found) => done({
        passes: found.passes.length,
        violations: found.violations.flatMap((rule) => rule.nodes.map(
            (node) => `${rule.id}: ${node.target.join(' ')}: ${node.failureSummary}: ${node.html.slice(0, 160)}`)),
    }), (error) => done({ passes: 0, violations: [String(error)] }));";

#[derive(serde::Deserialize)]
struct Found {
    passes: usize,
    violations: Vec<String>,
}

async fn check(shell: &Shell, screen: &str, scheme: Scheme, into: &mut Vec<String>) -> Outcome {
    let found: Found = shell.ask_later(RUN, &[]).await?;
    require(found.passes > 5, || format!("{screen}: the checker looked at too little to mean anything"))?;
    into.extend(found.violations.into_iter().map(|found| format!("{screen}, {}: {found}", scheme.name())));
    Ok(())
}

async fn every_screen(shell: &Shell, scheme: Scheme) -> Outcome {
    let mut found = Vec::new();
    shell.prefer(scheme, true).await?;
    // So tall that nothing scrolls: the checker takes a control that lies half under the bar for one that is too small.
    shell.size((360, 9000)).await?;
    let checker = std::fs::read_to_string(places::accessibility_checker()?)?;
    shell.ask::<()>(&checker, &[]).await?;
    shell.open_bench().await?;
    check(shell, "bench", scheme, &mut found).await?;
    shell.open_settings().await?;
    check(shell, "settings", scheme, &mut found).await?;
    shell.open_tape().await?;
    check(shell, "tape", scheme, &mut found).await?;
    for case in CASES {
        shell.open_card(case.slug).await?;
        shell.answers(case.demo).await?;
        shell.press("details.fold > summary").await?;
        shell.shows("details.fold[open] .step").await?;
        check(shell, case.slug, scheme, &mut found).await?;

        shell.type_into(case.bad.0, case.bad.1).await?;
        shell.field_is(case.bad.0, "marked", |field| field.invalid).await?;
        check(shell, &format!("{} with a bad reading", case.slug), scheme, &mut found).await?;
        shell.press("[data-action=demo]").await?;
        shell.answers(case.demo).await?;

        shell.press("[data-action=saw]").await?;
        shell.shows("dialog.at-saw[open]").await?;
        check(shell, &format!("{} at the saw", case.slug), scheme, &mut found).await?;
        shell.press("[data-action=close]").await?;
        shell.press("[data-action=hold]").await?;
        shell.shows("dialog.tape-page[open]").await?;
        check(shell, &format!("{}, holding a value", case.slug), scheme, &mut found).await?;
        shell.press("[data-action=close]").await?;
    }
    require(found.is_empty(), || format!("{} findings:\n{}", found.len(), found.join("\n")))
}

/// What the cabinet has besides its card: its drawings, and the shop sheet.
#[test]
fn the_checker_finds_nothing_on_the_drawings_and_the_shop_sheet() -> Outcome {
    play("accessibility-sheet", Kind::Browser, async |shell| {
        let mut found = Vec::new();
        for scheme in Scheme::ALL {
            shell.prefer(scheme, true).await?;
            shell.size((360, 20000)).await?;
            let checker = std::fs::read_to_string(places::accessibility_checker()?)?;
            shell.ask::<()>(&checker, &[]).await?;
            shell.open_card("cabinet").await?;
            shell.press("[data-fold=drawings] > summary").await?;
            shell.shows(".drawn-choice select").await?;
            check(shell, "drawings", scheme, &mut found).await?;
            shell.press(".shop-open a").await?;
            shell.shows(".shop-template svg").await?;
            check(shell, "shop sheet", scheme, &mut found).await?;
        }
        require(found.is_empty(), || format!("{} findings:\n{}", found.len(), found.join("\n")))
    })
}

#[test]
fn the_checker_finds_nothing_on_paper() -> Outcome {
    play("accessibility-light", Kind::Browser, async |shell| every_screen(shell, Scheme::Light).await)
}

#[test]
fn the_checker_finds_nothing_on_slate() -> Outcome {
    play("accessibility-dark", Kind::Browser, async |shell| every_screen(shell, Scheme::Dark).await)
}
