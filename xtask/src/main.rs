//! Builds, runs and tests Scantling.

fn main() {}
