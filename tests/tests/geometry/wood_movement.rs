//! Parts placed in their grooves, beside their gaps and on their screws, at every moisture from the driest to the dampest:
//! each point of the wood is moved by itself, and then it is looked whether anything binds or falls out. Nothing of the
//! card's sums is used.

use proptest::prelude::*;
use proptest::sample::select;
use scantling::cards::wood_movement::{Allow, By, Held, Inputs, Set, solve};
use scantling::measure::{Figure, Length, Reading};
use scantling::stock::materials::Choice;

/// The card keeps lengths to a nanometre.
const HAIR: f64 = 3e-6;

/// A part in whole millimetres, tenths of a per cent of moisture, hundredths of a per cent of movement.
#[derive(Clone, Copy, Debug)]
struct Part {
    set: Set,
    held: Held,
    width: u32,
    rate: u32,
    moisture: (u32, u32, u32),
    bearing: u32,
    spare: u32,
    screw: u32,
}

impl Part {
    fn solved(&self) -> Allow {
        let mm = |whole: u32| Reading::mm(&whole.to_string());
        let tenths = |tenths: u32| Figure::new(format!("{tenths}/10"));
        let (made, dry, damp) = self.moisture;
        let inputs = Inputs {
            species: Choice::Own,
            own_rate: Figure::new(format!("{}/100", self.rate)),
            width: mm(self.width),
            by: By::Meter,
            made_moisture: tenths(made),
            dry_moisture: tenths(dry),
            damp_moisture: tenths(damp),
            set: self.set,
            held: self.held,
            bearing: mm(self.bearing),
            spare: mm(self.spare),
            screw: mm(self.screw),
            ..Inputs::default()
        };
        solve(&inputs).unwrap_or_else(|problems| panic!("{problems:?}")).allow
    }

    fn check(&self) {
        let (made, dry, damp) = self.moisture;
        let width = f64::from(self.width);
        // From where it is held to the edge that moves.
        let reach = if self.held == Held::Middle { width / 2.0 } else { width };
        let (bearing, spare) = (f64::from(self.bearing), f64::from(self.spare));
        let allow = self.solved();
        let mm = |length: Length| length.as_mm();
        let (mut least_bearing, mut least_free) = (f64::MAX, f64::MAX);
        for moisture in (dry..=damp).chain([made]) {
            let strain = f64::from(self.rate) / 1e4 * (f64::from(moisture) - f64::from(made)) / 10.0;
            let moved = |at: f64| at * (1.0 + strain);
            match allow {
                Allow::Groove { depth, opening, .. } => {
                    // The mouth of the groove, seen from where the panel is held.
                    let mouth = if self.held == Held::Middle { mm(opening) / 2.0 } else { bearing + mm(opening) };
                    least_bearing = least_bearing.min(moved(reach) - mouth);
                    least_free = least_free.min(mouth + mm(depth) - moved(reach));
                }
                Allow::Gap { made, widest, .. } => {
                    let gap = reach + mm(made) - moved(reach);
                    assert!(gap <= mm(widest) + HAIR, "{self:?}: a gap of {gap} against {widest}");
                    least_free = least_free.min(gap);
                }
                Allow::Slot { length, screw_at, from_held } => {
                    let radius = f64::from(self.screw) / 2.0;
                    let inner = moved(mm(from_held) - mm(screw_at));
                    let outer = moved(mm(from_held) - mm(screw_at) + mm(length));
                    // The slot itself shrinks with the part, by a share of its own small length.
                    let slack = HAIR + strain.abs() * mm(length);
                    assert!(inner <= mm(from_held) - radius + slack, "{self:?}: the inner end strikes the screw");
                    assert!(outer >= mm(from_held) + radius - slack, "{self:?}: the outer end strikes the screw");
                }
            }
        }
        match allow {
            // Neither short nor more than asked: the driest and the dampest day just use it up.
            Allow::Groove { .. } => {
                assert!((least_bearing - bearing).abs() <= HAIR, "{self:?}: bears by {least_bearing}");
                assert!((least_free - spare).abs() <= HAIR, "{self:?}: {least_free} free");
            }
            Allow::Gap { .. } => assert!((least_free - spare).abs() <= HAIR, "{self:?}: {least_free} free"),
            Allow::Slot { .. } => {}
        }
    }
}

proptest! {
    #[test]
    fn nothing_binds_and_nothing_falls_out(
        set in select(Set::ALL),
        held in select(Held::ALL),
        sizes in (100_u32..1000, 5_u32..45),
        moisture in (40_u32..140, 0_u32..80, 0_u32..80),
        room in (0_u32..12, 0_u32..4, 3_u32..8),
    ) {
        let (width, rate) = sizes;
        let (dry, to_made, to_damp) = moisture;
        let moisture = (dry + to_made, dry, dry + to_made + to_damp);
        let (bearing, spare, screw) = room;
        Part { set, held, width, rate, moisture, bearing, spare, screw }.check();
    }
}
