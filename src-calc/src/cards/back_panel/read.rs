//! Reading what the maker gave, field by field.

use super::pieces::Scrap;
use super::{Division, Edge, Inputs, Way};
use crate::measure::{Figure, FigureKind, Length, Quantity, Range, Reading};
use crate::problem::{Problem, Problems};

/// More pieces than anybody makes a back of.
const MOST_PIECES: f64 = 50.0;
/// No sheet of wood moves more than this, in per cent.
const MOST_STRAIN: f64 = 5.0;

/// The clear width or height, more than zero whatever the ±.
pub(super) fn opening(problems: &mut Problems, field: &str, reading: &Reading) -> Option<Range> {
    let range = problems.check(field, reading.range())?;
    problems.check(field, if range.low().is_positive() { Ok(range) } else { Err(Problem::NotAboveZero) })
}

/// The edge's reach past the face of the opening: below zero where it is held short.
pub(super) fn edge(problems: &mut Problems, field: &str, edge: &Edge) -> Option<(Way, Range)> {
    let depth = problems.check(field, edge.depth.range())?;
    if depth.low().is_negative() {
        problems.add(field, Problem::BelowZero);
        return None;
    }
    if edge.way.is_housed() && depth.low().is_zero() {
        problems.add(field, Problem::NotAboveZero);
        return None;
    }
    let reach = if edge.way == Way::HeldShort {
        problems.check(field, Range::exact(Length::ZERO).minus(depth))?
    } else {
        depth
    };
    Some((edge.way, reach))
}

/// How far the sheet grows.
#[derive(Clone, Copy)]
pub(super) struct Growth {
    /// In per cent, over the whole swing.
    pub(super) percent: f64,
    /// The swing, in points of relative humidity, where it was reckoned from one.
    pub(super) swing: Option<f64>,
}

pub(super) fn growth(problems: &mut Problems, inputs: &Inputs) -> Option<Growth> {
    let Some(movement) = inputs.sheet.movement() else {
        let why = "no sheet of wood moves more with the humidity";
        let percent = percentage(problems, "strain", &inputs.strain, MOST_STRAIN, why)?;
        return Some(Growth { percent, swing: None });
    };
    let swing = percentage(problems, "swing", &inputs.swing, 100.0, "the air holds no more than 100 %")?;
    Some(Growth { percent: movement.over(swing), swing: Some(swing) })
}

fn percentage(problems: &mut Problems, field: &str, figure: &Figure, most: f64, why: &'static str) -> Option<f64> {
    let value = problems.check(field, figure.value(FigureKind::Percent))?;
    if value < 0.0 {
        problems.add(field, Problem::BelowZero);
    } else if value > most {
        problems.add(field, Problem::TooLarge { most: Quantity::percent(most), why });
    } else {
        return Some(value);
    }
    None
}

/// How the back is divided, read.
pub(super) enum Cut {
    Equal(u32),
    Scraps { scraps: Vec<Scrap>, least: Length },
}

pub(super) fn cut(problems: &mut Problems, inputs: &Inputs) -> Option<Cut> {
    match inputs.division {
        Division::Whole => Some(Cut::Equal(1)),
        Division::Equal => {
            let count = problems.check("count", inputs.count.value(FigureKind::Count))?;
            if count < 1.0 {
                problems.add("count", Problem::NotAboveZero);
                None
            } else if count > MOST_PIECES {
                problems.add("count", too_many_pieces());
                None
            } else {
                // Between 1 and 50: found rather than cast.
                (1..=50_u32).find(|whole| f64::from(*whole) >= count).map(Cut::Equal)
            }
        }
        Division::Scraps => {
            let least = problems.zero_or_more("least_piece", &inputs.least_piece);
            let scraps: Vec<Option<Scrap>> = inputs
                .scraps
                .iter()
                .enumerate()
                .filter(|(_, reading)| !reading.is_blank())
                .map(|(index, reading)| {
                    let width = problems.above_zero(format!("scraps.{index}"), reading)?;
                    Some(Scrap { index, width })
                })
                .collect();
            if scraps.is_empty() {
                problems.add("scraps", Problem::Clash { why: "Give the width of at least one scrap." });
                return None;
            }
            if scraps.len() > 50 {
                problems.add("scraps", too_many_pieces());
                return None;
            }
            Some(Cut::Scraps { scraps: scraps.into_iter().collect::<Option<_>>()?, least: least? })
        }
    }
}

fn too_many_pieces() -> Problem {
    Problem::TooLarge { most: Quantity::count(50), why: "a back of more pieces is no back" }
}

/// Both diagonals, or neither.
#[allow(clippy::option_option, reason = "not measured is an answer, unreadable is none")]
pub(super) fn diagonals(problems: &mut Problems, inputs: &Inputs) -> Option<Option<(Length, Length)>> {
    let (first, second) = (&inputs.first_diagonal, &inputs.second_diagonal);
    match (first.is_blank(), second.is_blank()) {
        (true, true) => Some(None),
        (false, false) => {
            let (first, second) =
                (problems.above_zero("first_diagonal", first), problems.above_zero("second_diagonal", second));
            Some(Some((first?, second?)))
        }
        (blank, _) => {
            let field = if blank { "first_diagonal" } else { "second_diagonal" };
            problems.add(field, Problem::Clash { why: "Give both diagonals, or neither." });
            None
        }
    }
}
