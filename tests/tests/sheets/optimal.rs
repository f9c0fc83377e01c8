//! The fewest sheets there can be, known from outside: by trying every layout of small jobs, from sheets that were cut up
//! without any waste, and from the published instances.

use crate::told;
use scantling::measure::{Length, Ratio};
use scantling::sheets::{Cuts, Grain, Job, Layout, Part, Progress, Saw, Search, SheetGrain, Stock};
use scantling_tests::sheets::brute::least_cost;
use scantling_tests::sheets::instances::Instance;
use scantling_tests::sheets::random::Chance;
use scantling_tests::sheets::{check, replay};

fn mm(whole: i64) -> Length {
    Length::mm(whole, 1).unwrap()
}

/// The layout after so many tries, checked.
#[track_caller]
fn found(job: &Job, tries: u32) -> (Layout, Progress) {
    let mut search = Search::new(job, 1).unwrap();
    search.step(tries);
    let layout = search.layout().unwrap();
    let said = || format!("{}{}", told::job(job), told::layout(&layout));
    assert_eq!(check(job, &layout), Ok(()), "{}", said());
    assert_eq!(replay(job, &layout), Ok(()), "{}", said());
    (layout, search.progress())
}

/// A job of one to five pieces that all fit on sheets of these sizes.
fn small(chance: &mut Chance, cuts: Cuts, sheets: &[[i64; 2]]) -> Job {
    let kerf = chance.one_of(0, &[0, 3, 7]);
    let most = sheets.iter().map(|[length, width]| length.min(width)).max().unwrap();
    let mut pieces = chance.within(1, 5);
    let mut parts: Vec<Part> = Vec::new();
    while pieces > 0 {
        let quantity = chance.one_of(1, &[1, 1, 2]).min(pieces);
        pieces -= quantity;
        let mut side = |before: Option<Length>| match before {
            Some(before) if chance.per_cent(40) => before,
            _ => mm(chance.within(most / 8, most * 3 / 4)),
        };
        let (length, width) = (side(parts.last().map(|part| part.length)), side(parts.last().map(|part| part.width)));
        let grain = chance.one_of(Grain::Along, &[Grain::Free]);
        let (name, stock) = (parts.len().to_string(), "ply".to_owned());
        parts.push(Part { name, length, width, quantity: u32::try_from(quantity).unwrap(), stock, grain });
    }
    let stock = sheets.iter().map(|[length, width]| Stock {
        name: "ply".to_owned(),
        length: mm(*length),
        width: mm(*width),
        quantity: None,
        // Dear enough by the sheet that the smaller one does not always win.
        price: Some(Ratio::whole(u64::try_from(length * width / 100 + chance.within(0, 60)).unwrap())),
        grain: SheetGrain::Along,
        offcut: false,
    });
    let stock = stock.collect();
    let saw = Saw { kerf: mm(kerf), trim: Length::ZERO, cuts, longest_rip: None, least_offcut: mm(10) };
    Job { parts, stock, saw }
}

/// So many tries are enough for five pieces.
const TRIES: u32 = 2000;

/// Small jobs by their number, through every kind of cuts, against the best there is; all that are dearer are told.
fn hold_against(many: usize, seed: u64, sheets: &[[i64; 2]], costs: fn(&Stock) -> u64, got: fn(&Layout) -> u64) {
    let mut chance = Chance::new(seed);
    let mut dearer = Vec::new();
    for number in 0..many {
        let cuts = Cuts::ALL[number % Cuts::ALL.len()];
        let job = small(&mut chance, cuts, sheets);
        let least = least_cost(&job, &job.stock.iter().map(costs).collect::<Vec<_>>()).unwrap();
        let fewest = least_cost(&job, &job.stock.iter().map(|_| 1).collect::<Vec<_>>()).unwrap();
        let (layout, progress) = found(&job, TRIES);
        let said = || format!("small job {number}: {progress:?}\n{}{}", told::job(&job), told::layout(&layout));
        let bound = u64::try_from(progress.bound).unwrap();
        assert!(bound <= fewest, "the bound is above the fewest, {fewest}: {}", said());
        assert!(got(&layout) >= least, "less than the least, {least}: {}", said());
        if got(&layout) > least {
            assert!(!progress.proven, "proven, and not the least, {least}: {}", said());
            dearer.push(format!("{} instead of {least}, {}", got(&layout), said()));
        }
    }
    assert!(dearer.is_empty(), "{} of {many} are not the best:\n{}", dearer.len(), dearer.join("\n"));
}

#[test]
fn small_jobs_take_no_more_sheets_than_the_best_of_all_layouts() {
    let sheets = |layout: &Layout| u64::try_from(layout.sheets.len()).unwrap();
    hold_against(240, 20, &[[120, 100]], |_| 1, sheets);
}

#[test]
fn small_jobs_cost_no_more_than_the_cheapest_of_all_layouts() {
    let price = |layout: &Layout| layout.price.unwrap().numerator();
    hold_against(120, 21, &[[120, 100], [100, 60], [80, 80]], |stock| stock.price.unwrap().numerator(), price);
}

/// Cuts a sheet into parts, with nothing left over.
fn dissect(chance: &mut Chance, [length, width]: [u32; 2], parts: usize, into: &mut Vec<[u32; 2]>) {
    if parts <= 1 || length.min(width) < 10 {
        into.push([length, width]);
        return;
    }
    let cross = if length == width { chance.per_cent(50) } else { length > width };
    let whole = if cross { length } else { width };
    let at = u32::try_from(chance.within(i64::from(whole / 4), i64::from(whole * 3 / 4))).unwrap();
    let (one, other) = if cross { ([at, width], [length - at, width]) } else { ([length, at], [length, width - at]) };
    dissect(chance, one, parts / 2, into);
    dissect(chance, other, parts - parts / 2, into);
}

#[test]
fn sheets_cut_up_without_waste_are_put_together_again() {
    let mut chance = Chance::new(22);
    for number in 0..60 {
        let sheets = 1 + number % 3;
        let mut parts = Vec::new();
        (0..sheets).for_each(|_| dissect(&mut chance, [100, 100], 4, &mut parts));
        let instance = Instance { id: number.to_string(), class: 0, sheet: [100, 100], parts };
        for turn in [false, true] {
            let (layout, progress) = found(&instance.job(turn).unwrap(), TRIES);
            assert_eq!((layout.sheets.len(), progress.bound), (sheets, sheets), "{instance:?}, turned: {turn}");
            assert!(progress.proven, "{progress:?}");
        }
    }
}

/// Drawn by Berkey and Wang (1987, classes 1 to 6) and by Martello and Vigo (1998, classes 7 to 10), see
/// [`scantling_tests::sheets::instances`]; a line each. For these a layout is known with no more sheets than a bound by
/// dual feasible functions, both by other programs than ours, so that it is the fewest there can be.
const PUBLISHED: &str = include_str!("published.jsonl");

#[test]
fn published_instances_take_the_fewest_sheets_there_can_be() {
    for line in PUBLISHED.lines() {
        let instance: Instance = serde_json::from_str(line).unwrap();
        let fewest: serde_json::Value = serde_json::from_str(line).unwrap();
        for (turn, name) in [(false, "fewest_fixed"), (true, "fewest_turned")] {
            let fewest = fewest[name].as_u64().unwrap();
            let (layout, progress) = found(&instance.job(turn).unwrap(), 2 * TRIES);
            let said = format!("{}, turned: {turn}, fewest {fewest}: {progress:?}", instance.id);
            assert!(u64::try_from(progress.bound).unwrap() <= fewest, "the bound is above the fewest: {said}");
            assert_eq!(u64::try_from(layout.sheets.len()).unwrap(), fewest, "{said}");
        }
    }
}
