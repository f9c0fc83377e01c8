//! A card has an address of its own: links and the back button work.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;

async fn is_open(shell: &Shell, slug: &str) -> Outcome {
    until(&format!("the card {slug}"), async || shell.card().await, |card| card.slug == slug).await.map(drop)
}

#[test]
fn a_link_opens_its_card_and_the_back_button_goes_back() -> Outcome {
    play("addresses", Kind::Browser, async |shell| {
        let mut titles = Vec::new();
        for case in CASES {
            shell.go_to(&format!("#/{}", case.slug)).await?;
            is_open(shell, case.slug).await?;
            shell.answers(case.demo).await?;
            let title = shell.session()?.title().await?;
            require(!titles.contains(&title), || format!("two cards have the title {title}"))?;
            titles.push(title);
        }
        // By the card's own way back to the bench, to another card, and twice by the browser's button.
        shell.press("a.back").await?;
        shell.shows("main .bench").await?;
        shell.press(".bench-row[data-card='shelf']").await?;
        is_open(shell, "shelf").await?;
        shell.session()?.back().await?;
        shell.shows("main .bench").await?;
        shell.session()?.back().await?;
        is_open(shell, CASES.last().unwrap().slug).await?;
        shell.session()?.forward().await?;
        shell.shows("main .bench").await
    })
}

#[test]
fn an_address_that_leads_nowhere_says_so_and_shows_the_bench() -> Outcome {
    play("no-such-card", Kind::Browser, async |shell| {
        shell.go_to("#/left-handed-hammer").await?;
        shell.shows("main .bench").await?;
        let heading = shell.text("h1").await?;
        require_same(&heading.as_deref(), &Some("There is no such card. Here is the bench."), "the heading")
    })
}
