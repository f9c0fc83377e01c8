//! From what the maker gives to the setting of the saw.

use super::passes::{Passes, Setting};
use super::{Against, Answer, Cut, Inputs, Ripped, Verdict, working};
use crate::caution::Caution;
use crate::measure::{Length, Range};
use crate::problem::{Problem, Problems};

/// A blade nearer to the fence than this touches it by the first mistake, in millimetres.
const CLOSE_MM: f64 = 3.0;
/// A strip narrower than this is thin, in millimetres.
const THIN_MM: f64 = 50.0;

/// What was read.
pub(super) struct Given {
    pub(super) thickness: Length,
    pub(super) panel: Range,
    pub(super) fit: Length,
    /// Zero for a rabbet.
    pub(super) distance: Length,
    pub(super) depth: Length,
    pub(super) kerf: Length,
    pub(super) part_width: Option<Length>,
}

/// How the saw is set for a groove or a rabbet.
///
/// # Errors
/// A [`Problem`] for each input that cannot be used: unreadable, at or below zero, a groove as deep as the part is
/// thick or that runs off the other edge, a blade wider than the groove.
pub fn solve(inputs: &Inputs) -> Result<Answer, Problems> {
    let given = read(inputs)?;
    let width = given.panel.nominal().plus(given.fit)?;
    let ends_at = given.distance.plus(width)?;
    let ripped = ripped(&given, ends_at)?;
    let first = match (inputs.against, ripped) {
        (Against::FarEdge, Some(ripped)) => ripped.width,
        (Against::NearEdge | Against::FarEdge, _) => given.distance,
    };
    let setting = Setting { cut: inputs.cut, against: inputs.against, first, width, kerf: given.kerf };
    let Passes { list: passes, shift, overlap } = setting.passes()?;

    let left = given.thickness.minus(given.depth)?;
    let (over, under) = inputs.cut.deepest();
    let deepest = given.thickness.times(over, under)?;
    let play = Range::new(given.fit, given.panel.tolerance())?;
    let verdict = match () {
        () if play.low().is_negative() => Verdict::TooTight,
        () if given.depth > deepest => Verdict::TooDeep,
        () => Verdict::Good,
    };
    let scrap_face = passes.iter().any(|pass| pass.near.as_mm() < CLOSE_MM);
    let working = working::show(inputs, &given, &setting, passes.len(), left, ripped)?;
    Ok(Answer {
        cut: inputs.cut,
        thickness: given.thickness,
        starts_at: given.distance,
        width,
        ends_at,
        depth: given.depth,
        left,
        deepest,
        play,
        kerf: given.kerf,
        against: inputs.against,
        passes,
        shift,
        overlap,
        scrap_face,
        ripped,
        verdict,
        working,
        cautions: cautions(scrap_face, ripped),
    })
}

fn read(inputs: &Inputs) -> Result<Given, Problems> {
    let mut problems = Problems::default();
    let thickness = problems.above_zero("thickness", &inputs.thickness);
    let panel = problems.check("panel", inputs.panel.range()).filter(|panel| {
        let there = panel.low().is_positive();
        if !there {
            problems.add("panel", Problem::NotAboveZero);
        }
        there
    });
    let fit = problems.zero_or_more("fit", &inputs.fit);
    let distance = match inputs.cut {
        Cut::Groove => problems.above_zero("distance", &inputs.distance),
        Cut::Rabbet => Some(Length::ZERO),
    };
    let depth = match inputs.deep.share() {
        Some((over, under)) => match thickness {
            Some(thickness) => problems.check("thickness", thickness.times(over, under)),
            None => None,
        },
        None => problems.above_zero("depth", &inputs.depth),
    };
    if let (Some(thickness), Some(depth)) = (thickness, depth)
        && depth >= thickness
    {
        let why = "The blade would come through: make it less deep than the part is thick.";
        problems.add("depth", Problem::Clash { why });
    }
    let kerf = problems.above_zero("kerf", &inputs.kerf);
    let part_width = if inputs.part_width.is_blank() {
        if inputs.against == Against::FarEdge {
            let why = "Give the width of the part: its opposite edge runs along the fence.";
            problems.add("part_width", Problem::Clash { why });
        }
        Some(None)
    } else {
        problems.above_zero("part_width", &inputs.part_width).map(Some)
    };
    let given = (|| {
        Some(Given {
            thickness: thickness?,
            panel: panel?,
            fit: fit?,
            distance: distance?,
            depth: depth?,
            kerf: kerf?,
            part_width: part_width?,
        })
    })();
    given.filter(|_| problems.is_empty()).ok_or(problems)
}

/// `b = W − s − G`, where the part is wide enough.
fn ripped(given: &Given, ends_at: Length) -> Result<Option<Ripped>, Problems> {
    let Some(part_width) = given.part_width else { return Ok(None) };
    let width = part_width.minus(ends_at)?;
    if width.is_positive() {
        return Ok(Some(Ripped { width, off: ends_at }));
    }
    let why = "a part of that width ends before the far wall, so it must be wider";
    Err(Problems::one("part_width", Problem::TooSmall { least: ends_at.into(), why }))
}

fn cautions(scrap_face: bool, ripped: Option<Ripped>) -> Vec<Caution> {
    let applies = [
        (true, Caution::BlindCut),
        (scrap_face, Caution::BladeAtFence),
        (ripped.is_some_and(|ripped| ripped.off.as_mm() < THIN_MM), Caution::ThinStrip),
        (true, Caution::DustAndNoise),
    ];
    applies.into_iter().filter_map(|(applies, caution)| applies.then_some(caution)).collect()
}
