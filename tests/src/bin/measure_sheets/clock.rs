//! Seconds on a core.

use std::time::Instant;

/// Where Linux says how many nanoseconds a thread has had.
const HAD: &str = "/proc/thread-self/schedstat";

fn had() -> Option<f64> {
    let text = std::fs::read_to_string(HAD).ok()?;
    let nanoseconds: f64 = text.split(' ').next()?.parse().ok()?;
    Some(nanoseconds / 1e9)
}

/// Which seconds these are.
pub(crate) fn name() -> &'static str {
    if had().is_some() { "on a core, as the system counts them" } else { "on the wall" }
}

/// Begins when it is made.
pub(crate) struct Clock {
    wall: Instant,
    core: Option<f64>,
}

impl Clock {
    pub(crate) fn start() -> Self {
        Self { wall: Instant::now(), core: had() }
    }

    pub(crate) fn seconds(&self) -> f64 {
        match (self.core, had()) {
            (Some(begun), Some(now)) => now - begun,
            _ => self.wall.elapsed().as_secs_f64(),
        }
    }
}

/// The middle one; of an even number the lower of both in the middle.
pub(crate) fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len().saturating_sub(1) / 2).copied().unwrap_or(f64::NAN)
}
