//! Properties of numbers: what must hold for every length and every text, not for chosen rows.

mod generators;
mod laws;
mod texts;
