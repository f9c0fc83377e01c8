//! So many tries for a few jobs, all from fixed seeds: the same work on every machine, and nothing else.
//!
//! It reads nothing, prints nothing and looks at no clock, since a module of WebAssembly alone can do none of it; who runs
//! it takes the time. It ends with a number that is made of the sheets, so that whoever compares two runs sees that they
//! did the same.

use scantling::measure::Length;
use scantling::sheets::{Cuts, Grain, Job, Part, Saw, Search, SheetGrain, Stock};
use std::process::ExitCode;

/// So many jobs, each with so many parts.
const JOBS: u32 = 4;
const PARTS: u32 = 60;
/// So many tries for each.
const TRIES: u32 = 40_000;

fn main() -> ExitCode {
    let mut chance = 20_u32;
    let sum = (0..JOBS).map(|number| sheets(number.into(), &mut chance)).fold(0_u32, |sum, sheets| {
        // Another factor for each, so that one more here and one less there is seen.
        sum.wrapping_mul(7).wrapping_add(sheets)
    });
    // The last byte: a process can end with no more.
    ExitCode::from(sum.to_le_bytes()[0])
}

/// The sheets of one job after its tries; none if there is something wrong with the job.
fn sheets(seed: u64, chance: &mut u32) -> u32 {
    let Some(job) = job(chance) else { return 0 };
    let Ok(mut search) = Search::new(&job, seed) else { return 0 };
    search.step(TRIES);
    u32::try_from(search.progress().sheets).unwrap_or(0)
}

/// Parts of a cabinet by chance: a linear congruential generator, its constants by Knuth and Lewis (from memory).
fn job(chance: &mut u32) -> Option<Job> {
    let mut within = |least: i64, most: i64| {
        *chance = chance.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        least + i64::from(*chance >> 8) % (most - least + 1)
    };
    let mm = |tenths: i64| Length::mm(tenths, 10).ok();
    let mut parts = Vec::new();
    for number in 0..PARTS {
        let (length, width) = (mm(within(1000, 9000))?, mm(within(800, 6000))?);
        let grain = if within(0, 1) == 0 { Grain::Along } else { Grain::Free };
        parts.push(Part { name: number.to_string(), length, width, quantity: 1, stock: "birch".to_owned(), grain });
    }
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
    Some(Job { parts, stock: vec![stock], saw })
}
