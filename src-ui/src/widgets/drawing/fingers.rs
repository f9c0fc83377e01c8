//! Fingers on a drawing: one moves it about, two make it larger or smaller; a mouse is a finger too.

/// A place on the screen.
pub(super) type Point = [f64; 2];

/// A finger that has moved no farther than this was meant to tap.
const TREMBLE_PX: f64 = 8.0;

/// What the fingers ask for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Asked {
    /// To be moved by so much.
    pub(super) by: Point,
    /// To be so many times as large.
    pub(super) times: f64,
    /// Where that happens: between the fingers.
    pub(super) about: Point,
}

/// The fingers that are down, two at most.
#[derive(Default)]
pub(super) struct Fingers {
    down: Vec<(i32, Point)>,
    /// How far they have gone since the first came down.
    gone: f64,
}

fn apart(a: Point, b: Point) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

impl Fingers {
    /// A finger comes down; a third one is not heeded.
    pub(super) fn down(&mut self, finger: i32, at: Point) {
        if self.down.is_empty() {
            self.gone = 0.0;
        }
        self.up(finger);
        if self.down.len() < 2 {
            self.down.push((finger, at));
        }
    }

    /// A finger goes.
    pub(super) fn up(&mut self, finger: i32) {
        self.down.retain(|(down, _)| *down != finger);
    }

    /// Whether what has just ended was a tap.
    pub(super) fn tapped(&self) -> bool {
        self.gone <= TREMBLE_PX
    }

    fn middle_and_spread(&self) -> Option<(Point, f64)> {
        match self.down.as_slice() {
            [(_, at)] => Some((*at, 0.0)),
            [(_, a), (_, b)] => Some(([0, 1].map(|axis| f64::midpoint(a[axis], b[axis])), apart(*a, *b))),
            _ => None,
        }
    }

    /// A finger moves; nothing comes of one that is not down.
    pub(super) fn moved(&mut self, finger: i32, to: Point) -> Option<Asked> {
        let (middle, spread) = self.middle_and_spread()?;
        let (_, at) = self.down.iter_mut().find(|(down, _)| *down == finger)?;
        self.gone += apart(*at, to);
        *at = to;
        let (about, now) = self.middle_and_spread()?;
        let by = [about[0] - middle[0], about[1] - middle[1]];
        // Fingers on one spot say nothing about size.
        let times = if spread >= 1.0 && now >= 1.0 { now / spread } else { 1.0 };
        Some(Asked { by, times, about })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_finger_moves_and_two_spread() {
        let mut fingers = Fingers::default();
        fingers.down(1, [100.0, 100.0]);
        assert_eq!(fingers.moved(1, [110.0, 95.0]), Some(Asked { by: [10.0, -5.0], times: 1.0, about: [110.0, 95.0] }));
        assert!(!fingers.tapped());
        fingers.up(1);

        fingers.down(1, [100.0, 100.0]);
        assert!(fingers.tapped(), "a new touch begins anew");
        fingers.down(2, [200.0, 100.0]);
        // 100 apart become 150: their middle goes from 150 to 175.
        assert_eq!(
            fingers.moved(2, [250.0, 100.0]),
            Some(Asked { by: [25.0, 0.0], times: 1.5, about: [175.0, 100.0] })
        );
        fingers.down(3, [0.0, 0.0]);
        assert_eq!(fingers.moved(3, [50.0, 0.0]), None);
        fingers.up(2);
        assert_eq!(fingers.moved(1, [100.0, 101.0]).map(|asked| asked.times), Some(1.0));
    }

    #[test]
    fn fingers_on_one_spot_leave_the_size() {
        let mut fingers = Fingers::default();
        fingers.down(1, [5.0, 5.0]);
        fingers.down(2, [5.0, 5.0]);
        assert_eq!(fingers.moved(2, [25.0, 5.0]).map(|asked| asked.times), Some(1.0));
        assert_eq!(fingers.moved(9, [0.0, 0.0]), None);
    }
}
