//! Figures of the running app, a line of JSON each: `{"name": …, "value": …, "unit": …, "bar": …}`. All of them, or
//! those that are named: keystrokes, drawings, jobs, frames, start, window.
//!
//! **Keystroke to painted answer** begins at the key event's own time stamp, which the browser puts on it before any
//! script runs, so that waiting in its queue counts. It ends with the paint of the frame in which the answer changed: a
//! task of the highest priority, posted from that frame's animation callback, runs right after the frame's layout and
//! paint. Keys come at the pace of a fast typist. Frames come every 16.7 ms; the wait for the next one is in the first
//! figure and not in the second. What a bare page with one field and one line of text takes, measured in the same way,
//! stands beside them: nothing on this machine can be below it.
//!
//! **Frames** are the times from one animation callback to the next, while a list of 300 parts is searched for a better
//! layout, the page is scrolled and a field is typed into.
//!
//! **Second start** is a new browser on the same profile, with the server gone and the page's network switched off; the
//! clock is the page's own, from the start of its navigation to the painted answer.
//!
//! **The window** is timed by the system's clock from the start of its process to the first answer seen by a look from
//! outside every few milliseconds. It is a debug build, driven through its WebDriver.

mod jobs;
mod keystrokes;

use keystrokes::{BARE, PACE};
use scantling_tests::fault::{Fault, Outcome};
use scantling_tests::places;
use scantling_tests::process::{family, processes};
use scantling_tests::scenarios::cards::CASES;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;
use std::fs;
use std::path::Path;

/// A phone's processor, next to a desk's.
const SLOWER: u32 = 4;
/// So many starts; the middle one is told.
const STARTS: usize = 5;

fn main() -> Outcome {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    runtime.block_on(async {
        let only: Vec<String> = std::env::args().skip(1).collect();
        let wanted = |name: &str| only.is_empty() || only.iter().any(|one| one == name);
        if wanted("keystrokes") {
            keystrokes::keystrokes().await?;
        }
        if wanted("drawings") {
            keystrokes::drawings().await?;
        }
        if wanted("jobs") {
            jobs::jobs(Kind::Browser).await?;
            jobs::jobs(Kind::Window).await?;
        }
        if wanted("frames") {
            frames().await?;
        }
        if wanted("start") {
            second_start().await?;
        }
        if wanted("window") {
            window().await?;
        }
        Ok(())
    })
}

fn tell(name: &str, value: f64, unit: &str, bar: Option<f64>) {
    println!("{}", json!({ "name": name, "value": value, "unit": unit, "bar": bar }));
}

/// The value that so many per cent do not exceed, by the nearest rank.
fn percentile(sorted: &[f64], per_cent: usize) -> f64 {
    let rank = (sorted.len() * per_cent).div_ceil(100).max(1);
    sorted.get(rank - 1).copied().unwrap_or(f64::NAN)
}

fn in_order(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_by(f64::total_cmp);
    values
}

/// A hundred lines of three parts each, of sizes that lie well apart.
fn long_list() -> String {
    let line = |at: usize| format!("Part {at}, {} x {} x 3", 200 + at * 137 % 900, 90 + at * 71 % 400);
    (0..100).map(line).collect::<Vec<_>>().join("\n")
}

/// What a person does while it is searched.
#[derive(Clone, Copy)]
enum Doing {
    Nothing,
    Typing,
    Scrolling,
}

/// Takes the time of every frame in which there is such an element.
const FRAMES: &str = "
    const counts = arguments[0];
    cancelAnimationFrame(window.next_frame);
    window.frames_ms = [];
    let last = performance.now();
    const note = (now) => {
        if (document.querySelector(counts)) window.frames_ms.push(now - last);
        last = now;
        window.next_frame = requestAnimationFrame(note);
    };
    window.next_frame = requestAnimationFrame(note);";

/// While the search goes on, or waits for typing to rest.
const SEARCHES: &str = ".searching[data-searches='true']";

async fn frames() -> Outcome {
    let shell = &mut Shell::open(Kind::Browser).await?;
    shell.open_card("sheet-layout").await?;
    let paste = "
        const area = document.getElementById('sheet-layout-parts');
        area.focus();
        area.select();
        document.execCommand('insertText', false, arguments[0]);";
    shell.ask::<()>(paste, &[json!(long_list())]).await?;
    let look = async || shell.card().await;
    until("three hundred parts", look, |card| card.main.first().is_some_and(|first| first == "21 sheets")).await?;
    shell.type_into("sheet-layout-sheet-price", "64").await?;
    shell.slow_down(SLOWER).await?;
    let phases = [
        ("nothing touched", "sheet-layout-sheet-price", Doing::Nothing),
        ("its price typed", "sheet-layout-sheet-price", Doing::Typing),
        ("scrolled", "sheet-layout-sheet-price", Doing::Scrolling),
        ("its parts typed", "sheet-layout-parts", Doing::Typing),
    ];
    for (name, field, doing) in phases {
        tell_frames(&format!("300 parts searched, {name}"), frames_of(shell, (field, SEARCHES), doing).await?);
    }
    // What a bare page takes for the same keys: nothing on this machine can be below it.
    shell.session()?.goto(BARE).await?;
    tell_frames("bare page, typed", frames_of(shell, ("bare", "#bare"), Doing::Typing).await?);
    shell.slow_down(1).await?;
    shell.end().await
}

/// What a person does, some of it in this field, for so long; gives the time of every frame in which there is such an
/// element.
async fn frames_of(shell: &Shell, (field, counts): (&str, &str), doing: Doing) -> Outcome<Vec<f64>> {
    let focus = "
        const field = document.getElementById(arguments[0]);
        field.focus();
        field.setSelectionRange(field.value.length, field.value.length);";
    shell.ask::<()>(focus, &[json!(field)]).await?;
    shell.ask::<()>(FRAMES, &[json!(counts)]).await?;
    for turn in 0..40 {
        match doing {
            Doing::Nothing => {}
            Doing::Typing if turn % 2 == 0 => {
                shell.tool("Input.insertText", json!({ "text": "1" })).await.map(drop)?;
            }
            Doing::Typing => {
                for kind in ["keyDown", "keyUp"] {
                    let key =
                        json!({ "type": kind, "key": "Backspace", "code": "Backspace", "windowsVirtualKeyCode": 8 });
                    shell.tool("Input.dispatchKeyEvent", key).await?;
                }
            }
            Doing::Scrolling => {
                let by = if turn % 10 < 5 { 120 } else { -120 };
                let wheel = json!({ "type": "mouseWheel", "x": 180, "y": 500, "deltaX": 0, "deltaY": by });
                shell.tool("Input.dispatchMouseEvent", wheel).await?;
            }
        }
        // Now and then a thought, with a digit more than before, so that another job is laid out and searched.
        tokio::time::sleep(if turn % 8 == 6 { 16 * PACE } else { PACE }).await;
    }
    shell.ask("return window.frames_ms.slice(1)", &[]).await
}

fn tell_frames(what: &str, times: Vec<f64>) {
    let times = in_order(times);
    let bar = (!what.starts_with("bare")).then_some(32.0);
    let name = |figure: &str| format!("sheet-layout: frame, {what}, processor {SLOWER} times slower, {figure}");
    tell(&name("median"), percentile(&times, 50), "ms", None);
    tell(&name("99th percentile"), percentile(&times, 99), "ms", bar);
    tell(&name("longest"), percentile(&times, 100), "ms", None);
    #[expect(clippy::cast_precision_loss, reason = "a few hundred frames")]
    tell(&name("frames"), times.len() as f64, "", None);
}

/// In every page before its own scripts: the time at which its first answer had been painted.
const FIRST_ANSWER: &str = "
    const port = new MessageChannel();
    port.port1.onmessage = () => { window.firstAnswer = performance.now(); };
    const watch = new MutationObserver(() => {
        if (!document.querySelector('.answer-main')?.textContent.trim()) return;
        watch.disconnect();
        requestAnimationFrame(() => port.port2.postMessage(null));
    });
    watch.observe(document, { subtree: true, childList: true, characterData: true });";

async fn second_start() -> Outcome {
    let shell = &mut Shell::open(Kind::Browser).await?;
    let look =
        async || shell.ask::<bool>("return navigator.serviceWorker.controller?.state === 'activated'", &[]).await;
    until("the worker in charge of the page", look, |there| *there).await?;
    shell.server()?.switch_off();
    for case in CASES {
        let mut starts = Vec::new();
        for _ in 0..STARTS {
            shell.restart().await?;
            shell.offline(true).await?;
            shell.slow_down(SLOWER).await?;
            shell.run_first(FIRST_ANSWER).await?;
            shell.go_to(&format!("#/{}", case.slug)).await?;
            let look = async || shell.ask::<Option<f64>>("return window.firstAnswer ?? null", &[]).await;
            starts.extend(until("the first answer", look, Option::is_some).await?);
        }
        let name = format!("{}: second start, offline, to the answer, processor {SLOWER} times slower", case.slug);
        tell(&name, percentile(&in_order(starts), 50), "ms", Some(1000.0));
    }
    shell.end().await
}

async fn window() -> Outcome {
    if !Path::new("/proc/self/stat").exists() {
        eprintln!("The window's figures are taken from /proc, which this system does not have.");
        return Ok(());
    }
    let app = fs::canonicalize(places::app()?)?;
    let (mut starts, mut own, mut all) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..STARTS {
        let mut shell = Shell::open(Kind::Window).await?;
        shell.shows(".bench-main").await?;
        let seen = uptime()?;
        let process = processes()?
            .into_iter()
            .find(|process| fs::canonicalize(format!("/proc/{}/exe", process.id)).is_ok_and(|path| path == app));
        let process = process.ok_or_else(|| Fault::Wrong("the window's process is not to be found".to_owned()))?;
        starts.push((seen - process.begun) * 1000.0);
        let family = family(process.id)?;
        own.push(memory_mb(process.id));
        all.push(family.into_iter().map(memory_mb).sum());
        shell.end().await?;
    }
    let middle = |values: Vec<f64>| percentile(&in_order(values), 50);
    tell("window, debug build: process start to the bench's answers", middle(starts), "ms", None);
    tell("window, debug build: memory of its own process", middle(own), "MB", None);
    tell("window, debug build: memory with the web view's processes", middle(all), "MB", None);
    Ok(())
}

fn uptime() -> Outcome<f64> {
    let text = fs::read_to_string("/proc/uptime")?;
    Ok(text.split(' ').next().and_then(|seconds| seconds.parse().ok()).unwrap_or(f64::NAN))
}

/// What a process has in memory; shared pages count in each.
fn memory_mb(id: u32) -> f64 {
    let status = fs::read_to_string(format!("/proc/{id}/status")).unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:"));
    let kilobytes: f64 = line.and_then(|line| line.split_whitespace().next()?.parse().ok()).unwrap_or(f64::NAN);
    kilobytes * 1024.0 / 1e6
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn percentiles_are_by_the_nearest_rank() {
        let values: Vec<f64> = (1..=200).map(f64::from).collect();
        assert_eq!([50, 99, 100].map(|per_cent| percentile(&values, per_cent)), [100.0, 198.0, 200.0]);
        assert!(percentile(&[], 50).is_nan());
    }
}
