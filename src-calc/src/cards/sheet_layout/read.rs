//! From what was typed to a job.

use super::found::parts_mark;
use super::inputs::Inputs;
use super::lines::{self, Lines, List, Mark, stock_name};
use crate::measure::{Figure, FigureKind, Length, Quantity, Ratio, Reading};
use crate::problem::{Problem, Problems};
use crate::sheets::{Job, Part, Saw, Stock};

/// The most sheets of a kind that anybody has.
const MOST: u64 = 9999;
/// No saw blade takes more, in millimetres.
const THICKEST_BLADE: i64 = 20;

/// A job, and what of the lists is not in it.
pub(super) struct Read {
    pub(super) job: Job,
    /// The line of each of the job's parts.
    pub(super) lines: Vec<usize>,
    pub(super) marks: Vec<Mark>,
    /// How many offcuts wait until another list of parts is laid out.
    pub(super) waiting: usize,
    pub(super) parts_mark: String,
}

/// Reads everything.
///
/// # Errors
/// A problem for each field that cannot be used, and for each line of the parts where not one is good.
pub(super) fn read(inputs: &Inputs) -> Result<Read, Problems> {
    let mut problems = Problems::default();
    let parts = lines::parts(&inputs.parts);
    if parts.good.is_empty() {
        no_parts(&parts.marks, &mut problems);
    }
    let main = main_sheet(inputs, &mut problems);
    let saw = saw(inputs, main.as_ref(), &mut problems);
    let (Some(mut main), Some(saw), true) = (main, saw, problems.is_empty()) else { return Err(problems) };

    let sheets = lines::stock(List::Sheets, &inputs.sheets);
    let offcuts = lines::stock(List::Offcuts, &inputs.offcuts);
    main.name = main_name(&main.name, &parts.good, &sheets, &offcuts);
    let named = |name: String| if name.is_empty() { main.name.clone() } else { name };
    let (lines, parts_read): (Vec<usize>, Vec<Part>) =
        parts.good.into_iter().map(|(line, part)| (line, Part { stock: named(part.stock), ..part })).unzip();
    let mut job = Job { parts: parts_read, stock: Vec::new(), saw };
    let parts_mark = parts_mark(&job);
    // Offcuts stand first: what costs nothing is cut first.
    let stock = |(_, stock): (usize, Stock)| Stock { name: named(stock.name), ..stock };
    job.stock.extend(offcuts.good.into_iter().map(stock));
    let (kept, waiting): (Vec<_>, Vec<_>) = inputs.kept.iter().partition(|kept| kept.left_by != parts_mark);
    job.stock.extend(kept.into_iter().filter(|kept| kept.length.is_positive() && kept.width.is_positive()).map(
        |kept| Stock {
            name: named(stock_name(&kept.stock)),
            length: kept.length,
            width: kept.width,
            quantity: Some(1),
            price: None,
            grain: kept.grain,
            offcut: true,
        },
    ));
    let further: Vec<Stock> = sheets.good.into_iter().map(stock).collect();
    if main.quantity != Some(0) {
        job.stock.push(main);
    }
    job.stock.extend(further);
    let marks = [parts.marks, sheets.marks, offcuts.marks].concat();
    Ok(Read { job, lines, marks, waiting: waiting.len(), parts_mark })
}

fn no_parts(marks: &[Mark], problems: &mut Problems) {
    for mark in marks {
        problems.add(format!("parts.{}", mark.line), mark.why.clone());
    }
    if marks.is_empty() {
        let why = "List the parts, one a line: name, length × width × how many, such as Shelf 800 × 330 × 4.";
        problems.add("parts", Problem::Clash { why });
    }
}

/// What the main sheet is called: as the maker says, or by the one name that parts give their stock and no other has.
fn main_name(given: &str, parts: &[(usize, Part)], sheets: &Lines<Stock>, offcuts: &Lines<Stock>) -> String {
    if !given.is_empty() {
        return given.to_owned();
    }
    let known = |name: &str| sheets.good.iter().any(|(_, sheet)| sheet.name == name);
    let names = parts.iter().map(|(_, part)| part.stock.as_str());
    let mut asked: Vec<&str> = names.filter(|name| !name.is_empty() && !known(name)).collect();
    asked.sort_unstable();
    asked.dedup();
    match *asked.as_slice() {
        [one] => one.to_owned(),
        // None asks by name: then an offcut of the main sheet has the one name that stands with the offcuts, if any.
        [] if parts.iter().all(|(_, part)| part.stock.is_empty()) => {
            let mut named: Vec<&str> = offcuts.good.iter().map(|(_, offcut)| offcut.name.as_str()).collect();
            named.retain(|name| !name.is_empty() && !known(name));
            named.dedup();
            if let [one] = *named.as_slice() { one.to_owned() } else { String::new() }
        }
        _ => String::new(),
    }
}

fn main_sheet(inputs: &Inputs, problems: &mut Problems) -> Option<Stock> {
    let length = problems.above_zero("sheet_length", &inputs.sheet_length);
    let width = problems.above_zero("sheet_width", &inputs.sheet_width);
    let quantity = blank_or(&inputs.sheet_count, |figure| sheets_at_hand(figure, problems));
    let price = blank_or(&inputs.sheet_price, |figure| price(figure, problems));
    let name = stock_name(inputs.sheet_name.typed());
    Some(Stock {
        name,
        length: length?,
        width: width?,
        quantity: quantity?,
        price: price?,
        grain: inputs.sheet_grain,
        offcut: false,
    })
}

/// Nothing for a blank figure.
fn blank_or<T>(figure: &Figure, read: impl FnOnce(&Figure) -> Option<T>) -> Option<Option<T>> {
    if figure.is_blank() { Some(None) } else { read(figure).map(Some) }
}

fn sheets_at_hand(figure: &Figure, problems: &mut Problems) -> Option<u32> {
    let count = problems.check("sheet_count", figure.exact(FigureKind::Count))?.numerator();
    if count > MOST {
        let most = Quantity::count(MOST);
        problems.add("sheet_count", Problem::TooLarge { most, why: "leave it blank for as many as are wanted" });
    }
    u32::try_from(count).ok()
}

fn price(figure: &Figure, problems: &mut Problems) -> Option<Ratio> {
    let price = problems.check("sheet_price", figure.exact(FigureKind::Number))?;
    if price.is_negative() {
        problems.add("sheet_price", Problem::BelowZero);
        return None;
    }
    Some(price)
}

fn saw(inputs: &Inputs, main: Option<&Stock>, problems: &mut Problems) -> Option<Saw> {
    let kerf = problems.zero_or_more("kerf", &inputs.kerf);
    if let (Some(kerf), Ok(most)) = (kerf, Length::mm(THICKEST_BLADE, 1))
        && kerf > most
    {
        problems.add("kerf", Problem::TooLarge { most: most.into(), why: "no saw blade takes more" });
    }
    let trim = problems.zero_or_more("trim", &inputs.trim);
    if let (Some(trim), Some(main)) = (trim, main) {
        let shorter = main.length.min(main.width);
        if trim.times(2, 1).is_ok_and(|both| both >= shorter) {
            let most = shorter.times(1, 2).unwrap_or_default();
            problems.add("trim", Problem::TooLarge { most: most.into(), why: "more leaves nothing of the sheet" });
        }
    }
    let length_or = |reading: &Reading, field: &str, problems: &mut Problems| {
        if reading.is_blank() { Some(None) } else { problems.above_zero(field, reading).map(Some) }
    };
    let longest_rip = length_or(&inputs.longest_rip, "longest_rip", problems);
    let least_offcut = length_or(&inputs.least_offcut, "least_offcut", problems);
    Some(Saw {
        kerf: kerf?,
        trim: trim?,
        cuts: inputs.cuts,
        longest_rip: longest_rip?,
        least_offcut: least_offcut?.unwrap_or_default(),
    })
}
