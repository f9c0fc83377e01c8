//! The shop sheet as it is printed, on both papers: read back by a library that knows only the format.

use super::paper::{Page, Point, pages, without_spaces};
use base64::Engine;
use scantling::cabinet::{Inputs, Pattern, Template, solve, templates};
use scantling::measure::Length;
use scantling_tests::chromium::Scheme;
use scantling_tests::fault::{Outcome, require};
use scantling_tests::places::artefacts;
use scantling_tests::play::play;
use scantling_tests::shell::{Kind, Shell};
use scantling_tests::wait::until;
use serde_json::json;

/// Points in a millimetre.
const MM: f64 = 72.0 / 25.4;
/// Of a tenth of a millimetre, as far as paper and a rule can tell.
const NEAR: f64 = 0.3;

/// Opens the sheet by its link on the card, and prints it on paper of so many inches.
async fn printed(shell: &Shell, name: &str, [width, height]: Point) -> Outcome<Vec<Page>> {
    shell.open_card("cabinet").await?;
    shell.press(".shop-open a").await?;
    shell.shows(".shop-template svg").await?;
    let how = json!({ "paperWidth": width, "paperHeight": height, "printBackground": true, "preferCSSPageSize": true });
    let answer = shell.tool("Page.printToPDF", how).await?;
    let file = base64::engine::general_purpose::STANDARD.decode(answer["data"].as_str().unwrap()).unwrap();
    std::fs::write(artefacts()?.join(format!("{name}.pdf")), &file)?;
    Ok(pages(&file))
}

fn is_level(line: &[Point; 2]) -> bool {
    (line[0][1] - line[1][1]).abs() < 0.01
}

fn is_upright(line: &[Point; 2]) -> bool {
    (line[0][0] - line[1][0]).abs() < 0.01
}

fn long(line: &[Point; 2]) -> f64 {
    (line[0][0] - line[1][0]).hypot(line[0][1] - line[1][1])
}

/// Middles of the circles of that diameter.
fn circles(page: &Page, diameter_mm: f64) -> Vec<Point> {
    let is_one = |corners: &&[Point; 2]| {
        [0, 1].iter().all(|axis| (corners[1][*axis] - corners[0][*axis] - diameter_mm * MM).abs() < NEAR)
    };
    let middle = |[low, high]: &[Point; 2]| [f64::midpoint(low[0], high[0]), f64::midpoint(low[1], high[1])];
    page.round.iter().filter(is_one).map(middle).collect()
}

/// Everything that the sheet has to say, from the calculation and from the words of the trade.
fn says_all(pages: &[Page]) -> Outcome {
    let all: String = pages.iter().map(|page| page.text.as_str()).collect();
    let says = |words: &str| require(all.contains(&without_spaces(words)), || format!("not printed: {words}"));
    let cabinet = solve(&Inputs::default()).unwrap();
    for line in &cabinet.cut_list {
        // Rounded to half millimetres, as the settings begin.
        let [length, width] = [line.length, line.width].map(|size| (size.as_mm() * 2.0).round() / 2.0);
        says(&format!("{length} × {width} mm"))?;
    }
    for name in ["Left side, Right side", "Top", "Bottom", "Back", "Shelf", "Left door, Right door"] {
        says(name)?;
    }
    for caution in &cabinet.cautions {
        says(caution.hazard())?;
        says(caution.advice())?;
    }
    says("Job")?;
    says("Date")?;
    says("scale 1 : 10")
}

/// The bars, in both units, and what is drilled by them.
fn true_size(page: &Page, template: &Template) -> Outcome {
    for (name, want) in [("100 mm", 100.0 * MM), ("4 in", 288.0)] {
        let bar = page.lines.iter().any(|line| is_level(line) && (long(line) - want).abs() < NEAR);
        require(bar, || format!("no bar of {name}: {:?}", page.lines))?;
    }
    match &template.pattern {
        Pattern::Cup { .. } => {
            let [middle] = circles(page, 35.0)[..] else { panic!("one cup: {:?}", page.round) };
            // The cup of 35 mm stands 4 mm in from the edge that is drawn beside it.
            let edge = page.lines.iter().any(|line| {
                let beside = (middle[0] - line[0][0] - (4.0 + 17.5) * MM).abs() < NEAR;
                is_upright(line) && beside && long(line) > 70.0 * MM
            });
            require(edge, || format!("no edge beside the cup: {:?}", page.lines))
        }
        Pattern::Row { from_edge, hole, .. } => steps(page, *from_edge, *hole),
    }
}

/// Holes are whole steps of 32 mm apart in their strip, and as far from its edge as they are to be.
fn steps(page: &Page, from_edge: Length, hole: Length) -> Outcome {
    let holes = circles(page, hole.as_mm());
    require(holes.len() > 1, || format!("holes: {:?}", page.round))?;
    for pair in holes.windows(2) {
        let [low, high] = [pair[0], pair[1]];
        if (low[0] - high[0]).abs() > NEAR {
            continue;
        }
        let apart = (high[1] - low[1]).abs() / (32.0 * MM);
        require((apart - apart.round()).abs() * 32.0 * MM < NEAR, || format!("{low:?} and {high:?}"))?;
    }
    for middle in holes {
        let beside = |line: &[Point; 2]| (middle[0] - line[0][0] - from_edge.as_mm() * MM).abs() < NEAR;
        let edge = page.lines.iter().any(|line| is_upright(line) && beside(line));
        require(edge, || format!("no edge for the hole at {middle:?}"))?;
    }
    Ok(())
}

async fn on_paper(shell: &Shell, name: &str, inches: Point) -> Outcome {
    let pages = printed(shell, name, inches).await?;
    require((6..=26).contains(&pages.len()), || format!("{} pages", pages.len()))?;
    for (number, page) in (1..).zip(&pages) {
        let size = [0, 1].map(|axis| (page.size[axis] - inches[axis] * 72.0).abs());
        require(size.iter().all(|off| *off < 1.0), || format!("page {number} is {:?}", page.size))?;
        let grey = |colour: &&[f64; 3]| colour.iter().all(|part| (part - colour[0]).abs() < 1e-3);
        let coloured = page.colours.iter().find(|colour| !grey(colour));
        require(coloured.is_none(), || format!("page {number} is coloured: {coloured:?}"))?;
        let out = page.lines.iter().flatten().find(|at| at[0] < 0.0 || at[0] > page.size[0]);
        require(out.is_none(), || format!("page {number} runs out of the paper at {out:?}"))?;
    }
    says_all(&pages)?;
    let wanted = templates(&solve(&Inputs::default()).unwrap()).unwrap();
    let measured: Vec<&Page> = pages.iter().filter(|page| page.text.contains("Measurethebar")).collect();
    require(measured.len() == wanted.len(), || format!("{} pages with templates", measured.len()))?;
    for (page, template) in measured.into_iter().zip(&wanted) {
        true_size(page, template)?;
    }
    Ok(())
}

#[test]
fn the_sheet_fits_a4_and_its_templates_are_true() -> Outcome {
    play("shop-sheet-a4", Kind::Browser, async |shell| {
        shell.prefer(Scheme::Light, true).await?;
        on_paper(shell, "shop-sheet-a4", [210.0 / 25.4, 297.0 / 25.4]).await
    })
}

#[test]
fn the_sheet_fits_letter_and_is_black_on_white_from_a_dark_screen() -> Outcome {
    play("shop-sheet-letter", Kind::Browser, async |shell| {
        shell.prefer(Scheme::Dark, true).await?;
        on_paper(shell, "shop-sheet-letter", [8.5, 11.0]).await
    })
}

#[test]
fn the_sheet_is_looked_at_before_it_is_printed() -> Outcome {
    play("shop-sheet-seen", Kind::Browser, async |shell| {
        for (place, size) in [("phone", (360, 740)), ("desk", (1280, 800))] {
            shell.size(size).await?;
            for scheme in Scheme::ALL {
                shell.prefer(scheme, true).await?;
                shell.open_card("cabinet").await?;
                shell.press(".shop-open a").await?;
                shell.shows(".shop-template svg").await?;
                let wide: bool = shell.ask("return document.documentElement.scrollWidth > innerWidth", &[]).await?;
                require(!wide, || format!("wider than the screen of a {place}"))?;
                until("its head", async || shell.ask::<f64>("return scrollY", &[]).await, |y| *y < 1.0).await?;
                shell.keep_picture(&format!("shop-sheet-{place}-{}", scheme.name())).await?;
            }
        }
        shell.press(".shop-tools .shop-open a").await?;
        shell.shows("section.card[data-card=cabinet]").await
    })
}
