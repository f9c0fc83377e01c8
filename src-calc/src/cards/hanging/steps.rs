//! The working of a hanging cabinet, line by line.

use super::hold::Held;
use super::lift::{
    LOAD_CONSTANT_KG, Lift, Tilt, grip_factor, height_factor, reach_factor, travel_factor, twist_factor,
};
use super::pull::{Pull, friction_angle};
use super::read::{Board, Read};
use super::read_fixings::Holding;
use super::weigh::{Weighed, What};
use super::{GRAVITY, Hung};
use crate::measure::Quantity;
use crate::source::{GEOMETRY, Source};
use crate::stock::fixings;
use crate::working::Working;

const TYPED: Source = Source::practice("your own figure");
const MEAN: Source = Source::practice("statics: the mean of the parts' centres, each by its mass");
const STATICS: Source =
    Source::practice("statics: moments about the lower rear edge, where the cabinet presses on the wall");
const WEDGE: Source = Source::practice(
    "statics: a cabinet that settles on a bevel presses outwards; friction of wood on wood 0.3, an angle φ of 16.7°",
);
const PRYING: Source = Source::practice(
    "statics: the strip tips about its lower edge, pulled at its upper edge and loaded half its thickness out",
);
const ADDED: Source = Source::practice("statics: shares of pull and shear added, the strict way");
const SQUARED: Source =
    Source::memory("EN 1995-1-1, 8.28: for screws the squares may be added; shown, it does not decide");
const NIOSH: Source = Source::published(
    "revised NIOSH lifting equation (DHHS/NIOSH 94-110), for a lift that is not repeated; the twist's 0.0032 and the grip's factors are from memory",
);
const TEAM: Source =
    Source::memory("HSE manual handling: two people two thirds of what both can lift, three people half");
const TILT: Source =
    Source::practice("plane geometry: tipped about an edge, the diagonal of the side stands upright once");

/// The lines, in the order in which a person would do it.
pub(super) fn working(
    read: &Read,
    weighed: &Weighed,
    (lift, tilt): (&Lift, &Tilt),
    pull: &Pull,
    held: &Held,
) -> Working {
    let mut steps = Working::default();
    masses(&mut steps, read, weighed);
    by_hand(&mut steps, read, lift);
    let (h, d) = (("h", Quantity::from(read.height)), ("d", Quantity::from(read.depth)));
    steps.step("Diagonal of the side", "D = √(h² + d²)", [h, d], Quantity::mm(tilt.diagonal_mm), TILT);
    forces(&mut steps, read, weighed, pull);
    fixing(&mut steps, read, pull, held);
    steps
}

/// `n` panels of `a` by `b`, mm.
fn panels(steps: &mut Working, what: &'static str, board: Board, [n, a, b]: [f64; 3], kg: f64) {
    let given = [
        ("n", Quantity::number(n)),
        ("ρ", Quantity::kg_per_m3(board.density_kg_m3)),
        ("a", Quantity::mm(a)),
        ("b", Quantity::mm(b)),
        ("t", Quantity::mm(board.thickness_mm)),
    ];
    let source = board.source.unwrap_or(TYPED);
    steps.step(what, "m = n · ρ · a · b · t / 10⁹", given, Quantity::kg(kg), source);
}

fn masses(steps: &mut Working, read: &Read, weighed: &Weighed) {
    let (width, height, depth) = (read.width.as_mm(), read.height.as_mm(), read.depth.as_mm());
    for part in &weighed.parts {
        match (part.what, &read.panels, read.doors) {
            (What::Sides, Some(of), _) => panels(steps, "Both sides", of.board, [2.0, height, depth], part.kg),
            (What::TopAndBottom, Some(of), _) => {
                let inner = width - 2.0 * of.board.thickness_mm;
                panels(steps, "Top and bottom", of.board, [2.0, inner, depth], part.kg);
            }
            (What::Back, Some(of), _) => {
                let t = of.board.thickness_mm;
                panels(steps, "Back", of.back, [1.0, width - 2.0 * t, height - 2.0 * t], part.kg);
            }
            (What::Shelves, Some(of), _) => {
                let deep = depth - of.inset_mm - of.back.thickness_mm;
                let inner = width - 2.0 * of.board.thickness_mm;
                panels(steps, "Shelves", of.board, [f64::from(read.shelves), inner, deep], part.kg);
            }
            (What::Doors, _, Some((count, board))) => {
                let leaves = f64::from(count);
                panels(steps, "Doors", board, [leaves, width / leaves, height], part.kg);
            }
            (What::Contents, ..) => steps.step("Contents", "m", [], Quantity::kg(part.kg), TYPED),
            _ => steps.step("Cabinet without doors", "m", [], Quantity::kg(part.kg), TYPED),
        }
    }
    let given = [("mc", Quantity::kg(weighed.cabinet_kg)), ("ms", Quantity::kg(weighed.contents_kg))];
    steps.step("Cabinet and contents", "M = mc + ms", given, Quantity::kg(weighed.total_kg), GEOMETRY);
    let formula = "e = sum of each mass times its distance, over M";
    let out = Quantity::mm(weighed.shut.out_mm);
    steps.step("Centre of gravity from the wall, doors shut", formula, [], out, MEAN);
    if let Some(open) = weighed.open {
        let out = Quantity::mm(open.out_mm);
        steps.step("Centre of gravity from the wall, doors open", formula, [], out, MEAN);
    }
}

fn by_hand(steps: &mut Working, read: &Read, lift: &Lift) {
    let handled = &read.handled;
    let formula = "R = LC · HM · VM · DM · AM · CM";
    for (what, hands_mm, kg) in [
        ("One person may lift, at the start", handled.from_mm, lift.start_kg),
        ("One person may lift, at the end", handled.to_mm, lift.end_kg),
    ] {
        let given = [
            ("LC", Quantity::kg(LOAD_CONSTANT_KG)),
            ("HM", Quantity::number(reach_factor(handled))),
            ("VM", Quantity::number(height_factor(hands_mm))),
            ("DM", Quantity::number(travel_factor(handled))),
            ("AM", Quantity::number(twist_factor(handled))),
            ("CM", Quantity::number(grip_factor(handled.grip, hands_mm))),
        ];
        steps.step(what, formula, given, Quantity::kg(kg), NIOSH);
    }
    let several = lift.crews.iter().skip(1);
    for ((what, formula), crew) in
        [("Two people", "R₂ = 2 · R · 2 / 3"), ("Three people", "R₃ = 3 · R / 2")].into_iter().zip(several)
    {
        let given = [("R", Quantity::kg(lift.limit_kg))];
        steps.step(what, formula, given, Quantity::kg(crew.limit_kg), TEAM);
    }
}

fn forces(steps: &mut Working, read: &Read, weighed: &Weighed, pull: &Pull) {
    let w = ("W", Quantity::newtons(pull.weight_n));
    let given = [("M", Quantity::kg(weighed.total_kg)), ("g", Quantity::number(GRAVITY))];
    steps.step("Weight", "W = M · g", given, w.1, STATICS);
    let given = [w, ("e", Quantity::mm(pull.out_mm)), ("h", Quantity::mm(pull.arm_mm))];
    let lever = Quantity::newtons(pull.lever_n);
    steps.step("Pull of the lever over the lower edge", "H = W · e / h", given, lever, STATICS);
    let Some(wedge_n) = pull.wedge_n else { return };
    let wedge = ("K", Quantity::newtons(wedge_n));
    let friction = Quantity::degrees(friction_angle().to_degrees());
    let given = [w, ("β", Quantity::degrees(read.bevel_degrees)), ("φ", friction)];
    steps.step("Wedge of the bevel", "K = W · tan(β − φ)", given, wedge.1, WEDGE);
    let t = ("T", Quantity::newtons(pull.pull_n));
    steps.step("Pull that counts", "T = max(H, K)", [("H", lever), wedge], t.1, WEDGE);
    let given = [
        t,
        ("l", Quantity::mm(read.strip_height.as_mm())),
        w,
        ("s", Quantity::mm(read.strip.as_mm())),
        ("v", Quantity::mm(read.fixings_up.as_mm())),
    ];
    let prying = Quantity::number(pull.prying);
    steps.step("The strip tips: so many times more", "p = (T · l + W · s / 2) / (T · v)", given, prying, PRYING);
}

fn fixing(steps: &mut Working, read: &Read, pull: &Pull, held: &Held) {
    let (allowed, each) = (&held.allowed, &held.each);
    let (ta, va) = (("Ta", Quantity::newtons(allowed.pull_n)), ("Va", Quantity::newtons(allowed.shear_n)));
    match read.holding {
        Holding::Screws(screw) => {
            let diameter = ("D", Quantity::mm(screw.diameter_mm));
            steps.step("Diameter of the screw", "D", [], diameter.1, fixings::GAUGES);
            let gravity = ("G", Quantity::number(screw.gravity));
            steps.step("Specific gravity of the stud", "G", [], gravity.1, fixings::STUDS);
            let thread = ("L", Quantity::mm(allowed.thread_mm.unwrap_or_default()));
            let in_stud = ("a", Quantity::mm(allowed.in_stud_mm.unwrap_or_default()));
            let given = [in_stud, ("l", Quantity::mm(screw.length_mm))];
            steps.step("Thread in the stud", "L = min(a, l · 2 / 3)", given, thread.1, fixings::THREAD);
            let permanent = Quantity::number(fixings::PERMANENT_FACTOR);
            steps.step("For a load that stays", "f", [], permanent, fixings::PERMANENT);
            let given = [("f", permanent), gravity, diameter, thread];
            steps.step("A screw may pull", "Ta = f · 19.6501 · G² · D · L", given, ta.1, fixings::WITHDRAWAL);
            let c = ("C", Quantity::mpa(fixings::lateral_constant(screw.gravity)));
            steps.step("C of the wood's group", "C", [gravity], c.1, fixings::GROUPS);
            let share = fixings::depth_share(allowed.in_stud_mm.unwrap_or_default(), screw.diameter_mm);
            let given = [("f", permanent), c, diameter, ("r", Quantity::number(share))];
            steps.step("A screw may carry along the wall", "Va = f · C · D² · r", given, va.1, fixings::LATERAL);
            let comes_out = Quantity::newtons(allowed.comes_out_n.unwrap_or_default());
            let given = [gravity, diameter, thread];
            steps.step("It comes out at about", "P = 108.248 · G² · D · L", given, comes_out, fixings::ULTIMATE);
        }
        Holding::Packet { .. } => {
            steps.step("One may be pulled by", "Ta", [], ta.1, fixings::PACKET);
            steps.step("One may carry along the wall", "Va", [], va.1, fixings::PACKET);
        }
    }
    let n = ("n", Quantity::count(read.count.into()));
    let (t, p) = (("T", Quantity::newtons(pull.pull_n)), ("p", Quantity::number(pull.prying)));
    let (t1, v1) = (("T₁", Quantity::newtons(each.pull_n)), ("V₁", Quantity::newtons(each.shear_n)));
    match read.hung {
        Hung::Cleat => steps.step("Pull on each", "T₁ = T · p / n", [t, p, n], t1.1, STATICS),
        Hung::Rail => {
            let given = [("H", Quantity::newtons(pull.lever_n)), n];
            steps.step("Pull on each", "T₁ = H / n", given, t1.1, STATICS);
        }
    }
    steps.step("Shear on each", "V₁ = W / n", [("W", Quantity::newtons(pull.weight_n)), n], v1.1, STATICS);
    let given = [t1, ta, v1, va];
    if let Some(used) = each.used {
        steps.step("Used of what each may carry", "q = T₁ / Ta + V₁ / Va", given, Quantity::number(used), ADDED);
    }
    if let Some(squared) = each.used_squared {
        let formula = "q₂ = (T₁ / Ta)² + (V₁ / Va)²";
        steps.step("The same by squares", formula, given, Quantity::number(squared), SQUARED);
    }
}
