//! What things are made of, and where each value was published.

pub mod clothes;
pub mod fixings;
pub mod hardware;
pub mod joints;
pub mod line_boring;
pub mod loads;
pub mod materials;
pub mod metals;
pub mod movement;
pub mod sheets;
