//! After one visit everything is on the device.

use scantling_tests::fault::{Outcome, require};
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;

/// Waits until the worker has everything, and has taken this page over.
pub(crate) async fn kept_on_the_device(shell: &Shell) -> Outcome {
    let look =
        async || shell.ask::<bool>("return navigator.serviceWorker.controller?.state === 'activated'", &[]).await;
    until("the worker in charge of the page", look, |there| *there).await.map(drop)
}

/// Whether anything can be fetched that is not on the device.
const REACHES: &str = "
    const done = arguments[arguments.length - 1];
    fetch('not-on-the-device.txt', { cache: 'no-store' }).then(() => done(true), () => done(false));";

#[test]
fn after_one_visit_every_card_answers_without_a_network() -> Outcome {
    play("offline", Kind::Browser, async |shell| {
        kept_on_the_device(shell).await?;
        require(shell.ask_later(REACHES, &[]).await?, || "there is no server to begin with".to_owned())?;
        shell.server()?.switch_off();
        shell.offline(true).await?;
        let asked = shell.server()?.requests().len();
        require(!shell.ask_later::<bool>(REACHES, &[]).await?, || "the network is still there".to_owned())?;

        for case in CASES {
            shell.go_to(&format!("#/{}", case.slug)).await?;
            shell.started().await?;
            shell.answers(case.demo).await?;
        }
        shell.go_to("#/back-panel").await?;
        shell.started().await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        // 864 + 8 + 8 − 2 (handbook, section 5).
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.go_to("#/settings").await?;
        shell.shows("main .settings").await?;
        shell.keep_picture("offline").await?;

        // The browser itself looks for a newer worker; the app asks for nothing.
        let since: Vec<String> = shell.server()?.requests().split_off(asked);
        let own = |path: &String| path == "/sw.js" || path == "/not-on-the-device.txt";
        require(since.iter().all(own), || format!("asked for without a network: {since:?}"))
    })
}
