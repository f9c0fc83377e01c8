//! Hanging as rigid bodies: the panels, open doors and heaps of things are boxes put up here from the inputs, each with
//! its own weight at its own middle; cabinet, bevel and wall strip are set free and their equations of equilibrium are
//! solved with `nalgebra`. None of the card's formulas is used.

use nalgebra::{Matrix2, Matrix3, Vector2, Vector3};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::hanging::{Answer, Doors, Hung, Inputs, Load, TiltsUp, Weight, solve};
use scantling::measure::{AngleReading, Figure, Reading};
use scantling::stock::materials::Choice;

const GRAVITY: f64 = 9.806_65;
/// Relative; only rounding is left.
const NEAR: f64 = 1e-9;
/// What the card says of wood on wood.
const FRICTION: f64 = 0.3;

/// A box of one material: out from the wall, across, and up, mm.
#[derive(Clone, Copy, Debug)]
struct Solid {
    from: [f64; 3],
    to: [f64; 3],
    kg: f64,
}

impl Solid {
    fn new(from: [f64; 3], to: [f64; 3], density: f64) -> Self {
        let volume: f64 = from.iter().zip(to).map(|(from, to)| to - from).product();
        Self { from, to, kg: volume * density * 1e-9 }
    }

    fn middle(&self, axis: usize) -> f64 {
        f64::midpoint(self.from[axis], self.to[axis])
    }
}

#[derive(Debug)]
struct Job {
    size: [f64; 3],
    board: f64,
    back: f64,
    inset: f64,
    off: f64,
    shelves: usize,
    doors: Doors,
    door: f64,
    levels: [f64; 8],
    down: f64,
    hung: Hung,
    degrees: f64,
    strip: [f64; 3],
}

const CARCASS: (&str, f64) = ("osb_3", 650.0);
const BACK: (&str, f64) = ("hardboard_tempered", 1000.0);
const DOOR: (&str, f64) = ("particleboard_us_low", 728.0);

impl Job {
    fn inputs(&self) -> Inputs {
        let mm = |value: f64| Reading::mm(&value.to_string());
        let [width, height, depth] = self.size.map(mm);
        let [strip, strip_height, fixings_up] = self.strip.map(mm);
        let of = |(id, _): (&str, f64)| Choice::find(id).unwrap();
        Inputs {
            weight: Weight::Parts,
            width,
            height,
            depth,
            thickness: mm(self.board),
            material: of(CARCASS),
            back_thickness: mm(self.back),
            back_material: of(BACK),
            back_inset: mm(self.inset),
            shelves: Figure::new(self.shelves.to_string()),
            doors: self.doors,
            door_thickness: mm(self.door),
            door_material: of(DOOR),
            load: Load::Each,
            levels: self.levels.map(|kg| Figure::new(kg.to_string())),
            hung: self.hung,
            bevel: AngleReading::from(self.degrees.to_string().as_str()),
            bevel_down: mm(self.down),
            stands_off: mm(self.off),
            strip,
            strip_height,
            fixings_up,
            ..Inputs::default()
        }
    }

    /// The cabinet as it stands there, empty, its doors shut or at a right angle.
    fn cabinet(&self, open: bool) -> Vec<Solid> {
        let ([width, height, depth], t) = (self.size, self.board);
        let (rear, front) = (self.off, self.off + depth);
        let inner = (t, width - t);
        let across = |out: [f64; 2], up: [f64; 2], density| {
            Solid::new([out[0], inner.0, up[0]], [out[1], inner.1, up[1]], density)
        };
        let side = |left: f64| Solid::new([rear, left, 0.0], [front, left + t, height], CARCASS.1);
        let behind = rear + self.inset;
        let mut solids = vec![
            side(0.0),
            side(width - t),
            across([rear, front], [0.0, t], CARCASS.1),
            across([rear, front], [height - t, height], CARCASS.1),
            across([behind, behind + self.back], [t, height - t], BACK.1),
        ];
        solids.extend(
            self.floors().skip(1).map(|floor| across([behind + self.back, front], [floor - t, floor], CARCASS.1)),
        );
        let leaf = |hinge: f64, other: f64| {
            let (left, right) = (hinge.min(other), hinge.max(other));
            if open {
                Solid::new([front, hinge, 0.0], [front + (right - left), hinge + self.door, height], DOOR.1)
            } else {
                Solid::new([front, left, 0.0], [front + self.door, right, height], DOOR.1)
            }
        };
        match self.doors {
            Doors::None => {}
            Doors::One => solids.push(leaf(0.0, width)),
            Doors::Two => solids.extend([leaf(0.0, width / 2.0), leaf(width, width / 2.0)]),
        }
        solids
    }

    fn clear(&self) -> f64 {
        let boards = (self.shelves + 2) as f64 * self.board;
        (self.size[1] - boards) / (self.shelves + 1) as f64
    }

    /// The upper faces of the bottom and the shelves.
    fn floors(&self) -> impl Iterator<Item = f64> {
        let (board, clear) = (self.board, self.clear());
        (0..=self.shelves).map(move |level| board + level as f64 * (clear + board))
    }

    /// Everything, each level filled evenly from its floor to the one above.
    fn loaded(&self, open: bool) -> Vec<Solid> {
        let mut solids = self.cabinet(open);
        let out = [self.off + self.inset + self.back, self.off + self.size[2]];
        solids.extend(self.floors().zip(self.levels).map(|(floor, kg)| Solid {
            from: [out[0], self.board, floor],
            to: [out[1], self.size[0] - self.board, floor + self.clear()],
            kg,
        }));
        solids
    }
}

fn near(what: &str, got: f64, want: f64) -> Result<(), TestCaseError> {
    prop_assert!((got - want).abs() <= NEAR * want.abs().max(1.0), "{}: {} is not {}", what, got, want);
    Ok(())
}

/// The cabinet set free: held by a horizontal and a vertical force at `(at, arm)`, pushed out by the wall at its lower
/// edge. Unknown are the three forces; three equations say that nothing moves and nothing turns about the origin.
fn pull_of(solids: &[Solid], at: f64, arm: f64) -> f64 {
    // Columns: the wall's pull inwards, the fixings' lift, the wall's push outwards at the height of nought.
    let forces = Matrix3::new(
        -1.0, 0.0, 1.0, // along the wall's normal
        0.0, 1.0, 0.0, // upwards
        arm, at, 0.0, // turning about the origin, from up towards out
    );
    let weight: f64 = solids.iter().map(|solid| solid.kg * GRAVITY).sum();
    let turning: f64 = solids.iter().map(|solid| solid.kg * GRAVITY * solid.middle(0)).sum();
    let held = forces.lu().solve(&Vector3::new(0.0, weight, turning)).expect("one answer");
    assert!((held.x - held.z).abs() <= 1e-6 * weight, "what is pulled above is pushed below");
    held.x
}

/// The cabinet on a bevel that it slides down towards the wall, friction holding it back: unknown are the bevel's push
/// square to itself and the wall's push on the cabinet's back.
fn wedge_of(weight: f64, degrees: f64) -> f64 {
    let (sin, cos) = degrees.to_radians().sin_cos();
    let forces = Matrix2::new(
        cos + FRICTION * sin,
        0.0, // upwards
        sin - FRICTION * cos,
        -1.0, // along the wall's normal
    );
    forces.lu().solve(&Vector2::new(weight, 0.0)).expect("one answer").y
}

/// The wall strip set free: pulled out at its upper edge, loaded half its thickness out, held by its fixings and pressed
/// back by the wall at its lower edge. Unknown are that press, the fixings' pull and their lift at the wall's face.
fn fixings_pull(pull: f64, weight: f64, [thick, high, up]: [f64; 3]) -> f64 {
    let forces = Matrix3::new(
        1.0, -1.0, 0.0, // along the wall's normal
        0.0, 0.0, 1.0, // upwards
        0.0, up, 0.0, // turning about the lower edge at the wall, from up towards out
    );
    let turning = pull * high + weight * thick / 2.0;
    forces.lu().solve(&Vector3::new(-pull, weight, turning)).expect("one answer").y
}

fn check(job: &Job) -> Result<(), TestCaseError> {
    let Ok(answer) = solve(&job.inputs()) else { return Err(TestCaseError::reject("no such cabinet")) };
    weights(job, &answer)?;

    let arm = job.size[1] - job.down;
    let pull_at = |at: f64| {
        let shut = pull_of(&job.loaded(false), at, arm);
        shut.max(pull_of(&job.loaded(true), at, arm))
    };
    let pull = &answer.pull;
    // Wherever in the strip the bevel bears, at the wall itself the lever is longest: the card takes that one.
    near("lever", pull.lever_n, pull_at(0.0))?;
    for share in [0.25, 0.5, 1.0] {
        prop_assert!(pull_at(job.strip[0] * share) <= pull.lever_n * (1.0 + NEAR), "a strip that bears further out");
    }
    let weight = pull.weight_n;
    match job.hung {
        Hung::Rail => {
            near("pull", pull.pull_n, pull.lever_n)?;
            near("pull on each", answer.each.pull_n, pull_at(0.0) / f64::from(answer.count))?;
        }
        Hung::Cleat => {
            let wedge = wedge_of(weight, job.degrees);
            near("wedge", pull.wedge_n.unwrap(), wedge)?;
            let all = fixings_pull(pull_at(0.0).max(wedge), weight, job.strip);
            near("pull on each", answer.each.pull_n, all / f64::from(answer.count))?;
        }
    }
    near("shear on each", answer.each.shear_n, weight / f64::from(answer.count))
}

fn weights(job: &Job, answer: &Answer) -> Result<(), TestCaseError> {
    let mass = |solids: &[Solid]| solids.iter().map(|solid| solid.kg).sum::<f64>();
    let weighed = &answer.weighed;
    near("cabinet", weighed.cabinet_kg, mass(&job.cabinet(false)))?;
    near("all of it", weighed.total_kg, mass(&job.loaded(false)))?;
    for (open, centre) in [(false, Some(weighed.shut)), (true, weighed.open)] {
        let Some(centre) = centre else { continue };
        let solids = job.loaded(open);
        // Held up right below its centre, nothing turns.
        let turning = |axis: usize, at: f64| {
            solids.iter().map(|solid| solid.kg * (solid.middle(axis) - at)).sum::<f64>() / mass(&solids)
        };
        prop_assert!(turning(0, centre.out_mm).abs() < 1e-9 * job.size[1], "it turns about {centre:?}");
        prop_assert!(turning(2, centre.up_mm).abs() < 1e-9 * job.size[1], "it turns about {centre:?}");
    }
    tilt(job, answer)
}

/// Tips the side about its lower rear corner in small steps: the highest that any corner comes is the diagonal.
fn tilt(job: &Job, answer: &Answer) -> Result<(), TestCaseError> {
    let [_, height, depth] = job.size;
    let highest = |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        [[depth, 0.0], [depth, height], [0.0, height]]
            .map(|[out, up]: [f64; 2]| out * sin + up * cos)
            .into_iter()
            .fold(0.0, f64::max)
    };
    let most = (0..=9000).map(|step| highest(f64::from(step) / 100.0)).fold(0.0, f64::max);
    let tilt = &answer.tilt;
    prop_assert!((tilt.diagonal_mm - most).abs() < 1e-7 * most, "{} against {most}", tilt.diagonal_mm);
    near("at the angle said", highest(tilt.degrees), tilt.diagonal_mm)?;
    // The demo's ceiling is 2300 mm, of which 10 mm stay free.
    let clears = matches!(tilt.tilts_up, TiltsUp::Clears(_));
    prop_assert!(clears == (tilt.diagonal_mm <= 2290.0), "{tilt:?}");
    Ok(())
}

fn tenths(range: std::ops::Range<u32>) -> impl Strategy<Value = f64> {
    range.prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn job() -> impl Strategy<Value = Job> {
    let cabinet = ([tenths(2000..12_000), tenths(3000..24_000), tenths(1500..7000)], tenths(90..180), tenths(25..90));
    let places = (tenths(0..300), tenths(0..400), 0_usize..8, tenths(140..250), tenths(200..2500));
    let strip = [tenths(0..300), tenths(400..1200), tenths(100..400)];
    let choices = (select(Doors::ALL), select(Hung::ALL), select(vec![30.0, 37.5, 45.0, 60.0]));
    (cabinet, places, strip, choices, prop::array::uniform8(tenths(0..400))).prop_map(
        |((size, board, back), (inset, off, shelves, door, down), strip, (doors, hung, degrees), levels)| Job {
            size,
            board,
            back,
            inset,
            off,
            shelves,
            doors,
            door,
            levels,
            down,
            hung,
            degrees,
            strip,
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, max_global_rejects: 20_000, ..ProptestConfig::default() })]

    #[test]
    fn it_hangs_in_equilibrium(job in job()) {
        check(&job)?;
    }
}
