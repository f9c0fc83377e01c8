//! What a try costs, by the number of parts, and how soon there is a first layout.

use crate::Trouble;
use crate::clock::median;
use scantling::measure::Length;
use scantling::sheets::{Cuts, Grain, Job, Part, Saw, Search, SheetGrain, Stock};
use scantling_tests::sheets::random::Chance;
use std::time::Instant;

/// So many parts.
const PARTS: [u32; 5] = [20, 60, 200, 600, 2000];
/// Every number of parts is tried for so long, with no more than so many jobs.
const SECONDS: f64 = 3.0;
const MOST_JOBS: u64 = 400;
const PORTION: u32 = 10;
/// So many first layouts; the middle one is told.
const FIRSTS: u64 = 51;
/// The bar for the first layout of 60 parts, in milliseconds.
const FIRST_BAR: f64 = 5.0;

/// Parts of cabinets on sheets of 2440 by 1220, with a kerf; half of them with a grain.
fn shop(parts: u32, seed: u64) -> Result<Job, Trouble> {
    let id = || format!("{parts} parts");
    let mm = |tenths: i64| Length::mm(tenths, 10).map_err(|source| Trouble::Length { id: id(), source });
    let mut chance = Chance::new(seed);
    let one = |number: u32| {
        let (length, width) = (mm(chance.within(2000, 12_000))?, mm(chance.within(1500, 7000))?);
        let grain = chance.one_of(Grain::Along, &[Grain::Free]);
        Ok(Part { name: number.to_string(), length, width, quantity: 1, stock: "birch".to_owned(), grain })
    };
    let stock = Stock {
        name: "birch".to_owned(),
        length: mm(24_400)?,
        width: mm(12_200)?,
        quantity: None,
        price: None,
        grain: SheetGrain::Along,
        offcut: false,
    };
    let saw = Saw { kerf: mm(32)?, trim: mm(100)?, cuts: Cuts::Any, longest_rip: None, least_offcut: mm(1500)? };
    Ok(Job { parts: (0..parts).map(one).collect::<Result<_, Trouble>>()?, stock: vec![stock], saw })
}

fn begin(job: &Job, seed: u64) -> Result<Search, Trouble> {
    Search::new(job, seed).map_err(|source| Trouble::Job { id: "a shop's parts".to_owned(), source })
}

pub(crate) fn measure(seed: u64) -> Result<(), Trouble> {
    println!(
        "\nwhile a sheet might still be saved, {PORTION} tries at a time, the middle one of the times on the wall"
    );
    println!("parts   tries   µs a try   ns a try / (n log2 n)   sheets   bound   first layout, ms");
    for parts in PARTS {
        let (mut jobs, mut sheets, mut bound) = (0, 0, 0);
        let (mut times, begun) = (Vec::new(), Instant::now());
        while begun.elapsed().as_secs_f64() < SECONDS && jobs < MOST_JOBS {
            let mut search = begin(&shop(parts, seed + jobs)?, seed)?;
            jobs += 1;
            while begun.elapsed().as_secs_f64() < SECONDS && !search.progress().proven && !search.progress().done {
                let portion = Instant::now();
                search.step(PORTION);
                // With the last try it may have turned to what else counts, which takes another time.
                if !search.progress().proven {
                    times.push(portion.elapsed().as_secs_f64() / f64::from(PORTION));
                    (sheets, bound) = (search.progress().sheets, search.progress().bound);
                }
            }
        }
        let tries = times.len() * PORTION as usize;
        let each = median(times) * 1e9;
        let n = f64::from(parts);
        println!(
            "{parts:>5} {tries:>7} {:>10.2} {:>23.3} {sheets:>8} {bound:>7} {:>18.3}   {jobs} jobs",
            each / 1e3,
            each / (n * n.log2()),
            first(&shop(parts, seed)?, seed)?,
        );
    }
    let first = first(&shop(60, seed)?, seed)?;
    let verdict = if first < FIRST_BAR { "under" } else { "NOT under" };
    println!("first layout of 60 parts, worked out to its cuts: {first:.3} ms, {verdict} {FIRST_BAR} ms");
    Ok(())
}

/// From the job to a layout with all its cuts, in milliseconds.
fn first(job: &Job, seed: u64) -> Result<f64, Trouble> {
    let one = |number: u64| {
        let begun = Instant::now();
        let layout = begin(job, seed + number)?.layout();
        layout.map_err(|source| Trouble::Length { id: "a shop's parts".to_owned(), source })?;
        Ok(begun.elapsed().as_secs_f64() * 1e3)
    };
    let firsts = if job.parts.len() > 600 { 5 } else { FIRSTS };
    Ok(median((0..firsts).map(one).collect::<Result<_, Trouble>>()?))
}
