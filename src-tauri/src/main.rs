//! The native window.

fn main() {}
