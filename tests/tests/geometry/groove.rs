//! Grooves, sawn again: the part's end is a polygon of the `geo` crate, and each pass of the answer takes the rectangle
//! of its blade out of it, the part lying with the edge that is said to be there against the fence. What is then gone
//! must be the groove: no wood left in it, and nothing taken beside it. No formula of the card is used.

use geo::{Area, BooleanOps, Coord, MultiPolygon, Polygon, Rect};
use proptest::prelude::*;
use scantling::cards::groove::{Against, Answer, Cut, Deep, Inputs, Wall, solve};
use scantling::measure::Reading;

/// Polygon clipping snaps to a grid of about a millionth of the part.
const NEAR_MM2: f64 = 0.05;

fn rectangle(left: f64, right: f64, bottom: f64, top: f64) -> Polygon {
    Rect::new(Coord { x: left, y: bottom }, Coord { x: right, y: top }).to_polygon()
}

#[derive(Debug)]
struct Job {
    cut: Cut,
    against: Against,
    deep: Deep,
    thickness: f64,
    panel: f64,
    fit: f64,
    distance: f64,
    depth: f64,
    kerf: f64,
    part: f64,
}

impl Job {
    fn inputs(&self) -> Inputs {
        let length = |mm: f64| Reading::mm(&mm.to_string());
        Inputs {
            cut: self.cut,
            thickness: length(self.thickness),
            panel: length(self.panel),
            fit: length(self.fit),
            distance: length(self.distance),
            deep: self.deep,
            depth: length(self.depth),
            kerf: length(self.kerf),
            against: self.against,
            part_width: length(self.part),
        }
    }

    /// How deep it is to be, from the words of the choice.
    fn wanted_depth(&self) -> f64 {
        match self.deep {
            Deep::Third => self.thickness / 3.0,
            Deep::Half => self.thickness / 2.0,
            Deep::TwoThirds => self.thickness * 2.0 / 3.0,
            Deep::Own => self.depth,
        }
    }

    /// The wood that is to go, in a part that lies with the groove's edge at nought.
    fn wanted(&self) -> Polygon {
        let near = if self.cut == Cut::Rabbet { 0.0 } else { self.distance };
        rectangle(near, near + self.panel + self.fit, 0.0, self.wanted_depth())
    }

    /// Saws the part as told; gives what is left, with the groove's edge at nought again.
    fn saw(&self, answer: &Answer) -> MultiPolygon {
        let turned = self.against == Against::FarEdge;
        let mut part = MultiPolygon::from(rectangle(0.0, self.part, 0.0, self.thickness));
        for pass in &answer.passes {
            let (near, height) = (pass.near.as_mm(), answer.depth.as_mm());
            let (from, to) = (near, near + self.kerf);
            // The fence stands at nought, and so does the edge that is against it.
            let blade = if turned { [self.part - to, self.part - from] } else { [from, to] };
            part = part.difference(&rectangle(blade[0], blade[1], -1.0, height));
        }
        part
    }
}

fn check(job: &Job) -> Result<(), TestCaseError> {
    let Ok(answer) = solve(&job.inputs()) else { return Err(TestCaseError::reject("no such groove")) };
    let whole = MultiPolygon::from(rectangle(0.0, job.part, 0.0, job.thickness));
    let gone = whole.difference(&job.saw(&answer));
    let wanted = MultiPolygon::from(job.wanted());
    let (left_in, beside) = (wanted.difference(&gone), gone.difference(&wanted));
    prop_assert!(left_in.unsigned_area() < NEAR_MM2, "{} mm² of wood left in the groove", left_in.unsigned_area());
    prop_assert!(beside.unsigned_area() < NEAR_MM2, "{} mm² taken beside the groove", beside.unsigned_area());
    prop_assert!((answer.left.as_mm() - (job.thickness - job.wanted_depth())).abs() < 1e-9);

    // One pass fewer could not clear it.
    #[allow(clippy::cast_precision_loss, reason = "some forty passes")]
    let fewer = (answer.passes.len() - 1) as f64 * job.kerf;
    prop_assert!(fewer < job.panel + job.fit, "{fewer} mm of kerfs would do");
    walls(job, &answer)?;
    ripped(job, &answer)
}

/// The side of the blade that is said to make a wall stands on it.
fn walls(job: &Job, answer: &Answer) -> Result<(), TestCaseError> {
    let [start, end] = [answer.starts_at, answer.ends_at].map(|wall| wall.as_mm());
    let (near_wall, far_wall) = match job.against {
        Against::NearEdge => (start, end),
        Against::FarEdge => (job.part - end, job.part - start),
    };
    let mut made = 0;
    for pass in &answer.passes {
        if matches!(pass.wall, Wall::Near | Wall::Both) {
            prop_assert!((pass.near.as_mm() - near_wall).abs() < 1e-9, "{pass:?}");
            made += 1;
        }
        if matches!(pass.wall, Wall::Far | Wall::Both) {
            prop_assert!((pass.far.as_mm() - far_wall).abs() < 1e-9, "{pass:?}");
            made += 1;
        }
    }
    prop_assert_eq!(made, if job.cut == Cut::Groove { 2 } else { 1 });
    Ok(())
}

/// Seen from above: the back comes up through the place of the groove and behind; the part that was ripped is out of its
/// way, and would not be if it were a hundredth of a millimetre wider.
fn ripped(job: &Job, answer: &Answer) -> Result<(), TestCaseError> {
    let ripped = answer.ripped.unwrap();
    let [from, to] = [answer.starts_at, answer.ends_at].map(|wall| job.part - wall.as_mm());
    let way = rectangle(to, from, 0.0, 500.0);
    let kept = |wider: f64| rectangle(0.0, ripped.width.as_mm() + wider, 0.0, 500.0);
    prop_assert!(way.intersection(&kept(0.0)).unsigned_area() < NEAR_MM2);
    prop_assert!(way.intersection(&kept(0.01)).unsigned_area() > 4.9);
    prop_assert!((ripped.width.as_mm() + ripped.off.as_mm() - job.part).abs() < 1e-9);
    Ok(())
}

fn tenths(range: std::ops::Range<u32>) -> impl Strategy<Value = f64> {
    range.prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn job() -> impl Strategy<Value = Job> {
    let choices = (prop::sample::select(Cut::ALL), prop::sample::select(Against::ALL), prop::sample::select(Deep::ALL));
    let sizes = (tenths(90..400), tenths(25..250), tenths(0..6), tenths(10..800), tenths(20..80));
    let rest = (tenths(15..70), tenths(900..6000));
    (choices, sizes, rest).prop_map(|((cut, against, deep), (thickness, panel, fit, distance, depth), (kerf, part))| {
        Job { cut, against, deep, thickness, panel, fit, distance, depth, kerf, part }
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, max_global_rejects: 20_000, ..ProptestConfig::default() })]

    #[test]
    fn sawing_it_gives_the_groove_of_the_answer(job in job()) {
        check(&job)?;
    }
}

/// The handbook's rows G-1 to G-4, sawn; and a rabbet narrower than the blade, from both edges.
#[test]
fn grooves_of_the_handbook() {
    for (cut, panel, kerf) in [
        (Cut::Groove, 6.0, 3.2),
        (Cut::Groove, 18.3, 3.2),
        (Cut::Groove, 12.7, 3.175),
        (Cut::Groove, 3.2, 3.2),
        (Cut::Rabbet, 4.0, 6.0),
    ] {
        for against in Against::ALL {
            check(&Job {
                cut,
                against: *against,
                deep: Deep::Third,
                thickness: 18.0,
                panel,
                fit: 0.0,
                distance: 12.0,
                depth: 6.0,
                kerf,
                part: 330.0,
            })
            .unwrap();
        }
    }
}
