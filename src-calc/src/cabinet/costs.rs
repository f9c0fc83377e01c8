//! What a cabinet costs: whole sheets, as many as their layout takes, and fittings by the piece or the metre.
//!
//! Apart from `solve`, since laying the parts out takes longer than all the rest together.

use super::Cabinet;
use super::ask::answered;
use super::goods::{Fitting, SHEETS, layout};
use super::handles::Pull;
use super::inputs::{Back, Board, Edging, Inputs, Stands};
use super::part::Stock;
use crate::cards::materials::Decimal;
use crate::cards::sheet_layout;
use crate::measure::{Figure, FigureKind, Length, LengthError, Range, Ratio};
use crate::problem::{Problem, Problems};
use serde::{Deserialize, Serialize};

/// Money has so many decimals.
const PLACES: u32 = 2;
/// How many layouts are tried where the first one is not known to be the best.
const TRIES: u32 = 400;

/// What a piece of each fitting costs; blank where that does not matter.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Prices {
    /// A hinge with its plate.
    pub hinge: Figure,
    /// A shelf pin.
    pub shelf_pin: Figure,
    /// A dowel, or whatever joins the carcass.
    pub joint: Figure,
    /// A screw into the wall.
    pub wall_fixing: Figure,
    /// Clothes rail, for a metre, or for a foot where that is written.
    pub rail: Figure,
    /// A socket of it.
    pub rail_socket: Figure,
    /// A leg.
    pub leg: Figure,
    /// Edging, in the same way.
    pub edging: Figure,
    /// Strip for handles, in the same way.
    pub handle: Figure,
    /// A wood screw.
    pub screw: Figure,
    /// A hook.
    pub hook: Figure,
    /// A bracket of the shelf outside.
    pub bracket: Figure,
}

/// What has a price.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Priced {
    /// A sheet of a board.
    Board(Stock),
    /// Edging, by length.
    Edging,
    /// A hinge with its plate.
    Hinge,
    /// A shelf pin.
    ShelfPin,
    /// What joins the carcass.
    Joint,
    /// A screw into the wall.
    WallFixing,
    /// Clothes rail, by length.
    Rail,
    /// A socket of it.
    RailSocket,
    /// A leg.
    Leg,
    /// Strip for handles, by length.
    Handle,
    /// A wood screw.
    Screw,
    /// A hook.
    Hook,
    /// A bracket of the shelf outside.
    Bracket,
}

impl Priced {
    /// In the order of the list.
    pub const ALL: [Self; 17] = [
        Self::Board(Stock::Carcass),
        Self::Board(Stock::Shelf),
        Self::Board(Stock::Door),
        Self::Board(Stock::Back),
        Self::Board(Stock::Strip),
        Self::Edging,
        Self::Hinge,
        Self::ShelfPin,
        Self::Joint,
        Self::WallFixing,
        Self::Rail,
        Self::RailSocket,
        Self::Leg,
        Self::Handle,
        Self::Screw,
        Self::Hook,
        Self::Bracket,
    ];

    const fn of(fitting: Fitting) -> Self {
        match fitting {
            Fitting::Hinge { .. } => Self::Hinge,
            Fitting::ShelfPin => Self::ShelfPin,
            Fitting::Joint { .. } => Self::Joint,
            Fitting::WallFixing => Self::WallFixing,
            Fitting::RailSocket => Self::RailSocket,
            Fitting::Rail { .. } => Self::Rail,
            Fitting::Leg => Self::Leg,
            Fitting::Screw { .. } => Self::Screw,
            Fitting::Hook => Self::Hook,
            Fitting::Bracket { .. } => Self::Bracket,
        }
    }

    /// What its price is for: a piece, or a length.
    const fn kind(self) -> FigureKind {
        match self {
            Self::Edging | Self::Rail | Self::Handle => FigureKind::PricePerMetre,
            _ => FigureKind::Number,
        }
    }

    /// The input that holds its price.
    const fn field(self) -> &'static str {
        match self {
            Self::Board(Stock::Shelf) => "shelf.price",
            Self::Board(Stock::Door) => "door.price",
            Self::Board(Stock::Back) => "back_board.price",
            Self::Board(Stock::Strip) => "strip.price",
            Self::Board(Stock::Carcass | Stock::Handle | Stock::Rail | Stock::Edging) => "carcass.price",
            Self::Edging => "prices.edging",
            Self::Hinge => "prices.hinge",
            Self::ShelfPin => "prices.shelf_pin",
            Self::Joint => "prices.joint",
            Self::WallFixing => "prices.wall_fixing",
            Self::Rail => "prices.rail",
            Self::RailSocket => "prices.rail_socket",
            Self::Leg => "prices.leg",
            Self::Handle => "prices.handle",
            Self::Screw => "prices.screw",
            Self::Hook => "prices.hook",
            Self::Bracket => "prices.bracket",
        }
    }
}

/// How much of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Amount {
    /// So many.
    Pieces(u32),
    /// So long, end to end.
    Run(Length),
}

/// A line of the costs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cost {
    /// What it is for.
    pub what: Priced,
    /// How much of it.
    pub amount: Amount,
    /// What one costs, or a metre unless it says a foot, as typed; blank where it was not given.
    pub price: Figure,
    /// What they cost together, rounded to the last place as money is; none without a price.
    pub sum: Option<Decimal>,
}

/// What it all costs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Costs {
    /// Line by line.
    pub lines: Vec<Cost>,
    /// The sum of what stands there; none where nothing has a price.
    pub total: Option<Decimal>,
    /// No layout has fewer sheets than this: where they take more, a better one may be found.
    pub fewest_sheets: u32,
    /// Parts that are larger than a sheet, by name.
    pub too_large: Vec<String>,
}

impl Inputs {
    /// Whether any part is cut from a board.
    fn is_in_use(&self, stock: Stock) -> bool {
        let some = |count: &Figure| count.value(FigureKind::Count) != Ok(0.0);
        match stock {
            Stock::Shelf => some(&self.fixed_shelves) || some(&self.loose_shelves) || self.has_outside(),
            Stock::Door => self.has_doors(),
            Stock::Strip => self.stands.is_hung(),
            Stock::Carcass | Stock::Back => true,
            Stock::Handle | Stock::Rail | Stock::Edging => false,
        }
    }

    /// The board whose sheets a stock is cut from: the first in use of the same material and thickness.
    pub(super) fn sheet_of(&self, stock: Stock) -> Option<Stock> {
        let board = self.board(stock)?;
        let thick = |board: &Board| board.thickness.range().ok().map(Range::nominal);
        let same = |other: &Board| {
            other.material == board.material && board.material.family().is_some() && thick(other) == thick(board)
        };
        let mut used = SHEETS.into_iter().filter(|other| self.is_in_use(*other));
        Some(used.find(|other| self.board(*other).is_some_and(same)).unwrap_or(stock))
    }

    /// Whether the cabinet has such a thing, so that its price counts.
    pub fn counts(&self, what: Priced) -> bool {
        match what {
            Priced::Board(stock) => self.is_in_use(stock) && self.sheet_of(stock) == Some(stock),
            Priced::Edging => self.edging != Edging::Bare,
            Priced::Hinge => self.has_doors(),
            Priced::ShelfPin => self.loose_shelves.value(FigureKind::Count) != Ok(0.0),
            Priced::Joint => true,
            Priced::WallFixing => self.stands.is_hung(),
            Priced::Rail | Priced::RailSocket => !self.rail_bay.is_blank(),
            Priced::Leg => self.stands == Stands::Legs,
            Priced::Handle => self.has_doors() && self.handle.pull == Pull::Strip,
            Priced::Screw => {
                let plinth = self.stands == Stands::Plinth;
                let (back, hung) =
                    (self.back != Back::Groove, self.counts(Priced::Handle) || self.counts(Priced::Hook));
                plinth || back || hung || self.has_outside()
            }
            Priced::Hook => self.stands.is_hung() && !self.hooks.count.is_blank(),
            Priced::Bracket => self.has_outside(),
        }
    }

    fn price(&self, what: Priced) -> &Figure {
        match what {
            Priced::Board(stock) => &self.board(stock).unwrap_or(&self.carcass).price,
            Priced::Edging => &self.prices.edging,
            Priced::Hinge => &self.prices.hinge,
            Priced::ShelfPin => &self.prices.shelf_pin,
            Priced::Joint => &self.prices.joint,
            Priced::WallFixing => &self.prices.wall_fixing,
            Priced::Rail => &self.prices.rail,
            Priced::RailSocket => &self.prices.rail_socket,
            Priced::Leg => &self.prices.leg,
            Priced::Handle => &self.prices.handle,
            Priced::Screw => &self.prices.screw,
            Priced::Hook => &self.prices.hook,
            Priced::Bracket => &self.prices.bracket,
        }
    }

    /// What one costs, or a metre; none for a blank price.
    fn money(&self, what: Priced) -> Result<Option<Ratio>, Problem> {
        let price = self.price(what);
        if price.is_blank() {
            return Ok(None);
        }
        let price = price.exact(what.kind())?;
        if price.is_negative() { Err(Problem::BelowZero) } else { Ok(Some(price)) }
    }

    /// Notes every price that is none.
    pub(super) fn check_prices(&self, problems: &mut Problems) {
        for what in Priced::ALL.into_iter().filter(|what| self.counts(*what)) {
            if let Err(problem) = self.money(what) {
                problems.add(what.field(), problem);
            }
        }
    }
}

fn sum(amount: Amount, price: Ratio) -> Result<Decimal, LengthError> {
    let amount = match amount {
        Amount::Pieces(count) => Ratio::whole(count.into()),
        Amount::Run(length) => length.ratio(Length::mm(1000, 1)?)?,
    };
    Decimal::nearest(amount.times(price)?, PLACES)
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// The fittings, those that have one price together.
fn fittings(cabinet: &Cabinet) -> Result<Vec<(Priced, Amount)>, LengthError> {
    let edging = cabinet.edging.map(|length| (Priced::Edging, Amount::Run(length)));
    let mut strips = cabinet.parts.iter().filter(|part| part.stock == Stock::Handle).map(|part| part.length);
    let strips = strips.try_fold(Length::ZERO, Length::plus)?;
    let strips = strips.is_positive().then_some((Priced::Handle, Amount::Run(strips)));
    let mut all: Vec<(Priced, Amount)> = edging.into_iter().chain(strips).collect();
    for line in &cabinet.fittings {
        let what = Priced::of(line.what);
        let amount = match line.what {
            Fitting::Rail { length } => Amount::Run(length),
            _ => Amount::Pieces(count(line.count)),
        };
        match (all.iter_mut().find(|(known, _)| *known == what), amount) {
            (Some((_, Amount::Pieces(known))), Amount::Pieces(more)) => *known = known.saturating_add(more),
            (Some((_, Amount::Run(known))), Amount::Run(more)) => *known = known.plus(more)?,
            _ => all.push((what, amount)),
        }
    }
    Ok(all)
}

/// The parts on sheets; looked for somewhat further where the first layout takes more sheets than it might.
fn laid(asked: &sheet_layout::Inputs) -> Result<sheet_layout::Answer, Problems> {
    let first = sheet_layout::solve(asked)?;
    if first.layout.sheets.len() <= first.bound {
        return Ok(first);
    }
    let better = sheet_layout::Further::of(&first).and_then(|mut further| {
        further.step(TRIES);
        further.better(asked, &first)
    });
    Ok(better.map_or(first, |(_, better)| better))
}

/// What a cabinet costs, with as many sheets as the sheet layout card finds that it takes in some hundred tries.
///
/// # Errors
/// A problem for each price, sheet size or kerf that cannot be used, in the cabinet's own names.
pub fn costs(inputs: &Inputs, cabinet: &Cabinet) -> Result<Costs, Problems> {
    let names = [
        ("sheet_length", "sheet_length"),
        ("sheet_width", "sheet_width"),
        ("sheet_price", "carcass.price"),
        ("kerf", "kerf"),
        ("trim", "sheet_width"),
        ("parts", "sheet_length"),
    ];
    let laid = answered(laid(&layout(inputs, cabinet)), &names)?;
    let sheets = |stock: Stock| {
        let named = |sheet: &&crate::sheets::Sheet| {
            laid.job.stock.get(sheet.stock).is_some_and(|sheet| sheet.name == stock.name())
        };
        count(laid.layout.sheets.iter().filter(named).count())
    };
    let taken = SHEETS.into_iter().map(|stock| (Priced::Board(stock), Amount::Pieces(sheets(stock))));
    let taken = taken.filter(|(_, amount)| *amount != Amount::Pieces(0));
    let mut problems = Problems::default();
    let mut lines = Vec::new();
    for (what, amount) in taken.chain(fittings(cabinet)?) {
        let Some(each) = problems.check(what.field(), inputs.money(what)) else { continue };
        let sum = each.and_then(|each| problems.check(what.field(), sum(amount, each)));
        lines.push(Cost { what, amount, price: inputs.price(what).clone(), sum });
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let add = |total: Option<Decimal>, sum: Decimal| match total {
        Some(total) => total.plus(sum).map(Some),
        None => Ok(Some(sum)),
    };
    let total = lines.iter().filter_map(|line| line.sum).try_fold(None, add)?;
    let too_large = laid.left_out.iter().map(|left| left.name.clone()).collect();
    Ok(Costs { lines, total, fewest_sheets: count(laid.bound), too_large })
}
