//! Why a check could not be made, or did not hold.

use std::fmt;

/// What a scenario gives back.
pub type Outcome<T = ()> = Result<T, Fault>;

/// Why a check could not be made, or did not hold.
#[derive(thiserror::Error)]
pub enum Fault {
    /// The test run prepares the app first, and says where it is.
    #[error("{name} is not set, so there is nothing to drive. Run the whole with `cargo xtask test`.")]
    NotPrepared {
        /// The variable that would say where.
        name: &'static str,
    },
    /// A program that drives the app could not be started.
    #[error("{program} could not be started: {source}")]
    NotStarted {
        /// The program.
        program: String,
        /// What the system says.
        source: std::io::Error,
    },
    /// A program was started, but is not there to talk to.
    #[error("{program} was started, but does not answer")]
    NoAnswer {
        /// The program.
        program: String,
    },
    /// A condition did not come about.
    #[error("waited {seconds} s in vain: {what}; the last that was seen: {seen}")]
    InVain {
        /// What was waited for.
        what: String,
        /// How long.
        seconds: u64,
        /// What was there instead.
        seen: String,
    },
    /// Something on the screen is not as it has to be.
    #[error("{0}")]
    Wrong(String),
    /// The driver refused.
    #[error("the driver refused: {0}")]
    Driver(#[from] Box<thirtyfour::error::WebDriverError>),
    /// A file could not be read or written.
    #[error("{0}")]
    File(#[from] std::io::Error),
    /// A script in the page gave something else than was expected of it.
    #[error("the page gave something unexpected: {0}")]
    Shape(#[from] serde_json::Error),
}

/// As the sentence: this is what a failed test prints.
impl fmt::Debug for Fault {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{self}")
    }
}

impl From<thirtyfour::error::WebDriverError> for Fault {
    fn from(error: thirtyfour::error::WebDriverError) -> Self {
        Self::Driver(Box::new(error))
    }
}

/// Fails with a sentence unless it holds.
pub fn require(holds: bool, otherwise: impl FnOnce() -> String) -> Outcome {
    if holds { Ok(()) } else { Err(Fault::Wrong(otherwise())) }
}

/// Fails unless both are the same, saying what it is about and both values.
pub fn require_same<T: PartialEq + fmt::Debug>(got: &T, want: &T, about: &str) -> Outcome {
    require(got == want, || format!("{about}: got {got:?}, want {want:?}"))
}
