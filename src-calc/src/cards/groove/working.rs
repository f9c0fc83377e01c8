//! The working of a groove, line by line.

use super::passes::Setting;
use super::solved::Given;
use super::{Against, Inputs, Ripped};
use crate::measure::{Length, LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const FIT: Source =
    Source::practice("a groove is cut to the measured panel, not to its name, and 0.1 to 0.3 mm (about 1/64 in) wider");
const DEPTH: Source = Source::practice(
    "a third to a half of the thickness for a groove, half to two thirds for the rabbet of a back; an upright blade stands as high as the cut is deep",
);
const PASSES: Source = Source::practice(
    "plane geometry: so few passes that each moves the fence by no more than a kerf, and all by the same",
);
const FENCE: Source =
    Source::practice("plane geometry: from the fence to the side of the blade that faces it, at the table");
const RIPPED: Source =
    Source::practice("plane geometry: nothing of the part may stand behind the wall that the back's face lies at");

/// Every line, in the order in which a person would do it.
pub(super) fn show(
    inputs: &Inputs,
    given: &Given,
    setting: &Setting,
    passes: usize,
    left: Length,
    ripped: Option<Ripped>,
) -> Result<Working, LengthError> {
    let mut working = Working::default();
    let length = |length: Length| Quantity::from(length);
    working.step(
        "Width",
        "G = p + f",
        [("p", length(given.panel.nominal())), ("f", length(given.fit))],
        setting.width,
        FIT,
    );
    let thickness = ("t", length(given.thickness));
    match inputs.deep.share() {
        Some((over, under)) => {
            let share = [("r", over), ("u", i64::try_from(under).unwrap_or(1))];
            let [over, under] = share.map(|(symbol, whole)| (symbol, Quantity::count(whole.unsigned_abs())));
            working.step("Depth", "d = t × r / u", [thickness, over, under], given.depth, DEPTH);
        }
        None => working.step("Depth", "d", [], given.depth, Source::practice("as given")),
    }
    working.step("Wood left under it", "l = t − d", [thickness, ("d", length(given.depth))], left, GEOMETRY);
    let passes = u64::try_from(passes).unwrap_or(u64::MAX);
    let (width, kerf) = (("G", length(setting.width)), ("k", length(given.kerf)));
    working.step("Passes", "n = ceil(G / k)", [width, kerf], Quantity::count(passes), PASSES);
    let spare = setting.width.minus(given.kerf)?;
    if let Some(gaps) = passes.checked_sub(1).filter(|gaps| *gaps > 0) {
        working.step(
            "Fence moves between passes",
            "m = (G − k) / (n − 1)",
            [width, kerf, ("n", Quantity::count(passes))],
            spare.times(1, gaps)?,
            PASSES,
        );
    }
    let distance = ("s", length(given.distance));
    if let (Against::FarEdge, Some(part_width)) = (inputs.against, given.part_width) {
        working.step(
            "Fence to the nearer wall",
            "a = W − s − G",
            [("W", length(part_width)), distance, width],
            setting.first,
            FENCE,
        );
    } else {
        working.step("Fence to the nearer wall", "a = s", [distance], setting.first, FENCE);
    }
    working.step(
        "Fence for the farther wall, to the near side of the blade",
        "z = a + G − k",
        [("a", length(setting.first)), width, kerf],
        setting.first.plus(spare)?,
        FENCE,
    );
    if let (Some(ripped), Some(part_width)) = (ripped, given.part_width) {
        working.step(
            "The part ripped right through",
            "b = W − s − G",
            [("W", length(part_width)), distance, width],
            ripped.width,
            RIPPED,
        );
    }
    Ok(working)
}
