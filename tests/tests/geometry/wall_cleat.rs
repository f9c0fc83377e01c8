//! Wall cleat: the board is ripped by `geo`'s polygon clipping at the fences of the answer, one strip is put on the wall
//! and the other behind the cabinet at the answer's places, and the cabinet is hung, lowered, lifted and pulled away.
//! Only the answer's sizes and places are used, none of its formulas.

use geo::{Area, BooleanOps, BoundingRect, Coord, MultiPolygon, Polygon, Rect, Rotate, Translate, point};
use proptest::prelude::*;
use scantling::cards::wall_cleat::{Answer, Back, Cut, Inputs, Pass, Quad, solve};
use scantling::measure::{AngleReading, Reading};

/// Clipping snaps to a grid of about a millionth of the board.
const NEAR_MM: f64 = 1e-3;
/// A move that is seen.
const STEP_MM: f64 = 0.05;
/// The overlap of strips that only touch, mm²: their bevel times the grid; a step overlaps by ten times that and more.
const TOUCH_MM2: f64 = 0.02;

fn rectangle(left: f64, right: f64, bottom: f64, top: f64) -> Polygon {
    Rect::new(Coord { x: left, y: bottom }, Coord { x: right, y: top }).to_polygon()
}

fn map(polygon: &Polygon, place: impl Fn(Coord) -> Coord) -> Polygon {
    Polygon::new(polygon.exterior().coords().map(|&corner| place(corner)).collect(), Vec::new())
}

fn largest(pieces: MultiPolygon) -> Polygon {
    let largest = pieces.into_iter().max_by(|one, other| one.unsigned_area().total_cmp(&other.unsigned_area()));
    largest.unwrap_or_else(Polygon::empty)
}

/// What a pass leaves at the fence (`x = 0`, table at `y = 0`) and beyond the blade, which leans away from the fence.
fn saw(work: &Polygon, pass: &Pass, kerf: f64) -> [Polygon; 2] {
    let leaned = |left: f64, right: f64| {
        let upright = rectangle(left, right, -900.0, 900.0);
        upright.rotate_around_point(-pass.lean_degrees, point! { x: 0.0, y: 0.0 }).translate(pass.fence.as_mm(), 0.0)
    };
    [leaned(-900.0, 0.0), leaned(kerf, 900.0)].map(|side| largest(work.intersection(&side)))
}

/// Both strips out of the board of the answer, each lying with its wide face down and its square edge on the left.
fn rip(answer: &Answer, kerf: f64) -> [Polygon; 2] {
    let thickness = answer.thickness.as_mm();
    let mut strips = vec![rectangle(0.0, answer.board.as_mm(), 0.0, thickness)];
    for pass in &answer.passes {
        strips = match pass.cut {
            Cut::Pair | Cut::Part => strips.iter().flat_map(|board| saw(board, pass, kerf)).collect(),
            Cut::Edge => strips
                .iter()
                .map(|strip| {
                    // On edge, its wide face to the fence, then laid down again.
                    let standing = map(&to_corner(strip), |Coord { x, y }| Coord { x: y, y: x });
                    let bevelled = saw(&standing, pass, kerf)[0].clone();
                    map(&bevelled, |Coord { x, y }| Coord { x: -y, y: x })
                })
                .collect(),
        };
    }
    let [first, second] = <[Polygon; 2]>::try_from(strips).expect("a pair");
    [first, second].map(|strip| wide_face_down(&strip))
}

fn to_corner(strip: &Polygon) -> Polygon {
    let least = strip.bounding_rect().unwrap().min();
    strip.translate(-least.x, -least.y)
}

fn on_face(strip: &Polygon, height: f64) -> (f64, f64) {
    let xs = strip.exterior().coords().filter(|corner| (corner.y - height).abs() < NEAR_MM).map(|corner| corner.x);
    xs.fold((f64::MAX, f64::MIN), |(least, most), x| (least.min(x), most.max(x)))
}

/// Turns and mirrors a strip until its wide face lies down and its square edge is on the left.
fn wide_face_down(strip: &Polygon) -> Polygon {
    let mut strip = to_corner(strip);
    let thickness = strip.bounding_rect().unwrap().height();
    let width = |(left, right): (f64, f64)| right - left;
    if width(on_face(&strip, 0.0)) < width(on_face(&strip, thickness)) {
        strip = to_corner(&map(&strip, |Coord { x, y }| Coord { x, y: -y }));
    }
    if on_face(&strip, thickness).0 > NEAR_MM {
        strip = to_corner(&map(&strip, |Coord { x, y }| Coord { x: -x, y }));
    }
    strip
}

/// The side view: `x` from the wall, `y` from the floor.
struct Hung {
    on_the_wall: Polygon,
    on_the_cabinet: Polygon,
    /// A rear edge of the cabinet, from its bottom to its top, as deep as its back is set in and a trace more.
    rear_edge: Polygon,
    spacer: Polygon,
}

impl Hung {
    fn new(job: &Job, answer: &Answer) -> Self {
        let [wall, cabinet] = rip(answer, job.kerf);
        let thickness = answer.thickness.as_mm();
        let back = answer.stands_off.as_mm() + answer.inset.as_mm();
        // Square edge down, wide face to the room; and square edge up, wide face to the wall.
        let on_the_wall = map(&wall, |Coord { x, y }| Coord { x: thickness - y, y: x });
        let on_the_cabinet = map(&cabinet, |Coord { x, y }| Coord { x: back - thickness + y, y: -x });
        let bottom = job.top_at - job.cabinet_height;
        let rear = answer.stands_off.as_mm();
        let spacer = rectangle(0.0, answer.spacer_thickness.as_mm(), 0.0, answer.wide.as_mm());
        Self {
            on_the_wall: on_the_wall.translate(0.0, answer.wall_strip_at.as_mm()),
            on_the_cabinet: on_the_cabinet.translate(0.0, job.top_at - job.below_top),
            rear_edge: rectangle(rear, back + 1.0, bottom, job.top_at),
            spacer: spacer.translate(0.0, answer.spacer_at.as_mm()),
        }
    }

    /// The strips' overlap with the cabinet moved from where it hangs.
    fn overlap(&self, out: f64, up: f64) -> f64 {
        self.on_the_wall.intersection(&self.on_the_cabinet.translate(out, up)).unsigned_area()
    }

    /// The worst overlap on the way straight out into the room, lifted by so much: in coarse steps, and in fine ones
    /// where the two points pass each other.
    fn on_the_way_out(&self, up: f64) -> f64 {
        let to_pass =
            self.on_the_wall.bounding_rect().unwrap().max().x - self.on_the_cabinet.bounding_rect().unwrap().min().x;
        let coarse = (0..=24).map(|part| to_pass * f64::from(part) / 20.0);
        let fine = (0..=40).map(|part| to_pass - 0.005 * f64::from(part));
        coarse.chain(fine).map(|out| self.overlap(out, up)).fold(0.0, f64::max)
    }
}

#[derive(Debug)]
struct Job {
    back: Back,
    degrees: f64,
    thickness: f64,
    wide: f64,
    kerf: f64,
    slack: f64,
    cabinet_height: f64,
    below_top: f64,
    top_at: f64,
}

impl Job {
    fn inputs(&self) -> Inputs {
        let mm = |value: f64| Reading::mm(&value.to_string());
        Inputs {
            thickness: mm(self.thickness),
            strip_height: mm(self.wide),
            bevel: AngleReading::from(self.degrees.to_string().as_str()),
            kerf: mm(self.kerf),
            back: self.back,
            slack: mm(self.slack),
            cabinet_height: mm(self.cabinet_height),
            below_top: mm(self.below_top),
            top_at: mm(self.top_at),
            ..Inputs::default()
        }
    }
}

fn near(what: &str, got: f64, want: f64) -> Result<(), TestCaseError> {
    prop_assert!((got - want).abs() < NEAR_MM, "{}: {} is not {}", what, got, want);
    Ok(())
}

fn check(job: &Job) -> Result<(), TestCaseError> {
    let Ok(answer) = solve(&job.inputs()) else { return Err(TestCaseError::reject("this pair does not go there")) };
    for strip in rip(&answer, job.kerf) {
        let (left, right) = on_face(&strip, 0.0);
        near("wide face", right - left, answer.wide.as_mm())?;
        let (left, right) = on_face(&strip, job.thickness);
        near("narrow face", right - left, answer.narrow.as_mm())?;
    }

    let hung = Hung::new(job, &answer);
    let lift = answer.lift.as_mm();
    prop_assert!(hung.overlap(0.0, 0.0) < TOUCH_MM2, "the strips overlap by {}", hung.overlap(0.0, 0.0));
    prop_assert!(hung.overlap(0.0, -STEP_MM) > 5.0 * TOUCH_MM2, "the cabinet can sink further");
    prop_assert!(hung.overlap(STEP_MM, 0.0) > 5.0 * TOUCH_MM2, "the cabinet can be pulled straight off");
    let free = hung.on_the_way_out(lift + NEAR_MM);
    prop_assert!(free < 1e-6, "lifted by {lift} it still catches: {free}");
    // Two points that pass 0.1 mm too low overlap by 0.05² / tan β, which is 0.0014 mm² at 60°.
    let caught = hung.on_the_way_out(lift - 0.1);
    prop_assert!(caught > 1e-3, "it is free before it is lifted by {lift}: {caught}");

    // The wall is at nought: a back that is set in leaves the rear edges on it, a flush one stands off by the strip.
    let off = hung.rear_edge.bounding_rect().unwrap().min().x;
    near("rear edges off the wall", off, if job.back == Back::Inset { 0.0 } else { job.thickness })?;
    for (what, strip) in [("wall strip", &hung.on_the_wall), ("spacer", &hung.spacer)] {
        near(what, strip.bounding_rect().unwrap().min().x, 0.0)?;
    }
    let back = hung.on_the_cabinet.bounding_rect().unwrap().max().x;
    near("spacer to the back", hung.spacer.bounding_rect().unwrap().max().x, back)?;
    let clear = hung.spacer.intersection(&hung.on_the_wall).unsigned_area();
    prop_assert!(clear < TOUCH_MM2, "the spacer and the wall strip overlap by {clear}");
    if job.back == Back::Inset {
        // Lifted by as much as it has to be, the cabinet has its bottom still below the spacer.
        let bottom = answer.top_at.as_mm() - job.cabinet_height + job.below_top;
        let spacer = hung.spacer.bounding_rect().unwrap().min().y;
        prop_assert!(bottom + lift < spacer, "lifted by {lift} the bottom at {bottom} meets the spacer at {spacer}");
    }
    picture(&answer, &hung)
}

/// The picture has the same pieces in the same places.
fn picture(answer: &Answer, hung: &Hung) -> Result<(), TestCaseError> {
    let drawn = |quad: &Quad| Polygon::new(quad.iter().map(|&[x, y]| Coord { x, y }).collect(), Vec::new());
    let section = &answer.section;
    for (what, quad, piece) in [
        ("wall strip", &section.wall_strip, &hung.on_the_wall),
        ("cabinet's strip", &section.cabinet_strip, &hung.on_the_cabinet),
        ("spacer", &section.spacer, &hung.spacer),
    ] {
        let differs = drawn(quad).xor(piece).unsigned_area();
        prop_assert!(differs < 0.5, "the {what} of the picture differs by {differs} mm²");
    }
    let box_of = hung.rear_edge.bounding_rect().unwrap();
    near("top", section.top_mm, box_of.max().y)?;
    near("bottom", section.bottom_mm, box_of.min().y)?;
    near("rear", section.rear_mm, box_of.min().x)
}

fn tenths(range: std::ops::Range<u32>) -> impl Strategy<Value = f64> {
    range.prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn job() -> impl Strategy<Value = Job> {
    let choices = (
        prop::sample::select(Back::ALL),
        prop::sample::select(vec![30.0, 33.3, 37.5, 45.0, 45.5, 52.0, 60.0]),
        prop::sample::select(vec![0.0, 0.3, 0.5, 1.5]),
    );
    let strip = (tenths(90..250), tenths(500..1200), tenths(15..35));
    let cabinet = (tenths(4500..12_000), tenths(0..400), tenths(12_000..24_000));
    (choices, strip, cabinet).prop_map(
        |((back, degrees, slack), (thickness, wide, kerf), (cabinet_height, below_top, top_at))| Job {
            back,
            degrees,
            thickness,
            wide,
            kerf,
            slack,
            cabinet_height,
            below_top,
            top_at,
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, max_global_rejects: 20_000, ..ProptestConfig::default() })]

    #[test]
    fn it_hangs_and_lifts_as_the_answer_says(job in job()) {
        check(&job)?;
    }
}

/// The card's own demo, hung.
#[test]
fn the_demo_hangs() {
    let demo = Job {
        back: Back::Inset,
        degrees: 45.0,
        thickness: 14.6,
        wide: 70.0,
        kerf: 3.2,
        slack: 0.5,
        cabinet_height: 1169.2,
        below_top: 14.6,
        top_at: 2100.0,
    };
    assert_eq!(demo.inputs(), Inputs::default());
    check(&demo).unwrap();
}
