//! From what was typed to lengths, with every problem named.

use super::inputs::{Biscuit, Inputs, Kind, Meeting};
use crate::measure::{FigureKind, Length, LengthError, Quantity, Reading};
use crate::problem::{Problem, Problems};
use crate::stock::joints::{self, Usual};

/// The most joints along an edge.
pub(super) const MOST: i64 = 100;

/// What a joint is made with, as typed.
pub(super) enum Made {
    Dowel { diameter: Length, length: Length },
    Tenon { thickness: Length, width: Length, length: Length },
    Biscuit { size: Biscuit, cutter: Length },
    Connecting { length: Option<Length>, core: Length, shank: Length },
    Pocket { length: Option<Length>, shoulder: Option<Length> },
}

impl Made {
    /// Whether its thickness goes by the thickness of the board.
    pub(super) const fn is_round_or_tenon(&self) -> bool {
        matches!(self, Self::Dowel { .. } | Self::Tenon { .. })
    }
}

/// The inputs, read. Every length is what its field says; a blank one that has a usual value has that.
pub(super) struct Read {
    pub(super) length: Length,
    pub(super) edge: Length,
    /// None where the edge part meets an edge.
    pub(super) face: Option<Length>,
    pub(super) from_end: Length,
    pub(super) line: Length,
    pub(super) first: Length,
    pub(super) other_end: Length,
    pub(super) every: Length,
    pub(super) count: Option<i64>,
    pub(super) skin: Length,
    pub(super) face_depth: Option<Length>,
    pub(super) glue: Length,
    pub(super) made: Made,
    pub(super) usual: Usual,
}

pub(super) const fn usual(kind: Kind) -> Usual {
    match kind {
        Kind::Dowel => joints::DOWEL,
        Kind::LooseTenon => joints::TENON,
        Kind::Biscuit => joints::BISCUIT,
        Kind::ConnectingScrew => joints::CONNECTING,
        Kind::PocketScrew => joints::POCKET,
    }
}

/// A length above zero where something is typed.
fn if_typed(problems: &mut Problems, field: &'static str, reading: &Reading) -> Option<Option<Length>> {
    if reading.is_blank() { Some(None) } else { problems.above_zero(field, reading).map(Some) }
}

/// A length above zero, or so many millimetres where nothing is typed.
fn or_usual(problems: &mut Problems, field: &'static str, reading: &Reading, mm: i64) -> Option<Length> {
    match if_typed(problems, field, reading)? {
        Some(length) => Some(length),
        None => problems.check(field, Length::mm(mm, 1)),
    }
}

impl Inputs {
    fn count(&self, problems: &mut Problems) -> Option<Option<i64>> {
        if self.count.is_blank() {
            return Some(None);
        }
        let count = problems.check("count", self.count.value(FigureKind::Count))?;
        if count < 1.0 {
            problems.add("count", Problem::NotAboveZero);
            return None;
        }
        // Between 1 and the most: found rather than cast.
        let found = (1..=100_i32).find(|whole| f64::from(*whole) >= count).map(i64::from);
        if found.is_none() {
            problems.add("count", Problem::TooLarge { most: Quantity::count(100), why: "no edge has more" });
        }
        found.map(Some)
    }

    fn made(&self, problems: &mut Problems) -> Option<Made> {
        Some(match self.kind {
            Kind::Dowel => {
                let diameter = problems.above_zero("dowel_diameter", &self.dowel_diameter);
                let length = problems.above_zero("dowel_length", &self.dowel_length);
                Made::Dowel { diameter: diameter?, length: length? }
            }
            Kind::LooseTenon => {
                let thickness = problems.above_zero("tenon_thickness", &self.tenon_thickness);
                let width = problems.above_zero("tenon_width", &self.tenon_width);
                let length = problems.above_zero("tenon_length", &self.tenon_length);
                if thickness.zip(width).is_some_and(|(thickness, width)| width < thickness) {
                    let why = "A tenon lies flat along the joint: its width is at least its thickness.";
                    problems.add("tenon_width", Problem::Clash { why });
                }
                Made::Tenon { thickness: thickness?, width: width?, length: length? }
            }
            Kind::Biscuit => Made::Biscuit { size: self.biscuit, cutter: problems.above_zero("cutter", &self.cutter)? },
            Kind::ConnectingScrew => {
                let length = if_typed(problems, "screw_length", &self.screw_length);
                let core = problems.above_zero("core", &self.core);
                let shank = problems.above_zero("shank", &self.shank);
                if core.zip(shank).is_some_and(|(core, shank)| shank < core) {
                    let why = "The hole for the shank is at least as wide as the one for the thread.";
                    problems.add("shank", Problem::Clash { why });
                }
                Made::Connecting { length: length?, core: core?, shank: shank? }
            }
            Kind::PocketScrew => {
                let length = if_typed(problems, "screw_length", &self.screw_length);
                let shoulder = if_typed(problems, "shoulder", &self.shoulder);
                Made::Pocket { length: length?, shoulder: shoulder? }
            }
        })
    }

    /// The middle of the joint from the outer face.
    fn line(&self, problems: &mut Problems, edge: Option<Length>) -> Option<Length> {
        if self.kind == Kind::PocketScrew || self.line.is_blank() {
            return problems.check("edge_thickness", edge?.times(1, 2));
        }
        problems.above_zero("line", &self.line)
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let usual = usual(self.kind);
        if self.kind == Kind::ConnectingScrew && self.meeting == Meeting::Edge {
            let why = "A connecting screw goes through a face part into an edge: choose a face, or another joint.";
            problems.add("meeting", Problem::Clash { why });
        }
        let length = problems.above_zero("length", &self.length);
        let edge = problems.above_zero("edge_thickness", &self.edge_thickness);
        let (face, from_end) = match self.meeting {
            Meeting::Face => (
                problems.above_zero("face_thickness", &self.face_thickness).map(Some),
                problems.zero_or_more("from_end", &self.from_end),
            ),
            Meeting::Edge => (Some(None), Some(Length::ZERO)),
        };
        let line = self.line(&mut problems, edge);
        let first = or_usual(&mut problems, "end_distance", &self.end_distance, usual.end_mm);
        let other_end =
            if self.other_end.is_blank() { first } else { problems.above_zero("other_end", &self.other_end) };
        let every = or_usual(&mut problems, "spacing", &self.spacing, usual.every_mm);
        let count = self.count(&mut problems);
        let skin = problems.zero_or_more("skin", &self.skin);
        let with_depth = !self.kind.is_screw();
        let face_depth = if with_depth { if_typed(&mut problems, "face_depth", &self.face_depth) } else { Some(None) };
        let with_glue = self.kind != Kind::PocketScrew;
        let glue = if with_glue { problems.zero_or_more("glue", &self.glue) } else { Some(Length::ZERO) };
        let made = self.made(&mut problems);
        let between = |first: Length, other: Length, length: Length| -> Result<bool, LengthError> {
            Ok(length.minus(first)?.minus(other)?.is_negative())
        };
        if let (Some(first), Some(other), Some(length)) = (first, other_end, length)
            && problems.check("", between(first, other, length)).unwrap_or_default()
        {
            let why = "The distances from both ends pass each other: the joint is too short for them.";
            problems.add("end_distance", Problem::Clash { why });
        }
        let read = (|| {
            Some(Read {
                length: length?,
                edge: edge?,
                face: face?,
                from_end: from_end?,
                line: line?,
                first: first?,
                other_end: other_end?,
                every: every?,
                count: count?,
                skin: skin?,
                face_depth: face_depth?,
                glue: glue?,
                made: made?,
                usual,
            })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }
}
