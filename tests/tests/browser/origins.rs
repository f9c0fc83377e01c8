//! No request goes to any other origin: what the app asks for is watched, and what it could ask for is forbidden.

use scantling_tests::fault::{Outcome, require, require_same};
use scantling_tests::places;
use scantling_tests::play::play;
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::server::Server;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// Every address that the page or its worker has asked for, as the browser's own log has them; not what the browser
/// asked for on its own first page.
async fn asked_for(shell: &Shell) -> Outcome<BTreeSet<String>> {
    let mut addresses = BTreeSet::new();
    for entry in shell.session()?.get_log("performance").await? {
        let entry: Value = serde_json::from_str(&entry.message)?;
        let message = &entry["message"];
        let asker = message["params"]["documentURL"].as_str().unwrap_or_default();
        if message["method"] == "Network.requestWillBeSent" && !asker.starts_with("chrome://") {
            addresses.extend(message["params"]["request"]["url"].as_str().map(str::to_owned));
        }
    }
    Ok(addresses)
}

/// Goes to every screen, types, and folds out all there is.
async fn everywhere(shell: &Shell) -> Outcome {
    for case in CASES {
        shell.open_card(case.slug).await?;
        shell.answers(case.demo).await?;
        shell.type_into(case.bad.0, case.bad.1).await?;
        shell.press("details.fold > summary").await?;
        shell.press("[data-action=copy]").await?;
        shell.press("[data-action=demo]").await?;
        shell.answers(case.demo).await?;
    }
    shell.open_settings().await
}

#[test]
fn the_app_asks_nobody_else() -> Outcome {
    play("origins", Kind::Browser, async |shell| {
        crate::offline::kept_on_the_device(shell).await?;
        everywhere(shell).await?;
        let origin = shell.server()?.origin();
        let asked = asked_for(shell).await?;
        let own = |address: &&String| address.starts_with(&format!("{origin}/")) || address.starts_with("data:");
        let others: Vec<&String> = asked.iter().filter(|address| !own(address)).collect();
        require(others.is_empty(), || format!("asked for elsewhere: {others:?}"))?;
        require(asked.len() > 4, || format!("the log has too little to mean anything: {asked:?}"))?;
        let resources: Vec<String> =
            shell.ask("return performance.getEntriesByType('resource').map((entry) => entry.name)", &[]).await?;
        require(resources.iter().all(|address| own(&address)), || format!("fetched elsewhere: {resources:?}"))?;

        // Nor anything that is not there, or that nobody has listed.
        let files: BTreeSet<String> = std::fs::read_dir(places::web()?)?
            .map(|entry| Ok(format!("/{}", entry?.file_name().to_string_lossy())))
            .collect::<std::io::Result<_>>()?;
        let strange: Vec<String> =
            shell.server()?.requests().into_iter().filter(|path| path != "/" && !files.contains(path)).collect();
        require(strange.is_empty(), || format!("asked for what is not there: {strange:?}"))
    })
}

/// Every way in which a page can reach out.
const REACH_OUT: &str = "
    const other = arguments[0];
    window.forbidden = [];
    addEventListener('securitypolicyviolation', (event) => window.forbidden.push(event.effectiveDirective));
    const put = (tag, set) => document.body.append(Object.assign(document.createElement(tag), set));
    fetch(other + 'fetch').catch(() => {});
    new Image().src = other + 'image';
    put('script', { src: other + 'script.js' });
    put('link', { rel: 'stylesheet', href: other + 'style.css' });
    put('iframe', { src: other + 'frame' });
    put('video', { src: other + 'video' });
    put('object', { data: other + 'object' });
    try { new WebSocket(other.replace('http', 'ws')); } catch { }
    try { navigator.sendBeacon(other + 'beacon', 'x'); } catch { }
    new FontFace('Elsewhere', `url(${other}font.woff2)`).load().catch(() => {});
    try { eval('window.evaluated = true'); } catch { }
    document.body.setAttribute('style', 'color: red');";

#[test]
fn the_policy_lets_nothing_out() -> Outcome {
    play("policy", Kind::Browser, async |shell| {
        let elsewhere = Server::start(&places::web()?)?;
        shell.ask::<()>(REACH_OUT, &[format!("{}/", elsewhere.origin()).into()]).await?;
        let wanted: BTreeSet<String> = [
            "connect-src",
            "img-src",
            "script-src-elem",
            "style-src-elem",
            "frame-src",
            "media-src",
            "object-src",
            "font-src",
            "style-src-attr",
        ]
        .map(str::to_owned)
        .into();
        let look = async || shell.ask::<BTreeSet<String>>("return window.forbidden", &[]).await;
        until("a refusal of every way out", look, |refused| wanted.is_subset(refused)).await?;
        require(elsewhere.requests().is_empty(), || format!("it got through: {:?}", elsewhere.requests()))
    })
}

#[test]
fn the_policy_is_the_strictest_that_works() -> Outcome {
    let page = std::fs::read_to_string(places::web()?.join("index.html"))?;
    let (_, policy) = page.split_once("http-equiv=\"Content-Security-Policy\" content=\"").expect("a policy");
    let policy: BTreeMap<&str, Vec<&str>> = policy
        .split('"')
        .next()
        .unwrap()
        .split(';')
        .filter_map(|rule| {
            let mut words = rule.split_whitespace();
            Some((words.next()?, words.collect()))
        })
        .collect();
    let own = ["'self'", "'none'"];
    for (name, sources) in &policy {
        let also: &[&str] = match *name {
            "script-src" => &["'wasm-unsafe-eval'"],
            "img-src" => &["data:"],
            _ => &[],
        };
        let strict = sources.iter().all(|source| own.contains(source) || also.contains(source));
        require(strict, || format!("{name} lets in {sources:?}"))?;
    }
    // What the first does not stand in for has to be said by itself.
    for name in ["default-src", "base-uri", "form-action"] {
        require_same(&policy.get(name).map(Vec::as_slice), &Some(["'none'"].as_slice()), name)?;
    }
    Ok(())
}
