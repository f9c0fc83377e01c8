//! The working of even spacing.

use super::Spread;
use super::inputs::{By, Ends, Even, Inputs};
use super::read::Read;
use crate::measure::{LengthError, Quantity};
use crate::source::{GEOMETRY, Source};
use crate::working::Working;

const FEWEST: Source = Source::practice(
    "plane geometry; one piece fewer would leave a larger gap; at least one, and two where both ends want one",
);
const RUNNING: Source =
    Source::practice("plane geometry; each mark is measured from the end, so that no error is carried on to the next");
const FILLED: Source = Source::practice("the sum of all pieces and gaps must be the length");

/// The lines, in the order in which a person would do it.
pub(super) fn working(inputs: &Inputs, read: &Read, spread: &Spread) -> Result<Working, LengthError> {
    let mut steps = Working::default();
    let given = |limit: bool| {
        let mut given = vec![("L", Quantity::Length(read.length)), ("w", read.width.into())];
        if inputs.ends == Ends::Own {
            given.push(("e", read.end.into()));
        }
        given.push(if limit {
            ("m", read.largest_gap.unwrap_or_default().into())
        } else {
            ("n", Quantity::count(spread.count.into()))
        });
        given
    };
    if inputs.by == By::LargestGap {
        let formula = match (inputs.ends, inputs.even) {
            (Ends::Gap, Even::Gaps) => "n = (L − m) / (w + m), rounded up, at least 1",
            (Ends::Gap, Even::Centres) => "n = L / (m + w / 2) − 1, rounded up, at least 1",
            (Ends::Half, _) if spread.count == 1 => "n = 1, as (L − w) / 2 is no more than m",
            (Ends::Half, _) => "n = L / (w + m), rounded up",
            (Ends::Piece, _) => "n = (L + m) / (w + m), rounded up",
            (Ends::Own, Even::Gaps) => "n = (L − 2 · e + m) / (w + m), rounded up",
            (Ends::Own, Even::Centres) => "n = (L − 2 · e) / (w + m) + 1, rounded up",
        };
        steps.step("Number of pieces, the fewest", formula, given(true), Quantity::count(spread.count.into()), FEWEST);
    }
    if let (Some(gap), Some(pitch)) = (spread.gap, spread.pitch) {
        let formula = match (inputs.ends, inputs.even) {
            (Ends::Gap, Even::Gaps) => "g = (L − n · w) / (n + 1)",
            (Ends::Gap, Even::Centres) => "g = L / (n + 1) − w",
            (Ends::Half, _) => "g = (L − n · w) / n",
            (Ends::Piece, _) => "g = (L − n · w) / (n − 1)",
            (Ends::Own, Even::Gaps) => "g = (L − 2 · e − n · w) / (n − 1)",
            (Ends::Own, Even::Centres) => "g = (L − 2 · e) / (n − 1) − w",
        };
        steps.step("Gap", formula, given(false), gap, GEOMETRY);
        let given = [("w", read.width.into()), ("g", gap.into())];
        steps.step("From centre to centre", "p = w + g", given, pitch, GEOMETRY);
    }
    let (width, count) = (("w", read.width.into()), ("n", Quantity::count(spread.count.into())));
    let gap = ("g", spread.gap.unwrap_or_default().into());
    let rest = "a = (L − n · w − (n − 1) · g) / 2";
    steps.step("Gap at each end", rest, [("L", read.length.into()), count, width, gap], spread.end_gap, GEOMETRY);
    let end_gap = ("a", spread.end_gap.into());
    let last = i64::from(spread.count.saturating_sub(1));
    let near = read.datum.plus(spread.end_gap)?.plus(spread.pitch.unwrap_or_default().times(last, 1)?)?;
    let pitch = ("p", spread.pitch.unwrap_or_default().into());
    let given = [("d", read.datum.into()), end_gap, count, pitch];
    steps.step("Near edge of the last piece", "x = d + a + (n − 1) · p", given, near, RUNNING);
    let given = [("x", near.into()), ("d", read.datum.into()), width, end_gap];
    let filled = near.minus(read.datum)?.plus(read.width)?.plus(spread.end_gap)?;
    steps.step("All of it together", "L = x − d + w + a", given, filled, FILLED);
    Ok(steps)
}
