//! Every flaw of a layout, made on purpose.

use super::{area, job, layout, mm, part, too_fine};
use scantling::measure::Ratio;
use scantling::sheets::{Cuts, Grain, Job, Layout, Left, SheetGrain, Unfit, Unplaced};
use scantling_tests::sheets::{Flaw, Which, check};

type Break = fn(&mut Job, &mut Layout);

const FIRST: Which = Which { part: 0, copy: 0 };
const SECOND: Which = Which { part: 0, copy: 1 };
const BACK: Which = Which { part: 1, copy: 0 };

const BROKEN: &[(Flaw, Break)] = &[
    (Flaw::TooFine, |job, _| {
        let [kerf, trim] = too_fine();
        (job.saw.kerf, job.saw.trim) = (kerf, trim);
    }),
    (Flaw::NoSuchStock { sheet: 0, stock: 9 }, |_, layout| layout.sheets[0].stock = 9),
    (Flaw::SheetSize { sheet: 0 }, |_, layout| layout.sheets[0].width = mm(61)),
    (Flaw::SheetOrder { sheet: 1 }, |_, layout| layout.sheets.swap(0, 1)),
    (Flaw::EmptySheet { sheet: 1 }, |_, layout| layout.sheets[1].parts.clear()),
    (Flaw::TooManySheets { stock: 1, used: 1, there: 0 }, |job, _| job.stock[1].quantity = Some(0)),
    (Flaw::NoSuchPart { sheet: 0, which: Which { part: 0, copy: 2 } }, |_, layout| layout.sheets[0].parts[1].copy = 2),
    (Flaw::NoSuchPart { sheet: 1, which: Which { part: 7, copy: 0 } }, |_, layout| layout.sheets[1].parts[0].part = 7),
    (Flaw::OtherStock { sheet: 1, which: BACK }, |job, _| job.parts[1].stock = "oak".to_owned()),
    (Flaw::Twice { sheet: 0, which: FIRST }, |_, layout| layout.sheets[0].parts[1].copy = 0),
    (Flaw::PartSize { sheet: 0, which: SECOND }, |_, layout| layout.sheets[0].parts[1].area.length = mm(41)),
    (Flaw::PartSize { sheet: 0, which: FIRST }, |_, layout| layout.sheets[0].parts[0].turned = true),
    (Flaw::AgainstGrain { sheet: 0, which: FIRST }, |job, _| job.parts[0].grain = Grain::Across),
    (Flaw::AgainstGrain { sheet: 0, which: FIRST }, |job, _| job.stock[0].grain = SheetGrain::Across),
    (Flaw::Outside { sheet: 0, which: FIRST }, |_, layout| layout.sheets[0].parts[0].area.x = mm(2)),
    (Flaw::Outside { sheet: 0, which: SECOND }, |_, layout| layout.sheets[0].parts[1].area.x = mm(58)),
    (Flaw::TooClose { sheet: 0, one: FIRST, other: SECOND }, |_, layout| layout.sheets[0].parts[1].area.x = mm(44)),
    (Flaw::NotSeparable { sheet: 0, cuts: Cuts::Two }, |job, layout| {
        job.saw.cuts = Cuts::Two;
        layout.sheets[0].parts[1].area.y = mm(5);
        layout.sheets[0].left.clear();
    }),
    (Flaw::NotSeparable { sheet: 0, cuts: Cuts::Any }, |job, _| job.saw.longest_rip = Some(mm(39))),
    (Flaw::LeftOutside { sheet: 0, left: 0 }, |_, layout| layout.sheets[0].left[0].area.x = mm(2)),
    (Flaw::LeftOutside { sheet: 0, left: 1 }, |_, layout| layout.sheets[0].left[1].area.length = mm(0)),
    (Flaw::LeftNearPart { sheet: 0, left: 1, which: SECOND }, |_, layout| layout.sheets[0].left[1].area.x = mm(86)),
    (Flaw::LeftNearLeft { sheet: 0, one: 0, other: 1 }, |_, layout| layout.sheets[0].left[1].area.width = mm(21)),
    (Flaw::Keep { sheet: 0, left: 0 }, |_, layout| layout.sheets[0].left[0].keep = false),
    (Flaw::Keep { sheet: 0, left: 1 }, |job, _| job.saw.least_offcut = mm(10)),
    (Flaw::LeftOrder { sheet: 0, left: 1 }, |_, layout| layout.sheets[0].left.swap(0, 1)),
    (Flaw::Count { part: 0, wanted: 3, placed: 2, unplaced: 0 }, |job, _| job.parts[0].quantity = 3),
    (Flaw::Count { part: 0, wanted: 2, placed: 2, unplaced: 1 }, |_, layout| not_placed(layout, 0, Unfit::NoSheetLeft)),
    (Flaw::Count { part: 8, wanted: 0, placed: 0, unplaced: 1 }, |_, layout| not_placed(layout, 8, Unfit::NoStock)),
    (Flaw::UnplacedTwice { part: 0 }, |job, layout| {
        job.parts[0].quantity = 4;
        not_placed(layout, 0, Unfit::NoSheetLeft);
        not_placed(layout, 0, Unfit::NoSheetLeft);
    }),
    (Flaw::Reason { part: 0, said: Unfit::TooLarge, is: Unfit::NoSheetLeft }, |job, layout| {
        job.parts[0].quantity = 3;
        job.stock[0].quantity = Some(1);
        job.stock[1].quantity = Some(1);
        not_placed(layout, 0, Unfit::TooLarge);
    }),
    (Flaw::SheetLeft { part: 0, stock: 0 }, |job, layout| {
        job.parts[0].quantity = 3;
        not_placed(layout, 0, Unfit::NoSheetLeft);
    }),
    (Flaw::Price, |_, layout| layout.price = None),
    (Flaw::Price, |_, layout| layout.price = Some(Ratio::whole(20))),
    (Flaw::Price, |job, _| job.stock[1].price = Some(Ratio::ONE)),
];

fn not_placed(layout: &mut Layout, part: usize, why: Unfit) {
    layout.unplaced.push(Unplaced { part, count: 1, why });
}

#[test]
fn every_flaw_is_found() {
    for (want, spoil) in BROKEN {
        let (mut job, mut layout) = (job(), layout());
        spoil(&mut job, &mut layout);
        assert_eq!(check(&job, &layout), Err(*want));
    }
}

#[test]
fn two_that_are_left_over_lie_a_kerf_apart() {
    let mut layout = layout();
    layout.sheets[0].left[0].area = area([3, 40, 94, 17]);
    layout.sheets[0].left.insert(1, Left { area: area([3, 25, 94, 14]), keep: false });
    assert_eq!(check(&job(), &layout), Err(Flaw::LeftNearLeft { sheet: 0, one: 0, other: 1 }));
}

/// The reason why one part more than the good layout has is not on a sheet, with rips to so many millimetres.
#[track_caller]
fn reason(length: i64, width: i64, grain: Grain, longest_rip: Option<i64>, want: Unfit) {
    for said in [Unfit::NoStock, Unfit::TooLarge, Unfit::Grain, Unfit::LongRip, Unfit::NoSheetLeft] {
        let (mut job, mut layout) = (job(), layout());
        job.parts.push(part("more", length, width, 1, grain));
        job.saw.longest_rip = longest_rip.map(mm);
        job.stock[0].quantity = Some(1);
        not_placed(&mut layout, 2, said);
        let want = if said == want { Ok(()) } else { Err(Flaw::Reason { part: 2, said, is: want }) };
        assert_eq!(check(&job, &layout), want, "{length} by {width}, {grain:?}");
    }
}

#[test]
fn the_reason_is_the_true_one() {
    reason(94, 54, Grain::Along, None, Unfit::NoSheetLeft);
    reason(95, 10, Grain::Along, None, Unfit::TooLarge);
    reason(55, 55, Grain::Free, None, Unfit::TooLarge);
    reason(54, 94, Grain::Along, None, Unfit::Grain);
    reason(54, 94, Grain::Free, None, Unfit::NoSheetLeft);
    reason(94, 53, Grain::Along, Some(93), Unfit::LongRip);
    reason(94, 54, Grain::Along, Some(93), Unfit::NoSheetLeft);
    let (mut job, mut layout) = (job(), layout());
    job.parts.push(part("more", 5, 5, 1, Grain::Free));
    job.parts[2].stock = "oak".to_owned();
    not_placed(&mut layout, 2, Unfit::NoStock);
    assert_eq!(check(&job, &layout), Ok(()));
}
