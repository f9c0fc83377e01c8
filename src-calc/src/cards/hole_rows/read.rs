//! From what was typed to lengths, with every problem named.

use super::inputs::{Doors, Inputs, Rear};
use crate::measure::{Length, LengthError, Quantity, Reading};
use crate::problem::{Problem, Problems};

/// The longest side that is looked at, in millimetres: no sheet is longer.
const LONGEST_MM: i64 = 5000;
/// The most holes in a row.
const MOST_HOLES: i64 = 200;
/// The most stretches that are left out, and the most hinges.
const MOST_LINES: usize = 20;

/// The inputs, read. Every length is what its field says.
pub(super) struct Read {
    pub(super) height: Length,
    pub(super) depth: Length,
    pub(super) thickness: Length,
    pub(super) end_distance: Length,
    pub(super) pitch: Length,
    /// Zero unless the doors are inset.
    pub(super) door_thickness: Length,
    pub(super) front_setback: Length,
    /// From the front edge, the door's thickness included.
    pub(super) front: Length,
    /// From the front edge.
    pub(super) rear: Option<Length>,
    /// The first and the last place for a shelf.
    pub(super) shelves: (Length, Length),
    /// Stretches in which no shelf sits, both ends included.
    pub(super) skips: Vec<(Length, Length)>,
    pub(super) hinges: Vec<Length>,
    pub(super) door_end: Length,
    pub(super) hole: Length,
    pub(super) hole_depth: Length,
    pub(super) rail_offset: Length,
    /// Holes in a full row.
    pub(super) count: i64,
}

/// What has to keep clear of each other.
struct Rows {
    hole: Length,
    end_distance: Option<Length>,
    pitch: Option<Length>,
    depth: Option<Length>,
    front: Option<Length>,
    rear: Option<Length>,
}

/// The rear row from the front edge.
fn rear_row(inputs: &Inputs, depth: Length, front: Length, own: Length, pitch: Length) -> Result<Length, LengthError> {
    match inputs.rear {
        Rear::Balanced | Rear::None => depth.minus(front),
        Rear::Own => depth.minus(own),
        Rear::Steps => {
            let steps = depth.minus(front.times(2, 1)?)?.floor_div(pitch)?;
            front.plus(pitch.times(steps, 1)?)
        }
    }
}

impl Inputs {
    fn bounded(problems: &mut Problems, field: &'static str, reading: &Reading) -> Option<Length> {
        let length = problems.above_zero(field, reading)?;
        let most = problems.check("", Length::mm(LONGEST_MM, 1))?;
        if length > most {
            problems.add(field, Problem::TooLarge { most: most.into(), why: "no sheet is larger" });
            return None;
        }
        Some(length)
    }

    /// The stretches that are left out.
    fn skips(&self, problems: &mut Problems, height: Option<Length>) -> Vec<(Length, Length)> {
        let mut skips = Vec::new();
        let stretches = self.skip_from.len().max(self.skip_to.len());
        if stretches > MOST_LINES {
            let most = Quantity::count(20);
            problems.add("skip_from", Problem::TooLarge { most, why: "so many stretches leave hardly a row" });
        }
        let blank = Reading::default();
        for at in 0..stretches.min(MOST_LINES) {
            let from = self.skip_from.get(at).unwrap_or(&blank);
            let to = self.skip_to.get(at).unwrap_or(&blank);
            if from.is_blank() && to.is_blank() {
                continue;
            }
            let from = if from.is_blank() {
                Some(Length::ZERO)
            } else {
                problems.zero_or_more(format!("skip_from.{at}"), from)
            };
            let to = if to.is_blank() { height } else { problems.zero_or_more(format!("skip_to.{at}"), to) };
            match (from, to) {
                (Some(from), Some(to)) if to < from => {
                    let why = "A stretch without holes ends before it begins: give from and to, line by line.";
                    problems.add(format!("skip_to.{at}"), Problem::Clash { why });
                }
                (Some(from), Some(to)) => skips.push((from, to)),
                _ => {}
            }
        }
        skips
    }

    /// The lowest and the highest place for a shelf.
    fn shelves(&self, problems: &mut Problems, height: Option<Length>) -> Option<(Length, Length)> {
        let from = if self.shelves_from.is_blank() {
            Some(Length::ZERO)
        } else {
            problems.zero_or_more("shelves_from", &self.shelves_from)
        };
        let to =
            if self.shelves_to.is_blank() { height } else { problems.zero_or_more("shelves_to", &self.shelves_to) };
        let (from, to) = (from?, to?);
        if to < from {
            let why = "The last hole would lie before the first: check both.";
            problems.add("shelves_to", Problem::Clash { why });
            return None;
        }
        Some((from, to))
    }

    fn hinges(&self, problems: &mut Problems, height: Option<Length>, count: Option<i64>) -> Vec<Length> {
        if self.hinges.len() > MOST_LINES {
            let most = Quantity::count(20);
            problems.add("hinges", Problem::TooLarge { most, why: "no door has more hinges" });
        }
        let mut hinges = Vec::new();
        for (at, reading) in self.hinges.iter().take(MOST_LINES).enumerate() {
            if reading.is_blank() {
                continue;
            }
            let field = format!("hinges.{at}");
            let Some(wish) = problems.zero_or_more(field.as_str(), reading) else { continue };
            match height {
                Some(height) if wish > height => {
                    problems.add(field, Problem::TooLarge { most: height.into(), why: "the side ends there" });
                }
                _ => hinges.push(wish),
            }
        }
        if !hinges.is_empty() && count.is_some_and(|count| count < 2) {
            let why = "A hinge plate takes two holes, and the row has only one: lower the distance from the ends.";
            problems.add("hinges", Problem::Clash { why });
        }
        hinges
    }

    /// How many holes a full row has.
    fn count(
        &self,
        problems: &mut Problems,
        height: Option<Length>,
        end_distance: Option<Length>,
        pitch: Option<Length>,
    ) -> Option<i64> {
        let (height, end_distance, pitch) = (height?, end_distance?, pitch?);
        let between = problems.check("", end_distance.times(2, 1).and_then(|ends| height.minus(ends)))?;
        if between.is_negative() {
            let most = problems.check("", height.times(1, 2))?.into();
            let why = "the ends leave no room for a hole";
            problems.add("end_distance", Problem::TooLarge { most, why });
            return None;
        }
        let steps = problems.check("pitch", between.floor_div(pitch))?;
        if steps >= MOST_HOLES {
            let why = "More than 200 holes would be in a row: check the length of the side and the pitch.";
            problems.add("pitch", Problem::Clash { why });
            return None;
        }
        steps.checked_add(1)
    }

    /// Holes must keep clear of the edges, of each other and of the outer face.
    fn room(&self, problems: &mut Problems, rows: &Rows) -> Option<()> {
        let radius = problems.check("", rows.hole.times(1, 2))?;
        if rows.end_distance.is_some_and(|end| end <= radius) {
            let why = "The first hole would break out at the end of the side.";
            problems.add("end_distance", Problem::Clash { why });
        }
        if rows.pitch.is_some_and(|pitch| pitch <= rows.hole) {
            problems.add("pitch", Problem::Clash { why: "The holes would run into each other." });
        }
        let (depth, front, rear) = (rows.depth?, rows.front?, rows.rear?);
        let inside = |row: Length| Ok::<bool, LengthError>(row > radius && depth.minus(row)? > radius);
        if !problems.check("", inside(front))? {
            let why = "The front row would break out at an edge of the side: check the setback and the depth.";
            problems.add("front_setback", Problem::Clash { why });
            return None;
        }
        let apart = problems.check("", rear.minus(front))?;
        if self.rear != Rear::None && (apart <= rows.hole || !problems.check("", inside(rear))?) {
            let (field, why) = if self.rear == Rear::Own {
                ("rear_setback", "The rear row would run into the front row or out of the side: check its setback.")
            } else {
                ("depth", "The side is too shallow for two rows: leave the rear one out.")
            };
            problems.add(field, Problem::Clash { why });
        }
        Some(())
    }

    /// Reads every field that the choices call for.
    pub(super) fn read(&self) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let height = Self::bounded(&mut problems, "height", &self.height);
        let depth = Self::bounded(&mut problems, "depth", &self.depth);
        let thickness = problems.above_zero("thickness", &self.thickness);
        let end_distance = problems.above_zero("end_distance", &self.end_distance);
        let pitch = problems.above_zero("pitch", &self.pitch);
        let count = self.count(&mut problems, height, end_distance, pitch);
        let door_thickness = match self.doors {
            Doors::InFront => Some(Length::ZERO),
            Doors::Inset => problems.above_zero("door_thickness", &self.door_thickness),
        };
        let front_setback = problems.above_zero("front_setback", &self.front_setback);
        let front = front_setback.zip(door_thickness).and_then(|(s, t)| problems.check("front_setback", s.plus(t)));
        let own = match self.rear {
            Rear::Own => problems.above_zero("rear_setback", &self.rear_setback),
            _ => Some(Length::ZERO),
        };
        let rear = (|| {
            let row = rear_row(self, depth?, front?, own?, pitch?);
            problems.check("", row)
        })();
        let shelves = self.shelves(&mut problems, height);
        let skips = self.skips(&mut problems, height);
        let hinges = self.hinges(&mut problems, height, count);
        let door_end = problems.check("door_end", self.door_end.length());
        let hole = problems.above_zero("hole", &self.hole);
        let hole_depth = problems.above_zero("hole_depth", &self.hole_depth);
        if thickness.zip(hole_depth).is_some_and(|(thickness, depth)| depth >= thickness) {
            let why = "The holes would come out at the outer face: drill less deep.";
            problems.add("hole_depth", Problem::Clash { why });
        }
        let rail_offset = problems.zero_or_more("rail_offset", &self.rail_offset);
        if let Some(hole) = hole {
            let rows = Rows { hole, end_distance, pitch, depth, front, rear };
            self.room(&mut problems, &rows);
        }
        let read = (|| {
            Some(Read {
                height: height?,
                depth: depth?,
                thickness: thickness?,
                end_distance: end_distance?,
                pitch: pitch?,
                door_thickness: door_thickness?,
                front_setback: front_setback?,
                front: front?,
                rear: if self.rear == Rear::None { None } else { Some(rear?) },
                shelves: shelves?,
                skips,
                hinges,
                door_end: door_end?,
                hole: hole?,
                hole_depth: hole_depth?,
                rail_offset: rail_offset?,
                count: count?,
            })
        })();
        match read {
            Some(read) if problems.is_empty() => Ok(read),
            _ => Err(problems),
        }
    }
}
