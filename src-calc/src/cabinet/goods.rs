//! What is cut and what is bought: the cut list, the fittings, and the cut list as sheet layout takes it.

use super::handles::screw_length;
use super::inputs::{Back, Board, Edging, Inputs, Stands};
use super::part::{Part, Stock, What};
use super::{Cabinet, Clash};
use crate::cards::cup_hinge::Mounting;
use crate::cards::joints::Kind;
use crate::cards::sheet_layout;
use crate::measure::{Figure, Length, LengthError, Reading};
use serde::Serialize;

/// Parts that are cut alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Line {
    /// What they are.
    pub name: &'static str,
    /// Which board they are cut from.
    pub stock: Stock,
    /// Length, along the grain.
    pub length: Length,
    /// Width.
    pub width: Length,
    /// Thickness.
    pub thickness: Length,
    /// Their places in the list of parts.
    pub parts: Vec<usize>,
}

/// The parts, those that are cut alike together, in their own order.
pub(super) fn cut_list(parts: &[Part]) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    for (at, part) in parts.iter().enumerate() {
        let name = part.what.name();
        let alike = |line: &&mut Line| {
            (line.name, line.stock) == (name, part.stock)
                && (line.length, line.width, line.thickness) == (part.length, part.width, part.thickness)
        };
        match lines.iter_mut().find(alike) {
            Some(line) => line.parts.push(at),
            None => lines.push(Line {
                name,
                stock: part.stock,
                length: part.length,
                width: part.width,
                thickness: part.thickness,
                parts: vec![at],
            }),
        }
    }
    lines
}

/// A fitting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fitting {
    /// A cup hinge with its mounting plate of that height.
    Hinge {
        /// How its door meets the board.
        mounting: Mounting,
        /// Height of the plate.
        plate: Length,
    },
    /// A pin for a shelf.
    ShelfPin,
    /// What joins the carcass.
    Joint {
        /// What it is.
        kind: Kind,
        /// A dowel's or tenon's thickness, a biscuit's width; of a screw the hole for its thread.
        across: Length,
        /// How long it is.
        length: Length,
    },
    /// A screw, or another fixing, into the wall.
    WallFixing,
    /// A socket for an end of the clothes rail.
    RailSocket,
    /// The clothes rail, of that length.
    Rail {
        /// From end to end.
        length: Length,
    },
    /// A leg.
    Leg,
    /// A hook.
    Hook,
    /// A bracket of the shelf outside.
    Bracket {
        /// How far it goes along under the shelf.
        arm: Length,
        /// How far it goes down.
        leg: Length,
    },
    /// A wood screw.
    Screw {
        /// How long it is.
        length: Length,
    },
}

/// So many of a fitting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Fittings {
    /// What it is.
    pub what: Fitting,
    /// How many.
    pub count: usize,
}

/// From screw to screw round a back, in millimetres. Common practice.
const BACK_PITCH_MM: i64 = 150;
/// So far, in millimetres, they go into the boards at the most. From memory.
const BACK_DEEP_MM: i64 = 18;

/// The screws that hold a back which lies on the boards: planted on, or in rabbets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct BackScrews {
    /// How far one is from the next at the most.
    pub pitch: Length,
    /// How many.
    pub count: usize,
    /// How long they are.
    pub length: Length,
}

/// The screws round the back; none where grooves hold it.
pub(super) fn back_screws(inputs: &Inputs, parts: &[Part]) -> Result<Option<BackScrews>, LengthError> {
    let Some(back) = parts.iter().find(|part| part.what == What::Back && inputs.back != Back::Groove) else {
        return Ok(None);
    };
    let pitch = Length::mm(BACK_PITCH_MM, 1)?;
    let round = back.length.plus(back.width)?.times(2, 1)?;
    // Rounded up: minus the last whole number not above minus the quotient.
    let count = round.negated().floor_div(pitch)?.unsigned_abs();
    let length = screw_length(back.thickness, Length::mm(BACK_DEEP_MM, 1)?)?;
    Ok(Some(BackScrews { pitch, count: usize::try_from(count).unwrap_or(usize::MAX), length }))
}

/// Everything that is bought by the piece.
pub(super) fn fittings(inputs: &Inputs, cabinet: &Cabinet) -> Vec<Fittings> {
    let mut all: Vec<Fittings> = Vec::new();
    let mut add = |what: Fitting, count: usize| {
        if count == 0 {
            return;
        }
        match all.iter_mut().find(|line| line.what == what) {
            Some(line) => line.count = line.count.saturating_add(count),
            None => all.push(Fittings { what, count }),
        }
    };
    for door in &cabinet.doors {
        let (mounting, plate) = (door.mounting, door.answer.plate_height);
        add(Fitting::Hinge { mounting, plate }, door.answer.hinges.len());
    }
    for handle in cabinet.doors.iter().filter_map(|door| door.handle.as_ref()) {
        add(Fitting::Screw { length: handle.screw }, handle.screws.len());
    }
    if let Some(rail) = &cabinet.hooks {
        add(Fitting::Hook, rail.hooks.len());
        add(Fitting::Screw { length: rail.screw }, rail.screws.len());
    }
    if let Some(shelf) = &cabinet.outside {
        let brackets = shelf.brackets.len();
        add(Fitting::Bracket { arm: shelf.arm, leg: shelf.leg }, brackets);
        add(Fitting::Screw { length: shelf.screw }, brackets.saturating_mul(shelf.screws.len()));
        add(Fitting::Screw { length: shelf.shelf_screw }, brackets.saturating_mul(shelf.shelf_screws.len()));
    }
    if let Some(plinth) = &cabinet.plinth {
        add(Fitting::Screw { length: plinth.screw }, plinth.screws.len().saturating_mul(plinth.lines.len()));
        add(Fitting::Screw { length: plinth.cross_screw }, plinth.cross_screws);
    }
    if let Some(strip) = &cabinet.strip_screws {
        let count = strip.into_top.1.len().saturating_add(strip.into_sides.1.len());
        add(Fitting::Screw { length: strip.screw }, count);
    }
    let loose = cabinet.parts.iter().filter(|part| matches!(part.what, What::LooseShelf { .. })).count();
    add(Fitting::ShelfPin, loose.saturating_mul(4));
    for join in &cabinet.joins {
        let (kind, sizes) = (join.marks.kind, &inputs.joint_sizes);
        let typed = |reading: &Reading| reading.length().unwrap_or_default();
        let whole = |mm: i64| Length::mm(mm, 1).unwrap_or_default();
        let (across, length) = match (kind, &join.marks.screw) {
            (_, Some(screw)) => (join.marks.fixing.across, screw.length),
            (Kind::LooseTenon, None) => (join.marks.fixing.across, typed(&sizes.tenon_length)),
            (Kind::Biscuit, None) => {
                let (long, wide) = sizes.biscuit.size_mm();
                (whole(wide), whole(long))
            }
            (_, None) => (join.marks.fixing.across, typed(&sizes.dowel_length)),
        };
        add(Fitting::Joint { kind, across, length }, join.pairs.len().saturating_mul(join.marks.marks.len()));
    }
    if let Some(hang) = &cabinet.hang {
        // A spacer below has two of its own. Common practice.
        let spacer = if cabinet.cleat.is_some() { 2 } else { 0 };
        add(Fitting::WallFixing, usize::try_from(hang.count).unwrap_or(usize::MAX).saturating_add(spacer));
    }
    if let Some(back) = &cabinet.back_screws {
        add(Fitting::Screw { length: back.length }, back.count);
    }
    for rail in cabinet.parts.iter().filter(|part| part.what == What::Rail) {
        add(Fitting::Rail { length: rail.length }, 1);
    }
    add(Fitting::RailSocket, cabinet.sockets.len());
    if inputs.stands == Stands::Legs {
        // One at every corner, and two under every upright. Common practice.
        let uprights = cabinet.parts.iter().filter(|part| matches!(part.what, What::Upright { .. })).count();
        add(Fitting::Leg, uprights.saturating_mul(2).saturating_add(4));
    }
    all
}

impl Inputs {
    /// The board that a stock is; none for edging.
    pub fn board(&self, stock: Stock) -> Option<&Board> {
        match stock {
            Stock::Carcass => Some(&self.carcass),
            Stock::Shelf => Some(&self.shelf),
            Stock::Back => Some(&self.back_board),
            Stock::Door => Some(&self.door),
            Stock::Strip => Some(&self.strip),
            Stock::Handle | Stock::Rail | Stock::Edging => None,
        }
    }
}

/// Every stock that comes in sheets.
pub(super) const SHEETS: [Stock; 5] = [Stock::Carcass, Stock::Shelf, Stock::Door, Stock::Back, Stock::Strip];

/// A part as a sheet layout takes it.
struct Wanted {
    name: &'static str,
    stock: Stock,
    length: Length,
    width: Length,
    count: usize,
}

/// The cut list, with the two strips of a cleat as the one board that they are parted from.
fn wanted(cabinet: &Cabinet) -> Vec<Wanted> {
    let bevelled =
        |line: &&Line| line.parts.iter().any(|at| cabinet.parts.get(*at).is_some_and(|part| part.section.is_some()));
    let plain = cabinet.cut_list.iter().filter(|line| !bevelled(line)).map(|line| Wanted {
        name: line.name,
        stock: line.stock,
        length: line.length,
        width: line.width,
        count: line.parts.len(),
    });
    let pair = cabinet.cleat.as_ref().map(|cleat| Wanted {
        name: "Cleat",
        stock: Stock::Strip,
        length: cleat.cabinet_strip_length,
        width: cleat.board,
        count: 1,
    });
    plain.chain(pair).collect()
}

/// What is larger than a whole sheet, which loses its edges as the sheet layout card trims them: with the grain no part is
/// turned.
pub(super) fn larger_than_sheet(inputs: &Inputs, cabinet: &Cabinet) -> Result<Vec<Clash>, LengthError> {
    let [Ok(long), Ok(wide), Ok(trim)] =
        [&inputs.sheet_length, &inputs.sheet_width, &sheet_layout::Inputs::default().trim].map(Reading::length)
    else {
        return Ok(Vec::new());
    };
    let both = trim.times(2, 1)?;
    let (long, wide) = (long.minus(both)?, wide.minus(both)?);
    let large = |line: &&Line| SHEETS.contains(&line.stock) && (line.length > long || line.width > wide);
    let parts = cabinet.cut_list.iter().filter(large).filter_map(|line| line.parts.first());
    Ok(parts.map(|part| Clash::LargerThanSheet { part: *part }).collect())
}

/// The cut list for the sheet layout card: parts of the same material and thickness come from the same sheets.
pub fn layout(inputs: &Inputs, cabinet: &Cabinet) -> sheet_layout::Inputs {
    let wanted = wanted(cabinet);
    let mut parts = Vec::new();
    let mut sheets: Vec<Stock> = Vec::new();
    for stock in SHEETS {
        for part in wanted.iter().filter(|part| part.stock == stock) {
            let Some(sheet) = inputs.sheet_of(stock) else { continue };
            if !sheets.contains(&sheet) {
                sheets.push(sheet);
            }
            let Wanted { name, length, width, count, .. } = part;
            parts.push(Reading::mm(&format!("{name}; {length}; {width}; {count}; {}", sheet.name())));
        }
    }
    let price = |stock: Stock| inputs.board(stock).map(|board| board.price.clone()).unwrap_or_default();
    let mut names = sheets.iter();
    let main = names.next().copied().unwrap_or(Stock::Carcass);
    let size = [&inputs.sheet_length, &inputs.sheet_width];
    let [length, width] = size.map(|side| side.length().map(|side| side.to_string()).unwrap_or_default());
    let further =
        names.map(|stock| Reading::mm(&format!("{}; {length}; {width}; ; {}", stock.name(), price(*stock).typed())));
    sheet_layout::Inputs {
        parts,
        sheet_name: Figure::new(main.name()),
        sheet_length: inputs.sheet_length.clone(),
        sheet_width: inputs.sheet_width.clone(),
        sheet_price: price(main),
        sheets: further.collect(),
        kerf: inputs.kerf.clone(),
        ..sheet_layout::Inputs::default()
    }
}

/// How much edging all the parts take, end to end; none where edges stay bare.
pub(super) fn edging(inputs: &Inputs, parts: &[Part]) -> Result<Option<Length>, LengthError> {
    if inputs.edging == Edging::Bare {
        return Ok(None);
    }
    let pieces = parts.iter().filter(|part| part.stock == Stock::Edging);
    pieces.map(|part| part.length).try_fold(Length::ZERO, Length::plus).map(Some)
}
