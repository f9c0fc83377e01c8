//! What is wrong with an input, and what would be accepted.

use crate::measure::{Length, LengthError, Quantity, ReadError, Reading};
use crate::sheets::JobError;
use serde::{Serialize, Serializer, ser::SerializeMap};

/// Why one input cannot be used. `Display` is the sentence put beside the field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Problem {
    /// The text is no reading.
    #[error("{0}")]
    Read(#[from] ReadError),
    /// The numbers are too large or too fine to be held exactly.
    #[error("{0}")]
    Exact(#[from] LengthError),
    /// Zero or less where something must be there.
    #[error("This has to be more than zero.")]
    NotAboveZero,
    /// Less than zero where only zero and more make sense.
    #[error("This cannot be less than zero.")]
    BelowZero,
    /// Less than the least that works.
    #[error("At least {least} is needed: {why}.")]
    TooSmall {
        /// The least that is accepted.
        least: Quantity,
        /// The reason, a clause without a full stop.
        why: &'static str,
    },
    /// More than the most that works.
    #[error("At most {most} is accepted: {why}.")]
    TooLarge {
        /// The most that is accepted.
        most: Quantity,
        /// The reason, a clause without a full stop.
        why: &'static str,
    },
    /// Parts cannot be laid on sheets as they are.
    #[error("{0}")]
    Sheets(#[from] JobError),
    /// The inputs contradict each other.
    #[error("{why}")]
    Clash {
        /// A whole sentence: what does not go together, and what would.
        why: &'static str,
    },
}

/// All that is wrong, in the order of the fields. A field is named as in the card's `Inputs`; a list's item is `name.2`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Problems(Vec<(String, Problem)>);

impl Problems {
    /// One problem.
    pub fn one(field: impl Into<String>, problem: impl Into<Problem>) -> Self {
        Self(vec![(field.into(), problem.into())])
    }

    /// Adds a problem.
    pub fn add(&mut self, field: impl Into<String>, problem: impl Into<Problem>) {
        self.0.push((field.into(), problem.into()));
    }

    /// Keeps a good value, or notes the problem and goes on, so that one look shows all that is wrong.
    pub fn check<T, E: Into<Problem>>(&mut self, field: impl Into<String>, result: Result<T, E>) -> Option<T> {
        result.map_err(|error| self.add(field, error)).ok()
    }

    /// A length above zero, or a problem.
    pub fn above_zero(&mut self, field: impl Into<String>, reading: &Reading) -> Option<Length> {
        self.check(
            field,
            reading
                .length()
                .map_err(Problem::from)
                .and_then(|length| if length.is_positive() { Ok(length) } else { Err(Problem::NotAboveZero) }),
        )
    }

    /// A length of zero or more, or a problem.
    pub fn zero_or_more(&mut self, field: impl Into<String>, reading: &Reading) -> Option<Length> {
        self.check(
            field,
            reading
                .length()
                .map_err(Problem::from)
                .and_then(|length| if length.is_negative() { Err(Problem::BelowZero) } else { Ok(length) }),
        )
    }

    /// The first problem of a field.
    pub fn of(&self, field: &str) -> Option<&Problem> {
        self.0.iter().find(|(name, _)| name == field).map(|(_, problem)| problem)
    }

    /// Whether nothing is wrong.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Every field with its problem.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &Problem)> {
        self.0.iter().map(|(field, problem)| (field.as_str(), problem))
    }
}

/// An answer that grew past what can be held exactly belongs to no one field.
impl From<LengthError> for Problems {
    fn from(error: LengthError) -> Self {
        Self::one("", error)
    }
}

/// As an object from field to sentence.
impl Serialize for Problems {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (field, problem) in &self.0 {
            map.serialize_entry(field, &problem.to_string())?;
        }
        map.end()
    }
}
