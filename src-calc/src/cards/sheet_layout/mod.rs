//! Sheet layout: the parts on the fewest sheets, and the order of the cuts.
//!
//! Sizes and money are exact; areas and the yield are estimates, for show. What is found here at once is made better by
//! [`Further`], for as long as somebody waits.

mod cells;
mod figures;
mod found;
mod further;
mod inputs;
mod lines;
mod read;
mod rows;
mod steps;

pub use figures::{Figures, InARow};
pub use found::Found;
pub use further::Further;
pub use inputs::{Inputs, Kept};
pub use lines::{List, Mark};

use super::Card;
use crate::caution::Caution;
use crate::measure::{Length, LengthError};
use crate::problem::{Problem, Problems};
use crate::sheets::{Job, Layout, Search};
use crate::working::Working;
use serde::Serialize;
use std::sync::Arc;

/// Every search of a job takes the same way.
const SEED: u64 = 1;
/// So many tries before the first answer; none for a long list, whose first layout takes as long as they.
const FIRST_TRIES: u32 = 16;
const LONG: u32 = 100;

/// A part as it was read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Wanted {
    /// What the maker calls it.
    pub name: String,
    /// Its first measure.
    pub length: Length,
    /// Its second measure.
    pub width: Length,
    /// How often it is wanted.
    pub quantity: u32,
    /// The line that it stands on, from nought.
    pub line: usize,
}

/// A part that lies on no sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LeftOut {
    /// What the maker calls it.
    pub name: String,
    /// How many of it.
    pub count: u32,
    /// Why, and what would help.
    pub why: String,
}

/// The parts on sheets.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// The parts, in the order of their lines; a layout names them by their place here.
    pub parts: Vec<Wanted>,
    /// Where everything lies, and the order of the cuts.
    #[serde(serialize_with = "whole")]
    pub layout: Arc<Layout>,
    /// What it comes to.
    pub figures: Figures,
    /// No layout has fewer sheets.
    pub bound: usize,
    /// Whether nothing better is to be found.
    pub done: bool,
    /// Lines that are left out, and why.
    pub marks: Vec<Mark>,
    /// Parts that lie on no sheet, and why.
    pub left_out: Vec<LeftOut>,
    /// How many offcuts of this very list of parts are put by.
    pub waiting: usize,
    /// The mark of the list of parts, which an offcut of it carries.
    pub parts_mark: String,
    /// The mark of the layout, which ticks of its cuts carry.
    pub layout_mark: String,
    /// How it was worked out.
    pub working: Working,
    /// What to mind.
    pub cautions: Vec<Caution>,
    /// What was laid out.
    #[serde(skip)]
    pub job: Arc<Job>,
    #[serde(skip)]
    job_mark: String,
}

fn whole<S: serde::Serializer>(layout: &Arc<Layout>, serializer: S) -> Result<S::Ok, S::Error> {
    layout.serialize(serializer)
}

/// A layout with what is known of it.
struct Known {
    layout: Arc<Layout>,
    bound: usize,
    done: bool,
}

/// Lays the parts out: as was found before for the same job, or as is found in a few tries.
///
/// # Errors
/// A problem for each field that cannot be used, and for each line of the parts where not one can be read.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let read = read::read(inputs)?;
    let job_mark = found::job_mark(&read.job);
    let known = match &inputs.found {
        Some(found) if found.job == job_mark => {
            Known { layout: found.layout.clone(), bound: found.bound, done: found.done }
        }
        _ => first(&read.job)?,
    };
    let job = Arc::new(read.job);
    let parts: Vec<Wanted> = job
        .parts
        .iter()
        .zip(&read.lines)
        .map(|(part, line)| Wanted {
            name: part.name.clone(),
            length: part.length,
            width: part.width,
            quantity: part.quantity,
            line: *line,
        })
        .collect();
    let answer = Answer {
        parts,
        layout: Arc::default(),
        figures: Figures::default(),
        bound: 0,
        done: false,
        marks: read.marks,
        left_out: Vec::new(),
        waiting: read.waiting,
        parts_mark: read.parts_mark,
        layout_mark: String::new(),
        working: Working::default(),
        cautions: Vec::new(),
        job,
        job_mark,
    };
    Ok(answer.with(known)?)
}

fn first(job: &Job) -> Result<Known, Problems> {
    let mut search = Search::new(job, SEED).map_err(|error| Problems::one("parts", Problem::Sheets(error)))?;
    let pieces = job.parts.iter().fold(0_u32, |sum, part| sum.saturating_add(part.quantity));
    search.step(if pieces > LONG { 0 } else { FIRST_TRIES });
    let progress = search.progress();
    let layout = Arc::new(without_price(search.layout()?));
    Ok(Known { layout, bound: progress.bound, done: progress.done })
}

/// What a layout costs follows from its sheets and is not kept with it.
fn without_price(layout: Layout) -> Layout {
    Layout { price: None, ..layout }
}

impl Answer {
    /// The same job in another layout.
    fn with(self, known: Known) -> Result<Self, LengthError> {
        let Known { layout, bound, done } = known;
        let figures = Figures::of(&self.job, &layout)?;
        let name = |part: usize| self.parts.get(part).map(|part| part.name.clone()).unwrap_or_default();
        let left_out = layout
            .unplaced
            .iter()
            .map(|left| LeftOut { name: name(left.part), count: left.count, why: left.why.to_string() })
            .collect();
        let working = steps::working(&self.job, &layout, &figures, bound)?;
        let cautions = cautions(&self.job, &layout);
        let layout_mark = found::layout_mark(&layout);
        Ok(Self { layout, figures, bound, done, left_out, layout_mark, working, cautions, ..self })
    }

    /// How many sheets are used that are not offcuts, and how many that are.
    pub fn sheets(&self) -> (u32, u32) {
        let offcut = |stock: usize| self.job.stock.get(stock).is_some_and(|stock| stock.offcut);
        let count = |wanted: bool| self.layout.sheets.iter().filter(|sheet| offcut(sheet.stock) == wanted).count();
        (u32::try_from(count(false)).unwrap_or(u32::MAX), u32::try_from(count(true)).unwrap_or(u32::MAX))
    }

    /// The offcuts of the layout that are worth keeping, as stock for another list of parts.
    pub fn offcuts(&self) -> Vec<Kept> {
        let of_sheet = |sheet: &crate::sheets::Sheet| {
            let stock = self.job.stock.get(sheet.stock);
            let (name, grain) = stock.map(|stock| (stock.name.clone(), stock.grain)).unwrap_or_default();
            let kept = sheet.left.iter().filter(|left| left.keep).map(|left| Kept {
                stock: name.clone(),
                length: left.area.length,
                width: left.area.width,
                grain,
                left_by: self.parts_mark.clone(),
            });
            kept.collect::<Vec<_>>()
        };
        self.layout.sheets.iter().flat_map(of_sheet).collect()
    }
}

/// A part shorter than this is not held by hand at the saw, and a narrower one is a thin strip; in millimetres.
const SHORT: i64 = 300;
const THIN: i64 = 50;

fn cautions(job: &Job, layout: &Layout) -> Vec<Caution> {
    let whole = layout.sheets.iter().any(|sheet| job.stock.get(sheet.stock).is_some_and(|stock| !stock.offcut));
    let under = |mm: i64, longer: bool| {
        let limit = Length::mm(mm, 1).unwrap_or_default();
        let size = |area: &crate::sheets::Area| {
            if longer { area.length.max(area.width) } else { area.length.min(area.width) }
        };
        layout.sheets.iter().flat_map(|sheet| &sheet.parts).any(|placed| size(&placed.area) < limit)
    };
    let applies = [
        (whole, Caution::SheetHandling),
        (under(SHORT, true), Caution::SmallPartAtSaw),
        (under(THIN, false), Caution::ThinStrip),
        (!layout.sheets.is_empty(), Caution::DustAndNoise),
    ];
    applies.into_iter().filter_map(|(applies, caution)| applies.then_some(caution)).collect()
}

/// The card.
pub const CARD: Card =
    Card { slug: "sheet-layout", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };

#[cfg(test)]
mod tests;
