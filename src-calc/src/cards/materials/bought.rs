//! What is bought, a section at a time. A section whose list is blank is none.

use super::decimal::Decimal;
use super::inputs::{Coat, Inputs};
use super::lines::{self, Sized};
use super::reads::{Reads, with};
use crate::measure::{Figure, FigureKind, Length, LengthError, Quantity, Ratio, Reading};
use crate::problem::Problem;
use crate::source::Source;
use serde::Serialize;

/// The most coats, boxes' contents, or sheets.
const MOST: u32 = 100_000;
const MOST_COATS: u32 = 20;

/// Sheets, by area.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Sheets {
    /// Length and width of a whole sheet.
    pub size: [Length; 2],
    /// Its thickness.
    pub thickness: Length,
    /// How many parts.
    pub parts: u32,
    /// How many sheets.
    pub count: u32,
    /// Whether that is by area; else it was given.
    pub by_area: bool,
    /// The parts' area, exactly, in square metres.
    #[serde(skip)]
    pub(super) area: Ratio,
    /// The parts' area, m².
    pub net_m2: f64,
    /// Waste on top, per cent.
    pub waste_percent: f64,
    /// The parts' area with the waste, m².
    pub gross_m2: f64,
    /// What the sheets have, m².
    pub bought_m2: f64,
    /// Density, kg/m³.
    pub density_kg_m3: f64,
    /// Who says so; nothing for a figure of one's own.
    pub density_source: Option<Source>,
    /// Weight of a whole sheet, kg. An estimate.
    pub sheet_kg: f64,
    /// Weight of all parts, kg. An estimate.
    pub parts_kg: f64,
}

/// Solid wood, by volume and by board measure.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Boards {
    /// Length and width of every line's parts, and how many, for the picture.
    pub sizes: Vec<(Length, Length, u32)>,
    /// Their volume, m³.
    pub net_m3: f64,
    /// The same in board measure, in which less than 1 in thick counts as 1 in; board feet.
    pub net_board_feet: f64,
    /// Waste on top, per cent.
    pub waste_percent: f64,
    /// Volume with the waste, m³, rounded up to a tenth of a litre.
    pub gross_m3: Decimal,
    /// Board feet with the waste, rounded up to a hundredth.
    pub gross_board_feet: Decimal,
}

/// Edge band.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Band {
    /// How many pieces.
    pub pieces: u32,
    /// The edges together.
    pub net: Length,
    /// With what is cut longer on each.
    pub gross: Length,
    /// Length of a roll.
    pub roll: Length,
    /// How many rolls.
    pub rolls: u32,
}

/// Glue.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Glue {
    /// Area of the joints, m².
    pub area_m2: f64,
    /// How much is spread, g/m².
    pub spread_g_m2: f64,
    /// How much that is, kg.
    pub kg: f64,
    /// How much a bottle holds, kg.
    #[serde(skip)]
    pub(super) bottle_kg: f64,
    /// How many bottles.
    pub bottles: u32,
}

/// Finish.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finish {
    /// What is coated, m².
    pub area_m2: f64,
    /// How many coats.
    pub coats: u32,
    /// How far a litre goes, m²/l.
    pub coverage_m2_l: f64,
    /// How much that is, litres.
    pub litres: f64,
    /// How much a can holds, litres.
    #[serde(skip)]
    pub(super) can_litres: f64,
    /// How many cans.
    pub cans: u32,
}

/// Screws or pins.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fixings {
    /// How many are driven.
    pub count: u32,
    /// With those on top, per cent.
    pub spare_percent: f64,
    /// How many that is.
    pub gross: u32,
    /// How many boxes.
    pub boxes: u32,
}

/// The area of all lines, m².
fn square_metres(lines: &[Sized<2>]) -> Result<Ratio, LengthError> {
    lines::sum(lines, |_, size| size)?.over(Ratio::whole(1_000_000))
}

/// The next whole number that is not less.
fn whole_up(value: Ratio) -> Result<u32, LengthError> {
    u32::try_from(Decimal::not_under(value, 0)?.units()).map_err(|_| LengthError::TooLong)
}

type Section<T> = Result<Option<T>, LengthError>;

fn density(inputs: &Inputs, reads: &mut Reads, thickness: Option<Length>) -> Option<(f64, Option<Source>)> {
    match inputs.material.family() {
        None => Some((reads.positive("density", &inputs.density, FigureKind::Density)?.as_f64(), None)),
        Some(family) => family.row(thickness?.as_mm()).map(|(row, _)| (row.density_kg_m3, Some(row.source))),
    }
}

fn fits(part: &[Length; 2], sheet: &[Length; 2]) -> bool {
    let sorted = |[a, b]: [Length; 2]| (a.min(b), a.max(b));
    let (part, sheet) = (sorted(*part), sorted(*sheet));
    part.0 <= sheet.0 && part.1 <= sheet.1
}

pub(super) fn sheets(inputs: &Inputs, reads: &mut Reads) -> Section<Sheets> {
    if lines::is_blank(&inputs.sheet_parts) {
        return Ok(None);
    }
    let parts: Vec<Sized<2>> = lines::sized(&mut reads.0, "sheet_parts", &inputs.sheet_parts);
    let thickness = reads.0.above_zero("thickness", &inputs.thickness);
    let density = density(inputs, reads, thickness);
    let length = reads.0.above_zero("sheet_length", &inputs.sheet_length);
    let width = reads.0.above_zero("sheet_width", &inputs.sheet_width);
    let waste = reads.percent("sheet_waste", &inputs.sheet_waste);
    let given = if inputs.sheets.is_blank() { None } else { reads.whole("sheets", &inputs.sheets, MOST) };
    let (Some(thickness), Some((density_kg_m3, density_source)), Some(length), Some(width), Some(waste)) =
        (thickness, density, length, width, waste)
    else {
        return Ok(None);
    };
    let size = [length, width];
    if parts.iter().any(|(part, _)| !fits(part, &size)) {
        reads.0.add("sheet_parts", Problem::Clash { why: "One of these is larger than a whole sheet." });
    }
    let area = square_metres(&parts)?;
    let gross = with(area, waste)?;
    let sheet = square_metres(&[(size, 1)])?;
    let least = whole_up(area.over(sheet)?)?;
    if given.is_some_and(|given| given < least) {
        let why = "the parts alone have more area than fewer";
        reads.0.add("sheets", Problem::TooSmall { least: Quantity::count(least.into()), why });
    }
    let count = match given {
        Some(given) => given,
        None => whole_up(gross.over(sheet)?)?,
    };
    let kg_per_m2 = density_kg_m3 * thickness.as_mm() / 1000.0;
    Ok(Some(Sheets {
        size,
        thickness,
        parts: lines::pieces(&parts),
        count,
        by_area: given.is_none(),
        area,
        net_m2: area.as_f64(),
        waste_percent: waste.as_f64(),
        gross_m2: gross.as_f64(),
        bought_m2: sheet.as_f64() * f64::from(count),
        density_kg_m3,
        density_source,
        sheet_kg: kg_per_m2 * sheet.as_f64(),
        parts_kg: kg_per_m2 * area.as_f64(),
    }))
}

pub(super) fn boards(inputs: &Inputs, reads: &mut Reads) -> Section<Boards> {
    if lines::is_blank(&inputs.boards) {
        return Ok(None);
    }
    let boards: Vec<Sized<3>> = lines::sized(&mut reads.0, "boards", &inputs.boards);
    let Some(waste) = reads.percent("board_waste", &inputs.board_waste) else { return Ok(None) };
    let inch = Length::inches(1, 1)?;
    let net = lines::sum(&boards, |_, size| size)?.over(Ratio::whole(1_000_000_000))?;
    let thick = |at, size: Length| if at == 2 { size.max(inch) } else { size };
    // 144 cubic inches of 25.4³ mm³ each.
    let board_feet = lines::sum(&boards, thick)?.over(Ratio::new(2_359_737_216, 1000)?)?;
    Ok(Some(Boards {
        sizes: boards.iter().map(|([length, width, _], count)| (*length, *width, *count)).collect(),
        net_m3: net.as_f64(),
        net_board_feet: board_feet.as_f64(),
        waste_percent: waste.as_f64(),
        gross_m3: Decimal::not_under(with(net, waste)?, 4)?,
        gross_board_feet: Decimal::not_under(with(board_feet, waste)?, 2)?,
    }))
}

pub(super) fn band(inputs: &Inputs, reads: &mut Reads) -> Section<Band> {
    if lines::is_blank(&inputs.edges) {
        return Ok(None);
    }
    let edges: Vec<Sized<1>> = lines::sized(&mut reads.0, "edges", &inputs.edges);
    let extra = reads.0.zero_or_more("band_extra", &inputs.band_extra);
    let roll = reads.0.above_zero("roll", &inputs.roll);
    let (Some(extra), Some(roll)) = (extra, roll) else { return Ok(None) };
    let pieces = lines::pieces(&edges);
    let mut net = Length::ZERO;
    for ([length], count) in &edges {
        net = net.plus(length.times((*count).into(), 1)?)?;
    }
    let gross = net.plus(extra.times(pieces.into(), 1)?)?;
    Ok(Some(Band { pieces, net, gross, roll, rolls: whole_up(gross.ratio(roll)?)? }))
}

pub(super) fn glue(inputs: &Inputs, reads: &mut Reads) -> Section<Glue> {
    if lines::is_blank(&inputs.joints) {
        return Ok(None);
    }
    let joints: Vec<Sized<2>> = lines::sized(&mut reads.0, "joints", &inputs.joints);
    let spread = reads.positive("glue_spread", &inputs.glue_spread, FigureKind::Spread);
    let bottle = reads.positive("bottle", &inputs.bottle, FigureKind::Mass);
    let (Some(spread), Some(bottle)) = (spread, bottle) else { return Ok(None) };
    let area = square_metres(&joints)?;
    let kg = area.times(spread)?.over(Ratio::whole(1000))?;
    Ok(Some(Glue {
        area_m2: area.as_f64(),
        spread_g_m2: spread.as_f64(),
        kg: kg.as_f64(),
        bottle_kg: bottle.as_f64(),
        bottles: whole_up(kg.over(bottle)?)?,
    }))
}

pub(super) fn finish(inputs: &Inputs, reads: &mut Reads, sheets: Option<&Sheets>) -> Section<Finish> {
    if inputs.coat == Coat::Nothing {
        return Ok(None);
    }
    let area = match inputs.coat {
        Coat::Nothing | Coat::Listed => {
            if lines::is_blank(&inputs.faces) {
                reads.0.add("faces", Problem::Clash { why: "List the faces, or coat something else." });
            }
            let faces: Vec<Sized<2>> = lines::sized(&mut reads.0, "faces", &inputs.faces);
            Some(square_metres(&faces)?)
        }
        Coat::OneFace | Coat::BothFaces => {
            if lines::is_blank(&inputs.sheet_parts) {
                let why = "There are no sheet parts to coat: list the faces, or coat nothing.";
                reads.0.add("coat", Problem::Clash { why });
            }
            let faces = if inputs.coat == Coat::OneFace { 1 } else { 2 };
            sheets.map(|sheets| sheets.area.times(Ratio::whole(faces))).transpose()?
        }
    };
    let coats = reads.whole("coats", &inputs.coats, MOST_COATS);
    let coverage = reads.positive("coverage", &inputs.coverage, FigureKind::Coverage);
    let can = reads.positive("can", &inputs.can, FigureKind::Volume);
    let (Some(area), Some(coats), Some(coverage), Some(can)) = (area, coats, coverage, can) else { return Ok(None) };
    let litres = area.times(Ratio::whole(coats.into()))?.over(coverage)?;
    Ok(Some(Finish {
        area_m2: area.as_f64(),
        coats,
        coverage_m2_l: coverage.as_f64(),
        litres: litres.as_f64(),
        can_litres: can.as_f64(),
        cans: whole_up(litres.over(can)?)?,
    }))
}

/// Where screws or pins stand in the inputs.
pub(super) struct FixingFields<'a> {
    pub(super) list: (&'static str, &'a [Reading]),
    pub(super) in_box: (&'static str, &'a Figure),
}

pub(super) fn fixings(fields: &FixingFields<'_>, spare: Option<Ratio>, reads: &mut Reads) -> Section<Fixings> {
    let ((name, lines), (box_name, in_box)) = (fields.list, fields.in_box);
    if lines::is_blank(lines) {
        return Ok(None);
    }
    let count = lines::counted(&mut reads.0, name, lines);
    let (Some(in_box), Some(spare)) = (reads.whole(box_name, in_box, MOST), spare) else { return Ok(None) };
    let gross = whole_up(with(Ratio::whole(count), spare)?)?;
    Ok(Some(Fixings {
        count: u32::try_from(count).map_err(|_| LengthError::TooLong)?,
        spare_percent: spare.as_f64(),
        gross,
        boxes: gross.div_ceil(in_box),
    }))
}
