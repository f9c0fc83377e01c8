//! A new version waits until the maker lets it in, and then takes over whole.

use crate::offline::kept_on_the_device;
use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::places;
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use std::fs;
use std::path::Path;
use tempfile::TempDir;

const HASH: &str = "
    const done = arguments[arguments.length - 1];
    crypto.subtle.digest('SHA-256', new TextEncoder().encode(arguments[0]))
        .then((hash) => done(btoa(String.fromCharCode(...new Uint8Array(hash)))));";

/// The web app as it is, but for a mark in its page, and a worker that lists the changed page: a second version.
async fn second_version(shell: &Shell, into: &Path) -> Outcome {
    for entry in fs::read_dir(places::web()?)? {
        let path = entry?.path();
        fs::copy(&path, into.join(path.file_name().unwrap()))?;
    }
    let page = fs::read_to_string(into.join("index.html"))?;
    let marked = page.replacen("</head>", "<meta name=\"edition\" content=\"second\">\n</head>", 1);
    assert_ne!(page, marked, "the page has a head");
    let hash: String = shell.ask_later(HASH, &[marked.as_str().into()]).await?;
    fs::write(into.join("index.html"), &marked)?;

    let worker = fs::read_to_string(into.join("sw.js"))?;
    let begin = worker.find("[\"index.html\",\"").expect("the page is listed") + "[\"index.html\",\"".len();
    let end = begin + worker[begin..].find('"').unwrap();
    let worker = format!("{}sha256-{hash}{}", &worker[..begin], &worker[end..]);
    let (first, rest) = worker.split_once('\n').unwrap();
    assert!(first.starts_with("const VERSION"), "{first}");
    fs::write(into.join("sw.js"), format!("const VERSION = \"second\";\n{rest}"))?;
    Ok(())
}

const CACHES: &str = "const done = arguments[arguments.length - 1]; caches.keys().then(done);";

#[test]
fn a_new_version_takes_over_when_it_is_let_in() -> Outcome {
    play("new-version", Kind::Browser, async |shell| {
        kept_on_the_device(shell).await?;
        let folder = TempDir::new()?;
        second_version(shell, folder.path()).await?;
        let first: Vec<String> = shell.ask_later(CACHES, &[]).await?;
        require_same(&first.len(), &1, "caches of the first version")?;

        shell.server()?.serve_instead(folder.path());
        shell.go_to("#/back-panel").await?;
        shell.started().await?;
        shell.type_into("back-panel-opening-width", "864").await?;
        shell.ask::<()>("window.same = true", &[]).await?;
        shell.shows(".notice [data-action=take-over]").await?;
        shell.keep_picture("new-version").await?;
        // Nobody's app changes under their hands: this is the page from before, with what was typed.
        shell.answers(&["878 mm", "726 mm"]).await?;
        require(shell.ask("return window.same === true", &[]).await?, || "the page was loaded anew by itself".into())?;
        require_same(&shell.count("meta[name=edition]").await?, &0, "the mark of the second version, too early")?;

        shell.press("[data-action=take-over]").await?;
        shell.shows("meta[name=edition]").await?;
        shell.started().await?;
        shell.answers(&["878 mm", "726 mm"]).await?;
        shell.shows_no(".notice").await?;
        let look = async || shell.ask_later::<Vec<String>>(CACHES, &[]).await;
        until("only the second version's cache", look, |caches| caches == &["scantling-second"]).await?;

        // The second version is whole: it works without a network too.
        shell.server()?.switch_off();
        shell.offline(true).await?;
        shell.go_to("#/back-panel").await?;
        shell.shows("meta[name=edition]").await?;
        shell.answers(&["878 mm", "726 mm"]).await.map(drop)
    })
}
