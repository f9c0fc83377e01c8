//! Shelves against finite elements: 240 beam elements with two degrees of freedom a node, assembled here and solved
//! with `nalgebra`; the stiffness of board and strip by adding up thin layers of the cross-section. Nothing of the
//! card's closed forms is used.

use nalgebra::{Matrix2, Vector2};
use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::shelf::{Answer, Inputs, Load, PartOf, Strip, Support, solve};
use scantling::measure::{Figure, Reading};
use scantling::stock::materials::Choice;

/// Of them every second, third and fortieth part ends at a node.
pub(crate) const ELEMENTS: usize = 240;
const GRAVITY: f64 = 9.806_65;
/// The elements' cubics are exact at nodes under even and nodal loads; what is left is the solver's rounding.
const NODE_TOLERANCE: f64 = 1e-6;

/// What the finite elements say.
pub(crate) struct Bent {
    /// Sag of each node, mm.
    pub(crate) sag: Vec<f64>,
    /// Force on each support, N.
    pub(crate) reactions: Vec<f64>,
    /// Largest moment at a node, N·mm.
    pub(crate) moment: f64,
}

/// Solves `K u = f` for a shelf of `span` mm; `even` N/mm all along, `point` N in the middle of the first bay.
///
/// A node has two unknowns, its sag and its rotation times the element's length (which keeps the numbers alike), so K is
/// a band of 2 by 2 blocks and is eliminated block by block.
pub(crate) fn finite_elements(support: Support, span: f64, stiffness: f64, even: f64, point: f64) -> Bent {
    let (bays, fixed): (usize, &[usize]) = match support {
        Support::Loose => (1, &[]),
        Support::FixedBothEnds => (1, &[0, ELEMENTS]),
        Support::FixedOneEnd => (1, &[0]),
        Support::OneDivider => (2, &[]),
        Support::TwoDividers => (3, &[]),
    };
    let h = span / ELEMENTS as f64;
    let scale = stiffness / h.powi(3);
    let first = Matrix2::new(12.0, 6.0, 6.0, 4.0) * scale;
    let second = Matrix2::new(12.0, -6.0, -6.0, 4.0) * scale;
    let across = Matrix2::new(-12.0, 6.0, -6.0, 2.0) * scale;
    let (first_load, second_load) = (Vector2::new(0.5, 1.0 / 12.0), Vector2::new(0.5, -1.0 / 12.0));
    let (first_load, second_load) = (first_load * (even * h), second_load * (even * h));
    let mut diagonal = vec![Matrix2::zeros(); ELEMENTS + 1];
    let mut beside = vec![across; ELEMENTS];
    let mut force = vec![Vector2::zeros(); ELEMENTS + 1];
    for at in 0..ELEMENTS {
        diagonal[at] += first;
        diagonal[at + 1] += second;
        force[at] += first_load;
        force[at + 1] += second_load;
    }
    let middle = ELEMENTS / bays / 2;
    force[middle].x += point;
    let supported: Vec<usize> = (0..=bays).map(|bay| bay * ELEMENTS / bays).collect();
    for (node, unknown) in supported.iter().map(|node| (*node, 0)).chain(fixed.iter().map(|node| (*node, 1))) {
        diagonal[node].row_mut(unknown).fill(0.0);
        diagonal[node].column_mut(unknown).fill(0.0);
        diagonal[node][(unknown, unknown)] = scale;
        force[node][unknown] = 0.0;
        if node < ELEMENTS {
            beside[node].row_mut(unknown).fill(0.0);
        }
        if node > 0 {
            beside[node - 1].column_mut(unknown).fill(0.0);
        }
    }
    for at in 1..=ELEMENTS {
        let factor = beside[at - 1].transpose() * diagonal[at - 1].try_inverse().expect("a held beam is stable");
        diagonal[at] -= factor * beside[at - 1];
        let carried = factor * force[at - 1];
        force[at] -= carried;
    }
    let mut moved = vec![Vector2::zeros(); ELEMENTS + 1];
    for at in (0..=ELEMENTS).rev() {
        let rest = if at < ELEMENTS { force[at] - beside[at] * moved[at + 1] } else { force[at] };
        moved[at] = diagonal[at].try_inverse().expect("a held beam is stable") * rest;
    }
    // What each element asks of its two nodes: an upward force and a moment (over h).
    let ends = |at: usize| {
        let left = first * moved[at] + across * moved[at + 1] - first_load;
        let right = across.transpose() * moved[at] + second * moved[at + 1] - second_load;
        (left, right)
    };
    let pull = |node: usize| {
        let left = if node > 0 { ends(node - 1).1.x } else { 0.0 };
        let right = if node < ELEMENTS { ends(node).0.x } else { 0.0 };
        -(left + right)
    };
    Bent {
        sag: moved.iter().map(|node| node.x).collect(),
        reactions: supported.iter().map(|node| pull(*node)).collect(),
        moment: (0..ELEMENTS)
            .map(ends)
            .fold(0.0, |most, (left, right)| (left.y * h).abs().max((right.y * h).abs()).max(most)),
    }
}

/// A rectangle of the section: from and to above the lowest fibre, width, stiffness.
type Fibre = (f64, f64, f64, f64);

/// Adds up layers of a 100th of a millimetre: neutral axis, and E·I about it.
fn layered(parts: &[Fibre]) -> (f64, f64) {
    let layers = |about: f64| {
        let (mut area, mut first, mut second) = (0.0, 0.0, 0.0);
        for &(from, to, width, stiffness) in parts {
            let count = ((to - from) * 100.0).round().max(1.0);
            let thin = (to - from) / count;
            let mut y = from + thin / 2.0 - about;
            while y < to - about {
                area += stiffness * width * thin;
                first += stiffness * width * thin * y;
                second += stiffness * width * thin * y * y;
                y += thin;
            }
        }
        (area, first, second)
    };
    let (area, first, _) = layers(0.0);
    let axis = first / area;
    (axis, layers(axis).2)
}

fn solved(inputs: &Inputs) -> Answer {
    solve(inputs).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn near(got: f64, want: f64, within: f64, what: &str) {
    assert!((got - want).abs() <= within, "{what}: the card says {got}, finite elements {want}");
}

/// A shelf in whole millimetres, with the strip's size if it has one.
#[derive(Clone, Debug)]
struct Shelf {
    support: Support,
    span: u32,
    depth: u32,
    thickness: u32,
    strip: Strip,
    strip_size: (u32, u32),
    load: Load,
    mass: u32,
    share: u32,
}

impl Shelf {
    /// Board of MDF, strip of oak, with the table's values, which the test reads from the answer.
    fn inputs(&self) -> Inputs {
        let mm = |whole: u32| Reading::mm(&whole.to_string());
        let figure = |whole: u32| Figure::new(whole.to_string());
        Inputs {
            material: Choice::find("mdf").unwrap(),
            strip_material: Choice::find("oak_european").unwrap(),
            support: self.support,
            span: mm(self.span),
            depth: mm(self.depth),
            thickness: mm(self.thickness),
            strip: self.strip,
            strip_width: mm(self.strip_size.0),
            strip_height: mm(self.strip_size.1),
            load: self.load,
            per_metre: figure(self.mass),
            middle: figure(self.mass),
            share: figure(self.share),
            ..Inputs::default()
        }
    }

    fn fibres(&self, board_mpa: f64, strip_mpa: f64) -> Vec<Fibre> {
        let (depth, t) = (f64::from(self.depth), f64::from(self.thickness));
        let (width, h) = (f64::from(self.strip_size.0), f64::from(self.strip_size.1));
        let top = t.max(h);
        match self.strip {
            Strip::None => vec![(0.0, t, depth, board_mpa)],
            Strip::Front => vec![(top - t, top, depth, board_mpa), (top - h, top, width, strip_mpa)],
            Strip::FrontAndBack => vec![(top - t, top, depth, board_mpa), (top - h, top, 2.0 * width, strip_mpa)],
            Strip::Under => vec![(h, h + t, depth, board_mpa), (0.0, h, width, strip_mpa)],
        }
    }

    fn check(&self) {
        let answer = solved(&self.inputs());
        let (span, bays) = (f64::from(self.span), f64::from(self.support.bays()));
        let strip = answer.strip.unwrap_or(answer.board);
        let (axis, first_day) = layered(&self.fibres(answer.board.stiffness_mpa, strip.stiffness_mpa));
        let crept = |used: scantling::cards::shelf::Used| used.stiffness_mpa / (1.0 + used.creep);
        let (_, later) = layered(&self.fibres(crept(answer.board), crept(strip)));
        let own = answer.own_weight_kg * GRAVITY / span;
        let mass = f64::from(self.mass);
        let (even, point) = match self.load {
            Load::Middle => (0.0, mass * GRAVITY),
            _ => (mass * GRAVITY / 1000.0, 0.0),
        };
        let bent =
            |stiffness, share: f64| finite_elements(self.support, span, stiffness, own + share * even, share * point);
        let all = bent(first_day, 1.0);
        let share = f64::from(self.share) / 100.0;
        let (before, after) = (bent(first_day, share), bent(later, share));
        let late = |node: usize| all.sag[node] - before.sag[node] + after.sag[node];
        // Layers of 0.01 mm miss a millionth of a thin board's stiffness.
        let tolerance = (NODE_TOLERANCE + 2e-6) * answer.long_term_mm;
        for (place, node) in answer.line.iter().zip((0..=ELEMENTS).step_by(ELEMENTS / 40)) {
            near(place.instant_mm, all.sag[node], tolerance, "sag on the first day");
            near(place.long_term_mm, late(node), tolerance, "sag after years");
        }
        let deepest = all.sag.iter().copied().fold(0.0, f64::max);
        assert!(answer.instant_mm >= deepest - tolerance, "no node sags more than the card's deepest place");
        // Between nodes the deepest place is at most an eighth of w″ h² deeper: 1e-3 of the sag at 80 elements a bay.
        near(answer.instant_mm, deepest, 1e-3 * deepest, "deepest on the first day");
        let deepest = (0..=ELEMENTS).map(late).fold(0.0, f64::max);
        near(answer.long_term_mm, deepest, 1e-3 * deepest, "deepest after years");
        assert!((answer.deepest_at_mm - span / bays / 2.0).abs() < span / bays * 0.11);
        let total = (own + even) * span + point;
        assert_eq!(answer.supports.len(), all.reactions.len());
        for (carried, force) in answer.supports.iter().zip(&all.reactions) {
            near(carried.force_n, *force, 1e-5 * total, "reaction");
        }
        let stress = |part: Fibre, axis: f64, stiffness: f64| {
            part.3 * all.moment * (part.1 - axis).abs().max((part.0 - axis).abs()) / stiffness
        };
        for strength in &answer.strength {
            let at = usize::from(strength.part == PartOf::Strip);
            let (late_axis, _) = layered(&self.fibres(crept(answer.board), crept(strip)));
            let now = stress(self.fibres(answer.board.stiffness_mpa, strip.stiffness_mpa)[at], axis, first_day);
            let then = stress(self.fibres(crept(answer.board), crept(strip))[at], late_axis, later);
            // The largest moment between supports may lie between nodes.
            near(strength.stress_mpa, now.max(then), 2e-4 * now.max(then), "stress");
        }
    }
}

#[test]
fn every_support_load_and_strip_agrees_with_finite_elements() {
    for support in Support::ALL {
        for load in [Load::PerMetre, Load::Middle] {
            for strip in Strip::ALL {
                let span = 700 * u32::from(support.bays());
                let (strip, strip_size, load) = (*strip, (20, 45), load);
                let shelf = Shelf {
                    support: *support,
                    span,
                    depth: 300,
                    thickness: 18,
                    strip,
                    strip_size,
                    load,
                    mass: 25,
                    share: 100,
                };
                shelf.check();
            }
        }
    }
}

proptest! {
    #[test]
    fn any_shelf_agrees_with_finite_elements(
        support in select(Support::ALL),
        sizes in (300_u32..2400, 100_u32..500, 9_u32..40),
        strip in select(Strip::ALL),
        strip_size in (10_u32..60, 10_u32..100),
        load in select(&[Load::PerMetre, Load::Middle][..]),
        mass in 1_u32..80,
        share in 0_u32..=100,
    ) {
        let (span, depth, thickness) = sizes;
        Shelf { support, span, depth, thickness, strip, strip_size, load, mass, share }.check();
    }
}
