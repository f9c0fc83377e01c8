//! An answer in lines: what stands large, what stands below, and the verdict in words.

use crate::show::{Shown, draw, draw_other, spoken};
use scantling::measure::Length;
use yew::prelude::*;

/// How a line or a verdict is meant.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tone {
    /// A plain figure.
    #[default]
    Plain,
    /// All is well.
    Good,
    /// Worth a thought.
    Mind,
    /// Over a limit.
    Over,
}

impl Tone {
    /// For the style sheet.
    pub fn name(self) -> Option<&'static str> {
        match self {
            Self::Plain => None,
            Self::Good => Some("good"),
            Self::Mind => Some("mind"),
            Self::Over => Some("over"),
        }
    }

    /// A mark beside the colour, for those who cannot tell colours.
    pub fn mark(self) -> &'static str {
        match self {
            Self::Plain => "",
            Self::Good => "✓ ",
            Self::Mind => "△ ",
            Self::Over => "✕ ",
        }
    }
}

/// A figure with its name.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// What it is.
    pub label: AttrValue,
    /// What it comes to.
    pub shown: Shown,
    /// How it is meant.
    pub tone: Tone,
}

impl Line {
    /// A plain figure.
    pub fn new(label: AttrValue, shown: Shown) -> Self {
        Self { label, shown, tone: Tone::Plain }
    }

    /// The same, meant so.
    #[must_use]
    pub fn toned(self, tone: Tone) -> Self {
        Self { tone, ..self }
    }
}

/// Whether it holds, in words.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// How it is meant.
    pub tone: Tone,
    /// A few words.
    pub words: AttrValue,
}

/// Lines that belong together under a heading.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// The heading.
    pub title: AttrValue,
    /// The lines.
    pub lines: Vec<Line>,
}

/// An answer as it is shown, copied and read at the saw.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reply {
    /// One to three figures in type that is read from a metre away.
    pub main: Vec<Line>,
    /// What the bench shows, where that is not the first of them.
    pub glance: Option<Shown>,
    /// Whether it holds.
    pub verdict: Option<Verdict>,
    /// The rest, in groups.
    pub groups: Vec<Group>,
}

impl Reply {
    /// Every line as text under a title, to copy and share.
    pub fn as_text(&self, title: &str) -> String {
        let mut text = format!("{title}\n");
        let mut write = |line: &Line| text.push_str(&format!("{}: {}\n", line.label, line.shown.plain()));
        self.main.iter().for_each(&mut write);
        if let Some(verdict) = &self.verdict {
            text.push_str(&format!("{}\n", verdict.words));
        }
        for group in &self.groups {
            text.push_str(&format!("\n{}\n", group.title));
            for line in &group.lines {
                text.push_str(&format!("{}: {}\n", line.label, line.shown.plain()));
            }
        }
        text
    }

    /// The lengths that stand large, each with the name of its line.
    pub fn main_lengths(&self) -> Vec<(AttrValue, Length)> {
        self.main.iter().flat_map(lengths_of).collect()
    }

    /// Every length of the answer, each with the name of its line.
    pub fn lengths(&self) -> Vec<(AttrValue, Length)> {
        let in_group = |group: &Group| {
            let named = |(label, length)| (AttrValue::from(format!("{} · {label}", group.title)), length);
            group.lines.iter().flat_map(lengths_of).map(named).collect::<Vec<_>>()
        };
        self.main_lengths().into_iter().chain(self.groups.iter().flat_map(in_group)).collect()
    }

    /// The main figures and the verdict in one sentence, for a screen reader.
    pub fn spoken(&self) -> String {
        let mut text = String::new();
        for line in &self.main {
            let (main, other) = (spoken(&line.shown.main), spoken(&line.shown.other));
            let between = match (other.is_empty(), line.shown.near) {
                (true, _) => "",
                (false, false) => ", ",
                (false, true) => ", about ",
            };
            text.push_str(&format!("{}: {main}{between}{other}. ", line.label));
        }
        if let Some(verdict) = &self.verdict {
            text.push_str(&verdict.words);
        }
        text
    }
}

/// The lengths of a line; where there are several, such as width and height, each is told by its number.
fn lengths_of(line: &Line) -> Vec<(AttrValue, Length)> {
    let lengths = &line.shown.lengths;
    let label = |index: usize| match lengths.len() {
        0 | 1 => line.label.clone(),
        all => format!("{} ({} of {all})", line.label, index + 1).into(),
    };
    lengths.iter().enumerate().map(|(index, length)| (label(index), *length)).collect()
}

/// The verdict: mark, colour and words.
pub fn verdict(verdict: &Verdict) -> Html {
    html! {
        <p class="verdict" data-tone={verdict.tone.name()}>
            <span aria-hidden="true">{ verdict.tone.mark() }</span>{ &verdict.words }
        </p>
    }
}

/// A figure in a list: name, value, the other system and what rounding cost.
pub fn line(line: &Line) -> Html {
    html! {
        <div class="line" data-tone={line.tone.name()}>
            <dt>{ &line.label }</dt>
            <dd>
                <span class="line-main">{ draw(&line.shown.main) }</span>
                if let Some(cost) = &line.shown.cost {
                    <span class="line-cost">{ cost }</span>
                }
                if !line.shown.other.is_empty() {
                    <span class="line-other">{ draw_other(&line.shown) }</span>
                }
            </dd>
        </div>
    }
}

/// A group of figures under its heading.
pub fn group(group: &Group) -> Html {
    html! {
        <section class="group">
            <h3>{ &group.title }</h3>
            <dl>{ for group.lines.iter().map(line) }</dl>
        </section>
    }
}
