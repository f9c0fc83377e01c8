//! Bevelled strips, ripped again as the saw would: the board's cross-section is a polygon of the `geo` crate, the blade
//! a rectangle leaned over by `geo`'s own rotation, and each pass of the answer is done in turn: the board is turned
//! as told, pushed against the fence, and parted by polygon clipping. No formula of the card is used.

use geo::{Area, BooleanOps, BoundingRect, Coord, MultiPolygon, Polygon, Rect, Rotate, Translate, point};
use proptest::prelude::*;
use scantling::cards::bevelled_strips::{Answer, Cut, Face, FirstEdge, Inputs, MeasuredAt, Shape, Turn, Widths, solve};
use scantling::measure::{AngleReading, Figure, Reading};

/// Polygon clipping snaps to a grid of about a millionth of the board; some fifty passes add up.
const NEAR_MM: f64 = 2e-3;

/// A board on the saw: fence at `x = 0`, table at `y = 0`.
struct Board {
    section: Polygon,
    thickness: f64,
    marked_up: bool,
}

impl Board {
    fn new(width: f64, thickness: f64, first_edge_lean: Option<f64>) -> Self {
        let square = rectangle(0.0, width, 0.0, thickness);
        let section = match first_edge_lean {
            // Lying on its marked, wider face: the first edge leans in from the bottom corner.
            Some(degrees) => only(clip(&square, &beyond_blade(0.0, degrees, width))),
            None => square,
        };
        Self { section, thickness, marked_up: false }
    }

    fn turn(&mut self, mirror: bool, upside_down: bool) {
        let thickness = self.thickness;
        self.section = map(&self.section, |Coord { x, y }| Coord {
            x: if mirror { -x } else { x },
            y: if upside_down { thickness - y } else { y },
        });
        self.marked_up ^= upside_down;
    }

    fn push_to_fence(&mut self) {
        let left = self.section.bounding_rect().unwrap().min().x;
        self.section = self.section.translate(-left, 0.0);
    }
}

fn rectangle(left: f64, right: f64, bottom: f64, top: f64) -> Polygon {
    Rect::new(Coord { x: left, y: bottom }, Coord { x: right, y: top }).to_polygon()
}

fn map(polygon: &Polygon, place: impl Fn(Coord) -> Coord) -> Polygon {
    Polygon::new(polygon.exterior().coords().map(|&corner| place(corner)).collect(), Vec::new())
}

/// All of the plane that lies between the fence and the near side of the blade, as far as the board reaches.
fn before_blade(fence: f64, degrees: f64, reach: f64) -> Polygon {
    leaned(rectangle(-3.0 * reach, 0.0, -3.0 * reach, 3.0 * reach), fence, degrees)
}

/// All of it beyond a side of the blade that meets the table at `fence`.
fn beyond_blade(fence: f64, degrees: f64, reach: f64) -> Polygon {
    leaned(rectangle(0.0, 3.0 * reach, -3.0 * reach, 3.0 * reach), fence, degrees)
}

/// Leans something that stands on the table at `x = 0` away from the fence, then moves it to where the fence is set.
fn leaned(upright: Polygon, fence: f64, degrees: f64) -> Polygon {
    upright.rotate_around_point(-degrees, point! { x: 0.0, y: 0.0 }).translate(fence, 0.0)
}

fn clip(board: &Polygon, to: &Polygon) -> MultiPolygon {
    board.intersection(to)
}

/// The one piece worth the name: clipping may leave crumbs of its grid.
fn only(pieces: MultiPolygon) -> Polygon {
    let largest = pieces.into_iter().max_by(|one, other| one.unsigned_area().total_cmp(&other.unsigned_area()));
    largest.unwrap_or_else(Polygon::empty)
}

/// What a pass leaves between fence and blade, and beyond the blade's kerf.
fn saw(board: &Polygon, fence: f64, degrees: f64, kerf: f64, reach: f64) -> (Polygon, Polygon) {
    let far_side = leaned(rectangle(kerf, 3.0 * reach, -3.0 * reach, 3.0 * reach), fence, degrees);
    (only(clip(board, &before_blade(fence, degrees, reach))), only(clip(board, &far_side)))
}

/// Widths over the two faces, and half way up: with straight edges that is the area over the thickness.
fn measured(strip: &Polygon, thickness: f64) -> Widths {
    // A face is measured between the corners that lie on it.
    let on_face = |height: f64| {
        let xs: Vec<f64> = strip
            .exterior()
            .coords()
            .filter(|corner| (corner.y - height).abs() < 1e-3)
            .map(|corner| corner.x)
            .collect();
        xs.iter().copied().fold(f64::MIN, f64::max) - xs.iter().copied().fold(f64::MAX, f64::min)
    };
    let (bottom, top) = (on_face(0.0), on_face(thickness));
    Widths { wide_mm: bottom.max(top), mid_mm: strip.unsigned_area() / thickness, narrow_mm: bottom.min(top) }
}

#[derive(Debug)]
struct Job {
    shape: Shape,
    first_edge: FirstEdge,
    measured_at: MeasuredAt,
    board: f64,
    thickness: f64,
    degrees: f64,
    kerf: f64,
    strip: f64,
    planing: f64,
}

impl Job {
    fn inputs(&self) -> Inputs {
        Inputs {
            board_width: Reading::mm(&self.board.to_string()),
            thickness: Reading::mm(&self.thickness.to_string()),
            bevel: AngleReading::from(self.degrees.to_string().as_str()),
            strip_width: Reading::mm(&self.strip.to_string()),
            measured_at: self.measured_at,
            shape: self.shape,
            first_edge: self.first_edge,
            kerf: Reading::mm(&self.kerf.to_string()),
            planing: Reading::mm(&self.planing.to_string()),
            tooth_above: Reading::mm("3"),
            wanted: Figure::default(),
        }
    }

    /// Rips the board as the answer's passes say; gives the strips and what is left.
    fn rip(&self, answer: &Answer) -> (Vec<Polygon>, Option<Board>) {
        let bevelled = self.first_edge == FirstEdge::Bevelled && self.shape != Shape::CleatPair;
        let mut board = Board::new(self.board, self.thickness, bevelled.then_some(self.degrees));
        let mut strips = Vec::new();
        for (number, pass) in answer.passes.iter().enumerate() {
            match pass.turn {
                // The first pass: the face that is to be up is put up, the first edge away from the fence to trim it.
                Turn::Start => {
                    assert_eq!(number, 0);
                    board.turn(pass.cut == Cut::Trim, pass.up == Face::Marked);
                }
                Turn::Keep => {}
                Turn::Roll => board.turn(true, true),
                Turn::Spin => board.turn(true, false),
                Turn::EndOverEnd => board.turn(false, true),
            }
            assert_eq!(board.marked_up, pass.up == Face::Marked, "pass {number}: the face that is said to be up");
            board.push_to_fence();
            let (near, far) = saw(&board.section, pass.fence_mm, self.degrees, self.kerf, self.board);
            match pass.cut {
                Cut::Trim => board.section = near,
                Cut::Strip => {
                    strips.push(near);
                    board.section = far;
                }
            }
        }
        if self.shape == Shape::CleatPair {
            strips.push(board.section);
            return (strips, None);
        }
        if strips.len() < answer.count as usize {
            // An upright blade, and the last strip is what was left over.
            board.push_to_fence();
            strips.push(board.section);
            return (strips, None);
        }
        (strips, Some(board))
    }

    /// Planes a sawn strip: each bevelled edge is brought to the blade's lean and loses a band as thick as the allowance.
    fn plane(&self, strip: &Polygon) -> Polygon {
        let mut work = Board { section: strip.clone(), thickness: self.thickness, marked_up: false };
        let edges = if self.shape == Shape::CleatPair { 1 } else { 2 };
        for _ in 0..edges {
            // Bevelled edge to the fence with its lower corner first.
            for (mirror, upside_down) in [(false, false), (false, true), (true, false), (true, true)] {
                let mut tried = Board { section: work.section.clone(), ..work };
                tried.turn(mirror, upside_down);
                tried.push_to_fence();
                let sliver = clip(&tried.section, &before_blade(0.0, self.degrees, self.board)).unsigned_area();
                let edge_leans = tried.section.exterior().coords().any(|at| at.x.abs() < 1e-3 && at.y < 1e-3)
                    && (self.degrees == 0.0
                        || !tried.section.exterior().coords().any(|at| at.x < 1e-3 && at.y > self.thickness / 2.0));
                if edge_leans && sliver < 0.05 {
                    work = tried;
                    break;
                }
            }
            let band = leaned(
                rectangle(self.planing, 3.0 * self.board, -3.0 * self.board, 3.0 * self.board),
                0.0,
                self.degrees,
            );
            work.section = only(clip(&work.section, &band));
            // The planed edge goes away from the fence, so that the other one is next.
            work.turn(true, self.shape == Shape::Parallelogram);
            work.push_to_fence();
        }
        work.section
    }
}

fn check_widths(what: &str, strip: &Polygon, thickness: f64, want: Widths) -> Result<(), TestCaseError> {
    let got = measured(strip, thickness);
    for (place, got, want) in [
        ("wide face", got.wide_mm, want.wide_mm),
        ("middle", got.mid_mm, want.mid_mm),
        ("narrow face", got.narrow_mm, want.narrow_mm),
    ] {
        prop_assert!((got - want).abs() < NEAR_MM, "{what}: {place} measures {got}, the answer says {want}");
    }
    Ok(())
}

fn check(job: &Job) -> Result<(), TestCaseError> {
    let Ok(answer) = solve(&job.inputs()) else { return Err(TestCaseError::reject("no strip comes off this board")) };
    let (strips, rest) = job.rip(&answer);
    prop_assert_eq!(strips.len(), answer.count as usize);
    prop_assert_eq!(answer.count, answer.fits);
    for (number, strip) in strips.iter().enumerate() {
        check_widths(&format!("strip {number} as sawn"), strip, job.thickness, answer.sawn)?;
        check_widths(&format!("strip {number} planed"), &job.plane(strip), job.thickness, answer.finished)?;
    }
    picture(job, &answer, &strips)?;

    let (Some(mut rest), Some(last)) = (rest, answer.passes.last()) else { return Ok(()) };
    let left_mm2: f64 = polygon(&answer.section.offcut).unsigned_area();
    prop_assert!((rest.section.unsigned_area() - left_mm2).abs() < 0.05, "the offcut of the picture");
    // One strip more: the next pass in the same manner must give less than a whole one.
    let nested = job.shape == Shape::Trapezoid && job.degrees > 0.0;
    rest.turn(false, nested);
    if rest.section.exterior().0.len() > 3 {
        rest.push_to_fence();
        let (near, _) = saw(&rest.section, last.fence_mm, job.degrees, job.kerf, job.board);
        let whole = strips[0].unsigned_area();
        prop_assert!(near.unsigned_area() < whole - 1e-7, "one strip more fits: {} of {whole}", near.unsigned_area());
    }
    Ok(())
}

fn polygon(corners: &[[f64; 2]]) -> Polygon {
    Polygon::new(corners.iter().map(|&[x, y]| Coord { x, y }).collect(), Vec::new())
}

/// The picture: strips and kerfs lie side by side, each strip in the board and as large as the one that was cut.
fn picture(job: &Job, answer: &Answer, strips: &[Polygon]) -> Result<(), TestCaseError> {
    let board = rectangle(0.0, job.board, 0.0, job.thickness);
    let mut taken = Vec::new();
    for (drawn, cut) in answer.section.strips.iter().map(|quad| polygon(quad)).zip(strips) {
        let area = drawn.unsigned_area();
        prop_assert!((area - cut.unsigned_area()).abs() < 0.05, "a strip of the picture");
        prop_assert!((board.intersection(&drawn).unsigned_area() - area).abs() < 0.05, "a strip off the board");
        taken.push(drawn);
    }
    taken.extend(answer.section.kerfs.iter().map(|quad| polygon(quad)));
    taken.push(polygon(&answer.section.offcut));
    for (number, one) in taken.iter().enumerate() {
        for other in taken.iter().skip(number + 1) {
            if one.exterior().0.len() > 3 && other.exterior().0.len() > 3 {
                prop_assert!(one.intersection(other).unsigned_area() < 0.05, "two things of the picture overlap");
            }
        }
    }
    Ok(())
}

fn tenths(range: std::ops::Range<u32>) -> impl Strategy<Value = f64> {
    range.prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn job() -> impl Strategy<Value = Job> {
    let choices = (
        prop::sample::select(Shape::ALL),
        prop::sample::select(FirstEdge::ALL),
        prop::sample::select(MeasuredAt::ALL),
        prop::sample::select(vec![0.0, 5.0, 15.0, 22.5, 30.0, 33.3, 45.0, 50.0]),
        prop::sample::select(vec![0.0, 0.0, 0.3, 1.0]),
    );
    let sizes = (tenths(1000..7000), tenths(60..300), tenths(15..35), tenths(150..1200));
    (choices, sizes).prop_map(
        |((shape, first_edge, measured_at, degrees, planing), (board, thickness, kerf, strip))| Job {
            shape,
            first_edge,
            measured_at,
            board,
            thickness,
            degrees,
            kerf,
            strip,
            planing,
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, max_global_rejects: 20_000, ..ProptestConfig::default() })]

    #[test]
    fn ripping_it_gives_the_strips_of_the_answer(job in job()) {
        check(&job)?;
    }
}

/// The handbook's own boards, ripped: rows, and an upright blade that leaves nothing.
#[test]
fn boards_of_the_handbook() {
    for (shape, board, thickness, degrees, kerf, strip) in [
        (Shape::Parallelogram, 300.0, 18.0, 45.0, 3.2, 40.0),
        (Shape::Trapezoid, 300.0, 18.0, 45.0, 3.2, 60.0),
        (Shape::Trapezoid, 250.0, 12.0, 22.5, 2.2, 30.0),
        (Shape::CleatPair, 150.0, 18.0, 45.0, 3.2, 40.0),
        (Shape::Parallelogram, 126.4, 18.0, 0.0, 3.2, 40.0),
    ] {
        let (first_edge, measured_at, planing) = (FirstEdge::Square, MeasuredAt::WideFace, 0.0);
        check(&Job { shape, first_edge, measured_at, board, thickness, degrees, kerf, strip, planing }).unwrap();
    }
}
