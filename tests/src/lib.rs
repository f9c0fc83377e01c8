//! Scantling checked from outside.
