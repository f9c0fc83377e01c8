//! The same seed and the same tries give the same layout.

use scantling::sheets::{Job, Search};
use scantling_tests::sheets::{check, jobs, replay};

/// A job in which there is so much of everything that its first layouts come one after the other.
fn long(seed: u64) -> Job {
    let mut job = jobs::job(seed).unwrap();
    job.parts.iter_mut().for_each(|part| part.quantity = part.quantity.max(1) * 40);
    job.stock.iter_mut().for_each(|stock| stock.quantity = None);
    job
}

fn same_in_other_portions(job: &Job, name: &str) {
    let layout = |steps: &[u32]| {
        let mut search = Search::new(job, 7).unwrap();
        steps.iter().for_each(|tries| search.step(*tries));
        search.layout().unwrap()
    };
    let once = layout(&[60]);
    assert_eq!(once, layout(&[60]), "{name}");
    assert_eq!(once, layout(&[1, 9, 20, 30]), "{name}: in other portions");
}

#[test]
fn the_same_seed_and_tries_give_the_same_layout() {
    for seed in 0..60 {
        same_in_other_portions(&jobs::job(seed).unwrap(), &format!("job {seed}"));
    }
    for seed in 0..10 {
        same_in_other_portions(&long(seed), &format!("long job {seed}"));
    }
}

/// What a long list begins with holds at every step, the bound never falls, and it rises where there is more to be said
/// than the area does.
#[test]
fn a_long_list_is_whole_from_its_first_moment() {
    let mut risen = 0;
    for seed in 0..16 {
        let job = long(seed);
        let mut search = Search::new(&job, 7).unwrap();
        let first = search.progress().bound;
        let mut before = first;
        for _ in 0..40 {
            let (layout, progress) = (search.layout().unwrap(), search.progress());
            check(&job, &layout).unwrap_or_else(|flaw| panic!("job {seed}: {flaw}"));
            replay(&job, &layout).unwrap_or_else(|misstep| panic!("job {seed}: {misstep}"));
            assert!(progress.bound >= before, "job {seed}: the bound fell from {before} to {}", progress.bound);
            assert!(progress.bound <= layout.sheets.len() || !layout.unplaced.is_empty(), "job {seed}");
            before = progress.bound;
            search.step(2);
        }
        risen += u32::from(before > first);
    }
    assert!(risen > 1, "only {risen} of 16 bounds rose");
}
