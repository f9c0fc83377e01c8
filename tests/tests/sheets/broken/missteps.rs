//! Every misstep in the order of cuts, made on purpose.

use super::{TRIMMED, area, cut, job, layout, mm, piece, side, too_fine};
use scantling::sheets::{Becomes, Cut, Cuts, Job, Layout, Left, Placed, Setting, Way};
use scantling_tests::sheets::{Misstep, Which, replay};

type Break = fn(&mut Job, &mut Layout);

/// The setting of the rip, and that of both crosscuts, after four that trim.
const RIP: usize = 4;
const CROSS: usize = 5;

fn rip(layout: &mut Layout) -> &mut Cut {
    &mut layout.settings[RIP].cuts[0]
}

fn last(layout: &mut Layout) -> &mut Cut {
    &mut layout.settings[CROSS].cuts[1]
}

fn falls(cut: &mut Cut) -> &mut scantling::sheets::Piece {
    cut.falls.as_mut().unwrap()
}

fn one_more(layout: &mut Layout, cut: Cut) {
    layout.settings.push(Setting { way: cut.way, fence: cut.fence, cuts: vec![cut] });
}

const BROKEN: &[(Misstep, Break)] = &[
    (Misstep::TooFine, |job, _| {
        let [kerf, trim] = too_fine();
        (job.saw.kerf, job.saw.trim) = (kerf, trim);
    }),
    (Misstep::NoSuchStock { sheet: 1, stock: 9 }, |_, layout| layout.sheets[1].stock = 9),
    (Misstep::EmptySetting { setting: 2 }, |_, layout| layout.settings[2].cuts.clear()),
    (Misstep::SameSetting { setting: 6 }, |_, layout| {
        let cut = layout.settings[CROSS].cuts.remove(1);
        one_more(layout, cut);
    }),
    (Misstep::OtherSetting { sheet: 0, cut: 4, setting: RIP }, |_, layout| layout.settings[RIP].fence = mm(21)),
    (Misstep::OtherSetting { sheet: 0, cut: 4, setting: RIP }, |_, layout| layout.settings[RIP].way = Way::Crosscut),
    (Misstep::NoSuchPiece { sheet: 0, cut: 4, piece: 99 }, |_, layout| rip(layout).piece = 99),
    (Misstep::NoSuchPiece { sheet: 0, cut: 6, piece: 20 }, |_, layout| last(layout).piece = 20),
    (Misstep::OtherSheet { sheet: 1, cut: 4, piece: TRIMMED }, |_, layout| rip(layout).sheet = 1),
    (Misstep::Finished { sheet: 0, cut: 5, piece: 20 }, |_, layout| rip(layout).keeps.becomes = Becomes::Waste),
    (Misstep::NumberTaken { sheet: 0, cut: 4, piece: 3 }, |_, layout| falls(rip(layout)).id = 3),
    (Misstep::Fence { sheet: 0, cut: 4 }, |_, layout| {
        layout.settings[RIP].fence = mm(21);
        rip(layout).fence = mm(21);
    }),
    (Misstep::Keeps { sheet: 0, cut: 4 }, |_, layout| rip(layout).from_far = true),
    (Misstep::Keeps { sheet: 0, cut: 4 }, |_, layout| rip(layout).keeps.area.length = mm(93)),
    (Misstep::Falls { sheet: 0, cut: 4 }, |_, layout| rip(layout).falls = None),
    (Misstep::Falls { sheet: 0, cut: 4 }, |_, layout| falls(rip(layout)).area.y = mm(24)),
    (Misstep::NoCut { sheet: 0, cut: 7 }, |_, layout| {
        falls(last(layout)).becomes = Becomes::Rest;
        let whole = [87, 3, 10, 20];
        let nothing = cut(25, Way::Rip, 20, piece(40, whole, Becomes::Waste), piece(41, whole, Becomes::Waste));
        one_more(layout, Cut { falls: None, ..nothing });
    }),
    (Misstep::Trim { sheet: 0, cut: 4 }, |_, layout| rip(layout).trim = true),
    (Misstep::Trim { sheet: 0, cut: 0 }, |_, layout| falls(&mut layout.settings[0].cuts[0]).becomes = Becomes::Offcut),
    (Misstep::Untrimmed { sheet: 0 }, |_, layout| layout.settings.truncate(3)),
    (Misstep::Untrimmed { sheet: 0 }, |_, layout| layout.settings[3].cuts[0].trim = false),
    (Misstep::Stage { sheet: 0, cut: 7, stage: 3, most: 2 }, |job, layout| {
        job.saw.cuts = Cuts::Two;
        falls(last(layout)).becomes = Becomes::Rest;
        let (keeps, falls) = ([87, 3, 10, 9], [87, 14, 10, 9]);
        one_more(layout, cut(25, Way::Rip, 9, piece(40, keeps, Becomes::Waste), piece(41, falls, Becomes::Waste)));
    }),
    (Misstep::LongRip { sheet: 0, cut: 4 }, |job, _| job.saw.longest_rip = Some(mm(93))),
    (Misstep::Unfinished { sheet: 0, piece: 25 }, |_, layout| falls(last(layout)).becomes = Becomes::Rest),
    (Misstep::Unfinished { sheet: 1, piece: 1 }, |_, layout| layout.sheets[1].parts.clear()),
    (Misstep::NotThatPart { sheet: 0, piece: 24, which: Which { part: 0, copy: 0 } }, |_, layout| {
        last(layout).keeps.becomes = side(0);
    }),
    (Misstep::PartCount { sheet: 0, which: Which { part: 1, copy: 0 } }, |_, layout| {
        let more = Placed { part: 1, copy: 0, area: area([3, 25, 50, 30]), turned: false };
        layout.sheets[0].parts.push(more);
    }),
    (Misstep::NotThatOffcut { sheet: 0, piece: 25 }, |_, layout| falls(last(layout)).becomes = Becomes::Offcut),
    (Misstep::LeftCount { sheet: 0, left: 2 }, |_, layout| {
        layout.sheets[0].left.push(Left { area: area([3, 3, 1, 1]), keep: false });
    }),
    (Misstep::GoodWaste { sheet: 0, piece: 21 }, |_, layout| falls(rip(layout)).becomes = Becomes::Waste),
    (Misstep::GoodWaste { sheet: 0, piece: 25 }, |job, _| job.saw.least_offcut = mm(10)),
];

#[test]
fn every_misstep_is_found() {
    for (want, spoil) in BROKEN {
        let (mut job, mut layout) = (job(), layout());
        spoil(&mut job, &mut layout);
        assert_eq!(replay(&job, &layout), Err(*want));
    }
}
