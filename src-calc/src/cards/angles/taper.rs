//! A taper along a piece: how far the jig is opened.

use super::{Edges, Inputs};
use crate::measure::{Length, Quantity};
use crate::problem::{Problem, Problems};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;
use serde::Serialize;

const JIG: Source = Source::practice(
    "plane geometry: the opening is the chord between the arms; on the second pass the edge at the jig is tapered already, so the angle is twice as large",
);

/// A taper, and the jig for it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Taper {
    /// Along the piece.
    pub length: Length,
    /// Width where it begins.
    pub wide: Length,
    /// Width where it ends.
    pub narrow: Length,
    /// Which edges are tapered.
    pub edges: Edges,
    /// What comes off a tapered edge at the narrow end.
    pub offset: Length,
    /// Between the tapered edge and the line along the piece, in degrees: 0 is a cut parallel to the fence.
    pub degrees: f64,
    /// Opening of the jig, from arm to arm, in millimetres.
    pub opening_mm: f64,
    /// The jig's angle when the second edge is cut with the first one against it, in degrees.
    pub second_degrees: Option<f64>,
    /// Opening of the jig for that, in millimetres.
    pub second_opening_mm: Option<f64>,
    /// The tapered edge itself, in millimetres.
    pub edge_mm: f64,
}

impl Taper {
    /// `α = arctan(c / l)`, with `c` the whole difference of the widths for one edge and half of it for both.
    pub(super) fn solve(inputs: &Inputs, working: &mut Working) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let length = problems.above_zero("taper_length", &inputs.taper_length);
        let wide = problems.above_zero("wide", &inputs.wide);
        let narrow = problems.zero_or_more("narrow", &inputs.narrow);
        if let (Some(wide), Some(narrow)) = (wide, narrow)
            && narrow >= wide
        {
            let why = "The narrow end has to be narrower than the wide one.";
            problems.add("narrow", Problem::Clash { why });
        }
        let arm = problems.above_zero("jig_arm", &inputs.jig_arm);
        let (Some(length), Some(wide), Some(narrow), Some(arm)) = (length, wide, narrow, arm) else {
            return Err(problems);
        };
        if !problems.is_empty() {
            return Err(problems);
        }
        let both = inputs.edges == Edges::Both;
        let difference = wide.minus(narrow)?;
        let offset = if both { difference.times(1, 2)? } else { difference };
        let angle = offset.as_mm().atan2(length.as_mm());
        let opening_mm = |angle: f64| 2.0 * arm.as_mm() * (angle / 2.0).sin();
        let second = both.then_some(2.0 * angle);
        let taper = Self {
            length,
            wide,
            narrow,
            edges: inputs.edges,
            offset,
            degrees: angle.to_degrees(),
            opening_mm: opening_mm(angle),
            second_degrees: second.map(f64::to_degrees),
            second_opening_mm: second.map(opening_mm),
            edge_mm: offset.as_mm().hypot(length.as_mm()),
        };
        taper.show(working, arm);
        Ok(taper)
    }

    fn show(&self, working: &mut Working, arm: Length) {
        let formula = if self.edges == Edges::Both { "c = (b − s) / 2" } else { "c = b − s" };
        let widths = [("b", self.wide.into()), ("s", self.narrow.into())];
        working.step("What comes off at the narrow end", formula, widths, self.offset, GEOMETRY);
        let along = [("c", self.offset.into()), ("l", self.length.into())];
        let angle = ("α", Quantity::degrees(self.degrees));
        working.step("Taper", "α = arctan(c / l)", along, angle.1, GEOMETRY);
        working.step("The tapered edge", "e = √(c² + l²)", along, Quantity::mm(self.edge_mm), GEOMETRY);
        let arm = ("j", Quantity::from(arm));
        let opening = Quantity::mm(self.opening_mm);
        working.step("Opening of the jig", "o = 2 × j × sin(α / 2)", [arm, angle], opening, JIG);
        if let Some(second_mm) = self.second_opening_mm {
            let second = Quantity::mm(second_mm);
            working.step("Opening for the second edge", "o = 2 × j × sin(α)", [arm, angle], second, JIG);
        }
    }
}
