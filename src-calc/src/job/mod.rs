//! A job: one cabinet under a name, as it is kept, and as it goes from one device to another.
//!
//! A job's text and a file of jobs are JSON; `src-calc/schema/jobs.schema.json` describes them. What a newer Scantling
//! has put into a job, and this one does not know, stays in it: a field is taken out only by who knows it.

mod unknown;

use crate::as_text;
use crate::cabinet::Inputs;
use crate::mark::mark;
use serde_json::{Map, Value, json};
use std::hash::Hash;
use unknown::keep_unknown;

/// What a file of jobs says of its own form.
const FORM: u64 = 1;
/// A longer text is not read. A job has some two thousand bytes, and as many again once its work is ticked off: this is
/// room for eight thousand of them.
pub const MOST_BYTES: usize = 32_000_000;
/// No more characters of a job's name are kept.
pub const LONGEST_NAME: usize = 120;

const FORM_FIELD: &str = "scantling";
const JOBS: &str = "jobs";
const NAME: &str = "name";
const CARDS: &str = "cards";
/// The card that a job is made on.
pub const CARD: &str = "cabinet";

/// Why a text is no job, or no file of jobs.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum JobError {
    /// Too long to be one.
    #[error("This file has more than {} MB; a file of jobs has less.", MOST_BYTES / 1_000_000)]
    TooLong,
    /// Nothing is in it.
    #[error("This file is empty. Save the jobs anew on the device that they come from.")]
    Empty,
    /// It stops before its end.
    #[error("This file breaks off at line {line}: a part of it is missing. Copy it anew from where it comes.")]
    BreaksOff {
        /// The last line, from one.
        line: usize,
    },
    /// Not JSON.
    #[error("This is no file of jobs: what stands in line {line} at letter {column} is not JSON.")]
    NotJson {
        /// The line, from one.
        line: usize,
        /// The letter, from one.
        column: usize,
    },
    /// JSON of something else.
    #[error("This is no file of jobs: it has no “scantling” number and no list of “jobs”.")]
    NoJobs,
    /// Written by a program that knows more.
    #[error("This file is of form {0}, which a newer Scantling wrote; this one reads form {FORM}.")]
    Newer(u64),
    /// One of the jobs cannot be read; counted from one.
    #[error("Job {at} cannot be read: {why}.")]
    Job {
        /// Its place in the file, from one.
        at: usize,
        /// What is wrong with it.
        why: String,
    },
}

/// One cabinet under a name.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// As the maker calls it.
    pub name: String,
    /// The inputs of its cabinet, as they were read: fields that are not known here are still in them.
    cabinet: Value,
    /// The job's other fields, and other cards.
    whole: Map<String, Value>,
}

impl Job {
    /// A new job.
    pub fn new(name: &str, cabinet: &Inputs) -> Self {
        let whole = Map::from_iter([(CARDS.to_owned(), json!({}))]);
        let mut job = Self { name: String::new(), cabinet: Value::Null, whole };
        job.rename(name);
        job.set_cabinet(cabinet);
        job
    }

    /// Another name; what is longer than [`LONGEST_NAME`] is cut off.
    pub fn rename(&mut self, name: &str) {
        self.name = name.trim().chars().take(LONGEST_NAME).collect();
    }

    /// The inputs of its cabinet.
    pub fn cabinet(&self) -> Inputs {
        // A job is only ever made of inputs that can be read.
        as_text::fit(&self.cabinet).unwrap_or_default()
    }

    /// Other inputs for its cabinet. What the old ones had and this program does not know stays.
    pub fn set_cabinet(&mut self, inputs: &Inputs) {
        let known = serde_json::to_value(self.cabinet()).unwrap_or_default();
        let mut next = serde_json::to_value(inputs).unwrap_or_default();
        keep_unknown(&self.cabinet, &known, &mut next);
        self.cabinet = next;
    }

    /// Reads one job, as [`Job::text`] writes it.
    ///
    /// # Errors
    /// [`JobError`] where it is none.
    pub fn read(text: &str) -> Result<Self, JobError> {
        Self::of(parsed(text)?).map_err(|why| JobError::Job { at: 1, why })
    }

    fn of(value: Value) -> Result<Self, String> {
        let Value::Object(mut whole) = value else { return Err("it is not an object".to_owned()) };
        let Some(Value::String(name)) = whole.remove(NAME) else {
            return Err("it has no “name” in words".to_owned());
        };
        let cabinet = match whole.get_mut(CARDS) {
            Some(Value::Object(cards)) => cards.remove(CARD),
            _ => None,
        };
        let Some(cabinet @ Value::Object(_)) = cabinet else {
            return Err("it has no “cabinet” among “cards”".to_owned());
        };
        if as_text::fit::<Inputs>(&cabinet).is_none() {
            return Err(not_understood(&cabinet));
        }
        let mut job = Self { name: String::new(), cabinet, whole };
        job.rename(&name);
        Ok(job)
    }

    fn value(&self) -> Value {
        let mut whole = self.whole.clone();
        whole.insert(NAME.to_owned(), self.name.clone().into());
        if let Some(Value::Object(cards)) = whole.get_mut(CARDS) {
            cards.insert(CARD.to_owned(), self.cabinet.clone());
        }
        Value::Object(whole)
    }

    /// As it is kept.
    pub fn text(&self) -> String {
        self.value().to_string()
    }
}

/// Which field of a cabinet cannot be read.
fn not_understood(cabinet: &Value) -> String {
    let alone = |(name, value): (&String, &Value)| json!({ name.as_str(): value });
    let wrong =
        cabinet.as_object().into_iter().flatten().find(|field| as_text::fit::<Inputs>(&alone(*field)).is_none());
    match wrong {
        Some((name, _)) => format!("what its cabinet has for “{name}” is not understood"),
        None => "its cabinet is not understood".to_owned(),
    }
}

/// The mark of inputs as text: two that have the same are the same.
pub fn text_mark(inputs: &str) -> String {
    mark(|hasher| inputs.hash(hasher))
}

fn parsed(text: &str) -> Result<Value, JobError> {
    if text.len() > MOST_BYTES {
        return Err(JobError::TooLong);
    }
    // Some programs put a mark before the first character of a text.
    let text = text.strip_prefix('\u{FEFF}').unwrap_or(text);
    if text.trim().is_empty() {
        return Err(JobError::Empty);
    }
    serde_json::from_str(text).map_err(|error| match (error.line(), error.column()) {
        (line, _) if error.is_eof() => JobError::BreaksOff { line },
        (line, column) => JobError::NotJson { line, column },
    })
}

/// Reads a file of jobs: all of them, or none.
///
/// # Errors
/// [`JobError`], which says what would be one.
///
/// # Example
/// ```
/// use scantling::cabinet::Inputs;
/// use scantling::job::{Job, read_file, write_file};
///
/// let shed = Job::new("Potting shed", &Inputs::default());
/// assert_eq!(read_file(&write_file(&[shed.clone()])), Ok(vec![shed]));
/// assert!(read_file("{}").is_err());
/// ```
pub fn read_file(text: &str) -> Result<Vec<Job>, JobError> {
    let Value::Object(mut file) = parsed(text)? else { return Err(JobError::NoJobs) };
    let form = file.get(FORM_FIELD).and_then(Value::as_u64).ok_or(JobError::NoJobs)?;
    if form > FORM {
        return Err(JobError::Newer(form));
    }
    let Some(Value::Array(jobs)) = file.remove(JOBS) else { return Err(JobError::NoJobs) };
    let one = |(at, job)| Job::of(job).map_err(|why| JobError::Job { at: at + 1, why });
    jobs.into_iter().enumerate().map(one).collect()
}

/// A file of jobs, to be read by [`read_file`].
pub fn write_file(jobs: &[Job]) -> String {
    let jobs: Vec<Value> = jobs.iter().map(Job::value).collect();
    let file = json!({ FORM_FIELD: FORM, JOBS: jobs });
    format!("{file}\n")
}

#[cfg(test)]
mod tests;
