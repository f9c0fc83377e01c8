//! The statics of a shelf: a beam of one to three equal bays under even loads and one load in the middle of the first bay.
//!
//! Bending only, small sag, stiffness the same all along. The moments over the supports come from the three-moment
//! equation; between them each bay is a beam on two supports with those moments at its ends. Everything is
//! symmetrical within a bay, which is why one end rotation serves for both ends.
//!
//! Units: N, mm. Moments are positive where they sag the bay. Deflections are times the stiffness E·I.

use serde::{Deserialize, Serialize};

/// How the shelf is held.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Support {
    /// Lying on pins, cleats or in a loose groove at both ends.
    #[default]
    Loose,
    /// Both ends held so that they cannot turn.
    FixedBothEnds,
    /// The left end held so that it cannot turn, the right end loose.
    FixedOneEnd,
    /// Loose ends, and one support in the middle under an uncut shelf.
    OneDivider,
    /// Loose ends, and two supports at the thirds under an uncut shelf.
    TwoDividers,
}

impl Support {
    /// In the order of a list to choose from.
    pub const ALL: &'static [Self] =
        &[Self::Loose, Self::FixedBothEnds, Self::FixedOneEnd, Self::OneDivider, Self::TwoDividers];

    /// How many equal bays the shelf has.
    pub const fn bays(self) -> u8 {
        match self {
            Self::Loose | Self::FixedBothEnds | Self::FixedOneEnd => 1,
            Self::OneDivider => 2,
            Self::TwoDividers => 3,
        }
    }
}

/// What lies on the shelf: an even load in each bay, N/mm, and one in the middle of the first bay, N.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(in crate::cards) struct Loads {
    pub(in crate::cards) even: [f64; 3],
    pub(in crate::cards) point: f64,
}

impl Loads {
    /// The same in every bay.
    pub(in crate::cards) const fn even(n_per_mm: f64) -> Self {
        Self { even: [n_per_mm; 3], point: 0.0 }
    }

    pub(in crate::cards) fn scaled(self, by: f64) -> Self {
        Self { even: self.even.map(|load| load * by), point: self.point * by }
    }

    pub(in crate::cards) fn plus(self, other: Self) -> Self {
        let ([a, b, c], [d, e, f]) = (self.even, other.even);
        Self { even: [a + d, b + e, c + f], point: self.point + other.point }
    }
}

/// One bay: its loads, and the moments at its two ends.
#[derive(Clone, Copy, Debug)]
pub(in crate::cards) struct Bay {
    length: f64,
    even: f64,
    point: f64,
    left: f64,
    right: f64,
}

impl Bay {
    /// Deflection times stiffness at `x` from the bay's left support, down positive.
    pub(in crate::cards) fn deflection(&self, x: f64) -> f64 {
        let (l, from_right) = (self.length, self.length - x);
        let near = x.min(from_right);
        self.even * x * from_right * (l * l + x * from_right) / 24.0
            + self.point * near * (3.0 * l * l - 4.0 * near * near) / 48.0
            + x * from_right * (self.left * (l + from_right) + self.right * (l + x)) / (6.0 * l)
    }

    /// The slope of that curve, and how the slope changes (which is minus the moment).
    fn slope(&self, x: f64) -> f64 {
        let l = self.length;
        let from_right = l - x;
        let near = x.min(from_right);
        let point = self.point * (l * l - 4.0 * near * near) / 16.0;
        self.even * (l * l * l - 6.0 * l * x * x + 4.0 * x * x * x) / 24.0
            + if x <= from_right { point } else { -point }
            + (self.left * (2.0 * l * l - 6.0 * l * x + 3.0 * x * x) + self.right * (l * l - 3.0 * x * x)) / (6.0 * l)
    }

    /// Bending moment at `x`.
    pub(in crate::cards) fn moment(&self, x: f64) -> f64 {
        let from_right = self.length - x;
        self.left
            + (self.right - self.left) * x / self.length
            + self.even * x * from_right / 2.0
            + self.point * x.min(from_right) / 2.0
    }

    /// Where the bay sags most, and deflection times stiffness there.
    fn deepest(&self) -> (f64, f64) {
        let middle = self.length / 2.0;
        // Equal ends: the middle, exactly. Otherwise the slope changes sign once, towards the end that is freer.
        let (mut low, mut high) = if self.left > self.right {
            (self.length * 0.25, middle)
        } else if self.left < self.right {
            (middle, self.length * 0.75)
        } else {
            return (middle, self.deflection(middle));
        };
        let mut x = (low + high) / 2.0;
        // At the deepest place the curve is level, so a place good to 1e-9 gives a sag good to the last digit.
        let near_enough = self.length * 1e-9;
        for _ in 0..60 {
            let slope = self.slope(x);
            if slope > 0.0 {
                low = x
            } else {
                high = x
            }
            // Newton's step where it stays inside the bracket, else halve: the moment is the slope's change, sign turned.
            let step = slope / self.moment(x);
            if step.abs() <= near_enough {
                break;
            }
            let next = x + step;
            x = if next > low && next < high { next } else { (low + high) / 2.0 };
        }
        (x, self.deflection(x))
    }

    /// The largest moment between the supports.
    fn largest_moment(&self) -> f64 {
        let l = self.length;
        // Without the point load the shear is zero here; with it, half the load moves the place out of each half.
        let zero_shear = |half_load: f64| l / 2.0 + ((self.right - self.left) / l + half_load) / self.even;
        let left_half = zero_shear(self.point / 2.0).clamp(0.0, l / 2.0);
        let right_half = zero_shear(-self.point / 2.0).clamp(l / 2.0, l);
        [left_half, right_half, l / 2.0]
            .into_iter()
            .filter(|x| x.is_finite())
            .map(|x| self.moment(x))
            .fold(0.0, f64::max)
    }

    /// Upward force that the bay asks of its left and right support.
    fn reactions(&self) -> (f64, f64) {
        let half = (self.even * self.length + self.point) / 2.0;
        let tilt = (self.right - self.left) / self.length;
        (half + tilt, half - tilt)
    }
}

/// A shelf worked out: its bays with the moments at their ends.
#[derive(Clone, Copy, Debug)]
pub(in crate::cards) struct Beam {
    bays: [Bay; 3],
    count: usize,
    bay_mm: f64,
}

impl Beam {
    /// Solves the three-moment equations, `M₀ + 4 M₁ + M₂ = −6 (θ₀ + θ₁) / L`, with `θ = w L³ / 24 + P L² / 16` for the
    /// rotation of a bay's ends if it lay on two supports by itself; a fixed end reads `2 M₀ + M₁ = −6 θ₀ / L`.
    pub(in crate::cards) fn new(support: Support, bay_mm: f64, loads: Loads) -> Self {
        let l = bay_mm;
        let [first, second, third] = loads.even;
        let pull = |even: f64, point: f64| even * l * l / 4.0 + point * l * 3.0 / 8.0;
        let (a, b, c) = (pull(first, loads.point), pull(second, 0.0), pull(third, 0.0));
        let moments = match support {
            Support::Loose => [0.0; 4],
            Support::FixedBothEnds => [-a / 3.0, -a / 3.0, 0.0, 0.0],
            Support::FixedOneEnd => [-a / 2.0, 0.0, 0.0, 0.0],
            Support::OneDivider => [0.0, -(a + b) / 4.0, 0.0, 0.0],
            Support::TwoDividers => {
                let (left, right) = (a + b, b + c);
                [0.0, -(4.0 * left - right) / 15.0, -(4.0 * right - left) / 15.0, 0.0]
            }
        };
        let [m0, m1, m2, m3] = moments;
        let bay = |even, point, left, right| Bay { length: l, even, point, left, right };
        let bays = [bay(first, loads.point, m0, m1), bay(second, 0.0, m1, m2), bay(third, 0.0, m2, m3)];
        Self { bays, count: usize::from(support.bays()), bay_mm }
    }

    /// The bays from left to right.
    pub(in crate::cards) fn bays(&self) -> impl Iterator<Item = &Bay> {
        self.bays.iter().take(self.count)
    }

    /// Where the first bay sags most, from the left end, and deflection times stiffness there. With every bay loaded
    /// alike, or the first one more, no other bay sags more.
    pub(in crate::cards) fn deepest(&self) -> (f64, f64) {
        let [first, ..] = &self.bays;
        first.deepest()
    }

    /// The moments at the two ends of the first bay.
    pub(in crate::cards) fn first_moments(&self) -> (f64, f64) {
        let [first, ..] = &self.bays;
        (first.left, first.right)
    }

    /// Deflection times stiffness at a place on the whole shelf.
    pub(in crate::cards) fn deflection(&self, x: f64) -> f64 {
        let mut left = x;
        for bay in self.bays() {
            if left <= self.bay_mm {
                return bay.deflection(left.max(0.0));
            }
            left -= self.bay_mm;
        }
        0.0
    }

    /// The largest moment that sags a bay.
    pub(in crate::cards) fn sagging_moment(&self) -> f64 {
        self.bays().map(Bay::largest_moment).fold(0.0, f64::max)
    }

    /// The largest moment over a support or at a fixed end, as a positive number.
    pub(in crate::cards) fn support_moment(&self) -> f64 {
        self.bays().map(|bay| (-bay.left).max(-bay.right)).fold(0.0, f64::max)
    }

    /// What each support carries, N, from the left; negative where the shelf would lift off.
    pub(in crate::cards) fn reactions(&self) -> Vec<f64> {
        let mut all = Vec::with_capacity(self.count + 1);
        let mut carried = 0.0;
        for bay in self.bays() {
            let (left, right) = bay.reactions();
            all.push(carried + left);
            carried = right;
        }
        all.push(carried);
        all
    }
}
