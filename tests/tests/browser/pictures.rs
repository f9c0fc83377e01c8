//! Pictures of every screen, kept for a person to look at: on a phone and on a desk, on paper and on slate.

use scantling_tests::chromium::Scheme;
use scantling_tests::fault::Outcome;
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, PHONE};

#[test]
fn every_screen_has_its_picture_taken() -> Outcome {
    play("pictures", Kind::Browser, async |shell| {
        for (place, size) in [("phone", PHONE), ("desk", (1280, 800))] {
            shell.size(size).await?;
            for scheme in Scheme::ALL {
                shell.prefer(scheme, true).await?;
                let name = |screen: &str| format!("{screen}-{place}-{}", scheme.name());
                shell.open_bench().await?;
                shell.keep_picture(&name("bench")).await?;
                shell.open_settings().await?;
                shell.keep_picture(&name("settings")).await?;
                for case in CASES {
                    shell.open_card(case.slug).await?;
                    shell.answers(case.demo).await?;
                    shell.ask::<()>("document.activeElement?.blur(); scrollTo(0, 0)", &[]).await?;
                    shell.keep_picture(&name(case.slug)).await?;
                }
            }
        }
        Ok(())
    })
}
