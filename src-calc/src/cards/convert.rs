//! Convert: any reading on the marks of every tool.

use crate::caution::Caution;
use crate::measure::{Graduation, Length, LengthError, Quantity, ReadError, Reading, Rounded, Rounding};
use crate::problem::{Problem, Problems};
use crate::source::Source;
use crate::stock::sheets::{SoldAs, sold_as};
use crate::working::Working;
use serde::{Deserialize, Serialize, Serializer};

#[cfg(test)]
mod tests;

/// The most readings in one list.
pub const MOST_READINGS: usize = 200;

/// The marks of the ladder, metric first, coarse to fine.
const LADDER: [Graduation; 7] = [
    Graduation::Mm,
    Graduation::HalfMm,
    Graduation::TenthMm,
    Graduation::Eighth,
    Graduation::Sixteenth,
    Graduation::ThirtySecond,
    Graduation::SixtyFourth,
];

const INCH: Source = Source::published("1 in = 25.4 mm exactly (international yard and pound agreement of 1959)");

/// What is to be converted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inputs {
    /// Readings, one a line as in a pasted list. Blank ones are passed over.
    pub readings: Vec<Reading>,
    /// The finest mark of the tool in hand.
    pub graduation: Graduation,
    /// Which mark to take on that tool.
    pub rounding: Rounding,
}

/// The board, the gap, the shelf and the door of a potting-shed cupboard.
impl Default for Inputs {
    fn default() -> Self {
        Self {
            readings: ["15 mm", "23 5/8 in", "600 - 2*15", "2' 3 1/2\""].map(Reading::mm).to_vec(),
            graduation: Graduation::Sixteenth,
            rounding: Rounding::Nearest,
        }
    }
}

/// Every reading on the marks.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// One for each reading that is not blank, in their order.
    pub lines: Vec<LineOutcome>,
    /// How the first line was rounded, and what it is sold as.
    pub working: Working,
    /// None: converting cuts nothing.
    pub cautions: Vec<Caution>,
}

/// What became of one reading. One that cannot be read does not hide the others.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LineOutcome {
    /// It was read.
    Read(Box<Line>),
    /// It was not.
    Refused {
        /// Which of the inputs' readings it is, from zero.
        index: usize,
        /// Why. In JSON the sentence.
        #[serde(serialize_with = "sentence")]
        problem: Problem,
    },
}

impl LineOutcome {
    /// Which of the inputs' readings it is, from zero.
    pub fn index(&self) -> usize {
        match self {
            Self::Read(line) => line.index,
            Self::Refused { index, .. } => *index,
        }
    }

    /// The line, if it was read.
    pub fn line(&self) -> Option<&Line> {
        match self {
            Self::Read(line) => Some(line),
            Self::Refused { .. } => None,
        }
    }
}

/// One reading on the marks of every tool.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Line {
    /// Which of the inputs' readings it is, from zero.
    pub index: usize,
    /// The reading, exactly.
    pub length: Length,
    /// On the tool in hand, in the way that was asked for.
    pub chosen: Rounded,
    /// The last mark of the tool in hand that lies below the reading.
    pub below: Length,
    /// The first mark of the tool in hand that lies above the reading.
    pub above: Length,
    /// To the nearest 1, 0.5, 0.1 mm, 1/8, 1/16, 1/32, 1/64 in, in this order.
    pub ladder: Vec<Rounded>,
    /// In decimal inches, to the nearest ten-thousandth.
    pub decimal_inches: DecimalInches,
    /// For feet and inches: on the tool in hand if its marks are in inches, else to the nearest 1/64 in.
    pub feet_inches: Rounded,
    /// What a sheet of this thickness is sold as, if it is a usual one.
    pub sold_as: Option<SoldAs>,
}

/// Inches with four decimals.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct DecimalInches {
    /// Such as `0.5906`.
    pub text: String,
    /// Whether the text is the whole length.
    pub exact: bool,
}

/// Puts every reading on the marks.
///
/// # Errors
/// When not a single reading can be read, a problem for each (`readings.0`), or for `readings` when all are blank;
/// and for `readings` when there are more than [`MOST_READINGS`]. As long as one can be read, the others are told of
/// in the answer, as [`LineOutcome::Refused`].
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let written = || inputs.readings.iter().enumerate().filter(|(_, reading)| !reading.is_blank());
    if written().count() > MOST_READINGS {
        let most = Quantity::count(MOST_READINGS as u64);
        return Err(Problems::one("readings", Problem::TooLarge { most, why: "paste a longer list in parts" }));
    }
    let lines: Vec<_> = written()
        .map(|(index, reading)| match line(index, reading, inputs) {
            Ok(line) => LineOutcome::Read(Box::new(line)),
            Err(problem) => LineOutcome::Refused { index, problem },
        })
        .collect();
    let Some(first) = lines.iter().find_map(LineOutcome::line) else { return Err(refused(&lines)) };
    Ok(Answer { working: working(first, inputs.rounding), lines, cautions: Vec::new() })
}

fn refused(lines: &[LineOutcome]) -> Problems {
    let mut problems = Problems::default();
    for line in lines {
        if let LineOutcome::Refused { index, problem } = line {
            problems.add(format!("readings.{index}"), problem.clone());
        }
    }
    if problems.is_empty() {
        problems.add("readings", ReadError::Empty);
    }
    problems
}

fn line(index: usize, reading: &Reading, inputs: &Inputs) -> Result<Line, Problem> {
    let Inputs { graduation, rounding, .. } = *inputs;
    let length = reading.length()?;
    let chosen = graduation.round(length, rounding)?;
    let step = graduation.step();
    let under = graduation.round(length, Rounding::NotOver)?.value;
    let below = if under == length { under.minus(step)? } else { under };
    let above = under.plus(step)?;
    let ladder = LADDER.iter().map(|marks| marks.round(length, Rounding::Nearest)).collect::<Result<Vec<_>, _>>()?;
    let feet_inches = match graduation {
        Graduation::Mm | Graduation::HalfMm | Graduation::TenthMm => {
            Graduation::SixtyFourth.round(length, Rounding::Nearest)?
        }
        _ => chosen,
    };
    let (decimal_inches, sold_as) = (decimal_inches(length)?, sold_as(length)?);
    Ok(Line { index, length, chosen, below, above, ladder, decimal_inches, feet_inches, sold_as })
}

fn decimal_inches(length: Length) -> Result<DecimalInches, LengthError> {
    let parts = length.ratio(Length::inches(1, 10_000)?)?;
    let nearest = parts.nearest()?;
    let (whole, rest) = (nearest.unsigned_abs() / 10_000, nearest.unsigned_abs() % 10_000);
    let minus = if nearest < 0 { "-" } else { "" };
    Ok(DecimalInches { text: format!("{minus}{whole}.{rest:04}"), exact: parts.denominator() == 1 })
}

fn working(line: &Line, rounding: Rounding) -> Working {
    let mut working = Working::default();
    let formula = match rounding {
        Rounding::Nearest => "v = (x / g, to the nearest whole number) × g",
        Rounding::NotOver => "v = (x / g, to the whole number not above) × g",
        Rounding::NotUnder => "v = (x / g, to the whole number not below) × g",
    };
    let Line { length, chosen, .. } = line;
    let step = chosen.graduation.step();
    working.step("On the tool in hand", formula, [("x", (*length).into()), ("g", step.into())], chosen.value, INCH);
    let given = [("v", chosen.value.into()), ("x", (*length).into())];
    working.step("What the mark is over", "e = v − x", given, chosen.error, INCH);
    if let Some(sold) = &line.sold_as {
        let given = [("x", (*length).into()), ("N", sold.name.into())];
        working.step("What the sheet is over its name", "d = x − N", given, sold.difference, sold.source);
    }
    working
}

fn sentence<S: Serializer>(problem: &Problem, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(problem)
}

/// The card for anything that speaks JSON.
pub const CARD: super::Card =
    super::Card { slug: "convert", demo: super::demo::<Inputs>, ask: |inputs| super::ask(solve, inputs) };
