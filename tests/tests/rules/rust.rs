//! Just enough of Rust's grammar: program and comments apart, and the texts in quotes.

/// A text in quotes, and the program right before it, spaces left out.
#[derive(Debug, PartialEq)]
pub(crate) struct Quoted {
    pub(crate) text: String,
    pub(crate) before: String,
}

/// A file of Rust taken apart.
pub(crate) struct Source {
    /// The program: comments are gone and texts in quotes are empty, lines are where they were.
    pub(crate) program: String,
    pub(crate) quoted: Vec<Quoted>,
}

/// So much of the program is kept before a text.
const BEFORE: usize = 60;

impl Source {
    pub(crate) fn read(text: &str) -> Self {
        let letters: Vec<char> = text.chars().collect();
        let mut source = Self { program: String::new(), quoted: Vec::new() };
        let mut at = 0;
        while at < letters.len() {
            at = source.step(&letters, at);
        }
        source
    }

    /// Takes one thing that begins at `at`, and gives where the next begins.
    fn step(&mut self, letters: &[char], at: usize) -> usize {
        let ahead = |by: usize| letters.get(at + by).copied();
        match (letters[at], ahead(1)) {
            ('/', Some('/')) => {
                letters[at..].iter().position(|letter| *letter == '\n').map_or(letters.len(), |n| at + n)
            }
            ('/', Some('*')) => self.block_comment(letters, at),
            ('"', _) => self.quotes(letters, at),
            ('r', Some('"' | '#')) if !self.in_a_name() && raw_hashes(letters, at + 1).is_some() => {
                self.raw(letters, at)
            }
            // A letter in quotes; a lifetime has no second quote after one letter.
            ('\'', Some('\\')) => {
                self.program.push('\'');
                let end =
                    letters[at + 3..].iter().position(|letter| *letter == '\'').map_or(letters.len(), |n| at + n + 4);
                self.program.push('\'');
                end
            }
            ('\'', Some(_)) if ahead(2) == Some('\'') => {
                self.program.push_str("''");
                at + 3
            }
            (letter, _) => {
                self.program.push(letter);
                at + 1
            }
        }
    }

    fn in_a_name(&self) -> bool {
        self.program.ends_with(|letter: char| letter.is_alphanumeric() || letter == '_')
    }

    fn block_comment(&mut self, letters: &[char], at: usize) -> usize {
        let (mut depth, mut end) = (0, at);
        while end < letters.len() {
            match (letters[end], letters.get(end + 1)) {
                ('/', Some('*')) => (depth, end) = (depth + 1, end + 2),
                ('*', Some('/')) => {
                    (depth, end) = (depth - 1, end + 2);
                    if depth == 0 {
                        break;
                    }
                }
                (letter, _) => {
                    if letter == '\n' {
                        self.program.push('\n');
                    }
                    end += 1;
                }
            }
        }
        end
    }

    fn keep(&mut self, text: String) {
        let dense: String = self.program.chars().rev().filter(|letter| !letter.is_whitespace()).take(BEFORE).collect();
        self.program.push_str("\"\"");
        self.program.extend(text.chars().filter(|letter| *letter == '\n'));
        self.quoted.push(Quoted { text, before: dense.chars().rev().collect() });
    }

    fn quotes(&mut self, letters: &[char], at: usize) -> usize {
        let (mut text, mut end) = (String::new(), at + 1);
        while end < letters.len() && letters[end] != '"' {
            // What an escape stands for does not matter here: no key and no hazard has one.
            if letters[end] == '\\' {
                text.push('\\');
                end += 1;
            }
            text.extend(letters.get(end));
            end += 1;
        }
        self.keep(text);
        end + 1
    }

    fn raw(&mut self, letters: &[char], at: usize) -> usize {
        let hashes = raw_hashes(letters, at + 1).unwrap_or(0);
        let begin = at + 1 + hashes + 1;
        let closes = |end: usize| {
            letters[end] == '"'
                && letters[end + 1..].iter().take(hashes).filter(|letter| **letter == '#').count() == hashes
        };
        let end = (begin..letters.len()).find(|end| closes(*end)).unwrap_or(letters.len());
        self.keep(letters[begin..end].iter().collect());
        end + 1 + hashes
    }

    /// The program without its tests: those stand at the foot of a file, under `#[cfg(test)]`.
    pub(crate) fn without_tests(&self) -> &str {
        let begin = self.program.match_indices("#[cfg(test)]").find(|(at, mark)| {
            let rest = self.program[at + mark.len()..].trim_start();
            rest.starts_with("mod ") && rest[..rest.find(['{', ';']).map_or(0, |at| at + 1)].ends_with('{')
        });
        &self.program[..begin.map_or(self.program.len(), |(at, _)| at)]
    }
}

/// The number of `#` before a raw text, if one begins here.
fn raw_hashes(letters: &[char], at: usize) -> Option<usize> {
    let hashes = letters[at..].iter().take_while(|letter| **letter == '#').count();
    (letters.get(at + hashes) == Some(&'"')).then_some(hashes)
}

#[test]
fn programs_are_taken_apart() {
    let source = Source::read(concat!(
        "// say(\"in a comment\")\n/* panic!() /* inner */ \"no\" */\nsay( \"one-key\" ); let q = '\"'; let b = '\\'';\n",
        "fn f<'a>(x: &'a str) { say_with(r#\"two \"keys\"\"#, \"a\\\"b\") }\n",
        "#[cfg(test)]\nmod tests { fn t() { x.unwrap() } }\n",
    ));
    let quoted: Vec<(&str, bool)> =
        source.quoted.iter().map(|quoted| (quoted.text.as_str(), quoted.before.ends_with("say("))).collect();
    assert_eq!(quoted, [("one-key", true), ("two \"keys\"", false), ("a\\\"b", false)]);
    assert!(source.quoted[1].before.ends_with("{say_with("), "{:?}", source.quoted[1]);
    assert!(!source.program.contains("panic") && source.program.contains("fn f<'a>"));
    assert!(source.program.contains("unwrap") && !source.without_tests().contains("unwrap"));
    assert_eq!(source.program.lines().count(), 6, "lines stay where they were");
}
