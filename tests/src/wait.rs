//! Waiting until something shows. A condition is looked at again and again; nothing here waits for a fixed time.

use crate::fault::{Fault, Outcome};
use std::fmt::Debug;
use std::time::{Duration, Instant};

/// Longer than anything takes on a slow machine that is busy with the other shell.
pub const PATIENCE: Duration = Duration::from_secs(40);

/// Between two looks.
const LOOK: Duration = Duration::from_millis(15);

/// Looks until `holds` is true of what is seen, and gives that.
///
/// # Errors
/// [`Fault::InVain`] with the last that was seen, or the last fault of a look.
pub async fn until<T: Debug>(what: &str, look: impl AsyncFn() -> Outcome<T>, holds: impl Fn(&T) -> bool) -> Outcome<T> {
    let begun = Instant::now();
    loop {
        let seen = look().await;
        match seen {
            Ok(seen) if holds(&seen) => return Ok(seen),
            seen if begun.elapsed() > PATIENCE => {
                let seen = match seen {
                    Ok(seen) => format!("{seen:?}"),
                    Err(fault) => format!("{fault}"),
                };
                return Err(Fault::InVain { what: what.to_owned(), seconds: PATIENCE.as_secs(), seen });
            }
            _ => tokio::time::sleep(LOOK).await,
        }
    }
}
