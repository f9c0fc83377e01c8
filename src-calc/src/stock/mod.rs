//! What things are made of, and where each value was published.
