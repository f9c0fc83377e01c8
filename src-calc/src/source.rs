//! Where a formula or a value comes from.

use serde::Serialize;

/// How far a value can be leant on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// A document says it, and the document (or a named copy of it) was read.
    Published,
    /// A habit of the trade, or plain geometry or statics worked out from first principles.
    CommonPractice,
    /// A published source is recalled but could not be read again.
    FromMemory,
}

impl Mark {
    /// The mark in words, as shown beside a citation.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::CommonPractice => "common practice",
            Self::FromMemory => "from memory",
        }
    }
}

/// A citation: what says so, and how far it can be leant on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Source {
    /// How far the value can be leant on.
    pub mark: Mark,
    /// Standard, handbook table, or the reasoning.
    pub cite: &'static str,
}

impl Source {
    /// A document that was read.
    pub const fn published(cite: &'static str) -> Self {
        Self { mark: Mark::Published, cite }
    }

    /// A habit of the trade, or geometry and statics from first principles.
    pub const fn practice(cite: &'static str) -> Self {
        Self { mark: Mark::CommonPractice, cite }
    }

    /// A document that is recalled.
    pub const fn memory(cite: &'static str) -> Self {
        Self { mark: Mark::FromMemory, cite }
    }
}

/// Plain geometry: anybody can draw it again.
pub const GEOMETRY: Source = Source::practice("plane geometry");
