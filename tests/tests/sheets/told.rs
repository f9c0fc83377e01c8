//! A job and its layout in few lines: what a failed check prints.

use scantling::measure::Length;
use scantling::sheets::{Area, Becomes, Job, Layout, Piece};
use std::fmt::Write;

fn area(area: &Area) -> String {
    let Area { x, y, length, width } = area;
    format!("{length} x {width} at {x}, {y}")
}

fn piece(piece: &Piece) -> String {
    let becomes = match piece.becomes {
        Becomes::Part { part, copy } => format!("part {part}.{copy}"),
        other => format!("{other:?}"),
    };
    format!("#{} {becomes} {}", piece.id, area(&piece.area))
}

pub(crate) fn job(job: &Job) -> String {
    let saw = &job.saw;
    let rip = saw.longest_rip.map_or("any".to_owned(), |rip: Length| rip.to_string());
    let mut told = format!(
        "kerf {}, trim {}, {:?}, rips to {rip}, offcuts from {}\n",
        saw.kerf, saw.trim, saw.cuts, saw.least_offcut
    );
    for (at, stock) in job.stock.iter().enumerate() {
        let price = stock.price.map(scantling::measure::Ratio::as_f64);
        let kind = if stock.offcut { "offcut" } else { "sheet" };
        let (length, width, grain, many) = (stock.length, stock.width, stock.grain, stock.quantity);
        writeln!(told, "  {kind} {at} {:?}: {length} x {width} {grain:?}, {many:?}, price {price:?}", stock.name)
            .unwrap();
    }
    for (at, part) in job.parts.iter().enumerate() {
        let (length, width, grain, many) = (part.length, part.width, part.grain, part.quantity);
        writeln!(told, "  part {at} of {:?}: {length} x {width} {grain:?}, {many}", part.stock).unwrap();
    }
    told
}

pub(crate) fn layout(layout: &Layout) -> String {
    let mut told = format!("price {:?}\n", layout.price.map(scantling::measure::Ratio::as_f64));
    for (at, sheet) in layout.sheets.iter().enumerate() {
        writeln!(told, "  sheet {at} of stock {}: {} x {}", sheet.stock, sheet.length, sheet.width).unwrap();
        for placed in &sheet.parts {
            let turned = if placed.turned { ", turned" } else { "" };
            writeln!(told, "    part {}.{}: {}{turned}", placed.part, placed.copy, area(&placed.area)).unwrap();
        }
        for left in &sheet.left {
            writeln!(told, "    left: {}, keep {}", area(&left.area), left.keep).unwrap();
        }
    }
    for unplaced in &layout.unplaced {
        writeln!(told, "  part {} not placed {} times: {:?}", unplaced.part, unplaced.count, unplaced.why).unwrap();
    }
    for setting in &layout.settings {
        writeln!(told, "  {:?} at {}", setting.way, setting.fence).unwrap();
        for cut in &setting.cuts {
            let side = if cut.from_far { " from far" } else { "" };
            let trim = if cut.trim { " trim" } else { "" };
            let falls = cut.falls.as_ref().map_or("nothing".to_owned(), piece);
            let keeps = piece(&cut.keeps);
            writeln!(told, "    sheet {} #{}{side}{trim}: keeps {keeps}, falls {falls}", cut.sheet, cut.piece).unwrap();
        }
    }
    told
}
