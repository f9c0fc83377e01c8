//! Beams as in any book of tables, and sections that can be worked out on paper.

use super::{bare, close, solved};
use crate::cards::shelf::beam::{Bay, Beam, Loads};
use crate::cards::shelf::{Inputs, PartOf, Strip, Support};
use crate::measure::Reading;
use crate::stock::materials::Choice;

const NEAR: f64 = 1e-9;
const L: f64 = 1000.0;

/// 1 N/mm everywhere, and nothing else.
fn even(support: Support) -> Beam {
    Beam::new(support, L, Loads::even(1.0))
}

/// 1000 N in the middle of the first bay, and nothing else.
fn point(support: Support) -> Beam {
    Beam::new(support, L, Loads { even: [0.0; 3], point: 1000.0 })
}

fn check(beam: &Beam, [over, between]: [f64; 2], reactions: &[f64], what: &str) {
    close(beam.support_moment(), over, NEAR, what);
    close(beam.sagging_moment(), between, NEAR, what);
    let got = beam.reactions();
    assert_eq!(got.len(), reactions.len(), "{what}");
    for (got, want) in got.into_iter().zip(reactions) {
        assert!((got - want).abs() < 1e-6, "{what}: got {got}, want {want}");
    }
}

/// Moments over a support and between them in shares of w·l², reactions of w·l: tables of continuous beams, every span
/// loaded.
#[test]
fn moments_and_reactions_of_an_even_load() {
    for (support, moments, reactions) in [
        (Support::Loose, [0.0, 1.0 / 8.0], &[0.5, 0.5][..]),
        (Support::FixedBothEnds, [1.0 / 12.0, 1.0 / 24.0], &[0.5, 0.5]),
        (Support::FixedOneEnd, [1.0 / 8.0, 9.0 / 128.0], &[0.625, 0.375]),
        (Support::OneDivider, [1.0 / 8.0, 9.0 / 128.0], &[0.375, 1.25, 0.375]),
        (Support::TwoDividers, [0.1, 0.08], &[0.4, 1.1, 1.1, 0.4]),
    ] {
        let newtons: Vec<f64> = reactions.iter().map(|share| share * L).collect();
        check(&even(support), moments.map(|share| share * L * L), &newtons, &format!("{support:?}"));
    }
}

/// The same of a load in the middle of the first bay, in shares of P·l and P. Three bays, by the three-moment equation:
/// 4 M₁ + M₂ = −3 P l / 8 and M₁ + 4 M₂ = 0, so M₁ = −P l / 10 and M₂ = P l / 40; under the load P l (1/4 − 1/20).
#[test]
fn moments_and_reactions_of_a_load_in_the_middle() {
    for (support, moments, reactions) in [
        (Support::Loose, [0.0, 1.0 / 4.0], &[0.5, 0.5][..]),
        (Support::FixedBothEnds, [1.0 / 8.0, 1.0 / 8.0], &[0.5, 0.5]),
        (Support::FixedOneEnd, [3.0 / 16.0, 5.0 / 32.0], &[11.0 / 16.0, 5.0 / 16.0]),
        (Support::OneDivider, [3.0 / 32.0, 13.0 / 64.0], &[13.0 / 32.0, 22.0 / 32.0, -3.0 / 32.0]),
        (Support::TwoDividers, [0.1, 0.2], &[0.4, 0.725, -0.15, 0.025]),
    ] {
        let newtons: Vec<f64> = reactions.iter().map(|share| share * 1000.0).collect();
        check(&point(support), moments.map(|share| share * 1000.0 * L), &newtons, &format!("{support:?}"));
    }
}

/// An even load of 1 with 100 N in the middle: where the shear is nought the moment is R² / 2 from the loose end, if that
/// lies before the middle. Held at the left, R = 3/8 · 1000 + 5/16 · 100; over a divider, 3/8 · 1000 + 13/32 · 100.
#[test]
fn the_largest_moment_need_not_be_in_the_middle() {
    let both = |support| Beam::new(support, L, Loads { even: [1.0; 3], point: 100.0 });
    close(both(Support::FixedOneEnd).sagging_moment(), 406.25 * 406.25 / 2.0, NEAR, "held at the left");
    close(both(Support::OneDivider).sagging_moment(), 415.625 * 415.625 / 2.0, NEAR, "over a divider");
    close(both(Support::Loose).sagging_moment(), 125_000.0 + 25_000.0, NEAR, "loose");
    close(both(Support::FixedOneEnd).support_moment(), 125_000.0 + 18_750.0, NEAR, "at the held end");
}

/// Those of the table above, with the sign that they have: a held end and a divider hog.
#[test]
fn the_moments_at_the_ends_of_the_first_bay() {
    for (support, left, right) in [
        (Support::Loose, 0.0, 0.0),
        (Support::FixedBothEnds, -1.0 / 12.0, -1.0 / 12.0),
        (Support::FixedOneEnd, -1.0 / 8.0, 0.0),
        (Support::OneDivider, 0.0, -1.0 / 8.0),
        (Support::TwoDividers, 0.0, -0.1),
    ] {
        let (got_left, got_right) = even(support).first_moments();
        close(got_left, left * L * L, NEAR, &format!("{support:?}, left"));
        close(got_right, right * L * L, NEAR, &format!("{support:?}, right"));
    }
}

/// Where it sags most, and how much, in shares of w·l⁴ or P·l³: the places in closed form, the rest from tables to the
/// figures that they give.
#[test]
fn the_deepest_place_of_a_bay() {
    let near_loose = (1.0 + 33.0_f64.sqrt()) / 16.0;
    for (beam, at, share, off) in [
        (even(Support::Loose), 0.5, 5.0 / 384.0, NEAR),
        (even(Support::FixedBothEnds), 0.5, 1.0 / 384.0, NEAR),
        (even(Support::FixedOneEnd), 1.0 - near_loose, 0.005_416, 1e-4),
        (even(Support::OneDivider), near_loose, 0.005_416, 1e-4),
        (even(Support::TwoDividers), 0.446, 0.0069, 5e-3),
        (point(Support::Loose), 0.5, 1.0 / 48.0, NEAR),
        (point(Support::FixedBothEnds), 0.5, 1.0 / 192.0, NEAR),
        (point(Support::FixedOneEnd), 1.0 - 0.2_f64.sqrt(), 1.0 / (48.0 * 5.0_f64.sqrt()), 1e-8),
        (point(Support::OneDivider), 0.48, 0.015, 5e-3),
    ] {
        let (x, sag) = beam.deepest();
        close(x, at * L, off.max(1e-6) * 2.0, "place");
        close(sag, share * 1e12, off, "sag");
    }
    // Where both ends are alike it is the middle itself, with nothing lost by looking for it.
    for support in [Support::Loose, Support::FixedBothEnds] {
        assert_eq!((even(support).deepest().0, point(support).deepest().0), (500.0, 500.0), "{support:?}");
    }
}

/// Held at the left and loose at the right, `x` from the left: w x² (3 L² − 5 L x + 2 x²) / 48 of an even load; of one in
/// the middle P x² (9 L − 11 x) / 96 before it, and P s (3 L² − 5 s²) / 96 at `s` from the loose end behind it.
#[test]
fn the_curve_of_a_beam_held_at_one_end() {
    let (even, point) = (even(Support::FixedOneEnd), point(Support::FixedOneEnd));
    for x in [100.0, 250.0, 500.0, 600.0, 750.0, 1000.0] {
        let want = x * x * (3.0 * L * L - 5.0 * L * x + 2.0 * x * x) / 48.0;
        assert!((even.deflection(x) - want).abs() < 1e-3, "even at {x}");
        let s = L - x;
        let before = 1000.0 * x * x * (9.0 * L - 11.0 * x) / 96.0;
        let behind = 1000.0 * s * (3.0 * L * L - 5.0 * s * s) / 96.0;
        assert!((point.deflection(x) - if x <= 500.0 { before } else { behind }).abs() < 1e-3, "point at {x}");
        let moment = |beam: &Beam| beam.bays().next().map(|bay: &Bay| bay.moment(x)).unwrap();
        // From the loose end: 3/8 w L s − w s² / 2, and 5/16 P s less P by the way past the middle.
        assert!((moment(&even) - (375.0 * s - s * s / 2.0)).abs() < 1e-6, "even at {x}");
        assert!((moment(&point) - (312.5 * s - 1000.0 * (s - 500.0).max(0.0))).abs() < 1e-6, "point at {x}");
    }
}

/// The bays follow each other: nought over every support, the same from both ends, l⁴ / 1920 in the middle of three.
#[test]
fn the_curve_goes_on_from_bay_to_bay() {
    for (support, bays) in [(Support::OneDivider, 2.0), (Support::TwoDividers, 3.0)] {
        let beam = even(support);
        for place in [0.0, L, 2.0 * L, bays * L] {
            assert!(beam.deflection(place).abs() < 1.0, "{support:?} at {place}");
        }
        close(beam.deflection(bays * L - 300.0), beam.deflection(300.0), NEAR, "from the far end");
    }
    close(even(Support::TwoDividers).deflection(1.5 * L), 1e12 / 1920.0, 1e-6, "middle bay");
    close(even(Support::OneDivider).deflection(1.5 * L), 1e12 / 192.0, NEAR, "second bay");
}

/// A board of 300 by 20 on a span of 1000 under 1 N/mm, 125 000 N·mm in the middle, with a strip of the same wood.
/// Under: 300 by 40 in one, I = 1 600 000. In front, 100 by 60 with its top flush: axis 40 up, I = 200 000 + 6000 · 10² +
/// 1 800 000 + 6000 · 10². Both sides, 300 by 10: axis 12.5 up, I = 200 000 + 6000 · 2.5² + 50 000 + 6000 · 2.5². As high
/// as the board, 150 wide: a board of 450. The stress is the moment by the furthest fibre over I.
#[test]
fn a_strip_and_its_board_bend_as_one() {
    for (strip, width, height, inertia, [board, strip_off]) in [
        (Strip::Under, "300", "20", 1_600_000.0, [20.0, 20.0]),
        (Strip::Front, "100", "60", 3_200_000.0, [20.0, 40.0]),
        (Strip::FrontAndBack, "300", "10", 325_000.0, [12.5, 7.5]),
        (Strip::Front, "150", "20", 300_000.0, [10.0, 10.0]),
        (Strip::FrontAndBack, "75", "20", 300_000.0, [10.0, 10.0]),
    ] {
        let answer = solved(&Inputs {
            depth: Reading::mm("300"),
            thickness: Reading::mm("20"),
            span: Reading::mm("1000"),
            per_metre: "101.9716212978".into(),
            strip,
            strip_material: Choice::Own,
            strip_width: Reading::mm(width),
            strip_height: Reading::mm(height),
            ..bare()
        });
        let what = format!("{strip:?} {width} by {height}");
        close(answer.instant_mm, 5e12 / (384.0 * 8000.0 * inertia), NEAR, &what);
        let [of_board, of_strip] = &answer.strength[..] else { panic!("{what}: {:?}", answer.strength) };
        assert_eq!((of_board.part, of_strip.part), (PartOf::Board, PartOf::Strip));
        close(of_board.stress_mpa, 125_000.0 * board / inertia, NEAR, &what);
        close(of_strip.stress_mpa, 125_000.0 * strip_off / inertia, NEAR, &what);
    }
}
