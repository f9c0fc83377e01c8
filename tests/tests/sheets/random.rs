//! Ten thousand random jobs, each through the checker and the replay.

use crate::told;
use scantling::sheets::{Job, Search};
use scantling_tests::sheets::{check, jobs, replay};
use std::sync::Mutex;
use std::sync::atomic::{AtomicU64, Ordering};

/// So many jobs. `SCANTLING_JOBS=500` makes it the first 500, `SCANTLING_JOBS=19..20` number 19 alone.
const JOBS: u64 = 10_000;
/// So many tries for each, after the first layout.
const TRIES: u32 = 3;

/// What is wrong with what comes out for a job, first at once and then after a few tries.
fn fault(job: &Job, seed: u64) -> Option<String> {
    let mut search = match Search::new(job, seed) {
        Ok(search) => search,
        Err(error) => return Some(format!("it is refused: {error}")),
    };
    for tries in [0, TRIES] {
        search.step(tries);
        let layout = match search.layout() {
            Ok(layout) => layout,
            Err(error) => return Some(format!("after {tries} tries it has no layout: {error}")),
        };
        let flaw = check(job, &layout).err().map(|flaw| flaw.to_string());
        let progress = search.progress();
        let bound = (progress.bound > layout.sheets.len() && layout.unplaced.is_empty())
            .then(|| format!("{} sheets, and the bound is {}", layout.sheets.len(), progress.bound));
        let counted = (progress.sheets != layout.sheets.len())
            .then(|| format!("{} sheets, and it says {}", layout.sheets.len(), progress.sheets));
        let misstep = || replay(job, &layout).err().map(|misstep| misstep.to_string());
        if let Some(wrong) = flaw.or(bound).or(counted).or_else(misstep) {
            return Some(format!("after {tries} tries: {wrong}\n{}", told::layout(&layout)));
        }
    }
    None
}

/// What goes wrong, without the numbers.
fn kind(fault: &str) -> String {
    fault.lines().next().unwrap_or_default().chars().filter(|letter| !letter.is_ascii_digit()).collect()
}

/// The job with as little in it as still goes wrong in the same way.
fn smaller(mut job: Job, seed: u64) -> Job {
    let wrong = fault(&job, seed).map(|fault| kind(&fault));
    let still_wrong = |job: &Job| fault(job, seed).map(|fault| kind(&fault)) == wrong;
    loop {
        let without = |at: usize| {
            let mut less = job.clone();
            if at < job.parts.len() {
                match less.parts[at].quantity {
                    0 | 1 => drop(less.parts.remove(at)),
                    more => less.parts[at].quantity = more - 1,
                }
            } else {
                less.stock.remove(at - job.parts.len());
            }
            less
        };
        let still = (0..job.parts.len() + job.stock.len()).map(without).find(still_wrong);
        match still {
            Some(less) => job = less,
            None => return job,
        }
    }
}

/// So many faults are told in full.
const TOLD: usize = 3;

#[test]
fn every_layout_of_random_jobs_can_be_cut_as_it_says() {
    let asked = std::env::var("SCANTLING_JOBS").unwrap_or_else(|_| JOBS.to_string());
    let (first, jobs) = asked.split_once("..").unwrap_or(("0", &asked));
    let (first, jobs): (u64, u64) = (first.parse().unwrap(), jobs.parse().unwrap());
    let next = AtomicU64::new(first);
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let faults = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some(seed) = Some(next.fetch_add(1, Ordering::Relaxed)).filter(|seed| *seed < jobs) {
                    let fault = fault(&jobs::job(seed).unwrap(), seed);
                    faults.lock().unwrap().extend(fault.map(|fault| (seed, fault)));
                }
            });
        }
    });
    let mut faults = faults.into_inner().unwrap();
    faults.sort();
    for (seed, _) in faults.iter().take(TOLD) {
        let job = smaller(jobs::job(*seed).unwrap(), *seed);
        println!("job {seed}: {}{}", told::job(&job), fault(&job, *seed).unwrap_or_default());
    }
    let all: Vec<String> =
        faults.iter().map(|(seed, fault)| format!("{seed}: {}", fault.lines().next().unwrap())).collect();
    assert!(all.is_empty(), "{} of {jobs} jobs go wrong:\n{}", all.len(), all.join("\n"));
}

/// Whether a job is of a kind.
type Is = fn(&Job) -> bool;

/// Of every kind there are enough that the ten thousand mean something.
#[test]
fn random_jobs_are_of_every_kind() {
    let jobs: Vec<Job> = (0..1000).map(|seed| jobs::job(seed).unwrap()).collect();
    let kinds: [(&str, Is); 10] = [
        ("several materials", |job| job.stock.iter().any(|stock| stock.name != job.stock[0].name)),
        ("a kerf", |job| !job.saw.kerf.is_zero()),
        ("a trim", |job| !job.saw.trim.is_zero()),
        ("a longest rip", |job| job.saw.longest_rip.is_some()),
        ("stages", |job| job.saw.cuts.stages().is_some()),
        ("offcuts", |job| job.stock.iter().any(|stock| stock.offcut)),
        ("sheets that run out", |job| job.stock.iter().any(|stock| stock.quantity.is_some())),
        ("prices", |job| job.stock.iter().any(|stock| stock.price.is_some())),
        ("inches", |job| job.parts.iter().any(|part| part.length.in_mm().denominator() % 320 == 0)),
        ("equal parts", |job| job.parts.iter().any(|part| part.quantity > 1)),
    ];
    for (kind, is) in kinds {
        let many = jobs.iter().filter(|job| is(job)).count();
        assert!(many > 50, "{kind}: only {many} in 1000");
    }
    let pieces: Vec<u32> = jobs.iter().map(|job| job.parts.iter().map(|part| part.quantity).sum()).collect();
    assert_eq!(pieces.iter().min(), Some(&1));
    assert!(pieces.iter().max() >= Some(&25), "{:?}", pieces.iter().max());
}
