use super::*;
use proptest::prelude::*;

fn mm(length: i64) -> Length {
    Length::mm(length, 1).unwrap()
}

fn wanted(list: &[(i64, u32)]) -> Vec<Wanted> {
    list.iter().map(|(length, quantity)| Wanted { length: mm(*length), quantity: *quantity }).collect()
}

fn bars(list: &[(i64, Option<u32>, Option<u64>)]) -> Vec<Bar> {
    let bar = |(length, quantity, price): &(i64, Option<u32>, Option<u64>)| Bar {
        length: mm(*length),
        quantity: *quantity,
        price: price.map(Ratio::whole),
    };
    list.iter().map(bar).collect()
}

#[track_caller]
fn count(pieces: &[(i64, u32)], stock: &[(i64, Option<u32>, Option<u64>)], kerf: i64, want: usize, source: &str) {
    let layout = cut_bars(&wanted(pieces), &bars(stock), mm(kerf)).unwrap();
    assert_eq!(layout.bars.len(), want, "{source}: {layout:?}");
    assert!(layout.proven, "{source}");
    assert!(layout.unplaced.iter().all(|count| *count == 0));
}

#[test]
fn bars_are_filled_as_well_as_can_be() {
    count(&[(600, 4)], &[(2440, None, None)], 3, 1, "4·600 + 3·3 = 2409");
    count(&[(600, 4)], &[(2408, None, None)], 3, 2, "one millimetre short of 2409");
    count(&[(610, 4)], &[(2440, None, None)], 0, 1, "fills it exactly");
    count(
        &[
            (1380, 22),
            (1520, 25),
            (1560, 12),
            (1710, 14),
            (1820, 18),
            (1880, 18),
            (1930, 20),
            (2000, 10),
            (2050, 12),
            (2100, 14),
            (2140, 16),
            (2150, 18),
            (2200, 20),
        ],
        &[(5600, None, None)],
        0,
        73,
        "a paper machine's rolls, the textbook example of the cutting stock problem: 73 rolls, from memory",
    );
}

#[test]
fn the_cheaper_bar_is_taken() {
    // Two of 2400 at 9 hold the four pieces for 18; one of 3600 and one of 1200 for 12 + 5; one of 4800 for 16.
    let stock = [(2400, None, Some(9)), (3600, None, Some(12)), (1200, None, Some(5)), (4800, None, Some(16))];
    let layout = cut_bars(&wanted(&[(1200, 4)]), &bars(&stock), mm(0)).unwrap();
    assert_eq!(layout.bars.iter().map(|bar| bar.bar).collect::<Vec<_>>(), [3]);
    let few = [(2400, None, Some(9)), (3600, None, Some(12)), (1200, None, Some(5)), (4800, Some(0), Some(16))];
    let layout = cut_bars(&wanted(&[(1200, 4)]), &bars(&few), mm(0)).unwrap();
    let mut used: Vec<usize> = layout.bars.iter().map(|bar| bar.bar).collect();
    used.sort_unstable();
    assert_eq!(used, [1, 2]);
}

#[test]
fn what_does_not_fit_is_named() {
    let layout = cut_bars(&wanted(&[(3000, 2), (900, 3)]), &bars(&[(2000, Some(1), None)]), mm(3)).unwrap();
    assert_eq!(layout.unplaced, [2, 1]);
    assert_eq!(layout.bars.len(), 1);
    assert_eq!(layout.bars[0].left, mm(2000 + 3 - 2 * 903));
    assert!(!layout.proven);
    assert_eq!(cut_bars(&wanted(&[(0, 1)]), &[], mm(3)), Err(JobError::Part { at: 0 }));
    assert_eq!(cut_bars(&[], &bars(&[(-5, None, None)]), mm(3)), Err(JobError::Stock { at: 0 }));
    assert_eq!(cut_bars(&[], &[], mm(-3)), Err(JobError::BelowZero));
    assert_eq!(cut_bars(&wanted(&[(5, 4_000), (6, 4_000)]), &[], mm(3)), Err(JobError::TooMany { most: MOST_PIECES }));
}

/// Every way to share pieces out among bars, one piece after another.
fn fewest(pieces: &[i64], length: i64, kerf: i64, loads: &mut Vec<i64>, best: &mut usize) {
    if loads.len() >= *best {
        return;
    }
    let Some((piece, rest)) = pieces.split_first() else {
        *best = loads.len();
        return;
    };
    for at in 0..=loads.len() {
        let room = loads.get(at).copied().unwrap_or(length + kerf);
        if piece + kerf > room {
            continue;
        }
        if at == loads.len() {
            loads.push(length + kerf);
        }
        loads[at] -= piece + kerf;
        fewest(rest, length, kerf, loads, best);
        loads[at] += piece + kerf;
        if at + 1 == loads.len() && loads[at] == length + kerf {
            loads.pop();
        }
    }
}

proptest! {
    #[test]
    fn no_other_way_takes_fewer(pieces in prop::collection::vec(100_i64..900, 1..8), kerf in 0_i64..6) {
        let layout = cut_bars(
            &pieces.iter().map(|length| Wanted { length: mm(*length), quantity: 1 }).collect::<Vec<_>>(),
            &bars(&[(1000, None, None)]),
            mm(kerf),
        ).unwrap();
        let mut best = pieces.len() + 1;
        fewest(&pieces, 1000, kerf, &mut Vec::new(), &mut best);
        prop_assert_eq!(layout.bars.len(), best);
        prop_assert!(layout.proven);
        let mut cut: Vec<usize> = layout.bars.iter().flat_map(|bar| bar.pieces.clone()).collect();
        cut.sort_unstable();
        prop_assert_eq!(cut, (0..pieces.len()).collect::<Vec<_>>());
        for bar in &layout.bars {
            let pieces_on: i64 = bar.pieces.iter().map(|at| pieces[*at] + kerf).sum();
            prop_assert_eq!(mm(1000 + kerf - pieces_on), bar.left);
        }
    }
}
