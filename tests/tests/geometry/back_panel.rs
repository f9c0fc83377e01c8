//! Back panels, put into their openings again as shapes of the `geo` crate: for every combination of the smallest and
//! largest opening and depths, the panel lies in the room between its stops or does not, and overlaps its grooves by
//! what the answer promises. A leaning opening is tried turn by turn. No formula of the card is used.

use geo::{Area, BooleanOps, Coord, Point, Polygon, Rect, Relate, Rotate, point};
use proptest::prelude::*;
use scantling::cards::back_panel::{Across, Answer, Division, Edge, Fit, Hold, Inputs, Seams, Way, solve};
use scantling::measure::{Figure, Length, Reading};
use scantling::stock::movement::Sheet;

/// Polygon clipping snaps to a grid of about a millionth of the opening.
const NEAR_MM: f64 = 1e-3;
/// Longer than any panel here: an edge that nothing stops.
const FAR_MM: f64 = 1e4;

/// One direction: an opening with a ±, and two edges with their depths with a ±.
#[derive(Clone, Debug)]
struct Direction {
    opening: (f64, f64),
    edges: [(Way, f64, f64); 2],
}

#[derive(Clone, Debug)]
struct Job {
    width: Direction,
    height: Direction,
    clearance: f64,
    least: f64,
    strain_percent: f64,
}

fn with_doubt((nominal, doubt): (f64, f64)) -> String {
    if doubt == 0.0 { nominal.to_string() } else { format!("{nominal} ± {doubt}") }
}

impl Job {
    fn inputs(&self) -> Inputs {
        let edge = |(way, depth, doubt): (Way, f64, f64)| Edge::new(way, &with_doubt((depth, doubt)));
        let ([left, right], [bottom, top]) = (self.width.edges.map(edge), self.height.edges.map(edge));
        Inputs {
            opening_width: Reading::mm(&with_doubt(self.width.opening)),
            opening_height: Reading::mm(&with_doubt(self.height.opening)),
            left,
            right,
            top,
            bottom,
            clearance: Reading::mm(&self.clearance.to_string()),
            least_engagement: Reading::mm(&self.least.to_string()),
            sheet: Sheet::Own,
            strain: Figure::new(self.strain_percent.to_string()),
            division: Division::Whole,
            ..Inputs::default()
        }
    }
}

/// An opening as it may really be: its size, how far each edge's stop or nail lies outside its face, and how deep
/// each edge can be covered.
#[derive(Clone, Copy)]
struct Case {
    opening: f64,
    stops: [f64; 2],
    held: [f64; 2],
}

impl Direction {
    fn cases(&self) -> Vec<Case> {
        let ends = |(nominal, doubt): (f64, f64)| [nominal - doubt, nominal + doubt];
        let mut cases = Vec::new();
        for opening in ends(self.opening) {
            for first in ends((self.edges[0].1, self.edges[0].2)) {
                for second in ends((self.edges[1].1, self.edges[1].2)) {
                    let depths = [first, second];
                    let all_past = self.edges.iter().all(|edge| edge.0 == Way::PastEdge);
                    let stop = |edge: usize| match self.edges[edge].0 {
                        Way::HeldShort => 0.0,
                        Way::PastEdge if all_past => FAR_MM,
                        _ => depths[edge],
                    };
                    let held = |edge: usize| {
                        if self.edges[edge].0 == Way::HeldShort { -depths[edge] } else { depths[edge] }
                    };
                    cases.push(Case { opening, stops: [stop(0), stop(1)], held: [held(0), held(1)] });
                }
            }
        }
        cases
    }

    /// Whether a panel so long lies in the room in every case; the room and the panel are drawn 100 mm deep.
    fn always_goes_in(&self, length: f64) -> bool {
        self.cases().iter().all(|case| {
            let room = rectangle(-case.stops[0], case.opening + case.stops[1]);
            let panel = rectangle(-case.stops[0], -case.stops[0] + length);
            room.relate(&panel).is_covers()
        })
    }

    /// The least overlap of a panel so long with what carries each edge, when it is pushed hard to the other edge.
    fn least_overlap(&self, length: f64) -> [f64; 2] {
        let mut least = [f64::INFINITY; 2];
        for case in self.cases() {
            let pushed_to_first = rectangle(-case.held[0], -case.held[0] + length);
            let pushed_to_second = rectangle(case.opening + case.held[1] - length, case.opening + case.held[1]);
            let carriers = [rectangle(-case.held[0], 0.0), rectangle(case.opening, case.opening + case.held[1])];
            for (edge, pushed) in [(0, pushed_to_second), (1, pushed_to_first)] {
                if self.edges[edge].0 != Way::HeldShort {
                    let overlap = carriers[edge].intersection(&pushed).unsigned_area() / 100.0;
                    least[edge] = least[edge].min(overlap);
                }
            }
        }
        least
    }
}

fn rectangle(left: f64, right: f64) -> Polygon {
    Rect::new(Coord { x: left, y: 0.0 }, Coord { x: right, y: 100.0 }).to_polygon()
}

fn check(direction: &Direction, job: &Job, across: &Across) -> Result<(), TestCaseError> {
    let cut = across.size.nominal().as_mm();
    let (wet, dry) = (cut + cut * job.strain_percent / 100.0, cut - cut * job.strain_percent / 100.0);
    // A panel that touches its stops to within a grid step may be called either way.
    let spare = across.wet_spare_mm.unwrap_or(f64::INFINITY);
    if spare.abs() > NEAR_MM {
        let free = matches!(across.fit, Fit::Free | Fit::NothingToBind);
        prop_assert_eq!(direction.always_goes_in(wet), free, "wet {} in {:?}", wet, direction);
    }
    if let Some(largest) = across.largest.map(Length::as_mm) {
        prop_assert!(direction.always_goes_in(largest - NEAR_MM) && !direction.always_goes_in(largest + NEAR_MM));
        if (largest - cut).abs() > NEAR_MM {
            prop_assert_eq!(direction.always_goes_in(cut), across.fit != Fit::DoesNotGoIn);
        }
    }
    let overlaps = direction.least_overlap(dry);
    for (overlap, side) in overlaps.into_iter().zip([&across.first, &across.second]) {
        match side.engagement_mm {
            None => prop_assert_eq!(side.way, Way::HeldShort),
            Some(promised) => {
                prop_assert!((promised.max(0.0) - overlap).abs() < NEAR_MM, "bears {overlap}, promised {promised}");
            }
        }
    }
    let least = overlaps.into_iter().fold(f64::INFINITY, f64::min);
    match across.hold {
        Hold::NothingToBear => prop_assert!(least.is_infinite()),
        Hold::Bears => prop_assert!(least >= job.least - NEAR_MM),
        Hold::Short => prop_assert!(least < job.least + NEAR_MM && least > -NEAR_MM),
        Hold::FallsOut => prop_assert!(least < NEAR_MM),
    }
    sizes_that_work(direction, job, across)
}

/// Any size in the window neither binds nor comes short; a little outside of it one of the two fails.
fn sizes_that_work(direction: &Direction, job: &Job, across: &Across) -> Result<(), TestCaseError> {
    let strain = job.strain_percent / 100.0;
    // The room first: it is quicker to ask. Leeway above zero asks whether it nearly works, below zero whether well.
    let works = |size: f64, leeway: f64| {
        direction.always_goes_in(size * (1.0 + strain) - leeway)
            && direction.least_overlap(size * (1.0 - strain)).iter().all(|overlap| *overlap >= job.least - leeway)
    };
    match across.works_mm {
        Some(window) => {
            let inside = window.from_mm + 0.01;
            if window.to_mm.is_none_or(|to_mm| to_mm > inside + 0.01) {
                prop_assert!(works(inside, NEAR_MM), "{inside} should work: {window:?}");
            }
            if window.from_mm > 0.01 {
                prop_assert!(!works(window.from_mm - 0.01, -NEAR_MM), "{window:?}");
            }
            if let Some(to_mm) = window.to_mm {
                prop_assert!(!works(to_mm + 0.01, -NEAR_MM), "{window:?}");
            }
        }
        None => {
            let longest = direction.opening.0 + 80.0;
            for step in 0..100 {
                let size = longest - f64::from(step);
                prop_assert!(!works(size, -NEAR_MM), "{size} works, the answer knows of none");
            }
        }
    }
    Ok(())
}

fn tenths(range: std::ops::Range<u32>) -> impl Strategy<Value = f64> {
    range.prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn direction() -> impl Strategy<Value = Direction> {
    let doubt = || prop::sample::select(vec![0.0, 0.0, 0.5, 1.0]);
    let edge = || (prop::sample::select(Way::ALL), tenths(30..200), prop::sample::select(vec![0.0, 0.0, 0.3]));
    (tenths(2000..14_000), doubt(), edge(), edge())
        .prop_map(|(opening, doubt, first, second)| Direction { opening: (opening, doubt), edges: [first, second] })
}

fn job() -> impl Strategy<Value = Job> {
    let strain = prop::sample::select(vec![0.0, 0.06, 0.15, 0.2, 0.4]);
    (direction(), direction(), tenths(0..60), tenths(1..40), strain).prop_map(
        |(width, height, clearance, least, strain_percent)| Job { width, height, clearance, least, strain_percent },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, ..ProptestConfig::default() })]

    #[test]
    fn goes_in_and_bears_as_promised(job in job()) {
        let answer = solve(&job.inputs()).unwrap();
        check(&job.width, &job, &answer.width)?;
        check(&job.height, &job, &answer.height)?;
    }

    /// The opening drawn as a parallelogram, its diagonals measured on the drawing: the lean comes back, and the panel
    /// goes in when some turn of it is no wider than either pair of sides.
    #[test]
    fn a_leaning_opening(
        (width, height) in (tenths(3000..9000), tenths(3000..9000)),
        lean in (-60..=60_i32).prop_map(|steps| f64::from(steps) / 40.0),
        (groove, clearance) in (tenths(40..120), tenths(0..60)),
    ) {
        let corners = leaning(width, height, lean);
        let [first, second] = [length(corners[0], corners[2]), length(corners[1], corners[3])];
        let groove_text = groove.to_string();
        let edge = || Edge::new(Way::Groove, &groove_text);
        let answer = solve(&Inputs {
            opening_width: Reading::mm(&width.to_string()),
            opening_height: Reading::mm(&height.to_string()),
            left: edge(),
            right: edge(),
            top: edge(),
            bottom: edge(),
            clearance: Reading::mm(&clearance.to_string()),
            first_diagonal: Reading::mm(&format!("{first:.9}")),
            second_diagonal: Reading::mm(&format!("{second:.9}")),
            division: Division::Whole,
            ..Inputs::default()
        }).unwrap();
        let found = answer.squareness.lean.unwrap();
        let stands_over = corners[3].x - corners[0].x;
        prop_assert!((found.over_height_mm - stands_over).abs() < 1e-5, "{} over, drawn {stands_over}", found.over_height_mm);
        prop_assert!(found.misfit_mm.abs() < 1e-5);
        let square = length(Coord { x: 0.0, y: 0.0 }, Coord { x: width, y: height });
        prop_assert!((answer.squareness.diagonal_mm - square).abs() < 1e-9, "{square}");
        let spare = best_turn_spare(&answer, &corners, groove, lean);
        // The turns are tried in steps, so a hair's breadth is left undecided.
        if spare.abs() > 1e-2 {
            prop_assert_eq!(found.goes_in, spare > 0.0, "spare {}", spare);
        }
    }

    /// Pieces out of scraps fill the panel exactly, one after the other, none wider than its scrap; or all scraps
    /// together are too little, and what is missing is said.
    #[test]
    fn scraps_fill_the_panel(
        scraps in prop::collection::vec(1..8000_u32, 1..12),
        least in 0..100_u32,
        vertical: bool,
    ) {
        let inputs = Inputs {
            division: Division::Scraps,
            scraps: scraps.iter().map(|tenths| Reading::mm(&format!("{tenths}/10"))).collect(),
            least_piece: Reading::mm(&least.to_string()),
            seams: if vertical { Seams::Vertical } else { Seams::Horizontal },
            ..Inputs::default()
        };
        let answer = solve(&inputs).unwrap();
        let total = if vertical { answer.width.size } else { answer.height.size }.nominal();
        let scrap = |index: usize| Length::mm(i64::from(scraps[index]), 10).unwrap();
        let mut reached = Length::ZERO;
        for piece in &answer.pieces.list {
            let from = scrap(piece.scrap.unwrap());
            prop_assert!(piece.width.is_positive() && piece.width <= from);
            prop_assert_eq!(piece.width.plus(piece.cut_off).unwrap(), from);
            prop_assert_eq!(piece.starts_at, reached);
            reached = reached.plus(piece.width).unwrap();
        }
        prop_assert_eq!(reached.plus(answer.pieces.missing).unwrap(), total);
        let have: u32 = scraps.iter().sum();
        let enough = total <= Length::mm(i64::from(have), 10).unwrap();
        prop_assert_eq!(answer.pieces.missing.is_zero(), enough);
        prop_assert_eq!(answer.pieces.list.len() + answer.pieces.unused.len(), scraps.len());
        if enough {
            prop_assert_eq!(answer.pieces.list.len(), fewest(&scraps, total), "more seams than needed");
            prop_assert_eq!(answer.pieces.seams_at.len() + 1, answer.pieces.list.len());
        }
    }
}

/// By brute force over all choices: the fewest scraps that together reach the total.
fn fewest(scraps: &[u32], total: Length) -> usize {
    let reaches = |choice: u32| {
        let sum: u32 =
            scraps.iter().enumerate().filter(|(bit, _)| choice >> bit & 1 == 1).map(|(_, width)| width).sum();
        Length::mm(i64::from(sum), 10).unwrap() >= total
    };
    (0..1_u32 << scraps.len()).filter(|&choice| reaches(choice)).map(u32::count_ones).min().unwrap() as usize
}

/// Bottom left, bottom right, top right, top left of an opening whose sides lean to the right.
fn leaning(width: f64, height: f64, degrees: f64) -> [Coord; 4] {
    let top = Point::new(0.0, height).rotate_around_point(-degrees, point! { x: 0.0, y: 0.0 }).0;
    [Coord { x: 0.0, y: 0.0 }, Coord { x: width, y: 0.0 }, Coord { x: width + top.x, y: top.y }, top]
}

fn length(from: Coord, to: Coord) -> f64 {
    (to.x - from.x).hypot(to.y - from.y)
}

/// The most room that is left by the best of many turns of the panel; below zero it goes in at none.
fn best_turn_spare(answer: &Answer, opening: &[Coord; 4], groove: f64, lean: f64) -> f64 {
    let corner = Coord { x: answer.width.size.nominal().as_mm(), y: answer.height.size.nominal().as_mm() };
    let panel = Rect::new(Coord { x: 0.0, y: 0.0 }, corner).to_polygon();
    // Square to the sides and square to the ends.
    let side = opening[3] - opening[0];
    let square_to = [Coord { x: side.y, y: -side.x } / side.x.hypot(side.y), Coord { x: 0.0, y: 1.0 }];
    (0..=4000)
        .map(|step| {
            let turned = panel.rotate_around_point(-lean * f64::from(step) / 4000.0, point! { x: 0.0, y: 0.0 });
            square_to
                .iter()
                .map(|across| {
                    let room = extent(opening, *across) + 2.0 * groove;
                    room - extent(&turned.exterior().0, *across)
                })
                .fold(f64::INFINITY, f64::min)
        })
        .fold(f64::NEG_INFINITY, f64::max)
}

/// From the first to the last of some points, seen along a direction.
fn extent(points: &[Coord], along: Coord) -> f64 {
    let places = points.iter().map(|at| at.x * along.x + at.y * along.y);
    places.clone().fold(f64::NEG_INFINITY, f64::max) - places.fold(f64::INFINITY, f64::min)
}
