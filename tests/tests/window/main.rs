//! The native window: every card opens from the bench and gives its demo's answer.

use scantling_tests::fault::Outcome;
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::Kind;

#[test]
fn every_card_answers_in_the_window() -> Outcome {
    play("window", Kind::Window, async |shell| {
        for case in CASES {
            shell.open_card(case.slug).await?;
            shell.answers(case.demo).await?;
            shell.keep_picture(&format!("{}-window", case.slug)).await?;
        }
        Ok(())
    })
}
