//! What is to be measured.

use crate::Trouble;
use std::path::PathBuf;

/// Every option.
pub(crate) const TAKEN: &str = "--instances FILE, --seconds S, --turn yes|no, --layouts FILE, --seed N, --runs N, \
                                --only classes|drawn|speed|library|browser.";

/// What is to be measured.
#[derive(Debug, PartialEq)]
pub(crate) struct Asked {
    /// The file of instances, if there is one.
    pub(crate) instances: Option<PathBuf>,
    /// It was named: nothing else is measured.
    pub(crate) alone: bool,
    /// For each instance.
    pub(crate) seconds: f64,
    /// Whether parts may be turned; first one, then the other.
    pub(crate) turns: Vec<bool>,
    /// Where to write the layouts.
    pub(crate) layouts: Option<PathBuf>,
    pub(crate) seed: u64,
    pub(crate) runs: u64,
    only: Option<String>,
    /// A Python that has the packing library.
    pub(crate) python: Option<PathBuf>,
    /// The same work for the browser, and for this machine.
    pub(crate) wasm: Option<PathBuf>,
    pub(crate) native: Option<PathBuf>,
}

impl Asked {
    pub(crate) fn read(words: &[String]) -> Result<Self, Trouble> {
        let mut asked = Self {
            instances: None,
            alone: false,
            seconds: 1.0,
            turns: vec![false, true],
            layouts: None,
            seed: 1,
            runs: 1,
            only: None,
            python: None,
            wasm: None,
            native: None,
        };
        for pair in words.chunks(2) {
            let [option, value] = pair else { return Err(Trouble::Option(pair.join(" "))) };
            let no_sense = || Trouble::Option(format!("{option} {value}"));
            match option.as_str() {
                "--instances" => (asked.instances, asked.alone) = (Some(value.into()), true),
                // The same, but named by nobody.
                "--instances-there" => asked.instances = Some(value.into()),
                "--seconds" => asked.seconds = value.parse().map_err(|_| no_sense())?,
                "--turn" if value == "yes" => asked.turns = vec![true],
                "--turn" if value == "no" => asked.turns = vec![false],
                "--layouts" => asked.layouts = Some(value.into()),
                "--seed" => asked.seed = value.parse().map_err(|_| no_sense())?,
                "--runs" => asked.runs = value.parse().ok().filter(|runs| *runs > 0).ok_or_else(no_sense)?,
                "--only" => asked.only = Some(value.clone()),
                "--python" => asked.python = Some(value.into()),
                "--wasm" => asked.wasm = Some(value.into()),
                "--native" => asked.native = Some(value.into()),
                _ => return Err(no_sense()),
            }
        }
        if asked.layouts.is_some() && asked.turns.len() > 1 { Err(Trouble::BothTurns) } else { Ok(asked) }
    }

    pub(crate) fn wants(&self, section: &str) -> bool {
        self.only.as_ref().is_none_or(|only| only == section)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(line: &str) -> Result<Asked, String> {
        let words: Vec<String> = line.split_whitespace().map(str::to_owned).collect();
        Asked::read(&words).map_err(|trouble| trouble.to_string())
    }

    #[test]
    fn options_are_read() {
        let asked = read("--instances a.jsonl --seconds 0.5 --turn yes --layouts out --seed 7 --runs 3").unwrap();
        assert_eq!((asked.seconds, asked.turns, asked.seed, asked.runs, asked.alone), (0.5, vec![true], 7, 3, true));
        assert_eq!(read("").unwrap().turns, [false, true]);
        assert!(read("--only speed").unwrap().wants("speed"));
        assert!(!read("--only speed").unwrap().wants("classes"));
    }

    #[test]
    fn what_says_nothing_is_refused() {
        for line in ["--seconds", "--seconds soon", "--turn maybe", "--runs 0", "--dance yes"] {
            assert!(read(line).unwrap_err().starts_with(&format!("“{line}” says nothing")), "{line}");
        }
        assert!(read("--layouts out").unwrap_err().contains("--turn"));
    }
}
