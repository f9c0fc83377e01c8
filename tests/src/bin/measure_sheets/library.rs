//! A general-purpose packing library beside ours, with the same time for each instance.

use crate::Trouble;
use crate::asked::Asked;
use crate::classes::lay;
use scantling::measure::{Length, LengthError};
use scantling::sheets::{Area, Job, Layout, Placed, Sheet};
use scantling_tests::sheets::check;
use scantling_tests::sheets::instances::Instance;
use serde::Deserialize;
use serde_json::json;
use std::io::Write;
use std::process::{Command, Stdio};

const PROGRAM: &str = include_str!("library.py");
/// So long for each instance.
const SECONDS: f64 = 0.5;

/// What the library found for an instance.
#[derive(Debug, Deserialize)]
struct Found {
    id: String,
    tried: u32,
    variants: u32,
    /// By sheet: which part, and where it lies.
    sheets: Vec<Vec<[u32; 5]>>,
}

/// The first instance of each class and size.
fn some(instances: &[Instance]) -> Vec<Instance> {
    instances.iter().filter(|instance| instance.id.ends_with("_01")).cloned().collect()
}

pub(crate) fn measure(instances: &[Instance], asked: &Asked) -> Result<(), Trouble> {
    let Some(python) = &asked.python else {
        println!("\nThere is no Python with the packing library here, so nothing is measured beside it.");
        return Ok(());
    };
    let some = some(instances);
    println!(
        "\nrectpack beside ours: the first instance of each class and size, {} of them, {SECONDS} s each",
        some.len()
    );
    for turn in asked.turns.iter().copied() {
        let (mut theirs, mut ours, mut area, mut tried, mut variants, mut refused) = (0, 0, 0, 0, 0, 0);
        let (mut better, mut worse) = (0, 0);
        for (instance, found) in some.iter().zip(run(python, &some, turn)?) {
            let layout = found.layout(instance, turn).map_err(|source| bad(&found.id, &source))?;
            let job = job(instance, turn)?;
            if let Err(flaw) = check(&job, &layout) {
                refused += 1;
                println!("  {}: refused: {flaw}", found.id);
            }
            let (own, _) = lay(instance, turn, asked.seed, SECONDS)?;
            better += u32::from(own.sheets.len() < layout.sheets.len());
            worse += u32::from(own.sheets.len() > layout.sheets.len());
            theirs += layout.sheets.len();
            ours += own.sheets.len();
            area += instance.area_bound();
            tried += found.tried;
            variants = found.variants;
        }
        let what = if turn { "turned" } else { "not turned" };
        let each = f64::from(tried) / some.len().max(1) as f64;
        println!(
            "  {what:<11} area {area}, rectpack {theirs}, ours {ours}: fewer in {better}, more in {worse} instances"
        );
        println!(
            "              {each:.0} packings an instance of {variants} variants; {refused} refused by the checker"
        );
    }
    Ok(())
}

fn bad(id: &str, error: &dyn std::error::Error) -> Trouble {
    Trouble::Library(format!("{id}: {error}"))
}

fn job(instance: &Instance, turn: bool) -> Result<Job, Trouble> {
    instance.job(turn).map_err(|source| Trouble::Length { id: instance.id.clone(), source })
}

fn run(python: &std::path::Path, instances: &[Instance], turn: bool) -> Result<Vec<Found>, Trouble> {
    let not_started = |source| Trouble::NotStarted { what: python.display().to_string(), source };
    let mut child = Command::new(python)
        .args(["-c", PROGRAM])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(not_started)?;
    let instances: Vec<_> = instances
        .iter()
        .map(|instance| json!({ "id": instance.id, "sheet": instance.sheet, "parts": instance.parts }))
        .collect();
    let asked = json!({ "seconds": SECONDS, "turn": turn, "instances": instances });
    if let Some(mut into) = child.stdin.take() {
        into.write_all(asked.to_string().as_bytes()).map_err(not_started)?;
    }
    let output = child.wait_with_output().map_err(not_started)?;
    if !output.status.success() {
        return Err(Trouble::Library(format!("it ended with {}", output.status)));
    }
    let line = |line: &str| serde_json::from_str(line).map_err(|error| bad(line, &error));
    String::from_utf8_lossy(&output.stdout).lines().map(line).collect()
}

impl Found {
    /// As a layout of ours, for the checker. It has no cuts: the library says none.
    fn layout(&self, instance: &Instance, turn: bool) -> Result<Layout, LengthError> {
        let mm = |whole: u32| Length::mm(i64::from(whole), 1);
        let [length, width] = instance.sheet;
        let placed = |[part, x, y, length, width]: &[u32; 5]| {
            let part = usize::try_from(*part).unwrap_or(usize::MAX);
            let turned = turn && instance.parts.get(part).is_some_and(|size| *size != [*length, *width]);
            let area = Area { x: mm(*x)?, y: mm(*y)?, length: mm(*length)?, width: mm(*width)? };
            Ok(Placed { part, copy: 0, area, turned })
        };
        let sheet = |parts: &Vec<[u32; 5]>| {
            let parts = parts.iter().map(placed).collect::<Result<_, LengthError>>()?;
            Ok(Sheet { stock: 0, length: mm(length)?, width: mm(width)?, parts, left: Vec::new() })
        };
        let sheets = self.sheets.iter().map(sheet).collect::<Result<_, LengthError>>()?;
        Ok(Layout { sheets, ..Layout::default() })
    }
}
