//! Sheets by class of instance, beside the bounds and the best that is known.

use crate::Trouble;
use crate::asked::Asked;
use crate::clock::Clock;
use scantling::sheets::{Layout, Progress, Search};
use scantling_tests::sheets::instances::{CLASSES, Instance, Known, SIZES};
use scantling_tests::sheets::random::Chance;
use scantling_tests::sheets::{check, replay};
use std::collections::BTreeMap;
use std::fs;
use std::io::Write;
use std::path::Path;

/// Said where there are no instances.
pub(crate) const WHERE_FROM: &str = "\
There is no file of published instances here. They are those of Berkey and Wang (1987, classes 1 to 6) and of Martello and \
Vigo (1998,
classes 7 to 10), which many collections of packing problems on the web carry. One line of JSON each:
  {\"id\":\"c01_n020_01\",\"class\":1,\"sheet\":[10,10],\"parts\":[[5,9],[4,2]]}
and beside them, if there is one, reference.csv: id,area,bound_fixed,bound_rotatable,known_fixed,known_rotatable.
cargo xtask bench sheets --instances FILE reads them.";

/// So many tries between two looks at the clock.
const PORTION: u32 = 20;

/// Every instance of a file.
pub(crate) fn read(path: &Path) -> Result<Vec<Instance>, Trouble> {
    let text = fs::read_to_string(path).map_err(|source| Trouble::File { path: path.to_owned(), source })?;
    let line = |line: &str| {
        let bad = |source| Trouble::Line { path: path.to_owned(), line: line.chars().take(60).collect(), source };
        serde_json::from_str(line).map_err(bad)
    };
    text.lines().filter(|line| !line.trim().is_empty()).map(line).collect()
}

/// Two of each class and size, by the published rules.
pub(crate) fn drawn(seed: u64) -> Vec<Instance> {
    let mut chance = Chance::new(seed);
    let mut all = Vec::new();
    for class in CLASSES {
        for count in SIZES {
            all.extend((1..=2).map(|number| Instance::drawn(class, count, number, &mut chance)));
        }
    }
    all
}

/// One class, or all of them.
#[derive(Clone, Debug, Default)]
struct Sums {
    instances: u64,
    area: u64,
    bound: u64,
    known: Option<[u64; 2]>,
    /// By run.
    sheets: Vec<u64>,
    proven: u64,
    seconds: f64,
}

pub(crate) fn measure(title: &str, instances: &[Instance], asked: &Asked) -> Result<(), Trouble> {
    let known: BTreeMap<String, Known> = asked
        .instances
        .as_ref()
        .and_then(|path| fs::read_to_string(path.with_file_name("reference.csv")).ok())
        .map(|csv| Known::read(&csv).into_iter().map(|known| (known.id.clone(), known)).collect())
        .unwrap_or_default();
    for turn in asked.turns.iter().copied() {
        let what = if turn { "parts may be turned" } else { "parts may not be turned" };
        println!("\n{title}, {what}, {} s each, {} runs from seed {}", asked.seconds, asked.runs, asked.seed);
        let mut classes: BTreeMap<u8, Sums> = BTreeMap::new();
        let mut lines = Vec::new();
        for instance in instances {
            let known = known.get(&instance.id);
            let sums = classes.entry(instance.class).or_default();
            lines.push(one(instance, known, turn, asked, sums)?);
        }
        print(&classes);
        if let Some(path) = &asked.layouts {
            write(path, &lines).map_err(|source| Trouble::File { path: path.clone(), source })?;
            println!("{} layouts of the first run are in {}", lines.len(), path.display());
        }
    }
    Ok(())
}

/// Every run of one instance; gives the layout of the first as a line.
fn one(
    instance: &Instance,
    known: Option<&Known>,
    turn: bool,
    asked: &Asked,
    sums: &mut Sums,
) -> Result<String, Trouble> {
    let mut first = None;
    sums.instances += 1;
    sums.area += instance.area_bound();
    let by_others = known.map(|known| [known.bound[usize::from(turn)], known.known[usize::from(turn)]]);
    if let Some([bound, best]) = by_others {
        let [bounds, bests] = sums.known.unwrap_or_default();
        sums.known = Some([bounds + bound, bests + best]);
    }
    sums.sheets.resize(usize::try_from(asked.runs).unwrap_or(1), 0);
    for (run, sum) in (0..asked.runs).zip(&mut sums.sheets) {
        let clock = Clock::start();
        let (layout, progress) = lay(instance, turn, asked.seed.wrapping_add(run), asked.seconds)?;
        sums.seconds += clock.seconds();
        let (sheets, bound) = (layout.sheets.len() as u64, progress.bound as u64);
        *sum += sheets;
        if let Some([least, best]) = by_others {
            let id = &instance.id;
            if sheets < least {
                return Err(Trouble::Bound { id: id.clone(), sheets, bound: least });
            }
            if bound > best {
                return Err(Trouble::Bound { id: id.clone(), sheets: best, bound });
            }
            if sheets < best {
                println!("  {id}: {sheets} sheets, and {best} were the fewest known");
            }
        }
        if first.is_none() {
            first = Some(instance.line(&layout).to_string());
            sums.bound += bound;
            sums.proven += u64::from(progress.proven);
        }
    }
    Ok(first.unwrap_or_default())
}

/// Searches for so many seconds, and checks what came of it outside of them.
pub(crate) fn lay(instance: &Instance, turn: bool, seed: u64, seconds: f64) -> Result<(Layout, Progress), Trouble> {
    let id = || instance.id.clone();
    let job = instance.job(turn).map_err(|source| Trouble::Length { id: id(), source })?;
    let clock = Clock::start();
    let mut search = Search::new(&job, seed).map_err(|source| Trouble::Job { id: id(), source })?;
    while !search.progress().done && clock.seconds() < seconds {
        search.step(PORTION);
    }
    let layout = search.layout().map_err(|source| Trouble::Length { id: id(), source })?;
    check(&job, &layout).map_err(|source| Trouble::Flaw { id: id(), source })?;
    replay(&job, &layout).map_err(|source| Trouble::Misstep { id: id(), source })?;
    let (sheets, bound) = (layout.sheets.len() as u64, search.progress().bound as u64);
    if sheets < bound {
        return Err(Trouble::Bound { id: id(), sheets, bound });
    }
    Ok((layout, search.progress()))
}

fn print(classes: &BTreeMap<u8, Sums>) {
    println!("class    n   area  bound  sheets (median)  sheets by run          proven  their bound  known   s");
    let mut all = Sums::default();
    for (class, sums) in classes {
        println!("{class:>5} {}", line(sums));
        all.instances += sums.instances;
        all.area += sums.area;
        all.bound += sums.bound;
        all.proven += sums.proven;
        all.seconds += sums.seconds;
        all.sheets.resize(sums.sheets.len(), 0);
        all.sheets.iter_mut().zip(&sums.sheets).for_each(|(all, more)| *all += more);
        if let Some([bound, best]) = sums.known {
            let [bounds, bests] = all.known.unwrap_or_default();
            all.known = Some([bounds + bound, bests + best]);
        }
    }
    println!("  all {}", line(&all));
}

fn line(sums: &Sums) -> String {
    let mut sorted = sums.sheets.clone();
    sorted.sort_unstable();
    let median = sorted.get(sorted.len().saturating_sub(1) / 2).copied().unwrap_or_default();
    let runs: Vec<String> = sums.sheets.iter().map(u64::to_string).collect();
    let [their_bound, known] = sums.known.map_or([const { String::new() }; 2], |both| both.map(|sum| sum.to_string()));
    let Sums { instances, area, bound, proven, seconds, .. } = sums;
    format!(
        "{instances:>4} {area:>6} {bound:>6} {median:>16}  {:<22} {proven:>6} {their_bound:>12} {known:>6} {seconds:>5.0}",
        runs.join(" ")
    )
}

fn write(path: &Path, lines: &[String]) -> std::io::Result<()> {
    let mut file = std::io::BufWriter::new(fs::File::create(path)?);
    lines.iter().try_for_each(|line| writeln!(file, "{line}"))?;
    file.flush()
}
